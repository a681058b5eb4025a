/** Ampacity: NFPA 70 Tables 310.16 and 310.17 read through the calculation, their factors, and examples in print. */
import type { ConductorMetal, ConductorRun } from "@landfast/rules";
import { celsius, plainRun, runEndingAt } from "./plain-run.js";
import { ecm, nfpa70, studyText, tradeForum } from "./publications.js";
import type { PublishedCase, WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"ampacity">;
const ONE_CONDUCTOR = "ampacity of one conductor after correction and adjustment";
const COLUMNS = [60, 75, 90] as const;

/** Table 310.16, amperes at 60, 75 and 90 C; the numbers are those of the 2011 and later editions. */
const RACEWAY: readonly (readonly [ConductorMetal, string, readonly [number, number, number]])[] = [
  ["copper", "14 AWG", [15, 20, 25]],
  ["copper", "10 AWG", [30, 35, 40]],
  ["copper", "8 AWG", [40, 50, 55]],
  ["copper", "4 AWG", [70, 85, 95]],
  ["copper", "3 AWG", [85, 100, 115]],
  ["copper", "1 AWG", [110, 130, 145]],
  ["copper", "2/0 AWG", [145, 175, 195]],
  ["copper", "4/0 AWG", [195, 230, 260]],
  ["copper", "350 kcmil", [260, 310, 350]],
  ["copper", "600 kcmil", [350, 420, 475]],
  ["copper", "1000 kcmil", [455, 545, 615]],
  ["aluminum", "8 AWG", [35, 40, 45]],
  ["aluminum", "2 AWG", [75, 90, 100]],
  ["aluminum", "4/0 AWG", [150, 180, 205]],
  ["aluminum", "300 kcmil", [195, 230, 260]],
  ["aluminum", "500 kcmil", [260, 310, 350]],
];

function racewayCells(): readonly PublishedCase<"ampacity">[] {
  return RACEWAY.flatMap(([metal, size, amperes]) =>
    COLUMNS.map(
      (column, index): PublishedCase<"ampacity"> => ({
        id: `ampacity/table-310.16/${metal}/${size}/${String(column)}`,
        question: `What does ${size} ${metal} carry that ends on terminals of ${String(column)} C?`,
        kind: "published",
        form: "table",
        source: nfpa70(`Table 310.16, ${size} ${metal}, ${String(column)} C`),
        asked: { size, run: runEndingAt(column, { metal }) },
        expected: [{ value: amperes[index] ?? Number.NaN, unit: "A" }],
      }),
    ),
  );
}

/** Table 310.17, copper, 90 C. */
const FREE_AIR: readonly (readonly [string, number])[] = [
  ["10 AWG", 55],
  ["4 AWG", 140],
  ["4/0 AWG", 405],
  ["500 kcmil", 700],
];

function freeAirCells(): readonly PublishedCase<"ampacity">[] {
  return FREE_AIR.map(([size, amperes]) => ({
    id: `ampacity/table-310.17/${size}`,
    question: `What does single ${size} copper of 90 C carry in free air, its terminals left aside?`,
    kind: "published",
    form: "table",
    source: nfpa70(`Table 310.17, ${size} copper, 90 C`),
    asked: { size, run: plainRun({ manner: "free-air", grouping: { in: "apart" } }) },
    expected: [{ result: ONE_CONDUCTOR, value: amperes, unit: "A" }],
  }));
}

/** Table 310.15(B)(1) for insulation of 75 C: ambient, factor, and 6 AWG (65 A) times it. */
const AMBIENT_75: readonly (readonly [number, string, number])[] = [
  [25, "1.05", 68.25],
  [35, "0.94", 61.1],
  [40, "0.88", 57.2],
  [45, "0.82", 53.3],
  [50, "0.75", 48.75],
  [60, "0.58", 37.7],
  [70, "0.33", 21.45],
];

function ambientRows(): readonly PublishedCase<"ampacity">[] {
  return AMBIENT_75.map(([ambient, factor, amperes]) => ({
    id: `ampacity/ambient-75/${String(ambient)}`,
    question: `What is left of the 65 A of 6 AWG RHW copper at ${String(ambient)} C?`,
    kind: "published",
    form: "table",
    source: nfpa70(`Table 310.15(B)(1)(1), 75 C: ${factor}`),
    asked: { size: "6 AWG", run: plainRun({ insulation: "RHW", ambient: celsius(ambient) }) },
    expected: [{ result: ONE_CONDUCTOR, value: amperes, unit: "A" }],
  }));
}

const TW_ALUMINUM: Partial<ConductorRun> = { metal: "aluminum", insulation: "TW" };

const EXAMPLES: readonly Case[] = [
  {
    id: "ampacity/1200-a-in-three-raceways",
    question: "What do three sets of 600 kcmil carry, 75 C terminals?",
    kind: "published",
    form: "example",
    source: ecm(
      "Code Q&A on overcurrent devices and conductor ratings, to the 2017 edition: 420 A each, 1200 A needed",
    ),
    asked: { size: "600 kcmil", run: plainRun({ sets: 3 }) },
    expected: [
      { value: 1260, unit: "A" },
      { result: "ampacity of one conductor at the terminations", value: 420, unit: "A" },
    ],
  },
  {
    id: "ampacity/two-500-kcmil",
    question: "What do two sets of 500 kcmil carry together, 75 C terminals?",
    kind: "published",
    form: "example",
    source: tradeForum("on overcurrent protection of parallel conductors, to the 2011 edition: 380 A each, 760 A"),
    asked: { size: "500 kcmil", run: plainRun({ sets: 2 }) },
    expected: [{ value: 760, unit: "A" }],
  },
  {
    id: "ampacity/dwelling-2-0",
    question: "What is the ampacity of 2/0 AWG copper in the 75 C column?",
    kind: "published",
    form: "example",
    source: tradeForum("answers of an inspectors' page on the 83 % rule, to the 2014 edition: 175 A"),
    asked: { size: "2/0 AWG", run: plainRun() },
    expected: [{ value: 175, unit: "A" }],
  },
  {
    id: "ampacity/300-kcmil-tw-aluminum",
    question: "What does 300 kcmil aluminum TW, a 60 C type, carry in steel conduit?",
    kind: "published",
    form: "example",
    source: tradeForum("engineers' examination question on conductor protection: 195 A"),
    asked: { size: "300 kcmil", run: plainRun(TW_ALUMINUM) },
    expected: [{ value: 195, unit: "A" }],
    note: "Editions before 2011 print 190 A in this cell.",
  },
  {
    id: "ampacity/12-awg-at-55-c",
    question: "What is left of the 30 A of 12 AWG THHN at 55 C?",
    kind: "published",
    form: "example",
    source: tradeForum("engineers' question which correction table goes with the 30 C ampacities: factor 0.76"),
    asked: { size: "12 AWG", run: plainRun({ ambient: celsius(55) }) },
    expected: [{ result: ONE_CONDUCTOR, value: 22.8, unit: "A" }],
    note: "The question sets 0.76 beside 0.84 of the 40 C table, which belongs to the ampacities for 40 C.",
  },
  {
    id: "ampacity/thwn-in-wet-place",
    question: "Which column does THHN/THWN of 4 AWG start from in a wet place?",
    kind: "published",
    form: "example",
    source: tradeForum("on the 90 C column: THWN counts as 75 C in wet places, THHN as 90 C in dry ones only"),
    asked: { size: "4 AWG", run: runEndingAt(90, { insulation: "THWN", place: "wet" }) },
    expected: [{ value: 85, unit: "A" }],
  },
  {
    id: "ampacity/90-c-column-ends-on-75",
    question: "40 C, eight 10 AWG THHN in a raceway: may the 90 C column be started from?",
    kind: "published",
    form: "example",
    source: studyText(
      "on wire sizing: factors begin in the 90 C column, the answer stays within the terminals' column",
    ),
    // 40 x 0.91 x 0.70 = 25.48, within 35 A at 75 C
    asked: {
      size: "10 AWG",
      run: plainRun({ ambient: celsius(40), grouping: { in: "raceway", conductors: 8 } }),
    },
    expected: [
      { value: 25.48, unit: "A" },
      { result: "ampacity of one conductor at the terminations", value: 35 },
    ],
    note: "The text gives the method and the factors 0.91 and 75 C column; the product is worked here.",
  },
  {
    id: "ampacity/half-inch-above-a-roof",
    question: "12 AWG THHN in a sunlit conduit 1/2 in above the roof, 40 C outdoors?",
    kind: "published",
    form: "table",
    source: nfpa70("310.15(B)(2): below 7/8 in add 33 C; Table 310.15(B)(1)(1), 90 C, 71-75 C: 0.50"),
    asked: {
      size: "12 AWG",
      run: plainRun({ ambient: celsius(40), sunlitRoof: { aboveRoof: { value: 0.5, unit: "in" } } }),
    },
    expected: [{ result: ONE_CONDUCTOR, value: 15, unit: "A" }],
  },
  {
    id: "ampacity/7-8-in-above-a-roof",
    question: "The same 7/8 in above the roof?",
    kind: "published",
    form: "table",
    source: nfpa70("310.15(B)(2): from 7/8 in up nothing is added; Table 310.15(B)(1)(1), 90 C, 36-40 C: 0.91"),
    asked: {
      size: "12 AWG",
      run: plainRun({ ambient: celsius(40), sunlitRoof: { aboveRoof: { value: 0.875, unit: "in" } } }),
    },
    expected: [{ result: ONE_CONDUCTOR, value: 27.3, unit: "A" }],
  },
  {
    id: "ampacity/xhhw-2-on-a-roof",
    question: "XHHW-2 lying 1/2 in above the roof?",
    kind: "published",
    form: "table",
    source: nfpa70("310.15(B)(2), exception: nothing is added for XHHW-2"),
    asked: {
      size: "12 AWG",
      run: plainRun({
        insulation: "XHHW-2",
        ambient: celsius(40),
        sunlitRoof: { aboveRoof: { value: 0.5, unit: "in" } },
      }),
    },
    expected: [{ result: ONE_CONDUCTOR, value: 27.3, unit: "A" }],
  },
  {
    id: "ampacity/unmarked-100-a-switch",
    question: "3 AWG THHN on a switch of 100 A without a temperature mark?",
    kind: "hand",
    working: "110.14(C)(1)(a): unmarked and not over 100 A counts as 60 C; 3 AWG copper: 85 A",
    asked: { size: "3 AWG", circuitRatingA: 100, run: plainRun({ supplyEnd: "unmarked", loadEnd: "unmarked" }) },
    expected: [{ value: 85, unit: "A" }],
  },
  {
    id: "ampacity/nipple-of-24-in",
    question: "Nine 12 AWG THHN in a nipple 24 in long: are they adjusted?",
    kind: "hand",
    working: "310.15(C)(1) leaves out raceways not over 24 in: 30 x 1.00 = 30 A in the 90 C column",
    asked: {
      size: "12 AWG",
      run: plainRun({ grouping: { in: "nipple", length: { value: 24, unit: "in" }, conductors: 9 } }),
    },
    expected: [{ result: ONE_CONDUCTOR, value: 30, unit: "A" }],
  },
  {
    id: "ampacity/above-the-table",
    question: "12 AWG THHN at 86 C?",
    kind: "hand",
    working: "the last row of the correction table ends at 85 C",
    asked: { size: "12 AWG", run: plainRun({ ambient: celsius(86) }) },
    expected: [{ refused: "OUTSIDE_TABLE" }],
  },
];

export const AMPACITY_CASES: readonly Case[] = [...EXAMPLES, ...racewayCells(), ...freeAirCells(), ...ambientRows()];
