import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { CalculationSheet, isClosed } from "../../core/calculation-sheet.js";
import type { Step } from "../../core/finding.js";
import { cellAt, isRefused, type Table } from "../../core/table.js";
import { UnusableFact } from "../../core/unusable-fact.js";

const NAME = "temperature-rise";
const UNIT = "Cel";

/** How much warmer the part is than something else, in degrees Celsius; below zero where it is cooler. */
export type TemperatureComparison =
  /** Than a part of the same kind. They must carry a like load. */
  | { readonly with: "like-part"; readonly temperatureRiseC: number; readonly likeLoad?: boolean }
  /** Than the air around it. */
  | { readonly with: "air"; readonly temperatureRiseC: number };

export interface TemperatureRiseQuestion {
  /** One or more. The harshest grade that any of them reaches counts. */
  readonly comparisons: readonly TemperatureComparison[];
}

/** A grade that a comparison reached: its place in the table, mildest first, or none. */
interface Reached {
  readonly rank: number;
  readonly step: Step;
}

const NO_GRADE = "no grade";
const COLUMNS = {
  "like-part": { from: "likeFrom", to: "likeTo", above: "likeAbove", than: "like parts under like load" },
  air: { from: "airFrom", to: "airTo", above: "airAbove", than: "the air" },
} as const;

/**
 * What does a joint call for that runs warmer than its like, or than the air?
 *
 * NETA ATS Table 100.18 (and the same table of NETA MTS), in our words: above like parts under like load 1 to 3 C is a possible
 * deficiency, 4 to 15 C a probable one, more than 15 C a major one; above the air 1 to 10 C, 11 to 20 C, 21 to 40 C (to be
 * monitored until it is put right) and more than 40 C. Degrees Celsius of difference.
 * Worked: 12 C above A and C at a like load: a probable deficiency, to be repaired as time permits.
 * Silent: what lies between two grades, printed in whole degrees, counts to the harsher one, and what lies between none and
 * the first to the first; of two comparisons the harsher grade counts. Parts under unlike loads are not comparable.
 */
export const temperatureRise: Calculation<TemperatureRiseQuestion> = {
  name: NAME,
  title: "What the temperature rise of a joint calls for",
  clauses: ["temperatureRise"],
  needs: ["question/comparisons"],
  cannotSee: "emissivity, wind and covers, how far the load was below full load, and limits that the maker gives",
  answer({ comparisons }, basis, edition) {
    const sheet = new CalculationSheet(NAME, basis);
    const table = edition.tables.temperatureRise;
    if (comparisons.length === 0)
      throw new UnusableFact("question/comparisons", "must have one comparison or more", "a list of one or more");
    const reached: Reached[] = [];
    for (const [index, comparison] of comparisons.entries()) {
      const grade = gradeOf(sheet, table, comparison, `question/comparisons/${String(index)}`);
      if (isClosed(grade)) return grade;
      reached.push(grade);
    }
    return answerOf(sheet, table, comparisons, reached);
  },
};

function gradeOf(
  sheet: CalculationSheet,
  table: Table,
  comparison: TemperatureComparison,
  path: string,
): Reached | CalculationFinding {
  const { than } = COLUMNS[comparison.with];
  const { temperatureRiseC } = comparison;
  if (!Number.isFinite(temperatureRiseC))
    throw new UnusableFact(
      `${path}/temperatureRiseC`,
      `must be a number of degrees, not ${String(temperatureRiseC)}`,
      "a number of degrees Celsius",
    );
  const rise = sheet.given(`rise above ${than}`, temperatureRiseC, `${path}/temperatureRiseC`, UNIT);
  const grounds = [rise];
  if (comparison.with === "like-part") {
    if (comparison.likeLoad === undefined)
      return sheet.ask(
        `${path}/likeLoad`,
        "Whether the parts carried a like load is not given, and only then can their temperatures be compared.",
        table.cite,
      );
    const alike = sheet.given("the parts carry a like load", comparison.likeLoad, `${path}/likeLoad`);
    if (!comparison.likeLoad)
      return sheet.refuse(
        "NOT_COVERED",
        `The loads were not alike (${path}/likeLoad), so these parts cannot be compared; measure them under like load, or compare the part with the air.`,
        table.cite,
      );
    grounds.push(alike);
  }
  return reachedBy(sheet, table, COLUMNS[comparison.with], rise, grounds);
}

