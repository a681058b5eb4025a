import { describe, expect, test } from "vitest";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { BOX_WALLS, type PullBoxEntry, type PullBoxPull, type PullBoxQuestion, pullBox } from "./pull-box.js";
import { tradeSizeOf } from "./trade-size.js";

const BASIS = { ruleSet: "nfpa70", edition: "2023" } as const;

function entry(id: string, wall: PullBoxEntry["wall"], tradeSize: string, row = 1): PullBoxEntry {
  return { id, wall, row, tradeSize };
}

function pull(from: string, to: string, change: Partial<PullBoxPull> = {}): PullBoxPull {
  return { from, to, spliced: false, ...change };
}

function ask(question: Omit<PullBoxQuestion, "largestConductor"> & { readonly largestConductor?: string }) {
  return pullBox.answer({ largestConductor: "250 kcmil", ...question }, BASIS, nfpa70Edition2023);
}

function least(question: Parameters<typeof ask>[0]) {
  const finding = ask(question);
  if (finding.outcome !== "answered") throw new Error(finding.sentence);
  return Object.fromEntries(finding.results.slice(1).map(({ name, value }) => [name, value]));
}

const inches = (value: number) => ({ value, unit: "in" }) as const;

describe("least dimensions of a pull box (NFPA 70-2023 314.28(A))", () => {
  // hand: 8 x 3 = 24 in between the walls; the height is not asked for
  test("a straight pull takes 8 times the larger trade size", () => {
    const entries = [entry("A", "left", "3"), entry("B", "right", "2-1/2")];
    expect(least({ entries, pulls: [pull("A", "B")] })).toEqual({ width: 24 });
    expect(least({ entries: [entry("A", "top", "2"), entry("B", "bottom", "2")], pulls: [pull("A", "B")] })).toEqual({
      height: 16,
    });
  });

  // hand: 8 x 2 = 16 across; pulls between walls that are not opposite take 6 x 2 = 12 from each wall
  test("a pull is straight between opposite walls, whichever end is named first", () => {
    const across = (from: PullBoxEntry["wall"], to: PullBoxEntry["wall"]) =>
      least({ entries: [entry("A", from, "2"), entry("B", to, "2")], pulls: [pull("A", "B")] });
    expect(BOX_WALLS.map((wall) => [wall, across("left", wall)["width"], across(wall, "left")["width"]])).toEqual([
      ["left", 14, 14],
      ["right", 16, 16],
      ["top", 12, 12],
      ["bottom", 12, 12],
      ["back", 12, 12],
    ]);
    expect(BOX_WALLS.map((wall) => [wall, across("top", wall)["height"], across(wall, "top")["height"]])).toEqual([
      ["left", 12, 12],
      ["right", 12, 12],
      ["top", 14, 14],
      ["bottom", 16, 16],
      ["back", 12, 12],
    ]);
  });
  // hand: 2-1/2 is larger than 2: 6 x 2-1/2 + 2 = 17 and 6 x 2-1/2 between, in whichever order they are listed
  test("the largest of a row counts six times, wherever it is listed", () => {
    for (const [first, second] of [
      ["2", "2-1/2"],
      ["2-1/2", "2"],
    ] as const) {
      const entries = [entry("A", "bottom", first), entry("B", "bottom", second)];
      expect(least({ entries, pulls: [pull("A", "B")] })).toEqual({ height: 17, "between A and B": 15 });
    }
  });

  // hand: two trade size 3 on each of two adjoining walls: 6 x 3 + 3 = 21 in both ways, 6 x 3 = 18 in between entries
  test("an angle pull takes 6 times the largest of the row and the others once", () => {
    const entries = [
      entry("A", "left", "3"),
      entry("B", "left", "3"),
      entry("C", "bottom", "3"),
      entry("D", "bottom", "3"),
    ];
    expect(least({ entries, pulls: [pull("A", "C"), pull("B", "D")] })).toEqual({
      width: 21,
      height: 21,
      "between A and C": 18,
      "between B and D": 18,
    });
  });

  // hand: row 1: 6 x 2 + 1-1/2 + 3/4 = 14.25; row 2: 6 x 2-1/2 = 15, which asks more
  test("each row is worked out by itself and the one that asks most counts", () => {
    const entries = [
      entry("A", "left", "2"),
      entry("B", "left", "1-1/2"),
      entry("C", "left", "3/4"),
      entry("D", "left", "2-1/2", 2),
      entry("E", "top", "2"),
      entry("F", "top", "2-1/2"),
    ];
    const found = least({ entries, pulls: [pull("A", "E"), pull("D", "F")] });
    expect(found).toMatchObject({ width: 15, height: 17 });
    const without = entries.filter(({ id }) => id !== "D");
    expect(least({ entries: without, pulls: [pull("A", "E")] })).toMatchObject({ width: 14.25 });
  });

  // hand: straight 8 x 2 = 16; angle 6 x 2 + 2 = 14 in the same direction: 16 governs. With trade sizes 3 and 3 beside
  // each other in the angle row: 21 governs
  test("straight and angle pulls in one direction: the larger governs", () => {
    const entries = [
      entry("A", "left", "2"),
      entry("B", "right", "2"),
      entry("C", "left", "2"),
      entry("D", "top", "2"),
    ];
    expect(least({ entries, pulls: [pull("A", "B"), pull("C", "D")] })).toMatchObject({ width: 16, height: 12 });
  });

  // hand: both on one wall: 6 x 2 + 2 = 14 to the opposite wall, 12 in between
  test("a U pull takes the distance from its own wall", () => {
    const entries = [entry("A", "bottom", "2"), entry("B", "bottom", "2")];
    expect(least({ entries, pulls: [pull("A", "B")] })).toEqual({ height: 14, "between A and B": 12 });
  });

  // hand: spliced straight across: 6 x 2 = 12 instead of 16
  test("spliced conductors are not a straight pull", () => {
    const entries = [entry("A", "left", "2"), entry("B", "right", "2")];
    expect(least({ entries, pulls: [pull("A", "B", { spliced: true })] })).toEqual({
      width: 12,
      "between A and B": 12,
    });
  });

  // hand: Table 312.6(A), 250 kcmil, one wire: 4.5 in deep; from the left wall 6 x 2 = 12
  test("from the wall opposite the cover the bending space is enough", () => {
    const entries = [entry("A", "back", "2"), entry("B", "left", "2")];
    expect(least({ entries, pulls: [pull("A", "B")] })).toEqual({ width: 12, depth: 4.5, "between A and B": 12 });
  });
});

