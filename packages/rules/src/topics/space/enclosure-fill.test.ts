import { describe, expect, test } from "vitest";
import type { SpaceSection } from "../../core/joint.js";
import type { Area } from "../../core/quantity.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { enclosureFill } from "./enclosure-fill.js";

const in2 = (value: number): Area => ({ value, unit: "in2" });

function filled(space: SpaceSection | undefined) {
  const joint = sampleJoint({
    function: "splice",
    equipment: { tag: "LP-2", ...(space === undefined ? {} : { space }) },
  });
  return enclosureFill.check(sampleSubject(joint), nfpa70Edition2023);
}

const panel = (conductors: number, splices: number): SpaceSection => ({
  kind: "enclosure",
  section: in2(16),
  conductors: in2(conductors),
  splices: in2(splices),
});
const wireway = (conductors: number, splices: number): SpaceSection => ({
  ...panel(conductors, splices),
  kind: "wireway",
});

describe("fill at the joint (NFPA 70-2023 312.8(A), 376.56(A))", () => {
  // hand: 19 x 0.3237 = 6.1503, 38.44 %; with 2.2: 8.3503, 52.19 %
  test("nineteen conductors of 4/0 AWG pass a 4 x 4 in gutter, with a label", () => {
    expect(filled(panel(6.1503, 2.2))).toMatchObject({
      outcome: "pass",
      required: "<= 40 % conductors, <= 75 % with splices",
      offered: "38.4 % / 52.2 %",
      cite: { locator: "312.8(A)" },
      conditions: [{ duty: "label-upstream-disconnect" }],
    });
  });
  // hand: 20 x 0.3237 = 6.474, 40.46 %
  test("the twentieth is one too many", () => {
    expect(filled(panel(6.474, 2.2))).toMatchObject({ outcome: "fail", offered: "40.5 % / 54.2 %" });
  });
  // hand: 40 % of 16 is 6.4, 75 % is 12
  test.each([
    [6.3999, 0, "pass"],
    [6.4, 0, "pass"],
    [6.4001, 0, "fail"],
    [6.4, 5.5999, "pass"],
    [6.4, 5.6, "pass"],
    [6.4, 5.6001, "fail"],
    [1, 11, "pass"],
    [1, 11.0001, "fail"],
  ] as const)(
    "an enclosure of 16 in2 with %d in2 of conductors and %d in2 of splices: %s",
    (conductors, splices, outcome) => {
      expect(filled(panel(conductors, splices)).outcome).toBe(outcome);
    },
  );
  test.each([
    [11.9, 0.0999, "pass"],
    [11.9, 0.1, "pass"],
    [11.9, 0.1001, "fail"],
  ] as const)(
    "a wireway of 16 in2 with %d in2 of conductors and %d in2 of splices: %s, without a label",
    (conductors, splices, outcome) => {
      expect(filled(wireway(conductors, splices))).toMatchObject({
        outcome,
        conditions: [],
        cite: { locator: "376.56(A)" },
      });
    },
  );
  test("a share just over its limit does not read as the limit", () => {
    expect(filled(panel(6.4001, 0))).toMatchObject({ outcome: "fail", offered: "40.1 % / 40 %" });
    expect(filled(panel(6.4, 0))).toMatchObject({ offered: "40 % / 40 %" });
  });
  test("units may differ", () => {
    // hand: 16 in2 = 10322.56 mm2 = 103.2256 cm2; 40 % of it is 4129.024 mm2
    const mixed = (conductors: number): SpaceSection => ({
      kind: "enclosure",
      section: { value: 103.2256, unit: "cm2" },
      conductors: { value: conductors, unit: "mm2" },
      splices: in2(0),
    });
    expect(filled(mixed(4129.024)).outcome).toBe("pass");
    expect(filled(mixed(4129.025)).outcome).toBe("fail");
  });
  // hand: 10 322.56 / 645.16 = 16 in2; 103.2256 x 100 / 645.16 the same
  test.each([
    [{ value: 10_322.56, unit: "mm2" }, "mm2 / 645.16", "10322.56 / 645.16"],
    [{ value: 103.2256, unit: "cm2" }, "cm2 x 100 / 645.16", "103.2256 x 100 / 645.16"],
  ] as const)("a section of %o is converted on the worksheet", (section, formula, substituted) => {
    const finding = filled({ ...panel(6, 0), section });
    expect("steps" in finding && finding.steps).toEqual(
      expect.arrayContaining([
        expect.objectContaining({ origin: "joint/equipment/space/section", value: section.value, unit: section.unit }),
        expect.objectContaining({
          label: "cross-section in square inches",
          value: 16,
          unit: "in2",
          formula,
          substituted,
        }),
        expect.objectContaining({ origin: "joint/equipment/space/conductors", value: 6, unit: "in2" }),
        expect.objectContaining({ origin: "joint/equipment/space/splices", value: 0, unit: "in2" }),
      ]),
    );
  });
  test("the sentence says how much is filled, and when it is too much", () => {
    const sentence = (space: SpaceSection) => {
      const finding = filled(space);
      return "sentence" in finding ? finding.sentence : "";
    };
    expect(sentence(panel(6, 2))).toBe(
      "Conductors fill 37.5 % of the section and 50 % with splices and taps; 40 % and 75 % are allowed.",
    );
    expect(sentence(panel(8, 2))).toBe(
      "Conductors fill 50 % of the section and 62.5 % with splices and taps; 40 % and 75 % are allowed, so there is too little room.",
    );
    expect(sentence(wireway(10, 2))).toBe(
      "Conductors with splices and taps fill 75 % of the section; 75 % is allowed.",
    );
    expect(sentence(wireway(10, 4))).toBe(
      "Conductors with splices and taps fill 87.5 % of the section; 75 % is allowed, so there is too little room.",
    );
  });
  test("in a wireway only the share with splices is asked for", () => {
    expect(filled(wireway(10, 4))).toMatchObject({ required: "<= 75 % with splices", offered: "87.5 %" });
  });
  test.each([0, -1, Number.NaN])("a section of %d is asked about", (value) => {
    expect(filled({ ...panel(0, 0), section: in2(value) })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/equipment/space/section" }],
      cite: { locator: "312.8(A)" },
      required: "<= 40 % conductors, <= 75 % with splices",
    });
    expect(filled({ ...wireway(0, 0), section: in2(value) })).toMatchObject({
      cite: { locator: "376.56(A)" },
      required: "<= 75 % with splices",
    });
  });
  test("without a section there is nothing to judge", () => {
    expect(filled(undefined).outcome).toBe("not-applicable");
    const { equipment, ...joint } = sampleJoint();
    expect(equipment).toBeDefined();
    expect(enclosureFill.check(sampleSubject(joint), nfpa70Edition2023).outcome).toBe("not-applicable");
  });
});
