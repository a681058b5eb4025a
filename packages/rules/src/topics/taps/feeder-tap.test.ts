import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import type { Circuit, Joint, Protection } from "../../core/joint.js";
import type { Length } from "../../core/quantity.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { feederTap } from "./feeder-tap.js";

type FeederTap = Extract<Protection, { readonly kind: "feeder-tap" }>;

const feet = (value: number): Length => ({ value, unit: "ft" });

/** A tap indoors from a 400 A feeder to a 40 A device, leaving its enclosure, with 75 C terminals at its ends. */
function tapped(
  size: string,
  tap: Partial<FeederTap>,
  circuit: Partial<Circuit> = {},
  change: Partial<Joint> = {},
  leaving: Partial<ConductorGroup> = {},
) {
  const protection: FeederTap = {
    kind: "feeder-tap",
    feederDeviceA: 400,
    length: feet(8),
    endDeviceA: 40,
    leavesEnclosure: true,
    physicallyProtected: true,
    outdoors: false,
    ...tap,
  };
  const joint = sampleJoint({
    function: "tap",
    conductors: [
      sampleConductor({ size: "500 kcmil", duty: "run" }),
      sampleConductor({ size, duty: "tap", ...leaving }),
    ],
    circuit: { sets: 1, loadA: 28, protection, endTerminalTemperature: { value: 75, unit: "Cel" }, ...circuit },
    equipment: { tag: "DP-3", kind: "panelboard" },
    ...change,
  });
  return feederTap.check(sampleSubject(joint, sampleConnector({ mounting: { kind: "free" } })), nfpa70Edition2023);
}

/** The same without the words on where it runs. */
function tappedSomewhere(size: string, lengthFt: number, endDeviceA: number) {
  const joint = sampleJoint({
    function: "tap",
    conductors: [sampleConductor({ size: "500 kcmil", duty: "run" }), sampleConductor({ size, duty: "tap" })],
    circuit: {
      sets: 1,
      loadA: 28,
      protection: {
        kind: "feeder-tap",
        feederDeviceA: 400,
        length: feet(lengthFt),
        endDeviceA,
        leavesEnclosure: true,
        physicallyProtected: true,
      },
      endTerminalTemperature: { value: 75, unit: "Cel" },
    },
  });
  return feederTap.check(sampleSubject(joint, sampleConnector({ mounting: { kind: "free" } })), nfpa70Edition2023);
}

