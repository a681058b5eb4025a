import { compareExact, type Exact, exactOf } from "@landfast/rules";
import { times } from "../money/decimal.js";
import { eachAt } from "../prices/item-price.js";
import { partsToBuy } from "./item-cost.js";
import type { OfferedItem } from "./offer.js";

/** One way to come by the parts of an item: at one price break, in a number of packs from `least` to `most`. */
export interface BuyingMode {
  readonly from: number;
  readonly least: number;
  readonly most: number;
  /** Cost of one pack. */
  readonly pack: Exact;
}

/**
 * The price breaks of an item that a plan can make use of, when it uses no more than so many parts of it. Packs beyond
 * what is needed are bought only to reach a break. A break that is only reached that
 * way goes when reaching it costs at least as much as buying all that can ever be needed at a break before it.
 * Worked: packs of 10, at most 85 parts, 1.00 each and 0.80 from 100: 1 to 9 packs at 10.00, 10 packs at 8.00. With at
 * most 80 parts the second goes: 80.00 is no less than 80.00.
 */
export function buyingModes(item: OfferedItem, mostUsed: number): readonly BuyingMode[] {
  const { price, packQuantity } = item;
  const mostParts = partsToBuy(item, mostUsed);
  if (price === null || mostParts === 0) return [];
  const needed = Math.ceil(mostParts / packQuantity);
  const modes: BuyingMode[] = [];
  for (const [index, { from, amount }] of price.breaks.entries()) {
    const next = price.breaks[index + 1];
    const least = Math.ceil(from / packQuantity);
    const below = next === undefined ? Number.POSITIVE_INFINITY : Math.ceil(next.from / packQuantity) - 1;
    const most = Math.min(below, Math.max(least, needed));
    // Packs so large that they jump over the break.
    if (most < least) continue;
    const pack = times(eachAt(price, amount), exactOf(packQuantity));
    if (least > needed) {
      const reaching = times(pack, exactOf(least));
      const isIdle = modes.some(
        (mode) =>
          mode.most >= needed && compareExact(times(mode.pack, exactOf(Math.max(mode.least, needed))), reaching) <= 0,
      );
      if (isIdle) continue;
    }
    modes.push({ from, least, most, pack });
  }
  return modes;
}
