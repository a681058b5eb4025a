import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import type { Edition } from "../../core/edition.js";
import type { Circuit, Grounding, Joint, ServiceConductors, Upsizing } from "../../core/joint.js";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2020 } from "../../rulesets/nfpa70-2020/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { bondingJumperSize } from "./bonding-jumper-size.js";
import { electrodeConductorSize } from "./electrode-conductor-size.js";

function jumper(
  conductors: readonly Partial<ConductorGroup>[],
  grounding: Grounding | undefined,
  edition: Edition = nfpa70Edition2023,
  change: Partial<Joint> = {},
) {
  return bondingJumperSize.check(joint(conductors, grounding, change), edition);
}

function joint(
  conductors: readonly Partial<ConductorGroup>[],
  grounding: Grounding | undefined,
  change: Partial<Joint> = {},
) {
  return sampleSubject(
    sampleJoint({
      role: "bonding",
      conductors: conductors.map((one) => sampleConductor(one)),
      circuit: { sets: 1 },
      ...(grounding === undefined ? {} : { grounding }),
      ...change,
    }),
  );
}

const service = (size: string, metal: ServiceConductors["metal"], sets = 1): ServiceConductors => ({
  size,
  metal,
  sets,
});

describe("supply side (NFPA 70 250.102(C)(1))", () => {
  // published: rows of Table 250.102(C)(1)
  test.each([
    ["8 AWG", "copper", "2 AWG", "copper", "pass"],
    ["10 AWG", "copper", "2 AWG", "copper", "fail"],
    ["8 AWG", "copper", "1 AWG", "copper", "fail"],
    ["6 AWG", "copper", "1/0 AWG", "copper", "pass"],
    ["4 AWG", "copper", "3/0 AWG", "copper", "pass"],
    ["4 AWG", "copper", "4/0 AWG", "copper", "fail"],
    ["2 AWG", "copper", "350 kcmil", "copper", "pass"],
    ["2 AWG", "copper", "400 kcmil", "copper", "fail"],
    ["1/0 AWG", "copper", "600 kcmil", "copper", "pass"],
    ["2/0 AWG", "copper", "900 kcmil", "copper", "pass"],
    ["1/0 AWG", "copper", "900 kcmil", "copper", "fail"],
    ["3/0 AWG", "aluminum", "600 kcmil", "copper", "pass"],
    ["2/0 AWG", "aluminum", "600 kcmil", "copper", "fail"],
    ["8 AWG", "copper", "1/0 AWG", "aluminum", "pass"],
    ["8 AWG", "copper", "2/0 AWG", "aluminum", "fail"],
    ["2/0 AWG", "copper", "1750 kcmil", "aluminum", "pass"],
    ["1/0 AWG", "copper", "1750 kcmil", "aluminum", "fail"],
  ] as const)("%s %s for %s %s: %s", (size, metal, supply, supplyMetal, outcome) => {
    for (const bonding of ["main", "system", "supply-side"] as const)
      expect(jumper([{ size, metal }], { bonding, service: service(supply, supplyMetal) }).outcome).toBe(outcome);
  });

  // hand: 4 x 500 = 2000 kcmil copper, 12.5 % = 250 kcmil, exactly; 5 x 600 = 3000 kcmil aluminum, 375: 400 kcmil
  test.each([
    ["4/0 AWG", "copper", service("500 kcmil", "copper", 4), "fail", "250 kcmil CU"],
    ["250 kcmil", "copper", service("500 kcmil", "copper", 4), "pass", "250 kcmil CU"],
    ["350 kcmil", "aluminum", service("600 kcmil", "aluminum", 5), "fail", "400 kcmil AL"],
    ["400 kcmil", "aluminum", service("600 kcmil", "aluminum", 5), "pass", "400 kcmil AL"],
  ] as const)("12.5 %: %s %s for %j: %s", (size, metal, supply, outcome, required) => {
    expect(jumper([{ size, metal }], { bonding: "supply-side", service: supply })).toMatchObject({
      outcome,
      required,
      cite: { locator: "250.102(C)" },
    });
  });
  // hand: aluminum of 3000 kcmil; copper of 4 x 500 would carry as much: 250 kcmil
  test("of another metal the share is taken of conductors of the jumper's own", () => {
    const grounding: Grounding = { bonding: "main", service: service("600 kcmil", "aluminum", 5) };
    expect(jumper([{ size: "250 kcmil" }], grounding)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/grounding/equivalentService" }],
    });
    const known = { ...grounding, equivalentService: service("500 kcmil", "copper", 4) };
    expect(jumper([{ size: "250 kcmil" }], known)).toMatchObject({
      outcome: "pass",
      cite: { locator: "250.28(D)" },
    });
    expect(jumper([{ size: "4/0 AWG" }], known).outcome).toBe("fail");
    expect(
      jumper([{ size: "250 kcmil" }], { ...grounding, equivalentService: service("500 kcmil", "aluminum", 4) }).outcome,
    ).toBe("missing");
  });

  // hand: 6 sets of 500 kcmil copper in three raceways: 1000 kcmil in each, 2/0 AWG; in one of six 500, 1/0 AWG
  test("jumpers in each of several raceways go by what lies in one", () => {
    const grounding: Grounding = { bonding: "supply-side", service: service("500 kcmil", "copper", 6) };
    expect(jumper([{ size: "2/0 AWG" }], grounding)).toMatchObject({ outcome: "fail", required: "400 kcmil CU" });
    expect(jumper([{ size: "2/0 AWG" }], { ...grounding, racewaysBondedApart: 3 })).toMatchObject({
      outcome: "pass",
      cite: { locator: "250.102(C)(2)" },
    });
    expect(jumper([{ size: "1/0 AWG" }], { ...grounding, racewaysBondedApart: 3 }).outcome).toBe("fail");
    expect(jumper([{ size: "1/0 AWG" }], { ...grounding, racewaysBondedApart: 6 }).outcome).toBe("pass");
    expect(jumper([{ size: "1/0 AWG" }], { ...grounding, racewaysBondedApart: 4 })).toMatchObject({
      missing: [{ path: "joint/grounding/racewaysBondedApart" }],
    });
    // A main jumper is one for the whole service.
    expect(jumper([{ size: "2/0 AWG" }], { ...grounding, bonding: "main", racewaysBondedApart: 3 }).outcome).toBe(
      "fail",
    );
  });

  test("the supply is asked for, unless no supply asks for less", () => {
    expect(jumper([{ size: "1/0 AWG" }], { bonding: "supply-side" })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/grounding/service" }],
    });
    // published: 8 AWG copper and 6 AWG aluminum are the first row of the table
    expect(jumper([{ size: "10 AWG" }], { bonding: "supply-side" })).toMatchObject({
      outcome: "fail",
      required: "8 AWG CU",
    });
    expect(jumper([{ size: "8 AWG", metal: "aluminum" }], { bonding: "supply-side" })).toMatchObject({
      required: "6 AWG AL",
    });
    expect(
      jumper([{ size: "1/0 AWG" }], { bonding: "supply-side", service: service("240 mm2", "copper") }),
    ).toMatchObject({ missing: [{ path: "joint/grounding/service" }] });
    expect(
      jumper([{ size: "70 mm2" }], { bonding: "supply-side", service: service("500 kcmil", "copper") }),
    ).toMatchObject({ missing: [{ path: "joint/conductors/0/size" }] });
  });
  // published: the clause of each jumper, by its locator
  test.each([
    ["main", "250.28(D)"],
    ["system", "250.30(A)(1)"],
    ["supply-side", "250.102(C)"],
    ["water-pipe", "250.104(A)(1)"],
    ["structural-metal", "250.104(C)"],
  ] as const)("%s: by %s", (bonding, locator) => {
    expect(jumper([{ size: "1/0 AWG" }], { bonding, service: service("500 kcmil", "copper") })).toMatchObject({
      outcome: "pass",
      cite: { locator },
    });
  });
  // hand: 20 x 1000 = 20 000 kcmil, 12.5 % = 2500 kcmil; 16 x 1000 = 16 000, 2000: the largest conductor there is
  test("a share beyond the largest conductor is asked for as an area", () => {
    const of = (sets: number): Grounding => ({ bonding: "main", service: service("1000 kcmil", "copper", sets) });
    expect(jumper([{ size: "2000 kcmil" }], of(16))).toMatchObject({ outcome: "pass", required: "2000 kcmil CU" });
    expect(jumper([{ size: "2000 kcmil" }], of(20))).toMatchObject({ outcome: "fail", required: "2500 kcmil" });
  });
  test("a supply of no sets, or an equivalent that the table cannot be entered with, is asked about", () => {
    expect(
      jumper([{ size: "1/0 AWG" }], { bonding: "main", service: service("500 kcmil", "copper", 0) }),
    ).toMatchObject({ outcome: "missing", missing: [{ path: "joint/grounding/service" }] });
    for (const equivalentService of [service("240 mm2", "copper", 4), service("500 kcmil", "copper", 0)])
      expect(
        jumper([{ size: "250 kcmil" }], {
          bonding: "main",
          service: service("600 kcmil", "aluminum", 5),
          equivalentService,
        }),
      ).toMatchObject({ outcome: "missing", missing: [{ path: "joint/grounding/equivalentService" }] });
  });
  test("one jumper that cannot be judged keeps the other from being accepted for both", () => {
    const grounding: Grounding = { bonding: "supply-side", service: service("500 kcmil", "copper") };
    for (const conductors of [
      [{ size: "2/0 AWG" }, { size: "70 mm2" }],
      [{ size: "70 mm2" }, { size: "2/0 AWG" }],
    ])
      expect(jumper(conductors, grounding)).toMatchObject({
        outcome: "missing",
        missing: [{ path: expect.stringMatching(/^joint\/conductors\/[01]\/size$/) as string }],
      });
    expect(jumper([{ size: "2 AWG" }, { size: "70 mm2" }], grounding).outcome).toBe("fail");
    expect(jumper([], grounding)).toMatchObject({ missing: [{ path: "joint/conductors/0/size" }] });
  });
  test("each of two jumpers must be large enough", () => {
    const grounding: Grounding = { bonding: "supply-side", service: service("500 kcmil", "copper") };
    expect(jumper([{ size: "1/0 AWG" }, { size: "2/0 AWG" }], grounding)).toMatchObject({
      outcome: "pass",
      offered: "1/0 AWG CU and 2/0 AWG CU",
    });
    expect(jumper([{ size: "1/0 AWG" }, { size: "2 AWG" }], grounding)).toMatchObject({
      outcome: "fail",
      offered: "2 AWG CU",
    });
  });
});

