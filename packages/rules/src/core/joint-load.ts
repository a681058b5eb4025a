/** The load that a circuit's conductors are sized for. NFPA 70 215.2(A)(1): its continuous part counts at 125 %. */
import type { Edition } from "./edition.js";
import type { Step } from "./finding.js";
import type { Circuit } from "./joint.js";
import type { NumberStep, Worksheet } from "./worksheet.js";

/** A fact to ask for. */
export interface AskedFact {
  readonly path: string;
  readonly because: string;
}

/** The load for sizing in amperes, to the nearest double, or the fact that is missing. */
export function loadForSizing(circuit: Circuit | undefined): number | AskedFact {
  const { loadA, continuousLoadA, nonContinuousLoadA } = circuit ?? {};
  if (loadA !== undefined)
    return continuousLoadA === undefined && nonContinuousLoadA === undefined ? loadA : LOAD_GIVEN_TWICE;
  if (continuousLoadA === undefined) return nonContinuousLoadA === undefined ? LOAD_MISSING : CONTINUOUS_MISSING;
  return nonContinuousLoadA === undefined ? REST_MISSING : 1.25 * continuousLoadA + nonContinuousLoadA;
}

/** The load for sizing as a step, or the fact that is missing. */
export function writeLoad(worksheet: Worksheet, circuit: Circuit | undefined, edition: Edition): Step | AskedFact {
  const load = loadForSizing(circuit);
  if (typeof load !== "number") return load;
  const { loadA, continuousLoadA = 0, nonContinuousLoadA = 0 } = circuit ?? {};
  return loadA === undefined
    ? loadFromParts(worksheet, continuousLoadA, nonContinuousLoadA, edition)
    : worksheet.given("load for sizing", loadA, "joint/circuit/loadA", "A");
}

const LOAD_MISSING: AskedFact = Object.freeze({
  path: "joint/circuit/loadA",
  because: "The load of the circuit is not given, so the ampacity cannot be compared with it.",
});
const LOAD_GIVEN_TWICE: AskedFact = Object.freeze({
  path: "joint/circuit/loadA",
  because: "The load is given twice, for sizing and in its parts; one of them must go.",
});
const CONTINUOUS_MISSING: AskedFact = Object.freeze({
  path: "joint/circuit/continuousLoadA",
  because: "Only the non-continuous part of the load is given; say how much is continuous, if only 0 A.",
});
const REST_MISSING: AskedFact = Object.freeze({
  path: "joint/circuit/nonContinuousLoadA",
  because: "Only the continuous part of the load is given; say how much is not continuous, if only 0 A.",
});

/** NFPA 70 215.2(A)(1): 125 % of the continuous load and the rest. Worked: 1.25 x 160 + 0 = 200 A. */
function loadFromParts(worksheet: Worksheet, continuousLoadA: number, restA: number, edition: Edition): NumberStep {
  const cite = edition.clauses.feederLoad;
  const continuous = worksheet.given("continuous load", continuousLoadA, "joint/circuit/continuousLoadA", "A");
  const rest = worksheet.given("non-continuous load", restA, "joint/circuit/nonContinuousLoadA", "A");
  const factor = worksheet.state("factor for continuous load", 1.25, cite);
  const raised = worksheet.multiply("continuous load counted", [factor, continuous], "A", cite);
  return worksheet.add("load for sizing", [raised, rest], "A", cite);
}

/** True when a load, a protection or another reading turned out to be a fact to ask for. */
export function isAsked(value: Step | AskedFact): value is AskedFact {
  return !("kind" in value);
}
