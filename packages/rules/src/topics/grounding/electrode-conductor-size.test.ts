import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import type { Grounding, Joint } from "../../core/joint.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { electrodeConductorSize } from "./electrode-conductor-size.js";

type Service = NonNullable<Grounding["service"]>;

function electrodeConductor(
  conductors: readonly Partial<ConductorGroup>[],
  grounding: Grounding | undefined,
  change: Partial<Joint> = {},
) {
  const joint = sampleJoint({
    role: "electrode-conductor",
    conductors: conductors.map((one) => sampleConductor({ insulation: "bare", ...one })),
    ...(grounding === undefined ? {} : { grounding }),
    ...change,
  });
  return electrodeConductorSize.check(sampleSubject(joint), nfpa70Edition2023);
}

const service = (size: string, metal: Service["metal"], sets = 1): Service => ({ size, metal, sets });

describe("size of the grounding electrode conductor (NFPA 70-2023 250.66)", () => {
  // published: Table 250.66, to water pipe or steel, which have no cap
  test.each([
    ["8 AWG", service("2 AWG", "copper"), "pass"],
    ["8 AWG", service("1 AWG", "copper"), "fail"],
    ["6 AWG", service("1/0 AWG", "copper"), "pass"],
    ["6 AWG", service("2/0 AWG", "copper"), "fail"],
    ["4 AWG", service("3/0 AWG", "copper"), "pass"],
    ["4 AWG", service("4/0 AWG", "copper"), "fail"],
    ["2 AWG", service("350 kcmil", "copper"), "pass"],
    ["2 AWG", service("400 kcmil", "copper"), "fail"],
    ["1/0 AWG", service("600 kcmil", "copper"), "pass"],
    ["1/0 AWG", service("300 kcmil", "copper", 2), "pass"],
    ["1/0 AWG", service("350 kcmil", "copper", 2), "fail"],
    ["2/0 AWG", service("1100 kcmil", "copper"), "pass"],
    ["2/0 AWG", service("1101 kcmil", "copper"), "fail"],
    ["8 AWG", service("1/0 AWG", "aluminum"), "pass"],
    ["8 AWG", service("2/0 AWG", "aluminum"), "fail"],
    ["2 AWG", service("250 kcmil", "aluminum", 2), "pass"],
    ["2/0 AWG", service("350 kcmil", "aluminum", 5), "pass"],
    ["2/0 AWG", service("600 kcmil", "aluminum", 5), "fail"],
    ["8 AWG", service("1/0 AWG", "copper-clad-aluminum"), "pass"],
  ] as const)("%s copper for a service of %o: %s", (size, given, outcome) => {
    // hand: 2 x 300 = 600, 2 x 350 = 700, 2 x 250 = 500, 5 x 350 = 1750, 5 x 600 = 3000 kcmil
    expect(electrodeConductor([{ size }], { electrode: "water-pipe", service: given }).outcome).toBe(outcome);
  });
  test("aluminum electrode conductors have their own column", () => {
    // published: 4 AWG aluminum for 2/0 and 3/0 AWG aluminum service
    expect(
      electrodeConductor([{ size: "4 AWG", metal: "aluminum" }], {
        electrode: "building-steel",
        service: service("3/0 AWG", "aluminum"),
      }).outcome,
    ).toBe("pass");
    expect(
      electrodeConductor([{ size: "6 AWG", metal: "aluminum" }], {
        electrode: "building-steel",
        service: service("3/0 AWG", "aluminum"),
      }),
    ).toMatchObject({
      outcome: "fail",
      required: "4 AWG AL",
      offered: "6 AWG AL",
    });
  });

  test("the largest size of the table serves any service, known or not", () => {
    expect(electrodeConductor([{ size: "3/0 AWG" }], undefined)).toMatchObject({
      outcome: "pass",
      required: "3/0 AWG CU",
    });
    expect(electrodeConductor([{ size: "250 kcmil", metal: "aluminum" }], {}).outcome).toBe("pass");
    expect(electrodeConductor([{ size: "2/0 AWG" }], { electrode: "water-pipe" })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/grounding/service" }],
    });
  });
  test("what is below the smallest size of the table serves none", () => {
    // published: 8 AWG copper, 6 AWG aluminum
    expect(electrodeConductor([{ size: "10 AWG" }], undefined)).toMatchObject({
      outcome: "fail",
      required: "8 AWG CU",
    });
    expect(electrodeConductor([{ size: "8 AWG", metal: "aluminum" }], undefined).outcome).toBe("fail");
  });

  // published: 250.66(A): 6 AWG copper or 4 AWG aluminum to a rod alone; (B): 4 AWG copper to concrete alone
  test.each([
    ["8 AWG", "copper", "copper-bonded-rod", "fail"],
    ["6 AWG", "copper", "copper-bonded-rod", "pass"],
    ["4 AWG", "copper", "galvanized-rod", "pass"],
    ["6 AWG", "copper", "stainless-rod", "pass"],
    ["6 AWG", "copper", "plate", "pass"],
    ["6 AWG", "aluminum", "copper-bonded-rod", "fail"],
    ["4 AWG", "aluminum", "copper-bonded-rod", "pass"],
    ["6 AWG", "copper", "concrete-encased-rebar", "fail"],
    ["4 AWG", "copper", "concrete-encased-rebar", "pass"],
    ["4 AWG", "copper", "water-pipe", "fail"],
    ["4 AWG", "copper", "building-steel", "fail"],
    ["4 AWG", "copper", "ground-ring", "fail"],
  ] as const)("%s %s serving one %s alone on a large service: %s", (size, metal, electrode, outcome) => {
    const grounding = { electrode, soleConnection: true, service: service("600 kcmil", "aluminum", 5) };
    expect(electrodeConductor([{ size, metal }], grounding).outcome).toBe(outcome);
  });
  test("with its cap the conductor needs no service, and the clause of the cap is named", () => {
    expect(
      electrodeConductor([{ size: "6 AWG" }], { electrode: "copper-bonded-rod", soleConnection: true }),
    ).toMatchObject({
      outcome: "pass",
      cite: { locator: "250.66(A)" },
      required: "6 AWG CU",
    });
    expect(
      electrodeConductor([{ size: "4 AWG" }], { electrode: "concrete-encased-rebar", soleConnection: true }),
    ).toMatchObject({ cite: { locator: "250.66(B)" } });
  });
  test("whether it goes on to another electrode is asked for only where that decides", () => {
    const large = service("600 kcmil", "aluminum", 5);
    expect(electrodeConductor([{ size: "6 AWG" }], { electrode: "copper-bonded-rod", service: large })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/grounding/soleConnection" }],
    });
    expect(
      electrodeConductor([{ size: "6 AWG" }], {
        electrode: "copper-bonded-rod",
        service: large,
        soleConnection: false,
      }),
    ).toMatchObject({ outcome: "fail", required: "3/0 AWG CU" });
    expect(
      electrodeConductor([{ size: "6 AWG" }], { electrode: "copper-bonded-rod", service: service("1/0 AWG", "copper") })
        .outcome,
    ).toBe("pass");
    expect(electrodeConductor([{ size: "8 AWG" }], { electrode: "copper-bonded-rod", service: large }).outcome).toBe(
      "fail",
    );
  });
  test("the electrode is asked for where it decides", () => {
    const large = service("600 kcmil", "aluminum", 5);
    expect(electrodeConductor([{ size: "6 AWG" }], { service: large })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/grounding/electrode" }],
    });
    expect(electrodeConductor([{ size: "6 AWG" }], { service: large, soleConnection: false }).outcome).toBe("fail");
    expect(electrodeConductor([{ size: "8 AWG" }], { service: large }).outcome).toBe("fail");
  });
  // published: 250.66(A), 4 AWG aluminum to a rod; no electrode lets 6 AWG aluminum serve a large service
  test("of aluminum the electrode is asked for from 4 AWG up", () => {
    const large = service("600 kcmil", "aluminum", 5);
    expect(electrodeConductor([{ size: "4 AWG", metal: "aluminum" }], { service: large })).toMatchObject({
      missing: [{ path: "joint/grounding/electrode" }],
    });
    expect(electrodeConductor([{ size: "6 AWG", metal: "aluminum" }], { service: large }).outcome).toBe("fail");
  });
  test("metric sizes are asked about, not converted", () => {
    expect(electrodeConductor([{ size: "35 mm2" }], undefined)).toMatchObject({
      missing: [{ path: "joint/conductors/0/size" }],
    });
    expect(
      electrodeConductor([{ size: "2 AWG" }], { electrode: "water-pipe", service: service("95 mm2", "copper") }),
    ).toMatchObject({ missing: [{ path: "joint/grounding/service" }] });
    expect(
      electrodeConductor([{ size: "2 AWG" }], {
        electrode: "water-pipe",
        service: service("4/0 AWG", "copper", Number.NaN),
      }),
    ).toMatchObject({ outcome: "missing" });
  });
  test("a service of no sets is asked about, not taken for the smallest there is", () => {
    for (const sets of [0, -1])
      expect(
        electrodeConductor([{ size: "8 AWG" }], { electrode: "water-pipe", service: service("2 AWG", "copper", sets) }),
      ).toMatchObject({ outcome: "missing", missing: [{ path: "joint/grounding/service" }] });
  });
  test("one conductor that cannot be judged keeps the other from being accepted for both", () => {
    const grounding: Grounding = { electrode: "water-pipe", service: service("2 AWG", "copper") };
    expect(electrodeConductor([{ size: "8 AWG" }, { size: "10 mm2" }], grounding)).toMatchObject({
      missing: [{ path: "joint/conductors/1/size" }],
      offered: "10 mm2 CU",
    });
    expect(electrodeConductor([{ size: "10 mm2" }, { size: "8 AWG" }], grounding)).toMatchObject({
      missing: [{ path: "joint/conductors/0/size" }],
    });
    expect(electrodeConductor([], grounding)).toMatchObject({
      missing: [{ path: "joint/conductors/0/size", because: "No conductor is given." }],
      offered: "not known",
    });
  });
  test("both conductors of a splice are judged", () => {
    const grounding: Grounding = { electrode: "concrete-encased-rebar", soleConnection: true };
    expect(electrodeConductor([{ size: "4 AWG" }, { size: "2 AWG" }], grounding, { function: "splice" }).outcome).toBe(
      "pass",
    );
    expect(electrodeConductor([{ size: "4 AWG" }, { size: "10 AWG" }], grounding, { function: "splice" }).outcome).toBe(
      "fail",
    );
    expect(electrodeConductor([{ size: "6 AWG" }, { size: "10 AWG" }], grounding, { function: "splice" }).outcome).toBe(
      "fail",
    );
  });
  test("other roles are not judged", () => {
    expect(electrodeConductor([{}], undefined, { role: "bonding" }).outcome).toBe("not-applicable");
    for (const role of ["phase", "neutral", "equipment-ground"] as const)
      expect(electrodeConductor([{}], { bonding: "electrode-system" }, { role }).outcome).toBe("not-applicable");
  });
});

