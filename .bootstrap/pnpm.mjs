import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { root } from "./run.mjs";

/**
 * Runs the pinned pnpm (package.json, "packageManager") through npm, which every Node comes with. Nothing is
 * installed globally. Ends the process when pnpm fails.
 */
export function pnpm(...args) {
  const { packageManager } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
  const windows = process.platform === "win32";
  const run = spawnSync("npm", ["exec", "--yes", `--package=${packageManager}`, "--", "pnpm", ...args], {
    cwd: root,
    // What the tools say about an install is not the answer the command was asked for.
    stdio: ["ignore", 2, 2],
    shell: windows,
    env: { ...process.env, ...headersBesideNode() },
  });
  if (run.error) console.error(`Could not start npm: ${run.error.message}`);
  if (run.status !== 0) process.exit(run.status ?? 1);
}

/**
 * better-sqlite3 is compiled when no ready binary can be fetched, and node-gyp then downloads Node's headers
 * unless told where they are. Most installations have them beside the binary.
 */
function headersBesideNode() {
  if (process.env.npm_config_nodedir !== undefined) return {};
  const prefix = dirname(dirname(process.execPath));
  return existsSync(join(prefix, "include", "node", "node.h")) ? { npm_config_nodedir: prefix } : {};
}
