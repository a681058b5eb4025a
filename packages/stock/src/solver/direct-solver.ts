import { solveWithHighs } from "./highs-solve.mjs";
import { type ModelAnswer, type Solver, SolverFailure } from "./solver.js";

/** Solves in the calling thread, which stands still meanwhile: for tests, benchmarks and command lines. */
export const directSolver: Solver = {
  async solve(model, limits = {}): Promise<ModelAnswer> {
    try {
      return await solveWithHighs(model, limits);
    } catch (reason) {
      throw new SolverFailure(reason instanceof Error ? reason.message : String(reason), { cause: reason });
    }
  },
};
