import { type ConductorSize, type ConnectorFamily, compareSizes, exactOf, sizeOf } from "@landfast/rules";
import { decimalOf, decimalText, over } from "../money/decimal.js";
import type { PriceUnit } from "../prices/item-price.js";

/**
 * One line of a user's own labor table: hours for one part number, or for a family within a band of sizes, under a
 * condition of the user's naming. No table is built in: published units are under copyright and differ by firm.
 */
export type LabourLine = LabourFor & {
  /** A line with a condition is for joints of that condition only; one without for joints that name none. */
  readonly condition?: string;
  /** Decimal electrician-hours for as many as `unit` says. */
  readonly hours: string;
  readonly unit: PriceUnit;
};

type LabourFor =
  | { readonly partNumber: string }
  /** Both ends of the band included; absent: no limit at that end. */
  | { readonly family: ConnectorFamily; readonly from?: string; readonly to?: string };

/** The joint that hours are sought for. */
export interface LabourSought {
  readonly partNumber: string;
  readonly family: ConnectorFamily;
  /** The largest conductor in the joint, "4/0 AWG". */
  readonly size: string;
  readonly condition?: string;
}

/** Hours for one joint, or in one sentence why the table gives none. */
export type TableHours =
  | { readonly hours: number; readonly because: null }
  | { readonly hours: null; readonly because: string };

/**
 * Hours for one joint by a table: the one line for its part number, else the one line whose family, band and condition
 * fit. Where none fits, or two do, the hours are not known: nothing is taken from a neighboring band, and a band in AWG
 * says nothing of a metric conductor.
 * Worked: lines 14 AWG to 8 AWG 10 h per 100 and 6 AWG to 1 AWG 0.25 h each: 10 AWG has 0.1 h, 4 AWG 0.25 h, 1/0 AWG none.
 * @throws RangeError for a size or hours that cannot be read.
 */
export function hoursByTable(
  table: readonly LabourLine[],
  { partNumber, family, size, condition }: LabourSought,
): TableHours {
  const conductor = sizeOf(size);
  if (table.length === 0) return { hours: null, because: "the labor table is empty" };
  const under = table.filter((line) => line.condition === condition);
  const ofPart = under.filter((line) => "partNumber" in line && line.partNumber === partNumber);
  const fitting =
    ofPart.length > 0
      ? ofPart
      : under.filter((line) => "family" in line && line.family === family && isWithin(conductor, line));
  const [line, second] = fitting;
  const sought = `${partNumber}, ${family}, ${size}${condition === undefined ? "" : `, ${condition}`}`;
  if (line === undefined) return { hours: null, because: `the labor table has no line for ${sought}` };
  if (second !== undefined) return { hours: null, because: `the labor table has more than one line for ${sought}` };
  return { hours: Number(decimalText(over(decimalOf(line.hours), exactOf(PER[line.unit])))), because: null };
}

const PER: Readonly<Record<PriceUnit, number>> = { each: 1, "per-100": 100, "per-1000": 1000 };

function isWithin(size: ConductorSize, { from, to }: { readonly from?: string; readonly to?: string }): boolean {
  return [from, to].every((end, at) => {
    if (end === undefined) return true;
    const limit = sizeOf(end);
    return limit.series === size.series && (at === 0 ? compareSizes(limit, size) <= 0 : compareSizes(size, limit) <= 0);
  });
}
