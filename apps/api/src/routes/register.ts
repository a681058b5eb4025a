import { Type } from "@sinclair/typebox";
import type { FastifyInstance } from "fastify";
import { ProblemKind, ProblemKindList, problemAnswers } from "../schemas/problem.js";
import { ref } from "../schemas/ref.js";
import { EditionList, PublishedTable, RuleList, TableList } from "../schemas/register.js";
import { strict } from "../schemas/strict.js";
import { describeProblem, listProblems } from "../services/problem-register.js";
import { listEditions, listRules, listTables, readTable } from "../services/register.js";

const word = (description: string) => Type.String({ minLength: 1, maxLength: 80, description });

/** What the answers rest on: rules, published tables, editions; and what every problem code means. */
export function registerRoutes(app: FastifyInstance): void {
  app.get(
    "/v1/rules",
    {
      schema: {
        tags: ["register"],
        operationId: "listRules",
        summary: "The rules that a joint is judged by and the calculations, with the clauses of each edition",
        response: { 200: ref(RuleList), ...problemAnswers },
      },
    },
    (_request, reply) => reply.send(listRules()),
  );
  app.get(
    "/v1/editions",
    {
      schema: {
        tags: ["register"],
        operationId: "listEditions",
        summary: "The editions that are answered for",
        response: { 200: ref(EditionList), ...problemAnswers },
      },
    },
    (_request, reply) => reply.send(listEditions()),
  );
  app.get(
    "/v1/tables",
    {
      schema: {
        tags: ["register"],
        operationId: "listTables",
        summary: "The published tables with their source and digest",
        response: { 200: ref(TableList), ...problemAnswers },
      },
    },
    (_request, reply) => reply.send(listTables()),
  );
  app.get<{ Params: { publication: string; name: string } }>(
    "/v1/tables/:publication/:name",
    {
      schema: {
        tags: ["register"],
        operationId: "getTable",
        summary: "One published table, cell by cell as printed",
        params: strict({
          publication: word('the publication as in the table\'s href: "nfpa-70-2023"'),
          name: word('the table\'s name: "ampacity-raceway"'),
        }),
        response: { 200: ref(PublishedTable), ...problemAnswers },
      },
    },
    ({ params }, reply) => reply.send(readTable(params.publication, params.name)),
  );
  app.get(
    "/problems",
    {
      schema: {
        tags: ["register"],
        operationId: "listProblems",
        summary: "Every kind of problem that an answer may name",
        response: { 200: ref(ProblemKindList), ...problemAnswers },
      },
    },
    (_request, reply) => reply.send(listProblems()),
  );
  app.get<{ Params: { name: string } }>(
    "/problems/:name",
    {
      schema: {
        tags: ["register"],
        operationId: "getProblem",
        summary: "What one kind of problem means and what to do",
        params: strict({ name: word('the last part of the problem\'s type: "invalid-request"') }),
        response: { 200: ref(ProblemKind), ...problemAnswers },
      },
    },
    ({ params }, reply) => reply.send(describeProblem(params.name)),
  );
}
