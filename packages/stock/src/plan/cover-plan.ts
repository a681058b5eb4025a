import { type ReducedCover, reduceCover } from "../reduction/cover-reduction.js";
import type { Model, SolveLimits, Solver } from "../solver/solver.js";
import { SolverFailure } from "../solver/solver.js";

/** The items of a plan with the fewest part numbers, and what is known of how few there can be. */
export interface CoverPlan {
  /** By place, rising. */
  readonly items: readonly number[];
  /** No plan has fewer. */
  readonly bound: number;
  readonly proven: boolean;
  readonly reduced: ReducedCover;
}

/**
 * Chooses the fewest items that together make every class. `must` items are chosen in any case and counted.
 * With `reduce` false the question goes to the solver as it was put; the number is the same.
 */
export async function coverPlan(
  classes: readonly (readonly number[])[],
  must: readonly number[],
  solver: Solver,
  limits: SolveLimits,
  reduce: boolean,
): Promise<CoverPlan> {
  const taken = new Set(must);
  const reduced: ReducedCover = reduce
    ? reduceCover({ classes, taken: must })
    : {
        classes: classes.filter((makers) => !makers.some((item) => taken.has(item))),
        taken: must,
        forced: classes.flatMap((makers) => (makers.length === 1 ? makers : [])),
      };
  if (reduced.classes.length === 0) return { items: reduced.taken, bound: reduced.taken.length, proven: true, reduced };
  const { model, places } = coverModel(reduced.classes);
  const answer = await solver.solve(model, limits);
  if (answer.status === "infeasible") throw new SolverFailure("a question of covering was called infeasible");
  const chosen =
    answer.status === "limit-without-plan"
      ? greedyCover(reduced.classes)
      : places.filter((_, column) => (answer.values[column] ?? 0) > 0.5);
  const items = [...reduced.taken, ...withoutIdle(chosen, reduced.classes)].sort((a, b) => a - b);
  const bound = reduced.taken.length + Math.max(1, Math.ceil(answer.bound - 1e-6));
  return { items, bound, proven: bound >= items.length, reduced };
}

/** Fewest columns at 1 so that every class has one of its makers. */
function coverModel(classes: readonly (readonly number[])[]): { model: Model; places: readonly number[] } {
  const places = [...new Set(classes.flat())].sort((a, b) => a - b);
  const columnOf = new Map(places.map((place, column) => [place, column]));
  const start = new Set(greedyCover(classes));
  return {
    places,
    model: {
      columns: places.map(() => ({ cost: 1, lower: 0, upper: 1, integer: true })),
      rows: classes.map((makers) => ({
        lower: 1,
        upper: Number.POSITIVE_INFINITY,
        columns: makers.map((item) => columnOf.get(item) ?? 0),
        coefficients: makers.map(() => 1),
      })),
      step: 1,
      start: places.map((place) => (start.has(place) ? 1 : 0)),
    },
  };
}

/** Some cover: time and again the item that makes most of what is left, the first of equals. A plan to begin with. */
export function greedyCover(classes: readonly (readonly number[])[]): number[] {
  const chosen: number[] = [];
  let left = classes;
  while (left.length > 0) {
    const counts = new Map<number, number>();
    for (const makers of left) for (const item of makers) counts.set(item, (counts.get(item) ?? 0) + 1);
    let best = -1;
    for (const [item, count] of counts) {
      const most = counts.get(best) ?? 0;
      if (count > most || (count === most && item < best)) best = item;
    }
    if (best < 0) throw new RangeError("a class has no maker");
    chosen.push(best);
    left = left.filter((makers) => !makers.includes(best));
  }
  return chosen.sort((a, b) => a - b);
}

/** Drops, last first, every chosen item without which all classes are still covered. */
function withoutIdle(chosen: readonly number[], classes: readonly (readonly number[])[]): number[] {
  const kept = new Set(chosen);
  for (const item of chosen.toReversed()) {
    kept.delete(item);
    if (!classes.every((makers) => makers.some((one) => kept.has(one)))) kept.add(item);
  }
  return [...kept];
}
