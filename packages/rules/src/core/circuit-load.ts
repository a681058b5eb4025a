/**
 * The load of a circuit, as it is served and as it sizes conductors and devices.
 *
 * NFPA 70 210.19(A)(1), 210.20(A), 215.2(A)(1), 215.3 (2017, 2020, 2023), in our words: before any correction the
 * conductor carries, and the device is rated for, 125 % of the continuous load and the rest; where device and assembly are
 * listed for 100 % of their rating, the load itself. Amperes.
 * Worked: 200 A continuous: 1.25 x 200 + 0 = 250 A.
 */
import type { CalculationFinding } from "./calculation.js";
import type { CalculationSheet } from "./calculation-sheet.js";
import type { Citation } from "./citation.js";
import type { Edition } from "./edition.js";
import type { Step } from "./finding.js";
import { UnusableFact } from "./unusable-fact.js";

/** "receptacle-branch-circuit": one with more than one receptacle for portable loads that are plugged in. */
export const CIRCUIT_KINDS = ["feeder", "branch-circuit", "receptacle-branch-circuit"] as const;
export type CircuitKind = (typeof CIRCUIT_KINDS)[number];

export interface CircuitLoad {
  /** On for three hours or more. */
  readonly continuousLoadA?: number;
  readonly nonContinuousLoadA?: number;
  /** Device and assembly are both listed for 100 % of their rating. Absent: they are not said to be. */
  readonly listedFor100Percent?: boolean;
}

export interface LoadSteps {
  /** What the circuit serves. */
  readonly served: Step;
  /** What conductors before correction and devices are sized for. */
  readonly sizing: Step;
}

const CONTINUOUS_FACTOR = 1.25;

/** The clause that sizes the conductors of a circuit. */
export function conductorLoadClause(circuit: CircuitKind, { clauses }: Edition): Citation {
  return circuit === "feeder" ? clauses.feederLoad : clauses.branchCircuitLoad;
}

/** The clause that sizes the device of a circuit. */
export function deviceLoadClause(circuit: CircuitKind, { clauses }: Edition): Citation {
  return circuit === "feeder" ? clauses.feederDevice : clauses.branchCircuitDevice;
}

/** @throws UnusableFact for a part that is negative or no number, and for no load at all. */
export function loadSteps(
  sheet: CalculationSheet,
  load: CircuitLoad,
  circuit: CircuitKind,
  edition: Edition,
): LoadSteps | CalculationFinding {
  const cite = conductorLoadClause(circuit, edition);
  const { continuousLoadA, nonContinuousLoadA } = load;
  if (continuousLoadA === undefined)
    return sheet.ask(
      "question/continuousLoadA",
      "How much of the load is continuous is not given, if only 0 A; that part counts at 125 %.",
      cite,
    );
  if (nonContinuousLoadA === undefined)
    return sheet.ask(
      "question/nonContinuousLoadA",
      "How much of the load is not continuous is not given, if only 0 A.",
      cite,
    );
  const continuous = part(sheet, "continuous load", continuousLoadA, "question/continuousLoadA");
  const rest = part(sheet, "non-continuous load", nonContinuousLoadA, "question/nonContinuousLoadA");
  if (continuousLoadA === 0 && nonContinuousLoadA === 0)
    throw new UnusableFact(
      "question/continuousLoadA",
      "and question/nonContinuousLoadA are both 0: there is no load",
      "a load above 0 in one of the two",
    );
  const served = sheet.add("load served", [continuous, rest], "A");
  if (load.listedFor100Percent === true) {
    const listed = sheet.given(
      "device and assembly are listed for 100 % of their rating",
      true,
      "question/listedFor100Percent",
    );
    return {
      served,
      sizing: sheet.conclude(
        "load for sizing",
        served.value,
        [served, listed],
        "with device and assembly listed for 100 %, nothing is added for the continuous part",
        cite,
        "A",
      ),
    };
  }
  const factor = sheet.state("factor for continuous load", CONTINUOUS_FACTOR, cite);
  const raised = sheet.multiply("continuous load counted", [factor, continuous], "A", cite);
  return { served, sizing: sheet.add("load for sizing", [raised, rest], "A", cite) };
}

function part(sheet: CalculationSheet, label: string, value: number, path: string): Step {
  if (!(value >= 0 && value < Number.POSITIVE_INFINITY))
    throw new UnusableFact(path, `must be a number from 0 on, not ${String(value)}`, "a number from 0 on");
  return sheet.given(label, value, path, "A");
}
