/** The steps of a derivation as numbered lines, to be followed with the book open. */
import { citationText } from "../core/citation.js";
import type { Step, StepValue } from "../core/finding.js";
import type { Basis } from "../core/joint.js";
import { numbered } from "./layout.js";

/** The steps in the order of the work, numbered as they refer to each other. */
export function stepLines(steps: readonly Step[], indent: string): string[] {
  return numbered(
    steps.map((step) => legible(stepText(step, steps))),
    indent,
  );
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

/** "480 V", "yes", "[dry, damp]". */
export function valueText({ value, unit }: { readonly value: StepValue; readonly unit?: string }): string {
  const text =
    typeof value === "object"
      ? value.length === 0
        ? "none"
        : `[${value.join(", ")}]`
      : typeof value === "boolean"
        ? value
          ? "yes"
          : "no"
        : String(value);
  if (unit === undefined || unit === "term" || unit === "1" || unit === "") return text;
  if (value === 1 && COUNTED.has(unit)) return `${text} ${unit.slice(0, -1)}`;
  return `${text} ${UNIT_TEXT[unit] ?? unit}`;
}

/** Things that are counted, of which one is not several. */
const COUNTED: ReadonlySet<string> = new Set([
  "allowances",
  "circuits",
  "conductors",
  "gangs",
  "grounds",
  "kinds",
  "raceways",
  "sets",
  "wires",
]);

/** Units as they are written on site; a word read from a table and a bare factor have none. */
const UNIT_TEXT: Readonly<Record<string, string>> = { Cel: "C", degF: "F", in2: "sq in", "ohm/kft": "ohm per 1000 ft" };

function fromText({ uses }: Step): string {
  if (uses.length === 0) return "";
  return ` [from ${uses.length === 1 ? "step" : "steps"} ${uses.join(", ")}]`;
}

/** A rule set as it is cited. */
export const STANDARD_TEXT: Readonly<Record<Basis["ruleSet"], string>> = { nfpa70: "NFPA 70" };

/** Significant digits of a number that no decimal ends. */
const DIGITS = 6;

/** Numbers of many digits cut to what a person works with: "1.73205…" says that more follow. */
function legible(text: string): string {
  return text
    .replace(/\((\d{10,}) \/ (\d{10,})\)/g, (_, over: string, under: string) => String(Number(over) / Number(under)))
    .replace(/\d+\.\d{7,}(?!\d*e)/g, cut);
}

function cut(number: string): string {
  const [whole = "", fraction = ""] = number.split(".");
  const zeros = whole === "0" ? (/^0*/.exec(fraction)?.[0].length ?? 0) : -whole.length;
  return `${whole}.${fraction.slice(0, Math.max(1, DIGITS + zeros))}…`;
}
