/**
 * Resistance of like joints. What is printed is the criterion; no publication was found that works a whole set of readings
 * out, so the published cases read the criterion through the calculation and the sets of readings are worked by hand.
 */
import { breakerMaker, netaAts, testingPage, tradeForum } from "./publications.js";
import type { Source, WorkedCase } from "./worked-case.js";

type Case = WorkedCase<"contact-resistance">;

const readings = (...microOhms: readonly number[]) => ({
  readings: microOhms.map((microOhm, index) => ({ joint: `phase ${"ABCDEF"[index] ?? ""}`, microOhm })),
});

const PRINTED: readonly (readonly [id: string, question: string, source: Source])[] = [
  [
    "ats",
    "How far may a bolted joint be off the lowest of its like?",
    netaAts("Section 7, test values of bolted connections: 50 percent of the lowest value"),
  ],
  [
    "forum",
    "How far may a pole be off the lowest, by the maintenance specification?",
    tradeForum("question on NETA MTS-2011 7.6.1.1: more than 50 % of the lowest value is looked into"),
  ],
  [
    "breaker-maker",
    "From what deviation on is a pole looked into?",
    breakerMaker("more than 50 % from the lowest pole is looked into, which is not yet a failure"),
  ],
  [
    "busbar-page",
    "From what deviation on is a busbar joint looked into?",
    testingPage("loose busbar joints: more than 50 % from the lowest of similar joints"),
  ],
];

/** Readings, and which are looked into. */
const SETS: readonly (readonly [
  id: string,
  microOhms: readonly number[],
  limit: number,
  suspect: readonly string[],
  working: string,
])[] = [
  ["18-19-30", [18, 19, 30], 27, ["phase C"], "18 x 1.5 = 27; 30 is above it"],
  ["at-the-limit", [18, 19, 27], 27, [], "18 x 1.5 = 27; 27 is not above it"],
  ["just-above", [18, 19, 27.001], 27, ["phase C"], "18 x 1.5 = 27; 27.001 is above it"],
  ["decimals", [0.1, 0.15, 0.2], 0.15, ["phase C"], "0.1 x 1.5 = 0.15"],
  ["three-of-20", [20, 20, 30], 30, [], "a testing page (web) has the lowest times 1.5: 20 x 1.5 = 30"],
  ["slip-of-the-point", [4.1, 4.3, 42], 6.15, ["phase C"], "4.1 x 1.5 = 6.15"],
];

export const CONTACT_RESISTANCE_CASES: readonly Case[] = [
  ...PRINTED.map(
    ([id, question, source]): Case => ({
      id: `contact-resistance/${id}`,
      question,
      kind: "published",
      form: "table",
      source,
      asked: readings(18, 19, 30),
      expected: [{ result: "deviation allowed", value: 50, unit: "%" }],
    }),
  ),
  ...SETS.map(
    ([id, microOhms, limit, suspect, working]): Case => ({
      id: `contact-resistance/${id}`,
      question: `${microOhms.join(", ")} micro-ohm: which joints are looked into?`,
      kind: "hand",
      working,
      asked: readings(...microOhms),
      expected: [{ value: suspect }, { result: "limit", value: limit, unit: "micro-ohm" }],
    }),
  ),
];
