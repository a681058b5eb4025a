import type { Citation } from "./citation.js";
import { parseSize, sizeOf } from "./conductor-size.js";
import type { Drive } from "./connector.js";
import type { Edition } from "./edition.js";
import { exactOf, multiply } from "./exact.js";
import type { Step } from "./finding.js";
import { inches, type Length } from "./quantity.js";
import { type Cell, cellAt, cellForSize, isRefused, type Table, type TableRefusal } from "./table.js";
import type { Worksheet } from "./worksheet.js";

/** A default torque in lbf-in as the annex prints it, or why it gives none. */
export type DefaultTorque =
  | { readonly lbfIn: number; readonly step: Step; readonly cite: Citation; readonly by: string }
  | { readonly refused: string; readonly cite: Citation };

type Slot = Extract<Drive, { kind: "slotted" }> | Extract<Drive, { kind: "slotted-hex" }>;

/** The way a head is driven; a slotted hexagon can be driven in two. */
export type DrivenBy = "socket" | "external-hex" | "split-bolt" | "slot";

/** A screw for which its maker gives no torque, and where its facts stand. */
export interface UnmarkedScrew {
  readonly drive: Drive;
  readonly drivePath: string;
  /** The largest conductor under it, by area. */
  readonly largest: string;
  readonly largestPath: string;
}

/** The way of a head that can be driven in one way only; a slotted hexagon counts as a slot. */
export function wayOf(drive: Drive): DrivenBy {
  switch (drive.kind) {
    case "socket":
      return "socket";
    case "slotted":
    case "slotted-hex":
      return "slot";
    case "split-bolt":
      return "split-bolt";
    default:
      return "external-hex";
  }
}

const NARROW_SLOT_WIDTH = { in: 0.047, mm: 1.2 } as const;
/** 1/4 in, which the annex also prints as 6.4 mm. */
const SHORT_SLOT_LENGTH = { in: 0.25, mm: 6.4 } as const;
/** Slot lengths of the rows of the table for small screws, in inches and as printed in millimetres. */
const SLOT_LENGTHS = [
  { row: "5/32", in: 5 / 32, mm: 4 },
  { row: "3/16", in: 3 / 16, mm: 4.8 },
  { row: "7/32", in: 7 / 32, mm: 5.5 },
  { row: "1/4", in: 1 / 4, mm: 6.4 },
  { row: "9/32", in: 9 / 32, mm: 7.1 },
] as const;
const LARGEST_UNDER_SMALL_SCREW = sizeOf("8 AWG");

/**
 * The default torque of NFPA 70 Informative Annex I (2017, 2020, 2023) for a screw whose maker gives none, in lbf-in.
 *
 * Our words. Recessed hexagon or square: by the width across its flats (Table I.3). Hexagon turned from outside: by the
 * largest conductor under it, apart for split bolts (Table I.1). Slot of a No. 10 screw or larger: by the conductor, in
 * the lower column where the slot is at most 0.047 in (1.2 mm) wide and at most 1/4 in (6.4 mm) long, else in the higher
 * (Table I.1). Slot of a smaller screw, conductors to 8 AWG: by the slot's length, a length between two rows taking the
 * shorter one, and by whether it is narrower than 0.047 in (Table I.2).
 * Worked: 3/0 AWG under an external hexagon: 250 lbf-in; a 5/16 in socket: 275 lbf-in whatever the conductor.
 * Silent: a size or a slot outside the tables has no default; none is made up.
 */
export function defaultTorque(
  worksheet: Worksheet,
  screw: UnmarkedScrew,
  drivenBy: DrivenBy,
  edition: Edition,
): DefaultTorque {
  const { tables } = edition;
  const { drive } = screw;
  if (drivenBy === "socket" && drive.kind === "socket") {
    const flats = worksheet.given("width across flats", drive.acrossFlats, `${screw.drivePath}/acrossFlats`, "in");
    return read(
      worksheet,
      tables.torqueSocket,
      cellAt(tables.torqueSocket, drive.acrossFlats, "torque"),
      [flats],
      `a ${drive.acrossFlats} in recessed drive`,
    );
  }
  if (drivenBy === "slot" && (drive.kind === "slotted" || drive.kind === "slotted-hex"))
    return drive.kind === "slotted" && drive.screwSize === "under-10"
      ? smallScrew(worksheet, screw, drive, tables.torqueSmallSlotted)
      : largeSlot(worksheet, screw, drive, tables.torqueByConductor);
  const column = drivenBy === "split-bolt" ? "splitBolt" : "externalHex";
  const head = drivenBy === "split-bolt" ? "a split bolt" : "an external hexagon";
  return byConductor(worksheet, screw, tables.torqueByConductor, column, [], head);
}

