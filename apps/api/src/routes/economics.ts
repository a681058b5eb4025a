import type { FastifyInstance } from "fastify";
import { EconomicsAnswer, EconomicsQuestion } from "../schemas/economics.js";
import { jobId } from "../schemas/job-id.js";
import { problemAnswers } from "../schemas/problem.js";
import { ref } from "../schemas/ref.js";
import type { EconomicsRequest, EconomicsService } from "../services/economics.js";

/** Mechanical against compression for a stored job. Nothing is stored. */
export function economicsRoutes(app: FastifyInstance, economics: EconomicsService): void {
  app.post<{ Params: { id: string }; Body: EconomicsRequest }>(
    "/v1/jobs/:id/economics",
    {
      schema: {
        tags: ["stock"],
        operationId: "compareWays",
        summary: "Mechanical against compression for the joints that both can make, with the break-even count",
        description:
          "Parts, what a joint takes besides, tools and dies, hours, set-up and part numbers, each input shown. No price and no hour is built in: what is not known is null, and so is what rests on it.",
        params: jobId,
        body: ref(EconomicsQuestion),
        response: { 200: ref(EconomicsAnswer), ...problemAnswers },
      },
    },
    ({ params, body }) => economics.compare(params.id, body),
  );
}
