import { CELL_MAX, type Cell } from "./cell.js";
import { plainText } from "./formula-text.js";

/** A cell as text, with what has to be said about it, or why it is none. */
export type PlainCell =
  | { readonly text: string; readonly written: string; readonly because?: string; readonly remark?: string }
  | { readonly problem: string; readonly accepted: string; readonly written: string };

/**
 * The text of a cell. A leading = + - or @ is text like any other: nothing is ever worked out.
 * @param isDay whether the column holds days: elsewhere a date is what a spreadsheet made of something else.
 */
export function plainCell(cell: Cell, isDay: boolean): PlainCell {
  if (typeof cell === "string") {
    if (cell.length > CELL_MAX)
      return {
        problem: `the cell has ${String(cell.length)} characters`,
        accepted: `at most ${String(CELL_MAX)} characters`,
        written: cell,
      };
    const text = plainText(cell);
    return text === cell
      ? { text, written: cell }
      : { text, written: cell, remark: "the apostrophe that marks the cell as text is left out" };
  }
  switch (cell.kind) {
    case "formula":
      return {
        problem: "the cell holds a formula; formulas are not worked out",
        accepted: "the value itself, as text or number",
        written: "",
      };
    case "error":
      return {
        problem: "the cell holds an error of the spreadsheet",
        accepted: "the value itself",
        written: cell.shown,
      };
    default:
      return isDay
        ? { text: cell.day, written: cell.day, because: "the spreadsheet's date" }
        : {
            problem: "the spreadsheet has made a date of the cell; what was typed is lost",
            accepted: "the cell formatted as text, and typed again",
            written: cell.day,
          };
  }
}
