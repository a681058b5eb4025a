import type { Citation } from "../../core/citation.js";
import { amperesText, isBuildingWire, smallestSizeCarrying, temperatureColumn } from "../../core/conductor-ampacity.js";
import type { Edition } from "../../core/edition.js";
import { compareExact, divide, type Exact, exactOf } from "../../core/exact.js";
import type { CheckFinding, Duty, Step } from "../../core/finding.js";
import type { Joint, Protection } from "../../core/joint.js";
import { type AskedFact, isAsked, loadForSizing, writeLoad } from "../../core/joint-load.js";
import { inches } from "../../core/quantity.js";
import type { Bound } from "../../core/rating-source.js";
import { asking, type JointSubject, notApplicable, type Rule, settled } from "../../core/rule.js";
import {
  LONG_TAP_DIVISOR,
  LONG_TAP_UP_TO_FT,
  SHORT_TAP_DIVISOR,
  SHORT_TAP_UP_TO_FT,
} from "../../core/tap-allowance.js";
import {
  type ConductorLimit,
  carriedA,
  carriedText,
  conductorLimit,
  decideLimit,
  limitAt,
  refuseInsulation,
  sizeOutsideTable,
  writeAmpacity,
  writeKnownRatings,
  writeLimit,
} from "../../core/termination-limit.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "feeder-tap";

type FeederTap = Extract<Protection, { readonly kind: "feeder-tap" }>;

const INCHES_PER_FOOT = exactOf(12);
const SHORT_UP_TO = exactOf(SHORT_TAP_UP_TO_FT);
const LONG_UP_TO = exactOf(LONG_TAP_UP_TO_FT);

/** Which allowance a tap is judged by, and the share of the feeder's device that its ampacity must reach. */
interface Allowance {
  readonly way: "short" | "long" | "outdoors";
  /** The feeder's device is divided by this; absent: no share is asked for. */
  readonly divisor?: number;
}

const WITHIN_ENCLOSURE: Allowance = { way: "short" };
const SHORT: Allowance = { way: "short", divisor: SHORT_TAP_DIVISOR };
const LONG: Allowance = { way: "long", divisor: LONG_TAP_DIVISOR };
const OUTDOORS: Allowance = { way: "outdoors" };

/** Where each allowance stands for a tap to a feeder, and for conductors of a transformer's secondary. */
const FEEDER_CLAUSES = { short: "tapTo10ft", long: "tapTo25ft", outdoors: "tapOutdoors" } as const;
const SECONDARY_CLAUSES = { short: "secondaryTo10ft", long: "secondaryTo25ft", outdoors: "secondaryOutdoors" } as const;

function citeOf({ through }: FeederTap, { way }: Allowance, { clauses }: Edition): Citation {
  return clauses[(through === undefined ? FEEDER_CLAUSES : SECONDARY_CLAUSES)[way]];
}

/** Amperes of the device ahead as they count where the conductor is: through a transformer, by the ratio of its voltages. */
function aheadA({ feederDeviceA, through }: FeederTap): number {
  return through === undefined ? feederDeviceA : (feederDeviceA * through.primaryV) / through.secondaryV;
}

/**
 * Is the conductor that leaves a feeder large enough for a tap of its length?
 *
 * NFPA 70 240.21(B) (2017, 2020, 2023), in our words: the ampacity of a tap, in amperes and at the temperature limit
 * of its terminations, carries the load and reaches the device at its end; the next standard rating is never made use
 * of. (B)(1), up to 10 ft: where it leaves the enclosure of the tap, at least a tenth of the feeder's device. (B)(2),
 * up to 25 ft: at least a third. (B)(5), any length outdoors: no share of the feeder's device. Every one of them is
 * protected from physical damage; a tap of (B)(2) or (B)(5) ends in one device. 240.21(C)(2), (6), (4): conductors of a
 * transformer's secondary the same, with the device of the primary times primary over secondary voltage.
 * Worked: 22 ft from a 400 A feeder in 6 AWG copper, 65 A: 65 >= 400 / 3 does not hold, so it is refused; 2/0 AWG,
 * 175 A, serves. 8 ft in 8 AWG copper, 50 A, to a 40 A device: 50 >= 400 / 10 and 50 >= 40.
 * Silent: taps over 25 ft indoors, which only the high bays of (B)(4) allow, are refused and not judged by (B)(4), nor are
 * the secondaries of (C)(1) and (C)(3) and supervised industrial taps: the calculation of taps answers them.
 */
