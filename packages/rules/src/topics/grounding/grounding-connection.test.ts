import { describe, expect, test } from "vitest";
import { CONDUCTOR_ROLES, type ConductorRole } from "../../core/conductor.js";
import type { Connector } from "../../core/connector.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { groundingConnection } from "./grounding-connection.js";

function connected(role: ConductorRole, part: Partial<Connector>) {
  return groundingConnection.check(sampleSubject(sampleJoint({ role }), sampleConnector(part)), nfpa70Edition2023);
}

describe("means of connecting grounding conductors (NFPA 70-2023 250.8(A))", () => {
  test("a listed connector serves", () => {
    expect(connected("equipment-ground", { listings: [{ standard: "UL 467" }] })).toMatchObject({
      outcome: "pass",
      conditions: [],
      offered: "listed, UL 467",
    });
  });
  test("every listing of it is named", () => {
    const listings = [{ standard: "UL 467" }, { standard: "UL 486A-486B" }];
    expect(connected("bonding", { listings })).toMatchObject({
      offered: "listed, UL 467, UL 486A-486B",
      sentence: "The connector is listed (UL 467, UL 486A-486B), a means the code names for grounding conductors.",
    });
  });
  test("one without a known listing is asked about", () => {
    expect(connected("equipment-ground", { listings: [] })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/listings" }],
    });
  });
  test("a weld is a means by itself", () => {
    expect(connected("bonding", { construction: "weld", listings: [] }).outcome).toBe("pass");
  });
  test.each(CONDUCTOR_ROLES)("a %s conductor is judged if it is for grounding", (role) => {
    expect(connected(role, {}).outcome).toBe(role === "phase" || role === "neutral" ? "not-applicable" : "pass");
  });
});
