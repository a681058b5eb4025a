import type { Money } from "../money/money.js";

/** A part's price as the comparison used it. */
export interface PriceUsed {
  readonly partNumber: string;
  readonly parts: number;
  /** Of one part, at the quantity break that this way's own number of parts reaches. null: not known. */
  readonly each: Money | null;
  readonly breakFrom: number | null;
}

/** One line of a way with every figure that went into it. */
export interface WayLine {
  readonly id: string;
  readonly joints: number;
  readonly partNumber: string;
  /** For one joint. Null: not known. */
  readonly partsEach: Money | null;
  readonly extrasEach: Money | null;
  readonly hoursEach: string | null;
  readonly labourEach: Money | null;
  /** Sum of the above; labor only where a rate is given. */
  readonly costEach: Money | null;
}

/** What one way comes to. Null wherever something in it is not known, never zero for want of a figure. */
export interface WayCost {
  readonly name: string;
  readonly joints: number;
  readonly partNumbers: number;
  readonly prices: readonly PriceUsed[];
  readonly lines: readonly WayLine[];
  readonly hours: string | null;
  readonly parts: Money | null;
  readonly extras: Money | null;
  /** null also where no rate is given. */
  readonly labour: Money | null;
  readonly once: readonly {
    readonly what: string;
    readonly kind: string;
    readonly cost: Money | null;
    readonly owned: boolean;
  }[];
  readonly tools: Money | null;
  readonly setUp: Money | null;
  /** Paid for each joint, and paid once. */
  readonly everyJoint: Money | null;
  readonly onceSum: Money | null;
  readonly total: Money | null;
  /** What is not known, one sentence each. */
  readonly unknown: readonly string[];
}

/** From how many joints on the other way is the cheaper one. */
export type BreakEven =
  /** One costs no more for any number of joints, and less for some. */
  | { readonly kind: "always"; readonly cheaper: string; readonly because: string }
  /** Both cost the same for any number. */
  | { readonly kind: "same"; readonly because: string }
  | {
      readonly kind: "crosses";
      /** Where both cost the same: exactly, as a fraction of whole numbers, and to six decimals half-up. */
      readonly joints: { readonly numerator: string; readonly denominator: string; readonly decimal: string };
      readonly cheaperBelow: string;
      readonly cheaperAbove: string;
      /** The first whole number of joints at which the other way costs less. */
      readonly cheaperFrom: string;
      readonly because: string;
    }
  | { readonly kind: "not-known"; readonly because: string };

/** Two ways to make the same joints, side by side. */
export interface Economics {
  readonly joints: number;
  readonly first: WayCost;
  readonly second: WayCost;
  readonly labourRate: Money | null;
  readonly currency: string | null;
  /** First less second; null where a total is not known. */
  readonly difference: Money | null;
  readonly cheaper: string | null;
  readonly breakEven: BreakEven;
  /** On what the figures rest: read before they are used. */
  readonly assumptions: readonly string[];
}
