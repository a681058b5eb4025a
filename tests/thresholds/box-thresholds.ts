/** Boxes, raceways and wireways: volumes, lengths and shares. */
import type {
  BoxFillQuestion,
  FillConductor,
  PullBoxQuestion,
  RacewayFillQuestion,
  WirewayFillQuestion,
} from "@landfast/rules";
import { advice, answer } from "./asked.js";
import { type EditionName, overNumbers, overWords, type Threshold } from "./threshold.js";

/** A box with 12 AWG only, 2.25 cubic inches an allowance. */
function box(change: Partial<BoxFillQuestion>, edition: EditionName, result?: string): string {
  return answer(
    "box-fill",
    {
      conductors: [],
      equipmentGrounds: [{ count: 1, size: "12 AWG" }],
      internalClamps: false,
      supportFittings: 0,
      devices: [],
      ...change,
    },
    edition,
    result,
  );
}

/** Something whose allowances, with the one of the ground, take 2.25 cubic inches each; asked around that volume. */
function takes(
  name: string,
  where: readonly string[],
  allowances: number,
  clause: string,
  change: Partial<BoxFillQuestion>,
  editions?: readonly EditionName[],
): Threshold {
  const needed = (1 + allowances) * 2.25;
  return overNumbers({
    name: `volume of ${name}`,
    where,
    ...(editions && { editions }),
    kind: "published",
    source: `NFPA 70 ${clause}: ${String(allowances)}, and one of the ground: ${String(1 + allowances)} x 2.25 = ${String(needed)} in3`,
    unit: "in3",
    step: 0.01,
    values: [hundredths(needed, -1), needed, hundredths(needed, 1)],
    answers: ["false", "true", "true"],
    ask: (boxVolumeIn3, edition) => box({ ...change, boxVolumeIn3 }, edition),
  });
}

function hundredths(value: number, by: number): number {
  return Math.round(value * 100 + by) / 100;
}

const INCH = (value: number) => ({ value, unit: "in" }) as const;

/** Conductors of so many square inches. */
const measured = (value: number, count = 1): FillConductor => ({
  kind: "conductor",
  count,
  size: "4 AWG",
  insulation: "other",
  stranding: "class-B",
  measuredArea: { value, unit: "in2" },
});

function raceway(question: Partial<RacewayFillQuestion>, edition: EditionName, result?: string): string {
  return answer(
    "raceway-fill",
    { ask: "fill", raceway: { kind: "EMT", tradeSize: "1" }, conductors: [measured(0.1)], ...question },
    edition,
    result,
  );
}

function wireway(question: Partial<WirewayFillQuestion>, edition: EditionName): string {
  return answer(
    "wireway-fill",
    { ask: "fill", kind: "metal-wireway", width: INCH(10), height: INCH(10), conductors: [measured(1)], ...question },
    edition,
  );
}

const STRAIGHT: PullBoxQuestion = {
  largestConductor: "4/0 AWG",
  entries: [
    { id: "A", wall: "left", row: 1, tradeSize: "2" },
    { id: "B", wall: "right", row: 1, tradeSize: "2" },
  ],
  pulls: [{ from: "A", to: "B", spliced: false }],
};
const ANGLE: PullBoxQuestion = {
  largestConductor: "4/0 AWG",
  entries: [
    { id: "A", wall: "left", row: 1, tradeSize: "2" },
    { id: "B", wall: "top", row: 1, tradeSize: "2" },
  ],
  pulls: [{ from: "A", to: "B", spliced: false, apart: INCH(20) }],
};

