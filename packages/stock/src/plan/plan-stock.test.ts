import { describe, expect, it } from "vitest";
import { UnlikeCurrencies } from "../money/money.js";
import type { ItemPrice } from "../prices/item-price.js";
import { UnusableProblem } from "../problem/check-problem.js";
import type { JointClass, StockItem, StockProblem } from "../problem/stock-problem.js";
import { randomProblem, shuffledProblem } from "../samples/random-problem.js";
import { seededRandom } from "../samples/seeded-random.js";
import { directSolver } from "../solver/direct-solver.js";
import { ThreadSolver } from "../solver/thread-solver.js";
import { NoSuchPlan, planStock } from "./plan-stock.js";
import type { Objective } from "./stock-plan.js";

function each(amount: string, currency = "USD"): ItemPrice {
  return { unit: "each", currency, breaks: [{ from: 1, amount }] };
}

function jointClass(id: string, joints: number, alike = true): JointClass {
  return { id, joints, marks: [`mark-${id}`], areas: [], alike };
}

function problemOf(
  classes: readonly JointClass[],
  items: readonly StockItem[],
  feasible: Readonly<Record<string, readonly string[]>>,
): StockProblem {
  return {
    classes,
    items,
    feasible: Object.entries(feasible).map(([classId, partNumbers]) => ({
      classId,
      makers: partNumbers.map((partNumber) => ({ partNumber, verdict: "accept", partsPerJoint: 1, labourHours: 0.5 })),
    })),
  };
}

/** The worked line of planStock. */
const three = problemOf(
  [jointClass("1", 1), jointClass("2", 1), jointClass("3", 1)],
  [
    { partNumber: "A", packQuantity: 1, price: each("1") },
    { partNumber: "B", packQuantity: 1, price: each("1") },
    { partNumber: "C", packQuantity: 1, price: each("5") },
  ],
  { "1": ["A", "C"], "2": ["A", "B", "C"], "3": ["B", "C"] },
);
const OBJECTIVES: readonly Objective[] = [
  { kind: "fewest-part-numbers" },
  { kind: "least-cost" },
  { kind: "least-cost-with-carrying-cost", carryingCost: { amount: "2.50", currency: "USD" } },
  { kind: "fewest-then-cheapest" },
];

