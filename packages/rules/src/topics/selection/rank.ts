import { sizeOf } from "../../core/conductor-size.js";
import type { CatalogueItem } from "../../core/connector.js";
import { compareExact, type Exact, exactOf } from "../../core/exact.js";
import type { Standing } from "./catalogue-judge.js";
import type { RankingContext } from "./selection.js";

/** What ranking asks about an item beside its own facts; absent facts stand after all known ones. */
export interface Preference {
  readonly inJob: boolean;
  readonly leadTimeDays: number | null;
  readonly approvedBefore: boolean;
}

/** One line of the order, with the words that name it where it decides. */
interface RankLine {
  readonly compare: (a: Standing, b: Standing) => number;
  /** "Of 12 connectors that every rule accepts, it costs least." */
  readonly because: string;
}

/** The order of candidates in a given job; each line decides only where the ones above are equal. */
export interface Ranking {
  readonly compare: (a: Standing, b: Standing) => number;
  /** Why the first stands before the second, in words. */
  readonly because: (first: Standing, second: Standing) => string;
  readonly preferenceOf: (item: CatalogueItem) => Preference;
}

/** The lines of the order in words, for an answer to name. */
export const RANK_LINES: readonly string[] = Object.freeze([
  "accepted without conditions before accepted with conditions",
  "fewer conditions",
  "a part number that is in the job already, which adds none",
  "lower price (without a price last; prices of unlike currencies are not compared)",
  "fewer electrician-hours (unknown last)",
  "shorter lead time (unknown last)",
  "approved before",
  "the largest size it takes nearer to the conductor",
  "part number, by code unit",
]);

/** The order of candidates for a job of which this is known. */
export function rankingOf({ inJob = [], approved = [], leadTimes = [] }: RankingContext): Ranking {
  const inUse = new Set(inJob);
  const known = new Set(approved);
  const days = new Map(leadTimes.map((one) => [one.partNumber, one.days]));
  const lines: readonly RankLine[] = [
    {
      compare: (a, b) => Number(a.verdict !== "accept") - Number(b.verdict !== "accept"),
      because: "it is accepted without conditions",
    },
    { compare: (a, b) => a.conditions - b.conditions, because: "its acceptance hangs on fewer conditions" },
    {
      compare: (a, b) => Number(inUse.has(b.item.partNumber)) - Number(inUse.has(a.item.partNumber)),
      because: "it is in the job already",
    },
    { compare: (a, b) => byPrice(a.item, b.item), because: "it costs least" },
    { compare: (a, b) => knownFirst(a.item.labourHours, b.item.labourHours), because: "it takes the least labor" },
    {
      compare: (a, b) => knownFirst(days.get(a.item.partNumber), days.get(b.item.partNumber)),
      because: "it comes soonest",
    },
    {
      compare: (a, b) => Number(known.has(b.item.partNumber)) - Number(known.has(a.item.partNumber)),
      because: "it was approved before",
    },
    { compare: (a, b) => largestSize(a.item) - largestSize(b.item), because: "its range is nearest to the conductor" },
    {
      compare: (a, b) => byText(a.item.partNumber, b.item.partNumber),
      because: "its part number comes first among equals",
    },
  ];
  return {
    compare(a, b) {
      for (const { compare } of lines) {
        const order = compare(a, b);
        if (order !== 0) return order;
      }
      return 0;
    },
    because: (first, second) =>
      lines.find(({ compare }) => compare(first, second) !== 0)?.because ?? "nothing tells it from the next",
    preferenceOf: ({ partNumber }) => ({
      inJob: inUse.has(partNumber),
      leadTimeDays: days.get(partNumber) ?? null,
      approvedBefore: known.has(partNumber),
    }),
  };
}

/**
 * Fewest failures first, so that what only lacks a fact, or fails only by the joint's own fault, comes before what fails
 * by itself too; then fewest questions, then the rank order, so that the nearest miss is stable.
 */
export function byNearness(a: Standing, b: Standing, { compare }: Ranking): number {
  return a.failures - b.failures || a.questions - b.questions || compare(a, b);
}

function byPrice(a: CatalogueItem, b: CatalogueItem): number {
  if (a.price === undefined || b.price === undefined)
    return Number(a.price === undefined) - Number(b.price === undefined);
  if (a.price.currency !== b.price.currency) return byText(a.price.currency, b.price.currency);
  return compareExact(priceOf(a, a.price), priceOf(b, b.price));
}

/** An item never changes, and it is ranked for many joints: what ranking reads of it is read once. */
const prices = new WeakMap<CatalogueItem, Exact>();
const largestAreas = new WeakMap<CatalogueItem, number>();

function priceOf(item: CatalogueItem, { amount }: NonNullable<CatalogueItem["price"]>): Exact {
  let price = prices.get(item);
  if (price === undefined) {
    price = exactOf(amount);
    prices.set(item, price);
  }
  return price;
}

function knownFirst(a: number | undefined, b: number | undefined): number {
  if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
  return a - b;
}

/** Area of the largest size it takes, in kcmil. */
function largestSize(item: CatalogueItem): number {
  let largest = largestAreas.get(item);
  if (largest === undefined) {
    largest = 0;
    for (const { ranges } of item.openings)
      for (const { to } of ranges) largest = Math.max(largest, sizeOf(to).areaKcmil);
    largestAreas.set(item, largest);
  }
  return largest;
}

function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
