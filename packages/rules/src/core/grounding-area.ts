/** Areas and columns of the grounding tables, which are printed in AWG and kcmil. */
import type { ConductorMetal } from "./conductor.js";
import { type ConductorSize, parseSize } from "./conductor-size.js";
import type { Edition } from "./edition.js";
import type { Step } from "./finding.js";
import type { Worksheet } from "./worksheet.js";

/** A size of the AWG and kcmil series, which the grounding tables are printed in; undefined for any other. */
export function awgOrKcmil(text: string): ConductorSize | undefined {
  const size = parseSize(text);
  return "problem" in size || size.series !== "awg-kcmil" ? undefined : size;
}

/** Writes the area of a size in kcmil, as Chapter 9 Table 8 prints it. */
export function writeArea(worksheet: Worksheet, size: ConductorSize, uses: readonly Step[], edition: Edition): Step {
  return worksheet.state(`area of ${size.text}`, size.areaKcmil, edition.clauses.conductorAreas, "kcmil", uses);
}

/** The column of the grounding tables: copper-clad aluminum stands with aluminum. */
export function groundingColumn(metal: ConductorMetal): "copper" | "aluminum" {
  return metal === "copper" ? "copper" : "aluminum";
}

/** The metal as the trade abbreviates it beside a size. */
export function metalMark(metal: ConductorMetal): "CU" | "AL" | "CCA" {
  return metal === "copper" ? "CU" : metal === "aluminum" ? "AL" : "CCA";
}

/** The smallest trade size with at least this area: the sizes of the ampacity table; undefined above the largest. */
export function tradeSizeFor(edition: Edition, areaKcmil: number): string | undefined {
  for (const row of edition.tables.ampacityRaceway.rows) {
    const size = awgOrKcmil(row.key[0] ?? "");
    if (size !== undefined && size.areaKcmil >= areaKcmil) return size.text;
  }
  return undefined;
}

/** "69.57 kcmil": at most two decimals, for sentences; steps keep the exact value. */
export function areaText(areaKcmil: number): string {
  return `${String(Math.round(areaKcmil * 100) / 100)} kcmil`;
}
