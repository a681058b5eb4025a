/**
 * The boundary to an integer solver. Models and answers are plain data, so a solver may stand in the same thread, in
 * another or on another machine; nothing else in this package knows which.
 */

/** One number to be decided. */
export interface ModelColumn {
  /** Objective coefficient; the objective is always minimized. */
  readonly cost: number;
  readonly lower: number;
  readonly upper: number;
  readonly integer: boolean;
}

/** lower <= sum of coefficient x column <= upper; a column stands in a row at most once. */
export interface ModelRow {
  readonly lower: number;
  readonly upper: number;
  readonly columns: readonly number[];
  readonly coefficients: readonly number[];
}

export interface Model {
  readonly columns: readonly ModelColumn[];
  readonly rows: readonly ModelRow[];
  /**
   * The objective values of two different plans are at least this far apart, so the solver may stop once less than this
   * lies between its plan and its bound. 0 when no such step is known.
   */
  readonly step: number;
  /** A plan to begin with, one value for each column, where one is known. */
  readonly start?: readonly number[];
}

export interface SolveLimits {
  /** Wall-clock seconds. Where it cuts a solve short the answer depends on the machine and is marked as not proven. */
  readonly seconds?: number;
}

/** What a solver says. "limit": stopped by a limit, with a plan in hand. */
export interface ModelAnswer {
  readonly status: "optimal" | "limit" | "limit-without-plan" | "infeasible";
  /** One value for each column; empty when there is no plan. */
  readonly values: readonly number[];
  /** No plan has an objective below this. */
  readonly bound: number;
}

/** The solver failed or was asked something it cannot answer: an error of the program, not of the problem. */
export class SolverFailure extends Error {
  override readonly name: string = "SolverFailure";
}

/** A limit came before any plan was found. */
export class OutOfTime extends SolverFailure {
  override readonly name: string = "OutOfTime";
}

export interface Solver {
  /**
   * Solves to proven optimality unless a limit stops it.
   * @throws SolverFailure for any ending that is neither an answer nor a limit.
   */
  solve(model: Model, limits?: SolveLimits): Promise<ModelAnswer>;
}
