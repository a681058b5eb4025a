import { describe, expect, test } from "vitest";
import type { CatalogueItem } from "../../core/connector.js";
import type { Basis, Joint } from "../../core/joint.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleOpening } from "../../samples/sample-joint.js";
import { candidatesUnder } from "./candidates.js";
import type { RankingContext } from "./selection.js";

const BASIS: Basis = { ruleSet: "nfpa70", edition: "2023" };
const lug = (partNumber: string, change: Partial<CatalogueItem> = {}): CatalogueItem => ({
  ...sampleConnector(),
  partNumber,
  status: "invented",
  packQuantity: 1,
  ...change,
});
const upTo = (to: string) => ({
  openings: [sampleOpening({ ranges: [{ from: "6 AWG", to, strandings: ["class-B", "class-C"] }] })],
});
const USD = (amount: string) => ({ price: { amount, currency: "USD" } });
const ask = (catalogue: readonly CatalogueItem[], context: RankingContext = {}, joint: Partial<Joint> = {}) =>
  candidatesUnder(sampleJoint(joint), BASIS, catalogue, context, nfpa70Edition2023);
const order = (catalogue: readonly CatalogueItem[], context: RankingContext): string[] =>
  ask(catalogue, context).candidates.map(({ partNumber }) => partNumber);

// hand: the order is the one that RANK_LINES lays down; the worse is better in every line below
describe("what the job knows decides where its line stands, and only there", () => {
  test("a part in the job comes before a cheaper one, after one without conditions", () => {
    const context: RankingContext = { inJob: ["Z"] };
    expect(order([lug("A", USD("1")), lug("Z", USD("9"))], context)).toEqual(["Z", "A"]);
    const breakaway: Partial<CatalogueItem> = { screws: [{ id: "main", drive: { kind: "breakaway" } }] };
    expect(order([lug("A", USD("1")), lug("Z", breakaway)], context)).toEqual(["A", "Z"]);
  });
  test("hours before lead time, lead time before approval, known before unknown", () => {
    const leadTimes = [
      { partNumber: "Y", days: 3 },
      { partNumber: "Z", days: 2 },
    ];
    expect(order([lug("A"), lug("Y"), lug("Z")], { leadTimes, approved: ["A"] })).toEqual(["Z", "Y", "A"]);
    expect(order([lug("A", { labourHours: 0.1 }), lug("Z", { labourHours: 0.2 })], { leadTimes })).toEqual(["A", "Z"]);
  });
  test("approved before the nearer range", () => {
    expect(order([lug("A", upTo("3/0 AWG")), lug("Z", upTo("500 kcmil"))], { approved: ["Z"] })).toEqual(["Z", "A"]);
    expect(order([lug("A", upTo("500 kcmil")), lug("Z", upTo("3/0 AWG"))], {})).toEqual(["Z", "A"]);
  });
  test("what is known of the job accepts nothing", () => {
    const context = { inJob: ["S"], approved: ["S"], leadTimes: [{ partNumber: "S", days: 0 }] };
    const found = ask([lug("S", upTo("1/0 AWG"))], context);
    expect(found.candidates).toEqual([]);
    expect(found.excluded).toEqual([{ rule: "wire-range", connectors: 1 }]);
    expect(found.because).toMatch(/^No connector of the catalogue can help: /);
  });
  test("each candidate shows what was known of it, and the reason names the line", () => {
    const { candidates, because } = ask([lug("A"), lug("B")], {
      inJob: ["B"],
      leadTimes: [{ partNumber: "B", days: 5 }],
    });
    expect(candidates).toMatchObject([
      { partNumber: "B", inJob: true, leadTimeDays: 5, approvedBefore: false },
      { partNumber: "A", inJob: false, leadTimeDays: null, approvedBefore: false },
    ]);
    expect(because).toBe("Of 2 connectors that every rule accepts, it is in the job already.");
  });
});