export const feederTap: Rule = {
  id: ID,
  title: "Size and length of a tap to a feeder",
  clauses: [
    "tapsNoNextSize",
    "tapTo10ft",
    "tapTo25ft",
    "tapOutdoors",
    "transformerSecondary",
    "secondaryTo10ft",
    "secondaryTo25ft",
    "secondaryOutdoors",
    "feederLoad",
  ],
  needs: [
    "joint/circuit/protection",
    "joint/circuit/loadA",
    "joint/circuit/endTerminalTemperature",
    "joint/equipment/terminalTemperature",
    "connector/temperature",
    "connector/metalMarking",
  ],
  cannotSee: "the way the tap takes, its raceway, and what stands at its end",
  check(subject, edition) {
    const { joint } = subject;
    const protection = joint.circuit?.protection;
    if (joint.role !== "phase") return notApplicable(ID, "only the phase conductors of a tap are judged");
    if (protection?.kind !== "feeder-tap")
      return notApplicable(ID, "the conductor is not said to be a tap to a feeder");
    const worksheet = new Worksheet();
    const cite = edition.clauses.tapsNoNextSize;
    const limits = tapConductors(subject, edition);
    if (limits.length === 0)
      return asking(
        ID,
        worksheet,
        "joint/conductors/0/duty",
        "No building wire is said to leave the tap, so it is not known what to judge.",
        {
          cite,
          required: "the conductor that leaves the tap",
        },
      );
    const unfit = limits.find((limit) => limit.unfit !== undefined);
    if (unfit !== undefined) return refuseInsulation(ID, worksheet, subject, unfit, edition);
    const lengthFt = divide(inches(protection.length), INCHES_PER_FOOT);
    if (!protection.physicallyProtected) return refuseUnprotected(worksheet, protection, edition);
    return judge(subject, worksheet, limits, protection, lengthFt, edition);
  },
};

/** In a tap joint the conductors that run through belong to the feeder and are left out. */
function tapConductors(subject: JointSubject, edition: Edition): readonly ConductorLimit[] {
  const { joint } = subject;
  const limits: ConductorLimit[] = [];
  for (const [group, conductor] of joint.conductors.entries()) {
    if (!isBuildingWire(conductor) || (joint.function === "tap" && conductor.duty === "run")) continue;
    const limit = conductorLimit(subject, group, edition);
    if (limit !== undefined) limits.push(limit);
  }
  return limits;
}

function judge(
  subject: JointSubject,
  worksheet: Worksheet,
  limits: readonly ConductorLimit[],
  tap: FeederTap,
  lengthFt: Exact,
  edition: Edition,
): CheckFinding {
  const load = loadForSizing(subject.joint.circuit);
  const loadA = typeof load === "number" ? load : Number.NEGATIVE_INFINITY;
  const byLength = allowanceFor(tap, lengthFt);
  /** A tap that runs outdoors has two ways to be allowed, any other has one. */
  const holds =
    (outdoors: boolean) =>
    (amperes: number): boolean =>
      (byLength !== undefined && reaches(amperes, loadA, tap, byLength)) ||
      (outdoors && reaches(amperes, loadA, tap, OUTDOORS));
  let asked: { readonly limit: ConductorLimit; readonly fact: AskedFact } | undefined;
  for (const limit of limits) {
    if (limit.outsideTable !== undefined) {
      asked ??= { limit, fact: sizeOutsideTable(limit) };
      continue;
    }
    const worst = decideLimit(limit, edition, holds(tap.outdoors === true));
    if (worst === "pass") continue;
    const best = tap.outdoors === undefined ? decideLimit(limit, edition, holds(true)) : worst;
    if (best === "fail") return refuse(subject, worksheet, limit, tap, lengthFt, edition);
    asked ??= { limit, fact: worst === "fail" ? OUTDOORS_ASKED : worst };
  }
  if (asked !== undefined) return ask(subject, worksheet, asked.limit, asked.fact, edition);
  if (typeof load !== "number") return ask(subject, worksheet, limits[0], load, edition);
  return accept(subject, worksheet, limits, tap, lengthFt, load, edition);
}

const OUTDOORS_ASKED: AskedFact = Object.freeze({
  path: "joint/circuit/protection/outdoors",
  because: "The tap is too long or too small for one inside a building; whether it runs outdoors is not given.",
});

