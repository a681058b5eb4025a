import { describe, expect, test } from "vitest";
import type { ConductorRun, Grouping } from "../../core/conductor-run.js";
import type { Edition } from "../../core/edition.js";
import { EDITIONS } from "../../rulesets/editions.js";
import { nfpa70Edition2020 } from "../../rulesets/nfpa70-2020/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { celsius, sampleRun, sampleRunWithout } from "../../samples/sample-run.js";
import { type OvercurrentDeviceQuestion, overcurrentDevice } from "./overcurrent-device.js";

function ask(change: Partial<OvercurrentDeviceQuestion>, edition: Edition = nfpa70Edition2023) {
  const question: OvercurrentDeviceQuestion = {
    ask: "check",
    circuit: "feeder",
    serves: "ordinary",
    deviceKind: "circuit-breaker",
    ...change,
  };
  return overcurrentDevice.answer(question, { ruleSet: "nfpa70", edition: edition.edition }, edition);
}

function main(change: Partial<OvercurrentDeviceQuestion>, edition?: Edition) {
  const finding = ask(change, edition);
  if (finding.outcome !== "answered") throw new Error(`${finding.outcome}: ${finding.sentence}`);
  return finding.results[0]?.value;
}

const wire = (size: string, run: Partial<ConductorRun> = {}) => ({ size, run: sampleRun(run) });
const aluminum = (size: string) => wire(size, { metal: "aluminum", insulation: "XHHW-2" });
const together = (conductors: number): Grouping => ({ in: "raceway", conductors });

describe("published worked examples", () => {
  // published: trade magazine EC&M, "Rules for Sizing Feeder Conductors" (web): 200 A continuous at 125 % is 250 A
  test.each(EDITIONS)("$edition: 200 A continuous asks for 250 A", (edition) => {
    expect(main({ ask: "smallest-for-load", continuousLoadA: 200, nonContinuousLoadA: 0 }, edition)).toBe(250);
  });
  // published: NFPA 70 Annex D, Example D3(a), as retold in "Commercial Load Calculations, Part 5" (web): the 131 A left of
  // 2/0 AWG is no standard rating, so 150 A is allowed
  test("131 A is protected by 150 A", () => {
    const conductor = wire("2/0 AWG", { ambient: celsius(35), grouping: together(8) });
    expect(main({ ask: "largest-for-conductor", conductor })).toBe(150);
    expect(main({ deviceA: 150, conductor, continuousLoadA: 68.08, nonContinuousLoadA: 51 })).toBe(true);
  });
  // published: trade magazine EC&M, Code Q&A (web): nine 12 AWG THHN, 21 A, are still good for a 20 A circuit
  test("21 A of 12 AWG and a 20 A device", () => {
    const conductor = wire("12 AWG", { grouping: together(9) });
    expect(main({ deviceA: 20, conductor })).toBe(true);
    expect(main({ ask: "largest-for-conductor", conductor })).toBe(20);
  });
});

describe("smallest device for a load", () => {
  test.each([
    [100, 0, 125],
    [80, 0, 100],
    [80.1, 0, 110],
    [0, 100, 100],
    [0, 100.1, 110],
    [0, 600.5, 700],
    [0, 6000, 6000],
  ])("%d A continuous and %d A: %d A", (continuousLoadA, nonContinuousLoadA, device) => {
    expect(main({ ask: "smallest-for-load", continuousLoadA, nonContinuousLoadA })).toBe(device);
  });
  test("listed for 100 % adds nothing", () => {
    const load = { continuousLoadA: 100, nonContinuousLoadA: 0, listedFor100Percent: true } as const;
    expect(main({ ask: "smallest-for-load", ...load })).toBe(100);
  });
  // published: 240.6(A): 601 A for fuses only; 10 A for breakers from the 2023 edition on
  test("ratings for fuses only are not offered to breakers", () => {
    const load = { ask: "smallest-for-load", continuousLoadA: 0 } as const;
    expect(main({ ...load, nonContinuousLoadA: 600.5, deviceKind: "fuse" })).toBe(601);
    expect(main({ ...load, nonContinuousLoadA: 8 }, nfpa70Edition2023)).toBe(10);
    expect(main({ ...load, nonContinuousLoadA: 8 }, nfpa70Edition2020)).toBe(15);
    expect(main({ ...load, nonContinuousLoadA: 8, deviceKind: "fuse" }, nfpa70Edition2020)).toBe(10);
  });
  test("no device is rated above 6000 A", () => {
    expect(ask({ ask: "smallest-for-load", continuousLoadA: 0, nonContinuousLoadA: 6000.1 }).refusal).toMatchObject({
      code: "NO_SOLUTION",
      detail: "No standard device is rated for 6000.1 A.",
    });
  });
  test("the parts of the load are asked for", () => {
    expect(ask({ ask: "smallest-for-load", nonContinuousLoadA: 1 }).missing[0]?.path).toBe("question/continuousLoadA");
    expect(ask({ ask: "smallest-for-load", continuousLoadA: 1 }).missing[0]?.path).toBe("question/nonContinuousLoadA");
  });
});

