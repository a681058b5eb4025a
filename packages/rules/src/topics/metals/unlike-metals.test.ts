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
});
