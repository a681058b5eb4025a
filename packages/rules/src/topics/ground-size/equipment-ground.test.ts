import { describe, expect, test } from "vitest";
import type { Edition } from "../../core/edition.js";
import { EDITIONS } from "../../rulesets/editions.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { type EquipmentGroundQuestion, equipmentGround, type GroundedPhases } from "./equipment-ground.js";

function ask(question: EquipmentGroundQuestion, edition: Edition = nfpa70Edition2023) {
  return equipmentGround.answer(question, { ruleSet: "nfpa70", edition: edition.edition }, edition);
}

function main(question: EquipmentGroundQuestion, edition?: Edition) {
  const finding = ask(question, edition);
  if (finding.outcome !== "answered") throw new Error(`${finding.outcome}: ${finding.sentence}`);
  return finding.results[0]?.value;
}

const copper = (deviceA: number, phases?: Partial<GroundedPhases>): EquipmentGroundQuestion => ({
  deviceA,
  metal: "copper",
  ...(phases && { phases: { metal: "copper", installed: "500 kcmil", sets: 1, separateRaceways: false, ...phases } }),
});

describe("published worked examples", () => {
  // published: NFPA 70 Handbook, example to 250.122(B), as retold in course notes "Code Talk, Episode 32" (web): 300 A, 250
  // kcmil raised to 350: 58436 circular mils, 2 AWG copper
  test.each(EDITIONS)("$edition: 250 kcmil raised to 350 under 300 A takes 2 AWG", (edition) => {
    const question = copper(300, { minimum: "250 kcmil", installed: "350 kcmil" });
    expect(main(question, edition)).toBe("2 AWG");
    expect(ask(question, edition).results[1]?.value).toBe(58.436);
  });
  // published: trade magazine Electrical Contractor, Code Question of the Day, 2013-04-12 (web): 20 A, 12 AWG raised to 6
  test("12 AWG raised to 6 AWG under 20 A takes 6 AWG", () => {
    expect(main(copper(20, { minimum: "12 AWG", installed: "6 AWG" }))).toBe("6 AWG");
  });
  // published: an engineers' question page on 250.122(B) (web): 50 A, 8 AWG raised to 1 AWG: 52617 circular mils, 3 AWG
  test("8 AWG raised to 1 AWG under 50 A takes 3 AWG", () => {
    const question = copper(50, { minimum: "8 AWG", installed: "1 AWG" });
    expect(main(question)).toBe("3 AWG");
    expect(Number(ask(question).results[1]?.value)).toBeCloseTo(52.617, 3);
  });
});

