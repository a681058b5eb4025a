import { AREA_UNITS, LENGTH_UNITS } from "@landfast/rules";
import { type TInteger, type TNumber, type TObject, type TUnsafe, Type } from "@sinclair/typebox";
import { enumOf } from "../enum-of.js";
import { strict } from "../strict.js";

/** Smaller figures than this are slips: nothing of this trade is measured so finely. */
const LEAST = 0.001;
const LARGEST = 1_000_000;

/** A number above zero in a unit: amperes, volts, seconds, percent. */
export function amount(what: string, unit: string, maximum: number): TNumber {
  return Type.Number({
    minimum: LEAST,
    maximum,
    description: `${what} in ${unit}: a number from ${LEAST} to ${maximum}`,
  });
}

/** A number that may be zero. */
export function amountOrNone(what: string, unit: string, maximum: number): TNumber {
  return Type.Number({ minimum: 0, maximum, description: `${what} in ${unit}: a number from 0 to ${maximum}` });
}

/** A whole number of things, one or more. */
export function count(what: string, maximum: number): TInteger {
  return Type.Integer({ minimum: 1, maximum, description: `${what}: a whole number from 1 to ${maximum}` });
}

/** A whole number of things, or none. */
export function countOrNone(what: string, maximum: number): TInteger {
  return Type.Integer({ minimum: 0, maximum, description: `${what}: a whole number from 0 to ${maximum}` });
}

/** A length that may be nothing, as the height of a raceway that lies on the roof. */
export function lengthOrNone(what: string): TObject {
  return strict(
    { value: amountOrNone(what, "its unit", LARGEST), unit: enumOf(LENGTH_UNITS) },
    { description: `${what}, with its unit: {"value": 0, "unit": "in"}` },
  );
}

/** An area of something that is there. */
export function areaAboveNone(what: string): TObject {
  return strict(
    { value: amount(what, "its unit", LARGEST), unit: enumOf(AREA_UNITS) },
    { description: `${what}, with its unit: {"value": 0.25, "unit": "in2"}` },
  );
}

/** A trade size of conduit and tubing, as the trade writes it. */
export function tradeSize(what: string): TUnsafe<string> {
  return Type.Unsafe<string>({
    type: "string",
    pattern: "^(?:[1-9](?:-[1-9]/[248])?|[1-9]/[248])$",
    maxLength: 5,
    description: `${what}: "1/2", "2" or "2-1/2"`,
  });
}
