import { describe, expect, test } from "vitest";
import type { Connector, HolePattern, Mounting } from "../../core/connector.js";
import type { Joint } from "../../core/joint.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { studAndHoles } from "./stud-and-holes.js";

const TWO_HOLE: HolePattern = { holes: 2, bolt: "1/2", spacing: { value: 1.75, unit: "in" } };
const ONE_HOLE: HolePattern = { holes: 1, bolt: "3/8" };

function judge(mounting: Mounting, joint: Partial<Joint>, connector: Partial<Connector> = {}) {
  return studAndHoles.check(
    sampleSubject(sampleJoint(joint), sampleConnector({ mounting, ...connector })),
    nfpa70Edition2023,
  );
}

function onPad(pattern: HolePattern, stud?: HolePattern) {
  return judge({ kind: "pad", pattern }, { equipment: stud === undefined ? { tag: "P-1" } : { tag: "P-1", stud } });
}

describe("holes of the lug and bolts of the pad (NFPA 70-2023 110.3(B))", () => {
  test("equal patterns match, with no condition", () => {
    expect(onPad(TWO_HOLE, TWO_HOLE)).toMatchObject({ outcome: "pass", conditions: [] });
    expect(onPad(ONE_HOLE, ONE_HOLE).outcome).toBe("pass");
  });
  test("another number of holes or another bolt does not match", () => {
    expect(onPad(ONE_HOLE, TWO_HOLE)).toMatchObject({
      outcome: "fail",
      required: "2 bolts of 1/2 in at 1.75 in",
      offered: "1 hole for 3/8 in bolts",
    });
    expect(onPad(TWO_HOLE, { ...ONE_HOLE, bolt: "1/2" }).outcome).toBe("fail");
    expect(onPad(ONE_HOLE, { holes: 1, bolt: "1/2" }).outcome).toBe("fail");
    expect(onPad({ holes: 1, bolt: "M12" }, { holes: 1, bolt: "1/2" }).outcome).toBe("fail");
  });
  test("metric bolts are named as they are, and one hole has no distance", () => {
    expect(onPad({ holes: 1, bolt: "M12" }, { holes: 1, bolt: "1/2" })).toMatchObject({
      required: "1 bolt of 1/2 in",
      offered: "1 hole for M12 bolts",
    });
    const spacing = { value: 1.75, unit: "in" } as const;
    expect(onPad({ holes: 1, bolt: "3/8", spacing }, ONE_HOLE)).toMatchObject({
      outcome: "pass",
      offered: "1 hole for 3/8 in bolts",
    });
  });
  // hand: 44.45 / 25.4 = 1.75; 44.4 / 25.4 = 1.748
  test.each([
    [44.45, "mm", "pass"],
    [44.4, "mm", "fail"],
    [44.5, "mm", "fail"],
    [0.04445, "m", "pass"],
    [1.74, "in", "fail"],
    [1.76, "in", "fail"],
  ] as const)("bolts at 1.75 in, holes at %d %s: %s", (value, unit, outcome) => {
    expect(onPad({ ...TWO_HOLE, spacing: { value, unit } }, TWO_HOLE).outcome).toBe(outcome);
  });
  test("what is not known of the pad or of the distance is asked for, but not where the rest refuses", () => {
    expect(onPad(TWO_HOLE)).toMatchObject({ outcome: "missing", missing: [{ path: "joint/equipment/stud" }] });
    const apart = { holes: 2, bolt: "1/2" };
    expect(onPad(apart, TWO_HOLE)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/mounting/pattern/spacing" }],
    });
    expect(onPad(TWO_HOLE, apart)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/equipment/stud/spacing" }],
      cite: { locator: "110.3(B)" },
      required: "2 bolts of 1/2 in",
      offered: "2 holes for 1/2 in bolts at 1.75 in",
    });
    expect(onPad({ holes: 2, bolt: "3/8" }, TWO_HOLE).outcome).toBe("fail");
  });
  test("a lug kit is one listed for the frame", () => {
    const kit: Mounting = { kind: "frame", frames: ["F400", "F600"] };
    expect(judge(kit, { equipment: { tag: "P-1", frame: "F400" } }).outcome).toBe("pass");
    expect(judge(kit, { equipment: { tag: "P-1", frame: "F200" } }).outcome).toBe("fail");
    expect(judge(kit, { equipment: { tag: "P-1" } })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/equipment/frame" }],
      offered: "F400, F600",
    });
    const { equipment, ...nowhere } = sampleJoint();
    expect(equipment).toBeDefined();
    expect(
      studAndHoles.check(sampleSubject(nowhere, sampleConnector({ mounting: kit })), nfpa70Edition2023),
    ).toMatchObject({ missing: [{ path: "joint/equipment/frame" }] });
  });
  test("what hangs free or comes with its equipment is not judged", () => {
    expect(judge({ kind: "free" }, { function: "splice" })).toMatchObject({
      outcome: "not-applicable",
      because: "the connector hangs free",
    });
    expect(judge({ kind: "integral" }, {})).toMatchObject({
      outcome: "not-applicable",
      because: "the connector comes fixed in its equipment",
    });
  });
  test("a splice or a tap is not made with a part for a pad, unless two lugs are bolted to each other", () => {
    const pad: Mounting = { kind: "pad", pattern: ONE_HOLE };
    expect(judge(pad, { function: "splice" })).toMatchObject({ outcome: "fail", offered: "a lug for a pad" });
    expect(judge({ kind: "frame", frames: ["F400"] }, { function: "tap" })).toMatchObject({
      outcome: "fail",
      offered: "a lug kit for equipment",
    });
    const pair: Partial<Connector> = { family: "compression-lug-pair" };
    expect(judge(pad, { function: "splice", equipment: { tag: "M-1", stud: TWO_HOLE } }, pair).outcome).toBe(
      "not-applicable",
    );
    expect(judge(pad, { equipment: { tag: "M-1", stud: ONE_HOLE } }, pair).outcome).toBe("pass");
  });
});
