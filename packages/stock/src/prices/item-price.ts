import { compareExact, type Exact, exactOf } from "@landfast/rules";
import { isCurrency } from "../money/currency.js";
import { decimalOf, isDecimalText, over, times, ZERO } from "../money/decimal.js";
import { commonCurrency } from "../money/money.js";

/** How many parts a printed price is for. */
export type PriceUnit = "each" | "per-100" | "per-1000";
export const PRICE_UNITS: readonly PriceUnit[] = ["each", "per-100", "per-1000"];

/** From so many parts bought together on, all of them cost this much. */
export interface QuantityBreak {
  /** Parts, not packs; a whole number from 1 up. */
  readonly from: number;
  /** Decimal text, for one price unit. */
  readonly amount: string;
}

/**
 * The price of one part number. The break that the whole quantity reaches applies to every part of it. A first break
 * above 1 is the smallest quantity sold.
 */
export interface ItemPrice {
  readonly unit: PriceUnit;
  readonly currency: string;
  /** By rising `from`; never empty. */
  readonly breaks: readonly QuantityBreak[];
}

/** What buying at least some number of parts comes to, the cheapest way. */
export interface Purchase {
  readonly packs: number;
  /** Parts bought: packs x pack quantity. */
  readonly bought: number;
  /** Price of one part at the break that applies, and where that break begins. Null when nothing is bought. */
  readonly each: Exact | null;
  readonly breakFrom: number | null;
  readonly cost: Exact;
}

const PARTS_PER: Readonly<Record<PriceUnit, Exact>> = {
  each: exactOf(1),
  "per-100": exactOf(100),
  "per-1000": exactOf(1000),
};

/** What is wrong with a price, one sentence each; empty when it can be used. */
export function priceProblems(price: ItemPrice): string[] {
  const problems: string[] = [];
  if (!isCurrency(price.currency)) problems.push(`${JSON.stringify(price.currency)} is not an ISO 4217 currency code`);
  if (!PRICE_UNITS.includes(price.unit)) problems.push(`the price unit is ${PRICE_UNITS.join(", ")}`);
  if (price.breaks.length === 0) problems.push("a price has at least one break");
  let before = 0;
  for (const { from, amount } of price.breaks) {
    if (!Number.isSafeInteger(from) || !(from > before))
      problems.push(`breaks begin at whole numbers of parts, each above the one before: ${String(from)}`);
    before = from;
    if (!isDecimalText(amount) || amount.startsWith("-"))
      problems.push(`a price is decimal text, not below zero: ${JSON.stringify(amount)}`);
  }
  return problems;
}

/** Price of one part at a break, exactly. Worked: 12.34 per 100 -> 0.1234. */
export function eachAt(price: ItemPrice, amount: string): Exact {
  return over(decimalOf(amount), PARTS_PER[price.unit]);
}

/** The break that a quantity reaches, or null below the smallest quantity sold. */
export function breakAt(price: ItemPrice, parts: number): QuantityBreak | null {
  return price.breaks.findLast(({ from }) => from <= parts) ?? null;
}

/** True when a larger quantity never has a higher price for one part. */
export function priceFalls(price: ItemPrice): boolean {
  return price.breaks.every(({ amount }, index) => {
    const next = price.breaks[index + 1];
    return next === undefined || compareExact(decimalOf(next.amount), decimalOf(amount)) <= 0;
  });
}

/**
 * The cheapest way to buy at least so many parts in whole packs; of two ways that cost the same, the one with fewer
 * packs. Buying up to a break is taken when it costs less.
 * Worked: packs of 10 at 1.00 each, 0.80 from 100 on. 85 parts: 9 packs are 90.00, 10 packs reach the break and are
 * 80.00, so 10 packs.
 */
export function cheapestPurchase(price: ItemPrice, packQuantity: number, parts: number): Purchase {
  let best: Purchase = { packs: 0, bought: 0, each: null, breakFrom: null, cost: ZERO };
  if (parts <= 0) return best;
  for (const { from } of price.breaks) {
    const packs = Math.ceil(Math.max(parts, from) / packQuantity);
    const one = purchaseOf(price, packQuantity, packs);
    if (best.packs === 0 || compareExact(one.cost, best.cost) < 0) best = one;
  }
  return best;
}

/** The one currency of several prices, null when there is none. @throws UnlikeCurrencies. */
export function priceCurrency(prices: readonly ItemPrice[]): string | null {
  return commonCurrency(prices.map(({ currency }) => currency));
}

function purchaseOf(price: ItemPrice, packQuantity: number, packs: number): Purchase {
  const bought = packs * packQuantity;
  const reached = breakAt(price, bought);
  if (reached === null) throw new RangeError(`${String(bought)} parts are below the smallest quantity sold`);
  const each = eachAt(price, reached.amount);
  return { packs, bought, each, breakFrom: reached.from, cost: times(each, exactOf(bought)) };
}
