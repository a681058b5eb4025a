// How the tests run on broken rules: those that LANDFAST_MUTATION_TESTS names, with the packages taken by path, because
// the links in node_modules lead to the sources that nobody broke.
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const source = (path) => fileURLToPath(new URL(`../${path}`, import.meta.url));

export default defineConfig({
  resolve: {
    alias: {
      "@landfast/rules": source("packages/rules/src/index.ts"),
      "@landfast/data": source("data/src/index.ts"),
    },
  },
  test: {
    include: (process.env.LANDFAST_MUTATION_TESTS ?? "").split(";"),
    exclude: ["**/node_modules/**", "**/dist/**"],
  },
});
