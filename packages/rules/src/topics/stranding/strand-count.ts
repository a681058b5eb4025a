import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { CalculationSheet, isClosed } from "../../core/calculation-sheet.js";
import type { ConductorMetal } from "../../core/conductor.js";
import { conductorAreaCmil } from "../../core/conductor-area.js";
import { sizeOf } from "../../core/conductor-size.js";
import { listWords } from "../../core/conductor-words.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import { cellAt, cellForSize, isRefused, type Table } from "../../core/table.js";

const NAME = "strand-class";

/** How the strands lie: in layers around one, in ropes made of such layers, or bunched, alone or in ropes. */
export const STRAND_LAYS = ["concentric", "rope-of-concentric", "bunched"] as const;
export type StrandLay = (typeof STRAND_LAYS)[number];

export interface StrandClassQuestion {
  readonly size: string;
  readonly metal: ConductorMetal;
  readonly strands: number;
  /** Needed only where the count is that of several classes. */
  readonly lay?: StrandLay;
}

interface Candidate {
  readonly class: string;
  readonly lay: StrandLay;
  readonly step: Step;
}

/** Standard counts of bunched conductors bring the area of a strand within so much of that of the wire. */
const WIRE_FROM = 0.96;
const WIRE_TO = 1.04;

/**
 * Which strand class has so many strands at this size?
 *
 * NFPA 70 Chapter 9 Table 10 (2017, 2020, 2023) for classes B and C; ASTM B8 for D, B173 for G and H, B172 and B174 for the
 * bunched classes, which are named by the size of their wires: the area of the conductor divided by the number of strands is
 * that of a wire of 24 AWG (I), 28 (J), 30 (K), 32 (L) or 34 AWG (M). One strand is solid. 110.14: a connector for strands
 * finer than class C is identified for the class.
 * Worked: 2/0 AWG copper of 19 strands: class B; of 1330: 133100 / 1330 = 100.1 cmil, a wire of 30 AWG: class K. 3 AWG of 133
 * is class H or class I: the lay decides.
 * Silent: compact and compressed conductors have the count of class B, so a listing that names them apart needs their marking;
 * metric conductors, whose classes of IEC 60228 lay down least counts only.
 */
export const strandCount: Calculation<StrandClassQuestion> = {
  name: NAME,
  title: "Strand class by the number of strands",
  clauses: ["finelyStranded", "conductorAreas"],
  needs: ["question/size", "question/metal", "question/strands", "question/lay"],
  cannotSee: "strands that were counted wrong, and wire that follows no such standard",
  answer(question, basis, edition) {
    const sheet = new CalculationSheet(NAME, basis);
    const { finelyStranded } = edition.clauses;
    const parsed = sizeOf(question.size);
    if (parsed.series !== "awg-kcmil")
      return sheet.refuse(
        "OUTSIDE_TABLE",
        `The classes are laid down for AWG and kcmil; ${parsed.text} is metric, and its classes give least counts only.`,
        finelyStranded,
      );
    const size = sheet.given("size", parsed.text, "question/size");
    const metal = sheet.given("metal", question.metal, "question/metal");
    const strands = sheet.count("number of strands", question.strands, "question/strands", "strands");
    if (question.strands === 1) return finish(sheet, { class: "solid", step: strands }, question, edition);
    const candidates = candidatesOf(sheet, question, { size, metal, strands }, edition);
    if (isClosed(candidates)) return candidates;
    return choose(sheet, candidates, question, edition);
  },
};

interface Facts {
  readonly size: Step;
  readonly metal: Step;
  readonly strands: Step;
}

function candidatesOf(
  sheet: CalculationSheet,
  question: StrandClassQuestion,
  facts: Facts,
  edition: Edition,
): readonly Candidate[] | CalculationFinding {
  const copper = question.metal === "copper";
  const { stranding, fineStrands } = edition.tables;
  const found: (Candidate | undefined)[] = copper
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
  if (bunched !== undefined && isClosed(bunched)) return bunched;
  return bunched === undefined ? counts : [...counts, bunched];
}

