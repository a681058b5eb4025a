import { Type } from "@sinclair/typebox";
import type { FastifyInstance } from "fastify";
import { cursorOf, paging } from "../schemas/paging.js";
import { PriceLinePage, PriceListHead, PriceListPage, PriceList as PriceListSchema } from "../schemas/price-list.js";
import { problemAnswers } from "../schemas/problem.js";
import { ref } from "../schemas/ref.js";
import { strict } from "../schemas/strict.js";
import { cursorPlace } from "../services/cursor-place.js";
import type { PostedPriceList, PriceListService } from "../services/price-lists.js";

const priceListId = strict({ id: Type.String({ minLength: 1, maxLength: 64, description: "the price list's id" }) });
const tags = ["prices and labor"];

/** Price lists: posted, listed, read back. A list is never changed; new prices are a new list. */
export function priceListRoutes(app: FastifyInstance, priceLists: PriceListService): void {
  app.post<{ Body: PostedPriceList }>(
    "/v1/price-lists",
    {
      schema: {
        tags,
        operationId: "postPriceList",
        summary: "Store a supplier's prices",
        body: ref(PriceListSchema),
        response: { 201: ref(PriceListHead), ...problemAnswers },
      },
    },
    async ({ body }, reply) => {
      const head = await priceLists.add(body);
      return reply.code(201).header("location", `/v1/price-lists/${head.id}`).send(head);
    },
  );

  app.get<{ Querystring: { limit: number; cursor?: string; supplier?: string } }>(
    "/v1/price-lists",
    {
      schema: {
        tags,
        operationId: "listPriceLists",
        summary: "List price lists, newest first, of one supplier if wished",
        querystring: strict({
          ...paging,
          supplier: Type.Optional(Type.String({ minLength: 1, maxLength: 120, description: "the supplier's name" })),
        }),
        response: { 200: ref(PriceListPage), ...problemAnswers },
      },
    },
    async ({ query }) => {
      const page = await priceLists.list(query.limit, cursorPlace(query.cursor), query.supplier ?? null);
      return { priceLists: page.priceLists, next: cursorOf(page.next) };
    },
  );

  app.get<{ Params: { id: string } }>(
    "/v1/price-lists/:id",
    {
      schema: {
        tags,
        operationId: "getPriceList",
        summary: "A price list without its lines",
        params: priceListId,
        response: { 200: ref(PriceListHead), ...problemAnswers },
      },
    },
    ({ params }) => priceLists.head(params.id),
  );

  app.get<{ Params: { id: string }; Querystring: { limit: number; cursor?: string; search?: string } }>(
    "/v1/price-lists/:id/lines",
    {
      schema: {
        tags,
        operationId: "listPriceLines",
        summary: "The prices of a list in its order, page by page",
        params: priceListId,
        querystring: strict({
          ...paging,
          search: Type.Optional(Type.String({ minLength: 1, maxLength: 64, description: "part of a part number" })),
        }),
        response: { 200: ref(PriceLinePage), ...problemAnswers },
      },
    },
    async ({ params, query }) => {
      const after = cursorPlace(query.cursor) ?? 0;
      const page = await priceLists.lines(params.id, query.limit, after, query.search ?? null);
      return { lines: page.lines, next: cursorOf(page.next) };
    },
  );
}
