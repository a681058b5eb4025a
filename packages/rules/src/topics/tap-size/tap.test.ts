import { describe, expect, test } from "vitest";
import type { ConductorRun, Grouping } from "../../core/conductor-run.js";
import type { Edition } from "../../core/edition.js";
import type { Length } from "../../core/quantity.js";
import { EDITIONS } from "../../rulesets/editions.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { celsius, sampleRun, sampleRunWithout } from "../../samples/sample-run.js";
import { type TapQuestion, tap } from "./tap.js";
import { TAP_ALLOWANCES, TAP_CONDITIONS, TERMS } from "./tap-allowances.js";

const ft = (value: number): Length => ({ value, unit: "ft" });
const BAY = { wallHeight: ft(40), horizontalLength: ft(20), tapAboveFloor: ft(30) } as const;

type Change = Partial<Omit<TapQuestion, "run">> & { readonly run?: Partial<ConductorRun> };

function questionOf({ run, ...change }: Change): TapQuestion {
  return {
    ask: "smallest-size",
    allowance: "feeder-tap-to-25-ft",
    deviceAheadA: 400,
    endDeviceA: 60,
    continuousLoadA: 0,
    nonContinuousLoadA: 50,
    length: ft(20),
    physicallyProtected: true,
    leavesEnclosure: true,
    conditionsMet: TAP_CONDITIONS,
    run: sampleRun(run),
    ...change,
  };
}

function ask(change: Change, edition: Edition = nfpa70Edition2023) {
  return tap.answer(questionOf(change), { ruleSet: "nfpa70", edition: edition.edition }, edition);
}

function askWithout(fact: keyof TapQuestion, change: Change = {}) {
  const question: Partial<Record<keyof TapQuestion, unknown>> = { ...questionOf(change) };
  Reflect.deleteProperty(question, fact);
  return tap.answer(question as unknown as TapQuestion, { ruleSet: "nfpa70", edition: "2023" }, nfpa70Edition2023);
}

function main(change: Change, edition?: Edition) {
  const finding = ask(change, edition);
  if (finding.outcome !== "answered") throw new Error(`${finding.outcome}: ${finding.sentence}`);
  return finding.results[0]?.value;
}

const share = (change: Change) => ask(change).results.find(({ name }) => name === "share of the device ahead")?.value;

describe("published worked examples", () => {
  // published: substantiation of the proposal for 240.92(B), quoted in a trade forum (web): 200 A device, ratio of voltages
  // one, 25 ft secondary tap: 4 AWG (85 A), because three times the 65 A of 6 AWG is 195 A only; the load is 10 A
  test.each(EDITIONS)("$edition: 200 A ahead takes 4 AWG", (edition) => {
    const change = {
      allowance: "secondary-to-25-ft",
      deviceAheadA: 200,
      endDeviceA: 60,
      nonContinuousLoadA: 10,
      primaryV: 480,
      secondaryV: 480,
    } as const;
    expect(main(change, edition)).toBe("4 AWG");
    expect(main({ ...change, ask: "check", size: "6 AWG" }, edition)).toBe(false);
  });

  // published: a training blog on the ten-foot rule for secondary conductors (web): 75 kVA, 480 V to 208 V, 125 A primary
  // device, 8 ft of 2 AWG (115 A) to a 100 A breaker: 28.88 A needed with the ratio rounded to 2.31, met
  test("2 AWG from a 75 kVA transformer", () => {
    const change = {
      ask: "check",
      allowance: "secondary-to-10-ft",
      deviceAheadA: 125,
      endDeviceA: 100,
      nonContinuousLoadA: 100,
      length: ft(8),
      primaryV: 480,
      secondaryV: 208,
      size: "2 AWG",
    } as const;
    expect(main(change)).toBe(true);
    expect(share(change)).toBeCloseTo(28.88, 1);
  });
});

