/**
 * The least size of a bonding jumper on the supply side of the overcurrent devices.
 *
 * NFPA 70 250.102(C) (2017, 2020, 2023), in our words: by the area of the largest ungrounded supply conductor, all sets of
 * a phase together, from the table; beyond 1100 kcmil copper or 1750 kcmil aluminum at least 12.5 % of that area, taken of
 * conductors of the jumper's own metal that would carry as much. (C)(2): jumpers in each of several raceways go by the
 * conductors in that raceway.
 * Worked: 600 kcmil copper: 1/0 AWG. Four sets of 500 kcmil, 2000 kcmil: 0.125 x 2000 = 250 kcmil.
 */
import type { ConductorMetal } from "./conductor.js";
import type { Edition } from "./edition.js";
import type { Step } from "./finding.js";
import { groundingColumn } from "./grounding-area.js";
import { type Cell, cellInInterval, type Table, type TableRefusal } from "./table.js";
import type { NumberStep, Worksheet } from "./worksheet.js";

/** The word in the table where the share of the supply's area takes over. */
export const BY_SHARE = "12.5%";
const SHARE_PERCENT = 12.5;

/** The table for a supply of this metal. */
export function jumperTable(supplyMetal: ConductorMetal, { tables }: Edition): Table {
  return supplyMetal === "copper" ? tables.bondingJumperCopperSupply : tables.bondingJumperAluminumSupply;
}

/** The cell for the supply's area in kcmil and the jumper's metal: a size, or BY_SHARE; or the table's refusal. */
export function jumperCell(
  supplyMetal: ConductorMetal,
  areaKcmil: number,
  metal: ConductorMetal,
  edition: Edition,
): Cell | TableRefusal {
  return cellInInterval(jumperTable(supplyMetal, edition), areaKcmil, groundingColumn(metal));
}

/** 12.5 % of an area in kcmil. `read` is the cell that says so. */
export function writeShare(worksheet: Worksheet, area: Step, read: Step, { cite }: Table): NumberStep {
  const percent = worksheet.state("share of the supply's area", SHARE_PERCENT, cite, "%", [read]);
  const hundred = worksheet.state("the whole", 100, cite, "%");
  const product = worksheet.multiply("supply area x percent", [area, percent], "kcmil", cite);
  return worksheet.divide("area of the jumper", product, hundred, "kcmil", cite);
}
