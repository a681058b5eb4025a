import { describe, expect, test } from "vitest";
import type { CatalogueItem, Connector } from "../../core/connector.js";
import type { Basis, Joint } from "../../core/joint.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleOpening } from "../../samples/sample-joint.js";
import {
  checkJointUnder,
  decidingFinding,
  type JointQuestion,
  jointFinding,
  jointUnder,
  judgeJoint,
  judgeToFirstFailure,
} from "./check-joint.js";
import { VERDICTS } from "./joint-finding.js";
import { JOINT_RULES } from "./joint-rules.js";

const BASIS: Basis = { ruleSet: "nfpa70", edition: "2023" };

function question(joint: Partial<Joint> = {}, connector: Partial<Connector> = {}): JointQuestion {
  return { joint: sampleJoint(joint), basis: BASIS, connector: sampleConnector(connector), origin: "request" };
}

function check(joint: Partial<Joint> = {}, connector: Partial<Connector> = {}) {
  return checkJointUnder(question(joint, connector), nfpa70Edition2023);
}

const BREAKAWAY: Partial<Connector> = { screws: [{ id: "main", drive: { kind: "breakaway" } }] };
const LOW_VOLTAGE: Partial<Connector> = { voltageV: 300 };
const NO_SYSTEM_VOLTAGE: Partial<Joint> = {
  circuit: { loadA: 150, sets: 1, protection: { kind: "device", ratingA: 200 } },
};

describe("the verdict", () => {
  // hand: reject beats needs-information beats accept-with-conditions beats accept
  test.each([
    ["accept", {}, {}],
    ["accept-with-conditions", {}, BREAKAWAY],
    ["needs-information", NO_SYSTEM_VOLTAGE, {}],
    ["needs-information", NO_SYSTEM_VOLTAGE, BREAKAWAY],
    ["reject", {}, LOW_VOLTAGE],
    ["reject", {}, { ...LOW_VOLTAGE, ...BREAKAWAY }],
    ["reject", { ...NO_SYSTEM_VOLTAGE, conductors: [sampleConductor({ size: "300 kcmil" })] }, BREAKAWAY],
  ] as const)("%s", (verdict, joint, connector) => {
    expect(check(joint, connector).verdict).toBe(verdict);
  });
  test("there are four", () => {
    expect(VERDICTS).toEqual(["accept", "accept-with-conditions", "reject", "needs-information"]);
  });
  test("every rule is asked also after one has failed", () => {
    const { findings, notApplicable, verdict } = check({}, LOW_VOLTAGE);
    expect(verdict).toBe("reject");
    expect(findings.length + notApplicable.length).toBe(JOINT_RULES.length);
  });
  test("every rule answers once, in its order, with a finding or why it has none", () => {
    const { findings, notApplicable } = check();
    const order = JOINT_RULES.map(({ id }) => id);
    const found = findings.map(({ rule }) => rule);
    expect([...found, ...notApplicable.map(({ rule }) => rule)].sort()).toEqual([...order].sort());
    expect(found).toEqual(order.filter((id) => found.includes(id)));
    for (const { because } of notApplicable) expect(because).not.toBe("");
  });
});

describe("the finding that decides", () => {
  test("is the first failure in the order of the rules, whatever is asked before it", () => {
    const both = check({ conductors: [sampleConductor({ size: "300 kcmil" })] }, LOW_VOLTAGE);
    expect(both.deciding.rule).toBe("wire-range");
    const asked = check({}, { ...LOW_VOLTAGE, listings: [] });
    expect(asked).toMatchObject({ verdict: "reject", deciding: { rule: "voltage-rating" } });
  });
  test("is the first question where nothing fails", () => {
    expect(check(NO_SYSTEM_VOLTAGE, { listings: [] }).deciding.rule).toBe("listing");
    expect(check(NO_SYSTEM_VOLTAGE).deciding.rule).toBe("voltage-rating");
  });
  test("is the pass that governs where all pass, and the first where none of those applies", () => {
    expect(check().deciding.rule).toBe("terminal-temperature");
    const ground: Partial<Joint> = { role: "equipment-ground", conductors: [sampleConductor({ insulation: "bare" })] };
    expect(check(ground).deciding.rule).toBe("equipment-ground-size");
  });
});

