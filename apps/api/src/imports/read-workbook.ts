import { strFromU8, unzipSync } from "fflate";
import { SaxesParser } from "saxes";
import { type Cell, COLUMNS_MAX, type FileRow, type FileTable, ROWS_MAX, UnreadableFile } from "./cell.js";
import { numberText } from "./read-quantity.js";

/** Bytes that a workbook may have once unpacked. */
const UNPACKED_MAX = 200 * 1024 * 1024;
const ACCEPTED = "a workbook in the XLSX form (ECMA-376), as spreadsheets save it";
const MS_PER_DAY = 86_400_000;

/**
 * Reads one sheet of a workbook (ECMA-376). Formulas are never worked out, not even read from what was worked out
 * before; a number that the workbook shows as a date is told apart from other numbers.
 * @param sheet the sheet's name; needed where the workbook has more than one.
 * @throws UnreadableFile for what is no workbook, is too large, or has no such sheet.
 */
export function readWorkbook(bytes: Buffer, sheet: string | undefined): FileTable {
  const parts = unpacked(bytes);
  const book = readBook(textOf(parts, "xl/workbook.xml"));
  const chosen = sheetOf(book.sheets, sheet);
  const target = readRelations(textOf(parts, "xl/_rels/workbook.xml.rels")).get(chosen.relation);
  if (target === undefined) throw unreadable(`the sheet "${chosen.name}" is not in the file`);
  const strings = parts["xl/sharedStrings.xml"];
  return {
    rows: readSheet(textOf(parts, pathOf(target)), {
      strings: strings === undefined ? [] : readStrings(strFromU8(strings)),
      dateStyles: readDateStyles(parts["xl/styles.xml"]),
      firstDay: book.from1904 ? Date.UTC(1904, 0, 1) : Date.UTC(1899, 11, 30),
    }),
    form: { form: "xlsx", encoding: null, byteOrderMark: false, delimiter: null, sheet: chosen.name },
  };
}

type Parts = Readonly<Record<string, Uint8Array>>;

function unpacked(bytes: Buffer): Parts {
  let size = 0;
  try {
    return unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        if (!/^xl\/(?:workbook\.xml|_rels\/workbook\.xml\.rels|sharedStrings\.xml|styles\.xml|worksheets\/)/.test(name))
          return false;
        size += originalSize;
        if (size > UNPACKED_MAX)
          throw new UnreadableFile(
            "The workbook unpacks to more than is taken.",
            `at most ${String(UNPACKED_MAX)} bytes unpacked; split the file`,
            null,
            true,
          );
        return true;
      },
    });
  } catch (error) {
    throw error instanceof UnreadableFile ? error : unreadable("it is no zip archive, or a broken one");
  }
}

function textOf(parts: Parts, name: string): string {
  const part = parts[name];
  if (part === undefined) throw unreadable(`it has no ${name}`);
  return strFromU8(part);
}

function unreadable(because: string): UnreadableFile {
  return new UnreadableFile(`The file is not a workbook that can be read: ${because}.`, ACCEPTED);
}

/** Walks XML; a document that is not well formed, or that declares entities, is refused. */
function walk(
  xml: string,
  on: {
    readonly open?: (name: string, attributes: Readonly<Record<string, string>>) => void;
    readonly text?: (text: string) => void;
    readonly close?: (name: string) => void;
  },
): void {
  const parser = new SaxesParser();
  parser.on("error", (error) => {
    throw unreadable(error.message);
  });
  parser.on("doctype", () => {
    throw unreadable("its XML declares a document type");
  });
  parser.on("opentag", ({ name, attributes }) => on.open?.(localName(name), attributes));
  parser.on("text", (text) => on.text?.(text));
  parser.on("cdata", (text) => on.text?.(text));
  parser.on("closetag", ({ name }) => on.close?.(localName(name)));
  parser.write(xml).close();
}

function localName(name: string): string {
  return name.slice(name.indexOf(":") + 1);
}

interface SheetName {
  readonly name: string;
  readonly relation: string;
}

function readBook(xml: string): { readonly sheets: readonly SheetName[]; readonly from1904: boolean } {
  const sheets: SheetName[] = [];
  let from1904 = false;
  walk(xml, {
    open: (name, attributes) => {
      if (name === "sheet") sheets.push({ name: attributes["name"] ?? "", relation: attributes["r:id"] ?? "" });
      if (name === "workbookPr") from1904 = /^(?:1|true)$/.test(attributes["date1904"] ?? "");
    },
  });
  return { sheets, from1904 };
}

function sheetOf(sheets: readonly SheetName[], wanted: string | undefined): SheetName {
  const names = sheets.map(({ name }) => `"${name}"`).join(", ");
  const [only, another] = sheets;
  const chosen =
    wanted === undefined ? (another === undefined ? only : undefined) : sheets.find(({ name }) => name === wanted);
  if (chosen !== undefined) return chosen;
  throw new UnreadableFile(
    wanted === undefined
      ? `The workbook has the sheets ${names}; which one is meant cannot be known.`
      : `The workbook has no sheet "${wanted}"; it has ${names}.`,
    "the sheet stated in the mapping, or a workbook with one sheet",
  );
}

function readRelations(xml: string): ReadonlyMap<string, string> {
  const targets = new Map<string, string>();
  walk(xml, {
    open: (name, attributes) => {
      if (name === "Relationship") targets.set(attributes["Id"] ?? "", attributes["Target"] ?? "");
    },
  });
  return targets;
}

