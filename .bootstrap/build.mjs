import { pathToFileURL } from "node:url";
import { install } from "./install.mjs";
import { tool } from "./run.mjs";

/** Installs, then compiles and type-checks everything, tests included. Ends the process when that fails. */
export function build() {
  install();
  const status = tool("tsc", "-b");
  if (status !== 0) process.exit(status);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) build();
