import { describe, expect, test } from "vitest";
import type { CatalogueItem } from "../../core/connector.js";
import type { Basis, Equipment, Joint } from "../../core/joint.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector } from "../../samples/sample-joint.js";
import { equipment, KIT, PIN, part, REDUCER, takes, terminal, tooLarge } from "../../samples/sample-remedies.js";
import { remediesUnder } from "./find-remedies.js";
import type { Remedies } from "./remedy.js";

const BASIS: Basis = { ruleSet: "nfpa70", edition: "2023" };
const find = (
  catalogue: readonly CatalogueItem[],
  change: Partial<Joint> = {},
  equipmentInstead: readonly Equipment[] = [],
): Remedies => remediesUnder(tooLarge(change), BASIS, catalogue, { context: {}, equipmentInstead }, nfpa70Edition2023);
const kindsOf = ({ remedies }: Remedies): string[] => remedies.map(({ kind }) => kind);
const TWO_BARRELS = terminal({ openings: takes("6 AWG", "4/0 AWG", { count: 2 }) });
const [CONDUCTOR] = tooLarge().conductors;
if (CONDUCTOR === undefined) throw new Error("the joint has no conductor");
const dear = (amount: string) => ({ price: { amount, currency: "USD" } });

// hand: each case is worked in its title; the conductor is 250 kcmil aluminum, the terminal stops at 4/0 AWG
describe("what the joint is offered decides whether a remedy is looked for", () => {
  const lands = { openings: takes("6 AWG", "250 kcmil") };
  test.each([
    ["a part of the catalogue that lands it", { partNumber: "LANDS" }],
    ["a part described that lands it", { described: sampleConnector(lands) }],
    [
      "a part whose head shears, on that condition",
      { described: sampleConnector({ ...lands, screws: [{ id: "main", drive: { kind: "breakaway" } }] }) },
    ],
  ] as const)("none where it names %s", (_what, connector) => {
    const found = find([REDUCER, part("LANDS", lands)], { connector });
    expect(found).toMatchObject({ remedies: [], open: [] });
    expect(found.because).toContain("no remedy is needed");
  });
  test.each([
    ["a part of the catalogue", { partNumber: "SMALL" }],
    ["a part described", { described: sampleConnector({ openings: takes("6 AWG", "1/0 AWG") }) }],
  ] as const)("one where it names %s that stops at 1/0 AWG, and the refusal is of that part", (_what, connector) => {
    const found = find([REDUCER, part("SMALL", { openings: takes("6 AWG", "1/0 AWG") })], { connector });
    expect(found.because).toContain("1/0 AWG");
    expect(kindsOf(found)).toContain("stub");
  });
  test("the terminal is judged as part of its equipment, whose temperature it has", () => {
    const own = terminal({ ...lands, metalMarking: "AL-CU", mounting: { kind: "free" } });
    expect(find([REDUCER], { equipment: equipment({ terminal: own }) }).because).toContain("no remedy is needed");
  });
  test("without equipment, or without a terminal of it, that is said", () => {
    const { equipment: _, ...loose } = tooLarge();
    const found = remediesUnder(
      loose,
      BASIS,
      [REDUCER, PIN, KIT],
      { context: {}, equipmentInstead: [] },
      nfpa70Edition2023,
    );
    expect(found.because).toBe("No terminal and no connector is offered.");
    expect(kindsOf(found).filter((kind) => kind !== "stub")).toEqual([]);
  });
});

describe("each joint of a remedy names its connector and where it is, so that it can be asked again", () => {
  test("a kit at the equipment, a pin at the terminal and on the conductor, a stub likewise, legs in the terminal", () => {
    const shown = (found: Remedies) =>
      found.remedies.map(({ kind, joints }) => [
        kind,
        ...joints.map(({ where, joint, connector }) => [
          where,
          joint.connector,
          connector.partNumber,
          connector.origin,
        ]),
      ]);
    const own = ["at-equipment", { equipmentTerminal: true }, null, "equipment"];
    expect(shown(find([KIT], { equipment: equipment({ frame: "Frame 400" }) }))).toEqual([
      ["lug-kit", ["at-equipment", { partNumber: "KIT-400" }, "KIT-400", "catalogue"]],
    ]);
    expect(shown(find([PIN]))).toEqual([
      ["pin-adapter", own, ["at-conductor", { partNumber: "PIN" }, "PIN", "catalogue"]],
    ]);
    expect(shown(find([REDUCER]))[0]).toEqual([
      "stub",
      own,
      ["at-conductor", { partNumber: "REDUCER" }, "REDUCER", "catalogue"],
    ]);
    expect(shown(find([], { equipment: equipment({ terminal: TWO_BARRELS }) }))).toEqual([["parallel-sets", own]]);
  });
  test("its conditions are shown: a splice whose heads shear", () => {
    const shears = {
      ...REDUCER,
      screws: ["large", "small"].map((id) => ({ id, drive: { kind: "breakaway" } as const })),
    };
    const splice = find([shears]).remedies[0]?.joints[1];
    expect(splice?.verdict).toBe("accept-with-conditions");
    expect(splice?.conditions.length).toBeGreaterThan(0);
    for (const condition of splice?.conditions ?? []) expect(condition).toMatch(/^[A-Z].*\.$/);
  });
  test("a terminal with a part number of its own stays the equipment's", () => {
    const numbered = equipment({ terminal: terminal({ partNumber: "OF-THE-PANEL" }) });
    expect(find([PIN], { equipment: numbered }).remedies[0]?.joints[0]?.joint.connector).toEqual({
      equipmentTerminal: true,
    });
  });
});

