import { describe, expect, test } from "vitest";
import type { ConductorMetal } from "../../core/conductor.js";
import type { Connector } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { EquipmentKind, Location } from "../../core/joint.js";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import {
  sampleConductor,
  sampleConnector,
  sampleJoint,
  sampleOpening,
  sampleSubject,
} from "../../samples/sample-joint.js";
import { unlikeMetals } from "./unlike-metals.js";

const INTERMIX = "AL-CU-INTERMIX-DRY";
const BOTH = ["copper", "aluminum"] as const;
const ONE_OPENING: Partial<Connector> = { openings: [sampleOpening({ conductorsMax: 3 })] };
const TWO_OPENINGS: Partial<Connector> = { openings: [sampleOpening({ id: "a" }), sampleOpening({ id: "b" })] };

interface Case {
  readonly metals?: readonly ConductorMetal[];
  readonly marking?: string | undefined;
  readonly connector?: Partial<Connector>;
  readonly location?: Location | undefined;
  readonly kind?: EquipmentKind;
  readonly edition?: Edition;
}

function check(given: Case) {
  const { metalMarking: _marking, ...part } = sampleConnector(given.connector ?? ONE_OPENING);
  const marking = "marking" in given ? given.marking : INTERMIX;
  const location = "location" in given ? given.location : "dry";
  const { place: _place, ...rest } = sampleJoint({
    function: "splice",
    equipment: { tag: "JB", kind: given.kind ?? "box" },
    conductors: (given.metals ?? BOTH).map((metal) => sampleConductor({ metal, size: "12 AWG", stranding: "solid" })),
  });
  const joint = location === undefined ? rest : { ...rest, place: { location } };
  const connector = marking === undefined ? part : { ...part, metalMarking: marking };
  return unlikeMetals.check(sampleSubject(joint, connector), given.edition ?? nfpa70Edition2023);
}

