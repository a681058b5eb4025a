import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { type CalculationSheet, isClosed, shown } from "../../core/calculation-sheet.js";
import { citationText } from "../../core/citation.js";
import { conductorText } from "../../core/conductor-ampacity.js";
import { type ConductorRun, openFactsOf } from "../../core/conductor-run.js";
import { sizeOf } from "../../core/conductor-size.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import { answerWithOpenFacts, type TakenAtBest } from "../../core/open-fact.js";
import { preparedRun, type RunAmpacity, runAmpacity } from "../../core/run-ampacity.js";
import { smallConductorCap } from "../../core/small-conductor.js";
import { isRefused } from "../../core/table.js";

const NAME = "ampacity";
const RATING_PATH = "question/circuitRatingA";

export interface AmpacityQuestion {
  readonly size: string;
  readonly run: ConductorRun;
  /** Rating of the device ahead; needed only where a terminal bears no temperature. */
  readonly circuitRatingA?: number;
}

/**
 * How much may a conductor carry, where it lies and where it ends?
 *
 * NFPA 70 310.16, 310.17, 310.15 and 110.14(C) (2017 with the numbers of that edition, 2020, 2023), in our words: the
 * ampacity of the table in the column of the insulation x the factor for the ambient temperature x the share left beside
 * more than three current-carrying conductors, and never more than the table's ampacity in the column of the lowest rated
 * of insulation and terminals. Amperes, all sets in parallel together.
 * Worked: 12 AWG THHN, nine conductors at 30 C, 60 C terminals: 30 x 1.00 x 0.70 = 21 A; the terminals allow 20 A.
 * Silent: 220.5(B) speaks of loads when it drops fractions below half an ampere; the whole number is given beside the
 * exact one, which alone is compared anywhere. Also silent: other ampacities along the run (310.14(A)(2)), and tables for
 * conductors on messengers, in cable trays and underground banks.
 */
export const ampacity: Calculation<AmpacityQuestion> = {
  name: NAME,
  title: "Ampacity of a conductor",
  clauses: [
    "conductorTemperature",
    "lowestTemperature",
    "terminalsTo100A",
    "terminalsOver100A",
    "insulationTypes",
    "roof",
    "shortRaceway",
    "wirewayConductors",
    "wirewayAdjustment",
    "neutralsCounted",
    "groundsNotCounted",
    "nonmetallicCable",
    "wholeAmperes",
    "smallConductors",
    "parallel",
  ],
  needs: [
    "question/size",
    "question/run",
    "question/run/place",
    "question/run/ambient",
    "question/run/grouping",
    "question/run/supplyEnd",
    "question/run/loadEnd",
    RATING_PATH,
  ],
  cannotSee: "the hottest place along the run, the sun, and conductors laid beside it later",
  answer(question, basis, edition) {
    const open = openFactsOf(question.run, question.circuitRatingA === undefined ? RATING_PATH : undefined, edition);
    return answerWithOpenFacts(NAME, basis, open, edition.clauses.lowestTemperature, (sheet, atBest) =>
      work(sheet, question, atBest, edition),
    );
  },
};

function work(
  sheet: CalculationSheet,
  question: AmpacityQuestion,
  atBest: TakenAtBest,
  edition: Edition,
): CalculationFinding {
  const size = sheet.given("size", sizeOf(question.size).text, "question/size");
  const rating =
    question.circuitRatingA === undefined
      ? undefined
      : sheet.positive("rating of the circuit", question.circuitRatingA, RATING_PATH, "A");
  const prepared = preparedRun(sheet, question.run, atBest, edition);
  if (isClosed(prepared)) return prepared;
  const found = runAmpacity(sheet, prepared, size, rating, RATING_PATH);
  if (isClosed(found)) return found;
  const { usable, corrected, atTerminations, limit } = found;
  const whole = wholeAmperes(sheet, usable, edition);
  const result = sheet.conclude(
    "ampacity",
    usable.value,
    [usable],
    found.governedBy === "terminations"
      ? "the terminations allow less than the run"
      : "the run allows no more than the terminations",
    edition.clauses.lowestTemperature,
    "A",
  );
  return sheet.finish({
    sentence: sentenceOf(question, found),
    cite: found.governedBy === "terminations" ? edition.clauses.lowestTemperature : prepared.surroundings.table.cite,
    results: [
      { name: "ampacity", step: result },
      { name: "ampacity in whole amperes", step: whole },
      { name: "ampacity of one conductor after correction and adjustment", step: corrected },
      { name: "ampacity of one conductor at the terminations", step: atTerminations },
      { name: "temperature limit at the terminations", step: limit },
    ],
    advice: [...adviceOnSmallConductor(question, edition), ...adviceOnParallel(question, edition)],
  });
}

/** NFPA 70 220.5(B): the nearest whole number, a half counting up. */
function wholeAmperes(sheet: CalculationSheet, usable: Step, { clauses }: Edition): Step {
  const { numerator, denominator } = sheet.exact(usable);
  return sheet.conclude(
    "ampacity in whole amperes",
    Number((numerator * 2n + denominator) / (denominator * 2n)),
    [usable],
    "fractions below half an ampere are dropped",
    clauses.wholeAmperes,
    "A",
  );
}

function sentenceOf({ size, run }: AmpacityQuestion, { usable, corrected, limit, governedBy }: RunAmpacity): string {
  const what = `${conductorText(run.sets, size, run.metal)} ${run.sets === 1 ? "carries" : "carry"} ${shown(usable.value, 1)} A`;
  return governedBy === "terminations"
    ? `${what}: the terminations, limited to ${shown(limit.value)} C, allow no more, although the run would allow ${shown(corrected.value, 1)} A a conductor.`
    : `${what} after correction and adjustment, which the terminations, limited to ${shown(limit.value)} C, allow.`;
}

function adviceOnSmallConductor({ size, run }: AmpacityQuestion, edition: Edition): readonly string[] {
  const cap = smallConductorCap(edition, run.metal, size);
  if (isRefused(cap)) return [];
  return [
    `Whatever its ampacity, ${conductorText(1, size, run.metal)} is protected at no more than ${String(cap.value)} A in most circuits: ${citationText(cap.cite)}.`,
  ];
}

function adviceOnParallel({ size, run }: AmpacityQuestion, { clauses }: Edition): readonly string[] {
  if (run.sets === 1 || sizeOf(size).areaKcmil >= sizeOf("1/0 AWG").areaKcmil) return [];
  return [
    `Conductors smaller than 1/0 AWG may be run in parallel only in special cases: ${citationText(clauses.parallel)}.`,
  ];
}
