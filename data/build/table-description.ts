// The sidecar of a published table, after it has been checked to be closed and complete.

/** Where a number was printed. */
export interface Source {
  readonly standard: string;
  readonly edition: string;
  readonly locator: string;
}

/** How far the numbers may be trusted. `published`: every cell was compared with a public reproduction. */
export type Status = "published" | "unconfirmed" | "invented";

/** What the first columns of the CSV hold. */
export type KeyKind = "size" | "size-range" | "interval" | "term";

/** Cells that are less certain than their table. Rows or columns left out mean all of them. */
export interface CellStatus {
  readonly rows?: readonly string[];
  readonly columns?: readonly string[];
  readonly status: "unconfirmed";
  readonly note: string;
}

/** One column after the key. */
export interface ColumnDescription {
  readonly title: string;
  /** Overrides the unit of the table; "term" for words. */
  readonly unit?: string;
  /** Only for terms: the cell is a conductor size. */
  readonly holds?: "size";
  /** Only for terms: the words that may stand there. */
  readonly oneOf?: readonly string[];
}

/** Who entered or compared the table, and when (ISO date). */
export interface Entry {
  readonly by: string;
  readonly on: string;
}

/** What must hold for the numbers; the sums are made from the page, not by the program. */
export interface Checks {
  readonly rows: number;
  readonly columnSums?: Readonly<Record<string, number>>;
  readonly nonDecreasing?: readonly string[];
  readonly ordered?: readonly (readonly string[])[];
  /** Interval tables: which ends are open. Empty when both are closed. */
  readonly openEnds?: readonly ("over" | "upTo")[];
}

/** A table with its own CSV. */
export interface TableDescription {
  readonly id: string;
  readonly title: string;
  readonly source: Source;
  readonly status: Status;
  readonly cells?: readonly CellStatus[];
  readonly unit: string;
  readonly rowKey: { readonly kind: KeyKind; readonly unit?: string };
  readonly columns: Readonly<Record<string, ColumnDescription>>;
  /** Meaning of an empty cell, under the key "". */
  readonly blank?: Readonly<Record<string, string>>;
  /** Words that may stand in a column of numbers or sizes, with their meaning. */
  readonly terms?: Readonly<Record<string, string>>;
  readonly transcribed: Entry;
  readonly checked: Entry & { readonly method: string };
  readonly checks: Checks;
  readonly notes?: readonly string[];
}

/** A table that another edition prints with the same cells. */
export interface SameTableDescription {
  readonly id: string;
  readonly sameAs: string;
  readonly source: Source;
  readonly transcribed: Entry;
  readonly checked: Entry & { readonly method: string };
  readonly notes?: readonly string[];
}

/** Header names of the key columns. */
export const KEY_COLUMNS: Readonly<Record<KeyKind, readonly string[]>> = {
  size: ["size"],
  "size-range": ["from", "to"],
  interval: ["over", "upTo"],
  term: ["key"],
};
