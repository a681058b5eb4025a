/**
 * Two servers in one process for the comparison: the service, and a bare Fastify that validates the same body and
 * answers with a body of the same size. Prints their ports as one line of JSON.
 */
import { randomUUID } from "node:crypto";
import type { AddressInfo } from "node:net";
import { buildApp, LOCAL_TENANT, loadCatalogueIfNone, openStore, slicedRunner } from "@landfast/api";
import { demoCatalogue } from "@landfast/data";
import { parseSize } from "@landfast/rules";
import { fastify } from "fastify";
import { checkQuestion } from "./check-question.js";

const store = openStore(":memory:");
const clock = { now: () => new Date().toISOString(), newId: randomUUID };
await loadCatalogueIfNone(store.catalogues, LOCAL_TENANT, demoCatalogue, clock);
const service = await buildApp({ store, runner: slicedRunner(() => performance.now()), ...clock, log: false });

const document: unknown = (await service.inject({ url: "/openapi.json" })).json();
const { schemas } = (document as { components: { schemas: Record<string, object> } }).components;
const answer: unknown = (
  await service.inject({ method: "POST", url: "/v1/checks/compatibility", payload: checkQuestion("LKF-024") })
).json();

const bare = fastify({
  ajv: {
    customOptions: {
      removeAdditional: false,
      coerceTypes: false,
      useDefaults: false,
      allErrors: true,
      strict: false,
      formats: { "conductor-size": (text: string) => !("problem" in parseSize(text)) },
    },
  },
});
for (const [name, schema] of Object.entries(schemas))
  bare.addSchema(
    JSON.parse(JSON.stringify({ $id: name, ...schema }).replaceAll("#/components/schemas/", "")) as object,
  );
bare.post("/", { schema: { body: { $ref: "CompatibilityQuestion" } } }, () => answer);

await service.listen({ port: 0, host: "127.0.0.1" });
await bare.listen({ port: 0, host: "127.0.0.1" });
const portOf = (address: AddressInfo | string | null): number => (address as AddressInfo).port;
process.stdout.write(
  `${JSON.stringify({ service: portOf(service.server.address()), bare: portOf(bare.server.address()) })}\n`,
);
