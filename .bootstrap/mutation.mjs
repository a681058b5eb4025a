// Breaks the rules on purpose, one place at a time, and counts the breaks that a test notices:
//   npm run mutation -- metals range     those topics ("rulesets" is one too); without a name, all of them
//   npm run mutation -- --survivors metals      lists what no test noticed, from the last run
//   npm run mutation -- --jobs=2 metals         two test runners at a time
// What a run found is kept in var/mutation, and a later run repeats only what its changes can have altered.
// docs/mutation-survivors.md says what is broken, what is not, and what may stay unnoticed.
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { setPriority } from "node:os";
import { join, relative } from "node:path";
import { install } from "./install.mjs";
import { node, root } from "./run.mjs";

const RULES = "packages/rules/src";
const found = join(root, "var/mutation");

/**
 * Tests beyond the topic's own that are near enough to be asked, and quick enough. No derivation is asked of the
 * editions: what they say is listed, clause by clause.
 */
const BESIDE = { rulesets: ["tests/edition-differences/provisions.test.ts"] };
/** Not the completeness test beside it, which asks thousands of joints each time. */
const DERIVATIONS = "tests/rule-cases/derivations.test.ts";

const args = process.argv.slice(2);
const named = args.filter((arg) => !arg.startsWith("--"));
const jobs = Number(args.find((arg) => arg.startsWith("--jobs="))?.slice("--jobs=".length) ?? "1");
const all = [...readdirSync(join(root, RULES, "topics")), "rulesets"];
const unknown = named.filter((topic) => !all.includes(topic));
if (unknown.length > 0) {
  console.error(`no topic ${unknown.join(", ")}; there are ${all.join(", ")}`);
  process.exit(2);
}
const topics = named.length > 0 ? named : all;

if (!args.includes("--survivors")) {
  install();
  setPriority(19);
  mkdirSync(found, { recursive: true });
  for (const topic of topics) {
    const status = run(topic);
    if (status !== 0) process.exitCode = status;
    console.log(lineOf(topic));
  }
} else for (const topic of topics) for (const line of survivorsOf(topic)) console.log(line);

console.log(`\n${"topic".padEnd(16)} broken noticed unnoticed  score`);
for (const topic of topics) console.log(lineOf(topic));
console.log(sumLine(topics.map(countsOf)));

function run(topic) {
  const folder = topic === "rulesets" ? `${RULES}/rulesets` : `${RULES}/topics/${topic}`;
  const config = join(found, `${topic}.config.json`);
  writeFileSync(
    config,
    JSON.stringify({
      mutate: [`${folder}/**/*.ts`, "!**/*.test.ts"],
      plugins: ["prose", "runner"].map((name) => join(root, `.bootstrap/mutation-${name}.mjs`)),
      ignorers: ["prose"],
      testRunner: "bundled",
      coverageAnalysis: "perTest",
      concurrency: jobs,
      incremental: true,
      incrementalFile: join(found, `${topic}.incremental.json`),
      timeoutMS: 3000,
      tempDirName: "var/mutation/sandbox",
      allowEmpty: true,
      ignorePatterns: ["apps", "coverage", "docs", "**/dist", "packages/stock", "tests/bench", "tests/architecture"],
      reporters: ["json"],
      jsonReporter: { fileName: join(found, `${topic}.json`) },
      packageManager: "pnpm",
      allowConsoleColors: false,
    }),
  );
  process.env.LANDFAST_MUTATION_TESTS = [...testsIn(folder), ...(BESIDE[topic] ?? []), DERIVATIONS].join(";");
  process.env.LANDFAST_CASES_OF = idsIn(folder);
  return node("node_modules/@stryker-mutator/core/bin/stryker.js", "run", config);
}

/** Ids of the rules and calculations of a folder, comma between; the cases of others are not asked. */
function idsIn(folder) {
  return readdirSync(join(root, folder), { recursive: true })
    .filter((file) => file.endsWith(".ts") && !file.endsWith(".test.ts"))
    .flatMap((file) => [
      ...readFileSync(join(root, folder, file), "utf8").matchAll(/^const (?:ID|NAME) = "([a-z-]+)"/gm),
    ])
    .map(([, id]) => id)
    .join(",");
}

function testsIn(folder) {
  return readdirSync(join(root, folder), { recursive: true })
    .filter((file) => file.endsWith(".test.ts"))
    .map((file) => relative(root, join(root, folder, file)))
    .sort();
}

function reportOf(topic) {
  const path = join(found, `${topic}.json`);
  return existsSync(path) ? JSON.parse(readFileSync(path, "utf8")) : { files: {} };
}

function countsOf(topic) {
  const mutants = Object.values(reportOf(topic).files).flatMap((file) => file.mutants);
  const with_ = (...statuses) => mutants.filter(({ status }) => statuses.includes(status)).length;
  return { noticed: with_("Killed", "Timeout"), unnoticed: with_("Survived", "NoCoverage") };
}

function lineOf(topic) {
  return line(topic, countsOf(topic));
}

function sumLine(counts) {
  const sum = (key) => counts.reduce((total, one) => total + one[key], 0);
  return line("all of these", { noticed: sum("noticed"), unnoticed: sum("unnoticed") });
}

function line(name, { noticed, unnoticed }) {
  const broken = noticed + unnoticed;
  const score = broken === 0 ? "not run" : `${((100 * noticed) / broken).toFixed(1)} %`;
  const columns = [broken, noticed, unnoticed].map((count, index) => String(count).padStart([7, 8, 10][index]));
  return `${name.padEnd(16)}${columns.join("")}  ${score}`;
}

function survivorsOf(topic) {
  return Object.entries(reportOf(topic).files).flatMap(([file, { source, mutants }]) => {
    const lines = source.split("\n");
    return mutants
      .filter(({ status }) => status === "Survived" || status === "NoCoverage")
      .map(({ status, mutatorName, location: { start }, replacement }) =>
        [
          `${file}:${start.line}:${start.column} ${mutatorName}${status === "NoCoverage" ? ", in no test" : ""}`,
          `  ${(lines[start.line - 1] ?? "").trim()}`,
          `  -> ${(replacement ?? "").replaceAll(/\s+/g, " ").slice(0, 160)}`,
        ].join("\n"),
      );
  });
}
