import { describe, expect, test } from "vitest";
import type { ConductorRole } from "../../core/conductor.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { voltageRating } from "./voltage-rating.js";

function check(voltageV: number | "unmarked" | undefined, systemV: number | undefined) {
  const joint = sampleJoint({ circuit: systemV === undefined ? { sets: 1 } : { sets: 1, voltageV: systemV } });
  const { voltageV: rated, ...unrated } = sampleConnector();
  expect(rated).toBe(600);
  const connector = voltageV === undefined ? unrated : { ...unrated, voltageV };
  return voltageRating.check(sampleSubject(joint, connector), nfpa70Edition2023);
}

describe("voltage rating (NFPA 70-2023 110.4)", () => {
  // hand: 480 <= 600
  test("a 600 V connector serves 480 V", () => {
    expect(check(600, 480).outcome).toBe("pass");
  });
  // hand: the limit itself is allowed; one volt over is not
  test.each([
    [600, 599, "pass"],
    [600, 600, "pass"],
    [600, 601, "fail"],
    [300, 480, "fail"],
  ] as const)("a %d V connector on %d V: %s", (rated, system, outcome) => {
    expect(check(rated, system).outcome).toBe(outcome);
  });
  test("an unmarked or unknown rating is asked for by name", () => {
    expect(check("unmarked", 480)).toMatchObject({ outcome: "missing", missing: [{ path: "connector/voltageV" }] });
    expect(check(undefined, 480)).toMatchObject({ outcome: "missing", missing: [{ path: "connector/voltageV" }] });
  });
  test("an unknown system voltage is asked for by name", () => {
    expect(check(600, undefined)).toMatchObject({ outcome: "missing", missing: [{ path: "joint/circuit/voltageV" }] });
  });
  test("a rating that is not a number never passes", () => {
    expect(check(Number.NaN, 480).outcome).toBe("fail");
  });
  test("grounding conductors are not judged", () => {
    const subject = sampleSubject(sampleJoint({ role: "equipment-ground" }));
    expect(voltageRating.check(subject, nfpa70Edition2023).outcome).toBe("not-applicable");
  });
  test("a joint of which no circuit is given is asked for its voltage", () => {
    const { circuit: _circuit, ...apart } = sampleJoint();
    expect(voltageRating.check(sampleSubject(apart), nfpa70Edition2023)).toMatchObject({
      rule: "voltage-rating",
      missing: [{ path: "joint/circuit/voltageV" }],
      required: "connector rated at least at the system voltage",
      offered: "600 V",
    });
  });
  test("a neutral is judged like a phase; bonding and electrode conductors are not", () => {
    const outcome = (role: ConductorRole) =>
      voltageRating.check(sampleSubject(sampleJoint({ role, circuit: { sets: 1, voltageV: 601 } })), nfpa70Edition2023)
        .outcome;
    expect(outcome("neutral")).toBe("fail");
    expect(outcome("bonding")).toBe("not-applicable");
    expect(outcome("electrode-conductor")).toBe("not-applicable");
  });
  test.each([
    [600, 480, "480 V", "600 V"],
    [300, 480, "480 V", "300 V"],
    ["unmarked", 480, "480 V", "unmarked"],
    [undefined, 480, "480 V", "not known"],
  ] as const)("rated %s on %d V: required %s, offered %s", (rated, system, required, offered) => {
    expect(check(rated, system)).toMatchObject({ required, offered, cite: { locator: "110.4" } });
  });
});
