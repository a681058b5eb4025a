import { type Exact, exactOf, numberOf } from "@landfast/rules";
import { describe, expect, it } from "vitest";
import { UnlikeCurrencies } from "../money/money.js";
import { UnusableProblem } from "../problem/check-problem.js";
import { seededRandom } from "../samples/seeded-random.js";
import { breakEven, type CostLine } from "./break-even.js";
import { compareWays } from "./compare-ways.js";
import type { BreakEven } from "./economics.js";
import type { EconomicsQuestion, MadeJoints, WayOfMaking } from "./economics-question.js";

const usd = (amount: string) => ({ amount, currency: "USD" });
const line = (name: string, each: string, once: string): CostLine => ({
  name,
  each: exactOf(each),
  once: exactOf(once),
});

function crossing(answer: BreakEven): Extract<BreakEven, { kind: "crosses" }> {
  if (answer.kind !== "crosses") throw new Error(`no crossing: ${answer.because}`);
  return answer;
}

describe("the break-even count", () => {
  // published: Sullivan, Wicks and Koelling, Engineering Economy, breakeven of a consulting firm: fixed 2 024 000 a year,
  // 62 an hour against 85.56 an hour: 85 908 hours; with the variable cost lowered by a tenth, and both: 68 011 and
  // 61 210. For the fixed cost alone lowered it prints 77 318, where 1 821 600 / 23.56 is 77 317.49: left out here.
  it.each([
    ["2024000", "62", "85908"],
    ["2024000", "55.8", "68011"],
    ["1821600", "55.8", "61210"],
  ])("is the published one: %s once, %s against 85.56: %s", (once, each, printed) => {
    const found = crossing(breakEven(line("without", "85.56", "0"), line("with", each, once)));
    expect(Math.round(Number(found.joints.decimal))).toBe(Number(printed));
    expect(found).toMatchObject({ cheaperBelow: "without", cheaperAbove: "with" });
  });

  // published: exercise of an operations management text: 350 000 once and 50 a piece against 150 000 and 90: 5 000 pieces
  it("is the published one of two processes", () => {
    const found = crossing(breakEven(line("second", "90", "150000"), line("first", "50", "350000")));
    expect(found.joints).toEqual({ numerator: "5000", denominator: "1", decimal: "5000.000000" });
    // hand: at 5 000 both cost 600 000, so the first is cheaper from 5 001 on
    expect(found).toMatchObject({ cheaperFrom: "5001", cheaperBelow: "second", cheaperAbove: "first" });
  });

  it("does not depend on which way stands first", () => {
    const [a, b] = [line("a", "20", "0"), line("b", "12", "1000")];
    // hand: 1000 / 8 = 125
    for (const found of [crossing(breakEven(a, b)), crossing(breakEven(b, a))])
      expect(found).toMatchObject({
        joints: { numerator: "125", denominator: "1" },
        cheaperBelow: "a",
        cheaperAbove: "b",
        cheaperFrom: "126",
      });
  });

  it("is exact: a third of a joint is a fraction", () => {
    // hand: 100 / 0.3 = 333 1/3
    expect(crossing(breakEven(line("a", "0.4", "0"), line("b", "0.1", "100"))).joints).toEqual({
      numerator: "1000",
      denominator: "3",
      decimal: "333.333333",
    });
  });

  it.each([
    ["dearer once, the same each", line("a", "5", "0"), line("b", "5", "1"), "a"],
    ["cheaper each, the same once", line("a", "5", "1"), line("b", "4", "1"), "b"],
    ["cheaper both", line("a", "5", "1"), line("b", "4", "0"), "b"],
    ["dearer both", line("a", "5", "1"), line("b", "6", "2"), "a"],
  ])("is none where one way is never dearer: %s", (_, first, second, cheaper) => {
    expect(breakEven(first, second)).toMatchObject({ kind: "always", cheaper });
  });

  it("is none between equals", () => {
    expect(breakEven(line("a", "5", "1"), line("b", "5", "1")).kind).toBe("same");
  });

  it("parts the counts at which either way costs less, whatever the figures", () => {
    const random = seededRandom(11);
    const costAt = ({ each, once }: CostLine, joints: number): number => numberOf(once) + joints * numberOf(each);
    for (let time = 0; time < 300; time += 1) {
      const amount = (): Exact => exactOf(random.below(40));
      const [a, b] = [
        { name: "a", each: amount(), once: amount() },
        { name: "b", each: amount(), once: amount() },
      ];
      const found = breakEven(a, b);
      for (let joints = 1; joints <= 60; joints += 1) {
        const difference = costAt(a, joints) - costAt(b, joints);
        const cheaper = difference === 0 ? null : difference < 0 ? "a" : "b";
        if (found.kind === "same") expect(cheaper).toBeNull();
        else if (found.kind === "always") expect([found.cheaper, null]).toContain(cheaper);
        else if (found.kind === "crosses")
          expect(cheaper).toBe(
            joints >= Number(found.cheaperFrom)
              ? found.cheaperAbove
              : Number(found.joints.decimal) === joints
                ? null
                : found.cheaperBelow,
          );
      }
    }
  });
});

