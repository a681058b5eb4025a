/** Bonding jumpers: NFPA 70 Table 250.102(C)(1) and the share of 12.5 %. */
import type { ConductorMetal } from "@landfast/rules";
import { nfpa70, tradeForum } from "./publications.js";
import type { PublishedCase, WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"bonding-jumper">;

/** Table 250.102(C)(1): supply and metal, jumper of copper, of aluminum. Each row at its upper end. */
const TABLE: readonly (readonly [ConductorMetal, string, string, string])[] = [
  ["copper", "2 AWG", "8 AWG", "6 AWG"],
  ["copper", "1/0 AWG", "6 AWG", "4 AWG"],
  ["copper", "3/0 AWG", "4 AWG", "2 AWG"],
  ["copper", "350 kcmil", "2 AWG", "1/0 AWG"],
  ["copper", "600 kcmil", "1/0 AWG", "3/0 AWG"],
  ["copper", "1000 kcmil", "2/0 AWG", "4/0 AWG"],
  ["aluminum", "1/0 AWG", "8 AWG", "6 AWG"],
  ["aluminum", "250 kcmil", "4 AWG", "2 AWG"],
  ["aluminum", "500 kcmil", "2 AWG", "1/0 AWG"],
  ["aluminum", "900 kcmil", "1/0 AWG", "3/0 AWG"],
];

function cell(
  [supply, size]: readonly [ConductorMetal, string, string, string],
  metal: ConductorMetal,
  expected: string,
): PublishedCase<"bonding-jumper"> {
  return {
    id: `bonding-jumper/table-250.102(C)(1)/${supply}/${size}/${metal}`,
    question: `Which ${metal} main bonding jumper with a supply of ${size} ${supply}?`,
    kind: "published",
    form: "table",
    source: nfpa70(`Table 250.102(C)(1), ${size} ${supply}, ${metal}`),
    asked: { kind: "main", metal, supply: { size, metal: supply, sets: 1 } },
    expected: [{ value: expected }],
  };
}

const TWO_OF_3_0 = { size: "3/0 AWG", metal: "copper", sets: 2 } as const;

const EXAMPLES: readonly Case[] = [
  {
    id: "bonding-jumper/two-sets-of-3-0-copper",
    question: "Two sets of 3/0 AWG copper: which copper jumper on the supply side?",
    kind: "published",
    form: "example",
    source: tradeForum("building code forum on parallel conductors, 2019: 335 600 circular mils, 2 AWG copper"),
    asked: { kind: "supply-side", metal: "copper", supply: TWO_OF_3_0 },
    expected: [{ value: "2 AWG" }],
  },
  {
    id: "bonding-jumper/two-sets-of-3-0-aluminum",
    question: "And which aluminum jumper?",
    kind: "published",
    form: "example",
    source: tradeForum("building code forum on parallel conductors, 2019: 1/0 AWG aluminum"),
    asked: { kind: "supply-side", metal: "aluminum", supply: TWO_OF_3_0 },
    expected: [{ value: "1/0 AWG" }],
  },
  {
    id: "bonding-jumper/six-sets-of-350",
    question: "1500 kVA, six sets of 350 kcmil copper on the secondary: which system bonding jumper?",
    kind: "published",
    form: "example",
    source: tradeForum("engineers' forum, system bonding jumper by 250.30: 12.5 % of 6 x 350, 300 kcmil"),
    asked: { kind: "system", metal: "copper", supply: { size: "350 kcmil", metal: "copper", sets: 6 } },
    expected: [{ value: "300 kcmil" }, { result: "area needed", value: 262.5, unit: "kcmil" }],
    note: "The asker buys 350 kcmil because 300 kcmil is not stocked.",
  },
  {
    id: "bonding-jumper/75-kva-aluminum",
    question: "75 kVA with a secondary of 300 kcmil aluminum: is a 1/0 AWG aluminum supply-side jumper right?",
    kind: "published",
    form: "example",
    source: tradeForum("on conductors of a transformer's secondary: 1/0 AWG aluminum"),
    asked: { kind: "supply-side", metal: "aluminum", supply: { size: "300 kcmil", metal: "aluminum", sets: 1 } },
    expected: [{ value: "1/0 AWG" }],
  },
  {
    id: "bonding-jumper/load-side",
    question: "On the load side, behind 400 A: which copper?",
    kind: "published",
    form: "table",
    source: nfpa70("250.102(D): by Table 250.122, 400 A, copper"),
    asked: { kind: "load-side", metal: "copper", deviceA: 400 },
    expected: [{ value: "3 AWG" }],
  },
  {
    id: "bonding-jumper/three-sets-of-750-aluminum",
    question: "Three sets of 750 kcmil aluminum: which aluminum jumper?",
    kind: "hand",
    working: "2250 kcmil is over 1750: 2250 x 0.125 = 281.25 kcmil, next size 300 kcmil",
    asked: { kind: "main", metal: "aluminum", supply: { size: "750 kcmil", metal: "aluminum", sets: 3 } },
    expected: [{ value: "300 kcmil" }, { result: "area needed", value: 281.25, unit: "kcmil" }],
  },
  {
    id: "bonding-jumper/each-raceway-apart",
    question: "Two raceways with one set of 250 kcmil copper each, bonded apart: which copper to each?",
    kind: "hand",
    working: "250.102(C)(2): each by the set in it, over 3/0 AWG through 350 kcmil: 2 AWG",
    asked: {
      kind: "supply-side",
      metal: "copper",
      supply: { size: "250 kcmil", metal: "copper", sets: 2 },
      racewaysBondedApart: 2,
    },
    expected: [{ value: "2 AWG" }],
  },
];

export const BONDING_JUMPER_CASES: readonly Case[] = [
  ...EXAMPLES,
  ...TABLE.flatMap((row) => [cell(row, "copper", row[2]), cell(row, "aluminum", row[3])]),
];
