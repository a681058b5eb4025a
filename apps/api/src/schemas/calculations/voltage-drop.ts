import {
  type CircuitImpedance,
  CONDUCTOR_METALS,
  CONDUIT_MATERIALS,
  type VoltageDropAsk,
  type VoltageDropQuestion,
} from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { Length, Size } from "../quantity.js";
import { ref } from "../ref.js";
import { taggedUnion } from "../strict.js";
import { amount, count } from "./amount.js";
import { AMPERES_MAX } from "./circuit-load.js";
import { directCurrent } from "./dc-resistance.js";
import { everyWord, type QuestionForm, strictly } from "./question-form.js";

type Impedance<Kind extends CircuitImpedance["kind"]> = Extract<CircuitImpedance, { kind: Kind }>;
const conduit = enumOf(CONDUIT_MATERIALS, "what the conductors run in; PVC stands for every raceway without metal");

export const voltageDrop: QuestionForm<"voltage-drop"> = {
  question: strictly<VoltageDropQuestion>({
    ask: enumOf(everyWord<VoltageDropAsk>({ drop: true, "size-for-limit": true, "longest-run": true })),
    system: enumOf(
      everyWord<VoltageDropQuestion["system"]>({ dc: true, "single-phase": true, "three-phase": true }),
      "single-phase: any two-wire ac circuit; three-phase: a balanced load",
    ),
    voltageV: amount("the voltage at the source", "volts", 100_000),
    loadA: amount("the current of the load", "amperes", AMPERES_MAX),
    sets: count("conductors in parallel", 100),
    metal: enumOf(CONDUCTOR_METALS),
    impedance: taggedUnion("kind", [
      strictly<Impedance<"dc-resistance">>({ kind: enumOf(["dc-resistance"] as const), ...directCurrent }),
      strictly<Impedance<"resistance-and-reactance">>({
        kind: enumOf(["resistance-and-reactance"] as const),
        conduit,
        powerFactor: Type.Optional(
          Type.Number({
            minimum: 0.01,
            maximum: 1,
            description: "the lagging power factor of the load: a number from 0.01 to 1",
          }),
        ),
      }),
      strictly<Impedance<"effective-impedance">>({ kind: enumOf(["effective-impedance"] as const), conduit }),
    ]),
    size: Type.Optional(Size),
    length: Type.Optional(ref(Length)),
    limitPercent: Type.Optional(amount("the largest drop", "percent of the voltage", 100)),
  }),
  example: {
    ask: "drop",
    system: "three-phase",
    voltageV: 480,
    loadA: 150,
    sets: 1,
    metal: "copper",
    impedance: { kind: "resistance-and-reactance", conduit: "steel", powerFactor: 0.9 },
    size: "1/0 AWG",
    length: { value: 300, unit: "ft" },
  },
};
