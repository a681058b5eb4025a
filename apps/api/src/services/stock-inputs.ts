import { type CatalogueItem, type ConnectorFamily, compareSizes, type Joint, sizeOf } from "@landfast/rules";
import {
  decimalOf,
  decimalText,
  hoursByTable,
  type ItemPrice,
  isCurrency,
  type LabourLine,
  type Money,
  type PriceLine,
  type PriceList,
  priceOn,
  priceProblems,
  times,
} from "@landfast/stock";
import { type Fault, Problem, pointerTo } from "../problems/problem.js";
import type { Catalogue } from "./catalogue.js";
import type { LabourTableService } from "./labour-tables.js";
import type { PriceListService } from "./price-lists.js";
import { unknownPart } from "./unknown-part.js";

/** Where prices come from. Absent: from the catalogue. */
export type PricesFrom =
  | { readonly from: "catalogue" }
  /** A stored price list, as it holds on a day. */
  | { readonly from: "price-list"; readonly id: string; readonly on: string }
  | { readonly from: "request"; readonly currency: string; readonly lines: readonly PriceLine[] };

/** Where hours come from. Absent: from the catalogue. */
export type HoursFrom =
  | { readonly from: "catalogue" }
  /** A stored labor table; `condition` and `difficulty` are words of that table. */
  | { readonly from: "labour-table"; readonly id: string; readonly condition?: string; readonly difficulty?: string };

/** What every question about a job's parts may say of supply and cost. */
export interface SupplyQuestion {
  readonly prices?: PricesFrom;
  readonly hours?: HoursFrom;
  /** Money for one electrician-hour. Absent: labor is not costed. */
  readonly labourRate?: Money;
  /** Packs other than the catalogue's. */
  readonly packs?: readonly { readonly partNumber: string; readonly packQuantity: number }[];
  readonly onHand?: readonly { readonly partNumber: string; readonly parts: number }[];
  readonly must?: readonly string[];
  readonly mustNot?: readonly string[];
  readonly mustNotFamilies?: readonly ConnectorFamily[];
  readonly needDates?: readonly { readonly area: string; readonly on: string }[];
}

/** Where the figures of an answer come from, in words for people. */
export interface InputsUsed {
  readonly prices: string;
  readonly hours: string;
  readonly labourRate: Money | null;
}

/** Supply and cost, ready to be asked. */
export interface Supply {
  readonly used: InputsUsed;
  /** Absent: not known, never zero. */
  priceOf(item: CatalogueItem): ItemPrice | undefined;
  /** Electrician-hours for one joint. Absent: not known, never zero. */
  hoursOf(item: CatalogueItem, joint: Joint): number | undefined;
  packOf(item: CatalogueItem): number;
  onHandOf(partNumber: string): number;
  isMust(item: CatalogueItem): boolean;
  isMustNot(item: CatalogueItem): boolean;
  /** The earliest day on which the area needs its parts; null: none was stated. */
  neededBy(area: string | null): string | null;
}

/** What supply is read from. */
export interface SupplySources {
  readonly priceLists: Pick<PriceListService, "priceListFor">;
  readonly labourTables: Pick<LabourTableService, "labourTableFor">;
}

/**
 * Reads where prices, hours, packs and stock come from.
 * @throws Problem for a part that the catalogue does not hold, for a list or table that is not stored, and for what
 *   contradicts itself.
 */