describe("taps to a feeder (NFPA 70-2023 240.21(B))", () => {
  // published: Table 310.16, copper at 75 C: 8 AWG 50 A, 10 AWG 35 A, 6 AWG 65 A, 2/0 AWG 175 A, 1/0 AWG 150 A, 1 AWG 130 A
  test("8 ft in 8 AWG copper to a 40 A device is allowed, in a raceway", () => {
    expect(tapped("8 AWG", {})).toMatchObject({
      outcome: "pass",
      cite: { locator: "240.21(B)(1)" },
      required: ">= 40 A (1/10 of 400 A) and >= 40 A end device",
      offered: "50 A",
      conditions: [{ duty: "tap-protected" }],
    });
  });
  test("22 ft in 6 AWG copper is short of a third of the feeder's device", () => {
    expect(tapped("6 AWG", { length: feet(22), endDeviceA: 60 }, { loadA: 40 })).toMatchObject({
      outcome: "fail",
      cite: { locator: "240.21(B)(2)" },
      required: ">= 133.3 A (1/3 of 400 A) and >= 60 A end device",
      offered: "65 A",
      fix: "1/0 AWG copper (150 A at 75 C) or larger, or a tap of 10 ft or less",
    });
  });
  test("22 ft in 2/0 AWG copper to a 150 A device is allowed, ending in one device", () => {
    expect(tapped("2/0 AWG", { length: feet(22), endDeviceA: 150 }, { loadA: 120 })).toMatchObject({
      outcome: "pass",
      offered: "175 A",
      conditions: [{ duty: "tap-protected" }, { duty: "tap-ends-in-one-device" }],
    });
  });

  // hand: 10 x 50 A = 500 A
  test.each([
    [499, "pass"],
    [500, "pass"],
    [501, "fail"],
  ] as const)("8 AWG copper, 50 A, on a %d A feeder: %s", (feederDeviceA, outcome) => {
    expect(tapped("8 AWG", { feederDeviceA }).outcome).toBe(outcome);
  });
  test("a tap that stays in its enclosure owes no share of the feeder's device", () => {
    expect(tapped("8 AWG", { feederDeviceA: 4000, leavesEnclosure: false })).toMatchObject({
      outcome: "pass",
      required: ">= 40 A end device",
      conditions: [{ duty: "tap-within-enclosure" }],
    });
  });
  // published: (B)(1) alone is for the inside of the enclosure; a tap of (B)(2) is protected and ends in one device
  test("a longer tap that stays in its enclosure is one of 25 ft all the same", () => {
    expect(tapped("1/0 AWG", { length: feet(22), leavesEnclosure: false })).toMatchObject({
      outcome: "pass",
      cite: { locator: "240.21(B)(2)" },
      required: ">= 133.3 A (1/3 of 400 A) and >= 40 A end device",
      conditions: [{ duty: "tap-protected" }, { duty: "tap-ends-in-one-device" }],
    });
  });
  // hand: 3 x 65 A = 195 A
  test.each([
    [194, "pass"],
    [195, "pass"],
    [196, "fail"],
  ] as const)("6 AWG copper, 65 A, 22 ft from a %d A feeder: %s", (feederDeviceA, outcome) => {
    expect(tapped("6 AWG", { feederDeviceA, length: feet(22) }).outcome).toBe(outcome);
  });
  // published: 10 ft and 25 ft belong to the shorter tap; hand: 50 A reaches 400/10 but not 400/3, 150 A reaches both
  test.each([
    ["8 AWG", 9.9, "pass"],
    ["8 AWG", 10, "pass"],
    ["8 AWG", 10.1, "fail"],
    ["1/0 AWG", 24.9, "pass"],
    ["1/0 AWG", 25, "pass"],
    ["1/0 AWG", 25.1, "fail"],
  ] as const)("%s copper over %d ft: %s", (size, length, outcome) => {
    expect(tapped(size, { length: feet(length) }).outcome).toBe(outcome);
  });
  test.each([
    [{ value: 120, unit: "in" }, "pass"],
    [{ value: 120.1, unit: "in" }, "fail"],
    [{ value: 3048, unit: "mm" }, "pass"],
    [{ value: 3048.1, unit: "mm" }, "fail"],
    [{ value: 3.048, unit: "m" }, "pass"],
    [{ value: 3.0481, unit: "m" }, "fail"],
  ] as const)("10 ft is 120 in, 3048 mm and 3.048 m: %o %s", (length, outcome) => {
    expect(tapped("8 AWG", { length }).outcome).toBe(outcome);
  });
  test("over 25 ft indoors is refused and the rule for high bays named as not answered", () => {
    const finding = tapped("1/0 AWG", { length: feet(30) });
    expect(finding).toMatchObject({ outcome: "fail", required: "25 ft or less", offered: "30 ft" });
    expect(finding).toHaveProperty("sentence", expect.stringContaining("240.21(B)(4)"));
  });

  test.each([
    [49, "pass"],
    [50, "pass"],
    [51, "fail"],
  ] as const)(
    "50 A to a device of %d A at the end: %s, for the next standard rating is not for taps",
    (endDeviceA, outcome) => {
      expect(tapped("8 AWG", { endDeviceA }).outcome).toBe(outcome);
    },
  );
  test.each([
    [50, "pass"],
    [51, "fail"],
  ] as const)("50 A under a load of %d A: %s", (loadA, outcome) => {
    expect(tapped("8 AWG", {}, { loadA }).outcome).toBe(outcome);
  });
  test("a load that the tap does not carry is named, with the size that does", () => {
    expect(tapped("8 AWG", {}, { loadA: 51 })).toMatchObject({
      outcome: "fail",
      sentence: expect.stringMatching(
        /^8 AWG copper carries 50 A at 75 C .*; a tap 8 ft long needs >= 40 A .* and >= 51 A load\.$/,
      ) as string,
      required: ">= 40 A (1/10 of 400 A) and >= 40 A end device and >= 51 A load",
      offered: "50 A",
      fix: "6 AWG copper (65 A at 75 C) or larger",
    });
  });
  // published: Table 310.16, copper at 75 C: 8 AWG 50 A, 6 AWG 65 A, 2/0 AWG 175 A
  test.each([
    ["8 AWG", "6 AWG"],
    ["6 AWG", "8 AWG"],
  ] as const)("of two that leave, %s and %s, the smaller is the one that counts", (first, second) => {
    const leaving = (endDeviceA: number) =>
      tapped(
        "8 AWG",
        { endDeviceA },
        {},
        { conductors: [first, second].map((size) => sampleConductor({ size, duty: "tap" })) },
      );
    expect(leaving(50)).toMatchObject({
      outcome: "pass",
      offered: "50 A",
      sentence: expect.stringMatching(/^8 AWG copper carries 50 A at 75 C/) as string,
    });
    expect(leaving(51)).toMatchObject({ outcome: "fail", offered: "50 A" });
  });
  test("of two that leave outdoors, both go by the allowance that both of them reach", () => {
    for (const sizes of [
      ["2/0 AWG", "8 AWG"],
      ["8 AWG", "2/0 AWG"],
    ])
      expect(
        tapped(
          "8 AWG",
          { length: feet(22), outdoors: true },
          {},
          { conductors: sizes.map((size) => sampleConductor({ size, duty: "tap" })) },
        ),
      ).toMatchObject({ outcome: "pass", cite: { locator: "240.21(B)(5)" } });
  });
  test("a load that is not given is asked for, unless the tap fails anyway", () => {
    const unloaded = (endDeviceA: number) => {
      const protection: FeederTap = {
        kind: "feeder-tap",
        feederDeviceA: 400,
        length: feet(8),
        endDeviceA,
        leavesEnclosure: true,
        physicallyProtected: true,
      };
      const joint = sampleJoint({
        function: "tap",
        conductors: [sampleConductor({ size: "8 AWG", duty: "tap" })],
        circuit: { sets: 1, protection, endTerminalTemperature: { value: 75, unit: "Cel" } },
      });
      return feederTap.check(sampleSubject(joint), nfpa70Edition2023);
    };
    expect(unloaded(40)).toMatchObject({ outcome: "missing", missing: [{ path: "joint/circuit/loadA" }] });
    const refused = unloaded(60);
    expect(refused).toMatchObject({
      outcome: "fail",
      required: ">= 40 A (1/10 of 400 A) and >= 60 A end device",
      fix: "6 AWG copper (65 A at 75 C) or larger",
    });
    expect("steps" in refused && refused.steps.filter(({ label }) => label.includes("load"))).toEqual([]);
  });

  test("outdoors a tap of any length needs only its end device", () => {
    expect(tapped("8 AWG", { length: feet(300), outdoors: true })).toMatchObject({
      outcome: "pass",
      cite: { locator: "240.21(B)(5)" },
      conditions: [{ duty: "tap-protected" }, { duty: "tap-ends-in-one-device" }, { duty: "tap-outdoors" }],
    });
    expect(tapped("6 AWG", { length: feet(22), outdoors: true }).outcome).toBe("pass");
    expect(tapped("8 AWG", { feederDeviceA: 501, outdoors: true }).outcome).toBe("pass");
    expect(tapped("8 AWG", { length: feet(300), outdoors: true, endDeviceA: 51 })).toMatchObject({
      outcome: "fail",
      cite: { locator: "240.21(B)(5)" },
    });
    expect(tapped("8 AWG", { length: feet(22), outdoors: true, endDeviceA: 51 })).toMatchObject({
      outcome: "fail",
      cite: { locator: "240.21(B)(5)" },
      required: ">= 51 A end device",
    });
    // what the shorter rule allows is allowed by it, with fewer conditions
    expect(tapped("8 AWG", { outdoors: true })).toMatchObject({ outcome: "pass", cite: { locator: "240.21(B)(1)" } });
  });
  test("that it runs outdoors is a step where it is given, and none where it is not", () => {
    const ran = (finding: ReturnType<typeof tapped>) =>
      "steps" in finding &&
      finding.steps.filter((step) => step.kind === "given" && step.origin === "joint/circuit/protection/outdoors");
    const allowed = tapped("8 AWG", { length: feet(300), outdoors: true });
    expect(ran(allowed)).toEqual([expect.objectContaining({ label: "the tap runs outdoors", value: true })]);
    const [step] = ran(allowed) || [];
    expect("steps" in allowed && allowed.steps.at(-1)?.uses).toContain(step?.id);
    expect(ran(tappedSomewhere("6 AWG", 30, 70))).toEqual([]);
  });
  test("a length in another unit is converted on the worksheet", () => {
    // hand: 2400 / 304.8 = 7.874 ft; 2.4 / 0.3048 the same; 96 / 12 = 8 ft
    const converted = (length: Length) => {
      const finding = tapped("8 AWG", { length });
      return "steps" in finding && finding.steps.find(({ label }) => label === "length of the tap in feet");
    };
    expect(converted({ value: 2400, unit: "mm" })).toMatchObject({
      formula: "mm / 304.8",
      substituted: "2400 / 304.8",
    });
    expect(converted({ value: 2.4, unit: "m" })).toMatchObject({ formula: "m / 0.3048", substituted: "2.4 / 0.3048" });
    expect(converted({ value: 96, unit: "in" })).toMatchObject({ formula: "in / 12", value: 8 });
    expect(converted(feet(8))).toBeUndefined();
  });
  test("whether it runs outdoors is asked for only where it decides", () => {
    expect(tappedSomewhere("8 AWG", 8, 40).outcome).toBe("pass");
    expect(tappedSomewhere("6 AWG", 22, 40)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/circuit/protection/outdoors" }],
    });
    expect(tappedSomewhere("6 AWG", 30, 40)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/circuit/protection/outdoors" }],
    });
    expect(tappedSomewhere("6 AWG", 22, 70).outcome).toBe("fail");
    expect(tappedSomewhere("6 AWG", 30, 70).outcome).toBe("fail");
  });
  test("a tap that is not protected from damage is refused", () => {
    expect(tapped("8 AWG", { physicallyProtected: false }).outcome).toBe("fail");
  });

  test("the ampacity is that of the terminations", () => {
    const unknownEnds = (endDeviceA: number) => {
      const protection: FeederTap = {
        kind: "feeder-tap",
        feederDeviceA: 400,
        length: feet(8),
        endDeviceA,
        leavesEnclosure: true,
        physicallyProtected: true,
        outdoors: false,
      };
      const joint = sampleJoint({
        function: "tap",
        conductors: [sampleConductor({ size: "8 AWG", duty: "tap" })],
        circuit: { sets: 1, loadA: 28, protection },
      });
      return feederTap.check(sampleSubject(joint, sampleConnector({ mounting: { kind: "free" } })), nfpa70Edition2023);
    };
    // published: 8 AWG copper 40, 50 and 55 A at 60, 75 and 90 C
    expect(unknownEnds(40)).toMatchObject({
      outcome: "pass",
      offered: "40 A",
      sentence: expect.stringMatching(/^8 AWG copper carries 40 A at 60 C .*the least it can be/) as string,
    });
    expect(unknownEnds(41)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/circuit/endTerminalTemperature" }],
    });
    // published: 6 AWG copper 75 A at 90 C
    expect(unknownEnds(56)).toMatchObject({
      outcome: "fail",
      offered: "55 A",
      sentence: expect.stringMatching(/^8 AWG copper carries 55 A at 90 C/) as string,
      fix: "6 AWG copper (75 A at 90 C) or larger",
    });
    const at = (finding: ReturnType<typeof unknownEnds>) =>
      "steps" in finding && finding.steps.find(({ label }) => label.startsWith("temperature limit"))?.value;
    expect([at(unknownEnds(40)), at(unknownEnds(56))]).toEqual([60, 90]);
    expect(tapped("8 AWG", { endDeviceA: 41 }, { endTerminalTemperature: "unmarked" }).outcome).toBe("fail");
  });
  test("below every column of the table nothing is carried", () => {
    const cool: Partial<ConductorGroup> = { insulation: "other", insulationRating: { value: 50, unit: "Cel" } };
    expect(tapped("8 AWG", {}, {}, {}, cool)).toMatchObject({ outcome: "fail", fix: "parts rated 60 C or more" });
  });
  test("sizes outside the table are asked about, unfit insulation is refused", () => {
    expect(tapped("16 mm2", {})).toMatchObject({ outcome: "missing", missing: [{ path: "joint/conductors/1/size" }] });
    expect(tapped("8 AWG", {}, {}, { place: { location: "wet" } }, { insulation: "THHN" })).toMatchObject({
      outcome: "fail",
      cite: { locator: "Table 310.4(1)" },
      required: "insulation rated for the place",
      offered: "THHN",
    });
  });
  test("which conductor leaves is asked for when all run through", () => {
    expect(tapped("8 AWG", {}, {}, {}, { duty: "run" })).toMatchObject({
      missing: [{ path: "joint/conductors/0/duty" }],
      cite: { locator: "240.21(B)" },
      required: "the conductor that leaves the tap",
    });
  });
  test("the end of a tap is judged as the tap is", () => {
    const finding = tapped(
      "8 AWG",
      {},
      {},
      {
        function: "termination",
        conductors: [sampleConductor({ size: "8 AWG" })],
        equipment: { tag: "DISC-9", terminalTemperature: { value: 75, unit: "Cel" } },
      },
    );
    expect(finding).toMatchObject({ outcome: "pass", offered: "50 A" });
  });
  test("only in a tap is a conductor left out that runs through", () => {
    const ended = tapped(
      "8 AWG",
      {},
      {},
      {
        function: "termination",
        conductors: [sampleConductor({ size: "8 AWG", duty: "run" })],
        equipment: { tag: "DISC-9", terminalTemperature: { value: 75, unit: "Cel" } },
      },
    );
    expect(ended).toMatchObject({ outcome: "pass", offered: "50 A" });
  });
  test("other circuits and roles are not judged", () => {
    expect(tapped("8 AWG", {}, { protection: { kind: "device", ratingA: 40 } }).outcome).toBe("not-applicable");
    expect(tapped("8 AWG", {}, {}, { role: "neutral" }).outcome).toBe("not-applicable");
    const { circuit, ...joint } = sampleJoint();
    expect(circuit).toBeDefined();
    expect(feederTap.check(sampleSubject(joint), nfpa70Edition2023).outcome).toBe("not-applicable");
    expect(feederTap.check(sampleSubject({ ...joint, circuit: { sets: 1 } }), nfpa70Edition2023).outcome).toBe(
      "not-applicable",
    );
  });
  test("a device that is not a number never passes", () => {
    expect(tapped("8 AWG", { endDeviceA: Number.NaN }).outcome).toBe("fail");
  });
});

