/**
 * The worksheet of one finding. Every value a rule uses is a step on it, so a rule cannot reach an answer whose
 * derivation was not written down on the way.
 */
import type { Citation } from "./citation.js";
import { add, compareExact, divide, type Exact, exactOf, multiply, numberOf, reduced, subtract } from "./exact.js";
import type { Relation, Step, StepValue } from "./finding.js";
import { type Cell, isRefused, type TableRefusal } from "./table.js";

const NONE: readonly number[] = Object.freeze([]);

/** A step whose value is a number. */
export type NumberStep = Step & { readonly value: number };

export class Worksheet {
  readonly steps: Step[] = [];
  /** Exact values of computed steps, by step id: their shown value is only the nearest double. */
  private kept: Map<number, Exact> | undefined = undefined;

  /** A posted or catalogued fact. Numbers carry a unit. */
  given(label: string, value: StepValue, origin: string, unit?: string): Step {
    return this.put(
      unit === undefined
        ? { id: this.next(), kind: "given", label, value, uses: NONE, origin }
        : { id: this.next(), kind: "given", label, value, unit, uses: NONE, origin },
    );
  }

  /** A value that the code itself supplies where a part was looked at and bears no mark. */
  assume(
    label: string,
    value: StepValue,
    because: string,
    cite: Citation,
    unit?: string,
    uses: readonly Step[] = [],
  ): Step {
    const id = this.next();
    const kind = "assumed";
    return this.put(
      unit === undefined
        ? { id, kind, label, value, uses: ids(uses), because, cite }
        : { id, kind, label, value, unit, uses: ids(uses), because, cite },
    );
  }

  /** A number or word that stands in a clause's own text. */
  state(label: string, value: StepValue, cite: Citation, unit?: string, uses: readonly Step[] = []): Step {
    const id = this.next();
    const kind = "stated";
    return this.put(
      unit === undefined
        ? { id, kind, label, value, uses: ids(uses), cite }
        : { id, kind, label, value, unit, uses: ids(uses), cite },
    );
  }

  /** A cell read from a published table. `uses` are the steps that chose row and column. */
  read(label: string, cell: Cell, uses: readonly Step[]): Step {
    return this.put({
      id: this.next(),
      kind: "read",
      label,
      value: cell.value,
      unit: cell.unit,
      uses: ids(uses),
      cell: cell.ref,
      cite: cell.cite,
    });
  }

  /** Reads a cell unless the table refused it; the refusal is handed back for the rule to word. */
  tryRead(label: string, cell: Cell | TableRefusal, uses: readonly Step[]): Step | TableRefusal {
    return isRefused(cell) ? cell : this.read(label, cell, uses);
  }

  /** Exact product: 50 x 0.58 is 29. */
  multiply(label: string, factors: readonly Step[], unit: string, cite?: Citation): NumberStep {
    return this.compute(label, factors, " x ", multiply, unit, cite);
  }

  /** Exact sum. */
  add(label: string, terms: readonly Step[], unit: string, cite?: Citation): NumberStep {
    return this.compute(label, terms, " + ", add, unit, cite);
  }

  /** Exact difference. */
  subtract(label: string, from: Step, take: Step, unit: string, cite?: Citation): NumberStep {
    return this.compute(label, [from, take], " - ", subtract, unit, cite);
  }

  /** Exact quotient. @throws RangeError on division by zero, which a rule must have excluded. */
  divide(label: string, dividend: Step, divisor: Step, unit: string, cite?: Citation): NumberStep {
    return this.compute(label, [dividend, divisor], " / ", divide, unit, cite);
  }

  /** A computed value in another unit, or any exact value with its own printed arithmetic. */
  exactly(
    label: string,
    value: Exact,
    unit: string,
    uses: readonly Step[],
    formula: string,
    substituted: string,
    cite?: Citation,
  ): NumberStep {
    this.kept ??= new Map();
    this.kept.set(this.next(), value);
    return this.approximately(label, numberOf(value), unit, uses, formula, substituted, cite);
  }

  /**
   * A value that no decimal holds exactly (a root, a logarithm, a cosine). The substituted arithmetic re-evaluates
   * to it within the last digits of a double.
   */
  approximately(
    label: string,
    value: number,
    unit: string,
    uses: readonly Step[],
    formula: string,
    substituted: string,
    cite?: Citation,
  ): NumberStep {
    const id = this.next();
    const kind = "computed";
    const step =
      cite === undefined
        ? ({ id, kind, label, value: finite(value), unit, uses: ids(uses), formula, substituted } as const)
        : ({ id, kind, label, value: finite(value), unit, uses: ids(uses), formula, substituted, cite } as const);
    return this.put(step);
  }

