/** A part as its price is printed, and which classes of joints it makes. */
export interface CountedPart {
  readonly pack: number;
  readonly cents: bigint;
  /** Places of classes. */
  readonly makes: readonly number[];
}

/**
 * The least cost of making every class with no more than k parts, for every k from 0 up: by trying, not by a solver, and
 * in whole cents. null: it cannot be done with so few.
 *
 * The first class that is not made yet is made by some part, and that part makes some set of the classes that it can:
 * every such set is tried, and what is left is worked out once for every set of classes left. A part may be tried for two
 * sets; that never costs less than for both at once, since packs are whole, so the least is right. Classes that share
 * no part with the others are worked out by themselves and put together afterwards.
 */
export function costByCount(joints: readonly number[], parts: readonly CountedPart[]): (bigint | null)[] {
  let all: (bigint | null)[] = [0n];
  for (const group of apart(joints.length, parts)) all = together(all, ofGroup(group, joints, parts));
  return all;
}

type Costs = (bigint | null)[];

function ofGroup(group: readonly number[], joints: readonly number[], parts: readonly CountedPart[]): Costs {
  const bitOf = new Map(group.map((place, bit) => [place, bit]));
  // For every set of classes that one part can make, the least that part costs, under the lowest class of the set.
  const sets: Map<number, bigint>[] = group.map(() => new Map<number, bigint>());
  for (const { pack, cents, makes } of parts) {
    const mine = makes.filter((place) => bitOf.has(place));
    for (let choice = 1; choice < 2 ** mine.length; choice += 1) {
      const chosen = mine.filter((_, at) => ((choice >> at) & 1) === 1);
      const count = chosen.reduce((sum, place) => sum + (joints[place] ?? 0), 0);
      const cost = BigInt(Math.ceil(count / pack) * pack) * cents;
      const bits = chosen.map((place) => bitOf.get(place) ?? 0);
      const mask = bits.reduce((sum, bit) => sum + 2 ** bit, 0);
      const known = sets[Math.min(...bits)];
      const before = known?.get(mask);
      if (before === undefined || cost < before) known?.set(mask, cost);
    }
  }
  const worked = new Map<number, Costs>();
  const costsOf = (left: number): Costs => {
    if (left === 0) return [0n];
    const known = worked.get(left);
    if (known !== undefined) return known;
    const lowest = group.findIndex((_, bit) => ((left >> bit) & 1) === 1);
    const costs: Costs = [];
    for (const [mask, cost] of sets[lowest] ?? []) {
      if ((mask & left) !== mask) continue;
      costsOf(left - mask).forEach((rest, count) => {
        if (rest === null) return;
        const before = costs[count + 1] ?? null;
        if (before === null || cost + rest < before) costs[count + 1] = cost + rest;
      });
    }
    worked.set(left, costs);
    return costs;
  };
  return atMost(costsOf(2 ** group.length - 1));
}

/** Fills gaps, and lets no larger count cost more. */
function atMost(costs: Costs): Costs {
  let least: bigint | null = null;
  return Array.from({ length: costs.length }, (_, count) => {
    const cost = costs[count] ?? null;
    if (cost !== null && (least === null || cost < least)) least = cost;
    return least;
  });
}

function together(a: Costs, b: Costs): Costs {
  const costs: Costs = Array.from({ length: a.length + b.length - 1 }, () => null);
  a.forEach((one, count) => {
    b.forEach((other, more) => {
      if (one === null || other === null) return;
      const before = costs[count + more] ?? null;
      if (before === null || one + other < before) costs[count + more] = one + other;
    });
  });
  return atMost(costs);
}

/** Classes in groups that share no part. */
function apart(classes: number, parts: readonly CountedPart[]): number[][] {
  const group = Array.from({ length: classes }, (_, place) => place);
  for (const { makes } of parts) {
    const touched = new Set(makes.map((place) => group[place]));
    const [first] = touched;
    if (first === undefined) continue;
    group.forEach((one, place) => {
      if (touched.has(one)) group[place] = first;
    });
  }
  return [...new Set(group)].map((one) => group.flatMap((other, place) => (other === one ? [place] : [])));
}
