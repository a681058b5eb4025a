import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import type { Connector } from "../../core/connector.js";
import type { Circuit, Joint } from "../../core/joint.js";
import type { Temperature } from "../../core/quantity.js";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { terminalTemperature } from "./terminal-temperature.js";

const cel = (value: number): Temperature => ({ value, unit: "Cel" });

/** A set-screw lug that bears no temperature and a copper-only mark, which says nothing of temperature. */
function unratedConnector(change: Partial<Connector> = {}): Connector {
  return sampleConnector({
    metalMarking: "CU",
    mounting: { kind: "pad", pattern: { holes: 1, bolt: "1/2" } },
    ...change,
  });
}

/** One conductor on a terminal. */
function landed(
  conductor: Partial<ConductorGroup>,
  circuit: Partial<Circuit>,
  terminal: Temperature | "unmarked" | undefined,
  connector: Connector = sampleConnector(),
  change: Partial<Joint> = {},
) {
  const joint = sampleJoint({
    conductors: [sampleConductor(conductor)],
    circuit: { voltageV: 480, sets: 1, ...circuit },
    equipment: { tag: "P-1", ...(terminal === undefined ? {} : { terminalTemperature: terminal }) },
    ...change,
  });
  return terminalTemperature.check(sampleSubject(joint, connector), nfpa70Edition2023);
}

/** Conductors spliced or tapped; the terminals stand at their ends. */
function spliced(
  fn: "splice" | "tap",
  conductors: readonly Partial<ConductorGroup>[],
  circuit: Partial<Circuit>,
  connector: Connector = sampleConnector({ mounting: { kind: "free" } }),
  change: Partial<Joint> = {},
) {
  const joint = sampleJoint({
    function: fn,
    conductors: conductors.map((one) => sampleConductor(one)),
    circuit: { voltageV: 480, sets: 1, ...circuit },
    equipment: { tag: "JB-1", kind: "box" },
    ...change,
  });
  return terminalTemperature.check(sampleSubject(joint, connector), nfpa70Edition2023);
}

/** A joint on 90 C terminals of which nobody said where it is. */
function placeless(insulation: ConductorGroup["insulation"]): Joint {
  return {
    mark: "T-002",
    function: "termination",
    role: "phase",
    quantity: 1,
    conductors: [sampleConductor({ insulation })],
    circuit: { sets: 1, loadA: 201 },
    equipment: { tag: "P-1", terminalTemperature: cel(90) },
  };
}

const device = (ratingA: number) => ({ kind: "device", ratingA }) as const;

