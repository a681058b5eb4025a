import { describe, expect, test } from "vitest";
import type { Connector, Screw } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { Joint } from "../../core/joint.js";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import {
  sampleConductor,
  sampleConnector,
  sampleJoint,
  sampleOpening,
  sampleSubject,
} from "../../samples/sample-joint.js";
import { torqueSource } from "./torque-source.js";

function check(connector: Partial<Connector>, joint: Partial<Joint> = {}, edition: Edition = nfpa70Edition2023) {
  return torqueSource.check(sampleSubject(sampleJoint(joint), sampleConnector(connector)), edition);
}

const withScrew = (screw: Omit<Screw, "id">): Partial<Connector> => ({ screws: [{ id: "main", ...screw }] });
const duties = (finding: ReturnType<typeof check>) =>
  "conditions" in finding ? finding.conditions.map((one) => one.duty) : [];

describe("torque source (NFPA 70-2023 110.14(D), Informative Annex I)", () => {
  test("stated to be unmarked and covered by the annex: known, without a condition", () => {
    const finding = check({});
    expect(finding).toMatchObject({
      outcome: "pass",
      offered:
        "275 lbf-in at the conductor screw of opening barrel, 3/0 AWG, Informative Annex I Table I.3, NFPA 70-2023",
    });
    expect(duties(finding)).toEqual([]);
  });
  test("marked: known", () => {
    expect(check(withScrew({ drive: { kind: "clamp-bolt" }, torque: { value: 150, unit: "lbf-in" } }))).toMatchObject({
      outcome: "pass",
      offered: "150 lbf-in at the conductor screw of opening barrel, 3/0 AWG, marked on the connector",
    });
  });
  test("a marking that is not known is asked for, even where the annex would have a value", () => {
    expect(check(withScrew({ drive: { kind: "socket", acrossFlats: "5/16" } }))).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/screws/0/torque" }],
    });
  });
  test.each([
    ["a clamp bolt", { drive: { kind: "clamp-bolt" }, torque: "unmarked" }],
    ["a socket in no row", { drive: { kind: "socket", acrossFlats: "5/8" }, torque: "unmarked" }],
  ] as const)("%s without a mark has no default and is asked for", (_name, screw) => {
    expect(check(withScrew(screw))).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/screws/0/torque" }],
    });
  });
  test("a torque that is none is asked for at the screw", () => {
    expect(check(withScrew({ drive: { kind: "external-hex" }, torque: { value: 0, unit: "lbf-in" } }))).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/screws/0/torque" }],
    });
  });
  test("a screw that is not described is asked for", () => {
    expect(check({ screws: [] })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/openings/0/screw" }],
    });
    expect(check(withScrew({ drive: { kind: "none" } }))).toMatchObject({
      missing: [{ path: "connector/screws/0/drive" }],
    });
  });

  test("a breakaway head is a condition; in 2017 only as the maker's stated method", () => {
    const sheared = withScrew({ drive: { kind: "breakaway" } });
    expect(duties(check(sheared))).toEqual(["breakaway-head"]);
    const old = check(sheared, {}, nfpa70Edition2017);
    expect(duties(old)).toEqual(["breakaway-head"]);
    expect("conditions" in old && old.conditions[0]?.sentence).toContain("Confirm that the maker's instructions name");
  });

  test("one breakaway head among marked screws is enough for the condition, one slotted hexagon for the advice", () => {
    const slots = { slotWidth: { value: 0.06, unit: "in" }, slotLength: { value: 0.3, unit: "in" } } as const;
    const two = (drive: Screw["drive"], torque: Partial<Screw>): Partial<Connector> => ({
      screws: [
        { id: "main", drive, ...torque },
        { id: "second", drive: { kind: "external-hex" }, torque: { value: 180, unit: "lbf-in" } },
      ],
      openings: [sampleOpening({ id: "a" }), sampleOpening({ id: "b", screw: "second" })],
    });
    const joint: Partial<Joint> = { conductors: [sampleConductor(), sampleConductor()] };
    const sheared = check(two({ kind: "breakaway" }, {}), joint);
    expect(duties(sheared)).toEqual(["breakaway-head"]);
    expect(sheared).toMatchObject({
      offered:
        "breakaway head at the conductor screw of opening a, 3/0 AWG; 180 lbf-in at the conductor screw of opening b, 3/0 AWG, marked on the connector",
    });
    expect(check(two({ kind: "slotted-hex", ...slots }, { torque: "unmarked" }), joint)).toMatchObject({
      advice: ["The slotted hexagon has two default torques; use the one for the way it is driven."],
    });
  });

  const pressed = { construction: "compression", screws: [], openings: [sampleOpening({ screw: "none" })] } as const;
  test("nothing tightened: silent", () => {
    expect(check(pressed).outcome).toBe("not-applicable");
    expect(check({ construction: "twist-on", screws: [{ id: "main", drive: { kind: "hand" } }] }).outcome).toBe(
      "not-applicable",
    );
  });
  test("a pin asks for the terminal it lands in", () => {
    const pinned = { ...pressed, pin: { size: "1/0 AWG", metal: "copper" } } as const;
    expect(check(pinned, { equipment: { tag: "DP-6" } })).toMatchObject({
      missing: [{ path: "joint/equipment/terminal" }],
    });
    const { equipment, ...nowhere } = sampleJoint();
    expect(equipment).toBeDefined();
    expect(torqueSource.check(sampleSubject(nowhere, sampleConnector(pinned)), nfpa70Edition2023)).toMatchObject({
      missing: [{ path: "joint/equipment/terminal" }],
    });
    const landed = sampleSubject(sampleJoint(), sampleConnector({ pin: { size: "1/0 AWG", metal: "copper" } }));
    expect(torqueSource.check({ ...landed, origin: "joint/equipment/terminal" }, nfpa70Edition2023).outcome).toBe(
      "pass",
    );
    expect(check(pinned, { equipment: { tag: "DP-6", terminal: sampleConnector() } }).outcome).toBe("pass");
    const unknown = sampleConnector(withScrew({ drive: { kind: "socket", acrossFlats: "5/16" } }));
    expect(check(pinned, { equipment: { tag: "DP-6", terminal: unknown } })).toMatchObject({
      missing: [{ path: "joint/equipment/terminal/screws/0/torque" }],
    });
    const small = sampleOpening({ ranges: [{ from: "14 AWG", to: "2 AWG", strandings: "unmarked" }] });
    expect(
      check(pinned, { equipment: { tag: "DP-6", terminal: sampleConnector({ openings: [small, small] }) } }),
    ).toMatchObject({
      missing: [{ path: "joint/equipment/terminal/openings" }],
    });
  });
  test("a pad bolt in the table is known; one outside it is a duty on site", () => {
    const pad = (bolt: string) => check({ ...pressed, mounting: { kind: "pad", pattern: { holes: 1, bolt } } });
    expect(pad("1/2")).toMatchObject({ outcome: "pass", conditions: [] });
    expect(duties(pad("M12"))).toEqual(["pad-torque"]);
  });
  test("a slotted hexagon advises of its two values", () => {
    const drive = {
      kind: "slotted-hex",
      slotWidth: { value: 0.06, unit: "in" },
      slotLength: { value: 0.3, unit: "in" },
    } as const;
    expect(check(withScrew({ drive, torque: "unmarked" }))).toMatchObject({
      outcome: "pass",
      offered:
        "250 lbf-in at the conductor screw of opening barrel, 3/0 AWG if driven by its hexagon, Informative Annex I Table I.1, NFPA 70-2023; 50 lbf-in at the conductor screw of opening barrel, 3/0 AWG if driven by its slot (No. 10 screw or larger), Informative Annex I Table I.1, NFPA 70-2023",
      advice: ["The slotted hexagon has two default torques; use the one for the way it is driven."],
    });
  });
});
