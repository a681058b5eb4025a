/**
 * The largest device for small conductors, whatever their ampacity.
 *
 * NFPA 70 240.4(D) (2017, 2020, 2023): 14, 12 and 10 AWG at most 15, 20 and 30 A in copper, 12 and 10 AWG at most 15 and
 * 25 A in aluminum; 18 and 16 AWG only for uses listed one by one.
 */
import type { ConductorMetal } from "./conductor.js";
import type { Edition } from "./edition.js";
import { type Cell, cellAt, type TableRefusal } from "./table.js";

/** Sizes whose device is limited beside their ampacity. */
export const CAPPED_SIZES: readonly string[] = ["14 AWG", "12 AWG", "10 AWG"];
/** Smaller sizes, only for uses that the code lists one by one. */
export const NEEDS_LISTED_USE: readonly string[] = ["18 AWG", "16 AWG"];

const COLUMN: Readonly<Record<ConductorMetal, string>> = {
  copper: "copper",
  aluminum: "aluminum",
  "copper-clad-aluminum": "copperClad",
};

/** The largest device in amperes, or the table's refusal. */
export function smallConductorCap(edition: Edition, metal: ConductorMetal, size: string): Cell | TableRefusal {
  return cellAt(edition.tables.smallConductor, size, COLUMN[metal]);
}
