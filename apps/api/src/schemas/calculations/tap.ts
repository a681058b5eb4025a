import {
  type HighBay,
  TAP_ALLOWANCES,
  TAP_CONDITIONS,
  TAP_WINDINGS,
  type TapAsk,
  type TapQuestion,
} from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { Length, Size } from "../quantity.js";
import { ref } from "../ref.js";
import { amount } from "./amount.js";
import { AMPERES_MAX, circuitLoad } from "./circuit-load.js";
import { ConductorRun, exampleRun } from "./conductor-run.js";
import { everyWord, type QuestionForm, strictly } from "./question-form.js";

const volts = (what: string) => Type.Optional(amount(what, "volts between lines", 100_000));

export const tap: QuestionForm<"tap"> = {
  question: strictly<TapQuestion>({
    ...circuitLoad,
    ask: enumOf(everyWord<TapAsk>({ "smallest-size": true, check: true })),
    allowance: enumOf(TAP_ALLOWANCES),
    deviceAheadA: amount("the feeder's device, or the device of the transformer's primary", "amperes", AMPERES_MAX),
    endDeviceA: Type.Optional(
      amount("the device in which the conductor ends, or all of them together", "amperes", AMPERES_MAX),
    ),
    length: Type.Optional(ref(Length)),
    physicallyProtected: Type.Boolean({
      description: "in a raceway or otherwise protected from damage: true or false",
    }),
    leavesEnclosure: Type.Optional(
      Type.Boolean({ description: "the conductor leaves the enclosure in which it begins: true or false" }),
    ),
    primaryV: volts("the voltage of the primary"),
    secondaryV: volts("the voltage of the secondary"),
    highBay: Type.Optional(
      strictly<HighBay>({ wallHeight: ref(Length), horizontalLength: ref(Length), tapAboveFloor: ref(Length) }),
    ),
    windings: Type.Optional(enumOf(TAP_WINDINGS)),
    transformerSecondaryA: Type.Optional(
      amount("the rated secondary current of the transformer", "amperes", AMPERES_MAX),
    ),
    conditionsMet: Type.Optional(
      Type.Array(enumOf(TAP_CONDITIONS), {
        maxItems: TAP_CONDITIONS.length,
        uniqueItems: true,
        description: `what is met on site: a list of ${TAP_CONDITIONS.join(", ")}`,
      }),
    ),
    size: Type.Optional(Size),
    run: ref(ConductorRun),
  }),
  example: {
    ask: "check",
    allowance: "feeder-tap-to-25-ft",
    deviceAheadA: 400,
    endDeviceA: 100,
    continuousLoadA: 40,
    nonContinuousLoadA: 30,
    length: { value: 18, unit: "ft" },
    physicallyProtected: true,
    size: "1/0 AWG",
    run: exampleRun,
  },
};