export async function supplyOf(
  question: SupplyQuestion,
  catalogue: Catalogue,
  sources: SupplySources,
): Promise<Supply> {
  refuseContradictions(question, catalogue);
  const prices = await pricesFrom(question.prices ?? { from: "catalogue" }, sources);
  const hours = await hoursFrom(question.hours ?? { from: "catalogue" }, sources);
  const packs = new Map((question.packs ?? []).map((one) => [one.partNumber, one.packQuantity]));
  const onHand = new Map((question.onHand ?? []).map((one) => [one.partNumber, one.parts]));
  const must = new Set(question.must);
  const mustNot = new Set(question.mustNot);
  const families = new Set(question.mustNotFamilies);
  const days = new Map((question.needDates ?? []).map(({ area, on }) => [area, on]));
  return {
    used: { prices: prices.words, hours: hours.words, labourRate: question.labourRate ?? null },
    priceOf: prices.priceOf,
    hoursOf: hours.hoursOf,
    packOf: (item) => packs.get(item.partNumber) ?? item.packQuantity,
    onHandOf: (partNumber) => onHand.get(partNumber) ?? 0,
    isMust: ({ partNumber }) => must.has(partNumber),
    isMustNot: ({ partNumber, family }) => mustNot.has(partNumber) || families.has(family),
    neededBy: (area) => (area === null ? null : (days.get(area) ?? null)),
  };
}

async function pricesFrom(
  prices: PricesFrom,
  { priceLists }: SupplySources,
): Promise<{ words: string; priceOf: Supply["priceOf"] }> {
  if (prices.from === "catalogue")
    return {
      words: "the catalogue's prices, each",
      priceOf: ({ price }) => (price === undefined ? undefined : asPrice(price)),
    };
  if (prices.from === "price-list") {
    const list = await priceLists.priceListFor(prices.id);
    refuseOtherDays(list, prices.on);
    return {
      words: `price list ${list.id} as it holds on ${prices.on}`,
      priceOf: pricesOf(list, prices.on),
    };
  }
  const list: PriceList = { id: "of the request", currency: prices.currency, lines: prices.lines };
  return { words: "the prices in the request", priceOf: pricesOf(list, ANY_DAY) };
}

function refuseOtherDays({ id, validFrom, validTo }: PriceList, on: string): void {
  const isEarly = validFrom !== undefined && on < validFrom;
  if (!isEarly && !(validTo !== undefined && on > validTo)) return;
  throw inconsistent([
    {
      pointer: "/prices/on",
      detail: `price list ${id} does not hold on ${on}`,
      accepted: `a day from ${validFrom ?? "any"} to ${validTo ?? "any"}`,
    },
  ]);
}

/** A list without days holds on every day. */
const ANY_DAY = "2000-01-01";

/** Asked once for each part: a list of many lines is not gone through again. */
function pricesOf(list: PriceList, day: string): Supply["priceOf"] {
  const lines = new Map<string, PriceLine[]>();
  for (const line of list.lines) lines.set(line.partNumber, [...(lines.get(line.partNumber) ?? []), line]);
  return ({ partNumber }) =>
    priceOn({ ...list, lines: lines.get(partNumber) ?? [] }, partNumber, day).price ?? undefined;
}

function asPrice({ amount, currency }: Money): ItemPrice {
  return { unit: "each", currency, breaks: [{ from: 1, amount }] };
}

async function hoursFrom(
  hours: HoursFrom,
  { labourTables }: SupplySources,
): Promise<{ words: string; hoursOf: Supply["hoursOf"] }> {
  if (hours.from === "catalogue") return { words: "the catalogue's hours", hoursOf: ({ labourHours }) => labourHours };
  const { head, lines } = await labourTables.labourTableFor(hours.id);
  const { condition, difficulty } = hours;
  const factor = difficulty === undefined ? "1" : head.difficulties[difficulty];
  if (factor === undefined)
    throw inconsistent([
      {
        pointer: "/hours/difficulty",
        detail: `the labor table "${head.name}" has no factor for "${String(difficulty)}"`,
        accepted: Object.keys(head.difficulties).join(", ") || "no difficulty: the table has no factors",
      },
    ]);
  const under = [condition, difficulty].filter((one) => one !== undefined).join(", ");
  return {
    words: `labor table "${head.name}"${under === "" ? "" : ` (${under})`}`,
    hoursOf: (item, joint) => {
      const found = hoursByTable(lines satisfies readonly LabourLine[], {
        partNumber: item.partNumber,
        family: item.family,
        size: largestSize(joint),
        ...(condition === undefined ? {} : { condition }),
      });
      return found.hours === null
        ? undefined
        : Number(decimalText(times(decimalOf(String(found.hours)), decimalOf(factor))));
    },
  };
}

