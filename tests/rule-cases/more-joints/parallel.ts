import type { MoreJoint } from "./more-joint.js";

/** Legs below 1/0 AWG for control power, of which each carries 25 A. */
export const PARALLEL_JOINTS: readonly MoreJoint[] = (
  [
    [25, 25],
    [26, 25],
    [20, 20],
    [20, 30],
  ] as const
).map(
  ([loadA, ratingA]): MoreJoint => ({
    rule: "parallel-legs",
    name: `one leg of 25 A has a load of ${String(loadA)} A and a device of ${String(ratingA)} A`,
    from: 2421,
    change: ({ joint, connector }) => {
      connector.temperature = { value: 60, unit: "Cel" };
      if (joint.circuit === undefined) return;
      joint.circuit.loadA = loadA;
      joint.circuit.protection = { kind: "device", ratingA };
    },
  }),
);
