/** Columns a line may have before an object or list is broken over several. */
const WIDTH = 120;

/**
 * JSON with what is short on one line, so that a part or a joint can be read and compared as a few lines of text.
 *
 * @returns text that ends with a line end
 */
export function printedJson(value: unknown): string {
  return `${print(value, "", 0)}\n`;
}

/** @param before characters already on the line, @param after characters that follow on it */
function print(value: unknown, indent: string, before: number): string {
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const short = onOneLine(value);
  if (indent.length + before + short.length + 1 <= WIDTH) return short;
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    const lines = value.map((one: unknown) => inner + print(one, inner, 0));
    return `[\n${lines.join(",\n")}\n${indent}]`;
  }
  const lines = Object.entries(value).map(([key, one]) => {
    const head = `${JSON.stringify(key)}: `;
    return inner + head + print(one, inner, head.length);
  });
  return `{\n${lines.join(",\n")}\n${indent}}`;
}

function onOneLine(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(onOneLine).join(", ")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const members = Object.entries(value).map(([key, one]) => `${JSON.stringify(key)}: ${onOneLine(one)}`);
  return members.length === 0 ? "{}" : `{ ${members.join(", ")} }`;
}