describe("judging a pull box", () => {
  const straight = { entries: [entry("A", "left", "3"), entry("B", "right", "3")], pulls: [pull("A", "B")] };
  // hand: 24 in itself is enough
  test.each([
    [23.9, false],
    [24, true],
    [24.1, true],
  ])("a width of %d in for 24 in: %s", (width, enough) => {
    const finding = ask({ ...straight, box: { width: inches(width), height: inches(6) } });
    expect(finding.results[0]).toMatchObject({ name: "box is large enough", value: enough });
    expect(finding.sentence).toBe(
      enough ? "The box is large enough." : "The box is too small: inside width 23.9 in of 24 in.",
    );
  });

  // hand: 8 x 2 = 16 in across and 8 x 1 = 8 in down
  test("every dimension that is too short is named", () => {
    const entries = [
      entry("A", "left", "2"),
      entry("B", "right", "2"),
      entry("C", "top", "1"),
      entry("D", "bottom", "1"),
    ];
    const pulls = [pull("A", "B"), pull("C", "D")];
    expect(ask({ entries, pulls, box: { width: inches(15), height: inches(7) } }).sentence).toBe(
      "The box is too small: inside width 15 in of 16 in, inside height 7 in of 8 in.",
    );
  });

  const angle = { entries: [entry("A", "left", "2"), entry("B", "top", "2")] };
  const box = { width: inches(12), height: inches(12) };
  // hand: 6 x 2 = 12 in between the entries
  test.each([
    [11.9, false],
    [12, true],
    [12.1, true],
  ])("entries %d in apart for 12 in: %s", (value, enough) => {
    const finding = ask({ ...angle, pulls: [pull("A", "B", { apart: inches(value) })], box });
    expect(finding.results[0]?.value).toBe(enough);
  });
  test("a distance that decides is asked for by name, one that does not is not", () => {
    const pulls = [pull("A", "B")];
    expect(ask({ ...angle, pulls, box })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "question/pulls/0/apart" }],
    });
    expect(ask({ ...angle, pulls, box: { ...box, width: inches(11) } }).results[0]?.value).toBe(false);
  });
  test("the depth is asked for where a raceway enters opposite the cover", () => {
    const entries = [entry("A", "back", "2"), entry("B", "left", "2")];
    const pulls = [pull("A", "B", { apart: inches(12) })];
    expect(ask({ entries, pulls, box })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "question/box/depth" }],
    });
    expect(ask({ entries, pulls, box: { ...box, depth: inches(4.5) } }).results[0]?.value).toBe(true);
    expect(ask({ entries, pulls, box: { ...box, depth: inches(4.4) } }).results[0]?.value).toBe(false);
  });
  test("metric dimensions are converted", () => {
    const height = { value: 200, unit: "mm" } as const;
    expect(ask({ ...straight, box: { width: { value: 609.6, unit: "mm" }, height } }).results[0]?.value).toBe(true);
    expect(ask({ ...straight, box: { width: { value: 609, unit: "mm" }, height } }).results[0]?.value).toBe(false);
  });
});

