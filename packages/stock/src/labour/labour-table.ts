import { type ConductorSize, type ConnectorFamily, compareSizes, sizeOf } from "@landfast/rules";
import { UnusableProblem } from "../problem/check-problem.js";

/**
 * One line of a user's own labor table: hours for one joint of a family, within a band of sizes, under a condition of
 * the user's naming. No table is built in: published units are under copyright and differ by firm.
 */
export interface LabourLine {
  readonly family: ConnectorFamily;
  /** Both ends included; absent: no limit at that end. */
  readonly from?: string;
  readonly to?: string;
  /** A line with a condition is for joints of that condition only; one without for joints that name none. */
  readonly condition?: string;
  /** Electrician-hours for one joint. */
  readonly hours: number;
}

/** Hours for one joint, or in one sentence why the table gives none. */
export type TableHours =
  | { readonly hours: number; readonly because: null }
  | { readonly hours: null; readonly because: string };

/**
 * Hours for one joint by a table: the one line whose family, band and condition fit. Where none fits, or two do, the
 * hours are not known: nothing is taken from a neighboring band.
 * Worked: lines 14 AWG to 8 AWG 0.1 h and 6 AWG to 1 AWG 0.25 h: 4 AWG has 0.25 h, 1/0 AWG has none.
 * @param size the largest conductor in the joint, "4/0 AWG".
 * @throws RangeError for a size that cannot be read.
 */
export function hoursByTable(
  table: readonly LabourLine[],
  family: ConnectorFamily,
  size: string,
  condition?: string,
): TableHours {
  const conductor = sizeOf(size);
  const under = condition === undefined ? "" : `, ${condition}`;
  if (table.length === 0) return { hours: null, because: "the labor table is empty" };
  const fitting = table.filter(
    (line) => line.family === family && line.condition === condition && isWithin(conductor, line),
  );
  const [line, second] = fitting;
  if (line === undefined) return { hours: null, because: `the labor table has no line for ${family}, ${size}${under}` };
  if (second !== undefined)
    return { hours: null, because: `the labor table has more than one line for ${family}, ${size}${under}` };
  return { hours: line.hours, because: null };
}

/** @throws UnusableProblem with every fault of the table. */
export function refuseFaultyTable(table: readonly LabourLine[]): void {
  const faults = table.flatMap(({ family, from, to, hours }) => [
    ...(Number.isFinite(hours) && hours >= 0 ? [] : [`labor table, ${family}: hours is a number, not below 0`]),
    ...(from !== undefined && to !== undefined && compareSizes(sizeOf(from), sizeOf(to)) > 0
      ? [`labor table, ${family}: ${from} is larger than ${to}`]
      : []),
  ]);
  if (faults.length > 0) throw new UnusableProblem(faults);
}

function isWithin(size: ConductorSize, { from, to }: LabourLine): boolean {
  return (
    (from === undefined || compareSizes(sizeOf(from), size) <= 0) &&
    (to === undefined || compareSizes(size, sizeOf(to)) <= 0)
  );
}
