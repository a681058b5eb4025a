import { createHash } from "node:crypto";
import type { CatalogueEntry } from "../schemas/catalogue-entry.js";
import type { Cell, FileForm, FileRow, FileTable } from "./cell.js";
import { UnreadableFile } from "./cell.js";
import { type ColumnUnit, columnOf, FIELDS, type Field } from "./column.js";
import { type CheckEntry, fieldOfPointer } from "./entry-place.js";
import type { ImportMapping } from "./import-mapping.js";
import { readCsv } from "./read-csv.js";
import { readEntry } from "./read-entry.js";
import { readWorkbook } from "./read-workbook.js";
import { FileReport, type Recognised, type Remark, type RowProblem, RowReader } from "./row-report.js";
import { type MappingSuggestion, suggestMapping } from "./suggest-mapping.js";

/** Everything that is to be said about a file: how it was read, what would be stored, and every row that would not. */
export interface ImportReport {
  /** "sha256:" and the digest of this report without this line: a later call confirms exactly this reading by it. */
  readonly digest: string;
  readonly fileDigest: string;
  readonly file: FileForm & { readonly bytes: number };
  /** The mapping's name; null where the file was read by our own column names. */
  readonly mapping: string | null;
  readonly columns: {
    readonly used: readonly { readonly column: string; readonly field: Field; readonly unit: ColumnUnit | null }[];
    readonly constants: readonly { readonly field: Field; readonly text: string }[];
    /** Columns of the file that nothing is taken from. */
    readonly unused: readonly string[];
    /** Our columns that no connector can do without and that the file has not. */
    readonly missing: readonly string[];
    /** Our other columns that the file has not: what they say is then not known of any part. */
    readonly notKnown: readonly string[];
  };
  /** What unused headers may mean. */
  readonly suggestion: MappingSuggestion;
  readonly rows: { readonly read: number; readonly good: number; readonly bad: number; readonly blank: number };
  /** What texts were taken for. Nothing of it is stored before it is confirmed. */
  readonly recognised: readonly Recognised[];
  readonly remarks: readonly Remark[];
  readonly problems: readonly RowProblem[];
  /** The first connectors as they would be stored. */
  readonly sample: readonly CatalogueEntry[];
}

/** What came out of a file. */
export interface FileReading {
  readonly report: ImportReport;
  readonly entries: readonly CatalogueEntry[];
}

/** A file as it came, and how it is to be read. */
export interface FileQuestion {
  readonly bytes: Buffer;
  readonly form: "csv" | "xlsx";
  /** null: the file has our own column names. */
  readonly mapping: ImportMapping | null;
}

const SAMPLE = 3;
/** Needed only where openings are not given in full. */
const OF_OPENINGS: readonly Field[] = ["openingCount", "from", "to", "strandings"];

/**
 * Reads a file of connectors and reports on every row. Nothing is coerced or dropped unsaid.
 * @param check the checks that a connector passes however it comes in.
 * @throws UnreadableFile for a file that cannot be read as a whole.
 */
export function readFile({ bytes, form, mapping }: FileQuestion, check: CheckEntry): FileReading {
  const table = form === "csv" ? readCsv(bytes, mapping?.delimiter) : readWorkbook(bytes, mapping?.sheet);
  const layout = layoutOf(table, mapping);
  const report = new FileReport(layout.headers);
  const judged =
    layout.missing.length > 0 ? unjudged(table, layout, report) : judge(table, layout, mapping, report, check);
  const body: Omit<ImportReport, "digest"> = {
    fileDigest: `sha256:${createHash("sha256").update(bytes).digest("hex")}`,
    file: { ...table.form, bytes: bytes.length },
    mapping: mapping?.name ?? null,
    columns: {
      used: [...layout.columns].map(([field, index]) => ({
        column: layout.header[index] ?? "",
        field,
        unit: layout.units.get(field) ?? null,
      })),
      constants: layout.constants.map(([field, text]) => ({ field, text })),
      unused: layout.unused,
      missing: layout.missing.map((field) => columnOf(field).header),
      notKnown: FIELDS.filter((field) => !layout.has(field) && columnOf(field).needed === undefined).map(
        (field) => columnOf(field).header,
      ),
    },
    suggestion: suggestMapping(layout.unused),
    rows: judged.rows,
    recognised: report.recognised,
    remarks: report.remarks,
    problems: [...report.problems].sort((a, b) => a.line - b.line),
    sample: judged.entries.slice(0, SAMPLE),
  };
  const digest = `sha256:${createHash("sha256")
    .update(JSON.stringify([body, mapping]))
    .digest("hex")}`;
  return { report: { digest, ...body }, entries: judged.entries };
}

