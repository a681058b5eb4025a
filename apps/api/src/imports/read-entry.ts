import {
  CONDUCTOR_METALS,
  CONNECTOR_FAMILIES,
  CONSTRUCTIONS,
  type Construction,
  type Drive,
  ELECTRODES,
  JOINT_FUNCTIONS,
  type Length,
  type Mounting,
  type Opening,
  PLACE_LISTINGS,
  type Screw,
  type SizeRange,
  STRANDINGS,
  type Temperature,
  type Torque,
  type Unmarked,
} from "@landfast/rules";
import type { CatalogueEntry } from "../schemas/catalogue-entry.js";
import type { Reading } from "./cell.js";
import type { Field } from "./column.js";
import { type QuantityKind, readQuantity } from "./read-quantity.js";
import { readSize } from "./read-size.js";
import {
  parsedJson,
  readDay,
  readDrive,
  readSuppliers,
  readTexts,
  readWholeNumber,
  readWord,
  readWords,
  readYesNo,
} from "./read-words.js";
import type { RowReader } from "./row-report.js";

/** Nothing is tightened in these, so a part of theirs without a word on its screw has none. */
const WITHOUT_SCREW: readonly Construction[] = ["compression", "spring", "weld"];

/** Names of openings that the file does not name; a name decides nothing. */
const FIRST_OPENING = "opening";
const SECOND_OPENING = "second opening";
const THE_SCREW = "screw";

const SECOND = {
  id: "secondOpening",
  count: "secondOpeningCount",
  duty: "secondOpeningDuty",
  from: "secondFrom",
  to: "secondTo",
  strandings: "secondStrandings",
  conductorsMax: "secondConductorsMax",
  stripLength: "secondStripLength",
} as const satisfies Record<string, Field>;
const FIRST = {
  id: "opening",
  count: "openingCount",
  duty: "openingDuty",
  from: "from",
  to: "to",
  strandings: "strandings",
  conductorsMax: "conductorsMax",
  stripLength: "stripLength",
} as const satisfies Record<keyof typeof SECOND, Field>;
const PLAIN_OPENING_FIELDS: readonly Field[] = [
  ...Object.values(FIRST),
  ...Object.values(SECOND),
  "screw",
  "drive",
  "torque",
];

/**
 * Reads one row as a connector. An empty cell means: not known; "unmarked": the part was looked at and bears no such
 * mark. Nothing is filled in.
 * @param decimalComma whether the mapping says that a comma marks decimals.
 * @returns the connector, or null where something is wrong: the reader then holds what.
 */
export function readEntry(row: RowReader, decimalComma: boolean): CatalogueEntry | null {
  const partNumber = row.needed("partNumber", asText);
  row.partNumber = partNumber ?? null;
  const status = row.read("status", (cell) => readWord(cell, ["invented", "supplied"] as const));
  const description = descriptionOf(row);
  const family = row.needed("family", (cell) => readWord(cell, CONNECTOR_FAMILIES));
  const construction = row.needed("construction", (cell) => readWord(cell, CONSTRUCTIONS));
  const functions = row.needed("functions", (cell) => readWords(cell, JOINT_FUNCTIONS));
  const packQuantity = row.needed("packQuantity", readWholeNumber);
  const insulated = row.needed("insulated", readYesNo);
  const openingsApart = row.needed("openingsApart", readYesNo);
  const reusable = row.needed("reusable", readYesNo);
  const mounting = mountingOf(row, decimalComma);
  const held = inFull(row) ?? inPlainColumns(row, construction, decimalComma);
  const grounding = groundingOf(row);
  const pin = pinOf(row);
  const tooling = toolingOf(row);
  const optional = {
    suppliers: row.read("suppliers", readSuppliers),
    validFrom: row.read("validFrom", readDay),
    validTo: row.read("validTo", readDay),
    supersededBy: row.read("supersededBy", asText),
    metalMarking: row.read("metalMarking", asText),
    temperature: row.read("temperature", (cell) =>
      orUnmarked(cell, () => quantity<Temperature>(row, "temperature", "temperature", cell, decimalComma)),
    ),
    voltageV: row.read("voltageV", (cell) => orUnmarked(cell, () => voltsOf(row, cell, decimalComma))),
    coverPart: row.read("coverPart", asText),
    places: row.read("places", (cell) => orUnmarked(cell, () => readWords(cell, PLACE_LISTINGS))),
    lineSide: row.read("lineSide", (cell) => readWord(cell, ["marked", "unmarked"] as const)),
    bodyMetal: freeText(row, "bodyMetal"),
    plating: freeText(row, "plating"),
    withstands: row.read("withstands", readTexts),
    compound: row.read("compound", (cell) => readWord(cell, ["required", "pre-filled", "not-needed"] as const)),
    grounding,
    pin,
    tooling,
  };
  const listings = row.read("listings", readTexts) ?? [];
  if (
    row.bad ||
    partNumber === undefined ||
    description === undefined ||
    family === undefined ||
    construction === undefined ||
    functions === undefined ||
    packQuantity === undefined ||
    insulated === undefined ||
    openingsApart === undefined ||
    reusable === undefined ||
    mounting === undefined ||
    held === undefined
  )
    return null;
  return {
    partNumber,
    // Whoever brings a file supplies what is in it; only a file that says so holds invented parts.
    status: status ?? "supplied",
    description,
    family,
    construction,
    functions,
    insulated,
    openingsApart,
    listings: listings.map((standard) => ({ standard })),
    screws: held.screws,
    openings: held.openings,
    mounting,
    reusable,
    packQuantity,
    ...given(optional),
  };
}

