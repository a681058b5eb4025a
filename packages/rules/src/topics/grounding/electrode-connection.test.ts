import { describe, expect, test } from "vitest";
import type { ConductorRole } from "../../core/conductor.js";
import type { Connector, Electrode, GroundingListing } from "../../core/connector.js";
import type { EquipmentKind, Joint } from "../../core/joint.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { electrodeConnection } from "./electrode-connection.js";

const ROD: GroundingListing = { listed: true, electrodes: ["copper-bonded-rod"], conductorsPerClamp: "unmarked" };

function connected(
  grounding: GroundingListing | undefined,
  change: Partial<Joint> = {},
  part: Partial<Connector> = {},
) {
  const joint = sampleJoint({
    role: "electrode-conductor",
    conductors: [sampleConductor({ size: "6 AWG", insulation: "bare" })],
    grounding: { electrode: "copper-bonded-rod" },
    equipment: { tag: "ROD-1", kind: "electrode" },
    place: { location: "direct-burial" },
    ...change,
  });
  const connector = sampleConnector({
    family: "rod-clamp",
    construction: "bolted-clamp",
    mounting: { kind: "free" },
    ...(grounding === undefined ? {} : { grounding }),
    ...part,
  });
  return electrodeConnection.check(sampleSubject(joint, connector), nfpa70Edition2023);
}

const holding = (count: number): Partial<Joint> => ({ conductors: [sampleConductor({ count, size: "6 AWG" })] });

describe("connection to the electrode (NFPA 70-2023 250.70)", () => {
  test("a clamp listed for the rod with one conductor serves, to be inspected before it is covered", () => {
    expect(connected(ROD)).toMatchObject({ outcome: "pass", conditions: [{ duty: "inspect-before-cover" }] });
    expect(connected(ROD, { place: { location: "concrete" } })).toMatchObject({
      conditions: [{ duty: "inspect-before-cover" }],
    });
    expect(connected(ROD, { place: { location: "dry" } })).toMatchObject({ outcome: "pass", conditions: [] });
  });
  test("a clamp for another electrode is refused", () => {
    expect(connected(ROD, { grounding: { electrode: "stainless-rod" } })).toMatchObject({
      outcome: "fail",
      required: "listed for stainless rod",
    });
    expect(connected({ ...ROD, listed: false }).outcome).toBe("fail");
    expect(connected({ ...ROD, electrodes: [] }).outcome).toBe("fail");
  });
  // published: one conductor per clamp unless listed for more
  test.each([
    ["unmarked", 1, "pass"],
    ["unmarked", 2, "fail"],
    [2, 1, "pass"],
    [2, 2, "pass"],
    [2, 3, "fail"],
    [undefined, 1, "pass"],
    [undefined, 2, "missing"],
  ] as const)("a clamp marked for %s, with %d conductors: %s", (conductorsPerClamp, count, outcome) => {
    const listing: GroundingListing = {
      listed: true,
      electrodes: ["copper-bonded-rod"],
      ...(conductorsPerClamp === undefined ? {} : { conductorsPerClamp }),
    };
    expect(connected(listing, holding(count)).outcome).toBe(outcome);
  });
  test("the count is said with the number the clamp is listed for", () => {
    expect(connected(ROD, holding(1))).toMatchObject({
      sentence: "The part is listed for copper-bonded rod and holds one conductor.",
    });
    expect(connected({ ...ROD, conductorsPerClamp: 2 }, holding(2))).toMatchObject({
      outcome: "pass",
      sentence: "The part is listed for copper-bonded rod and holds 2 conductors, as it is listed to.",
    });
    expect(connected({ ...ROD, conductorsPerClamp: 2 }, holding(3))).toMatchObject({
      sentence: "There are 3 conductors under a clamp that is listed for 2.",
      required: "2 conductors",
      offered: "3 conductors",
    });
    expect(connected({ listed: true, electrodes: ["copper-bonded-rod"] }, holding(2))).toMatchObject({
      missing: [{ path: "connector/grounding/conductorsPerClamp" }],
      cite: { locator: "250.70" },
      required: "listed for 2 conductors",
    });
  });
  test("two conductors are refused even where the electrode is not known", () => {
    expect(connected(ROD, { ...holding(2), grounding: {} })).toMatchObject({
      outcome: "fail",
      required: "1 conductor",
      offered: "2 conductors",
    });
  });
  test("what is not known is asked for by name", () => {
    expect(connected(undefined)).toMatchObject({ outcome: "missing", missing: [{ path: "connector/grounding" }] });
    expect(connected(ROD, { grounding: {} })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/grounding/electrode" }],
    });
  });
  test("a part listed for no electrode serves none, known or not", () => {
    expect(connected({ ...ROD, electrodes: [] }, { grounding: {} })).toMatchObject({
      outcome: "fail",
      sentence: "The part is listed for no electrode.",
      required: "listed for the electrode",
      fix: "a clamp or weld listed for the electrode",
    });
    expect(connected({ ...ROD, listed: false }, { grounding: {} })).toMatchObject({
      outcome: "fail",
      sentence: "The part is not listed for grounding.",
      offered: "not listed for grounding",
    });
    const { grounding, ...joint } = sampleJoint({
      role: "electrode-conductor",
      grounding: {},
      equipment: { tag: "ROD-1", kind: "electrode" },
    });
    expect(grounding).toBeDefined();
    const clamp = sampleConnector({ family: "rod-clamp", construction: "bolted-clamp", grounding: ROD });
    expect(electrodeConnection.check(sampleSubject(joint, clamp), nfpa70Edition2023)).toMatchObject({
      missing: [{ path: "joint/grounding/electrode" }],
    });
  });
  test("a lug on an electrode must be listed for it, a lug on a bus need not", () => {
    const lug: Partial<Connector> = { family: "set-screw-lug-one-hole", construction: "set-screw" };
    const listing: GroundingListing = { listed: true, electrodes: [] };
    expect(connected(listing, {}, lug).outcome).toBe("fail");
    expect(connected(listing, { equipment: { tag: "MSB", kind: "ground-bus" } }, lug).outcome).toBe("not-applicable");
    expect(connected(listing, { equipment: { tag: "?" } }, lug)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/equipment/kind" }],
    });
    expect(connected(listing, { equipment: { tag: "?" }, grounding: {} }, lug).outcome).toBe("not-applicable");
  });
  test("a bonding jumper on a pipe is judged, splices and other roles are not", () => {
    const pipe: GroundingListing = { listed: true, electrodes: ["water-pipe"], conductorsPerClamp: 1 };
    const jumper: Partial<Joint> = {
      role: "bonding",
      grounding: { electrode: "water-pipe" },
      place: { location: "dry" },
    };
    expect(connected(pipe, jumper, { family: "pipe-clamp" })).toMatchObject({ outcome: "pass", conditions: [] });
    expect(connected(ROD, { function: "splice" }).outcome).toBe("not-applicable");
    expect(connected(ROD, { role: "phase" }).outcome).toBe("not-applicable");
    expect(connected(ROD, { role: "neutral" }).outcome).toBe("not-applicable");
    const lug: Partial<Connector> = { family: "set-screw-lug-one-hole", construction: "set-screw" };
    expect(connected({ listed: true, electrodes: [] }, { role: "equipment-ground" }, lug).outcome).toBe(
      "not-applicable",
    );
  });
});

