/** The front door: everything public, nothing else. */
export * from "./money/currency.js";
export * from "./money/decimal.js";
export * from "./money/money.js";
