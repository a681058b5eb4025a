import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { type CalculationSheet, isClosed, shown } from "../../core/calculation-sheet.js";
import {
  type CircuitKind,
  type CircuitLoad,
  conductorLoadClause,
  deviceLoadClause,
  type LoadSteps,
  loadSteps,
} from "../../core/circuit-load.js";
import { type Citation, citationText } from "../../core/citation.js";
import { conductorText } from "../../core/conductor-ampacity.js";
import { protectionOf, standardRatingStep } from "../../core/conductor-protection.js";
import { type ConductorRun, openFactsOf } from "../../core/conductor-run.js";
import { compareSizes, sizeOf } from "../../core/conductor-size.js";
import { listWords } from "../../core/conductor-words.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import { answerWithOpenFacts, type TakenAtBest } from "../../core/open-fact.js";
import { hasAmpacity, type PreparedRun, preparedRun, type RunAmpacity, runAmpacity } from "../../core/run-ampacity.js";
import { NEEDS_LISTED_USE } from "../../core/small-conductor.js";
import type { DeviceKind } from "../../core/standard-rating.js";
import { sizesOf } from "../../core/table.js";

const NAME = "conductor-size";
const DEVICE_PATH = "question/deviceA";
const SMALLEST_PARALLEL = "1/0 AWG";

export interface ConductorSizeQuestion extends CircuitLoad {
  readonly circuit: CircuitKind;
  /** Rating of the device ahead in amperes, or "smallest": the smallest standard rating for the load. */
  readonly deviceA?: number | "smallest";
  readonly deviceKind: DeviceKind;
  readonly run: ConductorRun;
}

/** The three questions that each size is asked, none of them mixed with another. */
interface Check {
  readonly name: string;
  readonly holds: boolean;
  readonly step: Step;
  readonly cite: Citation;
}

/**
 * Which is the smallest conductor for a load, its device, its surroundings and its terminations?
 *
 * NFPA 70 210.19(A)(1), 215.2(A)(1), 110.14(C), 310.15 and 240.4 (2017, 2020, 2023), in our words, three checks apart:
 * (1) before any correction the ampacity in the column of the terminations carries 125 % of the continuous load and the
 * rest; (2) after correction and adjustment it carries the load itself; (3) the device protects it at that ampacity. The
 * factors of one check are never multiplied into another. The smallest size that passes all three is the answer.
 * Worked: 68.1 A continuous and 51 A more, two four-wire circuits with nonlinear loads at 35 C, 75 C terminals: 136.1 A
 * asks for 1/0 AWG at the terminals, 119.1 A for 195 x 0.96 x 0.70 = 131.04 A of 2/0 AWG, which a 150 A device protects.
 * Silent: voltage drop, and motors and other circuits whose device follows rules of its own. 18 and 16 AWG are not tried.
 */
export const conductorSize: Calculation<ConductorSizeQuestion> = {
  name: NAME,
  title: "Size of a conductor",
  clauses: [
    "branchCircuitLoad",
    "feederLoad",
    "branchCircuitDevice",
    "feederDevice",
    "conductorTemperature",
    "lowestTemperature",
    "terminalsTo100A",
    "terminalsOver100A",
    "ampacityProtection",
    "nextStandardRating",
    "over800A",
    "smallConductors",
    "standardRatings",
    "parallel",
  ],
  needs: [
    "question/circuit",
    "question/continuousLoadA",
    "question/nonContinuousLoadA",
    "question/listedFor100Percent",
    DEVICE_PATH,
    "question/deviceKind",
    "question/run",
    "question/run/place",
    "question/run/ambient",
    "question/run/grouping",
    "question/run/supplyEnd",
    "question/run/loadEnd",
  ],
  cannotSee: "voltage drop, the fault current, and whether the lugs take the size",
  answer(question, basis, edition) {
    const open = openFactsOf(question.run, undefined, edition);
    return answerWithOpenFacts(NAME, basis, open, edition.clauses.lowestTemperature, (sheet, atBest) =>
      work(sheet, question, atBest, edition),
    );
  },
};

/** Everything that is the same for each size tried. */
interface SizeSearch {
  readonly sheet: CalculationSheet;
  readonly question: ConductorSizeQuestion;
  readonly edition: Edition;
  readonly load: LoadSteps;
  readonly device: Step;
  readonly prepared: PreparedRun;
}

function work(
  sheet: CalculationSheet,
  question: ConductorSizeQuestion,
  atBest: TakenAtBest,
  edition: Edition,
): CalculationFinding {
  const load = loadSteps(sheet, question, question.circuit, edition);
  if (isClosed(load)) return load;
  const device = deviceStep(sheet, question, load, edition);
  if (isClosed(device)) return device;
  const prepared = preparedRun(sheet, question.run, atBest, edition);
  if (isClosed(prepared)) return prepared;
  return searchSizes({ sheet, question, edition, load, device, prepared });
}

