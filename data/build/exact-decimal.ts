// Column sums are compared exactly: 0.1 + 0.2 must be 0.3 here.

const PLAIN_DECIMAL = /^-?(0|[1-9][0-9]*)(\.[0-9]+)?$/;

/** Whether a cell is a plain decimal as printed: no exponent, no thousands separator, no sign but a minus. */
export function isPlainDecimal(text: string): boolean {
  return PLAIN_DECIMAL.test(text);
}

function placesOf(text: string): number {
  const point = text.indexOf(".");
  return point < 0 ? 0 : text.length - point - 1;
}

function scaled(text: string, places: number): bigint {
  return BigInt(text.replace(".", "") + "0".repeat(places - placesOf(text)));
}

/**
 * Exact sum of plain decimals.
 *
 * @param texts plain decimals; an empty list sums to "0"
 * @returns the sum as a plain decimal without trailing zeros
 */
export function exactSum(texts: readonly string[]): string {
  const places = Math.max(0, ...texts.map(placesOf));
  const total = texts.reduce((sum, text) => sum + scaled(text, places), 0n);
  const digits = (total < 0n ? -total : total).toString().padStart(places + 1, "0");
  const whole = digits.slice(0, digits.length - places);
  const fraction = digits.slice(digits.length - places).replace(/0+$/, "");
  return `${total < 0n ? "-" : ""}${whole}${fraction === "" ? "" : `.${fraction}`}`;
}

/** Compares two plain decimals exactly: negative, zero or positive like a sort function. */
export function compareDecimals(a: string, b: string): number {
  const places = Math.max(placesOf(a), placesOf(b));
  const difference = scaled(a, places) - scaled(b, places);
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}
