/** A finding as lines that leave nothing out: what the plain text shows, and what each step rests on. */
import type { CalculationFinding, CheckFinding, Citation, Duty, MissingFact, Step, StepValue } from "@landfast/rules";

/** What a rule or calculation says of itself. */
export function descriptionLines(of: {
  readonly title: string;
  readonly clauses: readonly string[];
  readonly needs: readonly string[];
  readonly cannotSee: string;
}): readonly string[] {
  return [
    of.title,
    `  clauses: ${of.clauses.join(", ")}`,
    ...of.needs.map((path) => `  needs ${path}`),
    `  cannot see ${of.cannotSee}`,
    "",
    "",
  ];
}

export function ruleLines(finding: CheckFinding): readonly string[] {
  return [
    `${finding.outcome.toUpperCase()}: ${finding.sentence}`,
    `  by ${citeText(finding.cite)}`,
    `  required: ${finding.required}`,
    `  offered: ${finding.offered}`,
    ...(finding.fix === "" ? [] : [`  fix: ${finding.fix}`]),
    ...finding.missing.map(missingLine),
    ...finding.conditions.map((duty) => dutyLine("condition", duty)),
    ...finding.advice.map((advice) => `  advice: ${advice}`),
    ...finding.steps.map(stepLine),
  ];
}

export function calculationLines(finding: CalculationFinding): readonly string[] {
  return [
    `${finding.outcome.toUpperCase()}: ${finding.sentence}`,
    `  by ${citeText(finding.cite)}`,
    ...finding.results.map(
      ({ name, value, unit, step }) =>
        `  ${name}: ${valueText(value)}${unit === undefined ? "" : ` ${unit}`} (${step})`,
    ),
    ...finding.missing.map(missingLine),
    ...(finding.refusal === null ? [] : [`  ${finding.refusal.code}: ${finding.refusal.detail}`]),
    ...finding.advice.map((advice) => `  advice: ${advice}`),
    ...finding.steps.map(stepLine),
  ];
}

/** "  4 compared  not above the largest size: 1 <= 3 = true <1 3>  NFPA 70-2023 110.3(B)" */
function stepLine(step: Step): string {
  const { id, kind, label, value, unit, uses } = step;
  const worth = `${label}: ${valueText(value)}${unit === undefined || unit === "" ? "" : ` ${unit}`}`;
  const rests = uses.length === 0 ? "" : ` <${uses.join(" ")}>`;
  return `${String(id).padStart(4)} ${kind.padEnd(9)} ${worth}${rests}${restOf(step)}`;
}

function restOf(step: Step): string {
  switch (step.kind) {
    case "given":
      return `  ${step.origin}`;
    case "assumed":
      return `  because ${step.because}  ${citeText(step.cite)}`;
    case "stated":
      return `  ${citeText(step.cite)}`;
    case "read": {
      const { table, row, column, printed, status } = step.cell;
      return `  ${table} [${row}, ${column}] "${printed}" ${status}  ${citeText(step.cite)}`;
    }
    case "computed":
      return `  ${step.formula} = ${step.substituted}${step.cite === undefined ? "" : `  ${citeText(step.cite)}`}`;
    case "compared":
      return `  ${step.left} ${step.relation} ${step.right}  ${citeText(step.cite)}`;
    case "missing":
      return `  ${step.path}: ${step.because}`;
    case "concluded":
      return `  ${step.because}${step.cite === undefined ? "" : `  ${citeText(step.cite)}`}`;
  }
}

function missingLine({ path, because }: MissingFact): string {
  return `  missing ${path}: ${because}`;
}

function dutyLine(kind: string, { duty, sentence, cite }: Duty): string {
  return `  ${kind} ${duty}: ${sentence}  ${citeText(cite)}`;
}

function citeText({ standard, edition, locator }: Citation): string {
  return `${standard}-${edition} ${locator}`;
}

function valueText(value: StepValue): string {
  return Array.isArray(value) ? `[${value.join(", ")}]` : String(value);
}

/**
 * The way taken through a rule or calculation: its outcome, and which kinds of step it took, whatever the sizes. Two
 * findings of one way differ in their numbers only.
 */
export function wayOf({
  outcome,
  steps,
  because,
}: {
  outcome: string;
  steps: readonly Step[];
  because?: string;
}): string {
  const taken = steps.map((step) => {
    const told = step.kind === "compared" ? String(step.value) : step.kind === "concluded" ? valueText(step.value) : "";
    return `${step.kind} ${step.label} ${told}`.replaceAll(/\d[\d./-]*( (AWG|kcmil|mm2|A|in|V))?/g, "#");
  });
  return [outcome, because ?? "", ...new Set(taken)].join("|");
}
