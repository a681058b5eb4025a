import { describe, expect, test } from "vitest";
import type { CatalogueItem } from "../../core/connector.js";
import type { Basis, Joint } from "../../core/joint.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleOpening } from "../../samples/sample-joint.js";
import { selectConnectorsUnder } from "./select-connectors.js";

const BASIS: Basis = { ruleSet: "nfpa70", edition: "2023" };

/** A lug for 6 AWG to 250 kcmil that the sample joint accepts without conditions. */
function lug(partNumber: string, change: Partial<CatalogueItem> = {}): CatalogueItem {
  return { ...sampleConnector(), partNumber, status: "invented", packQuantity: 1, ...change };
}

const priced = (amount: string, currency = "USD") => ({ price: { amount, currency } });
const upTo = (to: string) => ({
  openings: [sampleOpening({ ranges: [{ from: "6 AWG", to, strandings: ["class-B", "class-C"] }] })],
});
/** A head that shears is accepted on the condition that it does. */
const BREAKAWAY: Partial<CatalogueItem> = { screws: [{ id: "main", drive: { kind: "breakaway" } }] };
/** Beside the head, a part that is used once must be new: two conditions. */
const BREAKAWAY_ONCE: Partial<CatalogueItem> = { ...BREAKAWAY, reusable: false };

function select(catalogue: readonly CatalogueItem[], joint: Partial<Joint> = {}) {
  return selectConnectorsUnder(sampleJoint(joint), BASIS, catalogue, nfpa70Edition2023);
}

function ranked(catalogue: readonly CatalogueItem[], joint: Partial<Joint> = {}): string[] {
  const { chosen, runnersUp } = select(catalogue, joint).selection;
  return chosen === null ? [] : [chosen, ...runnersUp].map(({ partNumber }) => partNumber);
}

/** The same order on every run: a small congruential generator in place of chance. */
function shuffled<T>(list: readonly T[], seed: number): T[] {
  const mixed = [...list];
  let state = seed * 7919 + 1;
  for (let at = mixed.length - 1; at > 0; at -= 1) {
    state = (state * 1103515245 + 12345) % 2147483648;
    const other = state % (at + 1);
    const [one, two] = [mixed[at], mixed[other]];
    if (one === undefined || two === undefined) continue;
    mixed[at] = two;
    mixed[other] = one;
  }
  return mixed;
}

// hand: the order is the one that the doc comment of selectConnectorsUnder lays down
describe("rank: each line decides exactly where the ones above are equal", () => {
  // [what decides, the better, the worse]: the worse is better in every line below.
  const LINES = [
    [
      "accept before accept-with-conditions",
      lug("Z", { ...upTo("500 kcmil"), ...priced("9.00"), labourHours: 9 }),
      lug("A", { ...upTo("4/0 AWG"), ...BREAKAWAY, ...priced("1.00"), labourHours: 1 }),
    ],
    [
      "fewer conditions",
      lug("Z", { ...upTo("500 kcmil"), ...BREAKAWAY, ...priced("9.00"), labourHours: 9 }),
      lug("A", { ...upTo("4/0 AWG"), ...BREAKAWAY_ONCE, ...priced("1.00"), labourHours: 1 }),
    ],
    [
      "lower price",
      lug("Z", { ...upTo("500 kcmil"), ...priced("9.00"), labourHours: 9 }),
      lug("A", { ...upTo("4/0 AWG"), ...priced("10.00"), labourHours: 1 }),
    ],
    [
      "a price before none",
      lug("Z", { ...upTo("500 kcmil"), ...priced("9.00"), labourHours: 9 }),
      lug("A", { ...upTo("4/0 AWG"), labourHours: 1 }),
    ],
    [
      "fewer hours",
      lug("Z", { ...upTo("500 kcmil"), ...priced("9.0"), labourHours: 0.2 }),
      lug("A", { ...upTo("4/0 AWG"), ...priced("9.00"), labourHours: 0.3 }),
    ],
    [
      "known hours before unknown",
      lug("Z", { ...upTo("500 kcmil"), ...priced("9.00"), labourHours: 9 }),
      lug("A", { ...upTo("4/0 AWG"), ...priced("9.00") }),
    ],
    [
      "a largest size nearer to the conductor",
      lug("Z", { ...upTo("4/0 AWG"), ...priced("9.00"), labourHours: 1 }),
      lug("A", { ...upTo("250 kcmil"), ...priced("9.00"), labourHours: 1 }),
    ],
    [
      "the part number, by code unit",
      lug("LF-10", { ...upTo("4/0 AWG"), ...priced("9.00"), labourHours: 1 }),
      lug("LF-9", { ...upTo("4/0 AWG"), ...priced("9.00"), labourHours: 1 }),
    ],
  ] as const;

  test.each(LINES)("%s", (_line, better, worse) => {
    expect(ranked([better, worse])).toEqual([better.partNumber, worse.partNumber]);
    expect(ranked([worse, better])).toEqual([better.partNumber, worse.partNumber]);
  });
  test("prices are compared as decimals, not as text or doubles", () => {
    // hand: 9.1 < 10.00; 0.1000000000000000001 > 0.1, which no double tells apart
    expect(ranked([lug("A", priced("10.00")), lug("B", priced("9.1"))])).toEqual(["B", "A"]);
    expect(ranked([lug("A", priced("0.1000000000000000001")), lug("B", priced("0.1"))])).toEqual(["B", "A"]);
  });
  test("prices of unlike currencies are not compared: the currency sorts, whatever the amounts", () => {
    expect(ranked([lug("A", priced("1.00", "USD")), lug("B", priced("99.00", "CAD"))])).toEqual(["B", "A"]);
  });
  test.each([
    ["without conditions", [lug("A"), lug("B", BREAKAWAY)]],
    ["fewer conditions", [lug("A", BREAKAWAY), lug("B", BREAKAWAY_ONCE)]],
    ["costs least", [lug("A", priced("1")), lug("B", priced("2"))]],
    ["least labor", [lug("A", { labourHours: 1 }), lug("B", { labourHours: 2 })]],
    ["nearest to the conductor", [lug("A", upTo("4/0 AWG")), lug("B", upTo("250 kcmil"))]],
    ["comes first among equals", [lug("A"), lug("B")]],
    ["only connector", [lug("A")]],
  ] as const)("the reason names the line that decided: %s", (words, catalogue) => {
    expect(select(catalogue).selection.because).toContain(words);
  });
});