describe("conductors of a transformer's secondary (NFPA 70-2023 240.21(C))", () => {
  const secondary = (size: string, tap: Partial<FeederTap>, loadA = 20) =>
    tapped(
      size,
      { feederDeviceA: 125, through: { primaryV: 480, secondaryV: 208 }, endDeviceA: 20, ...tap },
      { loadA },
      {
        function: "termination",
        conductors: [sampleConductor({ size })],
        equipment: { tag: "T-1", kind: "panelboard", terminalTemperature: { value: 75, unit: "Cel" } },
      },
    );
  // published: Table 310.16, copper at 75 C: 12 AWG 25 A, 10 AWG 35 A, 4 AWG 85 A, 3 AWG 100 A
  // hand: 125 x 480 / 208 = 288.5 A; a tenth 28.8 A, a third 96.2 A
  test.each([
    ["10 AWG", 8, {}, "pass", "240.21(C)(2)"],
    ["12 AWG", 8, {}, "fail", "240.21(C)(2)"],
    ["12 AWG", 8, { leavesEnclosure: false }, "pass", "240.21(C)(2)"],
    ["3 AWG", 25, {}, "pass", "240.21(C)(6)"],
    ["4 AWG", 25, {}, "fail", "240.21(C)(6)"],
    ["3 AWG", 25.1, {}, "fail", "240.21(C)(6)"],
    ["12 AWG", 300, { outdoors: true }, "pass", "240.21(C)(4)"],
  ] as const)("%s, %d ft, %j: %s by %s", (size, lengthFt, change, outcome, locator) => {
    // The feeder of a termination is not there: only the secondary conductors meet.
    const finding = secondary(size, { length: feet(lengthFt), ...change });
    expect(finding).toMatchObject({ outcome, cite: { locator } });
    expect("sentence" in finding && / enough for a tap /.test(finding.sentence)).toBe(outcome === "pass");
  });
  test("over 25 ft the high bays of taps are not named", () => {
    expect(secondary("3 AWG", { length: feet(25.1) })).toMatchObject({
      sentence: "The tap is 25.1 ft long; inside a building 25 ft is the longest, also in industrial installations.",
    });
  });
  test("the device of the primary is carried over step by step", () => {
    const finding = secondary("10 AWG", {});
    expect("steps" in finding && finding.steps).toEqual(
      expect.arrayContaining([
        expect.objectContaining({
          label: "device of the transformer's primary",
          value: 125,
          unit: "A",
          origin: "joint/circuit/protection/feederDeviceA",
        }),
        expect.objectContaining({ value: 480, unit: "V", origin: "joint/circuit/protection/through/primaryV" }),
        expect.objectContaining({ value: 208, unit: "V", origin: "joint/circuit/protection/through/secondaryV" }),
        expect.objectContaining({ value: 60_000, unit: "V A" }),
        expect.objectContaining({ label: "device of the primary as it counts on the secondary side", unit: "A" }),
      ]),
    );
  });
  // hand: 175 x 480 / 240 / 10 = 35 A, exactly what 10 AWG carries; 176 A ask for 35.2
  test.each([
    [174, "pass"],
    [175, "pass"],
    [176, "fail"],
  ] as const)("a tenth of %d A through 480 to 240 V, 10 AWG: %s", (feederDeviceA, outcome) => {
    const finding = secondary("10 AWG", { feederDeviceA, through: { primaryV: 480, secondaryV: 240 } });
    expect(finding.outcome).toBe(outcome);
    expect("sentence" in finding && / enough for a tap /.test(finding.sentence)).toBe(outcome === "pass");
  });
  test("what is asked for counts through the transformer", () => {
    // hand: 40 A x 480 / 240 = 80 A; a third 26.7 A
    expect(
      secondary("12 AWG", { feederDeviceA: 40, length: feet(20), through: { primaryV: 480, secondaryV: 240 } }),
    ).toMatchObject({ outcome: "fail", required: ">= 26.7 A (1/3 of 80 A) and >= 20 A end device" });
  });
  test("without protection from damage none is allowed", () => {
    expect(secondary("10 AWG", { physicallyProtected: false })).toMatchObject({
      outcome: "fail",
      cite: { locator: "240.21(C)" },
    });
  });
});
