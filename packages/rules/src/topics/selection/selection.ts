import type { MissingFact } from "../../core/finding.js";
import type { Basis } from "../../core/joint.js";
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

/** What is known of the job around a joint. It orders candidates and makes none: a refused part stays refused. */
export interface RankingContext {
  /** Part numbers that the job has already: another joint with one of them adds no part number. */
  readonly inJob?: readonly string[];
  /** Part numbers that were approved for this owner or this job before. */
  readonly approved?: readonly string[];
  /** Days until a part can be there. */
  readonly leadTimes?: readonly { readonly partNumber: string; readonly days: number }[];
}

/** A candidate with what the job's own order looks at. */
export interface RankedCandidate extends Candidate {
  readonly inJob: boolean;
  /** null: not known. */
  readonly leadTimeDays: number | null;
  readonly approvedBefore: boolean;
}

/** Everything a catalogue offers for one joint, and why it does not offer the rest. */
export interface Candidates {
  readonly basis: Basis;
  readonly rulesVersion: string;
  /** Every connector that passed every rule, best first. */
  readonly candidates: readonly RankedCandidate[];
  /** The lines of that order, in words; each decides only where the ones above are equal. */
  readonly order: readonly string[];
  /** How many connectors each rule keeps out (by its first failure, else its first question), most first. */
  readonly excluded: readonly { readonly rule: string; readonly connectors: number }[];
  /** Nearest first, of the connectors that are made for this kind of joint. */
  readonly nearestMisses: readonly NearestMiss[];
  /** One sentence: why the first, or why none. */
  readonly because: string;
  /** Facts whose absence keeps every connector from being accepted; empty where one is or where none could be. */
  readonly missing: readonly MissingFact[];
  /** The equipment's own terminal, where it is described: with it no connector of the catalogue is needed. */
  readonly ownTerminal: {
    readonly verdict: Verdict;
    readonly rule: string;
    readonly sentence: string;
    readonly clause: string;
  } | null;
  readonly caution: string;
}
