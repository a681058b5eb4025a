// Every check that is not a test. All of them run, so that one failure does not hide another.
import { install } from "./install.mjs";
import { node, tool, typescript } from "./run.mjs";

const checks = [
  ["tables agree with the code made from them", () => typescript("data/build/main.ts", "--check")],
  ["types", () => tool("tsc", "-b")],
  ["format and quick lint", () => tool("biome", "ci", "--error-on-warnings")],
  ["lint with types", () => tool("eslint", "--max-warnings=0", ".")],
  ["who imports whom", () => node(".bootstrap/import-check.mjs")],
  ["nothing unused", () => tool("knip")],
];

install();
const failed = [];
for (const [name, check] of checks) {
  const start = performance.now();
  console.log(`\n== ${name}`);
  if (check() !== 0) failed.push(name);
  console.log(`-- ${((performance.now() - start) / 1000).toFixed(1)} s`);
}
console.log(failed.length === 0 ? "\nAll checks passed." : `\nChecks failed: ${failed.join("; ")}.`);
process.exitCode = failed.length === 0 ? 0 : 1;
