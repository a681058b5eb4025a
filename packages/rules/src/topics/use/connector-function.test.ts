import { describe, expect, test } from "vitest";
import type { ConductorRole } from "../../core/conductor.js";
import type { ConnectorFamily } from "../../core/connector.js";
import type { JointFunction } from "../../core/joint-function.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { connectorFunction } from "./connector-function.js";

function check(
  made: JointFunction,
  functions: readonly JointFunction[],
  family: ConnectorFamily = "in-line-splice",
  role: ConductorRole = "phase",
) {
  return connectorFunction.check(
    sampleSubject(sampleJoint({ function: made, role }), sampleConnector({ functions, family })),
    nfpa70Edition2023,
  );
}

describe("kind of joint and conductor (NFPA 70-2023 110.3(B))", () => {
  test.each([
    ["splice", ["splice"], "pass"],
    ["splice", ["termination", "splice"], "pass"],
    ["splice", ["termination"], "fail"],
    ["tap", ["splice"], "fail"],
    ["termination", [], "fail"],
  ] as const)("a %s with a connector for %s: %s", (made, functions, outcome) => {
    expect(check(made, functions)).toMatchObject({ outcome, conditions: [] });
  });
  test.each([
    ["rod-clamp", "electrode-conductor", "pass"],
    ["rod-clamp", "bonding", "pass"],
    ["rod-clamp", "phase", "fail"],
    ["pipe-clamp", "neutral", "fail"],
    ["pipe-clamp", "equipment-ground", "fail"],
    ["rebar-clamp", "electrode-conductor", "pass"],
    ["ground-bar", "equipment-ground", "pass"],
    ["ground-bar", "neutral", "fail"],
    ["ground-bar-lug", "phase", "fail"],
    ["ground-bar-lug", "electrode-conductor", "pass"],
    ["neutral-bar", "neutral", "pass"],
    ["neutral-bar", "phase", "fail"],
    ["neutral-bar", "equipment-ground", "pass"],
    ["set-screw-lug-one-hole", "equipment-ground", "pass"],
  ] as const)("a %s for a %s conductor: %s", (family, role, outcome) => {
    expect(check("termination", ["termination"], family, role).outcome).toBe(outcome);
  });
  test("a ground on a neutral bar hangs on what the equipment says; a neutral does not", () => {
    expect(check("termination", ["termination"], "neutral-bar", "equipment-ground")).toMatchObject({
      conditions: [{ duty: "grounds-on-neutral-bar" }],
    });
    expect(check("termination", ["termination"], "neutral-bar", "neutral")).toMatchObject({ conditions: [] });
  });
  test.each([
    ["phase", "fail"],
    ["neutral", "fail"],
    ["equipment-ground", "pass"],
    ["electrode-conductor", "pass"],
    ["bonding", "pass"],
  ] as const)("a weld mold for building steel with a %s conductor: %s", (role, outcome) => {
    const part = sampleConnector({
      family: "exothermic-weld",
      construction: "weld",
      grounding: { listed: true, electrodes: ["building-steel"] },
    });
    expect(connectorFunction.check(sampleSubject(sampleJoint({ role }), part), nfpa70Edition2023).outcome).toBe(
      outcome,
    );
    // Molds that join conductors, and parts that are no weld although listed with electrodes, serve any role.
    const { grounding: _grounding, ...unsaid } = part;
    for (const any of [
      { ...part, grounding: { listed: true, electrodes: [] } },
      unsaid,
      { ...part, family: "split-bolt", construction: "split-bolt" },
    ] as const)
      expect(connectorFunction.check(sampleSubject(sampleJoint({ role }), any), nfpa70Edition2023).outcome).toBe(
        "pass",
      );
  });
  test("the sentence reads as English", () => {
    expect(check("termination", ["termination"], "pipe-clamp", "equipment-ground")).toMatchObject({
      sentence: "A pipe clamp is not for an equipment ground.",
    });
    expect(check("termination", ["termination"], "ground-bar", "equipment-ground")).toMatchObject({
      sentence: "A ground bar serves an equipment ground.",
    });
  });
});
