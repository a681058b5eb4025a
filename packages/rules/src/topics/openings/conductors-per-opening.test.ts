import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import type { Connector, Opening } from "../../core/connector.js";
import type { Joint } from "../../core/joint.js";
import type { Landing } from "../../core/rule.js";
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
  test("a tap of runs only, or of conductors that leave only, is asked for the other kind", () => {
    const two = [opening({ count: 2, conductorsMax: 1 })];
    for (const duty of ["run", "tap"] as const)
      expect(check([{ duty }, { duty, size: "10 AWG" }], two, { function: "tap" })).toMatchObject({
        outcome: "missing",
        missing: [{ path: "joint/conductors" }],
      });
    expect(check([{ duty: "run" }, { size: "10 AWG" }], two, { function: "tap" }).outcome).toBe("pass");
  });
  test("a connector without openings is left to the size rule, which asks for them", () => {
    expect(check([{}], [])).toMatchObject({ rule: "conductors-per-opening", outcome: "not-applicable" });
  });
});

describe("the run's and the tap's own openings (NFPA 70-2023 110.3(B))", () => {
  const main = opening({ id: "main", duty: "run", conductorsMax: 1 });
  const branch = opening({ id: "branch", duty: "tap", conductorsMax: 1 });
  const run: Partial<ConductorGroup> = { size: "500 kcmil", duty: "run" };
  const leaving: Partial<ConductorGroup> = { size: "8 AWG", duty: "tap" };
  const tapped = (conductors: readonly Partial<ConductorGroup>[], openings: readonly Opening[]) =>
    check(conductors, openings, { function: "tap" });

  // hand: a part whose only openings left are of the other duty
  test("a second run in the opening for the tap is refused", () => {
    expect(tapped([run, { ...run, size: "250 kcmil" }], [main, branch])).toMatchObject({
      outcome: "fail",
      required: "a run opening for 250 kcmil",
      offered: "a tap opening",
      cite: { locator: "110.3(B)" },
      steps: [
        { label: "duty of the conductor", value: "run", origin: "joint/conductors/1/duty" },
        { label: "duty of the opening", value: "tap", origin: "connector/openings/1/duty" },
        { label: "the opening is for this conductor", relation: "=", value: false },
      ],
    });
  });
  test("a second tap in the opening for the run is refused", () => {
    const finding = tapped([leaving, { ...leaving, size: "6 AWG" }], [branch, main]);
    expect(finding).toMatchObject({ outcome: "fail", offered: "a run opening" });
    expect("sentence" in finding && finding.sentence).toMatch(/^The tap conductor, .* has no tap opening left/);
  });
  test("a duty that follows from the other conductors is written down as a conclusion", () => {
    // hand: with two that leave, the third runs through; the part has openings for what leaves only
    const finding = tapped(
      [leaving, { ...leaving, size: "6 AWG" }, { size: "4 AWG" }],
      [opening({ duty: "tap", count: 3, conductorsMax: 1 })],
    );
    expect(finding).toMatchObject({
      outcome: "fail",
      required: "a run opening for 4 AWG",
      steps: [{ kind: "concluded", value: "run", uses: [] }, { kind: "given", value: "tap" }, { kind: "compared" }],
    });
  });
  test("which of two conductors runs through is asked for, as run or tap", () => {
    expect(tapped([{ size: "500 kcmil" }, { size: "8 AWG" }], [main, branch])).toMatchObject({
      outcome: "missing",
      required: "run or tap",
    });
  });
});