describe("unlike metals (NFPA 70-2023 110.14)", () => {
  test("one metal is no question", () => {
    expect(check({ metals: ["aluminum", "aluminum"] }).outcome).toBe("not-applicable");
  });
  // published: the intermix mark lets copper and aluminum touch in a dry place
  test.each([
    ["dry", "pass"],
    ["damp", "fail"],
    ["wet", "fail"],
    ["direct-burial", "fail"],
    ["concrete", "fail"],
  ] as const)("in one opening with the intermix mark, %s: %s", (location, outcome) => {
    expect(check({ location }).outcome).toBe(outcome);
  });
  test("a place called dry in a handhole or a trench is not dry", () => {
    expect(check({ kind: "handhole" })).toMatchObject({ outcome: "fail", offered: "handhole" });
    expect(check({ kind: "trench" }).outcome).toBe("fail");
  });
  test("in one opening without the intermix mark they are refused, whatever the place", () => {
    expect(check({ marking: "AL9CU" }).outcome).toBe("fail");
    expect(check({ marking: "unmarked" }).outcome).toBe("fail");
    expect(check({ marking: "AL9CU", location: undefined }).outcome).toBe("fail");
  });
  test("a place or a mark that decides is asked for", () => {
    expect(check({ location: undefined })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/place/location" }],
    });
    expect(check({ marking: undefined })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/metalMarking" }],
    });
    expect(check({ marking: "Q5" })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/metalMarking" }],
    });
  });
  test("in openings kept apart they do not touch, and nothing is asked", () => {
    expect(check({ marking: "AL9CU", connector: TWO_OPENINGS }).outcome).toBe("pass");
    expect(check({ marking: "AL9CU", connector: TWO_OPENINGS, location: undefined }).outcome).toBe("pass");
  });
  test("in openings that are not kept apart they touch", () => {
    expect(check({ marking: "AL9CU", connector: { ...TWO_OPENINGS, openingsApart: false } }).outcome).toBe("fail");
    expect(check({ connector: { ...TWO_OPENINGS, openingsApart: false } }).outcome).toBe("pass");
  });
  // published: unlike each other in 2017, not from 2020 on
  test("copper and copper-clad aluminum count as unlike by edition", () => {
    const given: Case = { metals: ["copper", "copper-clad-aluminum"], marking: "AL9CU" };
    expect(check({ ...given, edition: nfpa70Edition2017 }).outcome).toBe("fail");
    expect(check(given).outcome).toBe("not-applicable");
  });
  test("aluminum and copper-clad aluminum are unlike in every edition", () => {
    const given: Case = { metals: ["aluminum", "copper-clad-aluminum"], marking: "AL9CU" };
    expect(check({ ...given, edition: nfpa70Edition2017 }).outcome).toBe("fail");
    expect(check(given).outcome).toBe("fail");
  });
  test("what touches is told by the openings: in one of them, or anywhere in a part that does not keep them apart", () => {
    const because = (connector: Partial<Connector>) => {
      const finding = check({ marking: "AL9CU", connector });
      return "steps" in finding && finding.steps.find(({ label }) => label === "unlike metals touch");
    };
    expect(because(ONE_OPENING)).toMatchObject({ because: "both lie in one opening", uses: [1, 2, 3] });
    expect(because({ ...TWO_OPENINGS, openingsApart: false })).toMatchObject({
      because: "both lie in this part, which does not keep its openings apart",
      uses: [1, 2, 3],
    });
    const apart = check({ marking: "AL9CU", connector: TWO_OPENINGS });
    expect(apart).toMatchObject({
      sentence: "Copper and aluminum lie in openings that are kept apart, so they do not touch.",
      required: "unlike metals kept apart",
      offered: "openings kept apart",
      cite: { locator: "110.14" },
    });
    expect("steps" in apart && apart.steps.map(({ value, uses }) => [value, uses])).toEqual([
      ["copper", []],
      ["aluminum", []],
      [true, []],
      ["pass", [1, 2, 3]],
    ]);
  });
  test("of several openings the one that holds both decides", () => {
    const connector = sampleConnector({
      metalMarking: "AL9CU",
      openings: [sampleOpening({ id: "a" }), sampleOpening({ id: "b", conductorsMax: 2 })],
    });
    const joint = sampleJoint({
      function: "splice",
      conductors: (["copper", "copper", "aluminum"] as const).map((metal) => sampleConductor({ metal })),
    });
    const holding = (openingIndex: number, ...groups: readonly number[]) => ({
      openingIndex,
      opening: connector.openings[openingIndex] ?? sampleOpening(),
      instance: 1,
      conductors: groups.flatMap((group) => {
        const conductor = joint.conductors[group];
        return conductor === undefined ? [] : [{ group, conductor, count: 1 }];
      }),
    });
    const judge = (landings: readonly ReturnType<typeof holding>[]) =>
      unlikeMetals.check({ joint, connector, origin: "connector", landings }, nfpa70Edition2023).outcome;
    // hand: copper with copper and aluminum by itself do not touch; copper with aluminum do
    expect(judge([holding(0, 2), holding(1, 0, 1)])).toBe("pass");
    expect(judge([holding(0, 0), holding(1, 1, 2)])).toBe("fail");
  });
  test.each([
    ["AL9CU", "AL9CU", "is marked AL9CU and has no intermix mark"],
    ["unmarked", "no metal marking", "bears no metal marking and has no intermix mark"],
  ] as const)("a part %s is refused: %s", (marking, offered, words) => {
    const finding = check({ marking });
    expect(finding).toMatchObject({
      outcome: "fail",
      required: "copper and aluminum kept apart, or an intermix mark and a dry place",
      offered,
      fix: "a connector with separate openings for the two metals, listed for the place",
      sentence: expect.stringContaining(words) as string,
    });
    if (!("steps" in finding)) throw new Error(finding.because);
    const contact = finding.steps.find(({ label }) => label === "unlike metals touch");
    expect(finding.steps.at(-1)?.uses).toContain(contact?.id);
    expect(finding.steps.at(-1)?.uses).toHaveLength(2);
  });
  test.each([
    ["damp", "damp"],
    ["direct-burial", "direct burial"],
  ] as const)("with the intermix mark the place is named: %s", (location, words) => {
    const finding = check({ location });
    expect(finding).toMatchObject({ offered: words });
    expect("sentence" in finding && finding.sentence).toContain(`this place is ${words}`);
  });
  test("with the intermix mark in a dry place it says so", () => {
    const finding = check({});
    expect(finding).toMatchObject({
      outcome: "pass",
      offered: `${INTERMIX}, dry place`,
      sentence: `Copper and aluminum touch, which the mark ${INTERMIX} allows in a dry place.`,
    });
    expect("steps" in finding && finding.steps.findLast((step) => step.kind === "read")).toMatchObject({
      value: "dry",
    });
  });
  test("a handhole or a trench is refused on what it is, and only where it was called dry", () => {
    for (const kind of ["handhole", "trench"] as const) {
      const finding = check({ kind });
      expect(finding).toMatchObject({ outcome: "fail", offered: kind });
      expect("steps" in finding && finding.steps.slice(-2)).toMatchObject([
        { value: kind, origin: "joint/equipment/kind" },
        { value: "fail", because: `a ${kind} is not a dry place`, uses: { length: 4 } },
      ]);
      expect(check({ kind, location: "wet" })).toMatchObject({ outcome: "fail", offered: "wet" });
    }
  });
  test("a joint without equipment is judged by its place", () => {
    const { equipment: _equipment, ...apart } = sampleJoint({
      function: "splice",
      conductors: BOTH.map((metal) => sampleConductor({ metal })),
    });
    const connector = sampleConnector({ ...ONE_OPENING, metalMarking: INTERMIX });
    expect(unlikeMetals.check(sampleSubject(apart, connector), nfpa70Edition2023)).toMatchObject({
      rule: "unlike-metals",
      outcome: "pass",
    });
  });
  test("a question says what touches and what is offered", () => {
    expect(check({ marking: undefined })).toMatchObject({
      offered: "not known",
      required: "copper and aluminum kept apart, or an intermix mark and a dry place",
      cite: { locator: "110.14" },
      sentence: expect.stringContaining("Copper and aluminum touch in this connector.") as string,
    });
    expect(check({ location: undefined })).toMatchObject({
      offered: INTERMIX,
      required: "copper and aluminum kept apart, or an intermix mark and a dry place",
    });
  });
  // published: 110.14 of 2017 names copper and aluminum, copper and copper-clad, aluminum and copper-clad
  test.each([
    [["aluminum", "copper"], "copper and aluminum"],
    [["copper-clad-aluminum", "copper"], "copper-clad aluminum and copper"],
    [["aluminum", "copper-clad-aluminum"], "copper-clad aluminum and aluminum"],
  ] as const)("2017: %j are unlike", (metals, words) => {
    expect(check({ metals, marking: "AL9CU", edition: nfpa70Edition2017 })).toMatchObject({
      outcome: "fail",
      required: `${words} kept apart, or an intermix mark and a dry place`,
    });
  });
  test("of three metals those that count as unlike are found, whatever their order", () => {
    for (const metals of [
      ["copper", "copper-clad-aluminum", "aluminum"],
      ["copper-clad-aluminum", "copper", "aluminum"],
      ["aluminum", "copper-clad-aluminum", "copper"],
    ] as const)
      expect(check({ metals, marking: "AL9CU" }).outcome).toBe("fail");
  });
});
