import type { MarkedTorque, ToolBit, TorqueQuestion, TorqueTool } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { Drive } from "../connector.js";
import { enumOf } from "../enum-of.js";
import { day, Size, Torque, Unmarked } from "../quantity.js";
import { ref } from "../ref.js";
import { strict, taggedUnion } from "../strict.js";
import { everyWord, type QuestionForm, strictly } from "./question-form.js";

const bit = taggedUnion("kind", [
  strictly<Extract<ToolBit, { kind: "recessed" }>>({
    kind: enumOf(["recessed"] as const),
    acrossFlats: Type.String({
      pattern: "^[1-9][0-9]{0,2}(?:/[1-9][0-9]{0,2})?$",
      maxLength: 7,
      description: 'the width across flats in inches as printed: "5/16"',
    }),
  }),
  strictly<Extract<ToolBit, { kind: "external-hex" }>>({ kind: enumOf(["external-hex"] as const) }),
  strictly<Extract<ToolBit, { kind: "slotted" }>>({ kind: enumOf(["slotted"] as const) }),
]);

export const torque: QuestionForm<"torque"> = {
  question: strictly<TorqueQuestion>({
    drive: ref(Drive),
    marked: Type.Optional(
      Type.Union(
        [
          Unmarked,
          strictly<MarkedTorque>({
            torque: ref(Torque),
            on: enumOf(everyWord<MarkedTorque["on"]>({ equipment: true, connector: true })),
          }),
        ],
        { description: 'the torque with the part it is marked on, or "unmarked" where neither part gives one' },
      ),
    ),
    largestConductor: Type.Optional(Size),
    drivenBy: Type.Optional(enumOf(everyWord<NonNullable<TorqueQuestion["drivenBy"]>>({ slot: true, hexagon: true }))),
    tool: Type.Optional(
      strictly<TorqueTool>({
        from: ref(Torque),
        to: ref(Torque),
        bits: Type.Array(bit, { minItems: 1, maxItems: 50, description: "the bits of the tool: a list of 1 to 50" }),
        calibration: Type.Optional(
          Type.Union([enumOf(["none"] as const), strict({ validUntil: day("calibration valid until") })], {
            description: 'the last day of the calibration, {"validUntil": "2026-05-31"}, or "none"',
          }),
        ),
      }),
    ),
    usedOn: Type.Optional(day("the day of use")),
  }),
  example: {
    drive: { kind: "socket", acrossFlats: "5/16" },
    marked: "unmarked",
    largestConductor: "3/0 AWG",
    tool: {
      from: { value: 5, unit: "lbf-ft" },
      to: { value: 75, unit: "lbf-ft" },
      bits: [{ kind: "recessed", acrossFlats: "5/16" }],
      calibration: { validUntil: "2026-06-30" },
    },
    usedOn: "2026-05-31",
  },
};