describe("the pass that governs", () => {
  const GOVERNED = [
    "feeder-tap",
    "terminal-temperature",
    "equipment-ground-size",
    "electrode-conductor-size",
    "bonding-jumper-size",
    "electrode-connection",
    "wire-range",
    "voltage-rating",
  ] as const;
  const [some] = check().findings.filter(({ outcome }) => outcome === "pass");
  const passes = (...rules: string[]) => rules.map((rule) => ({ ...(some as NonNullable<typeof some>), rule }));
  test.each(GOVERNED.slice(1).map((rule, index) => [GOVERNED[index] as string, rule] as const))(
    "%s before %s, wherever they stand among the findings",
    (first, second) => {
      expect(decidingFinding(passes(first, second)).rule).toBe(first);
      expect(decidingFinding(passes(second, first)).rule).toBe(first);
    },
  );
  test("of others the first is named", () => {
    expect(decidingFinding(passes("listing", "voltage-rating")).rule).toBe("listing");
  });
  test("without a finding there is no answer", () => {
    expect(() => decidingFinding([])).toThrow("no rule applied");
  });
});

describe("how the joint is made is said of an accepted joint only", () => {
  const told = ({ torque, stripLengths, preparation, dutiesOnSite }: ReturnType<typeof check>) =>
    [torque.length > 0, stripLengths.length > 0, preparation !== null, dutiesOnSite.length > 0] as const;
  test.each([
    ["accept", {}, {}, true],
    ["accept-with-conditions", {}, BREAKAWAY, true],
    ["needs-information", NO_SYSTEM_VOLTAGE, {}, false],
    ["reject", {}, LOW_VOLTAGE, false],
  ] as const)("%s", (verdict, joint, connector, tells) => {
    const finding = check(joint, connector);
    expect(finding.verdict).toBe(verdict);
    expect(new Set(told(finding))).toEqual(new Set([tells]));
    expect(finding.conditions.length > 0).toBe(verdict === "accept-with-conditions");
    expect(finding.missing.length > 0).toBe(verdict === "needs-information");
  });
  test("tooling comes with an accepted connector, null where it names none", () => {
    const tooling = { tool: "hydraulic press", die: "D-66" };
    expect(check().tooling).toBeNull();
    expect(check({}, { ...LOW_VOLTAGE, tooling }).tooling).toBeNull();
    expect(check({ tooling }, { construction: "compression", screws: [], tooling }).tooling).toEqual(tooling);
  });
  test("a strip length is said once for equal openings, null where the instructions give it", () => {
    const two = sampleOpening({ count: 2, stripLength: { value: 1.25, unit: "in" } });
    const pair: Partial<Joint> = {
      conductors: [sampleConductor({ count: 2 })],
      circuit: {
        voltageV: 480,
        loadA: 150,
        sets: 2,
        parallelLegsAlike: true,
        protection: { kind: "device", ratingA: 200 },
      },
    };
    const finding = check(pair, { openings: [two] });
    expect(finding.openings).toMatchObject([{ instance: 1 }, { instance: 2 }]);
    expect(finding.stripLengths).toEqual([{ opening: "barrel", length: { value: 1.25, unit: "in" } }]);
    expect(check().stripLengths).toEqual([{ opening: "barrel", length: null }]);
  });
  test("openings of two kinds have a strip length each, and every opening names what lies in it", () => {
    const splice: Partial<Joint> = {
      function: "splice",
      conductors: [sampleConductor(), sampleConductor({ stranding: "compact" })],
      circuit: {
        voltageV: 480,
        loadA: 150,
        sets: 1,
        endTerminalTemperature: { value: 75, unit: "Cel" },
        protection: { kind: "device", ratingA: 200 },
      },
    };
    const finding = check(splice, {
      functions: ["splice"],
      mounting: { kind: "free" },
      insulated: true,
      places: ["dry"],
      openings: [sampleOpening({ id: "a" }), sampleOpening({ id: "b", stripLength: { value: 1, unit: "in" } })],
    });
    expect(finding.missing).toEqual([]);
    expect(finding.stripLengths).toEqual([
      { opening: "a", length: null },
      { opening: "b", length: { value: 1, unit: "in" } },
    ]);
    const lies = { count: 1, metal: "copper", size: "3/0 AWG" };
    expect(finding.openings).toEqual([
      { opening: "a", instance: 1, conductors: [{ ...lies, stranding: "class-B" }] },
      { opening: "b", instance: 1, conductors: [{ ...lies, stranding: "compact" }] },
    ]);
  });
});

