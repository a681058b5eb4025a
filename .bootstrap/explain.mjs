import { build } from "./build.mjs";
import { node } from "./run.mjs";

build();
process.exitCode = node("apps/api/dist/explain.js", ...process.argv.slice(2));
