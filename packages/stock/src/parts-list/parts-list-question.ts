import type { DifficultyFactors } from "../labour/labour-factors.js";
import type { Rounding } from "../money/decimal.js";
import type { Money } from "../money/money.js";
import type { ItemPrice } from "../prices/item-price.js";
import type { PartKind, SparePolicy } from "./spare-policy.js";

/** A part as it is bought. */
export interface ListedPart {
  readonly partNumber: string;
  readonly description: string;
  readonly kind: PartKind;
  readonly packQuantity: number;
  readonly price?: ItemPrice;
  readonly onHand?: number;
  readonly leadTimeDays?: number;
}

/** What a joint takes besides its connector: the things that get forgotten. */
export const NEED_KINDS = [
  "compound",
  "cover",
  "tape",
  "plug",
  "washer-set",
  "reducer",
  "lug-kit",
  "terminal-shield",
  "other",
] as const;
export type NeedKind = (typeof NEED_KINDS)[number];

export interface JointNeed {
  readonly kind: NeedKind;
  /** null: it is needed and no part has been chosen for it. */
  readonly partNumber: string | null;
  /** Decimal text, for one joint: a cover is "1", a tube of compound perhaps "0.02". */
  readonly perJoint: string;
}

/** A tool, and the die in it, with which a joint is made. */
export interface JointTool {
  readonly tool: string;
  readonly die?: string;
}

/** Joints of one mark and the part they are made with. */
export interface JointUse {
  readonly mark: string;
  readonly partNumber: string;
  readonly joints: number;
  readonly partsPerJoint: number;
  readonly area?: string;
  readonly panel?: string;
  readonly neededBy?: string;
  /** Electrician-hours for one joint. */
  readonly labourHours?: number;
  /** Where those hours come from, in a few words: "catalogue", "labor table". */
  readonly labourSource?: string;
  readonly difficulty?: string;
  readonly needs?: readonly JointNeed[];
  readonly tools?: readonly JointTool[];
  /** Openings of one joint's connector that stay empty. */
  readonly unusedOpenings?: number;
  /** Which end of which circuit, so that a reducer at one end brings the other to mind. */
  readonly circuitEnd?: { readonly circuit: string; readonly end: "from" | "to" };
}

/** Spares that the owner's specification asks for, on top of the policy. */
export interface OwnerSpare {
  readonly partNumber: string;
  readonly parts: number;
  readonly because: string;
}

/** How a tool or die comes to the job. */
export interface ToolTerms {
  readonly tool: string;
  readonly die?: string;
  readonly terms:
    | { readonly kind: "owned" }
    | { readonly kind: "hired"; readonly perDay: Money; readonly days: number }
    | { readonly kind: "bought"; readonly price: Money };
}

export interface PartsListQuestion {
  readonly uses: readonly JointUse[];
  /** Every part that a use or a need names. */
  readonly parts: readonly ListedPart[];
  readonly spares: SparePolicy;
  readonly ownerSpares?: readonly OwnerSpare[];
  readonly tools?: readonly ToolTerms[];
  readonly labour?: { readonly rate?: Money; readonly difficulty?: DifficultyFactors };
  /** How a line's cost is rounded to the currency's smallest unit. */
  readonly rounding: Extract<Rounding, "half-up" | "half-even">;
}
