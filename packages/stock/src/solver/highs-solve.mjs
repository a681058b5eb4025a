/**
 * The one file that knows which solver is used: HiGHS, compiled to WebAssembly.
 *
 * It is plain JavaScript with checked types because a thread is started from a file as it stands: this file runs the
 * same from source and from the build.
 */
import loadHighs from "highs";

/**
 * @import { Model, ModelAnswer, SolveLimits } from "./solver.js"
 * @import { Highs } from "highs"
 */

/**
 * The package's types describe its CommonJS build; imported as a module its default export is the loader itself.
 * @type {() => Promise<Highs>}
 */
const load = /** @type {never} */ (loadHighs);

/** @type {Promise<Highs> | undefined} */
let loaded;

/**
 * Solves one model. The call blocks its thread until it ends; a large model takes minutes and a gigabyte.
 * @param {Model} model
 * @param {SolveLimits} limits
 * @returns {Promise<ModelAnswer>}
 * @throws Error for every ending that is neither an answer nor a limit.
 */
export async function solveWithHighs(model, limits) {
  loaded ??= load();
  const highs = await loaded;
  const { columns, rows } = model;
  if (columns.length === 0) throw new Error("a model without columns asks nothing");
  return highs.withModel(
    {
      numCols: columns.length,
      numRows: rows.length,
      colCost: columns.map(({ cost }) => cost),
      colLower: columns.map(({ lower }) => lower),
      colUpper: columns.map(({ upper }) => upper),
      rowLower: rows.map(({ lower }) => lower),
      rowUpper: rows.map(({ upper }) => upper),
      integrality: columns.map(({ integer }) => (integer ? 1 : 0)),
      matrix: matrixOf(model),
    },
    (one) => {
      one.options.set({
        output_flag: false,
        // The default would call a plan optimal that costs up to 0.01 % too much.
        mip_rel_gap: 0,
        // Less than one step above the bound there is no other plan: stop there.
        mip_abs_gap: Math.max(1e-6, model.step * 0.99),
        ...(limits.seconds === undefined ? {} : { time_limit: limits.seconds }),
      });
      if (model.start !== undefined) one.setSolution({ colValue: model.start });
      one.run();
      return answerOf(highs, one);
    },
  );
}

/**
 * @param {Highs} highs
 * @param {import("highs").Model} model
 * @returns {ModelAnswer}
 */
function answerOf(highs, model) {
  const { modelStatus } = highs.constants;
  const status = model.getModelStatus();
  if (status === modelStatus.infeasible) return { status: "infeasible", values: [], bound: Number.POSITIVE_INFINITY };
  if (status !== modelStatus.optimal && status !== modelStatus.timeLimit)
    throw new Error(`the solver ended with model status ${String(status)}`);
  const hasPlan = model.info.get("primal_solution_status") === highs.constants.solutionStatus.feasible;
  const integer = Number(model.info.get("mip_node_count")) >= 0;
  // A model without integer columns has no bound of its own: its optimum is its bound.
  const bound = integer
    ? Number(model.info.get("mip_dual_bound"))
    : status === modelStatus.optimal
      ? model.getObjectiveValue()
      : Number.NEGATIVE_INFINITY;
  if (!hasPlan) {
    if (status === modelStatus.optimal) throw new Error("the solver called a model optimal and gave no plan");
    return { status: "limit-without-plan", values: [], bound };
  }
  return {
    status: status === modelStatus.optimal ? "optimal" : "limit",
    values: [...model.getSolution().colValue],
    bound,
  };
}

/**
 * @param {Model} model
 * @returns {import("highs").SparseMatrixInput}
 */
function matrixOf({ columns, rows }) {
  const starts = [0];
  /** @type {number[]} */
  const indices = [];
  /** @type {number[]} */
  const values = [];
  for (const row of rows) {
    for (const column of row.columns) indices.push(column);
    for (const coefficient of row.coefficients) values.push(coefficient);
    starts.push(indices.length);
  }
  return { format: "csr", numRows: rows.length, numCols: columns.length, starts, indices, values };
}
