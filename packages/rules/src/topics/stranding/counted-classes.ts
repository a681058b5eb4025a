/** The classes that have so many strands at a size: what the calculation answers and the rule goes by. */
import { areaIfPrinted } from "../../core/conductor-area.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import { cellAt, cellForSize, isRefused, type Table, type TableRefusal } from "../../core/table.js";
import type { Worksheet } from "../../core/worksheet.js";

/** How the strands lie: in layers around one, in ropes made of such layers, or bunched, alone or in ropes. */
export const STRAND_LAYS = ["concentric", "rope-of-concentric", "bunched"] as const;
export type StrandLay = (typeof STRAND_LAYS)[number];

export interface CountedClass {
  /** "class-B": also a class that no listing names, as class J and class L. */
  readonly class: string;
  readonly lay: StrandLay;
  readonly step: Step;
}

/** Steps of the size (AWG or kcmil), of the metal and of the number of strands, which is more than one. */
export interface CountFacts {
  readonly size: Step;
  readonly metal: Step;
  readonly strands: Step;
}

/** Standard counts of bunched conductors bring the area of a strand within so much of that of the wire. */
const WIRE_FROM = 0.96;
const WIRE_TO = 1.04;

/** Every class whose count or whose wire it is; the refusal where the area of the size is needed and not printed. */
export function countedClasses(
  sheet: Worksheet,
  facts: CountFacts,
  edition: Edition,
): readonly CountedClass[] | TableRefusal {
  const { stranding, fineStrands } = edition.tables;
  const copper = facts.metal.value === "copper";
  const found: (CountedClass | undefined)[] = copper
    ? [
        counted(sheet, stranding, "copperB", "class-B", "concentric", facts),
        counted(sheet, stranding, "copperC", "class-C", "concentric", facts),
        counted(sheet, fineStrands, "classD", "class-D", "concentric", facts),
        counted(sheet, fineStrands, "classG", "class-G", "rope-of-concentric", facts),
        counted(sheet, fineStrands, "classH", "class-H", "rope-of-concentric", facts),
      ]
    : [counted(sheet, stranding, "aluminumB", "class-B", "concentric", facts)];
  const counts = found.filter((candidate) => candidate !== undefined);
  // Bunched conductors are copper.
  if (!copper) return counts;
  const bunched = bunchedClass(sheet, facts, edition);
  if (bunched === undefined) return counts;
  return "refusal" in bunched ? bunched : [...counts, bunched];
}

/** A class whose count is printed for the size, where it is this one. */
function counted(
  sheet: Worksheet,
  table: Table,
  column: string,
  name: string,
  lay: StrandLay,
  { size, metal, strands }: CountFacts,
): CountedClass | undefined {
  const cell = cellForSize(table, String(size.value), column);
  if (isRefused(cell)) return undefined;
  const printed = sheet.read(`strands of ${name}`, cell, [size, metal]);
  return sheet.compare(`the count is that of ${name}`, strands, "=", printed, cell.cite)
    ? { class: name, lay, step: sheet.last }
    : undefined;
}

/** The bunched class whose wire has the area of one strand. */
function bunchedClass(
  sheet: Worksheet,
  { size, strands }: CountFacts,
  edition: Edition,
): CountedClass | TableRefusal | undefined {
  const table = edition.tables.bunchedStrands;
  // The areas of fixture wire below 18 AWG are not printed, so no wire of a bunch can be told there.
  const text = String(size.value);
  if (text.endsWith("AWG") && isRefused(cellAt(edition.tables.conductorPropertiesStranded, text, "areaCmil")))
    return undefined;
  const area = areaIfPrinted(sheet, size, edition);
  if ("refusal" in area) return area;
  const wire = sheet.divide("area of one strand", area, strands, "cmil", table.cite);
  const least = sheet.state("least area against the wire of a class", WIRE_FROM, table.cite);
  const most = sheet.state("largest area against the wire of a class", WIRE_TO, table.cite);
  for (const { label: name } of table.rows) {
    const cell = cellAt(table, name, "wireAreaCmil");
    if (isRefused(cell)) continue;
    const printed = sheet.read(`wire of ${name}`, cell, []);
    const from = sheet.multiply(`least strand of ${name}`, [printed, least], "cmil", table.cite);
    if (!sheet.compare(`a strand is no thinner than ${name} has it`, wire, ">=", from, table.cite)) continue;
    const enough = sheet.last;
    const to = sheet.multiply(`largest strand of ${name}`, [printed, most], "cmil", table.cite);
    if (!sheet.compare(`a strand is no thicker than ${name} has it`, wire, "<=", to, table.cite)) continue;
    const step = sheet.conclude(
      `a strand is a wire of ${name}`,
      true,
      [enough, sheet.last],
      "its area is that of the wire, as near as standard counts come to it",
      table.cite,
    );
    return { class: name, lay: "bunched", step };
  }
  return undefined;
}
