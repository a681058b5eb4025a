/**
 * Is every number that decides asked on both sides? Constants and compared numbers of the source, the numbers, sizes and
 * dates in which editions differ, and the bounds of the tables whose rows are ranges.
 */
import { EDITIONS, type Edition, type Table } from "@landfast/rules";
import { beforeAll, describe, expect, test } from "vitest";
import { ALL_THRESHOLDS } from "./all-thresholds.js";
import { EXEMPT_NUMBERS } from "./exempt-numbers.js";
import { sourceNumbers } from "./source-numbers.js";

const asked = new Set(ALL_THRESHOLDS.flatMap(({ where }) => where));

/** Bounds of tables that have no second entry to take the answers from. */
const TABLES_WITHOUT: Readonly<Record<string, string>> = {
  "fine-strands": "of one entry only; the classes it names are asked by the tests of the strand count",
};
/** Bounds that cannot be asked on both sides. */
const BOUNDS_WITHOUT: readonly (readonly [bound: RegExp, because: string])[] = [
  [/^table conduit-fill 1$/, "no raceway holds less than one conductor"],
  [/ 2000 kcmil$/, "no standard size is larger"],
];

describe("the source", () => {
  let numbers: ReadonlySet<string> = new Set();
  beforeAll(() => {
    numbers = sourceNumbers();
  }, 120_000);

  test("every number that decides is asked on both sides or exempt", () => {
    const silent = [...numbers].filter(
      (number) => !asked.has(number) && !EXEMPT_NUMBERS.some(({ like }) => like.test(number)),
    );
    expect(silent).toEqual([]);
  });

  test("no threshold is for a number that is gone, and no exemption for none", () => {
    const ofSource = [...asked].filter((where) => !/^(edition|table) /.test(where));
    expect(ofSource.filter((where) => !numbers.has(where))).toEqual([]);
    const needed = [...numbers].filter((number) => !asked.has(number));
    expect(EXEMPT_NUMBERS.filter(({ like }) => !needed.some((number) => like.test(number)))).toEqual([]);
  });
});

/** "pipeBondingCap.copper" of everything in an edition that is no table, clause or name. */
function leavesOf(value: unknown, path: string): readonly string[] {
  if (typeof value === "object" && value !== null)
    return Object.entries(value).flatMap(([key, inner]) => leavesOf(inner, `${path}.${key}`));
  const decides =
    typeof value === "number" || (typeof value === "string" && /^\d[\d/]* (AWG|kcmil)$|^\d{4}-/.test(value));
  return decides ? [path.slice(1)] : [];
}

describe.each(EDITIONS.map((edition) => [edition.edition, edition] as const))(
  "edition %s",
  (name, edition: Edition) => {
    test("every number, size and date of its own is asked on both sides", () => {
      const { tables: _, clauses: __, edition: ___, ruleSet: ____, dwellingService: _____, ...own } = edition;
      const leaves = leavesOf(own, "").map((leaf) => `edition ${name} ${leaf}`);
      expect(leaves.filter((leaf) => !asked.has(leaf))).toEqual([]);
      const stale = [...asked].filter((where) => where.startsWith(`edition ${name} `) && !leaves.includes(where));
      expect(stale).toEqual([]);
    });

    test("every bound of its tables is asked on both sides", () => {
      const silent = Object.values<Table>({ ...edition.tables }).flatMap(({ data }) => {
        if (data.rowKey.kind !== "interval" && data.rowKey.kind !== "size-range") return [];
        if (TABLES_WITHOUT[data.id] !== undefined) return [];
        const ends = data.rows.map(({ key }) => key[1] ?? "").filter((end) => end !== "");
        return ends
          .map((end) => `table ${data.id} ${end}`)
          .filter((bound) => !asked.has(bound) && !BOUNDS_WITHOUT.some(([like]) => like.test(bound)));
      });
      expect(silent).toEqual([]);
    });
  },
);
