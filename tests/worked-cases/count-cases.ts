/** How many cases there are of each kind, by calculation, and the table that says so. */
import type { CalculationName } from "@landfast/rules";
import type { WorkedCase } from "./worked-case.js";

export interface CaseCounts {
  /** Published examples worked in words. */
  readonly examples: number;
  /** Published cells of tables and rules, read through the calculation. */
  readonly cells: number;
  /** Published answers that the clause does not bear out: not among the two before. */
  readonly disputed: number;
  readonly hand: number;
  readonly regression: number;
}

export function countCases(cases: readonly WorkedCase<CalculationName>[]): CaseCounts {
  const counts = { examples: 0, cells: 0, disputed: 0, hand: 0, regression: 0 };
  for (const worked of cases) {
    if (worked.kind !== "published") counts[worked.kind] += 1;
    else if (worked.printed !== undefined) counts.disputed += 1;
    else counts[worked.form === "example" ? "examples" : "cells"] += 1;
  }
  return counts;
}

const HEADS: readonly (keyof CaseCounts)[] = ["examples", "cells", "disputed", "hand", "regression"];

/** One line a calculation and one for all, columns aligned. */
export function countsTable(rows: readonly (readonly [string, CaseCounts])[]): string {
  const line = (name: string, cells: readonly string[]): string =>
    `${name.padEnd(22)}${cells.map((cell) => cell.padStart(12)).join("")}`;
  const total = Object.fromEntries(
    HEADS.map((head) => [head, rows.reduce((sum, [, counts]) => sum + counts[head], 0)]),
  );
  return [
    line("worked cases", ["published:", ...HEADS.slice(1).map(() => "")]),
    line("", HEADS),
    ...rows.map(([name, counts]) =>
      line(
        name,
        HEADS.map((head) => String(counts[head])),
      ),
    ),
    line(
      "all",
      HEADS.map((head) => String(total[head])),
    ),
  ].join("\n");
}