describe("what is not offered", () => {
  test("a pin for two conductors, or a pin adapter that says nothing of its pin", () => {
    const two = { conductors: [{ ...CONDUCTOR, count: 2 }] };
    const wide = { ...PIN, openings: PIN.openings.map((one) => ({ ...one, conductorsMax: 2, count: 2 })) };
    expect(kindsOf(find([wide], two))).not.toContain("pin-adapter");
    const { pin: _, ...blind } = PIN;
    expect(kindsOf(find([blind]))).toEqual([]);
  });
  test("a pin without a terminal to lie in", () => {
    const { terminal: _, ...pad } = equipment();
    expect(kindsOf(find([PIN], { equipment: pad }))).not.toContain("pin-adapter");
  });
  test("a pin adapter in place of a lug on a pad: nothing is left for its pin to lie in", () => {
    const { terminal: _, ...pad } = equipment({ stud: { holes: 1, bolt: "1/2" } });
    const cheap = {
      ...PIN,
      ...dear("0.01"),
      openings: PIN.openings.map((one) => ({ ...one, ranges: takes("6 AWG", "4/0 AWG")[0]?.ranges ?? [] })),
    };
    expect(kindsOf(find([cheap, REDUCER], { equipment: pad }))).toEqual([]);
  });
  test("a stub on a pad for which the catalogue has no lug", () => {
    const { terminal: _, ...pad } = equipment({ stud: { holes: 1, bolt: "1/2" } });
    expect(kindsOf(find([REDUCER], { equipment: pad }))).toEqual([]);
  });
  test("legs for conductors that are several already, in one group, in two or in sets, or for a lead of equipment", () => {
    const four = equipment({ terminal: terminal({ openings: takes("6 AWG", "4/0 AWG", { count: 4 }) }) });
    const sets = { voltageV: 480, loadA: 180, sets: 2, parallelLegsAlike: true } as const;
    const protection = { kind: "device", ratingA: 200 } as const;
    expect(kindsOf(find([], { equipment: four }))).toEqual(["parallel-sets"]);
    expect(kindsOf(find([], { equipment: four, conductors: [{ ...CONDUCTOR, count: 2 }] }))).toEqual([]);
    expect(kindsOf(find([], { equipment: four, conductors: [CONDUCTOR, CONDUCTOR] }))).toEqual([]);
    expect(kindsOf(find([], { equipment: four, circuit: { ...sets, protection } }))).toEqual([]);
    const lead = { ...CONDUCTOR, insulation: "equipment-lead" } as const;
    expect(kindsOf(find([], { equipment: four, conductors: [lead] }))).toEqual([]);
    const { circuit: _, ...without } = tooLarge({ equipment: four });
    const found = remediesUnder(without, BASIS, [], { context: {}, equipmentInstead: [] }, nfpa70Edition2023);
    expect(found.remedies).toEqual([]);
  });
  test("legs of the conductor's own size, where that lands and the conductor's own load does not", () => {
    const wide = terminal({ openings: takes("250 kcmil", "250 kcmil", { count: 2 }) });
    // published: Table 310.16, 250 kcmil aluminum 205 A at 75 C: 206 A are refused
    const circuit = { voltageV: 480, loadA: 206, sets: 1, protection: { kind: "device", ratingA: 225 } } as const;
    expect(kindsOf(find([], { equipment: equipment({ terminal: wide }), circuit }))).toEqual([]);
  });
  test("more than three parts of one kind: the three best are", () => {
    const kits = ["E", "D", "C", "B", "A"].map((name, at) =>
      part(name, { ...KIT, partNumber: name, ...dear(String(9 - at)) }),
    );
    const framed = equipment({ frame: "Frame 400" });
    const found = find([...kits, part("OTHER", { openings: takes("6 AWG", "500 kcmil") })], { equipment: framed });
    expect(found.remedies.map(({ kind, parts }) => [kind, parts[0]?.partNumber])).toEqual([
      ["lug-kit", "A"],
      ["lug-kit", "B"],
      ["lug-kit", "C"],
    ]);
    expect(find(kits).open.map(({ partNumber }) => partNumber)).toEqual(["A", "B", "C"]);
  });
});

