import { compareExact, type Exact, exactOf } from "@landfast/rules";
import { plus, times } from "../money/decimal.js";
import { eachAt } from "../prices/item-price.js";
import type { OfferedClass, OfferedItem, OfferedMaker } from "./offer.js";
import type { Share } from "./settle-plan.js";

/**
 * Gives every class, of the items chosen, the one whose parts and labor cost least for one joint at the first price
 * break; an item without a price comes after all that have one; then the one with fewer parts for a joint; then the
 * first part number.
 * @throws RangeError when no chosen item can make a class.
 */
export function sharesWithin(
  classes: readonly OfferedClass[],
  items: readonly OfferedItem[],
  chosen: ReadonlySet<number>,
): Share[] {
  return classes.map(({ jointClass, makers }, classPlace) => {
    const ranked = makers
      .filter(({ item }) => chosen.has(item))
      .map((maker) => ({ maker, cost: costOfOne(maker, items[maker.item]) }))
      .sort((a, b) => byCost(a.cost, b.cost) || byParts(a.maker, b.maker));
    const [best] = ranked;
    if (best === undefined) throw new RangeError(`no chosen item can make class ${jointClass.id}`);
    return { classPlace, maker: best.maker, joints: jointClass.joints };
  });
}

function costOfOne(maker: OfferedMaker, item: OfferedItem | undefined): Exact | null {
  const price = item?.price ?? null;
  const first = price?.breaks[0];
  if (price === null || first === undefined) return null;
  return plus(times(eachAt(price, first.amount), exactOf(maker.partsPerJoint)), maker.labour);
}

function byCost(a: Exact | null, b: Exact | null): number {
  if (a === null || b === null) return Number(a === null) - Number(b === null);
  return compareExact(a, b);
}

function byParts(a: OfferedMaker, b: OfferedMaker): number {
  return a.partsPerJoint - b.partsPerJoint || a.item - b.item;
}
