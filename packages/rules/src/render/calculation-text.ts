/** A calculation's answer as plain text, 100 columns at most, to be followed step by step with the book open. */
import type { CalculationFinding, NamedResult } from "../core/calculation.js";
import { citationText } from "../core/citation.js";
import { joined, section, wrapped } from "./layout.js";
import { STANDARD_TEXT, stepLines, valueText } from "./step-text.js";

/** Digits of a result; the steps show every number in full. */
const DIGITS = 5;

/** The answer in one sentence, the results, then every step with its clause or table cell. Lines end in "\n". */
export function calculationFindingText(finding: CalculationFinding): string {
  const { calculation, outcome, sentence, basis, rulesVersion, cite } = finding;
  const installed = basis.installedOn === undefined ? "" : `, installed on ${basis.installedOn}`;
  return joined([
    ...wrapped("", `${calculation}: ${OUTCOME_TEXT[outcome]}. ${sentence}`, "  "),
    ...wrapped("", `Clause: ${citationText(cite)}`, "  "),
    ...wrapped("", `Basis: ${STANDARD_TEXT[basis.ruleSet]}-${basis.edition}${installed}; rules ${rulesVersion}`, "  "),
    ...section("Results", finding.results.map(resultText)),
    ...section(
      "Missing",
      finding.missing.map(({ path, because }) => `${path}: ${because}`),
    ),
    "",
    "Steps",
    ...stepLines(finding.steps, "  "),
    ...section("Advice", finding.advice),
    ...section(
      "Taken from the code where the part bears no mark",
      finding.assumptions.map(
        ({ label, value, because, cite: from }) => `${label}: ${value}, ${because} (${citationText(from)})`,
      ),
    ),
    ...section("Caveats", finding.caveats),
    "",
    ...wrapped("", finding.caution, ""),
  ]);
}

const OUTCOME_TEXT: Readonly<Record<CalculationFinding["outcome"], string>> = {
  answered: "ANSWERED",
  missing: "NOT KNOWN",
  refused: "NOT ANSWERED",
};

/** "voltage drop: 4.1569 V (step 9)". */
function resultText({ name, value, unit, step }: NamedResult): string {
  const rounded = typeof value === "number" ? Number(value.toPrecision(DIGITS)) : value;
  const text = valueText(unit === undefined ? { value: rounded } : { value: rounded, unit });
  return `${name}: ${text} (step ${String(step)})`;
}
