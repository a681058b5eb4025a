/**
 * The temperature limit of a termination and what a conductor may carry under it.
 *
 * NFPA 70 110.14(C) (2017, 2020, 2023), in our words: a conductor is loaded no further than the lowest rated of
 * everything it meets allows: its own insulation, the connector, and the terminal (for a splice or tap: the terminals
 * at its ends). (C)(1)(a): equipment that bears no temperature counts as 60 C on circuits of 100 A or less and for
 * 14 to 1 AWG; (C)(1)(b): as 75 C above that. (C)(2): a connector that is installed apart counts with its own rating.
 * Worked: 3 AWG copper, 90 C insulation, 90 C lug, unmarked 100 A switch: 60 C, so 85 A.
 * Silent: a circuit above 100 A on 14 to 1 AWG fits both lines of (C)(1); the lower one is taken. The allowance for
 * motors with a design letter is not made: state the terminal's rating instead.
 *
 * A fact that is not known is not guessed: the limit is worked out for the lowest and for the highest rating that the
 * part can have, and the caller asks only where the two part ways.
 */

import type { Citation } from "./citation.js";
import type { ConductorGroup } from "./conductor.js";
import { ampacityA, ampacityCell, amperesText, conductorText, temperatureColumn } from "./conductor-ampacity.js";
import { conductorPath } from "./conductor-path.js";
import type { Edition } from "./edition.js";
import type { CheckFinding, Step } from "./finding.js";
import type { AskedFact } from "./joint-load.js";
import {
  type Bound,
  connectorSources,
  insulationSource,
  PART_TEXT,
  type RatingSource,
  terminalSource,
  writeSource,
} from "./rating-source.js";
import { type JointSubject, settled } from "./rule.js";
import { isRefused } from "./table.js";
import type { Worksheet } from "./worksheet.js";

/** What a conductor may carry, in amperes for all sets together, at the lowest and the highest limit still possible. */
export interface ConductorLimit {
  /** Index into joint.conductors. */
  readonly group: number;
  readonly conductor: ConductorGroup;
  readonly sets: number;
  readonly sources: readonly RatingSource[];
  readonly lowC: number;
  readonly highC: number;
  /** 0 where the limit lies below every column, or the table has no cell there. */
  readonly lowA: number;
  readonly highA: number;
  /** Why the table says nothing at all about this conductor: 5 AWG, 35 mm2, 14 AWG aluminum. */
  readonly outsideTable: string | undefined;
  /** Why the insulation may not be used in this place. */
  readonly unfit: string | undefined;
}

/** Works out the limit of one conductor group, without writing anything down. */
export function conductorLimit(subject: JointSubject, group: number, edition: Edition): ConductorLimit | undefined {
  const conductor = subject.joint.conductors[group];
  if (conductor === undefined) return undefined;
  const sources: RatingSource[] = [];
  connectorSources(subject, edition, sources);
  sources.push(
    terminalSource(subject.joint, conductor, edition),
    insulationSource(subject.joint, conductor, group, edition),
  );
  let lowC = Number.POSITIVE_INFINITY;
  let highC = Number.POSITIVE_INFINITY;
  for (const source of sources) {
    lowC = Math.min(lowC, source.lowC);
    highC = Math.min(highC, source.highC);
  }
  const sets = subject.joint.circuit?.sets ?? 1;
  const unfit = sources.find((source) => source.basis === "unfit");
  const column = temperatureColumn(highC);
  const cell = column === undefined ? undefined : ampacityCell(edition, conductor.metal, conductor.size, column);
  return {
    group,
    conductor,
    sets,
    sources,
    lowC,
    highC,
    lowA: carried(edition, conductor, sets, lowC),
    highA: carried(edition, conductor, sets, highC),
    unfit: unfit?.because,
    outsideTable: unfit === undefined && cell !== undefined && isRefused(cell) ? cell.detail : undefined,
  };
}

/** How a requirement stands that more ampacity can only help. */
export type LimitDecision = "pass" | "fail" | AskedFact;

/**
 * Whether the requirement holds at every limit still possible, at none, or hangs on a fact, which is then named.
 * The fact named is one that alone can turn the answer.
 */
export function decideLimit(
  limit: ConductorLimit,
  edition: Edition,
  holds: (amperes: number) => boolean,
): LimitDecision {
  if (holds(limit.lowA)) return "pass";
  if (!holds(limit.highA)) return "fail";
  for (const source of limit.sources) {
    if (source.basis !== "unknown") continue;
    const withLow = Math.min(limit.highC, source.lowC);
    if (!holds(carried(edition, limit.conductor, limit.sets, withLow))) return source;
  }
  throw new Error("a limit that is wholly known has one ampacity");
}

/**
 * Writes where the limit comes from: the rating of each part, then the lowest of them.
 * With a bound, a rating that is not known is written as the lowest or the highest it can be.
 */
export function writeLimit(
  worksheet: Worksheet,
  subject: JointSubject,
  limit: ConductorLimit,
  bound: Bound,
  edition: Edition,
): Step {
  const uses = limit.sources.map((source) => writeSource(worksheet, subject, limit, source, bound));
  return worksheet.conclude(
    "temperature limit of the conductor at this joint",
    limitAt(limit, bound),
    uses,
    "the lowest rated part limits the conductor",
    edition.clauses.lowestTemperature,
    "Cel",
  );
}

