// Runs the tests on broken rules in one process: the tests and the library are bundled once, and each break evaluates
// that bundle afresh and runs the tests that reach it. The usual runner starts anew for every break, which costs half a
// second where the tests take a few milliseconds. Loaded by the mutation run in its own copy of the project.
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { Script } from "node:vm";

const NAMESPACE = "__stryker__";
const here = dirname(fileURLToPath(import.meta.url));
const packagesOfTests = createRequire(join(here, "../tests/package.json"));
const packagesOfVitest = createRequire(packagesOfTests.resolve("vitest/package.json"));

class BundledTests {
  static inject = ["options"];
  #script;
  #files = (process.env.LANDFAST_MUTATION_TESTS ?? "").split(";");
  #expect;

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    this.#expect = await expectOfVitest();
    this.#script = await bundled(this.#files);
  }

  async dryRun() {
    const shared = namespace();
    shared.activeMutant = undefined;
    const tests = [];
    const collector = this.#evaluate();
    const all = [];
    for (const file of this.#files) all.push(...(await collector.testsOf(file)));
    for (const { id, name, file, run } of all) {
      shared.currentTestId = undefined;
      const before = performance.now();
      const failure = await run(() => {
        shared.currentTestId = id;
      });
      shared.currentTestId = undefined;
      const timeSpentMs = performance.now() - before;
      const fileName = join(process.cwd(), file);
      tests.push(
        failure === undefined
          ? { id, name, fileName, timeSpentMs, status: 0 }
          : { id, name, fileName, timeSpentMs, status: 1, failureMessage: failure },
      );
    }
    return { status: "complete", tests, mutantCoverage: shared.mutantCoverage };
  }

  async mutantRun({ testFilter, activeMutant, mutantActivation, hitLimit }) {
    const shared = namespace();
    shared.hitCount = undefined;
    shared.activeMutant = mutantActivation === "static" ? activeMutant.id : undefined;
    const wanted = testFilter === undefined ? undefined : new Set(testFilter);
    const files = wanted === undefined ? this.#files : this.#files.filter((file) => reaches(wanted, file));
    let nrOfTests = 0;
    try {
      const collector = this.#evaluate();
      for (const file of files) {
        // Hooks and tests run broken; loading a file does too where the place is reached by loading.
        shared.activeMutant = mutantActivation === "static" ? activeMutant.id : undefined;
        const tests = await collector.testsOf(file);
        shared.activeMutant = activeMutant.id;
        shared.hitCount = 0;
        shared.hitLimit = hitLimit;
        for (const { id, run } of tests) {
          if (wanted !== undefined && !wanted.has(id)) continue;
          nrOfTests += 1;
          const failure = await run();
          if (hitLimit !== undefined && shared.hitCount > hitLimit)
            return { status: "timeout", reason: `reached ${String(shared.hitCount)} times` };
          if (failure !== undefined) return { status: "killed", killedBy: [id], failureMessage: failure, nrOfTests };
        }
        shared.hitCount = undefined;
      }
    } catch (error) {
      // The library does not even load with this break in it: every test would fail.
      return {
        status: "killed",
        killedBy: [wanted?.values().next().value ?? "load"],
        failureMessage: text(error),
        nrOfTests,
      };
    } finally {
      shared.activeMutant = undefined;
    }
    if (wanted !== undefined && nrOfTests !== wanted.size)
      throw new Error("a test that reached this place is not there");
    return { status: "survived", nrOfTests };
  }

  /** The bundle anew, nothing of it kept from before; its test files are loaded when they are asked for. */
  #evaluate() {
    const module = { exports: {} };
    const collector = new Collector(module.exports);
    globalThis.__testing__ = { ...collector.words(), expect: this.#expect };
    this.#script.runInThisContext()(createRequire(join(process.cwd(), "tests/package.json")), module, module.exports);
    return collector;
  }
}

export const strykerPlugins = [{ kind: "TestRunner", name: "bundled", injectableClass: BundledTests }];

/** What a test file says, written down: each test with the hooks of the suites around it. */
class Collector {
  #tests = [];
  #file = "";
  #suites = [];

  constructor(loaders) {
    this.loaders = loaders;
  }

  async testsOf(file) {
    this.#file = file;
    this.#tests = [];
    this.#suites = [newSuite(file)];
    await this.loaders[file]();
    return this.#tests;
  }

