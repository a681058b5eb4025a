import { describe, expect, test } from "vitest";
import { CALCULATIONS, type CalculationName, calculate } from "./calculations.js";
import { EDITIONS } from "./rulesets/editions.js";

describe("the register of calculations", () => {
  const names = Object.keys(CALCULATIONS) as CalculationName[];

  test.each(names)("%s stands under its own name and says what it needs and cannot see", (name) => {
    const calculation = CALCULATIONS[name];
    expect(calculation.name).toBe(name);
    expect(name).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(calculation.title).not.toBe("");
    expect(calculation.cannotSee).not.toBe("");
    expect(calculation.needs.length).toBeGreaterThan(0);
    expect(calculation.needs.filter((path) => !path.startsWith("question/"))).toEqual([]);
  });

  test.each(names)("every clause that %s names stands in every edition", (name) => {
    for (const edition of EDITIONS)
      for (const clause of CALCULATIONS[name].clauses) expect(edition.clauses[clause].standard).not.toBe("");
  });

  test("they are listed in alphabetical order", () => {
    expect(names).toEqual([...names].sort());
  });

  test("an edition that is not answered is refused by name", () => {
    const basis = { ruleSet: "nfpa70", edition: "1999" } as unknown as Parameters<typeof calculate>[2];
    expect(() => calculate("convert", { kind: "size-area", size: "35 mm2" }, basis)).toThrow(/2017.*2020.*2023/);
  });
});
