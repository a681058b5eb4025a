import { describe, expect, test } from "vitest";
import type { Edition } from "../../core/edition.js";
import { EDITIONS } from "../../rulesets/editions.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { BONDING_JUMPERS, type BondingJumperQuestion, bondingJumper } from "./bonding-jumper.js";

function ask(change: Partial<BondingJumperQuestion>, edition: Edition = nfpa70Edition2023) {
  const question: BondingJumperQuestion = { kind: "supply-side", metal: "copper", ...change };
  return bondingJumper.answer(question, { ruleSet: "nfpa70", edition: edition.edition }, edition);
}

function main(change: Partial<BondingJumperQuestion>, edition?: Edition) {
  const finding = ask(change, edition);
  if (finding.outcome !== "answered") throw new Error(`${finding.outcome}: ${finding.sentence}`);
  return finding.results[0]?.value;
}

const copper = (size: string, sets = 1) => ({ size, metal: "copper", sets }) as const;
const aluminum = (size: string, sets = 1) => ({ size, metal: "aluminum", sets }) as const;

describe("published worked examples", () => {
  // published: a building code forum on 250.102 (web): 250 kcmil copper takes 2 AWG, three sets of it 2/0 AWG
  test.each(EDITIONS)("$edition: 250 kcmil takes 2 AWG, three sets 2/0 AWG", (edition) => {
    expect(main({ supply: copper("250 kcmil") }, edition)).toBe("2 AWG");
    expect(main({ supply: copper("250 kcmil", 3) }, edition)).toBe("2/0 AWG");
  });
  // published: a commentary on 250.28(D) quoted in a trade forum (web): four sets of 500 kcmil: 2000 x 0.125 = 250 kcmil
  test.each(["main", "system"] as const)("%s jumper of four sets of 500 kcmil: 250 kcmil", (kind) => {
    const question = { kind, supply: copper("500 kcmil", 4) };
    expect(main(question)).toBe("250 kcmil");
    expect(ask(question).results[1]?.value).toBe(250);
  });
});

