import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import type { Circuit, Joint, Protection, Upsizing } from "../../core/joint.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { equipmentGroundSize } from "./equipment-ground-size.js";

function ground(
  conductors: readonly Partial<ConductorGroup>[],
  protection: Protection | undefined,
  upsizing?: Upsizing,
  circuit: Partial<Circuit> = {},
  change: Partial<Joint> = {},
) {
  const joint = sampleJoint({
    role: "equipment-ground",
    conductors: conductors.map((one) => sampleConductor(one)),
    circuit: { sets: 1, ...circuit, ...(protection === undefined ? {} : { protection }) },
    ...(upsizing === undefined ? {} : { upsizing }),
    ...change,
  });
  return equipmentGroundSize.check(sampleSubject(joint), nfpa70Edition2023);
}

const device = (ratingA: number): Protection => ({ kind: "device", ratingA });
const raised = (from: string, to: string, metal: "copper" | "aluminum" = "aluminum"): Upsizing => ({
  minimum: { size: from, metal },
  installed: { size: to, metal },
});

describe("size of the equipment ground (NFPA 70-2023 250.122)", () => {
  // published: Table 250.122
  test.each([
    ["copper", "14 AWG", 15, "pass"],
    ["copper", "14 AWG", 16, "fail"],
    ["copper", "12 AWG", 20, "pass"],
    ["copper", "12 AWG", 21, "fail"],
    ["copper", "8 AWG", 100, "pass"],
    ["copper", "8 AWG", 101, "fail"],
    ["copper", "6 AWG", 200, "pass"],
    ["copper", "4 AWG", 201, "pass"],
    ["copper", "1/0 AWG", 800, "pass"],
    ["copper", "1 AWG", 800, "fail"],
    ["copper", "1/0 AWG", 801, "fail"],
    ["aluminum", "10 AWG", 20, "pass"],
    ["aluminum", "12 AWG", 20, "fail"],
    ["copper-clad-aluminum", "10 AWG", 20, "pass"],
    ["copper-clad-aluminum", "12 AWG", 20, "fail"],
  ] as const)("%s %s for %d A: %s", (metal, size, ratingA, outcome) => {
    expect(ground([{ metal, size }], device(ratingA)).outcome).toBe(outcome);
  });
  test("the size asked for is named", () => {
    expect(ground([{ size: "1/0 AWG" }], device(800))).toMatchObject({
      required: "1/0 AWG CU",
      offered: "1/0 AWG CU",
      cite: { locator: "250.122(A)" },
    });
    expect(ground([{ size: "4 AWG", metal: "aluminum" }], device(225))).toMatchObject({
      outcome: "fail",
      required: "2 AWG AL",
    });
  });

  // hand: 41.74 x 500 / 300 = 69.5666… kcmil; 2 AWG has 66.36, 1 AWG 83.69
  test.each([
    ["4 AWG", "fail"],
    ["2 AWG", "fail"],
    ["1 AWG", "pass"],
    ["1/0 AWG", "pass"],
  ] as const)("phases raised from 300 to 500 kcmil under 225 A, ground of %s copper: %s", (size, outcome) => {
    expect(ground([{ size }], device(225), raised("300 kcmil", "500 kcmil"))).toMatchObject({
      outcome,
      required: "1 AWG CU",
      offered: `${size} CU`,
      cite: { locator: "250.122(B)" },
    });
  });
  // hand: 66.36 x 500 / 300 = 110.6 kcmil; 1/0 AWG has 105.6, 2/0 AWG 133.1
  test("the same in aluminum asks for 2/0 AWG", () => {
    expect(
      ground([{ size: "1/0 AWG", metal: "aluminum" }], device(225), raised("300 kcmil", "500 kcmil")),
    ).toMatchObject({
      outcome: "fail",
      required: "2/0 AWG AL",
    });
    expect(
      ground([{ size: "2/0 AWG", metal: "aluminum" }], device(225), raised("300 kcmil", "500 kcmil")).outcome,
    ).toBe("pass");
  });
  // hand: 6.53 x 26.24 / 6.53 = 26.24 kcmil exactly, which is 6 AWG: the division must not lose it
  test("a ground that is raised exactly as the phases is enough", () => {
    expect(ground([{ size: "6 AWG" }], device(20), raised("12 AWG", "6 AWG", "copper"))).toMatchObject({
      outcome: "pass",
      required: "6 AWG CU",
    });
    expect(ground([{ size: "8 AWG" }], device(20), raised("12 AWG", "6 AWG", "copper")).outcome).toBe("fail");
  });
  test("the ground need not be larger than the phase that was raised", () => {
    // hand: 10 AWG copper for 60 A; 10.38 x 26.24 / 6.53 = 41.71 kcmil, more than the 6 AWG phase, 26.24
    const twice = ground([{ size: "6 AWG" }], device(60), raised("12 AWG", "6 AWG", "copper"));
    expect(twice).toMatchObject({ outcome: "pass", required: "6 AWG CU" });
    expect(ground([{ size: "8 AWG" }], device(60), raised("12 AWG", "6 AWG", "copper")).outcome).toBe("fail");
  });
  test("with several sets the phase is all of them together", () => {
    // hand: the cap is 2 x 26.24 = 52.48 kcmil, so 41.71 stands, and 4 AWG has 41.74
    expect(ground([{ size: "6 AWG" }], device(60), raised("12 AWG", "6 AWG", "copper"), { sets: 2 }).outcome).toBe(
      "fail",
    );
    expect(ground([{ size: "4 AWG" }], device(60), raised("12 AWG", "6 AWG", "copper"), { sets: 2 }).outcome).toBe(
      "pass",
    );
  });
  test("phases that are not larger than they need be raise nothing", () => {
    expect(ground([{ size: "4 AWG" }], device(225), raised("300 kcmil", "300 kcmil"))).toMatchObject({
      outcome: "pass",
      required: "4 AWG CU",
    });
    expect(ground([{ size: "4 AWG" }], device(225), raised("500 kcmil", "300 kcmil")).outcome).toBe("pass");
  });
  // hand: 60 A asks for 10 AWG copper; phases of 12 AWG, raised or not, limit it to 12 AWG
  test.each([
    ["12 AWG", "pass"],
    ["14 AWG", "fail"],
  ] as const)("phases smaller than the table's ground limit it: %s, %s", (size, outcome) => {
    expect(ground([{ size }], device(60), raised("12 AWG", "12 AWG", "copper"))).toMatchObject({
      outcome,
      required: "12 AWG CU",
    });
    expect(ground([{ size }], device(60), raised("12 AWG", "12 AWG"))).toMatchObject({ outcome });
  });
  // hand: 20 A asks for 10 AWG aluminum, 10.38 x 105.6 / 6.53 = 167.86 kcmil, more than 3/0 AWG, 167.8: 4/0 AWG; copper
  // phases of 1/0 AWG do not limit it, aluminum ones do
  test.each([
    ["1/0 AWG", "copper", "fail"],
    ["3/0 AWG", "copper", "fail"],
    ["4/0 AWG", "copper", "pass"],
    ["1/0 AWG", "aluminum", "pass"],
    ["1 AWG", "aluminum", "fail"],
  ] as const)("an aluminum ground of %s with raised %s phases: %s", (size, phases, outcome) => {
    expect(ground([{ size, metal: "aluminum" }], device(20), raised("12 AWG", "1/0 AWG", phases)).outcome).toBe(
      outcome,
    );
  });
  test("areas of different metals are not compared", () => {
    const mixed: Upsizing = {
      minimum: { size: "4/0 AWG", metal: "copper" },
      installed: { size: "500 kcmil", metal: "aluminum" },
    };
    expect(ground([{ size: "1 AWG" }], device(225), mixed)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/upsizing/minimum" }],
      cite: { locator: "250.122(B)" },
      required: "a ground raised as the phases were",
      offered: "1 AWG CU",
    });
    expect(ground([{ size: "1 AWG" }], device(225), raised("150 mm2", "500 kcmil"))).toMatchObject({
      missing: [{ path: "joint/upsizing/minimum" }],
    });
    expect(ground([{ size: "1 AWG" }], device(225), raised("300 kcmil", "240 mm2"))).toMatchObject({
      missing: [{ path: "joint/upsizing/installed" }],
    });
  });

  test("each of two grounds in one hole must be large enough", () => {
    expect(ground([{ size: "12 AWG", count: 2 }], device(20)).outcome).toBe("pass");
    expect(ground([{ size: "12 AWG" }, { size: "14 AWG" }], device(20))).toMatchObject({
      outcome: "fail",
      offered: "14 AWG CU",
    });
    expect(ground([{ size: "12 AWG" }, { size: "10 AWG" }], device(20))).toMatchObject({
      outcome: "pass",
      offered: "12 AWG CU and 10 AWG CU",
    });
  });
  test("for a tap the feeder's device counts", () => {
    const tap: Protection = {
      kind: "feeder-tap",
      feederDeviceA: 400,
      length: { value: 8, unit: "ft" },
      endDeviceA: 40,
      leavesEnclosure: true,
      physicallyProtected: true,
    };
    // published: 3 AWG copper for 400 A
    expect(ground([{ size: "3 AWG" }], tap).outcome).toBe("pass");
    expect(ground([{ size: "4 AWG" }], tap).outcome).toBe("fail");
  });
  test("behind a transformer the primary's device sizes no ground", () => {
    const secondary: Protection = {
      kind: "feeder-tap",
      feederDeviceA: 400,
      through: { primaryV: 480, secondaryV: 208 },
      length: { value: 8, unit: "ft" },
      endDeviceA: 40,
      leavesEnclosure: true,
      physicallyProtected: true,
    };
    expect(ground([{ size: "3 AWG" }], secondary)).toMatchObject({ missing: [{ path: "joint/circuit/protection" }] });
  });
  test("the device is asked for where it is not given or outside the table", () => {
    for (const protection of [
      undefined,
      { kind: "service" },
      { kind: "motor-circuit" },
      device(6001),
      device(Number.NaN),
    ] as const)
      expect(ground([{}], protection)).toMatchObject({
        outcome: "missing",
        missing: [{ path: "joint/circuit/protection" }],
      });
    // published: 800 kcmil copper for 6000 A
    expect(ground([{ size: "800 kcmil" }], device(6000)).outcome).toBe("pass");
  });
  test("a metric ground is asked about, not converted, unless another fails", () => {
    expect(ground([{ size: "35 mm2" }], device(20))).toMatchObject({ missing: [{ path: "joint/conductors/0/size" }] });
    expect(ground([{ size: "35 mm2" }, { size: "14 AWG" }], device(20)).outcome).toBe("fail");
    expect(ground([{ size: "12 AWG" }, { size: "35 mm2" }], device(20))).toMatchObject({
      missing: [{ path: "joint/conductors/1/size" }],
    });
    expect(ground([], device(20))).toMatchObject({ missing: [{ path: "joint/conductors/0/size" }] });
  });
  test("other roles are not judged", () => {
    expect(ground([{}], device(20), undefined, {}, { role: "phase" }).outcome).toBe("not-applicable");
    expect(ground([{}], device(20), undefined, {}, { role: "bonding" }).outcome).toBe("not-applicable");
  });
});
