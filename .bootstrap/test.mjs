// Arguments go on to the test runner: `npm test -- packages/rules` runs that package's tests.
import { build } from "./build.mjs";
import { tool } from "./run.mjs";

build();
process.exitCode = tool("vitest", "run", ...process.argv.slice(2));
