/**
 * The worksheet of one calculation: it knows which question it answers, takes posted numbers only when they are
 * usable, and can be closed from anywhere in the work.
 */
import {
  type AnswerText,
  answered,
  type CalculationFinding,
  lacking,
  type RefusalCode,
  refused,
} from "./calculation.js";
import type { Citation } from "./citation.js";
import { divide, exactOf, multiply, subtract } from "./exact.js";
import type { Step, StepValue } from "./finding.js";
import type { Basis } from "./joint.js";
import type { Area, Length, Temperature } from "./quantity.js";
import { cellAt, isRefused, type Table, type TableRefusal } from "./table.js";
import { convertedArea, convertedLength } from "./unit-conversion.js";
import { UnusableFact } from "./unusable-fact.js";
import { Worksheet } from "./worksheet.js";

export class CalculationSheet extends Worksheet {
  readonly #calculation: string;
  readonly #basis: Basis;

  constructor(calculation: string, basis: Basis) {
    super();
    this.#calculation = calculation;
    this.#basis = basis;
  }

  /** A posted number above zero. @throws UnusableFact otherwise. */
  positive(label: string, value: number, path: string, unit: string): Step {
    if (!(value > 0 && value < Number.POSITIVE_INFINITY))
      throw new UnusableFact(path, `must be a number above zero, not ${String(value)}`, "a number above zero");
    return this.given(label, value, path, unit);
  }

  /** A posted number of things, one or more. @throws UnusableFact otherwise. */
  count(label: string, value: number, path: string, unit: string): Step {
    if (!(Number.isSafeInteger(value) && value > 0))
      throw new UnusableFact(
        path,
        `must be a whole number from 1 on, not ${String(value)}`,
        "a whole number from 1 on",
      );
    return this.given(label, value, path, unit);
  }

  /** A posted length above zero, in the unit the work needs; converted exactly where it came in another. */
  length(label: string, length: Length, path: string, unit: "in" | "ft"): Step {
    const posted = this.positive(label, length.value, path, length.unit);
    if (length.unit === unit) return posted;
    const { value, arithmetic } = convertedLength(length, unit);
    return this.exactly(
      `${label} in ${unit}`,
      value,
      unit,
      [posted],
      `${label} in ${length.unit}, converted`,
      arithmetic,
    );
  }

  /** A posted area above zero, in square inches; converted exactly where it came in another unit. */
  area(label: string, area: Area, path: string): Step {
    const posted = this.positive(label, area.value, path, area.unit);
    if (area.unit === "in2") return posted;
    const { value, arithmetic } = convertedArea(area, "in2");
    return this.exactly(`${label} in in2`, value, "in2", [posted], `${label} in ${area.unit}, converted`, arithmetic);
  }

  /** A posted temperature in degrees Celsius. @throws UnusableFact for one below absolute zero or not a number. */
  temperature(label: string, temperature: Temperature, path: string): Step {
    const { value, unit } = temperature;
    if (!(value >= (unit === "Cel" ? -273.15 : -459.67) && value < Number.POSITIVE_INFINITY))
      throw new UnusableFact(
        path,
        `must be a temperature, not ${String(value)} ${unit}`,
        "a temperature above absolute zero",
      );
    const posted = this.given(label, value, path, unit);
    if (unit === "Cel") return posted;
    return this.exactly(
      `${label} in Cel`,
      divide(multiply(subtract(exactOf(value), exactOf(32)), exactOf(5)), exactOf(9)),
      "Cel",
      [posted],
      `(${label} in degF - 32) x 5 / 9`,
      `(${String(value)} - 32) x 5 / 9`,
    );
  }

  /** Reads the cell at a size or term; closes the calculation where the table has none. */
  readAt(label: string, table: Table, key: string, column: string, uses: readonly Step[]): Step | CalculationFinding {
    const cell = cellAt(table, key, column);
    return isRefused(cell) ? this.outsideTable(cell, table.cite) : this.read(label, cell, uses);
  }

  /** Reads the cell if the table prints one. For going through a table's rows in search of the first that serves. */
  readIfPrinted(label: string, table: Table, key: string, column: string, uses: readonly Step[]): Step | undefined {
    const cell = cellAt(table, key, column);
    return isRefused(cell) ? undefined : this.read(label, cell, uses);
  }

  outsideTable(refusal: TableRefusal, cite: Citation): CalculationFinding {
    return this.refuse("OUTSIDE_TABLE", `${refusal.detail}.`, cite);
  }

  /** Closes the work with its main result, which must be the last step. */
  finish(text: AnswerText): CalculationFinding {
    return answered(this.#calculation, this.#basis, this, text);
  }

  /** Closes the work at a fact that is not known. */
  ask(path: string, because: string, cite: Citation): CalculationFinding {
    return lacking(this.#calculation, this.#basis, this, path, because, cite);
  }

  /** Closes the work where nothing published answers it. */
  refuse(code: RefusalCode, detail: string, cite: Citation): CalculationFinding {
    return refused(this.#calculation, this.#basis, this, code, detail, cite);
  }
}

/** True when the work was closed instead of reaching the step it was asked for. */
export function isClosed(reached: object): reached is CalculationFinding {
  return "calculation" in reached;
}

/** A number for a sentence: rounded to so many places, without trailing zeros, and never rounded off to zero. */
export function shown(value: StepValue, places = 3): string {
  if (typeof value !== "number") return String(value);
  const scale = 10 ** places;
  const rounded = Math.round(value * scale) / scale;
  return String(rounded === 0 ? Number(value.toPrecision(2)) : rounded);
}
