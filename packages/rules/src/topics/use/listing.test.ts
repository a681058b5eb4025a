import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { listing } from "./listing.js";

function listed(standards: readonly string[], conductor: Partial<ConductorGroup> = {}) {
  const connector = sampleConnector({ listings: standards.map((standard) => ({ standard })) });
  const joint = sampleJoint({ conductors: [sampleConductor(conductor)] });
  return listing.check(sampleSubject(joint, connector), nfpa70Edition2023);
}

describe("listing of the connector (NFPA 70-2023 110.3(B))", () => {
  test("a stated listing passes, none is asked for", () => {
    expect(listed(["UL 486A-486B"]).outcome).toBe("pass");
    expect(listed([])).toMatchObject({ outcome: "missing", missing: [{ path: "connector/listings" }] });
  });
  // published: scope of UL 486C, from memory: 6 AWG is the largest; solid aluminum to 10 AWG
  test.each([
    ["copper", "class-B", "8 AWG", "pass"],
    ["copper", "class-B", "6 AWG", "pass"],
    ["copper", "class-B", "4 AWG", "fail"],
    ["aluminum", "class-B", "6 AWG", "pass"],
    ["aluminum", "class-B", "4 AWG", "fail"],
    ["aluminum", "solid", "12 AWG", "pass"],
    ["aluminum", "solid", "10 AWG", "pass"],
    ["aluminum", "solid", "8 AWG", "fail"],
  ] as const)("UL 486C with %s %s %s: %s", (metal, stranding, size, outcome) => {
    expect(listed(["UL 486C"], { metal, stranding, size }).outcome).toBe(outcome);
    expect(listed(["UL 486C", "UL 486A-486B"], { metal, stranding, size }).outcome).toBe("pass");
  });
});
