import type { Calculation } from "../../core/calculation.js";
import { CalculationSheet } from "../../core/calculation-sheet.js";
import type { ConductorMetal } from "../../core/conductor.js";
import { type CircularMilHeating, circularMilHeating } from "./circular-mil-heating.js";
import { type KFactorHeating, kFactorHeating } from "./k-factor-heating.js";

const NAME = "short-circuit";

export type ShortCircuitAsk = "smallest-size" | "longest-time" | "largest-current";

export interface ShortCircuitQuestion {
  readonly ask: ShortCircuitAsk;
  readonly heating: CircularMilHeating | KFactorHeating;
  readonly metal: ConductorMetal;
  /** AWG or kcmil with the circular-mil formula, mm2 with the k factor. Needed unless the size is asked for. */
  readonly size?: string;
  /** Symmetrical fault current, root mean square. Needed unless the current is asked for. */
  readonly currentA?: number;
  /** Until the device has cleared. Needed unless the time is asked for. */
  readonly timeS?: number;
}

/**
 * Which conductor survives a short circuit, for how long, and at what current?
 *
 * Two published ways, never mixed: the circular-mil formula of ICEA P-32-382 that NFPA 70 Table 240.92(B) (2017, 2020,
 * 2023) carries, and the k factors of IEC 60364-5-54. Both take all the heat to stay in the conductor.
 * Worked: see each way.
 * Silent: neither counts the heat that leaves the conductor or the offset of the first cycles.
 */
export const shortCircuit: Calculation<ShortCircuitQuestion> = {
  name: NAME,
  title: "Short-circuit heating of a conductor",
  clauses: ["shortCircuitHeating"],
  needs: ["question/ask", "question/heating", "question/metal", "question/size", "question/currentA", "question/timeS"],
  cannotSee:
    "joints and lugs, which must carry the same current without harm, and whether the insulation bears the temperature given",
  answer(question, basis, edition) {
    const sheet = new CalculationSheet(NAME, basis);
    const { heating } = question;
    return heating.kind === "circular-mil"
      ? circularMilHeating(sheet, question, heating, edition)
      : kFactorHeating(sheet, question, heating, edition);
  },
};
