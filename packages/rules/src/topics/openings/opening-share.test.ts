import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import type { CombinationPart, SharedOpening } from "../../core/connector.js";
import type { Joint } from "../../core/joint.js";
import { sampleConductor, sampleJoint, sampleOpening } from "../../samples/sample-joint.js";
import { combinationFit, countFit, type OpeningMember, shareFit, standAlone } from "./opening-share.js";

/** "2 x 12 AWG copper" and the like, as members of one opening. */
function inside(...parts: readonly (readonly [count: number, change: Partial<ConductorGroup>])[]): OpeningMember[] {
  return parts.map(([count, change]) => ({ count, conductor: sampleConductor({ size: "12 AWG", count, ...change }) }));
}

function shared(change: Partial<SharedOpening>): SharedOpening {
  return { sameSize: false, sameMetal: false, ...change };
}

describe("how many an opening takes (NFPA 70 110.14(A))", () => {
  const { conductorsMax: _max, ...unknown } = sampleOpening();
  // published: one conductor, unless identified for more; hand: at the number marked and one over
  test.each([
    ["unmarked", 1, "fits"],
    ["unmarked", 2, "refused"],
    [2, 2, "fits"],
    [2, 3, "refused"],
    [0, 1, "fits"],
    [Number.NaN, 2, "refused"],
  ] as const)("marked %s, %d inside: %s", (conductorsMax, count, fit) => {
    expect(countFit({ ...unknown, conductorsMax }, count)).toBe(fit);
  });
  test("not looked at: one fits, two are asked about", () => {
    expect(countFit(unknown, 1)).toBe("fits");
    expect(countFit(unknown, 2)).toBe("unknown");
  });
  test("listed combinations set the number unless one is marked", () => {
    const combinations = [[{ size: "12 AWG", count: 3 }]];
    expect(countFit({ ...unknown, combinations }, 3)).toBe("fits");
    expect(countFit({ ...unknown, combinations, conductorsMax: "unmarked" }, 3)).toBe("fits");
    expect(countFit({ ...unknown, combinations, conductorsMax: 2 }, 3)).toBe("refused");
  });
});

describe("what may share an opening (NFPA 70 110.3(B))", () => {
  const fit = (limits: SharedOpening | undefined, members: readonly OpeningMember[]) => {
    const opening = sampleOpening({ conductorsMax: 3 });
    const count = members.reduce((sum, one) => sum + one.count, 0);
    return shareFit(limits === undefined ? opening : { ...opening, shared: limits }, members, count);
  };
  const unlike = inside([1, {}], [1, { size: "10 AWG" }]);
  const mixed = inside([1, {}], [1, { metal: "aluminum" }]);
  test("without a word on sharing, like conductors share and unlike ones are asked about", () => {
    expect(fit(undefined, inside([2, {}]))).toBe("fits");
    expect(fit(undefined, unlike)).toBe("sharing-not-known");
    expect(fit(undefined, mixed)).toBe("sharing-not-known");
  });
  test("listed combinations are a word on sharing", () => {
    const combinations = [[{ size: "12 AWG", count: 1 }]];
    expect(shareFit(sampleOpening({ combinations }), unlike, 2)).toBe("fits");
  });
  // hand: each limit by itself, kept and broken
  test.each([
    ["one size", shared({ sameSize: true }), unlike, "unlike-sizes"],
    ["one size", shared({ sameSize: true }), mixed, "fits"],
    ["one metal", shared({ sameMetal: true }), mixed, "unlike-metals"],
    ["one metal", shared({ sameMetal: true }), unlike, "fits"],
    ["copper", shared({ metals: ["copper"] }), mixed, "metal-not-listed"],
    ["copper", shared({ metals: ["copper"] }), unlike, "fits"],
    ["12 AWG or smaller", shared({ to: "12 AWG" }), unlike, "size-not-listed"],
    ["10 AWG or smaller", shared({ to: "10 AWG" }), unlike, "fits"],
    ["10 AWG or larger", shared({ from: "10 AWG" }), unlike, "size-not-listed"],
    ["12 AWG or larger", shared({ from: "12 AWG" }), unlike, "fits"],
    ["12 to 10 AWG", shared({ from: "12 AWG", to: "10 AWG" }), unlike, "fits"],
    ["10 to 8 AWG", shared({ from: "10 AWG", to: "8 AWG" }), unlike, "size-not-listed"],
    ["14 to 12 AWG", shared({ from: "14 AWG", to: "12 AWG" }), unlike, "size-not-listed"],
    ["2.5 to 4 mm2", shared({ from: "2.5 mm2", to: "4 mm2" }), unlike, "size-not-comparable"],
    ["4 mm2 or smaller", shared({ to: "4 mm2" }), unlike, "size-not-comparable"],
  ] as const)("marked for more than one of %s: %s", (_words, limits, members, expected) => {
    expect(fit(limits, members)).toBe(expected);
  });
  test("a size that is refused decides before one that cannot be compared", () => {
    const members = inside([1, { size: "4 mm2" }], [1, { size: "10 AWG" }]);
    expect(fit(shared({ to: "12 AWG" }), members)).toBe("size-not-listed");
    expect(fit(shared({ to: "10 AWG" }), members)).toBe("size-not-comparable");
  });
  test("one conductor is free of them", () => {
    expect(fit(shared({ to: "14 AWG", metals: ["copper"] }), inside([1, { metal: "aluminum" }]))).toBe("fits");
  });
});

