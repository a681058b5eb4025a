/** Space to bend a conductor: NFPA 70 Tables 312.6(A) and 312.6(B)(2), inches. */
import type { BendingSpaceQuestion } from "@landfast/rules";
import { ecm, nfpa70, tradeForum } from "./publications.js";
import type { PublishedCase, WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"bending-space">;
type Entry = BendingSpaceQuestion["entry"];

/** Through the wall opposite its terminal, or through another: size, wires per terminal, inches. */
const TABLE: Readonly<Record<Entry, readonly (readonly [string, number, number])[]>> = {
  opposite: [
    ["8 AWG", 1, 1.5],
    ["4 AWG", 1, 3],
    ["1 AWG", 1, 4.5],
    ["1/0 AWG", 1, 5.5],
    ["3/0 AWG", 1, 6.5],
    ["4/0 AWG", 1, 7],
    ["250 kcmil", 1, 8.5],
    ["350 kcmil", 1, 12],
    ["500 kcmil", 1, 14],
    ["600 kcmil", 1, 15],
    ["750 kcmil", 1, 17],
    ["500 kcmil", 3, 15],
  ],
  side: [
    ["6 AWG", 1, 1.5],
    ["2 AWG", 1, 2.5],
    ["1 AWG", 1, 3],
    ["1/0 AWG", 1, 3.5],
    ["4/0 AWG", 1, 4],
    ["4/0 AWG", 2, 6],
    ["250 kcmil", 1, 4.5],
    ["350 kcmil", 1, 5],
    ["400 kcmil", 1, 6],
    ["700 kcmil", 1, 8],
    ["1000 kcmil", 1, 10],
  ],
};

function cells(entry: Entry, name: string): readonly PublishedCase<"bending-space">[] {
  return TABLE[entry].map(([size, wires, inches]) => ({
    id: `bending-space/${name}/${size}/${String(wires)}`,
    question: `How much space for ${String(wires)} x ${size} a terminal, ${entry === "side" ? "not " : ""}through the wall opposite it?`,
    kind: "published",
    form: "table",
    source: nfpa70(`Table ${name}, ${size}, ${String(wires)} a terminal`),
    asked: { size, metal: "copper", stranding: "class-B", entry, wiresPerTerminal: wires, removableTerminal: false },
    expected: [{ value: inches, unit: "in" }],
  }));
}

const EXAMPLES: readonly Case[] = [
  {
    id: "bending-space/three-600-kcmil",
    question: "Three 600 kcmil on a terminal, leaving through the back: how much space above the terminals?",
    kind: "published",
    form: "example",
    source: tradeForum("on a 1200 A metering cabinet: Table 312.6(A) lists 12 in"),
    asked: {
      size: "600 kcmil",
      metal: "copper",
      stranding: "class-B",
      entry: "side",
      wiresPerTerminal: 3,
      removableTerminal: false,
    },
    expected: [{ value: 12, unit: "in" }],
  },
  {
    id: "bending-space/one-350-kcmil",
    question: "One 350 kcmil a terminal, by the table for other walls?",
    kind: "published",
    form: "example",
    source: tradeForum("on the depth of a metering cabinet: 5 in for one wire a terminal"),
    asked: {
      size: "350 kcmil",
      metal: "copper",
      stranding: "class-B",
      entry: "side",
      wiresPerTerminal: 1,
      removableTerminal: false,
    },
    expected: [{ value: 5, unit: "in" }],
  },
  {
    id: "bending-space/two-350-kcmil",
    question: "Two 350 kcmil a terminal, by the table for other walls?",
    kind: "published",
    form: "example",
    source: tradeForum("on the depth of a metering cabinet: 8 in for two wires a terminal"),
    asked: {
      size: "350 kcmil",
      metal: "copper",
      stranding: "class-B",
      entry: "side",
      wiresPerTerminal: 2,
      removableTerminal: false,
    },
    expected: [{ value: 8, unit: "in" }],
  },
  {
    id: "bending-space/two-4-0-opposite",
    question: "Two 4/0 AWG a terminal through the opposite wall, with 7 in there: is there room?",
    kind: "published",
    form: "example",
    source: ecm("Code Quiz to the 2002 edition: 7.5 in are needed"),
    asked: {
      size: "4/0 AWG",
      metal: "copper",
      stranding: "class-B",
      entry: "opposite",
      wiresPerTerminal: 2,
      removableTerminal: false,
      available: { value: 7, unit: "in" },
    },
    expected: [
      { value: 7.5, unit: "in" },
      { result: "there is room", value: false },
    ],
  },
  {
    id: "bending-space/compact-aluminum",
    question: "4/0 AWG compact aluminum through the opposite wall?",
    kind: "hand",
    working: "compact aluminum reads the row of the size above in its own column: 6 in",
    asked: {
      size: "4/0 AWG",
      metal: "aluminum",
      stranding: "compact",
      entry: "opposite",
      wiresPerTerminal: 1,
      removableTerminal: false,
    },
    expected: [{ value: 6, unit: "in" }],
  },
];

export const BENDING_SPACE_CASES: readonly Case[] = [
  ...EXAMPLES,
  ...cells("opposite", "312.6(B)(2)"),
  ...cells("side", "312.6(A)"),
];
