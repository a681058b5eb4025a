import { describe, expect, it } from "vitest";
import { canonicalProblem } from "./canonical-problem.js";
import { problemFaults, refuseFaults, UnusableProblem } from "./check-problem.js";
import { groupJoints, type MarkedJoints, NO_AREA } from "./group-joints.js";
import type { Maker, StockProblem } from "./stock-problem.js";

const maker: Maker = { partNumber: "A", verdict: "accept", partsPerJoint: 1 };
const sound: StockProblem = {
  classes: [
    { id: "2", joints: 3, marks: ["b"], areas: [{ area: "hall", joints: 3 }] },
    { id: "1", joints: 1, marks: ["a"], areas: [] },
  ],
  items: [
    { partNumber: "B", packQuantity: 1 },
    { partNumber: "A", packQuantity: 10, onHand: 2 },
  ],
  feasible: [{ classId: "2", makers: [{ ...maker, partNumber: "B" }, maker] }],
};

describe("stock problem", () => {
  it("has one order", () => {
    const { classes, items } = canonicalProblem(sound);
    expect(classes.map(({ id, makers }) => [id, makers.map(({ partNumber }) => partNumber)])).toEqual([
      ["1", []],
      ["2", ["A", "B"]],
    ]);
    expect(items.map(({ partNumber }) => partNumber)).toEqual(["A", "B"]);
    expect(problemFaults(sound)).toEqual([]);
  });

  it.each<[string, Partial<StockProblem>, string]>([
    [
      "a class twice",
      { classes: [...sound.classes, ...sound.classes.slice(1)] },
      "class 1 stands there more than once",
    ],
    [
      "an item twice",
      { items: [...sound.items, { partNumber: "A", packQuantity: 1 }] },
      "item A stands there more than once",
    ],
    ["no joints", { classes: sound.classes.map((one) => ({ ...one, joints: 0 })) }, "joints is a whole number"],
    ["half a joint", { classes: sound.classes.map((one) => ({ ...one, joints: 1.5 })) }, "joints is a whole number"],
    [
      "joints beyond count",
      { classes: sound.classes.map((one) => ({ ...one, joints: 10_000_001 })) },
      "joints is a whole number",
    ],
    [
      "areas that do not add up",
      { classes: [{ id: "2", joints: 4, marks: [], areas: [{ area: "hall", joints: 3 }] }] },
      "its areas hold 3 joints, not 4",
    ],
    ["no pack", { items: sound.items.map((one) => ({ ...one, packQuantity: 0 })) }, "packQuantity is a whole number"],
    [
      "less than nothing on hand",
      { items: sound.items.map((one) => ({ ...one, onHand: -1 })) },
      "onHand is a whole number",
    ],
    [
      "must and must not",
      { items: sound.items.map((one) => ({ ...one, must: true, mustNot: true })) },
      "both must and must not",
    ],
    ["a class that is not there", { feasible: [{ classId: "9", makers: [] }] }, "there is no class 9"],
    [
      "an item that is not there",
      { feasible: [{ classId: "2", makers: [{ ...maker, partNumber: "Z" }] }] },
      "there is no such item",
    ],
    ["a maker twice", { feasible: [{ classId: "2", makers: [maker, maker] }] }, "names item A more than once"],
    [
      "no parts for a joint",
      { feasible: [{ classId: "2", makers: [{ ...maker, partsPerJoint: 0 }] }] },
      "partsPerJoint",
    ],
    [
      "hours that are no number",
      { feasible: [{ classId: "2", makers: [{ ...maker, labourHours: Number.NaN }] }] },
      "labourHours",
    ],
  ])("with %s is refused", (_what, change, fault) => {
    const problem = { ...sound, ...change };
    expect(problemFaults(problem).join("; ")).toContain(fault);
    expect(() => {
      refuseFaults(problem);
    }).toThrow(UnusableProblem);
  });

  // A part that the rules refuse, or of which a fact is missing, must not get in through data.
  it.each(["reject", "needs-information", "", undefined])("with the verdict %s is refused", (verdict) => {
    const makers = [{ ...maker, verdict: verdict as "accept" }];
    expect(problemFaults({ ...sound, feasible: [{ classId: "2", makers }] })).toHaveLength(1);
  });
});

describe("grouping of joints", () => {
  const marked: MarkedJoints[] = [
    { mark: "M-3", kind: "K", joints: 6, area: "B", makers: [maker], neededBy: "2026-05-01" },
    { mark: "M-1", kind: "K", joints: 3, area: "A", makers: [maker], neededBy: "2026-04-01" },
    { mark: "M-2", kind: "K", joints: 3, area: "A", makers: [maker] },
    { mark: "M-4", kind: "J", joints: 1, makers: [], alike: false },
  ];

  // hand: the worked line of groupJoints.
  it("makes one class of equal joints", () => {
    const { classes, feasible } = groupJoints(marked);
    expect(classes).toEqual([
      { id: "J", joints: 1, marks: ["M-4"], areas: [{ area: NO_AREA, joints: 1 }], alike: false },
      {
        id: "K",
        joints: 12,
        marks: ["M-1", "M-2", "M-3"],
        areas: [
          { area: "A", joints: 6 },
          { area: "B", joints: 6 },
        ],
        neededBy: "2026-04-01",
        alike: true,
      },
    ]);
    expect(feasible).toEqual([{ classId: "K", makers: [maker] }]);
    expect(groupJoints(marked.toReversed())).toEqual({ classes, feasible });
  });

  it("is alike unless every mark states otherwise", () => {
    const two = (first: boolean, second: boolean): boolean | undefined =>
      groupJoints([
        { mark: "1", kind: "K", joints: 1, makers: [maker], alike: first },
        { mark: "2", kind: "K", joints: 1, makers: [maker], alike: second },
      ]).classes[0]?.alike;
    expect([two(false, false), two(false, true), two(true, true)]).toEqual([false, true, true]);
  });

  it("refuses one kind with different makers", () => {
    const [first] = marked;
    if (first === undefined) throw new Error("no marks");
    expect(() => groupJoints([first, { ...first, mark: "M-9", makers: [] }])).toThrow("M-3 and M-9");
  });
});
