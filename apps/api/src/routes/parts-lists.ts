import { Type } from "@sinclair/typebox";
import type { FastifyInstance } from "fastify";
import { partsListCsv } from "../documents/parts-list-csv.js";
import { jobId } from "../schemas/job-id.js";
import { FeedersAnswer, FeedersQuestion, PartsList, PartsListQuestion } from "../schemas/parts-list.js";
import { problemAnswers } from "../schemas/problem.js";
import { ref } from "../schemas/ref.js";
import { answerForm } from "../services/answer-form.js";
import type { FeedersAsked, PartsListRequest, PartsListService } from "../services/parts-lists.js";

const tags = ["stock"];
const FORMS = ["application/json", "text/csv"] as const;

/** What to buy for a stored job, and the joints of feeders. Nothing is stored. */
export function partsListRoutes(app: FastifyInstance, partsLists: PartsListService): void {
  app.post<{ Params: { id: string }; Body: PartsListRequest }>(
    "/v1/jobs/:id/parts-list",
    {
      schema: {
        tags,
        operationId: "listParts",
        summary: "What to buy for a job: net, spares, packs, accessories, tools, price and labor",
        description: `As ${FORMS.join(" or ")}, chosen by Accept. What is not known is null and named under gaps, never zero.`,
        params: jobId,
        produces: [...FORMS],
        body: ref(PartsListQuestion),
        response: {
          200: {
            description: "The parts list",
            content: { "application/json": { schema: ref(PartsList) }, "text/csv": { schema: Type.String() } },
          },
          ...problemAnswers,
        },
      },
    },
    async ({ params, headers, body }, reply) => {
      const form = answerForm(headers.accept, FORMS, "A parts list");
      const answer = await partsLists.list(params.id, body);
      void reply.type(`${form}; charset=utf-8`).header("vary", "accept");
      return form === "text/csv" ? partsListCsv(answer.list) : answer;
    },
  );

  app.post<{ Body: FeedersAsked }>(
    "/v1/feeders",
    {
      schema: {
        tags,
        operationId: "expandFeeders",
        summary: "The joints that feeders take at both ends, at devices, splices and taps",
        body: ref(FeedersQuestion),
        response: { 200: ref(FeedersAnswer), ...problemAnswers },
      },
    },
    async ({ body }) => ({ feeders: await partsLists.expand(body.feeders) }),
  );
}
