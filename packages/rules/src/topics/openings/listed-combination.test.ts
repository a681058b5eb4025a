import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import type { CombinationPart, Connector, Opening } from "../../core/connector.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleOpening } from "../../samples/sample-joint.js";
import { landConductors } from "./land-conductors.js";
import { listedCombination } from "./listed-combination.js";

const PACKAGE: readonly (readonly CombinationPart[])[] = [
  [
    { size: "14 AWG", count: 1 },
    { size: "12 AWG", count: 1 },
  ],
  [{ size: "12 AWG", count: 2 }],
  [{ size: "12 AWG", count: 4 }],
];

function check(
  conductors: readonly Partial<ConductorGroup>[],
  combinations: readonly (readonly CombinationPart[])[] = PACKAGE,
  change: { readonly connector?: Partial<Connector>; readonly opening?: Partial<Opening> } = {},
) {
  const opening = sampleOpening({
    ranges: [{ from: "14 AWG", to: "10 AWG", strandings: ["solid", "class-B"] }],
    conductorsMax: 5,
    combinations,
    ...change.opening,
  });
  const connector = sampleConnector({
    family: "twist-on",
    construction: "twist-on",
    openings: [opening],
    ...change.connector,
  });
  const joint = sampleJoint({
    function: "splice",
    conductors: conductors.map((one) => sampleConductor({ size: "12 AWG", ...one })),
  });
  return listedCombination.check(
    { joint, connector, origin: "connector", landings: landConductors(joint, connector) },
    nfpa70Edition2023,
  );
}

describe("listed combination (NFPA 70-2023 110.3(B))", () => {
  test("a combination of the package passes in any order, on the condition to follow the package", () => {
    for (const conductors of [
      [{ size: "12 AWG" }, { size: "14 AWG" }],
      [{ size: "14 AWG" }, { size: "12 AWG" }],
    ])
      expect(check(conductors)).toMatchObject({
        outcome: "pass",
        conditions: [{ duty: "follow-package-combination" }],
      });
  });
  test("equal sizes in two groups count together", () => {
    expect(check([{ insulation: "equipment-lead" }, {}]).outcome).toBe("pass");
  });
  // hand: 2 and 4 of 12 AWG are listed; 1, 3 and 5 are not
  test.each([
    [1, "fail"],
    [2, "pass"],
    [3, "fail"],
    [4, "pass"],
    [5, "fail"],
  ] as const)("%d x 12 AWG: %s", (count, outcome) => {
    expect(check([{ count }]).outcome).toBe(outcome);
  });
  test("the refusal names what is not listed", () => {
    expect(check([{ count: 5 }])).toMatchObject({ offered: "5 x 12 AWG", required: "a listed combination" });
    expect(check([{}, { size: "10 AWG" }])).toMatchObject({ outcome: "fail", offered: "1 x 10 AWG + 1 x 12 AWG" });
  });
  test("a twist-on without its package's list is asked about", () => {
    const { combinations: _list, ...opening } = sampleOpening();
    const connector: Partial<Connector> = { openings: [{ ...opening, conductorsMax: 5 }] };
    expect(check([{ count: 2 }], PACKAGE, { connector })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/openings/0/combinations" }],
    });
  });
  test("a list speaks of copper unless the opening names the metal", () => {
    expect(check([{ count: 2, metal: "aluminum" }])).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/openings/0/shared/metals" }],
    });
    const shared = { sameSize: false, sameMetal: false, metals: ["copper", "aluminum"] } as const;
    expect(check([{ count: 2, metal: "aluminum" }], PACKAGE, { opening: { shared } }).outcome).toBe("pass");
    expect(check([{ count: 3, metal: "aluminum" }]).outcome).toBe("fail");
  });
  test("other connectors are judged where combinations are listed, one conductor too", () => {
    const screw: Partial<Connector> = { family: "set-screw-lug-one-hole", construction: "set-screw" };
    expect(check([{ count: 1 }], PACKAGE, { connector: screw }).outcome).toBe("fail");
    const { combinations: _list, ...opening } = sampleOpening({ conductorsMax: 2 });
    const plain: Partial<Connector> = { ...screw, openings: [opening] };
    expect(check([{ size: "1/0 AWG", count: 2 }], PACKAGE, { connector: plain }).outcome).toBe("not-applicable");
    expect(check([{ count: 3 }], PACKAGE, { connector: screw }).outcome).toBe("fail");
  });
  test("each kind of cap is judged: a listed one beside an unlisted one does not cover it", () => {
    const opening = sampleOpening({ count: 2, combinations: PACKAGE });
    const connector = sampleConnector({ construction: "twist-on", openings: [opening] });
    const joint = sampleJoint({
      function: "splice",
      conductors: [sampleConductor({ size: "12 AWG", count: 3 })],
    });
    const [conductor] = joint.conductors;
    if (conductor === undefined) throw new Error("one group");
    const cap = (instance: number, count: number) => ({
      openingIndex: 0,
      opening,
      instance,
      conductors: [{ group: 0, conductor, count }],
    });
    const judge = (...counts: readonly number[]) =>
      listedCombination.check(
        {
          joint,
          connector,
          origin: "connector",
          landings: counts.map((count, at) => cap(at + 1, count)),
        },
        nfpa70Edition2023,
      );
    // hand: 2 and 4 x 12 AWG are listed, 1 and 3 are not
    expect(judge(2, 1)).toMatchObject({ outcome: "fail", offered: "1 x 12 AWG" });
    expect(judge(2, 3)).toMatchObject({ outcome: "fail", offered: "3 x 12 AWG" });
    expect(judge(2, 4)).toMatchObject({ outcome: "pass", offered: "2 x 12 AWG; 4 x 12 AWG" });
    expect(judge(2, 2)).toMatchObject({ outcome: "pass", offered: "2 x 12 AWG" });
  });
  test("a refused combination decides before a question about another cap", () => {
    const { combinations: _list, ...unlisted } = sampleOpening({ id: "unlisted" });
    const opening = sampleOpening({ combinations: PACKAGE });
    const connector = sampleConnector({ construction: "twist-on", openings: [unlisted, opening] });
    const joint = sampleJoint({
      function: "splice",
      conductors: [sampleConductor({ size: "12 AWG", count: 3 })],
    });
    const [conductor] = joint.conductors;
    if (conductor === undefined) throw new Error("one group");
    const landings = [unlisted, opening].map((one, openingIndex) => ({
      openingIndex,
      opening: one,
      instance: 1,
      conductors: [{ group: 0, conductor, count: openingIndex + 2 }],
    }));
    expect(
      listedCombination.check({ joint, connector, origin: "connector", landings }, nfpa70Edition2023),
    ).toMatchObject({
      outcome: "fail",
      offered: "3 x 12 AWG",
    });
  });
  test("a question names the package that would answer it, for copper and for other metals", () => {
    const { combinations: _list, ...opening } = sampleOpening({ conductorsMax: 5 });
    expect(check([{ count: 2 }], PACKAGE, { connector: { openings: [opening] } })).toMatchObject({
      required: "a package that lists 2 x 12 AWG",
      cite: { locator: "110.3(B)" },
    });
    const shared = { sameSize: false, sameMetal: false } as const;
    expect(check([{ count: 2, metal: "aluminum" }], PACKAGE, { opening: { shared } })).toMatchObject({
      outcome: "missing",
      required: "combinations listed for aluminum",
      offered: "combinations of copper",
    });
  });
});
