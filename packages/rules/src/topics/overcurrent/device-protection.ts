import {
  ampacityA,
  amperesText,
  conductorText,
  isBuildingWire,
  smallestSizeCarrying,
  temperatureColumn,
} from "../../core/conductor-ampacity.js";
import { conductorPath } from "../../core/conductor-path.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Duty, Step } from "../../core/finding.js";
import type { Joint } from "../../core/joint.js";
import { type AskedFact, isAsked, loadForSizing, writeLoad } from "../../core/joint-load.js";
import type { Bound } from "../../core/rating-source.js";
import { asking, type JointSubject, NO_CONDITIONS, notApplicable, type Rule, settled } from "../../core/rule.js";
import { CAPPED_SIZES, NEEDS_LISTED_USE, smallConductorCap } from "../../core/small-conductor.js";
import { NEXT_RATING_UP_TO_A, standardRatingFrom } from "../../core/standard-rating.js";
import { cellAt, isRefused } from "../../core/table.js";
import {
  type ConductorLimit,
  carriedText,
  conductorLimit,
  decideLimit,
  refuseInsulation,
  sizeOutsideTable,
  writeAmpacity,
  writeKnownRatings,
  writeLimit,
} from "../../core/termination-limit.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "device-protection";

/**
 * Does the device ahead protect every conductor of the joint by its ampacity?
 *
 * NFPA 70 240.4 (2017, 2020, 2023), in our words: the ampacity, at the temperature limit of the terminations and for
 * all sets together, is not below the device's rating. (B): up to and including 800 A, where the ampacity is no
 * standard rating, the device may be the next standard one above it, provided that the load stays within the ampacity;
 * taps have no part in this. (C): above 800 A the ampacity reaches the device. (D): whatever the table says, the
 * device of 14, 12 and 10 AWG is limited to 15, 20 and 30 A copper, 15 and 25 A aluminum.
 * Worked: 4/0 AWG aluminum at 75 C, 180 A, under a 200 A device: 200 A is the next standard rating above 180 A, and
 * the load is 150 A: allowed. 250 kcmil aluminum, 205 A, under 225 A with a load of 218 A: refused.
 * Neutrals are not judged, nor circuits whose device follows another rule: services, taps to feeders, motor circuits
 * (240.4(G)), and conductors said to have no such protection.
 * Silent: the size next to a device with an adjustable setting that is no standard rating; 18 and 16 AWG, allowed only
 * for uses listed one by one, are asked about.
 */
export const deviceProtection: Rule = {
  id: ID,
  title: "Protection of the conductor by its device",
  clauses: [
    "ampacityProtection",
    "nextStandardRating",
    "over800A",
    "smallConductors",
    "standardRatings",
    "otherProtection",
  ],
  needs: [
    "joint/circuit/protection",
    "joint/circuit/loadA",
    "joint/equipment/terminalTemperature",
    "joint/circuit/endTerminalTemperature",
    "connector/temperature",
    "connector/metalMarking",
    "joint/conductors/0/insulation",
    "joint/place/location",
  ],
  cannotSee: "correction for the surroundings and for bundling, and which outlets the circuit serves",
  check(subject, edition) {
    const { joint } = subject;
    if (joint.role !== "phase") return notApplicable(ID, "only a phase conductor is protected by a device in its line");
    if (!joint.conductors.some(isBuildingWire))
      return notApplicable(ID, "leads of listed equipment and fixture wire are not sized from the building-wire table");
    const protection = joint.circuit?.protection;
    const worksheet = new Worksheet();
    if (protection === undefined)
      return asking(
        ID,
        worksheet,
        "joint/circuit/protection",
        "What protects the conductor is not given: a device and its rating, or a statement that another rule governs.",
        { cite: edition.clauses.ampacityProtection, required: "a device that the ampacity reaches" },
      );
    switch (protection.kind) {
      case "service":
        return notApplicable(ID, "service conductors have no device of the premises ahead of them");
      case "feeder-tap":
        return notApplicable(ID, "a tap is protected by the rules for taps, which are checked by themselves");
      case "motor-circuit":
        return notApplicable(
          ID,
          "the device of a motor circuit follows the rules for motors (240.4(G)), not the ampacity of the conductor",
        );
      case "none-stated":
        return notApplicable(ID, `stated: no device protects this conductor by its ampacity (${protection.because})`);
      case "device":
        return judge(subject, worksheet, protection.ratingA, edition);
    }
  },
};

