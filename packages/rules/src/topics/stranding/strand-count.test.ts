import { describe, expect, test } from "vitest";
import type { Edition } from "../../core/edition.js";
import { EDITIONS } from "../../rulesets/editions.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { type StrandClassQuestion, strandCount } from "./strand-count.js";

function ask(
  size: string,
  strands: number,
  change: Partial<StrandClassQuestion> = {},
  edition: Edition = nfpa70Edition2023,
) {
  const question = { size, metal: "copper", strands, ...change } as const;
  return strandCount.answer(question, { ruleSet: "nfpa70", edition: edition.edition }, edition);
}

const found = (...facts: Parameters<typeof ask>) => {
  const finding = ask(...facts);
  return finding.outcome === "answered" ? finding.results[0]?.value : finding.outcome;
};

describe("strand class by the number of strands", () => {
  // published: NFPA 70 Chapter 9 Table 10, classes B and C
  test.each([
    ["14 AWG", 1, "solid"],
    ["14 AWG", 7, "class-B"],
    ["2 AWG", 7, "class-B"],
    ["2 AWG", 19, "class-C"],
    ["1 AWG", 19, "class-B"],
    ["4/0 AWG", 19, "class-B"],
    ["4/0 AWG", 37, "class-C"],
    ["250 kcmil", 37, "class-B"],
    ["500 kcmil", 61, "class-C"],
    ["600 kcmil", 61, "class-B"],
    ["1000 kcmil", 91, "class-C"],
  ] as const)("%s of %d: %s", (size, strands, name) => {
    for (const edition of EDITIONS) expect(found(size, strands, {}, edition)).toBe(name);
  });
  // hand, ASTM B8 and B173 from memory: 37 is 1 + 6 + 12 + 18; 49 is 7 x 7, 259 is 37 x 7, 703 is 37 x 19
  test.each([
    ["12 AWG", 37, "class-D"],
    ["4 AWG", 49, "class-G"],
    ["2/0 AWG", 259, "class-H"],
    ["500 kcmil", 259, "class-G"],
    ["750 kcmil", 703, "class-H"],
  ] as const)("%s of %d: %s", (size, strands, name) => {
    expect(found(size, strands)).toBe(name);
    expect(ask(size, strands).results[1]?.value).toBe(true);
  });
  // hand: 4110 / 41 = 100.2 and 133100 / 1330 = 100.1, wires of 30 AWG, 100.5; 211600 / 532 = 397.7, 24 AWG, 404;
  // 10380 / 259 = 40.1, 34 AWG, 39.7; 4110 / 26 = 158.1, 28 AWG, 159.8
  test.each([
    ["14 AWG", 41, "class-K"],
    ["2/0 AWG", 1330, "class-K"],
    ["4/0 AWG", 532, "class-I"],
    ["10 AWG", 259, "class-M"],
    ["14 AWG", 26, "class-J"],
  ] as const)("%s of %d: %s", (size, strands, name) => {
    expect(found(size, strands)).toBe(name);
  });
  // hand: 2/0 AWG 133100 cmil; 100.5 x 0.96 = 96.48 and x 1.04 = 104.52: 1274 to 1379 strands
  test.each([
    [1273, "refused"],
    [1274, "class-K"],
    [1379, "class-K"],
    [1380, "refused"],
  ] as const)("2/0 AWG of %d: %s", (strands, outcome) => {
    expect(found("2/0 AWG", strands)).toBe(outcome);
  });

  test("a count of several classes asks for the lay and names them", () => {
    // hand: 3 AWG 52620 / 133 = 395.6 cmil, a wire of 24 AWG: class I; and class H by its count
    const finding = ask("3 AWG", 133);
    expect(finding).toMatchObject({ outcome: "missing", missing: [{ path: "question/lay" }] });
    expect(finding.sentence).toContain("class-H (rope-of-concentric) or class-I (bunched)");
    expect(found("3 AWG", 133, { lay: "rope-of-concentric" })).toBe("class-H");
    expect(found("3 AWG", 133, { lay: "bunched" })).toBe("class-I");
    expect(ask("3 AWG", 133, { lay: "concentric" }).refusal?.code).toBe("NO_SOLUTION");
    // published: Table 10, 26 strands at 16 AWG; hand: 2580 / 26 = 99.2, a wire of 30 AWG
    expect(ask("16 AWG", 26).sentence).toContain("class-B (concentric) or class-K (bunched)");
  });
  test("what the count means for the connector", () => {
    expect(ask("2/0 AWG", 19).results[1]?.value).toBe(false);
    expect(ask("2/0 AWG", 19).advice[0]).toContain("compact");
    expect(ask("2/0 AWG", 1330).sentence).toContain("identified");
    expect(ask("2/0 AWG", 1330).cite.locator).toBe("110.14");
  });
  test("aluminum has class B only", () => {
    expect(found("4/0 AWG", 19, { metal: "aluminum" })).toBe("class-B");
    expect(found("4/0 AWG", 37, { metal: "aluminum" })).toBe("refused");
    // hand: 1330 is class K at 2/0 AWG, a bunched conductor, and those are made of copper
    expect(found("2/0 AWG", 1330, { metal: "aluminum" })).toBe("refused");
    expect(found("2/0 AWG", 1330, { metal: "copper-clad-aluminum" })).toBe("refused");
  });
  // hand: a wire of n AWG is 0.005 x 92 ^ ((36 - n) / 39) in thick (ASTM B258); G and H are ropes of 7 or 19 wires
  test("the wires and the ropes of the tables that nobody else has entered follow from the gauge and from their make-up", () => {
    const { bunchedStrands, fineStrands } = nfpa70Edition2023.tables;
    const gauges: Readonly<Record<string, number>> = {
      "class-I": 24,
      "class-J": 28,
      "class-K": 30,
      "class-L": 32,
      "class-M": 34,
    };
    for (const row of bunchedStrands.rows) {
      const cell = row.cells["wireAreaCmil"];
      const mils = 5 * 92 ** ((36 - (gauges[row.label] ?? Number.NaN)) / 39);
      expect(
        cell !== undefined && "value" in cell && Math.abs(Number(cell.value) - mils ** 2) / mils ** 2,
      ).toBeLessThan(0.002);
    }
    const printed = (column: string) =>
      fineStrands.rows
        .map(({ cells }) => cells[column])
        .map((cell) => (cell !== undefined && "value" in cell ? cell.value : ""));
    expect(printed("classD")).toEqual([37, 37, 61, 91, 127]);
    expect(printed("classG")).toEqual(["", 7 * 7, 19 * 7, 37 * 7, 61 * 7]);
    expect(printed("classH")).toEqual(["", 19 * 7, 37 * 7, 61 * 7, 37 * 19]);
  });
  // published: Table 10, 7 strands at 22 AWG
  test("below 18 AWG the count alone tells", () => {
    expect(found("22 AWG", 7)).toBe("class-B");
  });
  test("no class, and no metric size", () => {
    expect(ask("2/0 AWG", 50).refusal?.code).toBe("NO_SOLUTION");
    expect(ask("35 mm2", 7).refusal?.code).toBe("OUTSIDE_TABLE");
    expect(() => ask("2/0 AWG", 1.5)).toThrow("question/strands");
  });
});
