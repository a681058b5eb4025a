/**
 * The demonstration: posts the invented Larkfen Works job to the service in this process, prints its connector
 * schedule and what fewer part numbers would cost, and leaves both beside as JSON, CSV, HTML and a picture.
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
import { stockText } from "./documents/stock-text.js";
import type { JobTradeOff } from "./services/stock-plans.js";

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

const tradeOffAt = `/v1/jobs/${offered.id}/stock-plan/trade-off`;
const whole = await ask<JobTradeOff>(app, tradeOffAt, {});
const accepted = whole.asNamed?.accepted.parts.flatMap(({ marks }) => marks) ?? [];
const sameJoints = { marks: accepted };
const same = accepted.length === 0 ? null : await ask<JobTradeOff>(app, tradeOffAt, sameJoints);
process.stdout.write(`\n${stockText(whole, same)}`);

mkdirSync(FOLDER, { recursive: true });
process.stdout.write("\nWritten:\n");
for (const [file, form] of FORMS) {
  const { body } = await app.inject({ url: `/v1/jobs/${offered.id}/schedule`, headers: { accept: form } });
  keep(file, body);
}
const picture = await app.inject({
  method: "POST",
  url: tradeOffAt,
  payload: same === null ? {} : sameJoints,
  headers: { accept: "image/svg+xml" },
});
keep("trade-off.svg", picture.body);
await app.close();
store.close();

function keep(file: string, body: string): void {
  const path = join(FOLDER, file);
  writeFileSync(path, body);
  process.stdout.write(`  ${relative(process.cwd(), path)}\n`);
}

async function ask<Answer>(service: FastifyInstance, url: string, payload: object): Promise<Answer> {
  const answer = await service.inject({ method: "POST", url, payload });
  if (answer.statusCode !== 200) throw new Error(`the service refused ${url}: ${answer.body}`);
  return answer.json<Answer>();
}

async function post(service: FastifyInstance, job: Job): Promise<{ id: string; schedule: ConnectorSchedule }> {
  const answer = await service.inject({ method: "POST", url: "/v1/jobs", payload: job });
  if (answer.statusCode !== 201) throw new Error(`the service refused ${job.name}: ${answer.body}`);
  const posted = answer.json<{ job: { id: string }; schedule: ConnectorSchedule }>();
  return { id: posted.job.id, schedule: posted.schedule };
}
