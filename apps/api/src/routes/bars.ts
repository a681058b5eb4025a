import type { FastifyInstance } from "fastify";
import { BarsAnswer, BarsQuestion as BarsQuestionSchema } from "../schemas/bars.js";
import { problemAnswers } from "../schemas/problem.js";
import { ref } from "../schemas/ref.js";
import type { BarService, BarsQuestion } from "../services/bars.js";

/** Neutrals and grounds on bars. Nothing is stored. */
export function barRoutes(app: FastifyInstance, bars: BarService): void {
  app.post<{ Body: BarsQuestion }>(
    "/v1/bars",
    {
      schema: {
        tags: ["stock"],
        operationId: "landOnBars",
        summary: "Land neutrals and grounds on bars: one neutral in an opening, grounds together as marked",
        description:
          "Of all ways to do it the one that lands most conductors, then adds fewest bars, then leaves most openings spare. What no line of the marking permits is not done.",
        body: ref(BarsQuestionSchema),
        response: { 200: ref(BarsAnswer), ...problemAnswers },
      },
    },
    ({ body }) => bars.land(body),
  );
}
