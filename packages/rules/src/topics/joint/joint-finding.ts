import type { Citation } from "../../core/citation.js";
import type { ConductorMetal, Stranding } from "../../core/conductor.js";
import type { ConnectorFamily, Tooling } from "../../core/connector.js";
import type { CheckFinding, Duty, MissingFact, NotApplicable } from "../../core/finding.js";
import type { Basis } from "../../core/joint.js";
import type { Length } from "../../core/quantity.js";
import type { Assumption } from "../../core/what-it-rests-on.js";
import type { PreparationAnswer } from "../preparation/preparation-answer.js";
import type { TorqueAnswer } from "../torque/torque-answer.js";

/** reject beats needs-information beats accept-with-conditions beats accept. */
export type Verdict = "accept" | "accept-with-conditions" | "reject" | "needs-information";
export const VERDICTS: readonly Verdict[] = ["accept", "accept-with-conditions", "reject", "needs-information"];

/** Which conductors lie in which opening. */
export interface OpeningUse {
  readonly opening: string;
  readonly instance: number;
  readonly conductors: readonly {
    readonly count: number;
    readonly metal: ConductorMetal;
    readonly size: string;
    readonly stranding: Stranding;
  }[];
}

/** Whether one joint with one connector is allowed, why, and how it is made. */
export interface JointFinding {
  readonly basis: Basis;
  readonly rulesVersion: string;
  readonly verdict: Verdict;
  /** The finding that decides: the first failure, else the first missing fact, else the tightest pass. */
  readonly deciding: { readonly rule: string; readonly sentence: string; readonly cite: Citation };
  readonly connector: {
    /** null: the equipment's own terminal, or a connector described in the request without a number. */
    readonly partNumber: string | null;
    readonly description: string;
    readonly family: ConnectorFamily;
    readonly origin: "catalogue" | "request" | "equipment";
  };
  readonly openings: readonly OpeningUse[];
  readonly findings: readonly CheckFinding[];
  readonly notApplicable: readonly NotApplicable[];
  /** Empty unless the verdict accepts: a torque beside a refusal would be used. */
  readonly torque: readonly TorqueAnswer[];
  /** null: the connector's instructions give the strip length; it is never guessed. */
  readonly stripLengths: readonly { readonly opening: string; readonly length: Length | null }[];
  readonly preparation: PreparationAnswer | null;
  readonly tooling: Tooling | null;
  /** What the acceptance hangs on. Empty unless accepted with conditions. */
  readonly conditions: readonly Duty[];
  /** What no computer can see; on every accept. */
  readonly dutiesOnSite: readonly Duty[];
  readonly missing: readonly MissingFact[];
  readonly assumptions: readonly Assumption[];
  /** "A value read has not been confirmed in a public text: …", "The connector is invented, for demonstration only." */
  readonly caveats: readonly string[];
  readonly advice: readonly string[];
  /** The standing caution. */
  readonly caution: string;
}
