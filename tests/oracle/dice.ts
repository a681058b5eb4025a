/** A small generator of numbers of its own (xorshift, 32 bit): the same seed gives the same joints on every machine. */
export class Dice {
  #state: number;

  constructor(seed: number) {
    this.#state = seed | 0 || 0x9e3779b9;
    for (let warm = 0; warm < 8; warm += 1) this.int(2);
  }

  /** A whole number from 0 up to, not including, the limit. */
  int(limit: number): number {
    let x = this.#state;
    x ^= x << 13;
    x ^= x >>> 17;
    x ^= x << 5;
    this.#state = x | 0;
    return (x >>> 0) % limit;
  }

  /** True in so many of a hundred throws. */
  percent(share: number): boolean {
    return this.int(100) < share;
  }

  pick<T>(from: readonly T[]): T {
    const one = from[this.int(from.length)];
    if (one === undefined) throw new Error("nothing to pick from");
    return one;
  }

  /** One of the values, each as often as its weight says. */
  weighted<T>(...from: readonly (readonly [number, T])[]): T {
    let left = this.int(from.reduce((sum, [weight]) => sum + weight, 0));
    for (const [weight, value] of from) {
      if (left < weight) return value;
      left -= weight;
    }
    throw new Error("nothing to pick from");
  }
}