const price = (amount: string) => ({ unit: "each", currency: "USD", breaks: [{ from: 1, amount }] }) as const;

function joints(partNumber: string, labourHours: number, change: Partial<MadeJoints> = {}): MadeJoints {
  return { id: "K-1", joints: 10, partNumber, partsPerJoint: 1, labourHours, extras: [], ...change };
}

const mechanical: WayOfMaking = { name: "mechanical", lines: [joints("M", 0.4)], once: [] };
const compression: WayOfMaking = {
  name: "compression",
  lines: [joints("C", 0.45)],
  once: [
    { what: "battery press, 4 days", kind: "tool", cost: usd("340.00") },
    { what: "die", kind: "die", cost: usd("60.00") },
  ],
};

function ask(change: Partial<EconomicsQuestion> = {}): ReturnType<typeof compareWays> {
  return compareWays({
    first: mechanical,
    second: compression,
    parts: [
      { partNumber: "M", price: price("20.00") },
      { partNumber: "C", price: price("8.00") },
    ],
    labourRate: usd("60.00"),
    ...change,
  });
}

describe("mechanical against compression", () => {
  it("comes to the sums of its lines", () => {
    // hand: 10 x (20 + 0.4 x 60) = 440; 10 x (8 + 0.45 x 60) = 350, and 340 + 60 once = 750; 400 / (44 - 35) = 44.444444
    const { first, second, difference, cheaper, breakEven: even } = ask();
    expect(first).toMatchObject({
      partNumbers: 1,
      hours: "4",
      parts: usd("200"),
      extras: usd("0"),
      labour: usd("240"),
      tools: usd("0"),
      setUp: usd("0"),
      everyJoint: usd("440"),
      total: usd("440"),
      unknown: [],
    });
    expect(second).toMatchObject({
      hours: "4.5",
      parts: usd("80"),
      labour: usd("270"),
      tools: usd("400"),
      everyJoint: usd("350"),
      onceSum: usd("400"),
      total: usd("750"),
    });
    expect(difference).toEqual(usd("-310"));
    expect(cheaper).toBe("mechanical");
    expect(crossing(even)).toMatchObject({
      joints: { numerator: "400", denominator: "9", decimal: "44.444444" },
      cheaperFrom: "45",
    });
  });

  it("pays nothing for what is owned, which is not the same as not known", () => {
    const once = [{ what: "battery press", kind: "tool", cost: null, owned: true } as const];
    const { second } = ask({ second: { ...compression, once } });
    expect(second).toMatchObject({ tools: usd("0"), total: usd("350"), unknown: [] });
    expect(second.once).toEqual([{ what: "battery press", kind: "tool", cost: null, owned: true }]);
  });

  it("counts extras, several lines and part numbers", () => {
    const lines = [
      joints("M", 0.4, { extras: [{ what: "compound", costEach: usd("0.15") }] }),
      joints("N", 0.2, { id: "K-2", joints: 5, partsPerJoint: 2, extras: [{ what: "cover", costEach: usd("1.10") }] }),
    ];
    const others = [joints("C", 0.45), joints("C", 0.45, { id: "K-2", joints: 5 })];
    const { first } = ask({
      first: { ...mechanical, lines },
      second: { ...compression, lines: others },
      parts: [
        { partNumber: "M", price: price("20.00") },
        { partNumber: "N", price: price("3.00") },
        { partNumber: "C", price: price("8.00") },
      ],
    });
    // hand: parts 10 x 20 + 5 x 2 x 3 = 230; extras 10 x 0.15 + 5 x 1.10 = 7; labor (4 + 1) x 60 = 300
    expect(first).toMatchObject({
      joints: 15,
      partNumbers: 2,
      parts: usd("230"),
      extras: usd("7"),
      labour: usd("300"),
      total: usd("537"),
    });
  });

  it("uses the price that the job's own quantity reaches", () => {
    const breaks = [
      { from: 1, amount: "8.00" },
      { from: 10, amount: "7.00" },
      { from: 11, amount: "6.00" },
    ];
    const parts = [
      { partNumber: "M", price: price("20.00") },
      { partNumber: "C", price: { unit: "each", currency: "USD", breaks } as const },
    ];
    expect(ask({ parts }).second.prices).toEqual([{ partNumber: "C", parts: 10, each: usd("7"), breakFrom: 10 }]);
  });

  it("knows no total where a price is missing, and no break-even, and says what is missing", () => {
    const {
      first,
      second,
      difference,
      cheaper,
      breakEven: even,
    } = ask({
      parts: [{ partNumber: "M" }, { partNumber: "C", price: price("8.00") }],
    });
    expect(first).toMatchObject({ parts: null, everyJoint: null, total: null, unknown: ["M has no price"] });
    expect(second.total).toEqual(usd("750"));
    expect({ difference, cheaper, kind: even.kind }).toEqual({ difference: null, cheaper: null, kind: "not-known" });
  });

  it("knows no total where hours, a hire or the extras are missing", () => {
    const { labourHours: _hours, extras: _extras, ...bare } = joints("M", 0.4);
    const answer = ask({
      first: { ...mechanical, lines: [bare] },
      second: { ...compression, once: [{ what: "battery press", kind: "tool", cost: null }] },
    });
    expect(answer.first).toMatchObject({ hours: null, labour: null, total: null });
    expect(answer.first.unknown).toEqual([
      "what is needed besides the connector has no price, or was not stated: K-1",
      "no labor hours: K-1",
    ]);
    expect(answer.second).toMatchObject({ tools: null, total: null, unknown: ["battery press has no cost"] });
  });

  it("leaves labor out, and says so, where no rate is given", () => {
    const { labourRate: _rate, ...rest }: EconomicsQuestion = {
      first: mechanical,
      second: compression,
      parts: [
        { partNumber: "M", price: price("20.00") },
        { partNumber: "C", price: price("8.00") },
      ],
      labourRate: usd("60"),
    };
    const { first, assumptions, breakEven: even } = compareWays(rest);
    expect(first).toMatchObject({ hours: "4", labour: null, total: usd("200"), unknown: ["no labor rate"] });
    expect(assumptions).toContain("no labor rate was given: labor is in no sum");
    // hand: 400 / (20 - 8) = 33.333333
    expect(crossing(even).joints.decimal).toBe("33.333333");
  });

  it("knows nothing from nothing, and shows no zero", () => {
    const {
      first,
      currency,
      breakEven: even,
    } = compareWays({
      first: mechanical,
      second: { ...compression, once: [] },
      parts: [{ partNumber: "M" }, { partNumber: "C" }],
    });
    expect(currency).toBeNull();
    expect(first).toMatchObject({ parts: null, extras: null, labour: null, tools: null, total: null });
    expect(even.kind).toBe("not-known");
  });

  it("is refused where the ways make other joints, or a figure cannot be", () => {
    const refused = (change: Partial<EconomicsQuestion>): void => {
      expect(() => ask(change)).toThrow(UnusableProblem);
    };
    refused({ second: { ...compression, lines: [joints("C", 0.45, { joints: 11 })] } });
    refused({ second: { ...compression, lines: [joints("C", 0.45, { id: "K-9" })] } });
    refused({ second: { ...compression, lines: [] }, first: { ...mechanical, lines: [] } });
    refused({ second: { ...compression, name: "mechanical" } });
    refused({ first: { ...mechanical, lines: [joints("M", Number.NaN)] } });
    refused({ labourRate: usd("-60") });
    refused({ parts: [{ partNumber: "M", price: price("20.00") }] });
    expect(() => ask({ labourRate: { amount: "60", currency: "EUR" } })).toThrow(UnlikeCurrencies);
  });
});
