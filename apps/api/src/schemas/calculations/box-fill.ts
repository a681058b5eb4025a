import { BOX_CONDUCTOR_MANNERS, type BoxFillQuestion } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { Size } from "../quantity.js";
import { amount, count, countOrNone } from "./amount.js";
import { type QuestionForm, strictly } from "./question-form.js";

const equalConductors = count("equal conductors", 1000);
const kinds = (what: string) => ({ maxItems: 50, description: `${what}: a list of at most 50` });

export const boxFill: QuestionForm<"box-fill"> = {
  question: strictly<BoxFillQuestion>({
    boxVolumeIn3: Type.Optional(amount("the volume marked on the box", "cubic inches", 100_000)),
    conductors: Type.Array(
      strictly<BoxFillQuestion["conductors"][number]>({
        count: equalConductors,
        size: Size,
        manner: enumOf(BOX_CONDUCTOR_MANNERS),
      }),
      kinds("conductors other than equipment grounds"),
    ),
    equipmentGrounds: Type.Array(
      strictly<BoxFillQuestion["equipmentGrounds"][number]>({
        count: equalConductors,
        size: Size,
        isolated: Type.Optional(Type.Boolean({ description: "of an isolated receptacle: true or false" })),
      }),
      kinds("equipment grounds and equipment bonding jumpers"),
    ),
    internalClamps: Type.Boolean({ description: "cable clamps inside the box: true or false" }),
    supportFittings: countOrNone("kinds of luminaire studs and hickeys in the box", 20),
    devices: Type.Array(
      strictly<BoxFillQuestion["devices"][number]>({ largestConductor: Size, gangs: count("gangs it is wide", 20) }),
      kinds("devices, one for each yoke or strap"),
    ),
    terminalBlocks: Type.Optional(
      Type.Array(
        strictly<NonNullable<BoxFillQuestion["terminalBlocks"]>[number]>({ largestConductor: Size }),
        kinds("terminal blocks"),
      ),
    ),
  }),
  example: {
    boxVolumeIn3: 18,
    conductors: [{ count: 4, size: "14 AWG", manner: "ends-or-spliced" }],
    equipmentGrounds: [{ count: 2, size: "14 AWG" }],
    internalClamps: true,
    supportFittings: 0,
    devices: [{ largestConductor: "14 AWG", gangs: 1 }],
  },
};
