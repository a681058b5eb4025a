import type { MoreJoint } from "./more-joint.js";

export const SPACE_JOINTS: readonly MoreJoint[] = [
  {
    rule: "enclosure-fill",
    name: "the section is zero",
    from: 41,
    change: ({ joint }) => {
      if (joint.equipment?.space !== undefined) joint.equipment.space.section = { value: 0, unit: "in2" };
    },
  },
];
