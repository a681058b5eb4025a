import { CONDUCTOR_METALS, type EquipmentGroundQuestion, type GroundedPhases } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { Size } from "../quantity.js";
import { amount, count } from "./amount.js";
import { AMPERES_MAX } from "./circuit-load.js";
import { type QuestionForm, strictly } from "./question-form.js";

export const equipmentGround: QuestionForm<"equipment-ground"> = {
  question: strictly<EquipmentGroundQuestion>({
    deviceA: Type.Optional(amount("the rating of the device ahead", "amperes", AMPERES_MAX)),
    metal: enumOf(CONDUCTOR_METALS),
    phases: Type.Optional(
      strictly<GroundedPhases>({
        metal: enumOf(CONDUCTOR_METALS),
        installed: Size,
        minimum: Type.Optional(Size),
        sets: count("sets of phase conductors", 100),
        separateRaceways: Type.Boolean({
          description: "each set in a raceway or cable of its own, or there is one set: true or false",
        }),
      }),
    ),
  }),
  example: {
    deviceA: 300,
    metal: "copper",
    phases: { metal: "copper", installed: "350 kcmil", minimum: "250 kcmil", sets: 1, separateRaceways: false },
  },
};
