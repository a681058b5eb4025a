/** Lines of plain text, 100 columns at most. */

const COLUMNS = 100;

/** A heading with numbered texts below it, set off by an empty line; nothing where there are no texts. */
export function section(title: string, texts: readonly string[]): string[] {
  return texts.length === 0 ? [] : ["", title, ...numbered(texts, "  ")];
}

/** "1. …" with later lines set in under the first word. */
export function numbered(texts: readonly string[], indent: string): string[] {
  return texts.flatMap((text, index) => {
    const number = `${String(index + 1)}. `;
    return wrapped(indent, number + text, indent + " ".repeat(number.length));
  });
}

/** Breaks at spaces; a word longer than a line is cut, so that no line is ever too long. */
export function wrapped(first: string, text: string, rest: string): string[] {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of text.split(" ")) {
    let left = word;
    if (!empty && line.length + 1 + left.length > COLUMNS) {
      lines.push(line);
      line = rest;
      empty = true;
    }
    while (empty && line.length + left.length > COLUMNS) {
      const room = COLUMNS - line.length;
      lines.push(line + left.slice(0, room));
      left = left.slice(room);
      line = rest;
    }
    line += empty ? left : ` ${left}`;
    empty = false;
  }
  lines.push(line);
  return lines;
}

/** The lines as one text; each ends in "\n". */
export function joined(lines: readonly string[]): string {
  return `${lines.join("\n")}\n`;
}
