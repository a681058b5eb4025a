import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { type CalculationSheet, isClosed, shown } from "../../core/calculation-sheet.js";
import { conductorText } from "../../core/conductor-ampacity.js";
import { type ConductorRun, openFactsOf } from "../../core/conductor-run.js";
import { compareSizes, sizeOf } from "../../core/conductor-size.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import { groundingColumn } from "../../core/grounding-area.js";
import { answerWithOpenFacts, type TakenAtBest } from "../../core/open-fact.js";
import { hasAmpacity, type PreparedRun, preparedRun, type RunAmpacity, runAmpacity } from "../../core/run-ampacity.js";
import { NEEDS_LISTED_USE } from "../../core/small-conductor.js";
import { sizesOf } from "../../core/table.js";

const NAME = "dwelling-service";
const RATING_PATH = "question/ratingA";
const FROM_A = 100;
const TO_A = 400;
const SHARE = 0.83;
/** The column that the sizes of the table rest on. */
const TABLE_C = 75;
const SMALLEST_PARALLEL = "1/0 AWG";

export const DWELLING_SYSTEMS = ["single-phase-120/240", "single-phase-of-208Y/120", "three-phase"] as const;
export type DwellingSystem = (typeof DWELLING_SYSTEMS)[number];

export interface DwellingServiceQuestion {
  /** Rating of the service or the feeder in amperes. */
  readonly ratingA: number;
  readonly system: DwellingSystem;
  /** The conductors carry the whole load of one dwelling unit. */
  readonly carriesWholeLoad?: boolean;
  readonly run: ConductorRun;
}

/**
 * How large must the service or main feeder conductors of a dwelling be?
 *
 * NFPA 70 310.12 (2020, 2023; 310.15(B)(7) in 2017), in our words: single-phase conductors that carry the whole load of one
 * dwelling unit, rated 100 to 400 A, need an ampacity of 83 % of the rating, after correction and at the terminations.
 * Where nothing is corrected or adjusted, 2020 and 2023 print the sizes by rating; they rest on the 75 C column.
 * Worked: 200 A: 0.83 x 200 = 166 A: 4/0 AWG aluminum (180 A at 75 C) or 2/0 AWG copper (175 A).
 * Silent: neutrals, which may be smaller (220.61, 230.42); feeders that carry a part of the load, and ratings between those
 * of the table, which take the share of 83 %.
 */
export const dwellingService: Calculation<DwellingServiceQuestion> = {
  name: NAME,
  title: "Service conductors of a dwelling",
  clauses: [
    "dwellingService",
    "conductorTemperature",
    "lowestTemperature",
    "terminalsTo100A",
    "terminalsOver100A",
    "parallel",
  ],
  needs: [
    RATING_PATH,
    "question/system",
    "question/carriesWholeLoad",
    "question/run",
    "question/run/place",
    "question/run/ambient",
    "question/run/grouping",
    "question/run/supplyEnd",
    "question/run/loadEnd",
  ],
  cannotSee: "loads that are fed past these conductors",
  answer(question, basis, edition) {
    const open = openFactsOf(question.run, undefined, edition);
    return answerWithOpenFacts(NAME, basis, open, edition.clauses.dwellingService, (sheet, atBest) =>
      work(sheet, question, atBest, edition),
    );
  },
};

function work(
  sheet: CalculationSheet,
  question: DwellingServiceQuestion,
  atBest: TakenAtBest,
  edition: Edition,
): CalculationFinding {
  const rating = sheet.positive("rating of the service", question.ratingA, RATING_PATH, "A");
  const scope = outOfScope(sheet, question, rating, edition);
  if (scope !== undefined) return scope;
  const prepared = preparedRun(sheet, question.run, atBest, edition);
  if (isClosed(prepared)) return prepared;
  const share = sheet.state("share of the rating", SHARE, edition.clauses.dwellingService);
  const needed = sheet.multiply("ampacity needed", [share, rating], "A", edition.clauses.dwellingService);
  const work: DwellingWork = { sheet, question, edition, rating, needed, prepared };
  return bySizesPrinted(work) ?? byShare(work);
}

