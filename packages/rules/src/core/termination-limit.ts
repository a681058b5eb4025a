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
import {
  ampacityA,
  ampacityCell,
  amperesText,
  conductorText,
  type InsulationPlace,
  insulationCell,
  insulationPlace,
  temperatureColumn,
} from "./conductor-ampacity.js";
import { conductorPath } from "./conductor-path.js";
import type { Construction } from "./connector.js";
import type { Edition } from "./edition.js";
import { divide, type Exact, exactOf, multiply, subtract } from "./exact.js";
import type { CheckFinding, Step } from "./finding.js";
import type { Circuit, Joint } from "./joint.js";
import { celsius, type Temperature } from "./quantity.js";
import { type JointSubject, settled } from "./rule.js";
import { type Cell, cellAt, isRefused } from "./table.js";
import { unmarkedTerminal } from "./unmarked-terminal.js";
import type { NumberStep, Worksheet } from "./worksheet.js";

/** Lowest and highest rating that terminals, connectors and building wire are made for, in degrees Celsius. */
const LOWEST_C = 60;
const HIGHEST_C = 90;
/** What an unmarked terminal may count as. */
const UNMARKED_SMALL_C = 60;
const UNMARKED_LARGE_C = 75;
/** A pressure connector without a temperature mark. */
const UNMARKED_CONNECTOR_C = 75;

const PRESSURE: readonly Construction[] = [
  "set-screw",
  "compression",
  "insulation-piercing",
  "split-bolt",
  "bolted-clamp",
];

/** One part that limits the temperature, and how its rating is known. */
interface RatingSource {
  readonly part: "connector" | "marking" | "terminal" | "ends" | "insulation";
  readonly basis: "given" | "table" | "assumed" | "unknown" | "unfit";
  /** Equal unless the rating is not known. An insulation that may be unfit for its place has a low of 0. */
  readonly lowC: number;
  readonly highC: number;
  /** Where the fact stands or would be given. */
  readonly path: string;
  /** Why the value is assumed, or why the fact is asked for. */
  readonly because: string;
  readonly cite: Citation;
  readonly given?: Temperature;
  readonly cell?: Cell;
  readonly place?: InsulationPlace;
}

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

/** Which of the two possible limits is written out. */
export type Bound = "low" | "high";

