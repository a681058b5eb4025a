import { expect, test } from "vitest";
import type { CatalogueItem } from "../../core/connector.js";
import { sampleConnector, sampleOpening } from "../../samples/sample-joint.js";
import type { Standing } from "./catalogue-judge.js";
import { byNearness, RANK_LINES, rankingOf } from "./rank.js";

const standing = (partNumber: string, item: Partial<CatalogueItem> = {}, change: Partial<Standing> = {}): Standing => ({
  item: { ...sampleConnector(), partNumber, status: "invented", packQuantity: 1, ...item },
  verdict: "accept",
  conditions: 0,
  failures: 0,
  questions: 0,
  ...change,
});
const usd = (amount: string) => ({ price: { amount, currency: "USD" } });
const upTo = (to: string) => ({
  openings: [sampleOpening({ ranges: [{ from: "6 AWG", to, strandings: "unmarked" }] })],
});
const hanging = { verdict: "accept-with-conditions", conditions: 1 } as const;

const ranking = rankingOf({
  inJob: ["IN-JOB"],
  approved: ["APPROVED"],
  leadTimes: [
    { partNumber: "SOON", days: 1 },
    { partNumber: "LATE", days: 2 },
    { partNumber: "AT-ONCE", days: 0 },
  ],
});

// hand: the lines of the order as they are documented, each by a pair that differs in it alone
test.each<[string, Standing, Standing]>([
  ["without conditions", standing("B"), standing("A", {}, hanging)],
  ["fewer conditions", standing("B", {}, hanging), standing("A", {}, { ...hanging, conditions: 2 })],
  ["in the job already", standing("IN-JOB"), standing("A")],
  ["lower price", standing("B", usd("2")), standing("A", usd("10"))],
  ["a price before none", standing("B", usd("2")), standing("A")],
  ["currencies apart", standing("B", { price: { amount: "9", currency: "CAD" } }), standing("A", usd("1"))],
  ["fewer hours", standing("B", { labourHours: 0.2 }), standing("A", { labourHours: 0.3 })],
  ["no hours before unknown ones", standing("B", { labourHours: 0 }), standing("A")],
  ["shorter lead time", standing("SOON"), standing("LATE")],
  ["at once before a day", standing("AT-ONCE"), standing("SOON")],
  ["a lead time before none", standing("LATE"), standing("A")],
  ["approved before", standing("APPROVED"), standing("A")],
  ["largest size nearer", standing("B", upTo("250 kcmil")), standing("A", upTo("300 kcmil"))],
  ["largest size by area: 4/0 AWG before 250 kcmil", standing("B", upTo("4/0 AWG")), standing("A", upTo("250 kcmil"))],
  ["part number, by code unit", standing("LF-10"), standing("LF-9")],
])("%s: the same whichever is asked first", (_line, better, worse) => {
  expect(ranking.compare(better, worse)).toBeLessThan(0);
  expect(ranking.compare(worse, better)).toBeGreaterThan(0);
  expect(ranking.compare(better, better)).toBe(0);
});

test("the largest of all sizes of all openings counts", () => {
  const several = standing("A", { openings: [...upTo("500 kcmil").openings, ...upTo("1/0 AWG").openings] });
  expect(ranking.compare(standing("B", upTo("250 kcmil")), several)).toBeLessThan(0);
});

test("nearness: fewest failures, then fewest questions, then the order of candidates", () => {
  const near = (a: Standing, b: Standing): number => byNearness(a, b, ranking);
  const failing = (partNumber: string, failures: number, questions: number): Standing =>
    standing(partNumber, {}, { verdict: "reject", failures, questions });
  for (const [nearer, farther] of [
    [failing("B", 1, 3), failing("A", 2, 0)],
    [failing("B", 1, 1), failing("A", 1, 2)],
    [failing("A", 1, 1), failing("B", 1, 1)],
  ] as const) {
    expect(near(nearer, farther)).toBeLessThan(0);
    expect(near(farther, nearer)).toBeGreaterThan(0);
  }
});

test("the order in words has a line for each", () => {
  expect(RANK_LINES.map((line) => line.split(" (")[0])).toEqual([
    "accepted without conditions before accepted with conditions",
    "fewer conditions",
    "a part number that is in the job already, which adds none",
    "lower price",
    "fewer electrician-hours",
    "shorter lead time",
    "approved before",
    "the largest size it takes nearer to the conductor",
    "part number, by code unit",
  ]);
  expect(ranking.because(standing("A"), standing("A"))).toBe("nothing tells it from the next");
});
