import type { CalculationFinding } from "./calculation.js";
import type { CalculationSheet } from "./calculation-sheet.js";
import { sizeOf } from "./conductor-size.js";
import type { Edition } from "./edition.js";
import { exactOf } from "./exact.js";
import type { Step } from "./finding.js";
import { cellAt, type TableRefusal } from "./table.js";
import type { Worksheet } from "./worksheet.js";

/**
 * Area of an AWG or kcmil size in circular mils: the cell of Chapter 9 Table 8; where a size is named by its area, the
 * table prints none and the name says it.
 * Worked: 1/0 AWG: 105600; 250 kcmil: 250 x 1000.
 */
export function conductorAreaCmil(sheet: CalculationSheet, size: Step, edition: Edition): Step | CalculationFinding {
  const area = areaIfPrinted(sheet, size, edition);
  return "refusal" in area ? sheet.outsideTable(area, edition.tables.conductorPropertiesStranded.cite) : area;
}

/** The same on any worksheet; where the table has no such size, its refusal. */
export function areaIfPrinted(sheet: Worksheet, size: Step, { tables }: Edition): Step | TableRefusal {
  const table = tables.conductorPropertiesStranded;
  const parsed = sizeOf(String(size.value));
  if (parsed.system !== "kcmil" || table.rows.every((row) => row.key[0] !== parsed.text))
    return sheet.tryRead("area of the size", cellAt(table, parsed.text, "areaCmil"), [size]);
  return sheet.exactly(
    "area of the size",
    exactOf(parsed.areaKcmil * 1000),
    "cmil",
    [size],
    "figure of the size in kcmil x 1000",
    `${String(parsed.areaKcmil)} x 1000`,
    table.cite,
  );
}
