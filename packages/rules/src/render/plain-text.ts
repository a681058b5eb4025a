/** A finding as plain text, 100 columns at most, to be followed step by step with the book open. */
import { citationText } from "../core/citation.js";
import type { CheckFinding, Duty, SourceLevel, Step, StepValue } from "../core/finding.js";
import type { Basis } from "../core/joint.js";
import type { JointFinding, Verdict } from "../topics/joint/joint-finding.js";

const COLUMNS = 100;

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

/** "system voltage: 480 V (given at joint/circuit/voltageV)": one step, its value and where it comes from. */
function stepText(step: Step, steps: readonly Step[]): string {
  switch (step.kind) {
    case "given":
      return `${step.label}: ${valueText(step)} (given at ${step.origin})`;
    case "assumed":
      return `${step.label}: ${valueText(step)}, because ${step.because} (${citationText(step.cite)})`;
    case "stated":
      return `${step.label}: ${valueText(step)} (${citationText(step.cite)})`;
    case "read":
      return `${step.label}: ${valueText(step)} (row ${step.cell.row}, column ${step.cell.column}, ${citationText(step.cite)}${STATUS_TEXT[step.cell.status]})`;
    case "computed": {
      const cite = step.cite === undefined ? "" : ` (${citationText(step.cite)})`;
      return `${step.label}: ${step.formula} = ${step.substituted} = ${valueText(step)}${cite}`;
    }
    case "compared": {
      const [left, right] = [steps[step.left - 1], steps[step.right - 1]];
      const values = `${left === undefined ? "?" : valueText(left)} ${step.relation} ${right === undefined ? "?" : valueText(right)}`;
      return `${step.label}: ${values} ${step.value === true ? "holds" : "does not hold"} (${citationText(step.cite)})`;
    }
    case "missing":
      return `${step.label}: not known; asked for at ${step.path}`;
    case "concluded": {
      const cite = step.cite === undefined ? "" : ` (${citationText(step.cite)})`;
      return `${step.label}: ${valueText(step)}, ${step.because}${fromText(step)}${cite}`;
    }
  }
}

const STATUS_TEXT = {
  published: "",
  unconfirmed: "; no public text has confirmed it yet",
  invented: "; invented",
} as const;

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
  "code-table": "default table of the code",
  "trade-practice": "trade practice",
};

const STANDARD_TEXT: Readonly<Record<Basis["ruleSet"], string>> = { nfpa70: "NFPA 70" };

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

function stepLines(steps: readonly Step[], indent: string): string[] {
  return numbered(
    steps.map((step) => stepText(step, steps)),
    indent,
  );
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

function valueText({ value, unit }: { readonly value: StepValue; readonly unit?: string }): string {
  const text =
    typeof value === "object"
      ? `[${value.join(", ")}]`
      : typeof value === "boolean"
        ? value
          ? "yes"
          : "no"
        : String(value);
  return unit === undefined || unit === "term" || unit === "1" ? text : `${text} ${UNIT_TEXT[unit] ?? unit}`;
}

/** Units as they are written on site; a word read from a table and a bare factor have none. */
const UNIT_TEXT: Readonly<Record<string, string>> = { Cel: "C", degF: "F", in2: "sq in", "ohm/kft": "ohm per 1000 ft" };

function fromText({ uses }: Step): string {
  if (uses.length === 0) return "";
  return ` [from ${uses.length === 1 ? "step" : "steps"} ${uses.join(", ")}]`;
}

function section(title: string, texts: readonly string[]): string[] {
  return texts.length === 0 ? [] : ["", title, ...numbered(texts, "  ")];
}

/** "1. …" with later lines set in under the first word. */
function numbered(texts: readonly string[], indent: string): string[] {
  return texts.flatMap((text, index) => {
    const number = `${String(index + 1)}. `;
    return wrapped(indent, number + text, indent + " ".repeat(number.length));
  });
}

/** Breaks at spaces; a word longer than a line is cut, so that no line is ever too long. */
function wrapped(first: string, text: string, rest: string): string[] {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of text.split(" ")) {
    let left = word;
    if (!empty && line.length + 1 + left.length > COLUMNS) {
      lines.push(line);
      line = rest;
      empty = true;
    }
    while (empty && line.length + left.length > COLUMNS) {
      const room = COLUMNS - line.length;
      lines.push(line + left.slice(0, room));
      left = left.slice(room);
      line = rest;
    }
    line += empty ? left : ` ${left}`;
    empty = false;
  }
  lines.push(line);
  return lines;
}

function joined(lines: readonly string[]): string {
  return `${lines.join("\n")}\n`;
}
