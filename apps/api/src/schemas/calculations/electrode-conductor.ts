import { CONDUCTOR_METALS, ELECTRODES, type ElectrodeConductorQuestion } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { Size } from "../quantity.js";
import { ref } from "../ref.js";
import { type QuestionForm, strictly } from "./question-form.js";
import { SupplyConductors } from "./supply-conductors.js";

export const electrodeConductor: QuestionForm<"electrode-conductor"> = {
  question: strictly<ElectrodeConductorQuestion>({
    service: Type.Optional(ref(SupplyConductors)),
    metal: enumOf(CONDUCTOR_METALS),
    electrode: Type.Optional(enumOf(ELECTRODES)),
    soleConnection: Type.Optional(
      Type.Boolean({ description: "the conductor serves only this electrode and goes on to no other: true or false" }),
    ),
    ringSize: Type.Optional(Size),
  }),
  example: {
    service: { size: "600 kcmil", metal: "copper", sets: 3 },
    metal: "copper",
    electrode: "copper-bonded-rod",
    soleConnection: true,
  },
};
