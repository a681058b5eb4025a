import { createHash } from "node:crypto";
import {
  type CatalogueItem,
  type ConnectorSchedule,
  type Job,
  type JointFinding,
  scheduleJobInSteps,
} from "@landfast/rules";
import type { FindingRecord, JointRecord } from "../repositories/job-repository.js";

/** A job's schedule as text, written once: these very characters are stored, hashed and sent. */
export interface EvaluatedJob {
  readonly summary: string;
  readonly joints: readonly JointRecord[];
  readonly findings: readonly FindingRecord[];
  readonly counts: ConnectorSchedule["counts"];
  readonly rulesVersion: string;
  readonly resultHash: string;
}

/**
 * Works out a job one joint per step, so that a runner can let other requests in between: first the answers, then
 * their text.
 */
export function* evaluateInSteps(job: Job, catalogue: readonly CatalogueItem[]): Generator<undefined, EvaluatedJob> {
  const { schedule, findings } = yield* scheduleJobInSteps(job, catalogue);
  const { rows, ...rest } = schedule;
  const summary = JSON.stringify(rest);
  yield undefined;
  const hash = createHash("sha256").update(opening(summary));
  const joints: JointRecord[] = [];
  const records = new Map<JointFinding, FindingRecord>();
  for (const [index, row] of rows.entries()) {
    const finding = findings[index] ?? null;
    const text = JSON.stringify(row);
    hash.update(index === 0 ? text : `,${text}`);
    joints.push({
      mark: row.mark,
      verdict: row.verdict,
      decidingRule: row.deciding.rule,
      row: text,
      findingId: finding === null ? null : recordOf(finding, records).id,
    });
    yield undefined;
  }
  hash.update(CLOSING);
  return {
    summary,
    joints,
    findings: [...new Map([...records.values()].map((record) => [record.id, record])).values()],
    counts: schedule.counts,
    rulesVersion: schedule.rulesVersion,
    resultHash: `sha256:${hash.digest("hex")}`,
  };
}

/** The schedule's text from its stored parts; the rows come last. Its digest is the job's result hash. */
export function scheduleText(summary: string, rows: readonly string[]): string {
  return `${opening(summary)}${rows.join(",")}${CLOSING}`;
}

const CLOSING = "]}";

function opening(summary: string): string {
  return `${summary.slice(0, -1)},"rows":[`;
}

/** Equal joints share one finding object, so its text is made once. */
function recordOf(finding: JointFinding, records: Map<JointFinding, FindingRecord>): FindingRecord {
  const known = records.get(finding);
  if (known !== undefined) return known;
  const document = JSON.stringify(finding);
  const record = { id: createHash("sha256").update(document).digest("hex"), document };
  records.set(finding, record);
  return record;
}
