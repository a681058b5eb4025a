/** Units and sizes: NIST SP 811, ASTM B258, and tables that print a figure in two units. */
import { annexI, astmWire, nfpa70, nist, tradeForum } from "./publications.js";
import type { PublishedCase, WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"convert">;

/** Annex I Table I.1, split-bolt column, prints both: lbf-in, N-m to one place. */
const TORQUES: readonly (readonly [number, number])[] = [
  [80, 9],
  [275, 31.1],
  [385, 43.5],
  [500, 56.5],
  [650, 73.4],
  [825, 93.2],
  [1000, 113],
  [1100, 124.3],
];

function torques(): readonly PublishedCase<"convert">[] {
  return TORQUES.map(([lbfIn, newtonMeters]) => ({
    id: `convert/annex-i/${String(lbfIn)}`,
    question: `${String(lbfIn)} lbf-in in N-m?`,
    kind: "published",
    form: "table",
    source: annexI(`Table I.1, split-bolt column: ${String(newtonMeters)} N-m (${String(lbfIn)} lbf-in)`),
    asked: { kind: "torque", torque: { value: lbfIn, unit: "lbf-in" }, to: "N-m" },
    expected: [{ value: newtonMeters, unit: "N-m", within: 0.06 }],
  }));
}

/** ASTM B258: AWG, diameter in inches to four places. */
const DIAMETERS: readonly (readonly [string, number])[] = [
  ["18 AWG", 0.0403],
  ["8 AWG", 0.1285],
  ["2 AWG", 0.2576],
  ["1 AWG", 0.2893],
];

function diameters(): readonly PublishedCase<"convert">[] {
  return DIAMETERS.map(([size, diameter]) => ({
    id: `convert/diameter/${size}`,
    question: `Diameter of a solid ${size} wire?`,
    kind: "published",
    form: "table",
    source: astmWire(`${size}: ${String(diameter)} in`),
    asked: { kind: "wire-geometry", size },
    expected: [{ result: "diameter", value: diameter, unit: "in", within: 0.00006 }],
  }));
}

/** Circular mils by the gauge's formula, as a trade forum sets them beside the areas printed in the code. */
const CIRCULAR_MILS: readonly (readonly [string, number])[] = [
  ["14 AWG", 4107],
  ["10 AWG", 10383],
  ["6 AWG", 26251],
  ["2 AWG", 66371],
  ["1/0 AWG", 105535],
  ["4/0 AWG", 211600],
];

function circularMils(): readonly PublishedCase<"convert">[] {
  return CIRCULAR_MILS.map(([size, area]) => ({
    id: `convert/circular-mils/${size}`,
    question: `Circular mils of ${size} by the gauge's formula?`,
    kind: "published",
    form: "example",
    source: tradeForum(`on 250.122(B), list of areas by formula: ${String(area)}`),
    asked: { kind: "wire-geometry", size },
    expected: [{ result: "area in circular mils", value: area, within: 1 }],
  }));
}

const EXAMPLES: readonly Case[] = [
  {
    id: "convert/lbf-ft",
    question: "One pound-force foot in N-m?",
    kind: "published",
    form: "table",
    source: nist("pound-force foot: 1.355 818 N m"),
    asked: { kind: "torque", torque: { value: 1, unit: "lbf-ft" }, to: "N-m" },
    expected: [{ value: 1.355818, unit: "N-m", within: 0.0000005 }],
  },
  {
    id: "convert/foot",
    question: "One foot in meters?",
    kind: "published",
    form: "table",
    source: nist("foot: 0.3048 m, exact"),
    asked: { kind: "length", length: { value: 1, unit: "ft" }, to: "m" },
    expected: [{ value: 0.3048, unit: "m" }],
  },
  {
    id: "convert/square-inch",
    question: "One square inch in mm2?",
    kind: "published",
    form: "table",
    source: nist("square inch: 645.16 mm2, exact"),
    asked: { kind: "area", area: { value: 1, unit: "in2" }, to: "mm2" },
    expected: [{ value: 645.16, unit: "mm2" }],
  },
  {
    id: "convert/75-c",
    question: "75 C in degrees Fahrenheit?",
    kind: "published",
    form: "table",
    source: nfpa70("Table 310.16, head of the columns: 75 C (167 F)"),
    asked: { kind: "temperature", temperature: { value: 75, unit: "Cel" }, to: "degF" },
    expected: [{ value: 167, unit: "degF" }],
  },
  {
    id: "convert/194-f",
    question: "194 F in degrees Celsius?",
    kind: "published",
    form: "table",
    source: nfpa70("Table 310.16, head of the columns: 90 C (194 F)"),
    asked: { kind: "temperature", temperature: { value: 194, unit: "degF" }, to: "Cel" },
    expected: [{ value: 90, unit: "Cel" }],
  },
  {
    id: "convert/165-lbf-in",
    question: "165 lbf-in in N-m?",
    kind: "published",
    form: "table",
    source: annexI("Table I.1, split-bolt column, 6-4 AWG"),
    printed: "18.5 N-m",
    asked: { kind: "torque", torque: { value: 165, unit: "lbf-in" }, to: "N-m" },
    expected: [{ value: 18.6425, unit: "N-m", within: 0.0001 }],
    note: "165 x 0.11298 = 18.64. The table rounds its metric column its own way; torques are held in lbf-in here, in which it was written.",
  },
  {
    id: "convert/31-lbf-ft",
    question: "31.25 lbf-ft in lbf-in?",
    kind: "hand",
    working: "31.25 x 12 = 375",
    asked: { kind: "torque", torque: { value: 31.25, unit: "lbf-ft" }, to: "lbf-in" },
    expected: [{ value: 375, unit: "lbf-in" }],
  },
  {
    id: "convert/35-mm2",
    question: "Which AWG size is nearest to 35 mm2, and what does that say about a lug?",
    kind: "hand",
    working: "35 / 0.50671 = 69.07 kcmil, between 2 AWG (66.36) and 1 AWG (83.69): nearest 2 AWG, and nearest only",
    asked: { kind: "size-area", size: "35 mm2" },
    expected: [
      { value: "2 AWG" },
      { result: "area in kcmil", value: 69.07, unit: "kcmil", within: 0.01 },
      { result: "next larger size", value: "1 AWG" },
    ],
  },
];

export const CONVERT_CASES: readonly Case[] = [...EXAMPLES, ...torques(), ...diameters(), ...circularMils()];
