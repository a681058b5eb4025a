import { describe, expect, it } from "vitest";
import { UnusableProblem } from "../problem/check-problem.js";
import { type Feeder, feederJoints } from "./feeder-joints.js";

/** 800 A: three sets, three phases, no neutral, a raceway for each set. */
function feeder(change: Partial<Feeder> = {}): Feeder {
  return {
    mark: "F-1",
    from: "MSB",
    to: "MCC-1",
    sets: 3,
    phases: 3,
    neutrals: 0,
    grounds: "in-every-raceway",
    ...change,
  };
}

describe("the joints of a feeder", () => {
  it("are every conductor of every set at both ends", () => {
    // hand: 3 sets x 3 phases x 2 ends = 18; 3 raceways x 1 ground x 2 ends = 6
    const { joints, totals } = feederJoints(feeder());
    expect(totals).toEqual({ phase: 18, neutral: 0, equipmentGround: 6, splice: 0, tap: 0 });
    expect(joints.map(({ mark, joints: count }) => [mark, count])).toEqual([
      ["F-1/from/phase", 9],
      ["F-1/from/equipment-ground", 3],
      ["F-1/to/phase", 9],
      ["F-1/to/equipment-ground", 3],
    ]);
    expect(joints[0]?.working).toBe("3 sets x 3 phases");
  });

  it("count one ground for an end where all sets share a raceway, and none where none is pulled", () => {
    // hand: one ground at each of two ends
    expect(feederJoints(feeder({ grounds: "one-shared" })).totals.equipmentGround).toBe(2);
    expect(feederJoints(feeder({ grounds: "none" })).totals.equipmentGround).toBe(0);
  });

  it("count neutrals of every set", () => {
    // hand: 3 sets x 1 neutral x 2 ends = 6
    expect(feederJoints(feeder({ neutrals: 1 })).totals.neutral).toBe(6);
  });

  it("count both sides of a device in between, and what passes through it not", () => {
    const device = { tag: "DS-1", neutral: "passes-through", ground: "lands" } as const;
    // hand: 18 + 9 x 2 sides = 36 phases; 6 neutrals; 6 + 3 x 2 = 12 grounds
    expect(feederJoints(feeder({ neutrals: 1, devices: [device] })).totals).toEqual({
      phase: 36,
      neutral: 6,
      equipmentGround: 12,
      splice: 0,
      tap: 0,
    });
  });

  it("count one splice a conductor at each splice point", () => {
    const splice = { tag: "PB-1", neutral: "spliced", ground: "passes-through" } as const;
    // hand: 3 x 3 phases + 3 x 1 neutrals = 12 at one point, 24 at two
    expect(feederJoints(feeder({ neutrals: 1, splices: [splice] })).totals.splice).toBe(12);
    expect(feederJoints(feeder({ neutrals: 1, splices: [splice, { ...splice, tag: "PB-2" }] })).totals.splice).toBe(24);
    // hand: with the grounds too, 3 more
    expect(feederJoints(feeder({ neutrals: 1, splices: [{ ...splice, ground: "spliced" }] })).totals.splice).toBe(15);
  });

  it("count taps as they are stated", () => {
    const tap = { tag: "T-1", sets: 1, phases: 3, neutrals: 0, grounds: 1 };
    // hand: 1 x 3 + 1 x 1 = 4
    expect(feederJoints(feeder({ taps: [tap] })).totals.tap).toBe(4);
  });

  it("say what was concluded and what is not counted", () => {
    const { inferred, notCounted } = feederJoints(feeder());
    expect(inferred).toEqual([
      "every conductor lands at both ends of the feeder",
      "each set has a raceway of its own, so each has a ground and each ground lands at both ends",
      "no neutral is pulled, so none lands",
    ]);
    expect(notCounted).toContain("grounding drawing");
  });

  it.each([
    ["no set", { sets: 0 }],
    ["half a set", { sets: 1.5 }],
    ["no phase", { phases: 0 }],
    ["fewer neutrals than none", { neutrals: -1 }],
    ["a number that is none", { neutrals: Number.NaN }],
    ["sets beyond any feeder", { sets: 1001 }],
    ["half a tap", { taps: [{ tag: "T", sets: 1, phases: 0.5, neutrals: 0, grounds: 0 }] }],
    [
      "a tag twice",
      {
        devices: [{ tag: "X", neutral: "lands", ground: "lands" }],
        splices: [{ tag: "X", neutral: "spliced", ground: "spliced" }],
      },
    ],
  ] as const)("are refused for %s", (_, change) => {
    expect(() => feederJoints(feeder(change as Partial<Feeder>))).toThrow(UnusableProblem);
  });

  it("are counted for the smallest and the largest feeder taken", () => {
    expect(feederJoints(feeder({ sets: 1, phases: 1, grounds: "none" })).totals.phase).toBe(2);
    expect(feederJoints(feeder({ sets: 1000, phases: 1, grounds: "none" })).totals.phase).toBe(2000);
  });
});
