import { readFileSync } from "node:fs";
import { buildApp, openStore, slicedRunner } from "@landfast/api";
import type { Solver } from "@landfast/stock";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { importing, partsFile } from "./import-file.js";
import { openService, type Service } from "./open-service.js";
import { ownCatalogue, workshopPart } from "./own-catalogue.js";
import { stockJob } from "./stock-job.js";
import { workshopJob, workshopJoint } from "./workshop-job.js";

type Asking = (service: { readonly app: Service }) => Promise<{ readonly statusCode: number; readonly body: string }>;

const get =
  (url: string, headers: Record<string, string> = {}): Asking =>
  ({ app }) =>
    app.inject({ url, headers });
const post =
  (payload: string | object, type = "application/json"): Asking =>
  ({ app }) =>
    app.inject({ method: "POST", url: "/v1/jobs", payload, headers: { "content-type": type } });

const askForPlan =
  (question: object, solver?: Solver): Asking =>
  async () => {
    const { app } = await openService(solver === undefined ? {} : { solver });
    const posted = await app.inject({ method: "POST", url: "/v1/jobs", payload: stockJob() });
    return app.inject({
      method: "POST",
      url: `${String(posted.headers["location"])}/stock-plan`,
      payload: question,
    });
  };

/** How each code comes about. */
const RAISED: Readonly<Record<string, Asking>> = {
  MALFORMED_REQUEST: get("/v1/jobs/%"),
  MALFORMED_JSON: post("{"),
  INVALID_REQUEST: post("{}"),
  ROUTE_NOT_FOUND: get("/nowhere"),
  JOB_NOT_FOUND: get("/v1/jobs/none"),
  JOINT_NOT_FOUND: async ({ app }) => {
    const posted = await app.inject({ method: "POST", url: "/v1/jobs", payload: workshopJob() });
    return app.inject(`${String(posted.headers["location"])}/joints/none`);
  },
  CONNECTOR_NOT_FOUND: get("/v1/catalogue/connectors/none"),
  CATALOGUE_NOT_FOUND: get("/v1/catalogues/none"),
  CATALOGUE_VERSION_NOT_FOUND: async ({ app }) => {
    const made = await app.inject({ method: "POST", url: "/v1/catalogues", payload: { name: "empty" } });
    return app.inject(`${String(made.headers["location"])}/versions/1`);
  },
  IMPORT_NOT_FOUND: async ({ app }) => app.inject(`/v1/catalogues/${await ownCatalogue(app, [])}/imports/none`),
  IMPORT_MAPPING_NOT_FOUND: get("/v1/import-mappings/none"),
  PRICE_LIST_NOT_FOUND: get("/v1/price-lists/none"),
  LABOUR_TABLE_NOT_FOUND: get("/v1/labour-tables/none"),
  CALCULATION_NOT_FOUND: get("/v1/calculations/none"),
  TABLE_NOT_FOUND: get("/v1/tables/none/none"),
  PROBLEM_NOT_FOUND: get("/problems/none"),
  METHOD_NOT_ALLOWED: ({ app }) => app.inject({ method: "DELETE", url: "/v1/jobs" }),
  NOT_ACCEPTABLE: get("/v1/jobs/none/schedule", { accept: "application/pdf" }),
  BODY_TOO_LARGE: post(" ".repeat(16 * 1024 * 1024 + 1)),
  UNSUPPORTED_MEDIA_TYPE: post("x", "text/plain"),
  INCONSISTENT_REQUEST: post(workshopJob({ joints: [workshopJoint(), workshopJoint()] })),
  UNKNOWN_PART_NUMBER: post(workshopJob({ joints: [workshopJoint({ connector: { partNumber: "NONE" } })] })),
  UNKNOWN_CATALOGUE: post(workshopJob({ catalogue: { id: "none", version: 1 } })),
  NOT_IN_FORCE: async ({ app }) => {
    const id = await ownCatalogue(app, [{ ...workshopPart(), supersededBy: "LKW-2" }]);
    const joints = [workshopJoint({ connector: { partNumber: "LKW-1" } })];
    return post(workshopJob({ catalogue: { id, version: 1 }, joints }))({ app });
  },
  NO_SUCH_PLAN: askForPlan({ objective: { kind: "least-cost" }, mostPartNumbers: 0 }),
  OUT_OF_TIME: askForPlan(
    { objective: { kind: "least-cost" } },
    {
      solve: () => Promise.resolve({ status: "limit-without-plan", values: [], bound: 0 }),
    },
  ),
  IMPORT_UNREADABLE: importing('part number\n"never closed'),
  IMPORT_TOO_LARGE: importing(`part number${"\nLKW-1".repeat(50_001)}`),
  IMPORT_COLUMNS_MISSING: importing("part number\nLKW-1"),
  IMPORT_ROWS_REFUSED: importing(partsFile([{ largestSize: "4/0" }])),
  IMPORT_NOT_CONFIRMED: importing(partsFile([{ largestSize: "250 MCM" }])),
  TOO_MANY_JOINTS: post(workshopJob({ joints: Array.from({ length: 10_001 }, () => workshopJoint()) })),
  INTERNAL: async () => {
    const { app, store } = await openService();
    store.close();
    return app.inject("/v1/jobs");
  },
  NOT_READY: async () => {
    const app = await buildApp({
      store: openStore(":memory:"),
      runner: slicedRunner(() => 0),
      now: () => "2026-01-02T03:04:05.000Z",
      newId: () => "id",
      log: false,
    });
    return app.inject("/readyz");
  },
  BUSY: async ({ app }) => {
    const joints = Array.from({ length: 9_000 }, (_, index) => workshopJoint({ mark: `B-${index}` }));
    const answers = await Promise.all(Array.from({ length: 7 }, () => post(workshopJob({ joints }))({ app })));
    const [refused] = answers.filter(({ statusCode }) => statusCode !== 201);
    if (refused === undefined) throw new Error("none of seven large jobs at once was refused");
    return refused;
  },
};