describe("what a selection shows", () => {
  const catalogue = [
    lug("A", priced("3")),
    lug("B", priced("1")),
    lug("C", priced("2")),
    lug("D", priced("5")),
    lug("E", priced("4")),
    lug("SMALL", upTo("1/0 AWG")),
    lug("COPPER", { metalMarking: "AL7CU", functions: ["splice"] }),
    lug("LOW", { voltageV: 300 }),
  ];
  test("the chosen one, three runners-up, and what each rule kept out", () => {
    const { selection, finding } = select(catalogue);
    expect(ranked(catalogue)).toEqual(["B", "C", "A", "E"]);
    expect(selection.excluded).toEqual([
      { rule: "connector-function", connectors: 1 },
      { rule: "voltage-rating", connectors: 1 },
      { rule: "wire-range", connectors: 1 },
    ]);
    expect(selection.nearestMisses).toEqual([]);
    expect(finding).toMatchObject({ verdict: "accept", connector: { partNumber: "B", origin: "catalogue" } });
  });
  test("the chosen one as the catalogue sells it; what it does not say is null, never nothing", () => {
    const sold = lug("A", { ...priced("3.20"), labourHours: 0.25 });
    const { chosen, runnersUp } = select([sold, lug("B")]).selection;
    const described = { description: "set-screw lug, one barrel", verdict: "accept", conditions: 0 };
    expect(chosen).toEqual({
      partNumber: "A",
      ...described,
      price: { amount: "3.20", currency: "USD" },
      labourHours: 0.25,
    });
    expect(runnersUp).toEqual([{ partNumber: "B", ...described, price: null, labourHours: null }]);
  });
  test("twenty shuffles of the catalogue give the same bytes, whether one fits or none", () => {
    const none: Partial<Joint> = { conductors: [sampleConductor({ size: "600 kcmil" })] };
    const unknown: Partial<Joint> = { circuit: { sets: 1 } };
    for (const joint of [{}, none, unknown]) {
      const expected = JSON.stringify(select(catalogue, joint));
      for (let seed = 1; seed <= 20; seed += 1)
        expect(JSON.stringify(select(shuffled(catalogue, seed), joint))).toBe(expected);
    }
  });
  test("the shuffles of this test do shuffle", () => {
    const orders = new Set<string>();
    for (let seed = 1; seed <= 20; seed += 1)
      orders.add(
        shuffled(catalogue, seed)
          .map(({ partNumber }) => partNumber)
          .join(),
      );
    expect(orders.size).toBeGreaterThan(15);
  });
});

