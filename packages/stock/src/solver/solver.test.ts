import { afterAll, describe, expect, it } from "vitest";
import { directSolver } from "./direct-solver.js";
import { type Model, type Solver, SolverFailure } from "./solver.js";
import { ThreadSolver } from "./thread-solver.js";

/** Cheapest way to carry at least 7 with boxes of 3 (cost 4) and 2 (cost 3). hand: 3 + 2 + 2 or 3 + 3 + 2 cost 10 and 11. */
const boxes: Model = {
  columns: [
    { cost: 4, lower: 0, upper: 9, integer: true },
    { cost: 3, lower: 0, upper: 9, integer: true },
  ],
  rows: [{ lower: 7, upper: Number.POSITIVE_INFINITY, columns: [0, 1], coefficients: [3, 2] }],
  step: 1,
};
const threaded = new ThreadSolver();
afterAll(() => threaded.stop());

describe.each<[string, Solver]>([
  ["direct", directSolver],
  ["threaded", threaded],
])("%s solver", { timeout: 60_000 }, (_name, solver) => {
  it("finds and proves the optimum of an integer model", async () => {
    const answer = await solver.solve(boxes);
    expect(answer.status).toBe("optimal");
    expect(answer.values.map(Math.round)).toEqual([1, 2]);
    expect(answer.bound).toBeGreaterThan(9);
    expect(answer.bound).toBeLessThanOrEqual(10 + 1e-6);
  });

  // hand: 7/3 boxes at 4 are 28/3.
  it("gives a bound for a model without integer columns too", async () => {
    const answer = await solver.solve({ ...boxes, columns: boxes.columns.map((one) => ({ ...one, integer: false })) });
    expect(answer.status).toBe("optimal");
    expect(answer.bound).toBeCloseTo(28 / 3, 9);
  });

  it("says that a model is infeasible", async () => {
    const answer = await solver.solve({ ...boxes, columns: boxes.columns.map((one) => ({ ...one, upper: 1 })) });
    expect(answer).toEqual({ status: "infeasible", values: [], bound: Number.POSITIVE_INFINITY });
  });

  it("takes a plan to begin with", async () => {
    const answer = await solver.solve({ ...boxes, start: [3, 0] });
    expect(answer.values.map(Math.round)).toEqual([1, 2]);
  });

  it("fails on a model that asks nothing or has no least value", async () => {
    await expect(solver.solve({ columns: [], rows: [], step: 0 })).rejects.toThrow(SolverFailure);
    const unbounded: Model = {
      columns: [{ cost: -1, lower: 0, upper: Number.POSITIVE_INFINITY, integer: true }],
      rows: [],
      step: 0,
    };
    await expect(solver.solve(unbounded)).rejects.toThrow(SolverFailure);
  });
});

describe("threaded solver", { timeout: 60_000 }, () => {
  it("keeps answers apart when several are asked at once", async () => {
    const needs = [1, 4, 7, 10];
    const answers = await Promise.all(
      needs.map((lower) => threaded.solve({ ...boxes, rows: boxes.rows.map((row) => ({ ...row, lower })) })),
    );
    // hand: 2 -> 3; 2+2 -> 6; 3+2+2 -> 10; 3+3+2+2 -> 14 (3+3+3+2 -> 15, 2x5 -> 15).
    expect(answers.map(({ values }) => Math.round(4 * (values[0] ?? 0) + 3 * (values[1] ?? 0)))).toEqual([
      3, 6, 10, 14,
    ]);
  });

  it("fails what is under way when it is stopped, and starts again", async () => {
    const solver = new ThreadSolver();
    const underWay = solver.solve(boxes);
    const failed = expect(underWay).rejects.toThrow("stopped");
    await solver.stop();
    await failed;
    await expect(solver.solve(boxes)).resolves.toMatchObject({ status: "optimal" });
    await solver.stop();
  });
});
