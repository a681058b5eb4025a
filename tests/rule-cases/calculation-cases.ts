/** The cases of the calculations: one question for each way through each, in every edition where it goes another way. */
import {
  CALCULATIONS,
  type CalculationFinding,
  type CalculationName,
  type CalculationQuestions,
  calculate,
  EDITIONS,
} from "@landfast/rules";
import { CALCULATION_QUESTIONS } from "../findings/calculation-questions.js";
import { WORKED_CASES } from "../worked-cases/all-cases.js";
import { calculationLines, descriptionLines, wayOf } from "./finding-lines.js";

/** Lines shown of one calculation: those that try one size after another take a hundred for each case. */
const SHOWN_LINES = 700;
/** Of these more: a check of each allowance that a tap may have. */
const MORE_SHOWN_LINES: Readonly<Partial<Record<CalculationName, number>>> = { tap: 1400 };

export interface CalculationCase {
  readonly question: unknown;
  readonly finding: CalculationFinding;
}

/** Questions of a calculation, of the worked cases and of the walks through its derivations. */
export function questionsOf<Name extends CalculationName>(name: Name): readonly CalculationQuestions[Name][] {
  const worked: readonly { readonly asked: CalculationQuestions[Name] }[] = WORKED_CASES[name];
  const walked: readonly CalculationQuestions[Name][] = CALCULATION_QUESTIONS[name];
  const all = [...worked.map(({ asked }) => asked), ...walked];
  const distinct = new Map(all.map((question) => [JSON.stringify(question), question] as const));
  return [...distinct.values()];
}

export function calculationCases(name: CalculationName): readonly CalculationCase[] {
  const ways = new Map<string, CalculationCase>();
  for (const question of questionsOf(name))
    for (const { ruleSet, edition } of [...EDITIONS].reverse()) {
      const finding = calculate(name, question as never, { ruleSet, edition });
      const way = wayOf(finding);
      if (!ways.has(way)) ways.set(way, { question, finding });
    }
  const shown = MORE_SHOWN_LINES[name] ?? SHOWN_LINES;
  let lines = 0;
  return [...ways.values()].filter(({ finding }) => {
    const isFirst = lines === 0 || finding.outcome !== "answered";
    lines += finding.steps.length;
    return isFirst || lines <= shown;
  });
}

export function calculationText(name: CalculationName, cases: readonly CalculationCase[]): string {
  const head = descriptionLines(CALCULATIONS[name]).join("\n");
  return (
    head +
    cases
      .map(({ question, finding }) =>
        [`${JSON.stringify(question)}, ${finding.basis.edition}`, ...calculationLines(finding), ""].join("\n"),
      )
      .join("\n")
  );
}
