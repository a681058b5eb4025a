import { Type } from "@sinclair/typebox";
import type { FastifyInstance } from "fastify";
import { FILE_TYPES, fileBodies } from "../plugins/file-bodies.js";
import {
  FinishedImport,
  ImportColumns,
  ImportHeaders,
  ImportList,
  ImportMapping as ImportMappingSchema,
  ImportReport,
  importQuery,
  MappingPage,
  MappingSuggestion,
  SavedMapping,
  StoredImport,
} from "../schemas/catalogue-import.js";
import { cursorOf, paging } from "../schemas/paging.js";
import { problemAnswers } from "../schemas/problem.js";
import { ref } from "../schemas/ref.js";
import { strict } from "../schemas/strict.js";
import { answerForm } from "../services/answer-form.js";
import type { CatalogueImportService, ImportRequest } from "../services/catalogue-imports.js";
import { cursorPlace } from "../services/cursor-place.js";
import type { ImportMappingService, SavedMapping as Saved } from "../services/import-mappings.js";

const tags = ["catalogues"];
const JSON_TYPE = "application/json; charset=utf-8";
const CSV = "text/csv";
const WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
/** The first is sent to whoever does not mind. */
const FILE_FORMS = [CSV, WORKBOOK] as const;

const id = Type.String({ minLength: 1, maxLength: 64, description: "the catalogue's id" });

interface ImportQuery extends Omit<ImportRequest, "bytes" | "form"> {
  readonly dryRun: boolean;
}

