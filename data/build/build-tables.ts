import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { faultLine } from "./fault.js";
import { planGenerated } from "./plan-generated.js";

/** Outcome of a run. */
export interface BuildReport {
  /** Lines to show: faults, or differences between what is there and what would be made. */
  readonly refusals: readonly string[];
  /** Number of generated sources, the indexes included. */
  readonly sources: number;
}

function readFolder(folder: string): Map<string, Uint8Array> {
  const files = new Map<string, Uint8Array>();
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile()) continue;
    const path = join(entry.parentPath, entry.name);
    files.set(relative(folder, path).split(sep).join("/"), readFileSync(path));
  }
  return files;
}

/**
 * Checks the published tables and brings the generated sources up to date, or only compares them.
 *
 * Nothing is written when any table is refused.
 *
 * @param published folder with the CSV files and their sidecars
 * @param generated folder of the generated sources; everything in it belongs to this build
 * @param mode "write" brings the folder up to date and removes what is no longer made; "check" touches nothing
 */
export function buildTables(published: string, generated: string, mode: "write" | "check"): BuildReport {
  const { faults, sources } = planGenerated(readFolder(published));
  if (faults.length > 0) return { refusals: faults.map(faultLine), sources: sources.size };

  mkdirSync(generated, { recursive: true });
  const present = readFolder(generated);
  const refusals: string[] = [];
  for (const [path, text] of sources) {
    const old = present.get(path);
    if (old !== undefined && Buffer.from(old).equals(Buffer.from(text))) continue;
    if (mode === "check") {
      refusals.push(`generated ${path}: ${old === undefined ? "is missing" : "differs from what the tables make"}`);
      continue;
    }
    mkdirSync(dirname(join(generated, path)), { recursive: true });
    writeFileSync(join(generated, path), text);
  }
  for (const path of present.keys()) {
    if (sources.has(path)) continue;
    if (mode === "check") refusals.push(`generated ${path}: is made from no table`);
    else rmSync(join(generated, path));
  }
  return { refusals, sources: sources.size };
}
