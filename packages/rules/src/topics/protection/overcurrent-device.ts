import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { CalculationSheet, isClosed, shown } from "../../core/calculation-sheet.js";
import { type CircuitKind, type CircuitLoad, deviceLoadClause, loadSteps } from "../../core/circuit-load.js";
import { conductorText } from "../../core/conductor-ampacity.js";
import { type Protection, protectionOf, standardRatingStep } from "../../core/conductor-protection.js";
import { type ConductorRun, openFactsOf } from "../../core/conductor-run.js";
import { sizeOf } from "../../core/conductor-size.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import type { Basis } from "../../core/joint.js";
import { answerWithOpenFacts } from "../../core/open-fact.js";
import { type PreparedRun, preparedRun, runAmpacity } from "../../core/run-ampacity.js";
import { NEEDS_LISTED_USE } from "../../core/small-conductor.js";
import { type DeviceKind, standardRatingFrom, standardRatingTo } from "../../core/standard-rating.js";

const NAME = "overcurrent-device";
const DEVICE_PATH = "question/deviceA";
const CONDUCTOR_PATH = "question/conductor";

export type OvercurrentDeviceAsk = "smallest-for-load" | "largest-for-conductor" | "check";

/** What the circuit serves, where that decides which rule its device follows. */
export const SERVED_LOADS = ["ordinary", "motor", "air-conditioner", "tap"] as const;
export type ServedLoad = (typeof SERVED_LOADS)[number];

export interface ProtectedRun {
  readonly size: string;
  /** Its size apart; how it lies and where it ends. */
  readonly run: ConductorRun;
}

export interface OvercurrentDeviceQuestion extends CircuitLoad {
  readonly ask: OvercurrentDeviceAsk;
  readonly circuit: CircuitKind;
  readonly serves: ServedLoad;
  readonly deviceKind: DeviceKind;
  /** Rating in amperes. Needed to check a device. */
  readonly deviceA?: number;
  /** Needed unless the smallest device for a load is asked for. */
  readonly conductor?: ProtectedRun;
}

/**
 * Which device does a load need, which is the largest for a conductor, may this device protect this conductor?
 *
 * NFPA 70 210.20(A), 215.3, 240.4 and 240.6(A) (2017, 2020, 2023), in our words: the smallest device is the first standard
 * rating that carries 125 % of the continuous load and the rest. The largest for a conductor is the last standard rating
 * that its ampacity reaches after correction and at its terminations, or up to 800 A the next one above it; 14, 12 and
 * 10 AWG have a largest device of their own. Amperes.
 * Worked: 4/0 AWG aluminum at 75 C, 180 A: 200 A. Three sets of 400 kcmil copper, 1005 A: 1000 A.
 * Silent: adjustable trips; conductors whose interruption is a hazard (240.4(A)); motors, air conditioners and taps, whose
 * devices follow rules of their own (240.4(E), (G)) and are refused. The load beyond the next standard rating is a
 * condition that is said, not checked, where only the largest device is asked for.
 */
export const overcurrentDevice: Calculation<OvercurrentDeviceQuestion> = {
  name: NAME,
  title: "Overcurrent device of a conductor",
  clauses: [
    "branchCircuitDevice",
    "feederDevice",
    "ampacityProtection",
    "nextStandardRating",
    "over800A",
    "smallConductors",
    "tapProtection",
    "otherProtection",
    "standardRatings",
    "motorShortCircuitDevice",
  ],
  needs: [
    "question/ask",
    "question/circuit",
    "question/serves",
    "question/deviceKind",
    "question/continuousLoadA",
    "question/nonContinuousLoadA",
    "question/listedFor100Percent",
    DEVICE_PATH,
    CONDUCTOR_PATH,
  ],
  cannotSee: "the fault current, the setting of an adjustable trip, and what is plugged in",
  answer(question, basis, edition) {
    const elsewhere = followsAnotherRule(question, basis, edition);
    if (elsewhere !== undefined) return elsewhere;
    if (question.ask === "smallest-for-load")
      return smallestForLoad(new CalculationSheet(NAME, basis), question, edition);
    const { conductor } = question;
    const cite = edition.clauses.ampacityProtection;
    if (conductor === undefined)
      return new CalculationSheet(NAME, basis).ask(
        CONDUCTOR_PATH,
        "The device is judged by what the conductor carries, and no conductor is given.",
        cite,
      );
    const open = openFactsOf(conductor.run, undefined, edition);
    return answerWithOpenFacts(NAME, basis, open, cite, (sheet, atBest) => {
      const size = sheet.given("size", sizeOf(conductor.size).text, `${CONDUCTOR_PATH}/size`);
      if (NEEDS_LISTED_USE.includes(conductor.size))
        return sheet.refuse(
          "NOT_COVERED",
          `${conductor.size} is allowed only for uses that the code lists one by one.`,
          edition.clauses.smallConductors,
        );
      const prepared = preparedRun(sheet, conductor.run, atBest, edition);
      if (isClosed(prepared)) return prepared;
      const work: DeviceWork = { sheet, question, edition, size, prepared };
      return question.ask === "check" ? checkDevice(work) : largestForConductor(work, basis);
    });
  },
};

