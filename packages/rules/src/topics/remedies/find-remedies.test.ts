import { describe, expect, test } from "vitest";
import type { CatalogueItem } from "../../core/connector.js";
import type { Basis, Equipment, Joint } from "../../core/joint.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor } from "../../samples/sample-joint.js";
import { equipment, KIT, PIN, part, REDUCER, takes, terminal, tooLarge } from "../../samples/sample-remedies.js";
import { candidatesWithRemedies } from "./candidates-with-remedies.js";
import { remediesUnder } from "./find-remedies.js";
import type { RemedyKind } from "./remedy.js";

const BASIS: Basis = { ruleSet: "nfpa70", edition: "2023" };
const find = (
  catalogue: readonly CatalogueItem[],
  change: Partial<Joint> = {},
  equipmentInstead: readonly Equipment[] = [],
) => remediesUnder(tooLarge(change), BASIS, catalogue, { context: {}, equipmentInstead }, nfpa70Edition2023);
const kindsOf = (found: { readonly remedies: readonly { readonly kind: RemedyKind }[] }) =>
  found.remedies.map(({ kind }) => kind);

// hand: every case is worked in its title
describe("ways to land 250 kcmil aluminum where the terminal stops at 4/0 AWG", () => {
  test("why is the terminal's own refusal", () => {
    expect(find([]).because).toContain("stops at 4/0 AWG");
  });
  test("a lug kit listed for the frame, and none listed for another", () => {
    const found = find([KIT], { equipment: equipment({ frame: "Frame 400" }) });
    expect(found.remedies).toMatchObject([
      { kind: "lug-kit", parts: [{ partNumber: "KIT-400", quantity: 1 }], cost: { amount: "30.10", currency: "USD" } },
    ]);
    expect(kindsOf(find([KIT], { equipment: equipment({ frame: "Frame 100" }) }))).toEqual([]);
  });
  test("a kit is judged without the terminal it replaces: copper-only marks of the old one do not bind it", () => {
    const found = find([KIT], {
      equipment: equipment({ frame: "Frame 400", terminal: terminal({ metalMarking: "CU" }) }),
    });
    expect(found.remedies[0]?.joints[0]?.joint.equipment?.terminal).toBeUndefined();
    expect(kindsOf(found)).toEqual(["lug-kit"]);
  });
  test("where the frame is not given the kit is not proposed; the frame is asked", () => {
    const found = find([KIT]);
    expect(kindsOf(found)).toEqual([]);
    expect(found.open).toMatchObject([
      { kind: "lug-kit", partNumber: "KIT-400", missing: [{ path: "joint/equipment/frame" }] },
    ]);
  });
  test("a pin of 3/0 AWG copper: barrel and pin are both accepted", () => {
    const [remedy, ...others] = find([PIN]).remedies;
    expect(others).toEqual([]);
    expect(remedy).toMatchObject({ kind: "pin-adapter", cost: { amount: "12.95" }, labourHours: 0.5 });
    expect(remedy?.joints.map(({ where, connector }) => [where, connector.partNumber])).toEqual([
      ["at-equipment", null],
      ["at-conductor", "PIN"],
    ]);
    expect(remedy?.joints[0]?.joint.conductors).toEqual([
      { count: 1, metal: "copper", size: "3/0 AWG", stranding: "class-B", insulation: "equipment-lead" },
    ]);
  });
  test.each([
    ["is larger than the terminal takes: 250 kcmil", { size: "250 kcmil", metal: "copper" } as const, terminal()],
    [
      "is copper and the terminal for aluminum only",
      { size: "3/0 AWG", metal: "copper" } as const,
      terminal({ metalMarking: "AL9" }),
    ],
    [
      "lies in a terminal for 300 V on a 480 V circuit",
      { size: "3/0 AWG", metal: "copper" } as const,
      terminal({ voltageV: 300 }),
    ],
  ])("no pin that %s", (_why, pin, own) => {
    expect(kindsOf(find([{ ...PIN, pin }], { equipment: equipment({ terminal: own }) }))).toEqual([]);
  });
  test("a stub of 4/0 AWG aluminum: 180 A at 75 C for a load of 180 A, and 200 A is the next device", () => {
    const [remedy] = find([REDUCER]).remedies;
    expect(remedy).toMatchObject({ kind: "stub", cost: { amount: "21.05", currency: "USD" } });
    expect(remedy?.sentence).toContain("a stub of 4/0 AWG aluminum");
    expect(remedy?.joints.map(({ joint: { function: made }, connector }) => [made, connector.partNumber])).toEqual([
      ["termination", null],
      ["splice", "REDUCER"],
    ]);
    expect(remedy?.joints[1]?.joint.circuit?.endTerminalTemperature).toEqual({ value: 75, unit: "Cel" });
  });
  test("no stub that cannot carry the load: at 181 A only copper, 4/0 AWG, 230 A", () => {
    const circuit = { voltageV: 480, loadA: 181, sets: 1, protection: { kind: "device", ratingA: 200 } } as const;
    expect(find([REDUCER], { circuit }).remedies.map(({ sentence }) => sentence.slice(0, 34))).toEqual([
      "Land a stub of 4/0 AWG copper (cla",
    ]);
  });
  test("no stub under a device beyond its next: 4/0 AWG aluminum, 180 A, under 225 A; copper, 230 A, serves", () => {
    const circuit = { voltageV: 480, loadA: 180, sets: 1, protection: { kind: "device", ratingA: 225 } } as const;
    expect(find([REDUCER], { circuit }).remedies.map(({ sentence }) => sentence.slice(0, 29))).toEqual([
      "Land a stub of 4/0 AWG copper",
    ]);
  });
  test("no stub without a splice for it, or where the splice is not listed for the place", () => {
    expect(kindsOf(find([]))).toEqual([]);
    expect(kindsOf(find([REDUCER], { place: { location: "wet" } }))).toEqual([]);
  });
  test("a splicer-reducer goes before another splice that costs less", () => {
    const cheaper = part("SPLICE", {
      ...REDUCER,
      partNumber: "SPLICE",
      family: "in-line-splice",
      price: { amount: "1.00", currency: "USD" },
    });
    expect(find([cheaper, REDUCER]).remedies[0]?.parts).toMatchObject([{ partNumber: "REDUCER" }]);
    expect(find([cheaper]).remedies[0]?.parts).toMatchObject([{ partNumber: "SPLICE" }]);
  });
  test("parallel legs where the terminal has two barrels: 2 x 125 kcmil is the area, so 2 x 2/0 AWG (266.2)", () => {
    const found = find([], {
      equipment: equipment({ terminal: terminal({ openings: takes("6 AWG", "4/0 AWG", { count: 2 }) }) }),
    });
    expect(found.remedies).toMatchObject([{ kind: "parallel-sets", parts: [], cost: null, labourHours: null }]);
    expect(found.remedies[0]?.joints[0]?.joint).toMatchObject({
      conductors: [{ count: 2, size: "2/0 AWG", metal: "aluminum" }],
      circuit: { sets: 2, parallelLegsAlike: true },
    });
  });
  test("no legs below 1/0 AWG: 1/0 AWG cannot be halved", () => {
    const small = terminal({ openings: takes("8 AWG", "1 AWG", { count: 2 }) });
    expect(
      kindsOf(
        find([], {
          conductors: [sampleConductor({ size: "1/0 AWG" })],
          circuit: { voltageV: 480, loadA: 140, sets: 1, protection: { kind: "device", ratingA: 150 } },
          equipment: equipment({ terminal: small }),
        }),
      ),
    ).toEqual([]);
  });
  test("other equipment that was named: its own terminal takes the conductor; its price is not known", () => {
    const larger = equipment({
      tag: "P-1L",
      frame: "Frame 400",
      terminal: terminal({ openings: takes("2/0 AWG", "500 kcmil") }),
    });
    const found = find([KIT], {}, [larger, equipment({ tag: "P-1S" })]);
    expect(found.remedies).toMatchObject([{ kind: "larger-frame", cost: null, parts: [] }]);
    expect(found.remedies[0]?.sentence).toContain("P-1L, frame Frame 400");
  });
  test("a kit of another frame is no remedy until that frame's facts are given", () => {
    const found = find([KIT], { equipment: equipment({ frame: "Frame 100" }) });
    expect(kindsOf(found)).toEqual([]);
    expect(found.open).toMatchObject([
      { kind: "larger-frame", partNumber: "KIT-400", missing: [{ path: "joint/equipment/terminalTemperature" }] },
    ]);
  });
});

