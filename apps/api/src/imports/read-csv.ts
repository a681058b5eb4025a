import { isUtf8 } from "node:buffer";
import { type FileForm, type FileTable, UnreadableFile } from "./cell.js";
import { splitRecords } from "./split-records.js";

type Delimiter = NonNullable<FileForm["delimiter"]>;
const DELIMITERS: readonly Delimiter[] = [",", ";", "\t"];

/**
 * Reads the bytes of a CSV file: UTF-8 with or without a byte order mark, or UTF-16 little-endian with one.
 * @param stated the delimiter that a mapping states; without it the header tells.
 * @throws UnreadableFile for another encoding, for a header in which delimiters cannot be told apart, and as
 *   `splitRecords` does.
 */
export function readCsv(bytes: Buffer, stated: Delimiter | undefined): FileTable {
  const { text, encoding, byteOrderMark } = decoded(bytes);
  if (text.trim() === "") throw new UnreadableFile("The file is empty.", "a header row and at least one row", 1);
  const delimiter = stated ?? delimiterOf(text);
  return {
    rows: splitRecords(text, delimiter),
    form: { form: "csv", encoding, byteOrderMark, delimiter, sheet: null },
  };
}

function decoded(bytes: Buffer): {
  readonly text: string;
  readonly encoding: "utf-8" | "utf-16le";
  readonly byteOrderMark: boolean;
} {
  const accepted = "UTF-8, or UTF-16 little-endian with a byte order mark";
  if (bytes[0] === 0xfe && bytes[1] === 0xff) throw new UnreadableFile("The file is UTF-16 big-endian.", accepted);
  if (bytes[0] === 0xff && bytes[1] === 0xfe) {
    const text = bytes.subarray(2).toString("utf16le");
    if (bytes.length % 2 === 1 || !text.isWellFormed())
      throw new UnreadableFile("The file begins as UTF-16 little-endian and is not.", accepted);
    return { text: refuseNul(text), encoding: "utf-16le", byteOrderMark: true };
  }
  if (!isUtf8(bytes)) {
    const line = lineOfFirstBadByte(bytes);
    throw new UnreadableFile(`The bytes are not UTF-8 text, first on line ${String(line)}.`, accepted, line);
  }
  const byteOrderMark = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  return {
    text: refuseNul(bytes.subarray(byteOrderMark ? 3 : 0).toString("utf8")),
    encoding: "utf-8",
    byteOrderMark,
  };
}

/** Zero bytes mean UTF-16 without its mark, or no text file at all. */
function refuseNul(text: string): string {
  if (text.includes("\0"))
    throw new UnreadableFile(
      "The file holds zero bytes: it is UTF-16 without a byte order mark, or no text file.",
      "UTF-8, or UTF-16 little-endian with a byte order mark",
    );
  return text;
}

function lineOfFirstBadByte(bytes: Buffer): number {
  let line = 1;
  let start = 0;
  for (;;) {
    const end = bytes.indexOf(0x0a, start);
    const piece = bytes.subarray(start, end === -1 ? bytes.length : end);
    if (!isUtf8(piece) || end === -1) return line;
    line += 1;
    start = end + 1;
  }
}

/** The delimiter that stands most often in the header outside quotes. */
function delimiterOf(text: string): Delimiter {
  const counts = new Map<string, number>();
  let quoted = false;
  for (const sign of text) {
    if (sign === '"') quoted = !quoted;
    else if (!quoted && (sign === "\n" || sign === "\r")) break;
    else if (!quoted) counts.set(sign, (counts.get(sign) ?? 0) + 1);
  }
  const [first = ",", second = ";"] = [...DELIMITERS].sort((a, b) => (counts.get(b) ?? 0) - (counts.get(a) ?? 0));
  if ((counts.get(second) ?? 0) > 0)
    throw new UnreadableFile(
      "The header has more than one sign that may stand between columns.",
      "the delimiter stated in the mapping",
      1,
    );
  return first;
}