describe("largest device for a conductor", () => {
  // hand: 4/0 AL 180 A -> 200; 250 kcmil AL 205 -> 225; 3/0 CU 200 is a rating; 500 kcmil CU 380 -> 400
  test.each([
    ["aluminum 4/0", aluminum("4/0 AWG"), 200],
    ["aluminum 250 kcmil", aluminum("250 kcmil"), 225],
    ["copper 3/0", wire("3/0 AWG"), 200],
    ["copper 500 kcmil", wire("500 kcmil"), 400],
    // two sets: 760 -> 800; 3 x 335 = 1005 -> 1000 by 240.4(C); 3 x 285 = 855 -> 800
    ["two sets of 500 kcmil", wire("500 kcmil", { sets: 2 }), 800],
    ["three sets of 400 kcmil", wire("400 kcmil", { sets: 3 }), 1000],
    ["three sets of 300 kcmil", wire("300 kcmil", { sets: 3 }), 800],
    // 240.4(D)
    ["copper 14", wire("14 AWG"), 15],
    ["copper 12", wire("12 AWG"), 20],
    ["copper 10", wire("10 AWG"), 30],
    ["aluminum 12", aluminum("12 AWG"), 15],
    ["aluminum 10", aluminum("10 AWG"), 25],
    // unmarked: 1 AWG counts as 60 C, 110 A; 1/0 AWG as 75 C, for the device is above 100 A
    ["unmarked 1 AWG", wire("1 AWG", { loadEnd: "unmarked" }), 110],
    ["unmarked 1/0 AWG", wire("1/0 AWG", { loadEnd: "unmarked" }), 150],
  ])("%s: %d A", (_, conductor, device) => {
    for (const edition of EDITIONS) expect(main({ ask: "largest-for-conductor", conductor }, edition)).toBe(device);
  });
  // hand: 20 x 665 A = 13 300 A; the list ends with 6000 A
  test("above the end of the list there is no larger one to show", () => {
    const finding = ask({ ask: "largest-for-conductor", conductor: wire("2000 kcmil", { sets: 20 }) });
    expect(finding.results[0]?.value).toBe(6000);
    const last = finding.steps.at(-1);
    expect(last).toMatchObject({
      label: "largest device",
      because: "the ampacity reaches the rating of the device; there is no larger one",
    });
    expect(finding.steps.filter(({ label }) => label === "standard rating tried")).toMatchObject([{ value: 6000 }]);
  });
  test("the load beyond the next rating is said", () => {
    expect(ask({ ask: "largest-for-conductor", conductor: aluminum("4/0 AWG") }).advice[0]).toContain("180 A");
    expect(ask({ ask: "largest-for-conductor", conductor: wire("3/0 AWG") }).advice).toEqual([]);
  });
  // hand: where loads are plugged in 180 A takes no more than 175 A
  test("plugged-in loads allow no device above the ampacity", () => {
    const circuit = "receptacle-branch-circuit";
    expect(main({ ask: "largest-for-conductor", circuit, conductor: aluminum("4/0 AWG") })).toBe(175);
  });
  // hand: 14 AWG beside 41 conductors: 25 x 0.35 = 8.75 A: 10 A, in 2020 for fuses only: no breaker is small enough
  test("an ampacity below the smallest breaker has none", () => {
    const conductor = wire("14 AWG", { grouping: together(41) });
    expect(main({ ask: "largest-for-conductor", conductor })).toBe(10);
    expect(main({ ask: "largest-for-conductor", conductor, deviceKind: "fuse" }, nfpa70Edition2020)).toBe(10);
    // The next standard rating of a breaker above 8.75 A is then 15 A
    expect(main({ ask: "largest-for-conductor", conductor }, nfpa70Edition2020)).toBe(15);
    const circuit = "receptacle-branch-circuit";
    expect(ask({ ask: "largest-for-conductor", circuit, conductor }, nfpa70Edition2020).refusal?.code).toBe(
      "NO_SOLUTION",
    );
  });
});

