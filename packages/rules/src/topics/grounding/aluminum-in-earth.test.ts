import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import type { Joint } from "../../core/joint.js";
import { EDITIONS } from "../../rulesets/editions.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { aluminumInEarth } from "./aluminum-in-earth.js";

function joined(conductor: Partial<ConductorGroup>, change: Partial<Joint> = {}) {
  const joint = sampleJoint({
    role: "electrode-conductor",
    conductors: [sampleConductor({ size: "1/0 AWG", metal: "aluminum", insulation: "bare", ...conductor })],
    place: { location: "direct-burial" },
    ...change,
  });
  return aluminumInEarth.check(sampleSubject(joint), nfpa70Edition2023);
}

// published: the clause itself, from memory
describe("aluminum electrode conductors in the earth (NFPA 70-2023 250.64(A))", () => {
  test.each([
    ["direct-burial", "fail"],
    ["concrete", "fail"],
    ["wet", "pass"],
    ["damp", "pass"],
    ["dry", "pass"],
  ] as const)("aluminum ended in a %s place: %s", (location, outcome) => {
    expect(joined({}, { place: { location } }).outcome).toBe(outcome);
    expect(joined({ insulation: "USE-2" }, { place: { location } }).outcome).toBe(outcome);
    expect(joined({ metal: "copper-clad-aluminum" }, { place: { location } }).outcome).toBe(outcome);
  });
  test("what lies at the other side does not matter", () => {
    expect(joined({}, { equipment: { tag: "G", kind: "ground-bus" } }).outcome).toBe("fail");
  });
  test("spliced, only bare aluminum is refused", () => {
    expect(joined({}, { function: "splice" }).outcome).toBe("fail");
    expect(joined({ insulation: "USE-2" }, { function: "splice" }).outcome).toBe("not-applicable");
  });
  test("copper has nothing to keep out of", () => {
    expect(joined({ metal: "copper" }).outcome).toBe("not-applicable");
  });
  test("a place that is not given is asked for by name", () => {
    const { place, ...joint } = sampleJoint({
      role: "electrode-conductor",
      conductors: [sampleConductor({ metal: "aluminum" })],
    });
    expect(place).toBeDefined();
    expect(aluminumInEarth.check(sampleSubject(joint), nfpa70Edition2023)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/place/location" }],
    });
  });
  test("a bonding jumper of an electrode is held to it, another is not", () => {
    expect(joined({}, { role: "bonding", grounding: { electrode: "ground-ring" } }).outcome).toBe("fail");
    expect(joined({}, { role: "bonding", equipment: { tag: "P" } }).outcome).toBe("not-applicable");
  });
  test("a bonding jumper that ends on an electrode is held to it, whichever electrode it is", () => {
    expect(joined({}, { role: "bonding", equipment: { tag: "ROD-1", kind: "electrode" } }).outcome).toBe("fail");
    const { equipment, ...joint } = sampleJoint({
      role: "bonding",
      conductors: [sampleConductor({ metal: "aluminum", insulation: "bare" })],
      grounding: { electrode: "copper-bonded-rod" },
      place: { location: "concrete" },
    });
    expect(equipment).toBeDefined();
    expect(aluminumInEarth.check(sampleSubject(joint), nfpa70Edition2023).outcome).toBe("fail");
  });
  // published: 250.53(C) takes 250.64(A) for the jumpers between electrodes
  test("a jumper said to lie between electrodes is held to it wherever it ends", () => {
    const jumper = (bonding: "electrode-system" | "load-side", change: Partial<Joint> = {}) =>
      joined({}, { role: "bonding", equipment: { tag: "?" }, grounding: { bonding }, ...change }).outcome;
    expect(jumper("electrode-system")).toBe("fail");
    expect(jumper("electrode-system", { function: "splice" })).toBe("fail");
    expect(jumper("electrode-system", { place: { location: "damp" } })).toBe("pass");
    expect(jumper("load-side")).toBe("not-applicable");
  });
  test.each(["phase", "neutral", "equipment-ground"] as const)("the clause speaks of no %s conductor", (role) => {
    expect(joined({}, { role, equipment: { tag: "E", kind: "electrode" } }).outcome).toBe("not-applicable");
  });
  test("every edition says so", () => {
    for (const edition of EDITIONS)
      expect(
        aluminumInEarth.check(
          sampleSubject(
            sampleJoint({
              role: "electrode-conductor",
              conductors: [sampleConductor({ metal: "aluminum" })],
              place: { location: "concrete" },
            }),
          ),
          edition,
        ).outcome,
      ).toBe("fail");
  });
});
