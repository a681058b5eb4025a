import type { Model, ModelAnswer } from "@landfast/stock";
import { describe, expect, it } from "vitest";
import { Problem } from "../problems/problem.js";
import { boundedSolver } from "./bounded-solver.js";

const model: Model = { columns: [], rows: [], step: 1 };
const answer: ModelAnswer = { status: "optimal", values: [], bound: 0 };

describe("a bounded solver", () => {
  it("takes sixteen plans at once, turns the seventeenth away, and takes it once another is done", async () => {
    const open: (() => void)[] = [];
    const solver = boundedSolver({
      solve: () =>
        new Promise((resolve) => {
          open.push(() => {
            resolve(answer);
          });
        }),
    });
    const taken = Array.from({ length: 16 }, () => solver.solve(model));
    const refused = await solver.solve(model).catch((error: unknown) => error);
    expect(refused).toBeInstanceOf(Problem);
    expect((refused as Problem).code).toBe("BUSY");
    expect((refused as Problem).headers["retry-after"]).toBe("10");
    open[0]?.();
    await taken[0];
    const later = solver.solve(model);
    for (const one of open) one();
    expect(await later).toEqual(answer);
    expect(await Promise.all(taken)).toHaveLength(16);
  });

  it("gives the place of a solve that failed to the next", async () => {
    let fails = true;
    const solver = boundedSolver({
      solve: () => (fails ? Promise.reject(new Error("no")) : Promise.resolve(answer)),
    });
    for (let time = 0; time < 20; time += 1) await expect(solver.solve(model)).rejects.toThrow("no");
    fails = false;
    expect(await solver.solve(model)).toEqual(answer);
  });
});