/** The largest conductor of a joint, by area. */
function largestSize({ conductors }: Joint): string {
  return conductors.map(({ size }) => size).reduce((a, b) => (compareSizes(sizeOf(a), sizeOf(b)) >= 0 ? a : b));
}

function refuseContradictions(question: SupplyQuestion, catalogue: Catalogue): void {
  const { packs = [], onHand = [], must = [], mustNot = [], mustNotFamilies = [], needDates = [], prices } = question;
  const named = [
    ...packs.map(({ partNumber }, at) => ({ partNumber, pointer: pointerTo("/packs", at, "partNumber") })),
    ...onHand.map(({ partNumber }, at) => ({ partNumber, pointer: pointerTo("/onHand", at, "partNumber") })),
    ...must.map((partNumber, at) => ({ partNumber, pointer: pointerTo("/must", at) })),
    ...mustNot.map((partNumber, at) => ({ partNumber, pointer: pointerTo("/mustNot", at) })),
  ];
  const unknown = named.filter(({ partNumber }) => !catalogue.byPartNumber.has(partNumber));
  if (unknown.length > 0) throw unknownPart(unknown, catalogue);
  const barred = new Set(mustNot);
  const families = new Set(mustNotFamilies);
  const faults: Fault[] = [
    ...twice(
      packs.map(({ partNumber }) => partNumber),
      "/packs",
    ),
    ...twice(
      onHand.map(({ partNumber }) => partNumber),
      "/onHand",
    ),
    ...twice(
      needDates.map(({ area }) => area),
      "/needDates",
    ),
    ...must.flatMap((partNumber, at) => {
      const family = catalogue.byPartNumber.get(partNumber)?.family;
      return barred.has(partNumber) || (family !== undefined && families.has(family))
        ? [
            {
              pointer: pointerTo("/must", at),
              detail: `${partNumber} both must and must not be stocked`,
              accepted: "a part that mustNot and mustNotFamilies do not name",
            },
          ]
        : [];
    }),
    ...(prices?.from === "request" ? priceFaults(prices.currency, prices.lines) : []),
  ];
  if (faults.length > 0) throw inconsistent(faults);
}

function priceFaults(currency: string, lines: readonly PriceLine[]): Fault[] {
  return [
    ...(isCurrency(currency)
      ? []
      : [
          {
            pointer: "/prices/currency",
            detail: `"${currency}" is not an ISO 4217 currency code in use`,
            accepted: 'an ISO 4217 code: "USD"',
          },
        ]),
    ...twice(
      lines.map(({ partNumber }) => partNumber),
      "/prices/lines",
    ),
    ...lines.flatMap(({ unit, breaks }, at) =>
      priceProblems({ unit, currency: "USD", breaks }).map((detail) => ({
        pointer: pointerTo("/prices/lines", at, "breaks"),
        detail,
        accepted: "breaks by rising quantity, each a whole number of parts with a price of 0 or more",
      })),
    ),
  ];
}

function twice(names: readonly string[], pointer: string): Fault[] {
  const seen = new Set<string>();
  return names.flatMap((name, at) => {
    const again = seen.has(name);
    seen.add(name);
    return again
      ? [{ pointer: pointerTo(pointer, at), detail: `"${name}" stands there already`, accepted: "each one once" }]
      : [];
  });
}

/** What is asked contradicts itself or what is stored. */
export function inconsistent(faults: readonly Fault[]): Problem {
  return new Problem("INCONSISTENT_REQUEST", "What is asked contradicts itself.", faults);
}
