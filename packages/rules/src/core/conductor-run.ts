/** How a conductor is run, as far as its ampacity goes by it. */
import type { ConductorMetal, Insulation } from "./conductor.js";
import { type InsulationPlace, insulationRatingC } from "./conductor-ampacity.js";
import type { Unmarked } from "./connector.js";
import type { Edition } from "./edition.js";
import type { OpenFact } from "./open-fact.js";
import type { Length, Temperature } from "./quantity.js";

/** "raceway": in a raceway, a cable or the earth. "free-air": a single insulated conductor in free air. */
export const RUN_MANNERS = ["raceway", "free-air"] as const;
export type RunManner = (typeof RUN_MANNERS)[number];

/** Circuits as the count of current-carrying conductors tells them apart. Equipment grounds are never named. */
export const COUNTED_CIRCUITS = [
  "two-wire",
  /** Two lines and their neutral, as 120/240 V: the neutral carries only the unbalance. */
  "three-wire-single-phase",
  /** Two lines and the neutral of a four-wire wye system. */
  "two-lines-and-neutral-of-wye",
  "three-phase-three-wire",
  "three-phase-four-wire-wye",
  "three-phase-four-wire-delta",
  /** One conductor that is not in use. */
  "spare",
] as const;
export type CountedCircuitKind = (typeof COUNTED_CIRCUITS)[number];

export interface CountedCircuit {
  readonly kind: CountedCircuitKind;
  /** Equal ones. */
  readonly count: number;
  /** Of a four-wire wye circuit: the major part of the load is nonlinear, so that the neutral carries harmonics. */
  readonly mostlyNonlinear?: boolean;
}

/** How many conductors lie together, already counted by the rules or circuit by circuit. */
export type ConductorsTogether = number | readonly CountedCircuit[];

/** What the conductors share. */
export type Grouping =
  /** Apart from each other, in free air. */
  | { readonly in: "apart" }
  /** For more than 24 in: in one raceway or cable, or bundled without one. */
  | { readonly in: "raceway" | "cable" | "bundle"; readonly conductors: ConductorsTogether }
  /** A short raceway between enclosures. */
  | { readonly in: "nipple"; readonly length: Length; readonly conductors: ConductorsTogether }
  /** A metal wireway: conductors at its fullest cross-section, and how much of that they fill. */
  | { readonly in: "metal-wireway"; readonly fillPercent?: number; readonly conductors: ConductorsTogether };

export interface ConductorRun {
  readonly metal: ConductorMetal;
  readonly insulation: Insulation;
  /** For "other": its own rating. For "bare": the lowest rating of the insulated conductors beside it. */
  readonly insulationRating?: Temperature;
  readonly place?: InsulationPlace;
  /** Conductors in parallel per phase. */
  readonly sets: number;
  readonly manner: RunManner;
  /** Around the conductor; on a roof, of the air outdoors. */
  readonly ambient?: Temperature;
  /** A raceway or cable in direct sunlight on or above a roof: how far its bottom is above the roof. */
  readonly sunlitRoof: "none" | { readonly aboveRoof: Length };
  readonly grouping?: Grouping;
  /** The lowest rating that terminal and connector bear at each end. */
  readonly supplyEnd?: Temperature | Unmarked;
  readonly loadEnd?: Temperature | Unmarked;
}

/** Lowest and highest rating that terminals and building wire are made for, in degrees Celsius. */
export const LOWEST_RATING_C = 60;
export const HIGHEST_RATING_C = 90;

const PLACES: readonly InsulationPlace[] = ["dry", "damp", "wet"];

/** The paths of a run's facts, and of the terminals at its ends. */
export const RUN_PATHS = {
  run: "question/run",
  insulationRating: "question/run/insulationRating",
  place: "question/run/place",
  ambient: "question/run/ambient",
  grouping: "question/run/grouping",
  fillPercent: "question/run/grouping/fillPercent",
  supplyEnd: "question/run/supplyEnd",
  loadEnd: "question/run/loadEnd",
} as const;

/** Where it would be said whether the load of a counted circuit is mostly nonlinear. */
export function nonlinearPath(index: number): string {
  return `${RUN_PATHS.grouping}/conductors/${String(index)}/mostlyNonlinear`;
}

/** True where the insulation's rating must be given because its type has none. */
export function needsOwnRating(insulation: Insulation): boolean {
  return insulation === "other" || insulation === "bare";
}

/** The facts of a run that are not known and may not matter. `ratingPath` is asked where unmarked terminals hang on it. */
export function openFactsOf(run: ConductorRun, ratingPath: string | undefined, edition: Edition): readonly OpenFact[] {
  const open: OpenFact[] = [];
  if (run.supplyEnd === undefined) open.push(endFact(RUN_PATHS.supplyEnd, "supply"));
  if (run.loadEnd === undefined) open.push(endFact(RUN_PATHS.loadEnd, "load"));
  if (ratingPath !== undefined && (run.supplyEnd === "unmarked" || run.loadEnd === "unmarked"))
    open.push({
      path: ratingPath,
      because:
        "Terminals without a mark count as 60 C or 75 C by the rating of the circuit, which is not given, and it decides here.",
    });
  if (needsOwnRating(run.insulation) && run.insulationRating === undefined)
    open.push({
      path: RUN_PATHS.insulationRating,
      because: "The temperature rating of the insulation is not given, and it decides how much the conductor carries.",
    });
  if (run.place === undefined && isRatedByPlace(run, edition))
    open.push({
      path: RUN_PATHS.place,
      because: `${run.insulation} is not rated alike in dry, damp and wet places, and where it runs is not given.`,
    });
  addGroupingFacts(run.grouping, open);
  return open;
}

function addGroupingFacts(grouping: Grouping | undefined, open: OpenFact[]): void {
  if (grouping === undefined || grouping.in === "apart") return;
  if (grouping.in === "metal-wireway" && grouping.fillPercent === undefined)
    open.push({
      path: RUN_PATHS.fillPercent,
      because: "How much of the wireway's cross-section is filled decides whether the ampacity is adjusted.",
    });
  if (typeof grouping.conductors === "number") return;
  for (const [index, circuit] of grouping.conductors.entries())
    if (circuit.kind === "three-phase-four-wire-wye" && circuit.mostlyNonlinear === undefined)
      open.push({
        path: nonlinearPath(index),
        because:
          "The neutral of a four-wire wye circuit counts where the major part of the load is nonlinear; whether it is, is not given.",
      });
}

function endFact(path: string, end: string): OpenFact {
  return {
    path,
    because: `The temperature rating of the terminal at the ${end} end is not given, and it decides how much the conductor carries.`,
  };
}

function isRatedByPlace(run: ConductorRun, edition: Edition): boolean {
  if (needsOwnRating(run.insulation)) return false;
  const [first, ...others] = PLACES.map((place) => insulationRatingC(edition, run.insulation, place));
  return others.some((rating) => rating !== first);
}

/** The lowest or the highest rating of the type over all places, in degrees Celsius; 0 where it may not be used in one. */
export function ratingAnywhereC(run: ConductorRun, edition: Edition, highest: boolean): number {
  const ratings = PLACES.map((place) => insulationRatingC(edition, run.insulation, place));
  return highest ? Math.max(...ratings) : Math.min(...ratings);
}
