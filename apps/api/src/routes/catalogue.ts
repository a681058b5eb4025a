import { CONNECTOR_FAMILIES, type ConnectorFamily } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import type { FastifyInstance } from "fastify";
import { CatalogueItem } from "../schemas/connector.js";
import { enumOf } from "../schemas/enum-of.js";
import { cursorOf, paging } from "../schemas/paging.js";
import { problemAnswers } from "../schemas/problem.js";
import { ref } from "../schemas/ref.js";
import { CatalogueSummary, ConnectorPage } from "../schemas/register.js";
import { strict } from "../schemas/strict.js";
import type { CatalogueService } from "../services/catalogue.js";
import { cursorPlace } from "../services/cursor-place.js";

/** The connectors that are to be had. */
export function catalogueRoutes(app: FastifyInstance, catalogue: CatalogueService): void {
  app.get(
    "/v1/catalogue",
    {
      schema: {
        tags: ["catalogue"],
        operationId: "getCatalogue",
        summary: "The catalogue in use: name, revision and counts",
        response: { 200: ref(CatalogueSummary), ...problemAnswers },
      },
    },
    () => catalogue.summary(),
  );

  app.get<{ Querystring: { limit: number; cursor?: string; family?: ConnectorFamily } }>(
    "/v1/catalogue/connectors",
    {
      schema: {
        tags: ["catalogue"],
        operationId: "listConnectors",
        summary: "List connectors, of one family if wished",
        querystring: strict({ ...paging, family: Type.Optional(enumOf(CONNECTOR_FAMILIES)) }),
        response: { 200: ref(ConnectorPage), ...problemAnswers },
      },
    },
    async ({ query }) => {
      const page = await catalogue.connectors(query.family ?? null, query.limit, cursorPlace(query.cursor) ?? 0);
      return { connectors: page.connectors, next: cursorOf(page.next) };
    },
  );

  app.get<{ Params: { partNumber: string } }>(
    "/v1/catalogue/connectors/:partNumber",
    {
      schema: {
        tags: ["catalogue"],
        operationId: "getConnector",
        summary: "One connector in full",
        params: strict({ partNumber: Type.String({ minLength: 1, maxLength: 64, description: "the part number" }) }),
        response: { 200: ref(CatalogueItem), ...problemAnswers },
      },
    },
    ({ params }) => catalogue.connector(params.partNumber),
  );
}
