/** Statistics of runs that take turns: a ratio is only taken within one turn, because the machine changes its speed. */

/** The middle value; of an even number of values the mean of the two middle ones. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle];
  if (upper === undefined) throw new RangeError("no values");
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? upper) + upper) / 2;
}

export interface Spread {
  readonly median: number;
  readonly low: number;
  readonly high: number;
  readonly kept: number;
  readonly of: number;
}

export function spreadOf(values: readonly number[], of: number): Spread {
  return { median: median(values), low: Math.min(...values), high: Math.max(...values), kept: values.length, of };
}

export function shown({ median: middle, low, high, kept, of }: Spread): string {
  return `${middle.toFixed(2)} (${low.toFixed(2)} to ${high.toFixed(2)}; ${String(kept)} of ${String(of)} turns kept)`;
}

/** User and system time that this process has taken, in seconds: what other programs do does not count. */
export function cpuSeconds(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}
