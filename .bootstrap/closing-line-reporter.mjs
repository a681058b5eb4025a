import { writeFileSync, writeSync } from "node:fs";

/**
 * Vitest reporter whose only output is the run's last line, "N passed, N failed".
 *
 * Vitest's own counts leave out what did not get as far as being a test. Here a failure is also: a file that does
 * not load, a hook that throws, an error nobody caught, and a run in which no test was found.
 */
export default class ClosingLineReporter {
  onTestRunEnd(modules, unhandledErrors, reason) {
    let passed = 0;
    let failed = unhandledErrors.length;
    for (const module of modules) {
      failed += module.errors().length;
      for (const suite of module.children.allSuites()) failed += suite.errors().length;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === "passed") passed += 1;
        if (state === "failed") failed += 1;
      }
    }
    if (failed === 0 && (reason !== "passed" || passed === 0)) failed = 1;
    // Coverage tables and late messages come after this hook: wait for the end of the process.
    process.once("exit", () => {
      writeSync(1, `${passed} passed, ${failed} failed\n`);
      const { CLOSING_LINE_WRITTEN } = process.env;
      if (CLOSING_LINE_WRITTEN) writeFileSync(CLOSING_LINE_WRITTEN, "");
    });
    if (failed > 0) process.exitCode ||= 1;
  }
}
