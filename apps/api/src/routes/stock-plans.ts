import { tradeOffSvg } from "@landfast/stock";
import { Type } from "@sinclair/typebox";
import type { FastifyInstance, FastifyReply } from "fastify";
import { jobId } from "../schemas/job-id.js";
import { problemAnswers } from "../schemas/problem.js";
import { ref } from "../schemas/ref.js";
import {
  StockPlan,
  StockPlanQuestion as StockPlanQuestionSchema,
  TradeOff,
  TradeOffQuestion as TradeOffQuestionSchema,
} from "../schemas/stock-plan.js";
import { answerForm } from "../services/answer-form.js";
import type { JobTradeOff, StockPlanQuestion, StockPlanService, TradeOffQuestion } from "../services/stock-plans.js";

const tags = ["stock"];
const FORMS = ["application/json", "image/svg+xml"] as const;

/** Which part numbers to stock for a stored job, and what fewer of them cost. Nothing is stored. */
export function stockPlanRoutes(app: FastifyInstance, plans: StockPlanService): void {
  app.post<{ Params: { id: string }; Body: StockPlanQuestion }>(
    "/v1/jobs/:id/stock-plan",
    {
      schema: {
        tags,
        operationId: "planStock",
        summary: "Which part numbers to stock for a job, and how many to buy",
        description:
          "Chooses among all connectors of the catalogue that the rules accept for each class of equal joints; equal joints get the same part. The answer says whether the plan is proven to be the best, else a bound and the gap to it; what each part is there for; and which joints no part makes.",
        params: jobId,
        body: ref(StockPlanQuestionSchema),
        response: { 200: ref(StockPlan), ...problemAnswers },
      },
    },
    ({ params, body }) => plans.plan(params.id, body),
  );

  const answers = {
    200: {
      description: "The cheapest plan at every number of part numbers, as data or as a picture",
      content: {
        "application/json": { schema: ref(TradeOff) },
        "image/svg+xml": { schema: Type.String() },
      },
    },
    ...problemAnswers,
  };
  const send = async (reply: FastifyReply, accept: string | undefined, work: () => Promise<JobTradeOff>) => {
    const form = answerForm(accept, FORMS, "A trade-off");
    const tradeOff = await work();
    void reply.type(`${form}; charset=utf-8`).header("vary", "accept");
    return form === "image/svg+xml" ? tradeOffSvg(tradeOff.curve) : tradeOff;
  };

  app.get<{ Params: { id: string } }>(
    "/v1/jobs/:id/stock-plan/trade-off",
    {
      schema: {
        tags,
        operationId: "getTradeOff",
        summary: "What fewer part numbers cost: all joints, the catalogue's prices and packs, nothing on hand",
        description: `As ${FORMS.join(" or ")}, chosen by Accept.`,
        params: jobId,
        produces: [...FORMS],
        response: answers,
      },
    },
    ({ params, headers }, reply) => send(reply, headers.accept, () => plans.tradeOff(params.id, {})),
  );

  app.post<{ Params: { id: string }; Body: TradeOffQuestion }>(
    "/v1/jobs/:id/stock-plan/trade-off",
    {
      schema: {
        tags,
        operationId: "askTradeOff",
        summary: "What fewer part numbers cost, with prices, stock and joints of your choosing",
        description: `As ${FORMS.join(" or ")}, chosen by Accept.`,
        params: jobId,
        produces: [...FORMS],
        body: ref(TradeOffQuestionSchema),
        response: answers,
      },
    },
    ({ params, headers, body }, reply) => send(reply, headers.accept, () => plans.tradeOff(params.id, body)),
  );
}
