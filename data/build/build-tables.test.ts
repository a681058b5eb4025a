import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { buildTables } from "./build-tables.js";
import { bytesOf, sampleFiles } from "./sample-files.js";

let root = "";
const published = (): string => join(root, "published");
const generated = (): string => join(root, "generated");

function put(path: string, content: Uint8Array): void {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, content);
}

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "tables-"));
  for (const [path, content] of sampleFiles()) put(join(published(), path), content);
});
afterEach(() => {
  rmSync(root, { recursive: true });
});

describe("the table build on a folder", () => {
  it("finds nothing to say in what it has just written", () => {
    expect(buildTables(published(), generated(), "write").refusals).toEqual([]);
    expect(buildTables(published(), generated(), "check").refusals).toEqual([]);
  });

  it("demands generated sources that are missing, differ or have no table", () => {
    buildTables(published(), generated(), "write");
    rmSync(join(generated(), "std-2023/by-size.ts"));
    put(join(generated(), "std-2023/by-term.ts"), bytesOf("// edited\n"));
    put(join(generated(), "std-2023/old.ts"), bytesOf("// left over\n"));
    expect(buildTables(published(), generated(), "check").refusals).toEqual([
      "generated std-2023/by-size.ts: is missing",
      "generated std-2023/by-term.ts: differs from what the tables make",
      "generated std-2023/old.ts: is made from no table",
    ]);
    expect(readFileSync(join(generated(), "std-2023/by-term.ts"), "utf8")).toBe("// edited\n");
    buildTables(published(), generated(), "write");
    expect(buildTables(published(), generated(), "check").refusals).toEqual([]);
  });

  it("writes nothing when a table is refused", () => {
    put(join(published(), "std/2023/by-term.csv"), bytesOf("key,use\nalpha,yes\n"));
    expect(buildTables(published(), generated(), "write").refusals).toEqual([
      "std/2023/by-term.csv: has 1 rows where 2 are declared",
    ]);
    expect(() => readFileSync(join(generated(), "index.ts"))).toThrow();
  });
});

describe("the tables of this repository", () => {
  it("are whole, and the generated sources are what they make", () => {
    const here = fileURLToPath(new URL("../published", import.meta.url));
    const there = fileURLToPath(new URL("../../packages/rules/src/generated", import.meta.url));
    expect(buildTables(here, there, "check").refusals).toEqual([]);
  });
});
