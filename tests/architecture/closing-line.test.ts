import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, beforeEach, describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));

describe("the closing line of a test run", () => {
  let folder = "";

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "landfast-"));
  });

  afterEach(() => {
    rmSync(folder, { recursive: true });
  });

  /** Runs a file of tests in a folder of its own; returns the last line and the exit status. */
  function run(tests: string): { line: string | undefined; status: number | null } {
    if (tests !== "") writeFileSync(join(folder, "planted.test.mjs"), tests);
    const { stdout, status } = spawnSync(
      process.execPath,
      [
        `${root}/node_modules/vitest/vitest.mjs`,
        "run",
        "--root",
        folder,
        "--globals",
        "--reporter",
        `${root}/.bootstrap/closing-line-reporter.mjs`,
      ],
      { cwd: folder, encoding: "utf8", env: { ...process.env, CLOSING_LINE_WRITTEN: "" } },
    );
    return { line: stdout.trimEnd().split("\n").at(-1), status };
  }

  it.each([
    [
      "passes and a skip",
      'test("a", () => {}); test("b", () => {}); test.skip("c", () => {});',
      "2 passed, 0 failed",
      0,
    ],
    ["a failure", 'test("a", () => {}); test("b", () => { throw new Error(); });', "1 passed, 1 failed", 1],
    ["a file that does not load", "throw new Error();", "0 passed, 1 failed", 1],
    [
      "a hook that throws before",
      'describe("s", () => { beforeAll(() => { throw new Error(); }); test("a", () => {}); });',
      "0 passed, 1 failed",
      1,
    ],
    [
      "a hook that throws after",
      'test("a", () => {}); afterAll(() => { throw new Error(); });',
      "1 passed, 1 failed",
      1,
    ],
    [
      "an error nobody caught",
      'test("a", async () => { setTimeout(() => { throw new Error(); }); await new Promise((r) => setTimeout(r, 50)); });',
      "1 passed, 1 failed",
      1,
    ],
    ["no test at all", "", "0 passed, 1 failed", 1],
    ["skips only", 'test.skip("a", () => {});', "0 passed, 1 failed", 1],
  ])(
    "counts %s",
    (_, tests, line, status) => {
      expect(run(tests)).toEqual({ line, status });
    },
    30_000,
  );
});
