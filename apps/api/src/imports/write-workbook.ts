import { strToU8, zipSync } from "fflate";

const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml";
/** Every entry bears one and the same time, so that the same rows give the same bytes. */
const MADE_AT = new Date(2000, 0, 1);

/**
 * A workbook (ECMA-376) with one sheet. Every cell is a text cell in the format for text: nothing in it is a formula,
 * and a spreadsheet that opens it makes neither dates nor numbers of what it holds.
 */
export function workbookOf(sheet: string, rows: Iterable<readonly string[]>): Uint8Array {
  const body: string[] = [];
  let line = 0;
  for (const cells of rows) {
    line += 1;
    const written = cells.map((text, index) =>
      text === ""
        ? ""
        : `<c r="${columnName(index)}${String(line)}" s="1" t="inlineStr"><is><t xml:space="preserve">${escaped(text)}</t></is></c>`,
    );
    body.push(`<row r="${String(line)}">${written.join("")}</row>`);
  }
  const parts: Readonly<Record<string, string>> = {
    "[Content_Types].xml":
      `<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>` +
      `<Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${TYPE}.sheet.main+xml"/>` +
      `<Override PartName="/xl/worksheets/sheet1.xml" ContentType="${TYPE}.worksheet+xml"/>` +
      `<Override PartName="/xl/styles.xml" ContentType="${TYPE}.styles+xml"/></Types>`,
    "_rels/.rels": `<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${RELATIONS}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    "xl/workbook.xml": `<workbook xmlns="${MAIN}" xmlns:r="${RELATIONS}"><sheets><sheet name="${escaped(sheet)}" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    "xl/_rels/workbook.xml.rels":
      `<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${RELATIONS}/worksheet" Target="worksheets/sheet1.xml"/>` +
      `<Relationship Id="rId2" Type="${RELATIONS}/styles" Target="styles.xml"/></Relationships>`,
    "xl/styles.xml":
      `<styleSheet xmlns="${MAIN}"><fonts count="1"><font/></fonts><fills count="2"><fill><patternFill patternType="none"/></fill>` +
      '<fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border/></borders>' +
      '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
      '<cellXfs count="2"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>' +
      '<xf numFmtId="49" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/></cellXfs></styleSheet>',
    "xl/worksheets/sheet1.xml": `<worksheet xmlns="${MAIN}"><sheetData>${body.join("")}</sheetData></worksheet>`,
  };
  return zipSync(
    Object.fromEntries(
      Object.entries(parts).map(([name, xml]) => [name, [strToU8(HEAD + xml), { level: 6, mtime: MADE_AT }]]),
    ),
  );
}

/** 0 is A, 26 is AA. */
function columnName(index: number): string {
  const rest = Math.floor(index / 26);
  return `${rest === 0 ? "" : columnName(rest - 1)}${String.fromCharCode(65 + (index % 26))}`;
}

/** Text as XML has it; what XML cannot have, and what would be read as such an escape, is written as _x005F_. */
function escaped(text: string): string {
  return text
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_")
    .replace(/[\ufffe\uffff]/g, (sign) => `_x${sign.charCodeAt(0).toString(16).toUpperCase()}_`)
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;");
}
