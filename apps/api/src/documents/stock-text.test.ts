import { describe, expect, it } from "vitest";
import type { NamedParts } from "../services/named-parts.js";
import type { JobTradeOff } from "../services/stock-plans.js";
import { stockText } from "./stock-text.js";

const usd = (amount: string) => ({ amount, currency: "USD" });
const proof = (proven: boolean) => ({
  proven,
  of: "cost" as const,
  value: "1",
  bound: "1",
  gap: "0",
  because: "stopped by a limit",
});
const named = (partNumbers: number, joints: number, amount: string | null): NamedParts => ({
  partNumbers,
  joints,
  parts: [],
  cost: amount === null ? null : usd(amount),
});

function tradeOff(change: Partial<JobTradeOff> = {}): JobTradeOff {
  return {
    from: {
      job: { id: "1", name: "Workshop", revision: 1 },
      catalogue: { id: "1", name: "c", revision: "1" },
      prices: "the catalogue's prices, each",
      hours: "the catalogue's hours",
      labourRate: null,
    },
    joints: 7,
    curve: {
      points: [
        { partNumbers: 2, cost: usd("40.5"), aboveCheapest: usd("10.5"), parts: ["A", "B"], proof: proof(true) },
        { partNumbers: 3, cost: usd("30"), aboveCheapest: usd("0"), parts: ["A", "C", "D"], proof: proof(false) },
      ],
      currency: "USD",
      complete: true,
    },
    notPlanned: {
      noPartNeeded: [{ mark: "M-1", joints: 4, because: "it is made in its equipment's own terminal" }],
      withoutPart: [
        { marks: [{ mark: "M-2", joints: 3 }], joints: 3, verdict: "reject", because: "Nothing fits.", missing: [] },
      ],
      barred: [],
    },
    asNamed: { all: named(5, 9, "60.00"), accepted: named(4, 7, "50.00"), notAccepted: [] },
    ...change,
  };
}

describe("the stock of a job as text", () => {
  it("shows what is named beside the curve for the same joints, each amount to the cent", () => {
    const lines = stockText(tradeOff(), tradeOff()).split("\n");
    expect(lines).toContain("Of these the rules accept 4 part numbers for 7 joints, 50.00 USD.");
    const row = (text: string): string[] =>
      lines.filter((line) => line.endsWith(text)).map((line) => line.slice(0, 40));
    // hand: 40.50 - 30.00 = 10.50; as named 50.00 - 30.00 = 20.00
    expect(row("fewest, proven").map((line) => line.trim().split(/ +/).slice(0, 3))).toEqual([
      ["2", "40.50", "10.50"],
      ["2", "40.50", "10.50"],
    ]);
    expect(row("as named").map((line) => line.trim().split(/ +/).slice(0, 3))).toEqual([["4", "50.00", "20.00"]]);
  });

  it("says where a cost is not proven, and which joints have no part", () => {
    const text = stockText(tradeOff(), null);
    expect(text.replaceAll(/\s+/g, " ")).toContain("cheapest, not proven: stopped by a limit");
    expect(text).toContain("4 joints need no part of the catalogue. For 3 it has none:");
    expect(text).toContain("  M-2  Nothing fits.");
  });

  it("names joints that are barred from every part", () => {
    const { notPlanned } = tradeOff();
    const barred = [{ marks: ["M-3", "M-4"], joints: 2, because: "X must not be used" }];
    expect(stockText(tradeOff({ notPlanned: { ...notPlanned, barred } }), null)).toContain(
      "  M-3, M-4  X must not be used",
    );
  });

  it("says that a cost is not known, and shows no curve, where it is so", () => {
    const text = stockText(
      tradeOff({
        curve: { points: [], currency: null, complete: true },
        asNamed: { all: named(5, 9, null), accepted: named(4, 7, null), notAccepted: [] },
      }),
      null,
    );
    expect(text).toContain("As named: 5 part numbers for 9 joints, cost not known.");
    expect(text).toContain("No plan has a known cost.");
  });

  it("is nowhere wider than a terminal", () => {
    const widest = Math.max(
      ...stockText(tradeOff(), tradeOff())
        .split("\n")
        .map((line) => line.length),
    );
    expect(widest).toBeLessThanOrEqual(120);
  });
});
