/** Fill of outlet and device boxes: NFPA 70 314.16(B). */
import type { BoxFillQuestion } from "@landfast/rules";
import { ecm, examinationPage, nfpa70, studyText } from "./publications.js";
import type { PublishedCase, WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"box-fill">;

const EMPTY: BoxFillQuestion = {
  conductors: [],
  equipmentGrounds: [],
  internalClamps: false,
  supportFittings: 0,
  devices: [],
};

/** Table 314.16(B)(1): size, cubic inches. */
const TABLE: readonly (readonly [string, number])[] = [
  ["18 AWG", 1.5],
  ["16 AWG", 1.75],
  ["14 AWG", 2],
  ["12 AWG", 2.25],
  ["10 AWG", 2.5],
  ["8 AWG", 3],
  ["6 AWG", 5],
];

function allowances(): readonly PublishedCase<"box-fill">[] {
  return TABLE.map(([size, in3]) => ({
    id: `box-fill/table-314.16(B)(1)/${size}`,
    question: `How much does one ${size} count?`,
    kind: "published",
    form: "table",
    source: nfpa70(`Table 314.16(B)(1), ${size}; Table 314.16(B) before 2020`),
    asked: { ...EMPTY, conductors: [{ count: 1, size, manner: "ends-or-spliced" }] },
    expected: [{ value: in3, unit: "in3" }],
  }));
}

/** Four 14-2 and four 12-2 cables with ground, spliced. */
const EIGHT_CABLES: BoxFillQuestion = {
  ...EMPTY,
  conductors: [
    { count: 8, size: "14 AWG", manner: "ends-or-spliced" },
    { count: 8, size: "12 AWG", manner: "ends-or-spliced" },
  ],
  equipmentGrounds: [
    { count: 4, size: "14 AWG" },
    { count: 4, size: "12 AWG" },
  ],
};

const EXAMPLES: readonly Case[] = [
  {
    id: "box-fill/octagon-with-stud-and-hickey",
    question: "Two 14-2 cables with ground, stud, hickey, two 14 AWG fixture wires: how much?",
    kind: "published",
    form: "example",
    source: ecm('"Quizzes on the Code", question 1: nine conductors of 14 AWG'),
    asked: {
      ...EMPTY,
      conductors: [
        { count: 4, size: "14 AWG", manner: "ends-or-spliced" },
        { count: 2, size: "14 AWG", manner: "ends-or-spliced" },
        { count: 1, size: "14 AWG", manner: "stays-inside" },
      ],
      equipmentGrounds: [{ count: 2, size: "14 AWG" }],
      supportFittings: 2,
    },
    expected: [{ value: 18, unit: "in3" }],
    note: "Set for an edition of the 1990s; two grounds count once in every edition since.",
  },
  {
    id: "box-fill/octagon-with-clamps-and-18-awg",
    question:
      "Two 12-2 cables with ground, stud, clamps, two pigtails, two 18 AWG fixture wires: is 21.5 in3 enough, 15.5 not?",
    kind: "published",
    form: "example",
    source: ecm('"Quizzes on the Code", question 2: a 4 x 2-1/8 in octagonal box, the next smaller is not enough'),
    // 4 x 2.25 + 2.25 grounds + 2.25 stud + 2.25 clamps + 2 x 1.5 = 18.75
    asked: {
      ...EMPTY,
      boxVolumeIn3: 21.5,
      conductors: [
        { count: 4, size: "12 AWG", manner: "ends-or-spliced" },
        { count: 2, size: "18 AWG", manner: "ends-or-spliced" },
        { count: 2, size: "12 AWG", manner: "stays-inside" },
      ],
      equipmentGrounds: [{ count: 2, size: "12 AWG" }],
      internalClamps: true,
      supportFittings: 1,
    },
    expected: [{ value: true }, { result: "volume needed", value: 18.75, unit: "in3" }],
  },
  {
    id: "box-fill/two-14-3-cables",
    question: "Two 14-3 cables with ground and one device, no clamps: is 16.5 in3 enough?",
    kind: "published",
    form: "example",
    source: examinationPage("fourth-year question on device boxes"),
    printed: "yes: 6 + 1 + 1 = 8 units, 16 in3",
    asked: {
      ...EMPTY,
      boxVolumeIn3: 16.5,
      conductors: [{ count: 6, size: "14 AWG", manner: "ends-or-spliced" }],
      equipmentGrounds: [{ count: 2, size: "14 AWG" }],
      devices: [{ largestConductor: "14 AWG", gangs: 1 }],
    },
    expected: [{ value: false }, { result: "volume needed", value: 18, unit: "in3" }],
    note: "A yoke counts twice (314.16(B)(4)), so nine units and 18 in3, the next larger box of the question. Another page of the same course counts it twice.",
  },
  {
    id: "box-fill/two-14-2-cables-mc",
    question: "A receptacle fed by two cables, two hots and two neutrals of 14 AWG?",
    kind: "published",
    form: "example",
    source: examinationPage("fourth-year question on a duplex receptacle: (4 + 1 + 2) x 2.0 = 14 in3"),
    asked: {
      ...EMPTY,
      conductors: [{ count: 4, size: "14 AWG", manner: "ends-or-spliced" }],
      equipmentGrounds: [{ count: 2, size: "14 AWG" }],
      devices: [{ largestConductor: "14 AWG", gangs: 1 }],
    },
    expected: [{ value: 14, unit: "in3" }],
  },
  {
    id: "box-fill/six-14-and-a-switch",
    question: "Six 14 AWG, a switch and grounds in a box of 22 in3?",
    kind: "published",
    form: "example",
    source: studyText("on wires in a 22 in3 box: 12 + 4 + 2 = 18 in3, fits"),
    asked: {
      ...EMPTY,
      boxVolumeIn3: 22,
      conductors: [{ count: 6, size: "14 AWG", manner: "ends-or-spliced" }],
      equipmentGrounds: [{ count: 3, size: "14 AWG" }],
      devices: [{ largestConductor: "14 AWG", gangs: 1 }],
    },
    expected: [{ value: true }, { result: "volume needed", value: 18, unit: "in3" }],
  },
  {
    id: "box-fill/eight-cables-2017",
    question: "Four 14-2 and four 12-2 cables with ground, spliced: which of the boxes of 29.5 and 42 in3?",
    editions: ["2017"],
    kind: "hand",
    working:
      "8 x 2.00 + 8 x 2.25 + grounds once 2.25 = 36.25 in3. Question 3 of the magazine quiz, its answer not read",
    asked: EIGHT_CABLES,
    expected: [{ value: 36.25, unit: "in3" }],
  },
  {
    id: "box-fill/eight-cables-since-2020",
    question: "The same since 2020?",
    editions: ["2020", "2023"],
    kind: "hand",
    working: "eight grounds: the first four once, the other four a quarter each: 2 x 2.25 = 4.5; 34 + 4.5 = 38.5 in3",
    asked: EIGHT_CABLES,
    expected: [{ value: 38.5, unit: "in3" }],
    note: "From the 2020 edition on every ground above four counts a quarter (314.16(B)(5)).",
  },
];

export const BOX_FILL_CASES: readonly Case[] = [...EXAMPLES, ...allowances()];