/** The device ahead: given and large enough for the load, or the smallest that is. */
function deviceStep(
  sheet: CalculationSheet,
  { deviceA, deviceKind, circuit }: ConductorSizeQuestion,
  { sizing }: LoadSteps,
  edition: Edition,
): Step | CalculationFinding {
  const cite = deviceLoadClause(circuit, edition);
  if (deviceA === undefined)
    return sheet.ask(
      DEVICE_PATH,
      "The rating of the device ahead is not given; the conductor must be large enough to be protected by it.",
      cite,
    );
  if (deviceA !== "smallest") {
    const given = sheet.positive("rating of the device", deviceA, DEVICE_PATH, "A");
    return sheet.compare("the device is rated for the load", given, ">=", sizing, cite)
      ? given
      : sheet.refuse(
          "NO_SOLUTION",
          `A device of ${shown(deviceA)} A is too small for this load, which asks for ${shown(sizing.value, 1)} A.`,
          cite,
        );
  }
  const rating = standardRatingStep(sheet, sizing, deviceKind, edition);
  return Number(rating.value) > 0
    ? rating
    : sheet.refuse("NO_SOLUTION", `No standard device is rated for ${shown(sizing.value, 1)} A.`, cite);
}

function searchSizes(search: SizeSearch): CalculationFinding {
  const { sheet, edition, prepared, question } = search;
  const parallel =
    question.run.sets > 1
      ? sheet.state("smallest size that may be run in parallel", SMALLEST_PARALLEL, edition.clauses.parallel)
      : undefined;
  let failed: readonly Check[] | undefined;
  for (const text of sizesOf(edition.tables.ampacityRaceway)) {
    if (NEEDS_LISTED_USE.includes(text) || !hasAmpacity(prepared, text)) continue;
    if (parallel !== undefined && compareSizes(sizeOf(text), sizeOf(SMALLEST_PARALLEL)) < 0) continue;
    const size = sheet.conclude("size tried", text, parallel === undefined ? [] : [parallel], "next size of the table");
    const found = runAmpacity(sheet, prepared, size, search.device, DEVICE_PATH);
    if (isClosed(found)) return found;
    const checks = checksOf(search, size, found);
    if (checks.every(({ holds }) => holds)) return finish(search, size, found, checks, failed);
    failed = checks.filter(({ holds }) => !holds);
  }
  return sheet.refuse(
    "NO_SOLUTION",
    `No size of ${question.run.metal} passes all three checks with ${setsText(question.run.sets)}: use more sets in parallel.`,
    edition.tables.ampacityRaceway.cite,
  );
}

function setsText(sets: number): string {
  return sets === 1 ? "one conductor a phase" : `${String(sets)} conductors a phase`;
}

/** All three are worked for every size, so that it can be said which ones a smaller size fails. */
function checksOf(search: SizeSearch, size: Step, found: RunAmpacity): readonly Check[] {
  const { sheet, question, edition, load, device } = search;
  const cite = conductorLoadClause(question.circuit, edition);
  const atTerminations = sheet.compare(
    "the terminations' column carries the load for sizing, before correction",
    found.allAtTerminations,
    ">=",
    load.sizing,
    cite,
  );
  const first = { name: "the load for sizing at the terminations", holds: atTerminations, step: sheet.last, cite };
  const afterCorrection = sheet.compare(
    "the ampacity after correction and adjustment carries the load",
    found.usable,
    ">=",
    load.served,
    cite,
  );
  const second = { name: "the load after correction and adjustment", holds: afterCorrection, step: sheet.last, cite };
  const protection = protectionOf(
    sheet,
    {
      size,
      metal: question.run.metal,
      ampacity: found.usable,
      device,
      deviceKind: question.deviceKind,
      circuit: question.circuit,
    },
    edition,
  );
  const step = sheet.conclude(
    "the device protects the conductor",
    protection.holds,
    protection.uses,
    protection.because,
    protection.cite,
  );
  return [first, second, { name: "protection by the device", holds: protection.holds, step, cite: protection.cite }];
}

function finish(
  search: SizeSearch,
  size: Step,
  found: RunAmpacity,
  checks: readonly Check[],
  failed: readonly Check[] | undefined,
): CalculationFinding {
  const { sheet, question, edition, load, device } = search;
  const governing = sheet.conclude(
    "what governs",
    failed === undefined ? ["the smallest size of the table"] : failed.map(({ name }) => name),
    failed === undefined ? checks.map(({ step }) => step) : failed.map(({ step }) => step),
    failed === undefined ? "the smallest size passes all three checks" : "the next smaller size fails it",
  );
  const cite = failed?.[0]?.cite ?? conductorLoadClause(question.circuit, edition);
  const result = sheet.conclude(
    "smallest size",
    size.value,
    [size, ...checks.map(({ step }) => step)],
    "the first size, from the smallest up, that passes all three checks",
    cite,
  );
  const governs = listWords(failed?.map(({ name }) => name) ?? ["the smallest size of the table"]);
  return sheet.finish({
    sentence: `${conductorText(question.run.sets, String(size.value), question.run.metal)} is the smallest size: it carries ${shown(found.usable.value, 1)} A under a ${shown(device.value)} A device. What governs is ${governs}.`,
    cite,
    results: [
      { name: "smallest size", step: result },
      { name: "what governs", step: governing },
      { name: "device", step: device },
      { name: "load for sizing", step: load.sizing },
      { name: "ampacity after correction, at the terminations", step: found.usable },
      { name: "ampacity at the terminations before correction", step: found.allAtTerminations },
    ],
    advice: [
      "The size does not answer for voltage drop or for the fault current.",
      `A conductor raised above this size takes its wire-type equipment ground with it: ${citationText(edition.clauses.equipmentGroundUpsizing)}.`,
    ],
  });
}
