import { CALCULATIONS, type CalculationName } from "@landfast/rules";
import type { FastifyInstance } from "fastify";
import { CALCULATIONS_ON_THE_WIRE, CalculationList } from "../schemas/calculations/calculations.js";
import { problemAnswers } from "../schemas/problem.js";
import { ref } from "../schemas/ref.js";
import {
  answerCalculation,
  type CalculationAsked,
  listCalculations,
  refuseCalculation,
} from "../services/calculations.js";

const tags = ["calculations"];

/** One number of the trade with its derivation: an address for each calculation, so that each is described by itself. */
export function calculationRoutes(app: FastifyInstance): void {
  app.get(
    "/v1/calculations",
    {
      schema: {
        tags,
        operationId: "listCalculations",
        summary: "The calculations, with the clauses of each edition and the facts each needs",
        response: { 200: ref(CalculationList), ...problemAnswers },
      },
    },
    (_request, reply) => reply.send(listCalculations()),
  );

  for (const { name, title, body, finding } of CALCULATIONS_ON_THE_WIRE)
    app.post<{ Body: CalculationAsked<CalculationName> }>(
      `/v1/calculations/${name}`,
      {
        schema: {
          tags,
          operationId: `calculate${title}`,
          summary: CALCULATIONS[name].title,
          description: `Does not see ${CALCULATIONS[name].cannotSee}.`,
          body: ref(body),
          response: { 200: ref(finding), ...problemAnswers },
        },
      },
      (request, reply) => reply.send(answerCalculation(name, request.body)),
    );

  app.route<{ Params: { name: string } }>({
    method: ["GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS"],
    url: "/v1/calculations/:name",
    schema: { hide: true },
    // Before the body is read: it does not matter what it holds.
    onRequest: (request) => refuseCalculation(request.params.name),
    handler: () => undefined,
  });
}
