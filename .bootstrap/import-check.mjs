// Checks who imports whom (.dependency-cruiser.cjs), and that the check saw every file: a cruise that cannot parse
// the sources sees none of them and calls that no violation.
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { root } from "./run.mjs";

const folders = ["packages", "apps", "data", "tests"];

const cruise = spawnSync(
  process.execPath,
  [
    "node_modules/dependency-cruiser/bin/dependency-cruise.mjs",
    "--config",
    ".dependency-cruiser.cjs",
    "--output-type",
    "json",
    ...folders,
  ],
  { cwd: root, encoding: "utf8", maxBuffer: 1 << 28 },
);
if (cruise.stderr) console.error(cruise.stderr);
const { modules, summary } = JSON.parse(cruise.stdout);

for (const { rule, from, to, comment, cycle } of summary.violations) {
  const path = cycle ? [from, ...cycle.map((step) => step.name)].join(" -> ") : `${from} -> ${to}`;
  const why = comment ?? summary.ruleSetUsed.forbidden.find(({ name }) => name === rule.name)?.comment ?? "";
  console.error(`${rule.severity} ${rule.name}: ${path}\n  ${why}`);
}

const seen = new Map(modules.map((module) => [module.source, module]));
const present = folders.flatMap((folder) => sources(join(root, folder)));
const missed = present.filter((path) => !seen.has(path));
for (const path of missed) console.error(`not seen by the import check: ${path}`);
// A file whose imports are not understood is seen but has none: some must have been.
const imports = present.reduce((count, path) => count + (seen.get(path)?.dependencies.length ?? 0), 0);
const blind = present.length === 0 || imports === 0;
if (blind) console.error("The import check saw no imports at all.");

const failed = summary.violations.length + missed.length + (blind ? 1 : 0);
console.log(`${present.length} modules, ${imports} imports, ${summary.violations.length} violations`);
process.exitCode = failed === 0 ? 0 : 1;

function sources(folder) {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    const name = relative(root, path).split(sep).join("/");
    if (entry.isDirectory()) {
      const skipped = ["node_modules", "dist", "coverage"].includes(entry.name);
      return skipped || name === "tests/architecture/fixtures" ? [] : sources(path);
    }
    return /\.m?ts$/.test(name) && !name.endsWith(".d.ts") ? [name] : [];
  });
}
