import { describe, expect, test } from "vitest";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import type { FillConductor } from "./fill-groups.js";
import { type RacewayFillQuestion, racewayFill } from "./raceway-fill.js";

const BASIS = { ruleSet: "nfpa70", edition: "2023" } as const;

function thhn(size: string, count = 1): FillConductor {
  return { kind: "conductor", count, size, insulation: "THHN/THWN-2", stranding: "class-B" };
}

function ask(question: RacewayFillQuestion) {
  return racewayFill.answer(question, BASIS, nfpa70Edition2023);
}

function main(question: RacewayFillQuestion) {
  const finding = ask(question);
  if (finding.outcome !== "answered") throw new Error(finding.sentence);
  return finding.results[0]?.value;
}

const TRADE_SIZES = ["1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "3-1/2", "4"];

// published: NFPA 70 Informative Annex C Table C.1, electrical metallic tubing, THHN, THWN, THWN-2 (from memory).
// Left out: trade size 4 with 12 AWG and 1-1/4 with 6 AWG, where the annex works from metric figures and has one more.
const TABLE_C1: readonly (readonly [string, readonly number[]])[] = [
  ["14 AWG", [12, 22, 35, 61, 84, 138, 241, 364, 476, 608]],
  ["12 AWG", [9, 16, 26, 45, 61, 101, 176, 266, 347]],
  ["10 AWG", [5, 10, 16, 28, 38, 63, 111, 167, 219, 279]],
  ["8 AWG", [3, 6, 9, 16, 22, 36, 64, 96, 126, 161]],
  ["6 AWG", [2, 4, 7]],
  ["4 AWG", [1, 2, 4, 7, 10, 16, 28, 43, 56, 71]],
  ["3 AWG", [1, 1, 3, 6, 8, 13, 24, 36, 47, 60]],
  ["2 AWG", [1, 1, 3, 5, 7, 11, 20, 30, 40, 51]],
  ["1 AWG", [1, 1, 1, 4, 5, 8, 15, 22, 29, 37]],
  ["1/0 AWG", [1, 1, 1, 3, 4, 7, 12, 19, 25, 32]],
  ["2/0 AWG", [0, 1, 1, 2, 3, 6, 10, 16, 20, 26]],
  ["3/0 AWG", [0, 1, 1, 1, 3, 5, 8, 13, 17, 22]],
  ["4/0 AWG", [0, 1, 1, 1, 2, 4, 7, 11, 14, 18]],
  ["250 kcmil", [0, 0, 1, 1, 1, 3, 6, 9, 11, 15]],
  ["300 kcmil", [0, 0, 1, 1, 1, 3, 5, 7, 10, 13]],
  ["350 kcmil", [0, 0, 1, 1, 1, 2, 4, 6, 9, 11]],
  ["400 kcmil", [0, 0, 0, 1, 1, 1, 4, 6, 8, 10]],
  ["500 kcmil", [0, 0, 0, 1, 1, 1, 3, 5, 6, 8]],
];

describe("published numbers of conductors (NFPA 70 Informative Annex C Table C.1)", () => {
  test.each(TABLE_C1)("EMT holds %s THHN as the annex prints", (size, numbers) => {
    const found = TRADE_SIZES.slice(0, numbers.length).map((tradeSize) =>
      main({ ask: "how-many", raceway: { kind: "EMT", tradeSize }, conductors: [thhn(size)] }),
    );
    expect(found).toEqual(numbers);
  });
  test.each([
    ["1-1/2", 16],
    ["2", 26],
    ["2-1/2", 46],
    ["3", 69],
    ["3-1/2", 91],
    ["4", 116],
  ])("EMT %s holds %d conductors 6 AWG THHN", (tradeSize, number) => {
    expect(main({ ask: "how-many", raceway: { kind: "EMT", tradeSize }, conductors: [thhn("6 AWG")] })).toBe(number);
  });
  // hand: 0.598 / 0.0507 = 11.795 and 5.901 / 0.0133 = 443.68: below 0.8; the annex prints 12 and 444
  test.each([
    ["1-1/4", "6 AWG", 11],
    ["4", "12 AWG", 443],
  ])("EMT %s, %s: the printed square inches hold %d", (tradeSize, size, number) => {
    expect(main({ ask: "how-many", raceway: { kind: "EMT", tradeSize }, conductors: [thhn(size)] })).toBe(number);
  });
});

// published: NFPA 70 Informative Annex C, rigid metal conduit (Table C.9) and PVC schedule 40 (Table C.11), THHN, THWN,
// THWN-2, trade sizes 1/2 to 4 (from memory)
const MORE_TABLES = [
  ["RMC", "14 AWG", [13, 22, 36, 63, 85, 140, 200, 309, 412, 531]],
  ["RMC", "12 AWG", [9, 16, 26, 46, 62, 102, 146, 225, 301, 387]],
  ["RMC", "10 AWG", [6, 10, 17, 29, 39, 64, 92, 142, 189, 244]],
  ["PVC-40", "14 AWG", [11, 21, 34, 60, 82, 135, 193, 299, 401, 517]],
  ["PVC-40", "12 AWG", [8, 15, 25, 43, 59, 99, 141, 218, 293, 377]],
  ["PVC-40", "10 AWG", [5, 9, 15, 27, 37, 62, 89, 137, 184, 238]],
  ["PVC-40", "8 AWG", [3, 5, 9, 16, 21, 36, 51, 79, 106, 137]],
] as const;

describe("published numbers of conductors (NFPA 70 Informative Annex C Tables C.9 and C.11)", () => {
  test.each(MORE_TABLES)("%s holds %s THHN as the annex prints", (kind, size, numbers) => {
    const found = TRADE_SIZES.map((tradeSize) =>
      main({ ask: "how-many", raceway: { kind, tradeSize }, conductors: [thhn(size)] }),
    );
    expect(found).toEqual(numbers);
  });
});

describe("fill of a raceway (NFPA 70-2023 Chapter 9)", () => {
  // hand: 3 x 0.2679 + 0.0507 = 0.8544 of 1.342 (40 % of 2 in EMT); 0.8544 / 3.356 = 25.46 %
  test("three 3/0 and a 6 AWG ground in 2 in EMT", () => {
    const finding = ask({
      ask: "fill",
      raceway: { kind: "EMT", tradeSize: "2" },
      conductors: [thhn("3/0 AWG", 3), thhn("6 AWG")],
    });
    expect(finding.results).toMatchObject([{ value: true }, { value: 0.8544 }, { value: 1.342 }, { unit: "%" }]);
    expect(finding.results[3]?.value).toBeCloseTo(25.4589, 3);
    expect(finding.steps.flatMap((step) => (step.kind === "read" ? [step.cell.table] : []))).toContain(
      "NFPA 70-2023/insulated-area",
    );
  });

  // hand: unequal conductors go by area. 1/2 in EMT at 40 %: 0.122. 9 x 0.0097 = 0.0873 and 0.0133 x 2 = 0.0266: 0.1139
  // fits; a third 12 AWG 0.1272 does not. By area exactly the share: measured 0.0347 + 0.0873 = 0.122
  test.each([
    [0.0346, true],
    [0.0347, true],
    [0.0348, false],
  ])("beside nine 14 AWG a conductor of %d square inches fits 1/2 in EMT: %s", (value, fits) => {
    const measured: FillConductor = {
      kind: "conductor",
      count: 1,
      size: "6 AWG",
      insulation: "USE-2",
      stranding: "class-B",
      measuredArea: { value, unit: "in2" },
    };
    expect(
      main({ ask: "fill", raceway: { kind: "EMT", tradeSize: "1/2" }, conductors: [thhn("14 AWG", 9), measured] }),
    ).toBe(fits);
  });

  // hand: 0.213 / 0.0097 = 21.96: 22 equal conductors may be drawn in though 22 x 0.0097 = 0.2134 is above 0.213
  test.each([
    [21, true],
    [22, true],
    [23, false],
  ])("%d conductors 14 AWG in 3/4 in EMT: %s", (count, fits) => {
    const conductors = [thhn("14 AWG", count)];
    expect(main({ ask: "fill", raceway: { kind: "EMT", tradeSize: "3/4" }, conductors })).toBe(fits);
  });

  // hand: a fraction of exactly 0.8 counts: 0.122 / 2.8 = 0.0435714...; an area of 0.0436 gives 2.798, 0.0435 gives 2.805
  test.each([
    [0.0435, 3],
    [0.0436, 2],
  ])("equal conductors of %d square inches: 1/2 in EMT holds %d at the share for three", (value, number) => {
    const measured: FillConductor = {
      kind: "conductor",
      count: 1,
      size: "6 AWG",
      insulation: "USE-2",
      stranding: "class-B",
      measuredArea: { value, unit: "in2" },
    };
    const most = main({ ask: "how-many", raceway: { kind: "EMT", tradeSize: "1/2" }, conductors: [measured] });
    // At 31 percent 0.094 / 0.0436 = 2.16 still holds two
    expect(most).toBe(number);
  });
  // hand: 0.122 / 0.8 = 0.1525 and 0.161 / 0.20125 = 0.8 exactly: one conductor of 0.20125 is held at 53 percent
  test.each([
    [0.2012, 1],
    [0.20125, 1],
    [0.2013, 0],
  ])("a single conductor of %d square inches in 1/2 in EMT: %d", (value, number) => {
    const measured: FillConductor = {
      kind: "conductor",
      count: 1,
      size: "6 AWG",
      insulation: "USE-2",
      stranding: "class-B",
      measuredArea: { value, unit: "in2" },
    };
    expect(main({ ask: "how-many", raceway: { kind: "EMT", tradeSize: "1/2" }, conductors: [measured] })).toBe(number);
  });

  // hand: 2 in EMT total 3.356, 60 % 2.013, 40 % 1.342; 3/0 THHN 0.2679: 2.013 / 0.2679 = 7.51, 1.342 / 0.2679 = 5.01
  test.each([
    [23.9, 7],
    [24, 7],
    [24.1, 5],
  ])("a nipple of %d in holds %d conductors 3/0 AWG", (value, number) => {
    const question = { raceway: { kind: "EMT", tradeSize: "2" }, conductors: [thhn("3/0 AWG")] } as const;
    expect(main({ ...question, ask: "how-many", nippleLength: { value, unit: "in" } })).toBe(number);
  });
  test("a nipple given in other units is converted", () => {
    const question = {
      ask: "how-many",
      raceway: { kind: "EMT", tradeSize: "2" },
      conductors: [thhn("3/0 AWG")],
    } as const;
    expect(main({ ...question, nippleLength: { value: 2, unit: "ft" } })).toBe(7);
    expect(main({ ...question, nippleLength: { value: 609.6, unit: "mm" } })).toBe(7);
    expect(main({ ...question, nippleLength: { value: 0.61, unit: "m" } })).toBe(5);
  });

  // hand: compact XHHW 4/0 0.2733 x 4 = 1.0932; PVC-40 2 in holds 1.316 at 40 %, 1-1/2 in 0.794
  test("four compact 4/0 XHHW-2 take 2 in PVC schedule 40", () => {
    const compact: FillConductor = {
      kind: "conductor",
      count: 4,
      size: "4/0 AWG",
      insulation: "XHHW-2",
      stranding: "compact",
    };
    const finding = ask({ ask: "smallest-trade-size", raceway: { kind: "PVC-40" }, conductors: [compact] });
    expect(finding.results).toMatchObject([{ value: "2" }, { value: 1.0932 }, { value: 1.316 }, {}]);
    expect(finding.steps.flatMap((step) => (step.kind === "read" ? [step.cell.table] : []))).toContain(
      "NFPA 70-2023/compact-area",
    );
  });

  // hand: bare 4 AWG stranded 0.042, solid 8 AWG 0.013; a cable of 0.5 in has pi x 0.25 / 4 = 0.19635
  test("bare conductors and cables have their own areas", () => {
    const area = (conductor: FillConductor) =>
      ask({ ask: "fill", raceway: { kind: "RMC", tradeSize: "2" }, conductors: [conductor] }).results[1]?.value;
    const bare = { kind: "conductor", count: 1, insulation: "bare" } as const;
    expect(area({ ...bare, size: "4 AWG", stranding: "class-B" })).toBe(0.042);
    expect(area({ ...bare, size: "8 AWG", stranding: "solid" })).toBe(0.013);
    // hand: compact 4/0 bare 0.475 in: 0.17721
    expect(area({ ...bare, size: "4/0 AWG", stranding: "compact" })).toBeCloseTo(0.17721, 5);
    expect(area({ kind: "cable", count: 1, diameter: { value: 12.7, unit: "mm" } })).toBeCloseTo(0.19635, 5);
  });

  test("RHW-2 with and without covering have their own columns", () => {
    const area = (outerCovering: boolean) =>
      ask({
        ask: "fill",
        raceway: { kind: "RMC", tradeSize: "2" },
        conductors: [
          { kind: "conductor", count: 1, size: "1/0 AWG", insulation: "RHW-2", stranding: "class-B", outerCovering },
        ],
      }).results[1]?.value;
    expect([area(true), area(false)]).toEqual([0.3039, 0.2223]);
  });

  // published: NFPA 70 Chapter 9 Table 5, 4/0 AWG, and Table 5A, compact 4/0 AWG (square inches)
  test.each([
    [["TW"], 0.3718, undefined],
    [["THW", "THW-2"], 0.3718, 0.3267],
    [["THHN", "THWN", "THWN-2", "THHN/THWN-2"], 0.3237, 0.278],
    [["XHHW", "XHHW-2"], 0.3197, 0.2733],
    [["RHH", "RHW", "RHW-2", "RHH/RHW-2"], 0.4754, undefined],
    [["UF", "USE", "USE-2", "NM", "equipment-lead", "fixture-wire", "other"], undefined, undefined],
  ] as const)("types %j of 4/0 AWG take %d, compact %d", (types, concentric, compact) => {
    for (const insulation of types) {
      const area = (stranding: "class-B" | "class-C" | "compressed" | "compact") => {
        const finding = ask({
          ask: "fill",
          raceway: { kind: "RMC", tradeSize: "2" },
          conductors: [{ kind: "conductor", count: 1, size: "4/0 AWG", insulation, stranding, outerCovering: true }],
        });
        if (finding.outcome === "missing")
          expect(finding.missing[0]?.path, insulation).toBe("question/conductors/0/measuredArea");
        return finding.results[1]?.value;
      };
      expect([area("class-B"), area("class-C"), area("compressed"), area("compact")], insulation).toEqual([
        concentric,
        concentric,
        concentric,
        compact,
      ]);
    }
  });
  test("the lists asked for say which table lacks the conductor", () => {
    const because = (insulation: "USE-2" | "RHW-2" | "bare", stranding: "class-B" | "class-K" | "compact") =>
      ask({
        ask: "fill",
        raceway: { kind: "RMC", tradeSize: "2" },
        conductors: [{ kind: "conductor", count: 1, size: "4/0 AWG", insulation, stranding }],
      }).sentence;
    const given = ", so its actual area must be given.";
    expect(because("USE-2", "class-B")).toBe(`Chapter 9 Table 5 lists no type USE-2${given}`);
    expect(because("RHW-2", "compact")).toBe(`Chapter 9 Table 5A lists no type RHW-2${given}`);
    expect(because("RHW-2", "class-K")).toBe(`Chapter 9 Table 5 does not list conductors of class-K${given}`);
    expect(because("bare", "class-K")).toBe(`Chapter 9 Table 8 does not list conductors of class-K${given}`);
  });

  // hand: 0.213 / 0.0097 = 21.96: 22 go by number, though 22 x 0.0097 = 0.2134 is above 0.213
  test("equal conductors go by number, listed together or apart", () => {
    const fits = (...conductors: FillConductor[]) =>
      main({ ask: "fill", raceway: { kind: "EMT", tradeSize: "3/4" }, conductors });
    expect(fits(thhn("14 AWG", 22))).toBe(true);
    expect(fits(thhn("14 AWG", 20), thhn("14 AWG", 2))).toBe(true);
    expect(fits(thhn("14 AWG", 21), thhn("14 AWG", 2))).toBe(false);
  });
  // hand: 21 x 0.0097 + 0.0133 = 0.217 is above 0.213: unequal ones have no fraction that counts as one more
  test("unequal conductors go by area", () => {
    const fits = (...conductors: FillConductor[]) =>
      main({ ask: "fill", raceway: { kind: "EMT", tradeSize: "3/4" }, conductors });
    expect(fits(thhn("14 AWG", 20), thhn("12 AWG"))).toBe(true);
    expect(fits(thhn("14 AWG", 21), thhn("12 AWG"))).toBe(false);
  });

  // hand: 2 in EMT is 2.067 wide; 350 kcmil THHN 0.817: 2.53; 4/0 THHN 0.642: 3.22; 250 kcmil 0.711: 2.907
  test.each([
    ["4/0 AWG", 0],
    ["250 kcmil", 1],
    ["350 kcmil", 0],
  ])("three %s in 2 in EMT: %d lines on jamming", (size, lines) => {
    const finding = ask({ ask: "fill", raceway: { kind: "EMT", tradeSize: "2" }, conductors: [thhn(size, 3)] });
    expect(finding.advice.filter((line) => line.includes("jam"))).toHaveLength(lines);
  });

  // hand, 1 in EMT is 1.049 in wide: 3 AWG THHN 0.352: 2.98; the same as three kinds of one; two and four do not jam
  test("three conductors jam, listed together or apart, two and four do not", () => {
    const jams = (...conductors: FillConductor[]) =>
      ask({ ask: "fill", raceway: { kind: "EMT", tradeSize: "1" }, conductors }).advice.some((line) =>
        line.includes("jam"),
      );
    expect(jams(thhn("3 AWG", 3))).toBe(true);
    expect(jams(thhn("3 AWG"), thhn("3 AWG", 2))).toBe(true);
    expect(jams(thhn("3 AWG", 2))).toBe(false);
    expect(jams(thhn("3 AWG", 4))).toBe(false);
    expect(jams(thhn("3 AWG", 2), thhn("4 AWG"))).toBe(false);
  });

  test("more than three conductors draw advice on adjustment, in a nipple that there is none", () => {
    const question = { ask: "fill", raceway: { kind: "EMT", tradeSize: "2" } } as const;
    const advice = (count: number, nippleLength?: { value: number; unit: "in" }) =>
      ask({ ...question, conductors: [thhn("8 AWG", count)], ...(nippleLength && { nippleLength }) }).advice.join(" ");
    expect(advice(3)).toBe("");
    expect(advice(4)).toContain("310.15(C)(1)");
    expect(advice(4, { value: 12, unit: "in" })).toContain("is not adjusted");
  });
});

describe("what raceway fill cannot answer", () => {
  const raceway = { kind: "EMT", tradeSize: "2" } as const;
  const use2 = { kind: "conductor", count: 1, size: "2/0 AWG", insulation: "USE-2", stranding: "class-B" } as const;
  test.each([
    [{ ...use2 }, "question/conductors/0/measuredArea"],
    [{ ...use2, insulation: "RHW-2", stranding: "compact" }, "question/conductors/0/measuredArea"],
    [{ ...use2, insulation: "THW", stranding: "class-K" }, "question/conductors/0/measuredArea"],
    [{ ...use2, insulation: "bare", stranding: "class-G" }, "question/conductors/0/measuredArea"],
    [{ ...use2, insulation: "RHW-2" }, "question/conductors/0/outerCovering"],
    [{ ...use2, insulation: "THW", stranding: "unknown" }, "question/conductors/0/stranding"],
  ] as const)("%j asks for %s", (conductor, path) => {
    expect(ask({ ask: "fill", raceway, conductors: [conductor] })).toMatchObject({
      outcome: "missing",
      missing: [{ path }],
    });
  });
  test("the trade size is asked for by name", () => {
    expect(ask({ ask: "fill", raceway: { kind: "EMT" }, conductors: [thhn("8 AWG")] })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "question/raceway/tradeSize" }],
    });
  });
  test.each([
    [{ ask: "fill", raceway: { kind: "EMT", tradeSize: "5" } }, "OUTSIDE_TABLE"],
    [{ ask: "how-many", raceway: { kind: "EMT", tradeSize: "5" } }, "OUTSIDE_TABLE"],
    [{ ask: "fill", raceway: { kind: "EMT", tradeSize: "3/8" } }, "OUTSIDE_TABLE"],
    [{ ask: "fill", raceway: { kind: "FMC", tradeSize: "3/8" } }, "NOT_COVERED"],
    [{ ask: "fill", raceway: { kind: "LFMC", tradeSize: "3/8" } }, "NOT_COVERED"],
    [{ ask: "smallest-trade-size", raceway: { kind: "EMT" }, conductors: [thhn("1000 kcmil", 30)] }, "NO_SOLUTION"],
    [{ ask: "fill", raceway, conductors: [thhn("2000 kcmil")] }, "OUTSIDE_TABLE"],
    [{ ask: "fill", raceway, conductors: [thhn("70 mm2")] }, "OUTSIDE_TABLE"],
  ] as const)("%j is refused with %s", (part, code) => {
    expect(ask({ conductors: [thhn("8 AWG")], ...part })).toMatchObject({ outcome: "refused", refusal: { code } });
  });
  test("the smallest flexible conduit is not proposed", () => {
    expect(main({ ask: "smallest-trade-size", raceway: { kind: "FMC" }, conductors: [thhn("14 AWG", 2)] })).toBe("1/2");
  });
  test("a question without conductors, or for how many of several kinds, is not accepted", () => {
    expect(() => ask({ ask: "fill", raceway, conductors: [] })).toThrow(
      expect.objectContaining({ path: "question/conductors" }),
    );
    expect(() => ask({ ask: "how-many", raceway, conductors: [thhn("8 AWG", 2)] })).toThrow(
      expect.objectContaining({ path: "question/conductors" }),
    );
    expect(() => ask({ ask: "how-many", raceway, conductors: [thhn("8 AWG"), thhn("6 AWG")] })).toThrow(RangeError);
    expect(() => ask({ ask: "fill", raceway, conductors: [thhn("8 AWG", 0)] })).toThrow(RangeError);
  });
});