  words() {
    const suite = (name, body) => {
      this.#suites.push(newSuite(name));
      body();
      this.#suites.pop();
    };
    const single = (name, ...rest) => {
      const body = rest.find((one) => typeof one === "function");
      const suites = [...this.#suites];
      const names = [...suites.slice(1).map((one) => one.name), name];
      const id = `${this.#file}#${String(this.#tests.length)} ${names.join(" > ")}`;
      this.#tests.push({ id, name: id, file: this.#file, run: (begin = () => {}) => runOne(suites, body, begin) });
    };
    const hook = (kind) => (body) => {
      this.#suites.at(-1)[kind].push(body);
    };
    const test = withEach(single);
    return {
      describe: withEach(suite),
      test,
      it: test,
      beforeAll: hook("before"),
      beforeEach: hook("beforeEach"),
      afterAll: () => {},
      afterEach: hook("afterEach"),
    };
  }
}

const newSuite = (name) => ({ name, before: [], beforeEach: [], afterEach: [], done: false });

async function runOne(suites, body, begin) {
  try {
    for (const suite of suites) {
      if (!suite.done) for (const before of suite.before) await before();
      suite.done = true;
    }
    begin();
    for (const suite of suites) for (const before of suite.beforeEach) await before();
    await body();
    for (const suite of suites) for (const after of suite.afterEach) await after();
    return undefined;
  } catch (error) {
    return text(error);
  }
}

function withEach(word) {
  const skip = () => {};
  return Object.assign((name, ...rest) => word(name, ...rest), {
    each: (table) => (name, body) => {
      for (const row of table) {
        const values = Array.isArray(row) ? row : [row];
        word(`${name} ${JSON.stringify(values).slice(0, 120)}`, () => body(...values));
      }
    },
    skip,
    skipIf: (condition) => (condition ? skip : word),
  });
}

async function bundled(files) {
  const esbuild = await import(pathToFileURL(packagesOfTests.resolve("esbuild")).href);
  const out = mkdtempSync(join(tmpdir(), "landfast-bundle-"));
  try {
    await esbuild.build({
      stdin: {
        contents: files.map((file) => `exports[${JSON.stringify(file)}] = () => require("./${file}");`).join("\n"),
        resolveDir: process.cwd(),
        loader: "js",
      },
      outfile: join(out, "bundle.cjs"),
      bundle: true,
      platform: "node",
      format: "cjs",
      target: "node20",
      logLevel: "error",
      external: ["esbuild", "dependency-cruiser", "fastify", "highs"],
      alias: {
        "@landfast/rules": join(process.cwd(), "packages/rules/src/index.ts"),
        "@landfast/data": join(process.cwd(), "data/src/index.ts"),
      },
      plugins: [{ name: "testing", setup: testing }],
    });
    return new Script(`(function (require, module, exports) {${readFileSync(join(out, "bundle.cjs"), "utf8")}\n})`);
  } finally {
    rmSync(out, { recursive: true });
  }
}

function testing(build) {
  build.onResolve({ filter: /^vitest$/ }, () => ({ path: "vitest", namespace: "testing" }));
  build.onLoad({ filter: /.*/, namespace: "testing" }, () => ({
    contents: "module.exports = globalThis.__testing__;",
  }));
  build.onLoad({ filter: /\.ts$/ }, ({ path }) =>
    path.includes("node_modules")
      ? undefined
      : {
          contents: readFileSync(path, "utf8").replaceAll("import.meta.url", JSON.stringify(pathToFileURL(path).href)),
          loader: "ts",
        },
  );
}

/** Vitest's own matchers, without its runner. */
async function expectOfVitest() {
  const matchers = await import(pathToFileURL(packagesOfVitest.resolve("@vitest/expect")).href);
  const { chai, JestAsymmetricMatchers, JestChaiExpect, JestExtend, GLOBAL_EXPECT, setState } = matchers;
  chai.use(JestExtend);
  chai.use(JestChaiExpect);
  chai.use(JestAsymmetricMatchers);
  chai.use(({ Assertion }) => {
    Assertion.addMethod("toMatchFileSnapshot", function (path) {
      if (this._obj !== readFileSync(path, "utf8")) throw new Error(`differs from ${path}`);
    });
  });
  const expect = Object.assign((value, message) => chai.expect(value, message), chai.expect);
  globalThis[GLOBAL_EXPECT] = expect;
  setState({ assertionCalls: 0, isExpectingAssertions: false, expectedAssertionsNumber: null }, expect);
  return expect;
}

function namespace() {
  globalThis[NAMESPACE] ??= {};
  return globalThis[NAMESPACE];
}

function reaches(wanted, file) {
  for (const id of wanted) if (id.startsWith(`${file}#`)) return true;
  return false;
}

function text(error) {
  return error instanceof Error ? `${error.name}: ${error.message}`.slice(0, 500) : String(error);
}