/** The allowance by length; undefined over 25 ft. */
function allowanceFor(tap: FeederTap, lengthFt: Exact): Allowance | undefined {
  if (compareExact(lengthFt, SHORT_UP_TO) <= 0) return tap.leavesEnclosure ? SHORT : WITHIN_ENCLOSURE;
  return compareExact(lengthFt, LONG_UP_TO) <= 0 ? LONG : undefined;
}

/** Compared without dividing, so that a whole number of amperes stays one. */
function reachesShare(amperes: number, { feederDeviceA, through }: FeederTap): boolean {
  return through === undefined
    ? amperes >= feederDeviceA
    : amperes * through.secondaryV >= feederDeviceA * through.primaryV;
}

function reaches(amperes: number, loadA: number, tap: FeederTap, { divisor }: Allowance): boolean {
  return (
    amperes >= loadA && amperes >= tap.endDeviceA && (divisor === undefined || reachesShare(amperes * divisor, tap))
  );
}

function accept(
  subject: JointSubject,
  worksheet: Worksheet,
  limits: readonly ConductorLimit[],
  tap: FeederTap,
  lengthFt: Exact,
  loadA: number,
  edition: Edition,
): CheckFinding {
  const byLength = allowanceFor(tap, lengthFt);
  const byLengthServes = byLength !== undefined && limits.every((limit) => reaches(limit.lowA, loadA, tap, byLength));
  const allowance = byLengthServes ? byLength : OUTDOORS;
  const cite = citeOf(tap, allowance, edition);
  const compared: Step[] = [...writeLength(worksheet, tap, lengthFt, allowance, edition)];
  for (const limit of limits) writeReaches(worksheet, subject, limit, "low", tap, allowance, edition, compared);
  const tightest = limits.reduce((least, one) => (one.lowA < least.lowA ? one : least));
  worksheet.conclude(
    "the tap is allowed",
    allHold(compared),
    compared,
    "its length, its ampacity and its protection from damage are as asked",
    cite,
  );
  const required = requiredText(tap, allowance);
  return settled(ID, worksheet, {
    sentence: `${carriedText(tightest, "low")}, enough for a tap ${lengthText(tap)} long (${required}).`,
    cite,
    required,
    offered: amperesText(tightest.lowA),
    conditions: conditionsFor(tap, allowance, cite),
  });
}

function refuse(
  subject: JointSubject,
  worksheet: Worksheet,
  limit: ConductorLimit,
  tap: FeederTap,
  lengthFt: Exact,
  edition: Edition,
): CheckFinding {
  const byLength = allowanceFor(tap, lengthFt);
  // Outdoors there is one more allowance, and it asks for the least: what fails there fails everywhere.
  const allowance = tap.outdoors === false ? byLength : tap.outdoors === true ? OUTDOORS : (byLength ?? OUTDOORS);
  if (allowance === undefined) return refuseLength(worksheet, tap, lengthFt, edition);
  const cite = citeOf(tap, allowance, edition);
  const compared: Step[] = [...writeLength(worksheet, tap, lengthFt, allowance, edition)];
  writeReaches(worksheet, subject, limit, "high", tap, allowance, edition, compared);
  worksheet.conclude("the tap is allowed", allHold(compared), compared, "its ampacity falls short", cite);
  const load = loadForSizing(subject.joint.circuit);
  const short = typeof load === "number" && !(carriedA(limit, "high") >= load);
  const required = `${requiredText(tap, allowance)}${short ? ` and >= ${amperesText(load)} load` : ""}`;
  return settled(ID, worksheet, {
    sentence: `${carriedText(limit, "high")}; a tap ${lengthText(tap)} long needs ${required}.`,
    cite,
    required,
    offered: amperesText(carriedA(limit, "high")),
    fix: fixFor(subject.joint, limit, tap, allowance, edition),
  });
}

/** The outcome is read off the steps themselves. */
function allHold(steps: readonly Step[]): "pass" | "fail" {
  return steps.every(({ value }) => value === true) ? "pass" : "fail";
}

/** The clause that heads all allowances. */
function noNextSize({ through }: FeederTap, { clauses }: Edition): Citation {
  return through === undefined ? clauses.tapsNoNextSize : clauses.transformerSecondary;
}

