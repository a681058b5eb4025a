import { describe, expect, test } from "vitest";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import type { FillConductor } from "./fill-groups.js";
import { type WirewayFillQuestion, wirewayFill } from "./wireway-fill.js";

const BASIS = { ruleSet: "nfpa70", edition: "2023" } as const;

function thhn(size: string, count: number): FillConductor {
  return { kind: "conductor", count, size, insulation: "THHN/THWN-2", stranding: "class-B" };
}

function measured(value: number): FillConductor {
  const area = { measuredArea: { value, unit: "in2" } } as const;
  return { kind: "conductor", count: 1, size: "4/0 AWG", insulation: "USE-2", stranding: "class-B", ...area };
}

function ask(change: Partial<WirewayFillQuestion>) {
  const question: WirewayFillQuestion = {
    ask: "fill",
    kind: "metal-wireway",
    width: { value: 4, unit: "in" },
    height: { value: 4, unit: "in" },
    conductors: [thhn("4/0 AWG", 9)],
    ...change,
  };
  return wirewayFill.answer(question, BASIS, nfpa70Edition2023);
}

function main(change: Partial<WirewayFillQuestion>) {
  const finding = ask(change);
  if (finding.outcome !== "answered") throw new Error(finding.sentence);
  return finding.results[0]?.value;
}

describe("fill of a wireway (NFPA 70-2023 376.22, 376.56)", () => {
  // hand: 9 x 0.3237 / 16 = 18.21 %; 10 x 0.3237 / 16 = 20.23 %
  test("nine 4/0 THHN fit a 4 x 4 in wireway, ten do not", () => {
    expect(main({})).toBe(true);
    expect(main({ conductors: [thhn("4/0 AWG", 10)] })).toBe(false);
  });

  // hand: 20 % of 16 in2 is 3.2 in2
  test.each([
    [3.199, true],
    [3.2, true],
    [3.201, false],
  ])("%d square inches of conductors in 16: %s", (value, fits) => {
    expect(main({ conductors: [measured(value)] })).toBe(fits);
  });

  // hand: 75 % of 16 in2 is 12 in2; the conductors take 3, so the splices may take 9
  test.each([
    [8.99, true],
    [9, true],
    [9.01, false],
  ])("splices of %d square inches beside 3 of conductors: %s", (value, fits) => {
    const finding = ask({ conductors: [measured(3)], splices: { value, unit: "in2" } });
    expect(finding.results[0]?.value).toBe(fits);
    expect(finding.cite.locator).toBe(fits ? "376.22(A)" : "376.56(A)");
  });

  test("splices and sections in metric units are converted", () => {
    // hand: 9 in2 = 5806.44 mm2 = 58.0644 cm2
    expect(main({ conductors: [measured(3)], splices: { value: 5806.44, unit: "mm2" } })).toBe(true);
    expect(main({ conductors: [measured(3)], splices: { value: 58.07, unit: "cm2" } })).toBe(false);
    expect(main({ width: { value: 101.6, unit: "mm" }, conductors: [measured(3.2)] })).toBe(true);
  });

  test.each([
    [30, 0],
    [31, 1],
  ])("%d current-carrying conductors: %d lines on adjustment", (currentCarrying, lines) => {
    expect(ask({ currentCarrying }).advice.filter((line) => line.includes("adjusted"))).toHaveLength(lines);
  });
  test("a nonmetallic wireway adjusts beyond three and has its own clauses", () => {
    const lines = (currentCarrying: number) =>
      ask({ kind: "nonmetallic-wireway", currentCarrying }).advice.filter((line) => line.includes("adjusted")).length;
    expect([lines(3), lines(4)]).toEqual([0, 1]);
    expect(ask({ kind: "nonmetallic-wireway" }).cite.locator).toBe("378.22");
  });
  test("an unknown number of current-carrying conductors is no obstacle", () => {
    expect(ask({}).advice[0]).toContain("Beyond 30");
  });
});

