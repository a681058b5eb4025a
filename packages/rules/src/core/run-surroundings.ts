/**
 * What the surroundings of a run do to its ampacity, the same for every size: the column of the insulation, the factor
 * for the ambient temperature and the share that is left beside other conductors.
 */
import type { CalculationFinding } from "./calculation.js";
import { type CalculationSheet, isClosed } from "./calculation-sheet.js";
import { insulationCell, type TemperatureColumn, temperatureColumn } from "./conductor-ampacity.js";
import {
  type ConductorRun,
  type ConductorsTogether,
  type CountedCircuit,
  type CountedCircuitKind,
  type Grouping,
  HIGHEST_RATING_C,
  LOWEST_RATING_C,
  needsOwnRating,
  nonlinearPath,
  RUN_PATHS,
  ratingAnywhereC,
} from "./conductor-run.js";
import type { Edition } from "./edition.js";
import type { Step } from "./finding.js";
import type { TakenAtBest } from "./open-fact.js";
import type { Length } from "./quantity.js";
import { cellInInterval, isRefused, type Table } from "./table.js";
import { convertedLength } from "./unit-conversion.js";
import { UnusableFact } from "./unusable-fact.js";

export interface RunSurroundings {
  readonly column: TemperatureColumn;
  readonly columnStep: Step;
  /** Where its ampacity is read, before correction. */
  readonly table: Table;
  /** What the insulation lets the conductor reach at a termination. */
  readonly insulationLimit: Step;
  readonly ambientFactor: Step;
  readonly percent: Step;
}

/** The rating of conductors inside nonmetallic-sheathed cable, and the column of its final ampacity. */
const CABLE_CONDUCTORS_C = 90;
const CABLE_C = 60;
const ROOF_ADDER_C = 33;
const ROOF_BELOW_IN = 0.875;
const ROOF_EXEMPT = "XHHW-2";
const SHORT_UP_TO_IN = 24;
const UNADJUSTED_UP_TO = 3;
const WIREWAY_UNADJUSTED_UP_TO = 30;
const WIREWAY_FILL_PERCENT = 20;

/**
 * Insulation, ambient temperature and grouping of a run.
 *
 * NFPA 70 310.15(B), (C), (E), (F) and their tables (2020, 2023; 310.15(B)(2), (3), (5), (6) in 2017), in our words: the
 * ampacity begins in the column of the insulation in its place; it is multiplied by the factor for the ambient temperature
 * in that column, and beside more than three current-carrying conductors by the share of the table.
 * Worked: 12 AWG THHN, nine conductors at 50 C: 30 x 0.82 x 0.70 = 17.22 A.
 * Silent: an ambient temperature between two printed whole degrees takes the hotter row. The adder for roofs speaks of
 * raceways and cables, so conductors in free air take none.
 */
export function runSurroundings(
  sheet: CalculationSheet,
  run: ConductorRun,
  atBest: TakenAtBest,
  edition: Edition,
): RunSurroundings | CalculationFinding {
  const refusal = outOfScope(sheet, run, edition);
  if (refusal !== undefined) return refusal;
  const insulation = insulationRating(sheet, run, atBest, edition);
  if (isClosed(insulation)) return insulation;
  const column = temperatureColumn(Number(insulation.start.value));
  if (column === undefined)
    return sheet.refuse(
      "OUTSIDE_TABLE",
      `The ampacity tables have no column for insulation of ${String(insulation.start.value)} C.`,
      edition.tables.ampacityRaceway.cite,
    );
  const columnStep = sheet.conclude(
    "column of the insulation",
    column,
    [insulation.start],
    "the largest column that is not above the rating",
    edition.clauses.conductorTemperature,
    "Cel",
  );
  const ambientFactor = ambientCorrection(sheet, run, column, columnStep, edition);
  if (isClosed(ambientFactor)) return ambientFactor;
  const percent = adjustment(sheet, run.grouping, atBest, edition);
  if (isClosed(percent)) return percent;
  const { tables } = edition;
  return {
    column,
    columnStep,
    table: run.manner === "free-air" ? tables.ampacityFreeAir : tables.ampacityRaceway,
    insulationLimit: insulation.limit,
    ambientFactor,
    percent,
  };
}

/** What neither ampacity table speaks of. */
function outOfScope(sheet: CalculationSheet, run: ConductorRun, { tables }: Edition): CalculationFinding | undefined {
  const { insulation, manner, grouping } = run;
  const table = manner === "free-air" ? tables.ampacityFreeAir : tables.ampacityRaceway;
  const refuse = (detail: string): CalculationFinding => sheet.refuse("NOT_COVERED", detail, table.cite);
  if (insulation === "equipment-lead" || insulation === "fixture-wire")
    return refuse("Leads of listed equipment and fixture wire are not sized from the tables of building wire.");
  if (manner === "free-air" && (insulation === "bare" || insulation === "NM"))
    return refuse(`${table.cite.locator} is for single insulated conductors, not for ${insulation}.`);
  if (grouping === undefined || grouping.in === "bundle") return undefined;
  if (manner === "raceway" && grouping.in === "apart")
    return refuse("Conductors in a raceway, a cable or the earth are counted together; apart they are in free air.");
  if (manner === "free-air" && grouping.in !== "apart")
    return refuse("A conductor in a raceway or cable is not in free air.");
  return undefined;
}

