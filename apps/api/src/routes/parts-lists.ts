import { Type } from "@sinclair/typebox";
import type { FastifyInstance } from "fastify";
import { jobId } from "../schemas/job-id.js";
import { FeedersAnswer, FeedersQuestion, PartsList, PartsListQuestion } from "../schemas/parts-list.js";
import { problemAnswers } from "../schemas/problem.js";
import { ref } from "../schemas/ref.js";
import { PARTS_LIST_FORMS, partsListDocument, partsListForm } from "../services/parts-list-documents.js";
import type { FeedersAsked, PartsListRequest, PartsListService } from "../services/parts-lists.js";

const tags = ["stock"];

/** What to buy for a stored job, and the joints of feeders. Nothing is stored. */
export function partsListRoutes(app: FastifyInstance, partsLists: PartsListService): void {
  app.post<{ Params: { id: string }; Body: PartsListRequest }>(
    "/v1/jobs/:id/parts-list",
    {
      schema: {
        tags,
        operationId: "listParts",
        summary: "What to buy for a job: net, spares, packs, accessories, tools, price and labor",
        description: `As ${PARTS_LIST_FORMS.join(" or ")}, chosen by Accept. What is not known is null and named under gaps, never zero.`,
        params: jobId,
        produces: [...PARTS_LIST_FORMS],
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
      const form = partsListForm(headers.accept);
      const answer = await partsLists.list(params.id, body);
      return reply.type(`${form}; charset=utf-8`).header("vary", "accept").send(partsListDocument(form, answer));
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
