import { describe, expect, test } from "vitest";
import type { Connector } from "../../core/connector.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { rework } from "./rework-joint.js";

function check(again: boolean | undefined, connector: Partial<Connector> = {}) {
  return rework.check(
    sampleSubject(sampleJoint(again === undefined ? {} : { rework: again }), sampleConnector(connector)),
    nfpa70Edition2023,
  );
}

const duties = (finding: ReturnType<typeof check>) =>
  "conditions" in finding ? finding.conditions.map((one) => one.duty) : [];

describe("rework (NFPA 70-2023 110.3(B), common practice)", () => {
  test("a set-screw joint is cut back, made anew, tightened once, recorded and surveyed", () => {
    const finding = check(true);
    expect(finding.outcome).toBe("pass");
    expect(duties(finding)).toEqual([
      "cut-back",
      "inspect-terminal",
      "supersede-record",
      "thermal-survey",
      "one-torque-pass",
    ]);
  });
  test("what is pressed has no torque pass, unless its pad is bolted", () => {
    const pressed = { construction: "compression", screws: [] } as const;
    expect(duties(check(true, pressed))).not.toContain("one-torque-pass");
    expect(
      duties(check(true, { ...pressed, mounting: { kind: "pad", pattern: { holes: 1, bolt: "1/2" } } })),
    ).toContain("one-torque-pass");
  });
  test("what is turned by hand, or has nothing to turn, has no torque pass either", () => {
    for (const kind of ["hand", "none"] as const)
      expect(duties(check(true, { screws: [{ id: "main", drive: { kind } }] }))).not.toContain("one-torque-pass");
    expect(
      duties(
        check(true, {
          screws: [
            { id: "main", drive: { kind: "none" } },
            { id: "second", drive: { kind: "external-hex" } },
          ],
        }),
      ),
    ).toContain("one-torque-pass");
  });
  test("a first-time joint, or one of which nothing is said, is not judged", () => {
    expect(check(false).outcome).toBe("not-applicable");
    expect(check(undefined).outcome).toBe("not-applicable");
  });
});

describe("a screw tightened before (NFPA 70-2023 110.3(B); common practice, no published source)", () => {
  const asked = (facts: Parameters<typeof sampleJoint>[0], connector: Partial<Connector> = {}) =>
    rework.check(sampleSubject(sampleJoint(facts), sampleConnector(connector)), nfpa70Edition2023);

  test("is not turned again", () => {
    const finding = asked({ tightenedBefore: true });
    expect(finding.outcome).toBe("fail");
    expect("fix" in finding && finding.fix).toContain("rework");
    expect(asked({ tightenedBefore: true, rework: false }).outcome).toBe("fail");
  });
  test("may be tightened once where the joint is made again", () => {
    const finding = asked({ tightenedBefore: true, rework: true });
    expect(finding.outcome).toBe("pass");
    expect(duties(finding)).toContain("one-torque-pass");
  });
  test("is not judged where none was, or where nothing is said", () => {
    expect(asked({ tightenedBefore: false }).outcome).toBe("not-applicable");
    expect(asked({}).outcome).toBe("not-applicable");
  });
  test("is not judged where no tool turns a screw on the conductor", () => {
    const pressed = { construction: "compression", screws: [] } as const;
    expect(asked({ tightenedBefore: true }, pressed).outcome).toBe("not-applicable");
    expect(
      asked({ tightenedBefore: true }, { ...pressed, mounting: { kind: "pad", pattern: { holes: 1, bolt: "1/2" } } })
        .outcome,
    ).toBe("not-applicable");
    for (const kind of ["hand", "none"] as const)
      expect(asked({ tightenedBefore: true }, { screws: [{ id: "main", drive: { kind } }] }).outcome).toBe(
        "not-applicable",
      );
  });
});