interface InsulationRating {
  /** Where the ampacity begins. */
  readonly start: Step;
  /** How hot a termination may get on its account. */
  readonly limit: Step;
}

function insulationRating(
  sheet: CalculationSheet,
  run: ConductorRun,
  atBest: TakenAtBest,
  edition: Edition,
): InsulationRating | CalculationFinding {
  if (needsOwnRating(run.insulation)) {
    const rating = ownRating(sheet, run, atBest, edition);
    return { start: rating, limit: rating };
  }
  if (run.insulationRating !== undefined)
    throw new UnusableFact(
      RUN_PATHS.insulationRating,
      `stands beside ${run.insulation}, whose rating the code gives`,
      "no rating here; a rating beside other and bare only",
    );
  const type = sheet.given("insulation", run.insulation, "question/run/insulation");
  const rating = ratingByType(sheet, run, type, atBest, edition);
  if (isClosed(rating) || run.insulation !== "NM") return isClosed(rating) ? rating : { start: rating, limit: rating };
  const cite = edition.clauses.nonmetallicCable;
  return {
    start: sheet.state("rating of the conductors in the cable", CABLE_CONDUCTORS_C, cite, "Cel", [type, rating]),
    limit: sheet.state("column of the cable's final ampacity", CABLE_C, cite, "Cel", [type]),
  };
}

function ownRating(sheet: CalculationSheet, run: ConductorRun, atBest: TakenAtBest, { clauses }: Edition): Step {
  const path = RUN_PATHS.insulationRating;
  if (run.insulationRating !== undefined)
    return sheet.temperature("rating of the insulation", run.insulationRating, path);
  return openRating(sheet, "rating of the insulation", atBest.has(path), clauses.conductorTemperature);
}

/** A rating that is not known, at one end of what parts are made for. */
export function openRating(
  sheet: CalculationSheet,
  label: string,
  best: boolean,
  cite: Edition["clauses"]["lowestTemperature"],
): Step {
  return sheet.state(
    `${label}, not known: the ${best ? "highest" : "lowest"} it can be`,
    best ? HIGHEST_RATING_C : LOWEST_RATING_C,
    cite,
    "Cel",
  );
}

function ratingByType(
  sheet: CalculationSheet,
  run: ConductorRun,
  type: Step,
  atBest: TakenAtBest,
  edition: Edition,
): Step | CalculationFinding {
  const { place, insulation } = run;
  const cite = edition.clauses.insulationTypes;
  if (place === undefined) {
    const worstC = ratingAnywhereC(run, edition, false);
    const value = atBest.has(RUN_PATHS.place) ? ratingAnywhereC(run, edition, true) : worstC;
    const anywhere = insulationCell(edition, run, "wet");
    if (worstC === ratingAnywhereC(run, edition, true) && !isRefused(anywhere))
      return sheet.read("rating of the insulation in any place", anywhere, [type]);
    return value > 0
      ? sheet.state("rating of the insulation, its place not known", value, cite, "Cel", [type])
      : sheet.refuse("NO_SOLUTION", `${insulation} insulation may not be used in every place.`, cite);
  }
  const where = sheet.given("place of the run", place, RUN_PATHS.place);
  const cell = insulationCell(edition, run, place);
  return isRefused(cell) || typeof cell.value !== "number"
    ? sheet.refuse("NO_SOLUTION", `${insulation} insulation has no rating in a ${place} place.`, cite)
    : sheet.read("rating of the insulation", cell, [type, where]);
}

/** The factor for the ambient temperature, after the adder for a sunlit roof. */
function ambientCorrection(
  sheet: CalculationSheet,
  run: ConductorRun,
  column: TemperatureColumn,
  columnStep: Step,
  edition: Edition,
): Step | CalculationFinding {
  const table = edition.tables.ambientCorrection30c;
  if (run.ambient === undefined)
    return sheet.ask(
      RUN_PATHS.ambient,
      "The ambient temperature is not given; the ampacity tables hold for 30 C and are corrected for any other.",
      table.cite,
    );
  const air = sheet.temperature("ambient temperature", run.ambient, RUN_PATHS.ambient);
  const around = aroundTheConductor(sheet, run, air, edition);
  const cell = cellInInterval(table, Number(around.value), `t${String(column)}`);
  return isRefused(cell)
    ? sheet.outsideTable(cell, table.cite)
    : sheet.read("factor for the ambient temperature", cell, [around, columnStep]);
}

