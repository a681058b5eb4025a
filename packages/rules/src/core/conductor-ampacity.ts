/**
 * What one conductor may carry: the ampacity table read by size, metal and temperature column, and the temperature
 * that its insulation stands.
 *
 * NFPA 70 Table 310.16 (Table 310.15(B)(16) in 2017), in our words: amperes of one insulated conductor, at most three
 * of them carrying current in a raceway, cable or the earth, at 30 C around. Copper-clad aluminum is read in the
 * aluminum columns. The three columns are for insulation rated 60, 75 and 90 C.
 * Silent here: correction for other surroundings and adjustment for more than three conductors; they lower the
 * ampacity of the run, not the limit at the terminal that the joint rules ask about.
 */
import type { ConductorGroup, ConductorMetal, Insulation } from "./conductor.js";
import type { Edition } from "./edition.js";
import type { Joint, Location } from "./joint.js";
import { type Cell, cellAt, isRefused, type TableRefusal } from "./table.js";

/** Temperature columns of the ampacity table, in degrees Celsius. */
export type TemperatureColumn = 60 | 75 | 90;

/** Where an insulation rating is looked up: the table knows no more places than these. */
export type InsulationPlace = "dry" | "damp" | "wet";

/** The largest column that is not above the limit; undefined when the limit lies below every column, or is no number. */
export function temperatureColumn(limitC: number): TemperatureColumn | undefined {
  if (limitC >= 90) return 90;
  if (limitC >= 75) return 75;
  return limitC >= 60 ? 60 : undefined;
}

/** The ampacity of one conductor in amperes, or the table's refusal: 14 AWG aluminum, 5 AWG and metric sizes have none. */
export function ampacityCell(
  edition: Edition,
  metal: ConductorMetal,
  size: string,
  column: TemperatureColumn,
): Cell | TableRefusal {
  return cellAt(edition.tables.ampacityRaceway, size, ampacityColumn(metal, column));
}

/** The id of the column of an ampacity table: copper-clad aluminum stands with aluminum. */
export function ampacityColumn(metal: ConductorMetal, column: TemperatureColumn): string {
  return metal === "copper" ? COPPER[column] : ALUMINUM[column];
}

/** Amperes of one conductor; undefined where the table has no cell. */
export function ampacityA(
  edition: Edition,
  metal: ConductorMetal,
  size: string,
  column: TemperatureColumn,
): number | undefined {
  const cell = ampacityCell(edition, metal, size, column);
  return isRefused(cell) || typeof cell.value !== "number" ? undefined : cell.value;
}

/** The place an insulation is judged for. Burial and concrete count as wet, and so do handholes and trenches. */
export function insulationPlace({ place, equipment }: Joint): InsulationPlace | undefined {
  if (equipment?.kind === "handhole" || equipment?.kind === "trench") return "wet";
  return place === undefined ? undefined : PLACE[place.location];
}

/** The rating of an insulation type at a place, in degrees Celsius; a refusal where the type has none there. */
export function insulationCell(
  edition: Edition,
  conductor: Pick<ConductorGroup, "insulation">,
  place: InsulationPlace,
): Cell | TableRefusal {
  return cellAt(edition.tables.insulationTypes, conductor.insulation, place);
}

/** The rating as a number of degrees Celsius; 0 where the type has none there. */
export function insulationRatingC(edition: Edition, insulation: Insulation, place: InsulationPlace): number {
  const cell = insulationCell(edition, { insulation }, place);
  return isRefused(cell) || typeof cell.value !== "number" ? 0 : cell.value;
}

/**
 * The smallest size of the metal that carries the amperes with the sets given, as trade text with its ampacity:
 * "1 AWG copper (110 A at 60 C)". Undefined when the table ends before.
 */
export function smallestSizeCarrying(
  edition: Edition,
  metal: ConductorMetal,
  column: TemperatureColumn,
  sets: number,
  neededA: number,
): string | undefined {
  for (const row of edition.tables.ampacityRaceway.rows) {
    const size = row.key[0] ?? "";
    const amperes = ampacityA(edition, metal, size, column);
    if (amperes !== undefined && amperes * sets >= neededA)
      return `${conductorText(sets, size, metal)} (${amperesText(amperes * sets)} at ${String(column)} C)`;
  }
  return undefined;
}

/** "3 x 300 kcmil copper", "4/0 AWG aluminum". */
export function conductorText(sets: number, size: string, metal: ConductorMetal): string {
  return sets === 1 ? `${size} ${METAL_TEXT[metal]}` : `${String(sets)} x ${size} ${METAL_TEXT[metal]}`;
}

/** "855 A", "133.3 A": at most one decimal, for sentences; steps keep the exact value. */
export function amperesText(amperes: number): string {
  return `${String(Math.round(amperes * 10) / 10)} A`;
}

/**
 * True for wire that the ampacity table speaks of. Leads of listed equipment and fixture wire are sized by other
 * rules; a bare conductor takes the lowest rating of the insulated ones beside it and is read from the table too.
 */
export function isBuildingWire({ insulation }: ConductorGroup): boolean {
  return insulation !== "equipment-lead" && insulation !== "fixture-wire";
}

const COPPER: Readonly<Record<TemperatureColumn, string>> = { 60: "copper60", 75: "copper75", 90: "copper90" };
const ALUMINUM: Readonly<Record<TemperatureColumn, string>> = { 60: "aluminum60", 75: "aluminum75", 90: "aluminum90" };
const PLACE: Readonly<Record<Location, InsulationPlace>> = {
  dry: "dry",
  damp: "damp",
  wet: "wet",
  "direct-burial": "wet",
  concrete: "wet",
};
const METAL_TEXT: Readonly<Record<ConductorMetal, string>> = {
  copper: "copper",
  aluminum: "aluminum",
  "copper-clad-aluminum": "copper-clad aluminum",
};
