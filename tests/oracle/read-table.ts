/**
 * The published tables as the oracle reads them: straight from the CSV files, with a reader of its own, so that a fault
 * of the table build or of the library's look-ups cannot hide here as well.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parse } from "csv-parse/sync";
import { ofDecimal } from "./scaled-integer.js";

const PUBLISHED = new URL("../../data/published/", import.meta.url);

export type Row = Readonly<Record<string, string>>;

/** Rows of one table as printed; an edition that only points to another is followed. */
export function tableRows(standard: string, edition: string, table: string): readonly Row[] {
  const meta = JSON.parse(read(`${standard}/${edition}/${table}.meta.json`)) as { readonly sameAs?: string };
  if (meta.sameAs !== undefined) return tableRows(standard, meta.sameAs, table);
  return parse(read(`${standard}/${edition}/${table}.csv`), { columns: true, skip_empty_lines: true });
}

function read(path: string): string {
  return readFileSync(fileURLToPath(new URL(path, PUBLISHED)), "utf8");
}

/** Area of a size: circular mils for gauge and kcmil sizes, thousandths of a square millimeter for metric ones. */
export type SizeArea =
  | { readonly system: "awg"; readonly cmil: number }
  | { readonly system: "metric"; readonly mm2Thousandths: number };

/** Areas of gauge sizes, as the conductor table prints them (chapter 9, Table 8). */
const GAUGE_CMIL: ReadonlyMap<string, number> = new Map(
  tableRows("nfpa70", "2023", "conductor-properties-stranded")
    .filter((row) => row["areaCmil"] !== "")
    .map((row) => [cell(row, "size"), Number(cell(row, "areaCmil"))]),
);

const areas = new Map<string, SizeArea>();

/** "4/0 AWG" -> 211600 cmil; "250 kcmil" -> 250000 cmil; "35 mm2" -> 35000. Throws on anything else. */
export function areaOf(size: string): SizeArea {
  let area = areas.get(size);
  if (area === undefined) {
    area = parseArea(size);
    areas.set(size, area);
  }
  return area;
}

function parseArea(size: string): SizeArea {
  const gauge = GAUGE_CMIL.get(size);
  if (gauge !== undefined) return { system: "awg", cmil: gauge };
  const named = /^([0-9]+(?:\.[0-9]+)?) (kcmil|mm2)$/.exec(size);
  if (named === null) throw new Error(`no area for the size ${size}`);
  const millionths = ofDecimal(Number(named[1]));
  return named[2] === "kcmil"
    ? { system: "awg", cmil: millionths / 1000 }
    : { system: "metric", mm2Thousandths: millionths / 1000 };
}

/** Circular mils of a gauge or kcmil size; null for a metric size, which is never turned into one. */
export function cmilOf(size: string): number | null {
  const area = areaOf(size);
  return area.system === "awg" ? area.cmil : null;
}

/** Sizes of the ampacity table, by rising area. */
export const SIZES: readonly string[] = tableRows("nfpa70", "2023", "ampacity-raceway").map((row) => cell(row, "size"));

/** Any one cell; throws where the column does not exist. */
export function cell(row: Row, column: string): string {
  const value = row[column];
  if (value === undefined) throw new Error(`no column ${column}`);
  return value;
}
