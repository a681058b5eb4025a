import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import type { Joint } from "../../core/joint.js";
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
  test("a metric size is asked about, not converted", () => {
    expect(legs([{ size: "95 mm2" }], 2, true)).toMatchObject({ missing: [{ path: "joint/conductors/0/size" }] });
    expect(legs([{ size: "95 mm2" }], 2, false).outcome).toBe("fail");
  });
});
