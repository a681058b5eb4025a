import type { Money } from "../money/money.js";
import type { ItemPrice } from "../prices/item-price.js";

/** So many equal joints, made in one way. */
export interface MadeJoints {
  /** Unique in its way of making: a class of equal joints, or a mark. */
  readonly id: string;
  readonly joints: number;
  readonly partNumber: string;
  /** Parts that one joint takes. */
  readonly partsPerJoint: number;
  /** Electrician-hours for one joint; absent: not known. */
  readonly labourHours?: number;
  /** Compound, cover, hardware for one joint; absent: not known. Where a joint takes none, an empty list. */
  readonly extras?: readonly Extra[];
}

/** What a joint takes besides its connector. */
export interface Extra {
  readonly what: string;
  /** null: needed, and its cost not known. */
  readonly costEach: Money | null;
}

/** What is paid once for the job, however many joints there are. */
export interface OnceCost {
  /** "battery press", "set of dies", "setting up and trial crimps". */
  readonly what: string;
  readonly kind: "tool" | "die" | "set-up";
  /** null: not known, or nothing is paid because it is owned. */
  readonly cost: Money | null;
  /** It is there already: nothing more is paid for it. */
  readonly owned?: boolean;
}

/** One way to make the joints: mechanical, compression, or whatever the user names it. */
export interface WayOfMaking {
  readonly name: string;
  readonly lines: readonly MadeJoints[];
  readonly once: readonly OnceCost[];
}

/** Two ways to make the same joints. */
export interface EconomicsQuestion {
  readonly first: WayOfMaking;
  readonly second: WayOfMaking;
  /** For every part that a line names; a part without a price stands there without one. */
  readonly parts: readonly { readonly partNumber: string; readonly price?: ItemPrice }[];
  /** Money for one electrician-hour; absent: labor is not part of the comparison, and the answer says so. */
  readonly labourRate?: Money;
}
