import swagger from "@fastify/swagger";
import swaggerUi from "@fastify/swagger-ui";
import type { FastifyInstance } from "fastify";
import { JOINTS_MAX } from "../schemas/job.js";
import { BODY_MAX } from "./strict-bodies.js";

/** The OpenAPI document at /openapi.json, made from the very schemas that requests are checked with; a page at /docs. */
export async function openapi(app: FastifyInstance, version: string): Promise<void> {
  await app.register(swagger, {
    openapi: {
      openapi: "3.1.0",
      info: {
        title: "Landfast",
        version,
        description: [
          "Settles every power joint of an electrical job: which connector, whether it is allowed, and at what torque.",
          "A joint that the rules refuse is an answer with status 200 and verdict reject; a request that is wrong is a problem document (RFC 9457) with one of the codes listed at /problems.",
          `Bodies are JSON of at most ${BODY_MAX} bytes; a job has at most ${JOINTS_MAX} joints. Unknown fields, coerced types, numbers without a unit where one is needed and names given twice are refused. Nothing is filled in unseen.`,
          "Local code, the authority having jurisdiction and a licensed electrician decide.",
        ].join("\n\n"),
        license: { name: "Apache-2.0", identifier: "Apache-2.0" },
      },
      servers: [{ url: "/", description: "this service" }],
      tags: [
        { name: "jobs", description: "jobs and their connector schedules" },
        { name: "checks", description: "questions that store nothing" },
        { name: "candidates", description: "what a joint can be made with, and what helps where nothing fits" },
        { name: "calculations", description: "one number of the trade with its derivation; nothing is stored" },
        { name: "catalogue", description: "the connectors that the service was started with" },
        { name: "catalogues", description: "catalogues of your own: versions, imports, exports" },
        { name: "prices and labor", description: "your own prices and labor units; none is built in" },
        { name: "stock", description: "what to stock and buy for a stored job; nothing is stored" },
        { name: "register", description: "rules, published tables and editions" },
        { name: "service", description: "the service itself" },
      ],
    },
    refResolver: {
      buildLocalReference: (json, _base, _fragment, index) =>
        typeof json["$id"] === "string" ? json["$id"] : `def-${index}`,
    },
  });
  await app.register(swaggerUi, {
    routePrefix: "/docs",
    uiConfig: { deepLinking: true, tryItOutEnabled: true },
    // The page is ours: without these it shows the mark and the bar of the library that draws it.
    logo: { type: "image/svg+xml", content: Buffer.from(MARK) },
    theme: {
      title: "Landfast: how to ask",
      favicon: [{ filename: "mark.svg", rel: "icon", type: "image/svg+xml", sizes: "any", content: MARK }],
      css: [{ filename: "page.css", content: ".swagger-ui .topbar { display: none; }" }],
    },
  });
}

/** A conductor landed under a screw: a line that ends in a ring. */
const MARK =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><path d="M2 16h14" stroke="#334" stroke-width="4"/><circle cx="22" cy="16" r="7" fill="none" stroke="#334" stroke-width="4"/></svg>';