describe("what the pull box cannot answer", () => {
  const straight = { entries: [entry("A", "left", "3"), entry("B", "right", "3")], pulls: [pull("A", "B")] };
  test.each([
    ["3 AWG", "answered"],
    ["4 AWG", "answered"],
    ["6 AWG", "refused"],
    ["14 AWG", "refused"],
  ])("largest conductor %s: %s", (largestConductor, outcome) => {
    expect(ask({ ...straight, largestConductor }).outcome).toBe(outcome);
  });
  test("a metric conductor has no bending space in the table", () => {
    const entries = [entry("A", "back", "2"), entry("B", "left", "2")];
    expect(ask({ entries, pulls: [pull("A", "B")], largestConductor: "120 mm2" })).toMatchObject({
      outcome: "refused",
      refusal: { code: "OUTSIDE_TABLE" },
    });
  });
  test("an id that stands for two entries is not accepted, and what is wrong is named", () => {
    const twice = [...straight.entries, entry("A", "top", "1")];
    expect(() => ask({ ...straight, entries: twice })).toThrow(
      expect.objectContaining({ path: "question/entries", message: expect.stringContaining('"A" twice') as string }),
    );
    for (const pulls of [[], [pull("A", "C")], [pull("A", "A")]])
      expect(() => ask({ ...straight, pulls })).toThrow(expect.objectContaining({ path: "question/pulls" }));
  });
  test("pulls that name no entry, or the same one twice, are not accepted", () => {
    expect(() => ask({ ...straight, pulls: [] })).toThrow(RangeError);
    expect(() => ask({ ...straight, pulls: [pull("A", "C")] })).toThrow(RangeError);
    expect(() => ask({ ...straight, pulls: [pull("A", "A")] })).toThrow(RangeError);
    expect(() => ask({ ...straight, entries: [entry("A", "left", "3"), entry("A", "right", "3")] })).toThrow(
      RangeError,
    );
  });
});

describe("trade sizes", () => {
  // hand
  test.each([
    ["1/2", 1, 2],
    ["3/4", 3, 4],
    ["2", 2, 1],
    ["1-1/4", 5, 4],
    ["2-1/2", 5, 2],
  ])("%s is %d/%d in", (text, numerator, denominator) => {
    expect(tradeSizeOf(text).inches).toEqual({ numerator: BigInt(numerator), denominator: BigInt(denominator) });
  });
  test.each(["", "0", "2.5", "1 1/4", "1-1/3", "53"])("%j is not a trade size", (text) => {
    expect(() => tradeSizeOf(text)).toThrow(RangeError);
  });
});
