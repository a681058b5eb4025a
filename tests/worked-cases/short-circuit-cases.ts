/** Short-circuit heating: the circular-mil formula of ICEA P-32-382 and the k factors of IEC 60364-5-54. */
import type { CircularMilHeating, KFactorHeating, KFactorInsulation } from "@landfast/rules";
import { celsius } from "./plain-run.js";
import { icea, iceaReprint, iec60364, tradeForum, wiringBook } from "./publications.js";
import type { PublishedCase, WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"short-circuit">;

function heated(before: number, after: number): CircularMilHeating {
  return { kind: "circular-mil", initialTemperature: celsius(before), finalTemperature: celsius(after) };
}

/** A bundled core of PVC or XLPE and separate ones: arrangement, insulation, k of copper, k of aluminum. */
const K_FACTORS: readonly (readonly [KFactorHeating["arrangement"], KFactorInsulation, number, number])[] = [
  ["bundled", "PVC 70 C", 115, 76],
  ["bundled", "XLPE or EPR 90 C", 143, 94],
  ["bundled", "PVC 90 C", 100, 66],
  ["separate", "PVC 70 C", 143, 95],
  ["separate", "XLPE or EPR 90 C", 176, 116],
];

function kFactors(): readonly PublishedCase<"short-circuit">[] {
  return K_FACTORS.flatMap(([arrangement, insulation, copper, aluminum]) =>
    (
      [
        ["copper", copper],
        ["aluminum", aluminum],
      ] as const
    ).map(
      ([metal, k]): PublishedCase<"short-circuit"> => ({
        id: `short-circuit/k/${arrangement}/${insulation}/${metal}`,
        question: `What does a ${arrangement} ${metal} conductor of 10 mm2, ${insulation}, bear for one second?`,
        kind: "published",
        form: "table",
        source: iec60364(`Annex A, ${arrangement}, ${insulation}, ${metal}: k = ${String(k)}`),
        asked: {
          ask: "largest-current",
          heating: { kind: "k-factor", arrangement, insulation },
          metal,
          size: "10 mm2",
          timeS: 1,
        },
        expected: [{ value: 10 * k, unit: "A" }],
      }),
    ),
  );
}

const EXAMPLES: readonly Case[] = [
  {
    id: "short-circuit/immersion-heater",
    question: "200 A for 0.4 s in a PVC cable's copper core: which size must it have, is 1.5 mm2 enough?",
    kind: "published",
    form: "example",
    source: wiringBook("chapter on overcurrent and earth faults: 200 x sqrt(0.4) / 115 = 1.10 mm2, so 1.5 mm2"),
    asked: {
      ask: "smallest-size",
      heating: { kind: "k-factor", arrangement: "bundled", insulation: "PVC 70 C" },
      metal: "copper",
      currentA: 200,
      timeS: 0.4,
    },
    expected: [{ value: "1.5 mm2" }],
  },
  {
    id: "short-circuit/immersion-heater-withstand",
    question: "How long does its 1.5 mm2 bear 90 A?",
    kind: "published",
    form: "example",
    source: wiringBook("chapter on overcurrent and earth faults: 90 A for 0.4 s need 0.49 mm2, so 1.5 mm2 is enough"),
    asked: {
      ask: "largest-current",
      heating: { kind: "k-factor", arrangement: "bundled", insulation: "PVC 70 C" },
      metal: "copper",
      size: "1.5 mm2",
      timeS: 0.4,
    },
    // 115 x 1.5 / sqrt(0.4) = 272.7 A, three times the 90 A: 0.49 / 1.5 of it is 89.1 A
    expected: [{ value: 272.75, unit: "A", within: 0.05 }],
    note: "From the book's 0.49 mm2: 90 / 0.49 x 1.5 = 275 A, the same within its two figures.",
  },
  {
    id: "short-circuit/mv-90-copper",
    question: "500 kcmil copper, 90 to 250 C, one second?",
    kind: "published",
    form: "example",
    source: iceaReprint("copper of 90 C: 0.07195 A per circular mil"),
    asked: { ask: "largest-current", heating: heated(90, 250), metal: "copper", size: "500 kcmil", timeS: 1 },
    expected: [{ value: 35975, unit: "A", within: 36 }],
  },
  {
    id: "short-circuit/mv-105-copper",
    question: "500 kcmil copper, 105 to 250 C, one second?",
    kind: "published",
    form: "example",
    source: iceaReprint("copper of 105 C: 0.06773 A per circular mil"),
    asked: { ask: "largest-current", heating: heated(105, 250), metal: "copper", size: "500 kcmil", timeS: 1 },
    expected: [{ value: 33865, unit: "A", within: 34 }],
  },
  {
    id: "short-circuit/mv-90-aluminum",
    question: "500 kcmil aluminum, 90 to 250 C, one second?",
    kind: "published",
    form: "example",
    source: iceaReprint("aluminum of 90 C: 0.0470 A per circular mil"),
    asked: { ask: "largest-current", heating: heated(90, 250), metal: "aluminum", size: "500 kcmil", timeS: 1 },
    expected: [{ value: 23500, unit: "A", within: 30 }],
  },
  {
    id: "short-circuit/mv-105-aluminum",
    question: "500 kcmil aluminum, 105 to 250 C, one second?",
    kind: "published",
    form: "example",
    source: iceaReprint("aluminum of 105 C: 0.044 A per circular mil"),
    asked: { ask: "largest-current", heating: heated(105, 250), metal: "aluminum", size: "500 kcmil", timeS: 1 },
    expected: [{ value: 22000, unit: "A", within: 250 }],
    note: "Printed to two figures.",
  },
  {
    id: "short-circuit/10-awg-one-cycle",
    question: "10 AWG copper THW for one cycle, 0.0167 s?",
    kind: "published",
    form: "example",
    source: icea("chart for thermoplastic insulation, as read in a paper on component protection (web): 4300 A"),
    asked: { ask: "largest-current", heating: heated(75, 150), metal: "copper", size: "10 AWG", timeS: 0.0167 },
    expected: [{ value: 4300, unit: "A", within: 60 }],
    note: "The chart is read off to two figures.",
  },
  {
    id: "short-circuit/10-awg-withstand",
    question: "10 AWG copper, 75 to 150 C: how long does it bear 1000 A?",
    kind: "published",
    form: "example",
    source: tradeForum("substantiation of the proposal for 240.92(B): 303 000 A2s"),
    asked: { ask: "longest-time", heating: heated(75, 150), metal: "copper", size: "10 AWG", currentA: 1000 },
    expected: [{ value: 0.303, unit: "s", within: 0.002 }],
  },
  {
    id: "short-circuit/4-awg-five-seconds",
    question: "What does 4 AWG copper, 75 to 150 C, bear for five seconds?",
    kind: "published",
    form: "example",
    source: tradeForum("rule of the grounding handbook: 1 A for every 42.25 circular mils"),
    asked: { ask: "largest-current", heating: heated(75, 150), metal: "copper", size: "4 AWG", timeS: 5 },
    expected: [{ value: 987.9, unit: "A", within: 1 }],
    note: "41 740 / 42.25 = 987.9 A.",
  },
  {
    id: "short-circuit/no-final-temperature",
    question: "10 AWG copper from 75 C, up to which temperature is not said?",
    kind: "hand",
    working: "150 C bears thermoplastic, 250 C thermoset insulation: it is asked",
    asked: {
      ask: "largest-current",
      heating: { kind: "circular-mil", initialTemperature: celsius(75) },
      metal: "copper",
      size: "10 AWG",
      timeS: 1,
    },
    expected: [{ missing: "question/heating/finalTemperature" }],
  },
];

export const SHORT_CIRCUIT_CASES: readonly Case[] = [...EXAMPLES, ...kFactors()];
