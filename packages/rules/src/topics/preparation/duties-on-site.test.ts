import { describe, expect, test } from "vitest";
import type { Connector } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { EquipmentKind, Joint } from "../../core/joint.js";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import {
  sampleConductor,
  sampleConnector,
  sampleJoint,
  sampleOpening,
  sampleSubject,
} from "../../samples/sample-joint.js";
import { dutiesOnSite } from "./duties-on-site.js";

function duties(joint: Partial<Joint> = {}, connector: Partial<Connector> = {}, edition: Edition = nfpa70Edition2023) {
  return dutiesOnSite(sampleSubject(sampleJoint(joint), sampleConnector(connector)), edition);
}

const keys = (...facts: Parameters<typeof duties>) => duties(...facts).map((one) => one.duty);
const sentence = (duty: string, ...facts: Parameters<typeof duties>) =>
  duties(...facts).find((one) => one.duty === duty)?.sentence;

describe("duties on site", () => {
  test("a set-screw lug in a panel has them all, in the order of the work", () => {
    expect(keys()).toEqual([
      "de-energize",
      "strip-without-nicking",
      "insert-fully",
      "tighten-once",
      "measure-bending-space",
      "keep-accessible",
      "mark-and-record",
      "close-up",
    ]);
  });
  // published: 300.15, 314.29, and 250.68(A) with its exceptions
  test("where nothing is said of access it is a duty, but for what may be hidden", () => {
    expect(keys({ place: { location: "dry", accessible: true } })).not.toContain("keep-accessible");
    expect(keys({ place: { location: "dry", accessible: false } })).not.toContain("keep-accessible");
    const cite = (joint: Partial<Joint>, connector: Partial<Connector> = {}) =>
      duties(joint, connector).find(({ duty }) => duty === "keep-accessible")?.cite.locator;
    expect(cite({ function: "splice", equipment: { tag: "JB-1", kind: "box" } })).toBe("314.29");
    expect(cite({})).toBe("300.15");
    const trench = {
      function: "splice",
      equipment: { tag: "TR-1", kind: "trench" },
      place: { location: "direct-burial" },
    } as const;
    expect(cite(trench, { places: ["direct-burial"] })).toBeUndefined();
    expect(cite(trench, { places: ["wet"] })).toBe("300.15");
    const onRod = {
      role: "electrode-conductor",
      equipment: { tag: "EL-1", kind: "electrode" },
      grounding: { electrode: "copper-bonded-rod" },
    } as const;
    const clamp = { family: "rod-clamp", construction: "bolted-clamp" } as const;
    expect(cite({ ...onRod, place: { location: "direct-burial" } }, clamp)).toBeUndefined();
    expect(cite({ ...onRod, place: { location: "wet" } }, clamp)).toBe("250.68(A)");
    const onSteel = { ...onRod, grounding: { electrode: "building-steel" } } as const;
    expect(cite(onSteel, { construction: "weld" })).toBe("250.68(A)");
  });
  test("where nothing is said of the place, access is a duty too", () => {
    const { place, ...joint } = sampleJoint();
    expect(place).toBeDefined();
    expect(dutiesOnSite(sampleSubject(joint), nfpa70Edition2023).map(({ duty }) => duty)).toContain("keep-accessible");
  });
  test("each has a clause or says that it is common practice", () => {
    for (const { cite } of duties())
      expect(cite.locator !== "" || cite.standard.startsWith("common practice")).toBe(true);
  });
  test("tightening follows the edition", () => {
    expect(sentence("tighten-once")).toContain("approved means");
    expect(sentence("tighten-once", {}, {}, nfpa70Edition2017)).toContain("calibrated torque tool");
  });
  test("nothing is tightened where all is pressed, sprung or turned by hand; pads and pins are", () => {
    const pressed = { construction: "compression", screws: [] } as const;
    expect(keys({}, pressed)).not.toContain("tighten-once");
    expect(keys({}, { construction: "twist-on", screws: [{ id: "main", drive: { kind: "hand" } }] })).not.toContain(
      "tighten-once",
    );
    expect(keys({}, { ...pressed, mounting: { kind: "pad", pattern: { holes: 1, bolt: "1/2" } } })).toContain(
      "tighten-once",
    );
    expect(keys({}, { ...pressed, pin: { size: "1/0 AWG", metal: "copper" } })).toContain("tighten-once");
  });
  test("bare conductors and piercing connectors are not stripped", () => {
    expect(keys({ conductors: [sampleConductor({ insulation: "bare" })] })).not.toContain("strip-without-nicking");
    expect(keys({}, { construction: "insulation-piercing" })).not.toContain("strip-without-nicking");
  });
  test("one insulated conductor beside bare ones is stripped", () => {
    const bare = sampleConductor({ insulation: "bare" });
    expect(keys({ conductors: [bare, sampleConductor()] })).toContain("strip-without-nicking");
    expect(keys({ conductors: [bare, bare] })).not.toContain("strip-without-nicking");
  });
  test.each([
    ["set-screw", "Put every strand in"],
    ["compression", "Put every strand in"],
    ["twist-on", "Put every strand in"],
    ["spring", "Put every strand in"],
    ["weld", "Set the conductors in the mold"],
    ["split-bolt", "Lay the conductors side by side"],
    ["bolted-clamp", "through the full length of the clamp"],
    ["binding-screw", "around the screw the way it turns"],
    ["insulation-piercing", "insulation on"],
  ] as const)("how a conductor goes into a %s", (construction, words) => {
    expect(sentence("insert-fully", {}, { construction })).toContain(words);
  });
  test("nothing to turn is nothing to tighten; one screw among such is", () => {
    const none = { id: "main", drive: { kind: "none" } } as const;
    expect(keys({}, { screws: [none] })).not.toContain("tighten-once");
    expect(keys({}, { screws: [none, { id: "second", drive: { kind: "external-hex" } }] })).toContain("tighten-once");
  });
  test("a bond that goes by its design is checked against it", () => {
    const bond = (bonding: "by-design" | "main") => keys({ role: "bonding", grounding: { bonding } });
    const extra = (found: readonly string[]) => found.filter((duty) => !keys({ role: "bonding" }).includes(duty));
    expect(extra(bond("by-design"))).toHaveLength(1);
    expect(extra(bond("main"))).toEqual([]);
    expect(
      duties({ role: "bonding", grounding: { bonding: "by-design" } }).filter(({ sentence: told }) =>
        told.startsWith("Check the size of the bonding conductor against its design"),
      ),
    ).toMatchObject([{ duty: "check-bonding-size", cite: { locator: "250.102(C)" } }]);
    expect(keys({ role: "phase", grounding: { bonding: "by-design" } })).toEqual(keys());
  });
  test("the strip length is never guessed", () => {
    const told = sampleOpening({ id: "a", stripLength: { value: 1, unit: "in" } });
    for (const openings of [
      [told, sampleOpening({ id: "b" })],
      [sampleOpening({ id: "b" }), told],
    ])
      expect(sentence("strip-without-nicking", {}, { openings })).toContain("in the connector's instructions");
    expect(sentence("strip-without-nicking")).toContain("in the connector's instructions");
    const known = { openings: [sampleOpening({ stripLength: { value: 1, unit: "in" } })] } as const;
    expect(sentence("strip-without-nicking", {}, known)).toContain("Strip to the length given");
  });

  // hand: the duty begins at 4 AWG, by area
  test.each([
    ["6 AWG", false],
    ["4 AWG", true],
    ["3 AWG", true],
    ["16 mm2", false],
    ["25 mm2", true],
  ])("bending space not given, %s: %j", (size, measured) => {
    expect(keys({ conductors: [sampleConductor({ size })] }).includes("measure-bending-space")).toBe(measured);
  });
  test("no bending duty where it was given, in a splice, or at an electrode", () => {
    const bending = { entry: "opposite", available: { value: 10, unit: "in" }, wiresPerTerminal: 1 } as const;
    expect(keys({ equipment: { tag: "P-1", bending } })).not.toContain("measure-bending-space");
    expect(keys({ function: "splice" })).not.toContain("measure-bending-space");
    expect(keys({ role: "electrode-conductor" })).not.toContain("measure-bending-space");
    expect(keys({ role: "bonding" })).not.toContain("measure-bending-space");
    expect(keys({ role: "equipment-ground" })).toContain("measure-bending-space");
    const { equipment, ...joint } = sampleJoint();
    expect(equipment).toBeDefined();
    const without = dutiesOnSite(sampleSubject(joint), nfpa70Edition2023).map(({ duty }) => duty);
    expect(without).toContain("measure-bending-space");
    expect(without).not.toContain("check-fill");
  });
  test("one conductor of 4 AWG or larger is enough for the bending duty", () => {
    const of = (...sizes: string[]) => keys({ conductors: sizes.map((size) => sampleConductor({ size })) });
    expect(of("10 AWG", "4 AWG")).toContain("measure-bending-space");
    expect(of("10 AWG", "6 AWG")).not.toContain("measure-bending-space");
  });
  test("a splice without a word on its equipment has no fill to check", () => {
    const { equipment, ...joint } = sampleJoint({ function: "splice" });
    expect(equipment).toBeDefined();
    expect(dutiesOnSite(sampleSubject(joint), nfpa70Edition2023).map(({ duty }) => duty)).not.toContain("check-fill");
  });

  const splicedIn = (kind: EquipmentKind, change: Partial<Joint> = {}) =>
    duties({ function: "splice", equipment: { tag: "E-1", kind }, ...change }).find(
      ({ duty }) => duty === "check-fill",
    );
  test.each(["panelboard", "switchboard", "motor-control-center", "disconnect", "transfer-switch"] as const)(
    "a splice or tap in a %s whose section is not given: the fill is checked on site",
    (kind) => {
      // published: NFPA 70-2023 312.8(A): 40 % for conductors, 75 % with splices and taps
      expect(splicedIn(kind)).toMatchObject({
        sentence: expect.stringMatching(/40 %.*75 %/) as string,
        cite: { locator: "312.8(A)" },
      });
      expect(splicedIn(kind, { function: "tap" })).toBeDefined();
    },
  );
  test("in a wireway it is 376.56 that is checked", () => {
    // published: NFPA 70-2023 376.56(A): 75 % with splices and taps
    expect(splicedIn("wireway")).toMatchObject({
      sentence: expect.stringContaining("75 %") as string,
      cite: { locator: "376.56(A)" },
    });
  });
  test("no fill duty for a termination, elsewhere, or where the section was given and is judged", () => {
    expect(splicedIn("panelboard", { function: "termination" })).toBeUndefined();
    expect(splicedIn("box")).toBeUndefined();
    expect(duties({ function: "splice", equipment: { tag: "E-1" } }).map(({ duty }) => duty)).not.toContain(
      "check-fill",
    );
    const space = {
      kind: "enclosure",
      section: { value: 16, unit: "in2" },
      conductors: { value: 6, unit: "in2" },
      splices: { value: 2, unit: "in2" },
    } as const;
    expect(splicedIn("panelboard", { equipment: { tag: "E-1", kind: "panelboard", space } })).toBeUndefined();
  });
});
