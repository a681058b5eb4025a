/** Fill of conduit and tubing: NFPA 70 Chapter 9 Tables 1, 4, 5 and the counts of Informative Annex C. */
import type { FillConductor, RacewayKind } from "@landfast/rules";
import { annexC, ecm, steelTube, tradeForum } from "./publications.js";
import type { PublishedCase, WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"raceway-fill">;

function thhn(size: string, count = 1): FillConductor {
  return { kind: "conductor", count, size, insulation: "THHN/THWN-2", stranding: "class-B" };
}

/** Counts of equal conductors that stand beside those asserted with the calculation itself: table, raceway, trade size, type, size, number. */
const COUNTS: readonly (readonly [string, RacewayKind, string, FillConductor, number])[] = [
  [
    "Table C.1, THW",
    "EMT",
    "1/2",
    { kind: "conductor", count: 1, size: "14 AWG", insulation: "THW", stranding: "class-B" },
    8,
  ],
  [
    "Table C.1, THW",
    "EMT",
    "3/4",
    { kind: "conductor", count: 1, size: "12 AWG", insulation: "THW", stranding: "class-B" },
    11,
  ],
  [
    "Table C.1, THW",
    "EMT",
    "1",
    { kind: "conductor", count: 1, size: "10 AWG", insulation: "THW", stranding: "class-B" },
    14,
  ],
  [
    "Table C.1, XHHW-2",
    "EMT",
    "2",
    { kind: "conductor", count: 1, size: "4/0 AWG", insulation: "XHHW-2", stranding: "class-B" },
    4,
  ],
  [
    "Table C.1, XHHW-2",
    "EMT",
    "3",
    { kind: "conductor", count: 1, size: "500 kcmil", insulation: "XHHW-2", stranding: "class-B" },
    5,
  ],
  ["Table C.9, THHN", "RMC", "2", thhn("4/0 AWG"), 4],
  ["Table C.9, THHN", "RMC", "3", thhn("500 kcmil"), 4],
  ["Table C.11, THHN", "PVC-40", "3", thhn("500 kcmil"), 4],
  ["Table C.10, THHN", "PVC-80", "1", thhn("12 AWG"), 20],
  ["Table C.4, THHN", "IMC", "3/4", thhn("12 AWG"), 17],
  ["Table C.3, THHN", "FMC", "1/2", thhn("12 AWG"), 9],
];

function counts(): readonly PublishedCase<"raceway-fill">[] {
  return COUNTS.map(([table, kind, tradeSize, conductor, number]) => {
    const size = conductor.kind === "conductor" ? conductor.size : "";
    return {
      id: `raceway-fill/annex-c/${table}/${kind}/${tradeSize}/${size}`,
      question: `How many ${size} go into ${kind} ${tradeSize}?`,
      kind: "published",
      form: "table",
      source: annexC(`${table}, ${size}, trade size ${tradeSize}`),
      asked: { ask: "how-many", raceway: { kind, tradeSize }, conductors: [conductor] },
      expected: [{ value: number }],
    };
  });
}

const EXAMPLES: readonly Case[] = [
  {
    id: "raceway-fill/three-sizes-in-emt",
    question: "Three 12, four 10 and eight 8 AWG THWN: which EMT?",
    kind: "published",
    form: "example",
    source: steelTube("conduit fill: 0.4171 in2, trade size 1-1/4"),
    asked: {
      ask: "smallest-trade-size",
      raceway: { kind: "EMT" },
      conductors: [thhn("12 AWG", 3), thhn("10 AWG", 4), thhn("8 AWG", 8)],
    },
    expected: [
      { value: "1-1/4" },
      { result: "area of the conductors", value: 0.4171, unit: "in2" },
      { result: "area they may fill", value: 0.598, unit: "in2" },
    ],
  },
  {
    id: "raceway-fill/1-in-emt-is-too-small",
    question: "And in 1 in EMT, which holds 0.346 in2?",
    kind: "published",
    form: "example",
    source: steelTube("conduit fill: 1 in = 0.346 is too small"),
    asked: {
      ask: "fill",
      raceway: { kind: "EMT", tradeSize: "1" },
      conductors: [thhn("12 AWG", 3), thhn("10 AWG", 4), thhn("8 AWG", 8)],
    },
    expected: [{ value: false }, { result: "area they may fill", value: 0.346, unit: "in2" }],
  },
  {
    id: "raceway-fill/400-a-feeder-in-pvc",
    question: "Three 500 kcmil, one 250 kcmil and a 3 AWG THHN in PVC schedule 40?",
    kind: "published",
    form: "example",
    source: ecm('"Code Calculations", example 1: 2.6162 in2, trade size 3 with 2.907 in2'),
    asked: {
      ask: "smallest-trade-size",
      raceway: { kind: "PVC-40" },
      conductors: [thhn("500 kcmil", 3), thhn("250 kcmil"), thhn("3 AWG")],
    },
    expected: [
      { value: "3" },
      { result: "area of the conductors", value: 2.6162, unit: "in2" },
      { result: "area they may fill", value: 2.907, unit: "in2" },
    ],
  },
  {
    id: "raceway-fill/rigid-nipple",
    question: "A rigid nipple for three 3/0, one 1 and one 6 AWG THHN?",
    kind: "published",
    form: "example",
    source: ecm(
      '"Code Calculations", example 2: areas read there, 0.8037 + 0.1562 + 0.0507; trade size 1-1/2 from memory',
    ),
    asked: {
      ask: "smallest-trade-size",
      raceway: { kind: "RMC" },
      nippleLength: { value: 24, unit: "in" },
      conductors: [thhn("3/0 AWG", 3), thhn("1 AWG"), thhn("6 AWG")],
    },
    expected: [{ value: "1-1/2" }, { result: "area of the conductors", value: 1.0106, unit: "in2" }],
  },
  {
    id: "raceway-fill/1-in-emt-12-awg",
    question: "How many 12 AWG THHN go into 1 in EMT?",
    kind: "published",
    form: "example",
    source: tradeForum('"Conduit and box fill": 26'),
    asked: { ask: "how-many", raceway: { kind: "EMT", tradeSize: "1" }, conductors: [thhn("12 AWG")] },
    expected: [{ value: 26 }],
  },
  {
    id: "raceway-fill/6-awg-in-1-2-emt",
    question: "How many 6 AWG THHN go into 1/2 in EMT?",
    kind: "published",
    form: "example",
    source: tradeForum("workshop's notes on its conduits, 21 February 2017"),
    printed: "one",
    asked: { ask: "how-many", raceway: { kind: "EMT", tradeSize: "1/2" }, conductors: [thhn("6 AWG")] },
    expected: [{ value: 2 }],
    note: "0.122 / 0.0507 = 2.4, and Annex C Table C.1 prints 2.",
  },
  {
    id: "raceway-fill/many-kinds-in-rmc",
    question:
      "Four 10 AWG THW, two 12 AWG RHW without cover, two 14 AWG RHH with cover, six 14 AWG THW, three bare 12 AWG: which RMC?",
    kind: "hand",
    working:
      "4 x 0.0243 + 2 x 0.0260 + 2 x 0.0293 + 6 x 0.0139 + 3 x 0.006 = 0.3092 in2; RMC 3/4 0.220, 1 in 0.355. Question from a code trainer's blog (web), answer not read",
    asked: {
      ask: "smallest-trade-size",
      raceway: { kind: "RMC" },
      conductors: [
        { kind: "conductor", count: 4, size: "10 AWG", insulation: "THW", stranding: "class-B" },
        { kind: "conductor", count: 2, size: "12 AWG", insulation: "RHW", stranding: "class-B", outerCovering: false },
        { kind: "conductor", count: 2, size: "14 AWG", insulation: "RHH", stranding: "class-B", outerCovering: true },
        { kind: "conductor", count: 6, size: "14 AWG", insulation: "THW", stranding: "class-B" },
        { kind: "conductor", count: 3, size: "12 AWG", insulation: "bare", stranding: "class-B" },
      ],
    },
    expected: [{ value: "1" }, { result: "area of the conductors", value: 0.3092, unit: "in2" }],
  },
];

export const RACEWAY_FILL_CASES: readonly Case[] = [...EXAMPLES, ...counts()];
