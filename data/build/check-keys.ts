import { conductorAreaMm2 } from "./conductor-area.js";
import { compareDecimals, isPlainDecimal } from "./exact-decimal.js";
import type { Fault } from "./fault.js";
import type { Row } from "./read-table.js";
import type { TableDescription } from "./table-description.js";

type Report = (row: Row, column: string, message: string) => void;

function checkSizes(rows: readonly Row[], report: Report): void {
  let previous = Number.NEGATIVE_INFINITY;
  for (const row of rows) {
    const [size = ""] = row.key;
    const area = conductorAreaMm2(size);
    if (area === undefined) {
      report(row, "size", `"${size}" is not a known conductor size`);
      continue;
    }
    // An equal area is a duplicate key and reported as one.
    if (area < previous) report(row, "size", "stands out of order: rows go by rising area");
    previous = area;
  }
}

function checkSizeRanges(rows: readonly Row[], report: Report): void {
  let previous = Number.NEGATIVE_INFINITY;
  for (const row of rows) {
    const [from = "", to = ""] = row.key;
    const fromArea = conductorAreaMm2(from);
    const toArea = conductorAreaMm2(to);
    if (fromArea === undefined) report(row, "from", `"${from}" is not a known conductor size`);
    if (toArea === undefined) report(row, "to", `"${to}" is not a known conductor size`);
    if (fromArea === undefined || toArea === undefined) continue;
    if (toArea < fromArea) report(row, "to", "is smaller than the size the range starts with");
    if (!(fromArea > previous)) report(row, "from", "overlaps the range above or stands out of order by area");
    previous = Math.max(previous, toArea);
  }
}

function checkIntervals(rows: readonly Row[], openEnds: readonly string[], report: Report): void {
  let reached: string | undefined;
  rows.forEach((row, index) => {
    const [over = "", upTo = ""] = row.key;
    const isFirst = index === 0;
    const isLast = index === rows.length - 1;
    for (const [column, value] of [
      ["over", over],
      ["upTo", upTo],
    ] as const) {
      if (value !== "" && !isPlainDecimal(value)) {
        report(row, column, `"${value}" is not a plain decimal`);
        reached = undefined;
        return;
      }
    }
    if (isFirst && openEnds.includes("over") && over !== "")
      report(row, "over", "the declared open lower end is missing");
    if (isFirst && !openEnds.includes("over") && over === "") report(row, "over", "an open lower end is not declared");
    if (isLast && openEnds.includes("upTo") && upTo !== "")
      report(row, "upTo", "the declared open upper end is missing");
    if (isLast && !openEnds.includes("upTo") && upTo === "") report(row, "upTo", "an open upper end is not declared");
    if (!isFirst && over === "") report(row, "over", "is blank inside the table: an open end belongs to the first row");
    if (!isLast && upTo === "") report(row, "upTo", "is blank inside the table: an open end belongs to the last row");
    if (over !== "" && upTo !== "" && compareDecimals(over, upTo) >= 0)
      report(row, "upTo", "does not lie above the lower end of its row");
    if (!isFirst && over !== "" && reached !== undefined) {
      const step = compareDecimals(over, reached);
      if (step > 0) report(row, "over", `leaves a gap: the row above ends at ${reached}`);
      if (step < 0) report(row, "over", `overlaps the row above, which ends at ${reached}`);
    }
    reached = upTo === "" ? undefined : upTo;
  });
}

function checkTerms(rows: readonly Row[], report: Report): void {
  for (const row of rows) {
    const [key = ""] = row.key;
    if (key === "" || key.trim() !== key) report(row, "key", "must be a word without blanks at its ends");
  }
}

/**
 * Checks the key columns: known sizes in order of area, ranges and intervals that fit together, no key twice.
 *
 * @param file path of the CSV, for the faults
 */
export function checkKeys(file: string, description: TableDescription, rows: readonly Row[]): Fault[] {
  const faults: Fault[] = [];
  const report: Report = (row, column, message) => faults.push({ file, row: row.label, column, message });
  const seen = new Set<string>();
  for (const row of rows) {
    const key = row.key.join("\n");
    if (seen.has(key)) faults.push({ file, row: row.label, message: "duplicate key" });
    seen.add(key);
  }
  switch (description.rowKey.kind) {
    case "size":
      checkSizes(rows, report);
      break;
    case "size-range":
      checkSizeRanges(rows, report);
      break;
    case "interval":
      checkIntervals(rows, description.checks.openEnds ?? [], report);
      break;
    case "term":
      checkTerms(rows, report);
      break;
  }
  return faults;
}