describe("where an electrode conductor ends is not given", () => {
  const lug = (grounding: GroundingListing | undefined, change: Partial<Connector> = {}, joint: Partial<Joint> = {}) =>
    electrodeConnection.check(
      sampleSubject(
        sampleJoint({ role: "electrode-conductor", equipment: { tag: "?" }, ...joint }),
        sampleConnector({ mounting: { kind: "free" }, ...(grounding && { grounding }), ...change }),
      ),
      nfpa70Edition2023,
    );
  test("a part that would not do on an electrode is asked about", () => {
    expect(lug(undefined)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/equipment/kind" }],
      cite: { locator: "250.70" },
      required: "a part listed for grounding, if it ends on an electrode",
      offered: "listing not known",
    });
    expect(lug({ listed: false, electrodes: [] })).toMatchObject({
      missing: [{ path: "joint/equipment/kind" }],
      offered: "not listed for grounding",
    });
  });
  // published: 250.53(C), jumpers between electrodes are connected as 250.70 says
  test("a jumper between electrodes is asked about as an electrode conductor is, another jumper is not", () => {
    const jumper = (grounding: Joint["grounding"] & object) => lug(undefined, {}, { role: "bonding", grounding });
    expect(jumper({ bonding: "electrode-system" })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/equipment/kind" }],
    });
    expect(jumper({ bonding: "load-side" }).outcome).toBe("not-applicable");
  });
  test("where the electrode is given, the listing is asked for first", () => {
    expect(lug(undefined, {}, { grounding: { electrode: "copper-bonded-rod" } })).toMatchObject({
      missing: [{ path: "connector/grounding" }],
    });
  });
  test("the equipment's own terminal is no electrode", () => {
    const joint = sampleJoint({ role: "electrode-conductor", equipment: { tag: "?" } });
    const own = sampleSubject(joint, sampleConnector({ mounting: { kind: "free" } }));
    expect(electrodeConnection.check({ ...own, origin: "joint/equipment/terminal" }, nfpa70Edition2023).outcome).toBe(
      "not-applicable",
    );
  });
  test("one that is listed for grounding, fixed in its equipment or welded is not", () => {
    expect(lug({ listed: true, electrodes: [] }).outcome).toBe("not-applicable");
    expect(lug(undefined, { mounting: { kind: "integral" } }).outcome).toBe("not-applicable");
    expect(lug(undefined, { construction: "weld" }).outcome).toBe("not-applicable");
    expect(lug(undefined, {}, { equipment: { tag: "G", kind: "ground-bus" } }).outcome).toBe("not-applicable");
    expect(lug(undefined, {}, { role: "equipment-ground" }).outcome).toBe("not-applicable");
  });
});

