import type { Cell, Reading } from "./cell.js";
import { plainCell } from "./cell-text.js";
import { type ColumnUnit, columnOf, type Field } from "./column.js";

/** What is wrong with a row, and where. */
export interface RowProblem {
  /** The line of the file on which the row begins, from 1. */
  readonly line: number;
  /** The column as the file calls it, or our own name for one that the file has not; null: the row as a whole. */
  readonly column: string | null;
  readonly field: Field | null;
  readonly partNumber: string | null;
  /** The cell as written, cut short. */
  readonly written: string;
  readonly reason: string;
  readonly accepted: string;
}

/** What a text was taken for: shown before anything is stored. Equal ones are counted together. */
export interface Recognised {
  readonly field: Field;
  readonly column: string;
  readonly written: string;
  readonly readAs: string;
  readonly because: string;
  rows: number;
  /** The first lines on which it stands. */
  readonly lines: number[];
}

/** What is worth knowing and changes nothing. Equal ones are counted together. */
export interface Remark {
  readonly column: string;
  readonly written: string;
  readonly remark: string;
  rows: number;
  readonly lines: number[];
}

const LINES_SHOWN = 5;
const WRITTEN_SHOWN = 120;

/** Gathers what is to be said about the rows of one file. */
export class FileReport {
  readonly problems: RowProblem[] = [];
  readonly #recognised = new Map<string, Recognised>();
  readonly #remarks = new Map<string, Remark>();
  readonly #headers: ReadonlyMap<Field, string>;

  constructor(headers: ReadonlyMap<Field, string>) {
    this.#headers = headers;
  }

  get recognised(): readonly Recognised[] {
    return [...this.#recognised.values()];
  }

  get remarks(): readonly Remark[] {
    return [...this.#remarks.values()];
  }

  /** The column as the file calls it. */
  columnName(field: Field): string {
    return this.#headers.get(field) ?? columnOf(field).header;
  }

  refuse(problem: RowProblem): void {
    this.problems.push(problem);
  }

  recognise(field: Field, line: number, written: string, readAs: string, because: string): void {
    const key = JSON.stringify([field, written, readAs, because]);
    const known = this.#recognised.get(key);
    if (known === undefined)
      this.#recognised.set(key, {
        field,
        column: this.columnName(field),
        written: cutShort(written),
        readAs: cutShort(readAs),
        because,
        rows: 1,
        lines: [line],
      });
    else count(known, line);
  }

  remark(field: Field, line: number, written: string, remark: string): void {
    const key = JSON.stringify([field, written, remark]);
    const known = this.#remarks.get(key);
    if (known === undefined)
      this.#remarks.set(key, {
        column: this.columnName(field),
        written: cutShort(written),
        remark,
        rows: 1,
        lines: [line],
      });
    else count(known, line);
  }
}

function count(counted: { rows: number; readonly lines: number[] }, line: number): void {
  counted.rows += 1;
  if (counted.lines.length < LINES_SHOWN) counted.lines.push(line);
}

export function cutShort(text: string): string {
  return text.length <= WRITTEN_SHOWN ? text : `${text.slice(0, WRITTEN_SHOWN - 1)}…`;
}

/** One row while it is read: gives the text of its cells and gathers what is wrong with it. */
export class RowReader {
  readonly line: number;
  readonly #report: FileReport;
  readonly #cells: ReadonlyMap<Field, Cell>;
  readonly #units: ReadonlyMap<Field, ColumnUnit>;
  readonly #problems: Omit<RowProblem, "line" | "partNumber">[] = [];
  readonly #recognised: {
    readonly field: Field;
    readonly written: string;
    readonly readAs: string;
    readonly because: string;
  }[] = [];
  readonly #remarks: { readonly field: Field; readonly written: string; readonly remark: string }[] = [];
  partNumber: string | null = null;

  constructor(
    line: number,
    cells: ReadonlyMap<Field, Cell>,
    units: ReadonlyMap<Field, ColumnUnit>,
    report: FileReport,
  ) {
    this.line = line;
    this.#cells = cells;
    this.#units = units;
    this.#report = report;
  }

  get bad(): boolean {
    return this.#problems.length > 0;
  }

  unitOf(field: Field): ColumnUnit | undefined {
    return this.#units.get(field);
  }

  /** The text of a cell without the blanks around it; "" where it is empty, null where it is no text at all. */
  text(field: Field): string | null {
    const cell = this.#cells.get(field) ?? "";
    const plain = plainCell(cell, columnOf(field).kind === "day");
    if ("problem" in plain) {
      this.problem(field, plain.problem, plain.accepted, plain.written);
      return null;
    }
    if (plain.because !== undefined) this.recognise(field, plain.written, plain.text, plain.because);
    if (plain.remark !== undefined) this.remark(field, plain.written, plain.remark);
    return plain.text;
  }

  /** A cell read by `read`; undefined where it is empty or cannot be read, and then the latter is reported. */
  read<T>(field: Field, read: (written: string) => Reading<T>): T | undefined {
    const raw = this.text(field);
    if (raw === null) return undefined;
    const written = raw.trim();
    if (written === "") return undefined;
    if (written !== raw) this.remark(field, raw, "the blanks around it are left out");
    const reading = read(written);
    if ("problem" in reading) {
      this.problem(field, reading.problem, reading.accepted, written);
      return undefined;
    }
    if (reading.readAs !== undefined && reading.because !== undefined)
      this.recognise(field, written, reading.readAs, reading.because);
    return reading.value;
  }

  /** As `read`, for a cell without which there is no connector. */
  needed<T>(field: Field, read: (written: string) => Reading<T>): T | undefined {
    const before = this.#problems.length;
    const value = this.read(field, read);
    if (value === undefined && this.#problems.length === before) this.missing(field);
    return value;
  }

  /** True where nothing stands in the cell. */
  isEmpty(field: Field): boolean {
    const cell = this.#cells.get(field) ?? "";
    return typeof cell === "string" && cell.trim() === "";
  }

  missing(field: Field): void {
    this.problem(field, "nothing is said here, and nothing is assumed", `the ${columnOf(field).header}`, "");
  }

  problem(field: Field | null, reason: string, accepted: string, written = ""): void {
    this.#problems.push({
      column: field === null ? null : this.#report.columnName(field),
      field,
      written: cutShort(written),
      reason,
      accepted,
    });
  }

  recognise(field: Field, written: string, readAs: string, because: string): void {
    this.#recognised.push({ field, written, readAs, because });
  }

  remark(field: Field, written: string, remark: string): void {
    this.#remarks.push({ field, written, remark });
  }

  /** Hands what was found to the report: of a row that is refused, only why. */
  close(): void {
    const { line, partNumber } = this;
    for (const problem of this.#problems) this.#report.refuse({ line, partNumber, ...problem });
    if (this.bad) return;
    for (const { field, written, readAs, because } of this.#recognised)
      this.#report.recognise(field, line, written, readAs, because);
    for (const { field, written, remark } of this.#remarks) this.#report.remark(field, line, written, remark);
  }
}