/** Which cell of a row is which of our columns. */
interface Layout {
  readonly header: readonly string[];
  readonly headerLine: number;
  readonly columns: ReadonlyMap<Field, number>;
  readonly headers: ReadonlyMap<Field, string>;
  readonly units: ReadonlyMap<Field, ColumnUnit>;
  readonly constants: readonly (readonly [Field, string])[];
  readonly unused: readonly string[];
  readonly missing: readonly Field[];
  readonly has: (field: Field) => boolean;
}

function layoutOf({ rows }: FileTable, mapping: ImportMapping | null): Layout {
  const [first] = rows;
  if (first === undefined || isBlank(first))
    throw new UnreadableFile("The first row is empty.", "a header row with the names of the columns", 1);
  if (first.broken !== undefined)
    throw new UnreadableFile(`The header cannot be read: ${first.broken}.`, "a header row", first.line);
  const header = first.cells.map((cell) => {
    if (typeof cell !== "string")
      throw new UnreadableFile("A cell of the header is no text.", "the names of the columns as text", first.line);
    return cell.trim();
  });
  const wanted =
    mapping === null
      ? FIELDS.map((field) => ({ field, header: columnOf(field).header }))
      : mapping.columns.map(({ field, header: name }) => ({ field, header: name.trim() }));
  const columns = new Map<Field, number>();
  const headers = new Map<Field, string>();
  const absent: string[] = [];
  for (const { field, header: name } of wanted) {
    const index = header.indexOf(name);
    if (index === -1) {
      if (mapping !== null) absent.push(name);
      continue;
    }
    if (header.includes(name, index + 1))
      throw new UnreadableFile(
        `The header has "${name}" twice; which column is meant cannot be known.`,
        "each header once",
        first.line,
      );
    columns.set(field, index);
    headers.set(field, name);
  }
  if (absent.length > 0)
    throw new UnreadableFile(
      `The file has no column ${absent.map((name) => `"${name}"`).join(", ")}, which the mapping names.`,
      `the columns of the file: ${header.filter((name) => name !== "").join(", ")}`.slice(0, 2000),
      first.line,
    );
  const constants = Object.entries(mapping?.constants ?? {}) as (readonly [Field, string])[];
  const constant = new Set(constants.map(([field]) => field));
  const has = (field: Field): boolean => columns.has(field) || constant.has(field);
  const used = new Set(columns.values());
  const ignored = new Set(mapping?.ignore?.map((name) => name.trim()) ?? []);
  return {
    header,
    headerLine: first.line,
    columns,
    headers,
    units: new Map(
      (mapping?.columns ?? []).flatMap(({ field, unit }) => (unit === undefined ? [] : [[field, unit] as const])),
    ),
    constants,
    unused: header.filter((name, index) => name !== "" && !used.has(index) && !ignored.has(name)),
    missing: FIELDS.filter(
      (field) =>
        columnOf(field).needed === true && !has(field) && !(OF_OPENINGS.includes(field) && has("openingsInFull")),
    ),
    has,
  };
}

interface Judged {
  readonly entries: readonly CatalogueEntry[];
  readonly rows: ImportReport["rows"];
}

/** Without a needed column no row can be good: the column is reported once, not once a row. */
function unjudged({ rows }: FileTable, { missing, headerLine }: Layout, report: FileReport): Judged {
  const read = rows.slice(1).filter((row) => !isBlank(row)).length;
  for (const field of missing)
    report.refuse({
      line: headerLine,
      column: columnOf(field).header,
      field,
      partNumber: null,
      written: "",
      reason: "the file has no such column and no row can do without it",
      accepted: "the column, a column that the mapping says it is, or a constant in the mapping",
    });
  return { entries: [], rows: { read, good: 0, bad: read, blank: rows.length - 1 - read } };
}

interface Candidate {
  readonly reader: RowReader;
  readonly entry: CatalogueEntry | null;
}

