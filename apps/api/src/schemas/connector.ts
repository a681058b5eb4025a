import {
  CONDUCTOR_METALS,
  CONNECTOR_FAMILIES,
  CONSTRUCTIONS,
  ELECTRODES,
  JOINT_FUNCTIONS,
  PLACE_LISTINGS,
  STRANDINGS,
} from "@landfast/rules";
import { type TProperties, Type } from "@sinclair/typebox";
import { enumOf } from "./enum-of.js";
import {
  Length,
  numberOrUnmarked,
  Size,
  TemperatureOrUnmarked,
  TorqueOrUnmarked,
  wordsOrUnmarked,
} from "./quantity.js";
import { ref } from "./ref.js";
import { strict, taggedUnion } from "./strict.js";
import { label, text } from "./text.js";

const drive = (kind: string, fields: TProperties = {}) => strict({ kind: enumOf([kind]), ...fields });

export const Drive = taggedUnion(
  "kind",
  [
    drive("socket", {
      acrossFlats: Type.String({
        pattern: "^[1-9][0-9]{0,2}(?:/[1-9][0-9]{0,2})?$",
        maxLength: 7,
        description: 'the width across flats in inches as printed: "5/16"',
      }),
    }),
    drive("external-hex"),
    drive("slotted", {
      screwSize: enumOf(["10-and-larger", "under-10"] as const),
      slotWidth: ref(Length),
      slotLength: ref(Length),
    }),
    drive("slotted-hex", { slotWidth: ref(Length), slotLength: ref(Length) }),
    drive("split-bolt"),
    drive("breakaway"),
    drive("clamp-bolt"),
    drive("hand"),
    drive("none"),
  ],
  { $id: "Drive", description: "how the screw, bolt or other means is driven" },
);

const Screw = strict({
  id: label(40, "the screw's id"),
  drive: ref(Drive),
  torque: Type.Optional(TorqueOrUnmarked),
});

const SizeRange = strict({
  from: Size,
  to: Size,
  strandings: wordsOrUnmarked(STRANDINGS, "the strand forms listed"),
});

const Opening = strict(
  {
    id: label(40, "the opening's id"),
    count: Type.Integer({
      minimum: 1,
      maximum: 100,
      description: "how many such openings: a whole number from 1 to 100",
    }),
    duty: Type.Optional(enumOf(["run", "tap"] as const)),
    ranges: Type.Array(SizeRange, { maxItems: 20 }),
    conductorsMax: Type.Optional(numberOrUnmarked("conductors in one opening", 100, true)),
    shared: Type.Optional(
      strict({
        sameSize: Type.Boolean(),
        sameMetal: Type.Boolean(),
        from: Type.Optional(Size),
        to: Type.Optional(Size),
        metals: Type.Optional(Type.Array(enumOf(CONDUCTOR_METALS), { minItems: 1, maxItems: CONDUCTOR_METALS.length })),
      }),
    ),
    combinations: Type.Optional(
      Type.Array(
        Type.Array(strict({ size: Size, count: Type.Integer({ minimum: 1, maximum: 100 }) }), {
          minItems: 1,
          maxItems: 10,
        }),
        { maxItems: 200 },
      ),
    ),
    screw: Type.Optional(label(40, "the id of the screw that tightens it")),
    stripLength: Type.Optional(ref(Length)),
  },
  { $id: "Opening" },
);

export const HolePattern = strict(
  {
    holes: Type.Integer({ minimum: 1, maximum: 20 }),
    bolt: Type.String({
      pattern: "^(?:[1-9][0-9]?(?:/[1-9][0-9]?)?|[1-9]-[1-9][0-9]?/[1-9][0-9]?|M[1-9][0-9]?)$",
      maxLength: 10,
      description: 'the bolt\'s diameter in inches ("1/2") or its metric thread ("M12")',
    }),
    spacing: Type.Optional(ref(Length)),
  },
  { $id: "HolePattern" },
);

const Mounting = taggedUnion(
  "kind",
  [
    drive("free"),
    drive("integral"),
    drive("pad", { pattern: ref(HolePattern) }),
    drive("frame", { frames: Type.Array(label(60, "the equipment frame"), { maxItems: 100 }) }),
  ],
  { $id: "Mounting" },
);

const Tooling = strict(
  {
    tool: text(120, "the tool"),
    die: Type.Optional(text(120, "the die")),
    crimps: Type.Optional(Type.Integer({ minimum: 1, maximum: 20 })),
  },
  { $id: "Tooling" },
);

const described = {
  partNumber: Type.Optional(label(64, "the part number")),
  description: text(300, "what the part is"),
  family: enumOf(CONNECTOR_FAMILIES),
  construction: enumOf(CONSTRUCTIONS),
  functions: Type.Array(enumOf(JOINT_FUNCTIONS), { minItems: 1, maxItems: JOINT_FUNCTIONS.length, uniqueItems: true }),
  metalMarking: Type.Optional(label(40, "the metal marking as printed")),
  temperature: Type.Optional(TemperatureOrUnmarked),
  voltageV: Type.Optional(numberOrUnmarked("the voltage rating in volts", 100_000, false)),
  insulated: Type.Boolean(),
  openingsApart: Type.Boolean(),
  coverPart: Type.Optional(label(64, "the part number of the cover")),
  listings: Type.Array(strict({ standard: text(60, "the standard") }), { maxItems: 20 }),
  places: Type.Optional(wordsOrUnmarked(PLACE_LISTINGS, "the places it is listed for")),
  lineSide: Type.Optional(enumOf(["marked", "unmarked"] as const)),
  grounding: Type.Optional(
    strict({
      listed: Type.Boolean(),
      electrodes: Type.Array(enumOf(ELECTRODES), { maxItems: ELECTRODES.length, uniqueItems: true }),
      conductorsPerClamp: Type.Optional(numberOrUnmarked("conductors in one clamp", 100, true)),
    }),
  ),
  screws: Type.Array(Screw, { maxItems: 60 }),
  openings: Type.Array(ref(Opening), { minItems: 1, maxItems: 60 }),
  mounting: ref(Mounting),
  pin: Type.Optional(strict({ size: Size, metal: enumOf(CONDUCTOR_METALS) })),
  reusable: Type.Boolean(),
  bodyMetal: Type.Optional(text(60, "the body's metal")),
  plating: Type.Optional(text(60, "the plating")),
  withstands: Type.Optional(Type.Array(text(60, "the agent"), { maxItems: 40 })),
  compound: Type.Optional(enumOf(["required", "pre-filled", "not-needed"] as const)),
  tooling: Type.Optional(ref(Tooling)),
};

/** A connector described in full, as its marking and instructions have it. */
export const Connector = strict(described, { $id: "Connector" });

/** A connector of the catalogue. */
export const CatalogueItem = strict(
  {
    ...described,
    partNumber: label(64, "the part number"),
    status: enumOf(["invented", "supplied"] as const),
    packQuantity: Type.Integer({ minimum: 1 }),
    price: Type.Optional(
      strict({
        amount: Type.String({ pattern: "^[0-9]+(?:\\.[0-9]+)?$" }),
        currency: Type.String({ pattern: "^[A-Z]{3}$" }),
      }),
    ),
    labourHours: Type.Optional(Type.Number({ minimum: 0 })),
  },
  { $id: "CatalogueItem" },
);

export const CONNECTOR_SCHEMAS = [Drive, Opening, HolePattern, Mounting, Tooling, Connector, CatalogueItem];
export { Tooling };
