/** Default tightening torques: NFPA 70 Informative Annex I, after UL 486A-486B, in lbf-in. */
import type { Drive, Length } from "@landfast/rules";
import { annexI, annexIUnseen, studyText } from "./publications.js";
import type { PublishedCase, WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"torque">;

const inches = (value: number): Length => ({ value, unit: "in" });

function slot(width: number, length: number, screwSize: "10-and-larger" | "under-10"): Drive {
  return { kind: "slotted", screwSize, slotWidth: inches(width), slotLength: inches(length) };
}

const NARROW = slot(0.047, 0.25, "10-and-larger");
const WIDE = slot(0.06, 0.3, "10-and-larger");
const SPLIT_BOLT: Drive = { kind: "split-bolt" };
const HEXAGON: Drive = { kind: "external-hex" };

/** Table I.1, the columns that the scan shows: largest conductor, lbf-in. */
const SLOTTED_NARROW: readonly (readonly [string, number])[] = [
  ["10 AWG", 20],
  ["8 AWG", 25],
  ["4 AWG", 35],
  ["2 AWG", 40],
];
const SLOTTED_WIDE: readonly (readonly [string, number])[] = [
  ["10 AWG", 35],
  ["8 AWG", 40],
  ["6 AWG", 45],
  ["3 AWG", 50],
  ["500 kcmil", 50],
];
const SPLIT_BOLTS: readonly (readonly [string, number])[] = [
  ["10 AWG", 80],
  ["6 AWG", 165],
  ["2 AWG", 275],
  ["2/0 AWG", 385],
  ["4/0 AWG", 500],
  ["350 kcmil", 650],
  ["500 kcmil", 825],
  ["750 kcmil", 1000],
  ["1000 kcmil", 1100],
];
/** The last column, whose right half the scan cuts off. */
const HEXAGONS: readonly (readonly [string, number])[] = [
  ["10 AWG", 75],
  ["4 AWG", 110],
  ["1/0 AWG", 180],
  ["4/0 AWG", 250],
  ["250 kcmil", 325],
  ["500 kcmil", 375],
];

function tableI1(
  name: string,
  drive: Drive,
  rows: readonly (readonly [string, number])[],
  source: typeof annexI,
): readonly PublishedCase<"torque">[] {
  return rows.map(([size, lbfIn]) => ({
    id: `torque/table-I.1/${name}/${size}`,
    question: `Default torque, ${name}, largest conductor ${size}?`,
    kind: "published",
    form: "table",
    source: source(`Table I.1, ${name}, ${size}`),
    asked: { drive, marked: "unmarked", largestConductor: size },
    expected: [
      { value: lbfIn, unit: "lbf-in" },
      { result: "where the torque comes from", value: "code-table" },
    ],
  }));
}

/** Table I.2, screws under No. 10, slot 1.2 mm wide or wider and narrower than that: slot length, lbf-in, lbf-in. */
const SMALL_SCREWS: readonly (readonly [string, number, number, number])[] = [
  ["5/32", 4, 12, 7],
  ["3/16", 4.8, 12, 7],
  ["7/32", 5.5, 12, 7],
  ["1/4", 6.4, 12, 9],
];

function tableI2(): readonly PublishedCase<"torque">[] {
  return SMALL_SCREWS.flatMap(([printed, lengthMm, wide, narrow]) =>
    (
      [
        ["wide", 1.2, wide],
        ["narrow", 1.1, narrow],
      ] as const
    ).map(
      ([name, widthMm, lbfIn]): PublishedCase<"torque"> => ({
        id: `torque/table-I.2/${name}/${printed}`,
        question: `Screw under No. 10, ${name} slot ${printed} in long: default torque?`,
        kind: "published",
        form: "table",
        source: annexI(`Table I.2, ${printed} in, ${name}; a second public copy prints the same`),
        asked: {
          drive: {
            kind: "slotted",
            screwSize: "under-10",
            slotWidth: { value: widthMm, unit: "mm" },
            slotLength: { value: lengthMm, unit: "mm" },
          },
          marked: "unmarked",
          largestConductor: "12 AWG",
        },
        expected: [{ value: lbfIn, unit: "lbf-in" }],
      }),
    ),
  );
}

/** Table I.3, recessed drives: width across flats, lbf-in. */
const SOCKETS: readonly (readonly [string, number])[] = [
  ["1/8", 45],
  ["5/32", 100],
  ["7/32", 150],
  ["1/4", 200],
  ["5/16", 275],
  ["3/8", 375],
  ["1/2", 500],
  ["9/16", 600],
];

function tableI3(): readonly PublishedCase<"torque">[] {
  return SOCKETS.map(([acrossFlats, lbfIn]) => ({
    id: `torque/table-I.3/${acrossFlats}`,
    question: `Recessed drive ${acrossFlats} in across flats: default torque?`,
    kind: "published",
    form: "table",
    source: annexIUnseen(`Table I.3, ${acrossFlats} in`),
    asked: { drive: { kind: "socket", acrossFlats }, marked: "unmarked" },
    expected: [{ value: lbfIn, unit: "lbf-in" }],
  }));
}

const EXAMPLES: readonly Case[] = [
  {
    id: "torque/socket-3-16",
    question: "3/16 in recessed drive: default torque?",
    kind: "published",
    form: "example",
    source: studyText("on Informative Annex I: 120 lbf-in"),
    asked: { drive: { kind: "socket", acrossFlats: "3/16" }, marked: "unmarked" },
    expected: [{ value: 120, unit: "lbf-in" }],
  },
  {
    id: "torque/hexagon-2-awg",
    question: "2 AWG in a connector that is no split bolt, external hexagon: default torque?",
    kind: "published",
    form: "example",
    source: studyText("on Informative Annex I: 150 lbf-in"),
    asked: { drive: HEXAGON, marked: "unmarked", largestConductor: "2 AWG" },
    expected: [{ value: 150, unit: "lbf-in" }],
  },
  {
    id: "torque/marked-31-lbf-ft",
    question: "The sheet says 31 lbf-ft on a 5/16 in socket screw: what counts, and what is it in lbf-in?",
    kind: "hand",
    working: "the mark comes before the 275 lbf-in of the table; 31 x 12 = 372",
    asked: {
      drive: { kind: "socket", acrossFlats: "5/16" },
      marked: { torque: { value: 31, unit: "lbf-ft" }, on: "equipment" },
    },
    expected: [
      { value: 31, unit: "lbf-ft" },
      { result: "torque in lbf-in", value: 372, unit: "lbf-in" },
    ],
  },
  {
    id: "torque/tool-to-100-for-120",
    question: "Does a screwdriver that goes to 100 lbf-in serve for 120?",
    kind: "hand",
    working: "120 > 100",
    asked: {
      drive: { kind: "socket", acrossFlats: "3/16" },
      marked: "unmarked",
      tool: {
        from: { value: 10, unit: "lbf-in" },
        to: { value: 100, unit: "lbf-in" },
        bits: [{ kind: "recessed", acrossFlats: "3/16" }],
        calibration: { validUntil: "2026-12-31" },
      },
      usedOn: "2026-06-01",
    },
    expected: [{ value: 120 }, { result: "the tool serves", value: false }],
  },
];

export const TORQUE_CASES: readonly Case[] = [
  ...EXAMPLES,
  ...tableI1("slotted, narrow", NARROW, SLOTTED_NARROW, annexI),
  ...tableI1("slotted, wide", WIDE, SLOTTED_WIDE, annexI),
  ...tableI1("split bolt", SPLIT_BOLT, SPLIT_BOLTS, annexI),
  ...tableI1("external hexagon", HEXAGON, HEXAGONS, annexIUnseen),
  ...tableI2(),
  ...tableI3(),
];
