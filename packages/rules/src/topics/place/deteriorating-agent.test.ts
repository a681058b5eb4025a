import { describe, expect, test } from "vitest";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { deterioratingAgent } from "./deteriorating-agent.js";

function check(agent: string | undefined, withstands: readonly string[] | undefined) {
  const joint = sampleJoint({
    place: { location: "wet", ...(agent === undefined ? {} : { deterioratingAgent: agent }) },
  });
  const connector = sampleConnector(withstands === undefined ? {} : { withstands });
  return deterioratingAgent.check(sampleSubject(joint, connector), nfpa70Edition2023);
}

describe("deteriorating agent (NFPA 70-2023 110.11, 300.6)", () => {
  test("a part stated for the agent passes", () => {
    expect(check("hydrogen sulfide", ["salt air", "hydrogen sulfide"]).outcome).toBe("pass");
  });
  test("a part stated only for something else is refused", () => {
    expect(check("hydrogen sulfide", ["salt air"])).toMatchObject({
      outcome: "fail",
      offered: "stated for salt air",
      fix: "a connector stated to withstand hydrogen sulfide, or move the joint out of it",
    });
    expect(check("hydrogen sulfide", [])).toMatchObject({ outcome: "fail", offered: "stated for no agent" });
  });
  test("a part of which nothing is stated is asked about", () => {
    expect(check("hydrogen sulfide", undefined)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/withstands" }],
    });
  });
  test("where nothing attacks metal the rule is silent", () => {
    expect(check(undefined, undefined).outcome).toBe("not-applicable");
  });
  test("a joint of which no place is given is not asked about", () => {
    const { place: _place, ...apart } = sampleJoint();
    expect(deterioratingAgent.check(sampleSubject(apart), nfpa70Edition2023)).toMatchObject({
      rule: "deteriorating-agent",
      outcome: "not-applicable",
    });
  });
});
