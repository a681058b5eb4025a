/** Motors: NFPA 70 Tables 430.248 and 430.250, conductors of 430.22, overload of 430.32. */
import type { Motor, MotorConductor } from "@landfast/rules";
import { celsius } from "./plain-run.js";
import { annexD, ecm, nfpa70, nfpa70Copy, studyText, tradeForum } from "./publications.js";
import type { PublishedCase, WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"motor-circuit">;

function motor(horsepower: string, voltageV: number, change: Partial<Motor> = {}): Motor {
  return { kind: "squirrel-cage", horsepower, voltageV, build: "ordinary", ...change };
}

function copperTo(terminal: number): MotorConductor {
  return {
    metal: "copper",
    insulationRating: celsius(90),
    terminalTemperature: celsius(terminal),
    designLetter: "B",
  };
}

/** Table 430.250, three-phase induction motors: horsepower, volts, amperes. */
const THREE_PHASE: readonly (readonly [string, number, number])[] = [
  ["5", 460, 7.6],
  ["10", 460, 14],
  ["20", 460, 27],
  ["30", 460, 40],
  ["50", 460, 65],
  ["75", 460, 96],
  ["100", 460, 124],
  ["200", 460, 240],
  ["10", 230, 28],
  ["25", 230, 68],
  ["50", 230, 130],
  ["10", 208, 30.8],
  ["10", 575, 11],
];
/** Table 430.248, single-phase motors. */
const SINGLE_PHASE: readonly (readonly [string, number, number])[] = [
  ["1/2", 115, 9.8],
  ["1", 115, 16],
  ["3", 230, 17],
  ["5", 230, 28],
  ["10", 230, 50],
];

function currents(
  table: string,
  rows: readonly (readonly [string, number, number])[],
  kind: Motor["kind"],
): readonly PublishedCase<"motor-circuit">[] {
  return rows.map(([horsepower, volts, amperes]) => ({
    id: `motor-circuit/${table}/${horsepower}/${String(volts)}`,
    question: `Full-load current of a ${horsepower} hp motor, ${kind}, ${String(volts)} V?`,
    kind: "published",
    form: "table",
    source: nfpa70(`Table ${table}, ${horsepower} hp, ${String(volts)} V`),
    asked: { ask: "conductor", motor: motor(horsepower, volts, { kind }), duty: "continuous" },
    expected: [{ result: "motor current", value: amperes, unit: "A" }],
  }));
}

const EXAMPLES: readonly Case[] = [
  {
    id: "motor-circuit/7-1-2-hp-at-60-c",
    question: "7-1/2 hp, 230 V three-phase, terminals of 60 C: which copper?",
    kind: "published",
    form: "example",
    source: tradeForum("examination question, figure 430-5: 22 x 1.25 = 27.5 A, 10 AWG (30 A at 60 C)"),
    asked: { ask: "conductor", motor: motor("7-1/2", 230), duty: "continuous", conductor: copperTo(60) },
    expected: [
      { value: "10 AWG" },
      { result: "ampacity needed", value: 27.5, unit: "A" },
      { result: "motor current", value: 22, unit: "A" },
    ],
  },
  {
    id: "motor-circuit/7-1-2-hp-at-75-c",
    question: "The same on 75 C terminals?",
    kind: "published",
    form: "example",
    source: ecm("Code Q&A on sizing conductors for a single motor, 20 March 2014: 27.5 A, 10 AWG"),
    asked: { ask: "conductor", motor: motor("7-1/2", 230), duty: "continuous", conductor: copperTo(75) },
    expected: [{ value: "10 AWG" }],
    note: "The column is misprinted: it calls 30 A the ampacity at 75 C, which is that at 60 C; at 75 C 10 AWG has 35 A and 12 AWG 25 A. The size is the same.",
  },
  {
    id: "motor-circuit/2-hp-single-phase",
    question: "2 hp, 230 V single-phase, 75 C terminals?",
    kind: "published",
    form: "example",
    source: ecm("on motor circuits: question read; 12 x 1.25 = 15 A, 14 AWG from memory"),
    asked: {
      ask: "conductor",
      motor: motor("2", 230, { kind: "single-phase" }),
      duty: "continuous",
      conductor: copperTo(75),
    },
    expected: [
      { value: "14 AWG" },
      { result: "ampacity needed", value: 15, unit: "A" },
      { result: "motor current", value: 12, unit: "A" },
    ],
  },
  {
    id: "motor-circuit/10-hp-at-480-v",
    question: "10 hp on a 480 V system: how much must its conductors carry?",
    kind: "published",
    form: "example",
    source: studyText("on 430.22: 14 x 1.25 = 17.5 A"),
    asked: { ask: "conductor", motor: motor("10", 480), duty: "continuous" },
    expected: [{ value: 17.5, unit: "A" }],
  },
  {
    id: "motor-circuit/25-hp-overload",
    question: "25 hp, nameplate 31.6 A, service factor 1.15: overload device?",
    kind: "published",
    form: "example",
    source: annexD("Example D8: 31.6 x 1.25 = 39.5 A"),
    asked: {
      ask: "overload",
      motor: motor("25", 460, { nameplateA: 31.6 }),
      duty: "continuous",
      serviceFactor: 1.15,
      temperatureRiseC: "unmarked",
    },
    expected: [{ value: 39.5, unit: "A" }],
  },
  {
    id: "motor-circuit/overload-of-other-motors",
    question: "Neither service factor nor temperature rise marked: which share of the nameplate current?",
    kind: "published",
    form: "example",
    source: nfpa70Copy("430.32(A)(1): all other motors 115 %"),
    asked: {
      ask: "overload",
      motor: motor("10", 460, { nameplateA: 14 }),
      duty: "continuous",
      serviceFactor: "unmarked",
      temperatureRiseC: "unmarked",
    },
    expected: [
      { result: "percent of the nameplate current", value: 115, unit: "%" },
      { value: 16.1, unit: "A" },
    ],
  },
  {
    id: "motor-circuit/overload-service-factor-not-known",
    question: "Service factor and rise not known?",
    kind: "hand",
    working: "125 or 115 %: it is asked",
    asked: { ask: "overload", motor: motor("10", 460, { nameplateA: 14 }), duty: "continuous" },
    expected: [{ missing: "question/serviceFactor" }],
  },
  {
    id: "motor-circuit/not-in-the-table",
    question: "28 hp?",
    kind: "hand",
    working: "the table goes from 25 to 30 hp",
    asked: { ask: "conductor", motor: motor("28", 460), duty: "continuous" },
    expected: [{ refused: "OUTSIDE_TABLE" }],
  },
];

export const MOTOR_CIRCUIT_CASES: readonly Case[] = [
  ...EXAMPLES,
  ...currents("430.250", THREE_PHASE, "squirrel-cage"),
  ...currents("430.248", SINGLE_PHASE, "single-phase"),
];
