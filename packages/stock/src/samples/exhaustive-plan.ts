import type { ItemPrice } from "../prices/item-price.js";
import type { JointClass, Maker, StockItem, StockProblem } from "../problem/stock-problem.js";

/**
 * Plans by trying every one there is: the yardstick that the planner is measured with. Nothing here is shared with the
 * planner, money is whole millionths.
 */
export interface TrialOptions {
  readonly byCost: boolean;
  readonly labourRateMillionths: bigint | null;
  readonly carryingMillionths: bigint;
  readonly leaveOut: ReadonlySet<string>;
}

export interface TrialResult {
  readonly fewest: number;
  readonly cheapest: bigint | null;
  /** The cheapest of the plans with the fewest part numbers. */
  readonly cheapestOfFewest: bigint | null;
}

/** The least joints that must be left out because stock without a price does not reach. */
export function leastLeftOut(problem: StockProblem, options: TrialOptions): number {
  const risky = problem.classes.filter((one) => {
    const makers = makersOf(problem, one, options);
    return makers.length > 0 && makers.every(({ item }) => item.price === undefined);
  });
  let least = Number.POSITIVE_INFINITY;
  for (let set = 0; set < 2 ** risky.length; set += 1) {
    const leaveOut = new Set(risky.filter((_, at) => ((set >> at) & 1) === 1).map(({ id }) => id));
    const joints = risky.reduce((sum, one) => sum + (leaveOut.has(one.id) ? one.joints : 0), 0);
    if (joints >= least) continue;
    const others = problem.classes.filter((one) => !risky.includes(one)).map(({ id }) => id);
    if (planByTrial(problem, { ...options, leaveOut: new Set([...leaveOut, ...others]) }).cheapest !== null)
      least = joints;
  }
  return least;
}

export function planByTrial(problem: StockProblem, options: TrialOptions): TrialResult {
  const classes = problem.classes
    .filter(({ id }) => !options.leaveOut.has(id))
    .map((one) => ({ one, makers: makersOf(problem, one, options) }))
    .filter(({ makers }) => makers.length > 0);
  let fewest = Number.POSITIVE_INFINITY;
  let cheapest: bigint | null = null;
  let cheapestOfFewest: bigint | null = null;
  const used = new Map<StockItem, number>();
  const visit = (at: number, labour: bigint): void => {
    const next = classes[at];
    if (next === undefined) {
      const end = endOf(problem, used, options);
      if (end === null) return;
      const cost = end.cost + labour;
      if (cheapest === null || cost < cheapest) cheapest = cost;
      if (end.count < fewest || (end.count === fewest && (cheapestOfFewest === null || cost < cheapestOfFewest)))
        cheapestOfFewest = cost;
      fewest = Math.min(fewest, end.count);
      return;
    }
    for (const joints of splits(next.one, next.makers.length)) {
      let added = labour;
      next.makers.forEach(({ item, maker }, index) => {
        const mine = joints[index] ?? 0;
        if (mine === 0) return;
        used.set(item, (used.get(item) ?? 0) + mine * maker.partsPerJoint);
        if (options.labourRateMillionths !== null)
          added += BigInt(mine) * options.labourRateMillionths * BigInt(Math.round((maker.labourHours ?? 0) * 20));
      });
      visit(at + 1, added);
      next.makers.forEach(({ item, maker }, index) => {
        const mine = joints[index] ?? 0;
        if (mine > 0) used.set(item, (used.get(item) ?? 0) - mine * maker.partsPerJoint);
      });
    }
  };
  visit(0, 0n);
  return { fewest, cheapest, cheapestOfFewest };
}

/** Least cost of at least so many parts, trying every number of packs; null when it cannot be bought. */
export function leastToBuy(price: ItemPrice | undefined, packQuantity: number, parts: number): bigint | null {
  if (parts <= 0) return 0n;
  if (price === undefined) return null;
  const last = price.breaks.at(-1)?.from ?? 0;
  let least: bigint | null = null;
  for (let packs = 1; packs * packQuantity < parts + last + packQuantity; packs += 1) {
    const bought = packs * packQuantity;
    const reached = price.breaks.filter(({ from }) => from <= bought).at(-1);
    if (bought < parts || reached === undefined) continue;
    const scale = { each: 1, "per-100": 100, "per-1000": 1000 }[price.unit];
    // Amounts of the samples have two decimals: millionths for one part come out whole for each and per 100 and 1000.
    const each = (BigInt(Math.round(Number(reached.amount) * 100)) * 10_000n) / BigInt(scale);
    const cost = each * BigInt(bought);
    if (least === null || cost < least) least = cost;
  }
  return least;
}

function makersOf(
  problem: StockProblem,
  { id }: JointClass,
  options: TrialOptions,
): { item: StockItem; maker: Maker }[] {
  const makers = problem.feasible.find(({ classId }) => classId === id)?.makers ?? [];
  return makers.flatMap((maker) => {
    const item = problem.items.find(({ partNumber }) => partNumber === maker.partNumber);
    if (item === undefined || item.mustNot === true) return [];
    if (options.byCost && item.price === undefined && (item.onHand ?? 0) === 0) return [];
    if (options.byCost && options.labourRateMillionths !== null && maker.labourHours === undefined) return [];
    return [{ item, maker }];
  });
}

/** Every way to deal the joints of a class to so many makers. */
function splits({ joints, alike = true }: JointClass, makers: number): number[][] {
  if (alike)
    return Array.from({ length: makers }, (_, at) =>
      Array.from({ length: makers }, (__, m) => (m === at ? joints : 0)),
    );
  const deal = (left: number, to: number): number[][] =>
    to === 1
      ? [[left]]
      : Array.from({ length: left + 1 }, (_, mine) => mine).flatMap((mine) =>
          deal(left - mine, to - 1).map((rest) => [mine, ...rest]),
        );
  return deal(joints, makers);
}

function endOf(
  problem: StockProblem,
  used: ReadonlyMap<StockItem, number>,
  options: TrialOptions,
): { cost: bigint; count: number } | null {
  let cost = 0n;
  let count = 0;
  for (const item of problem.items) {
    const parts = used.get(item) ?? 0;
    if (parts === 0 && item.must !== true) continue;
    count += 1;
    cost += options.carryingMillionths;
    if (!options.byCost) continue;
    const bought = leastToBuy(
      item.price,
      item.packQuantity,
      Math.max(parts, item.must === true ? 1 : 0) - (item.onHand ?? 0),
    );
    if (bought === null) return null;
    cost += bought;
  }
  return { cost, count };
}