describe("water pipes and structural metal (250.104)", () => {
  const FIVE_SETS = service("600 kcmil", "aluminum", 5);
  // published: 250.104(A)(1) of 2023, 3/0 AWG copper or 250 kcmil aluminum at most; in 2017 the table alone
  test.each([
    [nfpa70Edition2017, "3/0 AWG", "missing"],
    [nfpa70Edition2020, "3/0 AWG", "pass"],
    [nfpa70Edition2023, "3/0 AWG", "pass"],
    [nfpa70Edition2023, "2/0 AWG", "missing"],
  ] as const)("$edition: the limit, $size", (edition, size, outcome) => {
    for (const bonding of ["water-pipe", "structural-metal"] as const)
      expect(jumper([{ size }], { bonding, service: FIVE_SETS }, edition).outcome).toBe(outcome);
  });
  test("the limit needs no supply; below it the supply decides", () => {
    expect(jumper([{ size: "3/0 AWG" }], { bonding: "water-pipe" })).toMatchObject({
      outcome: "pass",
      required: "3/0 AWG CU",
      cite: { locator: "250.104(A)(1)" },
    });
    expect(jumper([{ size: "250 kcmil", metal: "aluminum" }], { bonding: "structural-metal" })).toMatchObject({
      outcome: "pass",
      cite: { locator: "250.104(C)" },
    });
    expect(jumper([{ size: "2/0 AWG" }], { bonding: "water-pipe" })).toMatchObject({
      missing: [{ path: "joint/grounding/service" }],
    });
    expect(
      jumper([{ size: "2/0 AWG" }], { bonding: "water-pipe", service: service("900 kcmil", "copper") }).outcome,
    ).toBe("pass");
  });
  // hand: 12.5 % of 2000 kcmil is 250 kcmil, beyond the limit: 3/0 AWG; of 1200 kcmil 150, 3/0 AWG too
  test("a share beyond the limit asks for the limit only", () => {
    const of = (sets: number): Grounding => ({ bonding: "water-pipe", service: service("400 kcmil", "copper", sets) });
    expect(jumper([{ size: "2/0 AWG" }], of(5))).toMatchObject({ outcome: "fail", required: "3/0 AWG CU" });
    expect(jumper([{ size: "2/0 AWG" }], of(3))).toMatchObject({ outcome: "fail", required: "3/0 AWG CU" });
    expect(jumper([{ size: "2/0 AWG" }], of(5), nfpa70Edition2017)).toMatchObject({ required: "250 kcmil CU" });
    expect(jumper([{ size: "3/0 AWG" }], of(3), nfpa70Edition2017).outcome).toBe("pass");
  });
});

