import type { ConductorRole } from "../../core/conductor.js";
import type { Tooling } from "../../core/connector.js";
import type { MissingFact } from "../../core/finding.js";
import type { Basis } from "../../core/joint.js";
import type { JointFunction } from "../../core/joint-function.js";
import type { Verdict } from "../joint/joint-finding.js";
import type { Selection } from "../selection/selection.js";

/** One line of the connector schedule. */
export interface ScheduleRow {
  readonly mark: string;
  readonly area: string | null;
  readonly equipmentTag: string | null;
  readonly description: string | null;
  readonly function: JointFunction;
  readonly role: ConductorRole;
  readonly quantity: number;
  readonly basis: Basis;
  /** "1 x 4/0 AWG copper, class B, THHN/THWN-2". */
  readonly conductors: readonly string[];
  readonly connector: {
    readonly partNumber: string | null;
    readonly description: string;
    readonly origin: "catalogue" | "request" | "equipment";
    readonly chosen: boolean;
    /** Parts for all joints of this mark; 0 for the equipment's own terminal. */
    readonly quantity: number;
  } | null;
  /** "run: 1 x 500 kcmil copper". */
  readonly openingsUsed: readonly string[];
  readonly verdict: Verdict;
  readonly deciding: { readonly rule: string; readonly sentence: string; readonly clause: string };
  readonly torque: readonly {
    readonly at: string;
    readonly method: string;
    readonly lbfIn: number | null;
    readonly lbfFt: number | null;
    readonly newtonMetre: number | null;
    readonly printed: string | null;
    readonly level: string | null;
    readonly drive: string;
    readonly source: string;
  }[];
  /** null: see the connector's instructions. */
  readonly stripLengths: readonly { readonly opening: string; readonly length: string | null }[];
  readonly preparation: { readonly brush: string; readonly compound: string } | null;
  readonly tooling: Tooling | null;
  readonly conditions: readonly string[];
  readonly dutiesOnSite: readonly string[];
  readonly missing: readonly MissingFact[];
  /** Values read that no public text has confirmed yet, and parts that are invented. */
  readonly caveats: readonly string[];
  readonly fix: string;
  /** Where a connector was chosen, or where the offered one was rejected: what the catalogue has. */
  readonly selection: Selection | null;
}

export interface PartTotal {
  readonly partNumber: string;
  readonly description: string;
  readonly quantity: number;
  readonly marks: readonly string[];
}

/** What must be put right before the job can be bought: one entry a rejected mark. */
export interface Rejection {
  readonly mark: string;
  readonly rule: string;
  readonly sentence: string;
  readonly clause: string;
  readonly fix: string;
  /** What the catalogue offers instead, or why it offers nothing. */
  readonly instead: string;
}

export interface OpenQuestion {
  readonly mark: string;
  readonly facts: readonly MissingFact[];
  readonly clause: string;
}

/** The connector schedule of a job. */
export interface ConnectorSchedule {
  readonly job: string;
  readonly basis: Basis;
  readonly rulesVersion: string;
  readonly rows: readonly ScheduleRow[];
  readonly totals: readonly PartTotal[];
  readonly rejections: readonly Rejection[];
  readonly openQuestions: readonly OpenQuestion[];
  readonly counts: {
    readonly marks: number;
    readonly joints: number;
    readonly byVerdict: Readonly<Record<Verdict, { readonly marks: number; readonly joints: number }>>;
  };
  readonly caution: string;
}
