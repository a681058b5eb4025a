import { describe, expect, test } from "vitest";
import type { ConductorMetal } from "../../core/conductor.js";
import type { Connector } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2020 } from "../../rulesets/nfpa70-2020/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { metalMarking } from "./metal-marking.js";

function check(metals: readonly ConductorMetal[], marking: string | undefined) {
  const { metalMarking: _marking, ...unmarked } = sampleConnector();
  const connector = marking === undefined ? unmarked : { ...unmarked, metalMarking: marking };
  const joint = sampleJoint({ conductors: metals.map((metal) => sampleConductor({ metal })) });
  return metalMarking.check(sampleSubject(joint, connector), nfpa70Edition2023);
}

function onDevice(
  marking: string,
  metal: ConductorMetal,
  ratingA: number | undefined,
  edition: Edition = nfpa70Edition2023,
) {
  const circuit = ratingA === undefined ? { sets: 1 } : { sets: 1, protection: { kind: "device", ratingA } as const };
  const joint = sampleJoint({ conductors: [sampleConductor({ metal })], circuit });
  return metalMarking.check(sampleSubject(joint, sampleConnector({ ...DEVICE, metalMarking: marking })), edition);
}

const DEVICE: Partial<Connector> = { family: "wiring-device-terminal", construction: "binding-screw" };

describe("metal marking (NFPA 70-2023 110.14, UL 486A-486B marking)", () => {
  // published: UL 486A-486B marking codes
  test.each([
    ["CU", "copper", "pass"],
    ["CU", "aluminum", "fail"],
    ["CU9", "copper-clad-aluminum", "fail"],
    ["AL", "aluminum", "pass"],
    ["AL7", "copper", "fail"],
    ["AL9", "copper-clad-aluminum", "fail"],
    ["AL9CU", "copper", "pass"],
    ["AL9CU", "aluminum", "pass"],
    ["AL7CU", "copper-clad-aluminum", "pass"],
    ["AL-CU-INTERMIX-DRY", "aluminum", "pass"],
  ] as const)("%s with %s: %s", (marking, metal, outcome) => {
    expect(check([metal], marking).outcome).toBe(outcome);
  });
  // published: a part without a metal mark is for copper only
  test("an unmarked part takes copper and refuses aluminum, and says what it assumed", () => {
    const copper = check(["copper"], "unmarked");
    expect(copper.outcome).toBe("pass");
    expect("steps" in copper && copper.steps.some(({ kind }) => kind === "assumed")).toBe(true);
    expect(check(["aluminum"], "unmarked")).toMatchObject({
      outcome: "fail",
      offered: "no metal marking",
      cite: { standard: "UL 486A-486B" },
    });
  });
  test("every metal of the joint must be named, in any order", () => {
    expect(check(["copper", "aluminum"], "CU").outcome).toBe("fail");
    expect(check(["aluminum", "copper"], "CU").outcome).toBe("fail");
    expect(check(["aluminum", "copper"], "AL9CU").outcome).toBe("pass");
  });
  test("a marking that was not looked at is asked for, for copper too", () => {
    for (const metal of ["copper", "aluminum", "copper-clad-aluminum"] as const)
      expect(check([metal], undefined)).toMatchObject({
        outcome: "missing",
        missing: [{ path: "connector/metalMarking" }],
      });
  });
  test("a marking that stands for nothing known is asked about, and the known ones are named", () => {
    const finding = check(["copper"], "Q5");
    expect(finding).toMatchObject({ outcome: "missing", missing: [{ path: "connector/metalMarking" }] });
    expect("sentence" in finding && finding.sentence).toContain("AL7CU, AL9CU");
  });
  // published: 404.14(C), 406.3(C): devices of 15 and 20 A on aluminum are marked CO/ALR
  test.each([
    ["CO/ALR", "aluminum", "pass"],
    ["CO/ALR", "copper", "pass"],
    ["CO/ALR", "copper-clad-aluminum", "pass"],
    ["AL-CU", "aluminum", "fail"],
    ["AL-CU", "copper", "pass"],
    ["AL-CU", "copper-clad-aluminum", "pass"],
    ["unmarked", "aluminum", "fail"],
    ["unmarked", "copper", "pass"],
    ["unmarked", "copper-clad-aluminum", "pass"],
  ] as const)("a wiring device on 20 A, %s, with %s: %s", (marking, metal, outcome) => {
    expect(onDevice(marking, metal, 20).outcome).toBe(outcome);
  });
  // hand: 20 A is still such a device, 21 A and 25 A are not
  test.each([
    ["AL-CU", 15, "fail"],
    ["AL-CU", 20, "fail"],
    ["AL-CU", 21, "pass"],
    ["AL-CU", 30, "pass"],
    ["CO/ALR", 15, "pass"],
    ["CO/ALR", 20, "pass"],
    ["CO/ALR", 21, "fail"],
    ["CU", 30, "fail"],
    ["AL-CU", undefined, "missing"],
    ["CO/ALR", undefined, "pass"],
    ["CU", undefined, "fail"],
    ["AL-CU", Number.NaN, "fail"],
    ["CO/ALR", Number.NaN, "fail"],
  ] as const)("aluminum on a wiring device marked %s, circuit of %s A: %s", (marking, ratingA, outcome) => {
    expect(onDevice(marking, "aluminum", ratingA).outcome).toBe(outcome);
  });
  // published: 404.14(D)(1) of 2023: without the mark for copper and copper-clad aluminum; earlier editions are silent
  test.each([
    [nfpa70Edition2017, 20, "missing"],
    [nfpa70Edition2020, 20, "missing"],
    [nfpa70Edition2023, 15, "pass"],
    [nfpa70Edition2023, 20, "pass"],
    [nfpa70Edition2023, 21, "missing"],
    [nfpa70Edition2023, undefined, "missing"],
  ] as const)("$edition: copper-clad aluminum on a device without a mark, %s A", (edition, ratingA, outcome) => {
    expect(onDevice("unmarked", "copper-clad-aluminum", ratingA, edition).outcome).toBe(outcome);
  });
  test("a device without the mark is refused by the clause for devices", () => {
    expect(onDevice("AL-CU", "aluminum", 20)).toMatchObject({
      required: "CO/ALR",
      cite: { locator: "404.14(D) and 406.3(D)" },
    });
    expect(onDevice("AL-CU", "aluminum", undefined)).toMatchObject({ missing: [{ path: "joint/circuit/protection" }] });
  });
  test("CO/ALR on a part that is no wiring device says nothing for aluminum", () => {
    expect(check(["aluminum"], "CO/ALR").outcome).toBe("fail");
    expect(check(["copper"], "CO/ALR").outcome).toBe("pass");
  });
  test("a terminal of the equipment is asked for at its own place", () => {
    const { metalMarking: _marking, ...terminal } = sampleConnector({ family: "equipment-terminal" });
    const subject = { ...sampleSubject(sampleJoint(), terminal), origin: "joint/equipment/terminal" } as const;
    expect(metalMarking.check(subject, nfpa70Edition2023)).toMatchObject({
      missing: [{ path: "joint/equipment/terminal/metalMarking" }],
    });
  });
});
