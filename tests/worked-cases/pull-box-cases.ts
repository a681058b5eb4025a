/** Dimensions of pull and junction boxes: NFPA 70 314.28(A), trade sizes in inches. */
import type { PullBoxEntry, PullBoxPull } from "@landfast/rules";
import { ecm, examinationPage, nfpa70, studyText } from "./publications.js";
import type { PublishedCase, WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"pull-box">;

function entry(id: string, wall: PullBoxEntry["wall"], tradeSize: string): PullBoxEntry {
  return { id, wall, row: 1, tradeSize };
}

function pull(from: string, to: string): PullBoxPull {
  return { from, to, spliced: false };
}

/** 314.28(A)(1): eight times the trade size; (A)(2): six times. */
const STRAIGHT: readonly (readonly [string, number])[] = [
  ["1-1/4", 10],
  ["2", 16],
  ["2-1/2", 20],
  ["4", 32],
];
const ANGLE: readonly (readonly [string, number])[] = [
  ["1-1/2", 9],
  ["2", 12],
  ["3", 18],
  ["4", 24],
];

function straightPulls(): readonly PublishedCase<"pull-box">[] {
  return STRAIGHT.map(([tradeSize, length]) => ({
    id: `pull-box/straight/${tradeSize}`,
    question: `Straight pull through trade size ${tradeSize}: how long is the box?`,
    kind: "published",
    form: "table",
    source: nfpa70("314.28(A)(1): eight times the trade size"),
    asked: {
      largestConductor: "4 AWG",
      entries: [entry("A", "left", tradeSize), entry("B", "right", tradeSize)],
      pulls: [pull("A", "B")],
    },
    expected: [{ result: "width", value: length, unit: "in" }],
  }));
}

function anglePulls(): readonly PublishedCase<"pull-box">[] {
  return ANGLE.map(([tradeSize, length]) => ({
    id: `pull-box/angle/${tradeSize}`,
    question: `Angle pull between two of trade size ${tradeSize}, alone on their walls?`,
    kind: "published",
    form: "table",
    source: nfpa70("314.28(A)(2): six times the trade size, both ways and between the two entries"),
    asked: {
      largestConductor: "4 AWG",
      entries: [entry("A", "left", tradeSize), entry("B", "top", tradeSize)],
      pulls: [pull("A", "B")],
    },
    expected: [
      { result: "width", value: length, unit: "in" },
      { result: "height", value: length, unit: "in" },
      { result: "between A and B", value: length, unit: "in" },
    ],
  }));
}

const EXAMPLES: readonly Case[] = [
  {
    id: "pull-box/three-and-three",
    question: "Two of 3 left, one of 3 right and one of 3 below: one pull straight, one around the corner?",
    kind: "published",
    form: "example",
    source: ecm('"Sizing Junction Boxes", to the 2005 edition: question read, 24 in, 18 in and 18 in from memory'),
    asked: {
      largestConductor: "4/0 AWG",
      entries: [entry("A", "left", "3"), entry("B", "right", "3"), entry("C", "left", "3"), entry("D", "bottom", "3")],
      pulls: [pull("A", "B"), pull("C", "D")],
    },
    expected: [
      { result: "width", value: 24, unit: "in" },
      { result: "height", value: 18, unit: "in" },
      { result: "between C and D", value: 18, unit: "in" },
    ],
  },
  {
    id: "pull-box/two-and-three",
    question: "2 and 3 left, 3 on top, 2 right: the 2s straight, the 3s around the corner?",
    kind: "published",
    form: "example",
    source: ecm(
      '"NEC Requirements for Sizing Junction Boxes and Pull Boxes", example 2: question read, 20 in, 18 in and 18 in from memory',
    ),
    asked: {
      largestConductor: "4/0 AWG",
      entries: [entry("A", "left", "2"), entry("B", "right", "2"), entry("C", "left", "3"), entry("D", "top", "3")],
      pulls: [pull("A", "B"), pull("C", "D")],
    },
    expected: [
      { result: "width", value: 20, unit: "in" },
      { result: "height", value: 18, unit: "in" },
      { result: "between C and D", value: 18, unit: "in" },
    ],
  },
  {
    id: "pull-box/2-in-through-10-in",
    question: "2 in raceways straight through a box of 10 in: is it long enough?",
    kind: "published",
    form: "example",
    source: ecm('"Sizing Junction Boxes", to the 2005 edition: 10 in is far too short for 2 in raceways'),
    asked: {
      largestConductor: "1/0 AWG",
      entries: [entry("A", "left", "2"), entry("B", "right", "2")],
      pulls: [pull("A", "B")],
      box: { width: { value: 10, unit: "in" }, height: { value: 10, unit: "in" } },
    },
    expected: [{ value: false }, { result: "width", value: 16, unit: "in" }],
  },
  {
    id: "pull-box/4-in-straight",
    question: "4 in raceways straight through?",
    kind: "published",
    form: "example",
    source: studyText("on pull boxes: 4 x 8 = 32 in"),
    asked: {
      largestConductor: "500 kcmil",
      entries: [entry("A", "left", "4"), entry("B", "right", "4")],
      pulls: [pull("A", "B")],
    },
    expected: [{ result: "width", value: 32, unit: "in" }],
  },
  {
    id: "pull-box/side-and-back",
    question: "3 in through the side and 3 in through the back, 500 kcmil, nothing else enters?",
    kind: "published",
    form: "example",
    source: examinationPage("solution to questions 21 to 23 on a pull box"),
    printed: "21 in long and wide",
    asked: {
      largestConductor: "500 kcmil",
      entries: [entry("A", "left", "3"), entry("B", "back", "3")],
      pulls: [pull("A", "B")],
    },
    expected: [
      { result: "width", value: 18, unit: "in" },
      { result: "depth", value: 6, unit: "in" },
    ],
    note: "Six times 3 is 18 in; the trade size of another raceway is added only where it enters the same wall in the same row. The depth agrees: Table 312.6(A), one wire of 500 kcmil, 6 in.",
  },
  {
    id: "pull-box/6-awg",
    question: "A box with nothing larger than 6 AWG?",
    kind: "hand",
    working: "314.28 begins at 4 AWG; smaller conductors are judged by volume",
    asked: {
      largestConductor: "6 AWG",
      entries: [entry("A", "left", "1"), entry("B", "right", "1")],
      pulls: [pull("A", "B")],
    },
    expected: [{ refused: "NOT_COVERED" }],
  },
];

export const PULL_BOX_CASES: readonly Case[] = [...EXAMPLES, ...straightPulls(), ...anglePulls()];
