import {
  type Basis,
  CALCULATIONS,
  type CalculationFinding,
  type CalculationName,
  type CalculationQuestions,
  type Citation,
  calculate,
  EDITIONS,
  RULES_VERSION,
  UnusableFact,
} from "@landfast/rules";
import { Problem } from "../problems/problem.js";
import { basisFaults } from "./joint-consistency.js";

/** One calculation's question with the rules it is asked under. */
export interface CalculationAsked<Name extends CalculationName> {
  readonly basis: Basis;
  readonly question: CalculationQuestions[Name];
}

/** What a calculation is, for somebody who wants to ask it. */
export interface CalculationHead {
  readonly name: CalculationName;
  readonly title: string;
  readonly href: string;
  readonly clauses: readonly {
    readonly ruleSet: string;
    readonly edition: string;
    readonly cites: readonly Citation[];
  }[];
  readonly needs: readonly string[];
  readonly cannotSee: string;
}

const NAMES = Object.keys(CALCULATIONS) as readonly CalculationName[];

/**
 * The library's answer, as it is. Nothing is stored.
 * @throws Problem INCONSISTENT_REQUEST where no work can be done with the facts.
 */
export function answerCalculation<Name extends CalculationName>(
  name: Name,
  { basis, question }: CalculationAsked<Name>,
): CalculationFinding {
  const faults = basisFaults(basis, "/basis");
  if (faults.length > 0) throw new Problem("INCONSISTENT_REQUEST", "There are no such rules.", faults);
  try {
    return calculate(name, question, basis);
  } catch (error) {
    if (!(error instanceof UnusableFact)) throw error;
    throw new Problem("INCONSISTENT_REQUEST", "No work can be done with the facts of the question.", [
      { pointer: `/${error.path}`, detail: error.problem, accepted: error.accepted },
    ]);
  }
}

/** Every calculation: what it is called, rests on, needs and cannot see. */
export function listCalculations(): {
  readonly rulesVersion: string;
  readonly calculations: readonly CalculationHead[];
} {
  return { rulesVersion: RULES_VERSION, calculations: NAMES.map(headOf) };
}

/** @throws Problem CALCULATION_NOT_FOUND, always: for names that no calculation has. */
export function refuseCalculation(name: string): never {
  throw new Problem("CALCULATION_NOT_FOUND", `There is no calculation "${name}".`, [
    {
      pointer: "/path/name",
      detail: `"${name}" is not the name of a calculation`,
      accepted: `one of ${NAMES.join(", ")}`,
    },
  ]);
}

function headOf(name: CalculationName): CalculationHead {
  const { title, clauses, needs, cannotSee } = CALCULATIONS[name];
  return {
    name,
    title,
    href: `/v1/calculations/${name}`,
    clauses: EDITIONS.map((edition) => ({
      ruleSet: edition.ruleSet,
      edition: edition.edition,
      cites: clauses.map((clause) => edition.clauses[clause]),
    })),
    needs,
    cannotSee,
  };
}
