import { describe, expect, test } from "vitest";
import type { CatalogueItem } from "../../core/connector.js";
import type { Basis, Joint } from "../../core/joint.js";
import { editionOf } from "../../rulesets/editions.js";
import { sampleConductor, sampleConnector, sampleJoint } from "../../samples/sample-joint.js";
import { checkJointUnder } from "../joint/check-joint.js";
import { candidatesByClass } from "./candidates-by-class.js";

const BASIS: Basis = { ruleSet: "nfpa70", edition: "2023" };
const OTHER: Basis = { ruleSet: "nfpa70", edition: "2017" };

const lug = (partNumber: string, change: Partial<CatalogueItem> = {}): CatalogueItem => ({
  ...sampleConnector(),
  partNumber,
  status: "invented",
  packQuantity: 1,
  ...change,
});
const CATALOGUE = [lug("A"), lug("B", { voltageV: 300 }), lug("C", { functions: ["splice"] })];
const ask = (joints: readonly Joint[]) => candidatesByClass(joints, BASIS, CATALOGUE, editionOf);

// hand: what makes joints equal is laid down in jointClass
describe("classes of equal joints", () => {
  test("marks, areas, texts, quantities and the connector offered do not make a difference; a fact and a basis do", () => {
    const classes = ask([
      sampleJoint({ mark: "1" }),
      sampleJoint({ mark: "2", area: "Yard", description: "feeder", quantity: 6 }),
      sampleJoint({ mark: "3", conductors: [sampleConductor({ size: "1/0 AWG" })] }),
      sampleJoint({ mark: "4", connector: { partNumber: "B" }, partState: "reused", tooling: { tool: "press" } }),
      sampleJoint({ mark: "5", basis: OTHER }),
      sampleJoint({ mark: "6", basis: BASIS }),
    ]);
    expect(classes.map(({ joints }) => joints)).toEqual([[0, 1, 3, 5], [2], [4]]);
    expect(new Set(classes.map(({ kind }) => kind)).size).toBe(3);
    expect(classes.map(({ basis }) => basis)).toEqual([BASIS, BASIS, OTHER]);
  });
  test("of the equipment only the tag makes no difference", () => {
    const at = (change: object) => sampleJoint({ equipment: { tag: "P-1", kind: "panelboard", ...change } });
    const classes = ask([
      at({}),
      at({ tag: "P-2" }),
      at({ kind: "switchboard" }),
      at({ frame: "Frame 400" }),
      at({ terminalTemperature: { value: 75, unit: "Cel" } }),
      at({ terminalTemperature: { value: 60, unit: "Cel" } }),
      at({ terminal: sampleConnector() }),
      at({ stud: { holes: 1, bolt: "1/2" } }),
      (({ equipment: _, ...rest }) => rest)(sampleJoint()),
    ]);
    expect(classes.map(({ joints }) => joints)).toEqual([[0, 1], [2], [3], [4], [5], [6], [7], [8]]);
  });
  test("candidates stand by rank, and are asked for as new parts with their own tooling", () => {
    const usd = (amount: string) => ({ price: { amount, currency: "USD" } });
    const joint = sampleJoint({ partState: "reused", tooling: { tool: "hand press" }, connector: { partNumber: "A" } });
    const [only] = candidatesByClass(
      [joint],
      BASIS,
      [lug("A", usd("3")), lug("B", usd("1")), lug("ONCE", { ...usd("2"), reusable: false })],
      editionOf,
    );
    expect(only?.candidates.map(({ partNumber, verdict }) => [partNumber, verdict])).toEqual([
      ["B", "accept"],
      ["ONCE", "accept"],
      ["A", "accept"],
    ]);
  });
  test("each class names what the full check accepts, and what keeps the rest out", () => {
    const joint = sampleJoint({
      circuit: { voltageV: 480, loadA: 150, sets: 1, protection: { kind: "device", ratingA: 200 } },
    });
    const [only] = ask([joint]);
    const accepted = CATALOGUE.filter((connector) =>
      checkJointUnder({ joint, basis: BASIS, connector, origin: "catalogue" }, editionOf(BASIS)).verdict.startsWith(
        "accept",
      ),
    );
    expect(accepted.map(({ partNumber }) => partNumber)).toEqual(["A"]);
    expect(only?.candidates.map(({ partNumber }) => partNumber)).toEqual(["A"]);
    expect(only?.excluded).toEqual([
      { rule: "connector-function", connectors: 1 },
      { rule: "voltage-rating", connectors: 1 },
    ]);
  });
  test("no joints, no classes; an empty catalogue offers nothing", () => {
    expect(ask([])).toEqual([]);
    expect(candidatesByClass([sampleJoint()], BASIS, [], editionOf)).toMatchObject([{ candidates: [], excluded: [] }]);
  });
});