describe("taps to a common electrode conductor (250.64(D)(1))", () => {
  const WHOLE = { size: "600 kcmil", metal: "copper", sets: 2 } as const;
  const OWN = { size: "3/0 AWG", metal: "copper", sets: 1 } as const;
  const tap = (run: string, leaving: string, grounding: Grounding) =>
    electrodeConductorSize.check(
      sampleSubject(
        sampleJoint({
          function: "tap",
          role: "electrode-conductor",
          conductors: [
            sampleConductor({ size: run, duty: "run", uncut: true }),
            sampleConductor({ size: leaving, duty: "tap" }),
          ],
          grounding,
        }),
      ),
      nfpa70Edition2023,
    );
  // published: Table 250.66, 3/0 AWG copper over 1100 kcmil, 4 AWG over 1/0 to 3/0 AWG
  test.each([
    ["3/0 AWG", "4 AWG", "pass"],
    ["3/0 AWG", "6 AWG", "fail"],
    ["2/0 AWG", "4 AWG", "fail"],
  ] as const)("common %s, tap %s: %s", (run, leaving, outcome) => {
    expect(
      tap(run, leaving, { service: WHOLE, tapService: OWN, electrode: "water-pipe", soleConnection: false }).outcome,
    ).toBe(outcome);
  });
  test("the conductors of its own enclosure are asked for where the whole service would ask for more", () => {
    const grounding = { service: WHOLE, electrode: "water-pipe", soleConnection: false } as const;
    expect(tap("3/0 AWG", "4 AWG", grounding)).toMatchObject({ missing: [{ path: "joint/grounding/tapService" }] });
    expect(tap("3/0 AWG", "3/0 AWG", grounding).outcome).toBe("pass");
    expect(tap("3/0 AWG", "4 AWG", { ...grounding, tapService: { ...OWN, size: "95 mm2" } })).toMatchObject({
      missing: [{ path: "joint/grounding/tapService" }],
    });
  });
  // published: Table 250.66, 3/0 AWG copper for 1200 kcmil
  test("only a tap goes by its own enclosure, a splice by the whole service", () => {
    const grounding = { service: WHOLE, tapService: OWN, electrode: "water-pipe", soleConnection: false } as const;
    expect(
      electrodeConductor([{ size: "4 AWG", duty: "tap", count: 2 }], grounding, { function: "splice" }),
    ).toMatchObject({ outcome: "fail", required: "3/0 AWG CU" });
  });
});