describe("legs are the fewest, and of those the smallest", () => {
  test.each([
    // published: Chapter 9 Table 8: 3/0 AWG 167.8, 2/0 AWG 133.1, 1/0 AWG 105.6 kcmil
    ["three barrels for 1/0 AWG at most: 3 x 105.6 are 316.8 of 250", "1/0 AWG", 3, "1/0 AWG", 3],
    ["four barrels for 1/0 AWG at most: three are enough", "1/0 AWG", 4, "1/0 AWG", 3],
    ["four barrels for 4/0 AWG: two are enough", "4/0 AWG", 4, "2/0 AWG", 2],
  ])("%s", (_why, to, count, size, legs) => {
    const own = equipment({ terminal: terminal({ openings: takes("6 AWG", to, { count }) }) });
    expect(find([], { equipment: own }).remedies[0]?.joints[0]?.joint.conductors).toMatchObject([
      { size, count: legs },
    ]);
  });
  test("four legs, and exactly the area: 4 x 250 kcmil for 1000 kcmil", () => {
    const own = equipment({ terminal: terminal({ openings: takes("6 AWG", "250 kcmil", { count: 4 }) }) });
    const found = find([], { equipment: own, conductors: [{ ...CONDUCTOR, size: "1000 kcmil" }] });
    expect(found.remedies[0]?.joints[0]?.joint.conductors).toMatchObject([{ size: "250 kcmil", count: 4 }]);
    expect(found.remedies[0]?.provided.length).toBe(3);
  });
  test("never five", () => {
    const own = equipment({ terminal: terminal({ openings: takes("6 AWG", "4/0 AWG", { count: 5 }) }) });
    expect(kindsOf(find([], { equipment: own, conductors: [{ ...CONDUCTOR, size: "1000 kcmil" }] }))).toEqual([]);
  });
});

describe("other equipment", () => {
  const pad: Equipment = { tag: "P-9", kind: "panelboard", terminalTemperature: { value: 75, unit: "Cel" } };
  test("named without a terminal: the conductor lands with a part of the catalogue, and no cost is known", () => {
    const lug = part("LUG", { openings: takes("6 AWG", "500 kcmil"), ...dear("5.00"), functions: ["termination"] });
    const found = find([lug], {}, [pad]);
    expect(found.remedies).toMatchObject([
      {
        kind: "larger-frame",
        cost: null,
        parts: [{ partNumber: "LUG", quantity: 1 }],
        joints: [{ joint: { equipment: pad } }],
      },
    ]);
    expect(found.remedies[0]?.sentence).toBe("Order P-9, and land the conductor with lug.");
    expect(found.remedies[0]?.provided.length).toBe(2);
  });
  test("named with a terminal that takes it", () => {
    const own = { ...pad, terminal: terminal({ openings: takes("2/0 AWG", "500 kcmil") }) };
    expect(find([], {}, [own]).remedies[0]?.sentence).toBe("Order P-9, and land the conductor in its own terminal.");
  });
  test("kits of other frames: the best of each of the first three by name, no kit of the frame there is, no part that is no kit", () => {
    const kitFor = (name: string, ...frames: string[]) =>
      part(name, { ...KIT, partNumber: name, mounting: { kind: "frame", frames } });
    const { price: _, ...unpriced } = kitFor("K-0", "Frame B");
    const catalogue = [
      unpriced,
      ...["A", "B", "C", "D"].map((name) => kitFor(`K-${name}`, `Frame ${name}`)),
      KIT,
      part("LUG", {}),
    ];
    const found = find(catalogue, {
      equipment: equipment({ frame: "Frame A", terminalTemperature: { value: 75, unit: "Cel" } }),
    });
    expect(found.open.map(({ partNumber }) => partNumber)).toEqual(["KIT-400", "K-B", "K-C"]);
    const { kind: _kind, ...unknown } = equipment({ frame: "Frame Z" });
    expect(find([KIT], { equipment: unknown }).open).toMatchObject([{ kind: "larger-frame", partNumber: "KIT-400" }]);
  });
});

test("money has two places or as many as the prices have", () => {
  const framed = { equipment: equipment({ frame: "Frame 400" }) };
  for (const [amount, shown] of [
    ["5", "5.00"],
    ["5.5", "5.50"],
    ["5.125", "5.125"],
  ] as const)
    expect(find([{ ...KIT, ...dear(amount) }], framed).remedies[0]?.cost).toEqual({ amount: shown, currency: "USD" });
  const { price: _, ...free } = REDUCER;
  const { terminal: __, ...pad } = equipment({ stud: { holes: 1, bolt: "1/2" } });
  const lug = part("LUG", {
    mounting: { kind: "pad", pattern: { holes: 1, bolt: "1/2" } },
    plating: "tin",
    openings: takes("6 AWG", "4/0 AWG"),
    ...dear("1.00"),
  });
  expect(find([lug, free], { equipment: pad }).remedies[0]).toMatchObject({ kind: "stub", cost: null });
});

test("the stub's conductors are named, and what is left to be looked at", () => {
  expect(find([REDUCER]).remedies[0]?.provided.length).toBe(3);
  expect(find([KIT], { equipment: equipment({ frame: "Frame 400" }) }).remedies[0]?.provided.length).toBe(1);
  expect(find([PIN]).remedies[0]?.provided.length).toBe(1);
  const bare = sampleConductor({ size: "250 kcmil", insulation: "XHHW-2", stranding: "class-C" });
  expect(find([REDUCER], { conductors: [bare] }).remedies.map(({ sentence }) => sentence.slice(0, 29))).toEqual([
    "Land a stub of 4/0 AWG copper",
  ]);
});
