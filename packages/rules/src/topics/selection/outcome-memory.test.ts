import { describe, expect, test } from "vitest";
import type { CatalogueItem } from "../../core/connector.js";
import { sampleConnector } from "../../samples/sample-joint.js";
import { FactNumbers, NumberedFacts } from "./fact-numbers.js";
import { CatalogueColumns, OutcomeMemory } from "./outcome-memory.js";

const item = (voltageV: number, metalMarking: string): CatalogueItem => ({
  ...sampleConnector(),
  partNumber: `${String(voltageV)} ${metalMarking}`,
  status: "invented",
  packQuantity: 1,
  voltageV,
  metalMarking,
});
const ITEMS = [item(300, "CU"), item(600, "CU"), item(600, "AL9CU"), item(300, "CU")];
const none = (groups: number): (string | undefined)[] => new Array<string | undefined>(groups).fill(undefined);
const read = (joint: readonly string[], connector: readonly string[]) => ({
  joint: new Set(joint),
  connector: new Set(connector),
});

// hand: connectors are alike where the facts in question are
describe("outcomes are kept by the facts they rest on", () => {
  const numbers = new FactNumbers();
  const joint = (role: string, function_: string) => new NumberedFacts({ role, function: function_ }, numbers);

  test("at first everything is alike; each new fact divides what differs in it", () => {
    const memory = new OutcomeMemory(new CatalogueColumns(ITEMS), none);
    expect([...memory.groups]).toEqual([0, 0, 0, 0]);
    expect(memory.restsOn(read([], ["voltageV"]))).toBe(true);
    expect([...memory.groups]).toEqual([0, 1, 1, 0]);
    expect(memory.restsOn(read([], ["metalMarking", "voltageV"]))).toBe(true);
    expect([...memory.groups]).toEqual([0, 1, 2, 0]);
    expect(memory.restsOn(read([], ["metalMarking"]))).toBe(false);
  });
  test("joints that agree in the facts share outcomes, others do not", () => {
    const memory = new OutcomeMemory(new CatalogueColumns(ITEMS), none);
    memory.restsOn(read(["role"], []));
    memory.outcomesFor(joint("phase", "tap"))[0] = "pass";
    expect(memory.outcomesFor(joint("phase", "splice"))[0]).toBe("pass");
    expect(memory.outcomesFor(joint("neutral", "tap"))[0]).toBeUndefined();
  });
  test("an outcome found before a fact was known to matter is forgotten", () => {
    const memory = new OutcomeMemory(new CatalogueColumns(ITEMS), none);
    memory.restsOn(read(["role"], []));
    memory.outcomesFor(joint("phase", "tap"))[0] = "pass";
    expect(memory.restsOn(read(["function", "role"], []))).toBe(true);
    expect(memory.outcomesFor(joint("phase", "tap"))[0]).toBeUndefined();
    expect(memory.size).toBe(1);
  });
  test("its size is the places kept: as many as kinds of joints times groups of connectors", () => {
    const memory = new OutcomeMemory(new CatalogueColumns(ITEMS), none);
    memory.restsOn(read(["role"], ["metalMarking", "voltageV"]));
    expect(memory.size).toBe(0);
    memory.outcomesFor(joint("phase", "tap"));
    memory.outcomesFor(joint("neutral", "tap"));
    expect(memory.size).toBe(6);
    memory.forget();
    expect(memory.size).toBe(0);
  });
  test("equal values of a fact have one number, and each value is counted once", () => {
    const counted = new FactNumbers();
    const of = (role: string): number => counted.numberOf({ role }, "role");
    expect([of("phase"), of("neutral"), of("phase")]).toEqual([0, 1, 0]);
    expect(counted.size).toBe(2);
  });
});
