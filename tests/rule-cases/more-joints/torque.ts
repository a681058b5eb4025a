import type { MoreJoint } from "./more-joint.js";

export const TORQUE_JOINTS: readonly MoreJoint[] = [
  {
    rule: "torque-source",
    name: "the slot is as long as that of the last row",
    from: 393,
    change: ({ joint, connector }) => {
      for (const { drive } of [...connector.screws, ...(joint.equipment?.terminal?.screws ?? [])])
        if (drive.kind === "slotted") drive.slotLength = { value: 9 / 32, unit: "in" };
    },
  },
];
