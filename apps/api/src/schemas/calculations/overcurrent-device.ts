import {
  CIRCUIT_KINDS,
  DEVICE_KINDS,
  type OvercurrentDeviceAsk,
  type OvercurrentDeviceQuestion,
  type ProtectedRun,
  SERVED_LOADS,
} from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { Size } from "../quantity.js";
import { ref } from "../ref.js";
import { amount } from "./amount.js";
import { AMPERES_MAX, circuitLoad } from "./circuit-load.js";
import { ConductorRun, exampleRun } from "./conductor-run.js";
import { everyWord, type QuestionForm, strictly } from "./question-form.js";

export const overcurrentDevice: QuestionForm<"overcurrent-device"> = {
  question: strictly<OvercurrentDeviceQuestion>({
    ...circuitLoad,
    ask: enumOf(
      everyWord<OvercurrentDeviceAsk>({ "smallest-for-load": true, "largest-for-conductor": true, check: true }),
    ),
    circuit: enumOf(CIRCUIT_KINDS),
    serves: enumOf(SERVED_LOADS),
    deviceKind: enumOf(DEVICE_KINDS),
    deviceA: Type.Optional(amount("the rating of the device", "amperes", AMPERES_MAX)),
    conductor: Type.Optional(strictly<ProtectedRun>({ size: Size, run: ref(ConductorRun) })),
  }),
  example: {
    ask: "check",
    circuit: "feeder",
    serves: "ordinary",
    deviceKind: "circuit-breaker",
    deviceA: 175,
    continuousLoadA: 80,
    nonContinuousLoadA: 40,
    conductor: { size: "3/0 AWG", run: exampleRun },
  },
};
