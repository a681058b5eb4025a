import type { ConductorMetal, ConductorRole, Stranding } from "@landfast/rules";

/** Roles that land on neutral and ground bars. */
export type BarRole = Extract<ConductorRole, "neutral" | "equipment-ground">;

/** Equal conductors to be landed. */
export interface BarConductor {
  /** Unique in the question. */
  readonly id: string;
  readonly role: BarRole;
  readonly size: string;
  readonly metal: ConductorMetal;
  readonly stranding: Stranding;
  readonly count: number;
}

/**
 * One line of the marking beside a bar: so many conductors in one opening, of these sizes and metals. "14-4 AWG, one;
 * 14-12 AWG copper, two of the same size" are two permits. What no permit says is not allowed.
 */
export interface OpeningPermit {
  readonly conductors: number;
  readonly from: string;
  readonly to: string;
  readonly metals: readonly ConductorMetal[];
  /** Strand forms listed; "unmarked": class B and C, the base case of every terminal. */
  readonly strandings: readonly Stranding[] | "unmarked";
  /** What several conductors in one opening have to have in common. Of no account for one. */
  readonly sameSize: boolean;
  readonly sameMetal: boolean;
}

/** Equal openings of a bar. */
export interface BarOpening {
  readonly id: string;
  readonly count: number;
  /** Openings in use already; the rest are free. */
  readonly occupied?: number;
  readonly permits: readonly OpeningPermit[];
}

export interface Bar {
  readonly id: string;
  /** Which conductors may land here: both where neutrals and grounds are bonded, else one of them. */
  readonly takes: readonly BarRole[];
  readonly openings: readonly BarOpening[];
}

export interface BarQuestion {
  readonly bars: readonly Bar[];
  /** Bars that the panel is listed for and that can be added, any number of each. */
  readonly addable?: readonly Bar[];
  readonly conductors: readonly BarConductor[];
}

/** What lies in each of so many equal openings. */
export interface BarLanding {
  readonly bar: string;
  readonly isAdded: boolean;
  readonly opening: string;
  readonly openings: number;
  readonly conductors: readonly { readonly id: string; readonly count: number }[];
}

export interface BarAnswer {
  readonly landings: readonly BarLanding[];
  readonly barsToAdd: readonly { readonly bar: string; readonly count: number }[];
  /** Free openings after all is landed, by bar and opening, added bars included. */
  readonly spare: readonly { readonly bar: string; readonly opening: string; readonly openings: number }[];
  readonly spareOpenings: number;
  readonly openingsUsed: number;
  /** Conductors for which no opening is left, and those that no opening's marking permits. */
  readonly notLanded: readonly { readonly id: string; readonly count: number; readonly because: string }[];
  readonly objective: "most conductors landed, then fewest bars added, then most openings left spare";
  /** False when a limit stopped the search. */
  readonly proven: boolean;
}