/** Devices that are not chosen by the ampacity of the conductor. */
function followsAnotherRule(
  { serves }: OvercurrentDeviceQuestion,
  basis: Basis,
  { clauses }: Edition,
): CalculationFinding | undefined {
  if (serves === "ordinary") return undefined;
  const sheet = new CalculationSheet(NAME, basis);
  sheet.given("what the circuit serves", serves, "question/serves");
  switch (serves) {
    case "motor":
      return sheet.refuse(
        "NOT_COVERED",
        "The short-circuit device of a motor goes by the motor (430.52), not by the conductor's ampacity: ask for it as a motor circuit.",
        clauses.motorShortCircuitDevice,
      );
    case "air-conditioner":
      return sheet.refuse(
        "NOT_COVERED",
        "The device of an air conditioner goes by the largest rating marked on its nameplate, not by the conductor's ampacity.",
        clauses.otherProtection,
      );
    case "tap":
      return sheet.refuse(
        "NOT_COVERED",
        "A tap is protected at its end: ask for the size of the tap instead.",
        clauses.tapProtection,
      );
  }
}

interface DeviceWork {
  readonly sheet: CalculationSheet;
  readonly question: OvercurrentDeviceQuestion;
  readonly edition: Edition;
  readonly size: Step;
  readonly prepared: PreparedRun;
}

function smallestForLoad(
  sheet: CalculationSheet,
  question: OvercurrentDeviceQuestion,
  edition: Edition,
): CalculationFinding {
  const cite = deviceLoadClause(question.circuit, edition);
  const load = loadSteps(sheet, question, question.circuit, edition);
  if (isClosed(load)) return load;
  const rating = standardRatingStep(sheet, load.sizing, question.deviceKind, edition);
  if (!(Number(rating.value) > 0))
    return sheet.refuse("NO_SOLUTION", `No standard device is rated for ${shown(load.sizing.value, 1)} A.`, cite);
  const result = sheet.conclude(
    "smallest device",
    rating.value,
    [rating],
    "the first standard rating that carries the load for sizing",
    cite,
    "A",
  );
  return sheet.finish({
    sentence: `The smallest standard ${KIND_TEXT[question.deviceKind]} is ${String(rating.value)} A; the load asks for ${shown(load.sizing.value, 1)} A.`,
    cite,
    results: [
      { name: "smallest device", step: result },
      { name: "load for sizing", step: load.sizing },
      { name: "load served", step: load.served },
    ],
    advice: ["The conductor must be large enough to be protected by this device."],
  });
}

/** Whether a device of this rating protects the conductor, worked on the sheet given. */
function judged(
  work: DeviceWork,
  device: Step,
): { readonly protection: Protection; readonly usable: Step } | CalculationFinding {
  const { sheet, question, edition, size, prepared } = work;
  const found = runAmpacity(sheet, prepared, size, device, DEVICE_PATH);
  if (isClosed(found)) return found;
  const { usable } = found;
  const protection = protectionOf(
    sheet,
    {
      size,
      metal: prepared.run.metal,
      ampacity: usable,
      device,
      deviceKind: question.deviceKind,
      circuit: question.circuit,
    },
    edition,
  );
  return { protection, usable };
}

