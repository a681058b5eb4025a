import { type Exact, exactOf } from "@landfast/rules";
import { decimalOf, times } from "../money/decimal.js";

/**
 * The user's own difficulty factors by name: { "difficult": "1.25" }. None is built in: published labor units are
 * guides at the user's discretion and under copyright.
 */
export type DifficultyFactors = Readonly<Record<string, string>>;

/** Electrician-hours, or in one sentence why they are not known. Unknown hours are never zero. */
export type HoursFound =
  | { readonly hours: Exact; readonly because: null }
  | { readonly hours: null; readonly because: string };

/**
 * Hours for so many joints: joints x hours for one x the factor of the difficulty named. Without a difficulty there is
 * no factor.
 * Worked: 12 joints of 0.4 h at a factor of 1.25: 6 h.
 */
export function hoursFor(
  joints: number,
  hoursEach: number | undefined,
  difficulty: string | undefined,
  factors: DifficultyFactors,
): HoursFound {
  if (hoursEach === undefined) return { hours: null, because: "no labor hours are given for it" };
  const plain = times(exactOf(joints), exactOf(hoursEach));
  if (difficulty === undefined) return { hours: plain, because: null };
  const factor = Object.hasOwn(factors, difficulty) ? factors[difficulty] : undefined;
  if (factor === undefined) return { hours: null, because: `the labor table has no factor for "${difficulty}"` };
  return { hours: times(plain, decimalOf(factor)), because: null };
}
