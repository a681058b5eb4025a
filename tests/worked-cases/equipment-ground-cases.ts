/** Equipment grounds: NFPA 70 Table 250.122 and 250.122(A), (B), (F). */
import type { ConductorMetal } from "@landfast/rules";
import { ecm, nfpa70, tradeForum } from "./publications.js";
import type { PublishedCase, WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"equipment-ground">;

/** Table 250.122: device, copper, aluminum. The aluminum of 4000 A and more is that of the 2014 and later editions. */
const TABLE: readonly (readonly [number, string, string])[] = [
  [15, "14 AWG", "12 AWG"],
  [20, "12 AWG", "10 AWG"],
  [60, "10 AWG", "8 AWG"],
  [100, "8 AWG", "6 AWG"],
  [200, "6 AWG", "4 AWG"],
  [300, "4 AWG", "2 AWG"],
  [400, "3 AWG", "1 AWG"],
  [500, "2 AWG", "1/0 AWG"],
  [600, "1 AWG", "2/0 AWG"],
  [800, "1/0 AWG", "3/0 AWG"],
  [1000, "2/0 AWG", "4/0 AWG"],
  [1200, "3/0 AWG", "250 kcmil"],
  [1600, "4/0 AWG", "350 kcmil"],
  [2000, "250 kcmil", "400 kcmil"],
  [3000, "400 kcmil", "600 kcmil"],
  [4000, "500 kcmil", "750 kcmil"],
  [6000, "800 kcmil", "1250 kcmil"],
];

function cell(deviceA: number, metal: ConductorMetal, size: string): PublishedCase<"equipment-ground"> {
  return {
    id: `equipment-ground/table-250.122/${String(deviceA)}/${metal}`,
    question: `Which ${metal} ground behind ${String(deviceA)} A?`,
    kind: "published",
    form: "table",
    source: nfpa70(`Table 250.122, ${String(deviceA)} A, ${metal}`),
    asked: { deviceA, metal },
    expected: [{ value: size }],
  };
}

const EXAMPLES: readonly Case[] = [
  {
    id: "equipment-ground/8-raised-to-4",
    question: "Phases raised from 8 to 4 AWG behind 40 A: is 6 AWG (26 240) enough for a 10 AWG ground?",
    kind: "published",
    form: "example",
    source: tradeForum(
      "on 250.122(B): 41 740 / 16 510 x 10 380 = 26 242 circular mils, two more than 6 AWG has: 4 AWG",
    ),
    asked: {
      deviceA: 40,
      metal: "copper",
      phases: { metal: "copper", minimum: "8 AWG", installed: "4 AWG", sets: 1, separateRaceways: false },
    },
    expected: [{ value: "4 AWG" }, { result: "area needed", value: 26.242, unit: "kcmil", within: 0.001 }],
    note: "By the gauge's formula instead of the printed areas 6 AWG would pass; the clause's printed areas count.",
  },
  {
    id: "equipment-ground/3-0-raised-to-500",
    question: "200 A, phases raised from 3/0 AWG to 500 kcmil: which ground?",
    kind: "published",
    form: "example",
    source: tradeForum("engineers' question page on 250.122(B): 26 240 x 2.97 = 77 933 circular mils, 1 AWG"),
    asked: {
      deviceA: 200,
      metal: "copper",
      phases: { metal: "copper", minimum: "3/0 AWG", installed: "500 kcmil", sets: 1, separateRaceways: false },
    },
    expected: [{ value: "1 AWG" }, { result: "area needed", value: 77.933, unit: "kcmil", within: 0.3 }],
    note: "500 000 / 167 800 is rounded to 2.97 there.",
  },
  {
    id: "equipment-ground/12-raised-to-1-0",
    question: "20 A, phases raised from 12 to 1/0 AWG: which ground?",
    kind: "published",
    form: "example",
    source: tradeForum("engineers' question page on 250.122(B): 1/0 AWG, as the phases"),
    asked: {
      deviceA: 20,
      metal: "copper",
      phases: { metal: "copper", minimum: "12 AWG", installed: "1/0 AWG", sets: 1, separateRaceways: false },
    },
    expected: [{ value: "1/0 AWG" }],
  },
  {
    id: "equipment-ground/40-a-with-8-awg",
    question: "40 A with 8 AWG phases that are the least size: is 10 AWG right?",
    kind: "published",
    form: "example",
    source: ecm('"Sizing Up the Equipment Grounding Conductor", 5 April 2022, to the 2020 edition: yes'),
    asked: {
      deviceA: 40,
      metal: "copper",
      phases: { metal: "copper", minimum: "8 AWG", installed: "8 AWG", sets: 1, separateRaceways: false },
    },
    expected: [{ value: "10 AWG" }],
  },
  {
    id: "equipment-ground/30-a-with-8-awg",
    question: "30 A with phases raised from 10 to 8 AWG: is 10 AWG still right?",
    kind: "published",
    form: "example",
    source: ecm('"Sizing Up the Equipment Grounding Conductor", 5 April 2022, to the 2020 edition: no'),
    asked: {
      deviceA: 30,
      metal: "copper",
      phases: { metal: "copper", minimum: "10 AWG", installed: "8 AWG", sets: 1, separateRaceways: false },
    },
    expected: [{ value: "8 AWG" }],
  },
  {
    id: "equipment-ground/110-a-with-1-awg",
    question: "110 A with phases raised from 2 to 1 AWG: is 6 AWG still right?",
    kind: "published",
    form: "example",
    source: ecm('"Sizing Up the Equipment Grounding Conductor", 5 April 2022, to the 2020 edition: no'),
    asked: {
      deviceA: 110,
      metal: "copper",
      phases: { metal: "copper", minimum: "2 AWG", installed: "1 AWG", sets: 1, separateRaceways: false },
    },
    // 26 240 x 83 690 / 66 360 = 33 093 circular mils; 6 AWG has 26 240, 4 AWG 41 740
    expected: [{ value: "4 AWG" }],
    note: "The article says only that 6 AWG is not enough; the size is worked here.",
  },
  {
    id: "equipment-ground/125-a-with-1-awg",
    question: "125 A with 1 AWG phases that are the least size: is 6 AWG right?",
    kind: "published",
    form: "example",
    source: ecm('"Sizing Up the Equipment Grounding Conductor", 5 April 2022, to the 2020 edition: yes'),
    asked: {
      deviceA: 125,
      metal: "copper",
      phases: { metal: "copper", minimum: "1 AWG", installed: "1 AWG", sets: 1, separateRaceways: false },
    },
    expected: [{ value: "6 AWG" }],
  },
  {
    id: "equipment-ground/tap-of-8-awg-behind-400-a",
    question: "A tap of 8 AWG behind 400 A, for which the table gives 3 AWG: which ground?",
    kind: "published",
    form: "example",
    source: tradeForum('"Tap rules", 29 May 2004: 8 AWG, no larger than the phases'),
    asked: {
      deviceA: 400,
      metal: "copper",
      phases: { metal: "copper", installed: "8 AWG", sets: 1, separateRaceways: false },
    },
    expected: [{ value: "8 AWG" }],
  },
  {
    id: "equipment-ground/125-a-raised-to-1-0",
    question: "125 A, phases raised from 2 to 1/0 AWG: which ground?",
    kind: "published",
    form: "example",
    source: tradeForum("on 250.122(B), 31 January 2008"),
    printed: "6 AWG, from 8 AWG times 1.6",
    asked: {
      deviceA: 125,
      metal: "copper",
      phases: { metal: "copper", minimum: "2 AWG", installed: "1/0 AWG", sets: 1, separateRaceways: false },
    },
    // 26 240 x 105 600 / 66 360 = 41 756 circular mils; 4 AWG has 41 740
    expected: [{ value: "3 AWG" }],
    note: "Table 250.122 has 8 AWG up to 100 A; 125 A falls under the row of 200 A, 6 AWG. 26 240 x 105 600 / 66 360 = 41 756 is 16 circular mils more than 4 AWG has.",
  },
  {
    id: "equipment-ground/larkfen-feeder",
    question: "225 A, phases raised from 300 to 500 kcmil aluminum: which copper ground?",
    kind: "hand",
    working: "4 AWG, 41.74 x 500 / 300 = 69.57 kcmil; 2 AWG has 66.36, 1 AWG 83.69",
    asked: {
      deviceA: 225,
      metal: "copper",
      phases: { metal: "aluminum", minimum: "300 kcmil", installed: "500 kcmil", sets: 1, separateRaceways: false },
    },
    expected: [{ value: "1 AWG" }],
  },
  {
    id: "equipment-ground/three-raceways",
    question: "800 A, three sets in raceways of their own: which ground in each?",
    kind: "hand",
    working: "250.122(F): full size in every raceway, 1/0 AWG copper, three of them",
    asked: {
      deviceA: 800,
      metal: "copper",
      phases: { metal: "copper", installed: "300 kcmil", sets: 3, separateRaceways: true },
    },
    expected: [{ value: "1/0 AWG" }, { result: "grounds of this size", value: 3 }],
  },
  {
    id: "equipment-ground/above-the-table",
    question: "6001 A?",
    kind: "hand",
    working: "the table ends at 6000 A",
    asked: { deviceA: 6001, metal: "copper" },
    expected: [{ refused: "OUTSIDE_TABLE" }],
  },
];

export const EQUIPMENT_GROUND_CASES: readonly Case[] = [
  ...EXAMPLES,
  ...TABLE.flatMap(([device, copper, aluminum]) => [
    cell(device, "copper", copper),
    cell(device, "aluminum", aluminum),
  ]),
];
