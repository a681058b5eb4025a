import { describe, expect, test } from "vitest";
import type { Insulation } from "../../core/conductor.js";
import type { Connector } from "../../core/connector.js";
import type { Joint, Location } from "../../core/joint.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleOpening } from "../../samples/sample-joint.js";
import { landConductors } from "../openings/land-conductors.js";
import { insulatingCover } from "./insulating-cover.js";

function check(
  change: Partial<Joint>,
  part: Partial<Connector>,
  insulations: readonly Insulation[] = ["THHN/THWN-2", "THHN/THWN-2"],
) {
  const joint = sampleJoint({
    function: "splice",
    conductors: insulations.map((insulation) => sampleConductor({ size: "2 AWG", insulation })),
    ...change,
  });
  const connector = sampleConnector({ functions: ["splice"], openings: [sampleOpening({ count: 2 })], ...part });
  return insulatingCover.check(
    { joint, connector, origin: "connector", landings: landConductors(joint, connector) },
    nfpa70Edition2023,
  );
}

describe("insulation over the joint (NFPA 70-2023 110.14(B))", () => {
  test("a bare connector on insulated conductors passes on the condition that it is covered", () => {
    expect(check({}, { insulated: false })).toMatchObject({ outcome: "pass", conditions: [{ duty: "cover-joint" }] });
    expect(check({ function: "tap" }, { insulated: false, coverPart: "LF-COVER-1" })).toMatchObject({
      conditions: [{ sentence: "Fit the listed cover LF-COVER-1, so that no bare metal is left." }],
    });
    expect(check({}, { insulated: false }, ["bare", "THHN/THWN-2"])).toMatchObject({
      conditions: [{ duty: "cover-joint" }],
    });
  });
  test("an insulated connector in a dry place has no condition", () => {
    expect(check({}, { insulated: true })).toMatchObject({ outcome: "pass", conditions: [] });
    expect(check({}, { insulated: true, openings: [sampleOpening({ count: 4 })] })).toMatchObject({
      outcome: "pass",
      conditions: [],
    });
  });
  // hand: four openings, two in use, two to close; two openings, none
  test.each([
    ["wet", 4, 1],
    ["direct-burial", 3, 1],
    ["wet", 2, 0],
    ["damp", 4, 0],
  ] as const)(
    "in a %s place with %d openings for two conductors: %d conditions",
    (location: Location, count, conditions) => {
      const finding = check({ place: { location } }, { insulated: true, openings: [sampleOpening({ count })] });
      expect("conditions" in finding && finding.conditions).toHaveLength(conditions);
    },
  );
  test("a handhole counts as wet", () => {
    const handhole = check(
      { equipment: { tag: "HH-1", kind: "handhole" } },
      { insulated: true, openings: [sampleOpening({ count: 4 })] },
    );
    expect(handhole).toMatchObject({ conditions: [{ duty: "close-unused-openings" }] });
    const panel = check(
      { equipment: { tag: "P-1", kind: "panelboard" } },
      { insulated: true, openings: [sampleOpening({ count: 4 })] },
    );
    expect(panel).toMatchObject({ conditions: [] });
  });
  test("a joint in the field without equipment is judged by its place alone", () => {
    const { equipment: _equipment, ...apart } = sampleJoint({
      function: "splice",
      conductors: [sampleConductor({ size: "2 AWG", count: 2 })],
    });
    const connector = sampleConnector({ insulated: true, openings: [sampleOpening({ count: 3 })] });
    const judge = (location: Location) => {
      const joint = { ...apart, place: { location } };
      return insulatingCover.check(
        { joint, connector, origin: "connector", landings: landConductors(joint, connector) },
        nfpa70Edition2023,
      );
    };
    expect(judge("dry")).toMatchObject({ conditions: [] });
    expect(judge("wet")).toMatchObject({ conditions: [{ duty: "close-unused-openings" }] });
  });
  test("a splice of neutrals is covered like one of phases", () => {
    expect(check({ role: "neutral" }, { insulated: false })).toMatchObject({ conditions: [{ duty: "cover-joint" }] });
  });
  test("motor leads in lugs bolted back to back are covered", () => {
    const pair: Partial<Connector> = { family: "compression-lug-pair", insulated: false };
    expect(check({ function: "termination" }, pair)).toMatchObject({ conditions: [{ duty: "cover-joint" }] });
    expect(check({ function: "termination" }, { insulated: false }).outcome).toBe("not-applicable");
  });
  test("bare conductors and grounding joints need no cover", () => {
    expect(check({}, { insulated: false }, ["bare", "bare"]).outcome).toBe("not-applicable");
    expect(check({ role: "equipment-ground" }, { insulated: false }).outcome).toBe("not-applicable");
  });
});