describe("a part named for electrodes serves nothing else (NFPA 70-2023 110.3(B))", () => {
  const STEEL: GroundingListing = { listed: true, electrodes: ["building-steel"], conductorsPerClamp: 1 };
  const mold: Partial<Connector> = { family: "exothermic-weld", construction: "weld", screws: [] };
  const at = (kind: EquipmentKind | undefined, electrode?: Electrode, role: ConductorRole = "bonding") =>
    connected(
      STEEL,
      {
        role,
        grounding: electrode === undefined ? {} : { electrode },
        equipment: kind === undefined ? { tag: "?" } : { tag: "?", kind },
        place: { location: "dry" },
      },
      mold,
    );
  // hand: equipment that has no electrode in or on it
  test.each([
    "panelboard",
    "switchboard",
    "motor-control-center",
    "transfer-switch",
    "disconnect",
    "generator",
    "transformer",
    "motor",
    "battery",
    "wireway",
    "ground-bus",
    "wiring-device",
  ] as const)("a mold for building steel on a %s is refused, also where the conductor's electrode is given", (kind) => {
    expect(at(kind)).toMatchObject({
      outcome: "fail",
      sentence: `The part is listed for building steel; the conductor ends on a ${kind.replaceAll("-", " ")}, which is no electrode.`,
    });
    expect(at(kind, "building-steel").outcome).toBe("fail");
    expect(at(kind, undefined, "equipment-ground").outcome).toBe("fail");
  });
  test.each([undefined, "other", "electrode", "handhole", "trench", "box", "pedestal"] as const)(
    "where an electrode may be (%s) it is asked for, and judged once given",
    (kind) => {
      for (const role of ["bonding", "electrode-conductor", "equipment-ground"] as const) {
        expect(at(kind, undefined, role)).toMatchObject({
          outcome: "missing",
          missing: [{ path: "joint/grounding/electrode" }],
        });
        expect(at(kind, "building-steel", role).outcome).toBe("pass");
        expect(at(kind, "water-pipe", role).outcome).toBe("fail");
      }
    },
  );
  test.each(["rod-clamp", "pipe-clamp", "rebar-clamp"] as const)("a %s is named for electrodes", (family) => {
    const bus: Partial<Joint> = { equipment: { tag: "G", kind: "ground-bus" } };
    expect(connected(undefined, bus, { family })).toMatchObject({
      outcome: "fail",
      sentence: "The part is made for electrodes; the conductor ends on a ground bus, which is no electrode.",
    });
    expect(connected(undefined, { equipment: { tag: "B", kind: "box" }, grounding: {} }, { family })).toMatchObject({
      missing: [{ path: "joint/grounding/electrode" }],
      required: "an electrode that the part is listed for",
      offered: "made for electrodes",
    });
  });
  test("a lug that is listed for an electrode too may end on a bus, and so may a mold of no known listing", () => {
    const bus: Partial<Joint> = { equipment: { tag: "G", kind: "ground-bus" } };
    expect(connected(STEEL, bus, { family: "compression-lug-two-hole", construction: "compression" }).outcome).toBe(
      "not-applicable",
    );
    expect(connected(undefined, bus, mold).outcome).toBe("not-applicable");
  });
  test("a clamp is held to it like a mold; a mold that names no electrode is not", () => {
    expect(connected(ROD, { equipment: { tag: "G", kind: "ground-bus" } }).outcome).toBe("fail");
    expect(connected({ ...STEEL, electrodes: [] }, { equipment: { tag: "G", kind: "ground-bus" } }, mold).outcome).toBe(
      "not-applicable",
    );
  });
});
