import type { Fault } from "./fault.js";
import type { SameTableDescription, TableDescription } from "./table-description.js";

// A closed reading of the sidecar: an unknown key is a slip that would otherwise be dropped unseen.

type Problem = string;
type Shape = (value: unknown, at: string) => Problem[];

const IDENTIFIER = /^[a-z][A-Za-z0-9]*$/;
const TABLE_ID = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/;

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const text: Shape = (value, at) =>
  typeof value === "string" && value.trim() === value && value !== ""
    ? []
    : [`${at} must be text without blanks at its ends`];

const matching =
  (pattern: RegExp, what: string): Shape =>
  (value, at) =>
    typeof value === "string" && pattern.test(value) ? [] : [`${at} must be ${what}`];

const oneOf =
  (...words: string[]): Shape =>
  (value, at) =>
    words.includes(value as string) ? [] : [`${at} must be one of ${words.join(", ")}`];

const number: Shape = (value, at) =>
  typeof value === "number" && Number.isFinite(value) ? [] : [`${at} must be a number`];

const count: Shape = (value, at) =>
  Number.isInteger(value) && (value as number) > 0 ? [] : [`${at} must be a whole number above zero`];

const listOf =
  (item: Shape, minimum = 1): Shape =>
  (value, at) => {
    if (!Array.isArray(value)) return [`${at} must be a list`];
    if (value.length < minimum) return [`${at} must not be empty`];
    return value.flatMap((entry, index) => item(entry, `${at}[${index}]`));
  };

const mapOf =
  (key: Shape, item: Shape): Shape =>
  (value, at) => {
    if (!isRecord(value)) return [`${at} must be an object`];
    return Object.entries(value).flatMap(([name, entry]) => [
      ...key(name, `key "${name}" of ${at}`),
      ...item(entry, `${at}.${name}`),
    ]);
  };

const closed =
  (required: Readonly<Record<string, Shape>>, optional: Readonly<Record<string, Shape>> = {}): Shape =>
  (value, at) => {
    if (!isRecord(value)) return [`${at === "" ? "the sidecar" : at} must be an object`];
    const name = (key: string): string => (at === "" ? key : `${at}.${key}`);
    const problems: Problem[] = [];
    for (const key of Object.keys(required)) {
      if (!Object.hasOwn(value, key)) problems.push(`missing key "${name(key)}"`);
    }
    for (const [key, entry] of Object.entries(value)) {
      const shape = Object.hasOwn(required, key)
        ? required[key]
        : Object.hasOwn(optional, key)
          ? optional[key]
          : undefined;
      if (shape === undefined) problems.push(`unknown key "${name(key)}"`);
      else problems.push(...shape(entry, name(key)));
    }
    return problems;
  };

/** A date of the calendar written YYYY-MM-DD; 2025-02-30 is not one. */
const date: Shape = (value, at) => {
  const parts = typeof value === "string" ? /^(\d{4})-(\d{2})-(\d{2})$/.exec(value) : null;
  const stamp = parts === null ? Number.NaN : Date.parse(`${parts[0]}T00:00:00Z`);
  return parts !== null && !Number.isNaN(stamp) && new Date(stamp).toISOString().startsWith(parts[0])
    ? []
    : [`${at} is not a real date (YYYY-MM-DD)`];
};

const source = closed({ standard: text, edition: text, locator: text });
const transcribed = closed({ by: text, on: date });
const checked = closed({ by: text, on: date, method: text });
const identifier = matching(IDENTIFIER, "a camelCase identifier");
const tableId = matching(TABLE_ID, "lower-case words joined by hyphens");

const cellStatus = closed(
  // Only doubt can be added to single cells: a reader may then trust a cell exactly when neither its table nor its
  // own mark says otherwise.
  { status: oneOf("unconfirmed"), note: text },
  { rows: listOf(text), columns: listOf(identifier) },
);

const ownTable = closed(
  {
    id: tableId,
    title: text,
    source,
    status: oneOf("published", "unconfirmed", "invented"),
    unit: text,
    rowKey: closed({ kind: oneOf("size", "size-range", "interval", "term") }, { unit: text }),
    columns: mapOf(identifier, closed({ title: text }, { unit: text, holds: oneOf("size"), oneOf: listOf(text) })),
    transcribed,
    checked,
    checks: closed(
      { rows: count },
      {
        columnSums: mapOf(identifier, number),
        nonDecreasing: listOf(identifier),
        ordered: listOf(listOf(identifier, 2)),
        openEnds: listOf(oneOf("over", "upTo"), 0),
      },
    ),
  },
  {
    cells: listOf(cellStatus),
    blank: mapOf((name, at) => (name === "" ? [] : [`${at} must be "": only the empty cell can be blank`]), text),
    terms: mapOf(text, text),
    notes: listOf(text),
  },
);

