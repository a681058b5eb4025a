/** Cells, thresholds and clauses that differ between two editions, one line each. */
import type { Citation, Edition, Table } from "@landfast/rules";
import type { EditionPair } from "./edition-pairs.js";

export function differingCells({ from, to }: EditionPair): readonly string[] {
  const before = cellsOf(from);
  const after = cellsOf(to);
  const lines: string[] = [];
  for (const at of new Set([...before.keys(), ...after.keys()])) {
    const [old, now] = [before.get(at), after.get(at)];
    if (old !== now) lines.push(`${at}: ${shown(old)} -> ${shown(now)}`);
  }
  return lines;
}

/** What the edition says beside tables and clauses: "boxFill.furtherGroundAllowance: 0 -> 0.25". */
export function differingThresholds({ from, to }: EditionPair): readonly string[] {
  const before = leavesOf(from);
  const after = leavesOf(to);
  return [...new Set([...before.keys(), ...after.keys()])]
    .filter((path) => before.get(path) !== after.get(path))
    .map((path) => `${path}: ${shown(before.get(path))} -> ${shown(after.get(path))}`);
}

export function differingClauses({ from, to }: EditionPair): readonly string[] {
  const after: Readonly<Record<string, { readonly locator: string }>> = { ...to.clauses };
  return Object.entries(from.clauses)
    .filter(([name, { locator }]: [string, { locator: string }]) => after[name]?.locator !== locator)
    .map(
      ([name, { locator }]: [string, { locator: string }]) => `${name}: ${locator} -> ${shown(after[name]?.locator)}`,
    );
}

/** All that an edition says beside the cells of its tables: which tables it binds, its thresholds, its clauses. */
export function provisionsOf(edition: Edition): readonly string[] {
  return [
    ...Object.entries<Table>({ ...edition.tables }).map(
      ([
        name,
        {
          data: { id, source },
        },
      ]) => `table ${name}: ${id}, ${source.standard}-${source.edition} ${source.locator}`,
    ),
    ...[...leavesOf(edition)].map(([path, value]) => `${path}: ${value}`),
    ...Object.entries(edition.clauses).map(
      ([name, { standard, edition: year, locator }]: [string, Citation]) =>
        `clause ${name}: ${standard}-${year} ${locator}`,
    ),
  ];
}

function shown(value: string | undefined): string {
  return value === undefined ? "not there" : value === "" ? "blank" : value;
}

function cellsOf(edition: Edition): ReadonlyMap<string, string> {
  const tables = Object.values<Table>({ ...edition.tables });
  if (edition.dwellingService.table !== null) tables.push(edition.dwellingService.table);
  const cells = new Map<string, string>();
  for (const { data } of tables)
    for (const { key, cells: printed } of data.rows)
      data.columns.forEach(({ id }, index) => {
        cells.set(`${data.id}, ${key.join(" to ")}, ${id}`, printed[index] ?? "");
      });
  return cells;
}

function leavesOf(edition: Edition): ReadonlyMap<string, string> {
  const leaves = new Map<string, string>();
  const walk = (path: string, value: unknown): void => {
    if (typeof value === "object" && value !== null && !Array.isArray(value)) {
      if ("data" in value && "rows" in value) leaves.set(path, "a table");
      else for (const [name, inner] of Object.entries(value)) walk(path === "" ? name : `${path}.${name}`, inner);
    } else leaves.set(path, JSON.stringify(value));
  };
  const { tables: _tables, clauses: _clauses, ruleSet: _ruleSet, edition: _edition, ...rest } = edition;
  walk("", rest);
  return leaves;
}
