import { exactOf } from "@landfast/rules";
import { ceilingOf, decimalOf, over, times } from "../money/decimal.js";

/** What a part is, as far as spares go. */
export const PART_KINDS = [
  "twist-on",
  "small-splice",
  "mechanical",
  "compression",
  "shear-head-tap",
  "reducer",
  "lug-kit",
  "accessory",
  "other",
] as const;
export type PartKind = (typeof PART_KINDS)[number];

/** Spares for one kind of part. */
export interface SpareRule {
  /** Of the net quantity: decimal text. */
  readonly percent: string;
  /** At least so many of each part number that is used at all. */
  readonly atLeast: number;
  /** More where a replacement takes more than so many days to come. */
  readonly longLead?: { readonly overDays: number; readonly atLeast: number };
}

/** How many spares are bought. `basis` says where the figures come from: somebody's judgement, or a specification. */
export interface SparePolicy {
  readonly id: string;
  readonly basis: "judgement" | "stated";
  readonly rules: Readonly<Record<PartKind, SpareRule>>;
}

/**
 * A policy to begin with. No published percentage is known: these are judgement, to be replaced by the user's own.
 * Compression parts are spoiled by one bad crimp, so at least two; reducers and lug kits none, unless the user states a
 * lead time over which one is kept.
 */
export const JUDGEMENT_SPARES: SparePolicy = Object.freeze({
  id: "judgement",
  basis: "judgement",
  rules: Object.freeze({
    "twist-on": { percent: "10", atLeast: 0 },
    "small-splice": { percent: "10", atLeast: 0 },
    mechanical: { percent: "3", atLeast: 1 },
    compression: { percent: "5", atLeast: 2 },
    "shear-head-tap": { percent: "5", atLeast: 1 },
    reducer: { percent: "0", atLeast: 0 },
    "lug-kit": { percent: "0", atLeast: 0 },
    accessory: { percent: "0", atLeast: 0 },
    other: { percent: "0", atLeast: 0 },
  }),
} as const);

/** No spares at all. */
export const NO_SPARES: SparePolicy = Object.freeze({
  id: "none",
  basis: "stated",
  rules: Object.freeze(
    Object.fromEntries(PART_KINDS.map((kind) => [kind, { percent: "0", atLeast: 0 }])) as Record<PartKind, SpareRule>,
  ),
} as const);

/** Spares of one part by a rule. `leadTimeIsAsked`: the rule looks at a lead time that is not known. */
export interface Spares {
  readonly parts: number;
  readonly leadTimeIsAsked: boolean;
}

/**
 * Spare parts for a net quantity: the percentage, rounded up to whole parts, and at least the least.
 * Worked: 84 compression lugs: 5 % is 4.2, so 5. 12 of them: 0.6, so 1, raised to 2. None used: none spare.
 */
export function sparesFor(rule: SpareRule, netParts: number, leadTimeDays: number | undefined): Spares {
  if (netParts === 0) return { parts: 0, leadTimeIsAsked: false };
  const share = ceilingOf(over(times(decimalOf(rule.percent), exactOf(netParts)), exactOf(100)));
  const { longLead } = rule;
  const isLong = longLead !== undefined && leadTimeDays !== undefined && leadTimeDays > longLead.overDays;
  return {
    parts: Math.max(share, rule.atLeast, isLong ? longLead.atLeast : 0),
    leadTimeIsAsked: longLead !== undefined && leadTimeDays === undefined,
  };
}