describe("whether neutrals stand alone (NFPA 70 408.41)", () => {
  const neutral: Partial<Joint> = { role: "neutral" };
  // published: neutrals that end in a panelboard; excepted are those in parallel of one circuit
  test.each([
    ["a neutral that ends in a panelboard", neutral, true],
    ["a phase conductor", { role: "phase" }, false],
    ["a splice of neutrals", { ...neutral, function: "splice" }, false],
    ["a neutral in a switchboard", { ...neutral, equipment: { tag: "S-1", kind: "switchboard" } }, false],
    ["a neutral in equipment of unknown kind", { ...neutral, equipment: { tag: "X-1" } }, false],
    ["one set of a circuit", { ...neutral, circuit: { sets: 1 } }, true],
    ["two sets of a circuit", { ...neutral, circuit: { sets: 2 } }, false],
  ] as const)("%s: %s", (_case, change, alone) => {
    expect(standAlone(sampleJoint(change))).toBe(alone);
  });
  test("without equipment no panelboard is known; without a circuit no conductors are in parallel", () => {
    const { equipment: _equipment, ...apart } = sampleJoint(neutral);
    expect(standAlone(apart)).toBe(false);
    const { circuit: _circuit, ...unsaid } = sampleJoint(neutral);
    expect(standAlone(unsaid)).toBe(true);
  });
});

describe("listed combinations (NFPA 70 110.3(B))", () => {
  const list: readonly CombinationPart[] = [
    { size: "12 AWG", count: 2 },
    { size: "14 AWG", count: 1 },
  ];
  const fit = (members: readonly OpeningMember[]) => combinationFit(sampleOpening({ combinations: [list] }), members);
  // hand: the package shows 2 x 12 AWG + 1 x 14 AWG; each case is one conductor from it
  test.each([
    ["all of it", inside([2, {}], [1, { size: "14 AWG" }]), "fits"],
    ["in another order", inside([1, { size: "14 AWG" }], [2, {}]), "fits"],
    ["in two groups of 12 AWG", inside([1, {}], [1, { size: "14 AWG" }], [1, {}]), "fits"],
    ["one 14 AWG fewer", inside([2, {}]), "refused"],
    ["one 12 AWG fewer", inside([1, {}], [1, { size: "14 AWG" }]), "refused"],
    ["one 14 AWG more", inside([2, {}], [2, { size: "14 AWG" }]), "refused"],
    ["10 AWG in place of 14 AWG", inside([2, {}], [1, { size: "10 AWG" }]), "refused"],
    ["one and two changed over", inside([1, {}], [2, { size: "14 AWG" }]), "refused"],
  ] as const)("%s: %s", (_case, members, expected) => {
    expect(fit(members)).toBe(expected);
  });
  test("without a list nothing is known", () => {
    expect(combinationFit(sampleOpening(), inside([2, {}]))).toBe("unknown");
  });
});
