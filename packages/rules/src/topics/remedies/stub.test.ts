import { describe, expect, test } from "vitest";
import type { CatalogueItem, Unmarked } from "../../core/connector.js";
import type { Circuit, Joint } from "../../core/joint.js";
import type { Temperature } from "../../core/quantity.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleJoint } from "../../samples/sample-joint.js";
import { equipment, REDUCER, takes, terminal, tooLarge } from "../../samples/sample-remedies.js";
import { remediesUnder } from "./find-remedies.js";
import type { Remedy } from "./remedy.js";

function stubsFor(change: Partial<Joint>, catalogue: readonly CatalogueItem[] = [REDUCER]): readonly Remedy[] {
  const options = { context: {}, equipmentInstead: [] };
  const { remedies } = remediesUnder(
    tooLarge(change),
    { ruleSet: "nfpa70", edition: "2023" },
    catalogue,
    options,
    nfpa70Edition2023,
  );
  return remedies.filter(({ kind }) => kind === "stub");
}

const stubOf = ({ joints }: Remedy): string => {
  const [stub] = joints[0]?.joint.conductors ?? [];
  return `${stub?.size ?? ""} ${stub?.metal ?? ""}`;
};
const at = (value: number): Temperature => ({ value, unit: "Cel" });
const loaded = (loadA: number, change: Partial<Circuit> = {}): Circuit => ({
  voltageV: 480,
  loadA,
  sets: 1,
  protection: { kind: "device", ratingA: 225 },
  ...change,
});

// published: NFPA 70-2023 Table 310.16, aluminum and copper of the sizes named, in the column named
describe("the conductor that is spliced to a stub is held to the weaker of its ends (110.14(C))", () => {
  test.each([
    ["the terminal's 75 C, 205 A", 90, 75, 205, 225, true],
    ["the terminal's 75 C: 205 A do not carry 206 A, though 230 A at 90 C would", 90, 75, 206, 225, false],
    ["the far end's 60 C, 170 A", 60, 75, 170, 175, true],
    ["the far end's 60 C: 170 A do not carry 171 A, though 205 A at 75 C would", 60, 75, 171, 175, false],
  ])("250 kcmil aluminum: %s", (_why, farC, terminalC, loadA, ratingA, offered) => {
    const found = stubsFor({
      circuit: loaded(loadA, { endTerminalTemperature: at(farC), protection: { kind: "device", ratingA } }),
      equipment: equipment({ terminalTemperature: at(terminalC) }),
    });
    expect(found.map(stubOf)).toEqual(offered ? ["4/0 AWG copper"] : []);
  });
  // hand: a terminal without a mark counts as 60 C up to 100 A and 1 AWG, else as 75 C, so 60 C is never above it
  test.each<[Temperature | Unmarked | undefined, Temperature | Unmarked, Temperature | Unmarked]>([
    [undefined, at(75), at(75)],
    [at(90), at(75), at(75)],
    [at(60), at(75), at(60)],
    [at(75), at(75), at(75)],
    ["unmarked", at(75), "unmarked"],
    ["unmarked", at(74), at(74)],
    ["unmarked", at(60), at(60)],
    [at(60), "unmarked", at(60)],
    [at(75), "unmarked", "unmarked"],
    [at(90), "unmarked", "unmarked"],
    ["unmarked", "unmarked", "unmarked"],
  ])("far end %j, terminal %j: %j", (far, own, weaker) => {
    const [remedy] = stubsFor({
      circuit: loaded(100, {
        protection: { kind: "device", ratingA: 150 },
        ...(far === undefined ? {} : { endTerminalTemperature: far }),
      }),
      equipment: equipment({ terminalTemperature: own }),
    });
    expect(remedy?.joints[1]?.joint.circuit?.endTerminalTemperature).toEqual(weaker);
  });
});

