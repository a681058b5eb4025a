import { CALCULATIONS, type CalculationName, type CalculationQuestions, calculate, EDITIONS } from "@landfast/rules";
import { describe, expect, test } from "vitest";
import { CALCULATION_QUESTIONS } from "./calculation-questions.js";
import { faultsOf } from "./walk-finding.js";

/** A calculation that tries one size after another is walked for seconds where the machine is busy. */
const SLOW_MS = 60_000;

describe.each(Object.keys(CALCULATIONS) as CalculationName[])("%s", (name) => {
  test(
    "every derivation can be walked, survives JSON and ends in its main result",
    () => {
      const questions: readonly CalculationQuestions[typeof name][] = CALCULATION_QUESTIONS[name];
      for (const edition of EDITIONS) {
        for (const question of questions) {
          const finding = calculate(name, question as never, { ruleSet: edition.ruleSet, edition: edition.edition });
          const about = `${edition.edition} ${JSON.stringify(question)}`;
          expect(finding.calculation, about).toBe(name);
          expect(faultsOf(finding.steps), about).toEqual([]);
          expect(JSON.parse(JSON.stringify(finding)), about).toEqual(finding);
          expect(finding.sentence, about).toMatch(/^\S.*\.$/);
          if (finding.outcome === "answered") {
            expect(finding.results[0]?.step, about).toBe(finding.steps.length);
            for (const result of finding.results)
              expect(result.value, about).toEqual(finding.steps[result.step - 1]?.value);
          } else expect(finding.results, about).toEqual([]);
        }
      }
    },
    SLOW_MS,
  );

  test(
    "the same question has the same answer",
    () => {
      for (const question of CALCULATION_QUESTIONS[name]) {
        const basis = { ruleSet: "nfpa70", edition: "2023" } as const;
        expect(calculate(name, question as never, basis)).toEqual(calculate(name, question as never, basis));
      }
    },
    SLOW_MS,
  );
});
