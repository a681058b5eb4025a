import { checkDescription } from "./check-description.js";
import { checkTable } from "./check-table.js";
import { emitEditionIndex, emitIndex, emitSameTable, emitTable } from "./emit-table.js";
import type { Fault } from "./fault.js";
import { decodeText, readTable } from "./read-table.js";
import type { SameTableDescription } from "./table-description.js";

/** What the published files make: generated sources by path, and the faults that forbid them. */
export interface Plan {
  readonly faults: readonly Fault[];
  /** Source text by path below the folder of generated sources. */
  readonly sources: ReadonlyMap<string, string>;
}

const TABLE_FILE = /^([a-z0-9-]+)\/([a-z0-9-]+)\/([a-z0-9-]+)\.(csv|meta\.json)$/;

/**
 * Checks all published tables and writes the sources they make, in memory.
 *
 * @param files bytes by path below data/published, e.g. "nfpa70/2023/box-volume.csv"; prose (*.md) is passed over
 */
export function planGenerated(files: ReadonlyMap<string, Uint8Array>): Plan {
  const faults: Fault[] = [];
  const sources = new Map<string, string>();
  const idsByFolder = new Map<string, string[]>();
  const withOwnCsv = new Set<string>();
  const same: { file: string; place: string; standard: string; folder: string; description: SameTableDescription }[] =
    [];
  const used = new Set<string>();

  const paths = [...files.keys()].filter((path) => !path.endsWith(".md")).sort();
  for (const file of paths) {
    const [, standard = "", edition = "", id = "", kind] = TABLE_FILE.exec(file) ?? [];
    if (kind === undefined) {
      faults.push({ file, message: "is not standard/edition/table-id.csv or .meta.json in lower case" });
      continue;
    }
    if (kind === "csv") continue;
    const place = `${standard}/${edition}/${id}`;
    const csv = `${place}.csv`;
    used.add(csv);
    const decoded = decodeText(file, files.get(file) ?? new Uint8Array());
    if ("faults" in decoded) {
      faults.push(...decoded.faults);
      continue;
    }
    let json: unknown;
    try {
      json = JSON.parse(decoded.text);
    } catch (error) {
      faults.push({ file, message: `is not JSON: ${error instanceof Error ? error.message : String(error)}` });
      continue;
    }
    const reading = checkDescription(file, json);
    if (reading.kind === "refused") {
      faults.push(...reading.faults);
      continue;
    }
    const folder = `${standard}-${edition}`;
    idsByFolder.set(folder, [...(idsByFolder.get(folder) ?? []), id]);
    const bytes = files.get(csv);
    if (reading.kind === "same") {
      if (bytes !== undefined) faults.push({ file: csv, message: "stands beside a sidecar that says sameAs" });
      same.push({ file, place, standard, folder, description: reading.description });
      continue;
    }
    withOwnCsv.add(place);
    if (bytes === undefined) {
      faults.push({ file, message: `has no ${id}.csv beside it` });
      continue;
    }
    const read = readTable(csv, bytes, reading.description);
    if ("faults" in read) {
      faults.push(...read.faults);
      continue;
    }
    faults.push(...checkTable(csv, reading.description, read.table.rows));
    sources.set(`${folder}/${id}.ts`, emitTable(reading.description, read.table));
  }

  for (const file of paths) {
    if (file.endsWith(".csv") && TABLE_FILE.test(file) && !used.has(file))
      faults.push({ file, message: "has no sidecar (.meta.json) beside it" });
  }
  for (const { file, place, standard, folder, description } of same) {
    const base = `${standard}/${description.sameAs}/${description.id}`;
    if (base === place || !withOwnCsv.has(base)) {
      faults.push({ file, message: `sameAs "${description.sameAs}": that edition has no such table with its own CSV` });
      continue;
    }
    sources.set(`${folder}/${description.id}.ts`, emitSameTable(description, `${standard}-${description.sameAs}`));
  }
  for (const [folder, ids] of idsByFolder) sources.set(`${folder}/index.ts`, emitEditionIndex(ids));
  sources.set("index.ts", emitIndex(idsByFolder));
  return { faults, sources };
}
