import { add, divide, type Exact, exactOf } from "../../core/exact.js";

const FORM = /^(?:(\d)(?:-([1-9])\/([248]))?|([1-9])\/([248]))$/;

/** A trade size as inches and as the arithmetic that shows it. */
export interface TradeSize {
  readonly inches: Exact;
  readonly shown: string;
}

/** Reads "3/4", "2", "2-1/2". @throws RangeError for anything else. */
export function tradeSizeOf(text: string): TradeSize {
  const match = FORM.exec(text);
  if (match === null || text === "0")
    throw new RangeError(`"${text}" is not a trade size; accepted is "3/4", "2" or "2-1/2"`);
  const [, whole, over, under, numerator, denominator] = match;
  if (whole === undefined)
    return {
      inches: divide(exactOf(numerator ?? ""), exactOf(denominator ?? "")),
      shown: `${numerator ?? ""} / ${denominator ?? ""}`,
    };
  if (over === undefined || under === undefined) return { inches: exactOf(whole), shown: whole };
  return { inches: add(exactOf(whole), divide(exactOf(over), exactOf(under))), shown: `${whole} + ${over} / ${under}` };
}
