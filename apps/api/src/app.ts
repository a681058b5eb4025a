/**
 * The one place where plugins and routes meet: tests and production build the same service. Also the door of this
 * package for what a caller has to bring.
 */
import { RULES_VERSION } from "@landfast/rules";
import { type Solver, ThreadSolver } from "@landfast/stock";
import { type FastifyInstance, type FastifyServerOptions, fastify, LogController } from "fastify";
import { ImportDesk } from "./imports/import-desk.js";
import { openapi } from "./plugins/openapi.js";
import { problemAnswers, refuseOtherMethods } from "./plugins/problem-answers.js";
import { BODY_MAX, strictBodies } from "./plugins/strict-bodies.js";
import { LOCAL_TENANT, type Store } from "./repositories/open-store.js";
import { barRoutes } from "./routes/bars.js";
import { calculationRoutes } from "./routes/calculations.js";
import { candidateRoutes } from "./routes/candidates.js";
import { catalogueRoutes } from "./routes/catalogue.js";
import { catalogueImportRoutes } from "./routes/catalogue-imports.js";
import { checkRoutes } from "./routes/checks.js";
import { economicsRoutes } from "./routes/economics.js";
import { jobRoutes } from "./routes/jobs.js";
import { labourTableRoutes } from "./routes/labour-tables.js";
import { ownCatalogueRoutes } from "./routes/own-catalogues.js";
import { partsListRoutes } from "./routes/parts-lists.js";
import { priceListRoutes } from "./routes/price-lists.js";
import { registerRoutes } from "./routes/register.js";
import { serviceRoutes } from "./routes/service.js";
import { stockPlanRoutes } from "./routes/stock-plans.js";
import { truckRoutes } from "./routes/trucks.js";
import { COMPONENTS } from "./schemas/components.js";
import { barService } from "./services/bars.js";
import { boundedSolver } from "./services/bounded-solver.js";
import { candidateService } from "./services/candidates.js";
import { catalogueService } from "./services/catalogue.js";
import { catalogueImportService } from "./services/catalogue-imports.js";
import { economicsService } from "./services/economics.js";
import { importMappingService } from "./services/import-mappings.js";
import type { JobRunner } from "./services/job-runner.js";
import { jobService, type PostedJob } from "./services/jobs.js";
import { labourTableService } from "./services/labour-tables.js";
import { ownCatalogueService } from "./services/own-catalogues.js";
import { partsListService } from "./services/parts-lists.js";
import { priceListService } from "./services/price-lists.js";
import { stockPlanService } from "./services/stock-plans.js";
import { stockQuestionService } from "./services/stock-questions.js";
import { truckService } from "./services/trucks.js";

export type { CatalogueRepository, StoredCatalogue } from "./repositories/catalogue-repository.js";
export type { JobHead, JobRecord, JobRepository } from "./repositories/job-repository.js";
export { LOCAL_TENANT, openStore, type Store } from "./repositories/open-store.js";
export { loadCatalogueIfNone } from "./services/catalogue.js";
export { type JobRunner, slicedRunner } from "./services/job-runner.js";

/** What the service is built from. */
export interface AppParts {
  readonly store: Store;
  readonly runner: JobRunner;
  /** The time as RFC 3339 in UTC. */
  readonly now: () => string;
  /** An id that was never given before. */
  readonly newId: () => string;
  /** What finds stock plans; absent: a thread of the service's own, which ends with it. */
  readonly solver?: Solver;
  /** How it logs; false for not at all. Neither bodies nor headers are ever logged. */
  readonly log: Exclude<FastifyServerOptions["logger"], undefined>;
}

/** Builds the service, ready to listen or to be asked in process. Closing it leaves the store open. */
export async function buildApp({ store, runner, now, newId, solver, log }: AppParts): Promise<FastifyInstance> {
  const app = fastify({
    logger: log,
    logController: new LogController({ disableRequestLogging: true }),
    bodyLimit: BODY_MAX,
    // Requests on connections already open are still answered while the service ends; new connections are not taken.
    return503OnClosing: false,
    routerOptions: { maxParamLength: 200 },
    frameworkErrors: (error, request, reply) => {
      app.errorHandler(error, request, reply);
    },
  });
  const catalogue = catalogueService(store.catalogues, LOCAL_TENANT);

  const made = { tenantId: LOCAL_TENANT, now, newId };
  const ownCatalogues = ownCatalogueService({ ownCatalogues: store.ownCatalogues, ...made });
  const jobs = jobService({ jobs: store.jobs, catalogue, ownCatalogues, runner, ...made });
  const importMappings = importMappingService({ ownCatalogues: store.ownCatalogues, ...made });
  const desk = new ImportDesk();
  app.addHook("onClose", () => desk.stop());
  const catalogueImports = catalogueImportService({
    catalogues: ownCatalogues,
    mappings: importMappings,
    repository: store.ownCatalogues,
    desk,
    ...made,
  });
  const priceLists = priceListService({ priceLists: store.priceLists, ...made });
  const labourTables = labourTableService({ labourTables: store.labourTables, ...made });

  const planner = boundedSolver(solver ?? ownSolver(app));
  const questions = stockQuestionService({
    jobs,
    runner,
    priceLists,
    labourTables,
    catalogueFor: ({ catalogue: choice }: PostedJob) =>
      choice === undefined ? catalogue.current() : ownCatalogues.catalogueFor(choice),
  });

  for (const component of COMPONENTS) app.addSchema(component);
  strictBodies(app, COMPONENTS);
  problemAnswers(app);
  if (app.log.level === "debug" || app.log.level === "trace")
    app.addHook("onResponse", (request, reply, done) => {
      const { method, routeOptions } = request;
      request.log.debug(
        { method, route: routeOptions.url, status: reply.statusCode, ms: reply.elapsedTime },
        "answered",
      );
      done();
    });
  await openapi(app, RULES_VERSION);

  const methodsByAddress = new Map<string, Set<string>>();
  app.addHook("onRoute", ({ url, method }) => {
    const methods = methodsByAddress.get(url) ?? new Set<string>();
    for (const one of [method].flat()) methods.add(one);
    methodsByAddress.set(url, methods);
  });
  jobRoutes(app, jobs);
  checkRoutes(app, catalogue);
  candidateRoutes(
    app,
    candidateService({
      jobs,
      catalogueFor: ({ catalogue: choice }) =>
        choice === undefined ? catalogue.current() : ownCatalogues.catalogueFor(choice),
    }),
  );
  calculationRoutes(app);
  catalogueRoutes(app, catalogue);
  ownCatalogueRoutes(app, ownCatalogues);
  await catalogueImportRoutes(app, catalogueImports, importMappings);
  priceListRoutes(app, priceLists);
  labourTableRoutes(app, labourTables);
  stockPlanRoutes(app, stockPlanService(questions, planner));
  partsListRoutes(app, partsListService(questions, planner));
  truckRoutes(app, truckService(questions, planner));
  economicsRoutes(app, economicsService(questions, planner));
  barRoutes(app, barService(planner));
  registerRoutes(app);
  serviceRoutes(app, store.ping, catalogue);
  refuseOtherMethods(app, new Map(methodsByAddress));
  await app.ready();
  return app;
}

/** The thread starts with the first plan and ends with the service. */
function ownSolver(app: FastifyInstance): Solver {
  const solver = new ThreadSolver();
  app.addHook("onClose", () => solver.stop());
  return solver;
}