function judge(
  { rows, form }: FileTable,
  layout: Layout,
  mapping: ImportMapping | null,
  report: FileReport,
  check: CheckEntry,
): Judged {
  const candidates: Candidate[] = [];
  let blank = 0;
  for (const row of rows.slice(1)) {
    if (isBlank(row)) {
      blank += 1;
      continue;
    }
    const reader = new RowReader(row.line, cellsOf(row, layout), layout.units, report);
    candidates.push({ reader, entry: entryOf(row, reader, layout, form, mapping, check) });
  }
  refuseDuplicates(candidates);
  refuseCircles(candidates, check);
  remarkSuccessors(candidates);
  for (const { reader } of candidates) reader.close();
  const entries = candidates.flatMap(({ reader, entry }) => (entry === null || reader.bad ? [] : [entry]));
  const read = candidates.length;
  return { entries, rows: { read, good: entries.length, bad: read - entries.length, blank } };
}

function isBlank({ cells, broken }: FileRow): boolean {
  return broken === undefined && cells.every((cell) => typeof cell === "string" && cell.trim() === "");
}

function cellsOf({ cells }: FileRow, { columns, constants }: Layout): ReadonlyMap<Field, Cell> {
  return new Map<Field, Cell>([
    ...constants,
    ...[...columns].map(([field, index]) => [field, cells[index] ?? ""] as const),
  ]);
}

function entryOf(
  row: FileRow,
  reader: RowReader,
  { header }: Layout,
  { form }: FileForm,
  mapping: ImportMapping | null,
  check: CheckEntry,
): CatalogueEntry | null {
  if (row.broken !== undefined) {
    reader.problem(null, row.broken, "a row with each cell either plain or in quotation marks");
    return null;
  }
  const beyond = row.cells.slice(header.length).some((cell) => cell !== "");
  // In a workbook a row simply ends with its last cell.
  const short = form === "csv" && row.cells.length < header.length;
  if (beyond || short) {
    reader.problem(
      null,
      `the row has ${String(row.cells.length)} cells and the header ${String(header.length)}; which belong where cannot be known`,
      `${String(header.length)} cells`,
    );
    return null;
  }
  const entry = readEntry(reader, mapping?.decimalComma === true);
  if (entry === null) return null;
  for (const { pointer, detail, accepted } of check.faults(entry))
    reader.problem(fieldOfPointer(pointer, reader), detail, accepted);
  for (const { field, written, remark } of check.remarks(entry)) reader.remark(field, written, remark);
  return reader.bad ? null : entry;
}

/**
 * A part number on several lines: equal lines are stored once, and the others reported; of lines that differ, or of
 * which one is bad, none is stored, since which one is right cannot be known.
 */
function refuseDuplicates(candidates: readonly Candidate[]): void {
  const byNumber = new Map<string, Candidate[]>();
  for (const candidate of candidates) {
    const { partNumber } = candidate.reader;
    if (partNumber === null) continue;
    const same = byNumber.get(partNumber);
    if (same === undefined) byNumber.set(partNumber, [candidate]);
    else same.push(candidate);
  }
  for (const [partNumber, same] of byNumber) {
    if (same.length === 1) continue;
    const [first] = same;
    const texts = new Set(same.map(({ entry }) => JSON.stringify(entry)));
    const equal = texts.size === 1 && first?.entry !== null;
    for (const { reader } of same) {
      if (equal && reader === first?.reader) continue;
      const others = same.filter((other) => other.reader !== reader).map((other) => other.reader.line);
      const shown = others.slice(0, 5).join(", ") + (others.length > 5 ? ", …" : "");
      reader.problem(
        "partNumber",
        equal
          ? `the same part stands on line ${String(first?.reader.line)} already, word for word`
          : `the part number also stands on line ${shown}, with other content; which is right cannot be known`,
        "each part number once",
        partNumber,
      );
    }
  }
}

function refuseCircles(candidates: readonly Candidate[], check: CheckEntry): void {
  const good = candidates.filter(({ reader, entry }) => entry !== null && !reader.bad);
  const circles = check.inACircle(good.flatMap(({ entry }) => entry ?? []));
  if (circles.size === 0) return;
  for (const { reader, entry } of good)
    if (entry !== null && circles.has(entry.partNumber))
      reader.problem(
        "supersededBy",
        "the successors of the part come back to it",
        "a chain of successors that ends",
        entry.supersededBy,
      );
}

function remarkSuccessors(candidates: readonly Candidate[]): void {
  const held = new Set(candidates.flatMap(({ reader, entry }) => (reader.bad ? [] : (entry?.partNumber ?? []))));
  for (const { reader, entry } of candidates) {
    const successor = entry?.supersededBy;
    if (successor !== undefined && !held.has(successor))
      reader.remark("supersededBy", successor, "the successor is not among the connectors that would be stored");
  }
}
