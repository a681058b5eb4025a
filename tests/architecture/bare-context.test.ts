import { fileURLToPath } from "node:url";
import { createContext, runInContext } from "node:vm";
import { build } from "esbuild";
import { beforeAll, describe, expect, it } from "vitest";

const frontDoor = fileURLToPath(new URL("../../packages/rules/src/index.ts", import.meta.url));

describe("the rules library in a bare context", () => {
  let script = "";
  let inputs: string[] = [];

  beforeAll(async () => {
    const bundle = await build({
      entryPoints: [frontDoor],
      bundle: true,
      write: false,
      metafile: true,
      format: "iife",
      globalName: "landfast",
      platform: "neutral",
      target: "es2023",
      logLevel: "silent",
    });
    script = bundle.outputFiles[0]?.text ?? "";
    inputs = Object.keys(bundle.metafile.inputs);
  });

  it("is made of its own files only", () => {
    expect(inputs.length).toBeGreaterThan(1);
    expect(inputs.filter((path) => !path.includes("packages/rules/src/"))).toEqual([]);
  });

  it("runs where there is no process, require, fetch, timer or buffer", () => {
    const context = createContext({});
    const absent = "[typeof process, typeof require, typeof fetch, typeof setTimeout, typeof Buffer].join()";
    expect(runInContext(absent, context)).toBe(Array(5).fill("undefined").join());
    runInContext(script, context);
    const exported = runInContext("Object.keys(landfast)", context) as string[];
    expect(exported.length).toBeGreaterThan(0);
  });
});
