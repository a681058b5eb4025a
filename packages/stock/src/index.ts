/** The front door: everything public, nothing else. */

export * from "./bars/bar-question.js";
export { landOnBars } from "./bars/land-on-bars.js";
export * from "./money/currency.js";
export * from "./money/decimal.js";
export * from "./money/money.js";
export type { NotCosted, Unservable } from "./plan/offer.js";
export * from "./plan/part-in-plan.js";
export * from "./plan/plan-stock.js";
export * from "./plan/stock-plan.js";
export * from "./prices/item-price.js";
export * from "./prices/price-list.js";
export * from "./problem/check-problem.js";
export * from "./problem/group-joints.js";
export * from "./problem/stock-problem.js";
export { directSolver } from "./solver/direct-solver.js";
export * from "./solver/solver.js";
export { ThreadSolver } from "./solver/thread-solver.js";
export * from "./trade-off/trade-off-curve.js";
export { tradeOffSvg } from "./trade-off/trade-off-svg.js";
export * from "./truck/make-from-stock.js";
