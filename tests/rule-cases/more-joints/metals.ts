import type { MoreJoint } from "./more-joint.js";

export const METALS_JOINTS: readonly MoreJoint[] = [
  {
    rule: "metal-marking",
    name: "the wiring device is on a circuit of 20 A",
    from: 79,
    change: ({ joint }) => {
      if (joint.circuit !== undefined) joint.circuit.protection = { kind: "device", ratingA: 20 };
    },
  },
];
