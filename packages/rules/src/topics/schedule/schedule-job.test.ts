import { describe, expect, test } from "vitest";
import type { CatalogueItem } from "../../core/connector.js";
import type { Basis, Equipment, Job, Joint } from "../../core/joint.js";
import { editionOf } from "../../rulesets/editions.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleOpening } from "../../samples/sample-joint.js";
import { type ScheduledJob, scheduleInSteps } from "./schedule-job.js";

const BASIS: Basis = { ruleSet: "nfpa70", edition: "2023" };

function item(partNumber: string, change: Partial<CatalogueItem> = {}): CatalogueItem {
  return { ...sampleConnector(), partNumber, status: "invented", packQuantity: 1, ...change };
}

const GOOD = item("GOOD", { price: { amount: "2.00", currency: "USD" } });
const CHEAP = item("CHEAP", { price: { amount: "1.00", currency: "USD" } });
const LOW = item("LOW", { voltageV: 300 });
const CATALOGUE = [GOOD, CHEAP, LOW];

/** The equipment's own lugs, which the sample joint accepts; or lugs of 300 V, which it refuses. */
function lugs(voltageV = 600): Equipment {
  const terminal = sampleConnector({ family: "equipment-terminal", description: "main lugs", voltageV });
  return { tag: "P-1", kind: "panelboard", terminalTemperature: { value: 75, unit: "Cel" }, terminal };
}

function schedule(joints: readonly Joint[], catalogue: readonly CatalogueItem[] = CATALOGUE): ScheduledJob {
  const job: Job = { name: "Test", basis: BASIS, joints };
  const steps = scheduleInSteps(job, catalogue, editionOf);
  for (;;) {
    const { done, value } = steps.next();
    if (done === true) return value;
  }
}

const marked = (mark: string, change: Partial<Joint> = {}): Joint => sampleJoint({ mark, ...change });
const offered = (partNumber: string): Pick<Joint, "connector"> => ({ connector: { partNumber } });

describe("equal joints are judged once", () => {
  test("mark, area, description, tag and quantity change nothing: both rows share one finding", () => {
    const { findings, schedule: made } = schedule([
      marked("1", offered("GOOD")),
      marked("2", {
        ...offered("GOOD"),
        area: "Yard",
        description: "the same again",
        quantity: 12,
        equipment: { tag: "P-2", kind: "panelboard", terminalTemperature: { value: 75, unit: "Cel" } },
      }),
    ]);
    expect(findings[0]).not.toBeNull();
    expect(findings[1]).toBe(findings[0]);
    expect(made.rows.map(({ mark, quantity, equipmentTag }) => [mark, quantity, equipmentTag])).toEqual([
      ["1", 3, "P-1"],
      ["2", 12, "P-2"],
    ]);
  });
  test.each([
    ["another size", { conductors: [sampleConductor({ size: "4/0 AWG" })] }],
    ["another edition", { basis: { ruleSet: "nfpa70", edition: "2017" } }],
    ["another place", { place: { location: "damp" } }],
    ["another rating of its terminal", { equipment: { tag: "P-1", kind: "panelboard" } }],
    ["another part", offered("CHEAP")],
  ] as const)("%s is another question", (_what, change) => {
    const { findings } = schedule([marked("1", offered("GOOD")), marked("2", { ...offered("GOOD"), ...change })]);
    expect(findings[1]).not.toBe(findings[0]);
  });
  test("a basis written out like the job's is the same basis", () => {
    const { findings } = schedule([
      marked("1", offered("GOOD")),
      marked("2", { ...offered("GOOD"), basis: { ruleSet: "nfpa70", edition: "2023" } }),
    ]);
    expect(findings[1]).toBe(findings[0]);
  });
  test("the schedule pauses after every joint, equal or not", () => {
    const job: Job = { name: "Test", basis: BASIS, joints: [marked("1"), marked("2"), marked("3")] };
    const steps = scheduleInSteps(job, CATALOGUE, editionOf);
    expect([steps.next().done, steps.next().done, steps.next().done, steps.next().done]).toEqual([
      false,
      false,
      false,
      true,
    ]);
  });
});

