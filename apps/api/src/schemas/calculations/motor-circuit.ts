import {
  CONDUCTOR_METALS,
  MOTOR_BUILDS,
  MOTOR_KINDS,
  type Motor,
  type MotorCircuitAsk,
  type MotorCircuitQuestion,
  type MotorConductor,
  SHORT_CIRCUIT_DEVICES,
  type ShortCircuitDevice,
} from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { numberOrUnmarked, Temperature, TemperatureOrUnmarked } from "../quantity.js";
import { ref } from "../ref.js";
import { amount } from "./amount.js";
import { AMPERES_MAX } from "./circuit-load.js";
import { everyWord, type QuestionForm, strictly } from "./question-form.js";

const MotorForm = strictly<Motor>({
  kind: enumOf(MOTOR_KINDS),
  horsepower: Type.String({
    pattern: "^(?:[1-9][0-9]{0,3}(?:-[1-9]/[1-9])?|[1-9]/[1-9])$",
    maxLength: 8,
    description: 'the horsepower as printed: "1/2", "7-1/2" or "25"',
  }),
  voltageV: amount("the voltage", "volts", 100_000),
  build: enumOf(MOTOR_BUILDS),
  nameplateA: Type.Optional(amount("the current of the nameplate", "amperes", AMPERES_MAX)),
});

export const motorCircuit: QuestionForm<"motor-circuit"> = {
  question: strictly<MotorCircuitQuestion>({
    ask: enumOf(everyWord<MotorCircuitAsk>({ conductor: true, overload: true, "short-circuit-device": true })),
    motor: MotorForm,
    otherMotors: Type.Optional(
      Type.Array(MotorForm, { maxItems: 100, description: "the other motors on the conductor: a list of up to 100" }),
    ),
    otherContinuousLoadA: Type.Optional(amount("the other continuous load", "amperes", AMPERES_MAX)),
    otherLoadA: Type.Optional(amount("the other load that is not continuous", "amperes", AMPERES_MAX)),
    shortCircuitDevice: Type.Optional(
      strictly<ShortCircuitDevice>({
        kind: enumOf(SHORT_CIRCUIT_DEVICES),
        efficientDesignB: Type.Optional(Type.Boolean()),
        failsToStart: Type.Optional(Type.Boolean()),
      }),
    ),
    duty: enumOf(everyWord<MotorCircuitQuestion["duty"]>({ continuous: true, other: true })),
    conductor: Type.Optional(
      strictly<MotorConductor>({
        metal: enumOf(CONDUCTOR_METALS),
        insulationRating: Type.Optional(ref(Temperature)),
        terminalTemperature: Type.Optional(TemperatureOrUnmarked),
        designLetter: Type.Optional(
          Type.String({
            pattern: "^(?:[A-Z]|unmarked)$",
            maxLength: 8,
            description: 'the design letter on the motor, "B", or "unmarked"',
          }),
        ),
      }),
    ),
    serviceFactor: Type.Optional(numberOrUnmarked("the service factor on the nameplate", 10, false)),
    temperatureRiseC: Type.Optional(numberOrUnmarked("the temperature rise on the nameplate in Cel", 500, false)),
  }),
  example: {
    ask: "conductor",
    motor: { kind: "squirrel-cage", horsepower: "25", voltageV: 460, build: "ordinary", nameplateA: 31.6 },
    duty: "continuous",
    conductor: {
      metal: "copper",
      insulationRating: { value: 90, unit: "Cel" },
      terminalTemperature: { value: 75, unit: "Cel" },
      designLetter: "B",
    },
  },
};
