import type { ItemPrice, PriceUnit } from "../prices/item-price.js";
import type { Feasible, JointClass, Maker, StockItem, StockProblem } from "../problem/stock-problem.js";
import type { SeededRandom } from "./seeded-random.js";

/** How large and how odd a made-up problem is. */
export interface ProblemShape {
  readonly classes: number;
  readonly items: number;
  /** Most joints in a class that is made alike, and in one that is not. */
  readonly jointsAlike: number;
  readonly jointsApart: number;
  /** Of ten ways to make a class, how many exist. */
  readonly tenthsFeasible: number;
  /** Items are sometimes without a price, barred, or have to be stocked. */
  readonly odd: boolean;
}

/** A made-up problem; every figure is invented. */
export function randomProblem(random: SeededRandom, shape: ProblemShape): StockProblem {
  const classes = Array.from({ length: shape.classes }, (_, place) => randomClass(random, place, shape));
  const items = Array.from({ length: shape.items }, (_, place) => randomItem(random, place, shape));
  const feasible = classes.map(({ id }): Feasible => {
    const makers = items
      .filter(() => random.below(10) < shape.tenthsFeasible)
      .map(({ partNumber }) => randomMaker(random, partNumber, shape));
    return { classId: id, makers };
  });
  return { classes, items, feasible: random.shuffled(feasible.filter(({ makers }) => makers.length > 0)) };
}

/** The same problem, written down in another order. */
export function shuffledProblem(random: SeededRandom, problem: StockProblem): StockProblem {
  return {
    classes: random.shuffled(problem.classes),
    items: random.shuffled(problem.items),
    feasible: random
      .shuffled(problem.feasible)
      .map(({ classId, makers }) => ({ classId, makers: random.shuffled(makers) })),
  };
}

function randomClass(random: SeededRandom, place: number, shape: ProblemShape): JointClass {
  const alike = random.below(4) > 0;
  const joints = 1 + random.below(alike ? shape.jointsAlike : shape.jointsApart);
  const id = `class-${String(place + 1).padStart(3, "0")}`;
  return { id, joints, marks: [`M-${String(place + 1)}`], areas: [{ area: "hall", joints }], alike };
}

function randomItem(random: SeededRandom, place: number, { odd }: ProblemShape): StockItem {
  const rare = odd ? random.below(10) : 9;
  return {
    partNumber: `item-${String(place + 1).padStart(4, "0")}`,
    packQuantity: random.pick([1, 1, 1, 2, 5, 10]),
    ...(odd && random.below(8) === 0 ? {} : { price: randomPrice(random, odd) }),
    ...(random.below(3) === 0 ? { onHand: random.below(9) } : {}),
    ...(rare === 0 ? { must: true } : {}),
    ...(rare === 1 ? { mustNot: true } : {}),
  };
}

function randomPrice(random: SeededRandom, odd: boolean): ItemPrice {
  const unit: PriceUnit = random.pick(["each", "each", "per-100", "per-1000"]);
  const scale = unit === "each" ? 1 : unit === "per-100" ? 100 : 1000;
  let each = 40 + random.below(400);
  let from = odd && random.below(8) === 0 ? 3 : 1;
  const breaks = [];
  for (let left = 1 + random.below(3); left > 0; left -= 1) {
    breaks.push({ from, amount: ((each * scale) / 100).toFixed(2) });
    from += 2 + random.below(12);
    each = odd && random.below(6) === 0 ? each + 15 : Math.max(1, each - random.below(60));
  }
  return { unit, currency: "USD", breaks };
}

function randomMaker(random: SeededRandom, partNumber: string, { odd }: ProblemShape): Maker {
  return {
    partNumber,
    verdict: random.below(4) === 0 ? "accept-with-conditions" : "accept",
    partsPerJoint: random.pick([1, 1, 1, 2, 3]),
    ...(odd && random.below(8) === 0 ? {} : { labourHours: (1 + random.below(20)) / 20 }),
  };
}