describe("what gets no stub", () => {
  // hand: the ampacity table sizes no lead of equipment, so nothing would keep its stub from being too small
  test.each(["equipment-lead", "fixture-wire"] as const)("%s, whose size says nothing of a stub", (insulation) => {
    const lead = sampleConductor({ size: "250 kcmil", insulation });
    expect(stubsFor({ conductors: [lead] })).toEqual([]);
    expect(stubsFor({ conductors: [{ ...lead, insulation: "XHHW-2" }] }).map(stubOf)).toEqual(["4/0 AWG copper"]);
  });
  test("two conductors in one joint", () => {
    const [one] = tooLarge().conductors;
    if (one === undefined) throw new Error("the joint has no conductor");
    expect(stubsFor({ conductors: [one, one] })).toEqual([]);
  });
});

describe("what a stub is", () => {
  test("class B and of the conductor's insulation, the largest size that lands: a fine strand of the same size lands so", () => {
    const fine = sampleConductor({ size: "4/0 AWG", stranding: "class-K" });
    const reducer = { ...REDUCER, openings: REDUCER.openings.map((one) => ({ ...one, ranges: kRanges(one) })) };
    const [remedy] = stubsFor({ conductors: [fine], circuit: loaded(200) }, [reducer]);
    expect(remedy?.joints[0]?.joint.conductors).toEqual([
      { count: 1, metal: "copper", size: "4/0 AWG", stranding: "class-B", insulation: "THHN/THWN-2" },
    ]);
    expect(remedy?.joints[1]?.joint.conductors.map(({ stranding }) => stranding)).toEqual(["class-K", "class-B"]);
  });
  test("of a copper conductor, copper only; the splice has the place and the enclosure, not stud, frame or terminal", () => {
    const found = stubsFor({
      conductors: [sampleConductor({ size: "250 kcmil" })],
      equipment: equipment({ frame: "Frame 100", stud: { holes: 1, bolt: "1/2" } }),
    });
    expect(found.map(stubOf)).toEqual(["4/0 AWG copper"]);
    expect(found[0]?.joints[1]?.joint).toMatchObject({ function: "splice", place: { location: "dry" } });
    expect(found[0]?.joints[1]?.joint.equipment).toEqual({ tag: "P-1", kind: "panelboard" });
  });
  test("two sets: two stubs in the terminal, a splice for each, and both are bought", () => {
    const [conductor] = tooLarge().conductors;
    if (conductor === undefined) throw new Error("the joint has no conductor");
    const [remedy] = stubsFor({
      conductors: [{ ...conductor, count: 2 }],
      circuit: loaded(360, { sets: 2, parallelLegsAlike: true, protection: { kind: "device", ratingA: 400 } }),
      equipment: equipment({ terminal: terminal({ openings: takes("6 AWG", "4/0 AWG", { count: 2 }) }) }),
    });
    // hand: 2 x 180 A of 4/0 AWG aluminum; two splicer-reducers at 21.05 are 42.10, at 0.7 h 1.4 h
    expect(remedy?.joints[0]?.joint.conductors).toMatchObject([{ count: 2, size: "4/0 AWG", metal: "aluminum" }]);
    expect(remedy?.joints[1]).toMatchObject({ count: 2, joint: { conductors: [{ count: 1 }, { count: 1 }] } });
    expect(remedy).toMatchObject({ parts: [{ quantity: 2 }], cost: { amount: "42.10" }, labourHours: 1.4 });
  });
  test("a metric conductor gets a metric stub", () => {
    const metric = terminal({ openings: takes("16 mm2", "95 mm2") });
    const reducer: CatalogueItem = {
      ...REDUCER,
      openings: [
        ...takes("95 mm2", "150 mm2", { id: "large", screw: "large" }),
        ...takes("16 mm2", "95 mm2", { id: "small", screw: "small" }),
      ],
    };
    const ground = sampleJoint({
      role: "bonding",
      grounding: { bonding: "by-design" },
      conductors: [sampleConductor({ size: "120 mm2", insulation: "bare" })],
      equipment: equipment({ terminal: { ...metric, grounding: { listed: true, electrodes: [] } } }),
    });
    expect(stubsFor(ground, [{ ...reducer, grounding: { listed: true, electrodes: [] } }]).map(stubOf)).toEqual([
      "95 mm2 copper",
    ]);
  });
});

function kRanges({ ranges }: CatalogueItem["openings"][number]): CatalogueItem["openings"][number]["ranges"] {
  return ranges.map((range) => ({ ...range, strandings: ["class-B", "class-K"] }));
}
