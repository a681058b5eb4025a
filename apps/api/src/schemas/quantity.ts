import { AREA_UNITS, LENGTH_UNITS, TEMPERATURE_UNITS, TORQUE_UNITS } from "@landfast/rules";
import { type TString, type TUnion, Type } from "@sinclair/typebox";
import { enumOf } from "./enum-of.js";
import { ref } from "./ref.js";
import { strict } from "./strict.js";

/** No length, area or torque of this trade comes near it. */
const LARGEST = 1_000_000;

const positive = (what: string) =>
  Type.Number({ exclusiveMinimum: 0, maximum: LARGEST, description: `${what}: a number above 0, at most ${LARGEST}` });

export const Length = strict(
  { value: positive("the length"), unit: enumOf(LENGTH_UNITS) },
  { $id: "Length", description: 'a length with its unit: {"value": 14, "unit": "in"}' },
);
export const Area = strict(
  {
    value: Type.Number({ minimum: 0, maximum: LARGEST, description: `the area: a number from 0 to ${LARGEST}` }),
    unit: enumOf(AREA_UNITS),
  },
  { $id: "Area", description: 'an area with its unit: {"value": 16, "unit": "in2"}' },
);
export const Torque = strict(
  { value: positive("the torque"), unit: enumOf(TORQUE_UNITS) },
  { $id: "Torque", description: 'a torque with its unit: {"value": 275, "unit": "lbf-in"}' },
);
export const Temperature = strict(
  {
    value: Type.Number({ minimum: -100, maximum: 2000, description: "the temperature: a number from -100 to 2000" }),
    unit: enumOf(TEMPERATURE_UNITS),
  },
  { $id: "Temperature", description: 'a temperature with its unit: {"value": 75, "unit": "Cel"}' },
);

/** "unmarked": the part was looked at and bears no such mark. */
export const Unmarked = enumOf(["unmarked"] as const);

const description = 'the value with its unit, or "unmarked" where the part was looked at and bears no such mark';
export const TemperatureOrUnmarked = Type.Union([Unmarked, ref(Temperature)], { description });
export const TorqueOrUnmarked = Type.Union([Unmarked, ref(Torque)], { description });

/** A number or the word "unmarked". */
export function numberOrUnmarked(what: string, maximum: number, whole: boolean): TUnion {
  const number = whole ? Type.Integer({ minimum: 1, maximum }) : Type.Number({ exclusiveMinimum: 0, maximum });
  return Type.Union([Unmarked, number], {
    description: `${what}: ${whole ? "a whole number from 1" : "a number above 0"} up to ${maximum}, or "unmarked" where the part bears no such mark`,
  });
}

/** Words of a closed list, or "unmarked". */
export function wordsOrUnmarked(words: readonly string[], what: string): TUnion {
  return Type.Union([Unmarked, Type.Array(enumOf(words), { minItems: 1, maxItems: words.length, uniqueItems: true })], {
    description: `${what}: a list of ${words.join(", ")}, or "unmarked" where the part bears no such mark`,
  });
}

/** A conductor size as text with its system. */
export const Size = Type.String({
  format: "conductor-size",
  maxLength: 20,
  description: 'a conductor size with its system: "14 AWG", "4/0 AWG", "250 kcmil" or "35 mm2"',
});

/** Decimal text, 0 or more: money and hours are never binary fractions. */
export function decimal(what: string): TString {
  return Type.String({
    pattern: "^[0-9]{1,15}(?:\\.[0-9]{1,12})?$",
    maxLength: 28,
    description: `${what}: decimal text, 0 or more: "12.50"`,
  });
}

/** A calendar day. */
export function day(what: string): TString {
  return Type.String({ format: "date", maxLength: 10, description: `${what}: a day such as "2026-03-31"` });
}
