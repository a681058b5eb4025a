import { describe, expect, it } from "vitest";
import { type PriceList, priceOn } from "./price-list.js";

const list: PriceList = {
  id: "spring",
  currency: "USD",
  validFrom: "2026-01-01",
  validTo: "2026-03-31",
  lines: [
    { partNumber: "P-1", unit: "per-100", breaks: [{ from: 1, amount: "12.34" }] },
    { partNumber: "P-2", unit: "each", breaks: [{ from: 1, amount: "1" }] },
    { partNumber: "P-2", unit: "each", breaks: [{ from: 1, amount: "2" }] },
  ],
};

describe("price list", () => {
  it("answers on its first and last day", () => {
    for (const day of ["2026-01-01", "2026-03-31"])
      expect(priceOn(list, "P-1", day)).toEqual({
        price: { unit: "per-100", currency: "USD", breaks: [{ from: 1, amount: "12.34" }] },
      });
  });

  it.each([
    ["2025-12-31", "P-1", "valid from 2026-01-01"],
    ["2026-04-01", "P-1", "valid until 2026-03-31"],
    ["2026-02-01", "P-9", "no line for P-9"],
    ["2026-02-01", "P-2", "more than one line for P-2"],
  ])("on %s has no price for %s and says why", (day, partNumber, because) => {
    const found = priceOn(list, partNumber, day);
    expect(found.price).toBeNull();
    expect("because" in found && found.because).toContain(because);
  });

  it("is valid without end where no end is stated", () => {
    const open: PriceList = { id: list.id, currency: list.currency, lines: list.lines };
    expect(priceOn(open, "P-1", "1999-12-31").price).not.toBeNull();
  });

  it("does not read other ways to write a day", () => {
    for (const day of ["2026-2-1", "01.02.2026", "2026-13-01", "2026-02-01T00:00:00Z"])
      expect(() => priceOn(list, "P-1", day)).toThrow(RangeError);
  });
});
