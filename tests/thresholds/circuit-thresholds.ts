/** Faults, voltage drop, units and strands. */
import type { ShortCircuitQuestion, VoltageDropQuestion } from "@landfast/rules";
import { celsius } from "../worked-cases/plain-run.js";
import { advice, answer, cellRead, found, usable } from "./asked.js";
import { type EditionName, overNumbers, overWords, type Threshold } from "./threshold.js";

const FAULT = { ask: "largest-current", metal: "copper", timeS: 1 } as const;
const K_FACTOR: ShortCircuitQuestion = {
  ...FAULT,
  size: "70 mm2",
  heating: { kind: "k-factor", arrangement: "bundled", insulation: "PVC 70 C" },
};

function heated(initial: number, final: number, edition: EditionName): string {
  const heating = {
    kind: "circular-mil",
    initialTemperature: celsius(initial),
    finalTemperature: celsius(final),
  } as const;
  const { outcome, refusal } = found("short-circuit", { ...FAULT, size: "4 AWG", heating }, edition);
  return refusal === null ? outcome : refusal.code;
}

/** 2 x I x 1.98 x 500 / 1000 / 198 x 100 = I percent: 12 AWG stranded copper, 1.98 ohms per 1000 ft at 75 C. */
const DROP: VoltageDropQuestion = {
  ask: "drop",
  system: "dc",
  voltageV: 198,
  loadA: 1,
  sets: 1,
  metal: "copper",
  impedance: { kind: "dc-resistance", stranding: "stranded", coating: "uncoated", temperature: celsius(75) },
  size: "12 AWG",
  length: { value: 500, unit: "ft" },
};

/** How many strands of 2/0 AWG are a bunch of wires of class K: 133100 / n against 100.5 cmil. */
function strandClass(strands: number, edition: EditionName): string {
  return answer("strand-class", { size: "2/0 AWG", metal: "copper", strands }, edition);
}