describe("where nothing fits", () => {
  test("the nearest miss is the one with the fewest failures, with its rule, sentence and fix", () => {
    const { selection, finding } = select([
      lug("TWO-FAULTS", { ...upTo("1/0 AWG"), voltageV: 300, ...priced("1") }),
      lug("RANGE", { ...upTo("1/0 AWG"), ...priced("2") }),
      lug("VOLTS", { voltageV: 300, ...priced("3") }),
    ]);
    expect(selection.chosen).toBeNull();
    expect(selection.nearestMisses.map(({ partNumber, rule }) => [partNumber, rule])).toEqual([
      ["RANGE", "wire-range"],
      ["VOLTS", "voltage-rating"],
      ["TWO-FAULTS", "wire-range"],
    ]);
    for (const { fix, sentence } of selection.nearestMisses) expect([fix, sentence]).not.toContain("");
    expect(selection.because).toMatch(/^No connector of the catalogue fits; the nearest, RANGE, fails: /);
    expect(finding).toMatchObject({ verdict: "reject", connector: { partNumber: "RANGE" } });
  });
  test("of many misses the nearest three are shown", () => {
    const misses = ["E", "C", "D", "A", "B"].map((partNumber) => lug(partNumber, { voltageV: 300 }));
    expect(select(misses).selection.nearestMisses.map(({ partNumber }) => partNumber)).toEqual(["A", "B", "C"]);
  });
  test("a catalogue without a connector for the function says so", () => {
    expect(select([lug("A", { functions: ["splice"] })])).toEqual({
      selection: {
        chosen: null,
        runnersUp: [],
        excluded: [{ rule: "connector-function", connectors: 1 }],
        nearestMisses: [],
        because: "The catalogue holds no connector for this kind of joint.",
      },
      finding: null,
    });
    expect(select([]).selection.because).toBe("The catalogue holds no connector for this kind of joint.");
  });
  test("a fault of the joint's own is named, with its fix, also where every part has other faults too", () => {
    // hand: NFPA 70-2023 250.122(A): a 200 A device asks for 6 AWG copper; 8 AWG is too small whatever holds it
    const ground: Partial<Joint> = {
      role: "equipment-ground",
      conductors: [sampleConductor({ size: "8 AWG", insulation: "bare" })],
    };
    const small = lug("A", upTo("1/0 AWG"));
    const { selection } = select(
      [
        lug("B", {
          openings: [sampleOpening({ ranges: [{ from: "2 AWG", to: "250 kcmil", strandings: ["class-B"] }] })],
        }),
      ],
      ground,
    );
    expect(selection.because).toMatch(/^No connector can help: .*6 AWG.* To put it right: .*6 AWG/);
    expect(selection.nearestMisses).toMatchObject([{ partNumber: "B", rule: "equipment-ground-size" }]);
    expect(select([small], ground).selection.because).toMatch(/^No connector can help: /);
  });
  test("a rule that every part of the catalogue fails by its own facts is the catalogue's fault, not the joint's", () => {
    const { selection } = select([lug("A", { voltageV: 300 }), lug("B", { ...upTo("1/0 AWG"), voltageV: 150 })]);
    expect(selection.because).toMatch(/^No connector of the catalogue can help: .*300 V.* To put it right: /);
    expect(selection.nearestMisses.map(({ rule }) => rule)).toEqual(["voltage-rating", "voltage-rating"]);
  });
  test("a fact of the joint that is missing for all is asked for, before any part that fails", () => {
    const { selection, finding } = select([lug("FAILS", { ...upTo("1/0 AWG"), ...priced("1") }), lug("ASKS")], {
      circuit: { sets: 1, loadA: 150, protection: { kind: "device", ratingA: 200 } },
    });
    expect(selection.chosen).toBeNull();
    expect(selection.because).toMatch(/^A fact is missing that decides whether any connector fits: /);
    expect(selection.nearestMisses).toMatchObject([
      { partNumber: "ASKS", rule: "voltage-rating", fix: "say what is not known: joint/circuit/voltageV" },
      { partNumber: "FAILS", rule: "wire-range" },
    ]);
    expect(finding).toMatchObject({ verdict: "needs-information", missing: [{ path: "joint/circuit/voltageV" }] });
  });
});
