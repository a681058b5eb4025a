/**
 * Questions of the trade with answers known from elsewhere, asked of every calculation under every edition they hold for.
 * The cases are data, one file a calculation; this file only asks them and counts.
 */
import { CALCULATIONS, type CalculationName } from "@landfast/rules";
import { afterAll, describe, expect, test } from "vitest";
import { WORKED_CASES } from "./all-cases.js";
import { countCases, countsTable } from "./count-cases.js";
import { faultsOfCase } from "./faults-of-case.js";
import { CASE_EDITIONS, type WorkedCase } from "./worked-case.js";

const NAMES = Object.keys(CALCULATIONS) as CalculationName[];
const casesOf = (name: CalculationName): readonly WorkedCase<CalculationName>[] => WORKED_CASES[name];
const COUNTS = NAMES.map((name) => [name, countCases(casesOf(name))] as const);

describe.each(NAMES)("%s", (name) => {
  test.each(casesOf(name).map((worked) => ({ worked, title: `${worked.id} [${worked.kind}] ${worked.question}` })))(
    "$title",
    ({ worked }) => {
      const faults = (worked.editions ?? CASE_EDITIONS).flatMap((edition) => faultsOfCase(name, worked, edition));
      expect(faults).toEqual([]);
    },
  );
});

describe("the cases themselves", () => {
  const all = NAMES.flatMap(casesOf);

  test("each has its own id, an answer and, where it departs from print, the reason", () => {
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
    for (const worked of all) {
      expect(worked.expected.length, worked.id).toBeGreaterThan(0);
      if (worked.kind === "published" && worked.printed !== undefined)
        expect(worked.note?.length ?? 0, worked.id).toBeGreaterThan(0);
    }
  });

  test("a wrong answer, a wrong unit, a missed refusal and a missed question are told", () => {
    const [one] = WORKED_CASES.tap;
    if (one === undefined) throw new Error("no case");
    const told = (expected: WorkedCase<"tap">["expected"]) => faultsOfCase("tap", { ...one, expected }, "2023").length;
    expect(told([{ value: "8 AWG" }])).toBe(0);
    expect(told([{ value: "6 AWG" }])).toBe(1);
    expect(told([{ result: "share of the device ahead", value: 40.2, within: 0.1 }])).toBe(1);
    expect(told([{ result: "share of the device ahead", value: 40, unit: "V" }])).toBe(1);
    expect(told([{ result: "no such result", value: 1 }])).toBe(1);
    expect(told([{ refused: "OUTSIDE_TABLE" }])).toBe(1);
    expect(told([{ missing: "question/length" }])).toBe(1);
  });

  test("150 published answers are met, three or more of each calculation", () => {
    const published = COUNTS.map(([name, { examples, cells }]) => [name, examples + cells] as const);
    expect(published.reduce((sum, [, count]) => sum + count, 0)).toBeGreaterThanOrEqual(150);
    expect(published.filter(([, count]) => count < 3)).toEqual([]);
  });
});

afterAll(() => {
  process.stdout.write(`\n${countsTable(COUNTS)}\n`);
});