const sameTable = closed({ id: tableId, sameAs: text, source, transcribed, checked }, { notes: listOf(text) });

/** What the sidecar says, or why it is refused. */
export type DescriptionReading =
  | { readonly kind: "own"; readonly description: TableDescription }
  | { readonly kind: "same"; readonly description: SameTableDescription }
  | { readonly kind: "refused"; readonly faults: readonly Fault[] };

function ownProblems(own: TableDescription): Problem[] {
  const problems: Problem[] = [];
  const known = (column: string): boolean => Object.hasOwn(own.columns, column);
  const unknown = (column: string, where: string): void => {
    if (!known(column)) problems.push(`${where} names the column "${column}", which is not declared`);
  };
  if (Object.keys(own.columns).length === 0) problems.push("columns must not be empty");
  if (own.rowKey.kind === "interval") {
    if (own.rowKey.unit === undefined) problems.push('missing key "rowKey.unit" of an interval table');
    if (own.checks.openEnds === undefined) problems.push('missing key "checks.openEnds" of an interval table');
  } else {
    if (own.rowKey.unit !== undefined) problems.push('unknown key "rowKey.unit": only an interval has a unit');
    if (own.checks.openEnds !== undefined) problems.push('unknown key "checks.openEnds": only an interval has ends');
  }
  for (const [name, column] of Object.entries(own.columns)) {
    const isTerm = (column.unit ?? own.unit) === "term";
    const hasSum = own.checks.columnSums !== undefined && Object.hasOwn(own.checks.columnSums, name);
    if (!isTerm && !hasSum)
      problems.push(`missing key "checks.columnSums.${name}": each column of numbers has its sum`);
    if (isTerm && hasSum) problems.push(`checks.columnSums.${name} sums a column of words`);
    if (!isTerm && (column.holds !== undefined || column.oneOf !== undefined))
      problems.push(`columns.${name} holds words, but its unit is not "term"`);
    if (column.holds !== undefined && column.oneOf !== undefined)
      problems.push(`columns.${name} cannot hold sizes and a list of words at once`);
  }
  for (const column of Object.keys(own.checks.columnSums ?? {})) unknown(column, "checks.columnSums");
  for (const column of own.checks.nonDecreasing ?? []) unknown(column, "checks.nonDecreasing");
  for (const column of (own.checks.ordered ?? []).flat()) unknown(column, "checks.ordered");
  for (const column of (own.cells ?? []).flatMap((cell) => cell.columns ?? [])) unknown(column, "cells");
  if (own.cells !== undefined && own.status !== "published")
    problems.push(`cells marks single cells unconfirmed, but the whole table is ${own.status} already`);
  return problems;
}

/**
 * Checks one sidecar: closed, complete, consistent in itself and with the place where it lies.
 *
 * @param file path of the sidecar below the folder of published tables: standard/edition/id.meta.json
 * @param json the parsed JSON
 */
export function checkDescription(file: string, json: unknown): DescriptionReading {
  const isSame = isRecord(json) && Object.hasOwn(json, "sameAs");
  const problems = isSame ? sameTable(json, "") : ownTable(json, "");
  const refused = (list: readonly Problem[]): DescriptionReading => ({
    kind: "refused",
    faults: list.map((message) => ({ file, message })),
  });
  if (problems.length > 0) return refused(problems);

  const described = json as TableDescription | SameTableDescription;
  const [, edition, name] = file.split("/");
  if (`${described.id}.meta.json` !== name) problems.push(`id "${described.id}" is not the name of the file`);
  if (described.source.edition !== edition)
    problems.push(`source.edition "${described.source.edition}" is not the folder's edition "${edition}"`);
  if (described.transcribed.by === described.checked.by)
    problems.push("transcribed.by and checked.by must not be the same");
  if (described.checked.on < described.transcribed.on) problems.push("checked.on lies before transcribed.on");
  if (!isSame) problems.push(...ownProblems(described as TableDescription));
  if (problems.length > 0) return refused(problems);

  return isSame
    ? { kind: "same", description: described as SameTableDescription }
    : { kind: "own", description: described as TableDescription };
}
