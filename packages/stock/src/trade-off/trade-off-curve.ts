import { compareExact } from "@landfast/rules";
import { decimalOf, minus } from "../money/decimal.js";
import { type Money, moneyOf } from "../money/money.js";

import type { Unservable } from "../plan/offer.js";
import { type PlanOptions, planStock } from "../plan/plan-stock.js";
import type { Proof } from "../plan/stock-plan.js";
import type { StockProblem } from "../problem/stock-problem.js";
import type { Solver } from "../solver/solver.js";

/** The cheapest plan with no more than so many part numbers. */
export interface TradeOffPoint {
  readonly partNumbers: number;
  /** Unrounded. */
  readonly cost: Money;
  /** What it costs more than the cheapest plan of all: the price of keeping fewer part numbers. */
  readonly aboveCheapest: Money;
  readonly parts: readonly string[];
  readonly proof: Proof;
}

/** Cost against the number of part numbers, from the fewest to as many as the cheapest plan has. */
export interface TradeOffCurve {
  /** By rising number of part numbers, falling cost; empty when nothing can be planned or no price is known. */
  readonly points: readonly TradeOffPoint[];
  readonly currency: string | null;
  /** True when every number between the ends was asked about. */
  readonly complete: boolean;
  /** Joints for which nothing can be planned, with the reason. */
  readonly unservable: readonly Unservable[];
}

export interface TradeOffOptions extends Omit<PlanOptions, "mostPartNumbers"> {
  /** Ask about no more numbers than this, ends included, evenly spread. At least 2. Absent: every number. */
  readonly mostPoints?: number;
}

/**
 * The cheapest plan at every number of part numbers. A number at which no plan is cheaper than with fewer part numbers
 * is left out: one more part number that saves nothing is no choice.
 * Worked: C alone makes all at 15; A and B make all at 3: points (1, 15) and (2, 3).
 * @throws as `planStock` does.
 */
export async function tradeOffCurve(
  problem: StockProblem,
  solver: Solver,
  { mostPoints, ...options }: TradeOffOptions = {},
): Promise<TradeOffCurve> {
  if (mostPoints !== undefined && !(Number.isSafeInteger(mostPoints) && mostPoints >= 2))
    throw new RangeError("mostPoints is a whole number from 2 up");
  const fewest = await planStock(problem, { kind: "fewest-then-cheapest" }, solver, options);
  const cheapest = await planStock(problem, { kind: "least-cost" }, solver, options);
  const { unservable } = cheapest;
  if (fewest.cost === null || cheapest.cost === null) return { points: [], currency: null, complete: true, unservable };
  const plans = [fewest];
  const numbers = numbersBetween(fewest.partNumbers, cheapest.partNumbers, mostPoints);
  for (const mostPartNumbers of numbers.asked)
    plans.push(await planStock(problem, { kind: "least-cost" }, solver, { ...options, mostPartNumbers }));
  plans.push(cheapest);
  const { currency } = cheapest.cost.total;
  const least = decimalOf(cheapest.cost.total.amount);
  const points: TradeOffPoint[] = [];
  for (const { cost, parts, proof } of plans) {
    const before = points.at(-1);
    if (cost === null) continue;
    const total = decimalOf(cost.total.amount);
    if (before !== undefined && compareExact(total, decimalOf(before.cost.amount)) >= 0) continue;
    points.push({
      partNumbers: parts.length,
      cost: cost.total,
      aboveCheapest: moneyOf(minus(total, least), currency),
      parts: parts.map(({ partNumber }) => partNumber),
      proof,
    });
  }
  return { points, currency, complete: numbers.complete, unservable };
}

/** The numbers strictly between two, all of them or so many that with the two ends there are `mostPoints`. */
function numbersBetween(
  fewest: number,
  most: number,
  mostPoints: number | undefined,
): { asked: readonly number[]; complete: boolean } {
  const all = Array.from({ length: Math.max(0, most - fewest - 1) }, (_, at) => fewest + 1 + at);
  if (mostPoints === undefined || all.length + 2 <= mostPoints) return { asked: all, complete: true };
  const inner = mostPoints - 2;
  const asked = Array.from(
    { length: inner },
    (_, at) => all[Math.floor(((at + 1) * all.length) / (inner + 1))] ?? most,
  );
  return { asked: [...new Set(asked)], complete: false };
}
