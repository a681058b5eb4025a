/** Overcurrent devices: NFPA 70 240.4 and the standard ratings of 240.6(A). */
import { plainRun, runEndingAt } from "./plain-run.js";
import { annexD, ecm, handbook, nfpa70, tradeForum } from "./publications.js";
import type { PublishedCase, WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"overcurrent-device">;

/** A load just above one standard rating takes the next: 240.6(A), circuit breakers, alike in the three editions. */
const NEXT_RATING: readonly (readonly [number, number])[] = [
  [15.5, 20],
  [31, 35],
  [46, 50],
  [51, 60],
  [71, 80],
  [91, 100],
  [101, 110],
  [111, 125],
  [126, 150],
  [151, 175],
  [201, 225],
  [226, 250],
  [301, 350],
  [451, 500],
  [601, 700],
  [801, 1000],
  [1201, 1600],
  [3001, 4000],
];

function standardRatings(): readonly PublishedCase<"overcurrent-device">[] {
  return NEXT_RATING.map(([load, rating]) => ({
    id: `overcurrent-device/next-above/${String(load)}`,
    question: `Which is the smallest standard breaker for ${String(load)} A that are not continuous?`,
    kind: "published",
    form: "table",
    source: nfpa70(`240.6(A), ${String(rating)} A`),
    asked: {
      ask: "smallest-for-load",
      circuit: "feeder",
      serves: "ordinary",
      deviceKind: "circuit-breaker",
      continuousLoadA: 0,
      nonContinuousLoadA: load,
    },
    expected: [{ value: rating, unit: "A" }],
  }));
}

/** 240.4(D): the largest device of small conductors, whatever their column says. */
const SMALL: readonly (readonly ["copper" | "aluminum", string, number])[] = [
  ["copper", "14 AWG", 15],
  ["copper", "12 AWG", 20],
  ["copper", "10 AWG", 30],
  ["aluminum", "12 AWG", 15],
  ["aluminum", "10 AWG", 25],
];

function smallConductors(): readonly PublishedCase<"overcurrent-device">[] {
  return SMALL.map(([metal, size, rating]) => ({
    id: `overcurrent-device/small/${metal}/${size}`,
    question: `Which is the largest breaker for ${size} ${metal} of 75 C?`,
    kind: "published",
    form: "table",
    source: nfpa70(`240.4(D), ${size} ${metal}`),
    asked: {
      ask: "largest-for-conductor",
      circuit: "branch-circuit",
      serves: "ordinary",
      deviceKind: "circuit-breaker",
      conductor: { size, run: plainRun({ metal }) },
    },
    expected: [{ value: rating, unit: "A" }],
  }));
}

const EXAMPLES: readonly Case[] = [
  {
    id: "overcurrent-device/25-a-continuous",
    question: "Which is the smallest device for 25 A continuous?",
    kind: "published",
    form: "example",
    source: handbook("example to 210.20: 31.25 A, so 35 A"),
    asked: {
      ask: "smallest-for-load",
      circuit: "branch-circuit",
      serves: "ordinary",
      deviceKind: "circuit-breaker",
      continuousLoadA: 25,
      nonContinuousLoadA: 0,
    },
    expected: [{ value: 35, unit: "A" }],
  },
  {
    id: "overcurrent-device/store-building",
    question: "Which device for the feeder of a store, 67.5 A continuous and 50.83 A more?",
    kind: "published",
    form: "example",
    source: annexD("Example D3: 32 450 VA / 240 V = 135 A, next standard rating 150 A"),
    asked: {
      ask: "smallest-for-load",
      circuit: "feeder",
      serves: "ordinary",
      deviceKind: "circuit-breaker",
      continuousLoadA: 67.5,
      nonContinuousLoadA: 50.83,
    },
    expected: [{ value: 150, unit: "A" }],
  },
  {
    id: "overcurrent-device/500-kcmil",
    question: "Which is the largest breaker for 500 kcmil copper, 380 A?",
    kind: "published",
    form: "example",
    source: tradeForum("on 240.4(B): 400 A"),
    asked: {
      ask: "largest-for-conductor",
      circuit: "feeder",
      serves: "ordinary",
      deviceKind: "circuit-breaker",
      conductor: { size: "500 kcmil", run: plainRun() },
    },
    expected: [{ value: 400, unit: "A" }],
  },
  {
    id: "overcurrent-device/two-500-kcmil",
    question: "May two sets of 500 kcmil, 760 A, be protected at 800 A?",
    kind: "published",
    form: "example",
    source: tradeForum("on overcurrent protection of parallel conductors, to the 2011 edition: yes"),
    asked: {
      ask: "largest-for-conductor",
      circuit: "feeder",
      serves: "ordinary",
      deviceKind: "circuit-breaker",
      conductor: { size: "500 kcmil", run: plainRun({ sets: 2 }) },
    },
    expected: [{ value: 800, unit: "A" }],
  },
  {
    id: "overcurrent-device/three-600-kcmil",
    question: "Which is the largest breaker for three sets of 600 kcmil?",
    kind: "published",
    form: "example",
    source: ecm(
      "Code Q&A on overcurrent devices and conductor ratings, to the 2017 edition: above 800 A not rounded up",
    ),
    asked: {
      ask: "largest-for-conductor",
      circuit: "feeder",
      serves: "ordinary",
      deviceKind: "circuit-breaker",
      conductor: { size: "600 kcmil", run: plainRun({ sets: 3 }) },
    },
    expected: [{ value: 1200, unit: "A" }],
  },
  {
    id: "overcurrent-device/300-kcmil-tw-aluminum",
    question: "Which is the largest device for a 300 kcmil aluminum TW feeder?",
    kind: "published",
    form: "example",
    source: tradeForum("engineers' examination question on conductor protection"),
    printed: "a device below the 195 A of the conductor",
    asked: {
      ask: "largest-for-conductor",
      circuit: "feeder",
      serves: "ordinary",
      deviceKind: "circuit-breaker",
      conductor: { size: "300 kcmil", run: plainRun({ metal: "aluminum", insulation: "TW" }) },
    },
    expected: [{ value: 200, unit: "A" }],
    note: "195 A is no standard rating, the circuit is a feeder and 200 A is not over 800 A, so 240.4(B) allows the next one up, as the question's own answers point out.",
  },
  {
    id: "overcurrent-device/9-a-before-2023",
    question: "Which is the smallest standard breaker for 9 A, before 2023?",
    editions: ["2017", "2020"],
    kind: "published",
    form: "table",
    source: nfpa70("240.6(A) of the 2017 and 2020 editions: breakers begin at 15 A"),
    asked: {
      ask: "smallest-for-load",
      circuit: "branch-circuit",
      serves: "ordinary",
      deviceKind: "circuit-breaker",
      continuousLoadA: 0,
      nonContinuousLoadA: 9,
    },
    expected: [{ value: 15, unit: "A" }],
  },
  {
    id: "overcurrent-device/9-a-since-2023",
    question: "And since 2023?",
    editions: ["2023"],
    kind: "published",
    form: "table",
    source: nfpa70("240.6(A): 10 A added in 2023"),
    asked: {
      ask: "smallest-for-load",
      circuit: "branch-circuit",
      serves: "ordinary",
      deviceKind: "circuit-breaker",
      continuousLoadA: 0,
      nonContinuousLoadA: 9,
    },
    expected: [{ value: 10, unit: "A" }],
    note: "The 2023 edition brought circuits of 10 A (210.18).",
  },
  {
    id: "overcurrent-device/receptacles",
    question: "8 AWG copper of 50 A derated to four in a raceway, with receptacles for portable loads?",
    kind: "hand",
    working: "90 C column 55 x 0.80 = 44 A; receptacle circuits are not rounded up: 40 A",
    asked: {
      ask: "largest-for-conductor",
      circuit: "receptacle-branch-circuit",
      serves: "ordinary",
      deviceKind: "circuit-breaker",
      conductor: { size: "8 AWG", run: plainRun({ grouping: { in: "raceway", conductors: 4 } }) },
    },
    expected: [{ value: 40, unit: "A" }],
  },
  {
    id: "overcurrent-device/check-90-on-3-awg",
    question: "May 90 A protect 3 AWG copper on 60 C terminals, load 80 A not continuous?",
    kind: "hand",
    working: "85 A at 60 C; the next standard rating is 90 A",
    asked: {
      ask: "check",
      circuit: "feeder",
      serves: "ordinary",
      deviceKind: "circuit-breaker",
      deviceA: 90,
      continuousLoadA: 0,
      nonContinuousLoadA: 80,
      conductor: { size: "3 AWG", run: runEndingAt(60) },
    },
    expected: [{ value: true }],
  },
  {
    id: "overcurrent-device/check-100-on-3-awg",
    question: "And 100 A?",
    kind: "hand",
    working: "85 A at 60 C; the next standard rating is 90 A, not 100 A",
    asked: {
      ask: "check",
      circuit: "feeder",
      serves: "ordinary",
      deviceKind: "circuit-breaker",
      deviceA: 100,
      continuousLoadA: 0,
      nonContinuousLoadA: 80,
      conductor: { size: "3 AWG", run: runEndingAt(60) },
    },
    expected: [{ value: false }],
  },
];

export const OVERCURRENT_DEVICE_CASES: readonly Case[] = [...EXAMPLES, ...standardRatings(), ...smallConductors()];
