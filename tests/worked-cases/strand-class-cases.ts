/** Strand classes by count: NFPA 70 Chapter 9 Table 10, and the bunched classes by the size of their wires. */
import { nfpa70 } from "./publications.js";
import type { WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"strand-class">;

/** Table 10, copper: size, strands, class. */
const TABLE: readonly (readonly [string, number, string])[] = [
  ["14 AWG", 7, "class-B"],
  ["2 AWG", 19, "class-C"],
  ["1/0 AWG", 19, "class-B"],
  ["4/0 AWG", 37, "class-C"],
  ["500 kcmil", 37, "class-B"],
  ["600 kcmil", 61, "class-B"],
  ["1000 kcmil", 91, "class-C"],
];

export const STRAND_CLASS_CASES: readonly Case[] = [
  ...TABLE.map(
    ([size, strands, name]): Case => ({
      id: `strand-class/${size.replaceAll(/[ /]/g, "-")}-${String(strands)}`,
      question: `${size} copper of ${String(strands)} strands: which class?`,
      kind: "published",
      form: "table",
      source: nfpa70("Chapter 9 Table 10"),
      asked: { size, metal: "copper", strands },
      expected: [{ value: name }],
    }),
  ),
  {
    id: "strand-class/2-0-awg-1330",
    question: "2/0 AWG battery cable of 1330 strands: which class?",
    kind: "hand",
    working: "133100 / 1330 = 100.08 cmil; a wire of 30 AWG has 100.5",
    asked: { size: "2/0 AWG", metal: "copper", strands: 1330 },
    expected: [{ value: "class-K" }],
  },
  {
    id: "strand-class/metric",
    question: "35 mm2 of 7 strands: which class?",
    kind: "hand",
    working: "the classes are laid down for AWG and kcmil",
    asked: { size: "35 mm2", metal: "copper", strands: 7 },
    expected: [{ refused: "OUTSIDE_TABLE" }],
  },
];
