/** One reason why a table is refused, with the place a reader has to look at. */
export interface Fault {
  /** Path below the folder of published tables, with forward slashes. */
  readonly file: string;
  /** Label of the row (its key), or the line number while a row has no key yet. */
  readonly row?: string;
  /** Identifier of the column. */
  readonly column?: string;
  readonly message: string;
}

/** The fault as one line: file, row and column first, so that it can be found by eye. */
export function faultLine(fault: Fault): string {
  const row = fault.row === undefined ? "" : `, row ${fault.row}`;
  const column = fault.column === undefined ? "" : `, column ${fault.column}`;
  return `${fault.file}${row}${column}: ${fault.message}`;
}
