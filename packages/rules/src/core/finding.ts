/**
 * What a rule answers: plain data that survives JSON, with every step of its derivation.
 */
import type { Citation } from "./citation.js";
import type { CellRef } from "./table.js";

/** A number with its unit beside it, a word, a truth or a list of words. */
export type StepValue = number | string | boolean | readonly string[];

interface StepBase {
  /** 1, 2, 3 … in the order of the work; unique within one finding. */
  readonly id: number;
  /** What this is, in trade words. */
  readonly label: string;
  readonly value: StepValue;
  readonly unit?: string;
  /** The earlier steps that this one rests on. */
  readonly uses: readonly number[];
}

/** A fact as it was posted or as the catalogue holds it. `origin` is its path: "joint/conductors/0/size". */
export interface GivenStep extends StepBase {
  readonly kind: "given";
  readonly origin: string;
}

/** A value that a code or standard itself supplies for an unmarked part. */
export interface AssumedStep extends StepBase {
  readonly kind: "assumed";
  readonly because: string;
  readonly cite: Citation;
}

/** One cell of a published table, or a number that stands in a clause's text. */
export interface ReadStep extends StepBase {
  readonly kind: "read";
  readonly cell: CellRef;
  readonly cite: Citation;
}

/** A number that stands in the text of a clause, not in a table: 80 A, 10 ft, 125 %. */
export interface StatedStep extends StepBase {
  readonly kind: "stated";
  readonly cite: Citation;
}

/** Arithmetic: `formula` in words, `substituted` with the numbers put in; it evaluates to `value`. */
export interface ComputedStep extends StepBase {
  readonly kind: "computed";
  readonly formula: string;
  readonly substituted: string;
  readonly cite?: Citation;
}

export type Relation = "<=" | "<" | ">=" | ">" | "=" | "in";

/** A comparison of two earlier steps; `value` is whether it holds. */
export interface ComparedStep extends StepBase {
  readonly kind: "compared";
  readonly left: number;
  readonly relation: Relation;
  readonly right: number;
  readonly cite: Citation;
}

/** A fact that is not known: the finding stops here. */
export interface MissingStep extends StepBase {
  readonly kind: "missing";
  /** Where the fact would be given: "joint/equipment/terminalTemperature". */
  readonly path: string;
  readonly because: string;
}

/** What follows from the steps named, where that is more than one comparison: "pass", "fail" or an answer. */
export interface ConcludedStep extends StepBase {
  readonly kind: "concluded";
  readonly because: string;
  readonly cite?: Citation;
}

export type Step =
  | GivenStep
  | AssumedStep
  | ReadStep
  | StatedStep
  | ComputedStep
  | ComparedStep
  | MissingStep
  | ConcludedStep;

/** Where a value comes from; earlier wins. A project rule may only forbid. */
export type SourceLevel =
  | "equipment-marking"
  | "connector-marking"
  | "project-rule"
  | "local-amendment"
  | "code-table"
  | "trade-practice";

/** A fact the answer needs and does not have. */
export interface MissingFact {
  readonly path: string;
  /** Why it decides, in one plain sentence. */
  readonly because: string;
}

/** Something that must be done or seen on site. */
export interface Duty {
  /** Stable key: "brush-aluminum", "record-die". */
  readonly duty: string;
  readonly sentence: string;
  readonly cite: Citation;
}

/** pass: the rule is met. fail: it is not. missing: a fact that decides is not known. */
export type CheckOutcome = "pass" | "fail" | "missing";

/** One rule's answer about one joint with one connector. */
export interface CheckFinding {
  /** The rule's stable id: "wire-range". */
  readonly rule: string;
  readonly outcome: CheckOutcome;
  /** One plain sentence. */
  readonly sentence: string;
  /** The clause that decides. */
  readonly cite: Citation;
  /** What is asked for and what is there, as a person would write them. */
  readonly required: string;
  readonly offered: string;
  /** Never empty; the last step is the outcome. */
  readonly steps: readonly Step[];
  /** What the acceptance hangs on at this very joint. Only on a pass. */
  readonly conditions: readonly Duty[];
  /** Only when missing. */
  readonly missing: readonly MissingFact[];
  /** Advice that changes no verdict. */
  readonly advice: readonly string[];
  /** What would put a failure right; empty otherwise. */
  readonly fix: string;
}

/** A rule that has nothing to say here, and why. */
export interface NotApplicable {
  readonly rule: string;
  readonly outcome: "not-applicable";
  readonly because: string;
}
