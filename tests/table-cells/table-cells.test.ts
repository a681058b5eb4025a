import {
  type Cell,
  cellAt,
  cellForSize,
  cellInInterval,
  EDITIONS,
  isRefused,
  openTable,
  PUBLISHED_TABLES,
  type Table,
  type TableData,
  type TableRefusal,
} from "@landfast/rules";
import { describe, expect, test } from "vitest";
import { nameOf, rowNamesOf, sameValue, secondEntryOf } from "./second-entry.js";
import { SETTLED, WITHOUT_SECOND_ENTRY } from "./settled.js";

/** Every reading that must find the cell: at a size or a word, at both ends of a range, at the ends and inside an interval. */
function readings(table: Table, key: readonly string[], column: string): readonly (Cell | TableRefusal)[] {
  const [first = "", second = ""] = key;
  switch (table.data.rowKey.kind) {
    case "size":
    case "term":
      return [cellAt(table, first, column)];
    case "size-range":
      return [cellForSize(table, first, column), cellForSize(table, second, column)];
    case "interval": {
      const low = first === "" ? 0 : Number(first);
      const high = second === "" ? low * 2 + 1 : Number(second);
      return [high, (low + high) / 2, low + (high - low) / 1e6].map((value) => cellInInterval(table, value, column));
    }
  }
}

const seen = { cells: 0, printed: 0, blank: 0, held: 0, settled: 0 };
const alone = new Map<string, number>();

function faultsOf(data: TableData): string[] {
  const table = openTable(data);
  const expected = secondEntryOf(data);
  const faults: string[] = [];
  for (const row of data.rows)
    for (const column of data.columns) {
      const at = `${table.id}|${nameOf(row.key)}|${column.id}`;
      seen.cells += 1;
      const [reading, ...others] = readings(table, row.key, column.id);
      if (reading === undefined) throw new Error(`${at} was not read`);
      const read = isRefused(reading) ? "" : reading.ref.printed;
      if (isRefused(reading) && reading.refusal !== "BLANK_CELL") faults.push(`${at}: ${reading.detail}`);
      if (others.some((other) => other !== reading)) faults.push(`${at}: its ends are read from another row`);
      if (!isRefused(reading) && !sameValue(String(reading.value), read)) faults.push(`${at}: worth ${reading.value}`);
      if (read === "") seen.blank += 1;
      else seen.printed += 1;
      const second = expected?.(row.key, column.id);
      const settled = SETTLED.get(at);
      if (second === undefined) alone.set(data.id, (alone.get(data.id) ?? 0) + 1);
      else if (settled !== undefined) {
        seen.settled += 1;
        if (read !== settled.entered || second !== settled.second) faults.push(`${at}: settled otherwise`);
      } else {
        seen.held += 1;
        if (!sameValue(read, second)) faults.push(`${at}: reads "${read}", the second entry says "${second}"`);
      }
    }
  return faults;
}

// published: the second entry of each table, whose sources data/published and DIFFERENCES.md name
describe("each cell, read by the library, says what the second entry says", () => {
  test.each(
    PUBLISHED_TABLES.map((data) => [`${data.source.standard}-${data.source.edition}/${data.id}`, data] as const),
  )("%s", (_name, data) => {
    expect(faultsOf(data)).toEqual([]);
    const rows = new Set(data.rows.map(({ key }) => nameOf(key)));
    expect(rowNamesOf(data).filter((name) => !rows.has(name))).toEqual([]);
  });

  test("no cell of any edition is left unread, and those without a second entry are known", () => {
    const cells = PUBLISHED_TABLES.reduce((sum, { rows, columns }) => sum + rows.length * columns.length, 0);
    expect(seen.cells).toBe(cells);
    expect(seen.printed + seen.blank).toBe(cells);
    const { held, settled, printed, blank } = seen;
    const lone = [...alone.values()].reduce((sum, count) => sum + count, 0);
    expect(held + settled + lone).toBe(cells);
    console.log(
      `${cells} cells of ${PUBLISHED_TABLES.length} tables read: ${printed} printed, ${blank} blank; ${held} as in the second entry, ${settled} settled, ${lone} without one`,
    );
    const editions = (id: string): number => PUBLISHED_TABLES.filter((data) => data.id === id).length;
    expect([...alone].sort()).toEqual(
      Object.entries(WITHOUT_SECOND_ENTRY)
        .map(([id, { cells: each }]) => [id, each * editions(id)])
        .sort(),
    );
  });
});

describe("each edition reads its own tables", () => {
  /** Tables that are held and that no rule or calculation reads. */
  const HELD_ONLY = ["ambient-correction-40c", "terminal-torque-iec"];

  test.each(EDITIONS.map((edition) => [edition.edition, edition] as const))("%s", (name, edition) => {
    const bound = new Set<string>();
    const all: readonly [string, Table][] = Object.entries(edition.tables);
    const { table: dwelling } = edition.dwellingService;
    for (const [binding, table] of dwelling === null ? all : [...all, ["dwellingService", dwelling] as const]) {
      const { data } = table;
      expect(PUBLISHED_TABLES, binding).toContain(data);
      expect(data.id.replaceAll(/-(.)/g, (_all, letter: string) => letter.toUpperCase())).toBe(binding);
      if (data.source.standard === "NFPA 70") expect(data.source.edition, binding).toBe(name);
      bound.add(data.id);
    }
    const own = PUBLISHED_TABLES.filter(({ source }) => source.standard !== "NFPA 70" || source.edition === name).map(
      ({ id }) => id,
    );
    expect(own.filter((id) => !bound.has(id)).sort()).toEqual(HELD_ONLY);
  });
});
