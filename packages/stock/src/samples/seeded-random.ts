/** Random numbers for tests and benchmarks: the same seed gives the same numbers on every machine. */
export interface SeededRandom {
  /** A whole number from 0 to n - 1. */
  below(n: number): number;
  /** A number from 0 up to, not including, 1. */
  unit(): number;
  pick<Value>(values: readonly [Value, ...Value[]]): Value;
  /** The values in another order; the argument stays as it is. */
  shuffled<Value>(values: readonly Value[]): Value[];
}

/** A 32-bit xorshift with a Weyl sequence added; good enough to spread test cases, for nothing else. */
export function seededRandom(seed: number): SeededRandom {
  let state = (seed ^ 0x9e3779b9) >>> 0 || 1;
  let weyl = seed >>> 0;
  const next = (): number => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    weyl = (weyl + 0x6d2b79f5) >>> 0;
    return ((state ^ weyl) >>> 0) + 0;
  };
  for (let warm = 0; warm < 8; warm += 1) next();
  const unit = (): number => next() / 4294967296;
  const below = (n: number): number => Math.floor(unit() * n);
  return {
    unit,
    below,
    pick: (values) => values[below(values.length)] ?? values[0],
    shuffled: (values) => {
      const order = [...values];
      for (let at = order.length - 1; at > 0; at -= 1) {
        const other = below(at + 1);
        const [a, b] = [order[at], order[other]];
        if (a !== undefined && b !== undefined) [order[at], order[other]] = [b, a];
      }
      return order;
    },
  };
}