describe("smallest size of each allowance", () => {
  // hand: copper at 75 C: 400 / 10 = 40, end 60: 6 AWG 65 A; 400 / 3 = 133.3: 1/0 AWG 150 A; outdoors end 60: 6 AWG;
  // x 480 / 208 = 923.1: / 10 = 92.3: 3 AWG 100 A; / 3 = 307.7: 350 kcmil 310 A
  test.each([
    ["feeder-tap-to-10-ft", "6 AWG", 40],
    ["feeder-tap-to-25-ft", "1/0 AWG", 400 / 3],
    ["primary-of-tapped-transformer", "1/0 AWG", 400 / 3],
    ["secondary-of-tapped-transformer", "350 kcmil", 307.6923],
    ["feeder-tap-in-high-bay", "1/0 AWG", 400 / 3],
    ["feeder-tap-outdoors", "6 AWG", undefined],
    ["secondary-to-10-ft", "3 AWG", 92.3077],
    ["secondary-to-25-ft", "350 kcmil", 307.6923],
  ] as const)("%s: %s", (allowance, size, needed) => {
    const change = { allowance, length: ft(10), primaryV: 480, secondaryV: 208, highBay: BAY } as const;
    for (const edition of EDITIONS) expect(main(change, edition)).toBe(size);
    if (needed === undefined) expect(share(change)).toBeUndefined();
    else expect(share(change)).toBeCloseTo(needed, 3);
  });

  // published: where each allowance stands in 240.21
  test.each([
    ["feeder-tap-to-10-ft", "240.21(B)(1)"],
    ["feeder-tap-to-25-ft", "240.21(B)(2)"],
    ["primary-of-tapped-transformer", "240.21(B)(3)"],
    ["secondary-of-tapped-transformer", "240.21(B)(3)"],
    ["feeder-tap-in-high-bay", "240.21(B)(4)"],
    ["feeder-tap-outdoors", "240.21(B)(5)"],
    ["secondary-protected-by-primary", "240.21(C)(1)"],
    ["secondary-to-10-ft", "240.21(C)(2)"],
    ["industrial-secondary-to-25-ft", "240.21(C)(3)"],
    ["secondary-outdoors", "240.21(C)(4)"],
    ["secondary-to-25-ft", "240.21(C)(6)"],
  ] as const)("%s stands in %s", (allowance, locator) => {
    const change = {
      allowance,
      deviceAheadA: 100,
      length: ft(10),
      primaryV: 480,
      secondaryV: 480,
      highBay: BAY,
      windings: "two-wire",
      transformerSecondaryA: 50,
    } as const;
    for (const edition of EDITIONS)
      expect(ask(change, edition).cite).toMatchObject({ locator, edition: edition.edition });
  });

  // hand: a third of 400 A is 133.3 A. Terminals without a mark count as 60 C where the device at the end is of 100 A or
  // less: 2/0 AWG 145 A at 60 C; at 110 A they count as 75 C above 1 AWG: 1/0 AWG 150 A
  test.each([
    [100, "2/0 AWG"],
    [110, "1/0 AWG"],
  ])("unmarked terminals go by the device at the end, %d A: %s", (endDeviceA, size) => {
    expect(main({ endDeviceA, run: { loadEnd: "unmarked" } })).toBe(size);
  });

  // hand: 6 AWG 65 A at 75 C
  test.each([
    [195, "6 AWG"],
    [195.3, "4 AWG"],
    [194.7, "6 AWG"],
  ])("a third of %d A: %s", (deviceAheadA, size) => {
    expect(main({ deviceAheadA, endDeviceA: 15, nonContinuousLoadA: 10 })).toBe(size);
  });
  test.each([
    [650, "6 AWG"],
    [651, "4 AWG"],
    [649, "6 AWG"],
  ])("a tenth of %d A: %s", (deviceAheadA, size) => {
    const change = {
      allowance: "feeder-tap-to-10-ft",
      length: ft(10),
      endDeviceA: 15,
      nonContinuousLoadA: 10,
    } as const;
    expect(main({ ...change, deviceAheadA })).toBe(size);
  });
  // hand: no next standard rating: 70 A asks for 85 A of 4 AWG although 65 A of 6 AWG is next below
  test.each([
    [65, "6 AWG"],
    [70, "4 AWG"],
  ])("an end device of %d A: %s", (endDeviceA, size) => {
    expect(main({ allowance: "feeder-tap-outdoors", endDeviceA })).toBe(size);
  });
  // hand: 1.25 x 60 = 75 A at the terminations: 4 AWG; adjustment 9: 4 AWG 95 x 0.7 = 66.5 reaches 60
  test("the load counts at 125 % where it is continuous", () => {
    expect(main({ allowance: "feeder-tap-outdoors", continuousLoadA: 60, nonContinuousLoadA: 0 })).toBe("4 AWG");
  });
  // hand: 400 / 3 = 133.3 beside nine conductors: 90 C 2/0 AWG 195 x 0.7 = 136.5; 1/0 AWG 170 x 0.7 = 119
  test("the share is reached after adjustment", () => {
    const grouping: Grouping = { in: "raceway", conductors: 9 };
    expect(main({ run: { grouping } })).toBe("2/0 AWG");
  });
  test("parallel begins at 1/0 AWG; a high bay at 6 AWG copper and 4 AWG aluminum", () => {
    expect(main({ allowance: "feeder-tap-outdoors", run: { sets: 2 } })).toBe("1/0 AWG");
    const bay = {
      allowance: "feeder-tap-in-high-bay",
      deviceAheadA: 60,
      endDeviceA: 15,
      nonContinuousLoadA: 10,
    } as const;
    expect(main({ ...bay, highBay: BAY })).toBe("6 AWG");
    expect(main({ ...bay, highBay: BAY, run: { metal: "aluminum" } })).toBe("4 AWG");
  });
  test("a tap within its enclosure needs no share of the feeder", () => {
    const change = {
      allowance: "feeder-tap-to-10-ft",
      length: ft(5),
      deviceAheadA: 2000,
      leavesEnclosure: false,
    } as const;
    expect(main(change)).toBe("6 AWG");
    expect(main({ ...change, leavesEnclosure: true })).toBe("3/0 AWG");
    // hand: of a secondary alike: 2000 / 10 = 200 A asks for 3/0 AWG where it leaves
    const secondary = { ...change, allowance: "secondary-to-10-ft", primaryV: 480, secondaryV: 480 } as const;
    expect(main(secondary)).toBe("6 AWG");
    expect(main({ ...secondary, leavesEnclosure: true })).toBe("3/0 AWG");
  });
});

