/** Torques of pad and bus bolts: NEMA CC 1 (lbf-in) and NETA ATS Tables 100.12 (lbf-ft). */
import type { BoltKind } from "@landfast/rules";
import { armyManual, nemaCc1, netaAts } from "./publications.js";
import type { PublishedCase, WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"bolt-torque">;

/** Diameter; silicon bronze, stainless or galvanized steel; lubricated aluminum, where it has one. */
const NEMA: readonly (readonly [string, number, number | undefined])[] = [
  ["1/4", 80, undefined],
  ["5/16", 180, undefined],
  ["3/8", 240, 168],
  ["1/2", 480, 300],
  ["5/8", 660, 480],
];

function nema(diameter: string, bolt: BoltKind, lubricated: boolean, lbfIn: number): PublishedCase<"bolt-torque"> {
  return {
    id: `bolt-torque/nema/${diameter}/${bolt}`,
    question: `Torque of a ${diameter} in bolt of ${bolt}, by NEMA?`,
    kind: "published",
    form: "table",
    source: nemaCc1(`${diameter} in, ${bolt}`),
    asked: { table: "NEMA CC 1", diameter, bolt, lubricated },
    expected: [{ value: lbfIn, unit: "lbf-in" }],
  };
}

/** Table 100.12.1: diameter, SAE grade, lbf-ft. */
const NETA_STEEL: readonly (readonly [string, "steel-grade-2" | "steel-grade-5" | "steel-grade-8", number])[] = [
  ["1/4", "steel-grade-2", 4],
  ["1/4", "steel-grade-5", 6],
  ["3/8", "steel-grade-5", 20],
  ["1/2", "steel-grade-2", 30],
  ["5/8", "steel-grade-5", 96],
  ["3/4", "steel-grade-5", 160],
];

function neta(): readonly PublishedCase<"bolt-torque">[] {
  return NETA_STEEL.map(([diameter, bolt, lbfFt]) => ({
    id: `bolt-torque/neta/${diameter}/${bolt}`,
    question: `Torque of a ${diameter} in bolt of ${bolt}, plated and dry, by NETA?`,
    kind: "published",
    form: "table",
    source: netaAts(`Table 100.12.1, ${diameter} in, ${bolt}`),
    asked: { table: "NETA ATS", diameter, bolt, lubricated: false },
    expected: [{ value: lbfFt, unit: "lbf-ft" }],
  }));
}

const EXAMPLES: readonly Case[] = [
  {
    id: "bolt-torque/army-1-4",
    question: "1/4 in bolt of a bus joint: is the table's torque within the manual's 70 to 90 lbf-in?",
    kind: "published",
    form: "example",
    source: armyManual("maintenance of motor control centers, item M-8: 70-90 lbf-in"),
    asked: { table: "NEMA CC 1", diameter: "1/4", bolt: "galvanized-steel", lubricated: false },
    expected: [{ value: 80, unit: "lbf-in", within: 10 }],
  },
  {
    id: "bolt-torque/army-1-2",
    question: "1/2 in bolt of a bus joint: does the table agree with the manual?",
    kind: "published",
    form: "example",
    source: armyManual("maintenance of motor control centers, item M-8"),
    printed: "500-550 lbf-in",
    asked: { table: "NEMA CC 1", diameter: "1/2", bolt: "galvanized-steel", lubricated: false },
    expected: [{ value: 480, unit: "lbf-in" }],
    note: "The manual gives the most that its own make of gear bears, with conical washers; instructions of the maker come before both tables. The table names what it is: a default.",
  },
  {
    id: "bolt-torque/both-tables",
    question: "1/2 in stainless steel bolt, dry: what does each table say?",
    kind: "published",
    form: "table",
    source: netaAts("Table 100.12.4, 1/2 in: 40 lbf-ft, and NEMA CC 1: 480 lbf-in; from memory both"),
    asked: { table: "both", diameter: "1/2", bolt: "stainless-steel", lubricated: false },
    expected: [
      { result: "torque by NEMA CC 1", value: 480, unit: "lbf-in" },
      { result: "torque by NETA ATS", value: 40, unit: "lbf-ft" },
    ],
  },
  {
    id: "bolt-torque/dry-or-lubricated",
    question: "1/2 in silicon bronze, no word about the thread?",
    kind: "hand",
    working: "dry and lubricated threads stand in different columns, so it is asked",
    asked: { table: "NETA ATS", diameter: "1/2", bolt: "silicon-bronze" },
    expected: [{ missing: "question/lubricated" }],
  },
];

export const BOLT_TORQUE_CASES: readonly Case[] = [
  ...EXAMPLES,
  ...NEMA.flatMap(([diameter, hard, aluminum]) => [
    nema(diameter, "silicon-bronze", false, hard),
    ...(aluminum === undefined ? [] : [nema(diameter, "aluminum", true, aluminum)]),
  ]),
  ...neta(),
];
