import type { Basis, ConnectorSchedule, Verdict } from "@landfast/rules";

/** One line of a schedule as it is stored. */
export interface JointRecord {
  readonly mark: string;
  readonly verdict: Verdict;
  readonly decidingRule: string;
  /** JSON text of what in its line is this joint's own: mark, area, quantity. */
  readonly own: string;
  readonly lineId: string;
  /** null: the catalogue held nothing of this kind, so there is no finding. */
  readonly findingId: string | null;
}

/** What equal joints share in their line of the schedule: its id is the digest of its text. */
export interface LineRecord {
  readonly id: string;
  /** JSON text of the rest of the ScheduleRow. */
  readonly document: string;
}

/** A full finding as stored: its id is the digest of its text, so equal joints share one. */
export interface FindingRecord {
  readonly id: string;
  /** JSON text of the JointFinding. */
  readonly document: string;
}

/** What a job is known by. */
export interface JobHead {
  readonly id: string;
  readonly name: string;
  readonly revision: number;
  /** RFC 3339, UTC. */
  readonly createdAt: string;
  readonly basis: Basis;
  readonly rulesVersion: string;
  readonly catalogue: {
    readonly id: string;
    readonly name: string;
    /** Of a catalogue of the user's own: its version. */
    readonly revision: string;
    /** The day on which its parts had to be in force; absent where the catalogue has no days. */
    readonly on?: string;
  };
  readonly counts: ConnectorSchedule["counts"];
  /** "sha256:" and the digest of the schedule's text. */
  readonly resultHash: string;
}

/** A job with the schedule made from it, ready to be stored. */
export interface JobRecord {
  readonly head: JobHead;
  /** JSON text of the job as posted. */
  readonly posted: string;
  /** The id under which the store keeps the revision of the catalogue. */
  readonly catalogueRecordId: string;
  /** JSON text of the schedule without its rows. */
  readonly summary: string;
  readonly joints: readonly JointRecord[];
  readonly lines: readonly LineRecord[];
  readonly findings: readonly FindingRecord[];
}

/** A page of jobs, newest first. */
export interface JobPage {
  readonly jobs: readonly JobHead[];
  /** Where the next page begins; null on the last. */
  readonly next: number | null;
}

/** One line of a stored schedule as JSON text in two parts: the joint's own and what it shares with equal joints. */
export interface StoredLine {
  readonly own: string;
  readonly shared: string;
}

/** The schedule as it was stored: its text without the rows, and its lines in order. */
export interface StoredSchedule {
  readonly summary: string;
  readonly lines: readonly StoredLine[];
}

/** One joint of a stored job; `finding` is JSON text. */
export interface StoredJoint extends StoredLine {
  readonly mark: string;
  readonly finding: string | null;
}

/**
 * Where jobs and their results are kept. Results are immutable. Every call sees the tenant's own data only.
 * @throws what the store throws when it cannot be reached.
 */
export interface JobRepository {
  /** Stores a job with all its joints and findings, or nothing of it. Durable once the promise resolves. */
  add(tenantId: string, job: JobRecord): Promise<void>;
  /** Up to `limit` jobs, newest first, from before the place that `before` names. */
  list(tenantId: string, limit: number, before: number | null): Promise<JobPage>;
  head(tenantId: string, jobId: string): Promise<JobHead | null>;
  /** JSON text of the job as posted. */
  posted(tenantId: string, jobId: string): Promise<string | null>;
  schedule(tenantId: string, jobId: string): Promise<StoredSchedule | null>;
  /** null when the job is known but has no such mark; undefined when the job itself is unknown. */
  joint(tenantId: string, jobId: string, mark: string): Promise<StoredJoint | null | undefined>;
}