describe("what the finding says of a shared opening", () => {
  const two = (conductors: readonly Partial<ConductorGroup>[], change: Partial<Opening>) =>
    check(conductors, [opening({ id: "hole", conductorsMax: 2, ...change })]);
  const unlike = [{}, { size: "10 AWG" }] as const;
  // hand: each rule for sharing by itself, broken
  test.each([
    ["they are of one size", unlike, { sameSize: true, sameMetal: true }],
    ["they are of one metal", [{}, { metal: "aluminum" }], { sameSize: false, sameMetal: true }],
    [
      "they are of copper and copper-clad aluminum",
      [{ count: 2, metal: "aluminum" }],
      { sameSize: true, sameMetal: true, metals: ["copper", "copper-clad-aluminum"] },
    ],
    ["they are 14 AWG to 12 AWG", unlike, { sameSize: false, sameMetal: true, from: "14 AWG", to: "12 AWG" }],
    ["they are 12 AWG or smaller", unlike, { sameSize: false, sameMetal: true, to: "12 AWG" }],
    ["they are 10 AWG or larger", unlike, { sameSize: false, sameMetal: true, from: "10 AWG" }],
  ] as const)("refused: %s", (required, conductors, shared) => {
    const finding = two(conductors, { shared });
    expect(finding).toMatchObject({ outcome: "fail", required, cite: { locator: "110.3(B)" } });
    if (!("steps" in finding)) throw new Error(finding.because);
    const mark = finding.steps.find(({ label }) => label === "what may share the opening");
    const inside = finding.steps.find(({ label }) => label === 'conductors in one opening "hole"');
    expect(mark).toMatchObject({ value: required, origin: "connector/openings/0/shared" });
    expect(finding.steps.at(-1)?.uses).toEqual([inside?.id, mark?.id]);
    expect(finding.sentence).toContain(finding.offered);
    expect(finding.fix).not.toBe("");
  });
  // hand: the same limits, kept
  test.each([
    ["one size and one metal", [{ count: 2 }], { sameSize: true, sameMetal: true }],
    ["one metal", unlike, { sameSize: false, sameMetal: true }],
    ["one size", [{ count: 2 }], { sameSize: true, sameMetal: false }],
    ["any in range", unlike, { sameSize: false, sameMetal: false }],
    ["copper", unlike, { sameSize: false, sameMetal: false, metals: ["copper"] }],
    ["10 AWG or smaller", unlike, { sameSize: false, sameMetal: false, to: "10 AWG" }],
    ["12 AWG or larger", unlike, { sameSize: false, sameMetal: false, from: "12 AWG" }],
    ["12 AWG to 10 AWG", unlike, { sameSize: false, sameMetal: false, from: "12 AWG", to: "10 AWG" }],
  ] as const)("allowed: %s", (words, conductors, shared) => {
    const finding = two(conductors, { shared });
    expect(finding).toMatchObject({
      outcome: "pass",
      required: "marked for 2 conductors",
      offered: "2 conductors in an opening",
    });
    if (!("steps" in finding)) throw new Error(finding.because);
    const [inside, mark, share] = [
      'conductors in one opening "hole"',
      "what may share the opening",
      "the conductors may share the opening",
    ].map((label) => finding.steps.find((step) => step.label === label));
    expect(mark).toMatchObject({ value: words, origin: "connector/openings/0/shared" });
    expect(share).toMatchObject({ value: true, uses: [inside?.id, mark?.id] });
    expect(finding.steps.at(-1)?.uses).toContain(share?.id);
  });
  test("like conductors share without a mark on sharing, and listed combinations decide by themselves", () => {
    const shareStep = (finding: ReturnType<typeof check>) =>
      "steps" in finding && finding.steps.find(({ label }) => label === "the conductors may share the opening");
    const like = two([{ count: 2 }], {});
    expect(shareStep(like)).toMatchObject({ value: true, uses: [2], because: "they are of one size and one metal" });
    expect(like).toMatchObject({ sentence: "One opening holds 2 x 12 AWG copper; it is marked for them." });
    const listed = check(
      [{ count: 2 }],
      [opening({ conductorsMax: "unmarked", combinations: [[{ size: "12 AWG", count: 2 }]] })],
    );
    expect(shareStep(listed)).toMatchObject({ value: true, uses: [2], because: "the listed combinations decide" });
    expect(listed).toMatchObject({
      outcome: "pass",
      sentence: "One opening holds 2 x 12 AWG copper; its listed combinations decide.",
    });
    // The number of a part without a mark is one; combinations set another.
    expect("steps" in listed && listed.steps.some(({ kind }) => kind === "assumed")).toBe(false);
  });
  test("nothing is said of a mark that was not looked at, where it does not decide", () => {
    const finding = check([{ count: 1 }], [opening()]);
    expect(finding).toMatchObject({ outcome: "pass", offered: "1 conductor in an opening" });
    expect("steps" in finding && finding.steps.map(({ label }) => label)).not.toContain(
      "conductors the opening is marked for",
    );
  });
  test("the fullest opening is named, the first of several", () => {
    const ports = [
      opening({ id: "a", conductorsMax: 1, ranges: [{ from: "4 AWG", to: "4 AWG", strandings: ["class-B"] }] }),
      opening({ id: "b", conductorsMax: 2, ranges: [{ from: "12 AWG", to: "12 AWG", strandings: ["class-B"] }] }),
      opening({ id: "c", conductorsMax: 2, ranges: [{ from: "8 AWG", to: "8 AWG", strandings: ["class-B"] }] }),
    ];
    const finding = check([{ size: "4 AWG" }, { count: 2 }, { size: "8 AWG", count: 2 }], ports);
    expect(finding).toMatchObject({
      outcome: "pass",
      sentence: "One opening holds 2 x 12 AWG copper; it is marked for them.",
    });
  });
  test("sizes of another series are asked about at the mark for sharing", () => {
    expect(two([{ count: 2 }], { shared: { sameSize: true, sameMetal: true, to: "4 mm2" } })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/openings/0/shared/from" }],
      required: "a marking that names these sizes",
      offered: "2 conductors",
      cite: { locator: "110.3(B)" },
    });
  });
});

