import type { Citation } from "../../core/citation.js";
import type { SourceLevel } from "../../core/finding.js";

/** How the conductor is made ready. */
export interface PreparationAnswer {
  readonly brush: {
    readonly needed: boolean;
    readonly because: string;
    readonly level: SourceLevel;
    readonly cite: Citation;
  };
  readonly compound: {
    readonly need: "required" | "pre-filled" | "per-instructions" | "not-needed";
    readonly because: string;
    readonly level: SourceLevel;
    readonly cite: Citation;
  };
}
