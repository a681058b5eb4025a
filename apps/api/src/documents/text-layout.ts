/** Plain text in columns and paragraphs, for a terminal. */

export interface Column {
  readonly head: string;
  readonly width: number;
}

/** Breaks text at spaces so that no line is wider; a longer word is cut. */
export function wrap(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  for (const paragraph of text.split("\n")) {
    let line = "";
    for (const word of paragraph.split(" ")) {
      let rest = word;
      if (line !== "" && line.length + 1 + rest.length <= width) {
        line = `${line} ${rest}`;
        continue;
      }
      if (line !== "") lines.push(line);
      while (rest.length > width) {
        lines.push(rest.slice(0, width));
        rest = rest.slice(width);
      }
      line = rest;
    }
    lines.push(line);
  }
  return lines;
}

/** A paragraph whose further lines stand in under its first. */
export function paragraph(text: string, width: number, indent = 0, hanging = indent): readonly string[] {
  const [first = "", ...rest] = wrap(text, width - indent);
  const more = rest.length === 0 ? [] : wrap(rest.join(" "), width - hanging);
  return [`${" ".repeat(indent)}${first}`, ...more.map((line) => `${" ".repeat(hanging)}${line}`)];
}

/** A table with wrapped cells, two spaces between columns and a rule under the heads. */
export function tableLines(columns: readonly Column[], rows: readonly (readonly string[])[]): readonly string[] {
  const lineOf = (cells: readonly string[]): string =>
    columns
      .map(({ width }, index) => (cells[index] ?? "").padEnd(width))
      .join("  ")
      .trimEnd();
  const lines = [lineOf(columns.map(({ head }) => head)), lineOf(columns.map(({ width }) => "-".repeat(width)))];
  for (const row of rows) {
    const cells = columns.map(({ width }, index) => wrap(row[index] ?? "", width));
    const height = Math.max(...cells.map((cell) => cell.length));
    for (let line = 0; line < height; line += 1) lines.push(lineOf(cells.map((cell) => cell[line] ?? "")));
  }
  return lines;
}
