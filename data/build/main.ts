import { fileURLToPath } from "node:url";
import { buildTables } from "./build-tables.js";

// Usage: main.ts            checks data/published and writes packages/rules/src/generated
//        main.ts --check    the same, but writes nothing and fails on any difference

const options = process.argv.slice(2);
const unknown = options.filter((option) => option !== "--check");
if (unknown.length > 0) {
  console.error(`unknown option ${unknown.join(" ")}; the only one is --check`);
  process.exitCode = 2;
} else {
  const published = fileURLToPath(new URL("../published", import.meta.url));
  const generated = fileURLToPath(new URL("../../packages/rules/src/generated", import.meta.url));
  const mode = options.includes("--check") ? "check" : "write";
  const { refusals, sources } = buildTables(published, generated, mode);
  for (const line of refusals) console.error(line);
  if (refusals.length > 0) {
    console.error(`refused: ${refusals.length} ${refusals.length === 1 ? "reason" : "reasons"}`);
    process.exitCode = 1;
  } else {
    console.log(`${sources} generated files ${mode === "check" ? "match the published tables" : "are up to date"}`);
  }
}
