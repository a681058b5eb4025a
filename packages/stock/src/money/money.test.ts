import { exactOf } from "@landfast/rules";
import { describe, expect, it } from "vitest";
import { currencyPlaces, isCurrency } from "./currency.js";
import { decimalOf } from "./decimal.js";
import { commonCurrency, moneyOf, roundedMoney, sumMoney, timesMoney, UnlikeCurrencies } from "./money.js";

describe("money", () => {
  // hand: 0.1 + 0.2 is 0.3, which binary floating point does not give.
  it("adds exactly", () => {
    const amounts = [
      { amount: "0.1", currency: "USD" },
      { amount: "0.2", currency: "USD" },
    ];
    expect(sumMoney(amounts, "USD")).toEqual({ amount: "0.3", currency: "USD" });
    expect(sumMoney([], "EUR")).toEqual({ amount: "0", currency: "EUR" });
  });

  it("multiplies exactly", () => {
    expect(timesMoney({ amount: "0.125", currency: "USD" }, exactOf(40))).toEqual({ amount: "5", currency: "USD" });
  });

  it("never adds unlike currencies", () => {
    const mixed = [
      { amount: "1", currency: "USD" },
      { amount: "1", currency: "EUR" },
    ];
    expect(() => sumMoney(mixed, "USD")).toThrow(UnlikeCurrencies);
    expect(() => sumMoney(mixed, "USD")).toThrow("EUR and USD");
    expect(() => sumMoney([{ amount: "1", currency: "USD" }], "EUR")).toThrow(UnlikeCurrencies);
    expect(commonCurrency(["USD", "USD"])).toBe("USD");
    expect(commonCurrency([])).toBeNull();
  });

  // hand; decimal places are ISO 4217's
  it.each([
    ["3.085", "USD", "3.09", "3.08"],
    ["3.085", "KWD", "3.085", "3.085"],
    ["3.5", "JPY", "4", "4"],
    ["2.5", "JPY", "3", "2"],
  ])("rounds %s %s to its smallest unit", (amount, currency, halfUp, halfEven) => {
    expect(roundedMoney(decimalOf(amount), currency, "half-up").amount).toBe(halfUp);
    expect(roundedMoney(decimalOf(amount), currency, "half-even").amount).toBe(halfEven);
  });

  it("refuses codes it does not know", () => {
    for (const code of ["usd", "XXX", "", "DOLLAR"]) {
      expect(isCurrency(code)).toBe(false);
      expect(() => moneyOf(exactOf(1), code)).toThrow(RangeError);
      expect(() => currencyPlaces(code)).toThrow(RangeError);
    }
    expect(() => commonCurrency(["ZZZ"])).toThrow("ISO 4217");
  });
});
