import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import type { Circuit, Joint } from "../../core/joint.js";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { parallelLegs } from "./parallel-legs.js";

function legs(
  conductors: readonly Partial<ConductorGroup>[],
  sets: number,
  alike: boolean | undefined,
  change: Partial<Joint> = {},
  edition = nfpa70Edition2023,
) {
  const joint = sampleJoint({
    conductors: conductors.map((one) => sampleConductor(one)),
    circuit: { sets, ...(alike === undefined ? {} : { parallelLegsAlike: alike }) },
    ...change,
  });
  return parallelLegs.check(sampleSubject(joint), edition);
}

describe("conductors in parallel (NFPA 70-2023 310.10(G))", () => {
  // published: 1/0 AWG is the smallest; 1 AWG is the size below it and 2/0 AWG the size above
  test.each([
    ["1 AWG", "fail"],
    ["1/0 AWG", "pass"],
    ["2/0 AWG", "pass"],
    ["250 kcmil", "pass"],
  ] as const)("two sets of %s: %s", (size, outcome) => {
    expect(legs([{ size }], 2, true).outcome).toBe(outcome);
  });
  test("legs that are not alike are refused", () => {
    expect(legs([{}], 2, false)).toMatchObject({ outcome: "fail", cite: { locator: "310.10(G)" } });
    expect(legs([{}], 2, false, {}, nfpa70Edition2017)).toMatchObject({
      outcome: "fail",
      cite: { locator: "310.10(H)" },
    });
  });
  test("the statement is asked for, unless the legs are too small anyway", () => {
    expect(legs([{}], 2, undefined)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/circuit/parallelLegsAlike" }],
    });
    expect(legs([{ size: "1 AWG" }], 2, undefined).outcome).toBe("fail");
  });
  test("one conductor per phase is no parallel", () => {
    expect(legs([{ size: "12 AWG" }], 1, undefined).outcome).toBe("not-applicable");
  });
  test("neutrals are judged as phases are", () => {
    expect(legs([{ size: "1 AWG" }], 2, true, { role: "neutral" }).outcome).toBe("fail");
  });
  // published: 310.10(G)(2) names equipment grounds and bonding jumpers, (G)(5) frees the grounds of the least size; from memory
  test.each(["equipment-ground", "bonding"] as const)("a parallel %s must be alike, of any size", (role) => {
    expect(legs([{ size: "4 AWG" }], 3, true, { role }).outcome).toBe("pass");
    expect(legs([{ size: "4 AWG" }], 3, false, { role }).outcome).toBe("fail");
    expect(legs([{ size: "4 AWG" }], 3, undefined, { role })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/circuit/parallelLegsAlike" }],
    });
    expect(legs([{ size: "4 AWG" }], 1, undefined, { role }).outcome).toBe("not-applicable");
  });
  test("an electrode conductor has no parallel legs", () => {
    expect(legs([{ size: "4 AWG" }], 3, false, { role: "electrode-conductor" }).outcome).toBe("not-applicable");
  });
  test("every leg of a splice counts, the feeder of a tap and the leads of a motor do not", () => {
    expect(legs([{}, { size: "1 AWG" }], 2, true, { function: "splice" }).outcome).toBe("fail");
    expect(legs([{ size: "1 AWG", duty: "run" }, { duty: "tap" }], 2, true, { function: "tap" }).outcome).toBe("pass");
    expect(legs([{}, { size: "1 AWG", insulation: "equipment-lead" }], 2, true, { function: "splice" }).outcome).toBe(
      "pass",
    );
    expect(legs([{ duty: "run" }], 2, true, { function: "tap" })).toMatchObject({
      missing: [{ path: "joint/conductors/0/duty" }],
    });
  });
  test("legs that are seen to differ in one terminal are refused, whatever is stated of them", () => {
    for (const other of [{ size: "4/0 AWG" }, { metal: "aluminum" }, { insulation: "XHHW-2" }] as const) {
      expect(legs([{}, other], 2, true)).toMatchObject({ outcome: "fail", cite: { locator: "310.10(G)" } });
      expect(legs([{}, other], 2, undefined).outcome).toBe("fail");
      expect(legs([{}, other], 2, true, { function: "splice" }).outcome).toBe("pass");
      expect(legs([{}, other], 2, true, { role: "equipment-ground" }).outcome).toBe("pass");
    }
    expect(legs([{}, {}], 2, true).outcome).toBe("pass");
  });
  test("the legs that differ are named, not a lead that lies beside them", () => {
    const lead = { insulation: "equipment-lead", size: "4 AWG" } as const;
    expect(legs([lead, {}, { metal: "copper-clad-aluminum" }], 2, true)).toMatchObject({
      outcome: "fail",
      offered: "3/0 AWG copper, THHN/THWN-2 and 3/0 AWG copper-clad aluminum, THHN/THWN-2",
    });
    expect(legs([{}, lead, {}], 2, true).outcome).toBe("pass");
    expect(legs([{}, { size: "4/0 AWG" }], 2, true, { role: "neutral" }).outcome).toBe("fail");
  });
  test("what is asked and what is said differ for phases and for grounds", () => {
    expect(legs([{}], 2, true)).toMatchObject({
      required: "legs of 1/0 AWG or larger, alike and terminated alike",
      sentence: "The 2 legs are 1/0 AWG or larger, and are stated to be alike and terminated in the same manner.",
    });
    expect(legs([{ size: "4 AWG" }], 3, true, { role: "equipment-ground" })).toMatchObject({
      required: "legs alike and terminated alike",
      sentence: "The 3 legs are stated to be alike and terminated in the same manner.",
    });
  });
  test("one conductor that cannot be judged keeps the others from being accepted", () => {
    for (const size of ["95 mm2", "no size"])
      expect(legs([{}, { size }], 2, true, { function: "splice" })).toMatchObject({
        outcome: "missing",
        missing: [{ path: "joint/conductors/1/size" }],
      });
    expect(legs([{ size: "95 mm2" }, { size: "1 AWG" }], 2, true, { function: "splice" }).outcome).toBe("fail");
  });
  test("without a circuit, or without a leg among the conductors, nothing is judged or accepted", () => {
    const { circuit, ...joint } = sampleJoint();
    expect(circuit).toBeDefined();
    expect(parallelLegs.check(sampleSubject(joint), nfpa70Edition2023).outcome).toBe("not-applicable");
    for (const insulation of ["equipment-lead", "fixture-wire"] as const)
      expect(legs([{ insulation }], 2, true)).toMatchObject({ missing: [{ path: "joint/conductors/0/duty" }] });
  });
  test("a metric size is asked about, not converted", () => {
    expect(legs([{ size: "95 mm2" }], 2, true)).toMatchObject({ missing: [{ path: "joint/conductors/0/size" }] });
    expect(legs([{ size: "95 mm2" }], 2, false).outcome).toBe("fail");
  });
});

