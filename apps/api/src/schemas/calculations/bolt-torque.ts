import { BOLT_KINDS, BOLT_TABLES, type BoltTorqueQuestion } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { type QuestionForm, strictly } from "./question-form.js";

export const boltTorque: QuestionForm<"bolt-torque"> = {
  question: strictly<BoltTorqueQuestion>({
    table: enumOf([...BOLT_TABLES, "both"] as const),
    diameter: Type.String({
      pattern: "^(?:[1-9](?:-[1-9]/[1-9][0-9]?)?|[1-9][0-9]?/[1-9][0-9]?)$",
      maxLength: 7,
      description: 'the bolt\'s diameter in inches as printed: "1/2"',
    }),
    bolt: enumOf(BOLT_KINDS),
    lubricated: Type.Optional(Type.Boolean({ description: "a lubricated thread: true or false" })),
  }),
  example: { table: "both", diameter: "1/2", bolt: "stainless-steel", lubricated: false },
};
