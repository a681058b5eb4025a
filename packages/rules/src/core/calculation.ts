/**
 * One number of the trade with its derivation: the shape of every calculation's answer.
 */
import { CAUTION } from "./caution.js";
import type { Citation } from "./citation.js";
import type { Edition, EditionClauses } from "./edition.js";
import type { MissingFact, Step, StepValue } from "./finding.js";
import type { Basis } from "./joint.js";
import { RULES_VERSION } from "./rules-version.js";
import { type Assumption, assumptionsIn, unconfirmedIn } from "./what-it-rests-on.js";
import type { Worksheet } from "./worksheet.js";

/** Why a question cannot be answered from what is published and posted. */
export type RefusalCode =
  /** No row or cell of the table covers the question. */
  | "OUTSIDE_TABLE"
  /** The edition has no such rule or this library does not answer it. */
  | "NOT_COVERED"
  /** No size, device or length satisfies the question. */
  | "NO_SOLUTION";

/** A named result beside the main answer: "ampacity at the termination column". */
export interface NamedResult {
  readonly name: string;
  readonly value: StepValue;
  readonly unit?: string;
  /** The step that reached it. */
  readonly step: number;
}

export interface CalculationFinding {
  readonly calculation: string;
  readonly basis: Basis;
  readonly rulesVersion: string;
  readonly outcome: "answered" | "missing" | "refused";
  /** The answer in one plain sentence, or what is missing or refused. */
  readonly sentence: string;
  /** The clause or table that governs the answer. */
  readonly cite: Citation;
  /** The main result first; empty unless answered. */
  readonly results: readonly NamedResult[];
  /** Never empty; the last step is the main result. */
  readonly steps: readonly Step[];
  readonly missing: readonly MissingFact[];
  readonly refusal: { readonly code: RefusalCode; readonly detail: string } | null;
  readonly advice: readonly string[];
  /** Defaults that the code itself supplied. */
  readonly assumptions: readonly Assumption[];
  /** "No public text has yet confirmed …": one for each cell read that nobody has confirmed. */
  readonly caveats: readonly string[];
  /** The standing caution. */
  readonly caution: string;
}

/** A calculation: one question of the trade under an edition. */
export interface Calculation<Question> {
  /** Kebab-case, as in the route: "voltage-drop". */
  readonly name: string;
  readonly title: string;
  readonly clauses: readonly (keyof EditionClauses)[];
  /** Paths of the facts it needs. */
  readonly needs: readonly string[];
  readonly cannotSee: string;
  readonly answer: (question: Question, basis: Basis, edition: Edition) => CalculationFinding;
}

export interface AnswerText {
  readonly sentence: string;
  readonly cite: Citation;
  /** Named results by step; the main one, which must be the last step, first. */
  readonly results: readonly { readonly name: string; readonly step: Step }[];
  readonly advice?: readonly string[];
}

/** Closes a worksheet whose last step is the main result. @throws Error when it is not: that is a defect. */
export function answered(
  calculation: string,
  basis: Basis,
  worksheet: Worksheet,
  text: AnswerText,
): CalculationFinding {
  const [main] = text.results;
  if (main === undefined || main.step.id !== worksheet.last.id)
    throw new Error(`${calculation}: the last step must be the main result`);
  return {
    calculation,
    basis,
    rulesVersion: RULES_VERSION,
    outcome: "answered",
    sentence: text.sentence,
    cite: text.cite,
    results: text.results.map(({ name, step }) =>
      step.unit === undefined
        ? { name, value: step.value, step: step.id }
        : { name, value: step.value, unit: step.unit, step: step.id },
    ),
    steps: worksheet.steps,
    missing: [],
    refusal: null,
    advice: text.advice ?? [],
    assumptions: assumptionsIn([worksheet.steps]),
    caveats: unconfirmedIn([worksheet.steps]),
    caution: CAUTION,
  };
}

/** Closes a worksheet at a fact that is not known. */
export function lacking(
  calculation: string,
  basis: Basis,
  worksheet: Worksheet,
  path: string,
  because: string,
  cite: Citation,
): CalculationFinding {
  worksheet.missing(path.slice(path.lastIndexOf("/") + 1), path, because);
  return {
    calculation,
    basis,
    rulesVersion: RULES_VERSION,
    outcome: "missing",
    sentence: because,
    cite,
    results: [],
    steps: worksheet.steps,
    missing: [{ path, because }],
    refusal: null,
    advice: [],
    assumptions: assumptionsIn([worksheet.steps]),
    caveats: unconfirmedIn([worksheet.steps]),
    caution: CAUTION,
  };
}

/** Closes a worksheet that cannot be answered from the published tables. */
export function refused(
  calculation: string,
  basis: Basis,
  worksheet: Worksheet,
  code: RefusalCode,
  detail: string,
  cite: Citation,
): CalculationFinding {
  worksheet.conclude("not answered", code, [], detail, cite);
  return {
    calculation,
    basis,
    rulesVersion: RULES_VERSION,
    outcome: "refused",
    sentence: detail,
    cite,
    results: [],
    steps: worksheet.steps,
    missing: [],
    refusal: { code, detail },
    advice: [],
    assumptions: assumptionsIn([worksheet.steps]),
    caveats: unconfirmedIn([worksheet.steps]),
    caution: CAUTION,
  };
}
