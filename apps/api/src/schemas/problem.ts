import { type TUnsafe, Type } from "@sinclair/typebox";
import { PROBLEM_CODES } from "../problems/problem-codes.js";
import { enumOf } from "./enum-of.js";
import { ref } from "./ref.js";
import { strict } from "./strict.js";

/** A problem document as RFC 9457 has it. */
const ProblemAnswer = strict(
  {
    type: Type.String({ description: "address at which this kind of problem is described" }),
    title: Type.String(),
    status: Type.Integer({ minimum: 400, maximum: 599 }),
    detail: Type.String(),
    instance: Type.String({ description: "the address that was asked" }),
    code: enumOf(PROBLEM_CODES),
    errors: Type.Array(
      strict({
        pointer: Type.String({ description: "JSON Pointer into the body, or /query/… or /path/…" }),
        detail: Type.String(),
        accepted: Type.String({ description: "what would be accepted there" }),
      }),
    ),
  },
  { $id: "Problem", description: "what is wrong with a request" },
);

/** What one code means. */
export const ProblemKind = strict(
  {
    type: Type.String(),
    code: enumOf(PROBLEM_CODES),
    status: Type.Integer(),
    title: Type.String(),
    meaning: Type.String(),
  },
  { $id: "ProblemKind" },
);
export const ProblemKindList = strict({ problems: Type.Array(ref(ProblemKind)) }, { $id: "ProblemKindList" });

/** The answers that every route may give when something is wrong. */
export const problemAnswers = {
  "4xx": answer("The request is refused; code and errors say why."),
  "5xx": answer("The service failed or is not ready."),
};

function answer(description: string): TUnsafe<unknown> {
  return Type.Unsafe<unknown>({ description, content: { "application/problem+json": { schema: ref(ProblemAnswer) } } });
}

export const PROBLEM_SCHEMAS = [ProblemAnswer, ProblemKind, ProblemKindList];
