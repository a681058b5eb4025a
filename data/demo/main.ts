import { readFileSync, writeFileSync } from "node:fs";
import type { Job } from "@landfast/rules";
import { buildCatalogue } from "./build-catalogue.js";
import { openJob } from "./open-job.js";
import { printedJson } from "./printed-json.js";

// Usage: main.ts            writes catalogue.json from the family tables and larkfen-job-open.json from larkfen-job.json
//        main.ts --check    the same, but writes nothing and fails on any difference

const options = process.argv.slice(2);
const unknown = options.filter((option) => option !== "--check");
if (unknown.length > 0) {
  console.error(`unknown option ${unknown.join(" ")}; the only one is --check`);
  process.exitCode = 2;
} else {
  const job = JSON.parse(readFileSync(new URL("larkfen-job.json", import.meta.url), "utf8")) as Job;
  const made: readonly (readonly [file: string, text: string])[] = [
    ["catalogue.json", printedJson(buildCatalogue())],
    ["larkfen-job-open.json", printedJson(openJob(job))],
  ];
  for (const [file, text] of made) {
    const place = new URL(file, import.meta.url);
    if (!options.includes("--check")) writeFileSync(place, text);
    else if (readFileSync(place, "utf8") !== text) {
      console.error(`data/demo/${file} is not what the source makes; run data/demo/main.ts`);
      process.exitCode = 1;
    }
  }
}