function outOfScope(
  sheet: CalculationSheet,
  { system, carriesWholeLoad }: DwellingServiceQuestion,
  rating: Step,
  { clauses }: Edition,
): CalculationFinding | undefined {
  const cite = clauses.dwellingService;
  sheet.given("system", system, "question/system");
  if (system === "three-phase")
    return sheet.refuse("NOT_COVERED", "The rule for dwellings is for single-phase conductors only.", cite);
  const least = sheet.state("smallest rating of the rule", FROM_A, cite, "A");
  const most = sheet.state("largest rating of the rule", TO_A, cite, "A");
  const isInside =
    sheet.compare("the rating is no smaller", rating, ">=", least, cite) &&
    sheet.compare("the rating is no larger", rating, "<=", most, cite);
  if (!isInside)
    return sheet.refuse(
      "NOT_COVERED",
      `The rule for dwellings is for ratings from 100 to 400 A, not for ${shown(rating.value)} A.`,
      cite,
    );
  if (carriesWholeLoad === undefined)
    return sheet.ask(
      "question/carriesWholeLoad",
      "The rule holds only for conductors that carry the whole load of one dwelling unit; whether they do, is not given.",
      cite,
    );
  sheet.given("carries the whole load of one dwelling unit", carriesWholeLoad, "question/carriesWholeLoad");
  return carriesWholeLoad
    ? undefined
    : sheet.refuse("NOT_COVERED", "Conductors that carry a part of the load are sized as any other.", cite);
}

interface DwellingWork {
  readonly sheet: CalculationSheet;
  readonly question: DwellingServiceQuestion;
  readonly edition: Edition;
  readonly rating: Step;
  readonly needed: Step;
  readonly prepared: PreparedRun;
}

/** The printed size, where the edition prints sizes, nothing is corrected and the terminations allow the 75 C column. */
function bySizesPrinted(work: DwellingWork): CalculationFinding | undefined {
  const { sheet, question, edition, rating, prepared } = work;
  const { table } = edition.dwellingService;
  const { ambientFactor, percent } = prepared.surroundings;
  if (table === null || question.run.sets > 1 || question.run.manner !== "raceway") return undefined;
  if (!(Number(ambientFactor.value) >= 1 && percent.value === 100)) return undefined;
  const printed = sheet.readIfPrinted(
    "size by the rating",
    table,
    String(rating.value),
    groundingColumn(question.run.metal),
    [rating, prepared.metal],
  );
  if (printed === undefined) return undefined;
  const found = runAmpacity(sheet, prepared, printed, rating, RATING_PATH);
  if (isClosed(found)) return found;
  const column = sheet.state("column that the printed sizes rest on", TABLE_C, table.cite, "Cel");
  if (!sheet.compare("the terminations allow that column", found.limit, ">=", column, table.cite)) return undefined;
  return finish(work, printed, found, [printed, sheet.last], "the edition prints it for this rating");
}

function byShare(work: DwellingWork): CalculationFinding {
  const { sheet, question, edition, needed, prepared, rating } = work;
  const parallel =
    question.run.sets > 1
      ? sheet.state("smallest size that may be run in parallel", SMALLEST_PARALLEL, edition.clauses.parallel)
      : undefined;
  for (const text of sizesOf(edition.tables.ampacityRaceway)) {
    if (NEEDS_LISTED_USE.includes(text) || !hasAmpacity(prepared, text)) continue;
    if (parallel !== undefined && compareSizes(sizeOf(text), sizeOf(SMALLEST_PARALLEL)) < 0) continue;
    const size = sheet.conclude("size tried", text, parallel === undefined ? [] : [parallel], "next size of the table");
    const found = runAmpacity(sheet, prepared, size, rating, RATING_PATH);
    if (isClosed(found)) return found;
    if (sheet.compare("it carries 83 % of the rating", found.usable, ">=", needed, edition.clauses.dwellingService))
      return finish(work, size, found, [size, sheet.last], "the first size that carries 83 % of the rating");
  }
  return sheet.refuse(
    "NO_SOLUTION",
    `No single ${question.run.metal} conductor carries ${shown(needed.value, 1)} A there: use more sets in parallel.`,
    edition.clauses.dwellingService,
  );
}

function finish(
  { sheet, question, edition, needed }: DwellingWork,
  size: Step,
  { usable }: RunAmpacity,
  uses: readonly Step[],
  because: string,
): CalculationFinding {
  const cite = size.kind === "read" ? size.cite : edition.clauses.dwellingService;
  const result = sheet.conclude("smallest size", size.value, uses, because, cite);
  return sheet.finish({
    sentence: `${conductorText(question.run.sets, String(size.value), question.run.metal)} is the smallest for a dwelling's ${shown(question.ratingA)} A: ${shown(needed.value, 1)} A are needed, and it carries ${shown(usable.value, 1)} A.`,
    cite,
    results: [
      { name: "smallest size", step: result },
      { name: "ampacity needed", step: needed },
      { name: "ampacity of the conductor", step: usable },
    ],
    advice: [
      "The device may have the rating of the service although the ampacity is smaller; the rule allows it for these conductors only.",
    ],
  });
}
