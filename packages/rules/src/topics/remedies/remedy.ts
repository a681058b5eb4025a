import type { MissingFact } from "../../core/finding.js";
import type { Basis, Joint } from "../../core/joint.js";
import type { ConnectorOrigin } from "../joint/check-joint.js";
import type { Verdict } from "../joint/joint-finding.js";

/** Ways to land a conductor that does not land as it is. */
export const REMEDY_KINDS = ["lug-kit", "pin-adapter", "stub", "parallel-sets", "larger-frame"] as const;
export type RemedyKind = (typeof REMEDY_KINDS)[number];

/** One joint of a remedy with its connector, as every rule judges it by itself. */
export interface RemedyJoint {
  readonly where: "at-equipment" | "at-conductor";
  /** With the connector named in it, so that it can be asked about again as it stands. */
  readonly joint: Joint;
  readonly connector: {
    readonly partNumber: string | null;
    readonly description: string;
    readonly origin: ConnectorOrigin;
  };
  readonly verdict: Extract<Verdict, "accept" | "accept-with-conditions">;
  readonly conditions: readonly string[];
  /** How many of it one joint of the mark takes. */
  readonly count: number;
}

/** A part to buy for one joint of the mark. */
export interface RemedyPart {
  readonly partNumber: string;
  readonly description: string;
  readonly quantity: number;
  /** Of one part; null: not known. */
  readonly price: { readonly amount: string; readonly currency: string } | null;
}

/** One way to land the conductor, of which every joint is accepted. */
export interface Remedy {
  readonly kind: RemedyKind;
  /** What to do, in one sentence. */
  readonly sentence: string;
  readonly joints: readonly RemedyJoint[];
  readonly parts: readonly RemedyPart[];
  /** Of all parts for one joint of the mark; null: a price is not known, the currencies differ, or more than parts is needed. */
  readonly cost: { readonly amount: string; readonly currency: string } | null;
  /** Electrician-hours for one joint of the mark; null: not known. */
  readonly labourHours: number | null;
  /** What the proposal takes as given and what its cost leaves out; to be made true or looked at. */
  readonly provided: readonly string[];
}

/** A way that may serve once facts are known; nothing that is known refuses it. */
export interface OpenRemedy {
  readonly kind: RemedyKind;
  readonly sentence: string;
  readonly partNumber: string;
  readonly missing: readonly MissingFact[];
}

export interface Remedies {
  readonly basis: Basis;
  readonly rulesVersion: string;
  /** Why a remedy is looked for, or why none is. */
  readonly because: string;
  /** In the order of `REMEDY_KINDS`; within a kind best first. */
  readonly remedies: readonly Remedy[];
  readonly open: readonly OpenRemedy[];
  readonly caution: string;
}
