// Made from data/published by the table build. Never edit by hand.
export { boltTorqueNeta } from "./bolt-torque-neta.js";
export { likeJointResistance } from "./like-joint-resistance.js";
export { temperatureRise } from "./temperature-rise.js";
