/**
 * What a size carries in its run: its ampacity corrected and adjusted, and no more than its terminations allow.
 *
 * NFPA 70 110.14(C) and 310.14(A)(3) (2020, 2023; 310.15(A)(3) in 2017), in our words: correction and adjustment may
 * begin in the column of the insulation, but the conductor is loaded no further than its ampacity in the column of the
 * lowest rated of insulation and terminations. That ampacity is read in Table 310.16 (Table 310.15(B)(16) in 2017) for
 * conductors in free air too, because terminations are judged by it.
 * Worked: 6 AWG THHN, 40 C, six conductors, 75 C terminals: 75 x 0.91 x 0.80 = 54.6 A, and 65 A at the terminals.
 */
import type { CalculationFinding } from "./calculation.js";
import { type CalculationSheet, isClosed } from "./calculation-sheet.js";
import { ampacityCell, ampacityColumn, temperatureColumn } from "./conductor-ampacity.js";
import { type ConductorRun, RUN_PATHS } from "./conductor-run.js";
import type { Unmarked } from "./connector.js";
import type { Edition } from "./edition.js";
import { divide, exactOf, multiply } from "./exact.js";
import type { Step } from "./finding.js";
import type { TakenAtBest } from "./open-fact.js";
import type { Temperature } from "./quantity.js";
import { openRating, type RunSurroundings, runSurroundings } from "./run-surroundings.js";
import { cellAt, isRefused } from "./table.js";
import { unmarkedTerminal } from "./unmarked-terminal.js";

/** A run whose surroundings are worked out, ready for any size. */
export interface PreparedRun {
  readonly run: ConductorRun;
  readonly edition: Edition;
  readonly atBest: TakenAtBest;
  readonly surroundings: RunSurroundings;
  readonly metal: Step;
  readonly sets: Step;
  readonly ends: readonly [RunEnd, RunEnd];
}

interface RunEnd {
  readonly label: string;
  /** A rating, the mark "unmarked", or undefined where it is not known. */
  readonly step: Step | undefined;
  readonly unmarked: boolean;
  readonly path: string;
}

/** Amperes of one size in a run. */
export interface RunAmpacity {
  /** Of one conductor after correction and adjustment. */
  readonly corrected: Step;
  /** Of one conductor in the column of the terminations, without correction. */
  readonly atTerminations: Step;
  /** The same of all sets. */
  readonly allAtTerminations: Step;
  /** The lower of the two, of all sets. */
  readonly usable: Step;
  readonly limit: Step;
  readonly governedBy: "surroundings" | "terminations";
}

export function preparedRun(
  sheet: CalculationSheet,
  run: ConductorRun,
  atBest: TakenAtBest,
  edition: Edition,
): PreparedRun | CalculationFinding {
  const metal = sheet.given("conductor metal", run.metal, `${RUN_PATHS.run}/metal`);
  const sets = sheet.count("conductors in parallel", run.sets, `${RUN_PATHS.run}/sets`, "sets");
  const surroundings = runSurroundings(sheet, run, atBest, edition);
  if (isClosed(surroundings)) return surroundings;
  return {
    run,
    edition,
    atBest,
    surroundings,
    metal,
    sets,
    ends: [
      endOf(sheet, "the terminal at the supply end", run.supplyEnd, RUN_PATHS.supplyEnd),
      endOf(sheet, "the terminal at the load end", run.loadEnd, RUN_PATHS.loadEnd),
    ],
  };
}

/** True where both tables print this size, so that the search through the sizes may try it. */
export function hasAmpacity({ run, surroundings, edition }: PreparedRun, size: string): boolean {
  const base = cellAt(surroundings.table, size, ampacityColumn(run.metal, surroundings.column));
  return !isRefused(base) && !isRefused(ampacityCell(edition, run.metal, size, 60));
}

