import { Problem, problemType } from "../problems/problem.js";
import { PROBLEM_CODES, PROBLEMS, type ProblemCode, type ProblemKind } from "../problems/problem-codes.js";

/** What one code means and where that stands. */
export interface DescribedProblem extends ProblemKind {
  readonly type: string;
  readonly code: ProblemCode;
}

/** Every kind of problem. */
export function listProblems(): { readonly problems: readonly DescribedProblem[] } {
  return { problems: PROBLEM_CODES.map(described) };
}

/** One kind of problem by the last part of its address. @throws Problem PROBLEM_NOT_FOUND. */
export function describeProblem(name: string): DescribedProblem {
  const code = PROBLEM_CODES.find((one) => problemType(one) === `/problems/${name}`);
  if (code === undefined) throw new Problem("PROBLEM_NOT_FOUND", `There is no kind of problem "${name}".`);
  return described(code);
}

function described(code: ProblemCode): DescribedProblem {
  return { type: problemType(code), code, ...PROBLEMS[code] };
}
