import { type Case, type Objection, reject } from "../case.js";
import { ofDecimal } from "../scaled-integer.js";

/**
 * 210.20(A), 215.3: the device of a branch circuit or feeder is rated for the load that is not continuous and 125 % of the
 * continuous load. The device at the end of a tap serves the load of the tap.
 */
export function deviceLoad({ joint }: Case): Objection[] {
  const { circuit } = joint;
  if (joint.role !== "phase" || circuit === undefined) return [];
  const { protection, loadA, continuousLoadA, nonContinuousLoadA } = circuit;
  const rating =
    protection?.kind === "device"
      ? protection.ratingA
      : protection?.kind === "feeder-tap"
        ? protection.endDeviceA
        : undefined;
  if (rating === undefined) return [];
  // In four-millionths of an ampere, so that 125 % is a whole number; parts that are not given add nothing.
  const load =
    loadA === undefined
      ? ofDecimal(continuousLoadA ?? 0) * 5 + ofDecimal(nonContinuousLoadA ?? 0) * 4
      : ofDecimal(loadA) * 4;
  return load > ofDecimal(rating) * 4 ? [reject("210.20", `load above the device of ${rating} A`)] : [];
}