/** A class whose count is printed for the size, where it is this one. */
function counted(
  sheet: CalculationSheet,
  table: Table,
  column: string,
  name: string,
  lay: StrandLay,
  { size, metal, strands }: Facts,
): Candidate | undefined {
  const cell = cellForSize(table, String(size.value), column);
  if (isRefused(cell)) return undefined;
  const printed = sheet.read(`strands of ${name}`, cell, [size, metal]);
  return sheet.compare(`the count is that of ${name}`, strands, "=", printed, cell.cite)
    ? { class: name, lay, step: sheet.last }
    : undefined;
}

/** The bunched class whose wire has the area of one strand. */
function bunchedClass(
  sheet: CalculationSheet,
  { size, strands }: Facts,
  edition: Edition,
): Candidate | CalculationFinding | undefined {
  const table = edition.tables.bunchedStrands;
  // The areas of fixture wire below 18 AWG are not printed, so no wire of a bunch can be told there.
  const text = String(size.value);
  if (text.endsWith("AWG") && isRefused(cellAt(edition.tables.conductorPropertiesStranded, text, "areaCmil")))
    return undefined;
  const area = conductorAreaCmil(sheet, size, edition);
  if (isClosed(area)) return area;
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

/** One class, or the lay that tells the classes apart. */
function choose(
  sheet: CalculationSheet,
  candidates: readonly Candidate[],
  question: StrandClassQuestion,
  edition: Edition,
): CalculationFinding {
  const cite = edition.clauses.finelyStranded;
  const [first, second] = candidates;
  if (first === undefined)
    return sheet.refuse(
      "NO_SOLUTION",
      `No class that is held has ${String(question.strands)} strands at ${question.size} ${question.metal}: read the class off the wire or its data sheet.`,
      cite,
    );
  if (second === undefined) return finish(sheet, first, question, edition);
  const names = candidates.map((candidate) => `${candidate.class} (${candidate.lay})`);
  if (question.lay === undefined)
    return sheet.ask(
      "question/lay",
      `${String(question.strands)} strands at ${question.size} are ${names.join(" or ")}; how they lie is not given.`,
      cite,
    );
  const lay = sheet.given("how the strands lie", question.lay, "question/lay");
  const chosen = candidates.filter((candidate) => candidate.lay === question.lay);
  const [only, another] = chosen;
  if (only === undefined || another !== undefined)
    return sheet.refuse(
      "NO_SOLUTION",
      `${String(question.strands)} strands at ${question.size} are ${listWords(names)}, and none or several of them lie ${question.lay}.`,
      cite,
    );
  return finish(
    sheet,
    {
      class: only.class,
      step: sheet.conclude("class of that lay", only.class, [only.step, lay], "the lay tells the classes apart"),
    },
    question,
    edition,
  );
}

function finish(
  sheet: CalculationSheet,
  candidate: Omit<Candidate, "lay">,
  { size, strands }: StrandClassQuestion,
  edition: Edition,
): CalculationFinding {
  const { finelyStranded } = edition.clauses;
  const solid = candidate.class === "solid";
  const base = candidate.class === "class-B" || candidate.class === "class-C";
  const needs = sheet.conclude(
    "a connector identified for the class is needed",
    !solid && !base,
    [candidate.step],
    solid || base ? "no strands are finer than those of class C" : "the strands are finer than those of class C",
    finelyStranded,
  );
  const result = sheet.conclude(
    "strand class",
    candidate.class,
    [candidate.step],
    solid ? "one strand is solid" : "the count is that of this class",
    finelyStranded,
  );
  return sheet.finish({
    sentence: solid
      ? `${size} of one strand is solid.`
      : `${size} of ${String(strands)} strands is ${candidate.class}${base ? "" : ": the connector must be identified for it"}.`,
    cite: finelyStranded,
    results: [
      { name: "strand class", step: result },
      { name: "a connector identified for the class is needed", step: needs },
    ],
    advice:
      candidate.class === "class-B"
        ? [
            "Compressed and compact conductors have the count of class B; a listing names them apart, so read the marking.",
          ]
        : [],
  });
}
