import { Problem } from "../problems/problem.js";

/** How long one slice of a large piece of work may keep other requests waiting, in milliseconds. */
const SLICE_MS = 8;
/** Large pieces of work that may wait; what comes beyond is told to come again. */
const WAITING_MAX = 16;

/** Work that pauses between its steps. */
export type Steps<T> = () => Generator<undefined, T>;

/**
 * Carries out long work beside short requests. One piece at a time, in the order in which they came; a queue that is
 * full refuses. Whoever wants to answer at once and report later puts that before this.
 */
export interface JobRunner {
  /** @throws Problem BUSY when too much is waiting already. */
  run<T>(steps: Steps<T>): Promise<T>;
  /** Pieces of work that are running or waiting. */
  readonly waiting: number;
}

/**
 * Runs work on the main thread in slices: after each the event loop turns once, so that other requests are served.
 * @param now a clock in milliseconds, for measuring slices.
 */
export function slicedRunner(now: () => number): JobRunner {
  let waiting = 0;
  let last: Promise<unknown> = Promise.resolve();
  return {
    get waiting() {
      return waiting;
    },
    run<T>(steps: Steps<T>): Promise<T> {
      if (waiting >= WAITING_MAX)
        return Promise.reject(
          new Problem("BUSY", `${WAITING_MAX} jobs are waiting already.`, [], { "retry-after": "2" }),
        );
      waiting += 1;
      const turn = last
        .then(() => runInSlices(steps, now))
        .finally(() => {
          waiting -= 1;
        });
      // The next in line does not care how this one ended.
      last = turn.catch(() => undefined);
      return turn;
    },
  };
}

function runInSlices<T>(steps: Steps<T>, now: () => number): Promise<T> {
  const work = steps();
  return new Promise<T>((resolve, reject) => {
    const slice = (): void => {
      try {
        const end = now() + SLICE_MS;
        do {
          const step = work.next();
          if (step.done === true) {
            resolve(step.value);
            return;
          }
        } while (now() < end);
        setImmediate(slice);
      } catch (error) {
        reject(error instanceof Error ? error : new Error(String(error)));
      }
    };
    slice();
  });
}
