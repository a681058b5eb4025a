import { type BarAnswer, type BarQuestion, landOnBars, type Solver } from "@landfast/stock";
import { SECONDS_PER_SOLVE } from "./stock-plans.js";
import { planning } from "./stock-questions.js";

/** Neutrals and grounds on bars; `secondsPerSolve` limits each of the solves. */
export interface BarsQuestion extends BarQuestion {
  readonly secondsPerSolve?: number;
}

export interface BarService {
  /** @throws Problem INCONSISTENT_REQUEST for bars or conductors that contradict themselves. */
  land(question: BarsQuestion): Promise<BarAnswer>;
}

export function barService(solver: Solver): BarService {
  return {
    land({ secondsPerSolve = SECONDS_PER_SOLVE, ...question }) {
      return planning(() => landOnBars(question, solver, { seconds: secondsPerSolve }));
    },
  };
}
