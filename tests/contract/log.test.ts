import { Writable } from "node:stream";
import { buildApp, LOCAL_TENANT, loadCatalogueIfNone, openStore, slicedRunner } from "@landfast/api";
import { demoCatalogue } from "@landfast/data";
import { expect, it } from "vitest";
import { workshopJob } from "./workshop-job.js";

it.each(["trace", "error"])("logs no body, header or query at level %s, and the cause of a failure", async (level) => {
  let log = "";
  const stream = new Writable({
    write(chunk: Buffer, _encoding, done) {
      log += chunk.toString();
      done();
    },
  });
  const store = openStore(":memory:");
  const clock = { now: () => "2026-01-02T03:04:05.000Z", newId: () => "id-1" };
  await loadCatalogueIfNone(store.catalogues, LOCAL_TENANT, demoCatalogue, clock);
  const app = await buildApp({
    store,
    runner: slicedRunner(() => performance.now()),
    ...clock,
    log: { level, stream },
  });
  const headers = { authorization: "secret-header", cookie: "secret-cookie" };
  const payload = workshopJob({ name: "secret-name" });
  await app.inject({ method: "POST", url: "/v1/jobs", headers, payload });
  await app.inject({
    method: "POST",
    url: "/v1/jobs",
    headers,
    payload: { ...payload, "secret-field": "secret-value" },
  });
  await app.inject({ url: "/v1/jobs?cursor=secret-query", headers });
  store.close();
  await app.inject({ url: "/v1/jobs", headers });
  await app.close();
  expect(log).not.toContain("secret");
  expect(log).toContain("request failed");
  expect(log).toContain("The database connection is not open");
});
