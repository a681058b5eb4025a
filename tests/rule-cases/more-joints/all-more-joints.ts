/** Every joint with a changed fact; one file for each topic. */
import { GROUNDING_JOINTS } from "./grounding.js";
import { METALS_JOINTS } from "./metals.js";
import type { MoreJoint } from "./more-joint.js";
import { MOUNTING_JOINTS } from "./mounting.js";
import { PARALLEL_JOINTS } from "./parallel.js";
import { PLACE_JOINTS } from "./place.js";
import { PROJECT_JOINTS } from "./project-rules.js";
import { REWORK_JOINTS } from "./rework.js";
import { SPACE_JOINTS } from "./space.js";
import { STRANDING_JOINTS } from "./stranding.js";
import { TORQUE_JOINTS } from "./torque.js";
import { USE_JOINTS } from "./use.js";

export const MORE_JOINTS: readonly MoreJoint[] = [
  ...GROUNDING_JOINTS,
  ...METALS_JOINTS,
  ...MOUNTING_JOINTS,
  ...PARALLEL_JOINTS,
  ...PLACE_JOINTS,
  ...PROJECT_JOINTS,
  ...REWORK_JOINTS,
  ...SPACE_JOINTS,
  ...TORQUE_JOINTS,
  ...STRANDING_JOINTS,
  ...USE_JOINTS,
];