describe("the way a tap takes", () => {
  const check = (change: Change) => main({ ask: "check", size: "3/0 AWG", ...change });
  test.each([
    ["feeder-tap-to-10-ft", 10],
    ["feeder-tap-to-25-ft", 25],
    ["primary-of-tapped-transformer", 25],
    ["feeder-tap-in-high-bay", 100],
  ] as const)("%s: no longer than %d ft", (allowance, limit) => {
    const at = (value: number) => check({ allowance, length: ft(value), highBay: BAY });
    expect([at(limit - 0.1), at(limit), at(limit + 0.1)]).toEqual([true, true, false]);
    // hand: 3.048 m is 10 ft exactly
    if (limit === 10) expect(check({ allowance, length: { value: 3.048, unit: "m" } })).toBe(true);
  });
  test("no limit of length outdoors", () => {
    expect(check({ allowance: "feeder-tap-outdoors", length: ft(500) })).toBe(true);
    expect(askWithout("length", { allowance: "feeder-tap-outdoors" }).outcome).toBe("answered");
  });
  test.each(TAP_ALLOWANCES.filter((allowance) => allowance !== "secondary-protected-by-primary"))(
    "%s must be protected from damage",
    (allowance) => {
      const change = {
        allowance,
        transformerSecondaryA: 50,
        length: ft(8),
        primaryV: 480,
        secondaryV: 480,
        highBay: BAY,
        physicallyProtected: false,
      };
      expect(check(change)).toBe(false);
      expect(ask(change).refusal?.code).toBe("NO_SOLUTION");
    },
  );
  test.each([
    ["wallHeight", 35, false],
    ["wallHeight", 35.1, true],
    ["wallHeight", 34.9, false],
    ["horizontalLength", 25, true],
    ["horizontalLength", 25.1, false],
    ["horizontalLength", 24.9, true],
    ["tapAboveFloor", 30, true],
    ["tapAboveFloor", 29.9, false],
    ["tapAboveFloor", 30.1, true],
  ] as const)("high bay, %s %d ft: %s", (fact, value, holds) => {
    expect(check({ allowance: "feeder-tap-in-high-bay", highBay: { ...BAY, [fact]: ft(value) } })).toBe(holds);
  });
  test("a size is found without what is seen on site, and that is said", () => {
    expect(askWithout("conditionsMet").advice.join(" ")).toContain("one circuit breaker");
    expect(ask({}).advice).toEqual([]);
    expect(ask({ conditionsMet: [] })).toMatchObject({ outcome: "refused", refusal: { code: "NO_SOLUTION" } });
  });
  test("a conductor is not allowed before that is known; it is not asked where the size is wrong anyway", () => {
    expect(askWithout("conditionsMet", { ask: "check", size: "3/0 AWG" })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "question/conditionsMet" }],
    });
    expect(askWithout("conditionsMet", { ask: "check", size: "6 AWG" }).results[0]?.value).toBe(false);
  });
  test.each(TAP_ALLOWANCES)("%s hangs on each of its conditions", (allowance) => {
    const change = {
      allowance,
      deviceAheadA: 200,
      length: ft(8),
      primaryV: 480,
      secondaryV: 480,
      highBay: BAY,
      windings: "two-wire",
      transformerSecondaryA: 50,
      size: "500 kcmil",
    } as const;
    const { conditions } = TERMS[allowance];
    expect(check({ ...change, conditionsMet: conditions })).toBe(true);
    for (const without of conditions)
      expect(check({ ...change, conditionsMet: TAP_CONDITIONS.filter((one) => one !== without) })).toBe(false);
  });
});

