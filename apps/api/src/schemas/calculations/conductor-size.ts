import { CIRCUIT_KINDS, type ConductorSizeQuestion, DEVICE_KINDS } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { ref } from "../ref.js";
import { amount } from "./amount.js";
import { AMPERES_MAX, circuitLoad } from "./circuit-load.js";
import { ConductorRun, exampleRun } from "./conductor-run.js";
import { type QuestionForm, strictly } from "./question-form.js";

export const conductorSize: QuestionForm<"conductor-size"> = {
  question: strictly<ConductorSizeQuestion>({
    ...circuitLoad,
    circuit: enumOf(CIRCUIT_KINDS),
    deviceA: Type.Optional(
      Type.Union([enumOf(["smallest"] as const), amount("the rating of the device ahead", "amperes", AMPERES_MAX)], {
        description: 'the rating of the device ahead in amperes, or "smallest": the smallest standard one for the load',
      }),
    ),
    deviceKind: enumOf(DEVICE_KINDS),
    run: ref(ConductorRun),
  }),
  example: {
    circuit: "branch-circuit",
    continuousLoadA: 8,
    nonContinuousLoadA: 4,
    deviceA: "smallest",
    deviceKind: "circuit-breaker",
    run: exampleRun,
  },
};
