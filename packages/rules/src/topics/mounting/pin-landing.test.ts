import { describe, expect, test } from "vitest";
import type { Connector } from "../../core/connector.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConnector, sampleJoint, sampleOpening, sampleSubject } from "../../samples/sample-joint.js";
import { pinLanding } from "./pin-landing.js";

function terminal(change: Partial<Connector> = {}): Connector {
  return sampleConnector({
    family: "equipment-terminal",
    metalMarking: "AL9CU",
    openings: [sampleOpening({ ranges: [{ from: "12 AWG", to: "1/0 AWG", strandings: ["class-B"] }] })],
    ...change,
  });
}

function check(pin: NonNullable<Connector["pin"]>, at: Connector = terminal()) {
  const adapter = sampleConnector({ family: "pin-adapter", construction: "compression", mounting: { kind: "free" } });
  const joint = sampleJoint({ equipment: { tag: "P-1", terminal: at } });
  return pinLanding.check(sampleSubject(joint, { ...adapter, pin }), nfpa70Edition2023);
}

function withoutTerminal(pin: Connector["pin"]) {
  const connector = sampleConnector({ family: "pin-adapter", ...(pin === undefined ? {} : { pin }) });
  return pinLanding.check(sampleSubject(sampleJoint({ equipment: { tag: "P-1" } }), connector), nfpa70Edition2023);
}

describe("pin adapter in the terminal (NFPA 70-2023 110.3(B), 110.14)", () => {
  // hand: both ends of the terminal's range are included
  test.each([
    ["1/0 AWG", "pass"],
    ["2/0 AWG", "fail"],
    ["1 AWG", "pass"],
    ["12 AWG", "pass"],
    ["14 AWG", "fail"],
  ] as const)("a pin of %s in 12 AWG to 1/0 AWG: %s", (size, outcome) => {
    expect(check({ size, metal: "copper" }).outcome).toBe(outcome);
  });
  test("an acceptance hangs on the pins not touching", () => {
    expect(check({ size: "1/0 AWG", metal: "copper" })).toMatchObject({ conditions: [{ duty: "keep-pins-apart" }] });
  });
  test("the terminal is marked for the metal of the pin", () => {
    const copper = terminal({ metalMarking: "CU" });
    expect(check({ size: "1/0 AWG", metal: "aluminum" }, copper).outcome).toBe("fail");
    expect(check({ size: "1/0 AWG", metal: "copper" }, copper).outcome).toBe("pass");
    expect(check({ size: "1/0 AWG", metal: "aluminum" }, terminal({ metalMarking: "unmarked" })).outcome).toBe("fail");
    const { metalMarking: _marking, ...unknown } = terminal();
    expect(check({ size: "1/0 AWG", metal: "copper" }, unknown)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/equipment/terminal/metalMarking" }],
    });
    expect(check({ size: "2/0 AWG", metal: "copper" }, unknown).outcome).toBe("fail");
  });
  test("a terminal or a pin that is not described is asked for", () => {
    expect(withoutTerminal({ size: "1/0 AWG", metal: "copper" })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/equipment/terminal" }],
    });
    expect(withoutTerminal(undefined)).toMatchObject({ outcome: "missing", missing: [{ path: "connector/pin" }] });
    expect(check({ size: "1/0 AWG", metal: "copper" }, terminal({ openings: [] }))).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/equipment/terminal/openings" }],
      offered: "not known",
    });
    const { equipment, ...joint } = sampleJoint();
    expect(equipment).toBeDefined();
    const adapter = sampleConnector({ family: "pin-adapter", pin: { size: "1/0 AWG", metal: "copper" } });
    expect(pinLanding.check(sampleSubject(joint, adapter), nfpa70Edition2023)).toMatchObject({
      missing: [{ path: "joint/equipment/terminal" }],
    });
    expect(check({ size: "50 mm2", metal: "copper" }).outcome).toBe("missing");
  });
  // published: 404.14, 406.3: CO/ALR marks wiring devices for aluminum, and speaks for nothing else
  test("a mark of wiring devices is read on a wiring device only", () => {
    const pin = { size: "12 AWG", metal: "aluminum" } as const;
    expect(check(pin, terminal({ metalMarking: "CO/ALR", family: "wiring-device-terminal" })).outcome).toBe("pass");
    expect(check(pin, terminal({ metalMarking: "CO/ALR" })).outcome).toBe("fail");
  });
  // hand: 4 AWG is 41.74 kcmil; 10 AWG, 10.38, is further from it than 3 AWG, 52.62
  test.each([
    [["14 AWG", "10 AWG"], ["3 AWG", "1/0 AWG"], 1],
    [["3 AWG", "1/0 AWG"], ["14 AWG", "10 AWG"], 0],
    [["3 AWG", "1/0 AWG"], ["250 kcmil", "500 kcmil"], 0],
    [["250 kcmil", "500 kcmil"], ["3 AWG", "1/0 AWG"], 1],
    [["14 AWG", "12 AWG"], ["10 AWG", "6 AWG"], 1],
    [["10 AWG", "6 AWG"], ["14 AWG", "12 AWG"], 0],
  ] as const)("of the ranges %j and %j the one nearest to 4 AWG is compared with", (first, second, nearest) => {
    const ranges = [first, second].map(([from, to]) => ({ from, to, strandings: ["class-B"] as const }));
    const finding = check({ size: "4 AWG", metal: "copper" }, terminal({ openings: [sampleOpening({ ranges })] }));
    expect(finding).toMatchObject({ outcome: "fail" });
    expect("steps" in finding && finding.steps.filter(({ label }) => label === "range of the terminal")).toEqual([
      expect.objectContaining({ origin: `joint/equipment/terminal/openings/0/ranges/${String(nearest)}` }),
    ]);
  });
  test("a connector without a pin is not judged", () => {
    expect(pinLanding.check(sampleSubject(), nfpa70Edition2023).outcome).toBe("not-applicable");
  });
});
