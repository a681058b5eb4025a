// Made from data/published by the table build. Never edit by hand.
export { physicalConstants } from "./physical-constants.js";
