import type { Solver } from "@landfast/stock";
import { Problem } from "../problems/problem.js";

/** Plans that may wait for the solver at once: one is worked on, the others stand in line. */
const WAITING_MAX = 16;

/**
 * A solver that turns away what would wait too long, so that a flood of plans fills neither memory nor time. A plan has
 * one model at a time with the solver, so models in hand are plans at work.
 * @throws Problem BUSY from `solve` when too many wait already.
 */
export function boundedSolver(solver: Solver): Solver {
  let waiting = 0;
  return {
    async solve(model, limits) {
      if (waiting >= WAITING_MAX)
        throw new Problem("BUSY", `${String(waiting)} plans are in work already.`, [], { "retry-after": "10" });
      waiting += 1;
      try {
        return await solver.solve(model, limits);
      } finally {
        waiting -= 1;
      }
    },
  };
}