describe("size of an equipment ground", () => {
  // published: rows of Table 250.122
  test.each([
    [15, "14 AWG", "12 AWG"],
    [15.1, "12 AWG", "10 AWG"],
    [60, "10 AWG", "8 AWG"],
    [61, "8 AWG", "6 AWG"],
    [100, "8 AWG", "6 AWG"],
    [200, "6 AWG", "4 AWG"],
    [201, "4 AWG", "2 AWG"],
    [800, "1/0 AWG", "3/0 AWG"],
    [6000, "800 kcmil", "1250 kcmil"],
  ])("%d A: %s copper, %s aluminum", (deviceA, inCopper, inAluminum) => {
    expect(main(copper(deviceA))).toBe(inCopper);
    expect(main({ deviceA, metal: "aluminum" })).toBe(inAluminum);
    expect(main({ deviceA, metal: "copper-clad-aluminum" })).toBe(inAluminum);
  });

  // hand: 225 A, 4 AWG 41.74 x 500 / 300 = 69.567 kcmil -> 1 AWG; aluminum 2 AWG 66.36 x 500 / 300 = 110.6 -> 2/0 AWG
  test("the proportion follows the metal of the ground", () => {
    const phases = { minimum: "300 kcmil", installed: "500 kcmil", metal: "aluminum" } as const;
    expect(main(copper(225, phases))).toBe("1 AWG");
    const question = copper(225, phases);
    expect(main({ ...question, metal: "aluminum" })).toBe("2/0 AWG");
  });
  test("phases that are no larger than the minimum raise nothing", () => {
    expect(main(copper(225, { minimum: "500 kcmil" }))).toBe("4 AWG");
    expect(main(copper(225, { minimum: "600 kcmil" }))).toBe("4 AWG");
    expect(main(copper(225, { minimum: "400 kcmil" }))).toBe("3 AWG");
  });
  // hand: 60 A asks for 10 AWG; phases of 12 AWG: 12 AWG; two sets of 12 AWG 13.06 kcmil are larger than 10 AWG 10.38
  test.each([
    ["12 AWG", 1, "12 AWG"],
    ["10 AWG", 1, "10 AWG"],
    ["8 AWG", 1, "10 AWG"],
    ["12 AWG", 2, "10 AWG"],
  ])("phases of %s, %d sets: %s", (installed, sets, size) => {
    expect(main(copper(60, { installed, sets }))).toBe(size);
  });
  // hand: 20 A aluminum 10 AWG 10.38 x 105.6 / 6.53 = 167.86 kcmil, just above 3/0 AWG 167.8: 4/0 AWG; in copper 12 AWG is
  // raised to the phases' own 1/0 AWG, and 60 A, 10 AWG, would go beyond it
  test("an aluminum ground is not limited by copper phases", () => {
    const question = copper(20, { minimum: "12 AWG", installed: "1/0 AWG" });
    expect(main({ ...question, metal: "aluminum" })).toBe("4/0 AWG");
    expect(main({ ...copper(60, { installed: "12 AWG" }), metal: "aluminum" })).toBe("8 AWG");
    expect(main(question)).toBe("1/0 AWG");
    expect(main({ ...question, deviceA: 60 })).toBe("1/0 AWG");
  });
  // hand: 60 A asks for 10 AWG copper; at the size of aluminum phases copper conducts more than they do
  test("a copper ground is limited by aluminum phases too, and one of the table's aluminum column by both of its metals", () => {
    expect(main(copper(60, { installed: "12 AWG", metal: "aluminum" }))).toBe("12 AWG");
    expect(main({ ...copper(60, { installed: "10 AWG", metal: "aluminum" }), metal: "copper-clad-aluminum" })).toBe(
      "10 AWG",
    );
  });
  // hand: 800 A: 1/0 AWG in each of three raceways
  test("separate raceways have a ground of full size each", () => {
    const finding = ask(copper(800, { sets: 3, separateRaceways: true }));
    expect(finding.results.map(({ value }) => value)).toEqual(["1/0 AWG", 105.6, 3]);
    expect(finding.advice.join(" ")).toContain("250.122(F)");
    expect(ask(copper(800, { sets: 3 })).results[2]?.value).toBe(1);
  });
});

describe("facts that are missing and questions that are refused", () => {
  test("the device is asked for", () => {
    expect(ask({ metal: "copper" })).toMatchObject({ outcome: "missing", missing: [{ path: "question/deviceA" }] });
  });
  test("a device above the table and sizes of another system are refused", () => {
    expect(ask(copper(6001)).refusal?.code).toBe("OUTSIDE_TABLE");
    expect(ask(copper(60, { installed: "35 mm2" })).refusal?.code).toBe("OUTSIDE_TABLE");
    expect(ask(copper(60, { minimum: "35 mm2" })).refusal?.code).toBe("OUTSIDE_TABLE");
    expect(() => ask(copper(Number.NaN))).toThrow("question/deviceA");
    expect(() => ask(copper(60, { sets: 1.5 }))).toThrow("question/phases/sets");
  });
  // hand: 5000 A, 700 kcmil x 2000 / 500 = 2800 kcmil
  test("an area that no single conductor has is refused", () => {
    expect(main(copper(5000, { minimum: "500 kcmil", installed: "2000 kcmil" }))).toBe("2000 kcmil");
    const parallel = copper(5000, { minimum: "500 kcmil", installed: "2000 kcmil", sets: 4 });
    expect(ask(parallel).refusal?.code).toBe("NO_SOLUTION");
  });
});
