import { refuseFaults } from "./check-problem.js";
import type { JointClass, Maker, StockItem, StockProblem } from "./stock-problem.js";

/** A class with the items that can make it, by part number. */
export interface PlannableClass extends JointClass {
  readonly makers: readonly Maker[];
}

/** A problem in one fixed order, so that the order in which it was written down cannot change the plan. */
export interface CanonicalProblem {
  /** By id. */
  readonly classes: readonly PlannableClass[];
  /** By part number. */
  readonly items: readonly StockItem[];
}

/**
 * Sorts classes by id, items and makers by part number (by code unit, in no language) and puts each class's makers
 * beside it. Ids and part numbers are unique, so there is exactly one such order.
 * @throws UnusableProblem.
 */
export function canonicalProblem(problem: StockProblem): CanonicalProblem {
  refuseFaults(problem);
  const makers = new Map(problem.feasible.map((one) => [one.classId, one.makers]));
  return {
    classes: problem.classes
      .map((one): PlannableClass => ({ ...one, makers: (makers.get(one.id) ?? []).toSorted(byPartNumber) }))
      .sort((a, b) => byText(a.id, b.id)),
    items: problem.items.toSorted(byPartNumber),
  };
}

/** Order by code unit. */
export function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** Order by part number, by code unit. */
export function byPartNumber(a: { readonly partNumber: string }, b: { readonly partNumber: string }): number {
  return byText(a.partNumber, b.partNumber);
}
