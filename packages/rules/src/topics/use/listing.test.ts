import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import type { Connector } from "../../core/connector.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { listing } from "./listing.js";

function check(
  standards: readonly string[],
  conductors: readonly Partial<ConductorGroup>[],
  part: Partial<Connector> = {},
) {
  const connector = sampleConnector({
    mounting: { kind: "free" },
    listings: standards.map((standard) => ({ standard })),
    ...part,
  });
  const joint = sampleJoint({ function: "splice", conductors: conductors.map(sampleConductor) });
  return listing.check(sampleSubject(joint, connector), nfpa70Edition2023);
}

const SPLICING = ["UL 486C"];

describe("a listing is stated (NFPA 70-2023 110.2, 110.3(B))", () => {
  test("a connector with a listing passes, whatever it is, and says which", () => {
    expect(check(["UL 486A-486B", "UL 467"], [{ size: "500 kcmil" }])).toMatchObject({
      outcome: "pass",
      offered: "UL 486A-486B and UL 467",
      conditions: [],
    });
  });
  test("a connector without one is asked about by name", () => {
    expect(check([], [{}])).toMatchObject({
      outcome: "missing",
      cite: { locator: "110.2" },
      missing: [{ path: "connector/listings" }],
    });
  });
  test("a terminal that belongs to its equipment is asked about at its own path", () => {
    const subject = sampleSubject(sampleJoint(), sampleConnector({ listings: [] }));
    expect(listing.check({ ...subject, origin: "joint/equipment/terminal" }, nfpa70Edition2023)).toMatchObject({
      missing: [{ path: "joint/equipment/terminal/listings" }],
    });
  });
  test("a weld without one is allowed by name and not asked about", () => {
    expect(check([], [{}], { construction: "weld" }).outcome).toBe("not-applicable");
  });
});

describe("the scope of splicing connectors (UL 486C)", () => {
  // published: UL 486C, scope: 6 AWG or smaller; aluminum solid 12 and 10 AWG, stranded 12 to 6 AWG
  test.each([
    ["copper", "18 AWG", "solid", "pass"],
    ["copper", "8 AWG", "class-B", "pass"],
    ["copper", "6 AWG", "class-B", "pass"],
    ["copper", "6 AWG", "solid", "pass"],
    ["copper", "5 AWG", "class-B", "fail"],
    ["copper", "4 AWG", "class-B", "fail"],
    ["copper", "10 mm2", "iec-class-2", "pass"],
    ["copper", "16 mm2", "iec-class-2", "fail"],
    ["copper", "4 AWG", "unknown", "fail"],
    ["aluminum", "14 AWG", "solid", "fail"],
    ["aluminum", "12 AWG", "solid", "pass"],
    ["aluminum", "10 AWG", "solid", "pass"],
    ["aluminum", "8 AWG", "solid", "fail"],
    ["aluminum", "6 mm2", "iec-class-1", "fail"],
    ["aluminum", "4 mm2", "iec-class-1", "pass"],
    ["aluminum", "8 AWG", "class-B", "pass"],
    ["aluminum", "6 AWG", "compact", "pass"],
    ["aluminum", "4 AWG", "compact", "fail"],
    ["aluminum", "10 AWG", "unknown", "pass"],
    ["aluminum", "8 AWG", "unknown", "missing"],
    ["copper-clad-aluminum", "8 AWG", "solid", "fail"],
    ["copper-clad-aluminum", "14 AWG", "class-B", "fail"],
    // published: the scope prints 13.3 mm2 beside 6 AWG, 5.3 mm2 beside 10 AWG and 3.3 mm2 beside 12 AWG
    ["copper", "13.29 mm2", "iec-class-2", "pass"],
    ["copper", "13.3 mm2", "iec-class-2", "pass"],
    ["copper", "13.31 mm2", "iec-class-2", "fail"],
    ["aluminum", "3.29 mm2", "iec-class-1", "fail"],
    ["aluminum", "3.3 mm2", "iec-class-1", "pass"],
    ["aluminum", "3.31 mm2", "iec-class-1", "pass"],
    ["aluminum", "5.29 mm2", "iec-class-1", "pass"],
    ["aluminum", "5.3 mm2", "iec-class-1", "pass"],
    ["aluminum", "5.31 mm2", "iec-class-1", "fail"],
    ["aluminum", "5.31 mm2", "iec-class-2", "pass"],
    ["aluminum", "13.31 mm2", "iec-class-2", "fail"],
  ] as const)("%s %s %s: %s", (metal, size, stranding, outcome) => {
    expect(check(SPLICING, [{ metal, size, stranding }]).outcome).toBe(outcome);
  });
  test("another listing beside it may reach further", () => {
    expect(check(["UL 486C", "UL 486A-486B"], [{ size: "4 AWG" }]).outcome).toBe("pass");
  });
  test("one conductor outside refuses the joint, also beside one that is not known", () => {
    const unknown = { metal: "aluminum", size: "8 AWG", stranding: "unknown" } as const;
    expect(check(SPLICING, [unknown, { size: "4 AWG" }])).toMatchObject({
      outcome: "fail",
      fix: expect.any(String) as string,
    });
    expect(check(SPLICING, [{ size: "12 AWG" }, unknown])).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/conductors/1/stranding" }],
    });
  });
  test("of several that are not known the first is asked about, with its size", () => {
    const unknown = (size: string) => ({ metal: "aluminum", size, stranding: "unknown" }) as const;
    const finding = check(SPLICING, [unknown("8 AWG"), unknown("6 AWG")]);
    expect(finding).toMatchObject({ outcome: "missing", missing: [{ path: "joint/conductors/0/stranding" }] });
    expect("steps" in finding && finding.steps[1]).toMatchObject({ value: "8 AWG", origin: "joint/conductors/0/size" });
  });
  // hand: a metric size is compared in mm2, an AWG size in kcmil, as the scope prints both
  test.each([
    [{ size: "16 mm2" }, 13.3, "mm2", "<="],
    [{ size: "4 AWG" }, 26.24, "kcmil", "<="],
    [{ metal: "aluminum", size: "2.5 mm2", stranding: "iec-class-1" }, 3.3, "mm2", ">="],
    [{ metal: "aluminum", size: "14 AWG" }, 6.53, "kcmil", ">="],
    [{ metal: "aluminum", size: "6 mm2", stranding: "iec-class-1" }, 5.3, "mm2", "<="],
    [{ metal: "aluminum", size: "8 AWG", stranding: "solid" }, 10.38, "kcmil", "<="],
  ] as const)("%o is refused against %d %s", (conductor, value, unit, relation) => {
    const finding = check(SPLICING, [conductor]);
    if (!("steps" in finding)) throw new Error(finding.because);
    expect(finding.steps.find(({ kind }) => kind === "stated")).toMatchObject({ value, unit });
    expect(finding.steps.find(({ kind }) => kind === "compared")).toMatchObject({ value: false, relation });
  });
  test("the sentence gives the limit and the conductor", () => {
    expect(check(SPLICING, [{ size: "4 AWG" }])).toMatchObject({
      sentence:
        "The connector is listed to UL 486C only, which covers conductors up to 6 AWG; the conductor is 4 AWG class B copper.",
    });
    expect(check(SPLICING, [{ metal: "aluminum", size: "8 AWG", stranding: "solid" }])).toMatchObject({
      sentence: expect.stringContaining("covers solid aluminum up to 10 AWG") as string,
    });
    expect(check(SPLICING, [{ metal: "aluminum", size: "14 AWG" }])).toMatchObject({
      sentence: expect.stringContaining("covers no aluminum below 12 AWG") as string,
    });
  });
});
