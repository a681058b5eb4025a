import { type Case, type Objection, reject } from "../case.js";

/**
 * 110.3(B): a part serves only the work it is listed for. A splice joins two conductors or more; a tap has one that runs
 * through and one that leaves.
 */
export function joining({ joint, connector }: Case): Objection[] {
  const objections: Objection[] = [];
  if (!connector.functions.includes(joint.function))
    objections.push(reject("110.3(B) function", `the part is not listed for a ${joint.function}`));
  if (joint.function === "tap") {
    for (const duty of ["run", "tap"] as const)
      if (!joint.conductors.some((group) => group.duty === duty))
        objections.push(reject("110.3(B) function", `the tap has no ${duty} conductor`));
  } else if (joint.function === "splice" && joint.conductors.reduce((sum, { count }) => sum + count, 0) < 2)
    objections.push(reject("110.3(B) function", "a splice joins two conductors at least"));
  return objections;
}
