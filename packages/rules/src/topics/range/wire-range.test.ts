import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import type { Opening, SizeRange } from "../../core/connector.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import {
  sampleConductor,
  sampleConnector,
  sampleJoint,
  sampleOpening,
  sampleSubject,
} from "../../samples/sample-joint.js";
import { wireRange } from "./wire-range.js";

const PLAIN = ["solid", "class-B", "class-C", "compact"] as const;

function check(conductor: Partial<ConductorGroup>, ranges: readonly SizeRange[]) {
  const joint = sampleJoint({ conductors: [sampleConductor(conductor)] });
  return wireRange.check(
    sampleSubject(joint, sampleConnector({ openings: [sampleOpening({ ranges })] })),
    nfpa70Edition2023,
  );
}

function plain(from: string, to: string): SizeRange {
  return { from, to, strandings: PLAIN };
}

describe("wire range (NFPA 70-2023 110.3(B))", () => {
  // hand: both ends are included; one trade size outside is not. 1 AWG < 1/0 AWG, 4/0 AWG < 250 kcmil by area
  test.each([
    ["6 AWG", "8 AWG", "fail"],
    ["6 AWG", "6 AWG", "pass"],
    ["6 AWG", "5 AWG", "pass"],
    ["6 AWG", "3/0 AWG", "pass"],
    ["6 AWG", "4/0 AWG", "fail"],
    ["1/0 AWG", "1 AWG", "fail"],
    ["1/0 AWG", "2/0 AWG", "pass"],
  ] as const)("a range of %s to 3/0 AWG, %s: %s", (from, size, outcome) => {
    expect(check({ size }, [plain(from, "3/0 AWG")]).outcome).toBe(outcome);
  });
  // hand: 212 kcmil is just above 4/0 AWG (211.6 kcmil)
  test.each([
    ["4/0 AWG", "pass"],
    ["212 kcmil", "fail"],
    ["250 kcmil", "fail"],
  ] as const)("a range that ends at 4/0 AWG, %s: %s", (size, outcome) => {
    expect(check({ size }, [plain("6 AWG", "4/0 AWG")]).outcome).toBe(outcome);
  });
  test("the sentence names the bound that was passed", () => {
    const above = check({ size: "4/0 AWG", metal: "aluminum", stranding: "compact" }, [plain("6 AWG", "3/0 AWG")]);
    expect(above).toMatchObject({
      outcome: "fail",
      sentence: "The listed range for compact conductors stops at 3/0 AWG; 4/0 AWG compact aluminum is larger.",
      required: "4/0 AWG inside the listed range",
      offered: "6 AWG to 3/0 AWG",
    });
    expect(check({ size: "8 AWG" }, [plain("6 AWG", "3/0 AWG")])).toMatchObject({
      sentence: "The listed range for class B conductors begins at 6 AWG; 8 AWG class B copper is smaller.",
    });
  });
  // hand: compact 4/0 measures about as much as concentric 3/0, which must not matter
  test("a compact conductor is held to the range that names compact", () => {
    const ranges: readonly SizeRange[] = [
      { from: "6 AWG", to: "4/0 AWG", strandings: ["class-B"] },
      { from: "6 AWG", to: "3/0 AWG", strandings: ["compact"] },
    ];
    expect(check({ size: "4/0 AWG" }, ranges).outcome).toBe("pass");
    expect(check({ size: "4/0 AWG", stranding: "compact" }, ranges)).toMatchObject({
      outcome: "fail",
      fix: "a connector or lug kit whose range takes 4/0 AWG, or a pin adapter or splicer-reducer down to 3/0 AWG or less",
    });
    expect(check({ size: "3/0 AWG", stranding: "compact" }, ranges).outcome).toBe("pass");
  });
  test("between two ranges a size is in neither", () => {
    const ranges = [plain("14 AWG", "10 AWG"), plain("6 AWG", "2 AWG")];
    expect(check({ size: "8 AWG" }, ranges).outcome).toBe("fail");
    expect(check({ size: "10 AWG" }, ranges).outcome).toBe("pass");
    expect(check({ size: "6 AWG" }, ranges).outcome).toBe("pass");
  });
  test("where no range names the strand form its own rule decides, unless the size is outside all", () => {
    expect(check({ size: "1/0 AWG", stranding: "class-K" }, [plain("6 AWG", "3/0 AWG")]).outcome).toBe(
      "not-applicable",
    );
    expect(check({ size: "4/0 AWG", stranding: "class-K" }, [plain("6 AWG", "3/0 AWG")]).outcome).toBe("fail");
    expect(check({ size: "1/0 AWG", stranding: "unknown" }, [plain("6 AWG", "3/0 AWG")]).outcome).toBe(
      "not-applicable",
    );
  });
  test("metric and AWG are never converted: the listing is asked for", () => {
    expect(check({ size: "35 mm2", stranding: "iec-class-5" }, [plain("6 AWG", "2/0 AWG")])).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/openings/0/ranges" }],
      required: "a listing that names 35 mm2",
    });
    expect(check({ size: "2 AWG" }, [plain("16 mm2", "50 mm2")]).outcome).toBe("missing");
  });
  // hand: mm2 in mm2, ends included
  test.each([
    ["16 mm2", "pass"],
    ["35 mm2", "pass"],
    ["50 mm2", "fail"],
    ["10 mm2", "fail"],
  ] as const)("a metric range of 16 to 35 mm2, %s: %s", (size, outcome) => {
    expect(
      check({ size, stranding: "iec-class-5" }, [{ from: "16 mm2", to: "35 mm2", strandings: ["iec-class-5"] }])
        .outcome,
    ).toBe(outcome);
  });
  test("an opening without ranges, or a connector without openings, is asked about", () => {
    expect(check({}, [])).toMatchObject({ outcome: "missing", missing: [{ path: "connector/openings/0/ranges" }] });
    const bare = sampleSubject(sampleJoint(), sampleConnector({ openings: [] }));
    expect(wireRange.check(bare, nfpa70Edition2023)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/openings" }],
    });
  });
  // published: 110.14(A), 10 AWG or smaller under a binding screw
  test.each([
    ["12 AWG", "pass"],
    ["10 AWG", "pass"],
    ["8 AWG", "fail"],
    ["4 mm2", "missing"],
  ] as const)("under a binding screw, %s: %s", (size, outcome) => {
    const ranges = [plain("14 AWG", "6 AWG"), { ...plain("2.5 mm2", "6 mm2"), strandings: ["class-B"] as const }];
    const connector = sampleConnector({ construction: "binding-screw", openings: [sampleOpening({ ranges })] });
    const joint = sampleJoint({ conductors: [sampleConductor({ size })] });
    expect(wireRange.check(sampleSubject(joint, connector), nfpa70Edition2023).outcome).toBe(outcome);
  });
  test("every conductor has to be in range, and a refusal goes before a question", () => {
    const openings: readonly Opening[] = [
      sampleOpening({ id: "a", ranges: [plain("6 AWG", "3/0 AWG")] }),
      sampleOpening({ id: "b", ranges: [plain("6 AWG", "3/0 AWG")] }),
    ];
    const judge = (sizes: readonly string[]) =>
      wireRange.check(
        sampleSubject(
          sampleJoint({ conductors: sizes.map((size) => sampleConductor({ size })) }),
          sampleConnector({ openings }),
        ),
        nfpa70Edition2023,
      ).outcome;
    expect(judge(["6 AWG", "3/0 AWG"])).toBe("pass");
    expect(judge(["6 AWG", "4/0 AWG"])).toBe("fail");
    expect(judge(["35 mm2", "4/0 AWG"])).toBe("fail");
    expect(judge(["35 mm2", "3/0 AWG"])).toBe("missing");
  });
  test("a joint without conductors is asked for them, one without openings for the openings", () => {
    const none = sampleSubject(sampleJoint({ conductors: [] }));
    expect(wireRange.check(none, nfpa70Edition2023)).toMatchObject({
      rule: "wire-range",
      missing: [{ path: "joint/conductors", because: "The joint names no conductor." }],
      cite: { locator: "110.3(B)" },
    });
    const bare = sampleSubject(sampleJoint(), sampleConnector({ openings: [] }));
    expect(wireRange.check(bare, nfpa70Edition2023)).toMatchObject({
      missing: [{ because: "The openings of the connector are not known." }],
    });
  });
  // hand: of ranges that all refuse, the one whose end is nearest by area is named
  test.each([
    ["8 AWG", [plain("14 AWG", "10 AWG"), plain("6 AWG", "2 AWG")], "stops at 10 AWG", 0],
    ["7.5 mm2", [plain("2.5 mm2", "4 mm2"), plain("10 mm2", "16 mm2")], "begins at 10 mm2", 1],
    ["5 AWG", [plain("14 AWG", "10 AWG"), plain("4 AWG", "2 AWG")], "begins at 4 AWG", 1],
    [
      "250 kcmil",
      [plain("14 AWG", "10 AWG"), plain("6 AWG", "4/0 AWG"), plain("4 AWG", "1/0 AWG")],
      "stops at 4/0 AWG",
      1,
    ],
    ["18 AWG", [plain("2.5 mm2", "4 mm2"), plain("14 AWG", "10 AWG"), plain("12 AWG", "6 AWG")], "begins at 14 AWG", 1],
    ["4 AWG", [plain("10 mm2", "35 mm2"), plain("14 AWG", "6 AWG")], "stops at 6 AWG", 1],
  ] as const)("%s outside %o: %s", (size, ranges, words, index) => {
    const finding = check({ size }, ranges);
    expect(finding).toMatchObject({ outcome: "fail", sentence: expect.stringContaining(words) as string });
    if (!("steps" in finding)) throw new Error(finding.because);
    expect(finding.steps.find(({ label }) => label === "listed range")).toMatchObject({
      origin: `connector/openings/0/ranges/${String(index)}`,
    });
    expect(finding.steps.at(-1)).toMatchObject({ kind: "compared", value: false });
  });
  // hand: 1/0 AWG compact: the range that names compact ends at 1 AWG, though another ends nearer
  test("a range that names the strand form is named before a nearer one that does not", () => {
    const ranges: readonly SizeRange[] = [
      { from: "6 AWG", to: "2 AWG", strandings: ["compact"] },
      { from: "6 AWG", to: "1 AWG", strandings: ["class-B"] },
    ];
    expect(check({ size: "1/0 AWG", stranding: "compact" }, ranges)).toMatchObject({
      outcome: "fail",
      sentence: expect.stringContaining("for compact conductors stops at 2 AWG") as string,
      offered: "6 AWG to 2 AWG; 6 AWG to 1 AWG",
    });
    // Where none names it, the nearest of all is named, without a strand form.
    expect(check({ size: "1/0 AWG", stranding: "class-K" }, ranges)).toMatchObject({
      sentence: expect.stringContaining("The listed range stops at 1 AWG") as string,
    });
    // A range in the other series that names it may be one for this size, which is asked about.
    expect(
      check({ size: "1/0 AWG", stranding: "compact" }, [
        { from: "6 mm2", to: "35 mm2", strandings: ["compact"] },
        { from: "6 AWG", to: "1 AWG", strandings: ["class-B"] },
      ]),
    ).toMatchObject({ outcome: "missing", missing: [{ path: "connector/openings/0/ranges" }] });
  });
  test("a passed size is compared with both ends of the range that takes it", () => {
    const finding = check({ size: "8 AWG", stranding: "compact" }, [
      { from: "14 AWG", to: "6 AWG", strandings: ["class-B"] },
      { from: "10 AWG", to: "4 AWG", strandings: ["compact"] },
    ]);
    expect(finding).toMatchObject({
      outcome: "pass",
      required: "8 AWG inside the listed range",
      offered: "10 AWG to 4 AWG",
    });
    if (!("steps" in finding)) throw new Error(finding.because);
    expect(finding.steps.find(({ label }) => label === "listed range")).toMatchObject({
      origin: "connector/openings/0/ranges/1",
    });
    // hand: Table 8, 8 AWG 16.51 kcmil, 10 AWG 10.38, 4 AWG 41.74
    expect(
      finding.steps.filter(({ kind }) => kind === "compared").map((step) => "relation" in step && step.relation),
    ).toEqual([">=", "<="]);
    expect(finding.steps.map(({ value }) => value)).toEqual(expect.arrayContaining([16.51, 10.38, 41.74]));
  });
  test("what is asked of a listing in another series names the series and the ranges", () => {
    const metric = check({ size: "35 mm2", stranding: "iec-class-5" }, [plain("6 AWG", "2/0 AWG")]);
    expect(metric).toMatchObject({
      sentence: expect.stringContaining("listed in AWG and kcmil") as string,
      offered: "6 AWG to 2/0 AWG",
    });
    expect(check({ size: "2 AWG" }, [plain("16 mm2", "50 mm2"), plain("70 mm2", "95 mm2")])).toMatchObject({
      sentence: expect.stringContaining("listed in mm2") as string,
      offered: "16 mm2 to 50 mm2; 70 mm2 to 95 mm2",
    });
    expect(check({}, [])).toMatchObject({
      sentence: 'The sizes that the opening "barrel" takes are not known.',
      offered: "not known",
      required: "a listing that names 3/0 AWG",
    });
  });
  test("of several questions the first conductor's is asked", () => {
    const openings = ["a", "b"].map((id) => sampleOpening({ id, ranges: [] }));
    const joint = sampleJoint({ conductors: [sampleConductor(), sampleConductor({ size: "1 AWG" })] });
    expect(wireRange.check(sampleSubject(joint, sampleConnector({ openings })), nfpa70Edition2023)).toMatchObject({
      missing: [{ path: "connector/openings/0/ranges" }],
    });
  });
  test("a conductor whose strand form is not listed does not hide one that fits", () => {
    const openings = ["a", "b"].map((id) => sampleOpening({ id, ranges: [plain("6 AWG", "3/0 AWG")] }));
    const joint = sampleJoint({
      conductors: [sampleConductor({ stranding: "class-K" }), sampleConductor({ size: "1 AWG" })],
    });
    expect(wireRange.check(sampleSubject(joint, sampleConnector({ openings })), nfpa70Edition2023)).toMatchObject({
      outcome: "pass",
      required: "1 AWG inside the listed range",
    });
  });
  describe("under a binding screw", () => {
    const screwed = (conductor: Partial<ConductorGroup>, ranges: readonly SizeRange[]) =>
      wireRange.check(
        sampleSubject(
          sampleJoint({ conductors: [sampleConductor(conductor)] }),
          sampleConnector({ construction: "binding-screw", openings: [sampleOpening({ ranges })] }),
        ),
        nfpa70Edition2023,
      );
    test("the refusal rests on the construction and the clause for terminals", () => {
      const finding = screwed({ size: "8 AWG" }, [plain("14 AWG", "6 AWG")]);
      expect(finding).toMatchObject({
        outcome: "fail",
        cite: { locator: "110.14(A)" },
        required: "10 AWG or smaller under a binding screw",
        offered: "8 AWG",
        sentence: "A binding screw holds 10 AWG or smaller; 8 AWG class B copper is larger.",
      });
      if (!("steps" in finding)) throw new Error(finding.because);
      expect(finding.steps.map(({ value }) => value)).toEqual(
        expect.arrayContaining(["binding-screw", "8 AWG", "10 AWG", 16.51, 10.38]),
      );
      expect(finding.steps[0]).toMatchObject({ origin: "connector/construction" });
      expect(finding.steps.find(({ kind }) => kind === "stated")).toMatchObject({ uses: [1] });
    });
    test("the range decides first; a size that no range is known for is asked about by the listing", () => {
      expect(screwed({ size: "4 AWG" }, [plain("14 AWG", "6 AWG")])).toMatchObject({
        outcome: "fail",
        offered: "14 AWG to 6 AWG",
      });
      expect(screwed({ size: "4 mm2" }, [plain("14 AWG", "6 AWG")])).toMatchObject({
        missing: [{ path: "connector/openings/0/ranges" }],
      });
      expect(screwed({ size: "4 mm2" }, [plain("2.5 mm2", "6 mm2")])).toMatchObject({
        missing: [{ path: "joint/conductors/0/size" }],
        required: "10 AWG or smaller under a binding screw",
      });
    });
    // hand: 4 mm2 measures less than 10 AWG (5.26 mm2), 6 mm2 more
    test.each(["4 mm2", "6 mm2"])("a refusal goes before the question about a conductor of %s", (metric) => {
      const ranges = [plain("14 AWG", "6 AWG"), plain("2.5 mm2", "6 mm2")];
      const joint = sampleJoint({
        conductors: [sampleConductor({ size: metric }), sampleConductor({ size: "8 AWG" })],
      });
      const openings = ["a", "b"].map((id) => sampleOpening({ id, ranges }));
      const connector = sampleConnector({ construction: "binding-screw", openings });
      expect(wireRange.check(sampleSubject(joint, connector), nfpa70Edition2023).outcome).toBe("fail");
    });
  });
});
