// Who may import whom. Every rule says what to do instead, and tests/architecture plants one violation of each.
// The direction is core <- topics <- rulesets <- index inside the rules library, and rules <- stock <- api outside it.

const rules = "^packages/rules/src";
const stock = "^packages/stock/src";
const api = "^apps/api/src";
// Topics that put other topics together; each of the rest answers one question.
const combining = "joint|selection|schedule|remedies";
const test = "\\.test\\.ts$";
const sql = "(^|node_modules/)(drizzle-orm|better-sqlite3)(/|$)";
const http = "(^|node_modules/)(fastify|@fastify/[^/]+)(/|$)";
const doors = "^packages/[^/]+/src/index\\.ts$|^data/src/index\\.ts$|^apps/api/src/app\\.ts$";

/** @type {import("dependency-cruiser").IConfiguration} */
module.exports = {
  forbidden: [
    {
      name: "rules-is-pure",
      severity: "error",
      comment:
        "The rules library runs in a browser and depends on nothing: take what is needed as an argument, or put the code that needs it in the caller.",
      from: { path: rules, pathNot: test },
      to: { pathNot: rules },
    },
    {
      name: "core-stands-alone",
      severity: "error",
      comment: "Core is what everything else is written in: move what it needs down into core, or pass it in.",
      from: { path: `${rules}/core/`, pathNot: test },
      to: { path: rules, pathNot: `${rules}/core/` },
    },
    {
      name: "generated-is-data",
      severity: "error",
      comment: "Generated tables are data in core's words: put logic in a topic and bind the table in a rule set.",
      from: { path: `${rules}/generated/` },
      to: { path: rules, pathNot: `${rules}/(core|generated)/` },
    },
    {
      name: "topics-use-core-only",
      severity: "error",
      comment:
        "A topic answers one question from what it is given, for every edition: take tables and thresholds from the bindings, another topic's answer as an argument, or put what two topics share in core. Only joint, selection, schedule and remedies put topics together.",
      from: { path: `${rules}/topics/([^/]+)/`, pathNot: [test, `${rules}/topics/(${combining})/`] },
      to: { path: rules, pathNot: `${rules}/(core|topics/$1)/` },
    },
    {
      name: "combining-topics-know-no-edition",
      severity: "error",
      comment: "Putting topics together still knows no edition: take tables and thresholds from the bindings.",
      from: { path: `${rules}/topics/(${combining})/`, pathNot: test },
      to: { path: rules, pathNot: `${rules}/(core|topics)/` },
    },
    {
      name: "render-reads-findings-only",
      severity: "error",
      comment: "Rendering shows what a finding says: let the topic put into the finding what is to be shown.",
      from: { path: `${rules}/render/`, pathNot: test },
      to: { path: rules, pathNot: `${rules}/(core|topics|render)/` },
    },
    {
      name: "rulesets-bind-topics",
      severity: "error",
      comment: "A rule set binds topics to tables: showing findings and the front door come after it.",
      from: { path: `${rules}/rulesets/`, pathNot: test },
      to: { path: rules, pathNot: `${rules}/(core|topics|generated|rulesets)/` },
    },
    {
      name: "editions-stay-apart",
      severity: "error",
      comment:
        "An edition stands by itself, so that correcting one cannot change another: share through the standard's bind file, a topic, or core; say in the data that a table is the same.",
      from: { path: `${rules}/rulesets/([^/.]+)`, pathNot: [test, `${rules}/rulesets/(registry|editions)\\.ts$`] },
      to: { path: `${rules}/rulesets/[^/.]*-\\d{4}(/|\\.ts$)`, pathNot: `${rules}/rulesets/$1(/|\\.ts$)` },
    },
    {
      name: "editions-read-their-own-tables",
      severity: "error",
      comment:
        "Bind the table generated for this very edition. Where editions print the same table, the sidecar in data/published says so and the generated code shares it.",
      from: { path: `${rules}/rulesets/([a-z0-9]+)-(\\d{4})`, pathNot: test },
      to: {
        path: `${rules}/generated/(index\\.ts$|$1-\\d{4})`,
        pathNot: `${rules}/generated/$1-$2(/|\\.ts$)`,
      },
    },
    {
      name: "samples-are-for-tests",
      severity: "error",
      comment: "A sample joint is made up for tests: an answer rests on what was asked, never on a sample.",
      from: { path: "^(packages|apps)/", pathNot: [test, "/samples/"] },
      to: { path: `(${rules}|${stock})/samples/` },
    },
    {
      name: "front-door-comes-last",
      severity: "error",
      comment: "The front door is for those outside: inside the library import the file that has it.",
      from: { path: `${rules}/[^/]+/` },
      to: { path: `${rules}/[^/]+\\.ts$` },
    },
    {
      name: "stock-uses-rules-only",
      severity: "error",
      comment:
        "Stock decides from plain data: take what is needed as an argument, or import the rules library by its name.",
      from: { path: `${stock}/`, pathNot: [test, `${stock}/samples/`] },
      to: { path: "^(packages|apps|data|tests)/", pathNot: [`${stock}/`, `${rules}/index\\.ts$`] },
    },
    {
      name: "one-file-knows-the-solver",
      severity: "error",
      comment: "Ask the Solver interface: only highs-solve.mjs knows which solver stands behind it.",
      from: { path: "^(packages|apps)/", pathNot: [test, `${stock}/solver/highs-solve\\.mjs$`] },
      to: { path: "(^|node_modules/)highs(/|$)" },
    },
    {
      name: "routes-reach-services",
      severity: "error",
      comment: "A route turns HTTP into a question and an answer into HTTP: let a service ask the repository.",
      from: { path: `${api}/routes/`, pathNot: test },
      to: {
        path: "^(packages|apps|data)/",
        pathNot: [`${api}/(routes|schemas|services|plugins)/`, doors],
      },
    },
    {
      name: "services-know-no-http",
      severity: "error",
      comment: "A service works without a server: take plain values, return plain values, let the route do HTTP.",
      from: { path: `${api}/services/`, pathNot: test },
      to: { path: [http, `${api}/(routes|plugins)/`] },
    },
    {
      name: "services-are-given-repositories",
      severity: "error",
      comment: "A service takes its repository as an argument and imports its type only; app.ts puts them together.",
      from: { path: `${api}/services/`, pathNot: test },
      to: { path: `${api}/(repositories|db)/`, dependencyTypesNot: ["type-only"] },
    },
    {
      name: "sql-in-repositories",
      severity: "error",
      comment:
        "SQL lives in apps/api/src/repositories and src/db: give the repository a method that says what is wanted.",
      from: { path: "^(apps|packages)/", pathNot: [test, `${api}/(repositories|db)/`, "/drizzle\\.config\\.ts$"] },
      to: { path: sql },
    },
    {
      name: "repositories-know-no-http",
      severity: "error",
      comment: "A repository returns what the trade calls the thing: let services and routes turn it into an answer.",
      from: { path: `${api}/(repositories|db)/`, pathNot: test },
      to: { path: [http, `${api}/(routes|services|plugins|schemas)/`] },
    },
    {
      name: "no-deep-imports",
      severity: "error",
      comment: "Import the package by its name; when its front door lacks something, add it there.",
      from: { path: "^((packages|apps)/[^/]+|data|tests)/" },
      to: { path: "^((packages|apps)/[^/]+|data|tests)/", pathNot: ["^$1/", doors] },
    },
    {
      name: "shipped-code-needs-no-tests-or-data",
      severity: "error",
      comment: "What is shipped stands without tests and without the data workspace: generate code from data instead.",
      // The process that starts the service, and the demonstration, offer the invented catalogue and job.
      from: { path: "^(packages|apps)/", pathNot: `${api}/(server|demo|explain(-question)?)\\.ts$` },
      to: { path: "^(tests|data)/" },
    },
    {
      name: "no-development-dependency-in-shipped-code",
      severity: "error",
      comment: "Name the dependency under dependencies in that package's own package.json, or do without it.",
      from: { path: "^(packages|apps)/[^/]+/src/", pathNot: test },
      to: {
        dependencyTypes: ["npm-dev", "npm-no-pkg", "npm-unknown", "npm-optional", "npm-peer"],
        dependencyTypesNot: ["npm", "type-only"],
      },
    },
    {
      name: "no-cycles",
      severity: "error",
      comment: "Two files that need each other are one thing or three: join them, or move what both need below them.",
      from: {},
      to: { circular: true },
    },
    {
      name: "no-unresolved",
      severity: "error",
      comment: "Nothing is there: correct the path (relative imports end in .js) or add the dependency.",
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: "no-orphans",
      severity: "error",
      comment: "Nobody imports this and it imports nobody: use it or delete it.",
      from: {
        orphan: true,
        pathNot: [
          test,
          "\\.config\\.ts$",
          "\\.d\\.ts$",
          doors,
          `${api}/(server|demo|explain(-question)?)\\.ts$`,
          "/main\\.ts$",
        ],
      },
      to: {},
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    exclude: { path: ["(^|/)dist/", "(^|/)coverage/", "^tests/architecture/fixtures/"] },
    // Without it an import of types only is invisible, and a direction could be broken by types.
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.base.json" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["@landfast/source", "import", "node", "default", "types"],
    },
    skipAnalysisNotInRules: true,
  },
};
