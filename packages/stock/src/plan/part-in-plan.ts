import { decimalOf, minus } from "../money/decimal.js";
import { type Money, moneyOf } from "../money/money.js";
import type { StockProblem } from "../problem/stock-problem.js";
import type { Solver } from "../solver/solver.js";
import { type PlanOptions, planStock } from "./plan-stock.js";
import type { Proof, StockPlan } from "./stock-plan.js";

/** What a part is good for in a plan, and what the plan would be without it. */
export interface PartInPlan {
  readonly partNumber: string;
  /** Classes that no other item of the problem can make. */
  readonly onlyMaker: readonly string[];
  /** Classes that no other part of this plan can make. */
  readonly onlyInPlan: readonly string[];
  readonly without: {
    /** Classes and joints that could then not be made. */
    readonly unservable: readonly string[];
    readonly jointsLost: number;
    readonly partNumbers: number;
    /** Cost of the best plan without the part, less the cost of this plan. Null where a cost is not known, and where
     * joints are lost: a plan that makes less is not comparable. */
    readonly costChange: Money | null;
    readonly proof: Proof;
  };
  readonly must: boolean;
}

/**
 * For every part of a plan: which classes depend on it, and what dropping it would come to, by planning again without
 * it. A part that must be stocked is planned without for the comparison all the same.
 * Worked: A makes classes 1 and 2, B makes 2 and 3, C all three. In the plan A, B at 3, class 1 depends on A within the
 * plan, on none in the catalogue; without A the best is C alone at 15: 12 more.
 * @throws as `planStock` does.
 */
export async function partsInPlan(
  problem: StockProblem,
  plan: StockPlan,
  solver: Solver,
  options: PlanOptions = {},
): Promise<PartInPlan[]> {
  const planned = new Set(plan.parts.map(({ partNumber }) => partNumber));
  const usable = new Set(problem.items.flatMap(({ partNumber, mustNot }) => (mustNot === true ? [] : [partNumber])));
  const found: PartInPlan[] = [];
  for (const { partNumber, must } of plan.parts) {
    const mine = problem.feasible.filter(({ makers }) => makers.some((one) => one.partNumber === partNumber));
    const dependsWithin = (others: ReadonlySet<string>): string[] =>
      mine
        .filter(({ makers }) => !makers.some((one) => one.partNumber !== partNumber && others.has(one.partNumber)))
        .map(({ classId }) => classId)
        .sort();
    const without = await planStock(withoutItem(problem, partNumber), plan.objective, solver, options);
    const jointsLost = plan.joints - without.joints;
    found.push({
      partNumber,
      onlyMaker: dependsWithin(usable),
      onlyInPlan: dependsWithin(planned),
      without: {
        unservable: newlyUnservable(plan, without),
        jointsLost,
        partNumbers: without.partNumbers,
        costChange: jointsLost === 0 ? costChange(plan, without) : null,
        proof: without.proof,
      },
      must,
    });
  }
  return found;
}

function withoutItem(problem: StockProblem, partNumber: string): StockProblem {
  return {
    ...problem,
    items: problem.items.map((item) =>
      item.partNumber === partNumber ? { ...item, must: false, mustNot: true } : item,
    ),
  };
}

function newlyUnservable(plan: StockPlan, without: StockPlan): string[] {
  const before = new Set(plan.unservable.map(({ classId }) => classId));
  return without.unservable.map(({ classId }) => classId).filter((id) => !before.has(id));
}

function costChange(plan: StockPlan, without: StockPlan): Money | null {
  if (plan.cost === null || without.cost === null) return null;
  const { amount, currency } = without.cost.total;
  return moneyOf(minus(decimalOf(amount), decimalOf(plan.cost.total.amount)), currency);
}
