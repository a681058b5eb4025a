/**
 * The service with a store in a file of its own, for the import benchmark. Prints its port as a line; asked for a line
 * on its input, prints how long the thread that answers was ever busy without a pause since the last such line: in
 * processor time of that thread alone, which other programs on the machine do not change.
 */
import { randomUUID } from "node:crypto";
import { readFileSync } from "node:fs";
import type { AddressInfo } from "node:net";
import { createInterface } from "node:readline";
import { buildApp, LOCAL_TENANT, loadCatalogueIfNone, openStore, slicedRunner } from "@landfast/api";
import { demoCatalogue } from "@landfast/data";

const [file = ":memory:"] = process.argv.slice(2);
const store = openStore(file);
const clock = { now: () => new Date().toISOString(), newId: randomUUID };
await loadCatalogueIfNone(store.catalogues, LOCAL_TENANT, demoCatalogue, clock);
const service = await buildApp({ store, runner: slicedRunner(() => performance.now()), ...clock, log: false });
await service.listen({ port: 0, host: "127.0.0.1" });
process.stdout.write(`${String((service.server.address() as AddressInfo).port)}\n`);

/** Processor time of the main thread in milliseconds; 0 where the system does not tell it. */
function busyMs(): number {
  if (process.platform !== "linux") return 0;
  return Number(readFileSync(`/proc/self/task/${String(process.pid)}/schedstat`, "utf8").split(" ")[0]) / 1e6;
}

let longest = 0;
let before = busyMs();
// Every turn of the loop: whatever was done in between kept everything else waiting.
const turn = (): void => {
  const now = busyMs();
  longest = Math.max(longest, now - before);
  before = now;
  setTimeout(turn, 1);
};
turn();
createInterface({ input: process.stdin }).on("line", () => {
  process.stdout.write(`${longest.toFixed(1)}\n`);
  longest = 0;
});
