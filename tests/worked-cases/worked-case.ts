/**
 * A worked case: one question of the trade whose answer is known before the library is asked.
 *
 * Kinds: "published" has its answer from a publication, "hand" from the working beside it, "regression" from the library
 * itself on the day it was written down. A published answer that the clause does not bear out stands in `printed`, what
 * the clause gives in `expected`, and the reason in `note`; such a case is counted apart.
 */
import type { Basis, CalculationName, CalculationQuestions, RefusalCode, StepValue } from "@landfast/rules";

export type CaseEdition = Basis["edition"];
export const CASE_EDITIONS: readonly CaseEdition[] = ["2017", "2020", "2023"];

/** "read": its figures were before the writer's eyes. "from memory": they, or the reference, were not. */
export interface Source {
  readonly publication: string;
  /** Table and row, example, page or date. */
  readonly at: string;
  readonly seen: "read" | "from memory";
}

export type Expected =
  | {
      /** Name of the result; absent: the main one. */
      readonly result?: string;
      readonly value: StepValue;
      readonly unit?: string;
      /** How far a number may be off, in its own unit, because the publication rounds. Absent: not at all. */
      readonly within?: number;
    }
  | { readonly refused: RefusalCode }
  | { readonly missing: string };

interface CaseCore<Name extends CalculationName> {
  /** Unique among all cases: "ampacity/600-kcmil-in-three-sets". */
  readonly id: string;
  readonly question: string;
  /** Absent: every edition. */
  readonly editions?: readonly CaseEdition[];
  readonly asked: CalculationQuestions[Name];
  readonly expected: readonly Expected[];
  readonly note?: string;
}

export interface PublishedCase<Name extends CalculationName> extends CaseCore<Name> {
  readonly kind: "published";
  /** "example": worked in words. "table": a cell, read through the calculation. */
  readonly form: "example" | "table";
  readonly source: Source;
  /** What the publication says, where the clause says otherwise. `note` then tells why. */
  readonly printed?: string;
}

export interface HandCase<Name extends CalculationName> extends CaseCore<Name> {
  readonly kind: "hand";
  readonly working: string;
}

export interface RegressionCase<Name extends CalculationName> extends CaseCore<Name> {
  readonly kind: "regression";
  readonly because: string;
}

export type WorkedCase<Name extends CalculationName> = PublishedCase<Name> | HandCase<Name> | RegressionCase<Name>;
