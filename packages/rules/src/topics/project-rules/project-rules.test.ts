import { describe, expect, test } from "vitest";
import type { Connector } from "../../core/connector.js";
import type { CheckFinding } from "../../core/finding.js";
import type { Joint } from "../../core/joint.js";
import {
  PROJECT_RULE_KINDS,
  type ProjectDemand,
  type ProjectRule,
  type ProjectScope,
} from "../../core/project-rule.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import {
  sampleConductor,
  sampleConnector,
  sampleJoint,
  sampleOpening,
  sampleSubject,
} from "../../samples/sample-joint.js";
import { projectRules } from "./project-rules.js";
import { withProjectRules } from "./rules-in-scope.js";

const SOURCE = "electrical specification, 3.2";

function rule(demand: ProjectDemand, scope?: ProjectScope, id = "R-1"): ProjectRule {
  return scope === undefined ? { id, source: SOURCE, demand } : { id, source: SOURCE, demand, scope };
}

function check(
  rules: readonly ProjectRule[],
  joint: Joint = sampleJoint(),
  connector: Connector = sampleConnector(),
): CheckFinding | undefined {
  const answer = projectRules.check(sampleSubject(withProjectRules(joint, rules), connector), nfpa70Edition2023);
  return answer.outcome === "not-applicable" ? undefined : answer;
}

const outcome = (...asked: Parameters<typeof check>): string => check(...asked)?.outcome ?? "not-applicable";

const pad = (holes: number): Connector =>
  sampleConnector({ mounting: { kind: "pad", pattern: { holes, bolt: "1/2" } } });
const carrying = (loadA: number, change: Partial<Joint> = {}): Joint =>
  sampleJoint({ circuit: { sets: 1, voltageV: 480, loadA }, ...change });
const sized = (size: string): Joint => sampleJoint({ conductors: [sampleConductor({ size })] });

/**
 * Kept, broken, and what is not known, for each kind. The sample joint is one 3/0 AWG copper conductor, 150 A, in a
 * set-screw lug of one hole. hand: 3/0 AWG copper carries 165 A at 60 C and 200 A at 75 C (Table 310.16).
 */
const KINDS: Readonly<
  Record<
    ProjectDemand["kind"],
    readonly (readonly [string, ProjectDemand, Joint, Connector, "pass" | "fail" | "missing"])[]
  >
