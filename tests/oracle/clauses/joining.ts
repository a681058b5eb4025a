import { ask, type Case, carriesLoad, type Objection, reject } from "../case.js";

/** Parts made for grounds, which carry no load current. */
const GROUNDING_PARTS: readonly string[] = ["ground-bar", "ground-bar-lug", "rod-clamp", "pipe-clamp", "rebar-clamp"];

/**
 * 110.3(B): a part serves only the work it is listed for. A splice joins two conductors or more; a tap has one that runs
 * through and one that leaves.
 */
export function joining(asked: Case): Objection[] {
  const { joint, connector } = asked;
  const objections: Objection[] = [];
  if (carriesLoad(asked) && GROUNDING_PARTS.includes(connector.family))
    objections.push(reject("110.3(B) function", `a ${connector.family} for a ${joint.role}`));
  if (!connector.functions.includes(joint.function))
    objections.push(reject("110.3(B) function", `the part is not listed for a ${joint.function}`));
  if (joint.function === "tap") {
    if (joint.conductors.some(({ duty }) => duty === undefined))
      objections.push(ask("110.3(B) function", "which conductor runs through and which one leaves"));
    else
      for (const duty of ["run", "tap"] as const)
        if (!joint.conductors.some((group) => group.duty === duty))
          objections.push(reject("110.3(B) function", `the tap has no ${duty} conductor`));
  } else if (joint.function === "splice" && joint.conductors.reduce((sum, { count }) => sum + count, 0) < 2)
    objections.push(reject("110.3(B) function", "a splice joins two conductors at least"));
  return objections;
}
