/** Lays the library's answers beside the oracle's and sorts what differs by the clause it is about. */
import { checkJoint, type JointFinding } from "@landfast/rules";
import { type Generated, generate } from "./generate.js";
import { type Judgment, judge } from "./oracle.js";

export interface Difference {
  readonly question: Generated;
  readonly library: Judgment["verdict"];
  readonly oracle: Judgment["verdict"];
  /** What the stricter of the two objects to: rules where it is the library, clauses where it is the oracle. */
  readonly about: readonly string[];
  /** "reject/accept device-protection": library, oracle and what it is about. */
  readonly kind: string;
  readonly reasons: readonly string[];
}

/** What the questions held, to show that nothing was left out. */
export interface Met {
  readonly families: Set<string>;
  readonly functions: Set<string>;
  readonly roles: Set<string>;
  readonly editions: Set<string>;
  readonly protections: Set<string>;
  readonly places: Set<string>;
  /** How often a clause was the only one in the way: what the library would have to miss to accept. */
  readonly decidedAlone: Map<string, number>;
}

export interface Comparison {
  readonly asked: number;
  readonly accepts: number;
  readonly differences: readonly Difference[];
  readonly met: Met;
}

/** Acceptance with and without conditions is one class. */
export const classOf = (verdict: JointFinding["verdict"]): Judgment["verdict"] =>
  verdict === "accept-with-conditions" ? "accept" : verdict;

const STRICTNESS = { accept: 0, "needs-information": 1, reject: 2 } as const;

type Asked = Pick<Generated, "joint" | "connector" | "basis">;

export function libraryFinding({ joint, connector, basis }: Asked): JointFinding {
  const own = connector === joint.equipment?.terminal;
  return checkJoint({ joint, connector, basis, origin: own ? "equipment" : "request" });
}

/** Asks both about joint number `from` and the following ones. */
export function compare(from: number, count: number): Comparison {
  const differences: Difference[] = [];
  const met: Met = {
    families: new Set(),
    functions: new Set(),
    roles: new Set(),
    editions: new Set(),
    protections: new Set(),
    places: new Set(),
    decidedAlone: new Map(),
  };
  let accepts = 0;
  for (let number = from; number < from + count; number += 1) {
    const question = generate(number);
    note(met, question);
    const finding = libraryFinding(question);
    const library = classOf(finding.verdict);
    const { verdict: oracle, reasons } = judge(question.joint, question.connector, question.basis);
    if (oracle === "accept") accepts += 1;
    const [alone, another] = new Set(reasons.map(({ clause }) => clause));
    if (alone !== undefined && another === undefined)
      met.decidedAlone.set(alone, (met.decidedAlone.get(alone) ?? 0) + 1);
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
      about,
      kind: `${library}/${oracle} ${about.join(" + ")}`,
      reasons: reasons.map(({ clause, says }) => `${clause}: ${says}`),
    });
  }
  return { asked: count, accepts, differences, met };
}

function note(met: Met, { joint, connector, basis }: Generated): void {
  met.families.add(connector.family);
  met.functions.add(joint.function);
  met.roles.add(joint.role);
  met.editions.add(basis.edition);
  if (joint.circuit?.protection !== undefined) met.protections.add(joint.circuit.protection.kind);
  if (joint.place !== undefined) met.places.add(joint.place.location);
}
