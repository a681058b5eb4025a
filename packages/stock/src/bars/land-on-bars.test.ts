import { describe, expect, it } from "vitest";
import { UnusableProblem } from "../problem/check-problem.js";
import { type SeededRandom, seededRandom } from "../samples/seeded-random.js";
import { directSolver } from "../solver/direct-solver.js";
import type { Bar, BarConductor, BarOpening, BarQuestion, BarRole, OpeningPermit } from "./bar-question.js";
import { landOnBars } from "./land-on-bars.js";
import { openingFillings } from "./opening-fillings.js";

const one: OpeningPermit = {
  conductors: 1,
  from: "14 AWG",
  to: "4 AWG",
  metals: ["copper", "aluminum"],
  strandings: ["solid", "class-B"],
  sameSize: false,
  sameMetal: false,
};
const twoAlike: OpeningPermit = {
  ...one,
  conductors: 2,
  to: "12 AWG",
  metals: ["copper"],
  sameSize: true,
  sameMetal: true,
};

function opening(count: number, permits: readonly OpeningPermit[] = [one, twoAlike]): BarOpening {
  return { id: "small", count, permits };
}

function bar(id: string, count: number, takes: readonly BarRole[] = ["neutral", "equipment-ground"]): Bar {
  return { id, takes, openings: [opening(count)] };
}

function conductor(id: string, role: BarRole, size: string, count: number): BarConductor {
  return { id, role, size, metal: "copper", stranding: "solid", count };
}

const three = conductor("N", "neutral", "12 AWG", 3);
const four = conductor("G", "equipment-ground", "12 AWG", 4);

describe("opening fillings", () => {
  it("are what the marking permits, and no more", () => {
    const conductors = [
      conductor("N", "neutral", "12 AWG", 1),
      conductor("G12", "equipment-ground", "12 AWG", 9),
      conductor("G14", "equipment-ground", "14 AWG", 9),
    ];
    const fillings = openingFillings(opening(1), ["neutral", "equipment-ground"], conductors);
    // hand: the worked line of openingFillings.
    expect(fillings.map((filling) => [...filling])).toEqual([[[0, 1]], [[1, 1]], [[2, 1]], [[1, 2]], [[2, 2]]]);
    expect(openingFillings(opening(1), ["neutral"], conductors)).toHaveLength(1);
  });

  it("keep to the range by area, at its ends and one size beyond", () => {
    const permitted = (size: string): number =>
      openingFillings(opening(1), ["equipment-ground"], [conductor("G", "equipment-ground", size, 1)]).length;
    // Sizes by area: 16 < 14 < 12 < 10 < 4 < 3 AWG; two go together up to 12 AWG.
    expect(["16 AWG", "14 AWG", "12 AWG", "10 AWG", "4 AWG", "3 AWG", "4/0 AWG"].map(permitted)).toEqual([
      0, 2, 2, 1, 1, 0, 0,
    ]);
    // A range in AWG says nothing of mm2, though 4 mm2 lies between 14 and 4 AWG.
    expect(permitted("4 mm2")).toBe(0);
  });

  it("keep to metals and strand forms", () => {
    const base = conductor("G", "equipment-ground", "12 AWG", 1);
    const of = (change: Partial<BarConductor>, permits: readonly OpeningPermit[]): number =>
      openingFillings(opening(1, permits), ["equipment-ground"], [{ ...base, ...change }]).length;
    expect(of({ metal: "aluminum" }, [one, twoAlike])).toBe(1);
    expect(of({ metal: "copper-clad-aluminum" }, [one, twoAlike])).toBe(0);
    expect(of({ stranding: "class-K" }, [one])).toBe(0);
    expect(of({ stranding: "unknown" }, [one])).toBe(0);
    const unmarked: OpeningPermit = { ...one, strandings: "unmarked" };
    expect(
      (["class-B", "class-C", "solid", "class-K", "compact"] as const).map((stranding) =>
        of({ stranding }, [unmarked]),
      ),
    ).toEqual([1, 1, 0, 0, 0]);
  });
});

