/** Motors: currents by voltage, conductors, overload and short-circuit devices. */
import type { Motor, MotorCircuitQuestion } from "@landfast/rules";
import { celsius } from "../worked-cases/plain-run.js";
import { answer } from "./asked.js";
import { type EditionName, overNumbers, overWords, type Threshold } from "./threshold.js";

/** A motor of several speeds, which goes by its nameplate, so that its current can be any. */
const byNameplate = (nameplateA: number): Motor => ({
  kind: "squirrel-cage",
  horsepower: "25",
  voltageV: 460,
  build: "multispeed",
  nameplateA,
});

function motor(question: Partial<MotorCircuitQuestion>, edition: EditionName, result?: string): string {
  return answer(
    "motor-circuit",
    { ask: "conductor", motor: byNameplate(40), duty: "continuous", ...question },
    edition,
    result,
  );
}

type Device = NonNullable<MotorCircuitQuestion["shortCircuitDevice"]>;

const COPPER_90 = { metal: "copper", insulationRating: { value: 90, unit: "Cel" } } as const;

function device(nameplateA: number, kind: Device["kind"], edition: EditionName, efficientDesignB = false): string {
  return motor(
    {
      ask: "short-circuit-device",
      motor: byNameplate(nameplateA),
      shortCircuitDevice: { kind, efficientDesignB, failsToStart: true },
    },
    edition,
  );
}

/** Current of Table 430.250 or 430.248 at a voltage. */
function current(kind: Motor["kind"], horsepower: string, voltageV: number, edition: EditionName): string {
  return motor({ motor: { kind, horsepower, voltageV, build: "ordinary" } }, edition, "motor current");
}

const NO_COLUMN = "refused OUTSIDE_TABLE";

/** The ends of the voltages that a column is for. */
function voltages(
  kind: Motor["kind"],
  horsepower: string,
  low: number,
  high: number,
  amperes: string,
  neighbors: { readonly below?: string; readonly above?: string } = {},
): readonly Threshold[] {
  const about = {
    where: [
      "topics/motors/motor-current.ts THREE_PHASE_COLUMNS",
      ...(kind === "single-phase" ? ["topics/motors/motor-current.ts SINGLE_PHASE_COLUMNS"] : []),
    ],
    kind: "published",
    source: `NFPA 70 Table ${kind === "single-phase" ? "430.248" : "430.250"}: ${String(low)} to ${String(high)} V, ${horsepower} hp ${amperes} A`,
    unit: "V",
    step: 1,
  } as const;
  const ask = (voltageV: number, edition: EditionName): string => current(kind, horsepower, voltageV, edition);
  const below = neighbors.below ?? NO_COLUMN;
  const above = neighbors.above ?? NO_COLUMN;
  const name = `${kind} column of ${String(low)}`;
  if (low === high)
    return [
      overNumbers({
        ...about,
        name: `${name} V`,
        values: [low - 1, low, low + 1],
        answers: [below, amperes, above],
        ask,
      }),
    ];
  return [
    overNumbers({
      ...about,
      name: `${name} to ${String(high)} V, low end`,
      values: [low - 1, low, low + 1],
      answers: [below, amperes, amperes],
      ask,
    }),
    overNumbers({
      ...about,
      name: `${name} to ${String(high)} V, high end`,
      values: [high - 1, high, high + 1],
      answers: [amperes, amperes, above],
      ask,
    }),
  ];
}

