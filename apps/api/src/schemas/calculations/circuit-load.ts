import type { CircuitLoad } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { amountOrNone } from "./amount.js";
import type { FieldsOf } from "./question-form.js";

/** Amperes that any load or device of a question may have. */
export const AMPERES_MAX = 100_000;

/** The load of a circuit in its two parts. */
export const circuitLoad = {
  continuousLoadA: Type.Optional(amountOrNone("the load that is on for three hours or more", "amperes", AMPERES_MAX)),
  nonContinuousLoadA: Type.Optional(amountOrNone("the load that is not continuous", "amperes", AMPERES_MAX)),
  listedFor100Percent: Type.Optional(
    Type.Boolean({ description: "device and assembly are both listed for 100 % of their rating: true or false" }),
  ),
} satisfies FieldsOf<CircuitLoad>;
