import { parseSize } from "@landfast/rules";
import type { ErrorObject } from "ajv";
import { type Fault, pointerTo } from "./problem.js";

interface SchemaText {
  readonly type?: string | readonly string[];
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly description?: string;
  readonly properties?: Readonly<Record<string, unknown>>;
  readonly format?: string;
}

const COMPARISONS: Readonly<Record<string, string>> = { ">=": "at least", "<=": "at most", ">": "above", "<": "below" };

/** Faults of one request that are gone through; the rest would not be shown. */
const LOOKED_AT = 500;

/**
 * Says in plain words where a request departs from its schema and what is accepted there. Expects errors made with
 * `verbose`, so that each carries the schema and the value.
 * @param base what stands before the pointer: "" for the body, "/query" or "/path" for the other parts.
 */
export function explainRefusal(all: readonly ErrorObject[], base: string): readonly Fault[] {
  const errors = all.slice(0, LOOKED_AT);
  const faults = new Map<string, Fault>();
  const choices = errors.filter(({ keyword }) => keyword === "anyOf");
  for (const error of errors) {
    if (isEchoOfAnother(error, choices)) continue;
    const fault = faultOf(error, base);
    // One place, one sentence: the first says what is wrong with the form, later ones follow from it.
    const key =
      error.keyword === "additionalProperties" || error.keyword === "required" || error.keyword === "discriminator"
        ? `${fault.pointer} name`
        : fault.pointer;
    if (!faults.has(key)) faults.set(key, fault);
  }
  return [...faults.values()];
}

/**
 * A choice between a word and an object reports every branch. When an object was sent the word's complaint says
 * nothing; when anything else was sent, the choice itself is the complaint.
 */
function isEchoOfAnother(error: ErrorObject, choices: readonly ErrorObject[]): boolean {
  if (error.keyword === "anyOf") return isObject(error.data);
  const choice = choices.find(({ instancePath }) => instancePath === error.instancePath);
  if (choice === undefined) return false;
  return !(isObject(choice.data) && (error.keyword === "additionalProperties" || error.keyword === "required"));
}

function isObject(value: unknown): boolean {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function faultOf(error: ErrorObject, base: string): Fault {
  const pointer = `${base}${error.instancePath}`;
  const schema = (error.parentSchema ?? {}) as SchemaText;
  const params = error.params as Readonly<Record<string, unknown>>;
  switch (error.keyword) {
    case "additionalProperties": {
      const name = String(params["additionalProperty"]);
      const known = Object.keys(schema.properties ?? {});
      const near = nearest(name, known);
      return {
        pointer: pointerTo(pointer, name),
        detail: `there is no field "${shorten(name)}" here${near === undefined ? "" : `; is "${near}" meant?`}`,
        accepted: known.length === 0 ? "no field at all" : `the fields ${known.join(", ")}`,
      };
    }
    case "required": {
      const name = String(params["missingProperty"]);
      return {
        pointer: pointerTo(pointer, name),
        detail: `the field "${name}" is missing`,
        accepted: acceptedBy(schema.properties?.[name] ?? { enum: tagsOf(error.parentSchema, name) }),
      };
    }
    case "type":
      return { pointer, detail: `${shown(error.data)} is not ${typeText(schema)}`, accepted: acceptedBy(schema) };
    case "enum":
    case "const":
      return {
        pointer,
        detail: `${shown(error.data)} is not one of the words accepted here`,
        accepted: acceptedBy(schema),
      };
    case "discriminator": {
      const tag = String(params["tag"]);
      const words = tagsOf(error.parentSchema, tag);
      const detail =
        params["tagValue"] === undefined
          ? `the field "${tag}" is missing`
          : `${shown(params["tagValue"])} is not a known ${tag}`;
      return { pointer: pointerTo(pointer, tag), detail, accepted: `one of ${words.join(", ")}` };
    }
    case "format": {
      const problem = schema.format === "conductor-size" ? parseSize(String(error.data)) : undefined;
      return {
        pointer,
        detail:
          problem !== undefined && "problem" in problem
            ? problem.problem
            : `${shown(error.data)} is not a ${schema.format ?? ""}`,
        accepted: acceptedBy(schema),
      };
    }
    case "minimum":
    case "maximum":
    case "exclusiveMinimum":
    case "exclusiveMaximum":
      return {
        pointer,
        detail: `${shown(error.data)} is outside the limit: it must be ${COMPARISONS[String(params["comparison"])] ?? ""} ${String(params["limit"])}`,
        accepted: acceptedBy(schema),
      };
    case "minItems":
    case "maxItems":
      return { pointer, detail: `the list ${error.message ?? "has a wrong length"}`, accepted: acceptedBy(schema) };
    case "minProperties":
    case "maxProperties":
      return {
        pointer,
        detail: "exactly one of its fields must be given",
        accepted: `one of the fields ${Object.keys(schema.properties ?? {}).join(", ")}`,
      };
    case "anyOf":
      return { pointer, detail: `${shown(error.data)} is not accepted here`, accepted: acceptedBy(schema) };
    default:
      return {
        pointer,
        detail: `${shown(error.data)} ${error.message ?? "is not accepted"}`,
        accepted: acceptedBy(schema),
      };
  }
}

function acceptedBy(schema: SchemaText): string {
  if (schema.enum !== undefined) return `one of ${schema.enum.map(String).join(", ")}`;
  if (schema.const !== undefined) return JSON.stringify(schema.const);
  if (schema.description !== undefined) return schema.description;
  return typeText(schema);
}

function typeText({ type }: SchemaText): string {
  if (Array.isArray(type)) return type.map((one: string) => typeText({ type: one })).join(" or ");
  switch (type) {
    case "object":
      return "an object";
    case "array":
      return "a list";
    case "integer":
      return "a whole number";
    case "number":
      return "a finite number";
    case "string":
      return "a text";
    case "boolean":
      return "true or false";
    default:
      return "what the OpenAPI document says";
  }
}

function tagsOf(schema: unknown, tag: string): readonly string[] {
  const branches =
    (schema as { oneOf?: readonly { properties?: Record<string, SchemaText> }[] } | undefined)?.oneOf ?? [];
  return branches.flatMap((branch) => (branch.properties?.[tag]?.enum ?? []).map(String));
}

/** The value as it was sent, cut short. */
function shown(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "number" && !Number.isFinite(value)) return "a number beyond all bounds";
  if (Array.isArray(value)) return "a list";
  if (typeof value === "object" && value !== null) return "an object";
  return shorten(JSON.stringify(value));
}

function shorten(text: string): string {
  return text.length <= 60 ? text : `${text.slice(0, 57)}…`;
}

/** A known name that is at most two letters away from what was written. */
function nearest(name: string, known: readonly string[]): string | undefined {
  if (name.length > 40) return undefined;
  return known
    .map((candidate) => ({ candidate, distance: lettersApart(name.toLowerCase(), candidate.toLowerCase()) }))
    .filter(({ distance, candidate }) => distance <= 2 && distance < candidate.length)
    .sort((a, b) => a.distance - b.distance)[0]?.candidate;
}

/** How many letters must be put in, taken out or changed to turn one text into the other. */
function lettersApart(from: string, to: string): number {
  let previous = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let i = 1; i <= from.length; i += 1) {
    const current = [i];
    for (let j = 1; j <= to.length; j += 1)
      current[j] = Math.min(
        (previous[j] ?? 0) + 1,
        (current[j - 1] ?? 0) + 1,
        (previous[j - 1] ?? 0) + (from[i - 1] === to[j - 1] ? 0 : 1),
      );
    previous = current;
  }
  return previous[to.length] ?? 0;
}
