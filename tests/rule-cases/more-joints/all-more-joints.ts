/** Every joint with a changed fact; one file for each topic. */
import { GROUNDING_JOINTS } from "./grounding.js";
import type { MoreJoint } from "./more-joint.js";
import { MOUNTING_JOINTS } from "./mounting.js";
import { PLACE_JOINTS } from "./place.js";
import { REWORK_JOINTS } from "./rework.js";
import { SPACE_JOINTS } from "./space.js";
import { USE_JOINTS } from "./use.js";

export const MORE_JOINTS: readonly MoreJoint[] = [
  ...GROUNDING_JOINTS,
  ...MOUNTING_JOINTS,
  ...PLACE_JOINTS,
  ...REWORK_JOINTS,
  ...SPACE_JOINTS,
  ...USE_JOINTS,
];
