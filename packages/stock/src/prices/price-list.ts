import type { ItemPrice, PriceUnit, QuantityBreak } from "./item-price.js";

/** One line of a price list, before its list's currency is put to it. */
export interface PriceLine {
  readonly partNumber: string;
  readonly unit: PriceUnit;
  readonly breaks: readonly QuantityBreak[];
}

/** Prices as a seller quotes them. Dates are calendar days, "2026-03-31", both ends included. */
export interface PriceList {
  readonly id: string;
  readonly currency: string;
  readonly validFrom?: string;
  readonly validTo?: string;
  readonly lines: readonly PriceLine[];
}

/** A price, or in one sentence why there is none. A missing price is never a price of zero. */
export type PriceFound = { readonly price: ItemPrice } | { readonly price: null; readonly because: string };

const DAY = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/;

/**
 * The price of a part on a day.
 * Worked: a list valid from 2026-01-01 to 2026-03-31 answers on 2026-03-31 and not on 2026-04-01.
 * @throws RangeError for a day that is not written as "2026-03-31".
 */
export function priceOn(list: PriceList, partNumber: string, day: string): PriceFound {
  for (const one of [day, list.validFrom, list.validTo])
    if (one !== undefined && !DAY.test(one)) throw new RangeError(`not a day such as "2026-03-31": ${one}`);
  if (list.validFrom !== undefined && day < list.validFrom)
    return { price: null, because: `price list ${list.id} is valid from ${list.validFrom} on, not on ${day}` };
  if (list.validTo !== undefined && day > list.validTo)
    return { price: null, because: `price list ${list.id} was valid until ${list.validTo}, not on ${day}` };
  const lines = list.lines.filter((line) => line.partNumber === partNumber);
  const [line, second] = lines;
  if (line === undefined) return { price: null, because: `price list ${list.id} has no line for ${partNumber}` };
  if (second !== undefined)
    return { price: null, because: `price list ${list.id} has more than one line for ${partNumber}` };
  return { price: { unit: line.unit, currency: list.currency, breaks: line.breaks } };
}