function largeSlot(worksheet: Worksheet, screw: UnmarkedScrew, drive: Slot, table: Table): DefaultTorque {
  if (!isMeasured(drive)) return { refused: "the slot's width and length are not measured", cite: table.cite };
  const width = lengthStep(worksheet, "width of the slot", drive.slotWidth, `${screw.drivePath}/slotWidth`);
  const length = lengthStep(worksheet, "length of the slot", drive.slotLength, `${screw.drivePath}/slotLength`);
  const widthLimit = worksheet.state(
    "widest slot of the lower column",
    NARROW_SLOT_WIDTH[width.unit],
    table.cite,
    width.unit,
  );
  const lengthLimit = worksheet.state(
    "longest slot of the lower column",
    SHORT_SLOT_LENGTH[length.unit],
    table.cite,
    length.unit,
  );
  const narrow = worksheet.compare("the slot is narrow", width.step, "<=", widthLimit, table.cite);
  const narrowStep = worksheet.last;
  const short = worksheet.compare("the slot is short", length.step, "<=", lengthLimit, table.cite);
  const column = narrow && short ? "slottedSmall" : "slottedLarge";
  const head = narrow && short ? "a narrow, short slot" : "a wide or long slot";
  return byConductor(worksheet, screw, table, column, [narrowStep, worksheet.last], head);
}

function smallScrew(worksheet: Worksheet, screw: UnmarkedScrew, drive: Slot, table: Table): DefaultTorque {
  if (!isMeasured(drive)) return { refused: "the slot's width and length are not measured", cite: table.cite };
  const size = worksheet.given("largest conductor under the screw", screw.largest, screw.largestPath);
  const parsed = parseSize(screw.largest);
  if (
    "problem" in parsed ||
    parsed.series !== "awg-kcmil" ||
    !(parsed.areaKcmil <= LARGEST_UNDER_SMALL_SCREW.areaKcmil)
  )
    return { refused: `${table.cite.locator} covers 8 AWG and smaller, not ${screw.largest}`, cite: table.cite };
  const covered = worksheet.conclude(
    "the table covers the conductor",
    true,
    [size],
    "it is 8 AWG or smaller",
    table.cite,
  );
  const length = lengthStep(worksheet, "length of the slot", drive.slotLength, `${screw.drivePath}/slotLength`);
  const row = worksheet.conclude(
    "row of the table",
    rowFor(worksheet, length, table.cite),
    [length.step],
    "a length between two rows takes the shorter one",
    table.cite,
  );
  const width = lengthStep(worksheet, "width of the slot", drive.slotWidth, `${screw.drivePath}/slotWidth`);
  const limit = worksheet.state(
    "width from which the wide column holds",
    NARROW_SLOT_WIDTH[width.unit],
    table.cite,
    width.unit,
  );
  const wide = worksheet.compare("the slot is wide", width.step, ">=", limit, table.cite);
  const cell = cellAt(table, String(row.value), wide ? "wide" : "narrow");
  return read(
    worksheet,
    table,
    cell,
    [covered, row, worksheet.last],
    `a screw under No. 10 with a ${wide ? "wide" : "narrow"} slot, row ${String(row.value)} in`,
  );
}

/** The row at or next below the length; over the last one there is a row of its own. */
function rowFor(worksheet: Worksheet, { step, unit }: LengthStep, cite: Citation): string {
  let row = "under 5/32";
  for (const known of SLOT_LENGTHS) {
    const reached = worksheet.state(`row ${known.row} in begins at`, known[unit], cite, unit);
    if (!worksheet.compare(`the slot reaches row ${known.row} in`, step, ">=", reached, cite)) return row;
    row = known.row;
    if (row === "9/32" && worksheet.compare("the slot is longer than the last row", step, ">", reached, cite))
      return "over 9/32";
  }
  return row;
}

function byConductor(
  worksheet: Worksheet,
  screw: UnmarkedScrew,
  table: Table,
  column: string,
  uses: readonly Step[],
  head: string,
): DefaultTorque {
  const size = worksheet.given("largest conductor under the screw", screw.largest, screw.largestPath);
  return read(
    worksheet,
    table,
    cellForSize(table, screw.largest, column),
    [size, ...uses],
    `${screw.largest} under ${head}`,
  );
}

function read(
  worksheet: Worksheet,
  table: Table,
  cell: Cell | TableRefusal,
  uses: readonly Step[],
  by: string,
): DefaultTorque {
  if (isRefused(cell)) return { refused: cell.detail, cite: table.cite };
  if (typeof cell.value !== "number") throw new TypeError(`${table.id} holds a torque that is not a number`);
  return { lbfIn: cell.value, step: worksheet.read("default torque", cell, uses), cite: cell.cite, by };
}

interface LengthStep {
  readonly step: Step;
  readonly unit: "in" | "mm";
}

/** The annex prints inches and millimetres side by side: a length is compared in the unit in which it was measured. */
function lengthStep(worksheet: Worksheet, label: string, length: Length, path: string): LengthStep {
  const given = worksheet.given(label, length.value, path, length.unit);
  if (length.unit === "in" || length.unit === "mm") return { step: given, unit: length.unit };
  const shown = String(length.value);
  if (length.unit === "ft")
    return {
      step: worksheet.exactly(`${label} in inches`, inches(length), "in", [given], `${label} x 12`, `${shown} x 12`),
      unit: "in",
    };
  const millimetres = multiply(exactOf(length.value), exactOf(1000));
  return {
    step: worksheet.exactly(
      `${label} in millimetres`,
      millimetres,
      "mm",
      [given],
      `${label} x 1000`,
      `${shown} x 1000`,
    ),
    unit: "mm",
  };
}

function isMeasured({ slotWidth, slotLength }: Slot): boolean {
  return isLength(slotWidth) && isLength(slotLength);
}

function isLength({ value }: Length): boolean {
  return value > 0 && Number.isFinite(value);
}
