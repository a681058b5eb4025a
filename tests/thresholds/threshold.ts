/**
 * A threshold of the library: a number, a size or a date at which an answer turns, with the answers one step under it, at it
 * and one step over it.
 *
 * "published": the limit and what holds on each side stand in the publication named. "hand": they follow by the working
 * given. The values are what a person could state: one step is the next standard size, one conductor, the last place in
 * which the fact is measured.
 */
import type { Basis } from "@landfast/rules";

export type EditionName = Basis["edition"];
export const EDITION_NAMES: readonly EditionName[] = ["2017", "2020", "2023"];

export type Fact = number | string;
type Trio<Value> = readonly [under: Value, at: Value, over: Value];

/** How far the three values lie apart: a number in their own unit, or the next one of a row. */
export type Step = number | keyof typeof ROWS | "day";

interface ThresholdCore {
  readonly name: string;
  /** The numbers of the source that this stands for, as `source-numbers.ts` names them; none for a bound of a table. */
  readonly where: readonly string[];
  /** Absent: every edition. */
  readonly editions?: readonly EditionName[];
  readonly kind: "published" | "hand";
  /** Publication and place, or the working. */
  readonly source: string;
  readonly unit: string;
  readonly step: Step;
  /**
   * Why the answer is the same on each side: a floor or a ceiling that the values would otherwise pass. Only where the limit
   * itself cannot be stated as a fact; the answer then names the limit.
   */
  readonly level?: string;
}

export interface Threshold extends ThresholdCore {
  readonly values: Trio<Fact>;
  readonly answers: Trio<string>;
  readonly ask: (value: Fact, edition: EditionName) => string;
}

interface Described<Value extends Fact> extends ThresholdCore {
  readonly values: Trio<Value>;
  /** Where editions differ: by edition. */
  readonly answers: Trio<string>;
  readonly ask: (value: Value, edition: EditionName) => string;
}

/** A threshold over numbers. */
export function overNumbers(described: Described<number>): Threshold {
  return { ...described, ask: (value, edition) => described.ask(Number(value), edition) };
}

/** A threshold over sizes, dates and other words in a row. */
export function overWords(described: Described<string>): Threshold {
  return { ...described, ask: (value, edition) => described.ask(String(value), edition) };
}

/** Standard sizes in the order of their areas, as Chapter 9 Table 8 lists them, smaller ones before them. */
const CONDUCTOR_SIZES =
  "30,28,26,24,22,20,18,16,14,12,10,8,6,4,3,2,1,1/0,2/0,3/0,4/0,250,300,350,400,500,600,700,750,800,900,1000,1250,1500,1750,2000"
    .split(",")
    .map((figure) => `${figure} ${Number(figure) >= 250 ? "kcmil" : "AWG"}`);

/** What stands next to each other where a fact cannot take any value. */
export const ROWS = {
  "conductor size": CONDUCTOR_SIZES,
  // IEC 60228
  "metric size": "10,16,25,35,50,70,95,120,150,185,240,300,400,500,630".split(",").map((area) => `${area} mm2`),
  // NFPA 70 240.6(A)
  "standard device": "400,450,500,600,700,800,1000,1200,1600".split(",").map((rating) => `${rating} A`),
  horsepower: ["1/2", "3/4", "1", "1-1/2", "2", "3"],
} as const;

/** Whether the second value lies exactly one step above the first. */
export function isOneStep(lower: Fact, upper: Fact, step: Step): boolean {
  if (step === "day")
    return Date.parse(`${String(upper)}T00:00Z`) - Date.parse(`${String(lower)}T00:00Z`) === 86_400_000;
  if (typeof step === "number") return scaled(upper) - scaled(lower) === scaled(step);
  const row: readonly string[] = ROWS[step];
  const at = row.indexOf(String(lower));
  return at >= 0 && row[at + 1] === String(upper);
}

const PLACES = 9;

/** A decimal without its point, so that steps are compared exactly: 0.875 in nine places. Sizes count by their figure. */
function scaled(fact: Fact): bigint {
  const [figure = ""] = String(fact).split(" ");
  const match = /^(-?)(\d+)(?:\.(\d{1,9}))?$/.exec(figure);
  if (match === null) throw new Error(`${String(fact)} is no decimal of ${String(PLACES)} places`);
  const [, sign = "", whole = "", fraction = ""] = match;
  return BigInt(`${sign}${whole}${fraction.padEnd(PLACES, "0")}`);
}
