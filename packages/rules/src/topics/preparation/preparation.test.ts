import { describe, expect, test } from "vitest";
import type { ConductorMetal } from "../../core/conductor.js";
import type { Connector } from "../../core/connector.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { aluminumPreparation } from "./aluminum-preparation.js";
import { preparation } from "./preparation.js";

function subject(metals: readonly ConductorMetal[], compound?: Connector["compound"], change: Partial<Connector> = {}) {
  const conductors = metals.map((metal) => sampleConductor({ metal }));
  return sampleSubject(
    sampleJoint({ conductors }),
    sampleConnector({ ...(compound === undefined ? {} : { compound }), ...change }),
  );
}

function duties(...facts: Parameters<typeof subject>) {
  const finding = aluminumPreparation.check(subject(...facts), nfpa70Edition2023);
  return "conditions" in finding ? finding.conditions.map((one) => one.duty) : finding.outcome;
}

const answer = (...facts: Parameters<typeof subject>) => preparation(subject(...facts), nfpa70Edition2023);

describe("aluminum preparation (NFPA 70-2023 110.3(B), 110.14)", () => {
  test.each([
    ["required", ["brush-aluminum", "apply-compound"]],
    ["pre-filled", ["brush-aluminum"]],
    ["not-needed", ["brush-aluminum"]],
    [undefined, ["brush-aluminum", "compound-per-instructions"]],
  ] as const)("aluminum, compound %s: %j", (compound, expected) => {
    expect(duties(["aluminum"], compound)).toEqual(expected);
    expect(duties(["copper", "aluminum"], compound)).toEqual(expected);
  });
  test("copper alone: the rule is silent", () => {
    expect(duties(["copper"], "required")).toBe("not-applicable");
  });
  test("copper-clad aluminum is not brushed through its copper", () => {
    expect(duties(["copper-clad-aluminum"])).toEqual(["compound-per-instructions"]);
    expect(duties(["copper-clad-aluminum", "aluminum"])).toEqual(["brush-aluminum", "compound-per-instructions"]);
  });
  test("a piercing connector leaves the insulation on, so nothing is brushed", () => {
    expect(duties(["aluminum"], "pre-filled", { construction: "insulation-piercing" })).toEqual([]);
  });
  test("the sentence tells the work", () => {
    expect(aluminumPreparation.check(subject(["aluminum"], "required"), nfpa70Edition2023)).toMatchObject({
      outcome: "pass",
      sentence: "Aluminum is landed: brush it bright; compound required.",
      cite: { locator: "110.3(B)" },
    });
  });
});

describe("preparation", () => {
  test("the brush is common practice, the compound the connector's instructions", () => {
    expect(answer(["aluminum"], "required")).toMatchObject({
      brush: { needed: true, level: "trade-practice", cite: { standard: "common practice, no published source" } },
      compound: { need: "required", level: "connector-marking", cite: { locator: "110.3(B)" } },
    });
  });
  test("copper: no brush; a compound the instructions ask for is left to them", () => {
    expect(answer(["copper"])).toMatchObject({ brush: { needed: false }, compound: { need: "not-needed" } });
    expect(answer(["copper"], "required").compound.need).toBe("per-instructions");
    expect(answer(["copper"], "pre-filled").compound.need).toBe("pre-filled");
    expect(answer(["copper"], "not-needed").compound.need).toBe("not-needed");
  });
  test("aluminum without a statement is never guessed", () => {
    expect(answer(["aluminum"]).compound.need).toBe("per-instructions");
  });
});