> = {
  "forbid-family": [
    ["another family", { kind: "forbid-family", families: ["split-bolt"] }, sampleJoint(), sampleConnector(), "pass"],
    [
      "this family",
      { kind: "forbid-family", families: ["split-bolt", "set-screw-lug-one-hole"] },
      sampleJoint(),
      sampleConnector(),
      "fail",
    ],
  ],
  "forbid-construction": [
    [
      "another",
      { kind: "forbid-construction", constructions: ["insulation-piercing"] },
      sampleJoint(),
      sampleConnector(),
      "pass",
    ],
    [
      "this one",
      { kind: "forbid-construction", constructions: ["set-screw"] },
      sampleJoint(),
      sampleConnector(),
      "fail",
    ],
  ],
  "forbid-part": [
    [
      "another part",
      { kind: "forbid-part", partNumbers: ["X-1"] },
      sampleJoint(),
      sampleConnector({ partNumber: "X-2" }),
      "pass",
    ],
    [
      "this part",
      { kind: "forbid-part", partNumbers: ["X-1", "X-2"] },
      sampleJoint(),
      sampleConnector({ partNumber: "X-2" }),
      "fail",
    ],
    [
      "a part without a number",
      { kind: "forbid-part", partNumbers: ["X-1"] },
      sampleJoint(),
      sampleConnector(),
      "missing",
    ],
  ],
  "forbid-metal": [
    [
      "another metal",
      { kind: "forbid-metal", metals: ["aluminum", "copper-clad-aluminum"] },
      sampleJoint(),
      sampleConnector(),
      "pass",
    ],
    ["this metal", { kind: "forbid-metal", metals: ["copper"] }, sampleJoint(), sampleConnector(), "fail"],
    [
      "one of two conductors",
      { kind: "forbid-metal", metals: ["aluminum"] },
      sampleJoint({ conductors: [sampleConductor(), sampleConductor({ metal: "aluminum" })] }),
      sampleConnector(),
      "fail",
    ],
  ],
  "require-family": [
    [
      "one of them",
      { kind: "require-family", families: ["set-screw-lug-one-hole", "lug-kit"] },
      sampleJoint(),
      sampleConnector(),
      "pass",
    ],
    [
      "none of them",
      { kind: "require-family", families: ["compression-lug-two-hole"] },
      sampleJoint(),
      sampleConnector(),
      "fail",
    ],
  ],
  "require-construction": [
    ["it is", { kind: "require-construction", constructions: ["set-screw"] }, sampleJoint(), sampleConnector(), "pass"],
    [
      "it is not",
      { kind: "require-construction", constructions: ["compression"] },
      sampleJoint(),
      sampleConnector(),
      "fail",
    ],
  ],
  "require-holes": [
    ["as many", { kind: "require-holes", holes: 2 }, sampleJoint(), pad(2), "pass"],
    ["more", { kind: "require-holes", holes: 2 }, sampleJoint(), pad(3), "pass"],
    ["one less", { kind: "require-holes", holes: 2 }, sampleJoint(), pad(1), "fail"],
    ["no tongue", { kind: "require-holes", holes: 1 }, sampleJoint(), sampleConnector(), "fail"],
  ],
  "require-body": [
    [
      "both, in other capitals",
      { kind: "require-body", bodyMetals: ["Copper"], platings: ["tin"] },
      sampleJoint(),
      sampleConnector({ bodyMetal: "copper", plating: "Tin" }),
      "pass",
    ],
    [
      "another metal",
      { kind: "require-body", bodyMetals: ["copper"], platings: ["tin"] },
      sampleJoint(),
      sampleConnector({ bodyMetal: "aluminum" }),
      "fail",
    ],
    [
      "bare",
      { kind: "require-body", platings: ["tin"] },
      sampleJoint(),
      sampleConnector({ bodyMetal: "copper", plating: "none" }),
      "fail",
    ],
    [
      "a plating not given",
      { kind: "require-body", bodyMetals: ["copper"], platings: ["tin"] },
      sampleJoint(),
      sampleConnector({ bodyMetal: "copper" }),
      "missing",
    ],
    [
      "a metal not given",
      { kind: "require-body", bodyMetals: ["copper"] },
      sampleJoint(),
      sampleConnector(),
      "missing",
    ],
  ],
  "cap-terminal-temperature": [
    [
      "at the limit",
      { kind: "cap-terminal-temperature", temperature: { value: 60, unit: "Cel" } },
      carrying(165),
      sampleConnector(),
      "pass",
    ],
    [
      "one ampere over",
      { kind: "cap-terminal-temperature", temperature: { value: 60, unit: "Cel" } },
      carrying(166),
      sampleConnector(),
      "fail",
    ],
    [
      "at 75 C in Fahrenheit",
      { kind: "cap-terminal-temperature", temperature: { value: 167, unit: "degF" } },
      carrying(200),
      sampleConnector(),
      "pass",
    ],
    [
      "a neutral, one ampere over",
      { kind: "cap-terminal-temperature", temperature: { value: 60, unit: "Cel" } },
      carrying(166, { role: "neutral" }),
      sampleConnector(),
      "fail",
    ],
    [
      "no circuit",
      { kind: "cap-terminal-temperature", temperature: { value: 60, unit: "Cel" } },
      (({ circuit: _, ...rest }: Joint): Joint => rest)(sampleJoint()),
      sampleConnector(),
      "missing",
    ],
    [
      "between two columns",
      { kind: "cap-terminal-temperature", temperature: { value: 74, unit: "Cel" } },
      carrying(200),
      sampleConnector(),
      "fail",
    ],
    [
      "two sets",
      { kind: "cap-terminal-temperature", temperature: { value: 60, unit: "Cel" } },
      sampleJoint({ circuit: { sets: 2, loadA: 330 } }),
      sampleConnector(),
      "pass",
    ],
    [
      "no load, but a device it carries",
      { kind: "cap-terminal-temperature", temperature: { value: 60, unit: "Cel" } },
      sampleJoint({ circuit: { sets: 1, protection: { kind: "device", ratingA: 165 } } }),
      sampleConnector(),
      "pass",
    ],
    [
      "no load, and a device beyond it",
      { kind: "cap-terminal-temperature", temperature: { value: 60, unit: "Cel" } },
      sampleJoint({ circuit: { sets: 1, protection: { kind: "device", ratingA: 200 } } }),
      sampleConnector(),
      "missing",
    ],
    [
      "no load",
      { kind: "cap-terminal-temperature", temperature: { value: 60, unit: "Cel" } },
      sampleJoint({ circuit: { sets: 1 } }),
      sampleConnector(),
      "missing",
    ],
    [
      "a size without an ampacity",
      { kind: "cap-terminal-temperature", temperature: { value: 60, unit: "Cel" } },
      carrying(10, { conductors: [sampleConductor({ size: "35 mm2" })] }),
      sampleConnector(),
      "missing",
    ],
    [
      "a ground",
      { kind: "cap-terminal-temperature", temperature: { value: 60, unit: "Cel" } },
      carrying(999, { role: "equipment-ground" }),
      sampleConnector(),
      "pass",
    ],
  ],
  "cap-conductors-per-opening": [
    ["one", { kind: "cap-conductors-per-opening", conductors: 1 }, sampleJoint(), sampleConnector(), "pass"],
    [
      "two in one opening",
      { kind: "cap-conductors-per-opening", conductors: 1 },
      sampleJoint({ conductors: [sampleConductor({ count: 2 })] }),
      sampleConnector({ openings: [sampleOpening({ conductorsMax: 2 })] }),
      "fail",
    ],
    [
      "two where two may",
      { kind: "cap-conductors-per-opening", conductors: 2 },
      sampleJoint({ conductors: [sampleConductor({ count: 2 })] }),
      sampleConnector({ openings: [sampleOpening({ conductorsMax: 2 })] }),
      "pass",
    ],
  ],
  "cap-size": [
    [
      "at the size",
      { kind: "cap-size", families: ["set-screw-lug-one-hole"], size: "3/0 AWG" },
      sampleJoint(),
      sampleConnector(),
      "pass",
    ],
    [
      "one size over",
      { kind: "cap-size", families: ["set-screw-lug-one-hole"], size: "3/0 AWG" },
      sized("4/0 AWG"),
      sampleConnector(),
      "fail",
    ],
    [
      "one size under",
      { kind: "cap-size", families: ["set-screw-lug-one-hole"], size: "3/0 AWG" },
      sized("2/0 AWG"),
      sampleConnector(),
      "pass",
    ],
    [
      "by area, not by text",
      { kind: "cap-size", families: ["set-screw-lug-one-hole"], size: "4/0 AWG" },
      sized("250 kcmil"),
      sampleConnector(),
      "fail",
    ],
    [
      "another family",
      { kind: "cap-size", families: ["split-bolt"], size: "14 AWG" },
      sampleJoint(),
      sampleConnector(),
      "pass",
    ],
  ],
};