/** A failure of any conductor decides; then a missing fact; only then do all pass. */
function judge(subject: JointSubject, worksheet: Worksheet, deviceA: number, edition: Edition): CheckFinding {
  const { joint } = subject;
  const device = worksheet.given("rating of the device", deviceA, "joint/circuit/protection/ratingA", "A");
  const limits: ConductorLimit[] = [];
  let asked: { readonly limit: ConductorLimit; readonly fact: AskedFact } | undefined;
  for (const [group, conductor] of joint.conductors.entries()) {
    const limit = isBuildingWire(conductor) ? conductorLimit(subject, group, edition) : undefined;
    if (limit === undefined) continue;
    limits.push(limit);
    if (limit.unfit !== undefined) return refuseInsulation(ID, worksheet, subject, limit, edition);
    if (exceedsSmallConductor(limit, deviceA, edition)) return refuseSmallConductor(worksheet, limit, device, edition);
    const decision = decide(limit, joint, deviceA, edition);
    if (decision === "fail") return refuse(subject, worksheet, limit, device, edition);
    if (decision !== "pass") asked ??= { limit, fact: decision };
  }
  if (asked !== undefined) {
    writeKnownRatings(worksheet, subject, asked.limit);
    return asking(ID, worksheet, asked.fact.path, asked.fact.because, {
      cite: edition.clauses.ampacityProtection,
      required: `protected at ${amperesText(deviceA)}`,
    });
  }
  return accept(subject, worksheet, limits, device, edition);
}

/** The device against one conductor. The load matters only where the next standard rating is made use of. */
function decide(limit: ConductorLimit, joint: Joint, deviceA: number, edition: Edition): "pass" | "fail" | AskedFact {
  if (limit.outsideTable !== undefined) return sizeOutsideTable(limit);
  if (NEEDS_LISTED_USE.includes(limit.conductor.size) || isUncapped(limit, edition))
    return {
      path: conductorPath(limit.group, "size"),
      because: `${conductorText(1, limit.conductor.size, limit.conductor.metal)} is allowed only for uses that the code lists one by one; which one this is, is not known.`,
    };
  const load = loadForSizing(joint.circuit);
  const decision = decideLimit(limit, edition, (amperes) =>
    protects(limit, joint, amperes, deviceA, typeof load === "number" ? load : Number.NEGATIVE_INFINITY, edition),
  );
  if (decision !== "pass" || limit.lowA >= deviceA || typeof load === "number") return decision;
  return {
    path: load.path,
    because: `The device is the next standard rating above the ampacity, allowed only while the load stays within ${amperesText(limit.lowA)}. ${load.because}`,
  };
}

/** A size that is capped, in a metal for which the code gives no cap. */
function isUncapped({ conductor }: ConductorLimit, edition: Edition): boolean {
  return (
    CAPPED_SIZES.includes(conductor.size) && isRefused(smallConductorCap(edition, conductor.metal, conductor.size))
  );
}

function protects(
  limit: ConductorLimit,
  joint: Joint,
  amperes: number,
  deviceA: number,
  loadA: number,
  edition: Edition,
): boolean {
  if (amperes >= deviceA) return true;
  return (
    mayTakeNextRating(limit, joint) &&
    deviceA <= NEXT_RATING_UP_TO_A &&
    standardRatingFrom(edition, amperes) === deviceA &&
    loadA <= amperes
  );
}

/** In a tap only the conductor that runs through may make use of the next standard rating. */
function mayTakeNextRating({ conductor }: ConductorLimit, joint: Joint): boolean {
  return joint.function !== "tap" || conductor.duty === "run";
}

function accept(
  subject: JointSubject,
  worksheet: Worksheet,
  limits: readonly ConductorLimit[],
  device: Step,
  edition: Edition,
): CheckFinding {
  const { clauses } = edition;
  const deviceA = numberOf(device);
  const reasons: Step[] = [];
  for (const limit of limits) {
    const ampacity = writtenAmpacity(worksheet, subject, limit, "low", edition);
    if (limit.lowA >= deviceA)
      worksheet.compare("the ampacity reaches the device", ampacity, ">=", device, clauses.ampacityProtection);
    else writeNextRating(worksheet, subject.joint, ampacity, device, edition);
    reasons.push(worksheet.last);
    if (CAPPED_SIZES.includes(limit.conductor.size)) {
      writeSmallConductor(worksheet, limit, device, edition);
      reasons.push(worksheet.last);
    }
  }
  const tightest = limits.reduce((least, one) => (one.lowA < least.lowA ? one : least));
  const byNextRating = tightest.lowA < deviceA;
  if (reasons.length > 1)
    worksheet.conclude(
      "the device protects every conductor",
      allHold(reasons),
      reasons,
      "each of them is protected",
      clauses.ampacityProtection,
    );
  const carried = carriedText(tightest, "low");
  return settled(ID, worksheet, {
    sentence: byNextRating
      ? `${carried}; the ${amperesText(deviceA)} device is the next standard rating above that, and the load stays within the ampacity.`
      : `${carried}, and the device ahead is rated ${amperesText(deviceA)}.`,
    cite: byNextRating ? clauses.nextStandardRating : clauses.ampacityProtection,
    required: `protected at ${amperesText(deviceA)}`,
    offered: amperesText(tightest.lowA),
    conditions: byNextRating ? [notForPlugLoads(edition)] : NO_CONDITIONS,
  });
}

