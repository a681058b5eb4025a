/** A cell as the file has it: its text, or what keeps it from being text. */
export type Cell =
  | string
  | { readonly kind: "formula" }
  | { readonly kind: "error"; readonly shown: string }
  /** A number that the workbook shows as a date. */
  | { readonly kind: "date"; readonly day: string };

/** A row of a file with the line on which it begins; lines and rows are counted from 1. */
export interface FileRow {
  readonly line: number;
  readonly cells: readonly Cell[];
  /** Why the row cannot be read at all. */
  readonly broken?: string;
}

/** What a cell was read as, what is wrong with it, or that it is empty. */
export type Reading<T> =
  | {
      readonly value: T;
      /** Set where the text had to be understood: what it was taken for, and why. */
      readonly readAs?: string;
      readonly because?: string;
    }
  | { readonly problem: string; readonly accepted: string };

/** The rows of a file and what its form says about it. */
export interface FileTable {
  readonly rows: readonly FileRow[];
  readonly form: FileForm;
}

export interface FileForm {
  readonly form: "csv" | "xlsx";
  readonly encoding: "utf-8" | "utf-16le" | null;
  readonly byteOrderMark: boolean;
  readonly delimiter: "," | ";" | "\t" | null;
  readonly sheet: string | null;
}

/** Thrown for a file that cannot be read as a whole. */
export class UnreadableFile extends Error {
  readonly accepted: string;
  readonly line: number | null;
  /** True where the file is well formed but has more than is taken. */
  readonly tooLarge: boolean;

  constructor(detail: string, accepted: string, line: number | null = null, tooLarge = false) {
    super(detail);
    this.name = "UnreadableFile";
    this.accepted = accepted;
    this.line = line;
    this.tooLarge = tooLarge;
  }
}

/** Rows below the header that one file may have. */
export const ROWS_MAX = 50_000;
/** Columns that one file may have. */
export const COLUMNS_MAX = 200;
/** Characters that one cell may have: a cell of a workbook holds no more. */
export const CELL_MAX = 32_767;
