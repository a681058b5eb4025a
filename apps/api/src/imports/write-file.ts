import { isDeepStrictEqual } from "node:util";
import { stringify } from "csv-stringify/sync";
import type { CatalogueEntry } from "../schemas/catalogue-entry.js";
import { CELL_MAX } from "./cell.js";
import { columnOf, FIELDS, type Field } from "./column.js";
import { entryCells } from "./entry-cells.js";
import { markedText } from "./formula-text.js";
import { readEntry } from "./read-entry.js";
import { FileReport, RowReader } from "./row-report.js";
import { workbookOf } from "./write-workbook.js";

/** Forms in which a version is exported. */
export type FileKind = "csv" | "xlsx";

/**
 * A file that holds connectors so that reading it again gives the very same ones. It is put together in pieces; each
 * connector is read back as it is added.
 */
export class CatalogueFile {
  readonly #rows: string[][] = [FIELDS.map((field) => columnOf(field).header)];

  /** @throws Error when a connector would not read back the same. */
  add(entry: CatalogueEntry): void {
    const cells = entryCells(entry);
    const texts = new Map(FIELDS.flatMap((field) => (cells[field] === undefined ? [] : [[field, cells[field]]])));
    const marked = new Map([...texts].map(([field, text]) => [field, markedText(text)] as const));
    if (!isDeepStrictEqual(readBack(marked), entry))
      throw new Error(`the connector ${entry.partNumber} cannot be written so that it reads back the same`);
    for (const [field, text] of marked)
      if (text.length > CELL_MAX) throw new Error(`${field} of ${entry.partNumber} is too long for a cell`);
    this.#rows.push(FIELDS.map((field) => marked.get(field) ?? ""));
  }

  /** The bytes of the file: CSV as RFC 4180 has it, UTF-8 with CR LF; or a workbook with one sheet. */
  bytes(kind: FileKind): Uint8Array {
    if (kind === "xlsx") return workbookOf("catalogue", this.#rows);
    return Buffer.from(stringify(this.#rows, { record_delimiter: "windows", quoted_match: /[\r\n]/ }), "utf8");
  }
}

function readBack(cells: ReadonlyMap<Field, string>): CatalogueEntry | null {
  const row = new RowReader(2, cells, new Map(), new FileReport(new Map()));
  return readEntry(row, false);
}
