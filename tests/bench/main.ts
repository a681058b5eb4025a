/** The benchmarks, one after another: npm run bench, or npm run bench -- name, one or more of those below. */
import { cpus } from "node:os";
import { benchCandidates } from "./candidates.js";
import { benchHttpCheck } from "./http-check.js";
import { benchImport } from "./import.js";
import { benchLargeJob } from "./large-job.js";
import { benchPlan } from "./plan.js";
import { benchRuleCost } from "./rule-cost.js";
import { benchRulesEngine } from "./rules-engine.js";

const BENCHMARKS: Readonly<Record<string, () => Promise<void> | void>> = {
  engine: benchRulesEngine,
  rules: benchRuleCost,
  job: benchLargeJob,
  check: benchHttpCheck,
  import: benchImport,
  candidates: benchCandidates,
  plan: benchPlan,
};

const wanted = process.argv.slice(2);
const unknown = wanted.filter((name) => BENCHMARKS[name] === undefined);
if (unknown.length > 0) {
  console.error(`There is no benchmark ${unknown.join(", ")}; there are ${Object.keys(BENCHMARKS).join(", ")}.`);
  process.exitCode = 2;
} else {
  console.log(
    `Node ${process.version}, ${String(cpus().length)} processors. Ratios within one run; the rest depends on the machine.\n`,
  );
  for (const [name, bench] of Object.entries(BENCHMARKS))
    if (wanted.length === 0 || wanted.includes(name)) {
      await bench();
      console.log("");
    }
}
