import { defineConfig } from "vitest/config";

export default defineConfig({
  // Exactly this condition and no other: workspace packages then run from source without a build. Adding the usual
  // ones here would replace how published packages are resolved, and break those with two builds.
  ssr: { resolve: { conditions: ["@landfast/source"] } },
  test: {
    include: ["packages/*/src/**/*.test.ts", "apps/*/src/**/*.test.ts", "data/**/*.test.ts", "tests/**/*.test.ts"],
    exclude: ["**/node_modules/**", "**/dist/**", "tests/architecture/fixtures/**"],
    reporters: ["default", "./.bootstrap/closing-line-reporter.mjs"],
    coverage: {
      provider: "v8",
      include: ["packages/*/src/**/*.ts", "apps/*/src/**/*.ts", "data/build/**/*.ts"],
      exclude: ["**/*.test.ts", "packages/rules/src/{generated,samples}/**"],
    },
  },
});