describe("landing on bars", { timeout: 120_000 }, () => {
  // hand: the worked line of landOnBars.
  it("gives every neutral an opening and pairs grounds where the marking permits", async () => {
    const answer = await landOnBars({ bars: [bar("main", 5)], conductors: [three, four] }, directSolver);
    expect(answer).toMatchObject({ openingsUsed: 5, spareOpenings: 0, barsToAdd: [], notLanded: [], proven: true });
    expect(answer.landings).toEqual([
      { bar: "main", isAdded: false, opening: "small", openings: 3, conductors: [{ id: "N", count: 1 }] },
      { bar: "main", isAdded: false, opening: "small", openings: 2, conductors: [{ id: "G", count: 2 }] },
    ]);
  });

  it("adds a bar only when the last opening is gone", async () => {
    const question = (neutrals: number): BarQuestion => ({
      bars: [bar("main", 5)],
      addable: [bar("extra", 4)],
      conductors: [{ ...three, count: neutrals }, four],
    });
    expect((await landOnBars(question(3), directSolver)).barsToAdd).toEqual([]);
    const more = await landOnBars(question(4), directSolver);
    expect(more).toMatchObject({ barsToAdd: [{ bar: "extra", count: 1 }], openingsUsed: 6, spareOpenings: 3 });
    expect((await landOnBars(question(8), directSolver)).barsToAdd).toEqual([{ bar: "extra", count: 2 }]);
  });

  it("names what is left over, and why", async () => {
    const answer = await landOnBars(
      { bars: [bar("main", 2)], conductors: [three, conductor("big", "equipment-ground", "2 AWG", 1)] },
      directSolver,
    );
    expect(answer.notLanded).toMatchObject([
      { id: "N", count: 1 },
      { id: "big", count: 1 },
    ]);
    expect(answer.notLanded[0]?.because).toContain("is left");
    expect(answer.notLanded[1]?.because).toContain("no bar's marking permits it");
  });

  it("keeps neutrals off a ground bar and grounds off a neutral bar", async () => {
    const bars = [bar("ground", 9, ["equipment-ground"]), bar("neutral", 2, ["neutral"])];
    const answer = await landOnBars({ bars, conductors: [three, four] }, directSolver);
    expect(answer.notLanded).toMatchObject([{ id: "N", count: 1 }]);
    expect(
      answer.landings.every(({ bar: at, conductors }) =>
        conductors.every(({ id }) => (id === "N") === (at === "neutral")),
      ),
    ).toBe(true);
  });

  it("does not count openings in use", async () => {
    const used: Bar = { ...bar("main", 5), openings: [{ ...opening(5), occupied: 4 }] };
    const answer = await landOnBars({ bars: [used], conductors: [three] }, directSolver);
    expect(answer).toMatchObject({ openingsUsed: 1, spareOpenings: 0, notLanded: [{ id: "N", count: 2 }] });
  });

  it("leaves large openings to large conductors", async () => {
    const large: BarOpening = { id: "large", count: 1, permits: [{ ...one, to: "1/0 AWG" }] };
    const main: Bar = { ...bar("main", 1), openings: [large, opening(1, [one])] };
    const answer = await landOnBars(
      { bars: [main], conductors: [conductor("N", "neutral", "12 AWG", 1), conductor("big", "neutral", "1/0 AWG", 1)] },
      directSolver,
    );
    expect(answer.notLanded).toEqual([]);
  });

  it("leaves as many openings spare as trying every landing finds, in 150 random questions", async () => {
    const random = seededRandom(66);
    let paired = 0;
    for (let round = 0; round < 150; round += 1) {
      const question = randomQuestion(random);
      const answer = await landOnBars(question, directSolver);
      const [landed, used] = byTrial(question);
      const all = question.conductors.reduce((sum, { count }) => sum + count, 0);
      const left = answer.notLanded.reduce((sum, { count }) => sum + count, 0);
      expect([all - left, answer.openingsUsed]).toEqual([landed, used]);
      if (used < landed) paired += 1;
    }
    expect(paired).toBeGreaterThan(20);
  });

  it("refuses what cannot be", async () => {
    const questions: BarQuestion[] = [
      { bars: [bar("a", 1), bar("a", 1)], conductors: [] },
      { bars: [], conductors: [three, three] },
      { bars: [bar("a", 0)], conductors: [] },
      { bars: [], conductors: [{ ...three, count: 0 }] },
      { bars: [bar("a", 1)], conductors: [{ ...three, size: "#12" }] },
    ];
    for (const question of questions) await expect(landOnBars(question, directSolver)).rejects.toThrow(UnusableProblem);
  });

  it("lands nothing where there is nothing to land", async () => {
    expect(await landOnBars({ bars: [bar("main", 5)], conductors: [] }, directSolver)).toMatchObject({
      landings: [],
      spareOpenings: 5,
      proven: true,
    });
  });
});

