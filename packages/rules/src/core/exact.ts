/**
 * Exact arithmetic on printed decimals.
 *
 * Tables print decimals (0.58, 41.74); their products decide limits. In binary floating point 50 x 0.58 is
 * 28.999999999999996, so a limit of 29 would fail by nothing. Numbers are therefore held as fractions of
 * integers until a result is handed out.
 */
export interface Exact {
  readonly numerator: bigint;
  /** Always positive. The fraction need not be in lowest terms; `reduced` puts it there. */
  readonly denominator: bigint;
}

const DECIMAL = /^(-?)(\d+)(?:\.(\d+))?(?:e([+-]?\d{1,3}))?$/i;

/**
 * Reads a decimal as an exact fraction. A number is read through its shortest decimal form, so 0.58 is 58/100.
 * @throws RangeError when the text is not a finite decimal.
 */
export function exactOf(value: number | string): Exact {
  const known = read.get(value);
  if (known !== undefined) return known;
  const exact = readDecimal(value);
  // Printed numbers are few and come again and again; the limit only guards against a flood of odd ones.
  if (read.size < 10_000) read.set(value, exact);
  return exact;
}

const read = new Map<number | string, Exact>();

function readDecimal(value: number | string): Exact {
  const match = DECIMAL.exec(String(value));
  if (match === null) throw new RangeError(`not a finite decimal: ${String(value)}`);
  const [, sign = "", whole = "0", fraction = "", exponentText = "0"] = match;
  const scale = fraction.length - Number(exponentText);
  const digits = BigInt(`${sign}${whole}${fraction}`);
  return scale >= 0
    ? { numerator: digits, denominator: 10n ** BigInt(scale) }
    : { numerator: digits * 10n ** BigInt(-scale), denominator: 1n };
}

/** Product of two exact numbers. */
export function multiply(a: Exact, b: Exact): Exact {
  return { numerator: a.numerator * b.numerator, denominator: a.denominator * b.denominator };
}

/** Quotient of two exact numbers. @throws RangeError on division by zero. */
export function divide(a: Exact, b: Exact): Exact {
  if (b.numerator === 0n) throw new RangeError("division by zero");
  const sign = b.numerator < 0n ? -1n : 1n;
  return { numerator: sign * a.numerator * b.denominator, denominator: sign * a.denominator * b.numerator };
}

/** Sum of two exact numbers. */
export function add(a: Exact, b: Exact): Exact {
  return {
    numerator: a.numerator * b.denominator + b.numerator * a.denominator,
    denominator: a.denominator * b.denominator,
  };
}

/** Difference of two exact numbers. */
export function subtract(a: Exact, b: Exact): Exact {
  return {
    numerator: a.numerator * b.denominator - b.numerator * a.denominator,
    denominator: a.denominator * b.denominator,
  };
}

/** Negative, zero or positive as a is less than, equal to or greater than b. */
export function compareExact(a: Exact, b: Exact): number {
  const left = a.numerator * b.denominator;
  const right = b.numerator * a.denominator;
  return left < right ? -1 : left > right ? 1 : 0;
}

/** The same fraction in lowest terms. */
export function reduced({ numerator, denominator }: Exact): Exact {
  const divisor = greatestCommonDivisor(numerator < 0n ? -numerator : numerator, denominator);
  return { numerator: numerator / divisor, denominator: denominator / divisor };
}

/** The nearest double. Integers up to 2^53 on both sides divide with one correct rounding. */
export function numberOf(value: Exact): number {
  if (isSafe(value.numerator) && isSafe(value.denominator)) return Number(value.numerator) / Number(value.denominator);
  const { numerator, denominator } = reduced(value);
  if (isSafe(numerator) && isSafe(denominator)) return Number(numerator) / Number(denominator);
  const digits = 25n;
  const scaled = (numerator * 10n ** digits) / denominator;
  return Number(`${scaled.toString()}e-${digits.toString()}`);
}

function isSafe(value: bigint): boolean {
  return value <= 9007199254740991n && value >= -9007199254740991n;
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  let [x, y] = [a, b];
  while (y !== 0n) [x, y] = [y, x % y];
  return x === 0n ? 1n : x;
}
