import { type Exact, exactOf } from "@landfast/rules";
import { times, ZERO } from "../money/decimal.js";
import { breakAt, cheapestPurchase, eachAt, type Purchase, priceFalls } from "../prices/item-price.js";
import type { OfferedItem } from "./offer.js";

/**
 * Cost of an item as a function of the parts used of it.
 *
 * Write T(q) for the least that must be paid so that q parts are there, and F(q) for the same with nothing on hand.
 * Both never fall as q rises. Where the price of one part never rises with quantity, buying two lots together costs no
 * more than apart, so T(q + r) <= T(q) + F(r): adding r parts to a plan costs at most F(r) whatever the plan holds.
 */

/** Parts to be bought when so many are used: what is not on hand; at least one part of an item that must be stocked. */
export function partsToBuy(item: OfferedItem, partsUsed: number): number {
  return Math.max(0, Math.max(partsUsed, item.must ? 1 : 0) - item.onHand);
}

/** The purchase for so many parts used; null where they must be bought and the price is not known. */
export function purchaseFor(item: OfferedItem, partsUsed: number): Purchase | null {
  const parts = partsToBuy(item, partsUsed);
  if (parts === 0) return { packs: 0, bought: 0, each: null, breakFrom: null, cost: ZERO };
  return item.price === null ? null : cheapestPurchase(item.price, item.packQuantity, parts);
}

/**
 * Price of one part where cost is simply parts x price: sold singly at one price, none on hand, not a must. Null for
 * every other item.
 */
export function plainEach(item: OfferedItem): Exact | null {
  const { price, packQuantity, onHand, must } = item;
  const only = price?.breaks[0];
  if (price === null || only === undefined || price.breaks.length !== 1 || only.from !== 1) return null;
  return packQuantity === 1 && onHand === 0 && !must ? eachAt(price, only.amount) : null;
}

/** F(parts): the most that adding so many parts to any plan can cost; null where no such bound is known. */
export function addingCosts(item: OfferedItem, parts: number): Exact | null {
  if (item.price === null || !priceFalls(item.price)) return null;
  return cheapestPurchase(item.price, item.packQuantity, parts).cost;
}

/** The least that taking so many parts out of any plan saves. */
export function removingSaves(item: OfferedItem, parts: number): Exact {
  const each = plainEach(item);
  return each === null ? ZERO : times(each, exactOf(parts));
}

/**
 * True when any number of parts of `b`, none on hand, costs no more than as many of `a`.
 *
 * Sufficient, not necessary: none of `a` is on hand, `b`'s pack divides `a`'s, and at every quantity one part of `b`
 * costs no more. Then whatever purchase of `a` is best, the same number of parts of `b` comes in whole packs and costs no
 * more. The price of one part changes at breaks only, so the breaks of both are the quantities to look at.
 */
export function isNeverDearer(b: OfferedItem, a: OfferedItem): boolean {
  if (a.onHand > 0 || a.price === null || b.price === null || !priceFalls(b.price)) return false;
  if (a.packQuantity % b.packQuantity !== 0) return false;
  for (const { from } of [...a.price.breaks, ...b.price.breaks]) {
    const ofA = breakAt(a.price, from);
    // Below the smallest quantity of a no purchase of a stands to be beaten.
    if (ofA === null) continue;
    const ofB = breakAt(b.price, from);
    if (ofB === null) return false;
    const eachA = eachAt(a.price, ofA.amount);
    const eachB = eachAt(b.price, ofB.amount);
    if (eachB.numerator * eachA.denominator > eachA.numerator * eachB.denominator) return false;
  }
  return true;
}