/** The largest standard rating that protects the conductor; the next larger one is worked too, to show that it does not. */
function largestForConductor(work: DeviceWork, basis: Basis): CalculationFinding {
  const { sheet, question, edition, prepared } = work;
  let rating = standardRatingTo(edition, Number.POSITIVE_INFINITY, question.deviceKind);
  while (rating !== undefined) {
    const scratch = scratchWork(work, basis);
    if (isClosed(scratch)) return scratch;
    const outcome = judged(scratch, ratingTried(scratch.sheet, rating, edition));
    if (isClosed(outcome)) return outcome;
    if (outcome.protection.holds) break;
    rating = nextBelow(edition, rating, question.deviceKind);
  }
  const what = conductorText(prepared.run.sets, String(work.size.value), prepared.run.metal);
  if (rating === undefined)
    return sheet.refuse(
      "NO_SOLUTION",
      `No standard ${KIND_TEXT[question.deviceKind]} is small enough to protect ${what} there.`,
      edition.clauses.ampacityProtection,
    );
  const larger = standardRatingFrom(edition, rating + 0.5, question.deviceKind);
  const beyond: Step[] = [];
  if (larger !== undefined) {
    const refused = judged(work, ratingTried(sheet, larger, edition));
    if (isClosed(refused)) return refused;
    beyond.push(...refused.protection.uses);
  }
  const device = ratingTried(sheet, rating, edition);
  const last = judged(work, device);
  if (isClosed(last)) return last;
  const { protection, usable } = last;
  const result = sheet.conclude(
    "largest device",
    rating,
    [device, ...protection.uses, ...beyond],
    `${protection.because}; ${larger === undefined ? "there is no larger one" : "a larger one does not protect the conductor"}`,
    protection.cite,
    "A",
  );
  return sheet.finish({
    sentence: `The largest standard ${KIND_TEXT[question.deviceKind]} for ${what} is ${String(rating)} A; the ampacity there is ${shown(usable.value, 1)} A.`,
    cite: protection.cite,
    results: [
      { name: "largest device", step: result },
      { name: "ampacity of the conductor", step: usable },
    ],
    advice: protection.byNextRating
      ? [`The device is above the ampacity: the load must stay within ${shown(usable.value, 1)} A.`]
      : [],
  });
}

function scratchWork(work: DeviceWork, basis: Basis): DeviceWork | CalculationFinding {
  const sheet = new CalculationSheet(NAME, basis);
  const size = sheet.given("size", work.size.value, `${CONDUCTOR_PATH}/size`);
  const prepared = preparedRun(sheet, work.prepared.run, work.prepared.atBest, work.edition);
  return isClosed(prepared) ? prepared : { ...work, sheet, size, prepared };
}

function ratingTried(sheet: CalculationSheet, ratingA: number, { clauses }: Edition): Step {
  return sheet.conclude("standard rating tried", ratingA, [], "a rating of the list", clauses.standardRatings, "A");
}

function nextBelow(edition: Edition, ratingA: number, kind: DeviceKind): number | undefined {
  return standardRatingTo(edition, ratingA - 0.5, kind);
}

function checkDevice(work: DeviceWork): CalculationFinding {
  const { sheet, question, edition, prepared } = work;
  const cite = edition.clauses.ampacityProtection;
  if (question.deviceA === undefined)
    return sheet.ask(DEVICE_PATH, "The rating of the device that is to be checked is not given.", cite);
  const device = sheet.positive("rating of the device", question.deviceA, DEVICE_PATH, "A");
  const outcome = judged(work, device);
  if (isClosed(outcome)) return outcome;
  const { protection, usable } = outcome;
  const what = conductorText(prepared.run.sets, String(work.size.value), prepared.run.metal);
  if (!protection.holds)
    return checked(work, device, usable, [...protection.uses], false, protection.because, protection);
  const uses = [...protection.uses];
  const isLoadGiven = question.continuousLoadA !== undefined || question.nonContinuousLoadA !== undefined;
  if (!isLoadGiven && !protection.byNextRating)
    return checked(work, device, usable, uses, true, protection.because, protection);
  const load = loadSteps(sheet, question, question.circuit, edition);
  if (isClosed(load)) return load;
  const loadCite = deviceLoadClause(question.circuit, edition);
  const carries = sheet.compare("the load stays within the ampacity", load.served, "<=", usable, protection.cite);
  uses.push(sheet.last);
  if (!carries)
    return checked(work, device, usable, uses, false, `the load is more than ${what} may carry`, protection);
  const rated = sheet.compare("the device is rated for the load", device, ">=", load.sizing, loadCite);
  uses.push(sheet.last);
  return rated
    ? checked(work, device, usable, uses, true, protection.because, protection)
    : checked(work, device, usable, uses, false, "the device is too small for its load", { cite: loadCite });
}

function checked(
  { sheet, size, prepared }: DeviceWork,
  device: Step,
  usable: Step,
  uses: readonly Step[],
  holds: boolean,
  because: string,
  { cite }: Pick<Protection, "cite">,
): CalculationFinding {
  const result = sheet.conclude("the device may protect the conductor", holds, [device, ...uses], because, cite);
  const what = conductorText(prepared.run.sets, String(size.value), prepared.run.metal);
  return sheet.finish({
    sentence: `${shown(device.value)} A on ${what}, which carries ${shown(usable.value, 1)} A there, is ${holds ? "allowed" : "not allowed"}: ${because}.`,
    cite,
    results: [
      { name: "the device may protect the conductor", step: result },
      { name: "ampacity of the conductor", step: usable },
    ],
  });
}

const KIND_TEXT: Readonly<Record<DeviceKind, string>> = { "circuit-breaker": "circuit breaker", fuse: "fuse" };
