import type { TSchema } from "@sinclair/typebox";
import type { FastifyInstance } from "fastify";
import { explainRefusal } from "../problems/explain-refusal.js";
import { type Fault, Problem } from "../problems/problem.js";
import { readJson } from "../problems/read-json.js";
import { JOINTS_MAX } from "../schemas/job.js";
import { makeValidators, type Refusal } from "../schemas/validators.js";

declare module "fastify" {
  interface FastifyRequest {
    /** The body as it came; empty where there is none. */
    bodyText: string;
  }
}

/** Bytes that a body may have. */
export const BODY_MAX = 16 * 1024 * 1024;

/** How many bytes a parsed body had, for the validator to know how far to look for faults. */
const sizes = new WeakMap<object, number>();

/**
 * Reads bodies strictly and validates every part of a request: bodies without coercing, dropping or filling in
 * anything; query and path from their text. Answers go out as they are: their schemas only describe them, so that no
 * field is dropped for want of a line in a schema.
 */
export function strictBodies(app: FastifyInstance, components: readonly TSchema[]): void {
  app.decorateRequest("bodyText", "");
  app.removeAllContentTypeParsers();
  app.addContentTypeParser("application/json", { parseAs: "buffer", bodyLimit: BODY_MAX }, (request, body, done) => {
    try {
      const { value, text } = readJson(body as Buffer);
      request.bodyText = text;
      if (typeof value === "object" && value !== null) sizes.set(value, body.length);
      done(null, value);
    } catch (error) {
      done(error as Error);
    }
  });
  const validators = makeValidators(components);
  app.setValidatorCompiler<TSchema>(({ schema, httpPart }) => {
    if (httpPart === "body") {
      const refusalOf = validators.forBody(schema);
      return (value: unknown) => answer(refusalOf(value, sizeOf(value)), "");
    }
    const refusalOf = validators.forText(schema);
    const base = httpPart === "params" ? "/path" : "/query";
    return (value: unknown) => answer(refusalOf(value), base);
  });
  app.setSerializerCompiler(() => JSON.stringify);
}

function sizeOf(value: unknown): number {
  return typeof value === "object" && value !== null ? (sizes.get(value) ?? 0) : 0;
}

function answer(refusal: Refusal, base: string): true | { error: Problem } {
  return refusal === null ? true : { error: refused(explainRefusal(refusal, base)) };
}

function refused(faults: readonly Fault[]): Problem {
  const tooMany = faults.find(({ pointer, detail }) => pointer === "/joints" && detail.includes("more than"));
  if (tooMany !== undefined)
    return new Problem("TOO_MANY_JOINTS", `A job may have ${JOINTS_MAX} joints; split it.`, [tooMany]);
  const [first] = faults;
  const more = faults.length > 1 ? ` (and ${faults.length - 1} more)` : "";
  return new Problem(
    "INVALID_REQUEST",
    first === undefined
      ? "The request is not accepted."
      : `${first.pointer === "" ? "The body" : first.pointer}: ${first.detail}${more}.`,
    faults,
  );
}
