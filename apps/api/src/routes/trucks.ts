import type { FastifyInstance } from "fastify";
import { jobId } from "../schemas/job-id.js";
import { problemAnswers } from "../schemas/problem.js";
import { ref } from "../schemas/ref.js";
import { TruckAnswer, TruckQuestion as TruckQuestionSchema } from "../schemas/truck.js";
import type { TruckQuestion, TruckService } from "../services/trucks.js";

/** What can be made of a stored job with the parts at hand. Nothing is stored. */
export function truckRoutes(app: FastifyInstance, trucks: TruckService): void {
  app.post<{ Params: { id: string }; Body: TruckQuestion }>(
    "/v1/jobs/:id/truck",
    {
      schema: {
        tags: ["stock"],
        operationId: "makeFromTruck",
        summary: "Which joints the parts at hand make, with which substitutions, and what is missing",
        description:
          "As many joints as can be are made, then as few as can be with another part than the schedule's. Every part proposed is one that the rules accept for that joint.",
        params: jobId,
        body: ref(TruckQuestionSchema),
        response: { 200: ref(TruckAnswer), ...problemAnswers },
      },
    },
    ({ params, body }) => trucks.makeable(params.id, body),
  );
}
