import type { CalculationSheet } from "../../core/calculation-sheet.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";

/**
 * How many equal conductors a share of the raceway holds.
 *
 * NFPA 70 Chapter 9, Notes to Tables (7) (2017, 2020, 2023): the share divided by the area of one, rounded down; a
 * fraction of 0.8 or more counts as one conductor more.
 * Worked: 1 in EMT, 12 AWG THHN: 0.346 / 0.0133 = 26.02, so 26; 3/4 in EMT, 14 AWG THHN: 0.213 / 0.0097 = 21.96, so 22.
 */
export function numberPermitted(sheet: CalculationSheet, share: Step, area: Step, { clauses }: Edition): Step {
  const quotient = sheet.divide("conductors that the share would hold", share, area, "", clauses.equalConductors);
  const { numerator, denominator } = sheet.exact(quotient);
  const whole = numerator / denominator;
  const roundsUp = (numerator - whole * denominator) * 10n >= denominator * 8n;
  return sheet.conclude(
    "number permitted",
    Number(whole) + (roundsUp ? 1 : 0),
    [quotient],
    roundsUp
      ? "the fraction is 0.8 or more and counts as one conductor"
      : "the fraction is below 0.8 and does not count",
    clauses.equalConductors,
    "conductors",
  );
}
