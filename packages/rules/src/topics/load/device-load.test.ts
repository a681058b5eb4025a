import { describe, expect, test } from "vitest";
import type { Circuit, Joint, Protection } from "../../core/joint.js";
import { EDITIONS } from "../../rulesets/editions.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { deviceLoad } from "./device-load.js";

function check(circuit: Partial<Circuit>, change: Partial<Joint> = {}, edition = nfpa70Edition2023) {
  const joint = sampleJoint({ circuit: { voltageV: 480, sets: 1, ...circuit }, ...change });
  return deviceLoad.check(sampleSubject(joint), edition);
}

const device = (ratingA: number): Protection => ({ kind: "device", ratingA });
const TAP: Protection = {
  kind: "feeder-tap",
  feederDeviceA: 400,
  length: { value: 8, unit: "ft" },
  endDeviceA: 60,
  leavesEnclosure: true,
  physicallyProtected: true,
};

describe("load on the device (NFPA 70 210.20(A), 215.3)", () => {
  // hand: the load for sizing against the rating, one step to each side
  test.each([
    [199, "pass"],
    [200, "pass"],
    [200.1, "fail"],
    [201, "fail"],
  ] as const)("%d A for sizing on 200 A: %s", (loadA, outcome) => {
    for (const edition of EDITIONS) {
      const finding = check({ loadA, protection: device(200) }, {}, edition);
      expect(finding).toMatchObject({ outcome, cite: { edition: edition.edition, locator: "210.20(A) and 215.3" } });
    }
  });
  // hand: 1.25 x 160 = 200; 1.25 x 160.4 = 200.5; 1.25 x 100 + 75 = 200; 1.25 x 100 + 76 = 201
  test.each([
    [160, 0, "pass"],
    [160.4, 0, "fail"],
    [100, 75, "pass"],
    [100, 76, "fail"],
    [0, 200, "pass"],
    [0, 201, "fail"],
  ] as const)("%d A continuous and %d A beside it on 200 A: %s", (continuousLoadA, nonContinuousLoadA, outcome) => {
    expect(check({ continuousLoadA, nonContinuousLoadA, protection: device(200) }).outcome).toBe(outcome);
  });
  test("a refusal names the next device and the way of a listing for 100 %", () => {
    // hand: 1.25 x 180 = 225, a standard rating
    const finding = check({ continuousLoadA: 180, nonContinuousLoadA: 0, protection: device(200) });
    expect(finding).toMatchObject({
      outcome: "fail",
      required: "device of 225 A or more",
      offered: "200 A",
      fix: "a device of 225 A with conductors for it, or less load",
      advice: [expect.stringContaining("100 %") as string],
    });
    expect(check({ loadA: 225, protection: device(200) })).toMatchObject({ outcome: "fail", advice: [] });
    // published: 6000 A is the last of the standard ratings
    expect(check({ loadA: 6001, protection: device(6000) })).toMatchObject({
      fix: "less load, or the load divided among several circuits",
    });
  });
  test.each([
    [60, "pass"],
    [61, "fail"],
  ] as const)("on a tap the device at its end counts: %d A, %s", (loadA, outcome) => {
    expect(check({ loadA, protection: TAP })).toMatchObject({ outcome, cite: { locator: "215.3" } });
  });
  test("a load that is not given, or only in part, is asked for by other rules", () => {
    expect(check({ protection: device(200) }).outcome).toBe("not-applicable");
    expect(check({ continuousLoadA: 500, protection: device(200) }).outcome).toBe("not-applicable");
  });
  test.each([
    [undefined],
    [{ kind: "service" }],
    [{ kind: "motor-circuit" }],
    [{ kind: "none-stated", because: "battery string" }],
  ] as const)("protection %j has no device sized for the load", (protection) => {
    expect(check({ loadA: 500, ...(protection && { protection }) }).outcome).toBe("not-applicable");
  });
  test.each(["neutral", "equipment-ground", "electrode-conductor", "bonding"] as const)("role %s", (role) => {
    expect(check({ loadA: 500, protection: device(200) }, { role }).outcome).toBe("not-applicable");
  });
});