describe("ampacity at the temperature of the termination (NFPA 70-2023 110.14(C))", () => {
  // published: Table 310.16, 250 kcmil aluminum, 75 C: 205 A
  test.each([
    [204, "pass"],
    [205, "pass"],
    [206, "fail"],
    [218, "fail"],
  ] as const)("a load of %d A through a splice marked AL7CU on 250 kcmil aluminum: %s", (loadA, outcome) => {
    const connector = sampleConnector({ mounting: { kind: "free" }, metalMarking: "AL7CU" });
    const finding = spliced(
      "splice",
      [{ count: 2, metal: "aluminum", size: "250 kcmil", stranding: "compact", insulation: "XHHW-2" }],
      { loadA, endTerminalTemperature: cel(90) },
      connector,
    );
    expect(finding.outcome).toBe(outcome);
    if (outcome === "fail")
      expect(finding).toMatchObject({
        required: `${String(loadA)} A at 75 C`,
        offered: "205 A at 75 C",
        cite: { locator: "110.14(C)(2)" },
      });
  });

  // published: Table 310.16, 3 AWG copper: 85 A at 60 C, 100 A at 75 C; 110.14(C)(1)(a) gives 60 C to unmarked equipment
  test("a 90 C lug does not raise an unmarked 100 A switch", () => {
    const finding = landed({ size: "3 AWG" }, { loadA: 92, protection: device(100) }, "unmarked");
    expect(finding).toMatchObject({
      outcome: "fail",
      required: "92 A at 60 C",
      offered: "85 A at 60 C",
      cite: { locator: "110.14(C)(1)(a)" },
      fix: "2 AWG copper (95 A at 60 C); or terminals and connector rated 75 C with 3 AWG copper (100 A at 75 C)",
    });
    expect(finding).toHaveProperty(
      "steps",
      expect.arrayContaining([expect.objectContaining({ kind: "assumed", value: 60 })]),
    );
  });
  test("the same switch marked 75 C takes the load", () => {
    expect(landed({ size: "3 AWG" }, { loadA: 92, protection: device(100) }, cel(75)).outcome).toBe("pass");
  });
  test("a rating in Fahrenheit counts the same: 167 degF is 75 C", () => {
    // hand: (167 - 32) x 5 / 9 = 75
    expect(landed({ size: "3 AWG" }, { loadA: 100 }, { value: 167, unit: "degF" }).outcome).toBe("pass");
    expect(landed({ size: "3 AWG" }, { loadA: 100 }, { value: 166, unit: "degF" }).outcome).toBe("fail");
  });

  // published: Table 310.16, 1/0 AWG copper 125 A at 60 C and 150 A at 75 C; 1 AWG copper 110 A at 60 C and 130 A at 75 C
  test.each([
    ["1/0 AWG", 99, 125, "pass"],
    ["1/0 AWG", 100, 126, "fail"],
    ["1/0 AWG", 101, 126, "pass"],
    ["1/0 AWG", 101, 150, "pass"],
    ["1/0 AWG", 101, 151, "fail"],
    ["1 AWG", 101, 110, "pass"],
    ["1 AWG", 101, 111, "fail"],
  ] as const)("unmarked terminal, %s on a circuit of %d A, load %d A: %s", (size, ratingA, loadA, outcome) => {
    expect(landed({ size }, { loadA, protection: device(ratingA) }, "unmarked").outcome).toBe(outcome);
  });
  test("an unmarked terminal on a circuit of unknown rating is judged by the load where that is over 100 A", () => {
    const service = { kind: "service" } as const;
    expect(landed({ size: "1/0 AWG" }, { loadA: 150, protection: service }, "unmarked").outcome).toBe("pass");
    expect(landed({ size: "1/0 AWG" }, { loadA: 151, protection: service }, "unmarked").outcome).toBe("fail");
    // published: 100 A is within 125 A at 60 C already, so nothing is asked
    expect(landed({ size: "1/0 AWG" }, { loadA: 100, protection: service }, "unmarked").outcome).toBe("pass");
  });

  // published: Table 310.16, 12 AWG copper 20, 25 and 30 A at 60, 75 and 90 C
  test.each([
    [20, "pass"],
    [21, "missing"],
    [30, "missing"],
    [31, "fail"],
  ] as const)("an unknown terminal rating is asked for only where it decides: %d A is %s", (loadA, outcome) => {
    const finding = landed({ size: "12 AWG" }, { loadA }, undefined);
    expect(finding.outcome).toBe(outcome);
    if (outcome === "missing")
      expect(finding).toMatchObject({ missing: [{ path: "joint/equipment/terminalTemperature" }] });
  });
  test("for a splice the rating at the ends is asked for", () => {
    expect(spliced("splice", [{ size: "12 AWG", count: 2 }], { loadA: 25 })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/circuit/endTerminalTemperature" }],
    });
    expect(spliced("splice", [{ size: "12 AWG", count: 2 }], { loadA: 9.5 }).outcome).toBe("pass");
  });

  // published: Table 310.16, 3/0 AWG copper 165, 200 and 225 A at 60, 75 and 90 C
  test("an unmarked pressure connector counts as 75 C, an unknown one is asked about where it decides", () => {
    expect(landed({}, { loadA: 200 }, cel(90), unratedConnector({ temperature: "unmarked" })).outcome).toBe("pass");
    expect(landed({}, { loadA: 201 }, cel(90), unratedConnector({ temperature: "unmarked" })).outcome).toBe("fail");
    expect(landed({}, { loadA: 165 }, cel(90), unratedConnector()).outcome).toBe("pass");
    expect(landed({}, { loadA: 166 }, cel(90), unratedConnector())).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/temperature" }],
    });
    expect(landed({}, { loadA: 226 }, cel(90), unratedConnector()).outcome).toBe("fail");
  });
  test("an unmarked twist-on has no default", () => {
    const twistOn = unratedConnector({ construction: "twist-on", temperature: "unmarked", mounting: { kind: "free" } });
    expect(landed({}, { loadA: 200 }, cel(90), twistOn).outcome).toBe("missing");
  });
  test("a terminal that belongs to its equipment has the equipment's rating", () => {
    const own = unratedConnector({ mounting: { kind: "integral" }, temperature: "unmarked" });
    expect(landed({}, { loadA: 200 }, cel(75), own).outcome).toBe("pass");
    expect(landed({}, { loadA: 201 }, cel(75), own).outcome).toBe("fail");
  });
  test("of a printed rating and a marking the lower counts", () => {
    const connector = sampleConnector({ temperature: cel(90), metalMarking: "AL7CU" });
    expect(landed({}, { loadA: 201 }, cel(90), connector).outcome).toBe("fail");
  });
  test("a weld adds no limit", () => {
    const weld = unratedConnector({ construction: "weld", temperature: "unmarked", mounting: { kind: "free" } });
    expect(landed({}, { loadA: 225 }, cel(90), weld).outcome).toBe("pass");
  });
  test("below 60 C there is no column", () => {
    expect(landed({}, { loadA: 1 }, cel(59))).toMatchObject({ outcome: "fail", fix: "parts rated 60 C or more" });
    expect(landed({}, { loadA: 1 }, cel(60)).outcome).toBe("pass");
  });
  test.each([
    [74.9, 165, "pass"],
    [74.9, 166, "fail"],
    [75, 166, "pass"],
    [89.9, 201, "fail"],
    [90, 201, "pass"],
  ] as const)("a part rated %d C under %d A: %s", (ratingC, loadA, outcome) => {
    // published: the column is the largest that is not above the rating
    expect(landed({}, { loadA }, cel(ratingC)).outcome).toBe(outcome);
  });

  // published: Table 310.16, 600 kcmil aluminum 340 A at 75 C; hand: 5 x 340 = 1700
  test.each([
    [1700, "pass"],
    [1701, "fail"],
  ] as const)("five sets of 600 kcmil aluminum under %d A: %s", (loadA, outcome) => {
    const aluminum = { metal: "aluminum", size: "600 kcmil", stranding: "compact", insulation: "XHHW-2" } as const;
    expect(landed(aluminum, { loadA, sets: 5 }, cel(75)).outcome).toBe(outcome);
  });
  // published: copper-clad aluminum is read in the aluminum columns: 12 AWG 15 A at 60 C
  test("copper-clad aluminum carries what aluminum does", () => {
    expect(landed({ metal: "copper-clad-aluminum", size: "12 AWG" }, { loadA: 15 }, cel(60)).outcome).toBe("pass");
    expect(landed({ metal: "copper-clad-aluminum", size: "12 AWG" }, { loadA: 16 }, cel(60)).outcome).toBe("fail");
  });

  // hand: 1.25 x 160 + 0 = 200; 1.25 x 160.8 = 201; 3/0 AWG copper carries 200 A at 75 C
  test.each([
    [160, 0, "pass"],
    [160, 0.1, "fail"],
    [152, 10, "pass"],
    [160.8, 0, "fail"],
  ] as const)("continuous %d A and %d A otherwise: %s", (continuousLoadA, nonContinuousLoadA, outcome) => {
    expect(landed({}, { continuousLoadA, nonContinuousLoadA }, cel(75)).outcome).toBe(outcome);
  });
  test("half a load is asked to be made whole, a load given twice is not believed", () => {
    expect(landed({}, { continuousLoadA: 100 }, cel(75))).toMatchObject({
      missing: [{ path: "joint/circuit/nonContinuousLoadA" }],
    });
    expect(landed({}, { nonContinuousLoadA: 100 }, cel(75))).toMatchObject({
      missing: [{ path: "joint/circuit/continuousLoadA" }],
    });
    expect(landed({}, { loadA: 100, continuousLoadA: 90 }, cel(75))).toMatchObject({
      missing: [{ path: "joint/circuit/loadA" }],
    });
  });
  test("a load that is not given is asked for, on a neutral where the device ahead does not bound it", () => {
    const neutral = { role: "neutral" } as const;
    const asked = { outcome: "missing", missing: [{ path: "joint/circuit/loadA" }] };
    expect(landed({}, {}, cel(75))).toMatchObject(asked);
    // published: 3/0 AWG copper carries 200 A at 75 C
    const under = (ratingA: number) =>
      landed({}, { protection: { kind: "device", ratingA } }, cel(75), sampleConnector(), neutral);
    expect(under(199).outcome).toBe("pass");
    expect(under(200).outcome).toBe("pass");
    expect(under(201)).toMatchObject(asked);
    expect(landed({}, { protection: { kind: "service" } }, cel(75), sampleConnector(), neutral)).toMatchObject(asked);
    expect(landed({}, { loadA: 201 }, cel(75), sampleConnector(), { role: "neutral" }).outcome).toBe("fail");
  });
  test("a load that is not a number never passes", () => {
    expect(landed({}, { loadA: Number.NaN }, cel(75)).outcome).toBe("fail");
  });

  test("insulation limits too: TW stands 60 C, XHHW 90 C dry and 75 C wet", () => {
    // regression: the insulation table is from memory; 165 A at 60 C, 200 A at 75 C, 225 A at 90 C are published
    expect(landed({ insulation: "TW" }, { loadA: 166 }, cel(90)).outcome).toBe("fail");
    const wet = { place: { location: "wet" } } as const;
    expect(landed({ insulation: "XHHW" }, { loadA: 225 }, cel(90)).outcome).toBe("pass");
    expect(landed({ insulation: "XHHW" }, { loadA: 201 }, cel(90), sampleConnector(), wet).outcome).toBe("fail");
    expect(
      landed({ insulation: "XHHW" }, { loadA: 201 }, cel(90), sampleConnector(), { place: { location: "concrete" } })
        .outcome,
    ).toBe("fail");
  });
  test("insulation that may not be used in the place is refused", () => {
    const wet = { place: { location: "direct-burial" } } as const;
    expect(landed({ insulation: "THHN" }, { loadA: 10 }, cel(75), sampleConnector(), wet)).toMatchObject({
      outcome: "fail",
      offered: "THHN",
      cite: { locator: "Table 310.4(1)" },
    });
  });
  test("a handhole counts as wet whatever was said", () => {
    const inHandhole = { equipment: { tag: "HH-1", kind: "handhole", terminalTemperature: cel(75) } } as const;
    expect(landed({ insulation: "THHN" }, { loadA: 10 }, undefined, sampleConnector(), inHandhole).outcome).toBe(
      "fail",
    );
  });
  test("an unknown place is asked for only where the insulation is not rated alike everywhere", () => {
    const check = (insulation: ConductorGroup["insulation"]) =>
      terminalTemperature.check(sampleSubject(placeless(insulation)), nfpa70Edition2023);
    expect(check("THWN-2").outcome).toBe("pass");
    expect(check("XHHW")).toMatchObject({ outcome: "missing", missing: [{ path: "joint/place/location" }] });
    expect(check("THHN")).toMatchObject({ outcome: "missing", missing: [{ path: "joint/place/location" }] });
    expect(check("TW").outcome).toBe("fail");
  });
  test("insulation of another kind needs its own rating", () => {
    expect(landed({ insulation: "other" }, { loadA: 200 }, cel(75))).toMatchObject({
      missing: [{ path: "joint/conductors/0/insulationRating" }],
    });
    expect(landed({ insulation: "other", insulationRating: cel(90) }, { loadA: 200 }, cel(75)).outcome).toBe("pass");
    expect(landed({ insulation: "other", insulationRating: cel(60) }, { loadA: 200 }, cel(75)).outcome).toBe("fail");
  });

  test("sizes that the table does not have are asked about, not converted", () => {
    for (const change of [{ size: "35 mm2" }, { size: "5 AWG" }, { size: "14 AWG", metal: "aluminum" }] as const)
      expect(landed(change, { loadA: 1 }, cel(75))).toMatchObject({
        outcome: "missing",
        missing: [{ path: "joint/conductors/0/size" }],
      });
  });

  // published: 12 AWG copper 20 A at 60 C; the motor's own 14 AWG leads are not judged
  test("leads of listed equipment are not judged", () => {
    const lead = { size: "14 AWG", insulation: "equipment-lead" } as const;
    expect(spliced("splice", [{ size: "12 AWG" }, lead], { loadA: 20 }).outcome).toBe("pass");
    expect(spliced("splice", [lead, lead], { loadA: 20 }).outcome).toBe("not-applicable");
  });
  test("fixture wire is left out beside building wire, and asked about by itself", () => {
    const fixture = { size: "16 AWG", insulation: "fixture-wire" } as const;
    expect(spliced("splice", [{ size: "12 AWG" }, fixture], { loadA: 20 }).outcome).toBe("pass");
    expect(spliced("splice", [fixture, fixture], { loadA: 20 })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/conductors/0/insulation" }],
    });
  });
  test("a bare conductor takes the rating of the insulated ones beside it, asked for where it decides", () => {
    // published: 14 AWG copper carries 15 A at 60 C, 20 A at 75 C, 25 A at 90 C
    const bare = (loadA: number, rated?: number) =>
      landed(
        rated === undefined
          ? { size: "14 AWG", insulation: "bare" }
          : { size: "14 AWG", insulation: "bare", insulationRating: cel(rated) },
        { loadA },
        cel(75),
      );
    expect(bare(15).outcome).toBe("pass");
    expect(bare(16)).toMatchObject({ outcome: "missing", missing: [{ path: "joint/conductors/0/insulationRating" }] });
    expect(bare(20, 90).outcome).toBe("pass");
    expect(bare(16, 60).outcome).toBe("fail");
    expect(bare(21).outcome).toBe("fail");
  });
  test("every conductor of a splice is judged, and the smallest decides", () => {
    // published: at 75 C 2 AWG copper carries 115 A, 4 AWG copper 85 A
    const pair = [{ size: "2 AWG" }, { size: "4 AWG" }] as const;
    expect(spliced("splice", pair, { loadA: 85, endTerminalTemperature: cel(75) })).toMatchObject({
      outcome: "pass",
      offered: "85 A at 75 C",
    });
    expect(spliced("splice", pair, { loadA: 86, endTerminalTemperature: cel(75) })).toMatchObject({
      outcome: "fail",
      offered: "85 A at 75 C",
    });
  });
  test("in a tap the conductor that runs on carries at least the tap's load", () => {
    // published: in the 60 C column 10 AWG copper carries 30 A, 2 AWG copper 95 A; in the 90 C column 10 AWG 40 A
    const tap = [
      { size: "10 AWG", duty: "run" },
      { size: "2 AWG", duty: "tap" },
    ] as const;
    expect(spliced("tap", tap, { loadA: 30 }).outcome).toBe("pass");
    expect(spliced("tap", tap, { loadA: 41 }).outcome).toBe("fail");
    const wet = [
      { size: "2 AWG", duty: "run", insulation: "THHN" },
      { size: "2 AWG", duty: "tap" },
    ] as const;
    expect(spliced("tap", wet, { loadA: 30 }).outcome).toBe("pass");
    expect(spliced("tap", [{ duty: "run" }], { loadA: 1 })).toMatchObject({
      missing: [{ path: "joint/conductors/0/duty" }],
    });
  });
  test("a failure beats a missing fact", () => {
    // published: 12 AWG copper carries 30 A in its highest column
    expect(spliced("splice", [{ size: "35 mm2" }, { size: "12 AWG" }], { loadA: 31 }).outcome).toBe("fail");
  });
  test("grounding conductors are not judged", () => {
    expect(landed({}, {}, undefined, sampleConnector(), { role: "equipment-ground" }).outcome).toBe("not-applicable");
  });
  test("the clauses are those of the edition asked", () => {
    const subject = sampleSubject(sampleJoint());
    expect(terminalTemperature.check(subject, nfpa70Edition2017)).toMatchObject({
      outcome: "pass",
      cite: { edition: "2017" },
    });
  });

  test("a joint of which no circuit is given is asked for its load, a neutral too", () => {
    for (const role of ["phase", "neutral"] as const) {
      const { circuit: _circuit, ...apart } = sampleJoint({ role });
      expect(terminalTemperature.check(sampleSubject(apart), nfpa70Edition2023)).toMatchObject({
        rule: "terminal-temperature",
        missing: [{ path: "joint/circuit/loadA" }],
        required: "ampacity for the load",
      });
    }
  });
  describe("a neutral and the device ahead (220.61)", () => {
    const neutral = { role: "neutral" } as const;
    const under = (circuit: Partial<Circuit>, conductor: Partial<ConductorGroup> = {}) =>
      landed(conductor, circuit, cel(75), sampleConnector(), neutral);
    // published: 3/0 AWG copper carries 200 A at 75 C
    test("without a load it is held to the rating of the device, which is written down", () => {
      const finding = under({ protection: device(200) });
      expect(finding).toMatchObject({ outcome: "pass", required: "200 A at 75 C", offered: "200 A at 75 C" });
      expect("steps" in finding && finding.steps[0]).toMatchObject({
        value: 200,
        unit: "A",
        origin: "joint/circuit/protection/ratingA",
      });
    });
    test("a load given in part or twice is asked to be put right, whatever the device", () => {
      const protection = device(100);
      expect(under({ protection, continuousLoadA: 100 })).toMatchObject({
        missing: [{ path: "joint/circuit/nonContinuousLoadA" }],
      });
      expect(under({ protection, nonContinuousLoadA: 100 })).toMatchObject({
        missing: [{ path: "joint/circuit/continuousLoadA" }],
      });
      expect(under({ protection, loadA: 100, nonContinuousLoadA: 100 })).toMatchObject({
        missing: [{ path: "joint/circuit/loadA" }],
      });
    });
    test("a phase conductor is not held to it: its load is asked for", () => {
      expect(landed({}, { protection: device(100) }, cel(75))).toMatchObject({
        missing: [{ path: "joint/circuit/loadA" }],
      });
    });
    test("a size that the table does not have carries no device's rating", () => {
      for (const size of ["35 mm2", "5 AWG"])
        expect(under({ protection: device(15) }, { size })).toMatchObject({
          missing: [{ path: "joint/circuit/loadA" }],
        });
    });
    // published: 12 AWG copper carries 25 A at 75 C
    test("each conductor of a splice must carry it", () => {
      const pair = (ratingA: number) =>
        spliced(
          "splice",
          [{}, { size: "12 AWG" }],
          { protection: device(ratingA), endTerminalTemperature: cel(75) },
          sampleConnector({ mounting: { kind: "free" } }),
          neutral,
        );
      expect(pair(25)).toMatchObject({ outcome: "pass", offered: "25 A at 75 C" });
      expect(pair(26)).toMatchObject({ outcome: "missing", missing: [{ path: "joint/circuit/loadA" }] });
    });
  });
  describe("leads and fixture wire by themselves", () => {
    const lead = { size: "14 AWG", insulation: "equipment-lead" } as const;
    const fixture = { size: "16 AWG", insulation: "fixture-wire" } as const;
    test("fixture wire beside leads is asked about, in either order; leads alone are not judged", () => {
      for (const pair of [
        [lead, fixture],
        [fixture, lead],
      ])
        expect(spliced("splice", pair, { loadA: 1 })).toMatchObject({
          missing: [{ path: "joint/conductors/0/insulation" }],
          required: "ampacity for the load",
        });
      expect(spliced("splice", [lead, lead], { loadA: 1 })).toMatchObject({ outcome: "not-applicable" });
    });
  });
  test("of a tap whose conductors all run through the one that leaves is asked for; in a splice duty says nothing", () => {
    const runs = [{ duty: "run" }, { duty: "run", size: "1/0 AWG" }] as const;
    expect(spliced("tap", runs, { loadA: 1 })).toMatchObject({
      missing: [{ path: "joint/conductors/0/duty" }],
      required: "the conductor that leaves the tap",
    });
    expect(spliced("splice", runs, { loadA: 1 }).outcome).toBe("pass");
    expect(spliced("tap", [{ duty: "run" }, { size: "1/0 AWG" }], { loadA: 1 }).outcome).toBe("pass");
  });
  test("insulation that may not be used there is refused before a load is asked for, whichever conductor has it", () => {
    const pair = [{ insulation: "THWN-2" }, { insulation: "THHN" }] as const;
    expect(
      spliced("splice", pair, {}, sampleConnector({ mounting: { kind: "free" } }), { place: { location: "wet" } }),
    ).toMatchObject({ outcome: "fail", offered: "THHN" });
  });

  describe("what is asked, and with what at stake", () => {
    // published: 3/0 AWG copper 165, 200 and 225 A at 60, 75 and 90 C
    test("the amperes between which the answer lies", () => {
      expect(landed({}, { loadA: 166 }, cel(90), unratedConnector())).toMatchObject({
        required: "166 A for the load",
        offered: "165 A to 225 A",
        cite: { locator: "110.14(C)" },
      });
      expect(landed({ size: "35 mm2" }, { loadA: 66.25 }, cel(75))).toMatchObject({
        required: "66.3 A for the load",
        offered: "not known",
      });
    });
    test("the ratings that are known are written down before the question", () => {
      const finding = landed({}, { loadA: 166 }, cel(90), unratedConnector());
      expect("steps" in finding && finding.steps.map((step) => step.kind === "given" && step.origin)).toContain(
        "joint/equipment/terminalTemperature",
      );
    });
    test("of two conductors that need a fact the first is asked about", () => {
      expect(spliced("splice", [{ size: "35 mm2" }, { size: "5 AWG" }], { loadA: 1 })).toMatchObject({
        missing: [{ path: "joint/conductors/0/size" }],
      });
      expect(spliced("splice", [{}, { size: "5 AWG" }], { loadA: 1 })).toMatchObject({
        missing: [{ path: "joint/conductors/1/size" }],
      });
    });
  });

  test("what passes without a fact is said for the least that it can be", () => {
    // published: 3/0 AWG copper 165 A at 60 C, the least that an unknown connector can be rated
    const least = { outcome: "pass", offered: "165 A at 60 C" };
    expect(landed({}, { loadA: 165 }, cel(90), unratedConnector())).toMatchObject({
      ...least,
      sentence: expect.stringContaining("the least it can be") as string,
    });
    expect(landed({}, { protection: device(165) }, cel(90), unratedConnector(), { role: "neutral" })).toMatchObject(
      least,
    );
  });

  describe("several conductors", () => {
    const ends = { endTerminalTemperature: cel(75) } as const;
    // published: at 75 C 2 AWG copper carries 115 A, 4 AWG copper 85 A
    test("each is compared, and the smallest is named, the first of equal ones", () => {
      for (const sizes of [
        ["2 AWG", "4 AWG"],
        ["4 AWG", "2 AWG"],
      ]) {
        const finding = spliced(
          "splice",
          sizes.map((size) => ({ size })),
          { loadA: 80, ...ends },
        );
        expect(finding).toMatchObject({
          outcome: "pass",
          sentence: expect.stringMatching(/^4 AWG copper carries 85 A at 75 C/) as string,
        });
        if (!("steps" in finding)) throw new Error(finding.because);
        const compared = finding.steps.filter(({ kind }) => kind === "compared");
        expect(compared).toHaveLength(2);
        expect(finding.steps.at(-1)).toMatchObject({ value: "pass", uses: compared.map(({ id }) => id) });
      }
      const equal = spliced("splice", [{ size: "4 AWG", stranding: "solid" }, { size: "4 AWG" }], {
        loadA: 80,
        ...ends,
      });
      expect(equal).toMatchObject({ outcome: "pass", offered: "85 A at 75 C" });
      // published: at 75 C 4/0 AWG copper and 300 kcmil aluminum carry 230 A each
      const unlike = [{ size: "4/0 AWG" }, { size: "300 kcmil", metal: "aluminum" }] as const;
      expect(spliced("splice", unlike, { loadA: 230, ...ends })).toMatchObject({
        sentence: expect.stringMatching(/^4\/0 AWG copper carries 230 A at 75 C/) as string,
      });
    });
    test("a refusal speaks of the conductor that fails alone", () => {
      const finding = spliced("splice", [{ size: "2 AWG" }, { size: "4 AWG" }], { loadA: 86, ...ends });
      expect(finding).toMatchObject({
        outcome: "fail",
        sentence: expect.stringMatching(/^4 AWG copper carries 85 A .* less than the load of 86 A\.$/) as string,
      });
      if (!("steps" in finding)) throw new Error(finding.because);
      expect(finding.steps.filter(({ kind }) => kind === "compared")).toHaveLength(1);
      expect(finding.steps.at(-1)).toMatchObject({ kind: "compared", relation: ">=", value: false });
    });
  });

  describe("what would put it right", () => {
    // published: copper 4/0 AWG 195 and 230 A at 60 and 75 C; 2/0 AWG 175 A at 75 C; 1250 kcmil 590 A at 75 C; 2000 kcmil 560 and 665 A
    test.each([
      ["a larger size", {}, { loadA: 201 }, cel(75), "4/0 AWG copper (230 A at 75 C)"],
      ["a larger size in each set", {}, { loadA: 401, sets: 2 }, cel(75), "2 x 4/0 AWG copper (460 A at 75 C)"],
      [
        "no better terminal, where the insulation stands no more",
        { insulation: "TW" },
        { loadA: 166 },
        cel(60),
        "4/0 AWG copper (195 A at 60 C)",
      ],
      [
        "a better terminal, where the insulation just stands it",
        { insulation: "THW" },
        { loadA: 166 },
        cel(60),
        "4/0 AWG copper (195 A at 60 C); or terminals and connector rated 75 C with 2/0 AWG copper (175 A at 75 C)",
      ],
      [
        "a better terminal too",
        {},
        { loadA: 166 },
        cel(60),
        "4/0 AWG copper (195 A at 60 C); or terminals and connector rated 75 C with 2/0 AWG copper (175 A at 75 C)",
      ],
      [
        "a better terminal, where no size serves at 60 C",
        {},
        { loadA: 561 },
        cel(60),
        "more conductors in parallel; or terminals and connector rated 75 C with 1250 kcmil copper (590 A at 75 C)",
      ],
      ["more conductors, where no size serves at all", {}, { loadA: 666 }, cel(60), "more conductors in parallel"],
      ["a rated part", {}, { loadA: 1 }, cel(59), "parts rated 60 C or more"],
    ] as const)("%s", (_words, conductor, circuit, terminal, fix) => {
      expect(landed(conductor, circuit, terminal)).toMatchObject({ outcome: "fail", fix });
    });
    test("nothing, where it passes", () => {
      expect(landed({}, { loadA: 200 }, cel(75))).toMatchObject({ outcome: "pass", fix: "" });
    });
  });
});
