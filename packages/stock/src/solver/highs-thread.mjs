/** A thread that solves models one after another as they are posted to it. */
import { parentPort } from "node:worker_threads";
import { solveWithHighs } from "./highs-solve.mjs";

/** @import { Model, SolveLimits } from "./solver.js" */

parentPort?.on("message", (/** @type {{ id: number, model: Model, limits: SolveLimits }} */ { id, model, limits }) => {
  solveWithHighs(model, limits).then(
    (answer) => parentPort?.postMessage({ id, answer }),
    (/** @type {unknown} */ reason) =>
      parentPort?.postMessage({ id, failure: reason instanceof Error ? reason.message : String(reason) }),
  );
});
