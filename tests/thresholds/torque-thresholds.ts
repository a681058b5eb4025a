/** Slots and sizes by which the default torques of Informative Annex I are chosen. */
import type { Drive, Length } from "@landfast/rules";
import { answer, cellRead } from "./asked.js";
import { type EditionName, overNumbers, overWords, type Threshold } from "./threshold.js";

type Unit = "in" | "mm";

function slot(
  width: Length,
  length: Length,
  screwSize: "10-and-larger" | "under-10",
  edition: EditionName,
  largestConductor = "12 AWG",
): string {
  const drive: Drive = { kind: "slotted", screwSize, slotWidth: width, slotLength: length };
  return answer("torque", { drive, marked: "unmarked", largestConductor }, edition);
}

/** The row of the table for small screws by the slot's length. */
function row(length: Length, edition: EditionName): string {
  const drive: Drive = {
    kind: "slotted",
    screwSize: "under-10",
    slotWidth: { value: 0.06, unit: "in" },
    slotLength: length,
  };
  const question = { drive, marked: "unmarked", largestConductor: "12 AWG" } as const;
  return cellRead("torque", question, edition, "torque-small-slotted").row;
}

const NARROW: Readonly<Record<Unit, Length>> = { in: { value: 0.04, unit: "in" }, mm: { value: 1, unit: "mm" } };
const SHORT: Readonly<Record<Unit, Length>> = { in: { value: 0.15, unit: "in" }, mm: { value: 3.8, unit: "mm" } };

const WIDTHS = [
  ["in", [0.046, 0.047, 0.048], 0.001],
  ["mm", [1.1, 1.2, 1.3], 0.1],
] as const;
const LENGTHS = [
  ["in", [0.249, 0.25, 0.251], 0.001],
  ["mm", [6.3, 6.4, 6.5], 0.1],
] as const;

const ROWS = [
  ["in", [0.15624, 0.15625, 0.15626], ["under 5/32", "5/32", "5/32"]],
  ["in", [0.18749, 0.1875, 0.18751], ["5/32", "3/16", "3/16"]],
  ["in", [0.21874, 0.21875, 0.21876], ["3/16", "7/32", "7/32"]],
  ["in", [0.24999, 0.25, 0.25001], ["7/32", "1/4", "1/4"]],
  ["in", [0.28124, 0.28125, 0.28126], ["1/4", "9/32", "over 9/32"]],
  ["mm", [3.9, 4, 4.1], ["under 5/32", "5/32", "5/32"]],
  ["mm", [4.7, 4.8, 4.9], ["5/32", "3/16", "3/16"]],
  ["mm", [5.4, 5.5, 5.6], ["3/16", "7/32", "7/32"]],
  ["mm", [6.3, 6.4, 6.5], ["7/32", "1/4", "1/4"]],
  ["mm", [7, 7.1, 7.2], ["1/4", "9/32", "over 9/32"]],
] as const;

export const TORQUE_THRESHOLDS: readonly Threshold[] = [
  ...WIDTHS.flatMap(([unit, values, step]) => [
    overNumbers({
      name: `widest slot of the lower column, in ${unit}`,
      where: [`core/default-torque.ts NARROW_SLOT_WIDTH.${unit}`],
      kind: "published",
      source: "NFPA 70 Table I.1: 0.047 in (1.2 mm) or less; 12 AWG: 20 and 35 lbf-in",
      unit,
      step,
      values,
      answers: ["20", "20", "35"],
      ask: (value, edition) => slot({ value, unit }, SHORT[unit], "10-and-larger", edition),
    }),
    overNumbers({
      name: `width from which the wide column of small screws holds, in ${unit}`,
      where: [`core/default-torque.ts NARROW_SLOT_WIDTH.${unit}`],
      kind: "published",
      source: "NFPA 70 Table I.2: narrower than 0.047 in (1.2 mm) 7 lbf-in, else 9, for slots under 5/32 in",
      unit,
      step,
      values,
      answers: ["7", "9", "9"],
      ask: (value, edition) => slot({ value, unit }, SHORT[unit], "under-10", edition),
    }),
  ]),
  ...LENGTHS.map(([unit, values, step]) =>
    overNumbers({
      name: `longest slot of the lower column, in ${unit}`,
      where: [`core/default-torque.ts SHORT_SLOT_LENGTH.${unit}`],
      kind: "published",
      source: "NFPA 70 Table I.1: 1/4 in (6.4 mm) or less; 12 AWG: 20 and 35 lbf-in",
      unit,
      step,
      values,
      answers: ["20", "20", "35"],
      ask: (value, edition) => slot(NARROW[unit], { value, unit }, "10-and-larger", edition),
    }),
  ),
  ...ROWS.map(([unit, values, answers]) =>
    overNumbers({
      name: `slot length of row ${answers[1]}, in ${unit}`,
      where: [
        `core/default-torque.ts SLOT_LENGTHS.${unit}`,
        "core/default-torque.ts SLOT_LENGTHS.row",
        ...(answers[1] === "9/32" ? ["core/default-torque.ts rowFor: 9/32"] : []),
      ],
      kind: "published",
      source: "NFPA 70 Table I.2: 5/32, 3/16, 7/32, 1/4, 9/32 in (4, 4.8, 5.5, 6.4, 7.1 mm), and above",
      unit,
      step: unit === "in" ? 0.00001 : 0.1,
      values,
      answers,
      ask: (value, edition) => row({ value, unit }, edition),
    }),
  ),
  overWords({
    name: "largest conductor under a screw smaller than No. 10",
    where: ["core/default-torque.ts LARGEST_UNDER_SMALL_SCREW"],
    kind: "published",
    source: "NFPA 70 Table I.2: 8 AWG or smaller",
    unit: "size",
    step: "conductor size",
    values: ["10 AWG", "8 AWG", "6 AWG"],
    answers: ["7", "7", "refused OUTSIDE_TABLE"],
    ask: (size, edition) => slot(NARROW.in, SHORT.in, "under-10", edition, size),
  }),
];
