import type { CalculationFinding } from "../../core/calculation.js";
import { type CalculationSheet, shown } from "../../core/calculation-sheet.js";
import type { ConductorMetal } from "../../core/conductor.js";
import type { Unmarked } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import type { Temperature } from "../../core/quantity.js";
import { NEEDS_LISTED_USE } from "../../core/small-conductor.js";
import { cellAt, isRefused, sizesOf } from "../../core/table.js";
import { type UnmarkedTerminal, unmarkedTerminal } from "../../core/unmarked-terminal.js";

/** The conductor to be sized and what it ends on. */
export interface MotorConductor {
  readonly metal: ConductorMetal;
  readonly insulationRating?: Temperature;
  /** The lowest rated terminal of starter, disconnect and protective device. */
  readonly terminalTemperature?: Temperature | Unmarked;
  /** Marked on the motor; "unmarked" or another letter gives its terminals no rating of their own. */
  readonly designLetter?: string;
}

/** Design letters whose motors may be wired by the 75 C column. */
const LETTERS_75C: readonly string[] = ["B", "C", "D"];
const RATING_BY_LETTER_C = 75;
/** The ratings that insulation and terminals are made for, in degrees Celsius. */
const LOWEST_C = 60;
const HIGHEST_C = 90;
/** Columns of the table above the lowest. */
const COLUMNS_C = [90, 75] as const;

/** What one part lets the conductor reach. The unmarked ones depend on the size that is tried. */
interface PartLimit {
  readonly path: string;
  readonly label: string;
  readonly because: string;
  readonly state:
    | { readonly kind: "rated"; readonly step: Step }
    | { readonly kind: "unmarked" }
    /** Not known: it lies between the two. */
    | { readonly kind: "unknown"; readonly lowC: number | "unmarked"; readonly highC: number };
}

/**
 * Smallest conductor of a motor circuit by the ampacity its terminals allow.
 *
 * NFPA 70 430.22, 110.14(C)(1) and Table 310.16 (2017, 2020, 2023; Table 310.15(B)(16) in 2017): the ampacity needed at
 * the column that neither insulation nor any terminal forbids; unmarked terminals count as 60 C up to 100 A and up to
 * 1 AWG, as 75 C beyond; those of a motor of design B, C or D as 75 C.
 * Worked: 42.5 A at 75 C, copper: 8 AWG, 50 A.
 * A conductor to several motors ends at starters and not on a motor, so no design letter counts for it.
 * Silent: neither correction for warm places nor adjustment for more than three conductors is in it. 18 and 16 AWG, which
 * small motors may have on terms of their own (430.22(G)), are not tried.
 */
export function motorConductorSize(
  sheet: CalculationSheet,
  needed: Step,
  conductor: MotorConductor,
  endsOnMotor: boolean,
  edition: Edition,
): Step | CalculationFinding {
  const parts = partsOf(sheet, conductor, endsOnMotor, edition);
  const tooCool = parts.find(({ state }) => state.kind === "rated" && Number(state.step.value) < LOWEST_C);
  if (tooCool !== undefined)
    return sheet.refuse(
      "OUTSIDE_TABLE",
      `The ${tooCool.label} is below ${String(LOWEST_C)} C, the lowest column of ${edition.tables.ampacityRaceway.cite.locator}.`,
      edition.tables.ampacityRaceway.cite,
    );
  const search: Search = { sheet, needed, conductor, edition };
  const low = smallest(search, parts, "low");
  const unknown = parts.find(({ state }) => state.kind === "unknown");
  if (unknown !== undefined && low !== smallest(search, parts, "high"))
    return sheet.ask(unknown.path, unknown.because, edition.clauses.lowestTemperature);
  if (low === undefined)
    return sheet.refuse(
      "NO_SOLUTION",
      `No single ${conductor.metal} conductor carries ${shown(needed.value)} A there: use conductors in parallel.`,
      edition.tables.ampacityRaceway.cite,
    );
  return writeSearch(search, parts, low);
}

interface Search {
  readonly sheet: CalculationSheet;
  readonly needed: Step;
  readonly conductor: MotorConductor;
  readonly edition: Edition;
}

function partsOf(
  sheet: CalculationSheet,
  conductor: MotorConductor,
  endsOnMotor: boolean,
  edition: Edition,
): readonly PartLimit[] {
  const insulation = conductor.insulationRating;
  const terminal = conductor.terminalTemperature;
  const parts: PartLimit[] = [
    {
      path: "question/conductor/insulationRating",
      label: "rating of the insulation",
      because: "The insulation's temperature rating decides the size, and it is not given.",
      state:
        insulation === undefined
          ? { kind: "unknown", lowC: LOWEST_C, highC: HIGHEST_C }
          : {
              kind: "rated",
              step: sheet.temperature("rating of the insulation", insulation, "question/conductor/insulationRating"),
            },
    },
    {
      path: "question/conductor/terminalTemperature",
      label: "rating of the terminals at starter and device",
      because: "The rating of the terminals at starter and device decides the size, and it is not given.",
      state: terminalState(sheet, terminal),
    },
  ];
  if (endsOnMotor)
    parts.push({
      path: "question/conductor/designLetter",
      label: "rating of the motor's terminals",
      because: "The design letter of the motor decides whether its terminals may be used at 75 C, and it is not given.",
      state: motorState(sheet, conductor.designLetter, edition),
    });
  return parts;
}

