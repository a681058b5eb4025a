import { type Exact, numberOf } from "@landfast/rules";
import { ZERO } from "../money/decimal.js";
import type { Model, ModelColumn, ModelRow } from "../solver/solver.js";
import { smallestStep } from "./cost-step.js";

/** A column as it is asked for; its cost is exact until the model is handed over. */
export interface WrittenColumn {
  readonly cost?: Exact;
  readonly lower?: number;
  readonly upper: number;
  readonly integer: boolean;
  /** Its value in the plan to begin with. */
  readonly start?: number;
}

/** Columns and coefficients of one row. */
export type Terms = readonly (readonly [column: number, coefficient: number])[];

/** Writes a model column by column and row by row. */
export class ModelWriter {
  readonly #columns: ModelColumn[] = [];
  readonly #rows: ModelRow[] = [];
  readonly #costs: Exact[] = [];
  readonly #start: number[] = [];

  column({ cost = ZERO, lower = 0, upper, integer, start = 0 }: WrittenColumn): number {
    this.#costs.push(cost);
    this.#columns.push({ cost: numberOf(cost), lower, upper, integer });
    this.#start.push(start);
    return this.#columns.length - 1;
  }

  atMost(upper: number, terms: Terms): void {
    this.#row(Number.NEGATIVE_INFINITY, upper, terms);
  }

  atLeast(lower: number, terms: Terms): void {
    this.#row(lower, Number.POSITIVE_INFINITY, terms);
  }

  exactly(value: number, terms: Terms): void {
    this.#row(value, value, terms);
  }

  costOf(column: number): Exact {
    return this.#costs[column] ?? ZERO;
  }

  isInteger(column: number): boolean {
    return this.#columns[column]?.integer === true;
  }

  model(withStart: boolean): Model {
    return {
      columns: this.#columns,
      rows: this.#rows,
      step: smallestStep(this.#costs),
      ...(withStart ? { start: this.#start } : {}),
    };
  }

  #row(lower: number, upper: number, terms: Terms): void {
    this.#rows.push({
      lower,
      upper,
      columns: terms.map(([column]) => column),
      coefficients: terms.map(([, coefficient]) => coefficient),
    });
  }
}
