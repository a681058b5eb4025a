/**
 * What a terminal without a temperature mark counts as.
 *
 * NFPA 70 110.14(C)(1) (2017, 2020, 2023), in our words: (a) 60 C on circuits of 100 A or less and for 14 to 1 AWG;
 * (b) 75 C above that.
 * Worked: 1 AWG under 150 A: 60 C; 1/0 AWG under 150 A: 75 C.
 * Silent: a circuit above 100 A on 14 to 1 AWG fits both lines; the lower one is taken. Other equipment listed for more
 * bears that mark, so it is not unmarked.
 */
import { parseSize } from "./conductor-size.js";

export interface UnmarkedTerminal {
  readonly valueC: number;
  readonly because: string;
  readonly clause: "terminalsTo100A" | "terminalsOver100A";
}

const UP_TO_A = 100;
/** Area of 1 AWG. */
const UP_TO_KCMIL = 83.69;
const BY_SIZE: UnmarkedTerminal = Object.freeze({
  valueC: 60,
  because: "unmarked terminals count as 60 C for 14 to 1 AWG",
  clause: "terminalsTo100A",
});
const BY_RATING: UnmarkedTerminal = Object.freeze({
  valueC: 60,
  because: "unmarked terminals count as 60 C on circuits of 100 A or less",
  clause: "terminalsTo100A",
});
const LARGE: UnmarkedTerminal = Object.freeze({
  valueC: 75,
  because: "unmarked terminals count as 75 C on circuits over 100 A with conductors above 1 AWG",
  clause: "terminalsOver100A",
});

/** Undefined where the circuit's rating decides and neither it nor a load above 100 A is known. */
export function unmarkedTerminal(
  size: string,
  ratingA: number | undefined,
  loadA: number | undefined,
): UnmarkedTerminal | undefined {
  const parsed = parseSize(size);
  if (!("problem" in parsed) && parsed.areaKcmil <= UP_TO_KCMIL) return BY_SIZE;
  if (ratingA !== undefined && ratingA <= UP_TO_A) return BY_RATING;
  // No circuit is rated below its load.
  return (ratingA ?? loadA ?? 0) > UP_TO_A ? LARGE : undefined;
}