function refuseUnprotected(worksheet: Worksheet, tap: FeederTap, edition: Edition): CheckFinding {
  const cite = noNextSize(tap, edition);
  const given = worksheet.given(
    "the tap is protected from physical damage",
    false,
    "joint/circuit/protection/physicallyProtected",
  );
  worksheet.conclude(
    "the tap is allowed",
    "fail",
    [given],
    "every tap is in a raceway or otherwise protected from damage",
    cite,
  );
  return settled(ID, worksheet, {
    sentence: "The tap is not protected from physical damage, and no tap to a feeder is allowed without that.",
    cite,
    required: "protected from physical damage",
    offered: "not protected",
    fix: "run the tap in a raceway",
  });
}

function refuseLength(worksheet: Worksheet, tap: FeederTap, lengthFt: Exact, edition: Edition): CheckFinding {
  const cite = citeOf(tap, LONG, edition);
  const length = writeFeet(worksheet, tap, lengthFt);
  const longest = worksheet.state("longest tap inside a building", LONG_TAP_UP_TO_FT, cite, "ft");
  worksheet.compare("the tap is short enough", length, "<=", longest, cite);
  return settled(ID, worksheet, {
    sentence: `The tap is ${lengthText(tap)} long; inside a building 25 ft is the longest${tap.through === undefined ? ", except in high bays under 240.21(B)(4), which is not answered here" : ", also in industrial installations"}.`,
    cite,
    required: "25 ft or less",
    offered: lengthText(tap),
    fix: "a tap of 25 ft or less, or a device where the tap begins",
  });
}

function ask(
  subject: JointSubject,
  worksheet: Worksheet,
  limit: ConductorLimit | undefined,
  fact: AskedFact,
  edition: Edition,
): CheckFinding {
  if (limit !== undefined) writeKnownRatings(worksheet, subject, limit);
  return asking(ID, worksheet, fact.path, fact.because, {
    cite: edition.clauses.tapsNoNextSize,
    required: "ampacity for the load, the device at its end and its share of the feeder's device",
  });
}

/** The length in feet: as posted, or converted. */
function writeFeet(worksheet: Worksheet, { length }: FeederTap, lengthFt: Exact): Step {
  const given = worksheet.given("length of the tap", length.value, "joint/circuit/protection/length", length.unit);
  if (length.unit === "ft") return given;
  const value = String(length.value);
  if (length.unit === "in")
    return worksheet.exactly("length of the tap in feet", lengthFt, "ft", [given], "in / 12", `${value} / 12`);
  const perFoot = length.unit === "mm" ? "304.8" : "0.3048";
  return worksheet.exactly(
    "length of the tap in feet",
    lengthFt,
    "ft",
    [given],
    `${length.unit} / ${perFoot}`,
    `${value} / ${perFoot}`,
  );
}

/** Why this allowance applies: the length within its limit, or the way outdoors; and the protection from damage. */
function writeLength(
  worksheet: Worksheet,
  tap: FeederTap,
  lengthFt: Exact,
  allowance: Allowance,
  edition: Edition,
): readonly Step[] {
  const cite = citeOf(tap, allowance, edition);
  const length = writeFeet(worksheet, tap, lengthFt);
  const covered = worksheet.given(
    "the tap is protected from physical damage",
    true,
    "joint/circuit/protection/physicallyProtected",
  );
  if (allowance.way === "outdoors")
    return tap.outdoors === true
      ? [covered, worksheet.given("the tap runs outdoors", true, "joint/circuit/protection/outdoors")]
      : [covered];
  const limitFt = allowance.way === "short" ? SHORT_TAP_UP_TO_FT : LONG_TAP_UP_TO_FT;
  worksheet.compare(
    "the tap is within the length of this allowance",
    length,
    "<=",
    worksheet.state("longest tap of this allowance", limitFt, cite, "ft"),
    cite,
  );
  return [covered, worksheet.last];
}

