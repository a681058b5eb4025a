// Made from data/published by the table build. Never edit by hand.
export { bunchedStrands } from "./bunched-strands.js";
export { fineStrands } from "./fine-strands.js";
