import { describe, expect, test } from "vitest";
import type { Connector } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { Joint } from "../../core/joint.js";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2020 } from "../../rulesets/nfpa70-2020/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { lineSideMark } from "./line-side-mark.js";

function check(edition: Edition, lineSide: Connector["lineSide"], installedOn?: string, change: Partial<Joint> = {}) {
  const basis = {
    ruleSet: edition.ruleSet,
    edition: edition.edition,
    ...(installedOn === undefined ? {} : { installedOn }),
  };
  const joint = sampleJoint({
    function: "tap",
    circuit: { sets: 1, protection: { kind: "service" } },
    basis,
    ...change,
  });
  return lineSideMark.check(sampleSubject(joint, sampleConnector(lineSide === undefined ? {} : { lineSide })), edition);
}

const duties = (finding: ReturnType<typeof check>) =>
  "conditions" in finding ? finding.conditions.map((one) => one.duty) : [];

describe("line-side mark (NFPA 70 230.46)", () => {
  test("2023: a marked connector passes and its mark is photographed, an unmarked one is refused", () => {
    const finding = check(nfpa70Edition2023, "marked");
    expect(finding.outcome).toBe("pass");
    expect(duties(finding)).toEqual(["photograph-mark"]);
    expect(check(nfpa70Edition2023, "unmarked")).toMatchObject({ outcome: "fail", offered: "no line-side mark" });
  });
  test("2023: an unknown mark is asked for by name", () => {
    expect(check(nfpa70Edition2023, undefined)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/lineSide" }],
    });
  });

  // hand: the 2020 text takes effect on 2023-01-01; that day itself counts
  test.each([
    ["2022-12-31", "pass"],
    ["2023-01-01", "fail"],
    ["2023-01-02", "fail"],
  ])("2020: an unmarked connector installed on %s: %s", (date, outcome) => {
    expect(check(nfpa70Edition2020, "unmarked", date).outcome).toBe(outcome);
  });
  test("2020: the day before, an unknown mark does not decide; from the day on it does", () => {
    expect(check(nfpa70Edition2020, undefined, "2022-12-31").outcome).toBe("pass");
    expect(check(nfpa70Edition2020, undefined, "2023-01-01")).toMatchObject({
      missing: [{ path: "connector/lineSide" }],
    });
  });
  test("2020: the date is asked for unless the connector is marked", () => {
    expect(check(nfpa70Edition2020, "unmarked")).toMatchObject({ missing: [{ path: "joint/basis/installedOn" }] });
    expect(check(nfpa70Edition2020, "marked").outcome).toBe("pass");
  });
  test.each(["", "1/1/2022", "2022", "2022-13-01"])("2020: a date written %j is no date", (date) => {
    expect(check(nfpa70Edition2020, "unmarked", date)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/basis/installedOn" }],
    });
  });

  test("2017: no mark is asked for, but the owner is told of the later rule", () => {
    for (const mark of ["unmarked", undefined] as const) {
      const finding = check(nfpa70Edition2017, mark);
      expect(finding.outcome).toBe("pass");
      expect(duties(finding)).toEqual(["advise-owner-later-rule"]);
    }
    expect(duties(check(nfpa70Edition2017, "marked"))).toEqual([]);
  });

  test("only splices and taps of phase and neutral service conductors are judged", () => {
    const fed = { circuit: { sets: 1, protection: { kind: "device", ratingA: 200 } } } as const;
    expect(check(nfpa70Edition2023, "unmarked", undefined, fed).outcome).toBe("not-applicable");
    expect(check(nfpa70Edition2023, "unmarked", undefined, { function: "termination" }).outcome).toBe("not-applicable");
    expect(check(nfpa70Edition2023, "unmarked", undefined, { role: "bonding" }).outcome).toBe("not-applicable");
    expect(check(nfpa70Edition2023, "unmarked", undefined, { role: "neutral", function: "splice" }).outcome).toBe(
      "fail",
    );
  });
  test("without the protection it is asked for, unless the answer could not matter", () => {
    const unknown = { circuit: { sets: 1 } };
    expect(check(nfpa70Edition2023, "unmarked", undefined, unknown)).toMatchObject({
      missing: [{ path: "joint/circuit/protection" }],
    });
    expect(check(nfpa70Edition2023, undefined, undefined, unknown)).toMatchObject({
      missing: [{ path: "joint/circuit/protection" }],
    });
    expect(check(nfpa70Edition2023, "marked", undefined, unknown).outcome).toBe("not-applicable");
    expect(check(nfpa70Edition2017, "unmarked", undefined, unknown).outcome).toBe("not-applicable");
    expect(check(nfpa70Edition2020, "unmarked", "2022-12-31", unknown).outcome).toBe("not-applicable");
    expect(check(nfpa70Edition2020, "unmarked", "2023-01-01", unknown).outcome).toBe("missing");
    expect(check(nfpa70Edition2020, "unmarked", undefined, unknown).outcome).toBe("missing");
  });
});