/** Files of connectors: taken in as a version, column mappings for them, and given out again. */
export async function catalogueImportRoutes(
  app: FastifyInstance,
  imports: CatalogueImportService,
  mappings: ImportMappingService,
): Promise<void> {
  await app.register((scope, _options, done) => {
    fileBodies(scope);
    scope.post<{ Params: { id: string }; Querystring: ImportQuery; Body: Buffer }>(
      "/v1/catalogues/:id/imports",
      {
        schema: {
          tags,
          operationId: "importCatalogue",
          summary: "Read a file of connectors and make it the next version, or only report on it",
          description:
            "The file is the body itself, as CSV or as a workbook. With dryRun=true nothing is stored and every row is reported. Rows that are refused keep the whole file out unless partial=true. Spellings that were recognised are applied only when confirm is the digest of a report that showed them.",
          params: strict({ id }),
          querystring: importQuery,
          body: {
            content: {
              [CSV]: { schema: Type.String() },
              [WORKBOOK]: { schema: Type.Unsafe({ type: "string", contentEncoding: "binary" }) },
            },
          },
          response: { 200: ref(ImportReport), 201: ref(FinishedImport), ...problemAnswers },
        },
      },
      async (request, reply) => {
        const { dryRun, ...query } = request.query;
        const [type = ""] = (request.headers["content-type"] ?? "").split(";");
        const form = FILE_TYPES[type.trim().toLowerCase() as keyof typeof FILE_TYPES];
        const asked: ImportRequest = { ...query, bytes: request.body, form };
        if (dryRun) return reply.type(JSON_TYPE).send(await imports.dryRun(request.params.id, asked));
        const { import: made, version, report } = await imports.run(request.params.id, asked);
        return reply
          .code(201)
          .header("location", `/v1/catalogues/${request.params.id}/imports/${made.id}`)
          .type(JSON_TYPE)
          .send(`{"import":${JSON.stringify(made)},"version":${JSON.stringify(version)},"report":${report}}`);
      },
    );
    done();
  });

  app.get<{ Params: { id: string } }>(
    "/v1/catalogues/:id/imports",
    {
      schema: {
        tags,
        operationId: "listImports",
        summary: "Which files became which versions, newest first",
        params: strict({ id }),
        response: { 200: ref(ImportList), ...problemAnswers },
      },
    },
    async ({ params }) => ({ imports: await imports.list(params.id) }),
  );

  app.get<{ Params: { id: string; importId: string } }>(
    "/v1/catalogues/:id/imports/:importId",
    {
      schema: {
        tags,
        operationId: "getImport",
        summary: "How a file became a version: its mapping and the report on every row",
        params: strict({ id, importId: Type.String({ minLength: 1, maxLength: 64, description: "the import's id" }) }),
        response: { 200: ref(StoredImport), ...problemAnswers },
      },
    },
    async (request, reply) => {
      const { report, mapping, ...head } = await imports.get(request.params.id, request.params.importId);
      return reply
        .type(JSON_TYPE)
        .send(`{"import":${JSON.stringify(head)},"mapping":${mapping ?? "null"},"report":${report}}`);
    },
  );

  app.get<{ Params: { id: string; version: number } }>(
    "/v1/catalogues/:id/versions/:version/file",
    {
      schema: {
        tags,
        operationId: "exportCatalogueVersion",
        summary: "A version as a file that reads back to the very same version",
        description: `As ${FILE_FORMS.join(" or ")}, chosen by Accept. A text that a spreadsheet would run as a formula begins with an apostrophe, which reading takes off again.`,
        params: strict({
          id,
          version: Type.Integer({
            minimum: 1,
            maximum: 1_000_000_000,
            description: "the version: a whole number from 1",
          }),
        }),
        produces: [...FILE_FORMS],
        response: {
          200: {
            description: "The file",
            content: {
              [CSV]: { schema: Type.String() },
              [WORKBOOK]: { schema: Type.Unsafe({ type: "string", contentEncoding: "binary" }) },
            },
          },
          ...problemAnswers,
        },
      },
    },
    async (request, reply) => {
      const type = answerForm(request.headers.accept, FILE_FORMS, "A catalogue file");
      const { id: catalogueId, version } = request.params;
      const form = FILE_TYPES[type];
      const bytes = await imports.file(catalogueId, version, form);
      return reply
        .type(type === CSV ? `${CSV}; charset=utf-8` : type)
        .header("vary", "accept")
        .header("content-disposition", `attachment; filename="catalogue-version-${version}.${form}"`)
        .send(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength));
    },
  );

  app.get(
    "/v1/import-columns",
    {
      schema: {
        tags,
        operationId: "listImportColumns",
        summary: "Our own columns of a catalogue file",
        response: { 200: ref(ImportColumns), ...problemAnswers },
      },
    },
    (_request, reply) => reply.send({ columns: mappings.columns() }),
  );

  app.post<{ Body: Saved["mapping"] }>(
    "/v1/import-mappings",
    {
      schema: {
        tags,
        operationId: "postImportMapping",
        summary: "Save which of a supplier's columns means what",
        body: ref(ImportMappingSchema),
        response: { 201: ref(SavedMapping), ...problemAnswers },
      },
    },
    async ({ body }, reply) => {
      const saved = await mappings.add(body);
      return reply.code(201).header("location", `/v1/import-mappings/${saved.id}`).send(saved);
    },
  );

  app.get<{ Querystring: { limit: number; cursor?: string } }>(
    "/v1/import-mappings",
    {
      schema: {
        tags,
        operationId: "listImportMappings",
        summary: "List saved column mappings, newest first",
        querystring: strict(paging),
        response: { 200: ref(MappingPage), ...problemAnswers },
      },
    },
    async ({ query }) => {
      const page = await mappings.list(query.limit, cursorPlace(query.cursor));
      return { mappings: page.mappings, next: cursorOf(page.next) };
    },
  );

  app.get<{ Params: { mappingId: string } }>(
    "/v1/import-mappings/:mappingId",
    {
      schema: {
        tags,
        operationId: "getImportMapping",
        summary: "One saved column mapping",
        params: strict({
          mappingId: Type.String({ minLength: 1, maxLength: 64, description: "the mapping's id" }),
        }),
        response: { 200: ref(SavedMapping), ...problemAnswers },
      },
    },
    ({ params }) => mappings.get(params.mappingId),
  );

  app.post<{ Body: { readonly headers: readonly string[] } }>(
    "/v1/import-mappings/suggestions",
    {
      schema: {
        tags,
        operationId: "suggestImportMapping",
        summary: "What the headers of a file may mean; nothing is stored",
        body: ref(ImportHeaders),
        response: { 200: ref(MappingSuggestion), ...problemAnswers },
      },
    },
    ({ body }, reply) => reply.send(mappings.suggest(body.headers)),
  );
}
