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
    const numbered = { ...lugs(), terminal: sampleConnector({ partNumber: "OF-THE-PANEL" }) };
    expect(schedule([marked("1", { equipment: numbered })]).schedule).toMatchObject({
      rows: [{ verdict: "accept", connector: { partNumber: "OF-THE-PANEL", quantity: 0 } }],
      totals: [],
    });
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
    expect(rows[0]?.deciding).toMatchObject({ rule: "voltage-rating", sentence: openQuestions[0]?.facts[0]?.because });
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

describe("what a row holds", () => {
  test("torque in three units with its source, openings used, conductors, duties: a lug whose maker gives 250 lbf-in", () => {
    const marks = item("MARKED", {
      screws: [{ id: "main", drive: { kind: "socket", acrossFlats: "5/16" }, torque: { value: 250, unit: "lbf-in" } }],
      openings: [sampleOpening({ stripLength: { value: 1.25, unit: "in" } })],
    });
    const posted = marked("1", {
      connector: { partNumber: "MARKED" },
      area: "Yard",
      description: "feeder",
      conductors: [sampleConductor({ metal: "aluminum", size: "4/0 AWG", insulation: "XHHW-2" })],
    });
    const [row] = schedule([posted], [marks]).schedule.rows;
    expect(row).toMatchObject({
      mark: "1",
      area: "Yard",
      equipmentTag: "P-1",
      description: "feeder",
      function: "termination",
      role: "phase",
      quantity: 3,
      basis: BASIS,
      conductors: ["1 x 4/0 AWG aluminum, class-B, XHHW-2"],
      connector: { partNumber: "MARKED", description: "set-screw lug, one barrel", origin: "catalogue" },
      openingsUsed: ["barrel: 1 x 4/0 AWG aluminum"],
      tooling: null,
      missing: [],
      fix: "",
    });
    // hand: 250 lbf-in / 12 = 20.83 lbf-ft; 250 x 0.1129848 = 28.246 N m, 28.2 to a tenth
    expect(row?.torque).toMatchObject([
      {
        method: "torque",
        lbfIn: 250,
        lbfFt: 20.8,
        newtonMetre: 28.2,
        printed: "250 lbf-in",
        level: "connector-marking",
        source: "110.14(D), NFPA 70-2023",
      },
    ]);
    expect(row?.torque[0]?.at).toContain("barrel");
    expect(row?.torque[0]?.drive).toContain("5/16");
    expect(row?.stripLengths).toEqual([{ opening: "barrel", length: "1.25 in" }]);
    // published: aluminum is brushed and gets the compound that the instructions name (110.14)
    expect(row?.preparation?.brush).toMatch(/^yes: \S/);
    expect(row?.preparation?.compound).toMatch(/^\S+: \S/);
    for (const duty of row?.dutiesOnSite ?? []) expect(duty).toMatch(/^[A-Z].*\.$/);
    expect(row?.dutiesOnSite).not.toEqual([]);
    expect(row?.caveats[0]).toContain("invented");
  });
  test("no torque figure where a head shears, no strip length where the part gives none, no preparation of copper", () => {
    const shears = item("SHEARS", { screws: [{ id: "main", drive: { kind: "breakaway" } }] });
    const [row] = schedule([marked("1", { connector: { partNumber: "SHEARS" } })], [shears]).schedule.rows;
    expect(row?.torque).toMatchObject([
      { method: "breakaway-head", lbfIn: null, lbfFt: null, newtonMetre: null, printed: null },
    ]);
    expect(row?.stripLengths).toEqual([{ opening: "barrel", length: null }]);
    expect(row?.preparation?.brush).toMatch(/^no: /);
    expect(row?.verdict).toBe("accept-with-conditions");
    expect(row?.conditions.length).toBeGreaterThan(0);
    for (const condition of row?.conditions ?? []) expect(condition).toMatch(/^[A-Z].*\.$/);
  });
  test("tool and die of a pressed lug", () => {
    const tooling = { tool: "hand press", die: "D-7", crimps: 2 };
    const { screw: _, ...barrel } = sampleOpening();
    const pressed = item("PRESSED", { construction: "compression", screws: [], openings: [barrel], tooling });
    const [row] = schedule([marked("1", { connector: { partNumber: "PRESSED" } })], [pressed]).schedule.rows;
    expect(row).toMatchObject({ tooling, torque: [{ method: "crimp", lbfIn: null }] });
  });
  test("each opening with what lies in it: two sizes in a splice, two legs in a lug of two barrels", () => {
    const splice = item("SPLICE", {
      functions: ["splice"],
      family: "in-line-splice",
      insulated: true,
      places: ["dry"],
      mounting: { kind: "free" },
      screws: ["one", "two"].map((id) => ({ id, drive: { kind: "socket", acrossFlats: "5/16" }, torque: "unmarked" })),
      openings: ["one", "two"].map((id) => sampleOpening({ id, screw: id })),
    });
    const spliced = marked("1", {
      function: "splice",
      conductors: [sampleConductor(), sampleConductor({ size: "4/0 AWG", stranding: "compact" })],
      circuit: {
        voltageV: 480,
        loadA: 150,
        sets: 1,
        protection: { kind: "device", ratingA: 200 },
        endTerminalTemperature: { value: 75, unit: "Cel" },
      },
    });
    const both = item("BOTH", {
      openings: [sampleOpening({ conductorsMax: 2, shared: { sameSize: true, sameMetal: true } })],
    });
    const legs = marked("2", {
      conductors: [sampleConductor({ count: 2 })],
      circuit: {
        voltageV: 480,
        loadA: 300,
        sets: 2,
        parallelLegsAlike: true,
        protection: { kind: "device", ratingA: 400 },
      },
    });
    const unlike = schedule([
      marked("3", {
        role: "equipment-ground",
        conductors: [sampleConductor({ size: "6 AWG" }), sampleConductor({ size: "4 AWG" })],
        connector: {
          described: sampleConnector({
            openings: [sampleOpening({ conductorsMax: 2, shared: { sameSize: false, sameMetal: true } })],
          }),
        },
      }),
    ]).schedule.rows[0];
    expect(unlike?.openingsUsed).toEqual(["barrel: 1 x 6 AWG copper + 1 x 4 AWG copper"]);
    const { rows } = schedule([spliced, legs], [splice, both]).schedule;
    expect(rows.map(({ openingsUsed }) => openingsUsed)).toEqual([
      ["one: 1 x 4/0 AWG copper", "two: 1 x 3/0 AWG copper"],
      ["barrel: 2 x 3/0 AWG copper"],
    ]);
    expect(rows[0]?.conductors).toEqual([
      "1 x 3/0 AWG copper, class-B, THHN/THWN-2",
      "1 x 4/0 AWG copper, compact, THHN/THWN-2",
    ]);
    expect(rows[0]?.connector).toMatchObject({ partNumber: "SPLICE", chosen: true });
  });
  test("the row of a joint equal to an earlier one: its own mark, place and quantity, all else the very same", () => {
    const own = { equipment: lugs() };
    const [first, second, named, bare] = schedule([
      marked("1", own),
      marked("2", { ...own, quantity: 12 }),
      marked("3", { ...offered("GOOD"), area: "Yard", description: "first of its kind" }),
      marked("4", { ...offered("GOOD"), quantity: 5 }),
    ]).schedule.rows;
    // hand: nothing is bought for the equipment's own lugs, however many; five lugs for five joints
    expect(first?.connector?.quantity).toBe(0);
    expect(second?.connector?.quantity).toBe(0);
    expect(bare).toEqual({
      ...named,
      mark: "4",
      area: null,
      description: null,
      quantity: 5,
      connector: { ...named?.connector, quantity: 5 },
    });
    expect(bare?.torque).toBe(named?.torque);
    const [none, again] = schedule([marked("1"), marked("2", { area: "Roof", description: "same", quantity: 2 })], [])
      .schedule.rows;
    expect(again).toEqual({ ...none, mark: "2", area: "Roof", description: "same", quantity: 2 });
  });
  test("joints without equipment have no tag", () => {
    const { equipment: _, ...loose } = marked("1");
    const rows = schedule([loose, { ...loose, mark: "2" }]).schedule.rows;
    expect(rows.map(({ equipmentTag }) => equipmentTag)).toEqual([null, null]);
  });
  test("of a catalogue that holds nothing for this kind of joint nothing is shown but why", () => {
    const { rows, findings, rejections } = {
      ...schedule([marked("1")], [item("SPLICE", { functions: ["splice"] })]),
      ...schedule([marked("1")], [item("SPLICE", { functions: ["splice"] })]).schedule,
    };
    expect(findings).toEqual([null]);
    expect(rows[0]).toMatchObject({
      verdict: "reject",
      connector: null,
      openingsUsed: [],
      deciding: {
        rule: "selection",
        sentence: "The catalogue holds no connector for this kind of joint.",
        clause: "",
      },
      torque: [],
      stripLengths: [],
      preparation: null,
      tooling: null,
      conditions: [],
      dutiesOnSite: [],
      missing: [],
      caveats: [],
      fix: "",
    });
    expect(rejections).toEqual([
      {
        mark: "1",
        rule: "selection",
        sentence: "The catalogue holds no connector for this kind of joint.",
        clause: "",
        fix: "",
        instead: "The catalogue holds no connector for this kind of joint.",
      },
    ]);
  });
  test("a connector described with the joint is judged as it is described, and is the request's own", () => {
    const described = sampleConnector({ description: "lug of the package", voltageV: 300 });
    const [good, low] = schedule([
      marked("1", { connector: { described: { ...described, voltageV: 600 } } }),
      marked("2", { connector: { described } }),
    ]).schedule.rows;
    expect(good).toMatchObject({
      verdict: "accept",
      connector: { partNumber: null, description: "lug of the package", origin: "request", chosen: false, quantity: 3 },
    });
    expect(low).toMatchObject({ verdict: "reject", deciding: { rule: "voltage-rating" } });
  });
  test("a terminal that asks where the catalogue has nothing: its question is the row's, with its clause", () => {
    const asks: Equipment = { ...lugs(), terminal: sampleConnector({ family: "equipment-terminal" }) };
    const { voltageV: _, ...terminal } = sampleConnector({ family: "equipment-terminal", description: "main lugs" });
    const { rows, openQuestions } = schedule([marked("1", { equipment: { ...asks, terminal } })], [LOW]).schedule;
    expect(rows[0]).toMatchObject({ verdict: "needs-information", connector: { origin: "equipment" }, torque: [] });
    expect(openQuestions).toMatchObject([
      { mark: "1", facts: [{ path: "joint/equipment/terminal/voltageV" }], clause: "110.4, NFPA 70-2023" },
    ]);
  });
});