/** Goes through the grades, the mildest first, to the one that the rise does not go beyond. */
function reachedBy(
  sheet: CalculationSheet,
  table: Table,
  { from, to, above, than }: (typeof COLUMNS)[keyof typeof COLUMNS],
  rise: Step,
  grounds: readonly Step[],
): Reached {
  const none = sheet.state("no difference", 0, table.cite, UNIT);
  if (!sheet.compare(`warmer than ${than}`, rise, ">", none, table.cite))
    return { rank: -1, step: concluded(sheet, table, than, NO_GRADE, [...grounds, sheet.last], "it is not warmer") };
  for (const [rank, { label }] of table.rows.entries()) {
    const upTo = sheet.readIfPrinted(`${label}: up to`, table, label, to, []);
    const beyond = upTo === undefined ? sheet.readIfPrinted(`${label}: above`, table, label, above, []) : undefined;
    const end = upTo ?? beyond;
    // This comparison has no such grade.
    if (end === undefined) continue;
    const within = sheet.compare(
      `the rise is that of ${label}`,
      rise,
      upTo === undefined ? ">" : "<=",
      end,
      table.cite,
    );
    if (!within) continue;
    const used = [...grounds, sheet.last];
    const start = sheet.readIfPrinted(`${label}: from`, table, label, from, []);
    if (start !== undefined && !sheet.compare(`the rise reaches ${label}`, rise, ">=", start, table.cite)) {
      const harsher = sheet.assume(
        `grade above ${than}`,
        label,
        "the grades are printed in whole degrees, and what lies below the first of a grade and above the grade before counts to the harsher",
        table.cite,
        undefined,
        [...used, sheet.last],
      );
      return { rank, step: harsher };
    }
    return { rank, step: concluded(sheet, table, than, label, used, "the rise lies within the grade") };
  }
  throw new Error(`${table.id} has no end above ${String(rise.value)}`);
}

function concluded(
  sheet: CalculationSheet,
  table: Table,
  than: string,
  grade: string,
  uses: readonly Step[],
  because: string,
): Step {
  return sheet.conclude(`grade above ${than}`, grade, uses, because, table.cite);
}

function answerOf(
  sheet: CalculationSheet,
  table: Table,
  comparisons: readonly TemperatureComparison[],
  reached: readonly Reached[],
): CalculationFinding {
  const { rank } = reached.reduce((harshest, one) => (one.rank > harshest.rank ? one : harshest));
  const row = table.rows[rank];
  const action =
    row === undefined
      ? sheet.conclude("what it calls for", "nothing", [], "no comparison reached a grade", table.cite)
      : actionOf(sheet, table, row.label, reached);
  const main = sheet.conclude(
    "grade",
    row?.label ?? NO_GRADE,
    reached.map(({ step }) => step),
    reached.length === 1 ? "that of the comparison" : "the harshest of the comparisons",
    table.cite,
  );
  const rises = comparisons.map(({ with: other, temperatureRiseC: rise }) =>
    rise < 0 ? `${String(-rise)} C below ${COLUMNS[other].than}` : `${String(rise)} C above ${COLUMNS[other].than}`,
  );
  return sheet.finish({
    sentence: `${rises.join(", ")}: ${row === undefined ? "no grade is reached" : `${row.label}; ${String(action.value)}`}.`,
    cite: table.cite,
    results: [
      { name: "grade", step: main },
      { name: "what it calls for", step: action },
      ...reached.map(({ step }, index) => ({ name: `grade by comparison ${String(index + 1)}`, step })),
    ],
    advice: [
      "A rise grows about with the square of the load: what is measured below full load is worse at full load.",
      ...(row === undefined
        ? []
        : ["A set screw that ran hot is not turned again: cut back, remake the joint and tighten it once."]),
    ],
  });
}

function actionOf(sheet: CalculationSheet, table: Table, grade: string, reached: readonly Reached[]): Step {
  const cell = cellAt(table, grade, "action");
  if (isRefused(cell)) throw new Error(`${table.id} names no action for ${grade}`);
  return sheet.read(
    "what it calls for",
    cell,
    reached.map(({ step }) => step),
  );
}
