import type { AmpacityQuestion } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { Size } from "../quantity.js";
import { ref } from "../ref.js";
import { amount } from "./amount.js";
import { AMPERES_MAX } from "./circuit-load.js";
import { ConductorRun, exampleRun } from "./conductor-run.js";
import { type QuestionForm, strictly } from "./question-form.js";

export const ampacity: QuestionForm<"ampacity"> = {
  question: strictly<AmpacityQuestion>({
    size: Size,
    run: ref(ConductorRun),
    circuitRatingA: Type.Optional(amount("the rating of the device ahead", "amperes", AMPERES_MAX)),
  }),
  example: { size: "3/0 AWG", run: exampleRun, circuitRatingA: 175 },
};
