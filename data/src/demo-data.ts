import { readFileSync } from "node:fs";
import type { CatalogueItem, Job, Verdict } from "@landfast/rules";

/** A catalogue in which every part, number, price and hour is invented. */
export interface DemoCatalogue {
  readonly name: string;
  readonly revision: string;
  readonly status: "invented";
  readonly items: readonly CatalogueItem[];
}

/** What one joint of Larkfen Works must be answered. */
export interface ExpectedJoint {
  readonly mark: string;
  /** "core": the rows that tell the story of the site; "extended": one refusal more for each hard rule. */
  readonly set: "core" | "extended";
  readonly verdict: Verdict;
  /** For a refusal or a question the rules that must fail or ask; otherwise the rules that must pass. */
  readonly rules: readonly string[];
  /** Torques in lbf-in at the first and the second place that is tightened, equal ones once; null: none is there. */
  readonly torqueLbfIn: readonly [number | null, number | null];
  readonly reason: string;
}

/** Expected answers for the job as offered, one for each joint and in the same order. */
export interface LarkfenExpected {
  readonly job: string;
  readonly joints: readonly ExpectedJoint[];
}

// The same step up leads from src and from the compiled files to the folder of the package.
const DEMO = new URL("../demo/", import.meta.url);

function read(file: string): unknown {
  return JSON.parse(readFileSync(new URL(file, DEMO), "utf8"));
}

/** The invented catalogue, read anew at each call. @throws Error when the file is missing or no JSON. */
export function demoCatalogue(): DemoCatalogue {
  return read("catalogue.json") as DemoCatalogue;
}

/** The job with the connector that each joint was offered. @throws Error when the file is missing or no JSON. */
export function larkfenJob(): Job {
  return read("larkfen-job.json") as Job;
}

/** The same job with nothing offered. @throws Error when the file is missing or no JSON. */
export function larkfenOpenJob(): Job {
  return read("larkfen-job-open.json") as Job;
}

/** What the job as offered must be answered. @throws Error when the file is missing or no JSON. */
export function larkfenExpected(): LarkfenExpected {
  return read("larkfen-expected.json") as LarkfenExpected;
}
