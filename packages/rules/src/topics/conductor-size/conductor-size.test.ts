import { describe, expect, test } from "vitest";
import type { ConductorRun, Grouping } from "../../core/conductor-run.js";
import type { Edition } from "../../core/edition.js";
import { EDITIONS } from "../../rulesets/editions.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { celsius, sampleRun, sampleRunWithout } from "../../samples/sample-run.js";
import { type ConductorSizeQuestion, conductorSize } from "./conductor-size.js";

type Change = Partial<Omit<ConductorSizeQuestion, "run">> & { readonly run?: Partial<ConductorRun> };

function ask({ run, ...change }: Change, edition: Edition = nfpa70Edition2023) {
  return answer({ ...change, run: sampleRun(run) }, edition);
}

function answer(
  change: Partial<ConductorSizeQuestion> & Pick<ConductorSizeQuestion, "run">,
  edition: Edition = nfpa70Edition2023,
) {
  const question: ConductorSizeQuestion = {
    circuit: "feeder",
    continuousLoadA: 0,
    nonContinuousLoadA: 100,
    deviceA: "smallest",
    deviceKind: "circuit-breaker",
    ...change,
  };
  return conductorSize.answer(question, { ruleSet: "nfpa70", edition: edition.edition }, edition);
}

/** Size, what governs and device. */
function solved(change: Change, edition?: Edition) {
  const finding = ask(change, edition);
  if (finding.outcome !== "answered") throw new Error(finding.sentence);
  return finding.results.slice(0, 3).map(({ value }) => value);
}

const TERMINATIONS = "the load for sizing at the terminations";
const SURROUNDINGS = "the load after correction and adjustment";
const DEVICE = "protection by the device";
const together = (conductors: number): Grouping => ({ in: "raceway", conductors });

describe("published worked examples", () => {
  // published: NFPA 70 Informative Annex D, Example D3(a), as retold in "Commercial Load Calculations, Part 5" (web): two
  // four-wire feeders with nonlinear loads at 35 C, 75 C terminals: 177 A needed in the 90 C column, 2/0 AWG, 131 A, 150 A
  // device. The parts of the load, 56600 VA continuous and 42400 VA more at 480 V, from memory
  test.each(EDITIONS)("$edition: Example D3(a), 2/0 AWG under 150 A", (edition) => {
    const change = {
      continuousLoadA: 68.08,
      nonContinuousLoadA: 51,
      run: {
        insulation: "XHHW-2",
        ambient: celsius(35),
        grouping: {
          in: "raceway",
          conductors: [{ kind: "three-phase-four-wire-wye", count: 2, mostlyNonlinear: true }],
        },
      },
    } as const;
    expect(solved(change, edition)).toEqual(["2/0 AWG", [SURROUNDINGS, DEVICE], 150]);
    expect(ask(change, edition).results.find(({ name }) => name.startsWith("ampacity after"))?.value).toBe(131.04);
  });

  // published: trade magazine EC&M, "Stumped by the Code? Rules for Sizing Feeder Conductors" (web, on the 2011 edition):
  // 200 A continuous at 75 C terminals: 250 A, 250 kcmil (255 A)
  test.each(EDITIONS)("$edition: 200 A continuous takes 250 kcmil", (edition) => {
    expect(solved({ continuousLoadA: 200, nonContinuousLoadA: 0 }, edition)).toEqual([
      "250 kcmil",
      [TERMINATIONS],
      250,
    ]);
  });
  // published: the same article: with device and assembly listed for 100 %, and for neutrals, 3/0 AWG (200 A)
  test("listed for 100 %, 200 A continuous takes 3/0 AWG", () => {
    expect(solved({ continuousLoadA: 200, nonContinuousLoadA: 0, listedFor100Percent: true })).toEqual([
      "3/0 AWG",
      [TERMINATIONS, SURROUNDINGS, DEVICE],
      200,
    ]);
  });
});

