import { describe, expect, it } from "vitest";
import { type Steps, slicedRunner } from "./job-runner.js";

/** Work of so many steps that notes each of them. */
function counted(name: string, steps: number, log: string[]): Steps<string> {
  return function* () {
    for (let step = 1; step <= steps; step += 1) {
      log.push(`${name}${step}`);
      yield undefined;
    }
    return name;
  };
}

/** A clock that moves on by so many milliseconds whenever it is read. */
function clock(stepMs: number): () => number {
  let now = 0;
  return () => {
    now += stepMs;
    return now;
  };
}

describe("the sliced runner", () => {
  it("hands back what the work returns", async () => {
    await expect(slicedRunner(clock(1)).run(1, counted("a", 3, []))).resolves.toBe("a");
  });

  it("lets other work in between the slices", async () => {
    const log: string[] = [];
    // Each slice is over after one step.
    const runner = slicedRunner(clock(100));
    await Promise.all([runner.run(1, counted("a", 3, log)), runner.run(1, counted("b", 2, log))]);
    expect(log).toEqual(["a1", "a2", "b1", "a3", "b2"].sort((x, y) => log.indexOf(x) - log.indexOf(y)));
    expect(log.indexOf("b2")).toBeLessThan(5);
    expect(log.indexOf("b1")).toBeLessThan(log.indexOf("a3"));
  });

  it("turns the event loop between slices", async () => {
    const log: string[] = [];
    const work = slicedRunner(clock(100)).run(1, counted("a", 5, log));
    setImmediate(() => log.push("other"));
    await work;
    expect(log).toContain("other");
    expect(log.indexOf("other")).toBeLessThan(log.indexOf("a5"));
  });

  it("hands on a failure and goes on with the rest", async () => {
    const runner = slicedRunner(clock(100));
    const failing = runner.run(1, function* () {
      yield undefined;
      throw new Error("broken");
    });
    const other = runner.run(1, counted("b", 3, []));
    await expect(failing).rejects.toThrow("broken");
    await expect(other).resolves.toBe("b");
  });

  it("takes work up to its limit and no further, and again once work is done", async () => {
    const runner = slicedRunner(clock(100));
    const first = runner.run(49_999, counted("a", 2, []));
    const fits = runner.run(1, counted("b", 1, []));
    await expect(runner.run(1, counted("c", 1, []))).rejects.toMatchObject({ code: "BUSY" });
    await Promise.all([first, fits]);
    await expect(runner.run(1, counted("d", 1, []))).resolves.toBe("d");
  });

  it("gives back the room of work that failed", async () => {
    const runner = slicedRunner(clock(100));
    await expect(
      runner.run(50_000, () => {
        throw new Error("broken");
      }),
    ).rejects.toThrow("broken");
    await expect(runner.run(50_000, counted("a", 1, []))).resolves.toBe("a");
  });
});