/**
 * NFPA 70 310.15(B)(2) (2020, 2023; 310.15(B)(3)(c) in 2017), in our words: a raceway or cable in direct sunlight with
 * its bottom less than 7/8 in above a roof adds 33 C to the temperature outdoors, except for XHHW-2.
 * Worked: lying on a roof at 40 C: 73 C.
 */
function aroundTheConductor(sheet: CalculationSheet, run: ConductorRun, air: Step, { clauses }: Edition): Step {
  if (run.sunlitRoof === "none" || run.manner === "free-air") return air;
  const height = heightAboveRoof(sheet, run.sunlitRoof.aboveRoof);
  const least = sheet.state("height from which nothing is added", ROOF_BELOW_IN, clauses.roof, "in");
  if (!sheet.compare("the raceway is close to the roof", height, "<", least, clauses.roof)) return air;
  const close = sheet.last;
  if (run.insulation === ROOF_EXEMPT)
    return sheet.conclude(
      "temperature around the conductor",
      air.value,
      [air, close],
      `nothing is added for ${ROOF_EXEMPT}`,
      clauses.roof,
      "Cel",
    );
  const adder = sheet.state("added close to a sunlit roof", ROOF_ADDER_C, clauses.roof, "Cel", [close]);
  return sheet.add("temperature around the conductor", [air, adder], "Cel", clauses.roof);
}

/** A height may be nothing: the raceway lies on the roof. */
function heightAboveRoof(sheet: CalculationSheet, length: Length): Step {
  const path = "question/run/sunlitRoof/aboveRoof";
  const label = "height above the roof";
  if (!(length.value >= 0 && length.value < Number.POSITIVE_INFINITY))
    throw new UnusableFact(path, `must be a length from 0 on, not ${String(length.value)}`, "a length from 0 on");
  const given = sheet.given(label, length.value, path, length.unit);
  if (length.unit === "in") return given;
  const { value, arithmetic } = convertedLength(length, "in");
  return sheet.exactly(`${label} in in`, value, "in", [given], `${label} in ${length.unit}, converted`, arithmetic);
}

/** The share of the ampacity that is left beside other conductors, in percent. */
function adjustment(
  sheet: CalculationSheet,
  grouping: Grouping | undefined,
  atBest: TakenAtBest,
  edition: Edition,
): Step | CalculationFinding {
  const { clauses, tables } = edition;
  const table = tables.adjustmentFactor;
  if (grouping === undefined)
    return sheet.ask(
      RUN_PATHS.grouping,
      "How many conductors lie together is not given; beside more than three that carry current the ampacity is less.",
      table.cite,
    );
  const manner = sheet.given("what the conductors share", grouping.in, `${RUN_PATHS.grouping}/in`);
  const whole = (uses: readonly Step[], because: string, cite: typeof table.cite): Step =>
    sheet.conclude("share left beside other conductors", 100, uses, because, cite, "%");
  if (grouping.in === "apart") return whole([manner], "conductors apart from each other are not adjusted", table.cite);
  const count = countTogether(sheet, grouping.conductors, atBest, edition);
  const few = sheet.state("conductors up to which nothing is adjusted", UNADJUSTED_UP_TO, table.cite, "conductors");
  if (sheet.compare("the conductors are few", count, "<=", few, table.cite))
    return whole([sheet.last], "no more than three conductors carry current", table.cite);
  if (grouping.in === "nipple") {
    const length = sheet.length("length of the nipple", grouping.length, `${RUN_PATHS.grouping}/length`, "in");
    const short = sheet.state("length up to which nothing is adjusted", SHORT_UP_TO_IN, clauses.shortRaceway, "in");
    if (sheet.compare("the nipple is short", length, "<=", short, clauses.shortRaceway))
      return whole([sheet.last], "in so short a raceway the conductors are not adjusted", clauses.shortRaceway);
  }
  if (grouping.in === "metal-wireway") {
    const spared = wirewaySpares(sheet, count, grouping.fillPercent, atBest, edition);
    if (spared !== undefined)
      return whole(spared, "so few conductors in so large a wireway are not adjusted", clauses.wirewayAdjustment);
  }
  const cell = cellInInterval(table, Number(count.value), "percent");
  return isRefused(cell)
    ? sheet.outsideTable(cell, table.cite)
    : sheet.read("share left beside other conductors", cell, [count, manner]);
}

/**
 * NFPA 70 376.22(A), (B) (2017, 2020, 2023), in our words: in a metal wireway the adjustment begins above 30
 * current-carrying conductors at any cross-section, as long as the conductors fill no more than 20 % of it.
 */
