import { CONDUCTOR_METALS, type DcResistanceQuestion } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { Length, Size, Temperature } from "../quantity.js";
import { ref } from "../ref.js";
import { everyWord, type FieldsOf, type QuestionForm, strictly } from "./question-form.js";

/** A conductor as direct current meets it, its metal apart. */
export const directCurrent = {
  stranding: enumOf(everyWord<DcResistanceQuestion["stranding"]>({ solid: true, stranded: true })),
  coating: Type.Optional(
    enumOf(
      everyWord<NonNullable<DcResistanceQuestion["coating"]>>({ uncoated: true, coated: true }),
      "whether the copper is coated with tin",
    ),
  ),
  temperature: ref(Temperature),
} satisfies Partial<FieldsOf<DcResistanceQuestion>>;

export const dcResistance: QuestionForm<"dc-resistance"> = {
  question: strictly<DcResistanceQuestion>({
    metal: enumOf(CONDUCTOR_METALS),
    size: Size,
    ...directCurrent,
    length: Type.Optional(ref(Length)),
  }),
  example: {
    metal: "copper",
    size: "4 AWG",
    stranding: "stranded",
    coating: "uncoated",
    temperature: { value: 75, unit: "Cel" },
    length: { value: 250, unit: "ft" },
  },
};
