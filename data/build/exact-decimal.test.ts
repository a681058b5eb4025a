import { describe, expect, it } from "vitest";
import { compareDecimals, exactSum, isPlainDecimal } from "./exact-decimal.js";

describe("exact sums", () => {
  it.each([
    [[], "0"],
    [["0.1", "0.2"], "0.3"],
    [["1.50", "1.75", "2.00"], "5.25"],
    [["-3", "1.25"], "-1.75"],
    [["0.05", "-0.05"], "0"],
    [["999999999999999999", "1"], "1000000000000000000"],
  ])("%j sum to %s", (texts, sum) => {
    expect(exactSum(texts)).toBe(sum); // hand: schoolbook addition
  });
});

describe("comparison of decimals", () => {
  it("goes by value, not by text", () => {
    expect(compareDecimals("9", "10")).toBeLessThan(0);
    expect(compareDecimals("1.50", "1.5")).toBe(0);
    expect(compareDecimals("0.3", "0.29")).toBeGreaterThan(0);
    expect(compareDecimals("-1", "0.5")).toBeLessThan(0);
  });
});

describe("a plain decimal", () => {
  it.each(["0", "14", "0.91", "-5", "1.50"])("is %s", (text) => {
    expect(isPlainDecimal(text)).toBe(true);
  });
  it.each(["", "1e3", "1,000", "+5", ".5", "5.", "007", "NaN", "1 1/2", "14 "])("is not %j", (text) => {
    expect(isPlainDecimal(text)).toBe(false);
  });
});
