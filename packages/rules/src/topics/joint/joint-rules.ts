import type { Rule } from "../../core/rule.js";
import { voltageRating } from "../voltage/voltage-rating.js";

/** Every rule of the joint, in the order in which a refusal is named. */
export const JOINT_RULES: readonly Rule[] = Object.freeze([voltageRating]);

/** Which pass is named as deciding, first found first: the one that usually governs. */
export const GOVERNING: readonly string[] = Object.freeze([
  "feeder-tap",
  "terminal-temperature",
  "equipment-ground-size",
  "electrode-conductor-size",
  "electrode-connection",
  "wire-range",
]);
