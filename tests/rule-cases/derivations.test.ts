// regression: each text was read against its clause when it was written
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { CALCULATIONS, type CalculationName, RULES } from "@landfast/rules";
import { describe, expect, test } from "vitest";
import { calculationCases, calculationText } from "./calculation-cases.js";
import { changedCasesOf, chooseRuleCases, jointsOf, ruleCasesAt, ruleText } from "./rule-cases.js";

const choose = process.env["LANDFAST_CASES"] === "choose";
/** Only these rules and calculations, comma between; all of them without it. */
const only = process.env["LANDFAST_CASES_OF"]?.split(",");
const wanted = (id: string): boolean => only === undefined || only.includes(id);

function fileOf(kind: "rules" | "calculations", id: string): string {
  return fileURLToPath(new URL(`derivations/${kind}/${id}.txt`, import.meta.url));
}

test("every one asked for exists", () => {
  const known: readonly string[] = [...RULES.map(({ id }) => id), ...Object.keys(CALCULATIONS)];
  expect((only ?? known).filter((id) => id !== "" && !known.includes(id))).toEqual([]);
});

const chosen = choose ? chooseRuleCases() : undefined;

describe("rules", () => {
  test.each(RULES.filter(({ id }) => wanted(id)).map(({ id }) => [id]))("%s", async (id) => {
    const file = fileOf("rules", id);
    const written = existsSync(file) ? readFileSync(file, "utf8") : "";
    const cases = chosen?.get(id) ?? ruleCasesAt(id, jointsOf(written));
    await expect(ruleText(id, cases)).toMatchFileSnapshot(file);
    expect(cases.length + changedCasesOf(id).length).toBeGreaterThan(0);
  });
});

describe("calculations", () => {
  test.each((Object.keys(CALCULATIONS) as CalculationName[]).filter(wanted).map((name) => [name] as const))(
    "%s",
    async (name) => {
      const cases = calculationCases(name);
      await expect(calculationText(name, cases)).toMatchFileSnapshot(fileOf("calculations", name));
      expect(cases.length).toBeGreaterThan(0);
    },
  );
});
