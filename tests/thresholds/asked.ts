/** The library asked, and its answer in a word. */
import {
  type Basis,
  type CalculationFinding,
  type CalculationName,
  type CalculationQuestions,
  type Connector,
  calculate,
  checkJoint,
  type Joint,
  type JointFinding,
} from "@landfast/rules";
import type { EditionName } from "./threshold.js";

export function basisOf(edition: EditionName, installedOn?: string): Basis {
  return { ruleSet: "nfpa70", edition, ...(installedOn === undefined ? {} : { installedOn }) };
}

export function found<Name extends CalculationName>(
  name: Name,
  question: CalculationQuestions[Name],
  edition: EditionName,
): CalculationFinding {
  return calculate(name, question, basisOf(edition));
}

/** A result by its name, the main one without; "asks question/…" or "refused OUTSIDE_TABLE" where there is none. */
export function answer<Name extends CalculationName>(
  name: Name,
  question: CalculationQuestions[Name],
  edition: EditionName,
  result?: string,
): string {
  const { outcome, results, missing, refusal } = found(name, question, edition);
  if (outcome === "missing") return `asks ${missing[0]?.path ?? ""}`;
  if (outcome === "refused") return `refused ${refusal?.code ?? ""}`;
  const one = result === undefined ? results[0] : results.find((each) => each.name === result);
  if (one === undefined) throw new Error(`${name} has no result ${result ?? ""}`);
  return typeof one.value === "number" ? String(Number(one.value.toFixed(4))) : String(one.value);
}

/** Whether the answer advises of something. */
export function advice<Name extends CalculationName>(
  name: Name,
  question: CalculationQuestions[Name],
  edition: EditionName,
  about: RegExp,
): "advised" | "silent" {
  return found(name, question, edition).advice.some((line) => about.test(line)) ? "advised" : "silent";
}

/** The column or row of a cell that the answer reads, by the label of the step. */
export function cellRead<Name extends CalculationName>(
  name: Name,
  question: CalculationQuestions[Name],
  edition: EditionName,
  table: string,
): { readonly row: string; readonly column: string; readonly printed: string } {
  for (const step of found(name, question, edition).steps)
    if (step.kind === "read" && step.cell.table.endsWith(`/${table}`)) return step.cell;
  return { row: "none", column: "none", printed: "none" };
}

/** "unusable" where the library throws at the question, as at a size that cannot be read. */
export function usable(ask: () => unknown): "usable" | "unusable" {
  try {
    ask();
    return "usable";
  } catch {
    return "unusable";
  }
}

export function checked(joint: Joint, connector: Connector, edition: EditionName, installedOn?: string): JointFinding {
  const origin = connector.mounting.kind === "integral" ? "equipment" : "request";
  return checkJoint({ joint, connector, basis: basisOf(edition, installedOn), origin });
}

/** What one rule says of the joint: "pass", "fail", "missing", or "not-applicable". */
export function ruled(
  rule: string,
  joint: Joint,
  connector: Connector,
  edition: EditionName,
  installedOn?: string,
): string {
  const { findings, notApplicable } = checked(joint, connector, edition, installedOn);
  const of = findings.find((one) => one.rule === rule);
  if (of !== undefined) return of.outcome;
  if (notApplicable.some((one) => one.rule === rule)) return "not-applicable";
  throw new Error(`no rule ${rule}`);
}
