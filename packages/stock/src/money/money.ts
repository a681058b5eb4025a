import type { Exact } from "@landfast/rules";
import { currencyPlaces, isCurrency } from "./currency.js";
import { decimalOf, decimalText, plus, type Rounding, roundedText, times, ZERO } from "./decimal.js";

/** An amount of money: decimal text and an ISO 4217 code. */
export interface Money {
  readonly amount: string;
  readonly currency: string;
}

/** Amounts of unlike currencies met where only one can be meant. They are never converted. */
export class UnlikeCurrencies extends RangeError {
  override readonly name: string = "UnlikeCurrencies";
  readonly currencies: readonly string[];

  constructor(currencies: readonly string[]) {
    super(
      `amounts in ${currencies.join(" and ")} cannot be added or compared; give every price in one currency, ` +
        "converted at a rate of your choosing",
    );
    this.currencies = currencies;
  }
}

/** The one currency of all amounts, or null when there are none. @throws UnlikeCurrencies, or RangeError for an unknown code. */
export function commonCurrency(currencies: Iterable<string>): string | null {
  const seen = [...new Set(currencies)].sort();
  for (const code of seen) if (!isCurrency(code)) currencyPlaces(code);
  if (seen.length > 1) throw new UnlikeCurrencies(seen);
  return seen[0] ?? null;
}

/** Sum of amounts of one currency, exactly. @throws UnlikeCurrencies. */
export function sumMoney(amounts: readonly Money[], currency: string): Money {
  commonCurrency([currency, ...amounts.map((one) => one.currency)]);
  return moneyOf(
    amounts.reduce((sum, { amount }) => plus(sum, decimalOf(amount)), ZERO),
    currency,
  );
}

/** So many times an amount, exactly. Worked: 0.125 USD x 40 = 5 USD. */
export function timesMoney(amount: Money, factor: Exact): Money {
  return moneyOf(times(decimalOf(amount.amount), factor), amount.currency);
}

/** An exact number as money, unrounded. @throws RangeError when it has no finite decimal form, or for an unknown code. */
export function moneyOf(value: Exact, currency: string): Money {
  currencyPlaces(currency);
  return { amount: decimalText(value), currency };
}

/**
 * An exact number as money, rounded to the currency's smallest unit.
 * Worked: 3.085 USD half-up -> 3.09; half-even -> 3.08; 3.5 JPY half-even -> 4.
 */
export function roundedMoney(value: Exact, currency: string, rounding: Rounding): Money {
  return { amount: roundedText(value, currencyPlaces(currency), rounding), currency };
}