function randomQuestion(random: SeededRandom): BarQuestion {
  const sizes = ["14 AWG", "12 AWG", "10 AWG", "4 AWG"] as const;
  return {
    bars: Array.from({ length: 1 + random.below(2) }, (_, at) => ({
      id: `bar-${String(at)}`,
      takes: random.pick<readonly BarRole[]>([["neutral", "equipment-ground"], ["equipment-ground"], ["neutral"]]),
      openings: Array.from({ length: 1 + random.below(2) }, (__, place) => ({
        id: `opening-${String(place)}`,
        count: 1 + random.below(2),
        permits: [
          { ...one, to: random.pick(sizes) },
          ...(random.below(2) === 0 ? [{ ...twoAlike, sameSize: random.below(2) === 0 }] : []),
          ...(random.below(3) === 0 ? [{ ...twoAlike, conductors: 3 }] : []),
        ],
      })),
    })),
    conductors: Array.from({ length: 1 + random.below(3) }, (_, at) =>
      conductor(
        `conductor-${String(at)}`,
        random.below(3) === 0 ? "neutral" : "equipment-ground",
        random.pick(sizes),
        1 + random.below(3),
      ),
    ),
  };
}

const AREA_ORDER = ["14 AWG", "12 AWG", "10 AWG", "4 AWG"];

/** Most conductors landed, then fewest openings, by putting every single conductor into every opening or into none. */
function byTrial({ bars, conductors }: BarQuestion): [number, number] {
  const holes = bars.flatMap(({ takes, openings }) =>
    openings.flatMap(({ count, permits }) =>
      Array.from({ length: count }, () => ({ takes, permits, inside: [] as BarConductor[] })),
    ),
  );
  const all = conductors.flatMap((each) => Array.from({ length: each.count }, () => each));
  let best: [number, number] = [0, 0];
  const isAllowed = ({ takes, permits, inside }: (typeof holes)[number]): boolean => {
    if (inside.length === 0) return true;
    if (inside.some(({ role }) => !takes.includes(role))) return false;
    if (inside.length > 1 && inside.some(({ role }) => role === "neutral")) return false;
    return permits.some(
      (permit) =>
        permit.conductors === inside.length &&
        inside.every(({ size }) => AREA_ORDER.indexOf(size) <= AREA_ORDER.indexOf(permit.to)) &&
        (inside.length === 1 || !permit.sameSize || inside.every(({ size }) => size === inside[0]?.size)),
    );
  };
  const visit = (at: number, landed: number): void => {
    const next = all[at];
    if (next === undefined) {
      if (!holes.every(isAllowed)) return;
      const used = holes.filter(({ inside }) => inside.length > 0).length;
      if (landed > best[0] || (landed === best[0] && used < best[1])) best = [landed, used];
      return;
    }
    visit(at + 1, landed);
    for (const hole of holes) {
      if (hole.inside.length === 3) continue;
      hole.inside.push(next);
      visit(at + 1, landed + 1);
      hole.inside.pop();
    }
  };
  visit(0, 0);
  return best;
}
