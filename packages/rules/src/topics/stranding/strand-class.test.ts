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

describe("strands that were counted (NFPA 70-2023 Chapter 9 Table 10, ASTM classes)", () => {
  interface Counted {
    readonly size?: string;
    readonly strands: number;
    readonly stranding?: Stranding;
    readonly metal?: "copper" | "aluminum";
    readonly ranges: readonly SizeRange[];
  }
  const listed = (...strandings: readonly Stranding[]): readonly SizeRange[] => [
    { from: "14 AWG", to: "500 kcmil", strandings },
  ];
  const ALL_B: readonly Stranding[] = ["class-B", "class-C", "compressed", "compact"];
  function found({ ranges, size = "2/0 AWG", stranding = "unknown", ...rest }: Counted) {
    const joint = sampleJoint({ conductors: [sampleConductor({ size, stranding, ...rest })] });
    return strandClass.check(
      sampleSubject(joint, sampleConnector({ openings: [sampleOpening({ ranges })] })),
      nfpa70Edition2023,
    );
  }
  function told(counted: Counted): string {
    const finding = found(counted);
    return finding.outcome === "missing" ? `missing ${finding.missing[0]?.path ?? ""}` : finding.outcome;
  }

  // published: Table 10, 2/0 AWG: class B 19, class C 37; hand: 133100 / 1330 = 100.1 cmil, a wire of 30 AWG: class K
  test.each([
    [19, ALL_B, "pass"],
    [19, ["class-B", "class-C"], "missing joint/conductors/0/stranding"],
    [19, ["class-K"], "fail"],
    [37, ["class-B", "class-C"], "pass"],
    [37, ["class-B"], "fail"],
    [1330, ["class-B", "class-C", "class-K"], "pass"],
    [1330, ["class-B", "class-C"], "fail"],
    [1330, ["iec-class-5"], "missing joint/conductors/0/stranding"],
    [50, ALL_B, "missing joint/conductors/0/stranding"],
    [1, ["solid"], "pass"],
    [1, ["class-B"], "fail"],
  ] as const)("2/0 AWG of %d strands, listed for %j: %s", (strands, forms, expected) => {
    expect(told({ strands, ranges: listed(...forms) })).toBe(expected);
  });
  // hand: 2/0 AWG 133100 cmil; 100.5 x 0.96 = 96.48 and x 1.04 = 104.52: 1274 to 1379 strands are class K
  test.each([
    [1273, "missing joint/conductors/0/stranding"],
    [1274, "pass"],
    [1379, "pass"],
    [1380, "missing joint/conductors/0/stranding"],
  ] as const)("2/0 AWG of %d strands, listed for class K: %s", (strands, expected) => {
    expect(told({ strands, ranges: listed("class-K") })).toBe(expected);
  });
  // hand: 14 AWG 4110 / 26 = 158.1 cmil, a wire of 28 AWG: class J, which no listing names
  test("a class that no listing names is refused by every list of classes", () => {
    expect(told({ size: "14 AWG", strands: 26, ranges: listed("class-B", "class-K", "class-M") })).toBe("fail");
    expect(
      told({ size: "14 AWG", strands: 26, ranges: [{ from: "14 AWG", to: "10 AWG", strandings: "unmarked" }] }),
    ).toBe("fail");
  });
  test("without strand marks the base case holds: finer is refused, the count of class B is asked about", () => {
    const unmarked: readonly SizeRange[] = [{ from: "6 AWG", to: "250 kcmil", strandings: "unmarked" }];
    expect(told({ strands: 37, ranges: unmarked })).toBe("pass");
    expect(told({ strands: 19, ranges: unmarked })).toBe("missing joint/conductors/0/stranding");
    expect(told({ strands: 1330, ranges: unmarked })).toBe("fail");
    expect(told({ strands: 37, ranges: [] })).toBe("missing connector/openings/0/ranges");
  });
  // hand: 3 AWG of 133 is class H by its count and class I by its wire (52620 / 133 = 395.6 cmil, 24 AWG)
  test("a count of two classes is asked about only where it decides", () => {
    const two = { size: "3 AWG", strands: 133 } as const;
    expect(told({ ...two, ranges: listed("class-H", "class-I") })).toBe("pass");
    expect(told({ ...two, ranges: listed("class-B") })).toBe("fail");
    expect(told({ ...two, ranges: listed("class-H") })).toBe("missing joint/conductors/0/stranding");
  });
  test("a form is listed at the size only where its own range takes it", () => {
    const ranges: readonly SizeRange[] = [
      { from: "6 AWG", to: "2 AWG", strandings: ["class-K"] },
      { from: "6 AWG", to: "250 kcmil", strandings: ALL_B },
    ];
    expect(told({ strands: 1330, ranges })).toBe("fail");
    expect(told({ size: "2 AWG", strands: 665, ranges })).toBe("pass");
  });
  test("a count beside a stated class is compared with it, never ignored", () => {
    expect(told({ strands: 19, stranding: "class-B", ranges: listed("class-B") })).toBe("pass");
    expect(told({ strands: 19, stranding: "compact", ranges: listed("compact") })).toBe("pass");
    expect(told({ strands: 19, stranding: "compact", ranges: listed("class-B") })).toBe("fail");
    expect(told({ strands: 1330, stranding: "class-B", ranges: listed("class-B") })).toBe(
      "missing joint/conductors/0/strands",
    );
    expect(told({ strands: 1330, stranding: "class-B", ranges: listed("class-B", "class-K") })).toBe(
      "missing joint/conductors/0/strands",
    );
    expect(told({ strands: 1330, stranding: "class-M", ranges: listed("class-B") })).toBe("fail");
    expect(told({ strands: 1, stranding: "class-B", ranges: listed("class-B") })).toBe(
      "missing joint/conductors/0/strands",
    );
    expect(told({ strands: 50, stranding: "class-B", ranges: listed("class-B") })).toBe(
      "missing joint/conductors/0/strands",
    );
    const finding = found({ strands: 1330, stranding: "class-B", ranges: listed("class-B") });
    expect("sentence" in finding && finding.sentence).toBe(
      "2/0 AWG of 1330 strands is class K, and class B is stated: one of the two is wrong.",
    );
  });
  // published: Table 10, aluminum 4/0 AWG of 19: class B
  test("aluminum has class B only", () => {
    expect(told({ size: "4/0 AWG", metal: "aluminum", strands: 19, ranges: listed(...ALL_B) })).toBe("pass");
    expect(told({ size: "4/0 AWG", metal: "aluminum", strands: 37, ranges: listed(...ALL_B) })).toBe(
      "missing joint/conductors/0/stranding",
    );
  });
  test("metric classes give least counts only: one strand is solid, several leave the class open", () => {
    const metric = (...strandings: readonly Stranding[]): readonly SizeRange[] => [
      { from: "16 mm2", to: "70 mm2", strandings },
    ];
    expect(told({ size: "35 mm2", strands: 7, ranges: metric("iec-class-2", "iec-class-5", "iec-class-6") })).toBe(
      "pass",
    );
    expect(told({ size: "35 mm2", strands: 7, ranges: metric("iec-class-2") })).toBe(
      "missing joint/conductors/0/stranding",
    );
    expect(told({ size: "35 mm2", strands: 7, ranges: metric("iec-class-1") })).toBe("fail");
    expect(told({ size: "35 mm2", strands: 7, stranding: "iec-class-2", ranges: metric("iec-class-2") })).toBe("pass");
    expect(told({ size: "35 mm2", strands: 1, stranding: "iec-class-2", ranges: metric("iec-class-2") })).toBe(
      "missing joint/conductors/0/strands",
    );
  });
  test("one that would fit another opening is asked about, not refused", () => {
    const openings = [
      sampleOpening({ id: "line", ranges: listed("class-B") }),
      sampleOpening({ id: "motor", ranges: listed("class-B", "class-K") }),
    ];
    const joint = sampleJoint({
      conductors: [sampleConductor({ size: "2/0 AWG", stranding: "unknown", strands: 1330 })],
    });
    expect(strandClass.check(sampleSubject(joint, sampleConnector({ openings })), nfpa70Edition2023)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/conductors/0/stranding" }],
    });
  });
  test("the derivation shows the count, the cell and the forms it leaves", () => {
    const finding = found({ strands: 19, ranges: listed(...ALL_B) });
    expect("steps" in finding && finding.steps.map(({ kind }) => kind)).toContain("read");
    expect(
      "steps" in finding && finding.steps.find(({ label }) => label === "strand forms of that count"),
    ).toMatchObject({
      value: ["class-B", "compressed", "compact"],
    });
    expect(finding).toMatchObject({ required: "connector listed for class B, compressed or compact" });
  });
});
