import { describe, expect, test } from "vitest";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { BOLT_KINDS, type BoltTorqueQuestion, boltTorque } from "./bolt-torque.js";

const BASIS = { ruleSet: "nfpa70", edition: "2023" } as const;

function ask(question: BoltTorqueQuestion) {
  return boltTorque.answer(question, BASIS, nfpa70Edition2023);
}

function results(question: BoltTorqueQuestion) {
  return Object.fromEntries(ask(question).results.map(({ name, value }) => [name, value]));
}

describe("torque of pad bolts", () => {
  // published: NEMA CC 1-2009 installation torque table and NETA ATS-2021 Tables 100.12.1 to 100.12.4 (from memory; the
  // cells are marked as not confirmed against print)
  test.each([
    ["NEMA CC 1", "1/2", "stainless-steel", false, 480, "lbf-in"],
    ["NEMA CC 1", "3/8", "silicon-bronze", false, 240, "lbf-in"],
    ["NEMA CC 1", "1/2", "galvanized-steel", false, 480, "lbf-in"],
    ["NEMA CC 1", "1/2", "aluminum", true, 300, "lbf-in"],
    ["NETA ATS", "1/2", "stainless-steel", false, 40, "lbf-ft"],
    ["NETA ATS", "1/2", "silicon-bronze", true, 25, "lbf-ft"],
    ["NETA ATS", "1/2", "silicon-bronze", false, 40, "lbf-ft"],
    ["NETA ATS", "1/2", "steel-grade-5", false, 48, "lbf-ft"],
    ["NETA ATS", "1/2", "steel-grade-1", false, 30, "lbf-ft"],
    ["NETA ATS", "1/2", "steel-grade-2", false, 30, "lbf-ft"],
    ["NETA ATS", "1/2", "steel-grade-7", false, 68, "lbf-ft"],
    ["NETA ATS", "1/2", "steel-grade-8", false, 74, "lbf-ft"],
    ["NETA ATS", "5/8", "aluminum", true, 40, "lbf-ft"],
  ] as const)("published: %s, %s in %s, lubricated %s: %d %s", (table, diameter, bolt, lubricated, value, unit) => {
    const finding = ask({ table, diameter, bolt, lubricated });
    expect(finding.results[0]).toMatchObject({ name: `torque by ${table}`, value, unit });
    expect(finding.cite.standard).toBe(table);
    expect(finding.sentence).toContain(table);
  });

  // hand: 480 / 12 = 40 lbf-ft; 480 x 0.1129848290276167 = 54.2327179 N-m
  test("the printed torque is also given in the other units", () => {
    const found = results({ table: "NEMA CC 1", diameter: "1/2", bolt: "stainless-steel", lubricated: false });
    expect(found["torque by NEMA CC 1 in lbf-ft"]).toBe(40);
    expect(found["torque by NEMA CC 1 in N-m"]).toBeCloseTo(54.2327179, 6);
  });

  test("both tables answer under their own names", () => {
    const question = { table: "both", diameter: "1/2", bolt: "stainless-steel", lubricated: false } as const;
    const found = results(question);
    expect(found["torque by each table"]).toEqual(["480 lbf-in by NEMA CC 1", "40 lbf-ft by NETA ATS"]);
    expect(found).toMatchObject({ "torque by NEMA CC 1": 480, "torque by NETA ATS": 40 });
    expect(ask(question).sentence).not.toContain("differ");
  });
  // hand: 650 lbf-in against 60 x 12 = 720 lbf-in
  test("where they differ the answer says so and prefers neither", () => {
    const finding = ask({ table: "both", diameter: "3/4", bolt: "aluminum", lubricated: true });
    expect(finding.sentence).toContain("the two tables differ");
    expect(finding.results[0]?.value).toEqual(["650 lbf-in by NEMA CC 1", "60 lbf-ft by NETA ATS"]);
    expect(finding.advice.join(" ")).toContain("specification");
  });
  test("where only one of them answers the other is named", () => {
    const finding = ask({ table: "both", diameter: "1/2", bolt: "steel-grade-5", lubricated: false });
    expect(finding.results[0]).toMatchObject({ name: "torque by NETA ATS", value: 48 });
    expect(finding.advice.join(" ")).toContain("NEMA CC 1 has no column");
    const blank = ask({ table: "both", diameter: "3/4", bolt: "silicon-bronze", lubricated: false });
    expect(blank.results[0]).toMatchObject({ name: "torque by NETA ATS", value: 70 });
    expect(blank.advice.join(" ")).toContain("prints no value");
  });

  test("an answer from cells that were not confirmed shows it in its steps", () => {
    const finding = ask({ table: "NETA ATS", diameter: "1/2", bolt: "stainless-steel", lubricated: false });
    expect(finding.steps.flatMap((step) => (step.kind === "read" ? [step.cell.status] : []))).toEqual(["unconfirmed"]);
  });
});

describe("what bolt torque cannot answer", () => {
  test.each(BOLT_KINDS)("%s: whether the thread is lubricated is asked for", (bolt) => {
    expect(ask({ table: "both", diameter: "1/2", bolt })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "question/lubricated" }],
    });
  });
  test.each([
    // cells that stand blank after two entries differed
    ["NEMA CC 1", "3/4", "stainless-steel", false, "OUTSIDE_TABLE"],
    ["NEMA CC 1", "5/16", "aluminum", true, "OUTSIDE_TABLE"],
    ["NEMA CC 1", "7/16", "aluminum", true, "OUTSIDE_TABLE"],
    ["NETA ATS", "3/4", "stainless-steel", false, "OUTSIDE_TABLE"],
    ["NETA ATS", "1/4", "silicon-bronze", false, "OUTSIDE_TABLE"],
    ["both", "3/4", "stainless-steel", false, "OUTSIDE_TABLE"],
    // sizes that are no row, in either direction
    ["NEMA CC 1", "7/8", "stainless-steel", false, "OUTSIDE_TABLE"],
    ["NETA ATS", "3/16", "steel-grade-5", false, "OUTSIDE_TABLE"],
    ["NETA ATS", "0.5", "steel-grade-5", false, "OUTSIDE_TABLE"],
    ["NETA ATS", "M12", "steel-grade-5", false, "OUTSIDE_TABLE"],
    // threads that no column is for
    ["NEMA CC 1", "1/2", "stainless-steel", true, "NOT_COVERED"],
    ["NEMA CC 1", "1/2", "aluminum", false, "NOT_COVERED"],
    ["NEMA CC 1", "1/2", "steel-grade-5", false, "NOT_COVERED"],
    ["NETA ATS", "1/2", "steel-grade-5", true, "NOT_COVERED"],
    ["NETA ATS", "1/2", "stainless-steel", true, "NOT_COVERED"],
    ["NETA ATS", "1/2", "galvanized-steel", false, "NOT_COVERED"],
    ["NETA ATS", "1/2", "aluminum", false, "NOT_COVERED"],
    ["both", "1/2", "galvanized-steel", true, "NOT_COVERED"],
  ] as const)("%s, %s in %s, lubricated %s: refused with %s", (table, diameter, bolt, lubricated, code) => {
    expect(ask({ table, diameter, bolt, lubricated })).toMatchObject({
      outcome: "refused",
      refusal: { code },
      results: [],
    });
  });
});
