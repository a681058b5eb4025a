/**
 * Differences that are understood: the library is the stricter of the two, or asks where the oracle can tell. In none of
 * them does the library accept. Each says how often it may happen, with room for another seed.
 */
import type { Judgment } from "./oracle.js";

export interface Explained {
  readonly library: Judgment["verdict"];
  readonly oracle: Judgment["verdict"];
  readonly covers: (about: readonly string[]) => boolean;
  readonly because: string;
  readonly perThousand: number;
}

export const EXPLAINED: readonly Explained[] = [];
