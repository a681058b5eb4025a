/** Calculations asked by their bare question, and their results by name. */
import { type CalculationName, type CalculationQuestions, calculate } from "@landfast/rules";
import { BASIS_2023 } from "./described-joint.js";

/** Results of the answer by their names, or why there is none. */
export function results<Name extends CalculationName>(
  name: Name,
  question: CalculationQuestions[Name],
): Readonly<Record<string, unknown>> {
  const { outcome, results: found, sentence } = calculate(name, question, BASIS_2023);
  if (outcome !== "answered") return { [outcome]: sentence };
  return Object.fromEntries(found.map(({ name: result, value }) => [result, value]));
}

/** The main result alone. */
export function main<Name extends CalculationName>(name: Name, question: CalculationQuestions[Name]): unknown {
  return Object.values(results(name, question))[0];
}

/** What stands next to 35 mm2 in the American series. */
export function convertTo35(): { readonly nearest: unknown; readonly above: unknown } {
  const found = results("convert", { kind: "size-area", size: "35 mm2" });
  return { nearest: found["nearest size, not equal"], above: found["next larger size"] };
}
