// The benchmarks import the compiled packages, as production does; only their own files run from source.
import { build } from "./build.mjs";
import { node } from "./run.mjs";

build();
process.exitCode = node("--import", "tsx", "tests/bench/main.ts", ...process.argv.slice(2));