describe("load side and other pipes (250.102(D), 250.104(B))", () => {
  const circuit: Circuit = { sets: 1, protection: { kind: "device", ratingA: 200 } };
  // published: Table 250.122, 6 AWG copper for 200 A, 4 AWG for 300 A
  test.each([
    ["load-side", "250.102(D)"],
    ["other-pipe", "250.104(B)"],
  ] as const)("%s goes by the device", (bonding, locator) => {
    expect(jumper([{ size: "6 AWG" }], { bonding }, nfpa70Edition2023, { circuit })).toMatchObject({
      rule: "bonding-jumper-size",
      outcome: "pass",
      required: "6 AWG CU",
      cite: { locator },
    });
    expect(jumper([{ size: "8 AWG" }], { bonding }, nfpa70Edition2023, { circuit })).toMatchObject({
      outcome: "fail",
      sentence: "The bonding jumper is 8 AWG CU, smaller than the 6 AWG CU asked for: a device of 200 A asks for it.",
    });
    expect(jumper([{ size: "6 AWG" }], { bonding })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/circuit/protection" }],
    });
  });
  // hand: 225 A, 41.74 x 500 / 300 = 69.57 kcmil: 1 AWG
  test("it is raised with phases that were raised", () => {
    const upsizing: Upsizing = {
      minimum: { size: "300 kcmil", metal: "copper" },
      installed: { size: "500 kcmil", metal: "copper" },
    };
    const change = { circuit: { sets: 1, protection: { kind: "device", ratingA: 225 } }, upsizing } as const;
    expect(jumper([{ size: "2 AWG" }], { bonding: "load-side" }, nfpa70Edition2023, change).outcome).toBe("fail");
    expect(jumper([{ size: "1 AWG" }], { bonding: "load-side" }, nfpa70Edition2023, change).outcome).toBe("pass");
  });
});