function pathOf(target: string): string {
  return target.startsWith("/") ? target.slice(1) : `xl/${target}`;
}

function readStrings(xml: string): readonly string[] {
  const strings: string[] = [];
  let current: string | undefined;
  let inText = false;
  // What a language's reading aid says is no part of the text.
  let aside = 0;
  walk(xml, {
    open: (name) => {
      if (name === "si") current = "";
      if (name === "rPh") aside += 1;
      inText = name === "t" && aside === 0;
    },
    text: (text) => {
      if (inText && current !== undefined) current += text;
    },
    close: (name) => {
      if (name === "rPh") aside -= 1;
      if (name === "t") inText = false;
      if (name === "si" && current !== undefined) {
        strings.push(unescaped(current));
        current = undefined;
      }
    },
  });
  return strings;
}

/** Which cell styles show a number as a date or a time. */
function readDateStyles(part: Uint8Array | undefined): ReadonlySet<number> {
  const dates = new Set<number>();
  if (part === undefined) return dates;
  const formats = new Map<number, string>();
  let inCells = false;
  let index = 0;
  walk(strFromU8(part), {
    open: (name, attributes) => {
      if (name === "numFmt") formats.set(Number(attributes["numFmtId"]), attributes["formatCode"] ?? "");
      if (name === "cellXfs") inCells = true;
      if (name === "xf" && inCells) {
        if (showsDate(Number(attributes["numFmtId"] ?? "0"), formats)) dates.add(index);
        index += 1;
      }
    },
    close: (name) => {
      if (name === "cellXfs") inCells = false;
    },
  });
  return dates;
}

function showsDate(id: number, formats: ReadonlyMap<number, string>): boolean {
  const code = formats.get(id);
  if (code === undefined) return (id >= 14 && id <= 22) || (id >= 27 && id <= 36) || (id >= 45 && id <= 58);
  return /[ymdhs]/i.test(code.replace(/"[^"]*"|\\.|\[[^\]]*\]/g, ""));
}

interface SheetReading {
  readonly strings: readonly string[];
  readonly dateStyles: ReadonlySet<number>;
  /** The day that the number 0 stands for. */
  readonly firstDay: number;
}

function readSheet(xml: string, { strings, dateStyles, firstDay }: SheetReading): readonly FileRow[] {
  const rows: FileRow[] = [];
  let cells: Cell[] = [];
  let line = 0;
  let column = 0;
  let cell: { type: string; style: number; formula: boolean; value: string } | undefined;
  let takesText = false;

  const cellOf = (): Cell => {
    if (cell === undefined) return "";
    const { type, style, formula, value } = cell;
    if (formula) return { kind: "formula" };
    switch (type) {
      case "s": {
        const text = strings[Number(value)];
        if (text === undefined) throw unreadable("a cell names a text that it has not");
        return text;
      }
      case "inlineStr":
      case "str":
        return unescaped(value);
      case "b":
        return value === "1" ? "true" : "false";
      case "e":
        return { kind: "error", shown: value };
      case "d":
        return { kind: "date", day: value.slice(0, 10) };
      default:
        if (value === "") return "";
        return dateStyles.has(style)
          ? {
              kind: "date",
              day: new Date(firstDay + Math.floor(Number(value)) * MS_PER_DAY).toISOString().slice(0, 10),
            }
          : numberText(Number(value));
    }
  };

  walk(xml, {
    open: (name, attributes) => {
      if (name === "row") {
        line = attributes["r"] === undefined ? line + 1 : Number(attributes["r"]);
        cells = [];
        column = 0;
      } else if (name === "c") {
        column = attributes["r"] === undefined ? column + 1 : columnNumber(attributes["r"]);
        if (!(column >= 1 && column <= COLUMNS_MAX))
          throw new UnreadableFile(
            `Row ${String(line)} has a cell beyond column ${String(COLUMNS_MAX)}.`,
            `at most ${String(COLUMNS_MAX)} columns`,
            line,
            true,
          );
        cell = { type: attributes["t"] ?? "n", style: Number(attributes["s"] ?? "0"), formula: false, value: "" };
      } else if (name === "f" && cell !== undefined) cell.formula = true;
      else if (name === "v" || name === "t") takesText = true;
    },
    text: (text) => {
      if (takesText && cell !== undefined) cell.value += text;
    },
    close: (name) => {
      if (name === "v" || name === "t") takesText = false;
      else if (name === "c") {
        while (cells.length < column - 1) cells.push("");
        cells[column - 1] = cellOf();
        cell = undefined;
      } else if (name === "row") {
        if (rows.length > ROWS_MAX)
          throw new UnreadableFile(
            `The sheet has more than ${String(ROWS_MAX)} rows.`,
            `at most ${String(ROWS_MAX)} rows; split the file`,
            line,
            true,
          );
        rows.push({ line, cells });
      }
    },
  });
  return rows;
}

/** "C5" stands in column 3. */
function columnNumber(reference: string): number {
  let column = 0;
  for (const letter of /^[A-Z]{1,3}/.exec(reference)?.[0] ?? "") column = column * 26 + letter.charCodeAt(0) - 64;
  return column;
}

/** Characters that XML cannot have stand as _x000D_ in a workbook; _x005F_ is an underscore. */
function unescaped(text: string): string {
  return text.includes("_x")
    ? text.replace(/_x([0-9A-Fa-f]{4})_/g, (_whole, code: string) => String.fromCharCode(Number.parseInt(code, 16)))
    : text;
}
