import { describe, expect, test } from "vitest";
import type { Connector } from "../../core/connector.js";
import type { Equipment, Joint } from "../../core/joint.js";
import { EDITIONS } from "../../rulesets/editions.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { bendingSpace } from "../space/bending-space.js";
import { distributionBlock } from "./distribution-block.js";

function block(equipment: Partial<Equipment> | undefined, change: Partial<Connector> = {}, joint: Partial<Joint> = {}) {
  return sampleSubject(
    sampleJoint({
      function: "splice",
      ...(equipment === undefined ? {} : { equipment: { tag: "W-1", ...equipment } }),
      ...joint,
    }),
    sampleConnector({ family: "power-distribution-block", insulated: true, ...change }),
  );
}

const check = (...facts: Parameters<typeof block>) => distributionBlock.check(block(...facts), nfpa70Edition2023);
const duties = (finding: ReturnType<typeof check>) =>
  "conditions" in finding ? finding.conditions.map(({ duty }) => duty) : finding.outcome;

describe("power distribution block (NFPA 70 376.56(B), 314.28(E))", () => {
  test("an insulated or covered block in a wireway passes; a bare one does not", () => {
    for (const edition of EDITIONS) {
      const of = (change: Partial<Connector>) => distributionBlock.check(block({ kind: "wireway" }, change), edition);
      expect(of({})).toMatchObject({ outcome: "pass", cite: { locator: "376.56(B)", edition: edition.edition } });
      expect(of({ insulated: false, coverPart: "C-1" }).outcome).toBe("pass");
      expect(of({ insulated: false })).toMatchObject({ outcome: "fail", offered: "bare block" });
    }
  });
  test("what the acceptance hangs on", () => {
    const bending = { entry: "opposite", available: { value: 14, unit: "in" }, wiresPerTerminal: 1 } as const;
    expect(duties(check({ kind: "wireway" }))).toEqual(["block-size-and-clearance", "measure-block-bending-space"]);
    expect(duties(check({ kind: "wireway", bending }, { insulated: false, coverPart: "C-1" }))).toEqual([
      "block-size-and-clearance",
      "fit-block-cover",
    ]);
  });
  // published: 314.28(E), boxes over 100 cubic inches
  test.each([
    [99.9, "fail"],
    [100, "fail"],
    [100.1, "pass"],
    [101, "pass"],
  ] as const)("in a box of %d in3: %s", (boxVolumeIn3, outcome) => {
    expect(check({ kind: "box", boxVolumeIn3 })).toMatchObject({ outcome, cite: { locator: "314.28(E)" } });
  });
  test("the volume of the box is asked for, unless the block is bare anyway", () => {
    expect(check({ kind: "box" })).toMatchObject({ missing: [{ path: "joint/equipment/boxVolumeIn3" }] });
    expect(check({ kind: "box" }, { insulated: false }).outcome).toBe("fail");
    expect(check({ kind: "box", boxVolumeIn3: 200 }, { insulated: false }).outcome).toBe("fail");
  });
  test("without equipment where it stands is asked for", () => {
    const { equipment: _equipment, ...joint } = sampleJoint({ function: "splice" });
    const connector = sampleConnector({ family: "power-distribution-block", insulated: true });
    expect(distributionBlock.check(sampleSubject(joint, connector), nfpa70Edition2023)).toMatchObject({
      rule: "distribution-block",
      outcome: "missing",
      missing: [{ path: "joint/equipment/kind" }],
    });
  });
  test("a bare block in a box is refused for what lies open, on the facts of box and block", () => {
    const finding = check({ kind: "box", boxVolumeIn3: 99 }, { insulated: false });
    expect(finding).toMatchObject({ outcome: "fail", required: "no live parts exposed with the enclosure open" });
    if (!("steps" in finding)) throw new Error(finding.because);
    const where = finding.steps.find(({ label }) => label === "where the block stands");
    expect(finding.steps.at(-1)?.uses).toContain(where?.id);
  });
  test("the question for the volume says what is required", () => {
    expect(check({ kind: "box" })).toMatchObject({ required: "a box over 100 in3", cite: { locator: "314.28(E)" } });
  });
  test("where it stands is asked for", () => {
    expect(check(undefined, {}, { equipment: { tag: "X" } })).toMatchObject({
      missing: [{ path: "joint/equipment/kind" }],
    });
    expect(check({ kind: "switchboard" }).outcome).toBe("not-applicable");
  });
  test("other connectors are not judged", () => {
    expect(check({ kind: "wireway" }, { family: "multi-tap-block", insulated: false }).outcome).toBe("not-applicable");
  });
});

// published: Table 312.6(B)(2), 3/0 AWG, one wire: 6.5 in
test.each([
  [6.4, "fail"],
  [6.5, "pass"],
] as const)("space to bend at the terminals of a block: %d in, %s", (value, outcome) => {
  const bending = {
    entry: "opposite",
    available: { value, unit: "in" },
    wiresPerTerminal: 1,
    removableTerminal: false,
  } as const;
  expect(bendingSpace.check(block({ kind: "wireway", bending }), nfpa70Edition2023).outcome).toBe(outcome);
  expect(
    bendingSpace.check(block({ kind: "wireway", bending }, { family: "multi-tap-block" }), nfpa70Edition2023).outcome,
  ).toBe("not-applicable");
});