/** Writes the ratings that are known, for a finding that stops at one that is not. */
export function writeKnownRatings(worksheet: Worksheet, subject: JointSubject, limit: ConductorLimit): void {
  for (const source of limit.sources)
    if (source.basis !== "unknown") writeSource(worksheet, subject, limit, source, "low");
}

/** Writes the ampacity at the limit, times the sets. The limit must have a cell at this bound. */
export function writeAmpacity(
  worksheet: Worksheet,
  limit: ConductorLimit,
  bound: Bound,
  limitStep: Step,
  edition: Edition,
): Step {
  const limitC = limitAt(limit, bound);
  const column = temperatureColumn(limitC);
  if (column === undefined) {
    return worksheet.conclude(
      "ampacity at the limit",
      0,
      [limitStep],
      `the table has no column for ${String(limitC)} C or below`,
      edition.clauses.lowestTemperature,
      "A",
    );
  }
  const head = `joint/conductors/${String(limit.group)}`;
  const columnStep = worksheet.conclude(
    "temperature column",
    column,
    [limitStep],
    "the largest column that is not above the limit",
    edition.clauses.lowestTemperature,
    "Cel",
  );
  const size = worksheet.given("conductor size", limit.conductor.size, `${head}/size`);
  const metal = worksheet.given("conductor metal", limit.conductor.metal, `${head}/metal`);
  const cell = ampacityCell(edition, limit.conductor.metal, limit.conductor.size, column);
  if (isRefused(cell))
    return worksheet.conclude(
      "ampacity at the limit",
      0,
      [size, metal, columnStep],
      cell.detail,
      edition.tables.ampacityRaceway.cite,
      "A",
    );
  const one = worksheet.read("ampacity of one conductor", cell, [size, metal, columnStep]);
  if (limit.sets === 1) return one;
  const sets = worksheet.given("conductors in parallel", limit.sets, "joint/circuit/sets");
  return worksheet.multiply("ampacity of all sets", [one, sets], "A");
}

/** The clause behind the part that sets the limit, and what to say of it. */
export function governingRating(
  limit: ConductorLimit,
  bound: Bound,
): { readonly cite: Citation; readonly text: string } | undefined {
  const limitC = limitAt(limit, bound);
  const source = limit.sources.find((one) => (bound === "low" ? one.lowC : one.highC) === limitC);
  if (source === undefined) return undefined;
  const rating = `${PART_TEXT[source.part]}: ${String(limitC)} C`;
  if (source.basis !== "unknown") return { cite: source.cite, text: rating };
  return { cite: source.cite, text: `${rating}, the ${bound === "low" ? "least" : "most"} it can be` };
}

/** "4/0 AWG aluminum carries 180 A at 75 C (the connector by its marking: 75 C)": how far the conductor may be loaded. */
export function carriedText(limit: ConductorLimit, bound: Bound): string {
  const { conductor, sets } = limit;
  const governing = governingRating(limit, bound);
  const carried = `${conductorText(sets, conductor.size, conductor.metal)} ${sets === 1 ? "carries" : "carry"} ${amperesText(carriedA(limit, bound))} at ${columnText(limit, bound)}`;
  return governing === undefined ? carried : `${carried} (${governing.text})`;
}

/** The temperature column used: "75 C". */
export function columnText(limit: ConductorLimit, bound: Bound): string {
  const limitC = limitAt(limit, bound);
  const column = temperatureColumn(limitC);
  return column === undefined ? `${String(limitC)} C, below every column` : `${String(column)} C`;
}

/** The temperature limit at a bound, in degrees Celsius. */
export function limitAt(limit: ConductorLimit, bound: Bound): number {
  return bound === "low" ? limit.lowC : limit.highC;
}

/** Amperes of all sets at a bound. */
export function carriedA(limit: ConductorLimit, bound: Bound): number {
  return bound === "low" ? limit.lowA : limit.highA;
}

/** The refusal of insulation that has no rating in the place of the joint. */
export function refuseInsulation(
  rule: string,
  worksheet: Worksheet,
  subject: JointSubject,
  limit: ConductorLimit,
  edition: Edition,
): CheckFinding {
  const why = limit.unfit ?? "";
  const cite = edition.clauses.insulationTypes;
  const step = writeLimit(worksheet, subject, limit, "high", edition);
  worksheet.conclude("the insulation may be used in this place", "fail", [step], why, cite);
  return settled(rule, worksheet, {
    sentence: `The ${limit.conductor.size} conductor may not be used here: ${why}.`,
    cite,
    required: "insulation rated for the place",
    offered: limit.conductor.insulation,
    fix: "a conductor whose insulation is rated for this place",
  });
}

/** Why a conductor that the ampacity table does not have is asked about. */
export function sizeOutsideTable({ group, outsideTable = "" }: ConductorLimit): AskedFact {
  return {
    path: conductorPath(group, "size"),
    because: `${outsideTable}, so what this conductor may carry is not known.`,
  };
}

function carried(edition: Edition, conductor: ConductorGroup, sets: number, limitC: number): number {
  const column = temperatureColumn(limitC);
  return column === undefined ? 0 : (ampacityA(edition, conductor.metal, conductor.size, column) ?? 0) * sets;
}
