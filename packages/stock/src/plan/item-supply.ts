import { compareExact, type Exact, exactOf } from "@landfast/rules";
import { times } from "../money/decimal.js";
import { type BuyingMode, buyingModes } from "./buying-modes.js";
import { partsToBuy, plainEach } from "./item-cost.js";
import type { OfferedItem } from "./offer.js";

/**
 * How the parts of an item come about, as an integer model is told.
 *
 * plain: every part costs the same. pooled: from stock, then in packs at one price. switched: one of several ways, each
 * with packs from a least to a most number; joints are written for each way apart, which keeps a solver from
 * paying the price of a large quantity for a small one in its relaxation.
 */
export type ItemSupply =
  | { readonly kind: "plain"; readonly each: Exact }
  | { readonly kind: "pooled"; readonly mode: BuyingMode | null }
  | { readonly kind: "switched"; readonly ways: readonly SupplyWay[] };

/** From stock alone, or at one price break on top of the stock. */
export type SupplyWay = { readonly kind: "stock" } | { readonly kind: "bought"; readonly mode: BuyingMode };

/** The supply of an item of which no more than so many parts are used. */
export function supplyOf(item: OfferedItem, mostUsed: number): ItemSupply {
  const each = plainEach(item);
  if (each !== null) return { kind: "plain", each };
  const modes = buyingModes(item, mostUsed);
  const [only = null, second] = modes;
  if (second === undefined && (only === null || only.least === 1)) return { kind: "pooled", mode: only };
  return {
    kind: "switched",
    ways: [
      ...(item.onHand > 0 ? [{ kind: "stock" } as const] : []),
      ...modes.map((mode) => ({ kind: "bought", mode }) as const),
    ],
  };
}

/** The way, and the packs, in which so many used parts cost least. */
export function cheapestWay(
  item: OfferedItem,
  ways: readonly SupplyWay[],
  partsUsed: number,
): { readonly way: number; readonly packs: number } | null {
  const needed = Math.ceil(partsToBuy(item, partsUsed) / item.packQuantity);
  let best: { way: number; packs: number; cost: Exact } | null = null;
  for (const [way, one] of ways.entries()) {
    if (one.kind === "stock") {
      if (needed === 0) return { way, packs: 0 };
      continue;
    }
    const packs = Math.max(one.mode.least, needed);
    if (packs > one.mode.most) continue;
    const cost = times(one.mode.pack, exactOf(packs));
    if (best === null || compareExact(cost, best.cost) < 0) best = { way, packs, cost };
  }
  return best;
}
