import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { Problem } from "../problems/problem.js";
import type { ProblemCode } from "../problems/problem-codes.js";
import { BODY_MAX } from "./strict-bodies.js";

/** What the server's own refusals are called here; anything else that is its fault is INTERNAL. */
const SERVER_REFUSALS: Readonly<Record<string, { readonly code: ProblemCode; readonly detail: string }>> = {
  FST_ERR_CTP_BODY_TOO_LARGE: { code: "BODY_TOO_LARGE", detail: `A body may have ${BODY_MAX} bytes.` },
  FST_ERR_CTP_INVALID_MEDIA_TYPE: { code: "UNSUPPORTED_MEDIA_TYPE", detail: "Send the body as application/json." },
  FST_ERR_CTP_INVALID_CONTENT_LENGTH: {
    code: "MALFORMED_REQUEST",
    detail: "The body has another length than Content-Length says.",
  },
  FST_ERR_CTP_EMPTY_JSON_BODY: { code: "MALFORMED_JSON", detail: "The body is empty." },
  FST_ERR_BAD_URL: { code: "MALFORMED_REQUEST", detail: "The address cannot be decoded." },
};

/** Turns whatever goes wrong into a problem document with one of the documented codes. */
export function problemAnswers(app: FastifyInstance): void {
  app.setErrorHandler((error: FastifyError | Problem | Error, request, reply) => {
    send(problemOf(error, request), request, reply);
  });
  app.setNotFoundHandler((request, reply) => {
    send(new Problem("ROUTE_NOT_FOUND", `There is nothing at ${pathOf(request)}.`), request, reply);
  });
}

/** For every address that a route stands at: the methods it does not take are refused with the list of those it does. */
export function refuseOtherMethods(
  app: FastifyInstance,
  methodsByAddress: ReadonlyMap<string, ReadonlySet<string>>,
): void {
  for (const [url, methods] of methodsByAddress) {
    const others = ["GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS"].filter(
      (method) => !methods.has(method),
    );
    const allow = [...methods].join(", ");
    app.route({
      method: others,
      url,
      schema: { hide: true },
      // Before the body is read: it does not matter what it holds.
      onRequest: () => {
        throw new Problem("METHOD_NOT_ALLOWED", `This address takes ${allow}.`, [], { allow });
      },
      handler: () => undefined,
    });
  }
}

function problemOf(error: FastifyError | Problem | Error, request: FastifyRequest): Problem {
  if (error instanceof Problem) return error;
  const known = "code" in error ? SERVER_REFUSALS[error.code] : undefined;
  if (known !== undefined) return new Problem(known.code, known.detail);
  // The cause goes to the log, never to whoever asked.
  request.log.error({ err: error }, "request failed");
  return new Problem("INTERNAL", "The service failed. Nothing was stored.");
}

function send(problem: Problem, request: FastifyRequest, reply: FastifyReply): void {
  void reply
    .code(problem.kind.status)
    .headers(problem.headers)
    .type("application/problem+json")
    .send(JSON.stringify(problem.document(pathOf(request))));
}

function pathOf(request: FastifyRequest): string {
  const question = request.url.indexOf("?");
  return question === -1 ? request.url : request.url.slice(0, question);
}
