/**
 * What limits the temperature at a joint: the connector, the terminal (for a splice or tap: the terminals at its ends)
 * and the insulation of the conductor, each with how its rating is known.
 *
 * NFPA 70 110.14(C) (2017, 2020, 2023), in our words: equipment that bears no temperature counts by (C)(1), a connector
 * that is installed apart counts with its own rating by (C)(2); Table 310.4(A) (310.104(A) in 2017) rates building wire by its place.
 */
import type { Citation } from "./citation.js";
import type { ConductorGroup } from "./conductor.js";
import { type InsulationPlace, insulationCell, insulationPlace } from "./conductor-ampacity.js";
import { conductorPath } from "./conductor-path.js";
import type { Construction } from "./connector.js";
import type { Edition } from "./edition.js";
import { divide, type Exact, exactOf, multiply, subtract } from "./exact.js";
import type { Step } from "./finding.js";
import type { Circuit, Joint } from "./joint.js";
import { celsius, type Temperature } from "./quantity.js";
import type { JointSubject } from "./rule.js";
import { type Cell, cellAt, isRefused } from "./table.js";
import { unmarkedTerminal } from "./unmarked-terminal.js";
import type { Worksheet } from "./worksheet.js";

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
export interface RatingSource {
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

/** Which of the two possible limits is written out. */
export type Bound = "low" | "high";

/** The conductor whose ratings are written. */
interface RatedConductor {
  /** Index into joint.conductors. */
  readonly group: number;
  readonly conductor: ConductorGroup;
}

const PLACES: readonly InsulationPlace[] = ["dry", "damp", "wet"];
/** Each part in words. */
export const PART_TEXT: Readonly<Record<RatingSource["part"], string>> = {
  connector: "the connector",
  marking: "the connector by its marking",
  terminal: "the equipment's terminal",
  ends: "the terminals at the conductor's ends",
  insulation: "the insulation",
};

/** Adds what the connector itself limits; a weld adds nothing, and a part of its equipment may have no rating of its own. */
export function connectorSources({ connector, origin }: JointSubject, edition: Edition, sources: RatingSource[]): void {
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

/** The terminal that the conductor meets, or those at its ends. */
export function terminalSource(joint: Joint, conductor: ConductorGroup, edition: Edition): RatingSource {
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

/** The insulation of the conductor in the place of the joint. */
export function insulationSource(
  joint: Joint,
  conductor: ConductorGroup,
  group: number,
  edition: Edition,
): RatingSource {
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

/** Writes one rating; one that is not known is written as the lowest or the highest it can be. */
export function writeSource(
  worksheet: Worksheet,
  { joint, connector, origin }: JointSubject,
  rated: RatedConductor,
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
    return worksheet.read(label, cell, insulationFacts(worksheet, joint, rated, source));
  }
  if (source.basis === "unfit") {
    const facts = insulationFacts(worksheet, joint, rated, source);
    return worksheet.conclude(label, 0, facts, source.because, source.cite, "Cel");
  }
  if (source.basis === "assumed") {
    const mark = worksheet.given(`temperature mark of ${PART_TEXT[source.part]}`, "unmarked", source.path);
    return worksheet.assume(label, source.lowC, source.because, source.cite, "Cel", [
      mark,
      ...unmarkedFacts(worksheet, joint, rated, source),
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
  rated: RatedConductor,
  source: RatingSource,
): readonly Step[] {
  const type = worksheet.given("insulation", rated.conductor.insulation, conductorPath(rated.group, "insulation"));
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
  rated: RatedConductor,
  source: RatingSource,
): readonly Step[] {
  if (source.part !== "terminal" && source.part !== "ends") return [];
  const facts = [worksheet.given("conductor size", rated.conductor.size, conductorPath(rated.group, "size"))];
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