describe("stock plan", { timeout: 120_000 }, () => {
  // hand: C alone makes all three at 15; A and B make them at 3.
  it("plans the worked line by every objective", async () => {
    const [fewest, cheapest, carried, both] = await Promise.all(
      OBJECTIVES.map((objective) => planStock(three, objective, directSolver)),
    );
    expect(fewest?.parts.map(({ partNumber }) => partNumber)).toEqual(["C"]);
    expect(fewest?.cost?.total).toEqual({ amount: "15", currency: "USD" });
    expect(cheapest?.parts.map(({ partNumber }) => partNumber)).toEqual(["A", "B"]);
    expect(cheapest?.cost?.total.amount).toBe("3");
    // 3 and twice 2.50.
    expect(carried?.cost).toMatchObject({ parts: { amount: "3" }, carrying: { amount: "5" }, total: { amount: "8" } });
    expect(both?.partNumbers).toBe(1);
    expect(both?.cost?.total.amount).toBe("15");
    for (const plan of [fewest, cheapest, carried, both]) expect(plan?.proof.proven).toBe(true);
  });

  it("makes one part number worth its carrying cost, to the cent", async () => {
    // hand: two part numbers cost 3 + 2c, one costs 15 + c: equal at c = 12, one wins above, two below.
    const at = async (amount: string): Promise<number> =>
      (
        await planStock(
          three,
          { kind: "least-cost-with-carrying-cost", carryingCost: { amount, currency: "USD" } },
          directSolver,
        )
      ).partNumbers;
    expect(await at("11.99")).toBe(2);
    expect(await at("12.01")).toBe(1);
  });

  // hand: 24 joints; A in tens at 1.00 needs 3 packs, 30.00; B singly at 1.30 is 31.20; at 1.24 it is 29.76.
  it.each([
    ["1.30", "A", "30", 3, 6],
    ["1.24", "B", "29.76", 24, 0],
  ])("counts whole packs: at %s it takes %s", async (price, partNumber, total, packs, overBuy) => {
    const problem = problemOf(
      [jointClass("1", 24)],
      [
        { partNumber: "A", packQuantity: 10, price: each("1.00") },
        { partNumber: "B", packQuantity: 1, price: each(price) },
      ],
      { "1": ["A", "B"] },
    );
    const plan = await planStock(problem, { kind: "least-cost" }, directSolver);
    expect(plan.parts).toMatchObject([{ partNumber, packs, overBuy, cost: { amount: total } }]);
  });

  it("buys up to a break where that is cheaper", async () => {
    const price: ItemPrice = {
      unit: "each",
      currency: "USD",
      breaks: [
        { from: 1, amount: "1.00" },
        { from: 100, amount: "0.80" },
      ],
    };
    const problem = problemOf([jointClass("1", 85)], [{ partNumber: "A", packQuantity: 10, price }], { "1": ["A"] });
    const plan = await planStock(problem, { kind: "least-cost" }, directSolver);
    expect(plan.parts).toMatchObject([{ packs: 10, bought: 100, overBuy: 15, breakFrom: 100, cost: { amount: "80" } }]);
  });

  // hand: 100 joints, 90 of A on hand. Apart: 90 of A and 10 of B at 1 = 10. Alike: 10 more of A at 10, or 100 of B at 1 = 100.
  it("uses stock first, and shares a class between parts only where it need not be alike", async () => {
    const items: StockItem[] = [
      { partNumber: "A", packQuantity: 1, price: each("10"), onHand: 90 },
      { partNumber: "B", packQuantity: 1, price: each("1") },
    ];
    const plan = (alike: boolean) =>
      planStock(
        problemOf([jointClass("1", 100, alike)], items, { "1": ["A", "B"] }),
        { kind: "least-cost" },
        directSolver,
      );
    const apart = await plan(false);
    expect(apart.assignments.map(({ partNumber, joints }) => [partNumber, joints])).toEqual([
      ["A", 90],
      ["B", 10],
    ]);
    expect(apart.cost?.total.amount).toBe("10");
    const alike = await plan(true);
    expect(alike.assignments).toHaveLength(1);
    expect(alike.cost?.total.amount).toBe("100");
  });

  it("stocks what must be stocked and leaves out what must not", async () => {
    const items = three.items.map((item) => ({
      ...item,
      ...(item.partNumber === "C" ? { must: true } : {}),
      ...(item.partNumber === "A" ? { mustNot: true } : {}),
    }));
    const plan = await planStock({ ...three, items }, { kind: "least-cost" }, directSolver);
    // hand: C must make class 1 (5); B makes 2 and 3 (1 each).
    expect(plan.parts.map(({ partNumber, joints }) => [partNumber, joints])).toEqual([
      ["B", 2],
      ["C", 1],
    ]);
    expect(plan.cost?.total.amount).toBe("7");
    const idle = await planStock(
      { ...three, items: three.items.map((item) => (item.partNumber === "C" ? { ...item, must: true } : item)) },
      { kind: "least-cost" },
      directSolver,
    );
    // hand: one C has to be bought in any case and makes one joint; A and B make the others.
    expect(idle.cost?.total.amount).toBe("7");
    expect(idle.partNumbers).toBe(2);
  });

  it("names classes that nothing can make and plans the rest", async () => {
    const problem: StockProblem = {
      ...three,
      classes: [...three.classes, jointClass("4", 2), jointClass("5", 3)],
      items: [...three.items, { partNumber: "D", packQuantity: 1, price: each("1"), mustNot: true }],
      feasible: [
        ...three.feasible,
        { classId: "5", makers: [{ partNumber: "D", verdict: "accept", partsPerJoint: 1 }] },
      ],
    };
    for (const objective of OBJECTIVES) {
      const plan = await planStock(problem, objective, directSolver);
      expect(plan.unservable).toEqual([
        { classId: "4", joints: 2, marks: ["mark-4"], because: "no item can make it" },
        { classId: "5", joints: 3, marks: ["mark-5"], because: "D must not be used" },
      ]);
      expect(plan.joints).toBe(3);
    }
  });

  it("never takes a part without a price as free", async () => {
    const items = three.items.map((item) => (item.partNumber === "A" ? { partNumber: "A", packQuantity: 1 } : item));
    const cheapest = await planStock({ ...three, items }, { kind: "least-cost" }, directSolver);
    expect(cheapest.parts.map(({ partNumber }) => partNumber)).toEqual(["B", "C"]);
    expect(cheapest.notCosted.map(({ classId, because }) => [classId, because])).toEqual([
      ["1", "A has no price"],
      ["2", "A has no price"],
    ]);
    const unpriced = three.items.map(({ partNumber, packQuantity }) => ({ partNumber, packQuantity }));
    const fewest = await planStock({ ...three, items: unpriced }, { kind: "fewest-part-numbers" }, directSolver);
    expect(fewest.partNumbers).toBe(1);
    expect(fewest.cost).toBeNull();
    expect(fewest.parts[0]?.cost).toBeNull();
    const nothing = await planStock({ ...three, items: unpriced }, { kind: "least-cost" }, directSolver);
    expect(nothing.unservable).toHaveLength(3);
    expect(nothing.cost).toBeNull();
  });

  it("counts labor where a rate is given", async () => {
    const plan = await planStock(three, { kind: "least-cost" }, directSolver, {
      labourRate: { amount: "60", currency: "USD" },
    });
    // hand: 3 joints of half an hour at 60.
    expect(plan.cost).toMatchObject({ parts: { amount: "3" }, labour: { amount: "90" }, total: { amount: "93" } });
    expect(plan.hours).toBe("1.5");
  });

  it("keeps to a limit on the number of part numbers, or says that none does", async () => {
    const plan = await planStock(three, { kind: "least-cost" }, directSolver, { mostPartNumbers: 1 });
    expect(plan.cost?.total.amount).toBe("15");
    await expect(planStock(three, { kind: "least-cost" }, directSolver, { mostPartNumbers: 0 })).rejects.toThrow(
      NoSuchPlan,
    );
  });

  it("refuses unlike currencies and unusable problems", async () => {
    const items = three.items.map((item) => (item.partNumber === "B" ? { ...item, price: each("1", "EUR") } : item));
    await expect(planStock({ ...three, items }, { kind: "least-cost" }, directSolver)).rejects.toThrow(
      UnlikeCurrencies,
    );
    await expect(
      planStock(
        three,
        { kind: "least-cost-with-carrying-cost", carryingCost: { amount: "1", currency: "EUR" } },
        directSolver,
      ),
    ).rejects.toThrow(UnlikeCurrencies);
    const must = three.items.map((item) =>
      item.partNumber === "B" ? { partNumber: "B", packQuantity: 1, must: true } : item,
    );
    await expect(planStock({ ...three, items: must }, { kind: "least-cost" }, directSolver)).rejects.toThrow(
      UnusableProblem,
    );
  });

  it("plans nothing for nothing", async () => {
    for (const objective of OBJECTIVES) {
      const plan = await planStock({ classes: [], items: [], feasible: [] }, objective, directSolver);
      expect(plan).toMatchObject({ partNumbers: 0, parts: [], joints: 0, cost: null });
      expect(plan.proof.proven).toBe(true);
    }
  });

  it("is the same from classes and items in any of 100 orders", async () => {
    const random = seededRandom(5);
    const problem = randomProblem(random, {
      classes: 12,
      items: 14,
      jointsAlike: 40,
      jointsApart: 6,
      tenthsFeasible: 3,
      odd: true,
    });
    for (const objective of OBJECTIVES) {
      const first = JSON.stringify(await planStock(problem, objective, directSolver));
      for (let round = 0; round < 25; round += 1)
        expect(JSON.stringify(await planStock(shuffledProblem(random, problem), objective, directSolver))).toBe(first);
    }
  });

  it("is the same from another thread", async () => {
    const solver = new ThreadSolver();
    const problem = randomProblem(seededRandom(8), {
      classes: 8,
      items: 8,
      jointsAlike: 40,
      jointsApart: 6,
      tenthsFeasible: 4,
      odd: false,
    });
    for (const objective of OBJECTIVES)
      expect(await planStock(problem, objective, solver)).toEqual(await planStock(problem, objective, directSolver));
    await solver.stop();
  });

  it("is plain data", async () => {
    const plan = await planStock(three, { kind: "least-cost" }, directSolver);
    expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
  });
});
