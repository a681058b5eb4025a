/** What an answer rests on besides the facts it was given: defaults of the code, and cells nobody has confirmed yet. */
import { type Citation, citationText } from "./citation.js";
import type { Step } from "./finding.js";

/** A default that the code itself supplied. */
export interface Assumption {
  readonly label: string;
  readonly value: string;
  readonly because: string;
  readonly cite: Citation;
}

/** The defaults among the steps, each once. */
export function assumptionsIn(derivations: Iterable<readonly Step[]>): Assumption[] {
  const kept: Assumption[] = [];
  for (const steps of derivations)
    for (const step of steps)
      if (step.kind === "assumed" && !kept.some((one) => one.label === step.label && one.because === step.because))
        kept.push({
          label: step.label,
          value: step.unit === undefined ? String(step.value) : `${String(step.value)} ${step.unit}`,
          because: step.because,
          cite: step.cite,
        });
  return kept;
}

/** One sentence for each cell that was read and that no public text has confirmed. */
export function unconfirmedIn(derivations: Iterable<readonly Step[]>): string[] {
  const kept: string[] = [];
  for (const steps of derivations)
    for (const step of steps) {
      if (step.kind !== "read" || step.cell.status !== "unconfirmed") continue;
      const caveat = `No public text has yet confirmed ${step.cell.printed} at ${step.cell.row} in ${citationText(step.cite)}; compare with the book.`;
      if (!kept.includes(caveat)) kept.push(caveat);
    }
  return kept;
}
