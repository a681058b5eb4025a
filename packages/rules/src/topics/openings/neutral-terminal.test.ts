import { describe, expect, test } from "vitest";
import type { Connector } from "../../core/connector.js";
import type { EquipmentKind, Joint } from "../../core/joint.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleOpening } from "../../samples/sample-joint.js";
import { landConductors } from "./land-conductors.js";
import { neutralTerminal } from "./neutral-terminal.js";

interface Case {
  readonly count: number;
  readonly holes?: number;
  readonly conductorsMax?: number | "unmarked" | undefined;
  readonly kind?: EquipmentKind | undefined;
  readonly sets?: number;
  readonly joint?: Partial<Joint>;
  readonly connector?: Partial<Connector>;
}

function check(given: Case) {
  const { conductorsMax: _max, ...hole } = sampleOpening({
    count: given.holes ?? 1,
    ranges: [{ from: "14 AWG", to: "4 AWG", strandings: ["solid"] }],
  });
  const max = "conductorsMax" in given ? given.conductorsMax : 2;
  const connector = sampleConnector({
    family: "neutral-bar",
    openings: [max === undefined ? hole : { ...hole, conductorsMax: max }],
    ...given.connector,
  });
  const kind = "kind" in given ? given.kind : "panelboard";
  const joint = sampleJoint({
    role: "neutral",
    conductors: [sampleConductor({ count: given.count, size: "12 AWG", stranding: "solid" })],
    equipment: kind === undefined ? { tag: "LP-1" } : { tag: "LP-1", kind },
    circuit: { sets: given.sets ?? 1 },
    ...given.joint,
  });
  return neutralTerminal.check(
    { joint, connector, origin: "connector", landings: landConductors(joint, connector) },
    nfpa70Edition2023,
  );
}

describe("neutrals in a panelboard (NFPA 70-2023 408.41)", () => {
  // published: each neutral in its own terminal; hand: 1 <= 1, 2 > 1
  test("one neutral in a hole passes, two in a hole do not, although it is marked for two", () => {
    expect(check({ count: 1 }).outcome).toBe("pass");
    expect(check({ count: 2 })).toMatchObject({
      outcome: "fail",
      required: "1 neutral in a terminal",
      offered: "2 conductors",
    });
  });
  test("with a hole for each they do not share", () => {
    expect(check({ count: 2, holes: 2 }).outcome).toBe("pass");
    expect(check({ count: 3, holes: 2 }).outcome).toBe("fail");
  });
  test("only neutrals that end in a panelboard are judged", () => {
    expect(check({ count: 2, joint: { role: "equipment-ground" } }).outcome).toBe("not-applicable");
    expect(check({ count: 5, joint: { function: "splice" } }).outcome).toBe("not-applicable");
    expect(check({ count: 2, kind: "switchboard" }).outcome).toBe("not-applicable");
  });
  test("the kind of equipment is asked for only where a bar's hole would hold two", () => {
    expect(check({ count: 2, kind: undefined })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/equipment/kind" }],
    });
    expect(check({ count: 1, kind: undefined }).outcome).toBe("not-applicable");
    expect(check({ count: 2, kind: undefined, connector: { family: "split-bolt" } }).outcome).toBe("not-applicable");
  });
  // published: excepted are parallel conductors of one circuit in a terminal identified for them
  test.each([
    ["two sets, marked for two", 2, 2, "pass"],
    ["two sets, marked for one", 2, 1, "fail"],
    ["two sets, unmarked", 2, "unmarked", "fail"],
    ["two sets, not known", 2, undefined, "missing"],
    ["one set, marked for two", 1, 2, "fail"],
  ] as const)("two neutrals of %s: %s", (_case, sets, conductorsMax, outcome) => {
    expect(check({ count: 2, sets, conductorsMax }).outcome).toBe(outcome);
  });
  test("more than the circuit has in parallel are refused", () => {
    expect(check({ count: 3, sets: 2, conductorsMax: 3 }).outcome).toBe("fail");
  });
  test("a joint without equipment is asked for its kind like one whose equipment has none", () => {
    const { equipment: _equipment, ...apart } = sampleJoint({
      role: "neutral",
      conductors: [sampleConductor({ count: 2, size: "12 AWG" })],
    });
    const hole = sampleOpening({ conductorsMax: 2 });
    for (const family of ["neutral-bar", "ground-bar", "equipment-terminal"] as const) {
      const connector = sampleConnector({ family, openings: [hole] });
      expect(
        neutralTerminal.check(
          { joint: apart, connector, origin: "connector", landings: landConductors(apart, connector) },
          nfpa70Edition2023,
        ),
      ).toMatchObject({ outcome: "missing", missing: [{ path: "joint/equipment/kind" }], offered: "2 conductors" });
    }
  });
  test("nothing is said where no conductor lies in an opening", () => {
    expect(check({ count: 1, connector: { openings: [] } })).toMatchObject({
      rule: "neutral-terminal",
      outcome: "not-applicable",
    });
  });
  // published: the excepted ones need a terminal identified for them
  test("conductors in parallel: the working shows the sets, the mark and what an unmarked terminal takes", () => {
    expect(check({ count: 3, sets: 2, conductorsMax: 3 })).toMatchObject({
      outcome: "fail",
      required: "conductors in parallel of one circuit, in a terminal identified for them",
      offered: "3 conductors",
      fix: "a terminal for each neutral",
      sentence: expect.stringContaining("more than the circuit has in parallel") as string,
    });
    const unmarked = check({ count: 2, sets: 2, conductorsMax: "unmarked" });
    expect(unmarked).toMatchObject({
      outcome: "fail",
      sentence: expect.stringContaining("it is not identified for so many") as string,
    });
    if (!("steps" in unmarked)) throw new Error(unmarked.because);
    const mark = unmarked.steps.find(({ label }) => label === "conductors the opening is marked for");
    expect(unmarked.steps.find(({ kind }) => kind === "assumed")).toMatchObject({
      value: 1,
      uses: [mark?.id],
      cite: { locator: "110.14(A)" },
    });
    expect(unmarked.steps.flatMap((step) => (step.kind === "given" ? [step.origin] : []))).toEqual([
      "joint/role",
      "joint/equipment/kind",
      "joint/conductors/0/count",
      "joint/circuit/sets",
      "connector/openings/0/conductorsMax",
    ]);
    expect(check({ count: 2, sets: 2, conductorsMax: undefined })).toMatchObject({
      missing: [{ path: "connector/openings/0/conductorsMax" }],
    });
    expect(check({ count: 2, sets: 2, conductorsMax: 2 })).toMatchObject({
      outcome: "pass",
      sentence: "The terminal is identified for the 2 conductors in parallel of one circuit.",
    });
  });
});
