import { describe, expect, test } from "vitest";
import { UnusableFact } from "../../core/unusable-fact.js";
import { EDITIONS } from "../../rulesets/editions.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { contactResistance, type JointReading } from "./contact-resistance.js";

const BASIS = { ruleSet: "nfpa70", edition: "2023" } as const;

function ask(...microOhms: readonly number[]) {
  const readings = microOhms.map((microOhm, index): JointReading => ({ joint: `phase ${"ABCDEF"[index]}`, microOhm }));
  return contactResistance.answer({ readings }, BASIS, nfpa70Edition2023);
}

const suspects = (...microOhms: readonly number[]) => ask(...microOhms).results[0]?.value;

function refusedAt(readings: readonly JointReading[]): string {
  try {
    contactResistance.answer({ readings }, BASIS, nfpa70Edition2023);
  } catch (problem) {
    if (problem instanceof UnusableFact) return problem.path;
    throw problem;
  }
  return "answered";
}

describe("resistance of like joints (NETA ATS, test values of bolted connections)", () => {
  // hand: 18 x 1.5 = 27
  test.each([
    [26.9, []],
    [27, []],
    [27.1, ["phase C"]],
    [30, ["phase C"]],
  ] as const)("18, 19 and %d micro-ohm: %j", (third, expected) => {
    expect(suspects(18, 19, third)).toEqual(expected);
  });
  // hand: 0.1 x 1.5 = 0.15 and 1.1 x 1.5 = 1.65, exact decimals that binary fractions miss
  test.each([
    [0.1, 0.15, []],
    [0.1, 0.1500001, ["phase B"]],
    [1.1, 1.65, []],
    [1.1, 1.6500000000000001, ["phase B"]],
    [1.1, 1.651, ["phase B"]],
    [4.35, 6.525, []],
    [4.35, 6.5251, ["phase B"]],
  ] as const)("%d and %d micro-ohm: %j", (low, high, expected) => {
    expect(suspects(low, high)).toEqual(expected);
  });
  test("the lowest reading counts wherever it stands, and every joint above the limit is named", () => {
    // hand: 10 x 1.5 = 15
    expect(suspects(16, 10, 15, 40)).toEqual(["phase A", "phase D"]);
    expect(suspects(10, 10)).toEqual([]);
  });
  test("the answer names the limit, the lowest reading and what is said of each joint", () => {
    const finding = ask(18, 19, 30);
    expect(finding.results).toMatchObject([
      { name: "joints to look into", value: ["phase C"] },
      { name: "limit", value: 27, unit: "micro-ohm" },
      { name: "lowest reading", value: 18, unit: "micro-ohm" },
      { name: "deviation allowed", value: 50, unit: "%" },
      { name: "reading of phase A", value: "pass" },
      { name: "reading of phase B", value: "pass" },
      { name: "reading of phase C", value: "look into it" },
    ]);
    expect(finding.sentence).toBe(
      "Look into phase C (30 micro-ohm): the limit is 27 micro-ohm, 1.5 times the lowest reading of 18.",
    );
    expect(ask(18, 19).sentence).toContain("All 2 joints pass");
    expect(finding.steps.find(({ label }) => label === "limit")).toMatchObject({
      kind: "computed",
      substituted: "18 x 1.5",
    });
  });
  test("a reading just above the limit is shown to be so", () => {
    expect(ask(18, 27.00001).sentence).toContain("27.00001");
  });
  test("the criterion is held from memory and says so, in every edition", () => {
    for (const edition of EDITIONS) {
      const finding = contactResistance.answer(
        {
          readings: [
            { joint: "A", microOhm: 18 },
            { joint: "B", microOhm: 30 },
          ],
        },
        { ruleSet: "nfpa70", edition: edition.edition },
        edition,
      );
      expect(finding.caveats).toHaveLength(1);
      expect(finding.caveats[0]).toContain("NETA ATS-2021");
      expect(finding.cite).toEqual(edition.clauses.likeJoints);
    }
  });
  test("what no comparison can be made with is refused at its place", () => {
    const a = { joint: "A", microOhm: 18 };
    expect(refusedAt([])).toBe("question/readings");
    expect(refusedAt([a])).toBe("question/readings");
    expect(refusedAt([a, { joint: "A", microOhm: 19 }])).toBe("question/readings/1/joint");
    for (const microOhm of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(refusedAt([a, { joint: "B", microOhm }])).toBe("question/readings/1/microOhm");
    expect(refusedAt([a, { joint: "B", microOhm: 0.001 }])).toBe("answered");
  });
});
