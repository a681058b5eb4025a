import { Type } from "@sinclair/typebox";
import type { FastifyInstance } from "fastify";
import {
  LabourTableHead,
  LabourTablePage,
  LabourTable as LabourTableSchema,
  StoredLabourTable,
} from "../schemas/labour-table.js";
import { cursorOf, paging } from "../schemas/paging.js";
import { problemAnswers } from "../schemas/problem.js";
import { ref } from "../schemas/ref.js";
import { strict } from "../schemas/strict.js";
import { cursorPlace } from "../services/cursor-place.js";
import type { LabourTableService, PostedLabourTable } from "../services/labour-tables.js";

const tags = ["prices and labor"];

/** Labor tables: posted, listed, read back. A table is never changed; other hours are a new table. */
export function labourTableRoutes(app: FastifyInstance, labourTables: LabourTableService): void {
  app.post<{ Body: PostedLabourTable }>(
    "/v1/labour-tables",
    {
      schema: {
        tags,
        operationId: "postLabourTable",
        summary: "Store your own labor units",
        body: ref(LabourTableSchema),
        response: { 201: ref(LabourTableHead), ...problemAnswers },
      },
    },
    async ({ body }, reply) => {
      const head = await labourTables.add(body);
      return reply.code(201).header("location", `/v1/labour-tables/${head.id}`).send(head);
    },
  );

  app.get<{ Querystring: { limit: number; cursor?: string } }>(
    "/v1/labour-tables",
    {
      schema: {
        tags,
        operationId: "listLabourTables",
        summary: "List labor tables, newest first",
        querystring: strict(paging),
        response: { 200: ref(LabourTablePage), ...problemAnswers },
      },
    },
    async ({ query }) => {
      const page = await labourTables.list(query.limit, cursorPlace(query.cursor));
      return { labourTables: page.labourTables, next: cursorOf(page.next) };
    },
  );

  app.get<{ Params: { id: string } }>(
    "/v1/labour-tables/:id",
    {
      schema: {
        tags,
        operationId: "getLabourTable",
        summary: "A labor table in full",
        params: strict({ id: Type.String({ minLength: 1, maxLength: 64, description: "the labor table's id" }) }),
        response: { 200: ref(StoredLabourTable), ...problemAnswers },
      },
    },
    async ({ params }) => {
      const { head, lines } = await labourTables.labourTableFor(params.id);
      return { labourTable: head, lines };
    },
  );
}