describe("legs below 1/0 AWG by an exception (310.10(G)(1), exceptions 1 and 2)", () => {
  const small = (size: string, circuit: Partial<Circuit>, change: Partial<Joint> = {}) =>
    legs([{ size }], 2, undefined, { circuit: { sets: 2, parallelLegsAlike: true, ...circuit }, ...change });
  const CONTROL: Partial<Circuit> = {
    smallLegs: "control-power",
    loadA: 20,
    protection: { kind: "device", ratingA: 25 },
  };

  // published: Table 310.16, 12 AWG copper 25 A and 14 AWG 20 A at 75 C
  test.each([
    ["12 AWG", 25, 25, "pass"],
    ["12 AWG", 20, 26, "fail"],
    ["12 AWG", 26, 25, "fail"],
    ["14 AWG", 20, 20, "pass"],
    ["14 AWG", 20, 25, "fail"],
  ] as const)("control power: %s, %d A under %d A: %s", (size, loadA, ratingA, outcome) => {
    for (const smallLegs of ["control-power", "high-frequency"] as const)
      expect(small(size, { smallLegs, loadA, protection: { kind: "device", ratingA } }).outcome).toBe(outcome);
  });
  test("what one leg carries is set against load and device, and said", () => {
    // published: 12 AWG copper 25 A at 75 C
    expect(small("12 AWG", { ...CONTROL, protection: { kind: "device", ratingA: 26 } })).toMatchObject({
      outcome: "fail",
      sentence:
        "One leg carries 25 A; below 1/0 AWG each leg must carry the whole load and be protected by the device alone.",
      required: "26 A on one leg",
      offered: "25 A",
    });
    expect(small("12 AWG", CONTROL)).toMatchObject({
      sentence:
        "The 2 legs are allowed below 1/0 AWG by the use stated, and are stated to be alike and terminated in the same manner.",
    });
    // published: 12 AWG copper 30 A at 90 C, the most it can carry where the terminal is not known
    expect(small("12 AWG", { ...CONTROL, loadA: 31 }, { equipment: { tag: "P-1", kind: "panelboard" } })).toMatchObject(
      { outcome: "fail", offered: "30 A", required: "31 A on one leg" },
    );
  });
  test("in a splice one small leg puts the condition on all", () => {
    for (const sizes of [
      ["12 AWG", "1/0 AWG"],
      ["1/0 AWG", "12 AWG"],
    ])
      expect(
        legs(
          sizes.map((size) => ({ size })),
          2,
          true,
          {
            function: "splice",
            circuit: {
              sets: 2,
              parallelLegsAlike: true,
              endTerminalTemperature: { value: 75, unit: "Cel" },
              ...CONTROL,
            },
          },
        ),
      ).toMatchObject({ outcome: "pass", conditions: [{ duty: "small-legs-together" }] });
  });
  test("a small leg in no row of the table is asked about", () => {
    expect(small("5 AWG", CONTROL)).toMatchObject({ missing: [{ path: "joint/conductors/0/size" }] });
  });
  test("such legs stay together, and the rest holds for them too", () => {
    expect(small("12 AWG", CONTROL)).toMatchObject({ conditions: [{ duty: "small-legs-together" }] });
    expect(small("12 AWG", { ...CONTROL, parallelLegsAlike: false }).outcome).toBe("fail");
    expect(small("1/0 AWG", CONTROL)).toMatchObject({ outcome: "pass", conditions: [] });
  });
  test.each([
    [{ protection: { kind: "motor-circuit" } }, "joint/circuit/protection"],
    [{ loadA: undefined }, "joint/circuit/loadA"],
  ] as const)("%j is asked about", (part, path) => {
    const { loadA: _left, ...rest } = CONTROL;
    const circuit = "loadA" in part ? rest : { ...CONTROL, ...part };
    expect(small("12 AWG", circuit)).toMatchObject({ outcome: "missing", missing: [{ path }] });
  });
  test("the rating of the terminal is asked for where it decides", () => {
    // published: 12 AWG copper 20 A at 60 C, 25 A at 75 C
    const equipment = { tag: "P-1", kind: "panelboard" } as const;
    expect(small("12 AWG", CONTROL, { equipment })).toMatchObject({
      missing: [{ path: "joint/equipment/terminalTemperature" }],
    });
    expect(small("10 AWG", CONTROL, { equipment }).outcome).toBe("pass");
  });
  test.each([
    ["2 AWG", "neutral", "pass"],
    ["1 AWG", "neutral", "pass"],
    ["3 AWG", "neutral", "fail"],
    ["2 AWG", "phase", "fail"],
  ] as const)("existing neutral: %s as %s: %s", (size, role, outcome) => {
    const finding = small(size, { smallLegs: "existing-neutral" }, { role });
    expect(finding.outcome).toBe(outcome);
    if (outcome === "pass") expect(finding).toMatchObject({ conditions: [{ duty: "existing-neutral-supervised" }] });
    else
      expect(finding).toMatchObject({
        sentence: `Of an existing installation only neutrals of 2 and 1 AWG may run in parallel below 1/0 AWG; this is a ${role} of ${size}.`,
        offered: `${role}, ${size}`,
      });
  });
  test("without a stated use they are refused, and the uses are named", () => {
    expect(small("1 AWG", {})).toMatchObject({
      outcome: "fail",
      advice: [expect.stringContaining("360 Hz") as string],
    });
  });
});