function wirewaySpares(
  sheet: CalculationSheet,
  count: Step,
  fillPercent: number | undefined,
  atBest: TakenAtBest,
  { clauses }: Edition,
): readonly Step[] | undefined {
  const cite = clauses.wirewayAdjustment;
  const most = sheet.state(
    "conductors up to which a wireway spares them",
    WIREWAY_UNADJUSTED_UP_TO,
    cite,
    "conductors",
  );
  if (!sheet.compare("the wireway holds few conductors", count, "<=", most, cite)) return undefined;
  const few = sheet.last;
  const path = RUN_PATHS.fillPercent;
  if (fillPercent === undefined) {
    const best = atBest.has(path);
    const taken = sheet.state(
      "the wireway is filled by no more than 20 %, not known",
      best ? "taken to be so" : "taken not to be so",
      clauses.wirewayConductors,
    );
    return best ? [few, taken] : undefined;
  }
  const fill = sheet.positive("fill of the wireway", fillPercent, path, "%");
  const limit = sheet.state("largest fill of a wireway", WIREWAY_FILL_PERCENT, clauses.wirewayConductors, "%");
  return sheet.compare("the wireway is filled no further than allowed", fill, "<=", limit, clauses.wirewayConductors)
    ? [few, sheet.last]
    : undefined;
}

/** Conductors of each kind of circuit that count, without the neutral that counts only under a nonlinear load. */
const COUNTED: Readonly<Record<CountedCircuitKind, number>> = {
  "two-wire": 2,
  "three-wire-single-phase": 2,
  "two-lines-and-neutral-of-wye": 3,
  "three-phase-three-wire": 3,
  "three-phase-four-wire-wye": 3,
  "three-phase-four-wire-delta": 3,
  spare: 1,
};

/**
 * The conductors that carry current.
 *
 * NFPA 70 310.15(E), (F) (2020, 2023; 310.15(B)(5), (6) in 2017), in our words: a neutral that carries only the unbalance
 * does not count; one of two lines of a four-wire wye system does, and one of a whole wye circuit whose load is for the
 * major part nonlinear. Equipment grounds never count. Spares do (note of the table).
 * Worked: two four-wire wye circuits: 6, under nonlinear loads 8.
 */
function countTogether(
  sheet: CalculationSheet,
  conductors: ConductorsTogether,
  atBest: TakenAtBest,
  { clauses }: Edition,
): Step {
  const path = `${RUN_PATHS.grouping}/conductors`;
  if (typeof conductors === "number") return sheet.count("conductors carrying current", conductors, path, "conductors");
  if (conductors.length === 0)
    throw new UnusableFact(path, "must name at least one circuit", "a list of one circuit or more");
  const counts = conductors.map((circuit, index) => {
    const head = `${path}/${String(index)}`;
    const circuits = sheet.count(`${KIND_TEXT[circuit.kind]}, how many`, circuit.count, `${head}/count`, "circuits");
    const kind = sheet.given("kind of circuit", circuit.kind, `${head}/kind`);
    const neutral = neutralOf(sheet, circuit, index, atBest);
    const each = sheet.state(
      `conductors that count in each ${KIND_TEXT[circuit.kind]}`,
      COUNTED[circuit.kind] + (neutral.counts ? 1 : 0),
      clauses.neutralsCounted,
      "conductors",
      [kind, ...neutral.uses],
    );
    return sheet.multiply(`conductors that count of ${KIND_TEXT[circuit.kind]}`, [circuits, each], "conductors");
  });
  return sheet.add("conductors carrying current", counts, "conductors", clauses.neutralsCounted);
}

/** The neutral of a whole wye circuit: unless its load is known, it counts at the worst. */
function neutralOf(
  sheet: CalculationSheet,
  { kind, mostlyNonlinear }: CountedCircuit,
  index: number,
  atBest: TakenAtBest,
): { readonly counts: boolean; readonly uses: readonly Step[] } {
  if (kind !== "three-phase-four-wire-wye") return { counts: false, uses: [] };
  const path = nonlinearPath(index);
  if (mostlyNonlinear === undefined) return { counts: !atBest.has(path), uses: [] };
  return {
    counts: mostlyNonlinear,
    uses: [sheet.given("the major part of the load is nonlinear", mostlyNonlinear, path)],
  };
}

const KIND_TEXT: Readonly<Record<CountedCircuitKind, string>> = {
  "two-wire": "two-wire circuit",
  "three-wire-single-phase": "three-wire single-phase circuit",
  "two-lines-and-neutral-of-wye": "circuit of two lines and the neutral of a wye system",
  "three-phase-three-wire": "three-phase three-wire circuit",
  "three-phase-four-wire-wye": "four-wire wye circuit",
  "three-phase-four-wire-delta": "four-wire delta circuit",
  spare: "spare conductor",
};