function terminalState(sheet: CalculationSheet, terminal: Temperature | Unmarked | undefined): PartLimit["state"] {
  const path = "question/conductor/terminalTemperature";
  if (terminal === undefined) return { kind: "unknown", lowC: LOWEST_C, highC: HIGHEST_C };
  if (terminal !== "unmarked")
    return { kind: "rated", step: sheet.temperature("rating of the terminals at starter and device", terminal, path) };
  sheet.given("temperature mark of the terminals at starter and device", "unmarked", path);
  return { kind: "unmarked" };
}

function motorState(sheet: CalculationSheet, letter: string | undefined, { clauses }: Edition): PartLimit["state"] {
  if (letter === undefined) return { kind: "unknown", lowC: "unmarked", highC: RATING_BY_LETTER_C };
  const marked = sheet.given("design letter of the motor", letter, "question/conductor/designLetter");
  if (!LETTERS_75C.includes(letter)) return { kind: "unmarked" };
  return {
    kind: "rated",
    step: sheet.state(
      "rating of the motor's terminals by its design letter",
      RATING_BY_LETTER_C,
      clauses.motorTerminals,
      "Cel",
      [marked],
    ),
  };
}

function sizesTried({ edition }: Search): readonly string[] {
  return sizesOf(edition.tables.ampacityRaceway).filter((size) => !NEEDS_LISTED_USE.includes(size));
}

/** The first size, from the smallest up, that carries what is needed; nothing is written down. */
function smallest(search: Search, parts: readonly PartLimit[], bound: "low" | "high"): string | undefined {
  const { needed, conductor, edition } = search;
  const table = edition.tables.ampacityRaceway;
  return sizesTried(search).find((size) => {
    const cell = cellAt(table, size, columnId(conductor.metal, limitC(search, parts, size, bound)));
    return !isRefused(cell) && Number(cell.value) >= Number(needed.value);
  });
}

function limitC(search: Search, parts: readonly PartLimit[], size: string, bound: "low" | "high"): number {
  return Math.min(
    ...parts.map(({ state }) => {
      if (state.kind === "rated") return Number(state.step.value);
      if (state.kind === "unmarked") return unmarkedAt(search, size).valueC;
      if (bound === "high") return state.highC;
      return state.lowC === "unmarked" ? unmarkedAt(search, size).valueC : state.lowC;
    }),
  );
}

/** The circuit counts as rated for the ampacity needed: its device may be larger, and is not what heats the terminal. */
function unmarkedAt({ needed }: Search, size: string): UnmarkedTerminal {
  const neededA = Number(needed.value);
  const unmarked = unmarkedTerminal(size, neededA, neededA);
  if (unmarked === undefined) throw new Error("an unmarked terminal of a known circuit has a rating");
  return unmarked;
}

/** Writes down each size tried, the column it was tried at and what it carries there, up to the one found. */
function writeSearch(search: Search, parts: readonly PartLimit[], found: string): Step {
  const { sheet, needed, conductor, edition } = search;
  const table = edition.tables.ampacityRaceway;
  for (const size of sizesTried(search)) {
    const cell = cellAt(table, size, columnId(conductor.metal, limitC(search, parts, size, "low")));
    if (isRefused(cell)) continue;
    const tried = sheet.conclude("size tried", size, [], "next size of the table");
    const limit = writeLimit(search, parts, tried);
    const ampacity = sheet.read("ampacity at that limit", cell, [tried, limit]);
    sheet.compare("the ampacity is enough", ampacity, ">=", needed, edition.clauses.motorConductors);
    if (size === found)
      return sheet.conclude(
        "smallest size",
        size,
        [tried, sheet.last],
        "the first size, from the smallest up, that carries the current needed",
        table.cite,
      );
  }
  throw new Error(`${found} was found and not met again`);
}

function writeLimit(search: Search, parts: readonly PartLimit[], size: Step): Step {
  const { sheet, needed, edition } = search;
  const { clauses } = edition;
  const ratings = parts.map(({ label, state }) => {
    if (state.kind === "rated") return state.step;
    const unmarked = unmarkedAt(search, String(size.value));
    if (state.kind === "unknown") {
      const lowestC = state.lowC === "unmarked" ? unmarked.valueC : state.lowC;
      return sheet.state(`${label}, not known: the lowest it can be`, lowestC, clauses.lowestTemperature, "Cel", [
        size,
      ]);
    }
    return sheet.assume(label, unmarked.valueC, unmarked.because, clauses[unmarked.clause], "Cel", [needed, size]);
  });
  return sheet.conclude(
    "temperature the conductor may reach",
    Math.min(...ratings.map((rating) => Number(rating.value))),
    ratings,
    "the lowest rated part limits the conductor",
    clauses.lowestTemperature,
    "Cel",
  );
}

/** The hottest column that the limit allows. */
function columnId(metal: ConductorMetal, limit: number): string {
  const columnC = COLUMNS_C.find((column) => column <= limit) ?? LOWEST_C;
  return `${metal === "copper" ? "copper" : "aluminum"}${String(columnC)}`;
}
