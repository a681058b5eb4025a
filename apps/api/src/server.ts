/** The process: configuration, store, listening, and a graceful end. */
import { randomUUID } from "node:crypto";
import type { ServerResponse } from "node:http";
import { demoCatalogue } from "@landfast/data";
import type { FastifyInstance } from "fastify";
import { buildApp, LOCAL_TENANT, loadCatalogueIfNone, openStore, type Store, slicedRunner } from "./app.js";
import { type Config, ConfigError, readConfig } from "./config.js";

/** How long requests under way may take to finish once the end is asked for. */
const GRACE_MS = 25_000;

const clock = { now: () => new Date().toISOString(), newId: randomUUID };

await main();

async function main(): Promise<void> {
  let config: Config;
  try {
    config = readConfig(process.env);
  } catch (error) {
    if (!(error instanceof ConfigError)) throw error;
    process.stderr.write(`The configuration is not accepted.\n${error.message}\n`);
    process.exitCode = 2;
    return;
  }
  const store = openStore(config.databaseFile);
  await loadCatalogueIfNone(store.catalogues, LOCAL_TENANT, demoCatalogue, clock);
  const app = await buildApp({
    store,
    runner: slicedRunner(() => performance.now()),
    ...clock,
    log: { level: config.logLevel },
  });
  endOnSignal(app, store);
  const address = await app.listen({ port: config.port, host: config.host });
  process.stdout.write(`Landfast answers at ${address}; its pages are at ${address}/docs\n`);
}

/**
 * Stops accepting, lets requests under way finish, closes the store, and only then ends. Connections on which nothing
 * is under way are closed at once: a client that keeps one open does not hold up the end.
 */
function endOnSignal(app: FastifyInstance, store: Store): void {
  const underWay = new Set<ServerResponse>();
  let ending = false;
  const closeUnused = (): void => {
    if (ending && underWay.size === 0) app.server.closeAllConnections();
  };
  app.server.on("request", (_request, response: ServerResponse) => {
    underWay.add(response);
    if (ending) response.setHeader("connection", "close");
    response.once("close", () => {
      underWay.delete(response);
      closeUnused();
    });
  });

  const end = (signal: NodeJS.Signals): void => {
    if (ending) return;
    ending = true;
    app.log.info(`${signal}: finishing`);
    for (const response of underWay) if (!response.headersSent) response.setHeader("connection", "close");
    const late = setTimeout(() => {
      app.log.error("requests under way did not finish in time");
      process.exit(1);
    }, GRACE_MS);
    app
      .close()
      .then(() => {
        store.close();
        clearTimeout(late);
        process.exit(0);
      })
      .catch((error: unknown) => {
        app.log.error({ err: error }, "could not end cleanly");
        process.exit(1);
      });
    closeUnused();
  };
  process.on("SIGTERM", end);
  process.on("SIGINT", end);
}