/** A fact to ask for. */
export interface AskedFact {
  readonly path: string;
  readonly because: string;
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

/** The load for sizing in amperes, to the nearest double, or the fact that is missing. */
export function loadForSizing(circuit: Circuit | undefined): number | AskedFact {
  const { loadA, continuousLoadA, nonContinuousLoadA } = circuit ?? {};
  if (loadA !== undefined)
    return continuousLoadA === undefined && nonContinuousLoadA === undefined ? loadA : LOAD_GIVEN_TWICE;
  if (continuousLoadA === undefined) return nonContinuousLoadA === undefined ? LOAD_MISSING : CONTINUOUS_MISSING;
  return nonContinuousLoadA === undefined ? REST_MISSING : 1.25 * continuousLoadA + nonContinuousLoadA;
}

/** The load for sizing as a step, or the fact that is missing. */
export function writeLoad(worksheet: Worksheet, circuit: Circuit | undefined, edition: Edition): Step | AskedFact {
  const load = loadForSizing(circuit);
  if (typeof load !== "number") return load;
  const { loadA, continuousLoadA = 0, nonContinuousLoadA = 0 } = circuit ?? {};
  return loadA === undefined
    ? loadFromParts(worksheet, continuousLoadA, nonContinuousLoadA, edition)
    : worksheet.given("load for sizing", loadA, "joint/circuit/loadA", "A");
}

const LOAD_MISSING: AskedFact = Object.freeze({
  path: "joint/circuit/loadA",
  because: "The load of the circuit is not given, so the ampacity cannot be compared with it.",
});
const LOAD_GIVEN_TWICE: AskedFact = Object.freeze({
  path: "joint/circuit/loadA",
  because: "The load is given twice, for sizing and in its parts; one of them must go.",
});
const CONTINUOUS_MISSING: AskedFact = Object.freeze({
  path: "joint/circuit/continuousLoadA",
  because: "Only the non-continuous part of the load is given; say how much is continuous, if only 0 A.",
});
const REST_MISSING: AskedFact = Object.freeze({
  path: "joint/circuit/nonContinuousLoadA",
  because: "Only the continuous part of the load is given; say how much is not continuous, if only 0 A.",
});

/** NFPA 70 215.2(A)(1): 125 % of the continuous load and the rest. Worked: 1.25 x 160 + 0 = 200 A. */
function loadFromParts(worksheet: Worksheet, continuousLoadA: number, restA: number, edition: Edition): NumberStep {
  const cite = edition.clauses.feederLoad;
  const continuous = worksheet.given("continuous load", continuousLoadA, "joint/circuit/continuousLoadA", "A");
  const rest = worksheet.given("non-continuous load", restA, "joint/circuit/nonContinuousLoadA", "A");
  const factor = worksheet.state("factor for continuous load", 1.25, cite);
  const raised = worksheet.multiply("continuous load counted", [factor, continuous], "A", cite);
  return worksheet.add("load for sizing", [raised, rest], "A", cite);
}

/** True when a load, a protection or another reading turned out to be a fact to ask for. */
export function isAsked(value: Step | AskedFact): value is AskedFact {
  return !("kind" in value);
}

function carried(edition: Edition, conductor: ConductorGroup, sets: number, limitC: number): number {
  const column = temperatureColumn(limitC);
  return column === undefined ? 0 : (ampacityA(edition, conductor.metal, conductor.size, column) ?? 0) * sets;
}

function connectorSources({ connector, origin }: JointSubject, edition: Edition, sources: RatingSource[]): void {
  // A weld is the conductor itself: it adds no limit of its own.
  if (connector.construction === "weld") return;
  const ownTerminal = origin === "joint/equipment/terminal" || connector.mounting.kind === "integral";
  const { clauses } = edition;
  const cite = ownTerminal ? clauses.lowestTemperature : clauses.separateConnectors;
  const printed = connector.temperature;
  if (printed !== undefined && printed !== "unmarked") {
    const value = celsius(printed);
    sources.push({
      part: "connector",
      basis: "given",
      lowC: value,
      highC: value,
      path: `${origin}/temperature`,
      because: "",
      cite,
      given: printed,
    });
  }
  const marking = connector.metalMarking;
  const cell = marking === undefined ? undefined : cellAt(edition.tables.markingCodes, marking, "ratingC");
  if (cell !== undefined && !isRefused(cell) && typeof cell.value === "number") {
    const value = cell.value;
    sources.push({
      part: "marking",
      basis: "table",
      lowC: value,
      highC: value,
      path: `${origin}/metalMarking`,
      because: "",
      cite,
      cell,
    });
    return;
  }
  // Without a rating of its own, a terminal that belongs to its equipment has the equipment's.
  if (sources.length > 0 || ownTerminal) return;
  if (printed === "unmarked" && PRESSURE.includes(connector.construction)) {
    sources.push({
      part: "connector",
      basis: "assumed",
      lowC: UNMARKED_CONNECTOR_C,
      highC: UNMARKED_CONNECTOR_C,
      path: `${origin}/temperature`,
      because: "a pressure connector without a temperature mark counts as 75 C",
      cite: clauses.temperatureMark,
    });
    return;
  }
  sources.push({
    part: "connector",
    basis: "unknown",
    lowC: LOWEST_C,
    highC: HIGHEST_C,
    path: `${origin}/temperature`,
    because: "The connector's temperature rating is not known, and it decides how far the conductor may be loaded.",
    cite,
  });
}

function terminalSource(joint: Joint, conductor: ConductorGroup, edition: Edition): RatingSource {
  const atEnds = joint.function !== "termination";
  const part = atEnds ? "ends" : "terminal";
  const path = atEnds ? "joint/circuit/endTerminalTemperature" : "joint/equipment/terminalTemperature";
  const given = atEnds ? joint.circuit?.endTerminalTemperature : joint.equipment?.terminalTemperature;
  const { clauses } = edition;
  if (given === undefined)
    return {
      part,
      basis: "unknown",
      lowC: LOWEST_C,
      highC: HIGHEST_C,
      path,
      because: atEnds
        ? "The rating of the terminals at the conductor's ends is not known, and it decides how far the conductor may be loaded."
        : "The temperature rating of the equipment's terminal is not known, and it decides how far the conductor may be loaded.",
      cite: clauses.lowestTemperature,
    };
  if (given !== "unmarked") {
    const value = celsius(given);
    return {
      part,
      basis: "given",
      lowC: value,
      highC: value,
      path,
      because: "",
      cite: clauses.lowestTemperature,
      given,
    };
  }
  return unmarkedSource(joint, conductor, part, path, edition);
}

function unmarkedSource(
  joint: Joint,
  conductor: ConductorGroup,
  part: "ends" | "terminal",
  path: string,
  { clauses }: Edition,
): RatingSource {
  const counted = unmarkedTerminal(conductor.size, circuitRatingA(joint.circuit), joint.circuit?.loadA);
  if (counted !== undefined)
    return {
      part,
      basis: "assumed",
      lowC: counted.valueC,
      highC: counted.valueC,
      path,
      because: counted.because,
      cite: clauses[counted.clause],
    };
  return {
    part,
    basis: "unknown",
    lowC: UNMARKED_SMALL_C,
    highC: UNMARKED_LARGE_C,
    path: "joint/circuit/protection",
    because:
      "The terminals bear no temperature, so the circuit's rating decides whether they count as 60 C or 75 C; it is not known.",
    cite: clauses.terminalsTo100A,
  };
}

function circuitRatingA(circuit: Circuit | undefined): number | undefined {
  const protection = circuit?.protection;
  if (protection?.kind === "device") return protection.ratingA;
  return protection?.kind === "feeder-tap" ? protection.endDeviceA : undefined;
}

function insulationSource(joint: Joint, conductor: ConductorGroup, group: number, edition: Edition): RatingSource {
  const head = `joint/conductors/${String(group)}`;
  const bare = conductor.insulation === "bare";
  const cite = bare ? edition.clauses.bareConductors : edition.clauses.lowestTemperature;
  if (bare || conductor.insulation === "other") {
    const given = conductor.insulationRating;
    if (given === undefined)
      return {
        part: "insulation",
        basis: "unknown",
        lowC: LOWEST_C,
        highC: HIGHEST_C,
        path: `${head}/insulationRating`,
        because: bare
          ? "A bare conductor takes the lowest rating of the insulated conductors beside it, and that rating is not given."
          : "The insulation is of no type that the code rates, and its temperature rating is not given.",
        cite,
      };
    const value = celsius(given);
    return {
      part: "insulation",
      basis: "given",
      lowC: value,
      highC: value,
      path: `${head}/insulationRating`,
      because: "",
      cite,
      given,
    };
  }
  const place = insulationPlace(joint);
  return place === undefined ? insulationAnywhere(conductor, edition) : insulationAt(conductor, place, head, edition);
}

function insulationAt(conductor: ConductorGroup, place: InsulationPlace, head: string, edition: Edition): RatingSource {
  const cell = insulationCell(edition, conductor, place);
  const path = `${head}/insulation`;
  const part = "insulation";
  if (isRefused(cell) || typeof cell.value !== "number")
    return {
      part,
      basis: "unfit",
      lowC: 0,
      highC: 0,
      path,
      because: `${conductor.insulation} insulation has no rating in a ${place} place`,
      cite: edition.clauses.insulationTypes,
      place,
    };
  return {
    part,
    basis: "table",
    lowC: cell.value,
    highC: cell.value,
    path,
    because: "",
    cite: edition.clauses.lowestTemperature,
    cell,
    place,
  };
}

/** Without a place: the lowest and the highest rating of the type, 0 where some place forbids it. */
function insulationAnywhere(conductor: ConductorGroup, edition: Edition): RatingSource {
  let lowC = Number.POSITIVE_INFINITY;
  let highC = 0;
  for (const place of PLACES) {
    const cell = insulationCell(edition, conductor, place);
    const value = isRefused(cell) || typeof cell.value !== "number" ? 0 : cell.value;
    lowC = Math.min(lowC, value);
    highC = Math.max(highC, value);
  }
  const cell = insulationCell(edition, conductor, "wet");
  if (lowC === highC && !isRefused(cell))
    return {
      part: "insulation",
      basis: "table",
      lowC,
      highC,
      path: "",
      because: "",
      cite: edition.clauses.lowestTemperature,
      cell,
    };
  return {
    part: "insulation",
    basis: "unknown",
    lowC,
    highC,
    path: "joint/place/location",
    because: `The place of the joint is not given, and ${conductor.insulation} insulation is not rated alike in every place.`,
    cite: edition.clauses.lowestTemperature,
  };
}

function writeSource(
  worksheet: Worksheet,
  { joint, connector, origin }: JointSubject,
  limit: ConductorLimit,
  source: RatingSource,
  bound: Bound,
): Step {
  const label = `rating of ${PART_TEXT[source.part]}`;
  const { given, cell } = source;
  if (source.basis === "given" && given !== undefined) {
    const step = worksheet.given(label, given.value, source.path, given.unit);
    if (given.unit === "Cel") return step;
    return worksheet.exactly(
      label,
      exactCelsius(given),
      "Cel",
      [step],
      "(degF - 32) x 5 / 9",
      `(${String(given.value)} - 32) x 5 / 9`,
    );
  }
  if (source.basis === "table" && cell !== undefined) {
    if (source.part === "marking") {
      const mark = worksheet.given("marking of the connector", connector.metalMarking ?? "", `${origin}/metalMarking`);
      return worksheet.read(label, cell, [mark]);
    }
    return worksheet.read(label, cell, insulationFacts(worksheet, joint, limit, source));
  }
  if (source.basis === "unfit") {
    const facts = insulationFacts(worksheet, joint, limit, source);
    return worksheet.conclude(label, 0, facts, source.because, source.cite, "Cel");
  }
  if (source.basis === "assumed") {
    const mark = worksheet.given(`temperature mark of ${PART_TEXT[source.part]}`, "unmarked", source.path);
    return worksheet.assume(label, source.lowC, source.because, source.cite, "Cel", [
      mark,
      ...unmarkedFacts(worksheet, joint, limit, source),
    ]);
  }
  return worksheet.state(
    `${label}, not known: the ${bound === "low" ? "lowest" : "highest"} it can be`,
    bound === "low" ? source.lowC : source.highC,
    source.cite,
    "Cel",
  );
}

function insulationFacts(
  worksheet: Worksheet,
  joint: Joint,
  limit: ConductorLimit,
  source: RatingSource,
): readonly Step[] {
  const type = worksheet.given("insulation", limit.conductor.insulation, conductorPath(limit.group, "insulation"));
  // A type that is rated alike everywhere was read without a place.
  if (source.place === undefined) return [type];
  const place = joint.place?.location;
  const kind = joint.equipment?.kind;
  const where =
    kind === "handhole" || kind === "trench" || place === undefined
      ? worksheet.given("where the joint lies", kind ?? "", "joint/equipment/kind")
      : worksheet.given("place of the joint", place, "joint/place/location");
  return source.place === where.value
    ? [type, where]
    : [
        type,
        worksheet.conclude(
          "place for the insulation",
          source.place ?? "",
          [where],
          "handholes, trenches, burial and concrete count as wet",
        ),
      ];
}

/** The size or the circuit rating that the assumption for unmarked terminals rests on. */
function unmarkedFacts(
  worksheet: Worksheet,
  joint: Joint,
  limit: ConductorLimit,
  source: RatingSource,
): readonly Step[] {
  if (source.part !== "terminal" && source.part !== "ends") return [];
  const facts = [worksheet.given("conductor size", limit.conductor.size, conductorPath(limit.group, "size"))];
  const protection = joint.circuit?.protection;
  if (protection?.kind === "device")
    facts.push(worksheet.given("device of the circuit", protection.ratingA, "joint/circuit/protection/ratingA", "A"));
  else if (protection?.kind === "feeder-tap")
    facts.push(
      worksheet.given(
        "device at the end of the tap",
        protection.endDeviceA,
        "joint/circuit/protection/endDeviceA",
        "A",
      ),
    );
  else if (joint.circuit?.loadA !== undefined)
    facts.push(worksheet.given("load for sizing", joint.circuit.loadA, "joint/circuit/loadA", "A"));
  return facts;
}

function exactCelsius({ value }: Temperature): Exact {
  return divide(multiply(subtract(exactOf(value), exactOf(32)), exactOf(5)), exactOf(9));
}

const PLACES: readonly InsulationPlace[] = ["dry", "damp", "wet"];
const PART_TEXT: Readonly<Record<RatingSource["part"], string>> = {
  connector: "the connector",
  marking: "the connector by its marking",
  terminal: "the equipment's terminal",
  ends: "the terminals at the conductor's ends",
  insulation: "the insulation",
};
