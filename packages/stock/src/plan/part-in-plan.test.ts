import { describe, expect, it } from "vitest";
import { threeParts } from "../samples/three-parts.js";
import { directSolver } from "../solver/direct-solver.js";
import { partsInPlan } from "./part-in-plan.js";
import { planStock } from "./plan-stock.js";

describe("part in plan", { timeout: 60_000 }, () => {
  // hand: the worked line of partsInPlan. Without B: A makes 1 and 2, C makes 3: 1 + 1 + 5 = 7, 4 more than 3. Without A the
  // same the other way round.
  it("says what depends on it and what dropping it costs", async () => {
    const plan = await planStock(threeParts, { kind: "least-cost" }, directSolver);
    const parts = await partsInPlan(threeParts, plan, directSolver);
    expect(parts).toMatchObject([
      {
        partNumber: "A",
        onlyMaker: [],
        onlyInPlan: ["1"],
        without: { unservable: [], jointsLost: 0, partNumbers: 2, costChange: { amount: "4", currency: "USD" } },
      },
      { partNumber: "B", onlyMaker: [], onlyInPlan: ["3"], without: { costChange: { amount: "4" } } },
    ]);
  });

  it("names the classes that go with the part, and gives no cost for a plan that makes less", async () => {
    const problem = {
      ...threeParts,
      items: threeParts.items.map((item) => (item.partNumber === "C" ? { ...item, mustNot: true } : item)),
    };
    const plan = await planStock(problem, { kind: "least-cost" }, directSolver);
    const [a] = await partsInPlan(problem, plan, directSolver);
    expect(a).toMatchObject({
      onlyMaker: ["1"],
      without: { unservable: ["1"], jointsLost: 1, costChange: null },
    });
  });
});
