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
});