describe("what a remedy costs", () => {
  test("a part without a price makes the cost unknown, not free; hours likewise", () => {
    const { price: _, labourHours: __, ...unpriced } = PIN;
    expect(find([unpriced]).remedies).toMatchObject([{ cost: null, labourHours: null, parts: [{ price: null }] }]);
  });
  test("prices add as decimals: on a pad, 0.10 for the lug and 0.20 for the splice are 0.30", () => {
    const lug = part("LUG", {
      mounting: { kind: "pad", pattern: { holes: 1, bolt: "1/2" } },
      plating: "tin",
      openings: takes("6 AWG", "4/0 AWG"),
      price: { amount: "0.10", currency: "USD" },
    });
    const { terminal: _, ...pad } = equipment({ stud: { holes: 1, bolt: "1/2" } });
    const priced = { ...REDUCER, price: { amount: "0.20", currency: "USD" } };
    const [remedy] = find([lug, priced], { equipment: pad }).remedies;
    expect(remedy).toMatchObject({ kind: "stub", cost: { amount: "0.30", currency: "USD" }, labourHours: null });
    const other = { ...REDUCER, price: { amount: "0.20", currency: "CAD" } };
    expect(find([lug, other], { equipment: pad }).remedies).toMatchObject([{ cost: null }, { cost: null }]);
  });
});

describe("where no remedy is looked for", () => {
  test("a joint that is allowed as offered", () => {
    const lands = find([KIT], {
      conductors: [sampleConductor()],
      circuit: { voltageV: 480, loadA: 150, sets: 1, protection: { kind: "device", ratingA: 200 } },
    });
    expect(lands).toMatchObject({ remedies: [], open: [] });
    expect(lands.because).toContain("no remedy is needed");
  });
  test("a splice", () => {
    expect(find([REDUCER], { function: "splice" })).toMatchObject({ remedies: [], open: [] });
  });
  test("an unknown part is refused", () => {
    expect(() => find([], { connector: { partNumber: "NO-SUCH" } })).toThrow(RangeError);
  });
});

describe("candidates with remedies", () => {
  const ask = (catalogue: readonly CatalogueItem[], change: Partial<Joint> = {}) =>
    candidatesWithRemedies(tooLarge(change), BASIS, catalogue, {}, [], nfpa70Edition2023);
  test("remedies where nothing fits, null where a part or the own terminal does", () => {
    expect(ask([REDUCER]).remedies?.remedies).toMatchObject([{ kind: "stub" }, { kind: "stub" }]);
    expect(ask([KIT], { equipment: equipment({ frame: "Frame 400" }) }).remedies).toBeNull();
    expect(
      ask([REDUCER], { equipment: equipment({ terminal: terminal({ openings: takes("6 AWG", "250 kcmil") }) }) }),
    ).toMatchObject({
      candidates: [],
      ownTerminal: { verdict: expect.stringMatching(/^accept/) as string },
      remedies: null,
    });
  });
});
