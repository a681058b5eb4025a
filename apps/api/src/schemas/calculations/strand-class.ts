import { CONDUCTOR_METALS, STRAND_LAYS, type StrandClassQuestion } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { Size } from "../quantity.js";
import { type QuestionForm, strictly } from "./question-form.js";

export const strandClass: QuestionForm<"strand-class"> = {
  question: strictly<StrandClassQuestion>({
    size: Size,
    metal: enumOf(CONDUCTOR_METALS),
    strands: Type.Integer({
      minimum: 1,
      maximum: 100_000,
      description: "the number of strands: a whole number from 1 to 100000",
    }),
    lay: Type.Optional(enumOf(STRAND_LAYS)),
  }),
  example: { size: "2/0 AWG", metal: "copper", strands: 1330 },
};
