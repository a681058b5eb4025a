// Made from data/published by the table build. Never edit by hand.
export { kFactors } from "./k-factors.js";