test("every kind of rule is tried, kept and broken", () => {
  expect(Object.keys(KINDS).sort()).toEqual([...PROJECT_RULE_KINDS].sort());
  for (const tried of Object.values(KINDS)) {
    const outcomes = new Set(tried.map(([, , , , expected]) => expected));
    expect(outcomes).toContain("pass");
    expect(outcomes).toContain("fail");
  }
});

describe.each(PROJECT_RULE_KINDS)("%s", (kind) => {
  test.each(KINDS[kind])("%s", (_, demand, joint, connector, expected) => {
    const finding = check([rule(demand)], joint, connector);
    expect(finding?.outcome).toBe(expected);
    expect(finding?.rule).toBe("project-rules");
    expect(finding?.cite).toEqual({ standard: "rules of the project", edition: "", locator: `R-1: ${SOURCE}` });
    expect(finding?.sentence).toMatch(/^[A-Z].*\.$/);
    if (expected === "fail") expect(finding?.fix).not.toBe("");
    if (expected === "missing")
      expect(finding?.missing.map(({ path }) => path).join()).toMatch(/^(?:joint|connector)\//);
  });
});

describe("the equipment's own terminal", () => {
  test("is no part that could be forbidden by its number", () => {
    const subject = sampleSubject(
      withProjectRules(sampleJoint(), [rule({ kind: "forbid-part", partNumbers: ["X-1"] })]),
    );
    const answer = projectRules.check({ ...subject, origin: "joint/equipment/terminal" }, nfpa70Edition2023);
    expect(answer.outcome).toBe("pass");
  });
});

describe("the scope of a rule", () => {
  const never: ProjectDemand = { kind: "forbid-construction", constructions: ["set-screw"] };
  test.each<[string, ProjectScope, Partial<Joint>, string]>([
    ["its function", { functions: ["termination"] }, {}, "fail"],
    ["another function", { functions: ["splice", "tap"] }, {}, "not-applicable"],
    ["its role", { roles: ["neutral", "phase"] }, {}, "fail"],
    ["another role", { roles: ["bonding"] }, {}, "not-applicable"],
    ["its area", { areas: ["Roof"] }, { area: "Roof" }, "fail"],
    ["another area", { areas: ["Roof"] }, { area: "Cellar" }, "not-applicable"],
    ["an area not given", { areas: ["Roof"] }, {}, "missing"],
    ["its equipment", { equipmentKinds: ["panelboard"] }, {}, "fail"],
    ["other equipment", { equipmentKinds: ["motor"] }, {}, "not-applicable"],
    ["equipment not given", { equipmentKinds: ["motor"] }, { equipment: { tag: "P-1" } }, "missing"],
    ["its place", { locations: ["dry"] }, {}, "fail"],
    ["another place", { locations: ["wet"] }, {}, "not-applicable"],
    ["its size", { fromSize: "3/0 AWG" }, {}, "fail"],
    [
      "a smaller size",
      { fromSize: "3/0 AWG" },
      { conductors: [sampleConductor({ size: "2/0 AWG" })] },
      "not-applicable",
    ],
    ["a larger size", { fromSize: "3/0 AWG" }, { conductors: [sampleConductor({ size: "250 kcmil" })] }, "fail"],
    [
      "one conductor of the size",
      { fromSize: "3/0 AWG" },
      { conductors: [sampleConductor({ size: "14 AWG" }), sampleConductor()] },
      "fail",
    ],
    ["not known, but out by its role", { areas: ["Roof"], roles: ["bonding"] }, {}, "not-applicable"],
  ])("%s", (_, scope, joint, expected) => {
    expect(outcome([rule(never, scope)], sampleJoint(joint))).toBe(expected);
  });

  test("that is not known is not asked for where the rule is kept anyway", () => {
    const kept: ProjectDemand = { kind: "require-construction", constructions: ["set-screw"] };
    expect(outcome([rule(kept, { areas: ["Roof"] })])).toBe("pass");
  });

  test.each<[string, ProjectScope, readonly (keyof Joint)[]]>([
    ["joint/area", { areas: ["Roof"] }, ["area"]],
    ["joint/equipment/kind", { equipmentKinds: ["motor"] }, ["equipment"]],
    ["joint/place/location", { locations: ["wet"] }, ["place"]],
    ["joint/area", { locations: ["dry"], areas: ["Roof"] }, ["area"]],
  ])("that is not known is asked for by its fact: %s", (path, scope, without) => {
    const joint = sampleJoint();
    for (const fact of without) Reflect.deleteProperty(joint, fact);
    expect(check([rule(never, scope)], joint)?.missing.map((fact) => fact.path)).toEqual([path]);
  });

  test("of no rule is met: the joint is the same object", () => {
    const joint = sampleJoint();
    expect(withProjectRules(joint, [rule(never, { roles: ["bonding"] })])).toBe(joint);
  });

  test("is not left by a size that cannot be read", () => {
    const held = withProjectRules(sized("5/0 AWG"), [rule(never, { fromSize: "1/0 AWG" })]).projectRules;
    expect(held).toMatchObject([{ id: "R-1", within: "from 1/0 AWG" }]);
  });
});

describe("several rules", () => {
  const broken = rule({ kind: "forbid-construction", constructions: ["set-screw"] }, undefined, "R-broken");
  const kept = rule({ kind: "forbid-metal", metals: ["aluminum"] }, undefined, "R-kept");
  const open = rule({ kind: "require-body", platings: ["tin"] }, undefined, "R-open");

  test("one that is broken decides before one that is not known, whatever their order", () => {
    expect(outcome([kept, open, broken])).toBe("fail");
    expect(outcome([broken, open, kept])).toBe("fail");
    expect(check([kept, open, broken])?.sentence).toContain("R-broken");
  });
  test("one that is not known decides before those that are kept", () => {
    expect(outcome([kept, open])).toBe("missing");
  });
  test("are all named where all are kept", () => {
    const two = rule({ kind: "require-holes", holes: 1 }, { functions: ["splice"] }, "R-elsewhere");
    expect(check([kept, two])?.sentence).toBe("The joint keeps the project's own rules: R-kept.");
    const other = rule({ kind: "require-construction", constructions: ["set-screw"] }, undefined, "R-too");
    expect(check([kept, two, other])?.sentence).toBe("The joint keeps the project's own rules: R-kept, R-too.");
  });
});

describe("without rules", () => {
  test("nothing is said, and the joint is the same object", () => {
    const joint = sampleJoint();
    expect(withProjectRules(joint, undefined)).toBe(joint);
    expect(withProjectRules(joint, [])).toBe(joint);
    expect(outcome([])).toBe("not-applicable");
    for (const joint of [sampleJoint(), sampleJoint({ projectRules: [] })])
      expect(projectRules.check(sampleSubject(joint), nfpa70Edition2023)).toEqual({
        rule: "project-rules",
        outcome: "not-applicable",
        because: "the project has no rule of its own for this joint",
      });
  });
});