describe("secondary conductors", () => {
  const check = (size: string, change: Change) => main({ ask: "check", size, ...change });

  // hand: 100 A x 480 / 240 = 200 A: 3/0 AWG 200 A at 75 C, 2/0 AWG 175 A
  describe("protected by the device of the primary, (C)(1)", () => {
    const change: Change = {
      allowance: "secondary-protected-by-primary",
      deviceAheadA: 100,
      primaryV: 480,
      secondaryV: 240,
      windings: "two-wire",
    };
    test.each(EDITIONS)("$edition: the whole of it counts through the transformer", (edition) => {
      expect(main(change, edition)).toBe("3/0 AWG");
      expect(share(change)).toBe(200);
      expect(ask(change, edition).cite.locator).toBe("240.21(C)(1)");
      expect(check("2/0 AWG", change)).toBe(false);
      expect(check("3/0 AWG", change)).toBe(true);
    });
    test("no device at the end, no length and no protection from damage is asked for", () => {
      const question = { ...questionOf(change), physicallyProtected: false };
      Reflect.deleteProperty(question, "endDeviceA");
      Reflect.deleteProperty(question, "length");
      const finding = tap.answer(question, { ruleSet: "nfpa70", edition: "2023" }, nfpa70Edition2023);
      expect(finding.results.map(({ name }) => name)).not.toContain("device at the end");
      expect(finding.results[0]?.value).toBe("3/0 AWG");
    });
    test.each([
      ["two-wire", true],
      ["delta-delta", true],
      ["other", false],
    ] as const)("windings %s: %s", (windings, allowed) => {
      expect(check("3/0 AWG", { ...change, windings })).toBe(allowed);
    });
    test("the windings are asked for", () => {
      expect(askWithout("windings", change).missing[0]?.path).toBe("question/windings");
    });
  });

  // hand: transformer 208 A: 4/0 AWG 230 A at 75 C (3/0 AWG 200 A); devices 240 A together: 250 kcmil 255 A
  describe("in an industrial installation up to 25 ft, (C)(3)", () => {
    const change: Change = {
      allowance: "industrial-secondary-to-25-ft",
      deviceAheadA: 110,
      endDeviceA: 200,
      transformerSecondaryA: 208,
    };
    test.each([
      [200, 200, "3/0 AWG"],
      [200, 201, "4/0 AWG"],
      [200, 208, "4/0 AWG"],
      [230, 208, "4/0 AWG"],
      [231, 208, "250 kcmil"],
    ])("devices of %d A together, transformer %d A: %s", (endDeviceA, transformerSecondaryA, size) => {
      expect(main({ ...change, endDeviceA, transformerSecondaryA })).toBe(size);
    });
    test("its length and its facts", () => {
      expect(ask(change).cite.locator).toBe("240.21(C)(3)");
      expect(check("250 kcmil", { ...change, length: ft(25) })).toBe(true);
      expect(check("250 kcmil", { ...change, length: ft(25.1) })).toBe(false);
      expect(askWithout("transformerSecondaryA", change).missing[0]?.path).toBe("question/transformerSecondaryA");
      expect(askWithout("endDeviceA", change).missing[0]?.path).toBe("question/endDeviceA");
      expect(askWithout("endDeviceA", change).sentence).toContain("reach their ratings together");
      expect(askWithout("endDeviceA").sentence).toBe(
        "The device at the end of the conductor is not given; its ampacity must reach it.",
      );
      expect(ask(change).steps.map(({ label }) => label)).toContain("devices at the end together");
    });
  });

  // hand: end device 60 A: 6 AWG 65 A at 75 C, however large the device ahead and however long
  test("outdoors, (C)(4): no share and no length", () => {
    const change: Change = { allowance: "secondary-outdoors", deviceAheadA: 2000, length: ft(900) };
    expect(main(change)).toBe("6 AWG");
    expect(share(change)).toBeUndefined();
    expect(ask(change).cite.locator).toBe("240.21(C)(4)");
    expect(check("8 AWG", change)).toBe(false);
  });
});