/** The fields that have a value. */
function given<T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>;
  };
}

function asText(written: string): Reading<string> {
  return { value: written };
}

/** Text for people, kept as it is, blanks and all. */
function freeText(row: RowReader, field: Field): string | undefined {
  const text = row.text(field);
  return text === null || text.trim() === "" ? undefined : text;
}

function descriptionOf(row: RowReader): string | undefined {
  if (row.isEmpty("description")) {
    row.missing("description");
    return undefined;
  }
  const text = freeText(row, "description");
  if (text === undefined || !/[\r\n]/.test(text)) return text;
  const oneLine = text.trim().replace(/\s*[\r\n]+\s*/g, " ");
  row.recognise("description", text, oneLine, "a line break in the text is read as a blank");
  return oneLine;
}

function orUnmarked<T>(written: string, read: () => Reading<T>): Reading<T | Unmarked> {
  return written === "unmarked" ? { value: "unmarked" } : read();
}

function quantity<T extends Length | Temperature | Torque>(
  row: RowReader,
  field: Field,
  kind: Exclude<QuantityKind, "voltage">,
  cell: string,
  decimalComma: boolean,
): Reading<T> {
  return readQuantity(kind, cell, row.unitOf(field), decimalComma) as Reading<T>;
}

function voltsOf(row: RowReader, cell: string, decimalComma: boolean): Reading<number> {
  const reading = readQuantity("voltage", cell, row.unitOf("voltageV"), decimalComma);
  return "problem" in reading ? reading : { ...reading, value: reading.value.value };
}

function mountingOf(row: RowReader, decimalComma: boolean): Mounting | undefined {
  const kind = row.needed("fixing", (cell) => readWord(cell, ["free", "integral", "pad", "frame"] as const));
  const belongs = (fields: readonly Field[], to: string): void => {
    for (const field of fields)
      if (kind !== undefined && kind !== to && !row.isEmpty(field))
        row.problem(field, `only a part fixed by ${to} has this, and the part is ${kind}`, "nothing here", "");
  };
  belongs(["holes", "bolt", "spacing"], "pad");
  belongs(["frames"], "frame");
  if (kind === "free" || kind === "integral") return { kind };
  if (kind === "frame") {
    const frames = row.needed("frames", readTexts);
    return frames === undefined ? undefined : { kind, frames };
  }
  if (kind === undefined) return undefined;
  const holes = row.needed("holes", readWholeNumber);
  const bolt = row.needed("bolt", asText);
  const spacing = row.read("spacing", (cell) => quantity<Length>(row, "spacing", "length", cell, decimalComma));
  if (holes === undefined || bolt === undefined) return undefined;
  return { kind, pattern: { holes, bolt, ...given({ spacing }) } };
}

interface Held {
  readonly screws: readonly Screw[];
  readonly openings: readonly Opening[];
}

/** Openings and screws as JSON, where the plain columns cannot say them; undefined where the plain columns are used. */
function inFull(row: RowReader): Held | undefined {
  const fields = ["openingsInFull", "screwsInFull"] as const;
  if (fields.every((field) => row.isEmpty(field))) return undefined;
  for (const field of PLAIN_OPENING_FIELDS)
    if (!row.isEmpty(field))
      row.problem(field, "said here and in full as well; which one is meant cannot be known", "one of the two", "");
  const [openings, screws] = fields.map((field) => row.needed(field, readList));
  return { openings: (openings ?? []) as Opening[], screws: (screws ?? []) as Screw[] };
}

function readList(written: string): Reading<readonly unknown[]> {
  const value = parsedJson(written);
  return Array.isArray(value)
    ? { value: value as unknown[] }
    : { problem: "the cell is not a JSON list", accepted: "a JSON list as the API has it, as an exported file shows" };
}

