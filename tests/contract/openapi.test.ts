import { larkfenJob, larkfenOpenJob } from "@landfast/data";
import { CALCULATIONS, type Job } from "@landfast/rules";
import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import ajvFormats from "ajv-formats";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { openService, type Service } from "./open-service.js";
import { stockJob } from "./stock-job.js";
import { workshopJoint } from "./workshop-job.js";

// A whole job is worked out several times over, with every candidate of the catalogue.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

interface MediaType {
  readonly schema: object;
}
interface Operation {
  readonly operationId: string;
  readonly summary: string;
  readonly tags: readonly string[];
  readonly parameters?: readonly { readonly name: string; readonly in: string; readonly required?: boolean }[];
  readonly requestBody?: { readonly content: Readonly<Record<string, MediaType>> };
  readonly responses: Readonly<
    Record<string, { readonly description: string; readonly content?: Readonly<Record<string, MediaType>> }>
  >;
}
interface Document {
  readonly openapi: string;
  readonly info: { readonly title: string; readonly version: string };
  readonly tags: readonly { readonly name: string }[];
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: { readonly schemas: Readonly<Record<string, { readonly examples?: readonly unknown[] }>> };
}

describe("the OpenAPI document", () => {
  let app: Service;
  let document: Document;
  let ajv: Ajv2020;
  const validators = new Map<string, ValidateFunction>();
  let operations: { readonly path: string; readonly method: string; readonly operation: Operation }[];

  beforeAll(async () => {
    ({ app } = await openService());
    document = (await app.inject("/openapi.json")).json<Document>();
    ajv = new Ajv2020({
      strict: true,
      allErrors: true,
      allowUnionTypes: true,
      strictRequired: false,
      discriminator: true,
    });
    ajvFormats.default(ajv);
    ajv.addFormat("conductor-size", true);
    // The document as a whole is known by one name, so that references inside it are found.
    ajv.addVocabulary(["openapi", "info", "servers", "tags", "paths", "components"]);
    ajv.addSchema({ ...document, $id: "openapi" });
    operations = Object.entries(document.paths).flatMap(([path, methods]) =>
      Object.entries(methods).map(([method, operation]) => ({ path, method, operation })),
    );
  });
  afterAll(() => app.close());

  /** A validator for a place in the document. */
  function at(...steps: readonly string[]): ValidateFunction {
    const pointer = steps
      .map((step) => step.replaceAll("~", "~0").replaceAll("/", "~1"))
      .map(encodeURIComponent)
      .join("/");
    const known = validators.get(pointer) ?? ajv.compile({ $ref: `openapi#/${pointer}` });
    validators.set(pointer, known);
    return known;
  }

  function expectValid(validate: ValidateFunction, value: unknown): void {
    validate(value);
    expect(validate.errors ?? []).toEqual([]);
  }

  it("is of version 3.1 and names the service", () => {
    expect(document.openapi).toBe("3.1.0");
    expect(document.info.title).toBe("Landfast");
  });

  it("gives every operation an id of its own, a summary, a known tag, a success and the problems", () => {
    const tags = document.tags.map(({ name }) => name);
    const ids = operations.map(({ operation }) => operation.operationId);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { operation } of operations) {
      expect(operation.summary).not.toBe("");
      expect(operation.tags.every((tag) => tags.includes(tag))).toBe(true);
      const statuses = Object.keys(operation.responses);
      expect(statuses.some((status) => /^2\d\d$/.test(status))).toBe(true);
      expect(statuses.every((status) => /^(2\d\d|4XX|5XX)$/.test(status))).toBe(true);
      for (const { description } of Object.values(operation.responses)) expect(description).not.toBe("");
    }
  });

  it("declares every parameter of a path, and no other", () => {
    for (const { path, operation } of operations) {
      const named = [...path.matchAll(/\{([^}]+)\}/g)].map(([, name]) => name);
      const declared = (operation.parameters ?? []).filter((parameter) => parameter.in === "path");
      expect(declared.map(({ name }) => name)).toEqual(named);
      expect(declared.every(({ required }) => required === true)).toBe(true);
    }
  });

  it("holds good JSON schemas of draft 2020-12 only, with every reference found", () => {
    for (const name of Object.keys(document.components.schemas)) at("components", "schemas", name);
    for (const { path, method, operation } of operations) {
      for (const type of Object.keys(operation.requestBody?.content ?? {}))
        at("paths", path, method, "requestBody", "content", type, "schema");
      for (const [status, { content }] of Object.entries(operation.responses))
        for (const type of Object.keys(content ?? {}))
          at("paths", path, method, "responses", status, "content", type, "schema");
    }
  });

  it("lists every address that the service answers at, and those only", () => {
    expect(operations.map(({ path, method }) => `${method.toUpperCase()} ${path}`).sort()).toEqual(
      [
        "GET /v1/catalogues/{id}/imports",
        "GET /v1/catalogues/{id}/imports/{importId}",
        "GET /v1/catalogues/{id}/versions/{version}/file",
        "GET /v1/import-columns",
        "GET /v1/import-mappings",
        "GET /v1/import-mappings/{mappingId}",
        "POST /v1/catalogues/{id}/imports",
        "POST /v1/import-mappings",
        "POST /v1/import-mappings/suggestions",
        "GET /healthz",
        "GET /problems",
        "GET /problems/{name}",
        "GET /readyz",
        "GET /v1/calculations",
        "GET /v1/catalogue",
        "GET /v1/catalogue/connectors",
        "GET /v1/catalogue/connectors/{partNumber}",
        "GET /v1/catalogues",
        "GET /v1/catalogues/{id}",
        "GET /v1/catalogues/{id}/versions/{version}",
        "GET /v1/catalogues/{id}/versions/{version}/connectors",
        "GET /v1/catalogues/{id}/versions/{version}/connectors/{partNumber}",
        "GET /v1/editions",
        "GET /v1/jobs",
        "GET /v1/jobs/{id}",
        "GET /v1/jobs/{id}/joints/{mark}",
        "GET /v1/jobs/{id}/joints/{mark}/candidates",
        "GET /v1/jobs/{id}/schedule",
        "GET /v1/jobs/{id}/stock-plan/trade-off",
        "GET /v1/labour-tables",
        "GET /v1/labour-tables/{id}",
        "GET /v1/price-lists",
        "GET /v1/price-lists/{id}",
        "GET /v1/price-lists/{id}/lines",
        "GET /v1/rules",
        "GET /v1/tables",
        "GET /v1/tables/{publication}/{name}",
        "POST /v1/bars",
        ...Object.keys(CALCULATIONS).map((name) => `POST /v1/calculations/${name}`),
        "POST /v1/candidates",
        "POST /v1/catalogues",
        "POST /v1/catalogues/{id}/versions",
        "POST /v1/checks/compatibility",
        "POST /v1/feeders",
        "POST /v1/jobs",
        "POST /v1/jobs/{id}/economics",
        "POST /v1/jobs/{id}/parts-list",
        "POST /v1/jobs/{id}/stock-plan",
        "POST /v1/jobs/{id}/stock-plan/trade-off",
        "POST /v1/jobs/{id}/truck",
        "POST /v1/labour-tables",
        "POST /v1/price-lists",
        "POST /v1/remedies",
      ].sort(),
    );
  });

  it("holds an example for every body, and each is valid and accepted", async () => {
    const bodies = operations.filter(({ operation }) => operation.requestBody?.content["application/json"]);
    expect(bodies.length).toBeGreaterThan(0);
    const made = await app.inject({ method: "POST", url: "/v1/catalogues", payload: { name: "for the examples" } });
    const { id: catalogueId } = made.json<{ id: string }>();
    const posted = await app.inject({ method: "POST", url: "/v1/jobs", payload: stockJob() });
    const jobId = posted.json<{ job: { id: string } }>().job.id;
    for (const { path, method, operation } of bodies) {
      const schema = operation.requestBody?.content["application/json"]?.schema as { $ref: string };
      const name = schema.$ref.slice(schema.$ref.lastIndexOf("/") + 1);
      const examples = document.components.schemas[name]?.examples ?? [];
      expect(examples.length).toBeGreaterThan(0);
      for (const example of examples) {
        expectValid(at("components", "schemas", name), example);
        const answer = await app.inject({
          method: method.toUpperCase() as "POST",
          url: path.replace("/catalogues/{id}", `/catalogues/${catalogueId}`).replace("/jobs/{id}", `/jobs/${jobId}`),
          payload: example as object,
        });
        expect(answer.statusCode).toBeLessThan(300);
      }
    }
  });

  describe("describes every answer exactly", () => {
    async function expectDescribed(
      method: "GET" | "POST",
      path: string,
      url: string,
      payload?: object,
    ): Promise<unknown> {
      const answer = await app.inject({ method, url, ...(payload === undefined ? {} : { payload }) });
      const family = answer.statusCode < 300 ? String(answer.statusCode) : `${String(answer.statusCode)[0]}XX`;
      const type = String(answer.headers["content-type"]).split(";")[0] ?? "";
      expectValid(
        at("paths", path, method.toLowerCase(), "responses", family, "content", type, "schema"),
        answer.json(),
      );
      return answer.json();
    }

    it.each([
      ["the job as offered", larkfenJob],
      ["the open job", larkfenOpenJob],
    ])("to the routes of a job: %s", async (_, job: () => Job) => {
      const { job: head } = (await expectDescribed("POST", "/v1/jobs", "/v1/jobs", job())) as { job: { id: string } };
      await expectDescribed("GET", "/v1/jobs", "/v1/jobs");
      await expectDescribed("GET", "/v1/jobs/{id}", `/v1/jobs/${head.id}`);
      await expectDescribed("GET", "/v1/jobs/{id}/schedule", `/v1/jobs/${head.id}/schedule`);
      for (const { mark } of job().joints)
        await expectDescribed("GET", "/v1/jobs/{id}/joints/{mark}", `/v1/jobs/${head.id}/joints/${mark}`);
    });

    it("to every question about the parts of a job", async () => {
      const { job: head } = (await expectDescribed("POST", "/v1/jobs", "/v1/jobs", stockJob())) as {
        job: { id: string };
      };
      const ask = (what: string, question: object): Promise<unknown> =>
        expectDescribed("POST", `/v1/jobs/{id}/${what}`, `/v1/jobs/${head.id}/${what}`, question);
      for (const kind of ["fewest-part-numbers", "least-cost", "fewest-then-cheapest"])
        await ask("stock-plan", {
          objective: { kind },
          needDates: [{ area: "B Main electrical room", on: "2026-05-01" }],
        });
      await ask("stock-plan", {
        objective: { kind: "least-cost-with-carrying-cost", carryingCost: { amount: "25.00", currency: "USD" } },
      });
      await ask("stock-plan/trade-off", { mostPoints: 3 });
      await expectDescribed("GET", "/v1/jobs/{id}/stock-plan/trade-off", `/v1/jobs/${head.id}/stock-plan/trade-off`);
      await ask("truck", { atHand: [{ partNumber: "LF-PRESS-0208", parts: 4 }] });
      await ask("parts-list", {});
      await ask("parts-list", { connectors: { from: "plan", objective: { kind: "least-cost" } } });
      await ask("economics", { objective: { kind: "least-cost" } });
    });

    it("to every compatibility check of the Larkfen job", async () => {
      const { basis, joints } = larkfenJob();
      for (const joint of joints)
        await expectDescribed("POST", "/v1/checks/compatibility", "/v1/checks/compatibility", { basis, joint });
    });

    it.each([
      ["/v1/catalogue", "/v1/catalogue"],
      ["/v1/rules", "/v1/rules"],
      ["/v1/calculations", "/v1/calculations"],
      ["/v1/editions", "/v1/editions"],
      ["/v1/tables", "/v1/tables"],
      ["/v1/tables/{publication}/{name}", "/v1/tables/nfpa-70-2023/ampacity-raceway"],
      ["/problems", "/problems"],
      ["/problems/{name}", "/problems/busy"],
      ["/healthz", "/healthz"],
      ["/readyz", "/readyz"],
    ])("at %s", async (path, url) => {
      await expectDescribed("GET", path, url);
    });

    it("on every page of the catalogue", async () => {
      let next: string | null = "";
      while (next !== null) {
        const url = `/v1/catalogue/connectors?limit=200${next === "" ? "" : `&cursor=${next}`}`;
        ({ next } = (await expectDescribed("GET", "/v1/catalogue/connectors", url)) as { next: string | null });
      }
    });

    it("to a request that is wrong", async () => {
      await expectDescribed("POST", "/v1/jobs", "/v1/jobs", { joints: [workshopJoint({ quantity: -1 })] });
      await expectDescribed("GET", "/v1/jobs/{id}", "/v1/jobs/none");
      await expectDescribed("GET", "/v1/jobs", "/v1/jobs?limit=x");
    });
  });

  it("has a page that asks no other host", async () => {
    const page = await app.inject("/docs/");
    expect(page.statusCode).toBe(200);
    const addresses = [...page.body.matchAll(/(?:src|href)="([^"]+)"/g)].map(([, address]) => address ?? "");
    expect(addresses.length).toBeGreaterThan(0);
    expect(addresses.filter((address) => /^(?:[a-z]+:)?\/\//.test(address))).toEqual([]);
  });
});