describe("wiring space of an enclosure (NFPA 70-2023 312.8)", () => {
  // hand: 19 x 0.3237 / 16 = 38.44 %; 20 x 0.3237 / 16 = 40.46 %
  test("nineteen 4/0 THHN fit 4 x 4 in, twenty do not", () => {
    expect(main({ kind: "enclosure", conductors: [thhn("4/0 AWG", 19)] })).toBe(true);
    expect(main({ kind: "enclosure", conductors: [thhn("4/0 AWG", 20)] })).toBe(false);
  });
});

describe("what hangs on the kind of space", () => {
  const advice = (change: Partial<WirewayFillQuestion>) => ask(change).advice.join(" ");
  test("only a metal wireway is free of adjustment up to 30 conductors, by its own clause", () => {
    expect(advice({ currentCarrying: 31 })).toContain("376.22(B)");
    expect(advice({})).toContain("376.22(B)");
    expect(advice({ kind: "nonmetallic-wireway" })).toContain("Beyond 3 current-carrying");
    expect(advice({ kind: "nonmetallic-wireway", currentCarrying: 4 })).toContain(
      "adjusted: Table 310.15(C)(1), NFPA 70-2023.",
    );
  });
  test("an enclosure that conductors run through needs its label, with splices or without", () => {
    const splices = { value: 1, unit: "in2" } as const;
    const label = "needs a label that names the disconnect";
    expect(ask({ kind: "enclosure", splices, currentCarrying: 40 }).advice).toEqual([
      expect.stringContaining(label) as string,
    ]);
    expect(advice({ kind: "enclosure" })).toContain(label);
    expect(advice({ kind: "enclosure" })).toContain("No splices were named");
    expect(ask({ splices, currentCarrying: 30 }).advice).toEqual([]);
  });
});

describe("smallest section", () => {
  // hand: 10 x 0.3237 = 3.237; x 100 / 20 = 16.185 in2
  test("ten 4/0 THHN need 16.185 square inches of wireway", () => {
    expect(main({ ask: "smallest-section", conductors: [thhn("4/0 AWG", 10)] })).toBe(16.185);
  });
  // hand: 3 in2 of conductors need 15 in2; with splices of 8.25 in2 11.25 x 100 / 75 = 15 in2, with more they govern
  test.each([
    [8.25, 15],
    [8.4, 15.2],
  ])("splices of %d square inches: %d", (value, section) => {
    expect(main({ ask: "smallest-section", conductors: [measured(3)], splices: { value, unit: "in2" } })).toBe(section);
  });
});

describe("what wireway fill cannot answer", () => {
  test("the inside of the wireway is asked for by name", () => {
    const question = { ask: "fill", kind: "metal-wireway", conductors: [thhn("4/0 AWG", 1)] } as const;
    const missing = (change: Partial<WirewayFillQuestion>) =>
      wirewayFill.answer({ ...question, ...change }, BASIS, nfpa70Edition2023).missing.map(({ path }) => path);
    expect(missing({})).toEqual(["question/width"]);
    expect(missing({ width: { value: 4, unit: "in" } })).toEqual(["question/height"]);
  });
  test("a conductor the tables do not list is asked for its area", () => {
    const conductor = {
      kind: "conductor",
      count: 1,
      size: "4/0 AWG",
      insulation: "USE-2",
      stranding: "class-B",
    } as const;
    expect(ask({ conductors: [conductor] })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "question/conductors/0/measuredArea" }],
      cite: { locator: "Chapter 9, Notes to Tables (5)" },
    });
  });
  test("numbers that are none are not accepted", () => {
    expect(() => ask({ width: { value: 0, unit: "in" } })).toThrow(RangeError);
    expect(() => ask({ splices: { value: Number.NaN, unit: "in2" } })).toThrow(RangeError);
  });
  test("the edition asked is cited", () => {
    const finding = wirewayFill.answer(
      { ask: "smallest-section", kind: "metal-wireway", conductors: [thhn("4/0 AWG", 1)] },
      { ruleSet: "nfpa70", edition: "2017" },
      nfpa70Edition2017,
    );
    expect(finding.cite.edition).toBe("2017");
    expect(finding.advice[0]).toContain("310.15(B)(3)(a)");
  });
});
