import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";

const API = fileURLToPath(new URL("../..", import.meta.url));

it("the committed migrations make exactly the tables of the schema", { timeout: 60_000 }, () => {
  const folder = mkdtempSync(join(tmpdir(), "landfast-"));
  cpSync(join(API, "drizzle"), folder, { recursive: true });
  const before = readdirSync(folder);
  const { status, stdout } = spawnSync(
    process.execPath,
    [
      join(API, "node_modules/drizzle-kit/bin.cjs"),
      "generate",
      "--dialect=sqlite",
      "--schema=./src/db/schema.ts",
      `--out=${relative(API, folder)}`,
    ],
    { cwd: API, encoding: "utf8" },
  );
  expect({ status, nothingToDo: stdout.includes("No schema changes") }).toEqual({ status: 0, nothingToDo: true });
  expect(readdirSync(folder)).toEqual(before);
  rmSync(folder, { recursive: true });
});
