import { describe, expect, it } from "vitest";
import { decimalText } from "../money/decimal.js";
import type { ItemPrice } from "../prices/item-price.js";
import { buyingModes } from "./buying-modes.js";
import { cheapestWay, supplyOf } from "./item-supply.js";
import type { OfferedItem } from "./offer.js";

const price: ItemPrice = {
  unit: "each",
  currency: "USD",
  breaks: [
    { from: 1, amount: "1.00" },
    { from: 100, amount: "0.80" },
  ],
};
const item: OfferedItem = { partNumber: "A", packQuantity: 10, price, onHand: 0, must: false };

function modes(one: OfferedItem, mostUsed: number): [number, number, string][] {
  return buyingModes(one, mostUsed).map(({ least, most, pack }) => [least, most, decimalText(pack)]);
}

describe("buying modes", () => {
  // hand: the worked lines of buyingModes, and one part to either side of where the second break pays.
  it.each([
    [79, [[1, 8, "10"]]],
    [80, [[1, 8, "10"]]],
    [
      81,
      [
        [1, 9, "10"],
        [10, 10, "8"],
      ],
    ],
    [
      85,
      [
        [1, 9, "10"],
        [10, 10, "8"],
      ],
    ],
    [
      250,
      [
        [1, 9, "10"],
        [10, 25, "8"],
      ],
    ],
    [0, []],
  ])("for at most %i parts", (mostUsed, expected) => {
    expect(modes(item, mostUsed)).toEqual(expected);
  });

  it("count what is on hand first", () => {
    expect(modes({ ...item, onHand: 30 }, 110)).toEqual([[1, 8, "10"]]);
    expect(modes({ ...item, onHand: 30 }, 30)).toEqual([]);
  });

  it("skip a break that whole packs jump over", () => {
    // hand: one pack of 100 is already at the second break.
    expect(modes({ ...item, packQuantity: 100 }, 150)).toEqual([[1, 2, "80"]]);
  });

  it("are all kept where the price rises and the quantity may be needed", () => {
    const rising: ItemPrice = {
      ...price,
      breaks: [
        { from: 1, amount: "1" },
        { from: 50, amount: "9" },
      ],
    };
    expect(modes({ ...item, price: rising }, 60)).toEqual([
      [1, 4, "10"],
      [5, 6, "90"],
    ]);
  });
});

describe("item supply", () => {
  it("is plain, pooled or switched", () => {
    const single: ItemPrice = { ...price, breaks: [{ from: 1, amount: "1.00" }] };
    expect(supplyOf({ ...item, packQuantity: 1, price: single }, 50).kind).toBe("plain");
    expect(supplyOf({ ...item, price: single }, 50).kind).toBe("pooled");
    expect(supplyOf({ ...item, price: single, packQuantity: 1, onHand: 1 }, 50).kind).toBe("pooled");
    expect(supplyOf({ ...item, price: null, onHand: 3 }, 50)).toEqual({ kind: "pooled", mode: null });
    const supply = supplyOf({ ...item, onHand: 5 }, 300);
    expect(supply.kind === "switched" && supply.ways.map(({ kind }) => kind)).toEqual(["stock", "bought", "bought"]);
  });

  it("knows the cheapest way for a quantity", () => {
    const stocked = { ...item, onHand: 5 };
    const supply = supplyOf(stocked, 300);
    const ways = supply.kind === "switched" ? supply.ways : [];
    // hand: 5 from stock; 75 more are 8 packs, 80 dollars, as much as 10 packs at the break; 76 to 95 more are 10 packs.
    expect(cheapestWay(stocked, ways, 5)).toMatchObject({ way: 0, packs: 0 });
    expect(cheapestWay(stocked, ways, 80)).toMatchObject({ way: 1, packs: 8 });
    expect(cheapestWay(stocked, ways, 86)).toMatchObject({ way: 2, packs: 10 });
  });
});