  /**
   * Compares two numbers, or asks whether a word stands in a list. NaN never holds. Records the comparison and
   * returns whether it holds.
   */
  compare(label: string, left: Step, relation: Relation, right: Step, cite: Citation): boolean {
    const holds = this.holds(left, relation, right);
    const id = this.next();
    this.put({
      id,
      kind: "compared",
      label,
      value: holds,
      uses: [left.id, right.id],
      left: left.id,
      relation,
      right: right.id,
      cite,
    });
    return holds;
  }

  /** A fact that is not known. */
  missing(label: string, path: string, because: string): Step {
    return this.put({ id: this.next(), kind: "missing", label, value: "not known", uses: NONE, path, because });
  }

  /** What follows from several earlier steps. */
  conclude(
    label: string,
    value: StepValue,
    uses: readonly Step[],
    because: string,
    cite?: Citation,
    unit?: string,
  ): Step {
    const id = this.next();
    const kind = "concluded";
    const used = ids(uses);
    if (cite === undefined)
      return this.put(
        unit === undefined
          ? { id, kind, label, value, uses: used, because }
          : { id, kind, label, value, unit, uses: used, because },
      );
    return this.put(
      unit === undefined
        ? { id, kind, label, value, uses: used, because, cite }
        : { id, kind, label, value, unit, uses: used, because, cite },
    );
  }

  /** The last step, for a conclusion that rests on a comparison just made. */
  get last(): Step {
    const step = this.steps[this.steps.length - 1];
    if (step === undefined) throw new Error("the worksheet is empty");
    return step;
  }

  /** The exact value of a number step. @throws TypeError when the step holds no number. */
  exact(step: Step): Exact {
    const kept = this.kept?.get(step.id);
    if (kept !== undefined) return kept;
    if (typeof step.value !== "number") throw new TypeError(`step ${String(step.id)} (${step.label}) holds no number`);
    return exactOf(step.value);
  }

  private holds(left: Step, relation: Relation, right: Step): boolean {
    if (relation === "in") {
      const list = right.value;
      return Array.isArray(list) && list.includes(left.value);
    }
    if (typeof left.value !== "number" || typeof right.value !== "number")
      return relation === "=" && left.value === right.value;
    if (Number.isNaN(left.value) || Number.isNaN(right.value)) return false;
    // Doubles read from printed decimals keep their order; only computed values need the exact comparison.
    const order =
      this.kept !== undefined && (this.kept.has(left.id) || this.kept.has(right.id))
        ? compareExact(this.exact(left), this.exact(right))
        : left.value < right.value
          ? -1
          : left.value > right.value
            ? 1
            : 0;
    switch (relation) {
      case "<=":
        return order <= 0;
      case "<":
        return order < 0;
      case ">=":
        return order >= 0;
      case ">":
        return order > 0;
      case "=":
        return order === 0;
    }
  }

  private compute(
    label: string,
    operands: readonly Step[],
    sign: string,
    apply: (a: Exact, b: Exact) => Exact,
    unit: string,
    cite: Citation | undefined,
  ): NumberStep {
    const [first, ...rest] = operands;
    if (first === undefined) throw new RangeError("nothing to compute");
    const value = rest.reduce((total, step) => apply(total, this.exact(step)), this.exact(first));
    const formula = operands.map((step) => step.label).join(sign);
    const substituted = operands.map((step) => this.shown(step)).join(sign);
    return this.exactly(label, value, unit, operands, formula, substituted, cite);
  }

  /** An operand as printed arithmetic: the decimal where it has one, else the fraction in brackets. */
  private shown(step: Step): string {
    const exact = this.kept?.get(step.id);
    if (exact === undefined) return String(step.value);
    const shown = numberOf(exact);
    return compareExact(exactOf(shown), exact) === 0 ? String(shown) : fractionText(reduced(exact));
  }

  private next(): number {
    return this.steps.length + 1;
  }

  private put<S extends Step>(step: S): S {
    this.steps.push(step);
    return step;
  }
}

function fractionText({ numerator, denominator }: Exact): string {
  return `(${numerator.toString()} / ${denominator.toString()})`;
}

function ids(steps: readonly Step[]): readonly number[] {
  switch (steps.length) {
    case 0:
      return NONE;
    case 1:
      return [(steps[0] as Step).id];
    default:
      return steps.map((step) => step.id);
  }
}

/** Arithmetic on accepted input cannot leave the finite numbers; if it does, that is a defect and must be loud. */
function finite(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError("a computed value is not finite");
  return value;
}