describe("which connector a row is about", () => {
  test("the one the joint names, accepted or not; a refused one comes with what the catalogue has instead", () => {
    const { rows, rejections } = schedule([marked("1", offered("GOOD")), marked("2", offered("LOW"))]).schedule;
    expect(rows[0]).toMatchObject({
      verdict: "accept",
      connector: { partNumber: "GOOD", origin: "catalogue", chosen: false, quantity: 3 },
      selection: null,
    });
    expect(rows[1]).toMatchObject({
      verdict: "reject",
      deciding: { rule: "voltage-rating" },
      connector: { partNumber: "LOW", chosen: false },
      selection: { chosen: { partNumber: "CHEAP" } },
    });
    expect(rejections).toMatchObject([{ mark: "2", rule: "voltage-rating" }]);
    expect(rejections[0]?.instead).toMatch(/^CHEAP, /);
    expect(rejections[0]?.fix).not.toBe("");
  });
  test("the equipment's own terminal, where the joint says so: no part is bought for it", () => {
    const own = { connector: { equipmentTerminal: true }, equipment: lugs() } as const;
    const { rows, totals } = schedule([marked("1", own)]).schedule;
    expect(rows[0]).toMatchObject({
      verdict: "accept",
      connector: { partNumber: null, description: "main lugs", origin: "equipment", chosen: false, quantity: 0 },
    });
    expect(totals).toEqual([]);
  });
  test("the equipment's own terminal, where nothing is said and it serves", () => {
    expect(schedule([marked("1", { equipment: lugs() })]).schedule.rows[0]).toMatchObject({
      connector: { origin: "equipment", chosen: false },
      selection: null,
    });
  });
  test("one from the catalogue, where the equipment's terminal does not serve or there is none", () => {
    const { rows } = schedule([marked("1", { equipment: lugs(300) }), marked("2")]).schedule;
    for (const row of rows)
      expect(row).toMatchObject({
        verdict: "accept",
        connector: { partNumber: "CHEAP", origin: "catalogue", chosen: true, quantity: 3 },
      });
  });
  test("the equipment's terminal explains the refusal where the catalogue has nothing either", () => {
    expect(schedule([marked("1", { equipment: lugs(300) })], [LOW]).schedule.rows[0]).toMatchObject({
      verdict: "reject",
      deciding: { rule: "voltage-rating" },
      connector: { origin: "equipment", chosen: false },
    });
  });
  test("none, where nothing was offered and nothing fits: the row says why, by the rule that does", () => {
    const { rows, rejections, totals } = schedule([marked("1")], [LOW]).schedule;
    expect(rows[0]).toMatchObject({
      verdict: "reject",
      connector: null,
      openingsUsed: [],
      deciding: { rule: "voltage-rating", clause: "110.4, NFPA 70-2023" },
    });
    expect(rows[0]?.deciding.sentence).toMatch(/^No connector of the catalogue can help: /);
    expect(rejections[0]?.fix).toContain("480 V");
    expect(totals).toEqual([]);
  });
  test("where another fault is the joint's own, its rule, clause and fix are the row's", () => {
    // hand: NFPA 70-2023 250.122(A): a 200 A device asks for 6 AWG copper; the range of the lug is a second fault
    const narrow = item("NARROW", {
      openings: [sampleOpening({ ranges: [{ from: "2 AWG", to: "250 kcmil", strandings: ["class-B"] }] })],
    });
    const ground = marked("1", {
      role: "equipment-ground",
      conductors: [sampleConductor({ size: "8 AWG", insulation: "bare" })],
    });
    const { rows } = schedule([ground], [narrow]).schedule;
    expect(rows[0]).toMatchObject({
      verdict: "reject",
      deciding: { rule: "equipment-ground-size", clause: "250.122(A), NFPA 70-2023" },
    });
    expect(rows[0]?.deciding.sentence).toMatch(/^No connector can help: /);
    expect(rows[0]?.fix).toContain("6 AWG");
  });
  test("a fact missing for all makes an open question, not a refusal", () => {
    const circuit = { loadA: 150, sets: 1, protection: { kind: "device", ratingA: 200 } } as const;
    const { rows, openQuestions, rejections } = schedule([marked("1", { circuit })]).schedule;
    expect(rows[0]).toMatchObject({ verdict: "needs-information", connector: null });
    expect(openQuestions).toMatchObject([{ mark: "1", facts: [{ path: "joint/circuit/voltageV" }] }]);
    expect(rejections).toEqual([]);
  });
  test("another connector is asked for as a new part: a used one that is refused is replaced", () => {
    const once = item("ONCE", { reusable: false });
    const { rows } = schedule([marked("1", { ...offered("ONCE"), partState: "reused" })], [once]).schedule;
    expect(rows[0]).toMatchObject({
      verdict: "reject",
      deciding: { rule: "part-reuse" },
      selection: { chosen: { partNumber: "ONCE" } },
    });
  });
});

describe("the totals and the counts", () => {
  test("parts of accepted joints only, by part number, with their marks", () => {
    const { totals, counts } = schedule([
      marked("1", { ...offered("GOOD"), quantity: 2 }),
      marked("2", { ...offered("LOW"), quantity: 5 }),
      marked("3", { quantity: 7 }),
      marked("4", { ...offered("GOOD"), quantity: 1, place: { location: "damp" } }),
      marked("5", { equipment: lugs(), quantity: 4 }),
    ]).schedule;
    // hand: GOOD 2 + 1, CHEAP 7; LOW is refused and the lugs of the panel are not bought
    expect(totals.map(({ partNumber, quantity, marks }) => [partNumber, quantity, marks])).toEqual([
      ["CHEAP", 7, ["3"]],
      ["GOOD", 3, ["1", "4"]],
    ]);
    // hand: 5 marks, 2 + 5 + 7 + 1 + 4 = 19 joints, 5 of them refused
    expect(counts).toEqual({
      marks: 5,
      joints: 19,
      byVerdict: {
        accept: { marks: 4, joints: 14 },
        "accept-with-conditions": { marks: 0, joints: 0 },
        reject: { marks: 1, joints: 5 },
        "needs-information": { marks: 0, joints: 0 },
      },
    });
  });
  test("a job without joints is an empty schedule", () => {
    expect(schedule([])).toMatchObject({ findings: [], schedule: { rows: [], totals: [], counts: { marks: 0 } } });
  });
});

describe("what cannot be answered is refused loudly", () => {
  test("an unknown part number", () => {
    expect(() => schedule([marked("7", offered("NOWHERE"))])).toThrow(
      new RangeError("joint 7: the catalogue has no part NOWHERE"),
    );
  });
  test("the terminal of equipment that has none described", () => {
    expect(() => schedule([marked("7", { connector: { equipmentTerminal: true } })])).toThrow(RangeError);
  });
  test("an edition without rules, and a size that cannot be read", () => {
    const unknown = { ruleSet: "nfpa70", edition: "1999" } as unknown as Basis;
    expect(() => schedule([marked("7", { basis: unknown })])).toThrow(RangeError);
    expect(() => schedule([marked("7", { conductors: [sampleConductor({ size: "5/0 AWG" })] })])).toThrow(RangeError);
  });
});
