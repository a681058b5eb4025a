import type { FastifyInstance } from "fastify";
import { JointFinding } from "../schemas/finding.js";
import { CompatibilityQuestion as QuestionSchema } from "../schemas/job.js";
import { problemAnswers } from "../schemas/problem.js";
import { ref } from "../schemas/ref.js";
import type { CatalogueService } from "../services/catalogue.js";
import { type CompatibilityQuestion, checkCompatibility } from "../services/compatibility.js";

/** Questions that store nothing. */
export function checkRoutes(app: FastifyInstance, catalogue: CatalogueService): void {
  app.post<{ Body: CompatibilityQuestion }>(
    "/v1/checks/compatibility",
    {
      schema: {
        tags: ["checks"],
        operationId: "checkCompatibility",
        summary: "Is this joint allowed with this connector, and how is it made?",
        body: ref(QuestionSchema),
        response: { 200: ref(JointFinding), ...problemAnswers },
      },
    },
    async ({ body }) => checkCompatibility(body, await catalogue.current()),
  );
}