describe("facts that are missing", () => {
  test.each(["length", "endDeviceA", "continuousLoadA", "nonContinuousLoadA"] as const)("%s is asked for", (fact) => {
    expect(askWithout(fact)).toMatchObject({ outcome: "missing", missing: [{ path: `question/${fact}` }] });
  });
  test.each(["primaryV", "secondaryV"] as const)("%s is asked for on the secondary side", (fact) => {
    const change = { allowance: "secondary-to-25-ft", primaryV: 480, secondaryV: 208 } as const;
    expect(askWithout(fact, change).missing[0]?.path).toBe(`question/${fact}`);
    expect(askWithout(fact).outcome).toBe("answered");
  });
  test("the size is asked for in a check, the high bay in a high bay", () => {
    expect(ask({ ask: "check" }).missing[0]?.path).toBe("question/size");
    expect(ask({ allowance: "feeder-tap-in-high-bay" }).missing[0]?.path).toBe("question/highBay");
  });
  test("leaving the enclosure is asked for only where it decides", () => {
    const short = { allowance: "feeder-tap-to-10-ft", length: ft(5) } as const;
    expect(askWithout("leavesEnclosure", { ...short, deviceAheadA: 2000 }).missing[0]?.path).toBe(
      "question/leavesEnclosure",
    );
    // A tenth of 400 A is less than the device at the end
    const either = askWithout("leavesEnclosure", short);
    expect(either.results[0]?.value).toBe("6 AWG");
    expect(either.results.find(({ name }) => name === "share of the device ahead")?.value).toBe(40);
    expect(either.steps.map(({ label }) => label)).not.toContain("leaves the enclosure in which it begins");
    expect(ask(short).steps.map(({ label }) => label)).toContain("leaves the enclosure in which it begins");
    expect(askWithout("leavesEnclosure").outcome).toBe("answered");
  });
  test("a terminal's rating is asked for only where it decides", () => {
    const run = sampleRunWithout(["loadEnd"]);
    const basis = { ruleSet: "nfpa70", edition: "2023" } as const;
    const question = { ...questionOf({ ask: "check", size: "1/0 AWG" }), run };
    expect(tap.answer(question, basis, nfpa70Edition2023).missing[0]?.path).toBe("question/run/loadEnd");
    expect(tap.answer({ ...question, size: "2/0 AWG" }, basis, nfpa70Edition2023).results[0]?.value).toBe(true);
    expect(tap.answer({ ...question, size: "4 AWG" }, basis, nfpa70Edition2023).results[0]?.value).toBe(false);
  });
  test("a load beyond the largest size is refused", () => {
    expect(ask({ deviceAheadA: 4000 }).refusal?.code).toBe("NO_SOLUTION");
    expect(ask({ run: { loadEnd: celsius(50) } }).refusal?.code).toBe("OUTSIDE_TABLE");
  });
});