/** `ratingA`: the rating of the circuit in amperes, which decides over unmarked terminals; undefined where not known. */
export function runAmpacity(
  sheet: CalculationSheet,
  prepared: PreparedRun,
  size: Step,
  rating: Step | undefined,
  ratingPath: string,
): RunAmpacity | CalculationFinding {
  const { run, surroundings, edition, metal, sets } = prepared;
  const { column, columnStep, table, ambientFactor, percent } = surroundings;
  const key = String(size.value);
  const base = cellAt(table, key, ampacityColumn(run.metal, column));
  if (isRefused(base)) return sheet.outsideTable(base, table.cite);
  const printed = sheet.read("ampacity in the column of the insulation", base, [size, metal, columnStep]);
  const corrected = sheet.exactly(
    "ampacity after correction and adjustment",
    divide(multiply(multiply(sheet.exact(printed), sheet.exact(ambientFactor)), sheet.exact(percent)), exactOf(100)),
    "A",
    [printed, ambientFactor, percent],
    "ampacity x ambient factor x share in percent / 100",
    `${String(printed.value)} x ${String(ambientFactor.value)} x ${String(percent.value)} / 100`,
    edition.clauses.conductorTemperature,
  );
  const limit = terminationLimit(sheet, prepared, size, rating, ratingPath);
  const limitColumn = temperatureColumn(Number(limit.value));
  if (limitColumn === undefined)
    return sheet.refuse(
      "OUTSIDE_TABLE",
      `No conductor may be loaded on a termination of ${String(limit.value)} C: the lowest column is 60 C.`,
      edition.clauses.lowestTemperature,
    );
  const cell = ampacityCell(edition, run.metal, key, limitColumn);
  if (isRefused(cell)) return sheet.outsideTable(cell, edition.tables.ampacityRaceway.cite);
  const limitStep = sheet.conclude(
    "column of the terminations",
    limitColumn,
    [limit],
    "the largest column that is not above the limit",
    edition.clauses.lowestTemperature,
    "Cel",
  );
  const atTerminations = sheet.read("ampacity in the column of the terminations", cell, [size, metal, limitStep]);
  const within = sheet.compare(
    "the terminations allow the corrected ampacity",
    corrected,
    "<=",
    atTerminations,
    edition.clauses.lowestTemperature,
  );
  const lower = within ? corrected : atTerminations;
  const single = run.sets === 1;
  return {
    corrected,
    atTerminations,
    allAtTerminations: single
      ? atTerminations
      : sheet.multiply("ampacity of all sets at the terminations", [atTerminations, sets], "A"),
    usable: single ? lower : sheet.multiply("ampacity of all sets", [lower, sets], "A"),
    limit,
    governedBy: within ? "surroundings" : "terminations",
  };
}

function endOf(sheet: CalculationSheet, label: string, mark: Temperature | Unmarked | undefined, path: string): RunEnd {
  const unmarked = mark === "unmarked";
  const step =
    mark === undefined
      ? undefined
      : mark === "unmarked"
        ? sheet.given(`temperature mark of ${label}`, "unmarked", path)
        : sheet.temperature(`rating of ${label}`, mark, path);
  return { label, step, unmarked, path };
}

/** The lowest rated of the insulation and the terminals at both ends. */
function terminationLimit(
  sheet: CalculationSheet,
  prepared: PreparedRun,
  size: Step,
  rating: Step | undefined,
  ratingPath: string,
): Step {
  const { clauses } = prepared.edition;
  const parts = [
    prepared.surroundings.insulationLimit,
    ...prepared.ends.map((end) => endRating(sheet, prepared, end, size, rating, ratingPath)),
  ];
  return sheet.conclude(
    "temperature limit at the terminations",
    Math.min(...parts.map(({ value }) => Number(value))),
    parts,
    "the lowest rated part limits the conductor",
    clauses.lowestTemperature,
    "Cel",
  );
}

function endRating(
  sheet: CalculationSheet,
  { edition, atBest }: PreparedRun,
  { label, step, unmarked, path }: RunEnd,
  size: Step,
  rating: Step | undefined,
  ratingPath: string,
): Step {
  const { clauses } = edition;
  if (step === undefined) return openRating(sheet, `rating of ${label}`, atBest.has(path), clauses.lowestTemperature);
  if (!unmarked) return step;
  // Without a rating: the worst is a circuit of 100 A or less, the best one above it.
  const ratingA = rating === undefined ? (atBest.has(ratingPath) ? Number.POSITIVE_INFINITY : 0) : Number(rating.value);
  const counted = unmarkedTerminal(String(size.value), ratingA, undefined);
  if (counted === undefined) throw new Error("a rating decides over every unmarked terminal");
  const known = rating === undefined ? [] : [rating];
  return sheet.assume(`rating of ${label}`, counted.valueC, counted.because, clauses[counted.clause], "Cel", [
    step,
    size,
    ...known,
  ]);
}