describe("openings that hold the same", () => {
  const insideSteps = (finding: ReturnType<typeof check>) =>
    "steps" in finding
      ? finding.steps.filter(({ label }) => label.startsWith("conductors in one opening")).map(({ value }) => value)
      : [];
  // hand: forty in forty holes lie one by one; five in four holes as 2 + 1 + 1 + 1
  test("are one question, however many they are", () => {
    expect(insideSteps(check([{ count: 40 }], [opening({ count: 40, conductorsMax: 1 })]))).toEqual([1]);
    expect(insideSteps(check([{ count: 5 }], [opening({ count: 4, conductorsMax: 2 })]))).toEqual([2, 1]);
  });
  // hand: 12 AWG and 10 AWG, each by itself in a hole of its own
  test("are unlike where other conductors lie in them", () => {
    const bar = opening({ count: 4, conductorsMax: 1 });
    expect(insideSteps(check([{ count: 2 }, { count: 2, size: "10 AWG" }], [bar]))).toEqual([1, 1]);
    expect(insideSteps(check([{ count: 2 }], [opening({ id: "a" }), opening({ id: "b" })]))).toEqual([1, 1]);
  });
  // hand: two holes hold 2 x 12 AWG + 1 x 10 AWG and 1 x 12 AWG + 2 x 10 AWG: as many, but not the same
  test("are unlike where as many lie in them in other numbers", () => {
    const joint = sampleJoint({
      conductors: [sampleConductor({ size: "12 AWG", count: 3 }), sampleConductor({ size: "10 AWG", count: 3 })],
    });
    const [small, large] = joint.conductors;
    if (small === undefined || large === undefined) throw new Error("two groups");
    const port = opening({ count: 2, conductorsMax: 3, shared: { sameSize: false, sameMetal: true } });
    const holding = (instance: number, ofSmall: number, ofLarge: number) => ({
      openingIndex: 0,
      opening: port,
      instance,
      conductors: [
        { group: 0, conductor: small, count: ofSmall },
        { group: 1, conductor: large, count: ofLarge },
      ],
    });
    const judged = (...landings: readonly Landing[]) =>
      conductorsPerOpening.check(
        { joint, connector: sampleConnector({ openings: [port] }), origin: "connector", landings },
        nfpa70Edition2023,
      );
    expect(insideSteps(judged(holding(1, 2, 1), holding(2, 1, 2)))).toEqual([3, 3]);
    expect(insideSteps(judged(holding(1, 1, 1), holding(2, 1, 2)))).toEqual([2, 3]);
    // One too many in the second hole is seen behind a first that holds as many of 12 AWG, or 12 AWG alone.
    expect(judged(holding(1, 1, 1), holding(2, 1, 3)).outcome).toBe("fail");
    const alone = {
      openingIndex: 0,
      opening: port,
      instance: 1,
      conductors: [{ group: 0, conductor: small, count: 1 }],
    };
    expect(judged(alone, holding(2, 1, 3)).outcome).toBe("fail");
  });
});
