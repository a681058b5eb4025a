import type { Reading } from "./cell.js";
import { COLUMN_UNITS, type ColumnUnit } from "./column.js";

/** Kinds of quantity that a cell can hold beside conductor sizes. */
export type QuantityKind = Exclude<keyof typeof COLUMN_UNITS, "size">;

export interface Quantity {
  readonly value: number;
  readonly unit: string;
}

/** How our own files write each unit: a cell in this spelling needs no remark. */
const OWN_SPELLING: Readonly<Record<QuantityKind, Readonly<Record<string, string>>>> = {
  torque: { "lbf-in": "lbf-in", "lbf-ft": "lbf-ft", "N-m": "N-m" },
  length: { in: "in", ft: "ft", mm: "mm", m: "m" },
  temperature: { Cel: "C", degF: "F" },
  voltage: { V: "V", kV: "kV" },
};

/** Spellings met in files, without blanks, dots, hyphens and raised dots, in lower case. */
const SPELLINGS: Readonly<Record<QuantityKind, Readonly<Record<string, string>>>> = {
  torque: {
    ...spelled("lbf-in", ["inlb", "inlbs", "lbin", "lbsin", "inlbf", "lbfin"]),
    ...spelled("lbf-ft", ["ftlb", "ftlbs", "lbft", "lbsft", "ftlbf", "lbfft"]),
    ...spelled("N-m", ["nm"]),
  },
  length: {
    ...spelled("in", ["in", "inch", "inches", '"', "″"]),
    ...spelled("ft", ["ft", "feet", "foot"]),
    ...spelled("mm", ["mm"]),
    ...spelled("m", ["m"]),
  },
  temperature: {
    ...spelled("Cel", ["c", "°c", "degc", "cel", "celsius"]),
    ...spelled("degF", ["f", "°f", "degf", "fahrenheit"]),
  },
  voltage: { ...spelled("V", ["v", "volt", "volts"]), ...spelled("kV", ["kv"]) },
};

const EXAMPLES: Readonly<Record<QuantityKind, string>> = {
  torque: 'a torque with its unit: "275 lbf-in", "23 lbf-ft" or "31 N-m"',
  length: 'a length with its unit: "0.5 in", "1-1/4 in" or "12 mm"',
  temperature: 'a temperature with its unit: "75 C" or "167 F"',
  voltage: 'a voltage with its unit: "600 V" or "0.6 kV"',
};

const FORM = /^(\d{1,3}[- ]\d{1,2}\/\d{1,2}|\d{1,3}\/\d{1,2}|\d{1,7}(?:[.,]\d{1,400})?)\s*(\D.*)?$/;

/**
 * Reads a quantity. A number without a unit is asked about unless the column's unit is stated; a quantity is kept in
 * the unit that it is given in and never converted, except kV to V, which is said.
 * Worked: "275 in-lb" is 275 lbf-in; "1-1/4 in" is 1.25 in; "167 F" stays 167 F.
 * @param decimalComma whether the mapping says that a comma marks decimals.
 */
export function readQuantity(
  kind: QuantityKind,
  written: string,
  unit: ColumnUnit | undefined,
  decimalComma: boolean,
): Reading<Quantity> {
  const accepted = EXAMPLES[kind];
  const match = FORM.exec(written);
  if (match === null) return { problem: `${JSON.stringify(written)} is not one quantity`, accepted };
  const [, figure = "", suffix = ""] = match;
  const value = readNumber(figure, decimalComma);
  if (typeof value !== "number") return { problem: value.problem, accepted };
  const given = suffix === "" ? unit : SPELLINGS[kind][suffix.toLowerCase().replace(/[\s.·\-*]/g, "")];
  if (given === undefined)
    return suffix === ""
      ? {
          problem: `"${written}" has no unit: ${COLUMN_UNITS[kind].join(" or ")} cannot be told apart here`,
          accepted: "the unit in the cell, or the column's unit stated in the mapping",
        }
      : { problem: `"${suffix}" is not a unit that is known here`, accepted };
  if (!(value > 0)) return { problem: `"${written}" is not above 0`, accepted };
  return understood(kind, written, value, given, suffix === "" ? unit : undefined);
}

function understood(
  kind: QuantityKind,
  written: string,
  value: number,
  given: string,
  stated: string | undefined,
): Reading<Quantity> {
  const quantity = given === "kV" ? { value: Number(`${String(value)}e3`), unit: "V" } : { value, unit: given };
  const own = quantityText(kind, quantity);
  if (own === written) return { value: quantity };
  const because =
    stated !== undefined
      ? `the mapping states ${stated} for this column`
      : given === "kV"
        ? "1 kV is 1000 V"
        : "the usual spelling of the number and its unit";
  return { value: quantity, readAs: own, because };
}

/** A quantity as a cell of our own files has it: "275 lbf-in", "75 C". */
export function quantityText(kind: QuantityKind, { value, unit }: Quantity): string {
  return `${numberText(value)} ${OWN_SPELLING[kind][unit] ?? unit}`;
}

/** A number in plain decimals, which reads back as the very same number. */
export function numberText(value: number): string {
  const text = String(value);
  const match = /^(-?)(\d)(?:\.(\d+))?e([+-]\d+)$/.exec(text);
  if (match === null) return text;
  const [, sign = "", whole = "", fraction = "", exponent = "0"] = match;
  const digits = whole + fraction;
  const point = 1 + Number(exponent);
  if (point <= 0) return `${sign}0.${"0".repeat(-point)}${digits}`;
  return `${sign}${digits.padEnd(point, "0")}`;
}

function readNumber(figure: string, decimalComma: boolean): number | { readonly problem: string } {
  const fraction = /^(?:(\d+)[- ])?(\d+)\/(\d+)$/.exec(figure);
  if (fraction !== null) {
    const [, whole = "0", above = "", below = ""] = fraction;
    // These divide exactly in binary; thirds do not, and no rule or drill is marked in them.
    if (![2, 4, 8, 16, 32, 64].includes(Number(below)))
      return { problem: `"${figure}" is not a fraction in halves, quarters, … 64ths` };
    return Number(whole) + Number(above) / Number(below);
  }
  if (figure.includes(",") && !decimalComma)
    return { problem: `whether the comma in "${figure}" marks decimals or thousands cannot be known` };
  return Number(figure.replace(",", "."));
}

function spelled(unit: string, ways: readonly string[]): Readonly<Record<string, string>> {
  return Object.fromEntries(ways.map((way) => [way, unit]));
}
