import { Type } from "@sinclair/typebox";
import type { FastifyInstance } from "fastify";
import { Job as JobSchema } from "../schemas/job.js";
import { cursorOf, paging } from "../schemas/paging.js";
import { problemAnswers } from "../schemas/problem.js";
import { ref } from "../schemas/ref.js";
import { ConnectorSchedule, JobPage, ScheduledJob, StoredJob, StoredJoint } from "../schemas/schedule.js";
import { strict } from "../schemas/strict.js";
import { cursorPlace } from "../services/cursor-place.js";
import type { JobService, PostedJob } from "../services/jobs.js";
import { formOf, SCHEDULE_FORMS, scheduleDocument } from "../services/schedule-documents.js";

const JSON_TYPE = "application/json; charset=utf-8";

const jobId = strict({ id: Type.String({ minLength: 1, maxLength: 64, description: "the job's id" }) });

/** Jobs: posted, listed, and read back as they were stored. */
export function jobRoutes(app: FastifyInstance, jobs: JobService): void {
  app.post<{ Body: PostedJob }>(
    "/v1/jobs",
    {
      schema: {
        tags: ["jobs"],
        operationId: "postJob",
        summary: "Store a job and make its connector schedule",
        body: ref(JobSchema),
        response: { 201: ref(ScheduledJob), ...problemAnswers },
      },
    },
    async (request, reply) => {
      const { job, schedule } = await jobs.add(request.body, request.bodyText);
      return reply
        .code(201)
        .header("location", `/v1/jobs/${job.id}`)
        .type(JSON_TYPE)
        .send(`{"job":${JSON.stringify(job)},"schedule":${schedule}}`);
    },
  );

  app.get<{ Querystring: { limit: number; cursor?: string } }>(
    "/v1/jobs",
    {
      schema: {
        tags: ["jobs"],
        operationId: "listJobs",
        summary: "List jobs, newest first",
        querystring: strict(paging),
        response: { 200: ref(JobPage), ...problemAnswers },
      },
    },
    async ({ query }) => {
      const page = await jobs.list(query.limit, cursorPlace(query.cursor));
      return { jobs: page.jobs, next: cursorOf(page.next) };
    },
  );

  app.get<{ Params: { id: string } }>(
    "/v1/jobs/:id",
    {
      schema: {
        tags: ["jobs"],
        operationId: "getJob",
        summary: "A job as it was posted, and what its schedule was made with",
        params: jobId,
        response: { 200: ref(StoredJob), ...problemAnswers },
      },
    },
    async (request, reply) => {
      const { job, posted } = await jobs.get(request.params.id);
      return reply.type(JSON_TYPE).send(`{"job":${JSON.stringify(job)},"posted":${posted}}`);
    },
  );

  app.get<{ Params: { id: string } }>(
    "/v1/jobs/:id/schedule",
    {
      schema: {
        tags: ["jobs"],
        operationId: "getSchedule",
        summary: "The connector schedule, as stored",
        description: `As ${SCHEDULE_FORMS.join(", ")}, chosen by Accept.`,
        params: jobId,
        produces: [...SCHEDULE_FORMS],
        response: {
          200: {
            description: "The connector schedule",
            content: {
              "application/json": { schema: ref(ConnectorSchedule) },
              "text/csv": { schema: Type.String() },
              "text/html": { schema: Type.String() },
            },
          },
          ...problemAnswers,
        },
      },
    },
    async (request, reply) => {
      const form = formOf(request.headers.accept);
      const schedule = await jobs.schedule(request.params.id);
      return reply.type(`${form}; charset=utf-8`).header("vary", "accept").send(scheduleDocument(form, schedule));
    },
  );

  app.get<{ Params: { id: string; mark: string } }>(
    "/v1/jobs/:id/joints/:mark",
    {
      schema: {
        tags: ["jobs"],
        operationId: "getJoint",
        summary: "One joint: its line of the schedule and the full finding with its derivation",
        params: strict({
          ...jobId.properties,
          mark: Type.String({ minLength: 1, maxLength: 64, description: "the joint's mark" }),
        }),
        response: { 200: ref(StoredJoint), ...problemAnswers },
      },
    },
    async (request, reply) => {
      const { mark, row, finding } = await jobs.joint(request.params.id, request.params.mark);
      return reply.type(JSON_TYPE).send(`{"mark":${JSON.stringify(mark)},"row":${row},"finding":${finding ?? "null"}}`);
    },
  );
}
