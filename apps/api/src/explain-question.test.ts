import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type Basis, type CalculationName, calculate } from "@landfast/rules";
import { describe, expect, test, vi } from "vitest";
import { type Explanation, explainQuestion } from "./explain-question.js";

// The service is built for every question.
vi.setConfig({ testTimeout: 60_000 });

const EXAMPLES = new URL("../../../docs/examples/", import.meta.url);
const files = readdirSync(EXAMPLES).filter((name) => name.endsWith(".json"));
const read = (name: string): string => readFileSync(new URL(name, EXAMPLES), "utf8");
const explanations = new Map<string, Promise<Explanation>>();

/** Each example is asked once. */
function explained(name: string): Promise<Explanation> {
  const known = explanations.get(name) ?? explainQuestion(read(name));
  explanations.set(name, known);
  return known;
}

const calculated = files.filter((name) => read(name).includes('"calculation"'));

describe.each(files)("the example %s", (name) => {
  test("is explained in numbered lines of at most 120 columns, with the caution at the end", async () => {
    const { text, isAnswered } = await explained(name);
    expect(isAnswered, text).toBe(true);
    const lines = text.trimEnd().split("\n");
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(120);
    expect(text).toMatch(/^ +1\. /m);
    expect(text).toContain("NFPA 70-20");
    expect(text).not.toMatch(/undefined|NaN|\[object/);
    expect(text.trimEnd().endsWith("Work de-energized.")).toBe(true);
  });
});

test("there are examples of at least four calculations", () => {
  const names = calculated.map((name) => (JSON.parse(read(name)) as { calculation: string }).calculation);
  expect(new Set(names).size).toBeGreaterThanOrEqual(4);
});

describe.each(calculated)("the calculation of %s", (name) => {
  test("is told step by step: every step of the library's answer has its number, every clause its name", async () => {
    const { calculation, basis, question } = JSON.parse(read(name)) as {
      calculation: CalculationName;
      basis: Basis;
      question: never;
    };
    const finding = calculate(calculation, question, basis);
    const text = (await explained(name)).text.replaceAll(/\n +/g, " ");
    expect(text).toContain(finding.sentence);
    for (const step of finding.steps) {
      expect(text).toContain(` ${step.id}. ${step.label}: `);
      if ("cite" in step) expect(text).toContain(step.cite.locator);
      if (step.kind === "read") expect(text).toContain(`row ${step.cell.row}, column ${step.cell.column}, `);
    }
    for (const { path } of finding.missing) expect(text).toContain(path);
  });
});

describe("a question that is wrong", () => {
  const basis = { ruleSet: "nfpa70", edition: "2023" };
  test.each<[string, string, RegExp]>([
    ["an unknown calculation", JSON.stringify({ calculation: "guess", basis, question: {} }), /one of ampacity/],
    [
      "a field too many",
      JSON.stringify({ calculation: "convert", basis, question: { kind: "wire-geometry", size: "10 AWG" }, x: 1 }),
      /\/x: there is no field "x"/,
    ],
    ["no JSON", "{", /good JSON/],
    ["a name given twice", '{"calculation":"convert","calculation":"torque"}', /twice/],
    ["a list", "[]", /a list is not an object/],
  ])("%s is refused in words", async (_, question, words) => {
    const { text, isAnswered } = await explainQuestion(question);
    expect(isAnswered).toBe(false);
    expect(text).toMatch(words);
  });
});

test("the command prints the explanation of a file", async () => {
  const file = fileURLToPath(new URL(calculated[0] ?? "", EXAMPLES));
  const program = fileURLToPath(new URL("explain.ts", import.meta.url));
  const run = (...args: string[]) =>
    spawnSync(process.execPath, ["--import", "tsx", "--conditions=@landfast/source", program, ...args], {
      encoding: "utf8",
    });
  const printed = run(file);
  expect(printed.stderr).toBe("");
  expect(printed.status).toBe(0);
  expect(printed.stdout).toBe((await explained(calculated[0] ?? "")).text);
  expect(run().status).toBe(2);
  expect(run().stderr).toContain("npm run explain -- FILE");
});
