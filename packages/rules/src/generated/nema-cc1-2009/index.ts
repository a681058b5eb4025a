// Made from data/published by the table build. Never edit by hand.
export { padBoltTorque } from "./pad-bolt-torque.js";