/** 240.4(B): the next standard rating, up to 800 A, with the load within the ampacity. The last step is the outcome. */
function writeNextRating(worksheet: Worksheet, joint: Joint, ampacity: Step, device: Step, edition: Edition): void {
  const { clauses } = edition;
  const reasons: Step[] = [];
  const top = worksheet.state("largest device of this allowance", NEXT_RATING_UP_TO_A, clauses.nextStandardRating, "A");
  worksheet.compare("the device is within the allowance", device, "<=", top, clauses.nextStandardRating);
  reasons.push(worksheet.last);
  const next = writeStandardRating(worksheet, ampacity, edition);
  worksheet.compare("the device is the next standard rating", device, "=", next, clauses.nextStandardRating);
  reasons.push(worksheet.last);
  const load = writeLoad(worksheet, joint.circuit, edition);
  // The caller has asked for the load already where it is not given.
  if (isAsked(load)) throw new Error("the next standard rating was allowed without a load");
  worksheet.compare("the load stays within the ampacity", load, "<=", ampacity, clauses.nextStandardRating);
  reasons.push(worksheet.last);
  worksheet.conclude(
    "the next standard rating above the ampacity is allowed",
    allHold(reasons),
    reasons,
    "the device is within 800 A, next above the ampacity, and the load stays within the ampacity",
    clauses.nextStandardRating,
  );
}

/** The outcome is read off the steps themselves: comparisons that hold, conclusions that pass. */
function allHold(steps: readonly Step[]): "pass" | "fail" {
  return steps.every(({ value }) => value === true || value === "pass") ? "pass" : "fail";
}

function writeStandardRating(worksheet: Worksheet, ampacity: Step, edition: Edition): Step {
  const amperes = numberOf(ampacity);
  const cite = edition.clauses.standardRatings;
  const next = standardRatingFrom(edition, amperes);
  const listed = cellAt(edition.tables.standardRatings, String(next), "use");
  // The allowance ends with 800 A, far below the end of the list.
  if (next === undefined || isRefused(listed)) throw new Error(`no standard rating reaches ${String(amperes)} A`);
  const use = worksheet.read(`use of the standard rating ${String(next)} A`, listed, []);
  return worksheet.conclude(
    "standard rating at or above the ampacity",
    next,
    [ampacity, use],
    next === amperes
      ? "the ampacity is itself a standard rating"
      : "the first of the standard ratings above the ampacity",
    cite,
    "A",
  );
}

function refuse(
  subject: JointSubject,
  worksheet: Worksheet,
  limit: ConductorLimit,
  device: Step,
  edition: Edition,
): CheckFinding {
  const { clauses } = edition;
  const deviceA = numberOf(device);
  const ampacity = writtenAmpacity(worksheet, subject, limit, "high", edition);
  const reached = worksheet.compare(
    "the ampacity reaches the device",
    ampacity,
    ">=",
    device,
    clauses.ampacityProtection,
  );
  const direct = worksheet.last;
  const over800 = deviceA > NEXT_RATING_UP_TO_A;
  const tap = !mayTakeNextRating(limit, subject.joint);
  const next = standardRatingFrom(edition, limit.highA);
  let because = "neither the ampacity nor the next standard rating above it reaches the device";
  let cite = clauses.ampacityProtection;
  const uses: Step[] = [direct];
  if (tap) {
    because = "the next standard rating is not allowed for the conductor that leaves a tap";
    cite = clauses.tapsNoNextSize;
  } else if (over800) {
    const top = worksheet.state(
      "largest device of the next standard rating",
      NEXT_RATING_UP_TO_A,
      clauses.over800A,
      "A",
    );
    worksheet.compare("the device may be the next standard rating", device, "<=", top, clauses.over800A);
    uses.push(worksheet.last);
    because = "above 800 A the ampacity itself reaches the device";
    cite = clauses.over800A;
  } else {
    const rating = writeStandardRating(worksheet, ampacity, edition);
    worksheet.compare("the device is the next standard rating", device, "=", rating, clauses.nextStandardRating);
    uses.push(worksheet.last);
    if (next === deviceA) {
      const load = writeLoad(worksheet, subject.joint.circuit, edition);
      if (!isAsked(load)) {
        worksheet.compare("the load stays within the ampacity", load, "<=", ampacity, clauses.nextStandardRating);
        uses.push(worksheet.last);
      }
      because = "the next standard rating is allowed only while the load stays within the ampacity";
      cite = clauses.nextStandardRating;
    }
  }
  worksheet.conclude("the device protects the conductor", reached ? "pass" : "fail", uses, because, cite);
  return settled(ID, worksheet, {
    sentence: `${carriedText(limit, "high")}, which a ${amperesText(deviceA)} device does not protect: ${because}.`,
    cite,
    required: `protected at ${amperesText(deviceA)}`,
    offered: amperesText(limit.highA),
    fix: fixFor(limit, deviceA, edition),
  });
}

