import { Type } from "@sinclair/typebox";
import type { FastifyInstance } from "fastify";
import {
  JointCandidates,
  CandidatesQuestion as QuestionSchema,
  Remedies,
  RemediesQuestion as RemediesSchema,
} from "../schemas/candidates.js";
import { problemAnswers } from "../schemas/problem.js";
import { ref } from "../schemas/ref.js";
import { strict } from "../schemas/strict.js";
import type { CandidateService, CandidatesQuestion, RemediesQuestion } from "../services/candidates.js";

/** What a catalogue offers for a joint, and what helps where it offers nothing. Nothing is stored. */
export function candidateRoutes(app: FastifyInstance, candidates: CandidateService): void {
  app.post<{ Body: CandidatesQuestion }>(
    "/v1/candidates",
    {
      schema: {
        tags: ["candidates"],
        operationId: "findCandidates",
        summary: "Every connector that a joint can be made with, best first, and why not the others",
        body: ref(QuestionSchema),
        response: { 200: ref(JointCandidates), ...problemAnswers },
      },
    },
    ({ body }) => candidates.forJoint(body),
  );

  app.post<{ Body: RemediesQuestion }>(
    "/v1/remedies",
    {
      schema: {
        tags: ["candidates"],
        operationId: "findRemedies",
        summary: "Ways to land a conductor that does not land as it is, each checked at both ends",
        body: ref(RemediesSchema),
        response: { 200: ref(Remedies), ...problemAnswers },
      },
    },
    ({ body }) => candidates.remedies(body),
  );

  app.get<{ Params: { id: string; mark: string } }>(
    "/v1/jobs/:id/joints/:mark/candidates",
    {
      schema: {
        tags: ["candidates"],
        operationId: "getJointCandidates",
        summary: "Every connector that a joint of a stored job can be made with; parts of its other marks go first",
        params: strict({
          id: Type.String({ minLength: 1, maxLength: 64, description: "the job's id" }),
          mark: Type.String({ minLength: 1, maxLength: 64, description: "the joint's mark" }),
        }),
        response: { 200: ref(JointCandidates), ...problemAnswers },
      },
    },
    ({ params }) => candidates.forStoredJoint(params.id, params.mark),
  );
}
