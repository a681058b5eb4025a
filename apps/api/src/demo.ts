/**
 * The demonstration: posts the invented Larkfen Works job to the service in this process, prints its connector
 * schedule, and leaves it beside as JSON, CSV and HTML.
 */
import { randomUUID } from "node:crypto";
import { mkdirSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { demoCatalogue, larkfenJob, larkfenOpenJob } from "@landfast/data";
import type { ConnectorSchedule, Job } from "@landfast/rules";
import type { FastifyInstance } from "fastify";
import { buildApp, LOCAL_TENANT, loadCatalogueIfNone, openStore, slicedRunner } from "./app.js";
import { scheduleText } from "./documents/schedule-text.js";
import { selectionText } from "./documents/selection-text.js";

const FOLDER = fileURLToPath(new URL("../../../var/demo", import.meta.url));
const FORMS = [
  ["schedule.json", "application/json"],
  ["schedule.csv", "text/csv"],
  ["schedule.html", "text/html"],
] as const;

const clock = { now: () => new Date().toISOString(), newId: randomUUID };
const store = openStore(":memory:");
await loadCatalogueIfNone(store.catalogues, LOCAL_TENANT, demoCatalogue, clock);
const app = await buildApp({ store, runner: slicedRunner(() => performance.now()), ...clock, log: false });

const offered = await post(app, larkfenJob());
process.stdout.write(scheduleText(offered.schedule));
const open = await post(app, larkfenOpenJob());
process.stdout.write(`\n${selectionText(open.schedule)}`);

mkdirSync(FOLDER, { recursive: true });
process.stdout.write("\nWritten:\n");
for (const [file, form] of FORMS) {
  const { body } = await app.inject({ url: `/v1/jobs/${offered.id}/schedule`, headers: { accept: form } });
  const path = join(FOLDER, file);
  writeFileSync(path, body);
  process.stdout.write(`  ${relative(process.cwd(), path)}\n`);
}
await app.close();
store.close();

async function post(service: FastifyInstance, job: Job): Promise<{ id: string; schedule: ConnectorSchedule }> {
  const answer = await service.inject({ method: "POST", url: "/v1/jobs", payload: job });
  if (answer.statusCode !== 201) throw new Error(`the service refused ${job.name}: ${answer.body}`);
  const posted = answer.json<{ job: { id: string }; schedule: ConnectorSchedule }>();
  return { id: posted.job.id, schedule: posted.schedule };
}
