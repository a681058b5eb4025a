import type { ConductorGroup, Stranding } from "@landfast/rules";
import { ask, type Case, type Objection } from "../case.js";
import { cell, cmilOf, type Row, tableRows } from "../read-table.js";

/** ASTM B172, B174: bunched classes go by the gauge of their wires, here in the form of ASTM B258. */
const BUNCHED: readonly (readonly [form: string, gauge: number])[] = [
  ["class-I", 24],
  ["class-J", 28],
  ["class-K", 30],
  ["class-L", 32],
  ["class-M", 34],
];
const wireCmil = (gauge: number): number => (5 * 92 ** ((36 - gauge) / 39)) ** 2;

const BUILDING_WIRE = tableRows("nfpa70", "2023", "stranding");
const FINE = tableRows("astm-strands", "undated", "fine-strands");
const COUNTED: readonly (readonly [table: readonly Row[], column: string, form: string])[] = [
  [BUILDING_WIRE, "copperC", "class-C"],
  [FINE, "classD", "class-D"],
  [FINE, "classG", "class-G"],
  [FINE, "classH", "class-H"],
];

function printed(table: readonly Row[], column: string, cmil: number): string {
  const row = table.find((one) => (cmilOrLess(one, "from") ?? 0) <= cmil && cmil <= (cmilOrLess(one, "to") ?? 0));
  return row === undefined ? "" : cell(row, column);
}

function cmilOrLess(row: Row, end: string): number | null {
  const size = cell(row, end);
  // Sizes from 20 AWG down are in no table of areas; nothing here is as small.
  return /^(?:2[0-9]|30) AWG$/.test(size) ? 0 : cmilOf(size);
}

/** Table 10 of chapter 9 and the ASTM counts: what a conductor of so many strands may be. */
export function formsOf({ size, metal, strands }: ConductorGroup): readonly string[] {
  if (strands === undefined) throw new Error("no strands were counted");
  const cmil = cmilOf(size);
  if (cmil === null) return strands === 1 ? ["iec-class-1", "solid"] : ["iec-class-2", "iec-class-5", "iec-class-6"];
  if (strands === 1) return ["solid"];
  const forms: string[] = [];
  const count = String(strands);
  if (printed(BUILDING_WIRE, metal === "copper" ? "copperB" : "aluminumB", cmil) === count)
    forms.push("class-B", "compressed", "compact");
  if (metal !== "copper") return forms;
  for (const [table, column, form] of COUNTED) if (printed(table, column, cmil) === count) forms.push(form);
  for (const [form, gauge] of BUNCHED) if (Math.abs(cmil / strands / wireCmil(gauge) - 1) <= 0.04) forms.push(form);
  return forms;
}

/** Forms to be tried for a conductor whose strands were counted: those of the count, and the stated one if it is none of them. */
export function formsToTry(group: ConductorGroup): readonly Stranding[] {
  const forms = formsOf(group) as readonly Stranding[];
  if (group.stranding === "unknown") return forms;
  return forms.includes(group.stranding) ? [group.stranding] : [...forms, group.stranding];
}

/** A count and a form that do not go together: one of the two is wrong. */
export function strandCount({ joint }: Case): Objection[] {
  return joint.conductors
    .filter((group) => group.strands !== undefined && !formsOf(group).includes(group.stranding))
    .map(({ size, strands }) => ask("110.14(A) count of strands", `what ${size} of ${strands} strands is`));
}
