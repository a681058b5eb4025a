import { divide, exactOf, multiply } from "@landfast/rules";
import { describe, expect, it } from "vitest";
import { ceilingOf, decimalOf, decimalText, isDecimalText, roundedText, roundTo } from "./decimal.js";

describe("decimal text", () => {
  // hand: 12.34 a hundred is 0.1234 each; 25 of them cost 3.085.
  it("prints products of decimals without rounding", () => {
    const each = divide(decimalOf("12.34"), exactOf(100));
    expect(decimalText(each)).toBe("0.1234");
    expect(decimalText(multiply(each, exactOf(25)))).toBe("3.085");
    expect(decimalText(exactOf(-7))).toBe("-7");
  });

  it("refuses to print a third", () => {
    expect(() => decimalText(divide(exactOf(1), exactOf(3)))).toThrow("round it");
  });

  it.each(["1e3", "1,50", "", " 1", "+1", ".5", "5.", "NaN", "0x10"])("does not read %j", (text) => {
    expect(isDecimalText(text)).toBe(false);
    expect(() => decimalOf(text)).toThrow(RangeError);
  });

  // hand: the rounding to one place of values at, below and above a half, both signs.
  it.each([
    ["0.25", "0.3", "0.2", "0.3", "0.2"],
    ["0.35", "0.4", "0.4", "0.4", "0.3"],
    ["0.249", "0.2", "0.2", "0.3", "0.2"],
    ["0.251", "0.3", "0.3", "0.3", "0.2"],
    ["-0.25", "-0.3", "-0.2", "-0.3", "-0.2"],
    ["0.3", "0.3", "0.3", "0.3", "0.3"],
  ])("rounds %s", (text, halfUp, halfEven, up, down) => {
    const value = decimalOf(text);
    expect(roundedText(value, 1, "half-up")).toBe(halfUp);
    expect(roundedText(value, 1, "half-even")).toBe(halfEven);
    expect(roundedText(value, 1, "up")).toBe(up);
    expect(roundedText(value, 1, "down")).toBe(down);
  });

  it("writes every place asked for, and none for whole numbers", () => {
    expect(roundedText(exactOf(5), 2, "half-up")).toBe("5.00");
    expect(roundedText(exactOf("0.004"), 2, "half-up")).toBe("0.00");
    expect(roundedText(exactOf("2.5"), 0, "half-even")).toBe("2");
    expect(decimalText(roundTo(divide(exactOf(2), exactOf(3)), 2, "half-up"))).toBe("0.67");
  });

  // hand
  it("counts up to whole pieces", () => {
    expect([exactOf("2.5"), exactOf(3), exactOf("3.0001"), exactOf(0), exactOf("-2.5")].map(ceilingOf)).toEqual([
      3, 3, 4, 0, -2,
    ]);
  });
});
