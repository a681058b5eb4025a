/** The second entry of the published tables: what each cell should say, from files that the library never sees. */
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { TableData } from "@landfast/rules";
import { parse } from "csv-parse/sync";

const FOLDER = new URL("second-entry/", import.meta.url);

/** What the second entry says of a cell: a value, "" where the page prints none, undefined where it does not hold it. */
export type SecondEntry = (rowKey: readonly string[], column: string) => string | undefined;

/** Undefined where there is no second entry of the table at all. */
export function secondEntryOf({ id, source, columns, rowKey }: TableData): SecondEntry | undefined {
  const path = [`${id}.${source.edition}.csv`, `${id}.csv`]
    .map((file) => fileURLToPath(new URL(file, FOLDER)))
    .find((file) => existsSync(file));
  if (path === undefined) return undefined;
  const [head = [], ...rows]: string[][] = parse(readFileSync(path, "utf8"));
  const keys = rowKey.kind === "size-range" || rowKey.kind === "interval" ? 2 : 1;
  const inOrder = columns.map((column) => column.id);
  if (head.slice(keys).join() !== inOrder.join()) throw new Error(`${path} has other columns than ${inOrder.join()}`);
  const held = new Map(rows.map((row) => [nameOf(row.slice(0, keys)), row.slice(keys)]));
  return (key, column) => {
    const cell = held.get(nameOf(key))?.[inOrder.indexOf(column)];
    return cell === "?" ? undefined : cell;
  };
}

/** Rows of the second entry under the name of their key; a key that the first entry lacks would be a lost row. */
export function rowNamesOf({ id, source, rowKey }: TableData): readonly string[] {
  const path = [`${id}.${source.edition}.csv`, `${id}.csv`]
    .map((file) => fileURLToPath(new URL(file, FOLDER)))
    .find((file) => existsSync(file));
  if (path === undefined) return [];
  const [, ...rows]: string[][] = parse(readFileSync(path, "utf8"));
  return rows.map((row) => nameOf(row.slice(0, rowKey.kind === "size-range" || rowKey.kind === "interval" ? 2 : 1)));
}

/** "105.6|167.8": a row by its key. */
export function nameOf(key: readonly string[]): string {
  return key.join("|");
}

/** Two prints of one value: 1.5 and 1.50 are the same number, and words are compared as they stand. */
export function sameValue(one: string, other: string): boolean {
  return one === other || (one !== "" && other !== "" && Number(one) === Number(other));
}
