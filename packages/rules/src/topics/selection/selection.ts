import type { Verdict } from "../joint/joint-finding.js";

/** A catalogue item that passed every rule, in rank order. */
export interface Candidate {
  readonly partNumber: string;
  readonly description: string;
  readonly verdict: Verdict;
  /** Conditions the acceptance hangs on. */
  readonly conditions: number;
  readonly price: { readonly amount: string; readonly currency: string } | null;
  readonly labourHours: number | null;
}

/** A catalogue item that is not accepted and comes nearest to it. */
export interface NearestMiss {
  readonly partNumber: string;
  readonly description: string;
  /** What refuses every connector, where one rule does; else the first failure; else the first question. */
  readonly rule: string;
  readonly sentence: string;
  /** What would put it right; for a question, the fact to give. */
  readonly fix: string;
}

/** What the catalogue offers for one joint. */
export interface Selection {
  /** null: nothing fits. */
  readonly chosen: Candidate | null;
  readonly runnersUp: readonly Candidate[];
  /** How many connectors each rule excluded (by its first failure), most first. */
  readonly excluded: readonly { readonly rule: string; readonly connectors: number }[];
  /** Nearest first; empty where one is chosen. */
  readonly nearestMisses: readonly NearestMiss[];
  /** One sentence: why this one, or why none. */
  readonly because: string;
}
