// Checks data/published and writes packages/rules/src/generated; with --check it only says whether they agree.
import { install } from "./install.mjs";
import { typescript } from "./run.mjs";

install();
process.exitCode = typescript("data/build/main.ts", ...process.argv.slice(2));
