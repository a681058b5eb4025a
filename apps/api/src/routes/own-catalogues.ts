import type { ConductorMetal, ConnectorFamily } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import type { FastifyInstance } from "fastify";
import { CatalogueEntrySchema } from "../schemas/catalogue-entry.js";
import {
  CatalogueVersion,
  CatalogueWithVersions,
  connectorQuery,
  EntryPage,
  OwnCatalogueHead,
  OwnCataloguePage,
  OwnCatalogue as OwnCatalogueSchema,
  PostedVersion as PostedVersionSchema,
} from "../schemas/own-catalogue.js";
import { cursorOf, paging } from "../schemas/paging.js";
import { problemAnswers } from "../schemas/problem.js";
import { ref } from "../schemas/ref.js";
import { strict } from "../schemas/strict.js";
import { cursorPlace } from "../services/cursor-place.js";
import type { OwnCatalogueService, PostedCatalogue, PostedVersion } from "../services/own-catalogues.js";

const tags = ["catalogues"];
const catalogueId = strict({ id: Type.String({ minLength: 1, maxLength: 64, description: "the catalogue's id" }) });
const versionAddress = strict({
  ...catalogueId.properties,
  version: Type.Integer({ minimum: 1, maximum: 1_000_000_000, description: "the version: a whole number from 1" }),
});

interface ConnectorQuery {
  readonly limit: number;
  readonly cursor?: string;
  readonly family?: ConnectorFamily;
  readonly metal?: ConductorMetal;
  readonly size?: string;
  readonly supplier?: string;
  readonly search?: string;
  readonly on?: string;
}

/** Catalogues of the user's own: made, filled version by version, and read. A version never changes. */
export function ownCatalogueRoutes(app: FastifyInstance, catalogues: OwnCatalogueService): void {
  app.post<{ Body: PostedCatalogue }>(
    "/v1/catalogues",
    {
      schema: {
        tags,
        operationId: "postCatalogue",
        summary: "Make a catalogue of your own; it has no version yet",
        body: ref(OwnCatalogueSchema),
        response: { 201: ref(OwnCatalogueHead), ...problemAnswers },
      },
    },
    async ({ body }, reply) => {
      const catalogue = await catalogues.add(body);
      return reply.code(201).header("location", `/v1/catalogues/${catalogue.id}`).send(catalogue);
    },
  );

  app.get<{ Querystring: { limit: number; cursor?: string; search?: string; supplier?: string } }>(
    "/v1/catalogues",
    {
      schema: {
        tags,
        operationId: "listCatalogues",
        summary: "List your catalogues, newest first",
        querystring: strict({
          ...paging,
          search: Type.Optional(Type.String({ minLength: 1, maxLength: 200, description: "part of a name" })),
          supplier: Type.Optional(Type.String({ minLength: 1, maxLength: 120, description: "the supplier's name" })),
        }),
        response: { 200: ref(OwnCataloguePage), ...problemAnswers },
      },
    },
    async ({ query }) => {
      const { search = null, supplier = null } = query;
      const page = await catalogues.list(query.limit, cursorPlace(query.cursor), { search, supplier });
      return { catalogues: page.catalogues, next: cursorOf(page.next) };
    },
  );

  app.get<{ Params: { id: string } }>(
    "/v1/catalogues/:id",
    {
      schema: {
        tags,
        operationId: "getOwnCatalogue",
        summary: "A catalogue and its versions, newest first",
        params: catalogueId,
        response: { 200: ref(CatalogueWithVersions), ...problemAnswers },
      },
    },
    ({ params }) => catalogues.get(params.id),
  );

  app.post<{ Params: { id: string }; Body: PostedVersion }>(
    "/v1/catalogues/:id/versions",
    {
      schema: {
        tags,
        operationId: "postCatalogueVersion",
        summary: "Publish the next version of a catalogue, whole",
        params: catalogueId,
        body: ref(PostedVersionSchema),
        response: { 201: ref(CatalogueVersion), ...problemAnswers },
      },
    },
    async ({ params, body }, reply) => {
      const version = await catalogues.publish(params.id, body);
      return reply
        .code(201)
        .header("location", `/v1/catalogues/${params.id}/versions/${version.version}`)
        .send(version);
    },
  );

  app.get<{ Params: { id: string; version: number } }>(
    "/v1/catalogues/:id/versions/:version",
    {
      schema: {
        tags,
        operationId: "getCatalogueVersion",
        summary: "A version: when it holds and how many connectors of each family it has",
        params: versionAddress,
        response: { 200: ref(CatalogueVersion), ...problemAnswers },
      },
    },
    async ({ params }) => (await catalogues.version(params.id, params.version)).version,
  );

  app.get<{ Params: { id: string; version: number }; Querystring: ConnectorQuery }>(
    "/v1/catalogues/:id/versions/:version/connectors",
    {
      schema: {
        tags,
        operationId: "listVersionConnectors",
        summary: "List the connectors of a version, by family, metal, size, supplier, day or text if wished",
        params: versionAddress,
        querystring: connectorQuery,
        response: { 200: ref(EntryPage), ...problemAnswers },
      },
    },
    async ({ params, query }) => {
      const { family = null, metal = null, size = null, supplier = null, search = null, on = null } = query;
      const page = await catalogues.connectors(
        params.id,
        params.version,
        { family, metal, size, supplier, search, on },
        query.limit,
        cursorPlace(query.cursor) ?? 0,
      );
      return { connectors: page.connectors, next: cursorOf(page.next) };
    },
  );

  app.get<{ Params: { id: string; version: number; partNumber: string } }>(
    "/v1/catalogues/:id/versions/:version/connectors/:partNumber",
    {
      schema: {
        tags,
        operationId: "getVersionConnector",
        summary: "One connector of a version in full",
        params: strict({
          ...versionAddress.properties,
          partNumber: Type.String({ minLength: 1, maxLength: 64, description: "the part number" }),
        }),
        response: { 200: ref(CatalogueEntrySchema), ...problemAnswers },
      },
    },
    ({ params }) => catalogues.connector(params.id, params.version, params.partNumber),
  );
}
