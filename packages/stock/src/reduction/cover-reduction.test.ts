import { describe, expect, it } from "vitest";
import { seededRandom } from "../samples/seeded-random.js";
import { reduceCover } from "./cover-reduction.js";

/** Fewest items that cover every class, by trying every set of items: 2^items. */
function fewestByTrial(classes: readonly (readonly number[])[], items: number, taken: readonly number[]): number {
  let best = Number.POSITIVE_INFINITY;
  for (let set = 0; set < 2 ** items; set += 1) {
    const has = (item: number): boolean => ((set >> item) & 1) === 1;
    if (!taken.every(has) || !classes.every((makers) => makers.some(has))) continue;
    let size = 0;
    for (let item = 0; item < items; item += 1) if (has(item)) size += 1;
    best = Math.min(best, size);
  }
  return best;
}

describe("cover reduction", () => {
  // hand: the worked line of reduceCover.
  it("takes what is forced and drops what is lesser", () => {
    expect(reduceCover({ classes: [[0], [0, 1], [1, 2]], taken: [] })).toEqual({
      classes: [],
      taken: [0, 1],
      forced: [0],
    });
  });

  it("keeps one of two equal items and one of two equal classes", () => {
    const { classes, taken } = reduceCover({
      classes: [
        [3, 5],
        [3, 5],
      ],
      taken: [],
    });
    expect(classes).toEqual([]);
    expect(taken).toEqual([3]);
  });

  it("leaves a question that no step applies to as it is", () => {
    // A ring: every item covers two neighboring classes of five, none within another's.
    const ring = [0, 1, 2, 3, 4].map((place) => [place, (place + 1) % 5]);
    expect(reduceCover({ classes: ring, taken: [] })).toEqual({ classes: ring, taken: [], forced: [] });
    expect(fewestByTrial(ring, 5, [])).toBe(3);
  });

  it("asks nothing more of classes that a taken item makes", () => {
    expect(
      reduceCover({
        classes: [
          [0, 1],
          [1, 2],
        ],
        taken: [1],
      }),
    ).toEqual({ classes: [], taken: [1], forced: [] });
  });

  it("never changes the least number of items (400 random questions)", () => {
    const random = seededRandom(11);
    for (let round = 0; round < 400; round += 1) {
      const items = 1 + random.below(9);
      const classes = Array.from({ length: 1 + random.below(9) }, () =>
        Array.from({ length: items }, (_, item) => item).filter(
          (item) => random.below(3) === 0 || item === random.below(items),
        ),
      ).filter((makers) => makers.length > 0);
      const taken = random.below(4) === 0 ? [random.below(items)] : [];
      const reduced = reduceCover({ classes, taken });
      expect(reduced.classes.every((makers) => makers.length > 0)).toBe(true);
      expect(reduced.taken.length + fewestByTrial(reduced.classes, items, [])).toBe(
        fewestByTrial(classes, items, taken),
      );
    }
  });
});
