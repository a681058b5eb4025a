import { WIREWAY_KINDS, type WirewayFillQuestion } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { Length } from "../quantity.js";
import { ref } from "../ref.js";
import { areaAboveNone, countOrNone } from "./amount.js";
import { fillConductors } from "./fill-conductor.js";
import { everyWord, type QuestionForm, strictly } from "./question-form.js";

export const wirewayFill: QuestionForm<"wireway-fill"> = {
  question: strictly<WirewayFillQuestion>({
    ask: enumOf(everyWord<WirewayFillQuestion["ask"]>({ fill: true, "smallest-section": true })),
    kind: enumOf(WIREWAY_KINDS, "enclosure: the wiring space of a switch or breaker enclosure"),
    width: Type.Optional(ref(Length)),
    height: Type.Optional(ref(Length)),
    conductors: fillConductors,
    splices: Type.Optional(areaAboveNone("area that splices and taps take")),
    currentCarrying: Type.Optional(countOrNone("conductors at the section that carry current", 10_000)),
  }),
  example: {
    ask: "fill",
    kind: "metal-wireway",
    width: { value: 6, unit: "in" },
    height: { value: 6, unit: "in" },
    conductors: [{ kind: "conductor", count: 12, size: "3/0 AWG", insulation: "THHN", stranding: "class-B" }],
    splices: { value: 9, unit: "in2" },
    currentCarrying: 9,
  },
};
