import { describe, expect, test } from "vitest";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { type ConversionQuestion, convert } from "./convert.js";

function ask(question: ConversionQuestion) {
  return convert.answer(question, { ruleSet: "nfpa70", edition: "2023" }, nfpa70Edition2023);
}

function main(question: ConversionQuestion) {
  return ask(question).results[0]?.value;
}

function result(question: ConversionQuestion, name: string) {
  return ask(question).results.find((one) => one.name === name)?.value;
}

describe("units", () => {
  // published: NIST SP 811 appendix B.8 (from memory): pound-force inch 1.129 848 E-01 N m, pound-force foot 1.355 818 N m
  test.each([
    ["lbf-in", 0.1129848],
    ["lbf-ft", 1.355818],
  ] as const)("published: 1 %s is %d N-m", (unit, newtonMeters) => {
    expect(main({ kind: "torque", torque: { value: 1, unit }, to: "N-m" })).toBeCloseTo(newtonMeters, 6);
  });
  // hand: 31 lbf-ft x 12 = 372 lbf-in; 275 / 12 = 22.9166...; 31.1 / 0.1129848 = 275.258
  test("torques", () => {
    expect(main({ kind: "torque", torque: { value: 31, unit: "lbf-ft" }, to: "lbf-in" })).toBe(372);
    expect(main({ kind: "torque", torque: { value: 275, unit: "lbf-in" }, to: "lbf-ft" })).toBeCloseTo(22.91667, 5);
    expect(main({ kind: "torque", torque: { value: 31.1, unit: "N-m" }, to: "lbf-in" })).toBeCloseTo(275.258, 3);
    expect(main({ kind: "torque", torque: { value: 275, unit: "lbf-in" }, to: "lbf-in" })).toBe(275);
  });
  // hand: by definition
  test.each([
    ["in", 1, "mm", 25.4],
    ["ft", 1, "m", 0.3048],
    ["m", 0.3048, "ft", 1],
    ["mm", 25.4, "in", 1],
    ["ft", 2, "in", 24],
    ["m", 1, "mm", 1000],
  ] as const)("%s: %d is %s %d", (unit, value, to, expected) => {
    expect(main({ kind: "length", length: { value, unit }, to })).toBe(expected);
  });
  test.each([
    ["in2", 1, "mm2", 645.16],
    ["cm2", 1, "mm2", 100],
    ["mm2", 645.16, "in2", 1],
    ["in2", 1, "cm2", 6.4516],
  ] as const)("%s: %d is %s %d", (unit, value, to, expected) => {
    expect(main({ kind: "area", area: { value, unit }, to })).toBe(expected);
  });
  test.each([
    ["Cel", 75, "degF", 167],
    ["degF", 167, "Cel", 75],
    ["degF", 140, "Cel", 60],
    ["Cel", -40, "degF", -40],
    ["degF", -40, "Cel", -40],
    ["Cel", 90, "Cel", 90],
    ["degF", 90, "degF", 90],
  ] as const)("%s: %d is %s %d", (unit, value, to, expected) => {
    expect(main({ kind: "temperature", temperature: { value, unit }, to })).toBe(expected);
  });
  // hand: 90.1 degF is 32.2777... C, which is no decimal; the figure as it was posted is
  test("a temperature that is asked for as it was posted stays that very figure", () => {
    const finding = ask({ kind: "temperature", temperature: { value: 90.1, unit: "degF" }, to: "degF" });
    expect(finding.results[0]).toMatchObject({ value: 90.1, unit: "degF" });
    expect(finding.sentence).toBe("90.1 degF is 90.1 degF.");
  });
  test("a round trip comes back exactly", () => {
    for (const value of [0.1, 1 / 3, 275, 12345.678]) {
      const there = Number(main({ kind: "length", length: { value, unit: "ft" }, to: "m" }));
      expect(main({ kind: "length", length: { value: there, unit: "m" }, to: "ft" })).toBeCloseTo(value, 9);
    }
  });
  test("numbers that are none are not accepted", () => {
    expect(() => ask({ kind: "torque", torque: { value: Number.NaN, unit: "N-m" }, to: "lbf-in" })).toThrow(RangeError);
    expect(() => ask({ kind: "length", length: { value: -1, unit: "m" }, to: "ft" })).toThrow(RangeError);
    expect(() => ask({ kind: "temperature", temperature: { value: -274, unit: "Cel" }, to: "degF" })).toThrow(
      RangeError,
    );
  });
});

