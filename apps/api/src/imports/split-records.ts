import { COLUMNS_MAX, type FileRow, ROWS_MAX, UnreadableFile } from "./cell.js";

const QUOTE = '"';

/**
 * Splits a text into records as RFC 4180 has them: cells between delimiters, in quotes where they hold a delimiter, a
 * quote (doubled) or a line break. Lines may end in CR LF, LF or CR.
 *
 * A quote where none may be makes its own record broken and no other: reading goes on at the end of that line. Every
 * record has the line it begins on; a blank line is a record of one empty cell.
 * @throws UnreadableFile for a quote that is never closed, since what belongs to which row cannot then be known.
 */
export function splitRecords(text: string, delimiter: string): readonly FileRow[] {
  const rows: FileRow[] = [];
  const end = text.length;
  let at = 0;
  let line = 1;
  while (at < end) {
    const begin = line;
    const cells: string[] = [];
    let broken: string | undefined;
    for (;;) {
      if (text[at] === QUOTE) {
        const quoted = quotedCell(text, at, line);
        cells.push(quoted.value);
        at = quoted.at;
        line = quoted.line;
        if (at < end && text[at] !== delimiter && !isLineEnd(text[at])) {
          broken ??= closedTooEarly(begin, line);
          at = endOfLine(text, at);
        }
      } else {
        const start = at;
        while (at < end && text[at] !== delimiter && !isLineEnd(text[at])) at += 1;
        const value = text.slice(start, at);
        if (value.includes(QUOTE)) broken ??= "a quotation mark stands inside a cell that is not in quotation marks";
        cells.push(value);
      }
      if (text[at] !== delimiter) break;
      at += 1;
      // A delimiter at the very end of the text opens one more cell, an empty one.
      if (at === end) {
        cells.push("");
        break;
      }
    }
    if (at < end) {
      at += text[at] === "\r" && text[at + 1] === "\n" ? 2 : 1;
      line += 1;
    }
    if (cells.length > COLUMNS_MAX)
      broken ??= `the row has ${String(cells.length)} cells; a row may have ${String(COLUMNS_MAX)}`;
    rows.push({ line: begin, cells, ...(broken === undefined ? {} : { broken }) });
    // The header comes on top of the rows.
    if (rows.length > ROWS_MAX + 1)
      throw new UnreadableFile(
        `The file has more than ${String(ROWS_MAX)} rows.`,
        `at most ${String(ROWS_MAX)} rows; split the file`,
        begin,
        true,
      );
  }
  return rows;
}

interface QuotedCell {
  readonly value: string;
  /** Just behind the closing quote. */
  readonly at: number;
  readonly line: number;
}

function quotedCell(text: string, start: number, startLine: number): QuotedCell {
  let value = "";
  let from = start + 1;
  for (;;) {
    const close = text.indexOf(QUOTE, from);
    if (close === -1)
      throw new UnreadableFile(
        `A quotation mark that opens on line ${String(startLine)} is never closed, so which rows follow it cannot be known.`,
        "a closing quotation mark; marks inside a quoted cell doubled",
        startLine,
      );
    value += text.slice(from, close);
    if (text[close + 1] !== QUOTE) {
      return { value, at: close + 1, line: startLine + lineEnds(value) };
    }
    value += QUOTE;
    from = close + 2;
  }
}

function closedTooEarly(begin: number, line: number): string {
  return line === begin
    ? "a quotation mark is closed in the middle of a cell; marks inside a quoted cell are doubled"
    : `a quotation mark opened on line ${String(begin)} is closed on line ${String(line)} in the middle of a cell; the lines between are lost with this row`;
}

function lineEnds(text: string): number {
  return text.match(/\r\n|\n|\r/g)?.length ?? 0;
}

function endOfLine(text: string, from: number): number {
  let at = from;
  while (at < text.length && !isLineEnd(text[at])) at += 1;
  return at;
}

function isLineEnd(sign: string | undefined): boolean {
  return sign === "\n" || sign === "\r";
}
