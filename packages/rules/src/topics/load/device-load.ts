import type { Citation } from "../../core/citation.js";
import { amperesText } from "../../core/conductor-ampacity.js";
import type { Edition } from "../../core/edition.js";
import type { Protection } from "../../core/joint.js";
import { isAsked, writeLoad } from "../../core/joint-load.js";
import { NO_ADVICE, notApplicable, type Rule, settled } from "../../core/rule.js";
import { standardRatingFrom } from "../../core/standard-rating.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "device-load";

/**
 * Is the device of the circuit large enough for the load?
 *
 * NFPA 70 210.20(A) for branch circuits and 215.3 for feeders (2017, 2020, 2023), in our words: the rating of the device
 * is not below the load that is not continuous plus 125 % of the continuous load; where the device and what holds it are
 * listed for 100 % of their rating, not below the load as it is. For a tap the device at its end counts. Amperes.
 * Worked: 180 A continuous and nothing else ask for 1.25 x 180 = 225 A: a 225 A device passes, a 200 A one does not.
 * A load that is not given is left to the rules that ask for it: the device itself keeps such a load within bounds.
 * Silent: motors, whose device follows Article 430. A listing for 100 % is no fact of a joint: with one, give the load for
 * sizing as it is.
 */
export const deviceLoad: Rule = {
  id: ID,
  title: "Load on the device",
  clauses: ["deviceLoad", "feederDevice"],
  needs: [
    "joint/circuit/protection",
    "joint/circuit/loadA",
    "joint/circuit/continuousLoadA",
    "joint/circuit/nonContinuousLoadA",
  ],
  cannotSee: "whether the device and what holds it are listed for 100 % of their rating",
  check({ joint }, edition) {
    if (joint.role !== "phase") return notApplicable(ID, "only a phase conductor carries its load through the device");
    const { circuit } = joint;
    const device = deviceOf(circuit?.protection, edition);
    if (device === undefined) return notApplicable(ID, "no device is said to be sized for the load");
    const worksheet = new Worksheet();
    const load = writeLoad(worksheet, circuit, edition);
    if (isAsked(load)) return notApplicable(ID, "the load is not given in full");
    const rating = worksheet.given(device.label, device.ratingA, device.path, "A");
    const holds = worksheet.compare("the device is rated for the load", load, "<=", rating, device.cite);
    const loadA = Number(load.value);
    const loadText = `${amperesText(loadA)} for sizing`;
    const ratingText = amperesText(device.ratingA);
    return settled(ID, worksheet, {
      sentence: holds
        ? `The load is ${loadText}, within the ${ratingText} of the device.`
        : `The load is ${loadText}, more than the ${ratingText} that the device is rated.`,
      cite: device.cite,
      required: `device of ${amperesText(loadA)} or more`,
      offered: ratingText,
      fix: fixFor(loadA, edition),
      advice: !holds && circuit?.loadA === undefined ? IF_LISTED : NO_ADVICE,
    });
  },
};

interface LoadedDevice {
  readonly label: string;
  readonly ratingA: number;
  readonly path: string;
  readonly cite: Citation;
}

function deviceOf(protection: Protection | undefined, { clauses }: Edition): LoadedDevice | undefined {
  if (protection?.kind === "device")
    return {
      label: "rating of the device",
      ratingA: protection.ratingA,
      path: "joint/circuit/protection/ratingA",
      cite: clauses.deviceLoad,
    };
  if (protection?.kind === "feeder-tap")
    return {
      label: "device at the end of the tap",
      ratingA: protection.endDeviceA,
      path: "joint/circuit/protection/endDeviceA",
      cite: clauses.feederDevice,
    };
  return undefined;
}

const IF_LISTED: readonly string[] = Object.freeze([
  "The continuous part counts at 125 %. Where device and assembly are both listed for 100 % of their rating, give the load for sizing as it is.",
]);

function fixFor(loadA: number, edition: Edition): string {
  const next = standardRatingFrom(edition, loadA);
  return next === undefined
    ? "less load, or the load divided among several circuits"
    : `a device of ${amperesText(next)} with conductors for it, or less load`;
}
