import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { CalculationSheet } from "../../core/calculation-sheet.js";
import type { ConductorMetal } from "../../core/conductor.js";
import { sizeOf } from "../../core/conductor-size.js";
import { listWords } from "../../core/conductor-words.js";
import type { Edition } from "../../core/edition.js";
import { type CountedClass, countedClasses, type StrandLay } from "./counted-classes.js";

const NAME = "strand-class";

export { STRAND_LAYS, type StrandLay } from "./counted-classes.js";

export interface StrandClassQuestion {
  readonly size: string;
  readonly metal: ConductorMetal;
  readonly strands: number;
  /** Needed only where the count is that of several classes. */
  readonly lay?: StrandLay;
}

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
    const candidates = countedClasses(sheet, { size, metal, strands }, edition);
    if ("refusal" in candidates) return sheet.outsideTable(candidates, edition.tables.conductorPropertiesStranded.cite);
    return choose(sheet, candidates, question, edition);
  },
};

/** One class, or the lay that tells the classes apart. */
function choose(
  sheet: CalculationSheet,
  candidates: readonly CountedClass[],
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
  candidate: Omit<CountedClass, "lay">,
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
