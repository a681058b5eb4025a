import { defineConfig } from "eslint/config";
import tseslint from "typescript-eslint";

// Only the rules that need types: form and the quick rules are biome's.
export default defineConfig(
  {
    ignores: [
      "**/dist/**",
      "**/coverage/**",
      "var/**",
      "**/*.{js,mjs,cjs}",
      "packages/rules/src/generated/**",
      "tests/architecture/fixtures/**",
    ],
  },
  {
    files: ["**/*.ts"],
    extends: [tseslint.configs.strictTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    linterOptions: { reportUnusedDisableDirectives: "error" },
    rules: {
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "@typescript-eslint/switch-exhaustiveness-check": ["error", { considerDefaultExhaustiveForUnions: true }],
      "@typescript-eslint/consistent-type-imports": "error",
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_", ignoreRestSiblings: true }],
    },
  },
  {
    // The same question has the same answer on every machine, on every day, in every country.
    files: ["packages/rules/src/**/*.ts"],
    rules: {
      "no-restricted-globals": [
        "error",
        { name: "Date", message: "The rules library has no clock: take the date as an argument." },
        { name: "Intl", message: "The rules library has no locale: print with core." },
        { name: "globalThis", message: "The rules library runs where there is nothing around it." },
      ],
      "no-restricted-properties": [
        "error",
        { object: "Math", property: "random", message: "The rules library gives one answer to one question." },
        ...["toLocaleString", "toLocaleUpperCase", "toLocaleLowerCase", "localeCompare"].map((property) => ({
          property,
          message: "The rules library has no locale: print and compare with core.",
        })),
        ...["toLocaleDateString", "toLocaleTimeString"].map((property) => ({
          property,
          message: "The rules library has no clock and no locale.",
        })),
      ],
    },
  },
  {
    // What runs for each joint with each connector of a catalogue.
    files: [
      "packages/rules/src/core/{rule,worksheet,termination-limit}.ts",
      "packages/rules/src/topics/{grounding,metals,mounting,openings,overcurrent,parallel,place,preparation,range,rework}/**/*.ts",
      "packages/rules/src/topics/{service,space,stranding,taps,termination,tooling,torque,use,voltage}/**/*.ts",
    ],
    ignores: ["**/*.test.ts"],
    rules: {
      "no-restricted-syntax": [
        "error",
        {
          selector: "ObjectExpression > SpreadElement",
          message:
            "Spreading into an object costs two hundred times what writing its fields costs on Node 20, and this runs in every check: write the fields, or use settledFrom.",
        },
      ],
    },
  },
);