describe("this device on this conductor", () => {
  const load = { continuousLoadA: 0, nonContinuousLoadA: 150 } as const;
  test.each([
    [150, true],
    [175, true],
    [200, true],
    [201, false],
    [225, false],
  ])("180 A under %d A: %s", (deviceA, holds) => {
    expect(main({ deviceA, conductor: aluminum("4/0 AWG"), ...load })).toBe(holds);
  });
  test("the load must stay within the ampacity and the device be rated for it", () => {
    const conductor = aluminum("4/0 AWG");
    const at = (nonContinuousLoadA: number, deviceA = 200) =>
      main({ deviceA, conductor, continuousLoadA: 0, nonContinuousLoadA });
    expect(at(180)).toBe(true);
    expect(at(180.1)).toBe(false);
    expect(at(151, 150)).toBe(false);
    expect(at(150, 150)).toBe(true);
  });
  test("the load is asked for only where the device is above the ampacity", () => {
    expect(ask({ deviceA: 200, conductor: aluminum("4/0 AWG") }).missing[0]?.path).toBe("question/continuousLoadA");
    expect(main({ deviceA: 175, conductor: aluminum("4/0 AWG") })).toBe(true);
    expect(main({ deviceA: 225, conductor: aluminum("4/0 AWG") })).toBe(false);
  });
  test("half a load is no load: the other part is asked for also where the ampacity reaches the device", () => {
    const conductor = aluminum("4/0 AWG");
    expect(ask({ deviceA: 150, conductor, continuousLoadA: 100 }).missing[0]?.path).toBe("question/nonContinuousLoadA");
    expect(ask({ deviceA: 150, conductor, nonContinuousLoadA: 100 }).missing[0]?.path).toBe("question/continuousLoadA");
  });
  // published: 215.3 for feeders, 210.20(A) for branch circuits: the device carries the load
  test.each([
    ["feeder", "215.3"],
    ["branch-circuit", "210.20(A)"],
  ] as const)("a device too small for the load of a %s is refused by %s", (circuit, locator) => {
    const load = { continuousLoadA: 0, nonContinuousLoadA: 151 } as const;
    expect(ask({ deviceA: 150, circuit, conductor: aluminum("4/0 AWG"), ...load })).toMatchObject({
      results: [{ value: false }, {}],
      cite: { locator },
    });
  });
  // hand: 240.4(C): 855 A under 1000 A is refused, under 800 A allowed
  test.each([
    [800, true],
    [900, false],
    [1000, false],
  ])("855 A under %d A: %s", (deviceA, holds) => {
    expect(main({ deviceA, conductor: wire("300 kcmil", { sets: 3 }) })).toBe(holds);
  });
  test.each([
    ["12 AWG", 20, true],
    ["12 AWG", 20.1, false],
    ["12 AWG", 25, false],
    ["10 AWG", 30, true],
    ["10 AWG", 35, false],
  ])("%s under %d A: %s", (size, deviceA, holds) => {
    expect(main({ deviceA, conductor: wire(size) })).toBe(holds);
  });
  // published: 14 AWG copper-clad aluminum has a cap of 10 A from the 2023 edition on but no ampacity in the table
  test("a conductor without an ampacity is refused", () => {
    const conductor = wire("14 AWG", { metal: "copper-clad-aluminum" });
    expect(ask({ deviceA: 10, conductor }).refusal?.code).toBe("OUTSIDE_TABLE");
    expect(ask({ ask: "largest-for-conductor", conductor }).refusal?.code).toBe("OUTSIDE_TABLE");
  });
  test("a terminal's rating is asked for only where it decides", () => {
    const run = sampleRunWithout(["loadEnd"]);
    expect(ask({ deviceA: 65, conductor: { size: "6 AWG", run } }).missing[0]?.path).toBe("question/run/loadEnd");
    expect(main({ deviceA: 55, conductor: { size: "6 AWG", run } })).toBe(true);
    expect(main({ deviceA: 80, conductor: { size: "6 AWG", run } })).toBe(false);
  });
});

describe("facts that are missing and questions that are refused", () => {
  test("conductor and device are asked for", () => {
    expect(ask({}).missing[0]?.path).toBe("question/conductor");
    expect(ask({ conductor: wire("6 AWG") }).missing[0]?.path).toBe("question/deviceA");
  });
  test.each([
    ["motor", "430.52(C)(1)"],
    ["air-conditioner", "240.4(G)"],
    ["tap", "240.4(E)"],
  ] as const)("%s is refused with %s", (serves, locator) => {
    expect(ask({ serves, deviceA: 20, conductor: wire("12 AWG") })).toMatchObject({
      outcome: "refused",
      refusal: { code: "NOT_COVERED" },
      cite: { locator },
    });
  });
  test("18 and 16 AWG are for listed uses only", () => {
    for (const size of ["18 AWG", "16 AWG"])
      expect(ask({ deviceA: 7, conductor: wire(size) }).refusal?.code).toBe("NOT_COVERED");
  });
  test("a rating that is no number is refused", () => {
    expect(() => ask({ deviceA: Number.NaN, conductor: wire("6 AWG") })).toThrow("question/deviceA");
    expect(() => ask({ deviceA: 0, conductor: wire("6 AWG") })).toThrow("question/deviceA");
  });
});
