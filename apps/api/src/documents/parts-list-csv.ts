import type { PartLine, PartsList } from "@landfast/stock";
import { stringify } from "csv-stringify/sync";
import { neutralCell } from "./neutral-cell.js";

type Cell = string | number | null;

/** What a line of the list is: a part that is bought, or a tool or die that is had for the job. */
const COLUMNS: Readonly<Record<string, (line: PartLine) => Cell>> = {
  line: ({ id }) => id,
  partNumber: ({ partNumber }) => partNumber,
  description: ({ description }) => description,
  kind: ({ kind }) => kind,
  net: ({ net }) => net,
  spareByPolicy: ({ spares }) => spares.byPolicy,
  spareByOwner: ({ spares }) => spares.byOwner,
  spareRule: ({ spares }) => spares.rule,
  fromStock: ({ fromStock }) => fromStock,
  toBuy: ({ toBuy }) => toBuy,
  packs: ({ packs }) => packs,
  packQuantity: ({ packQuantity }) => packQuantity,
  packRounding: ({ packRounding }) => packRounding,
  breakOverBuy: ({ breakOverBuy }) => breakOverBuy,
  bought: ({ bought }) => bought,
  priceEach: ({ each }) => each?.amount ?? null,
  cost: ({ cost }) => cost?.amount ?? null,
  currency: ({ cost, each }) => (cost ?? each)?.currency ?? null,
  neededBy: ({ neededBy }) => neededBy,
  marks: ({ marks }) => marks.join("; "),
};

/** Columns whose text is a number of ours: written as it is, so that a spreadsheet reads a number. */
const NUMBERS: ReadonlySet<string> = new Set(["net", "priceEach", "cost"]);

/**
 * The list as CSV: RFC 4180, UTF-8, CRLF, a header row, decimal points. Parts first, then tools and dies. A cost that is
 * not known is an empty cell, never zero. A text that a spreadsheet would take for a formula begins with an apostrophe.
 */
export function partsListCsv({ lines, tools }: Pick<PartsList, "lines" | "tools">): string {
  const names = Object.keys(COLUMNS);
  const rows = lines.map((line) => names.map((name) => cellOf(name, COLUMNS[name]?.(line) ?? null)));
  const had = tools.map(({ id, tool, die, terms, cost, marks }) => {
    const values: Readonly<Record<string, Cell>> = {
      line: id,
      description: die === null ? tool : `${tool}, die ${die}`,
      kind: `${die === null ? "tool" : "die"}: ${terms.replace("-", " ")}`,
      cost: cost?.amount ?? null,
      currency: cost?.currency ?? null,
      marks: marks.join("; "),
    };
    return names.map((name) => cellOf(name, values[name] ?? null));
  });
  return stringify([names, ...rows, ...had], { record_delimiter: "windows", quoted_match: /[\r\n]/ });
}

function cellOf(name: string, cell: Cell): Cell {
  return typeof cell === "string" && !NUMBERS.has(name) ? neutralCell(cell) : cell;
}