export const BOX_THRESHOLDS: readonly Threshold[] = [
  takes(
    "conductors that end or are spliced",
    ["topics/boxes/box-fill.ts ALLOWANCES.ends-or-spliced"],
    3,
    "314.16(B)(1)",
    {
      conductors: [{ count: 3, size: "12 AWG", manner: "ends-or-spliced" }],
    },
  ),
  takes("conductors that pass through", ["topics/boxes/box-fill.ts ALLOWANCES.passes-through"], 3, "314.16(B)(1)", {
    conductors: [{ count: 3, size: "12 AWG", manner: "passes-through" }],
  }),
  takes("unbroken loops", ["topics/boxes/box-fill.ts ALLOWANCES.unbroken-loop"], 6, "314.16(B)(1)", {
    conductors: [{ count: 3, size: "12 AWG", manner: "unbroken-loop" }],
  }),
  takes("conductors that stay inside", ["topics/boxes/box-fill.ts ALLOWANCES.stays-inside"], 0, "314.16(B)(1)", {
    conductors: [{ count: 3, size: "12 AWG", manner: "stays-inside" }],
  }),
  takes("a device", ["topics/boxes/box-fill.ts DEVICE_ALLOWANCES"], 2, "314.16(B)(4)", {
    devices: [{ largestConductor: "12 AWG", gangs: 1 }],
  }),
  takes(
    "a terminal block",
    ["edition 2023 boxFill.terminalBlockAllowance"],
    1,
    "314.16(B)(6) (2023)",
    { terminalBlocks: [{ largestConductor: "12 AWG" }] },
    ["2023"],
  ),
  takes(
    "a terminal block before it was counted",
    ["edition 2017 boxFill.terminalBlockAllowance", "edition 2020 boxFill.terminalBlockAllowance"],
    0,
    "314.16(B) (2017, 2020): not named",
    { terminalBlocks: [{ largestConductor: "12 AWG" }] },
    ["2017", "2020"],
  ),
  overNumbers({
    name: "equipment grounds that take one allowance",
    where: [
      "edition 2020 boxFill.groundsInOneAllowance",
      "edition 2023 boxFill.groundsInOneAllowance",
      "edition 2020 boxFill.furtherGroundAllowance",
      "edition 2023 boxFill.furtherGroundAllowance",
    ],
    editions: ["2020", "2023"],
    kind: "published",
    source: "NFPA 70 314.16(B)(5) (2020, 2023): up to four one, each further one a quarter: 1.25 x 2.25 = 2.8125",
    unit: "grounds",
    step: 1,
    values: [3, 4, 5],
    answers: ["2.25", "2.25", "2.8125"],
    ask: (count, edition) => box({ equipmentGrounds: [{ count, size: "12 AWG" }] }, edition),
  }),
  overNumbers({
    name: "equipment grounds before their number counted",
    where: ["edition 2017 boxFill.furtherGroundAllowance"],
    editions: ["2017"],
    kind: "published",
    source: "NFPA 70-2017 314.16(B)(5): one allowance for all",
    level: "their number does not count",
    unit: "grounds",
    step: 1,
    values: [3, 4, 5],
    answers: ["2.25", "2.25", "2.25"],
    ask: (count, edition) => box({ equipmentGrounds: [{ count, size: "12 AWG" }] }, edition),
  }),
  overWords({
    name: "size from which a box is judged by its dimensions",
    where: ["topics/boxes/box-fill.ts DIMENSIONED_FROM"],
    kind: "published",
    source: "NFPA 70 314.16, 314.28(A): 4 AWG and larger; 6 AWG takes 5 in3",
    unit: "size",
    step: "conductor size",
    values: ["6 AWG", "4 AWG", "3 AWG"],
    answers: ["5", "refused NOT_COVERED", "refused NOT_COVERED"],
    ask: (size, edition) => box({ equipmentGrounds: [{ count: 1, size }] }, edition),
  }),
  overWords({
    name: "size from which the rule of pull boxes holds",
    where: ["topics/boxes/pull-box.ts FROM_SIZE"],
    kind: "published",
    source: "NFPA 70 314.28(A): 4 AWG and larger; 8 x 2 = 16 in",
    unit: "size",
    step: "conductor size",
    values: ["6 AWG", "4 AWG", "3 AWG"],
    answers: ["refused NOT_COVERED", "width 16 in", "width 16 in"],
    ask: (largestConductor, edition) => answer("pull-box", { ...STRAIGHT, largestConductor }, edition),
  }),
  overNumbers({
    name: "width of a box for a straight pull",
    where: ["topics/boxes/pull-box.ts STRAIGHT_TIMES"],
    kind: "published",
    source: "NFPA 70 314.28(A)(1): 8 x 2 = 16 in",
    unit: "in",
    step: 0.01,
    values: [15.99, 16, 16.01],
    answers: ["false", "true", "true"],
    ask: (value, edition) =>
      answer("pull-box", { ...STRAIGHT, box: { width: INCH(value), height: INCH(20), depth: INCH(10) } }, edition),
  }),
  overNumbers({
    name: "width of a box for an angle pull",
    where: ["topics/boxes/pull-box.ts ANGLE_TIMES"],
    kind: "published",
    source: "NFPA 70 314.28(A)(2): 6 x 2 = 12 in",
    unit: "in",
    step: 0.01,
    values: [11.99, 12, 12.01],
    answers: ["false", "true", "true"],
    ask: (value, edition) =>
      answer("pull-box", { ...ANGLE, box: { width: INCH(value), height: INCH(20), depth: INCH(10) } }, edition),
  }),
  overNumbers({
    name: "distance between the entries of an angle pull",
    where: ["topics/boxes/pull-box.ts ANGLE_TIMES"],
    kind: "published",
    source: "NFPA 70 314.28(A)(2): 6 x 2 = 12 in",
    unit: "in",
    step: 0.01,
    values: [11.99, 12, 12.01],
    answers: ["false", "true", "true"],
    ask: (value, edition) =>
      answer(
        "pull-box",
        {
          ...ANGLE,
          pulls: [{ from: "A", to: "B", spliced: false, apart: INCH(value) }],
          box: { width: INCH(20), height: INCH(20), depth: INCH(10) },
        },
        edition,
      ),
  }),
  overNumbers({
    name: "longest nipple filled to 60 %",
    where: ["topics/fill/raceway-fill.ts NIPPLE_LENGTH_IN"],
    kind: "published",
    source: "NFPA 70 Chapter 9, note 4 to the tables: 24 in; 0.5 in2 are within 0.519 of 1 in EMT, not within 0.346",
    unit: "in",
    step: 0.01,
    values: [23.99, 24, 24.01],
    answers: ["true", "true", "false"],
    ask: (value, edition) =>
      raceway({ nippleLength: INCH(value), conductors: [measured(0.2, 2), measured(0.1)] }, edition),
  }),
  overNumbers({
    name: "area that conductors fill in a nipple",
    where: ["topics/fill/raceway-fill.ts NIPPLE_PERCENT"],
    kind: "published",
    source: "NFPA 70 Chapter 9 Table 4: 60 % of 1 in EMT is 0.519 in2; 0.5 + 0.019",
    unit: "in2",
    step: 0.001,
    values: [0.018, 0.019, 0.02],
    answers: ["true", "true", "false"],
    ask: (area, edition) =>
      raceway({ nippleLength: INCH(12), conductors: [measured(0.25, 2), measured(area)] }, edition),
  }),
  overWords({
    name: "ratio of raceway to conductor at which three may jam",
    where: [
      "topics/fill/raceway-fill.ts JAM_FROM",
      "topics/fill/raceway-fill.ts JAM_TO",
      "topics/fill/raceway-fill.ts adviceOnJamming: 3",
    ],
    kind: "published",
    source:
      "NFPA 70 Chapter 9 Table 1, informational note 2: 2.8 to 3.2. 2 in EMT: 2.067 / 0.642 = 3.22, / 0.711 = 2.91, / 0.766 = 2.70",
    unit: "size",
    step: "conductor size",
    values: ["4/0 AWG", "250 kcmil", "300 kcmil"],
    answers: ["silent", "advised", "silent"],
    ask: (size, edition) => jams(size, 3, edition),
  }),
  overNumbers({
    name: "number of conductors that may jam",
    where: ["topics/fill/raceway-fill.ts adviceOnJamming: 3"],
    kind: "published",
    source: "NFPA 70 Chapter 9 Table 1, informational note 2: three",
    unit: "conductors",
    step: 1,
    values: [2, 3, 4],
    answers: ["silent", "advised", "silent"],
    ask: (count, edition) => jams("250 kcmil", count, edition),
  }),
  overNumbers({
    name: "number in a raceway beyond which ampacity may be adjusted",
    where: ["topics/fill/raceway-fill.ts adviceOnAdjustment: 3"],
    kind: "published",
    source: "NFPA 70 310.15(C)(1) (310.15(B)(3)(a) in 2017): more than three",
    unit: "conductors",
    step: 1,
    values: [2, 3, 4],
    answers: ["silent", "silent", "advised"],
    ask: (count, edition) =>
      advice(
        "raceway-fill",
        { ask: "fill", raceway: { kind: "EMT", tradeSize: "2" }, conductors: [measured(0.1, count)] },
        edition,
        /adjusted/,
      ),
  }),
  overNumbers({
    name: "fraction of a conductor that counts as one more",
    where: [
      "topics/fill/number-permitted.ts numberPermitted: 10",
      "topics/fill/number-permitted.ts numberPermitted: 8",
    ],
    kind: "published",
    source: "NFPA 70 Chapter 9, note 7 to the tables: 0.8 or more; 2 in EMT: 1.342 / 0.1525 = 8.8, / 0.1526 = 8.79",
    unit: "in2",
    step: 0.0001,
    values: [0.1524, 0.1525, 0.1526],
    answers: ["9", "9", "8"],
    ask: (area, edition) => permitted(area, "2", edition),
  }),
  overNumbers({
    name: "area at which three conductors become two",
    where: ["topics/fill/raceway-fill.ts howMany: 3"],
    kind: "published",
    source: "NFPA 70 Chapter 9 Tables 1 and 4, note 7: 1 in EMT, 40 %: 0.346 / 0.1235 = 2.802, / 0.1236 = 2.799",
    unit: "in2",
    step: 0.0001,
    values: [0.1234, 0.1235, 0.1236],
    answers: ["3", "3", "2"],
    ask: (area, edition) => permitted(area, "1", edition),
  }),
  overNumbers({
    name: "area at which two conductors become one",
    where: ["topics/fill/raceway-fill.ts howMany: 2", "topics/fill/raceway-fill.ts mostOf: 3"],
    kind: "published",
    source:
      "NFPA 70 Chapter 9 Tables 1 and 4, note 7: 1 in EMT, 31 %: 0.268 / 0.1488 = 1.801, / 0.1489 = 1.7999; 53 % would hold three",
    unit: "in2",
    step: 0.0001,
    values: [0.1487, 0.1488, 0.1489],
    answers: ["2", "2", "1"],
    ask: (area, edition) => permitted(area, "1", edition),
  }),
  overNumbers({
    name: "conductors by which the share of a raceway goes",
    where: [],
    kind: "published",
    source: "NFPA 70 Chapter 9 Tables 1 and 4: 1 in EMT, 53, 31 and 40 %: 0.458, 0.268 and 0.346 in2",
    unit: "conductors",
    step: 1,
    values: [1, 2, 3],
    answers: ["0.458", "0.268", "0.346"],
    ask: (count, edition) => raceway({ conductors: [measured(0.05, count)] }, edition, "area they may fill"),
  }),
  ...(["metal-wireway", "nonmetallic-wireway"] as const).map((kind) =>
    overNumbers({
      name: `share of a ${kind} that conductors fill`,
      where: ["topics/fill/wireway-fill.ts limitsOf: 20"],
      kind: "published",
      source: "NFPA 70 376.22(A), 378.22: 20 %",
      unit: "in2 of 100",
      step: 0.01,
      values: [19.99, 20, 20.01],
      answers: ["true", "true", "false"],
      ask: (area, edition) => wireway({ kind, conductors: [measured(area)] }, edition),
    }),
  ),
  overNumbers({
    name: "share of an enclosure's wiring space that conductors fill",
    where: ["topics/fill/wireway-fill.ts limitsOf: 40"],
    kind: "published",
    source: "NFPA 70 312.8(A)(1): 40 %",
    unit: "in2 of 100",
    step: 0.01,
    values: [39.99, 40, 40.01],
    answers: ["true", "true", "false"],
    ask: (area, edition) => wireway({ kind: "enclosure", conductors: [measured(area)] }, edition),
  }),
  ...(["metal-wireway", "nonmetallic-wireway", "enclosure"] as const).map((kind) =>
    overNumbers({
      name: `share of a ${kind} that conductors with splices fill`,
      where: ["topics/fill/wireway-fill.ts SPLICED_PERCENT"],
      kind: "published",
      source: "NFPA 70 376.56(A), 378.56, 312.8(A)(2): 75 %",
      unit: "in2 of 100",
      step: 0.01,
      values: [64.99, 65, 65.01],
      answers: ["true", "true", "false"],
      ask: (value, edition) => wireway({ kind, conductors: [measured(10)], splices: { value, unit: "in2" } }, edition),
    }),
  ),
  ...(
    [
      ["metal-wireway", 30, "376.22(B): above 30", "topics/fill/wireway-fill.ts UNADJUSTED_CONDUCTORS"],
      ["nonmetallic-wireway", 3, "378.22: as in a raceway", "topics/fill/wireway-fill.ts adviceOnAdjustment: 3"],
    ] as const
  ).map(([kind, limit, clause, where]) =>
    overNumbers({
      name: `current-carrying conductors of a ${kind} that are not adjusted`,
      where: [where],
      kind: "published",
      source: `NFPA 70 ${clause}`,
      unit: "conductors",
      step: 1,
      values: [limit - 1, limit, limit + 1],
      answers: ["silent", "silent", "advised"],
      ask: (currentCarrying, edition) =>
        advice(
          "wireway-fill",
          { ask: "fill", kind, width: INCH(10), height: INCH(10), conductors: [measured(0.1, 40)], currentCarrying },
          edition,
          /carry current/,
        ),
    }),
  ),
];

function jams(size: string, count: number, edition: EditionName): string {
  const conductors: readonly FillConductor[] = [
    { kind: "conductor", count, size, insulation: "THHN", stranding: "class-B" },
  ];
  return advice(
    "raceway-fill",
    { ask: "fill", raceway: { kind: "EMT", tradeSize: "2" }, conductors },
    edition,
    /may jam/,
  );
}

function permitted(area: number, tradeSize: string, edition: EditionName): string {
  return raceway({ ask: "how-many", raceway: { kind: "EMT", tradeSize }, conductors: [measured(area)] }, edition);
}
