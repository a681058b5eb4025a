import type { MoreJoint } from "./more-joint.js";

export const REWORK_JOINTS: readonly MoreJoint[] = [
  {
    rule: "rework",
    name: "a pressed joint",
    from: 60,
    change: ({ connector }) => {
      connector.construction = "compression";
      connector.screws = [];
      for (const opening of connector.openings) delete opening.screw;
    },
  },
];
