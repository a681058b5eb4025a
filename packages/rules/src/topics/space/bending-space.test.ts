import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import type { Connector } from "../../core/connector.js";
import type { BendingSpace, Joint } from "../../core/joint.js";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { bendingSpace } from "./bending-space.js";

const COMPACT = { metal: "aluminum", stranding: "compact" } as const;

function bent(
  conductor: Partial<ConductorGroup>,
  bending: BendingSpace | undefined,
  part: Partial<Connector> = {},
  change: Partial<Joint> = {},
  edition = nfpa70Edition2023,
) {
  const joint = sampleJoint({
    conductors: [sampleConductor(conductor)],
    equipment: { tag: "P-1", ...(bending === undefined ? {} : { bending }) },
    ...change,
  });
  return bendingSpace.check(sampleSubject(joint, sampleConnector(part)), edition);
}

const straight = (value: number, wiresPerTerminal = 1, change: Partial<BendingSpace> = {}): BendingSpace => ({
  entry: "opposite",
  available: { value, unit: "in" },
  wiresPerTerminal,
  ...change,
});
const side = (value: number, wiresPerTerminal = 1): BendingSpace => ({
  entry: "side",
  available: { value, unit: "in" },
  wiresPerTerminal,
});

describe("bending space (NFPA 70-2023 312.6)", () => {
  // published: Table 312.6(B)(2); the space itself is enough
  test.each([
    [{ size: "4/0 AWG" }, straight(6.9), "fail"],
    [{ size: "4/0 AWG" }, straight(7), "pass"],
    [{ size: "4/0 AWG" }, straight(7.1), "pass"],
    [{ size: "500 kcmil" }, straight(12), "fail"],
    [{ size: "500 kcmil" }, straight(13.9), "fail"],
    [{ size: "500 kcmil" }, straight(14), "pass"],
    [{ size: "4/0 AWG" }, straight(7.4, 2), "fail"],
    [{ size: "4/0 AWG" }, straight(7.5, 2), "pass"],
    [{ size: "300 kcmil" }, straight(14, 3), "pass"],
    [{ size: "300 kcmil" }, straight(10.9, 3), "fail"],
    [{ ...COMPACT, size: "4/0 AWG" }, straight(5.9), "fail"],
    [{ ...COMPACT, size: "4/0 AWG" }, straight(6), "pass"],
    [{ ...COMPACT, size: "250 kcmil" }, straight(9, 2), "pass"],
    [{ ...COMPACT, size: "600 kcmil" }, straight(18), "pass"],
    [{ metal: "aluminum", stranding: "class-B", size: "4/0 AWG" }, straight(6), "fail"],
    [{ metal: "copper", stranding: "compact", size: "4/0 AWG" }, straight(6), "fail"],
  ] as const)("%o in %o: %s", (conductor, bending, outcome) => {
    expect(bent(conductor, bending)).toMatchObject({ outcome, cite: { locator: "312.6(B)(2)" } });
  });
  // published: Table 312.6(A)
  test.each([
    [{ size: "500 kcmil" }, side(5.9), "fail"],
    [{ size: "500 kcmil" }, side(6), "pass"],
    [{ size: "500 kcmil" }, side(14, 5), "pass"],
    [{ size: "500 kcmil" }, side(13.9, 5), "fail"],
    [{ ...COMPACT, size: "500 kcmil" }, side(7), "pass"],
  ] as const)("%o through a side wall in %o: %s", (conductor, bending, outcome) => {
    expect(bent(conductor, bending)).toMatchObject({ outcome, cite: { locator: "312.6(B)(1)" } });
  });
  test("the refusal names both spaces and the way through the side wall", () => {
    expect(bent({ size: "500 kcmil" }, straight(12))).toMatchObject({
      required: "14 in",
      offered: "12 in",
      fix: "enter through a side wall (6 in needed), or a deeper enclosure, or smaller conductors in parallel",
    });
  });
  test("the last column for the opposite wall counts for more than four wires, the side has five columns", () => {
    // published: 500 kcmil, 4 wires or more: 16 in
    expect(bent({ size: "500 kcmil" }, straight(16, 6)).outcome).toBe("pass");
    expect(bent({ size: "500 kcmil" }, straight(15.9, 6)).outcome).toBe("fail");
    expect(bent({ size: "500 kcmil" }, side(30, 6))).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/equipment/bending/wiresPerTerminal" }],
    });
  });
  test.each([
    [{ value: 177.8, unit: "mm" }, "pass"],
    [{ value: 177.7, unit: "mm" }, "fail"],
    [{ value: 0.1778, unit: "m" }, "pass"],
    [{ value: 0.1777, unit: "m" }, "fail"],
    [{ value: 0.58, unit: "ft" }, "fail"],
    [{ value: 1, unit: "ft" }, "pass"],
  ] as const)("7 in is 177.8 mm: %o %s", (available, outcome) => {
    // hand: 7 x 25.4 = 177.8 mm exactly; 0.58 ft = 6.96 in
    expect(bent({ size: "4/0 AWG" }, { entry: "opposite", available, wiresPerTerminal: 1 }).outcome).toBe(outcome);
  });

  // published: 500 kcmil, 14 in less 3 in for a removable terminal: 11 in
  const loose: Partial<Connector> = { mounting: { kind: "pad", pattern: { holes: 1, bolt: "1/2" } } };
  test.each([
    [10.9, true, "fail"],
    [11, true, "pass"],
    [11, false, "fail"],
    [11, undefined, "missing"],
    [10.9, undefined, "fail"],
    [13.9, undefined, "missing"],
    [14, undefined, "pass"],
  ] as const)("500 kcmil in %d in, removable %s: %s", (available, removable, outcome) => {
    const bending = straight(available, 1, removable === undefined ? {} : { removableTerminal: removable });
    const finding = bent({ size: "500 kcmil" }, bending, loose);
    expect(finding.outcome).toBe(outcome);
    if (outcome === "missing")
      expect(finding).toMatchObject({ missing: [{ path: "joint/equipment/bending/removableTerminal" }] });
  });
  test("a terminal that comes fixed in its equipment is not removable, unless it is said to be", () => {
    expect(bent({ size: "500 kcmil" }, straight(11)).outcome).toBe("fail");
    expect(bent({ size: "500 kcmil" }, straight(11, 1, { removableTerminal: true })).outcome).toBe("pass");
  });
  test("where the table prints no reduction there is none", () => {
    expect(bent({ size: "4 AWG" }, straight(2.9, 1, { removableTerminal: true })).outcome).toBe("fail");
    expect(bent({ size: "4 AWG" }, straight(3, 1, { removableTerminal: true })).outcome).toBe("pass");
  });

  test("the smallest conductors have no space laid down", () => {
    expect(bent({ size: "10 AWG" }, straight(0.5)).outcome).toBe("not-applicable");
    expect(bent({ size: "10 AWG" }, straight(0.5, 2)).outcome).toBe("not-applicable");
    expect(bent({ size: "8 AWG" }, straight(1.4)).outcome).toBe("fail");
    expect(bent({ size: "8 AWG" }, straight(1.5)).outcome).toBe("pass");
  });
  test("without the space the rule says how much to look for", () => {
    expect(bent({ size: "500 kcmil" }, undefined)).toMatchObject({
      outcome: "not-applicable",
      because:
        "the bending space is not given; 500 kcmil, one wire per terminal, needs 14 in through the opposite wall and 6 in through a side wall",
    });
    expect(bent({ size: "12 AWG" }, undefined)).toMatchObject({ because: "the bending space is not given" });
  });
  test("sizes and numbers of wires that the table does not have are asked about", () => {
    expect(bent({ size: "35 mm2" }, straight(20))).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/conductors/0/size" }],
      cite: { locator: "312.6(B)(2)" },
      required: "the space of the table",
      offered: "20 in",
    });
    expect(bent({ size: "2 AWG" }, straight(20, 2))).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/equipment/bending/wiresPerTerminal" }],
    });
    expect(bent({ size: "4/0 AWG" }, straight(20, 1.5)).outcome).toBe("missing");
  });
  test("more wires in an opening than the space is given for is asked about", () => {
    expect(bent({ size: "4/0 AWG", count: 2 }, straight(7))).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/equipment/bending/wiresPerTerminal" }],
      cite: { locator: "312.6(B)(2)" },
      required: "space for the wires in the terminal",
      offered: "7 in",
    });
  });
  test("of two conductors the wider space decides, and a failure beats a question", () => {
    const two = (size: string, available: number) =>
      bent(
        {},
        straight(available, 2),
        {},
        { conductors: [sampleConductor({ size: "4/0 AWG" }), sampleConductor({ size })] },
      );
    // published: 4/0 AWG 7.5 in, 250 kcmil 8.5 in, two wires per terminal
    expect(two("250 kcmil", 8.5)).toMatchObject({ outcome: "pass", required: "8.5 in" });
    expect(two("250 kcmil", 8.4)).toMatchObject({ outcome: "fail", required: "8.5 in" });
    expect(two("35 mm2", 7.4).outcome).toBe("fail");
    expect(two("35 mm2", 7.5).outcome).toBe("missing");
  });
  test("of two conductors the wider space is named, whichever comes first", () => {
    for (const sizes of [
      ["250 kcmil", "4/0 AWG"],
      ["4/0 AWG", "250 kcmil"],
    ])
      expect(
        bent({}, straight(8.5, 2), {}, { conductors: sizes.map((size) => sampleConductor({ size })) }),
      ).toMatchObject({
        outcome: "pass",
        required: "8.5 in",
        sentence: "250 kcmil through the opposite wall needs 8.5 in with 2 wires per terminal, and 8.5 in is there.",
      });
  });
  // published: 4/0 AWG, two wires: 7.5 in; 10 AWG has no space laid down
  test.each([
    ["10 AWG", "4/0 AWG"],
    ["4/0 AWG", "10 AWG"],
  ] as const)("a small conductor, %s beside %s, takes nothing off the other's space", (first, second) => {
    const beside = (available: number) =>
      bent(
        {},
        straight(available, 2),
        {},
        { conductors: [sampleConductor({ size: first }), sampleConductor({ size: second })] },
      );
    expect(beside(7.4)).toMatchObject({ outcome: "fail", required: "7.5 in" });
    expect(beside(7.5)).toMatchObject({ outcome: "pass", required: "7.5 in" });
  });
  test("the refusal through a side wall names no other wall", () => {
    expect(bent({ size: "500 kcmil" }, side(5.9))).toMatchObject({
      sentence: "500 kcmil through a side wall needs 6 in with one wire per terminal, and only 5.9 in is there.",
      fix: "a deeper enclosure, or smaller conductors in parallel",
    });
    // published: the table for the side has five columns, the one for the opposite wall four that count for more
    expect(bent({ size: "500 kcmil" }, straight(15.9, 6))).toMatchObject({
      fix: "a deeper enclosure, or smaller conductors in parallel",
    });
    expect(bent({ size: "500 kcmil" }, straight(14))).toMatchObject({ fix: "" });
  });
  test.each([
    [{ value: 200, unit: "mm" }, "mm / 25.4", "200 / 25.4"],
    [{ value: 0.2, unit: "m" }, "m / 0.0254", "0.2 / 0.0254"],
    [{ value: 1, unit: "ft" }, "ft x 12", "1 x 12"],
  ] as const)("%o is converted on the worksheet", (available, formula, substituted) => {
    const finding = bent({ size: "4/0 AWG" }, { entry: "opposite", available, wiresPerTerminal: 1 });
    expect(
      "steps" in finding && finding.steps.find(({ label }) => label === "space available in inches"),
    ).toMatchObject({ formula, substituted, unit: "in" });
  });
  test("whether the terminal is removable stands on the worksheet with its source", () => {
    const steps = (finding: ReturnType<typeof bent>) =>
      "steps" in finding ? finding.steps.filter(({ label }) => label.startsWith("removable or lay-in")) : [];
    expect(steps(bent({ size: "500 kcmil" }, straight(14)))).toMatchObject([{ kind: "concluded", value: false }]);
    expect(steps(bent({ size: "500 kcmil" }, straight(14), loose))).toEqual([]);
    for (const removableTerminal of [true, false])
      expect(steps(bent({ size: "500 kcmil" }, straight(14, 1, { removableTerminal })))).toMatchObject([
        { kind: "given", value: removableTerminal, origin: "joint/equipment/bending/removableTerminal" },
      ]);
  });
  // published: 376.56(B)(3), 314.28(E)(3): the terminals of a block are terminals too
  test("on a distribution block conductors that go on are judged like those that end", () => {
    for (const jointFunction of ["splice", "tap"] as const)
      expect(
        bent({ size: "4/0 AWG" }, straight(6.9), { family: "power-distribution-block" }, { function: jointFunction })
          .outcome,
      ).toBe("fail");
  });
  test("without a word on the equipment, or of a size in no table, only the question is put", () => {
    const { equipment, ...joint } = sampleJoint({ conductors: [sampleConductor({ size: "35 mm2" })] });
    expect(equipment).toBeDefined();
    expect(bendingSpace.check(sampleSubject(joint), nfpa70Edition2023)).toMatchObject({
      outcome: "not-applicable",
      because: "the bending space is not given",
    });
  });
  test("splices are not judged", () => {
    expect(bent({}, straight(1), {}, { function: "splice" }).outcome).toBe("not-applicable");
  });
  test("the clauses are those of the edition asked", () => {
    expect(bent({ size: "4/0 AWG" }, straight(7), {}, {}, nfpa70Edition2017)).toMatchObject({
      outcome: "pass",
      cite: { edition: "2017" },
    });
  });
});
