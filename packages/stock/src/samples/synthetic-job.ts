import type { ItemPrice } from "../prices/item-price.js";
import type { Feasible, JointClass, Maker, StockItem, StockProblem } from "../problem/stock-problem.js";
import type { SeededRandom } from "./seeded-random.js";

/** A job as jobs are: sizes on one axis, parts that take a range of them, fewer parts for harder places. */
export interface JobShape {
  readonly joints: number;
  readonly classes: number;
  readonly items: number;
  /** Whether parts are sold in packs and have price breaks, and some are on hand. */
  readonly packs: boolean;
}

const SIZES = 22;

interface Wanted {
  readonly size: number;
  readonly metal: number;
  readonly fixing: number;
  readonly place: number;
}

/** A made-up job; every figure is invented. Joints are dealt to classes unevenly, a few classes hold most of them. */
export function syntheticJob(random: SeededRandom, shape: JobShape): StockProblem {
  const wanted: Wanted[] = Array.from({ length: shape.classes }, () => ({
    size: random.below(SIZES),
    metal: random.below(3) === 0 ? 1 : 0,
    fixing: random.below(6),
    place: random.pick([0, 0, 0, 0, 1, 1, 2]),
  }));
  const weights = wanted.map(() => random.unit() ** 3 + 0.01);
  const weight = weights.reduce((sum, one) => sum + one, 0);
  const classes = wanted.map((_, place): JointClass => {
    const joints = Math.max(1, Math.round(((weights[place] ?? 0) / weight) * shape.joints));
    return { id: `class-${String(place).padStart(4, "0")}`, joints, marks: [], areas: [], alike: true };
  });
  const items: StockItem[] = [];
  const makers: Maker[][] = wanted.map(() => []);
  for (let place = 0; place < shape.items; place += 1) {
    const from = random.below(SIZES);
    const to = Math.min(SIZES - 1, from + random.below(9));
    const bothMetals = random.below(3) > 0;
    const fixing = random.below(6);
    const listedFor = random.pick([0, 0, 1, 1, 2]);
    const partNumber = `item-${String(place).padStart(5, "0")}`;
    const each = 150 + to * to * 9 + (to - from) * 60 + (bothMetals ? 40 : 0) + listedFor * 120 + random.below(400);
    items.push({
      partNumber,
      packQuantity: shape.packs ? random.pick([1, 1, 5, 10, 25]) : 1,
      price: priceOf(random, each, shape.packs),
      ...(shape.packs && random.below(10) === 0 ? { onHand: random.below(40) } : {}),
    });
    wanted.forEach((one, at) => {
      if (one.size < from || one.size > to || one.fixing !== fixing || one.place > listedFor) return;
      if (one.metal === 1 && !bothMetals) return;
      makers[at]?.push({
        partNumber,
        verdict: "accept",
        partsPerJoint: 1,
        labourHours: (20 + one.size * 3 + random.below(4)) / 100,
      });
    });
  }
  const feasible = classes.map(({ id }, at): Feasible => ({ classId: id, makers: makers[at] ?? [] }));
  return { classes, items, feasible: feasible.filter((one) => one.makers.length > 0) };
}

function priceOf(random: SeededRandom, cents: number, breaks: boolean): ItemPrice {
  const amount = (each: number): string => (each / 100).toFixed(2);
  const first = { from: 1, amount: amount(cents) };
  if (!breaks || random.below(2) === 0) return { unit: "each", currency: "USD", breaks: [first] };
  return {
    unit: "each",
    currency: "USD",
    breaks: [
      first,
      { from: 50, amount: amount(Math.round(cents * 0.92)) },
      { from: 250, amount: amount(Math.round(cents * 0.85)) },
    ],
  };
}
