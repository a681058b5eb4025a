import { describe, expect, it } from "vitest";
import { UnusableProblem } from "../problem/check-problem.js";
import type { JointClass, Maker } from "../problem/stock-problem.js";
import { randomProblem, shuffledProblem } from "../samples/random-problem.js";
import { type SeededRandom, seededRandom } from "../samples/seeded-random.js";
import { directSolver } from "../solver/direct-solver.js";
import { makeFromStock, type TruckQuestion } from "./make-from-stock.js";

function maker(partNumber: string, partsPerJoint = 1): Maker {
  return { partNumber, verdict: "accept", partsPerJoint };
}

function jointClass(id: string, joints: number, alike: boolean): JointClass {
  return { id, joints, marks: [`mark-${id}`], areas: [], alike };
}

/** The worked line of makeFromStock. */
function worked(alike: boolean): TruckQuestion {
  return {
    classes: [jointClass("1", 3, alike), jointClass("2", 2, alike)],
    feasible: [
      { classId: "1", makers: [maker("A"), maker("B")] },
      { classId: "2", makers: [maker("A")] },
    ],
    atHand: [
      { partNumber: "A", parts: 3 },
      { partNumber: "B", parts: 3 },
    ],
    planned: [
      { classId: "1", partNumber: "A" },
      { classId: "2", partNumber: "A" },
    ],
  };
}

/** Most joints, then fewest substitutions, by trying every way to deal the parts out. */
function byTrial(question: TruckQuestion): [number, number] {
  const left = new Map(question.atHand.map(({ partNumber, parts }) => [partNumber, parts]));
  const planned = new Map((question.planned ?? []).map(({ classId, partNumber }) => [classId, partNumber]));
  let best: [number, number] = [0, 0];
  const visit = (at: number, joints: number, substitutions: number): void => {
    const one = question.classes[at];
    if (one === undefined) {
      if (joints > best[0] || (joints === best[0] && substitutions < best[1])) best = [joints, substitutions];
      return;
    }
    const makers = question.feasible.find(({ classId }) => classId === one.id)?.makers ?? [];
    const deal = (index: number, rest: number, made: number, swapped: number, kinds: number): void => {
      const next = makers[index];
      if (next === undefined) {
        visit(at + 1, joints + made, substitutions + swapped);
        return;
      }
      for (let count = 0; count <= rest; count += 1) {
        const parts = count * next.partsPerJoint;
        const there = left.get(next.partNumber) ?? 0;
        if (parts > there || (count > 0 && kinds > 0 && one.alike !== false)) break;
        left.set(next.partNumber, there - parts);
        const intended = planned.get(one.id);
        const isSwap = intended !== undefined && intended !== next.partNumber;
        deal(index + 1, rest - count, made + count, swapped + (isSwap ? count : 0), kinds + (count > 0 ? 1 : 0));
        left.set(next.partNumber, there);
      }
    };
    deal(0, one.joints, 0, 0, 0);
  };
  visit(0, 0, 0);
  return best;
}

function randomQuestion(random: SeededRandom): TruckQuestion {
  const problem = randomProblem(random, {
    classes: 1 + random.below(4),
    items: 1 + random.below(4),
    jointsAlike: 5,
    jointsApart: 4,
    tenthsFeasible: 6,
    odd: false,
  });
  return {
    ...problem,
    atHand: problem.items.slice(random.below(2)).map(({ partNumber }) => ({ partNumber, parts: random.below(7) })),
    planned: problem.feasible.flatMap(({ classId, makers }) => {
      const [first] = random.shuffled(makers);
      return first === undefined || random.below(4) === 0 ? [] : [{ classId, partNumber: first.partNumber }];
    }),
  };
}

describe("joints made from stock", { timeout: 120_000 }, () => {
  it("are as many as can be, with as few substitutions", async () => {
    const apart = await makeFromStock(worked(false), directSolver);
    expect(apart).toMatchObject({ joints: 5, jointsMade: 5, substitutions: 2, missing: [], proven: true });
    expect(apart.made).toContainEqual({
      classId: "1",
      partNumber: "B",
      joints: 2,
      parts: 2,
      verdict: "accept",
      insteadOf: "A",
    });
    expect(apart.left).toEqual([{ partNumber: "B", parts: 1 }]);
    const alike = await makeFromStock(worked(true), directSolver);
    expect(alike).toMatchObject({ jointsMade: 5, substitutions: 3 });
  });

  it("name what is missing, by the planned part or by all that would do", async () => {
    const question = { ...worked(false), atHand: [{ partNumber: "A", parts: 1 }] };
    const answer = await makeFromStock(question, directSolver);
    expect(answer.jointsMade).toBe(1);
    expect(answer.missing.reduce((sum, { joints }) => sum + joints, 0)).toBe(4);
    for (const { wanted, joints } of answer.missing) expect(wanted).toEqual([{ partNumber: "A", parts: joints }]);
    const { planned: _none, ...unplanned } = { ...worked(false), atHand: [], planned: [] };
    const empty = await makeFromStock(unplanned, directSolver);
    expect(empty).toMatchObject({ jointsMade: 0, made: [], substitutions: 0, proven: true });
    expect(empty.missing[0]?.wanted).toEqual([
      { partNumber: "A", parts: 3 },
      { partNumber: "B", parts: 3 },
    ]);
  });

  it("never count half a joint", async () => {
    const question: TruckQuestion = {
      classes: [jointClass("1", 2, false)],
      feasible: [{ classId: "1", makers: [maker("A", 2)] }],
      atHand: [{ partNumber: "A", parts: 3 }],
    };
    expect(await makeFromStock(question, directSolver)).toMatchObject({
      jointsMade: 1,
      left: [{ partNumber: "A", parts: 1 }],
      missing: [{ joints: 1, wanted: [{ partNumber: "A", parts: 2 }] }],
    });
  });

  it("are as many as trying every way finds, in 200 random questions", async () => {
    const random = seededRandom(404);
    let substituted = 0;
    for (let round = 0; round < 200; round += 1) {
      const question = randomQuestion(random);
      const { jointsMade, substitutions, proven } = await makeFromStock(question, directSolver);
      expect([jointsMade, substitutions]).toEqual(byTrial(question));
      expect(proven).toBe(true);
      if (substitutions > 0) substituted += 1;
    }
    expect(substituted).toBeGreaterThan(30);
  });

  it("are the same whatever the order of the question", async () => {
    const random = seededRandom(12);
    const question = randomQuestion(random);
    const first = await makeFromStock(question, directSolver);
    for (let round = 0; round < 20; round += 1) {
      const { classes, feasible } = shuffledProblem(random, { ...question, items: [] });
      const atHand = random.shuffled(question.atHand);
      expect(await makeFromStock({ ...question, classes, feasible, atHand }, directSolver)).toEqual(first);
    }
  });

  it("are refused for stock that is no count", async () => {
    for (const parts of [-1, 0.5, Number.NaN])
      await expect(
        makeFromStock({ ...worked(true), atHand: [{ partNumber: "A", parts }] }, directSolver),
      ).rejects.toThrow(UnusableProblem);
  });
});
