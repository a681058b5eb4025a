/** The service with a store in a file of its own, for the import benchmark. Prints its port as a line. */
import { randomUUID } from "node:crypto";
import type { AddressInfo } from "node:net";
import { buildApp, LOCAL_TENANT, loadCatalogueIfNone, openStore, slicedRunner } from "@landfast/api";
import { demoCatalogue } from "@landfast/data";

const [file = ":memory:"] = process.argv.slice(2);
const store = openStore(file);
const clock = { now: () => new Date().toISOString(), newId: randomUUID };
await loadCatalogueIfNone(store.catalogues, LOCAL_TENANT, demoCatalogue, clock);
const service = await buildApp({ store, runner: slicedRunner(() => performance.now()), ...clock, log: false });
await service.listen({ port: 0, host: "127.0.0.1" });
process.stdout.write(`${String((service.server.address() as AddressInfo).port)}\n`);