describe("what is told beside a refusal", () => {
  test.each([
    ["unconditionally", {}, "CHEAP, set-screw lug, one barrel"],
    [
      "on one condition",
      { screws: [{ id: "main", drive: { kind: "breakaway" } }] },
      "CHEAP, set-screw lug, one barrel (1 condition)",
    ],
    [
      "on two conditions",
      {
        screws: [{ id: "main", drive: { kind: "breakaway" } }],
        mounting: { kind: "pad", pattern: { holes: 1, bolt: "1/2" } },
        plating: "tin",
      },
      "CHEAP, set-screw lug, one barrel (2 conditions)",
    ],
  ] as const)("a part of the catalogue that serves %s", (_how, change, instead) => {
    // hand: the head has to shear, and a lug on an aluminum pad gets the washers and the compound of its instructions
    const pad: Equipment = {
      tag: "P-1",
      terminalTemperature: { value: 75, unit: "Cel" },
      stud: { holes: 1, bolt: "1/2" },
      padMetal: { metal: "aluminum", plating: "tin" },
    };
    const posted = marked("1", { ...offered("LOW"), equipment: pad });
    const { rejections } = schedule([posted], [item("CHEAP", change), LOW]).schedule;
    expect(rejections).toMatchObject([{ mark: "1", instead }]);
  });
  test("why no part of the catalogue serves either", () => {
    const { rejections } = schedule([marked("1", offered("LOW"))], [LOW]).schedule;
    expect(rejections[0]?.instead).toMatch(/^No connector of the catalogue can help: /);
    expect(rejections[0]?.clause).toBe("110.4, NFPA 70-2023");
  });
  test("the fix is that of the refused connector itself, not of the nearest part of the catalogue", () => {
    const narrow = item("NARROW", {
      openings: [sampleOpening({ ranges: [{ from: "14 AWG", to: "10 AWG", strandings: ["class-B"] }] })],
    });
    const { rows } = schedule([marked("1", offered("LOW"))], [LOW, narrow]).schedule;
    expect(rows[0]).toMatchObject({
      deciding: { rule: "voltage-rating" },
      fix: expect.stringContaining("480 V") as string,
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
  test("what hangs on conditions is bought, what asks or is refused is not, and each is counted by its verdict", () => {
    const shears = item("SHEARS", { screws: [{ id: "main", drive: { kind: "breakaway" } }] });
    const { voltageV: _, ...unmarked } = item("ASKS");
    const { totals, counts, openQuestions, rejections } = schedule(
      [
        marked("1", { connector: { partNumber: "SHEARS" }, quantity: 2 }),
        marked("2", { connector: { partNumber: "ASKS" }, quantity: 7 }),
        marked("3", { ...offered("LOW"), quantity: 11 }),
        marked("4", { connector: { partNumber: "SHEARS" }, quantity: 4 }),
        marked("5", { ...offered("GOOD"), quantity: 1 }),
      ],
      [shears, unmarked, LOW, GOOD],
    ).schedule;
    expect(totals).toEqual([
      { partNumber: "GOOD", description: "set-screw lug, one barrel", quantity: 1, marks: ["5"] },
      { partNumber: "SHEARS", description: "set-screw lug, one barrel", quantity: 6, marks: ["1", "4"] },
    ]);
    expect(counts.byVerdict).toEqual({
      accept: { marks: 1, joints: 1 },
      "accept-with-conditions": { marks: 2, joints: 6 },
      reject: { marks: 1, joints: 11 },
      "needs-information": { marks: 1, joints: 7 },
    });
    expect(openQuestions.map(({ mark }) => mark)).toEqual(["2"]);
    expect(rejections.map(({ mark }) => mark)).toEqual(["3"]);
  });
  test("totals stand by part number, whatever the order of the joints", () => {
    const parts = ["LF-9", "LF-10", "A"].map((partNumber) => item(partNumber));
    const marks = ["LF-9", "A", "LF-10"].map((partNumber, at) => marked(String(at), { connector: { partNumber } }));
    const { totals } = schedule(marks, parts).schedule;
    expect(totals.map(({ partNumber }) => partNumber)).toEqual(["A", "LF-10", "LF-9"]);
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