export const CIRCUIT_THRESHOLDS: readonly Threshold[] = [
  overNumbers({
    name: "hottest insulation after a fault",
    where: ["topics/short-circuit/circular-mil-heating.ts HOTTEST_INSULATION_C"],
    kind: "published",
    source: "NFPA 70 Table 240.92(B): 250 C for thermosetting insulation",
    unit: "Cel",
    step: 1,
    values: [249, 250, 251],
    answers: ["answered", "answered", "NOT_COVERED"],
    ask: (final, edition) => heated(75, final, edition),
  }),
  overNumbers({
    name: "temperature at which the formula has no meaning",
    where: ["topics/short-circuit/circular-mil-heating.ts heatFactor: t1 + c > 0"],
    kind: "published",
    source: "ICEA P-32-382: the logarithm of (T2 + 234) / (T1 + 234)",
    unit: "Cel",
    step: 1,
    values: [-235, -234, -233],
    answers: ["NOT_COVERED", "NOT_COVERED", "answered"],
    ask: (initial, edition) => heated(initial, 150, edition),
  }),
  overNumbers({
    name: "longest fault of the k factors",
    where: ["topics/short-circuit/k-factor-heating.ts LONGEST_TIME_S"],
    kind: "published",
    source: "IEC 60364-5-54 543.1.2: disconnection within 5 s; 115 x 70 / sqrt(4.99) = 3603.67, / sqrt(5) = 3600.07",
    unit: "s",
    step: 0.01,
    values: [4.99, 5, 5.01],
    answers: ["3603.6749", "3600.0694", "refused NOT_COVERED"],
    ask: (timeS, edition) => answer("short-circuit", { ...K_FACTOR, timeS }, edition),
  }),
  overNumbers({
    name: "shortest fault without a word on its offset",
    where: ["topics/short-circuit/k-factor-heating.ts BRIEF_FAULT_S"],
    kind: "published",
    source: "IEC 60364-4-43 434.5.2: below 0.1 s asymmetry counts",
    unit: "s",
    step: 0.01,
    values: [0.09, 0.1, 0.11],
    answers: ["advised", "silent", "silent"],
    ask: (timeS, edition) => advice("short-circuit", { ...K_FACTOR, timeS }, edition, /offset/),
  }),
  overWords({
    name: "largest conductor of the higher k factor of PVC",
    where: ["topics/short-circuit/k-factor-heating.ts LARGE_PVC_MM2"],
    kind: "published",
    source: "IEC 60364-5-54 Table A.54.4: 115 up to 300 mm2, 103 above",
    unit: "size",
    step: "metric size",
    values: ["240 mm2", "300 mm2", "400 mm2"],
    answers: ["115", "115", "103"],
    ask: (size, edition) => cellRead("short-circuit", { ...K_FACTOR, size }, edition, "k-factors").printed,
  }),
  overNumbers({
    name: "voltage drop of a branch circuit that is advised against",
    where: ["topics/voltage-drop/voltage-drop.ts ADVISED_PERCENT"],
    kind: "published",
    source: "NFPA 70 210.19(A), 215.2(A), informational notes: 3 %",
    unit: "%",
    step: 0.01,
    values: [2.99, 3, 3.01],
    answers: ["silent", "silent", "advised"],
    ask: (loadA, edition) => advice("voltage-drop", { ...DROP, loadA }, edition, /More than the 3 %/),
  }),
  overNumbers({
    name: "voltage drop in all that is advised against",
    where: ["topics/voltage-drop/voltage-drop.ts ADVISED_TOTAL_PERCENT"],
    kind: "published",
    source: "NFPA 70 210.19(A), 215.2(A), informational notes: 5 %",
    unit: "%",
    step: 0.01,
    values: [4.99, 5, 5.01],
    answers: ["silent", "silent", "advised"],
    ask: (loadA, edition) => advice("voltage-drop", { ...DROP, loadA }, edition, /More than the 5 %/),
  }),
  overWords({
    name: "smallest size of a parallel circuit that is not advised against",
    where: ["topics/voltage-drop/voltage-drop.ts adviceOnParallel: 1/0 AWG"],
    kind: "published",
    source: "NFPA 70 310.10(G) (310.10(H) in 2017): 1/0 AWG and larger",
    unit: "size",
    step: "conductor size",
    values: ["1 AWG", "1/0 AWG", "2/0 AWG"],
    answers: ["advised", "silent", "silent"],
    ask: (size, edition) => advice("voltage-drop", { ...DROP, sets: 2, size }, edition, /in parallel/),
  }),
  overNumbers({
    name: "smallest size that keeps the drop of a parallel circuit",
    where: ["topics/voltage-drop/voltage-drop.ts sizeForLimit: 1/0 AWG"],
    kind: "published",
    source:
      "NFPA 70 310.10(G) (310.10(H) in 2017): 2 x 1 x 1.98 x 0.5 / 2 = 0.99 V are 0.5 %, so 12 AWG would do, but 1/0 is the smallest",
    level: "a smaller size would keep the limit",
    unit: "%",
    step: 0.1,
    values: [0.9, 1, 1.1],
    answers: ["1/0 AWG", "1/0 AWG", "1/0 AWG"],
    ask: (limitPercent, edition) =>
      answer("voltage-drop", { ...DROP, ask: "size-for-limit", sets: 2, limitPercent }, edition),
  }),
  overNumbers({
    name: "power factor",
    where: ["topics/voltage-drop/circuit-impedance.ts impedanceColumns: impedance.powerFactor <= 1"],
    kind: "hand",
    source: "a power factor is a cosine: no more than 1",
    unit: "",
    step: 0.01,
    values: [0.99, 1, 1.01],
    answers: ["usable", "usable", "unusable"],
    ask: (powerFactor, edition) =>
      usable(() =>
        answer(
          "voltage-drop",
          {
            ...DROP,
            system: "three-phase",
            impedance: { kind: "resistance-and-reactance", conduit: "PVC", powerFactor },
          },
          edition,
        ),
      ),
  }),
  ...(
    [
      ["Cel", [-273.16, -273.15, -273.14], "273.15"],
      ["degF", [-459.68, -459.67, -459.66], "459.67"],
    ] as const
  ).map(([unit, values, figure]) =>
    overNumbers({
      name: `absolute zero, ${unit}`,
      where: [`core/calculation-sheet.ts temperature: ${figure}`],
      kind: "published",
      source: "NIST SP 811 B.8: 0 K = -273.15 C = -459.67 F",
      unit,
      step: 0.01,
      values,
      answers: ["unusable", "usable", "usable"],
      ask: (value, edition) =>
        usable(() =>
          answer(
            "convert",
            { kind: "temperature", temperature: { value, unit }, to: unit === "Cel" ? "degF" : "Cel" },
            edition,
          ),
        ),
    }),
  ),
  ...(
    [
      [
        "kcmil above 4/0 AWG",
        ["211.5 kcmil", "211.6 kcmil", "211.7 kcmil"],
        ["unusable", "unusable", "usable"],
        "211.6",
        0.1,
      ],
      ["largest kcmil", ["4999 kcmil", "5000 kcmil", "5001 kcmil"], ["usable", "usable", "unusable"], "5000", 1],
      ["largest mm2", ["2499 mm2", "2500 mm2", "2501 mm2"], ["usable", "usable", "unusable"], "2500", 1],
    ] as const
  ).map(([name, values, answers, figure, step]) =>
    overWords({
      name: `size that can be read: ${name}`,
      where: [`core/conductor-size.ts parse: ${figure}`],
      kind: "hand",
      source:
        "sizes in kcmil begin above 4/0 AWG, 211.6 kcmil (Chapter 9 Table 8); none is made beyond 5000 kcmil or 2500 mm2",
      unit: "size",
      step,
      values,
      answers,
      ask: (size, edition) => usable(() => answer("convert", { kind: "size-area", size }, edition)),
    }),
  ),
  overNumbers({
    name: "fewest strands of a bunched class",
    where: ["topics/stranding/counted-classes.ts WIRE_TO"],
    kind: "hand",
    source: "133100 / (1.04 x 100.5) = 1273.4: 1274 strands are of class K, 1273 are too thick",
    unit: "strands",
    step: 1,
    values: [1273, 1274, 1275],
    answers: ["refused NO_SOLUTION", "class-K", "class-K"],
    ask: strandClass,
  }),
  overNumbers({
    name: "most strands of a bunched class",
    where: ["topics/stranding/counted-classes.ts WIRE_FROM"],
    kind: "hand",
    source: "133100 / (0.96 x 100.5) = 1379.6: 1379 strands are of class K, 1380 are too thin",
    unit: "strands",
    step: 1,
    values: [1378, 1379, 1380],
    answers: ["class-K", "class-K", "refused NO_SOLUTION"],
    ask: strandClass,
  }),
  overNumbers({
    name: "wires in one terminal beyond which the space to bend grows no more",
    where: ["core/bending-table.ts OPPOSITE_COLUMNS"],
    kind: "published",
    source: "NFPA 70 Table 312.6(B)(2): 250 kcmil, three wires 9 in, four or more 10 in",
    unit: "wires",
    step: 1,
    values: [3, 4, 5],
    answers: ["9", "10", "10"],
    ask: (wiresPerTerminal, edition) =>
      answer(
        "bending-space",
        {
          size: "250 kcmil",
          metal: "copper",
          stranding: "class-B",
          entry: "opposite",
          wiresPerTerminal,
          removableTerminal: false,
        },
        edition,
      ),
  }),
  overNumbers({
    name: "fewest readings that are compared with each other",
    where: ["topics/inspection/contact-resistance.ts readingsOf: 2"],
    kind: "hand",
    source: "one joint is like no other",
    unit: "readings",
    step: 1,
    values: [1, 2, 3],
    answers: ["unusable", "usable", "usable"],
    ask: (count, edition) =>
      usable(() =>
        resistances(
          Array.from({ length: count }, () => 18),
          edition,
        ),
      ),
  }),
  overNumbers({
    name: "resistance of a joint against the lowest of its like",
    where: [],
    kind: "published",
    source: "NETA ATS, bolted connections: more than 50 % off the lowest; 1.5 x 18 = 27",
    unit: "micro-ohm",
    step: 0.1,
    values: [26.9, 27, 27.1],
    answers: ["", "", "C"],
    ask: (third, edition) => resistances([18, 19, third], edition),
  }),
  ...(
    [
      ["like-part", 3, "possible deficiency", "probable deficiency"],
      ["like-part", 15, "probable deficiency", "major discrepancy"],
      ["air", 10, "possible deficiency", "probable deficiency"],
      ["air", 20, "probable deficiency", "deficiency to be monitored"],
      ["air", 40, "deficiency to be monitored", "major discrepancy"],
    ] as const
  ).map(([against, bound, upTo, beyond]) =>
    overNumbers({
      name: `temperature rise above ${against}: ${String(bound)} C`,
      where: [],
      kind: "published",
      source:
        "NETA ATS Table 100.18: 1 to 3, 4 to 15, above 15 C; 1 to 10, 11 to 20, 21 to 40, above 40 C; between two the harsher",
      unit: "Cel",
      step: 0.1,
      values: [(bound * 10 - 1) / 10, bound, (bound * 10 + 1) / 10],
      answers: [upTo, upTo, beyond],
      ask: (temperatureRiseC, edition) =>
        answer(
          "temperature-rise",
          {
            comparisons: [
              against === "air"
                ? { with: "air", temperatureRiseC }
                : { with: "like-part", temperatureRiseC, likeLoad: true },
            ],
          },
          edition,
        ),
    }),
  ),
];

function resistances(microOhms: readonly number[], edition: EditionName): string {
  const readings = microOhms.map((microOhm, index) => ({ joint: "ABC"[index] ?? "", microOhm }));
  return answer("contact-resistance", { readings }, edition);
}
