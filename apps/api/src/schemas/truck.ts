import { Type } from "@sinclair/typebox";
import { enumOf } from "./enum-of.js";
import { orNull } from "./finding.js";
import { ref } from "./ref.js";
import { AnsweredFrom, NoPartNeeded, secondsPerSolve, WithoutPart } from "./stock-plan.js";
import { COUNT_MAX, scope } from "./stock-supply.js";
import { strict } from "./strict.js";
import { label } from "./text.js";

const count = Type.Integer({ minimum: 0 });
const marks = Type.Array(strict({ mark: Type.String(), joints: count }));
const AtHand = strict(
  { partNumber: label(64, "the part number"), parts: Type.Integer({ minimum: 0, maximum: COUNT_MAX }) },
  { $id: "AtHand" },
);

export const TruckQuestion = strict(
  {
    atHand: Type.Array(ref(AtHand), { maxItems: 20_000, description: "what is on the truck or in the gang box" }),
    secondsPerSolve,
    ...scope,
  },
  { $id: "TruckQuestion", examples: [{ atHand: [{ partNumber: "LF-LUG-0109", parts: 12 }] }] },
);

export const TruckAnswer = strict(
  {
    from: ref(AnsweredFrom),
    joints: Type.Integer({ minimum: 0, description: "joints that take a part of the catalogue" }),
    jointsMade: count,
    substitutions: Type.Integer({ minimum: 0, description: "joints made with another part than the schedule's" }),
    objective: Type.String(),
    proven: Type.Boolean({ description: "false when a limit stopped the search" }),
    made: Type.Array(
      strict({
        marks,
        partNumber: Type.String(),
        description: Type.String(),
        joints: count,
        parts: count,
        verdict: enumOf(["accept", "accept-with-conditions"] as const),
        conditions: Type.Array(Type.String()),
        insteadOf: orNull(Type.String()),
      }),
    ),
    missing: Type.Array(
      strict({
        marks,
        joints: count,
        wanted: Type.Array(strict({ partNumber: Type.String(), description: Type.String(), parts: count })),
      }),
    ),
    left: Type.Array(ref(AtHand)),
    notInCatalogue: Type.Array(ref(AtHand)),
    noPartNeeded: Type.Array(ref(NoPartNeeded)),
    withoutPart: Type.Array(ref(WithoutPart)),
    caution: Type.String(),
  },
  {
    $id: "TruckAnswer",
    description: "which joints the parts at hand make, with which substitutions, and what is missing",
  },
);

export const TRUCK_SCHEMAS = [AtHand, TruckQuestion, TruckAnswer];