describe("what is gathered from the findings", () => {
  test("a fact that several rules ask for is asked for once", () => {
    // hand: 3/0 AWG copper carries 165 A at 60 C and 200 A at 75 C: a load of 180 A and a device of 200 A both hang on it
    const circuit = { loadA: 180, sets: 1, protection: { kind: "device", ratingA: 200 } } as const;
    const { findings, missing } = check({ circuit, equipment: { tag: "P-1", kind: "panelboard" } });
    const asking = findings.filter((one) => one.missing.some(({ path }) => path.endsWith("terminalTemperature")));
    expect(asking.map(({ rule }) => rule)).toEqual(["terminal-temperature", "device-protection"]);
    expect(missing.map(({ path }) => path)).toEqual(["joint/circuit/voltageV", "joint/equipment/terminalTemperature"]);
  });
  test("a duty, and an advice, is said once; of one duty two sentences are two", () => {
    const asked = question({}, BREAKAWAY);
    const outcome = judgeJoint(asked, nfpa70Edition2023);
    const pass = outcome.findings.find(({ conditions }) => conditions.length > 0);
    const duty = pass?.conditions[0];
    if (pass === undefined || duty === undefined) throw new Error("the breakaway head is a condition");
    const other = { ...duty, sentence: "Photograph the other head too." };
    const another = { ...duty, duty: "photograph" };
    const findings = [
      { ...pass, conditions: [duty, other], advice: ["Keep it dry.", "Keep it clean."] },
      { ...pass, conditions: [other, another, duty], advice: ["Keep it clean.", "Keep it short."] },
    ];
    const { conditions, advice } = jointFinding(asked, { ...outcome, findings }, nfpa70Edition2023);
    expect(conditions).toEqual([duty, other, another]);
    expect(advice).toEqual(["Keep it dry.", "Keep it clean.", "Keep it short."]);
  });
  test("what is assumed, and what no public text confirms yet, is said of the findings and of the torque", () => {
    const unmarked = check({ equipment: { tag: "P-1", kind: "panelboard", terminalTemperature: "unmarked" } });
    expect(unmarked.assumptions.length).toBeGreaterThan(0);
    const { torque, caveats } = check();
    const read = torque.flatMap(({ steps }) => steps).filter((step) => step.kind === "read");
    expect(read.map(({ cell }) => cell.status)).toContain("unconfirmed");
    const printed = read.flatMap(({ cell }) => (cell.status === "unconfirmed" ? [cell.row] : []));
    expect(caveats.some((caveat) => printed.some((row) => caveat.includes(row)))).toBe(true);
  });
  test("an invented part is said to be invented; one from a request is not", () => {
    const item: CatalogueItem = { ...sampleConnector(), partNumber: "A", status: "invented", packQuantity: 1 };
    const of = (connector: CatalogueItem) =>
      checkJointUnder({ joint: sampleJoint(), basis: BASIS, connector, origin: "catalogue" }, nfpa70Edition2023)
        .caveats;
    expect(of(item).filter((caveat) => caveat.includes("invented"))).toHaveLength(1);
    expect(of({ ...item, status: "supplied" }).filter((caveat) => caveat.includes("invented"))).toEqual([]);
    expect(check().caveats.filter((caveat) => caveat.includes("invented"))).toEqual([]);
  });
  test("facts of the equipment's own terminal are named where they stand", () => {
    const finding = checkJointUnder(
      { joint: sampleJoint(), basis: BASIS, connector: sampleConnector({ listings: [] }), origin: "equipment" },
      nfpa70Edition2023,
    );
    expect(finding.missing).toMatchObject([{ path: "joint/equipment/terminal/listings" }]);
    expect(finding.connector).toMatchObject({ partNumber: null, origin: "equipment" });
    expect(check({}, { listings: [] }).missing).toMatchObject([{ path: "connector/listings" }]);
  });
});

describe("the basis in force", () => {
  test("is put into the joint, and nothing is copied where it stands there already", () => {
    const joint = sampleJoint({ basis: BASIS });
    expect(jointUnder(joint, BASIS)).toBe(joint);
    expect(jointUnder(sampleJoint(), BASIS).basis).toBe(BASIS);
  });
});

describe("judging to the first failure", () => {
  const QUESTIONS = [
    question(),
    question({}, BREAKAWAY),
    question(NO_SYSTEM_VOLTAGE),
    question({}, LOW_VOLTAGE),
    question({ conductors: [sampleConductor({ size: "300 kcmil" })] }, LOW_VOLTAGE),
    question({}, { functions: [] }),
    question({}, { ...LOW_VOLTAGE, listings: [] }),
  ];
  test("reaches the same verdict by the same findings up to that failure, and stops there", () => {
    for (const one of QUESTIONS) {
      const whole = judgeJoint(one, nfpa70Edition2023);
      const short = judgeToFirstFailure(one, nfpa70Edition2023);
      expect(short.verdict).toBe(whole.verdict);
      const failed = whole.findings.findIndex(({ outcome }) => outcome === "fail");
      expect(short.findings).toEqual(failed < 0 ? whole.findings : whole.findings.slice(0, failed + 1));
    }
  });
});
