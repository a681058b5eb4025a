import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** The folder of the whole project. */
export const root = fileURLToPath(new URL("..", import.meta.url));

const tools = {
  tsc: "typescript/bin/tsc",
  vitest: "vitest/vitest.mjs",
  biome: "@biomejs/biome/bin/biome",
  eslint: "eslint/bin/eslint.js",
  knip: "knip/bin/knip.js",
  depcruise: "dependency-cruiser/bin/dependency-cruise.mjs",
};

/** Runs an installed tool by name and returns its exit status; no package manager in between, which costs seconds. */
export function tool(name, ...args) {
  return node(join(root, "node_modules", tools[name]), ...args);
}

/** Runs node with the given arguments in the project's folder and returns its exit status. */
export function node(...args) {
  const run = spawnSync(process.execPath, args, { cwd: root, stdio: "inherit" });
  if (run.error) console.error(run.error.message);
  return run.status ?? 1;
}

/** Runs a TypeScript file from source, workspace packages from source too. */
export function typescript(file, ...args) {
  return node("--import", "tsx", "--conditions=@landfast/source", file, ...args);
}