describe("size of a bonding jumper", () => {
  // published: rows of Table 250.102(C)(1)
  test.each([
    ["2 AWG", "8 AWG", "6 AWG"],
    ["1 AWG", "6 AWG", "4 AWG"],
    ["3/0 AWG", "4 AWG", "2 AWG"],
    ["350 kcmil", "2 AWG", "1/0 AWG"],
    ["400 kcmil", "1/0 AWG", "3/0 AWG"],
    ["700 kcmil", "2/0 AWG", "4/0 AWG"],
  ])("copper supply of %s: %s copper, %s aluminum", (size, inCopper, inAluminum) => {
    for (const kind of BONDING_JUMPERS.filter((one) => one !== "load-side")) {
      expect(main({ kind, supply: copper(size) })).toBe(inCopper);
      expect(main({ kind, metal: "aluminum", supply: copper(size) })).toBe(inAluminum);
    }
  });
  // hand: 1100 kcmil by the table; above, 12.5 %: 1250 x 0.125 = 156.25 kcmil: 3/0 AWG 167.8
  test.each([
    ["1000 kcmil", 1, "2/0 AWG"],
    ["550 kcmil", 2, "2/0 AWG"],
    ["1250 kcmil", 1, "3/0 AWG"],
    ["600 kcmil", 2, "3/0 AWG"],
  ])("copper supply of %s, %d sets: %s", (size, sets, jumper) => {
    expect(main({ supply: copper(size, sets) })).toBe(jumper);
  });
  // hand: aluminum 1750 kcmil by the table 4/0 AWG; 2000 x 0.125 = 250 kcmil
  test.each([
    ["1750 kcmil", "4/0 AWG"],
    ["2000 kcmil", "250 kcmil"],
  ])("aluminum supply of %s, aluminum jumper: %s", (size, jumper) => {
    expect(main({ metal: "aluminum", supply: aluminum(size) })).toBe(jumper);
  });
  // hand: three sets of 600 kcmil aluminum, 1800 kcmil; copper that carries as much: three sets of 500 kcmil, 1500 x 0.125 =
  // 187.5 kcmil: 4/0 AWG
  test("a supply of another metal is taken as one of the jumper's metal", () => {
    const question = { supply: aluminum("600 kcmil", 3) };
    expect(ask(question).missing[0]?.path).toBe("question/equivalentSupply");
    expect(main({ ...question, equivalentSupply: copper("500 kcmil", 3) })).toBe("4/0 AWG");
    expect(() => ask({ ...question, equivalentSupply: aluminum("500 kcmil", 3) })).toThrow("metal of the jumper");
    expect(() => ask({ ...question, equivalentSupply: aluminum("500 kcmil", 3) })).toThrow(
      expect.objectContaining({ path: "question/equivalentSupply/metal" }),
    );
    // Within the table it does not matter
    expect(main({ supply: aluminum("500 kcmil", 3) })).toBe("2/0 AWG");
  });
  // hand: four sets of 500 kcmil in four raceways: 500 kcmil each: 1/0 AWG; in two: 1000 each: 2/0 AWG
  test.each([
    [4, "1/0 AWG"],
    [2, "2/0 AWG"],
    [1, "250 kcmil"],
  ])("%d raceways bonded apart: %s", (racewaysBondedApart, jumper) => {
    expect(main({ supply: copper("500 kcmil", 4), racewaysBondedApart })).toBe(jumper);
  });
  // hand: four sets of 1000 kcmil aluminum in two raceways, 2000 kcmil each; copper that carries as much: four sets of 700
  // kcmil, 1400 in each raceway x 0.125 = 175 kcmil: 4/0 AWG; in one raceway 2800 x 0.125 = 350 kcmil
  test("an equivalent supply is divided among the raceways too", () => {
    const question = { supply: aluminum("1000 kcmil", 4), equivalentSupply: copper("700 kcmil", 4) };
    expect(main({ ...question, racewaysBondedApart: 2 })).toBe("4/0 AWG");
    expect(main(question)).toBe("350 kcmil");
    expect(() => ask({ ...question, equivalentSupply: copper("700 kcmil", 3), racewaysBondedApart: 2 })).toThrow(
      "must divide the 3 sets of the supply evenly",
    );
  });
  test("the sets are divided evenly among the raceways", () => {
    expect(() => ask({ supply: copper("500 kcmil", 4), racewaysBondedApart: 3 })).toThrow("racewaysBondedApart");
  });
  // published: Table 250.122: 225 A: 4 AWG copper
  test("on the load side it is an equipment ground", () => {
    expect(main({ kind: "load-side", deviceA: 225 })).toBe("4 AWG");
    expect(ask({ kind: "load-side", deviceA: 6001 }).refusal?.code).toBe("OUTSIDE_TABLE");
  });
});

describe("facts that are missing and questions that are refused", () => {
  test.each(BONDING_JUMPERS)("%s asks for what it goes by", (kind) => {
    expect(ask({ kind }).missing[0]?.path).toBe(kind === "load-side" ? "question/deviceA" : "question/supply");
  });
  test("a supply of another system is refused", () => {
    expect(ask({ supply: copper("240 mm2") }).refusal).toEqual({
      code: "OUTSIDE_TABLE",
      detail: "question/supply/size must be a size in AWG or kcmil, not 240 mm2.",
    });
    const equivalentSupply = copper("240 mm2", 3);
    expect(ask({ supply: aluminum("600 kcmil", 3), equivalentSupply }).refusal?.detail).toContain(
      "question/equivalentSupply/size",
    );
  });
  // hand: twenty sets of 1000 kcmil: 20000 x 0.125 = 2500 kcmil
  test("an area that no single conductor has is refused", () => {
    expect(ask({ supply: copper("1000 kcmil", 20) }).refusal?.code).toBe("NO_SOLUTION");
  });
});
