import { compareExact, type Exact, exactOf } from "@landfast/rules";
import { plus, times } from "../money/decimal.js";
import { addingCosts, isNeverDearer, plainEach, removingSaves } from "../plan/item-cost.js";
import type { Offer, OfferedClass, OfferedItem, OfferedMaker } from "../plan/offer.js";

/** What the cost of a plan is made of besides parts and labor. */
export interface CostFrame {
  /** For every part number stocked; zero where none is stated. */
  readonly carrying: Exact;
  /** The number of part numbers is limited, so that opening another may not be possible at any price. */
  readonly countIsLimited: boolean;
}

/**
 * Leaves out ways to make a class that some cheapest plan does without. Two kinds of step, repeated until neither
 * applies; each keeps at least one cheapest plan, with no more part numbers.
 *
 * Lesser items: item `a` goes when `b` can make every class that `a` can, with no more parts for a joint, at no more
 * labor, and any number of parts of `b`, bought new, costs no more than as many of `a`. Take a plan with `a` and let
 * `b` make all that `a` made: the plan saves all that `a` cost, for none of it was on hand, and pays at most the price of
 * the same parts of `b` bought by themselves, since adding parts never costs more than buying them apart. `b` counts
 * as a part number instead of `a`. Of two items that are lesser to each other the later one goes.
 *
 * Dearer makers: `a` goes as a maker of one class when another maker `b` is cheaper there whatever else the plan holds:
 * the most that `b` can add (its parts bought apart, its labor, and what carrying it costs unless it is in every plan)
 * is less than the least that taking the class from `a` saves. Then no cheapest plan makes the class with `a`. Where the
 * number of part numbers is limited only items that are in every plan count as `b`.
 */
export function reduceOffer(offer: Offer, frame: CostFrame): readonly OfferedClass[] {
  let classes = offer.classes;
  for (;;) {
    const before = makersIn(classes);
    classes = withoutDearerMakers(classes, offer.items, frame);
    classes = withoutLesserItems(classes, offer.items);
    if (makersIn(classes) === before) return classes;
  }
}

/** Items in every plan: those that must be stocked, and the only makers of some class. */
export function itemsInEveryPlan(classes: readonly OfferedClass[], items: readonly OfferedItem[]): ReadonlySet<number> {
  const places = new Set(items.flatMap(({ must }, place) => (must ? [place] : [])));
  for (const { makers } of classes) if (makers.length === 1) for (const { item } of makers) places.add(item);
  return places;
}

export function makersIn(classes: readonly OfferedClass[]): number {
  return classes.reduce((sum, { makers }) => sum + makers.length, 0);
}

function withoutDearerMakers(
  classes: readonly OfferedClass[],
  items: readonly OfferedItem[],
  frame: CostFrame,
): readonly OfferedClass[] {
  const always = itemsInEveryPlan(classes, items);
  return classes.map((one) => {
    const ceiling = leastCeiling(one, items, frame, always);
    if (ceiling === null) return one;
    const makers = one.makers.filter((maker) => compareExact(ceiling, savedByMoving(one, maker, items)) >= 0);
    return makers.length === one.makers.length ? one : { ...one, makers };
  });
}

/**
 * The least over all makers of the most that giving the whole class to that maker can add. A class that is not made
 * alike may move joint by joint, so it is looked at one joint at a time, and only makers whose cost is parts x price
 * bound every number of joints at once.
 */
function leastCeiling(
  { alike, jointClass, makers }: OfferedClass,
  items: readonly OfferedItem[],
  { carrying, countIsLimited }: CostFrame,
  always: ReadonlySet<number>,
): Exact | null {
  let least: Exact | null = null;
  const joints = alike ? jointClass.joints : 1;
  for (const maker of makers) {
    const item = items[maker.item];
    const isAlways = always.has(maker.item);
    if (item === undefined || (countIsLimited && !isAlways)) continue;
    if (!alike && plainEach(item) === null) continue;
    const parts = addingCosts(item, joints * maker.partsPerJoint);
    if (parts === null) continue;
    const making = plus(parts, times(maker.labour, exactOf(joints)));
    const ceiling = isAlways ? making : plus(making, carrying);
    if (least === null || compareExact(ceiling, least) < 0) least = ceiling;
  }
  return least;
}

function savedByMoving({ alike, jointClass }: OfferedClass, maker: OfferedMaker, items: readonly OfferedItem[]): Exact {
  const item = items[maker.item];
  if (item === undefined) throw new RangeError("no such item in the offer");
  const joints = alike ? jointClass.joints : 1;
  return plus(removingSaves(item, joints * maker.partsPerJoint), times(maker.labour, exactOf(joints)));
}

function withoutLesserItems(classes: readonly OfferedClass[], items: readonly OfferedItem[]): readonly OfferedClass[] {
  const ways = new Map<number, Map<number, OfferedMaker>>();
  const narrowest = new Map<number, OfferedClass>();
  classes.forEach((one, place) => {
    for (const maker of one.makers) {
      const known = ways.get(maker.item);
      if (known === undefined) ways.set(maker.item, new Map([[place, maker]]));
      else known.set(place, maker);
      const rivals = narrowest.get(maker.item);
      if (rivals === undefined || one.makers.length < rivals.makers.length) narrowest.set(maker.item, one);
    }
  });
  const dropped = new Set<number>();
  for (const [place, mine] of ways) {
    const item = items[place];
    if (item === undefined || item.must) continue;
    for (const { item: otherPlace } of narrowest.get(place)?.makers ?? []) {
      if (otherPlace === place || dropped.has(otherPlace)) continue;
      const other = items[otherPlace];
      const theirs = ways.get(otherPlace);
      if (other === undefined || theirs === undefined || theirs.size < mine.size) continue;
      if (!isLesser(item, mine, other, theirs)) continue;
      if (otherPlace > place && isLesser(other, theirs, item, mine) && !other.must) continue;
      dropped.add(place);
      break;
    }
  }
  if (dropped.size === 0) return classes;
  return classes.map((one) =>
    one.makers.some(({ item }) => dropped.has(item))
      ? { ...one, makers: one.makers.filter(({ item }) => !dropped.has(item)) }
      : one,
  );
}

function isLesser(
  item: OfferedItem,
  mine: ReadonlyMap<number, OfferedMaker>,
  other: OfferedItem,
  theirs: ReadonlyMap<number, OfferedMaker>,
): boolean {
  for (const [place, maker] of mine) {
    const instead = theirs.get(place);
    if (instead === undefined || instead.partsPerJoint > maker.partsPerJoint) return false;
    if (compareExact(instead.labour, maker.labour) > 0) return false;
  }
  return isNeverDearer(other, item);
}
