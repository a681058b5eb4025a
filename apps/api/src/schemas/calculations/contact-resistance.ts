import type { ContactResistanceQuestion, JointReading } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { amount } from "./amount.js";
import { type QuestionForm, strictly } from "./question-form.js";

export const contactResistance: QuestionForm<"contact-resistance"> = {
  question: strictly<ContactResistanceQuestion>({
    readings: Type.Array(
      strictly<JointReading>({
        joint: Type.String({
          pattern: "^\\S(?:.{0,58}\\S)?$",
          maxLength: 60,
          description: 'which joint it is, each once: "phase A"',
        }),
        microOhm: amount("the reading", "micro-ohms", 1_000_000),
      }),
      { minItems: 2, maxItems: 100, description: "readings of joints that are alike: a list of 2 to 100" },
    ),
  }),
  example: {
    readings: [
      { joint: "phase A", microOhm: 18 },
      { joint: "phase B", microOhm: 19 },
      { joint: "phase C", microOhm: 30 },
    ],
  },
};
