import { createHash } from "node:crypto";
import {
  type CatalogueItem,
  type ConnectorSchedule,
  type Job,
  type JointFinding,
  type ScheduleRow,
  scheduleJobInSteps,
} from "@landfast/rules";
import type { FindingRecord, JointRecord, LineRecord, StoredLine } from "../repositories/job-repository.js";

/** A job's schedule as text, written once: these very characters are stored, hashed and sent. */
export interface EvaluatedJob {
  readonly summary: string;
  readonly joints: readonly JointRecord[];
  readonly lines: readonly LineRecord[];
  readonly findings: readonly FindingRecord[];
  readonly counts: ConnectorSchedule["counts"];
  readonly rulesVersion: string;
  readonly resultHash: string;
  /** The whole schedule, as it is read back later. */
  readonly schedule: string;
}

/**
 * Works out a job one joint per step, so that a runner can let other requests in between: first the answers, then
 * their text.
 */
export function* evaluateInSteps(job: Job, catalogue: readonly CatalogueItem[]): Generator<undefined, EvaluatedJob> {
  const { schedule, findings } = yield* scheduleJobInSteps(job, catalogue);
  const { rows, ...rest } = schedule;
  const summary = JSON.stringify(rest);
  const hash = createHash("sha256").update(opening(summary));
  const joints: JointRecord[] = [];
  const rowTexts: string[] = [];
  const lines = new Map<string, LineRecord>();
  const shares = new Map<ScheduleRow["conductors"], string>();
  const records = new Map<JointFinding, FindingRecord>();
  for (const [index, row] of rows.entries()) {
    const own = ownText(row);
    const shared = sharedText(row, shares);
    const text = rowText({ own, shared });
    rowTexts.push(text);
    hash.update(index === 0 ? text : `,${text}`);
    const finding = findings[index] ?? null;
    joints.push({
      mark: row.mark,
      verdict: row.verdict,
      decidingRule: row.deciding.rule,
      own,
      lineId: lineOf(shared, lines).id,
      findingId: finding === null ? null : recordOf(finding, records).id,
    });
    yield undefined;
  }
  hash.update(CLOSING);
  return {
    summary,
    joints,
    lines: [...lines.values()],
    findings: [...new Map([...records.values()].map((record) => [record.id, record])).values()],
    counts: schedule.counts,
    rulesVersion: schedule.rulesVersion,
    resultHash: `sha256:${hash.digest("hex")}`,
    schedule: joined(summary, rowTexts),
  };
}

/** The schedule's text from its stored parts; the rows come last. Its digest is the job's result hash. */
export function scheduleText(summary: string, lines: readonly StoredLine[]): string {
  return joined(summary, lines.map(rowText));
}

/** A row's text: the joint's own part first. */
export function rowText({ own, shared }: StoredLine): string {
  return `${own.slice(0, -1)},${shared.slice(1)}`;
}

const CLOSING = "]}";

function opening(summary: string): string {
  return `${summary.slice(0, -1)},"rows":[`;
}

function joined(summary: string, rows: readonly string[]): string {
  return `${opening(summary)}${rows.join(",")}${CLOSING}`;
}

/** The part of a row in which equal joints differ. */
function ownText({ mark, area, equipmentTag, description, quantity, connector }: ScheduleRow): string {
  return JSON.stringify({ mark, area, equipmentTag, description, quantity, connector });
}

/** The other part. Rows of equal joints share their conductors' array, so it is written once for all of them. */
function sharedText(row: ScheduleRow, shares: Map<ScheduleRow["conductors"], string>): string {
  const known = shares.get(row.conductors);
  if (known !== undefined) return known;
  const { mark, area, equipmentTag, description, quantity, connector, ...shared } = row;
  const text = JSON.stringify(shared);
  shares.set(row.conductors, text);
  return text;
}

function lineOf(document: string, lines: Map<string, LineRecord>): LineRecord {
  const known = lines.get(document);
  if (known !== undefined) return known;
  const line = { id: digestOf(document), document };
  lines.set(document, line);
  return line;
}

/** Equal joints share one finding object, so its text is made once. */
function recordOf(finding: JointFinding, records: Map<JointFinding, FindingRecord>): FindingRecord {
  const known = records.get(finding);
  if (known !== undefined) return known;
  const document = JSON.stringify(finding);
  const record = { id: digestOf(document), document };
  records.set(finding, record);
  return record;
}

function digestOf(text: string): string {
  return createHash("sha256").update(text).digest("hex");
}
