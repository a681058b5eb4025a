import type { Rounding } from "../money/decimal.js";
import type { Money } from "../money/money.js";
import type { PartKind } from "./spare-policy.js";

/** One part to be bought, with where each part of its quantity comes from. */
export interface PartLine {
  /** "part/" and the part number: the same for as long as the part is on the list, whatever else changes. */
  readonly id: string;
  readonly partNumber: string;
  readonly description: string;
  readonly kind: PartKind;
  /** What the joints take, exactly: decimal text (a need may take a fraction), and in whole parts. */
  readonly net: string;
  readonly netParts: number;
  readonly spares: {
    readonly byPolicy: number;
    readonly byOwner: number;
    readonly rule: string;
  };
  readonly fromStock: number;
  /** Net and spares less what is on hand. */
  readonly toBuy: number;
  readonly packs: number;
  readonly packQuantity: number;
  /** Parts bought beyond `toBuy` because packs are whole, and because a price break was worth reaching. */
  readonly packRounding: number;
  readonly breakOverBuy: number;
  readonly bought: number;
  /** Price of one part, unrounded, and the break it stands at. Null where nothing is bought or no price is known. */
  readonly each: Money | null;
  readonly breakFrom: number | null;
  /** Rounded to the smallest unit. Null: no price is known; never zero for want of one. */
  readonly cost: Money | null;
  readonly marks: readonly string[];
  readonly neededBy: string | null;
}

export interface ToolLine {
  /** "tool/" or "die/" and the name. */
  readonly id: string;
  readonly tool: string;
  readonly die: string | null;
  readonly terms: "owned" | "hired" | "bought" | "not-stated";
  readonly days: number | null;
  readonly cost: Money | null;
  readonly marks: readonly string[];
}

/** What one area or panel is to be handed: net quantities; spares stay in the store. */
export interface Kit {
  readonly heading: string;
  readonly lines: readonly {
    readonly id: string;
    readonly partNumber: string;
    readonly net: string;
    readonly marks: readonly string[];
  }[];
  readonly tools: readonly string[];
  readonly neededBy: string | null;
}

/** Something the list cannot know, in one sentence, with the marks it concerns. */
export interface PartsListGap {
  readonly about:
    | "no-part-chosen"
    | "no-plugs"
    | "reducer-at-one-end"
    | "no-price"
    | "no-hours"
    | "no-lead-time"
    | "tool-terms";
  readonly sentence: string;
  readonly marks: readonly string[];
}

export interface PartsList {
  /** By part number. */
  readonly lines: readonly PartLine[];
  readonly tools: readonly ToolLine[];
  /** Decimal electrician-hours; null: some are not known. */
  readonly hours: string | null;
  /** Where the hours come from; joints without hours stand under "not known". By source. */
  readonly hoursBySource: readonly {
    readonly source: string;
    readonly joints: number;
    readonly hours: string | null;
  }[];
  readonly cost: {
    /** Sums of rounded lines; null when one of them is not known. */
    readonly parts: Money | null;
    readonly tools: Money | null;
    readonly labour: Money | null;
    readonly total: Money | null;
    /** What is known of it, for want of a total. Null: no price at all. */
    readonly known: Money | null;
    readonly rounding: Rounding;
  };
  readonly kitsByArea: readonly Kit[];
  readonly kitsByPanel: readonly Kit[];
  readonly gaps: readonly PartsListGap[];
  /** What no list of joints shows and estimators miss: to be looked for on the drawings. */
  readonly notListed: readonly string[];
  readonly sparePolicy: { readonly id: string; readonly basis: "judgement" | "stated" };
}