describe("the list of problem codes", () => {
  let app: Service;
  let listed: { readonly code: string; readonly status: number; readonly type: string; readonly meaning: string }[];

  beforeAll(async () => {
    ({ app } = await openService());
    ({ problems: listed } = (await app.inject("/problems")).json());
  });
  afterAll(() => app.close());

  it("holds exactly the codes that are raised here", () => {
    expect(listed.map(({ code }) => code).sort()).toEqual(Object.keys(RAISED).sort());
  });

  it.each(Object.entries(RAISED))(
    "%s is raised, with its own status and address",
    { timeout: 60_000 },
    async (code, ask) => {
      const { statusCode, body } = await ask({ app });
      const problem = JSON.parse(body) as { code: string; status: number; type: string; detail: string; title: string };
      expect(problem.code).toBe(code);
      const kind = listed.find((one) => one.code === code);
      expect({ statusCode, status: problem.status, type: problem.type }).toEqual({
        statusCode: kind?.status,
        status: kind?.status,
        type: kind?.type,
      });
      expect(problem.detail).not.toBe("");
      expect((await app.inject(problem.type)).json()).toEqual(kind);
    },
  );

  it("is the list of docs/errors.md, word for word", () => {
    const page = readFileSync(new URL("../../docs/errors.md", import.meta.url), "utf8");
    const rows = [...page.matchAll(/^\| `([A-Z_]+)` *\| (\d{3}) *\| (.+?) *\|$/gm)].map(
      ([, code, status, meaning]) => ({
        code,
        status: Number(status),
        meaning,
      }),
    );
    expect(rows).toEqual(listed.map(({ code, status, meaning }) => ({ code, status, meaning })));
  });

  it("is the list of the OpenAPI document", async () => {
    const document = (await app.inject("/openapi.json")).json<{
      components: { schemas: { Problem: { properties: { code: { enum: string[] } } } } };
    }>();
    expect(document.components.schemas.Problem.properties.code.enum).toEqual(listed.map(({ code }) => code));
  });

  it("says nothing of the cause of a failure of the service itself", async () => {
    const { app: broken, store } = await openService();
    store.close();
    const { body } = await broken.inject("/v1/jobs");
    expect(body).not.toMatch(/sqlite|database|stack|\.ts|\.js/i);
  });
});
