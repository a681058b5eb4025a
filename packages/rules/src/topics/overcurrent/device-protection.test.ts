import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import type { Circuit, Joint } from "../../core/joint.js";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2020 } from "../../rulesets/nfpa70-2020/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { deviceProtection } from "./device-protection.js";

const ALUMINUM = { metal: "aluminum", stranding: "compact", insulation: "XHHW-2" } as const;

function joint(
  conductors: readonly Partial<ConductorGroup>[],
  circuit: Partial<Circuit>,
  change: Partial<Joint> = {},
): Joint {
  return sampleJoint({
    conductors: conductors.map((one) => sampleConductor(one)),
    circuit: { voltageV: 480, sets: 1, ...circuit },
    ...change,
  });
}

/** On 75 C terminals, unless said otherwise. */
function check(
  conductors: readonly Partial<ConductorGroup>[],
  ratingA: number,
  circuit: Partial<Circuit> = {},
  change: Partial<Joint> = {},
) {
  const subject = sampleSubject(joint(conductors, { protection: { kind: "device", ratingA }, ...circuit }, change));
  return deviceProtection.check(subject, nfpa70Edition2023);
}

describe("protection of the conductor by its device (NFPA 70-2023 240.4)", () => {
  // published: Table 310.16 at 75 C; hand: 5 x 340 = 1700, 3 x 285 = 855, 2 x 205 = 410
  test.each([
    [{ ...ALUMINUM, size: "600 kcmil" }, 5, 1600, "pass"],
    [{ size: "300 kcmil" }, 3, 800, "pass"],
    [{ ...ALUMINUM, size: "250 kcmil" }, 2, 400, "pass"],
    [{ ...ALUMINUM, size: "250 kcmil" }, 1, 200, "pass"],
    [{ size: "4/0 AWG" }, 1, 225, "pass"],
    [{ size: "1 AWG" }, 1, 125, "pass"],
  ] as const)("%o, %d sets, under %d A: %s", (conductor, sets, ratingA, outcome) => {
    expect(check([conductor], ratingA, { sets }).outcome).toBe(outcome);
  });

  // published: 3/0 AWG copper, 200 A at 75 C; 200 A is itself a standard rating, so 225 A is not the next one
  test.each([
    [199, "pass"],
    [200, "pass"],
    [201, "fail"],
    [225, "fail"],
  ] as const)("3/0 AWG copper under %d A: %s", (ratingA, outcome) => {
    expect(check([{}], ratingA, { loadA: 150 }).outcome).toBe(outcome);
  });

  // published: 4/0 AWG aluminum, 180 A at 75 C; 240.6(A) goes 175, 200, 225
  test.each([
    [150, "pass"],
    [180, "pass"],
    [181, "fail"],
  ] as const)("the next standard rating, 200 A over 180 A, with a load of %d A: %s", (loadA, outcome) => {
    const finding = check([{ ...ALUMINUM, size: "4/0 AWG" }], 200, { loadA });
    expect(finding).toMatchObject({ outcome, cite: { locator: "240.4(B)" } });
    if (outcome === "pass")
      expect(finding).toMatchObject({
        conditions: [{ duty: "no-plug-in-branch-circuit" }],
        sentence: expect.stringMatching(
          /^4\/0 AWG aluminum carries 180 A at 75 C .*; the 200 A device is the next standard rating above that, and the load stays within the ampacity\.$/,
        ) as string,
      });
    else {
      expect(finding).toMatchObject({
        sentence: expect.stringMatching(
          /^4\/0 AWG aluminum carries 180 A at 75 C .*, which a 200 A device does not protect: the next standard rating is allowed only while the load stays within the ampacity\.$/,
        ) as string,
      });
      expect("steps" in finding && finding.steps).toContainEqual(
        expect.objectContaining({ label: "the load stays within the ampacity", value: false }),
      );
    }
  });
  // published: Table 310.16, 3/0 AWG copper 200 A at 75 C; an ampacity that is the device's rating makes use of no other
  test("an ampacity equal to the device needs no load, also where the next rating is not allowed", () => {
    expect(check([{}], 200)).toMatchObject({ outcome: "pass", cite: { locator: "240.4" }, conditions: [] });
    expect(
      check(
        [{ size: "250 kcmil", duty: "run" }, { duty: "tap" }],
        200,
        { endTerminalTemperature: { value: 75, unit: "Cel" } },
        { function: "tap" },
      ).outcome,
    ).toBe("pass");
    // hand: 3 x 335 = 1005 A
    expect(check([{ size: "400 kcmil" }], 1005, { sets: 3 }).outcome).toBe("pass");
  });
  // hand: 2 x 310 = 620 A, the next standard rating is 700 A
  test("a device of 800 A is refused by the rule for the next rating, one above it by the rule above 800 A", () => {
    expect(check([{ size: "350 kcmil" }], 800, { sets: 2, loadA: 600 })).toMatchObject({
      outcome: "fail",
      cite: { locator: "240.4" },
    });
    expect(check([{ size: "350 kcmil" }], 801, { sets: 2, loadA: 600 })).toMatchObject({
      outcome: "fail",
      cite: { locator: "240.4(C)" },
    });
  });
  // published: 240.4(B), 310.16 at 75 C: 4/0 AWG aluminum 180 A, 3/0 AWG aluminum 155 A; 175 is next to 155, not 200
  test.each([
    ["4/0 AWG", "3/0 AWG"],
    ["3/0 AWG", "4/0 AWG"],
  ] as const)("of %s and %s in a splice the smaller is the one that counts", (first, second) => {
    const splice = (ratingA: number) =>
      check(
        [
          { ...ALUMINUM, size: first },
          { ...ALUMINUM, size: second },
        ],
        ratingA,
        { loadA: 150, endTerminalTemperature: { value: 75, unit: "Cel" } },
        { function: "splice" },
      );
    expect(splice(175)).toMatchObject({ outcome: "pass", offered: "155 A", cite: { locator: "240.4(B)" } });
    expect(splice(200)).toMatchObject({ outcome: "fail", offered: "155 A" });
  });
  test("the rating after the next is refused, and so is one between the standard ratings", () => {
    expect(check([{ ...ALUMINUM, size: "4/0 AWG" }], 225, { loadA: 150 })).toMatchObject({
      outcome: "fail",
      fix: "300 kcmil aluminum (230 A at 75 C), or a device of 180 A or less",
    });
    expect(check([{ ...ALUMINUM, size: "4/0 AWG" }], 190, { loadA: 150 }).outcome).toBe("fail");
  });
  test("the load is asked for only where the next standard rating is made use of", () => {
    expect(check([{ ...ALUMINUM, size: "4/0 AWG" }], 200)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/circuit/loadA" }],
    });
    expect(check([{ ...ALUMINUM, size: "4/0 AWG" }], 175).outcome).toBe("pass");
    expect(check([{ ...ALUMINUM, size: "4/0 AWG" }], 225).outcome).toBe("fail");
    expect(check([{ ...ALUMINUM, size: "4/0 AWG" }], 200, { loadA: 150, continuousLoadA: 1 }).outcome).toBe("missing");
    // hand: 1.25 x 144 = 180
    expect(
      check([{ ...ALUMINUM, size: "4/0 AWG" }], 200, { continuousLoadA: 144, nonContinuousLoadA: 0 }).outcome,
    ).toBe("pass");
    expect(
      check([{ ...ALUMINUM, size: "4/0 AWG" }], 200, { continuousLoadA: 144, nonContinuousLoadA: 0.1 }).outcome,
    ).toBe("fail");
  });

  // published: 2 x 500 kcmil copper = 760 A and 3 x 4/0 AWG copper = 690 A at 75 C; 240.4(B) ends with 800 A, 240.4(C) begins above
  test.each([
    ["500 kcmil", 2, 800, "pass", "240.4(B)"],
    ["500 kcmil", 2, 801, "fail", "240.4(C)"],
    ["300 kcmil", 3, 1000, "fail", "240.4(C)"],
    ["400 kcmil", 3, 1000, "pass", "240.4"],
    ["400 kcmil", 3, 1006, "fail", "240.4(C)"],
  ] as const)("%s copper, %d sets under %d A: %s", (size, sets, ratingA, outcome, locator) => {
    // hand: 3 x 285 = 855, 3 x 335 = 1005
    expect(check([{ size }], ratingA, { sets, loadA: 500 })).toMatchObject({ outcome, cite: { locator } });
  });

  // published: 240.4(D): 14, 12 and 10 AWG copper 15, 20 and 30 A, whatever the column says
  test.each([
    ["copper", "14 AWG", 15, "pass"],
    ["copper", "14 AWG", 16, "fail"],
    ["copper", "12 AWG", 19, "pass"],
    ["copper", "12 AWG", 20, "pass"],
    ["copper", "12 AWG", 21, "fail"],
    ["copper", "12 AWG", 25, "fail"],
    ["copper", "10 AWG", 30, "pass"],
    ["copper", "10 AWG", 31, "fail"],
    ["copper", "10 AWG", 35, "fail"],
    ["aluminum", "12 AWG", 15, "pass"],
    ["aluminum", "12 AWG", 16, "fail"],
    ["aluminum", "10 AWG", 25, "pass"],
    ["aluminum", "10 AWG", 26, "fail"],
    ["copper-clad-aluminum", "12 AWG", 15, "pass"],
    ["copper-clad-aluminum", "12 AWG", 20, "fail"],
  ] as const)("%s %s under %d A: %s", (metal, size, ratingA, outcome) => {
    expect(check([{ metal, size }], ratingA, { loadA: 10 }).outcome).toBe(outcome);
  });
  test("the cap stands in the sentence", () => {
    expect(check([{ size: "12 AWG" }], 25)).toMatchObject({
      cite: { locator: "240.4(D)" },
      sentence: "12 AWG copper is limited to a device of 20 A, whatever its ampacity; the device is 25 A.",
    });
  });
  test("8 AWG has no cap: 50 A at 75 C", () => {
    // published: Table 310.16
    expect(check([{ size: "8 AWG" }], 50).outcome).toBe("pass");
    expect(check([{ size: "8 AWG" }], 51).outcome).toBe("fail");
  });

  // published: Table 310.16, 3 AWG copper 85 A at 60 C; the next standard rating is 90 A
  test("an unmarked 100 A switch reads 3 AWG copper at 60 C", () => {
    const unmarked = { equipment: { tag: "DISC-1", terminalTemperature: "unmarked" } } as const;
    expect(check([{ size: "3 AWG" }], 100, { loadA: 92 }, unmarked)).toMatchObject({
      outcome: "fail",
      fix: "1 AWG copper (110 A at 60 C), or a device of 85 A or less",
    });
    expect(check([{ size: "3 AWG" }], 90, { loadA: 85 }, unmarked).outcome).toBe("pass");
    expect(check([{ size: "3 AWG" }], 90, { loadA: 86 }, unmarked).outcome).toBe("fail");
  });
  test("an unknown terminal rating is asked for only where it decides", () => {
    const unknown = { equipment: { tag: "P-1" } } as const;
    // published: 3/0 AWG copper 165, 200 and 225 A
    expect(check([{}], 150, {}, unknown).outcome).toBe("pass");
    expect(check([{}], 200, { loadA: 150 }, unknown)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/equipment/terminalTemperature" }],
    });
    expect(check([{}], 250, { loadA: 150 }, unknown)).toMatchObject({
      outcome: "fail",
      offered: "225 A",
      sentence: expect.stringMatching(/^3\/0 AWG copper carries 225 A at 90 C/) as string,
    });
  });

  // published: at 60 C 10 AWG copper carries 30 A, 6 AWG 55 A, 2 AWG 95 A; at 75 C 4/0 AWG copper 230 A
  test("every building-wire conductor of a splice is protected", () => {
    const ends = (value: number) => ({ endTerminalTemperature: { value, unit: "Cel" as const } });
    const splice = { function: "splice" } as const;
    expect(check([{ size: "6 AWG" }, { size: "10 AWG" }], 20, ends(60), splice).outcome).toBe("pass");
    expect(check([{ size: "6 AWG" }, { size: "12 AWG" }], 25, ends(60), splice).outcome).toBe("fail");
    expect(check([{ ...ALUMINUM, size: "500 kcmil" }, { size: "4/0 AWG" }], 225, ends(75), splice)).toMatchObject({
      outcome: "pass",
      offered: "230 A",
    });
    const fixture = { size: "18 AWG", insulation: "fixture-wire" } as const;
    expect(check([{ size: "10 AWG" }, fixture], 20, ends(60), splice).outcome).toBe("pass");
    expect(check([fixture], 20, ends(60), splice).outcome).toBe("not-applicable");
  });
  test("the conductor that leaves a tap may not make use of the next standard rating, the one that runs through may", () => {
    const tap = { function: "tap" } as const;
    const circuit = { loadA: 100, endTerminalTemperature: { value: 75, unit: "Cel" as const } };
    const small = { ...ALUMINUM, size: "4/0 AWG" };
    expect(
      check(
        [
          { size: "250 kcmil", duty: "run" },
          { ...small, duty: "tap" },
        ],
        200,
        circuit,
        tap,
      ),
    ).toMatchObject({
      outcome: "fail",
      cite: { locator: "240.21(B)" },
    });
    expect(
      check(
        [
          { ...small, duty: "run" },
          { size: "250 kcmil", duty: "tap" },
        ],
        200,
        circuit,
        tap,
      ).outcome,
    ).toBe("pass");
    expect(
      check(
        [
          { size: "2 AWG", duty: "run" },
          { size: "10 AWG", count: 3, duty: "tap" },
        ],
        30,
        { ...circuit, endTerminalTemperature: { value: 60, unit: "Cel" } },
        tap,
      ).outcome,
    ).toBe("pass");
  });

  test("where another rule governs the device, it is named", () => {
    const because = (protection: Circuit["protection"]) => {
      const answer = deviceProtection.check(
        sampleSubject(joint([{}], protection === undefined ? {} : { protection })),
        nfpa70Edition2023,
      );
      return answer.outcome === "not-applicable" ? answer.because : answer.missing[0]?.path;
    };
    expect(because({ kind: "service" })).toContain("service conductors");
    expect(because({ kind: "motor-circuit" })).toContain("240.4(G)");
    expect(because({ kind: "none-stated", because: "battery string" })).toContain("battery string");
    expect(
      because({
        kind: "feeder-tap",
        feederDeviceA: 400,
        length: { value: 8, unit: "ft" },
        endDeviceA: 40,
        leavesEnclosure: true,
        physicallyProtected: true,
      }),
    ).toContain("taps");
    expect(because(undefined)).toBe("joint/circuit/protection");
  });
  test("neutrals and grounds are not judged", () => {
    expect(check([{}], 200, {}, { role: "neutral" }).outcome).toBe("not-applicable");
    expect(check([{}], 200, {}, { role: "equipment-ground" }).outcome).toBe("not-applicable");
  });
  test("sizes that cannot be judged are asked about, after what can be refused", () => {
    expect(check([{ size: "35 mm2" }], 20)).toMatchObject({ missing: [{ path: "joint/conductors/0/size" }] });
    expect(check([{ metal: "aluminum", size: "14 AWG" }], 15)).toMatchObject({
      missing: [{ path: "joint/conductors/0/size" }],
    });
    expect(check([{ size: "18 AWG" }], 7)).toMatchObject({ missing: [{ path: "joint/conductors/0/size" }] });
    expect(check([{ size: "35 mm2" }, { size: "12 AWG" }], 30, {}, { function: "splice" }).outcome).toBe("fail");
  });
  // published: Table 310.16 prints 18 and 16 AWG copper at 90 C; 240.4(D)(1), (2) allow them for listed uses only
  test.each(["18 AWG", "16 AWG"])("%s is asked about also where the table has an ampacity for it", (size) => {
    const warm = { equipment: { tag: "P-1", terminalTemperature: { value: 90, unit: "Cel" } } } as const;
    expect(check([{ size }], 7, { loadA: 5 }, warm)).toMatchObject({
      outcome: "missing",
      missing: [
        {
          path: "joint/conductors/0/size",
          because: `${size} copper is allowed only for uses that the code lists one by one; which one this is, is not known.`,
        },
      ],
    });
  });
  test("below every column of the table no device protects", () => {
    expect(check([{ insulation: "other", insulationRating: { value: 50, unit: "Cel" } }], 15, {})).toMatchObject({
      outcome: "fail",
      fix: "parts rated 60 C or more",
    });
  });
  test("insulation that may not be used in the place is refused", () => {
    expect(check([{ insulation: "THHN" }], 100, {}, { place: { location: "wet" } })).toMatchObject({
      outcome: "fail",
      offered: "THHN",
    });
  });
  test("a rating that is not a number never passes", () => {
    expect(check([{}], Number.NaN).outcome).toBe("fail");
    expect(check([{ size: "12 AWG" }], Number.NaN).outcome).toBe("fail");
  });
  test("a connector rated below its conductor lowers the ampacity", () => {
    const subject = sampleSubject(
      joint([{}], { protection: { kind: "device", ratingA: 200 }, loadA: 150 }),
      sampleConnector({ metalMarking: "AL9CU", temperature: { value: 60, unit: "Cel" } }),
    );
    // published: 165 A at 60 C; the next standard rating is 175 A
    expect(deviceProtection.check(subject, nfpa70Edition2023).outcome).toBe("fail");
  });
  // published: 180 A at 75 C and the ratings 175 and 200 A are the same in the three editions
  test.each([nfpa70Edition2017, nfpa70Edition2020, nfpa70Edition2023])(
    "each edition answers with its own tables",
    (edition) => {
      const subject = sampleSubject(
        joint([{ ...ALUMINUM, size: "4/0 AWG" }], { protection: { kind: "device", ratingA: 200 }, loadA: 150 }),
      );
      expect(deviceProtection.check(subject, edition)).toMatchObject({
        outcome: "pass",
        cite: { edition: edition.edition },
      });
    },
  );
});
