/** Conductors as they run: what they carry, and where terminals, company and warmth begin to count. */
import type { ConductorRun, DwellingServiceQuestion, Grouping } from "@landfast/rules";
import { celsius, plainRun, runEndingAt } from "../worked-cases/plain-run.js";
import { advice, answer, found } from "./asked.js";
import { type EditionName, overNumbers, overWords, type Threshold } from "./threshold.js";

/** What the conductor carries, and the limit at its terminations: "125 at 60". */
function limited(size: string, circuitRatingA: number, edition: EditionName): string {
  const question = { size, run: plainRun({ loadEnd: "unmarked" }), circuitRatingA } as const;
  const limit = answer("ampacity", question, edition, "temperature limit at the terminations");
  return `${answer("ampacity", question, edition)} at ${limit}`;
}

/** 1/0 AWG copper THHN: 170 A at 90 C, 150 at 75, 125 at 60 (Table 310.16). */
function carries(
  change: Partial<ConductorRun>,
  edition: EditionName,
  size = "1/0 AWG",
  circuitRatingA?: number,
): string {
  const rating = circuitRatingA === undefined ? {} : { circuitRatingA };
  return answer("ampacity", { size, run: plainRun(change), ...rating }, edition);
}

const together = (grouping: Grouping, edition: EditionName): string => carries({ grouping }, edition);
const NM_CABLE = { insulation: "NM" } as const;

