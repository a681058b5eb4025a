import { parseSize } from "@landfast/rules";
import type { TSchema } from "@sinclair/typebox";
import { Ajv, type AnySchema, type ErrorObject, type Options, type ValidateFunction } from "ajv";

/** Bodies up to this many characters are gone through for every fault; larger ones for the first only. */
export const EVERY_FAULT_UP_TO = 262_144;

/** What a validator answers about a value. */
export type Refusal = readonly ErrorObject[] | null;

/**
 * Makes validators for requests. Bodies are validated strictly: nothing is coerced, dropped or filled in. Query and
 * path arrive as text, so numbers in them are read from text.
 */
export interface Validators {
  /**
   * Bodies: a pass is found by a validator that stops at the first fault, so that a good body costs least; what is
   * wrong with a bad one is found by a second that collects every fault.
   */
  forBody(schema: TSchema): (value: unknown, bytes: number) => Refusal;
  forText(schema: TSchema): (value: unknown) => Refusal;
}

const common: Options = {
  discriminator: true,
  strict: true,
  allowUnionTypes: true,
  strictRequired: false,
  verbose: true,
  removeAdditional: false,
  formats: { "conductor-size": isSize, date: isDate },
};

export function makeValidators(components: readonly TSchema[]): Validators {
  const make = (options: Options): Ajv => {
    const ajv = new Ajv({ ...common, ...options });
    for (const schema of components) ajv.addSchema(schema);
    return ajv;
  };
  const quick = make({ coerceTypes: false, useDefaults: false, allErrors: false });
  const thorough = make({ coerceTypes: false, useDefaults: false, allErrors: true });
  const reading = make({ coerceTypes: true, useDefaults: true, allErrors: true });
  return {
    forBody(schema) {
      // Made when the first body comes: there are many kinds of bodies, and most services are asked few of them.
      let pass: ValidateFunction | undefined;
      let explain: ValidateFunction | undefined;
      return (value, bytes) => {
        pass ??= quick.compile(schema as AnySchema);
        if (pass(value)) return null;
        if (bytes > EVERY_FAULT_UP_TO) return pass.errors ?? [];
        explain ??= thorough.compile(schema as AnySchema);
        explain(value);
        return explain.errors ?? pass.errors ?? [];
      };
    },
    forText(schema) {
      const read = reading.compile(schema as AnySchema);
      return (value) => (read(value) ? null : (read.errors ?? []));
    },
  };
}

function isSize(text: string): boolean {
  return !("problem" in parseSize(text));
}

/** A day that the calendar has: "2024-02-30" is none. */
function isDate(text: string): boolean {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (match === null) return false;
  const [, year = "", month = "", day = ""] = match;
  const date = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)));
  return (
    date.getUTCFullYear() === Number(year) &&
    date.getUTCMonth() === Number(month) - 1 &&
    date.getUTCDate() === Number(day)
  );
}
