/**
 * Published tables and the one way to read them: exactly one cell, or a refusal that says why.
 */
import type { Citation } from "./citation.js";
import { compareSizes, parseSize, sizeOf } from "./conductor-size.js";

/** A table as the generator writes it from data/published. */
export interface TableData {
  readonly id: string;
  readonly title: string;
  readonly source: { readonly standard: string; readonly edition: string; readonly locator: string };
  /** "sha256:" and the hex digest of the CSV file. */
  readonly digest: string;
  readonly unit: string;
  readonly rowKey: { readonly kind: "size" | "size-range" | "interval" | "term"; readonly unit?: string };
  readonly columns: readonly { readonly id: string; readonly title: string; readonly unit: string }[];
  readonly rows: readonly {
    readonly key: readonly string[];
    readonly cells: readonly string[];
    /** Indexes of the cells that no public text has confirmed yet. */
    readonly unconfirmed?: readonly number[];
  }[];
  readonly status: "published" | "unconfirmed" | "invented";
}

/** Which cell of which table, as printed, and whether a public text confirmed it. */
export interface CellRef {
  /** Standard, edition and table id: "NFPA 70-2023/ampacity-raceway". */
  readonly table: string;
  readonly digest: string;
  readonly row: string;
  readonly column: string;
  readonly printed: string;
  readonly status: "published" | "unconfirmed" | "invented";
}

/** One cell ready for use. */
export interface Cell {
  readonly ref: CellRef;
  readonly cite: Citation;
  readonly unit: string;
  /** A number for a number cell, text for a term cell. */
  readonly value: number | string;
}

export interface TableRefusal {
  readonly refusal: "OUTSIDE_TABLE" | "BLANK_CELL" | "NO_COLUMN";
  readonly detail: string;
}

/** A published table indexed for reading. */
export interface Table {
  readonly id: string;
  readonly data: TableData;
  readonly cite: Citation;
  readonly rows: readonly TableRow[];
}

export interface TableRow {
  /** The row's key as shown: "250 kcmil", "250 kcmil to 350 kcmil", "over 100 to 200". */
  readonly label: string;
  readonly key: readonly string[];
  readonly cells: Readonly<Record<string, Cell | TableRefusal>>;
  /** Lower and upper ends for interval rows (exclusive, inclusive) and size ranges (both inclusive, kcmil). */
  readonly low: number;
  readonly high: number;
}

const NUMBER = /^-?\d+(\.\d+)?$/;
const byKey = new WeakMap<Table, Map<string, TableRow>>();

/** Indexes a generated table once. Cells and citations are shared by every step that reads them. */
export function openTable(data: TableData): Table {
  const cite: Citation = data.source;
  const id = `${data.source.standard}-${data.source.edition}/${data.id}`;
  const rows = data.rows.map((row): TableRow => {
    const label = labelOf(data, row.key);
    const cells: Record<string, Cell | TableRefusal> = {};
    data.columns.forEach((column, index) => {
      const printed = row.cells[index] ?? "";
      if (printed === "") {
        cells[column.id] = {
          refusal: "BLANK_CELL",
          detail: `${data.source.locator} prints no value at ${label}, ${column.title}`,
        };
        return;
      }
      const status =
        data.status === "published" && row.unconfirmed?.includes(index) === true ? "unconfirmed" : data.status;
      cells[column.id] = {
        ref: { table: id, digest: data.digest, row: label, column: column.id, printed, status },
        cite,
        unit: column.unit,
        value: NUMBER.test(printed) ? Number(printed) : printed,
      };
    });
    const [low, high] = endsOf(data, row.key);
    return { label, key: row.key, cells, low, high };
  });
  const table: Table = { id, data, cite, rows };
  byKey.set(table, new Map(rows.map((row) => [row.key[0] ?? "", row])));
  return table;
}

/** The cell at a size or a term, or a refusal. For tables keyed by exact size or by word. */
export function cellAt(table: Table, key: string, column: string): Cell | TableRefusal {
  const row = byKey.get(table)?.get(key);
  if (row === undefined) return { refusal: "OUTSIDE_TABLE", detail: `${table.cite.locator} has no row for ${key}` };
  return cellIn(table, row, column);
}

/** The cell of the one interval (over, upTo] that holds the value, or a refusal. NaN is in no interval. */
export function cellInInterval(table: Table, value: number, column: string): Cell | TableRefusal {
  const row = table.rows.find((candidate) => value > candidate.low && value <= candidate.high);
  if (row === undefined)
    return {
      refusal: "OUTSIDE_TABLE",
      detail: `${table.cite.locator} has no row for ${String(value)} ${table.data.rowKey.unit ?? ""}`.trimEnd(),
    };
  return cellIn(table, row, column);
}

/** The cell of the one size range that holds the size (both ends inclusive, by area), or a refusal. */
export function cellForSize(table: Table, size: string, column: string): Cell | TableRefusal {
  const parsed = parseSize(size);
  if ("problem" in parsed) return { refusal: "OUTSIDE_TABLE", detail: parsed.problem };
  if (parsed.series !== "awg-kcmil")
    return { refusal: "OUTSIDE_TABLE", detail: `${table.cite.locator} is keyed by AWG and kcmil, not by ${size}` };
  const row = table.rows.find((candidate) => parsed.areaKcmil >= candidate.low && parsed.areaKcmil <= candidate.high);
  if (row === undefined) return { refusal: "OUTSIDE_TABLE", detail: `${table.cite.locator} has no row for ${size}` };
  return cellIn(table, row, column);
}

/** The table's exact-size keys in order of area. */
export function sizesOf(table: Table): readonly string[] {
  return table.rows.map((row) => row.key[0] ?? "").sort((a, b) => compareSizes(sizeOf(a), sizeOf(b)));
}

/** True when a reading was refused. */
export function isRefused(cell: Cell | TableRefusal): cell is TableRefusal {
  return "refusal" in cell;
}

function cellIn(table: Table, row: TableRow, column: string): Cell | TableRefusal {
  return row.cells[column] ?? { refusal: "NO_COLUMN", detail: `${table.cite.locator} has no column ${column}` };
}

function labelOf(data: TableData, key: readonly string[]): string {
  const [first = "", second = ""] = key;
  if (data.rowKey.kind === "size" || data.rowKey.kind === "term") return first;
  if (data.rowKey.kind === "size-range") return first === second ? first : `${first} to ${second}`;
  if (first === "") return `up to ${second}`;
  return second === "" ? `over ${first}` : `over ${first} to ${second}`;
}

function endsOf(data: TableData, key: readonly string[]): readonly [number, number] {
  const [first = "", second = ""] = key;
  if (data.rowKey.kind === "interval")
    return [
      first === "" ? Number.NEGATIVE_INFINITY : Number(first),
      second === "" ? Number.POSITIVE_INFINITY : Number(second),
    ];
  if (data.rowKey.kind === "size-range") return [sizeOf(first).areaKcmil, sizeOf(second).areaKcmil];
  return [Number.NaN, Number.NaN];
}
