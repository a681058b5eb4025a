/** Lays the library's answers beside the oracle's and sorts what differs by the clause it is about. */
import { checkJoint, type JointFinding } from "@landfast/rules";
import { type Generated, generate } from "./generate.js";
import { type Judgment, judge } from "./oracle.js";

export interface Difference {
  readonly question: Generated;
  readonly library: Judgment["verdict"];
  readonly oracle: Judgment["verdict"];
  /** "accept/reject 230.46": what the two say, then what the stricter one objects to. */
  readonly kind: string;
  readonly reasons: readonly string[];
}

export interface Comparison {
  readonly asked: number;
  readonly accepts: number;
  readonly differences: readonly Difference[];
}

/** Acceptance with and without conditions is one class. */
export const classOf = (verdict: JointFinding["verdict"]): Judgment["verdict"] =>
  verdict === "accept-with-conditions" ? "accept" : verdict;

const STRICTNESS = { accept: 0, "needs-information": 1, reject: 2 } as const;

export function libraryFinding({ joint, connector, basis }: Pick<Generated, "joint" | "connector" | "basis">): JointFinding {
  const own = connector === joint.equipment?.terminal;
  return checkJoint({ joint, connector, basis, origin: own ? "equipment" : "request" });
}

export function compare(from: number, count: number): Comparison {
  const differences: Difference[] = [];
  let accepts = 0;
  for (let number = from; number < from + count; number += 1) {
    const question = generate(number);
    const finding = libraryFinding(question);
    const library = classOf(finding.verdict);
    const { verdict: oracle, reasons } = judge(question.joint, question.connector, question.basis);
    if (oracle === "accept") accepts += 1;
    if (library === oracle) continue;
    const objections =
      STRICTNESS[library] > STRICTNESS[oracle]
        ? finding.findings
            .filter(({ outcome }) => outcome === (library === "reject" ? "fail" : "missing"))
            .map(({ rule }) => rule)
        : reasons.map(({ clause }) => clause);
    const about = [...new Set(objections)].sort();
    differences.push({
      question,
      library,
      oracle,
      kind: `${library}/${oracle} ${about.join(" + ")}`,
      reasons: reasons.map(({ clause, says }) => `${clause}: ${says}`),
    });
  }
  return { asked: count, accepts, differences };
}
