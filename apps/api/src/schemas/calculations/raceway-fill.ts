import { RACEWAY_KINDS, type RacewayFillAsk, type RacewayFillQuestion } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { Length } from "../quantity.js";
import { ref } from "../ref.js";
import { tradeSize } from "./amount.js";
import { fillConductors } from "./fill-conductor.js";
import { everyWord, type QuestionForm, strictly } from "./question-form.js";

export const racewayFill: QuestionForm<"raceway-fill"> = {
  question: strictly<RacewayFillQuestion>({
    ask: enumOf(everyWord<RacewayFillAsk>({ fill: true, "smallest-trade-size": true, "how-many": true })),
    raceway: strictly<RacewayFillQuestion["raceway"]>({
      kind: enumOf(RACEWAY_KINDS),
      tradeSize: Type.Optional(tradeSize("the trade size")),
    }),
    nippleLength: Type.Optional(ref(Length)),
    conductors: fillConductors,
  }),
  example: {
    ask: "fill",
    raceway: { kind: "EMT", tradeSize: "2" },
    conductors: [
      { kind: "conductor", count: 4, size: "3/0 AWG", insulation: "THHN/THWN-2", stranding: "class-B" },
      { kind: "conductor", count: 1, size: "4 AWG", insulation: "THHN/THWN-2", stranding: "class-B" },
    ],
  },
};
