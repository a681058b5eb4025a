/**
 * Decimal text of exact numbers.
 *
 * Amounts arrive as decimal strings, are worked as exact fractions and leave as decimal strings; binary floating point
 * never sees them. Products and sums of decimals are decimals again, so most results print without any rounding. Where
 * a division or a currency's smallest coin makes rounding necessary, the caller names the way.
 */
import { add, divide, type Exact, exactOf, multiply, reduced, subtract } from "@landfast/rules";

/**
 * half-up: a half goes away from zero (2.5 -> 3, -2.5 -> -3), as invoices are commonly rounded.
 * half-even: a half goes to the even neighbor (2.5 -> 2, 3.5 -> 4), which favors neither side over many lines.
 * up and down: away from zero and toward zero.
 */
export type Rounding = "half-up" | "half-even" | "up" | "down";

export const ZERO: Exact = Object.freeze(exactOf(0));
export const ONE: Exact = Object.freeze(exactOf(1));

/** Sum in lowest terms, so that long sums stay small. */
export function plus(a: Exact, b: Exact): Exact {
  return reduced(add(a, b));
}

/** Difference in lowest terms. */
export function minus(a: Exact, b: Exact): Exact {
  return reduced(subtract(a, b));
}

/** Product in lowest terms. */
export function times(a: Exact, b: Exact): Exact {
  return reduced(multiply(a, b));
}

/** Quotient in lowest terms. @throws RangeError on division by zero. */
export function over(a: Exact, b: Exact): Exact {
  return reduced(divide(a, b));
}

const PLAIN_DECIMAL = /^-?\d{1,15}(?:\.\d{1,12})?$/;

/** True for plain decimal text: "12", "0.045", "-3.10". No exponent, no sign "+", no thousands mark. */
export function isDecimalText(text: string): boolean {
  return PLAIN_DECIMAL.test(text);
}

/**
 * Reads plain decimal text.
 * @throws RangeError when it is anything else: "1e3", "1,50", "" and " 1" are refused, not guessed at.
 */
export function decimalOf(text: string): Exact {
  if (!isDecimalText(text)) throw new RangeError(`not a decimal such as "12.50": ${JSON.stringify(text)}`);
  return exactOf(text);
}

/**
 * Prints an exact number as a decimal, with no more digits than it needs.
 * Worked: 3085/1000 -> "3.085"; 5 -> "5".
 * @throws RangeError when it has no finite decimal form (1/3): such a number must be rounded with a stated rounding.
 */
export function decimalText(value: Exact): string {
  const places = placesOf(reduced(value).denominator);
  if (places === null) throw new RangeError("the number has no finite decimal form; round it");
  return roundedText(value, places, "down");
}

/**
 * Prints an exact number rounded to so many decimal places, all of them written.
 * Worked: 2/3 to 2 places half-up -> "0.67"; 5 to 2 places -> "5.00".
 */
export function roundedText(value: Exact, places: number, rounding: Rounding): string {
  const scaled = roundScaled(value, places, rounding);
  const negative = scaled < 0n;
  const digits = (negative ? -scaled : scaled).toString().padStart(places + 1, "0");
  const whole = digits.slice(0, digits.length - places);
  const fraction = places === 0 ? "" : `.${digits.slice(digits.length - places)}`;
  return `${negative ? "-" : ""}${whole}${fraction}`;
}

/** Rounds to so many decimal places and stays exact. */
export function roundTo(value: Exact, places: number, rounding: Rounding): Exact {
  return exactOf(roundedText(value, places, rounding));
}

/** The least whole number that is not less than the value. Worked: 5/2 -> 3; 3 -> 3. */
export function ceilingOf(value: Exact): number {
  const { numerator, denominator } = value;
  const down = numerator / denominator;
  return Number(numerator > 0n && down * denominator !== numerator ? down + 1n : down);
}

function roundScaled(value: Exact, places: number, rounding: Rounding): bigint {
  const scale = 10n ** BigInt(places);
  const negative = value.numerator < 0n;
  const numerator = (negative ? -value.numerator : value.numerator) * scale;
  const whole = numerator / value.denominator;
  const rest = numerator - whole * value.denominator;
  const magnitude = whole + (raises(rest * 2n, value.denominator, whole, rounding) ? 1n : 0n);
  return negative ? -magnitude : magnitude;
}

function raises(twiceRest: bigint, denominator: bigint, whole: bigint, rounding: Rounding): boolean {
  if (twiceRest === 0n || rounding === "down") return false;
  if (rounding === "up" || twiceRest > denominator) return true;
  if (twiceRest < denominator) return false;
  return rounding === "half-up" || whole % 2n === 1n;
}

/** Decimal places that a fraction in lowest terms needs, or null when no number of them is enough. */
function placesOf(denominator: bigint): number | null {
  let rest = denominator;
  let twos = 0;
  let fives = 0;
  for (; rest % 2n === 0n; rest /= 2n) twos += 1;
  for (; rest % 5n === 0n; rest /= 5n) fives += 1;
  return rest === 1n ? Math.max(twos, fives) : null;
}
