import { larkfenJob } from "@landfast/data";
import type { Job } from "@landfast/rules";

/** Marks of Larkfen Works that among them show all that can come of a joint where stock is planned. */
const MARKS = [
  "LKF-015", // lugs on studs, pressed as offered
  "LKF-021", // lugs on studs
  "LKF-024", // its equipment's own terminal serves, or not
  "LKF-030",
  "LKF-035", // splices
  "LKF-036",
  "LKF-057", // a split bolt that has to be covered
  "LKF-058",
  "LKF-069",
];

/** A small part of Larkfen Works, as offered. */
export function stockJob(marks: readonly string[] = MARKS): Job {
  const job = larkfenJob();
  return { ...job, name: "Larkfen, a part", joints: job.joints.filter(({ mark }) => marks.includes(mark)) };
}
