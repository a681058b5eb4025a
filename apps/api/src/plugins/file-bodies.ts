import type { FastifyInstance } from "fastify";
import { Problem } from "../problems/problem.js";
import { BODY_MAX } from "./strict-bodies.js";

/** Media types of the files that are taken, by the form in which they are read. */
export const FILE_TYPES = {
  "text/csv": "csv",
  "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet": "xlsx",
} as const;

const CHARSETS = /^(?:utf-8|utf-16|utf-16le)$/i;

/**
 * Makes the routes of one scope take files instead of JSON: the body is handed on as the bytes that came. What is in
 * them is judged by whoever reads the file, so it is not validated here.
 */
export function fileBodies(scope: FastifyInstance): void {
  scope.removeAllContentTypeParsers();
  for (const type of Object.keys(FILE_TYPES))
    scope.addContentTypeParser(type, { parseAs: "buffer", bodyLimit: BODY_MAX }, (request, body, done) => {
      const charset = /;\s*charset="?([^";\s]+)/i.exec(request.headers["content-type"] ?? "")?.[1];
      if (charset !== undefined && !CHARSETS.test(charset))
        done(new Problem("UNSUPPORTED_MEDIA_TYPE", `Files in ${charset.slice(0, 40)} are not taken; send UTF-8.`));
      else done(null, body);
    });
  scope.addHook("preValidation", (request, _reply, done) => {
    if (Buffer.isBuffer(request.body)) done();
    else
      done(
        new Problem("UNSUPPORTED_MEDIA_TYPE", `No file was sent; send one as ${Object.keys(FILE_TYPES).join(" or ")}.`),
      );
  });
  const validate = scope.validatorCompiler;
  scope.setValidatorCompiler((route) =>
    route.httpPart === "body" || validate === undefined ? () => true : validate(route),
  );
}
