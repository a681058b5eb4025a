import {
  type CircularMilHeating,
  CONDUCTOR_METALS,
  K_FACTOR_INSULATIONS,
  type KFactorHeating,
  type ShortCircuitAsk,
  type ShortCircuitQuestion,
} from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { Size, Temperature } from "../quantity.js";
import { ref } from "../ref.js";
import { taggedUnion } from "../strict.js";
import { amount } from "./amount.js";
import { everyWord, type QuestionForm, strictly } from "./question-form.js";

export const shortCircuit: QuestionForm<"short-circuit"> = {
  question: strictly<ShortCircuitQuestion>({
    ask: enumOf(everyWord<ShortCircuitAsk>({ "smallest-size": true, "longest-time": true, "largest-current": true })),
    heating: taggedUnion("kind", [
      strictly<CircularMilHeating>({
        kind: enumOf(["circular-mil"] as const),
        initialTemperature: Type.Optional(ref(Temperature)),
        finalTemperature: Type.Optional(ref(Temperature)),
      }),
      strictly<KFactorHeating>({
        kind: enumOf(["k-factor"] as const),
        arrangement: enumOf(
          everyWord<KFactorHeating["arrangement"]>({ separate: true, bundled: true }),
          "separate: a protective conductor apart from others; bundled: in a cable or beside others",
        ),
        insulation: enumOf(K_FACTOR_INSULATIONS),
      }),
    ]),
    metal: enumOf(CONDUCTOR_METALS),
    size: Type.Optional(Size),
    currentA: Type.Optional(amount("the symmetrical fault current", "amperes", 1_000_000)),
    timeS: Type.Optional(amount("the time until the fault is cleared", "seconds", 3600)),
  }),
  example: {
    ask: "smallest-size",
    heating: {
      kind: "circular-mil",
      initialTemperature: { value: 75, unit: "Cel" },
      finalTemperature: { value: 150, unit: "Cel" },
    },
    metal: "copper",
    currentA: 14_000,
    timeS: 0.2,
  },
};
