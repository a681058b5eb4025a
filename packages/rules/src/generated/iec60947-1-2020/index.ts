// Made from data/published by the table build. Never edit by hand.
export { terminalTorqueIec } from "./terminal-torque-iec.js";
