// Made from data/published by the table build. Never edit by hand.
export { markingCodes } from "./marking-codes.js";
