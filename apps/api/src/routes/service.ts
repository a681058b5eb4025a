import { RULES_VERSION } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import type { FastifyInstance } from "fastify";
import { enumOf } from "../schemas/enum-of.js";
import { problemAnswers } from "../schemas/problem.js";
import { strict } from "../schemas/strict.js";
import type { CatalogueService } from "../services/catalogue.js";
import { assertReady } from "../services/readiness.js";

/** For whoever runs the service. */
export function serviceRoutes(app: FastifyInstance, ping: () => Promise<void>, catalogue: CatalogueService): void {
  app.get(
    "/healthz",
    {
      schema: {
        tags: ["service"],
        operationId: "getHealth",
        summary: "The process answers",
        response: { 200: strict({ status: enumOf(["alive"]) }), "5xx": problemAnswers["5xx"] },
      },
    },
    (_request, reply) => reply.send({ status: "alive" }),
  );
  app.get(
    "/readyz",
    {
      schema: {
        tags: ["service"],
        operationId: "getReadiness",
        summary: "The store can be read and a catalogue is loaded",
        response: {
          200: strict({ status: enumOf(["ready"]), rulesVersion: Type.String() }),
          "5xx": problemAnswers["5xx"],
        },
      },
    },
    async () => {
      await assertReady(ping, catalogue);
      return { status: "ready", rulesVersion: RULES_VERSION };
    },
  );
  app.get("/openapi.json", { schema: { hide: true } }, (_request, reply) => reply.send(app.swagger()));
}
