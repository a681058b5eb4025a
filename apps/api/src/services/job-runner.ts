import { Problem } from "../problems/problem.js";

/** How long one slice of work may keep other requests waiting, in milliseconds. */
const SLICE_MS = 8;
/** Joints that may be in work at once: five jobs of the largest size. */
const JOINTS_IN_WORK_MAX = 50_000;

/** Work that pauses between its steps. */
export type Steps<T> = () => Generator<undefined, T>;

/**
 * Carries out long work beside short requests. Whoever wants to answer at once and report later puts that before
 * this.
 */
export interface JobRunner {
  /**
   * @param joints how much work it is.
   * @throws Problem BUSY when too much is in work already.
   */
  run<T>(joints: number, steps: Steps<T>): Promise<T>;
}

/**
 * Runs work on the main thread in slices. Pieces of work take turns, so that a small job does not wait for a large
 * one to end, and after each slice the event loop turns once, so that other requests are served.
 * @param now a clock in milliseconds, for measuring slices.
 */
export function slicedRunner(now: () => number): JobRunner {
  /** Each does one slice of its work and says whether it is done. */
  const turns: (() => boolean)[] = [];
  let jointsInWork = 0;

  const takeTurn = (): void => {
    const turn = turns.shift();
    if (turn === undefined) return;
    if (!turn()) turns.push(turn);
    if (turns.length > 0) setImmediate(takeTurn);
  };

  return {
    run<T>(joints: number, steps: Steps<T>): Promise<T> {
      if (jointsInWork > 0 && jointsInWork + joints > JOINTS_IN_WORK_MAX)
        return Promise.reject(
          new Problem("BUSY", `Jobs with ${jointsInWork} joints are in work already.`, [], { "retry-after": "2" }),
        );
      jointsInWork += joints;
      return new Promise<T>((resolve, reject) => {
        let work: Generator<undefined, T> | undefined;
        turns.push(() => {
          try {
            work ??= steps();
            const result = sliceOf(work, now);
            if (result === undefined) return false;
            jointsInWork -= joints;
            resolve(result.value);
          } catch (error) {
            jointsInWork -= joints;
            reject(error instanceof Error ? error : new Error(String(error)));
          }
          return true;
        });
        if (turns.length === 1) takeTurn();
      });
    },
  };
}

/** Goes on for one slice; the result when the work came to its end. */
function sliceOf<T>(work: Generator<undefined, T>, now: () => number): { readonly value: T } | undefined {
  const end = now() + SLICE_MS;
  do {
    const step = work.next();
    if (step.done === true) return { value: step.value };
  } while (now() < end);
  return undefined;
}
