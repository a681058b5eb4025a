import { readdirSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { cruise, type IConfiguration, type ICruiseResult } from "dependency-cruiser";
import extractTsConfig from "dependency-cruiser/config-utl/extract-ts-config";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const fixtures = fileURLToPath(new URL("fixtures", import.meta.url));

const { forbidden = [], options = {} } = createRequire(import.meta.url)(
  `${root}/.dependency-cruiser.cjs`,
) as IConfiguration;
const { enhancedResolveOptions, tsConfig, ...cruiseOptions } = options;

/** Names of the rules broken in one fixture, which is a tree shaped like the project. */
async function rulesBroken(fixture: string): Promise<{ broken: string[]; modules: number }> {
  const baseDir = `${fixtures}/${fixture}`;
  const folders = readdirSync(baseDir);
  const { output } = await cruise(
    folders,
    { ...cruiseOptions, ruleSet: { forbidden }, validate: true, baseDir },
    { ...enhancedResolveOptions },
    { tsConfig: extractTsConfig(`${root}/${tsConfig?.fileName ?? ""}`) },
  );
  const { modules, summary } = output as ICruiseResult;
  return {
    broken: [...new Set(summary.violations.map(({ rule }) => rule.name))],
    modules: modules.filter(({ source }) => /^(packages|apps|data)\//.test(source)).length,
  };
}

const names = forbidden.map(({ name }) => name ?? "");

describe("import rules", () => {
  it("have one planted violation each", () => {
    expect(readdirSync(fixtures).filter((fixture) => fixture !== "clean")).toEqual(names.toSorted());
  });

  it("say what to do instead", () => {
    expect(forbidden.filter(({ comment = "" }) => comment.length < 40).map(({ name }) => name)).toEqual([]);
  });

  it.each(names)("%s fires on its planted violation", async (name) => {
    const { broken } = await rulesBroken(name);
    expect(broken).toContain(name);
  });

  it("let the intended directions through", async () => {
    const { broken, modules } = await rulesBroken("clean");
    expect(broken).toEqual([]);
    expect(modules).toBe(22);
  });
});
