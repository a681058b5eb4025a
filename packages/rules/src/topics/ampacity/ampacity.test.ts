import { describe, expect, test } from "vitest";
import type { ConductorRun, Grouping } from "../../core/conductor-run.js";
import type { Edition } from "../../core/edition.js";
import { EDITIONS } from "../../rulesets/editions.js";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { celsius, sampleRun, sampleRunWithout } from "../../samples/sample-run.js";
import { type AmpacityQuestion, ampacity } from "./ampacity.js";

type Change = Partial<ConductorRun> & Partial<Omit<AmpacityQuestion, "run">>;

function ask({ size = "12 AWG", circuitRatingA, ...run }: Change, edition: Edition = nfpa70Edition2023) {
  return askRun(size, sampleRun(run), circuitRatingA, edition);
}

function askRun(size: string, run: ConductorRun, circuitRatingA?: number, edition: Edition = nfpa70Edition2023) {
  const rating = circuitRatingA === undefined ? {} : { circuitRatingA };
  return ampacity.answer({ size, run, ...rating }, { ruleSet: "nfpa70", edition: edition.edition }, edition);
}

function result(change: Change, name: string, edition?: Edition) {
  const finding = ask(change, edition);
  const found = finding.results.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no result "${name}": ${finding.sentence}`);
  return found.value;
}
const CORRECTED = "ampacity of one conductor after correction and adjustment";
const AT_TERMINATIONS = "ampacity of one conductor at the terminations";
const together = (conductors: number): Grouping => ({ in: "raceway", conductors });

describe("published worked examples", () => {
  // published: trade magazine EC&M, Code Q&A (web archive, undated): nine current-carrying 12 AWG THHN: 30 A x 0.70 =
  // 21 A, still good for a 20 A circuit
  test.each(EDITIONS)("$edition: nine 12 AWG THHN conductors, 21 A", (edition) => {
    expect(result({ grouping: together(9) }, CORRECTED, edition)).toBe(21);
    expect(result({ grouping: together(9), supplyEnd: celsius(60) }, "ampacity", edition)).toBe(20);
  });

  // published: Stallcup Education, "Applying Correction Factors" (web): 10 AWG THHN copper at 120 degF: 40 x 0.82 = 32.8 A.
  // The article corrects for temperature alone, so it is asked with three conductors
  test("10 AWG THHN at 120 degF, 32.8 A", () => {
    const change = { size: "10 AWG", ambient: { value: 120, unit: "degF" } } as const;
    expect(result(change, CORRECTED)).toBe(32.8);
    expect(result(change, "ampacity")).toBe(32.8);
    expect(result(change, "ampacity in whole amperes")).toBe(33);
  });

  // published: NFPA 70 Informative Annex D, Example D3(a), as retold in "Commercial Load Calculations, Part 5" (web):
  // 2/0 AWG at 35 C with seven to nine conductors corrects to 131 A
  test("2/0 AWG of Example D3(a), 131 A", () => {
    const change = { size: "2/0 AWG", insulation: "XHHW-2", ambient: celsius(35), grouping: together(8) } as const;
    expect(result(change, CORRECTED)).toBe(131.04);
    expect(result(change, "ampacity in whole amperes")).toBe(131);
  });

  // published: trade magazine Electrical Contractor, on three sets for a 1200 A feeder (web): 600 kcmil carries 420 A at
  // 75 C, three sets 1260 A
  test("three sets of 600 kcmil, 1260 A", () => {
    expect(result({ size: "600 kcmil", sets: 3 }, "ampacity")).toBe(1260);
  });
});

describe("correction and adjustment", () => {
  // hand: 75 x 0.91 x 80 / 100 = 54.6; terminals 75 C: 65
  test("factors are multiplied exactly and in the column of the insulation", () => {
    const change = { size: "6 AWG", ambient: celsius(40), grouping: together(6) };
    expect(result(change, "ampacity")).toBe(54.6);
    expect(result(change, AT_TERMINATIONS)).toBe(65);
  });

  // hand: TW begins at 60 C: 50 AWG-table 6 AWG 55 A x 0.82 = 45.1; RHW at 75 C: 65 x 0.88 = 57.2
  test.each([
    ["TW", 45.1],
    ["RHW", 57.2],
  ] as const)("%s begins in its own column", (insulation, amperes) => {
    expect(result({ size: "6 AWG", insulation, ambient: celsius(40) }, CORRECTED)).toBe(amperes);
  });

  // hand: XHHW is a 75 C type in wet places: 65 A; dry 75 A
  test.each([
    ["wet", 65],
    ["dry", 75],
  ] as const)("XHHW in a %s place begins at %d A", (place, amperes) => {
    expect(result({ size: "6 AWG", insulation: "XHHW", place }, CORRECTED)).toBe(amperes);
  });

  // published: rows of the adjustment table; 12 AWG THHN, 30 A
  test.each([
    [3, 30],
    [4, 24],
    [6, 24],
    [7, 21],
    [9, 21],
    [10, 15],
    [20, 15],
    [21, 13.5],
    [30, 13.5],
    [31, 12],
    [40, 12],
    [41, 10.5],
  ])("%d conductors together: %d A", (conductors, amperes) => {
    expect(result({ grouping: together(conductors) }, CORRECTED)).toBe(amperes);
  });

  // published: rows of the ambient table at 90 C; a temperature between two rows takes the hotter one. 12 AWG: 30 A
  test.each([
    [10, 34.5],
    [30, 30],
    [30.1, 28.8],
    [35, 28.8],
    [36, 27.3],
    [85, 8.7],
  ])("at %d C: %d A", (ambient, amperes) => {
    expect(result({ ambient: celsius(ambient) }, CORRECTED)).toBe(amperes);
  });

  test("hotter than the table's last row is refused, and so is NaN", () => {
    expect(ask({ ambient: celsius(86) }).refusal?.code).toBe("OUTSIDE_TABLE");
    expect(ask({ ambient: celsius(56), insulation: "TW" }).refusal?.code).toBe("OUTSIDE_TABLE");
    expect(() => ask({ ambient: celsius(Number.NaN) })).toThrow("question/run/ambient");
  });

  // published: Table 310.17: 12 AWG copper, 90 C: 40 A; terminations are judged by Table 310.16: 25 A at 75 C
  test("free air is read in its own table, its terminations are not", () => {
    const change = { manner: "free-air", grouping: { in: "apart" } } as const;
    expect(result(change, CORRECTED)).toBe(40);
    expect(result(change, "ampacity")).toBe(25);
    // hand: 40 x 0.80 = 32
    expect(result({ ...change, grouping: { in: "bundle", conductors: 4 } }, CORRECTED)).toBe(32);
  });
});

describe("what is counted", () => {
  const circuits = (...kinds: readonly ("three-phase-four-wire-wye" | "two-lines-and-neutral-of-wye" | "spare")[]) =>
    ({ in: "raceway", conductors: kinds.map((kind) => ({ kind, count: 1, mostlyNonlinear: false })) }) as const;

  // hand: 3 (neutral not counted) -> 30 A; nonlinear: 4 -> 24 A
  test("the neutral of a wye circuit counts under a nonlinear load", () => {
    expect(result({ grouping: circuits("three-phase-four-wire-wye") }, CORRECTED)).toBe(30);
    const nonlinear: Grouping = {
      in: "raceway",
      conductors: [{ kind: "three-phase-four-wire-wye", count: 1, mostlyNonlinear: true }],
    };
    expect(result({ grouping: nonlinear }, CORRECTED)).toBe(24);
  });

  // hand: 3 + 3 = 6 -> 80 %; with a spare 7 -> 70 %
  test("two lines and the neutral of a wye count three, spares count", () => {
    const two = circuits("two-lines-and-neutral-of-wye", "two-lines-and-neutral-of-wye");
    expect(result({ grouping: two }, CORRECTED)).toBe(24);
    const spare = circuits("two-lines-and-neutral-of-wye", "two-lines-and-neutral-of-wye", "spare");
    expect(result({ grouping: spare }, CORRECTED)).toBe(21);
  });

  // hand: two 120/240 V circuits: 2 + 2 = 4 -> 80 %; two delta: 6 -> 80 %; five two-wire: 10 -> 50 %
  test.each([
    ["three-wire-single-phase", 2, 24],
    ["three-phase-four-wire-delta", 2, 24],
    ["three-phase-three-wire", 2, 24],
    ["two-wire", 5, 15],
  ] as const)("%s, %d of them", (kind, count, amperes) => {
    expect(result({ grouping: { in: "cable", conductors: [{ kind, count }] } }, CORRECTED)).toBe(amperes);
  });

  test("whether the load is nonlinear is asked for only where it decides", () => {
    const wye = (count: number): Grouping => ({
      in: "raceway",
      conductors: [{ kind: "three-phase-four-wire-wye", count }],
    });
    // One circuit: 3 or 4; two: 6 or 8; ten: 30 or 40
    expect(ask({ grouping: wye(1), supplyEnd: celsius(90), loadEnd: celsius(90) }).missing).toEqual([
      expect.objectContaining({ path: "question/run/grouping/conductors/0/mostlyNonlinear" }),
    ]);
    // Terminals of 60 C hold it to 20 A: 24 A and 30 A are both more
    expect(ask({ grouping: wye(1), supplyEnd: celsius(60) }).outcome).toBe("answered");
    // Four circuits: 12 or 16, both 50 %
    expect(result({ grouping: wye(4) }, CORRECTED)).toBe(15);
  });

  test.each([
    [23.9, 30],
    [24, 30],
    [24.1, 21],
  ])("nine conductors in a nipple of %d in: %d A", (value, amperes) => {
    const grouping: Grouping = { in: "nipple", length: { value, unit: "in" }, conductors: 9 };
    expect(result({ grouping }, CORRECTED)).toBe(amperes);
  });

  test.each([
    [30, 20, 30],
    [30, 19.9, 30],
    [30, 20.1, 13.5],
    [31, 20, 12],
    [29, 20, 30],
  ])("%d conductors filling %d %% of a wireway: %d A", (conductors, fillPercent, amperes) => {
    expect(result({ grouping: { in: "metal-wireway", conductors, fillPercent } }, CORRECTED)).toBe(amperes);
  });

  test("the fill of a wireway is asked for only where it decides", () => {
    expect(ask({ grouping: { in: "metal-wireway", conductors: 30 } }).missing[0]?.path).toBe(
      "question/run/grouping/fillPercent",
    );
    expect(ask({ grouping: { in: "metal-wireway", conductors: 31 } }).outcome).toBe("answered");
    expect(ask({ grouping: { in: "metal-wireway", conductors: 3 } }).outcome).toBe("answered");
  });
});

describe("roofs", () => {
  const onRoof = (value: number, change: Change = {}) =>
    result({ sunlitRoof: { aboveRoof: { value, unit: "in" } }, ambient: celsius(40), ...change }, CORRECTED);
  // hand: 40 + 33 = 73 C: 30 x 0.50 = 15; clear of the roof 40 C: 30 x 0.91 = 27.3
  test.each([
    [0, 15],
    [0.874, 15],
    [0.875, 27.3],
    [0.876, 27.3],
  ])("%d in above: %d A", (height, amperes) => {
    for (const edition of EDITIONS)
      expect(
        result({ sunlitRoof: { aboveRoof: { value: height, unit: "in" } }, ambient: celsius(40) }, CORRECTED, edition),
      ).toBe(amperes);
  });
  test("nothing is added for XHHW-2", () => {
    expect(onRoof(0, { insulation: "XHHW-2" })).toBe(27.3);
  });
  test("a height below the roof is refused", () => {
    expect(() => onRoof(-1)).toThrow("aboveRoof");
  });
  test("the clause is the edition's own", () => {
    const cites = (edition: Edition) =>
      ask({ sunlitRoof: { aboveRoof: { value: 0, unit: "in" } } }, edition).steps.flatMap((step) =>
        step.kind === "stated" ? [step.cite.locator] : [],
      );
    expect(cites(nfpa70Edition2017)).toContain("310.15(B)(3)(c)");
    expect(cites(nfpa70Edition2023)).toContain("310.15(B)(2)");
  });
});

describe("terminations", () => {
  // published: 6 AWG copper 55, 65, 75 A
  test.each([
    [60, 90, 55],
    [75, 60, 55],
    [75, 90, 65],
    [90, 90, 75],
    [74.9, 90, 55],
  ])("%d C and %d C: %d A", (supply, load, amperes) => {
    expect(result({ size: "6 AWG", supplyEnd: celsius(supply), loadEnd: celsius(load) }, "ampacity")).toBe(amperes);
  });
  test("terminations below every column are refused", () => {
    expect(ask({ loadEnd: celsius(59) }).refusal?.code).toBe("OUTSIDE_TABLE");
  });

  // hand: 110.14(C)(1): 1 AWG counts as 60 C: 110 A; 1/0 AWG under 100 A 60 C: 125 A, above 75 C: 150 A
  test.each([
    ["1 AWG", 150, 110],
    ["1/0 AWG", 100, 125],
    ["1/0 AWG", 101, 150],
    ["1/0 AWG", 99, 125],
  ])("unmarked, %s under %d A: %d A", (size, circuitRatingA, amperes) => {
    expect(result({ size, circuitRatingA, supplyEnd: "unmarked" }, "ampacity")).toBe(amperes);
  });
  test("the rating of the circuit is asked for only where unmarked terminals hang on it", () => {
    expect(ask({ size: "1/0 AWG", supplyEnd: "unmarked" }).missing[0]?.path).toBe("question/circuitRatingA");
    expect(ask({ size: "1 AWG", supplyEnd: "unmarked" }).outcome).toBe("answered");
    // 170 x 0.50 = 85 A, less than either column
    expect(ask({ size: "1/0 AWG", supplyEnd: "unmarked", grouping: together(10) }).outcome).toBe("answered");
  });
  test("a terminal's rating is asked for only where it decides", () => {
    const run = (change: Partial<ConductorRun>) => sampleRunWithout(["loadEnd"], change);
    expect(askRun("6 AWG", run({})).missing[0]?.path).toBe("question/run/loadEnd");
    expect(askRun("6 AWG", run({ supplyEnd: celsius(60) })).outcome).toBe("answered");
    // 75 x 0.70 = 52.5 A, less than 55 A
    expect(askRun("6 AWG", run({ grouping: together(9) })).results[0]?.value).toBe(52.5);
  });

  // hand: 334.80: 90 C column for the factors, 60 C column at the end: 12 AWG 30 x 0.70 = 21, at most 20
  test("nonmetallic-sheathed cable is corrected at 90 C and ends at 60 C", () => {
    const change = { insulation: "NM", grouping: { in: "bundle", conductors: 9 } } as const;
    expect(result(change, CORRECTED)).toBe(21);
    expect(result(change, "ampacity")).toBe(20);
    expect(ask({ ...change, place: "wet" }).refusal?.code).toBe("NO_SOLUTION");
  });
});

describe("facts that are missing and questions that are refused", () => {
  test.each(["ambient", "grouping"] as const)("%s is asked for", (fact) => {
    const finding = askRun("12 AWG", sampleRunWithout([fact]));
    expect(finding).toMatchObject({ outcome: "missing", missing: [{ path: `question/run/${fact}` }] });
  });
  test("the place is asked for where the type is not rated alike everywhere", () => {
    expect(askRun("6 AWG", sampleRunWithout(["place"])).missing[0]?.path).toBe("question/run/place");
    expect(askRun("6 AWG", sampleRunWithout(["place"], { insulation: "THWN-2" })).outcome).toBe("answered");
    // At 60 C and 30 C it does not matter whether XHHW is a 75 C or a 90 C type
    const cool = sampleRunWithout(["place"], { insulation: "XHHW", supplyEnd: celsius(60) });
    expect(askRun("6 AWG", cool).results[0]?.value).toBe(55);
  });
  test("THHN has no rating in wet places", () => {
    expect(ask({ place: "wet" }).refusal?.code).toBe("NO_SOLUTION");
  });
  test("an insulation without a type needs its rating", () => {
    const run = { insulation: "other", grouping: together(9) } as const;
    expect(ask(run).missing[0]?.path).toBe("question/run/insulationRating");
    expect(ask({ ...run, insulationRating: celsius(90) }).results[0]?.value).toBe(21);
    expect(ask({ ...run, insulationRating: celsius(59) }).refusal?.code).toBe("OUTSIDE_TABLE");
  });
  test.each([
    [{ insulation: "fixture-wire" }],
    [{ insulation: "equipment-lead" }],
    [{ insulation: "bare", manner: "free-air", grouping: { in: "apart" } }],
    [{ grouping: { in: "apart" } }],
    [{ manner: "free-air" }],
  ] as const)("not covered: %j", (change) => {
    expect(ask(change).refusal?.code).toBe("NOT_COVERED");
  });
  test("a size the table does not print is refused", () => {
    expect(ask({ size: "5 AWG" }).refusal?.code).toBe("OUTSIDE_TABLE");
    expect(ask({ size: "14 AWG", metal: "aluminum" }).refusal?.code).toBe("OUTSIDE_TABLE");
    expect(ask({ size: "35 mm2" }).refusal?.code).toBe("OUTSIDE_TABLE");
    expect(() => ask({ size: "12" })).toThrow(RangeError);
  });
  test("sets must be counted", () => {
    expect(() => ask({ sets: 0 })).toThrow("question/run/sets");
    expect(() => ask({ grouping: { in: "raceway", conductors: [] } })).toThrow("grouping/conductors");
  });
  test("advice speaks of small conductors and of small ones in parallel", () => {
    expect(ask({}).advice.join(" ")).toContain("20 A");
    expect(ask({ size: "8 AWG" }).advice).toEqual([]);
    expect(ask({ size: "1 AWG", sets: 2 }).advice.join(" ")).toContain("parallel");
    expect(ask({ size: "1/0 AWG", sets: 2 }).advice).toEqual([]);
  });
});
