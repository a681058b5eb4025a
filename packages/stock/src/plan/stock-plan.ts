import type { Money } from "../money/money.js";
import type { MakingVerdict } from "../problem/stock-problem.js";
import type { NotCosted, Unservable } from "./offer.js";

/** What a plan is to be best at. */
export type Objective =
  /** As few part numbers as can be; prices do not matter. */
  | { readonly kind: "fewest-part-numbers" }
  /** As little money as can be: parts, and labor where a rate is given. */
  | { readonly kind: "least-cost" }
  /** The same, with a fixed sum for every part number that is stocked. */
  | { readonly kind: "least-cost-with-carrying-cost"; readonly carryingCost: Money }
  /** Of all plans with the fewest part numbers the cheapest. */
  | { readonly kind: "fewest-then-cheapest" };

/** How the joints of one class are made. A class that is not made alike may have several. */
export interface Assignment {
  readonly classId: string;
  readonly partNumber: string;
  readonly joints: number;
  readonly parts: number;
  /** Decimal electrician-hours for these joints; null: not known. */
  readonly hours: string | null;
  readonly verdict: MakingVerdict;
}

export interface PlannedPart {
  readonly partNumber: string;
  /** The classes made with it; empty for a part that is stocked only because it must be. */
  readonly classIds: readonly string[];
  readonly joints: number;
  readonly partsUsed: number;
  readonly fromStock: number;
  readonly packs: number;
  readonly packQuantity: number;
  readonly bought: number;
  /** Bought and not used. */
  readonly overBuy: number;
  /** Price of one part and the quantity break it stands at; null when nothing is bought or the price is not known. */
  readonly each: Money | null;
  readonly breakFrom: number | null;
  /** Cost of what is bought, unrounded; null: not known. */
  readonly cost: Money | null;
  readonly must: boolean;
}

/** Unrounded decimals. */
export interface PlanCost {
  readonly parts: Money;
  /** null: no labor rate was given. */
  readonly labour: Money | null;
  /** null: no carrying cost was given. */
  readonly carrying: Money | null;
  readonly total: Money;
}

/** Whether the plan is known to be the best. */
export interface Proof {
  /** True: no plan is better by the objective. */
  readonly proven: boolean;
  /** Of what is bounded: a number of part numbers, or money. */
  readonly of: "part-numbers" | "cost";
  /** The plan's own value and a value below which no plan can lie: decimal text; null: no bound was found. */
  readonly value: string;
  readonly bound: string | null;
  /** Value less bound. */
  readonly gap: string | null;
  /** One sentence. */
  readonly because: string;
}

/** How much smaller the question became before it was put to the solver. */
export interface ReductionCounts {
  readonly classes: number;
  readonly items: number;
  /** Ways to make a class. */
  readonly makers: number;
  readonly makersLeft: number;
  readonly itemsLeft: number;
  /** Items without which some class cannot be made. */
  readonly forced: readonly string[];
}

/** Which part numbers to stock, for which joints, and how many to buy. */
export interface StockPlan {
  readonly objective: Objective;
  readonly partNumbers: number;
  /** By part number. */
  readonly parts: readonly PlannedPart[];
  /** By class, then part number. */
  readonly assignments: readonly Assignment[];
  /** null: some price is not known. */
  readonly cost: PlanCost | null;
  /** Decimal electrician-hours of all joints; null: some are not known. */
  readonly hours: string | null;
  /** Joints that the plan makes, and those it cannot make. */
  readonly joints: number;
  readonly unservable: readonly Unservable[];
  readonly notCosted: readonly NotCosted[];
  readonly proof: Proof;
  readonly reduction: ReductionCounts;
}