export const MOTOR_THRESHOLDS: readonly Threshold[] = [
  ...voltages("squirrel-cage", "1", 110, 120, "8.4"),
  ...voltages("squirrel-cage", "25", 200, 200, "78.2"),
  ...voltages("squirrel-cage", "25", 208, 208, "74.8"),
  ...voltages("squirrel-cage", "25", 220, 240, "68"),
  ...voltages("squirrel-cage", "25", 440, 480, "34"),
  ...voltages("squirrel-cage", "25", 550, 600, "27"),
  ...voltages("squirrel-cage", "60", 2300, 2300, "16"),
  ...voltages("single-phase", "1", 110, 120, "16"),
  ...voltages("single-phase", "1", 200, 200, "9.2"),
  ...voltages("single-phase", "1", 208, 208, "8.8"),
  ...voltages("single-phase", "1", 220, 240, "8"),
  overNumbers({
    name: "current of one motor at 125 %",
    where: ["topics/motors/motor-circuit.ts CONDUCTOR_FACTOR", "topics/motors/motor-conductor.ts RATING_BY_LETTER_C"],
    kind: "published",
    source:
      "NFPA 70 430.22, 110.14(C)(1)(a)(4): 1.25 x 40 = 50 A, 8 AWG at the 75 C of design B; at 90 C it would carry 55",
    unit: "A",
    step: 0.1,
    values: [39.9, 40, 40.1],
    answers: ["8 AWG", "8 AWG", "6 AWG"],
    ask: (nameplateA, edition) =>
      motor(
        {
          motor: byNameplate(nameplateA),
          conductor: { ...COPPER_90, terminalTemperature: celsius(90), designLetter: "B" },
        },
        edition,
      ),
  }),
  ...(
    [
      ["60 C", [59, 60, 61], ["refused OUTSIDE_TABLE", "6 AWG", "6 AWG"], "6 AWG carries 55 A at 60 C"],
      ["75 C", [74, 75, 76], ["6 AWG", "8 AWG", "8 AWG"], "8 AWG carries 50 A at 75 C"],
    ] as const
  ).map(([column, values, answers, working]) =>
    overNumbers({
      name: `terminal of a motor circuit from which the ${column} column holds`,
      where: ["topics/motors/motor-conductor.ts COLUMNS_C"],
      kind: "published",
      source: `NFPA 70 430.22, 110.14(C), Table 310.16: 1.25 x 40 = 50 A; ${working}`,
      unit: "Cel",
      step: 1,
      values,
      answers,
      ask: (value, edition) =>
        motor({ conductor: { ...COPPER_90, terminalTemperature: celsius(value), designLetter: "B" } }, edition),
    }),
  ),
  overNumbers({
    name: "terminal of several motors from which the 90 C column holds",
    where: ["topics/motors/motor-conductor.ts COLUMNS_C"],
    kind: "published",
    source: "NFPA 70 430.24, Table 310.16: 1.25 x 40 + 5 = 55 A; 8 AWG carries 55 at 90 C, 50 at 75",
    unit: "Cel",
    step: 1,
    values: [89, 90, 91],
    answers: ["6 AWG", "8 AWG", "8 AWG"],
    ask: (value, edition) =>
      motor(
        { otherMotors: [byNameplate(5)], conductor: { ...COPPER_90, terminalTemperature: celsius(value) } },
        edition,
      ),
  }),
  overNumbers({
    name: "service factor that allows 125 %",
    where: [
      "topics/motors/motor-circuit.ts RAISED_FROM_SERVICE_FACTOR",
      "topics/motors/motor-circuit.ts OVERLOAD_RAISED_PERCENT",
      "topics/motors/motor-circuit.ts OVERLOAD_PERCENT",
    ],
    kind: "published",
    source: "NFPA 70 430.32(A)(1): 1.15 or greater 125 %, all others 115 %",
    unit: "",
    step: 0.01,
    values: [1.14, 1.15, 1.16],
    answers: ["46", "50", "50"],
    ask: (serviceFactor, edition) => motor({ ask: "overload", serviceFactor, temperatureRiseC: "unmarked" }, edition),
  }),
  overNumbers({
    name: "temperature rise that allows 125 %",
    where: ["topics/motors/motor-circuit.ts RAISED_TO_RISE_C"],
    kind: "published",
    source: "NFPA 70 430.32(A)(1): 40 C or less 125 %, all others 115 %",
    unit: "Cel",
    step: 1,
    values: [39, 40, 41],
    answers: ["50", "50", "46"],
    ask: (temperatureRiseC, edition) =>
      motor({ ask: "overload", serviceFactor: "unmarked", temperatureRiseC }, edition),
  }),
  overWords({
    name: "horsepower above which the overload is answered",
    where: [
      "topics/motors/motor-circuit.ts isOverOneHorsepower: Number(whole) > 1",
      'topics/motors/motor-circuit.ts isOverOneHorsepower: whole === "1"',
    ],
    kind: "published",
    source: "NFPA 70 430.32(A): motors of more than 1 horsepower",
    unit: "hp",
    step: "horsepower",
    values: ["3/4", "1", "1-1/2"],
    answers: ["refused NOT_COVERED", "refused NOT_COVERED", "46"],
    ask: (horsepower, edition) =>
      motor(
        {
          ask: "overload",
          motor: { ...byNameplate(40), horsepower },
          serviceFactor: "unmarked",
          temperatureRiseC: "unmarked",
        },
        edition,
      ),
  }),
  overWords({
    name: "whole horsepower above which the overload is answered",
    where: [
      "topics/motors/motor-circuit.ts isOverOneHorsepower: Number(whole) > 1",
      'topics/motors/motor-circuit.ts isOverOneHorsepower: whole === "1"',
    ],
    kind: "published",
    source: "NFPA 70 430.32(A): motors of more than 1 horsepower",
    unit: "hp",
    step: "horsepower",
    values: ["1", "1-1/2", "2"],
    answers: ["refused NOT_COVERED", "46", "46"],
    ask: (horsepower, edition) =>
      motor(
        {
          ask: "overload",
          motor: { ...byNameplate(40), horsepower },
          serviceFactor: "unmarked",
          temperatureRiseC: "unmarked",
        },
        edition,
      ),
  }),
  overNumbers({
    name: "nontime-delay fuse of 400 %, up to 600 A",
    where: [
      "topics/motors/short-circuit-device.ts NONTIME_DELAY_PERCENT",
      "topics/motors/short-circuit-device.ts SMALL_FUSE_UP_TO_A",
    ],
    kind: "published",
    source:
      "NFPA 70 430.52(C)(1) exception 2(a): 4 x 149 = 596, so 500; 4 x 150 = 600; 4 x 151 = 604, but 601 A is beyond 600",
    unit: "A",
    step: 1,
    values: [149, 150, 151],
    answers: ["500", "600", "600"],
    ask: (amperes, edition) => device(amperes, "nontime-delay-fuse", edition),
  }),
  overNumbers({
    name: "time-delay fuse of 225 %",
    where: ["topics/motors/short-circuit-device.ts TIME_DELAY_PERCENT"],
    kind: "published",
    source: "NFPA 70 430.52(C)(1) exception 2(b): 2.25 x 99 = 222.75, so 200; 2.25 x 100 = 225, which is standard",
    unit: "A",
    step: 1,
    values: [99, 100, 101],
    answers: ["200", "225", "225"],
    ask: (amperes, edition) => device(amperes, "time-delay-fuse", edition),
  }),
  overNumbers({
    name: "fuse above 600 A of 300 %",
    where: ["topics/motors/short-circuit-device.ts LARGE_FUSE_PERCENT"],
    kind: "published",
    source: "NFPA 70 430.52(C)(1) exception 2(d): 3 x 399 = 1197, so 1000; 3 x 400 = 1200",
    unit: "A",
    step: 1,
    values: [399, 400, 401],
    answers: ["1000", "1200", "1200"],
    ask: (amperes, edition) => device(amperes, "time-delay-fuse", edition),
  }),
  overNumbers({
    name: "inverse-time breaker of 400 %, up to 100 A of motor current",
    where: [
      "topics/motors/short-circuit-device.ts BREAKER_SMALL_MOTOR_PERCENT",
      "topics/motors/short-circuit-device.ts SMALL_MOTOR_UP_TO_A",
    ],
    kind: "published",
    source: "NFPA 70 430.52(C)(1) exception 2(c): 4 x 99 = 396, so 350; 4 x 100 = 400; 3 x 101 = 303, so 300",
    unit: "A",
    step: 1,
    values: [99, 100, 101],
    answers: ["350", "400", "300"],
    ask: (amperes, edition) => device(amperes, "inverse-time-breaker", edition),
  }),
  overNumbers({
    name: "inverse-time breaker of 300 %, above 100 A of motor current",
    where: ["topics/motors/short-circuit-device.ts BREAKER_LARGE_MOTOR_PERCENT"],
    kind: "published",
    source: "NFPA 70 430.52(C)(1) exception 2(c): 3 x 199 = 597, so 500; 3 x 200 = 600",
    unit: "A",
    step: 1,
    values: [199, 200, 201],
    answers: ["500", "600", "600"],
    ask: (amperes, edition) => device(amperes, "inverse-time-breaker", edition),
  }),
  ...(
    [
      [false, "TRIP_PERCENT", 1300],
      [true, "TRIP_EFFICIENT_PERCENT", 1700],
    ] as const
  ).map(([efficient, where, percent]) =>
    overNumbers({
      name: `instantaneous trip of ${String(percent)} %`,
      where: [`topics/motors/short-circuit-device.ts ${where}`],
      kind: "published",
      source: `NFPA 70 430.52(C)(3) exception 1: ${String(percent)} % of the motor's current`,
      unit: "A",
      step: 1,
      values: [99, 100, 101],
      answers: [String((99 * percent) / 100), String(percent), String((101 * percent) / 100)],
      ask: (amperes, edition) => device(amperes, "instantaneous-trip-breaker", edition, efficient),
    }),
  ),
];