function inPlainColumns(
  row: RowReader,
  construction: Construction | undefined,
  decimalComma: boolean,
): Held | undefined {
  const screw = screwOf(row, construction, decimalComma);
  const first = openingOf(row, FIRST, FIRST_OPENING, screw, decimalComma);
  const hasSecond = Object.values(SECOND).some((field) => !row.isEmpty(field));
  const second = hasSecond ? openingOf(row, SECOND, SECOND_OPENING, screw, decimalComma) : undefined;
  if (screw === undefined || first === undefined || (hasSecond && second === undefined)) return undefined;
  return { screws: screw === null ? [] : [screw], openings: second === undefined ? [first] : [first, second] };
}

/** The one screw that tightens every opening; null where there is none, undefined where it cannot be read. */
function screwOf(
  row: RowReader,
  construction: Construction | undefined,
  decimalComma: boolean,
): Screw | null | undefined {
  const drive = row.read<Drive | null>("drive", readDrive);
  const torque = row.read("torque", (cell) =>
    orUnmarked(cell, () => quantity<Torque>(row, "torque", "torque", cell, decimalComma)),
  );
  const id = row.read("screw", asText);
  if (drive === undefined && !row.isEmpty("drive")) return undefined;
  const said = id !== undefined || torque !== undefined;
  if (drive === undefined && !said && construction !== undefined && WITHOUT_SCREW.includes(construction)) return null;
  if (drive === undefined) {
    row.problem(
      "drive",
      "how the part is tightened is not said, and nothing is assumed",
      'how its screw is driven, or "no screw"',
    );
    return undefined;
  }
  if (drive === null) {
    if (said) row.problem("drive", "the part is said to have no screw, and yet a screw is described", "one of the two");
    return null;
  }
  return { id: id ?? THE_SCREW, drive, ...given({ torque }) };
}

function openingOf(
  row: RowReader,
  fields: Readonly<Record<keyof typeof SECOND, Field>>,
  name: string,
  screw: Screw | null | undefined,
  decimalComma: boolean,
): Opening | undefined {
  const id = row.read(fields.id, asText) ?? name;
  const count = row.needed(fields.count, readWholeNumber);
  const duty = row.read(fields.duty, (cell) => readWord(cell, ["run", "tap"] as const));
  const from = row.needed(fields.from, (cell) => readSize(cell, row.unitOf(fields.from)));
  const to = row.needed(fields.to, (cell) => readSize(cell, row.unitOf(fields.to)));
  const strandings = row.needed(fields.strandings, (cell) => orUnmarked(cell, () => readWords(cell, STRANDINGS)));
  const conductorsMax = row.read(fields.conductorsMax, (cell) => orUnmarked(cell, () => readWholeNumber(cell)));
  const stripLength = row.read(fields.stripLength, (cell) =>
    quantity<Length>(row, fields.stripLength, "length", cell, decimalComma),
  );
  if (count === undefined || from === undefined || to === undefined || strandings === undefined) return undefined;
  const ranges: readonly SizeRange[] = [{ from, to, strandings }];
  return {
    id,
    count,
    ...given({ duty }),
    ranges,
    ...given({ conductorsMax, screw: screw?.id, stripLength }),
  };
}

function groundingOf(row: RowReader): CatalogueEntry["grounding"] {
  const listed = row.read("groundingListed", readYesNo);
  const electrodes = row.read("electrodes", (cell) => readWords(cell, ELECTRODES));
  const conductorsPerClamp = row.read("conductorsPerClamp", (cell) => orUnmarked(cell, () => readWholeNumber(cell)));
  if (listed === undefined && electrodes === undefined && conductorsPerClamp === undefined) return undefined;
  if (listed === undefined && row.isEmpty("groundingListed")) row.missing("groundingListed");
  if (electrodes === undefined && row.isEmpty("electrodes")) row.missing("electrodes");
  if (listed === undefined || electrodes === undefined) return undefined;
  return { listed, electrodes, ...given({ conductorsPerClamp }) };
}

function pinOf(row: RowReader): CatalogueEntry["pin"] {
  if (row.isEmpty("pinSize") && row.isEmpty("pinMetal")) return undefined;
  const size = row.needed("pinSize", (cell) => readSize(cell, row.unitOf("pinSize")));
  const metal = row.needed("pinMetal", (cell) => readWord(cell, CONDUCTOR_METALS));
  return size === undefined || metal === undefined ? undefined : { size, metal };
}

function toolingOf(row: RowReader): CatalogueEntry["tooling"] {
  const tool = freeText(row, "tool");
  const die = freeText(row, "die");
  const crimps = row.read("crimps", readWholeNumber);
  if (tool === undefined && die === undefined && crimps === undefined) return undefined;
  if (tool === undefined) {
    row.missing("tool");
    return undefined;
  }
  return { tool, ...given({ die, crimps }) };
}
