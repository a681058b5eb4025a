import { checkKeys } from "./check-keys.js";
import { conductorAreaMm2 } from "./conductor-area.js";
import { compareDecimals, exactSum, isPlainDecimal } from "./exact-decimal.js";
import type { Fault } from "./fault.js";
import type { Row } from "./read-table.js";
import type { ColumnDescription, TableDescription } from "./table-description.js";

type Comparison = (a: string, b: string) => number;

const holdsNumbers = (description: TableDescription, column: ColumnDescription): boolean =>
  (column.unit ?? description.unit) !== "term";

function checkCell(description: TableDescription, column: ColumnDescription, cell: string): string | undefined {
  if (cell === "")
    return description.blank === undefined ? "is blank, and the meaning of a blank is not declared" : undefined;
  if (cell.trim() !== cell) return "has blanks at its ends";
  if (Object.hasOwn(description.terms ?? {}, cell)) return undefined;
  if (holdsNumbers(description, column))
    return isPlainDecimal(cell) ? undefined : `"${cell}" is neither a plain decimal nor a declared term`;
  if (column.holds === "size")
    return conductorAreaMm2(cell) === undefined
      ? `"${cell}" is neither a known conductor size nor a declared term`
      : undefined;
  if (column.oneOf !== undefined && !column.oneOf.includes(cell))
    return `"${cell}" is not one of ${column.oneOf.join(", ")}`;
  return undefined;
}

/** How two cells compare: numbers by value, sizes by area, anything else (blank, a word) not at all. */
function comparisonOf(description: TableDescription, columns: readonly string[]): Comparison | undefined {
  const described = columns.map((name) => description.columns[name]);
  if (described.every((column) => column !== undefined && holdsNumbers(description, column)))
    return (a, b) => (isPlainDecimal(a) && isPlainDecimal(b) ? compareDecimals(a, b) : 0);
  if (described.every((column) => column?.holds === "size"))
    return (a, b) => {
      const areaA = conductorAreaMm2(a);
      const areaB = conductorAreaMm2(b);
      return areaA === undefined || areaB === undefined ? 0 : areaA - areaB;
    };
  return undefined;
}

function isComparable(description: TableDescription, cell: string): boolean {
  return cell !== "" && !Object.hasOwn(description.terms ?? {}, cell);
}

/**
 * Checks the values of a table against what its sidecar declares.
 *
 * @param file path of the CSV, for the faults
 * @returns every fault found, none when the table may be built
 */
export function checkTable(file: string, description: TableDescription, rows: readonly Row[]): Fault[] {
  const faults = checkKeys(file, description, rows);
  const columns = Object.entries(description.columns);
  const names = columns.map(([name]) => name);
  const cellAt = (row: Row, name: string): string => row.cells[names.indexOf(name)] ?? "";

  for (const row of rows) {
    columns.forEach(([name, column], index) => {
      const message = checkCell(description, column, row.cells[index] ?? "");
      if (message !== undefined) faults.push({ file, row: row.label, column: name, message });
    });
  }

  const { checks } = description;
  if (rows.length !== checks.rows)
    faults.push({ file, message: `has ${rows.length} rows where ${checks.rows} are declared` });

  for (const [name, declared] of Object.entries(checks.columnSums ?? {})) {
    const sum = exactSum(rows.map((row) => cellAt(row, name)).filter(isPlainDecimal));
    if (sum !== exactSum([String(declared)]))
      faults.push({ file, column: name, message: `sums to ${sum} where ${declared} is declared` });
  }

  for (const name of checks.nonDecreasing ?? []) {
    const compare = comparisonOf(description, [name]);
    if (compare === undefined) {
      faults.push({ file, column: name, message: "cannot be checked for order: it holds words" });
      continue;
    }
    let previous: string | undefined;
    for (const row of rows) {
      const cell = cellAt(row, name);
      if (!isComparable(description, cell)) continue;
      if (previous !== undefined && compare(previous, cell) > 0)
        faults.push({ file, row: row.label, column: name, message: `falls to ${cell} after ${previous}` });
      previous = cell;
    }
  }

  for (const chain of checks.ordered ?? []) {
    const compare = comparisonOf(description, chain);
    if (compare === undefined) {
      faults.push({
        file,
        message: `the order of ${chain.join(", ")} cannot be checked: not all numbers or all sizes`,
      });
      continue;
    }
    for (const row of rows) {
      const given = chain.filter((name) => isComparable(description, cellAt(row, name)));
      for (let next = 1; next < given.length; next += 1) {
        const lower = given[next - 1] ?? "";
        const higher = given[next] ?? "";
        if (compare(cellAt(row, lower), cellAt(row, higher)) > 0)
          faults.push({ file, row: row.label, column: higher, message: `lies below column ${lower} of the same row` });
      }
    }
  }

  for (const marked of (description.cells ?? []).flatMap((cell) => cell.rows ?? [])) {
    if (!rows.some((row) => row.label === marked))
      faults.push({ file, row: marked, message: "is marked in the sidecar, but the table has no such row" });
  }
  return faults;
}
