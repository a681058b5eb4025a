import { type BendingSpaceQuestion, CONDUCTOR_METALS, STRANDINGS } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { Length, Size } from "../quantity.js";
import { ref } from "../ref.js";
import { count } from "./amount.js";
import { everyWord, type QuestionForm, strictly } from "./question-form.js";

export const bendingSpace: QuestionForm<"bending-space"> = {
  question: strictly<BendingSpaceQuestion>({
    size: Size,
    metal: enumOf(CONDUCTOR_METALS),
    stranding: enumOf(STRANDINGS),
    entry: enumOf(
      everyWord<BendingSpaceQuestion["entry"]>({ opposite: true, side: true }),
      "the wall the conductor leaves through: opposite its terminal, or another",
    ),
    wiresPerTerminal: count("wires per terminal", 20),
    removableTerminal: Type.Optional(
      Type.Boolean({ description: "a removable or lay-in terminal for one wire: true or false" }),
    ),
    available: Type.Optional(ref(Length)),
  }),
  example: {
    size: "4/0 AWG",
    metal: "copper",
    stranding: "class-B",
    entry: "opposite",
    wiresPerTerminal: 1,
    removableTerminal: false,
    available: { value: 8, unit: "in" },
  },
};
