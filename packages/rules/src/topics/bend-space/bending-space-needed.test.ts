import { describe, expect, test } from "vitest";
import type { Edition } from "../../core/edition.js";
import type { Length } from "../../core/quantity.js";
import { EDITIONS } from "../../rulesets/editions.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { type BendingSpaceQuestion, bendingSpaceNeeded } from "./bending-space-needed.js";

function ask(change: Partial<BendingSpaceQuestion>, edition: Edition = nfpa70Edition2023) {
  const question: BendingSpaceQuestion = {
    size: "4/0 AWG",
    metal: "copper",
    stranding: "class-B",
    entry: "opposite",
    wiresPerTerminal: 1,
    ...change,
  };
  return bendingSpaceNeeded.answer(question, { ruleSet: "nfpa70", edition: edition.edition }, edition);
}

function result(change: Partial<BendingSpaceQuestion>, name = "space needed", edition?: Edition) {
  const finding = ask(change, edition);
  const found = finding.results.find((one) => one.name === name);
  if (found === undefined) throw new Error(`${finding.outcome}: ${finding.sentence}`);
  return found.value;
}

const inches = (value: number): Length => ({ value, unit: "in" });

describe("published worked examples", () => {
  // published: trade magazine EC&M, Code Quiz on the 2002 edition (web): two 4/0 AWG per terminal through the opposite
  // wall: 7.5 in
  test.each(EDITIONS)("$edition: two 4/0 AWG through the opposite wall, 7.5 in", (edition) => {
    expect(result({ wiresPerTerminal: 2, removableTerminal: false }, "space needed", edition)).toBe(7.5);
  });
  // published: NFPA 70 Handbook 2023, exhibit 312.1, as discussed in a trade forum (web): 4/0 AWG 7 in opposite, 4 in through
  // another wall; and of the same forum: three 600 kcmil per terminal through another wall 12 in
  test("4/0 AWG, 7 in opposite and 4 in beside; three 600 kcmil, 12 in", () => {
    expect(result({ removableTerminal: false })).toBe(7);
    expect(result({ entry: "side" })).toBe(4);
    expect(result({ entry: "side", size: "600 kcmil", wiresPerTerminal: 3 })).toBe(12);
  });
});

describe("space to bend a conductor", () => {
  // published: Table 312.6(B)(2), 500 kcmil: 14, 14, 15, 16 in; four columns count for more wires; reduction 3 in
  test.each([
    [1, 14, 11],
    [2, 14, 11],
    [3, 15, 12],
    [4, 16, 13],
    [5, 16, 13],
  ])("500 kcmil, %d wires: %d in, removable %d in", (wiresPerTerminal, full, reduced) => {
    const change = { size: "500 kcmil", wiresPerTerminal };
    expect(result({ ...change, removableTerminal: false })).toBe(full);
    expect(result({ ...change, removableTerminal: true })).toBe(reduced);
    expect(result({ ...change, removableTerminal: true }, "space by the table")).toBe(full);
  });
  // published: Table 312.6(A): 500 kcmil 6, 8, 10, 12, 14 in; no reduction
  test.each([
    [1, 6],
    [5, 14],
  ])("through a side wall, %d wires: %d in", (wiresPerTerminal, space) => {
    const change = { entry: "side", size: "500 kcmil", wiresPerTerminal } as const;
    expect(result(change)).toBe(space);
    expect(result({ ...change, removableTerminal: true })).toBe(space);
  });
  test("compact aluminum has its own column, aluminum of unknown stranding has not", () => {
    const change = { size: "350 kcmil", metal: "aluminum", removableTerminal: false } as const;
    const compact = Number(result({ ...change, stranding: "compact" }));
    expect(compact).toBeLessThan(Number(result({ ...change, stranding: "class-B" })));
    expect(result({ ...change, stranding: "unknown" })).toBe(12);
    expect(result({ ...change, metal: "copper", stranding: "compact" })).toBe(12);
  });
  test.each(["14 AWG", "12 AWG", "10 AWG"])("nothing is laid down for %s", (size) => {
    expect(result({ size })).toBe("not specified");
    expect(result({ size: "8 AWG" })).toBe(1.5);
  });
});

describe("space that is there", () => {
  // hand: 4/0 AWG fixed: 7 in; removable: 7 - 1 = 6 in
  test.each([
    [7, false, true],
    [6.9, false, false],
    [7.1, false, true],
    [6, true, true],
    [5.9, true, false],
    [6.1, true, true],
  ])("%d in, removable %s: %s", (value, removableTerminal, room) => {
    expect(result({ available: inches(value), removableTerminal }, "there is room")).toBe(room);
  });
  test("a removable terminal is asked for only where it decides", () => {
    expect(ask({}).missing[0]?.path).toBe("question/removableTerminal");
    expect(ask({ available: inches(6.5) }).missing[0]?.path).toBe("question/removableTerminal");
    expect(result({ available: inches(7) }, "there is room")).toBe(true);
    expect(result({ available: inches(5.9) }, "there is room")).toBe(false);
    // 2/0 AWG has no reduction
    expect(result({ size: "2/0 AWG" })).toBe(6);
  });
  // hand: 177.8 mm is 7 in exactly
  test("millimetres are converted exactly", () => {
    const at = (value: number) =>
      result({ available: { value, unit: "mm" }, removableTerminal: false }, "there is room");
    expect([at(177.7), at(177.8), at(177.9)]).toEqual([false, true, true]);
  });
});

describe("questions that are refused", () => {
  test.each([
    [{ size: "35 mm2" }],
    [{ size: "1/0 AWG", wiresPerTerminal: 4 }],
    [{ entry: "side", wiresPerTerminal: 6 }],
    [{ size: "1 AWG", wiresPerTerminal: 2 }],
  ] as const)("outside the tables: %j", (change) => {
    expect(ask(change).refusal?.code).toBe("OUTSIDE_TABLE");
  });
  test("wires are counted, lengths are lengths", () => {
    expect(() => ask({ wiresPerTerminal: 0 })).toThrow("question/wiresPerTerminal");
    expect(() => ask({ wiresPerTerminal: 1.5 })).toThrow("question/wiresPerTerminal");
    expect(() => ask({ available: inches(Number.NaN) })).toThrow("question/available");
  });
});
