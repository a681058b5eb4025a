import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import type { Connector, Opening } from "../../core/connector.js";
import type { Joint } from "../../core/joint.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleOpening } from "../../samples/sample-joint.js";
import { conductorsPerOpening } from "./conductors-per-opening.js";
import { landConductors } from "./land-conductors.js";

const WIDE = [{ from: "14 AWG", to: "500 kcmil", strandings: ["solid", "class-B", "compact"] }] as const;

/** An opening that was not looked at for how many it takes. */
function opening(change: Partial<Opening> = {}): Opening {
  const { conductorsMax: _max, ...rest } = sampleOpening({ ranges: WIDE });
  return { ...rest, ...change };
}

function judge(joint: Joint, connector: Connector) {
  return conductorsPerOpening.check(
    { joint, connector, origin: "connector", landings: landConductors(joint, connector) },
    nfpa70Edition2023,
  );
}

function check(
  conductors: readonly Partial<ConductorGroup>[],
  openings: readonly Opening[],
  change: Partial<Joint> = {},
) {
  const joint = sampleJoint({
    conductors: conductors.map((one) => sampleConductor({ size: "12 AWG", ...one })),
    ...change,
  });
  return judge(joint, sampleConnector({ openings }));
}

describe("conductors in each opening (NFPA 70-2023 110.14(A))", () => {
  // hand: as many as marked pass, one more does not
  test.each([
    [1, 2, "pass"],
    [2, 2, "pass"],
    [3, 2, "fail"],
    [1, 1, "pass"],
    [2, 1, "fail"],
  ] as const)("%d conductors in an opening for %d: %s", (count, conductorsMax, outcome) => {
    expect(check([{ count }], [opening({ conductorsMax })]).outcome).toBe(outcome);
  });
  // published: one conductor unless identified for more
  test("an unmarked opening takes one, and says that this is assumed", () => {
    const one = check([{ count: 1 }], [opening({ conductorsMax: "unmarked" })]);
    expect(one.outcome).toBe("pass");
    expect("steps" in one && one.steps.some(({ kind }) => kind === "assumed")).toBe(true);
    expect(check([{ count: 2 }], [opening({ conductorsMax: "unmarked" })])).toMatchObject({
      outcome: "fail",
      required: "1 conductor",
      offered: "2 conductors",
      cite: { locator: "110.14(A)" },
    });
  });
  test("a number that is not known is asked for only where it decides", () => {
    expect(check([{ count: 1 }], [opening()]).outcome).toBe("pass");
    expect(check([{ count: 2 }], [opening()])).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/openings/0/conductorsMax" }],
    });
    expect(check([{ count: 2 }], [opening({ count: 2 })]).outcome).toBe("pass");
  });
  test("more conductors than the openings hold are refused", () => {
    expect(check([{ count: 3 }], [opening({ count: 2, conductorsMax: 1 })]).outcome).toBe("fail");
    expect(check([{ count: 2 }], [opening({ count: 2, conductorsMax: 1 })]).outcome).toBe("pass");
  });
  test("a limit that is not a number never passes", () => {
    expect(check([{ count: 2 }], [opening({ conductorsMax: Number.NaN })]).outcome).toBe("fail");
  });

  test.each([
    ["one size, as marked", [{ count: 2 }], { sameSize: true, sameMetal: true }, "pass"],
    ["two sizes where one is marked", [{}, { size: "10 AWG" }], { sameSize: true, sameMetal: true }, "fail"],
    ["two sizes where any may", [{}, { size: "10 AWG" }], { sameSize: false, sameMetal: true }, "pass"],
    ["two metals where one is marked", [{}, { metal: "aluminum" }], { sameSize: false, sameMetal: true }, "fail"],
    [
      "a metal that may not share",
      [{ count: 2, metal: "aluminum" }],
      { sameSize: true, sameMetal: true, metals: ["copper"] },
      "fail",
    ],
    ["a metal that may share", [{ count: 2 }], { sameSize: true, sameMetal: true, metals: ["copper"] }, "pass"],
  ] as const)("sharing, %s", (_case, conductors, shared, outcome) => {
    expect(check(conductors, [opening({ conductorsMax: 2, shared })]).outcome).toBe(outcome);
  });
  // hand: marked for two of 14 to 12 AWG: both ends included, 10 AWG is above, 16 AWG below
  test.each([
    ["14 AWG", "pass"],
    ["12 AWG", "pass"],
    ["10 AWG", "fail"],
    ["16 AWG", "fail"],
    ["2.5 mm2", "missing"],
  ] as const)("marked for two of 14 to 12 AWG, %s: %s", (size, outcome) => {
    const shared = { sameSize: true, sameMetal: true, from: "14 AWG", to: "12 AWG" };
    expect(check([{ count: 2, size }], [opening({ conductorsMax: 2, shared })]).outcome).toBe(outcome);
  });
  test("one conductor is free of the limits for sharing", () => {
    const shared = { sameSize: true, sameMetal: true, from: "14 AWG", to: "12 AWG" };
    expect(check([{ size: "4 AWG" }], [opening({ conductorsMax: 2, shared })]).outcome).toBe("pass");
  });
  test("unlike conductors ask what may share; like ones do not", () => {
    expect(check([{ count: 2 }], [opening({ conductorsMax: 2 })]).outcome).toBe("pass");
    expect(check([{}, { size: "10 AWG" }], [opening({ conductorsMax: 2 })])).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/openings/0/shared" }],
    });
  });
  test("where combinations are listed their rule decides", () => {
    const combinations = [[{ size: "12 AWG", count: 2 }]];
    expect(check([{ count: 2 }], [opening({ combinations })]).outcome).toBe("pass");
    expect(check([{ count: 3 }], [opening({ combinations, conductorsMax: 2 })]).outcome).toBe("fail");
  });

  test("in a tap each conductor lies in the opening of its duty", () => {
    const openings = [
      opening({ id: "run", duty: "run", conductorsMax: 1 }),
      opening({ id: "tap", duty: "tap", conductorsMax: 1 }),
    ];
    const run: Partial<ConductorGroup> = { size: "500 kcmil", duty: "run" };
    const tap: Partial<ConductorGroup> = { size: "8 AWG", duty: "tap" };
    expect(check([run, tap], openings, { function: "tap" }).outcome).toBe("pass");
    expect(check([tap, run], openings, { function: "tap" }).outcome).toBe("pass");
    expect(check([run, { ...tap, count: 2 }], openings, { function: "tap" }).outcome).toBe("fail");
    expect(check([run, run], openings, { function: "tap" })).toMatchObject({
      outcome: "fail",
      required: "a run opening for 500 kcmil",
    });
    const { duty: _run, ...either } = run;
    const { duty: _tap, ...other } = tap;
    expect(check([either, tap], openings, { function: "tap" }).outcome).toBe("pass");
    expect(check([either, other], openings, { function: "tap" })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/conductors/0/duty" }],
    });
    expect(check([either, { ...tap, count: 2 }], openings, { function: "tap" }).outcome).toBe("fail");
    expect(check([run, run], openings, { function: "splice" }).outcome).toBe("pass");
  });
  test("a splice or a tap that names one side only is asked for the other", () => {
    const two = [opening({ count: 2, conductorsMax: 1 })];
    for (const made of ["splice", "tap"] as const)
      expect(check([{ count: 1 }], two, { function: made })).toMatchObject({
        outcome: "missing",
        missing: [{ path: "joint/conductors" }],
      });
    expect(check([{ count: 2 }], two, { function: "splice" }).outcome).toBe("pass");
    expect(check([{ count: 1 }], two).outcome).toBe("pass");
    expect(check([{ duty: "tap", count: 2 }], two, { function: "tap" })).toMatchObject({
      missing: [{ path: "joint/conductors" }],
    });
    expect(check([{}, { duty: "tap" }], two, { function: "tap" }).outcome).toBe("pass");
    expect(check([{}, {}], two, { function: "tap" }).outcome).toBe("pass");
    expect(check([{ count: 2 }], two, { function: "tap" }).outcome).toBe("missing");
    expect(check([{ duty: "run", count: 2 }], two, { function: "tap" }).outcome).toBe("missing");
    expect(check([{ duty: "run" }, { duty: "tap" }], two, { function: "tap" }).outcome).toBe("pass");
  });
  test("a connector without openings is left to the size rule, which asks for them", () => {
    expect(check([{}], []).outcome).toBe("not-applicable");
  });
});
