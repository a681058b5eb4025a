import { createHash } from "node:crypto";
import { parse } from "csv-parse/sync";
import type { Fault } from "./fault.js";
import { KEY_COLUMNS, type TableDescription } from "./table-description.js";

/** One line of the CSV below its header. */
export interface Row {
  /** How faults and sidecars name the row: the size, the first size of a range, "over-upTo" or the term. */
  readonly label: string;
  readonly key: readonly string[];
  readonly cells: readonly string[];
}

/** A CSV file taken apart; nothing about the values is known yet. */
export interface TableText {
  /** "sha256:" and the hexadecimal digest of the bytes of the file. */
  readonly digest: string;
  readonly rows: readonly Row[];
}

/** The text of a file, or why it is not clean UTF-8 with LF line ends. */
export function decodeText(
  file: string,
  bytes: Uint8Array,
): { readonly text: string } | { readonly faults: readonly Fault[] } {
  let text: string;
  try {
    text = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return { faults: [{ file, message: "is not UTF-8" }] };
  }
  const faults: Fault[] = [];
  if (text.startsWith("\uFEFF")) faults.push({ file, message: "starts with a byte order mark; UTF-8 needs none" });
  if (text.includes("\r")) faults.push({ file, message: "has CR line ends; only LF is allowed" });
  if (!text.endsWith("\n")) faults.push({ file, message: "does not end with a line end (LF)" });
  return faults.length > 0 ? { faults } : { text };
}

function labelOf(description: TableDescription, key: readonly string[]): string {
  const [first = "", second = ""] = key;
  return description.rowKey.kind === "interval" ? `${first}-${second}` : first;
}

/**
 * Takes a CSV apart along its sidecar.
 *
 * @param file path of the CSV below the folder of published tables
 * @returns the rows and the digest, or the faults: encoding, CSV syntax, header, number of cells
 */
export function readTable(
  file: string,
  bytes: Uint8Array,
  description: TableDescription,
): { readonly table: TableText } | { readonly faults: readonly Fault[] } {
  const decoded = decodeText(file, bytes);
  if ("faults" in decoded) return decoded;

  let lines: string[][];
  try {
    lines = parse(decoded.text, { relaxColumnCount: true, skipEmptyLines: false, recordDelimiter: "\n" });
  } catch (error) {
    return { faults: [{ file, message: `is not CSV: ${error instanceof Error ? error.message : String(error)}` }] };
  }
  const [header = [], ...body] = lines;
  const keyColumns = KEY_COLUMNS[description.rowKey.kind];
  const expected = [...keyColumns, ...Object.keys(description.columns)];
  const faults: Fault[] = [];
  for (const name of header) {
    if (!expected.includes(name)) faults.push({ file, column: name, message: "header is not declared in the sidecar" });
  }
  for (const name of expected) {
    if (!header.includes(name))
      faults.push({ file, column: name, message: "declared column is missing in the header" });
  }
  if (faults.length === 0 && header.join() !== expected.join())
    faults.push({ file, message: `columns stand in another order than declared (${expected.join(", ")})` });
  if (faults.length > 0) return { faults };

  const rows = body.map((line, index): Row => {
    const key = line.slice(0, keyColumns.length);
    const label = labelOf(description, key);
    if (line.length !== expected.length) {
      const row = label === "" ? `in line ${index + 2}` : label;
      faults.push({ file, row, message: `has ${line.length} cells where the header has ${expected.length}` });
    }
    return { label, key, cells: line.slice(keyColumns.length) };
  });
  if (faults.length > 0) return { faults };
  return { table: { digest: `sha256:${createHash("sha256").update(bytes).digest("hex")}`, rows } };
}
