import type { Job, Joint } from "@landfast/rules";
import { type Fault, Problem, pointerTo } from "../problems/problem.js";
import type { JobHead, JobPage, JobRepository } from "../repositories/job-repository.js";
import type { Catalogue, CatalogueService } from "./catalogue.js";
import { evaluateInSteps, rowText, scheduleText } from "./job-evaluation.js";
import type { JobRunner } from "./job-runner.js";
import { basisFaults, jointFaults } from "./joint-consistency.js";
import type { CatalogueChoice, OwnCatalogueService } from "./own-catalogues.js";
import { projectRuleFaults } from "./project-rule-consistency.js";
import { type UnknownPart, unknownPart } from "./unknown-part.js";

/** Faults gathered before a job is refused; more would not be read. */
const FAULTS_GATHERED = 100;

/** A stored job with the text of its schedule. */
export interface ScheduledJobText {
  readonly job: JobHead;
  /** JSON text of the ConnectorSchedule. */
  readonly schedule: string;
}

/** A joint's line of the schedule and the finding behind it, both as JSON text. */
export interface JointText {
  readonly mark: string;
  readonly row: string;
  readonly finding: string | null;
}

/** A job as posted. */
export interface PostedJob extends Job {
  /** A version of a catalogue of the user's own; absent: the catalogue that the service was started with. */
  readonly catalogue?: CatalogueChoice;
}

export interface JobService {
  /**
   * Works out the schedule of a job and stores both. Once this resolves the job is on the disk, whole.
   * @param posted the job as JSON text, as it came.
   * @throws Problem when the job's facts contradict each other, or it names an unknown part or catalogue; nothing is
   *   stored then.
   */
  add(job: PostedJob, posted: string): Promise<ScheduledJobText>;
  list(limit: number, before: number | null): Promise<JobPage>;
  /** @throws Problem JOB_NOT_FOUND. */
  get(id: string): Promise<{ readonly job: JobHead; readonly posted: string }>;
  /** JSON text of the stored schedule. @throws Problem JOB_NOT_FOUND. */
  schedule(id: string): Promise<string>;
  /** JSON text of the stored schedule without its rows. @throws Problem JOB_NOT_FOUND. */
  summary(id: string): Promise<string>;
  /** @throws Problem JOB_NOT_FOUND, JOINT_NOT_FOUND. */
  joint(id: string, mark: string): Promise<JointText>;
}

/** What the service needs around it. */
export interface JobServiceParts {
  readonly jobs: JobRepository;
  readonly catalogue: CatalogueService;
  readonly ownCatalogues: Pick<OwnCatalogueService, "catalogueFor">;
  readonly runner: JobRunner;
  readonly tenantId: string;
  /** RFC 3339, UTC. */
  readonly now: () => string;
  readonly newId: () => string;
}

export function jobService({
  jobs,
  catalogue,
  ownCatalogues,
  runner,
  tenantId,
  now,
  newId,
}: JobServiceParts): JobService {
  return {
    async add(job, posted) {
      const inUse = await (job.catalogue === undefined
        ? catalogue.current()
        : ownCatalogues.catalogueFor(job.catalogue));
      refuseContradictions(job);
      refuseUnknownParts(job, inUse);
      const evaluated = await runner.run(job.joints.length, () => evaluateInSteps(job, inUse.items));
      const head: JobHead = {
        id: newId(),
        name: job.name,
        revision: 1,
        createdAt: now(),
        basis: job.basis,
        rulesVersion: evaluated.rulesVersion,
        catalogue: {
          id: inUse.id,
          name: inUse.name,
          revision: inUse.revision,
          ...(inUse.on === null ? {} : { on: inUse.on }),
        },
        counts: evaluated.counts,
        resultHash: evaluated.resultHash,
      };
      await jobs.add(tenantId, { ...evaluated, head, posted, catalogueRecordId: inUse.recordId });
      return { job: head, schedule: evaluated.schedule };
    },
    list(limit, before) {
      return jobs.list(tenantId, limit, before);
    },
    async get(id) {
      const [job, posted] = await Promise.all([jobs.head(tenantId, id), jobs.posted(tenantId, id)]);
      if (job === null || posted === null) throw noJob(id);
      return { job, posted };
    },
    async schedule(id) {
      const stored = await jobs.schedule(tenantId, id);
      if (stored === null) throw noJob(id);
      return scheduleText(stored.summary, stored.lines);
    },
    async summary(id) {
      const stored = await jobs.schedule(tenantId, id);
      if (stored === null) throw noJob(id);
      return stored.summary;
    },
    async joint(id, mark) {
      const joint = await jobs.joint(tenantId, id, mark);
      if (joint === undefined) throw noJob(id);
      if (joint === null) throw new Problem("JOINT_NOT_FOUND", `The job has no joint with the mark "${mark}".`);
      return { mark: joint.mark, row: rowText(joint), finding: joint.finding };
    },
  };
}

function noJob(id: string): Problem {
  return new Problem("JOB_NOT_FOUND", `There is no job "${id}".`);
}

function refuseContradictions(job: Job): void {
  const faults: Fault[] = [...basisFaults(job.basis, "/basis"), ...projectRuleFaults(job.projectRules)];
  const seen = new Map<string, number>();
  for (const [index, joint] of job.joints.entries()) {
    if (faults.length >= FAULTS_GATHERED) break;
    const pointer = pointerTo("/joints", index);
    const first = seen.get(joint.mark);
    if (first === undefined) seen.set(joint.mark, index);
    else faults.push(markTwice(joint, first, pointer));
    faults.push(...jointFaults(joint, pointer));
  }
  if (faults.length > 0)
    throw new Problem("INCONSISTENT_REQUEST", "The facts of the job contradict each other.", faults);
}

function markTwice(joint: Joint, first: number, pointer: string): Fault {
  return {
    pointer: pointerTo(pointer, "mark"),
    detail: `the mark "${joint.mark}" is that of joint ${first} already`,
    accepted: "a mark that no other joint of the job has; give equal joints one mark and a quantity",
  };
}

function refuseUnknownParts(job: Job, catalogue: Catalogue): void {
  const unknown: UnknownPart[] = [];
  for (const [index, { connector }] of job.joints.entries()) {
    if (connector === undefined || !("partNumber" in connector) || catalogue.byPartNumber.has(connector.partNumber))
      continue;
    if (unknown.length < FAULTS_GATHERED)
      unknown.push({
        pointer: pointerTo("/joints", index, "connector", "partNumber"),
        partNumber: connector.partNumber,
      });
  }
  if (unknown.length > 0) throw unknownPart(unknown, catalogue);
}
