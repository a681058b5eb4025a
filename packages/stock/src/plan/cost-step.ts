import { type Exact, numberOf } from "@landfast/rules";

/**
 * The greatest amount that divides every cost: sums of whole multiples of them differ by at least this much, or not at
 * all. 0 when there is no cost above zero.
 * Worked: costs 0.25, 1.5 and 4 -> 0.25; two plans differ by 0.25 at least.
 */
export function smallestStep(costs: readonly Exact[]): number {
  let numerator = 0n;
  let denominator = 1n;
  for (const cost of costs) {
    if (cost.numerator === 0n) continue;
    // gcd(a/b, c/d) = gcd(a x d, c x b) / (b x d), reduced.
    const top = greatestCommonDivisor(numerator * cost.denominator, cost.numerator * denominator);
    const bottom = denominator * cost.denominator;
    const shared = greatestCommonDivisor(top, bottom);
    numerator = top / shared;
    denominator = bottom / shared;
  }
  return numberOf({ numerator, denominator });
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  let [x, y] = [a < 0n ? -a : a, b < 0n ? -b : b];
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
}
