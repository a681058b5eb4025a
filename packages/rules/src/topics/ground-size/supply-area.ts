import type { CalculationFinding } from "../../core/calculation.js";
import type { CalculationSheet } from "../../core/calculation-sheet.js";
import type { ConductorMetal } from "../../core/conductor.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import { awgOrKcmil, writeArea } from "../../core/grounding-area.js";

/** Ungrounded conductors of a service or of a transformer's secondary: the largest of one set, and the sets. */
export interface SupplyConductors {
  readonly size: string;
  readonly metal: ConductorMetal;
  readonly sets: number;
}

/** The area of all sets of one phase together, in kcmil, by which the grounding tables are entered. */
export function supplyArea(
  sheet: CalculationSheet,
  { size, metal, sets }: SupplyConductors,
  head: string,
  name: string,
  edition: Edition,
): Step | CalculationFinding {
  const parsed = awgOrKcmil(size);
  if (parsed === undefined)
    return sheet.refuse(
      "OUTSIDE_TABLE",
      `${head}/size must be a size in AWG or kcmil, not ${size}.`,
      edition.clauses.conductorAreas,
    );
  const sizeStep = sheet.given(`${name} conductor`, size, `${head}/size`);
  const metalStep = sheet.given(`metal of the ${name} conductor`, metal, `${head}/metal`);
  const one = writeArea(sheet, parsed, [sizeStep, metalStep], edition);
  const count = sheet.count(`sets of ${name} conductors`, sets, `${head}/sets`, "sets");
  return sheet.multiply(`${name} area of all sets`, [one, count], "kcmil");
}
