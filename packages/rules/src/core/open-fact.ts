/**
 * Facts that are not known and that lie between two ends: asked for only where they turn the answer.
 */
import type { CalculationFinding } from "./calculation.js";
import { CalculationSheet } from "./calculation-sheet.js";
import type { Citation } from "./citation.js";
import type { Basis } from "./joint.js";

export interface OpenFact {
  readonly path: string;
  /** Why it decides, in one plain sentence. */
  readonly because: string;
}

/** Paths of the open facts that are taken at the best they can be; the others at the worst. */
export type TakenAtBest = ReadonlySet<string>;

const NONE: TakenAtBest = new Set<string>();

/**
 * Works the answer with every open fact at its worst and again at its best. Where both are the same, the answer at the
 * worst stands; where they part, the first fact that alone turns the answer is asked for.
 */
export function answerWithOpenFacts(
  calculation: string,
  basis: Basis,
  open: readonly OpenFact[],
  cite: Citation,
  attempt: (sheet: CalculationSheet, atBest: TakenAtBest) => CalculationFinding,
): CalculationFinding {
  const work = (atBest: TakenAtBest): CalculationFinding => attempt(new CalculationSheet(calculation, basis), atBest);
  const worst = work(NONE);
  const [first] = open;
  if (first === undefined) return worst;
  const paths = open.map(({ path }) => path);
  const best = work(new Set(paths));
  if (isSame(worst, best)) return worst;
  const decides = open.find(({ path }) => !isSame(work(new Set(paths.filter((one) => one !== path))), best)) ?? first;
  return new CalculationSheet(calculation, basis).ask(decides.path, decides.because, cite);
}

function isSame(a: CalculationFinding, b: CalculationFinding): boolean {
  return a.outcome === b.outcome && a.results[0]?.value === b.results[0]?.value && a.refusal?.code === b.refusal?.code;
}