describe("three checks apart", () => {
  // hand: 1.25 x 80 = 100 A: 3 AWG (100 A at 75 C). Surroundings: 3 AWG 115 x 0.70 = 80.5 >= 80. Device 100: 80.5 -> next
  // is 90, so it does not protect; 2 AWG 130 x 0.70 = 91 -> next 100. Multiplied together it would be 100 / 0.70 = 142.9 A
  test("125 % and the adjustment are not multiplied together", () => {
    expect(solved({ continuousLoadA: 80, nonContinuousLoadA: 0, run: { grouping: together(9) } })).toEqual([
      "2 AWG",
      [DEVICE],
      100,
    ]);
  });

  // hand: 75 C: 6 AWG 65 A, 4 AWG 85 A
  test.each([
    [52, "6 AWG"],
    [52.1, "4 AWG"],
    [51.9, "6 AWG"],
  ])("%d A continuous: %s", (continuousLoadA, size) => {
    expect(solved({ continuousLoadA, nonContinuousLoadA: 0, deviceA: 70 })[0]).toBe(size);
  });

  // hand: 90 C column x 0.50 (ten to twenty): 4/0 AWG 260 x 0.5 = 130; 3/0 AWG 225 x 0.5 = 112.5
  test.each([
    [112.5, "3/0 AWG"],
    [112.6, "4/0 AWG"],
  ])("%d A beside twenty conductors under 125 A: %s", (nonContinuousLoadA, size) => {
    const change = { nonContinuousLoadA, deviceA: 125, run: { grouping: together(20) } };
    expect(solved(change)[0]).toBe(size);
  });

  // published: 240.4(D): 12 AWG at most 20 A, whatever its 25 A at 75 C; 10 AWG 30 A
  test.each([
    [20, "12 AWG"],
    [25, "10 AWG"],
    [30, "10 AWG"],
    [15, "14 AWG"],
  ])("a device of %d A takes %s", (deviceA, size) => {
    expect(solved({ nonContinuousLoadA: 12, deviceA })[0]).toBe(size);
  });

  // hand: 800 A in two sets: 400 A each: 500 kcmil 380 x 2 = 760, next standard 800: allowed; 1000 A in three: 333.3 each:
  // 400 kcmil 335 x 3 = 1005; 350 kcmil 310 x 3 = 930 would be next below 1000 but 240.4(C)
  test.each([
    [700, 800, 2, "500 kcmil"],
    [900, 1000, 3, "400 kcmil"],
  ])("%d A under %d A in %d sets: %s", (nonContinuousLoadA, deviceA, sets, size) => {
    expect(solved({ nonContinuousLoadA, deviceA, run: { sets } })[0]).toBe(size);
  });

  // hand: 6 AWG 65 A under 70 A: next standard rating, but not where portable loads are plugged in: 4 AWG
  test.each([
    ["feeder", "6 AWG"],
    ["branch-circuit", "6 AWG"],
    ["receptacle-branch-circuit", "4 AWG"],
  ] as const)("%s under 70 A: %s", (circuit, size) => {
    expect(solved({ circuit, nonContinuousLoadA: 60, deviceA: 70 })[0]).toBe(size);
  });

  // hand: 601 A is a rating of fuses only: three sets of 4/0 AWG copper carry 690 A
  test("a fuse may have ratings that breakers have not", () => {
    const change = { nonContinuousLoadA: 600.5, run: { sets: 3 } } as const;
    expect(solved({ ...change, deviceKind: "fuse" })[2]).toBe(601);
    expect(solved(change)[2]).toBe(700);
  });

  test("conductors in parallel begin at 1/0 AWG, copper at 14 AWG, aluminum at 12 AWG", () => {
    expect(solved({ nonContinuousLoadA: 20, run: { sets: 2 } })).toEqual([
      "1/0 AWG",
      ["the smallest size of the table"],
      20,
    ]);
    expect(solved({ nonContinuousLoadA: 1, deviceA: 15 })[0]).toBe("14 AWG");
    expect(solved({ nonContinuousLoadA: 1, deviceA: 15, run: { metal: "aluminum" } })[0]).toBe("12 AWG");
  });

  // hand: unmarked under 100 A: 60 C: 1 AWG 110 A; under 110 A above 1 AWG 75 C: 1/0 AWG 150 A; 1 AWG counts as 60 C, 110 A
  test.each([
    [100, "1 AWG"],
    [110, "1 AWG"],
    [125, "1/0 AWG"],
  ])("unmarked terminals under %d A: %s", (deviceA, size) => {
    const change = { nonContinuousLoadA: deviceA - 4, deviceA, run: { supplyEnd: "unmarked" } } as const;
    expect(solved(change)[0]).toBe(size);
  });
});

