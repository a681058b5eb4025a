import { describe, expect, it } from "vitest";
import { planStock } from "../plan/plan-stock.js";
import { randomProblem } from "../samples/random-problem.js";
import { seededRandom } from "../samples/seeded-random.js";
import { threeParts } from "../samples/three-parts.js";
import { directSolver } from "../solver/direct-solver.js";
import { tradeOffCurve } from "./trade-off-curve.js";
import { tradeOffSvg } from "./trade-off-svg.js";

describe("trade-off curve", { timeout: 120_000 }, () => {
  // hand: the worked line of tradeOffCurve.
  it("shows what fewer part numbers cost", async () => {
    const curve = await tradeOffCurve(threeParts, directSolver);
    expect(
      curve.points.map(({ partNumbers, cost, aboveCheapest }) => [partNumbers, cost.amount, aboveCheapest.amount]),
    ).toEqual([
      [1, "15", "12"],
      [2, "3", "0"],
    ]);
    expect(curve).toMatchObject({ currency: "USD", complete: true, unservable: [] });
  });

  it("falls from the fewest to the cheapest plan, in random problems", async () => {
    const random = seededRandom(9);
    let longest = 0;
    for (let round = 0; round < 6; round += 1) {
      const problem = randomProblem(random, {
        classes: 14,
        items: 20,
        jointsAlike: 30,
        jointsApart: 3,
        tenthsFeasible: 3,
        odd: false,
      });
      const { points } = await tradeOffCurve(problem, directSolver);
      const fewest = await planStock(problem, { kind: "fewest-then-cheapest" }, directSolver);
      const cheapest = await planStock(problem, { kind: "least-cost" }, directSolver);
      expect(points[0]?.partNumbers).toBe(fewest.partNumbers);
      expect(points[0]?.cost).toEqual(fewest.cost?.total);
      expect(points.at(-1)?.cost).toEqual(cheapest.cost?.total);
      points.slice(1).forEach((point, at) => {
        expect(point.partNumbers).toBeGreaterThan(points[at]?.partNumbers ?? 0);
        expect(Number(point.cost.amount)).toBeLessThan(Number(points[at]?.cost.amount));
      });
      longest = Math.max(longest, points.length);
    }
    expect(longest).toBeGreaterThan(3);
  });

  it("asks about fewer numbers when told to, and says so", async () => {
    const problem = randomProblem(seededRandom(9), {
      classes: 14,
      items: 20,
      jointsAlike: 30,
      jointsApart: 3,
      tenthsFeasible: 3,
      odd: false,
    });
    const all = await tradeOffCurve(problem, directSolver);
    const some = await tradeOffCurve(problem, directSolver, { mostPoints: 3 });
    expect(all.complete).toBe(true);
    expect(some.complete).toBe(false);
    expect(some.points.length).toBeLessThanOrEqual(3);
    for (const point of some.points) expect(all.points).toContainEqual(point);
    await expect(tradeOffCurve(problem, directSolver, { mostPoints: 1 })).rejects.toThrow(RangeError);
  });

  it("is drawn with its axes, unit and every point", async () => {
    const svg = tradeOffSvg(await tradeOffCurve(threeParts, directSolver));
    expect(svg).toMatch(/^<svg [^>]*xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
    for (const words of [
      "Part numbers stocked",
      "Cost of the plan, USD",
      "1 part numbers: 15.00 USD",
      "2 part numbers: 3.00 USD",
    ])
      expect(svg).toContain(words);
    expect(svg.match(/<circle/g)).toHaveLength(2);
    expect(svg).not.toMatch(/NaN|Infinity|undefined|<script|href|url\(/);
    expect(svg.match(/<(?!\/)[a-z]+/g)?.length).toBeGreaterThan(15);
  });

  it("is drawn for one point, and says when there is nothing to draw", async () => {
    const curve = await tradeOffCurve(threeParts, directSolver);
    const one = tradeOffSvg({ ...curve, points: curve.points.slice(1) });
    expect(one).not.toMatch(/NaN|Infinity/);
    const empty = await tradeOffCurve(
      { ...threeParts, items: threeParts.items.map(({ partNumber, packQuantity }) => ({ partNumber, packQuantity })) },
      directSolver,
    );
    expect(empty.points).toEqual([]);
    expect(tradeOffSvg(empty)).toContain("Nothing to show");
  });

  it("marks points that are not proven", async () => {
    const curve = await tradeOffCurve(threeParts, directSolver);
    const doubtful = curve.points.map((point) => ({ ...point, proof: { ...point.proof, proven: false } }));
    expect(tradeOffSvg({ ...curve, points: doubtful })).toContain("not proven");
    expect(tradeOffSvg(curve)).not.toContain("not proven");
  });
});
