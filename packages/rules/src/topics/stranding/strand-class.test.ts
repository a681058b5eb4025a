import { describe, expect, test } from "vitest";
import type { Stranding } from "../../core/conductor.js";
import type { SizeRange } from "../../core/connector.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import {
  sampleConductor,
  sampleConnector,
  sampleJoint,
  sampleOpening,
  sampleSubject,
} from "../../samples/sample-joint.js";
import { strandClass } from "./strand-class.js";

function check(stranding: Stranding, strandings: SizeRange["strandings"] | undefined) {
  const ranges: readonly SizeRange[] = strandings === undefined ? [] : [{ from: "6 AWG", to: "250 kcmil", strandings }];
  const joint = sampleJoint({ conductors: [sampleConductor({ stranding })] });
  return strandClass.check(
    sampleSubject(joint, sampleConnector({ openings: [sampleOpening({ ranges })] })),
    nfpa70Edition2023,
  );
}

describe("strand form (NFPA 70-2023 110.14)", () => {
  // published: a connector for strands finer than class B and C is identified for them
  test.each([
    ["class-B", "pass"],
    ["class-C", "pass"],
    ["compact", "pass"],
    ["solid", "pass"],
    ["compressed", "fail"],
    ["class-D", "fail"],
    ["class-K", "fail"],
    ["iec-class-5", "missing"],
    ["iec-class-2", "missing"],
    ["unknown", "missing"],
  ] as const)("listed for solid, B, C and compact; %s: %s", (stranding, outcome) => {
    expect(check(stranding, ["solid", "class-B", "class-C", "compact"]).outcome).toBe(outcome);
  });
  // published: class B and C are the base case; the text says nothing of the others
  test.each([
    ["class-B", "pass"],
    ["class-C", "pass"],
    ["class-D", "fail"],
    ["class-M", "fail"],
    ["solid", "missing"],
    ["compact", "missing"],
    ["compressed", "missing"],
    ["iec-class-1", "missing"],
    ["unknown", "missing"],
  ] as const)("without strand marks; %s: %s", (stranding, outcome) => {
    expect(check(stranding, "unmarked").outcome).toBe(outcome);
  });
  test("the base case is written down as assumed, with its clause", () => {
    const finding = check("class-C", "unmarked");
    expect("steps" in finding && finding.steps.find(({ kind }) => kind === "assumed")).toMatchObject({
      cite: { locator: "110.14" },
    });
  });
  test("a class that is named passes", () => {
    expect(check("class-K", ["class-B", "class-C", "class-K"])).toMatchObject({
      outcome: "pass",
      cite: { locator: "110.14" },
    });
    expect(check("iec-class-5", ["iec-class-5"]).outcome).toBe("pass");
  });
  test("IEC and ASTM lists say nothing of each other; a list of the same kind does", () => {
    expect(check("class-B", ["iec-class-2"]).outcome).toBe("missing");
    expect(check("iec-class-6", ["iec-class-5"]).outcome).toBe("fail");
  });
  test("the refusal says what is asked for and what is there", () => {
    expect(check("class-K", ["solid", "class-B", "class-C"])).toMatchObject({
      outcome: "fail",
      required: "connector listed for class K",
      offered: "solid, class B and class C",
      cite: { locator: "110.14" },
    });
  });
  test("stranding that is not known is asked for at the conductor, a listing at the connector", () => {
    expect(check("unknown", ["class-B"])).toMatchObject({ missing: [{ path: "joint/conductors/0/stranding" }] });
    expect(check("iec-class-5", ["class-B"])).toMatchObject({ missing: [{ path: "connector/openings/0/ranges" }] });
    expect(check("class-B", undefined)).toMatchObject({ missing: [{ path: "connector/openings/0/ranges" }] });
  });
  test("every conductor is judged in its own opening", () => {
    const range = (strandings: readonly Stranding[]): readonly SizeRange[] => [
      { from: "6 AWG", to: "250 kcmil", strandings },
    ];
    const connector = sampleConnector({
      openings: [
        sampleOpening({ id: "line", ranges: range(["class-B"]) }),
        sampleOpening({ id: "motor", ranges: range(["class-B", "class-I"]) }),
      ],
    });
    const judge = (first: Stranding, second: Stranding) => {
      const joint = sampleJoint({
        conductors: [sampleConductor({ stranding: first }), sampleConductor({ stranding: second })],
      });
      return strandClass.check(sampleSubject(joint, connector), nfpa70Edition2023).outcome;
    };
    expect(judge("class-B", "class-I")).toBe("pass");
    expect(judge("class-I", "class-B")).toBe("fail");
  });
  describe("a connector whose listing names other strand forms for other sizes", () => {
    const ranges: readonly SizeRange[] = [
      { from: "14 AWG", to: "10 AWG", strandings: ["solid", "class-B"] },
      { from: "8 AWG", to: "1/0 AWG", strandings: ["class-B", "class-C"] },
    ];
    const judge = (size: string, stranding: Stranding, listed = ranges) => {
      const joint = sampleJoint({ conductors: [sampleConductor({ size, stranding })] });
      const connector = sampleConnector({ openings: [sampleOpening({ ranges: listed })] });
      const finding = strandClass.check(sampleSubject(joint, connector), nfpa70Edition2023);
      if (!("steps" in finding)) throw new Error(finding.because);
      return finding;
    };
    // hand: the first range is for 14 to 10 AWG, the second for 8 to 1/0 AWG
    test.each([
      ["12 AWG", "class-B", "solid and class B"],
      ["10 AWG", "solid", "solid and class B"],
      ["8 AWG", "class-B", "class B and class C"],
      ["4 AWG", "class-C", "class B and class C"],
    ] as const)("%s %s is one of the forms listed for its size: %s", (size, stranding, offered) => {
      expect(judge(size, stranding)).toMatchObject({ outcome: "pass", offered });
    });
    test("a form listed for other sizes only is named with the rest; its size is for the wire range to refuse", () => {
      expect(judge("4 AWG", "solid")).toMatchObject({ outcome: "pass", offered: "solid, class B and class C" });
    });
    test("a form that none of them names is refused against all of them", () => {
      expect(judge("4 AWG", "class-K")).toMatchObject({ outcome: "fail", offered: "solid, class B and class C" });
      expect(judge("4 AWG", "unknown")).toMatchObject({ outcome: "missing", offered: "solid, class B and class C" });
    });
    // published: the base case is that of a connector without strand marks, not of a range that has them
    test("the base case is assumed only of the range without strand marks", () => {
      const [small] = ranges;
      const mixed: readonly SizeRange[] = [
        ...(small === undefined ? [] : [small]),
        { from: "8 AWG", to: "1/0 AWG", strandings: "unmarked" },
      ];
      const assumed = (size: string, stranding: Stranding) =>
        judge(size, stranding, mixed).steps.filter(({ kind }) => kind === "assumed").length;
      expect(assumed("12 AWG", "solid")).toBe(0);
      expect(assumed("4 AWG", "class-C")).toBe(1);
      expect(assumed("4 AWG", "class-K")).toBe(1);
    });
  });

  test("where nothing is known of the listing, nothing is said to be listed", () => {
    for (const stranding of ["class-B", "unknown"] as const) {
      const finding = check(stranding, undefined);
      expect(finding).toMatchObject({ outcome: "missing", offered: "not known" });
      expect("steps" in finding && finding.steps.map(({ label }) => label)).not.toContain("strand forms listed");
    }
    expect(check("class-B", undefined)).toMatchObject({
      sentence: "The strand forms that the connector is listed for are not known.",
    });
  });
  test("nothing is asked where no conductor lies in an opening", () => {
    expect(strandClass.check(sampleSubject(sampleJoint({ conductors: [] })), nfpa70Edition2023)).toMatchObject({
      rule: "strand-class",
      outcome: "not-applicable",
    });
  });
});