// hand: 5 A on a 15 A device: 14 AWG copper, 12 AWG aluminum; there is no smaller size that could fail
test("where the smallest size is enough, nothing else governs", () => {
  const change = { nonContinuousLoadA: 5, deviceA: 15 } as const;
  expect(solved(change)).toEqual(["14 AWG", ["the smallest size of the table"], 15]);
  expect(solved({ ...change, run: { metal: "aluminum" } })).toEqual(["12 AWG", ["the smallest size of the table"], 15]);
  const finding = ask(change);
  expect(finding.cite.locator).toBe("215.2(A)(1)");
  expect(finding.sentence).toContain("What governs is the smallest size of the table.");
  expect(ask({ ...change, circuit: "branch-circuit" }).cite.locator).toBe("210.19(A)(1)");
  const governing = finding.steps.find(({ label }) => label === "what governs");
  expect(governing).toMatchObject({ because: "the smallest size passes all three checks" });
});
// hand: 100 A at 75 C: 3 AWG; 4 AWG carries 85 A at the terminations and fails by 215.2(A)(1)
test("where a smaller size fails, its own clause is cited", () => {
  expect(ask({}).cite.locator).toBe("215.2(A)(1)");
  expect(ask({}).steps.find(({ label }) => label === "what governs")).toMatchObject({
    because: "the next smaller size fails it",
  });
});

describe("facts that are missing and questions that are refused", () => {
  test.each(["continuousLoadA", "nonContinuousLoadA", "deviceA"] as const)("%s is asked for", (fact) => {
    const question: Partial<Record<keyof ConductorSizeQuestion, unknown>> = {
      circuit: "feeder",
      continuousLoadA: 10,
      nonContinuousLoadA: 10,
      deviceA: 40,
      deviceKind: "fuse",
      run: sampleRun(),
    };
    Reflect.deleteProperty(question, fact);
    const finding = conductorSize.answer(
      question as unknown as ConductorSizeQuestion,
      { ruleSet: "nfpa70", edition: "2023" },
      nfpa70Edition2023,
    );
    expect(finding).toMatchObject({ outcome: "missing", missing: [{ path: `question/${fact}` }] });
  });
  test("a terminal's rating is asked for only where it decides", () => {
    expect(answer({ run: sampleRunWithout(["loadEnd"]) }).missing[0]?.path).toBe("question/run/loadEnd");
    expect(answer({ run: sampleRunWithout(["loadEnd"], { supplyEnd: celsius(60) }) }).outcome).toBe("answered");
    // 12 A on 15 A: 14 AWG at 60, 75 and 90 C
    const small = { nonContinuousLoadA: 12, deviceA: 15, run: sampleRunWithout(["loadEnd", "supplyEnd"]) };
    expect(answer(small).results[0]?.value).toBe("14 AWG");
  });
  test.each(["ambient", "grouping"] as const)("%s of the run is asked for", (fact) => {
    expect(answer({ run: sampleRunWithout([fact]) }).missing[0]?.path).toBe(`question/run/${fact}`);
  });
  test.each([
    [99, "NO_SOLUTION"],
    [100, undefined],
    [100.1, undefined],
  ])("a device of %d A for a load of 100 A: %s", (deviceA, code) => {
    expect(ask({ deviceA }).refusal?.code).toBe(code);
  });
  test("a load that no single conductor and no device carries is refused", () => {
    expect(ask({ nonContinuousLoadA: 900 }).refusal?.code).toBe("NO_SOLUTION");
    // hand: the largest standard device is 6000 A; 4801 x 1.25 = 6001.25
    expect(ask({ nonContinuousLoadA: 6001, run: { sets: 12 } })).toMatchObject({
      refusal: { code: "NO_SOLUTION", detail: "No standard device is rated for 6001 A." },
    });
    expect(ask({ continuousLoadA: 4801, nonContinuousLoadA: 0, run: { sets: 12 } }).refusal?.code).toBe("NO_SOLUTION");
  });
  test("a load of nothing, negative or no number is no load", () => {
    expect(() => ask({ nonContinuousLoadA: 0 })).toThrow("no load");
    expect(() => ask({ nonContinuousLoadA: -1 })).toThrow("question/nonContinuousLoadA");
    expect(() => ask({ nonContinuousLoadA: Number.NaN })).toThrow("question/nonContinuousLoadA");
    expect(() => ask({ deviceA: Number.NaN })).toThrow("question/deviceA");
  });
});
