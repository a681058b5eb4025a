import type { CalculationFinding } from "../../core/calculation.js";
import type { CalculationSheet } from "../../core/calculation-sheet.js";
import type { Citation } from "../../core/citation.js";
import type { ConductorMetal } from "../../core/conductor.js";
import type { Step } from "../../core/finding.js";

/** The three facts of which two give the third. */
export interface Fault {
  readonly ask: "smallest-size" | "longest-time" | "largest-current";
  readonly metal: ConductorMetal;
  readonly size?: string;
  readonly currentA?: number;
  readonly timeS?: number;
}

export function currentStep(sheet: CalculationSheet, fault: Fault, cite: Citation): Step | CalculationFinding {
  if (fault.currentA === undefined)
    return sheet.ask(
      "question/currentA",
      "The heat grows with the square of the fault current, which is not given.",
      cite,
    );
  return sheet.positive("fault current", fault.currentA, "question/currentA", "A");
}

export function timeStep(sheet: CalculationSheet, fault: Fault, cite: Citation): Step | CalculationFinding {
  if (fault.timeS === undefined)
    return sheet.ask(
      "question/timeS",
      "The heat grows with the time until the device clears, which is not given.",
      cite,
    );
  return sheet.positive("time until the device clears", fault.timeS, "question/timeS", "s");
}

/** The size as it was posted; which series it must be of is for the way of working to say. */
export function askForSize(sheet: CalculationSheet, cite: Citation): CalculationFinding {
  return sheet.ask("question/size", "The heat a conductor can take depends on its size, which is not given.", cite);
}
