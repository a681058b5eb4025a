import { AREA_UNITS, type ConversionQuestion, LENGTH_UNITS, TEMPERATURE_UNITS, TORQUE_UNITS } from "@landfast/rules";
import { enumOf } from "../enum-of.js";
import { Length, Size, Temperature, Torque } from "../quantity.js";
import { ref } from "../ref.js";
import { taggedUnion } from "../strict.js";
import { areaAboveNone } from "./amount.js";
import { type QuestionForm, strictly } from "./question-form.js";

type Asked<Kind extends ConversionQuestion["kind"]> = Extract<ConversionQuestion, { kind: Kind }>;

export const convert: QuestionForm<"convert"> = {
  question: taggedUnion("kind", [
    strictly<Asked<"torque">>({ kind: enumOf(["torque"] as const), torque: ref(Torque), to: enumOf(TORQUE_UNITS) }),
    strictly<Asked<"length">>({ kind: enumOf(["length"] as const), length: ref(Length), to: enumOf(LENGTH_UNITS) }),
    strictly<Asked<"area">>({
      kind: enumOf(["area"] as const),
      area: areaAboveNone("the area"),
      to: enumOf(AREA_UNITS),
    }),
    strictly<Asked<"temperature">>({
      kind: enumOf(["temperature"] as const),
      temperature: ref(Temperature),
      to: enumOf(TEMPERATURE_UNITS),
    }),
    strictly<Asked<"wire-geometry">>({ kind: enumOf(["wire-geometry"] as const), size: Size }),
    strictly<Asked<"size-area">>({ kind: enumOf(["size-area"] as const), size: Size }),
  ]),
  example: { kind: "torque", torque: { value: 275, unit: "lbf-in" }, to: "N-m" },
};
