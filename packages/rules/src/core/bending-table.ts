/**
 * Where the space to bend a conductor at its terminal is read.
 *
 * NFPA 70 312.6(B) (2017, 2020, 2023), in our words: Table 312.6(B)(2) where the conductor leaves through the wall
 * opposite its terminal, Table 312.6(A) where it leaves through another; compact aluminum has columns of its own, and a
 * removable or lay-in terminal for one wire takes a reduction off the space to the opposite wall.
 */
import type { Citation } from "./citation.js";
import type { ConductorGroup } from "./conductor.js";
import type { Edition } from "./edition.js";
import type { BendingSpace } from "./joint.js";
import { type Cell, cellForSize, isRefused, type Table, type TableRefusal } from "./table.js";

export type BendingEntry = BendingSpace["entry"];

/** The word in the tables where no space is laid down: the smallest conductors. */
export const BENDING_NOT_SPECIFIED = "not specified";
/** The last column of the table for the opposite wall counts for all larger numbers of wires too. */
const OPPOSITE_COLUMNS = 4;

type BentConductor = Pick<ConductorGroup, "metal" | "stranding">;

/** Aluminum that is compact is taken to be of the 8000 series, as building wire is. */
export function bendingTable({ metal, stranding }: BentConductor, entry: BendingEntry, { tables }: Edition): Table {
  const compact = metal === "aluminum" && stranding === "compact";
  if (entry === "opposite") return compact ? tables.bendingOppositeCompact : tables.bendingOpposite;
  return compact ? tables.bendingSideCompact : tables.bendingSide;
}

/** The space in inches for so many wires in one terminal, or the table's refusal. */
export function bendingCell(table: Table, size: string, entry: BendingEntry, wires: number): Cell | TableRefusal {
  return cellForSize(table, size, `wires${String(columnOf(entry, wires))}`);
}

/** What a removable or lay-in terminal for one wire takes off; undefined where nothing is printed. */
export function bendingReduction(table: Table, size: string, entry: BendingEntry, wires: number): Cell | undefined {
  if (entry === "side") return undefined;
  const cell = cellForSize(table, size, `reduction${String(columnOf(entry, wires))}`);
  return isRefused(cell) || typeof cell.value !== "number" ? undefined : cell;
}

export function bendingClause(entry: BendingEntry, { clauses }: Edition): Citation {
  return entry === "opposite" ? clauses.bendingOpposite : clauses.bendingSide;
}

function columnOf(entry: BendingEntry, wires: number): number {
  return entry === "opposite" ? Math.min(wires, OPPOSITE_COLUMNS) : wires;
}
