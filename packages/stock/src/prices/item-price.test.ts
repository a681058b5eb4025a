import { describe, expect, it } from "vitest";
import { decimalText } from "../money/decimal.js";
import { UnlikeCurrencies } from "../money/money.js";
import {
  breakAt,
  cheapestPurchase,
  eachAt,
  type ItemPrice,
  priceCurrency,
  priceFalls,
  priceProblems,
} from "./item-price.js";

const falling: ItemPrice = {
  unit: "each",
  currency: "USD",
  breaks: [
    { from: 1, amount: "1.00" },
    { from: 100, amount: "0.80" },
  ],
};

describe("item price", () => {
  // hand
  it.each([
    ["each", "12.34", "12.34"],
    ["per-100", "12.34", "0.1234"],
    ["per-1000", "12.34", "0.01234"],
  ] as const)("reads a price %s", (unit, amount, each) => {
    expect(decimalText(eachAt({ ...falling, unit }, amount))).toBe(each);
  });

  it("applies a break from its first part on", () => {
    expect([99, 100, 101].map((parts) => breakAt(falling, parts)?.from)).toEqual([1, 100, 100]);
    expect(breakAt({ ...falling, breaks: [{ from: 10, amount: "1" }] }, 9)).toBeNull();
  });

  // hand: packs of 10. 80 parts: 8 packs cost 80, so does buying up to 100; fewer packs win. 81: 9 packs cost 90.
  it.each([
    [0, 0, "0", null],
    [1, 1, "10", 1],
    [10, 1, "10", 1],
    [11, 2, "20", 1],
    [80, 8, "80", 1],
    [81, 10, "80", 100],
    [100, 10, "80", 100],
    [101, 11, "88", 100],
  ])("buys at least %i parts in %i packs for %s", (parts, packs, cost, breakFrom) => {
    const purchase = cheapestPurchase(falling, 10, parts);
    expect(purchase).toMatchObject({ packs, bought: packs * 10, breakFrom });
    expect(decimalText(purchase.cost)).toBe(cost);
  });

  it("buys the smallest quantity sold when less is needed", () => {
    const purchase = cheapestPurchase({ ...falling, breaks: [{ from: 25, amount: "2" }] }, 10, 3);
    expect(purchase).toMatchObject({ packs: 3, bought: 30, breakFrom: 25 });
    expect(decimalText(purchase.cost)).toBe("60");
  });

  it("knows whether the price falls with quantity", () => {
    expect(priceFalls(falling)).toBe(true);
    expect(priceFalls({ ...falling, breaks: [...falling.breaks, { from: 200, amount: "0.81" }] })).toBe(false);
    expect(priceFalls({ ...falling, breaks: [...falling.breaks, { from: 200, amount: "0.80" }] })).toBe(true);
  });

  it("says what is wrong with a price", () => {
    expect(priceProblems(falling)).toEqual([]);
    const wrong: ItemPrice = {
      unit: "each",
      currency: "usd",
      breaks: [
        { from: 0, amount: "1,5" },
        { from: 2.5, amount: "-1" },
        { from: 2, amount: "1" },
      ],
    };
    expect(priceProblems(wrong)).toHaveLength(6);
    expect(priceProblems({ ...falling, breaks: [] })).toEqual(["a price has at least one break"]);
  });

  it("refuses prices of unlike currencies", () => {
    expect(() => priceCurrency([falling, { ...falling, currency: "EUR" }])).toThrow(UnlikeCurrencies);
    expect(priceCurrency([falling])).toBe("USD");
  });
});
