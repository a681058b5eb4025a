// Formats and applies the safe fixes of the quick lint.
import { install } from "./install.mjs";
import { tool } from "./run.mjs";

install();
process.exitCode = tool("biome", "check", "--write", ...process.argv.slice(2));