describe("to a ground ring alone (250.66(C))", () => {
  const WHOLE = { size: "600 kcmil", metal: "copper", sets: 2 } as const;
  const toRing = (size: string, more: Grounding, metal: "copper" | "aluminum" = "copper") =>
    electrodeConductorSize.check(
      sampleSubject(
        sampleJoint({
          role: "electrode-conductor",
          conductors: [sampleConductor({ size, metal })],
          grounding: { service: WHOLE, electrode: "ground-ring", soleConnection: true, ...more },
        }),
      ),
      nfpa70Edition2023,
    );
  // published: Table 250.66, 3/0 AWG copper over 1100 kcmil; 250.52(A)(4), a ring is of 2 AWG or larger
  test.each([
    ["2 AWG", "2 AWG", "pass"],
    ["3 AWG", "2 AWG", "fail"],
    ["2 AWG", "1/0 AWG", "fail"],
    ["1/0 AWG", "1/0 AWG", "pass"],
    ["3/0 AWG", "4/0 AWG", "pass"],
  ] as const)("%s to a ring of %s: %s", (size, ringSize, outcome) => {
    expect(toRing(size, { ringSize }).outcome).toBe(outcome);
  });
  test("the ring is asked for where it may be enough", () => {
    expect(toRing("2 AWG", {})).toMatchObject({ missing: [{ path: "joint/grounding/ringSize" }] });
    expect(toRing("2 AWG", { ringSize: "4 AWG" })).toMatchObject({ missing: [{ path: "joint/grounding/ringSize" }] });
    expect(toRing("3 AWG", {}).outcome).toBe("fail");
    expect(toRing("2 AWG", { soleConnection: false, ringSize: "2 AWG" }).outcome).toBe("fail");
    expect(toRing("2 AWG", { soleConnection: false })).toMatchObject({ outcome: "fail", required: "3/0 AWG CU" });
    expect(toRing("2 AWG", { ringSize: "2 AWG" })).toMatchObject({ cite: { locator: "250.66(C)" } });
  });
  test("aluminum is not limited by the ring", () => {
    expect(toRing("1/0 AWG", { ringSize: "2 AWG" }, "aluminum").outcome).toBe("fail");
  });
});