export const RUN_THRESHOLDS: readonly Threshold[] = [
  ...(
    [
      ["60 C column", [59, 60, 61], ["refused OUTSIDE_TABLE", "125", "125"], 60],
      ["75 C column", [74, 75, 76], ["125", "150", "150"], 75],
      ["90 C column", [89, 90, 91], ["150", "170", "170"], 90],
    ] as const
  ).map(([name, values, answers, column]) =>
    overNumbers({
      name: `rating of a terminal from which the ${name} holds`,
      where: [`core/conductor-ampacity.ts temperatureColumn: ${String(column)}`],
      kind: "published",
      source: "NFPA 70 110.14(C), Table 310.16 (310.15(B)(16) in 2017): three columns, 60, 75 and 90 C",
      unit: "Cel",
      step: 1,
      values,
      answers,
      ask: (value, edition) => carries({ supplyEnd: celsius(value), loadEnd: celsius(90) }, edition),
    }),
  ),
  overNumbers({
    name: "rating of the circuit up to which an unmarked terminal counts as 60 C",
    where: [
      "core/unmarked-terminal.ts UP_TO_A",
      "core/unmarked-terminal.ts BY_RATING.valueC",
      "core/unmarked-terminal.ts LARGE.valueC",
    ],
    kind: "published",
    source: "NFPA 70 110.14(C)(1)(a), (b): 100 A or less 60 C, over 100 A 75 C",
    unit: "A",
    step: 1,
    values: [99, 100, 101],
    answers: ["125 at 60", "125 at 60", "150 at 75"],
    ask: (value, edition) => limited("1/0 AWG", value, edition),
  }),
  overWords({
    name: "size up to which an unmarked terminal counts as 60 C",
    where: ["core/unmarked-terminal.ts UP_TO_KCMIL", "core/unmarked-terminal.ts BY_SIZE.valueC"],
    kind: "published",
    source: "NFPA 70 110.14(C)(1)(a): 14 to 1 AWG. Table 310.16: 95 and 110 A at 60 C, 150 A at 75 C",
    unit: "size",
    step: "conductor size",
    values: ["2 AWG", "1 AWG", "1/0 AWG"],
    answers: ["95 at 60", "110 at 60", "150 at 75"],
    ask: (value, edition) => limited(value, 150, edition),
  }),
  overNumbers({
    name: "current-carrying conductors that are not adjusted",
    where: ["core/run-surroundings.ts UNADJUSTED_UP_TO"],
    kind: "published",
    source: "NFPA 70 310.15(C)(1) (310.15(B)(3)(a) in 2017): more than three; four take 80 %: 0.8 x 170 = 136",
    unit: "conductors",
    step: 1,
    values: [2, 3, 4],
    answers: ["150", "150", "136"],
    ask: (conductors, edition) => together({ in: "raceway", conductors }, edition),
  }),
  overNumbers({
    name: "length of a nipple in which conductors are not adjusted",
    where: ["core/run-surroundings.ts SHORT_UP_TO_IN"],
    kind: "published",
    source: "NFPA 70 310.15(C)(1)(b) (310.15(B)(3)(a)(2) in 2017): 24 in or less",
    unit: "in",
    step: 0.01,
    values: [23.99, 24, 24.01],
    answers: ["150", "150", "136"],
    ask: (value, edition) => together({ in: "nipple", length: { value, unit: "in" }, conductors: 4 }, edition),
  }),
  overNumbers({
    name: "current-carrying conductors that a metal wireway spares",
    where: ["core/run-surroundings.ts WIREWAY_UNADJUSTED_UP_TO"],
    kind: "published",
    source: "NFPA 70 376.22(B): above 30; 31 take 40 %: 0.4 x 170 = 68",
    unit: "conductors",
    step: 1,
    values: [29, 30, 31],
    answers: ["150", "150", "68"],
    ask: (conductors, edition) => together({ in: "metal-wireway", fillPercent: 20, conductors }, edition),
  }),
  overNumbers({
    name: "fill of a metal wireway that spares its conductors",
    where: ["core/run-surroundings.ts WIREWAY_FILL_PERCENT"],
    kind: "published",
    source: "NFPA 70 376.22(A): 20 %; beyond it 30 conductors take 45 %: 0.45 x 170 = 76.5",
    unit: "%",
    step: 0.1,
    values: [19.9, 20, 20.1],
    answers: ["150", "150", "76.5"],
    ask: (fillPercent, edition) => together({ in: "metal-wireway", fillPercent, conductors: 30 }, edition),
  }),
  overNumbers({
    name: "height above a sunlit roof from which nothing is added",
    where: ["core/run-surroundings.ts ROOF_BELOW_IN"],
    kind: "published",
    source: "NFPA 70 310.15(B)(2) (310.15(B)(3)(c) in 2017): less than 7/8 in; 30 + 33 C: 0.65 x 170 = 110.5",
    unit: "in",
    step: 0.001,
    values: [0.874, 0.875, 0.876],
    answers: ["110.5", "150", "150"],
    ask: (value, edition) => carries({ sunlitRoof: { aboveRoof: { value, unit: "in" } } }, edition),
  }),
  overNumbers({
    name: "temperature added on a sunlit roof",
    where: ["core/run-surroundings.ts ROOF_ADDER_C"],
    kind: "published",
    source:
      "NFPA 70 310.15(B)(2): 33 C; 22 + 33 = 55 C is the last of its band, 0.76 x 170 = 129.2, 56 C: 0.71 x 170 = 120.7",
    unit: "Cel",
    step: 1,
    values: [21, 22, 23],
    answers: ["129.2", "129.2", "120.7"],
    ask: (value, edition) =>
      carries({ ambient: celsius(value), sunlitRoof: { aboveRoof: { value: 0, unit: "in" } } }, edition),
  }),
  overNumbers({
    name: "where the 90 C conductors of a cable carry less than its 60 C column",
    where: ["core/run-surroundings.ts CABLE_CONDUCTORS_C", "core/run-surroundings.ts CABLE_C"],
    kind: "published",
    source: "NFPA 70 334.80: 10 AWG, 40 A at 90 C: 0.8 x 40 = 32, but 30 A at 60 C; seven conductors: 0.7 x 40 = 28",
    unit: "conductors",
    step: 1,
    values: [5, 6, 7],
    answers: ["30", "30", "28"],
    ask: (conductors, edition) => carries({ ...NM_CABLE, grouping: { in: "cable", conductors } }, edition, "10 AWG"),
  }),
  overNumbers({
    name: "smallest conductor of a circuit that is not for listed uses only",
    where: ["core/small-conductor.ts NEEDS_LISTED_USE"],
    kind: "published",
    source: "NFPA 70 240.4(D)(1), (2): 18 and 16 AWG, 14 and 18 A at 90 C, are for uses listed one by one",
    level: "a load that 18 or 16 AWG would carry takes 14 AWG all the same",
    unit: "A",
    step: 1,
    values: [13, 14, 15],
    answers: ["14 AWG", "14 AWG", "14 AWG"],
    ask: (nonContinuousLoadA, edition) =>
      answer(
        "conductor-size",
        {
          circuit: "feeder",
          continuousLoadA: 0,
          nonContinuousLoadA,
          deviceA: 15,
          deviceKind: "circuit-breaker",
          run: runEndingAt(90),
        },
        edition,
      ),
  }),
  overWords({
    name: "smallest size of a parallel conductor that is not advised against",
    where: ["topics/ampacity/ampacity.ts adviceOnParallel: 1/0 AWG"],
    kind: "published",
    source: "NFPA 70 310.10(G) (310.10(H) in 2017): 1/0 AWG and larger",
    unit: "size",
    step: "conductor size",
    values: ["1 AWG", "1/0 AWG", "2/0 AWG"],
    answers: ["advised", "silent", "silent"],
    ask: (size, edition) => advice("ampacity", { size, run: plainRun({ sets: 2 }) }, edition, /in parallel/),
  }),
  overNumbers({
    name: "continuous load at 125 %, for the conductor of a circuit",
    where: ["core/circuit-load.ts CONTINUOUS_FACTOR"],
    kind: "published",
    source: "NFPA 70 215.2(A)(1), 215.3: 1.25 x 80 = 100 A",
    unit: "A",
    step: 0.1,
    values: [79.9, 80, 80.1],
    answers: ["3 AWG", "3 AWG", "refused NO_SOLUTION"],
    ask: (continuousLoadA, edition) =>
      answer(
        "conductor-size",
        {
          circuit: "feeder",
          continuousLoadA,
          nonContinuousLoadA: 0,
          deviceA: 100,
          deviceKind: "circuit-breaker",
          run: plainRun(),
        },
        edition,
      ),
  }),
  ...(["circuit-breaker", "fuse"] as const).map((deviceKind) =>
    overWords({
      name: `largest ${deviceKind} that may be the next standard rating above the ampacity`,
      where: ["core/standard-rating.ts NEXT_RATING_UP_TO_A"],
      kind: "published",
      source:
        "NFPA 70 240.4(B), (C): up to 800 A. At 75 C 2 x 400 kcmil 670 A, 2 x 500 kcmil 760 A, 2 x 750 kcmil 950 A",
      unit: "A",
      step: "standard device",
      values: ["700 A", "800 A", "1000 A"],
      answers: ["true", "true", "false"],
      ask: (device, edition) =>
        answer(
          "overcurrent-device",
          {
            ask: "check",
            circuit: "feeder",
            serves: "ordinary",
            deviceKind,
            deviceA: Number(device.split(" ")[0]),
            continuousLoadA: 0,
            nonContinuousLoadA: 600,
            conductor: {
              size: device === "700 A" ? "400 kcmil" : device === "800 A" ? "500 kcmil" : "750 kcmil",
              run: runEndingAt(75, { sets: 2 }),
            },
          },
          edition,
        ),
    }),
  ),
  overNumbers({
    name: "standard rating just above the largest allowed",
    where: ["topics/protection/overcurrent-device.ts largestForConductor: 0.5"],
    kind: "published",
    source: "NFPA 70 240.4(B), 240.6(A): 3/0 AWG carries 200 A at 75 C, 200 A is standard; 199 and 201 A are not",
    unit: "A",
    step: 1,
    values: [199, 200, 201],
    answers: ["true", "true", "false"],
    ask: (deviceA, edition) =>
      answer(
        "overcurrent-device",
        {
          ask: "check",
          circuit: "feeder",
          serves: "ordinary",
          deviceKind: "circuit-breaker",
          deviceA,
          continuousLoadA: 0,
          nonContinuousLoadA: 150,
          conductor: { size: "3/0 AWG", run: plainRun() },
        },
        edition,
      ),
  }),
  overNumbers({
    name: "smallest parallel conductor of a feeder",
    where: ["topics/conductor-size/conductor-size.ts SMALLEST_PARALLEL"],
    kind: "published",
    source:
      "NFPA 70 310.10(G) (310.10(H) in 2017): two sets of 1 AWG carry 2 x 130 = 260 A, but 1/0 AWG is the smallest",
    level: "the load that 1 AWG would carry takes 1/0 AWG all the same",
    unit: "A",
    step: 1,
    values: [249, 250, 251],
    answers: ["1/0 AWG", "1/0 AWG", "1/0 AWG"],
    ask: (nonContinuousLoadA, edition) =>
      answer(
        "conductor-size",
        {
          circuit: "feeder",
          continuousLoadA: 0,
          nonContinuousLoadA,
          deviceA: "smallest",
          deviceKind: "circuit-breaker",
          run: plainRun({ sets: 2 }),
        },
        edition,
      ),
  }),
  ...(
    [
      [
        "smallest",
        "FROM_A",
        [99, 100, 101],
        ["refused NOT_COVERED", "2 AWG", "2 AWG"],
        "100 A: 83 A, 2 AWG aluminum (90 A)",
      ],
      [
        "largest",
        "TO_A",
        [399, 400, 401],
        ["600 kcmil", "600 kcmil", "refused NOT_COVERED"],
        "400 A: 332 A, 600 kcmil aluminum (340 A)",
      ],
    ] as const
  ).map(([end, where, values, answers, working]) =>
    overNumbers({
      name: `${end} rating of a dwelling's service`,
      where: [`topics/service-size/dwelling-service.ts ${where}`],
      kind: "published",
      source: `NFPA 70 310.12 (310.15(B)(7) in 2017): 100 to 400 A; ${working}`,
      unit: "A",
      step: 1,
      values,
      answers,
      ask: (ratingA, edition) => dwelling(ratingA, { metal: "aluminum" }, edition),
    }),
  ),
  overNumbers({
    name: "share of a dwelling's rating",
    where: ["topics/service-size/dwelling-service.ts SHARE"],
    kind: "published",
    source:
      "NFPA 70 310.12 (310.15(B)(7) in 2017): 83 %; 0.83 x 210 = 174.3, 2/0 AWG (175 A); 0.83 x 211 = 175.13, 3/0",
    unit: "A",
    step: 1,
    values: [209, 210, 211],
    answers: ["2/0 AWG", "2/0 AWG", "3/0 AWG"],
    ask: (ratingA, edition) => dwelling(ratingA, {}, edition),
  }),
  overNumbers({
    name: "column on which the printed sizes of a dwelling rest",
    where: ["topics/service-size/dwelling-service.ts TABLE_C"],
    editions: ["2020", "2023"],
    kind: "published",
    source: "NFPA 70 Table 310.12: 200 A, 4/0 AWG aluminum; at 60 C 166 A take 250 kcmil (170 A)",
    unit: "Cel",
    step: 1,
    values: [74, 75, 76],
    answers: ["250 kcmil by the share", "4/0 AWG by the table", "4/0 AWG by the table"],
    ask: (value, edition) => {
      const change = { metal: "aluminum", loadEnd: celsius(value) } as const;
      const { cite } = found("dwelling-service", dwellingQuestion(200, change), edition);
      return `${dwelling(200, change, edition)} by the ${cite.locator.startsWith("Table") ? "table" : "share"}`;
    },
  }),
  overNumbers({
    name: "smallest parallel conductor of a dwelling's service",
    where: ["topics/service-size/dwelling-service.ts SMALLEST_PARALLEL"],
    kind: "published",
    source:
      "NFPA 70 310.10(G) (310.10(H) in 2017): 0.83 x 313 = 259.79 A are within 2 x 130 of 1 AWG, but 1/0 is the smallest",
    level: "the rating that 1 AWG would carry takes 1/0 AWG all the same",
    unit: "A",
    step: 1,
    values: [312, 313, 314],
    answers: ["1/0 AWG", "1/0 AWG", "1/0 AWG"],
    ask: (ratingA, edition) => dwelling(ratingA, { sets: 2 }, edition),
  }),
];

function dwellingQuestion(ratingA: number, change: Partial<ConductorRun>): DwellingServiceQuestion {
  return { ratingA, system: "single-phase-120/240", carriesWholeLoad: true, run: plainRun(change) };
}

function dwelling(ratingA: number, change: Partial<ConductorRun>, edition: EditionName): string {
  return answer("dwelling-service", dwellingQuestion(ratingA, change), edition);
}
