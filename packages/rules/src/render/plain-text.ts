/** A finding as plain text, 100 columns at most, to be followed step by step with the book open. */
import { citationText } from "../core/citation.js";
import type { CheckFinding, Duty, SourceLevel } from "../core/finding.js";
import type { JointFinding, Verdict } from "../topics/joint/joint-finding.js";
import { joined, section, wrapped } from "./layout.js";
import { STANDARD_TEXT, stepLines } from "./step-text.js";

/** One rule's answer: what it says, by which clause, and its steps numbered as they were worked. Lines end in "\n". */
export function checkFindingText(finding: CheckFinding): string {
  return joined(checkFindingLines(finding, ""));
}

/** The whole answer about a joint: verdict first, then how it is made, then every finding with its steps. */
export function jointFindingText(finding: JointFinding): string {
  return joined([
    ...headLines(finding),
    ...section(
      "Missing",
      finding.missing.map(({ path, because }) => `${path}: ${because}`),
    ),
    ...section("Conditions", finding.conditions.map(dutyText)),
    ...section("Openings", finding.openings.map(openingText)),
    ...torqueLines(finding),
    ...section("Preparation", preparationTexts(finding)),
    ...section("Duties on site", finding.dutiesOnSite.map(dutyText)),
    ...section(
      "Taken from the code where the part bears no mark",
      finding.assumptions.map(
        ({ label, value, because, cite }) => `${label}: ${value}, ${because} (${citationText(cite)})`,
      ),
    ),
    ...findingLines(finding),
    ...section(
      "Rules with nothing to say",
      finding.notApplicable.map(({ rule, because }) => `${rule}: ${because}`),
    ),
    ...section("Caveats", finding.caveats),
    ...section("Advice", finding.advice),
    "",
    ...wrapped("", finding.caution, ""),
  ]);
}

const VERDICT_TEXT: Readonly<Record<Verdict, string>> = {
  accept: "ACCEPT",
  "accept-with-conditions": "ACCEPT WITH CONDITIONS",
  reject: "REJECT",
  "needs-information": "NEEDS INFORMATION",
};

const OUTCOME_TEXT: Readonly<Record<CheckFinding["outcome"], string>> = {
  pass: "pass",
  fail: "FAIL",
  missing: "NOT KNOWN",
};

const LEVEL_TEXT: Readonly<Record<SourceLevel, string>> = {
  "equipment-marking": "marking or instructions of the equipment",
  "connector-marking": "marking or instructions of the connector",
  "project-rule": "project rule",
  "local-amendment": "local amendment",
  "code-table": "default table of the code",
  "trade-practice": "trade practice",
};

const ORIGIN_TEXT: Readonly<Record<JointFinding["connector"]["origin"], string>> = {
  catalogue: "from the catalogue",
  request: "as described in the request",
  equipment: "the equipment's own terminal",
};

function headLines({ verdict, basis, connector, deciding, rulesVersion }: JointFinding): string[] {
  const installed = basis.installedOn === undefined ? "" : `, installed on ${basis.installedOn}`;
  const part = connector.partNumber === null ? "" : `${connector.partNumber}, `;
  return [
    ...wrapped("", `Verdict: ${VERDICT_TEXT[verdict]}`, "  "),
    ...wrapped("", `Decided by ${deciding.rule}: ${deciding.sentence} (${citationText(deciding.cite)})`, "  "),
    ...wrapped("", `Connector: ${part}${connector.description}, ${ORIGIN_TEXT[connector.origin]}`, "  "),
    ...wrapped("", `Basis: ${STANDARD_TEXT[basis.ruleSet]}-${basis.edition}${installed}; rules ${rulesVersion}`, "  "),
  ];
}

function findingLines({ findings }: JointFinding): string[] {
  return findings.length === 0
    ? []
    : ["", "Findings", ...findings.flatMap((finding) => checkFindingLines(finding, "  "))];
}

function checkFindingLines(finding: CheckFinding, indent: string): string[] {
  const inner = `${indent}  `;
  return [
    ...wrapped(indent, `${finding.rule}: ${OUTCOME_TEXT[finding.outcome]}. ${finding.sentence}`, inner),
    ...wrapped(inner, `Clause: ${citationText(finding.cite)}`, `${inner}  `),
    ...wrapped(inner, `Required: ${finding.required}`, `${inner}  `),
    ...wrapped(inner, `Offered: ${finding.offered}`, `${inner}  `),
    ...stepLines(finding.steps, inner),
    ...finding.conditions.flatMap((duty) => wrapped(inner, `Condition: ${dutyText(duty)}`, `${inner}  `)),
    ...finding.missing.flatMap(({ path, because }) => wrapped(inner, `Needed: ${path}: ${because}`, `${inner}  `)),
    ...finding.advice.flatMap((advice) => wrapped(inner, `Advice: ${advice}`, `${inner}  `)),
    ...(finding.fix === "" ? [] : wrapped(inner, `Put right by: ${finding.fix}`, `${inner}  `)),
  ];
}

function torqueLines({ torque }: JointFinding): string[] {
  if (torque.length === 0) return [];
  const lines = ["", "Torque"];
  torque.forEach((answer, index) => {
    const level = answer.level === null ? "" : `; ${LEVEL_TEXT[answer.level]}`;
    const text = `${answer.at}: ${answer.sentence} Drive: ${answer.drive}${level} (${citationText(answer.cite)})`;
    lines.push(...wrapped("  ", `${String(index + 1)}. ${text}`, "     "), ...stepLines(answer.steps, "     "));
  });
  return lines;
}

function preparationTexts({ preparation, stripLengths, tooling }: JointFinding): string[] {
  const texts = stripLengths.map(({ opening, length }) =>
    length === null
      ? `strip for opening ${opening}: see the connector's instructions`
      : `strip for opening ${opening}: ${String(length.value)} ${length.unit}`,
  );
  if (preparation !== null) {
    const { brush, compound } = preparation;
    texts.push(
      `wire brush: ${brush.needed ? "needed" : "not needed"}, ${brush.because} (${citationText(brush.cite)})`,
      `compound: ${compound.need}, ${compound.because} (${citationText(compound.cite)})`,
    );
  }
  if (tooling !== null) {
    const die = tooling.die === undefined ? "" : `, die ${tooling.die}`;
    const crimps = tooling.crimps === undefined ? "" : `, ${String(tooling.crimps)} crimps`;
    texts.push(`tool ${tooling.tool}${die}${crimps}`);
  }
  return texts;
}

function openingText({ opening, instance, conductors }: JointFinding["openings"][number]): string {
  const landed = conductors.map(
    ({ count, size, metal, stranding }) => `${String(count)} x ${size} ${metal}, ${stranding}`,
  );
  return `${opening} (${String(instance)}): ${landed.join("; ")}`;
}

function dutyText({ sentence, cite }: Duty): string {
  return `${sentence} (${citationText(cite)})`;
}
