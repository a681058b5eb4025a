import { describe, expect, it } from "vitest";
import { UnusableProblem } from "../problem/check-problem.js";
import type { StockProblem } from "../problem/stock-problem.js";
import { leastLeftOut, planByTrial, type TrialOptions } from "../samples/exhaustive-plan.js";
import { randomProblem } from "../samples/random-problem.js";
import { seededRandom } from "../samples/seeded-random.js";
import { directSolver } from "../solver/direct-solver.js";
import { type PlanOptions, planStock } from "./plan-stock.js";
import type { StockPlan } from "./stock-plan.js";

const PROBLEMS = 300;

function millionths(amount: string | undefined): bigint {
  const [whole = "0", fraction = ""] = (amount ?? "0").split(".");
  return BigInt(whole) * 1_000_000n + BigInt(fraction.padEnd(6, "0"));
}

/** What any plan must keep to, whatever it is best at. */
function expectWhole(problem: StockProblem, plan: StockPlan): void {
  const left = new Set(plan.unservable.map(({ classId }) => classId));
  for (const { id, joints, alike = true } of problem.classes) {
    const mine = plan.assignments.filter(({ classId }) => classId === id);
    expect(mine.reduce((sum, one) => sum + one.joints, 0)).toBe(left.has(id) ? 0 : joints);
    if (alike) expect(mine.length).toBeLessThanOrEqual(1);
  }
  for (const part of plan.parts) {
    const parts = plan.assignments.filter(({ partNumber }) => partNumber === part.partNumber);
    expect(parts.reduce((sum, one) => sum + one.parts, 0)).toBe(part.partsUsed);
    expect(part.fromStock + part.bought - part.overBuy).toBe(part.partsUsed);
    expect(part.bought).toBe(part.packs * part.packQuantity);
  }
}

describe("plan against trying every plan", () => {
  it(`has the same value in ${String(PROBLEMS)} small problems, by every objective`, { timeout: 600_000 }, async () => {
    const random = seededRandom(2024);
    const seen = { plans: 0, refused: 0, withShortage: 0, apart: 0, labour: 0, proven: 0 };
    for (let round = 0; round < PROBLEMS; round += 1) {
      const problem = randomProblem(random, {
        classes: 1 + random.below(5),
        items: 1 + random.below(5),
        jointsAlike: 14,
        jointsApart: 3,
        tenthsFeasible: 6,
        odd: round % 3 > 0,
      });
      const withLabour = random.below(2) === 0;
      const options: PlanOptions = withLabour ? { labourRate: { amount: "61.40", currency: "USD" } } : {};
      // 61.40 for an hour is 3.07 for the twentieth in which the samples give hours.
      const trial: Omit<TrialOptions, "leaveOut"> = {
        byCost: true,
        labourRateMillionths: withLabour ? 3_070_000n : null,
        carryingMillionths: 0n,
      };
      const fewest = await planStock(problem, { kind: "fewest-part-numbers" }, directSolver, options);
      expectWhole(problem, fewest);
      const byCount = planByTrial(problem, { ...trial, byCost: false, leaveOut: new Set() });
      expect(fewest.partNumbers).toBe(byCount.fewest);
      expect(fewest.proof.proven).toBe(true);

      let cheapest: StockPlan;
      try {
        cheapest = await planStock(problem, { kind: "least-cost" }, directSolver, options);
      } catch (reason) {
        expect(reason).toBeInstanceOf(UnusableProblem);
        seen.refused += 1;
        continue;
      }
      expectWhole(problem, cheapest);
      const leaveOut = new Set(cheapest.unservable.map(({ classId }) => classId));
      const short = cheapest.unservable.filter(({ because }) => because.includes("too few"));
      expect(short.reduce((sum, one) => sum + one.joints, 0)).toBe(
        leastLeftOut(problem, { ...trial, leaveOut: new Set() }),
      );
      const byTrial = planByTrial(problem, { ...trial, leaveOut });
      if (byTrial.cheapest === 0n && cheapest.cost === null) continue;
      expect(millionths(cheapest.cost?.total.amount)).toBe(byTrial.cheapest);

      const both = await planStock(problem, { kind: "fewest-then-cheapest" }, directSolver, options);
      expectWhole(problem, both);
      expect(both.partNumbers).toBe(byTrial.fewest);
      expect(millionths(both.cost?.total.amount)).toBe(byTrial.cheapestOfFewest);

      const carrying = random.pick(["0.37", "2.50", "12"]);
      const carried = await planStock(
        problem,
        { kind: "least-cost-with-carrying-cost", carryingCost: { amount: carrying, currency: "USD" } },
        directSolver,
        options,
      );
      expectWhole(problem, carried);
      expect(millionths(carried.cost?.total.amount)).toBe(
        planByTrial(problem, { ...trial, carryingMillionths: millionths(carrying), leaveOut }).cheapest,
      );
      for (const { proof } of [cheapest, both, carried]) expect(proof).toMatchObject({ proven: true, gap: "0" });
      seen.plans += 1;
      if (short.length > 0) seen.withShortage += 1;
      if (withLabour) seen.labour += 1;
      if (problem.classes.some(({ alike }) => alike === false)) seen.apart += 1;
    }
    // Enough of every kind must have been met, or the test shows less than it says.
    expect(seen.plans).toBeGreaterThan(230);
    expect(seen.withShortage).toBeGreaterThan(3);
    expect(seen.apart).toBeGreaterThan(80);
    expect(seen.labour).toBeGreaterThan(80);
  });
});
