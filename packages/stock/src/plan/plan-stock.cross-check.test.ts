import { describe, expect, it } from "vitest";
import { type Model as OtherModel, solve } from "yalps";
import { cheapestPurchase } from "../prices/item-price.js";
import type { StockProblem } from "../problem/stock-problem.js";
import { randomProblem } from "../samples/random-problem.js";
import { seededRandom } from "../samples/seeded-random.js";
import { syntheticJob } from "../samples/synthetic-job.js";
import { directSolver } from "../solver/direct-solver.js";
import { planStock } from "./plan-stock.js";
import type { Objective } from "./stock-plan.js";

/**
 * The same question in another form, for another solver. Classes made alike only, so that for one item every quantity
 * that can be needed is a sum over a set of classes; what each costs is a column of its own, priced by buying it.
 */
function byOtherSolver(problem: StockProblem, carrying: number, mostPartNumbers: number | null): number {
  const variables = new Map<string, [string, number][]>();
  const constraints = new Map<string, { min?: number; max?: number; equal?: number }>();
  const binaries = new Set<string>();
  for (const item of problem.items) {
    const users = problem.classes.flatMap((one) => {
      const maker = problem.feasible
        .find(({ classId }) => classId === one.id)
        ?.makers.find(({ partNumber }) => partNumber === item.partNumber);
      return maker === undefined ? [] : [{ one, parts: one.joints * maker.partsPerJoint }];
    });
    if (users.length === 0 || item.mustNot === true) continue;
    const open = `open ${item.partNumber}`;
    variables.set(open, [
      ["cost", carrying],
      ["count", 1],
    ]);
    binaries.add(open);
    const taken = new Set<number>([0]);
    for (const { parts } of users) for (const before of [...taken]) taken.add(before + parts);
    const room = `parts ${item.partNumber}`;
    constraints.set(room, { max: 0 });
    const once = `once ${item.partNumber}`;
    constraints.set(once, { max: 0 });
    variables.get(open)?.push([once, -1]);
    for (const parts of taken) {
      if (parts === 0 || item.price === undefined) continue;
      const purchase = cheapestPurchase(item.price, item.packQuantity, parts - (item.onHand ?? 0));
      const cost = Number(purchase.cost.numerator) / Number(purchase.cost.denominator);
      const column = `buy ${item.partNumber} ${String(parts)}`;
      variables.set(column, [
        ["cost", cost],
        [room, -parts],
        [once, 1],
      ]);
      binaries.add(column);
    }
    for (const { one, parts } of users) {
      const column = `make ${one.id} ${item.partNumber}`;
      const gate = `gate ${one.id} ${item.partNumber}`;
      constraints.set(gate, { max: 0 });
      constraints.set(`class ${one.id}`, { equal: 1 });
      variables.set(column, [
        [`class ${one.id}`, 1],
        [room, parts],
        [gate, 1],
      ]);
      variables.get(open)?.push([gate, -1]);
      binaries.add(column);
    }
  }
  if (mostPartNumbers !== null) constraints.set("count", { max: mostPartNumbers });
  const model: OtherModel = { direction: "minimize", objective: "cost", constraints, variables, binaries };
  const solution = solve(model, { maxIterations: Number.POSITIVE_INFINITY, tolerance: 0 });
  expect(solution.status).toBe("optimal");
  return solution.result;
}

function cents(amount: string | undefined): number {
  return Math.round(Number(amount) * 1e4);
}

describe("plan against another solver", () => {
  it("costs the same in 50 middling problems", { timeout: 600_000 }, async () => {
    const random = seededRandom(77);
    for (let round = 0; round < 50; round += 1) {
      const drawn = randomProblem(random, {
        classes: 6 + random.below(5),
        items: 6 + random.below(6),
        jointsAlike: 30,
        jointsApart: 1,
        tenthsFeasible: 3,
        odd: false,
      });
      const problem = { ...drawn, classes: drawn.classes.map((one) => ({ ...one, alike: true })) };
      const carrying = random.pick([0, 3, 40]);
      const objective: Objective =
        carrying === 0
          ? { kind: "least-cost" }
          : { kind: "least-cost-with-carrying-cost", carryingCost: { amount: String(carrying), currency: "USD" } };
      const plan = await planStock(problem, objective, directSolver);
      expect(plan.proof.proven).toBe(true);
      expect(cents(plan.cost?.total.amount)).toBe(Math.round(byOtherSolver(problem, carrying, null) * 1e4));
      const both = await planStock(problem, { kind: "fewest-then-cheapest" }, directSolver);
      expect(cents(both.cost?.total.amount)).toBe(Math.round(byOtherSolver(problem, 0, both.partNumbers) * 1e4));
    }
  });
});

describe("plan from the question as it was put", () => {
  it("has the same value as from the reduced one, in 10 jobs", { timeout: 600_000 }, async () => {
    const random = seededRandom(31);
    let left = 0;
    let all = 0;
    for (let round = 0; round < 10; round += 1) {
      const problem = syntheticJob(random, { joints: 800, classes: 36, items: 160, packs: round % 2 === 1 });
      for (const objective of [
        { kind: "fewest-part-numbers" },
        { kind: "least-cost" },
        { kind: "least-cost-with-carrying-cost", carryingCost: { amount: "35", currency: "USD" } },
        { kind: "fewest-then-cheapest" },
      ] satisfies Objective[]) {
        const reduced = await planStock(problem, objective, directSolver);
        const whole = await planStock(problem, objective, directSolver, { reduce: false });
        expect([reduced.proof.proven, whole.proof.proven]).toEqual([true, true]);
        if (objective.kind.startsWith("fewest")) expect(reduced.partNumbers).toBe(whole.partNumbers);
        if (objective.kind !== "fewest-part-numbers") expect(reduced.cost?.total).toEqual(whole.cost?.total);
        left += reduced.reduction.makersLeft;
        all += reduced.reduction.makers;
      }
    }
    // The reduction must have done something, or this compares a thing with itself.
    expect(left).toBeLessThan(all * 0.8);
  });
});