describe("what is bonded", () => {
  test("is asked for", () => {
    expect(jumper([{}], undefined)).toMatchObject({ missing: [{ path: "joint/grounding/bonding" }] });
    expect(jumper([{}], { service: service("500 kcmil", "copper") })).toMatchObject({
      missing: [{ path: "joint/grounding/bonding" }],
    });
  });
  test("by its design: no clause sizes it", () => {
    expect(jumper([{}], { bonding: "by-design" })).toMatchObject({
      outcome: "not-applicable",
      because: expect.stringContaining("design") as string,
    });
  });
  // published: Table 250.66, 2/0 AWG copper over 600 to 1100 kcmil; 6 AWG copper to rods alone
  test("between electrodes: sized as an electrode conductor, by its rule", () => {
    const grounding: Grounding = { bonding: "electrode-system", service: service("900 kcmil", "copper") };
    expect(jumper([{}], grounding).outcome).toBe("not-applicable");
    const sized = (size: string, more: Grounding = {}) =>
      electrodeConductorSize.check(joint([{ size }], { ...grounding, ...more }), nfpa70Edition2023);
    expect(sized("2/0 AWG", { soleConnection: false })).toMatchObject({
      outcome: "pass",
      sentence: expect.stringContaining("The bonding jumper is 2/0 AWG CU") as string,
    });
    expect(sized("1/0 AWG", { soleConnection: false })).toMatchObject({
      outcome: "fail",
      fix: "a bonding jumper of 2/0 AWG CU or larger",
    });
    expect(sized("6 AWG", { electrode: "copper-bonded-rod", soleConnection: true }).outcome).toBe("pass");
  });
  test.each(["phase", "neutral", "equipment-ground", "electrode-conductor"] as const)("role %s", (role) => {
    expect(jumper([{}], { bonding: "main" }, nfpa70Edition2023, { role }).outcome).toBe("not-applicable");
  });
});