describe("geometry of a gauge size (ASTM B258)", () => {
  // published: ASTM B258, nominal diameters in inches, four places (from memory)
  test.each([
    ["4/0 AWG", 0.46],
    ["3/0 AWG", 0.4096],
    ["2/0 AWG", 0.3648],
    ["1/0 AWG", 0.3249],
    ["1 AWG", 0.2893],
    ["2 AWG", 0.2576],
    ["4 AWG", 0.2043],
    ["6 AWG", 0.162],
    ["8 AWG", 0.1285],
    ["10 AWG", 0.1019],
    ["12 AWG", 0.0808],
    ["14 AWG", 0.0641],
    ["18 AWG", 0.0403],
    ["24 AWG", 0.0201],
    ["30 AWG", 0.01],
  ])("published: %s measures %d in", (size, diameter) => {
    expect(Math.abs(Number(main({ kind: "wire-geometry", size })) - diameter)).toBeLessThanOrEqual(0.00005001);
  });
  // hand: 10 AWG is 10 in the formula, 1/0 AWG 0, 4/0 AWG -3
  test.each([
    ["10 AWG", "0.005 x 92 ^ ((36 - 10) / 39)"],
    ["1/0 AWG", "0.005 x 92 ^ ((36 - 0) / 39)"],
    ["4/0 AWG", "0.005 x 92 ^ ((36 - (-3)) / 39)"],
  ])("%s is written into the formula as %s", (size, substituted) => {
    const step = ask({ kind: "wire-geometry", size }).steps.find(({ label }) => label === "diameter in inches");
    expect(step).toMatchObject({ substituted });
  });
  // hand: 4/0 has 0.46 in exactly: 211600 circular mils, 11.684 mm, 107.2193 mm2
  test("4/0 AWG", () => {
    const question = { kind: "wire-geometry", size: "4/0 AWG" } as const;
    expect(result(question, "area in circular mils")).toBeCloseTo(211600, 6);
    expect(result(question, "diameter in millimeters")).toBeCloseTo(11.684, 9);
    expect(result(question, "area in mm2")).toBeCloseTo(107.2193, 4);
  });
  // published: NFPA 70-2023 Chapter 9 Table 8 prints the same areas, rounded to four figures
  test("the areas are those of the code's table", () => {
    for (const row of nfpa70Edition2023.tables.conductorPropertiesStranded.data.rows) {
      const [size = ""] = row.key;
      if (!size.endsWith("AWG")) continue;
      const area = Number(result({ kind: "wire-geometry", size }, "area in circular mils"));
      expect(Math.abs(area / Number(row.cells[0]) - 1), size).toBeLessThan(0.003);
    }
  });
  test.each(["250 kcmil", "35 mm2"])("%s is refused", (size) => {
    expect(ask({ kind: "wire-geometry", size })).toMatchObject({
      outcome: "refused",
      refusal: { code: "NOT_COVERED" },
    });
  });
});

describe("area of a size", () => {
  // published: IEC 60947-1 Table 1, approximate relation of mm2 to AWG and kcmil (from memory). Left out is 25 mm2, for
  // which that table has 4 AWG because it has no 3 AWG.
  test.each([
    ["1.5 mm2", "16 AWG"],
    ["2.5 mm2", "14 AWG"],
    ["4 mm2", "12 AWG"],
    ["6 mm2", "10 AWG"],
    ["10 mm2", "8 AWG"],
    ["16 mm2", "6 AWG"],
    ["35 mm2", "2 AWG"],
    ["50 mm2", "1/0 AWG"],
    ["70 mm2", "2/0 AWG"],
    ["95 mm2", "3/0 AWG"],
    ["120 mm2", "250 kcmil"],
    ["150 mm2", "300 kcmil"],
    ["185 mm2", "350 kcmil"],
    ["240 mm2", "500 kcmil"],
    ["300 mm2", "600 kcmil"],
  ])("published: nearest to %s is %s", (size, nearest) => {
    expect(result({ kind: "size-area", size }, "nearest size, not equal")).toBe(nearest);
  });
  // hand: 35 / 0.0005067075 / 1000 = 69.0734 kcmil, between 2 AWG (66.36) and 1 AWG (83.69)
  test("35 mm2 lies between two sizes and equals neither", () => {
    const finding = ask({ kind: "size-area", size: "35 mm2" });
    expect(Object.fromEntries(finding.results.map(({ name, value }) => [name, value]))).toMatchObject({
      "area in mm2": 35,
      "next smaller size": "2 AWG",
      "next larger size": "1 AWG",
    });
    expect(result({ kind: "size-area", size: "35 mm2" }, "area in kcmil")).toBeCloseTo(69.0734, 3);
    expect(finding.sentence).toContain("not equal");
  });
  // hand: 105600 x 0.0005067075 = 53.508312 mm2, between 50 and 70
  test("1/0 AWG has 53.5 mm2; nearest is 50 mm2", () => {
    expect(result({ kind: "size-area", size: "1/0 AWG" }, "area in mm2")).toBe(53.508312);
    expect(main({ kind: "size-area", size: "1/0 AWG" })).toBe("50 mm2");
  });
  // hand: 500 kcmil = 253.35 mm2
  test("500 kcmil has 253.35 mm2; nearest is 240 mm2", () => {
    expect(result({ kind: "size-area", size: "500 kcmil" }, "area in mm2")).toBe(253.35375);
    expect(main({ kind: "size-area", size: "500 kcmil" })).toBe("240 mm2");
  });
  // hand: beyond either end there is one neighbor only
  test("at the ends of the series there is none beyond", () => {
    expect(result({ kind: "size-area", size: "0.5 mm2" }, "next smaller size")).toBe("none");
    expect(main({ kind: "size-area", size: "0.5 mm2" })).toBe("18 AWG");
    expect(result({ kind: "size-area", size: "2000 kcmil" }, "next larger size")).toBe("none");
    expect(main({ kind: "size-area", size: "2000 kcmil" })).toBe("1000 mm2");
  });
  test("a size outside the table is refused", () => {
    expect(ask({ kind: "size-area", size: "24 AWG" })).toMatchObject({
      outcome: "refused",
      refusal: { code: "OUTSIDE_TABLE" },
    });
    expect(() => ask({ kind: "size-area", size: "1/0" })).toThrow(RangeError);
  });
});
