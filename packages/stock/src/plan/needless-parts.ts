import { compareExact, type Exact, exactOf } from "@landfast/rules";
import { minus, plus, times, ZERO } from "../money/decimal.js";
import { purchaseFor } from "./item-cost.js";
import type { OfferedClass, OfferedItem, OfferedMaker } from "./offer.js";
import type { Share } from "./settle-plan.js";

/**
 * Leaves out part numbers that a plan by cost can do without at no more cost: of plans that cost the same, nobody wants
 * the one with more part numbers. Part by part, the one with the fewest joints first, its classes are given to the
 * cheapest of the parts that stay; when the plan then costs no more, the part has gone. The cost never rises, so a
 * cheapest plan stays one. Which of equal plans is reached depends on this order only.
 * Worked: C must be stocked and one is bought in any case; A, B and C each make one class: B can make A's class too at the
 * same price, so A goes.
 */
export function withoutNeedlessParts(
  classes: readonly OfferedClass[],
  items: readonly OfferedItem[],
  carrying: Exact,
  shares: readonly Share[],
): readonly Share[] {
  let plan = shares;
  for (const place of placesByJoints(shares)) {
    if (items[place]?.must === true) continue;
    plan = withoutPart(place, classes, items, carrying, plan) ?? plan;
  }
  return plan;
}

/** The plan without one part, or null where that costs more or cannot be. */
function withoutPart(
  place: number,
  classes: readonly OfferedClass[],
  items: readonly OfferedItem[],
  carrying: Exact,
  plan: readonly Share[],
): readonly Share[] | null {
  const staying = plan.filter(({ maker }) => maker.item !== place);
  const going = plan.filter(({ maker }) => maker.item === place);
  const used = partsUsed(staying);
  const open = new Set([...used.keys(), ...items.flatMap(({ must }, at) => (must ? [at] : []))]);
  const saved = plus(costOf(items, place, partsUsed(going).get(place) ?? 0) ?? ZERO, carrying);
  let change = minus(minus(ZERO, saved), labourOf(going));
  const moved: Share[] = [];
  for (const { classPlace, joints } of going) {
    let best: { maker: OfferedMaker; added: Exact } | null = null;
    for (const maker of classes[classPlace]?.makers ?? []) {
      if (maker.item === place || !open.has(maker.item)) continue;
      const before = used.get(maker.item) ?? 0;
      const costBefore = costOf(items, maker.item, before);
      const costAfter = costOf(items, maker.item, before + joints * maker.partsPerJoint);
      if (costBefore === null || costAfter === null) continue;
      const added = plus(minus(costAfter, costBefore), times(maker.labour, exactOf(joints)));
      if (best === null || compareExact(added, best.added) < 0) best = { maker, added };
    }
    if (best === null) return null;
    const { maker, added } = best;
    used.set(maker.item, (used.get(maker.item) ?? 0) + joints * maker.partsPerJoint);
    change = plus(change, added);
    moved.push({ classPlace, maker, joints });
  }
  return compareExact(change, ZERO) <= 0 ? merged([...staying, ...moved]) : null;
}

/** Joints of one class that come to the same maker are one share. */
function merged(shares: readonly Share[]): Share[] {
  const known = new Map<string, Share>();
  for (const share of shares) {
    const key = `${String(share.classPlace)}/${String(share.maker.item)}`;
    const before = known.get(key);
    known.set(key, before === undefined ? share : { ...share, joints: before.joints + share.joints });
  }
  return [...known.values()];
}

function placesByJoints(shares: readonly Share[]): number[] {
  const joints = new Map<number, number>();
  for (const share of shares) joints.set(share.maker.item, (joints.get(share.maker.item) ?? 0) + share.joints);
  return [...joints].sort(([a, few], [b, many]) => few - many || a - b).map(([place]) => place);
}

function partsUsed(shares: readonly Share[]): Map<number, number> {
  const used = new Map<number, number>();
  for (const { maker, joints } of shares)
    used.set(maker.item, (used.get(maker.item) ?? 0) + joints * maker.partsPerJoint);
  return used;
}

function labourOf(shares: readonly Share[]): Exact {
  return shares.reduce((sum, { maker, joints }) => plus(sum, times(maker.labour, exactOf(joints))), ZERO);
}

function costOf(items: readonly OfferedItem[], place: number, parts: number): Exact | null {
  const item = items[place];
  return item === undefined ? null : (purchaseFor(item, parts)?.cost ?? null);
}