/** Writes the comparisons of one conductor, and adds them to those compared. */
function writeReaches(
  worksheet: Worksheet,
  subject: JointSubject,
  limit: ConductorLimit,
  bound: Bound,
  tap: FeederTap,
  allowance: Allowance,
  edition: Edition,
  compared: Step[],
): void {
  const { divisor } = allowance;
  const cite = citeOf(tap, allowance, edition);
  const ampacity = writeAmpacity(
    worksheet,
    limit,
    bound,
    writeLimit(worksheet, subject, limit, bound, edition),
    edition,
  );
  const reaching = (label: string, asked: Step): void => {
    worksheet.compare(label, ampacity, ">=", asked, cite);
    compared.push(worksheet.last);
  };
  const load = writeLoad(worksheet, subject.joint.circuit, edition);
  if (!isAsked(load)) reaching("the tap carries its load", load);
  const path = "joint/circuit/protection/endDeviceA";
  reaching(
    "the tap reaches the device at its end",
    worksheet.given("device at the end of the tap", tap.endDeviceA, path, "A"),
  );
  if (divisor === undefined) return;
  const ahead = writeAhead(worksheet, tap, edition);
  const share = worksheet.divide(
    divisor === SHORT_TAP_DIVISOR ? "a tenth of the device ahead" : "a third of the device ahead",
    ahead,
    worksheet.state("divisor of the device ahead", divisor, cite),
    "A",
    cite,
  );
  reaching("the tap reaches its share of the device ahead", share);
}

/** The device ahead; through a transformer it counts times primary over secondary voltage. */
function writeAhead(worksheet: Worksheet, { feederDeviceA, through }: FeederTap, { clauses }: Edition): Step {
  const path = "joint/circuit/protection/feederDeviceA";
  if (through === undefined) return worksheet.given("device of the feeder", feederDeviceA, path, "A");
  const cite = clauses.transformerSecondary;
  const device = worksheet.given("device of the transformer's primary", feederDeviceA, path, "A");
  const head = "joint/circuit/protection/through";
  const primary = worksheet.given("primary voltage", through.primaryV, `${head}/primaryV`, "V");
  const secondary = worksheet.given("secondary voltage", through.secondaryV, `${head}/secondaryV`, "V");
  const product = worksheet.multiply("device of the primary x primary voltage", [device, primary], "V A", cite);
  return worksheet.divide("device of the primary as it counts on the secondary side", product, secondary, "A", cite);
}

function requiredText(tap: FeederTap, { divisor }: Allowance): string {
  const end = `>= ${amperesText(tap.endDeviceA)} end device`;
  if (divisor === undefined) return end;
  return `>= ${amperesText(aheadA(tap) / divisor)} (1/${String(divisor)} of ${amperesText(aheadA(tap))}) and ${end}`;
}

function lengthText({ length }: FeederTap): string {
  return `${String(length.value)} ${length.unit}`;
}

function fixFor(
  joint: Joint,
  limit: ConductorLimit,
  tap: FeederTap,
  { way, divisor }: Allowance,
  edition: Edition,
): string {
  const column = temperatureColumn(limitAt(limit, "high"));
  if (column === undefined) return "parts rated 60 C or more";
  const load = loadForSizing(joint.circuit);
  const neededA = Math.max(
    typeof load === "number" ? load : 0,
    tap.endDeviceA,
    divisor === undefined ? 0 : aheadA(tap) / divisor,
  );
  const size =
    smallestSizeCarrying(edition, limit.conductor.metal, column, limit.sets, neededA) ?? "more conductors in parallel";
  return way === "long" ? `${size} or larger, or a tap of 10 ft or less` : `${size} or larger`;
}

function conditionsFor(tap: FeederTap, { way }: Allowance, cite: Citation): readonly Duty[] {
  if (way === "short" && !tap.leavesEnclosure)
    return [
      { duty: "tap-within-enclosure", sentence: "Keep the whole tap inside the enclosure in which it is made.", cite },
    ];
  const inRaceway: Duty = {
    duty: "tap-protected",
    sentence:
      way === "short"
        ? "Run the tap in a raceway from the point of tapping to the enclosure where it ends, and no further than that equipment."
        : "Run the tap in a raceway or protect it from damage by other approved means.",
    cite,
  };
  if (way === "short") return [inRaceway];
  const oneDevice: Duty = {
    duty: "tap-ends-in-one-device",
    sentence: "End the tap in one circuit breaker or one set of fuses that limits the load to the ampacity of the tap.",
    cite,
  };
  if (way === "long") return [inRaceway, oneDevice];
  return [
    inRaceway,
    oneDevice,
    {
      duty: "tap-outdoors",
      sentence:
        "Keep the tap outdoors except where it ends; its device is part of a disconnecting means that is readily accessible outside or inside nearest the point of entry.",
      cite,
    },
  ];
}
