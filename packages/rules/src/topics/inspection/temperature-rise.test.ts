import { describe, expect, test } from "vitest";
import { UnusableFact } from "../../core/unusable-fact.js";
import { EDITIONS } from "../../rulesets/editions.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { type TemperatureComparison, temperatureRise } from "./temperature-rise.js";

const BASIS = { ruleSet: "nfpa70", edition: "2023" } as const;
const overLike = (temperatureRiseC: number): TemperatureComparison => ({
  with: "like-part",
  temperatureRiseC,
  likeLoad: true,
});
const overAir = (temperatureRiseC: number): TemperatureComparison => ({ with: "air", temperatureRiseC });

function ask(...comparisons: readonly TemperatureComparison[]) {
  return temperatureRise.answer({ comparisons }, BASIS, nfpa70Edition2023);
}

const grade = (...comparisons: readonly TemperatureComparison[]) => ask(...comparisons).results[0]?.value;
const assumed = (comparison: TemperatureComparison) => ask(comparison).assumptions.length;

const POSSIBLE = "possible deficiency";
const PROBABLE = "probable deficiency";
const MONITORED = "deficiency to be monitored";
const MAJOR = "major discrepancy";

describe("temperature rise (NETA ATS Table 100.18)", () => {
  // published: 1 to 3, 4 to 15, above 15 C; hand: between two grades the harsher
  test.each([
    [-7, "no grade", 0],
    [0, "no grade", 0],
    [0.1, POSSIBLE, 1],
    [1, POSSIBLE, 0],
    [2.5, POSSIBLE, 0],
    [3, POSSIBLE, 0],
    [3.1, PROBABLE, 1],
    [3.5, PROBABLE, 1],
    [4, PROBABLE, 0],
    [12, PROBABLE, 0],
    [15, PROBABLE, 0],
    [15.1, MAJOR, 0],
    [16, MAJOR, 0],
    [200, MAJOR, 0],
  ] as const)("%d C above its like: %s", (rise, expected, assumptions) => {
    expect(grade(overLike(rise))).toBe(expected);
    expect(assumed(overLike(rise))).toBe(assumptions);
  });
  // published: 1 to 10, 11 to 20, 21 to 40, above 40 C; hand: between two grades the harsher
  test.each([
    [-1, "no grade", 0],
    [0, "no grade", 0],
    [0.5, POSSIBLE, 1],
    [1, POSSIBLE, 0],
    [10, POSSIBLE, 0],
    [10.2, PROBABLE, 1],
    [11, PROBABLE, 0],
    [20, PROBABLE, 0],
    [20.5, MONITORED, 1],
    [21, MONITORED, 0],
    [40, MONITORED, 0],
    [40.1, MAJOR, 0],
    [41, MAJOR, 0],
  ] as const)("%d C above the air: %s", (rise, expected, assumptions) => {
    expect(grade(overAir(rise))).toBe(expected);
    expect(assumed(overAir(rise))).toBe(assumptions);
  });
  test("of several comparisons the harshest counts, in whatever order", () => {
    expect(grade(overLike(2), overAir(25))).toBe(MONITORED);
    expect(grade(overAir(5), overLike(16))).toBe(MAJOR);
    expect(grade(overLike(11), overLike(12), overLike(2))).toBe(PROBABLE);
    expect(grade(overLike(-3), overAir(5))).toBe(POSSIBLE);
    expect(grade(overLike(-3), overAir(0))).toBe("no grade");
  });
  test("the answer says what is to be done, and of which comparison each grade is", () => {
    const finding = ask(overLike(12), overAir(8));
    expect(finding.results).toMatchObject([
      { name: "grade", value: PROBABLE },
      { name: "what it calls for", value: "repair as time permits" },
      { name: "grade by comparison 1", value: PROBABLE },
      { name: "grade by comparison 2", value: POSSIBLE },
    ]);
    expect(finding.sentence).toBe(
      "12 C above like parts under like load, 8 C above the air: probable deficiency; repair as time permits.",
    );
    expect(ask(overLike(-4)).sentence).toBe("4 C below like parts under like load: no grade is reached.");
    expect(ask(overLike(40)).results[1]?.value).toBe("repair at once");
    expect(ask(overLike(-1)).results[1]?.value).toBe("nothing");
    expect(ask(overAir(30)).results[1]?.value).toBe("monitor until it can be put right");
    expect(ask(overLike(1)).results[1]?.value).toBe("look into it");
  });
  test("a like load is a fact that is needed", () => {
    const unknown = ask({ with: "like-part", temperatureRiseC: 12 });
    expect(unknown).toMatchObject({ outcome: "missing", missing: [{ path: "question/comparisons/0/likeLoad" }] });
    const unlike = ask(overAir(8), { with: "like-part", temperatureRiseC: 12, likeLoad: false });
    expect(unlike).toMatchObject({ outcome: "refused", refusal: { code: "NOT_COVERED" }, results: [] });
    expect(unlike.sentence).toContain("question/comparisons/1/likeLoad");
  });
  test("the table is held from memory and says so, in every edition", () => {
    for (const edition of EDITIONS) {
      const basis = { ruleSet: "nfpa70", edition: edition.edition } as const;
      const finding = temperatureRise.answer({ comparisons: [overLike(12)] }, basis, edition);
      expect(finding.caveats.length).toBeGreaterThan(0);
      for (const caveat of finding.caveats) expect(caveat).toContain("Table 100.18, NETA ATS-2021");
      expect(finding.cite).toEqual(edition.clauses.temperatureRise);
    }
  });
  test("what is no temperature rise is refused at its place", () => {
    const path = (comparisons: readonly TemperatureComparison[]): string => {
      try {
        temperatureRise.answer({ comparisons }, BASIS, nfpa70Edition2023);
      } catch (problem) {
        if (problem instanceof UnusableFact) return problem.path;
        throw problem;
      }
      return "answered";
    };
    expect(path([])).toBe("question/comparisons");
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])
      expect(path([overAir(8), overLike(value)])).toBe("question/comparisons/1/temperatureRiseC");
  });
});
