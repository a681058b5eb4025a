/** What a rule is given and what it must say about itself. */
import type { Citation } from "./citation.js";
import type { ConductorGroup } from "./conductor.js";
import type { Connector, Opening, Screw } from "./connector.js";
import type { Edition, EditionClauses } from "./edition.js";
import type { CheckFinding, CheckOutcome, Duty, MissingFact, NotApplicable } from "./finding.js";
import type { Joint } from "./joint.js";
import type { Worksheet } from "./worksheet.js";

/** Conductors of one group that lie in one opening. */
export interface LandedConductors {
  /** Index into joint.conductors. */
  readonly group: number;
  readonly conductor: ConductorGroup;
  readonly count: number;
}

/** One opening in use, with what lies in it. */
export interface Landing {
  /** Index into connector.openings. */
  readonly openingIndex: number;
  readonly opening: Opening;
  /** Which of the equal openings: 1, 2, … */
  readonly instance: number;
  readonly conductors: readonly LandedConductors[];
}

/** The joint together with the connector it is checked with. */
export interface JointSubject {
  readonly joint: Joint;
  readonly connector: Connector;
  /** Where the connector's facts come from: also the head of their paths in steps. */
  readonly origin: "connector" | "joint/equipment/terminal";
  readonly landings: readonly Landing[];
}

/** A rule of the joint: one question, answered from the joint, the connector and the edition. */
export interface Rule {
  /** Stable id, a noun of the trade: "wire-range". */
  readonly id: string;
  readonly title: string;
  /** The clauses it rests on, by what they say; their place depends on the edition. */
  readonly clauses: readonly (keyof EditionClauses)[];
  /** Paths of the facts it needs. */
  readonly needs: readonly string[];
  /** What it cannot see. */
  readonly cannotSee: string;
  readonly check: (subject: JointSubject, edition: Edition) => CheckFinding | NotApplicable;
}

/** No conditions: for a pass that hangs on nothing. */
export const NO_CONDITIONS: readonly Duty[] = Object.freeze([]);
const NO_FACTS: readonly MissingFact[] = Object.freeze([]);
export const NO_ADVICE: readonly string[] = Object.freeze([]);

/** The rule has nothing to say here. */
export function notApplicable(rule: string, because: string): NotApplicable {
  return { rule, outcome: "not-applicable", because };
}

export interface FindingText {
  readonly sentence: string;
  readonly cite: Citation;
  readonly required: string;
  readonly offered: string;
  readonly conditions?: readonly Duty[];
  readonly advice?: readonly string[];
  readonly fix?: string;
}

/** Closes a worksheet whose last step is a comparison or a conclusion of "pass" or "fail". */
export function settled(rule: string, worksheet: Worksheet, text: FindingText): CheckFinding {
  return finding(rule, outcomeOf(worksheet), worksheet, text, NO_FACTS);
}

/** What the findings of one rule have in common. */
export type CommonText = Pick<FindingText, "cite" | "required"> & { readonly offered?: string; readonly fix?: string };

/**
 * The same, from what a rule's findings have in common and what is this one's own; its own comes first.
 * Two arguments, because spreading one object into another costs more than the rule's whole work on the runtime in use.
 */
export function settledFrom(
  rule: string,
  worksheet: Worksheet,
  common: CommonText,
  own: Partial<FindingText> & Pick<FindingText, "sentence">,
): CheckFinding {
  return settled(rule, worksheet, {
    sentence: own.sentence,
    cite: own.cite ?? common.cite,
    required: own.required ?? common.required,
    offered: own.offered ?? common.offered ?? "not known",
    conditions: own.conditions ?? NO_CONDITIONS,
    advice: own.advice ?? NO_ADVICE,
    fix: own.fix ?? common.fix ?? "",
  });
}

/** Closes a worksheet at a fact that is not known: asks for it by name. */
export function asking(
  rule: string,
  worksheet: Worksheet,
  path: string,
  because: string,
  text: Pick<FindingText, "cite" | "required"> & { readonly offered?: string },
): CheckFinding {
  worksheet.missing(path.slice(path.lastIndexOf("/") + 1), path, because);
  return finding(
    rule,
    "missing",
    worksheet,
    { sentence: because, cite: text.cite, required: text.required, offered: text.offered ?? "not known" },
    [{ path, because }],
  );
}

/** The screw that tightens an opening, if it has one. */
export function screwOf(connector: Connector, opening: Opening): Screw | undefined {
  return connector.screws.find((screw) => screw.id === opening.screw);
}

function finding(
  rule: string,
  outcome: CheckOutcome,
  worksheet: Worksheet,
  text: FindingText,
  missing: readonly MissingFact[],
): CheckFinding {
  return {
    rule,
    outcome,
    sentence: text.sentence,
    cite: text.cite,
    required: text.required,
    offered: text.offered,
    steps: worksheet.steps,
    conditions: outcome === "pass" ? (text.conditions ?? NO_CONDITIONS) : NO_CONDITIONS,
    missing,
    advice: text.advice ?? NO_ADVICE,
    fix: outcome === "fail" ? (text.fix ?? "") : "",
  };
}

/** The outcome is read off the last step, so that a finding cannot say other than its own work. */
function outcomeOf(worksheet: Worksheet): CheckOutcome {
  const last = worksheet.last;
  if (last.kind === "compared") return last.value ? "pass" : "fail";
  if (last.kind === "concluded" && (last.value === "pass" || last.value === "fail")) return last.value;
  throw new Error(`the last step of a finding must be a comparison or a conclusion, not "${last.label}"`);
}
