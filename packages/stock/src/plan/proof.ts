import { compareExact, type Exact, numberOf } from "@landfast/rules";
import { decimalText, minus, roundedText, ZERO } from "../money/decimal.js";
import type { Proof } from "./stock-plan.js";

/** The solver works in binary floating point; a bound is trusted to this part of the cost, and to this much money. */
const TRUSTED_PART = 1e-9;
const TRUSTED_SUM = 1e-6;

/** Whether no plan has fewer part numbers. Counts are whole, so the bound is one too. */
export function countProof(partNumbers: number, bound: number): Proof {
  const proven = bound >= partNumbers;
  const lowest = Math.min(bound, partNumbers);
  return {
    proven,
    of: "part-numbers",
    value: String(partNumbers),
    bound: String(lowest),
    gap: String(partNumbers - lowest),
    because: proven
      ? `no plan has fewer than ${String(partNumbers)} part numbers`
      : `stopped by a limit: a plan with ${String(lowest)} part numbers is not ruled out`,
  };
}

/**
 * Whether no plan costs less. The plan's cost is exact; the bound comes from the solver. Proven when less than the
 * smallest step between two costs lies between them, or no more than the solver's own tolerance.
 */
export function costProof(total: Exact, bound: Exact | null, step: number): Proof {
  const value = decimalText(total);
  if (bound === null)
    return {
      proven: false,
      of: "cost",
      value,
      bound: null,
      gap: null,
      because: "stopped by a limit before any bound was found",
    };
  const difference = minus(total, bound);
  const gap = compareExact(difference, ZERO) < 0 ? ZERO : difference;
  const trusted = Math.max(TRUSTED_SUM, Math.abs(numberOf(total)) * TRUSTED_PART);
  const proven = numberOf(gap) < Math.max(step, trusted * 2);
  return {
    proven,
    of: "cost",
    value,
    bound: proven ? value : roundedText(minus(total, gap), 6, "down"),
    gap: proven ? "0" : roundedText(gap, 6, "up"),
    because: proven
      ? "no plan costs less"
      : `stopped by a limit: a plan cheaper by up to ${roundedText(gap, 2, "up")} is not ruled out`,
  };
}
