// Arguments go on to the test runner: `npm test -- packages/rules` runs that package's tests. Whatever happens, the
// last line is "N passed, N failed": when nothing could be built or the runner died, something failed.
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "./build.mjs";
import { tool } from "./run.mjs";

const folder = mkdtempSync(join(tmpdir(), "landfast-"));
const written = join(folder, "closing-line");

process.once("exit", () => {
  if (!existsSync(written)) {
    console.log("0 passed, 1 failed");
    process.exitCode ||= 1;
  }
  rmSync(folder, { recursive: true });
});

build();
process.env.CLOSING_LINE_WRITTEN = written;
process.exitCode = tool("vitest", "run", ...process.argv.slice(2));
