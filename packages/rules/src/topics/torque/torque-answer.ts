import type { Citation } from "../../core/citation.js";
import type { SourceLevel, Step } from "../../core/finding.js";
import type { TorqueInUnits } from "../../core/quantity.js";

/** One thing that is tightened (or pressed, welded, turned by hand) at a joint, and how far. */
export interface TorqueAnswer {
  /** "conductor screw of opening run, 500 kcmil", "pad bolt 1/2 in". */
  readonly at: string;
  /** Opening id, ids joined by "and" under one bolt, or "pad" for the bolts that fix the lug. */
  readonly opening: string;
  readonly method: "torque" | "breakaway-head" | "by-hand" | "crimp" | "weld" | "spring" | "see-instructions";
  /** Only for method "torque". */
  readonly torque: TorqueInUnits | null;
  readonly level: SourceLevel | null;
  readonly cite: Citation;
  /** The driving feature a tool must have: "5/16 in recessed hex or square", "external hex". */
  readonly drive: string;
  /** Where one head can be driven in two ways, both values are answers; this names which one this is. */
  readonly alternative: string | null;
  /** One plain sentence. */
  readonly sentence: string;
  readonly steps: readonly Step[];
}
