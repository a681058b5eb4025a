import { describe, expect, test } from "vitest";
import type { CatalogueItem } from "../../core/connector.js";
import type { Basis } from "../../core/joint.js";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleOpening } from "../../samples/sample-joint.js";
import { judgeOf } from "./catalogue-judge.js";

const BASIS: Basis = { ruleSet: "nfpa70", edition: "2023" };
const lug = (partNumber: string, change: Partial<CatalogueItem> = {}): CatalogueItem => ({
  ...sampleConnector(),
  partNumber,
  status: "invented",
  packQuantity: 1,
  ...change,
});
const JOINT = sampleJoint({ basis: BASIS });
const namesOf = (standings: readonly { readonly item: CatalogueItem }[]): string[] =>
  standings.map(({ item }) => item.partNumber);
const acceptedOf = (catalogue: readonly CatalogueItem[], joint = JOINT): string[] =>
  namesOf(judgeOf(catalogue, nfpa70Edition2023).survey(joint).accepted);

// hand: each case is worked in its title
describe("what is remembered of a catalogue is of that very catalogue", () => {
  test("one judge for a catalogue and an edition, another for another edition or an equal catalogue", () => {
    const catalogue = [lug("A")];
    const judge = judgeOf(catalogue, nfpa70Edition2023);
    expect(judgeOf(catalogue, nfpa70Edition2023)).toBe(judge);
    expect(judgeOf(catalogue, nfpa70Edition2017)).not.toBe(judge);
    expect(judgeOf(catalogue, nfpa70Edition2023)).toBe(judge);
    expect(judgeOf([...catalogue], nfpa70Edition2023)).not.toBe(judge);
  });
  test("a part exchanged for one of 300 V is refused, though the list is the same", () => {
    const catalogue = [lug("A"), lug("B")];
    expect(acceptedOf(catalogue)).toEqual(["A", "B"]);
    catalogue[1] = lug("B", { voltageV: 300 });
    expect(acceptedOf(catalogue)).toEqual(["A"]);
    catalogue[0] = lug("A", { voltageV: 300 });
    expect(acceptedOf(catalogue)).toEqual([]);
  });
  test("a part put in is judged too, and one taken out is not offered", () => {
    const catalogue = [lug("A")];
    expect(acceptedOf(catalogue)).toEqual(["A"]);
    catalogue.push(lug("B"));
    expect(acceptedOf(catalogue)).toEqual(["A", "B"]);
    catalogue.pop();
    expect(acceptedOf(catalogue)).toEqual(["A"]);
    catalogue.unshift(lug("C"));
    catalogue.pop();
    expect(acceptedOf(catalogue)).toEqual(["C"]);
  });
});

describe("no connector is judged by where the conductors lie in another", () => {
  const legs = sampleJoint({
    basis: BASIS,
    conductors: [sampleConductor({ count: 2 })],
    circuit: {
      voltageV: 480,
      loadA: 300,
      sets: 2,
      parallelLegsAlike: true,
      protection: { kind: "device", ratingA: 400 },
    },
  });
  const one = lug("ONE");
  const two = lug("TWO", { openings: [sampleOpening({ count: 2 })] });
  test.each([
    ["one barrel first", [one, two]],
    ["two barrels first", [two, one]],
    ["among others", [one, two, { ...one, partNumber: "ONE-B" }, { ...two, partNumber: "TWO-B" }]],
  ])("two legs land in two barrels and never in one: %s", (_order, catalogue) => {
    expect(acceptedOf(catalogue, legs).filter((name) => !name.startsWith("TWO"))).toEqual([]);
    expect(acceptedOf(catalogue, legs)).toContain("TWO");
    expect(acceptedOf(catalogue).length).toBe(catalogue.length);
  });
});

describe("what keeps a connector out", () => {
  test("its first failure, else its first question: each is counted once", () => {
    const noTorque = { screws: [{ id: "main", drive: { kind: "socket", acrossFlats: "5/16" } }] } as const;
    const { voltageV: _, ...noVolts } = lug("NO-VOLTS");
    const { voltageV: __, ...neither } = lug("NO-VOLTS-NO-TORQUE", noTorque);
    const low = lug("LOW-NO-TORQUE", { ...noTorque, voltageV: 300 });
    const catalogue = [noVolts, neither, lug("NO-TORQUE", noTorque), low, lug("A")];
    const { accepted, excluded } = judgeOf(catalogue, nfpa70Edition2023).survey(JOINT);
    expect(namesOf(accepted)).toEqual(["A"]);
    // hand: 300 V is a failure of LOW; the two without a voltage ask for it first, the third for its torque
    expect(excluded).toEqual([
      { rule: "voltage-rating", connectors: 3 },
      { rule: "torque-source", connectors: 1 },
    ]);
  });
  test("of misses with as many failures and questions, the one that would hang on fewer conditions is nearer", () => {
    const shears = lug("A", { voltageV: 300, screws: [{ id: "main", drive: { kind: "breakaway" } }] });
    const misses = judgeOf([shears, lug("Z", { voltageV: 300 })], nfpa70Edition2023).misses(JOINT);
    expect(
      misses.map(({ verdict, conditions, failures, questions }) => [verdict, conditions, failures, questions]),
    ).toEqual([
      ["reject", 1, 1, 0],
      ["reject", 0, 1, 0],
    ]);
  });
  test("what is accepted is no miss, and what asks is one without a failure", () => {
    const { voltageV: _, ...asks } = lug("ASKS");
    const judge = judgeOf([lug("A"), asks, lug("SPLICE", { functions: ["splice"] })], nfpa70Edition2023);
    expect(judge.misses(JOINT)).toMatchObject([
      { item: { partNumber: "ASKS" }, verdict: "needs-information", failures: 0, questions: 1 },
    ]);
  });
  test("an accepted one says whether it hangs on conditions, and on how many", () => {
    const shears = lug("B", { screws: [{ id: "main", drive: { kind: "breakaway" } }] });
    expect(judgeOf([lug("A"), shears], nfpa70Edition2023).survey(JOINT).accepted).toMatchObject([
      { verdict: "accept", conditions: 0, failures: 0, questions: 0 },
      { verdict: "accept-with-conditions", conditions: 1, failures: 0, questions: 0 },
    ]);
  });
});

test("the frames that kits are listed for: each once, sorted, of kits only", () => {
  const kit = (partNumber: string, ...frames: string[]) => lug(partNumber, { mounting: { kind: "frame", frames } });
  const catalogue = [kit("K-2", "Frame 400", "Frame 100"), lug("A"), kit("K-1", "Frame 400", "Frame 250")];
  expect(judgeOf(catalogue, nfpa70Edition2023).framesWithKits()).toEqual(["Frame 100", "Frame 250", "Frame 400"]);
});
