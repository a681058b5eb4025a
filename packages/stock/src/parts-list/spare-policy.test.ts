import { CONNECTOR_FAMILIES } from "@landfast/rules";
import { describe, expect, it } from "vitest";
import { partKindOf } from "./part-kind.js";
import { JUDGEMENT_SPARES, NO_SPARES, PART_KINDS, sparesFor } from "./spare-policy.js";

describe("spares", () => {
  it.each([
    // hand: 5 % of 84 is 4.2, up to 5
    ["compression", 84, 5],
    // hand: 5 % of 40 is 2 exactly; of 41 it is 2.05, up to 3; of 39 it is 1.95, up to 2
    ["compression", 39, 2],
    ["compression", 40, 2],
    ["compression", 41, 3],
    // hand: 5 % of 1 is 0.05, up to 1, raised to 2
    ["compression", 1, 2],
    ["compression", 0, 0],
    // hand: 3 % of 33 is 0.99, of 34 it is 1.02
    ["mechanical", 33, 1],
    ["mechanical", 34, 2],
    // hand: 10 % of 100 is 10, of 101 it is 10.1
    ["twist-on", 100, 10],
    ["twist-on", 101, 11],
    ["shear-head-tap", 3, 1],
    ["reducer", 500, 0],
    ["lug-kit", 500, 0],
  ] as const)("of %s parts by the policy to begin with: %d used, %d spare", (kind, used, spare) => {
    expect(sparesFor(JUDGEMENT_SPARES.rules[kind], used, undefined)).toEqual({ parts: spare, leadTimeIsAsked: false });
  });

  it("are one where a replacement is long in coming, and the lead time is asked for where it decides", () => {
    const rule = { percent: "0", atLeast: 0, longLead: { overDays: 21, atLeast: 1 } };
    // hand: 21 days is not over 21 days
    expect(sparesFor(rule, 6, 20).parts).toBe(0);
    expect(sparesFor(rule, 6, 21).parts).toBe(0);
    expect(sparesFor(rule, 6, 22).parts).toBe(1);
    expect(sparesFor(rule, 6, undefined)).toEqual({ parts: 0, leadTimeIsAsked: true });
  });

  it("are none without a policy", () => {
    for (const kind of PART_KINDS) expect(sparesFor(NO_SPARES.rules[kind], 1000, undefined).parts).toBe(0);
  });

  it("come from a policy that says it is judgement", () => {
    expect(JUDGEMENT_SPARES.basis).toBe("judgement");
    expect(Object.keys(JUDGEMENT_SPARES.rules).sort()).toEqual([...PART_KINDS].sort());
  });

  it("know what every family counts as", () => {
    for (const family of CONNECTOR_FAMILIES) expect(PART_KINDS).toContain(partKindOf(family));
    for (const family of CONNECTOR_FAMILIES.filter((one) => one.startsWith("compression-")))
      expect(partKindOf(family)).toBe("compression");
  });
});