describe("what is not offered, and why", () => {
  test("beside candidates the nearest misses say in words where they stop", () => {
    const found = ask([lug("FITS"), lug("SMALL", upTo("1/0 AWG")), lug("SPLICE", { functions: ["splice"] })]);
    expect(found.candidates).toHaveLength(1);
    expect(found.nearestMisses).toMatchObject([{ partNumber: "SMALL", rule: "wire-range" }]);
    expect(found.nearestMisses[0]?.sentence).toContain("stops at 1/0 AWG");
    expect(found.missing).toEqual([]);
  });
  test("the nearest three of the misses, nearest first, whatever the order of the catalogue", () => {
    const far = lug("FAR", { ...upTo("1/0 AWG"), voltageV: 300 });
    const misses = ["D", "C", "B"].map((partNumber) => lug(partNumber, { voltageV: 300 }));
    const found = ask([far, ...misses, lug("FITS")]);
    expect(found.nearestMisses.map(({ partNumber }) => partNumber)).toEqual(["B", "C", "D"]);
    expect(ask([far, ...misses]).nearestMisses.map(({ partNumber }) => partNumber)).toEqual(["B", "C", "D"]);
  });
  test("nothing is asked for where a connector is accepted, or where every one fails whatever is answered", () => {
    const { voltageV: _, ...asks } = lug("ASKS");
    const failsAndAsks = lug("FAILS-AND-ASKS", {
      voltageV: 300,
      screws: [{ id: "main", drive: { kind: "socket", acrossFlats: "5/16" } }],
    });
    expect(ask([asks, lug("FITS")]).missing).toEqual([]);
    expect(ask([failsAndAsks]).missing).toEqual([]);
    expect(ask([]).missing).toEqual([]);
    expect(ask([asks, failsAndAsks]).missing).toMatchObject([{ path: "connector/voltageV" }]);
  });
  test("a fact that several rules lack is asked for once", () => {
    const paths = ask([lug("A")], {}, { circuit: { sets: 1 } }).missing.map(({ path }) => path);
    expect(paths).toContain("joint/circuit/voltageV");
    expect(paths).toContain("joint/circuit/loadA");
    // published: Table 310.16, 2/0 AWG copper 145 A at 60 C, 175 A at 75 C: the load and the device ask for the same rating
    const unrated = ask(
      [lug("A")],
      {},
      { equipment: { tag: "P-1" }, conductors: [sampleConductor({ size: "2/0 AWG" })] },
    );
    expect(unrated.missing.map(({ path }) => path)).toEqual(["joint/equipment/terminalTemperature"]);
  });
  test("the own terminal is judged as part of its equipment, whose rating it has; without equipment there is none", () => {
    const { equipment: _, ...loose } = sampleJoint();
    expect(candidatesUnder(loose, BASIS, [lug("A")], {}, nfpa70Edition2023).ownTerminal).toBeNull();
    const terminal = sampleConnector({ metalMarking: "CU", mounting: { kind: "free" } });
    const equipment = { tag: "P-1", terminalTemperature: { value: 75, unit: "Cel" }, terminal } as const;
    expect(ask([lug("A")], {}, { equipment }).ownTerminal).toMatchObject({ verdict: "accept" });
  });
  test("a fact that all lack is asked for by name", () => {
    const found = ask(
      [lug("A"), lug("B")],
      {},
      { circuit: { sets: 1, loadA: 150, protection: { kind: "device", ratingA: 200 } } },
    );
    expect(found.candidates).toEqual([]);
    expect(found.missing).toMatchObject([{ path: "joint/circuit/voltageV" }]);
  });
  test("the connector that the joint names is set aside; the equipment's own terminal is told", () => {
    const terminal = sampleConnector(upTo("1/0 AWG"));
    const found = ask(
      [lug("A")],
      {},
      {
        connector: { partNumber: "NO-SUCH" },
        equipment: { tag: "P-1", terminalTemperature: { value: 75, unit: "Cel" }, terminal },
      },
    );
    expect(found.candidates).toHaveLength(1);
    expect(found.ownTerminal).toMatchObject({ verdict: "reject", rule: "wire-range" });
    expect(ask([lug("A")]).ownTerminal).toBeNull();
  });
});