function exceedsSmallConductor({ conductor }: ConductorLimit, deviceA: number, edition: Edition): boolean {
  if (!CAPPED_SIZES.includes(conductor.size)) return false;
  const cell = smallConductorCap(edition, conductor.metal, conductor.size);
  return !isRefused(cell) && typeof cell.value === "number" && !(deviceA <= cell.value);
}

/** Compares the device with the cap of a small conductor, which the caller has seen to exist. */
function writeSmallConductor(worksheet: Worksheet, limit: ConductorLimit, device: Step, edition: Edition): boolean {
  const { conductor, group } = limit;
  const head = `joint/conductors/${String(group)}`;
  const size = worksheet.given("conductor size", conductor.size, `${head}/size`);
  const metal = worksheet.given("conductor metal", conductor.metal, `${head}/metal`);
  const cap = worksheet.tryRead(
    "largest device of a small conductor",
    smallConductorCap(edition, conductor.metal, conductor.size),
    [size, metal],
  );
  if ("refusal" in cap) throw new Error(cap.detail);
  return worksheet.compare(
    "the device is within the cap of a small conductor",
    device,
    "<=",
    cap,
    edition.clauses.smallConductors,
  );
}

function refuseSmallConductor(
  worksheet: Worksheet,
  limit: ConductorLimit,
  device: Step,
  edition: Edition,
): CheckFinding {
  writeSmallConductor(worksheet, limit, device, edition);
  const { conductor } = limit;
  const cell = smallConductorCap(edition, conductor.metal, conductor.size);
  const capText = isRefused(cell) ? "not known" : `${String(cell.value)} A`;
  return settled(ID, worksheet, {
    sentence: `${conductorText(1, conductor.size, conductor.metal)} is limited to a device of ${capText}, whatever its ampacity; the device is ${amperesText(numberOf(device))}.`,
    cite: edition.clauses.smallConductors,
    required: `device of ${capText} or less`,
    offered: amperesText(numberOf(device)),
    fix: `a device of ${capText}, or a larger conductor`,
  });
}

function writtenAmpacity(
  worksheet: Worksheet,
  subject: JointSubject,
  limit: ConductorLimit,
  bound: Bound,
  edition: Edition,
): Step {
  return writeAmpacity(worksheet, limit, bound, writeLimit(worksheet, subject, limit, bound, edition), edition);
}

function fixFor(limit: ConductorLimit, deviceA: number, edition: Edition): string {
  const { conductor, sets, highC } = limit;
  const column = temperatureColumn(highC);
  if (column === undefined) return "parts rated 60 C or more";
  const larger = smallestSizeCarrying(edition, conductor.metal, column, sets, deviceA) ?? "more conductors in parallel";
  const now = ampacityA(edition, conductor.metal, conductor.size, column) ?? 0;
  return `${larger}, or a device of ${amperesText(now * sets)} or less`;
}

/** 240.4(B)(1) keeps the allowance from circuits whose loads are plugged in; no schedule of joints can show them. */
function notForPlugLoads(edition: Edition): Duty {
  return {
    duty: "no-plug-in-branch-circuit",
    sentence:
      "See that this is no branch circuit with more than one receptacle for plug-in portable loads; the next standard device is not allowed for one.",
    cite: edition.clauses.nextStandardRating,
  };
}

function numberOf(step: Step): number {
  return typeof step.value === "number" ? step.value : Number.NaN;
}
