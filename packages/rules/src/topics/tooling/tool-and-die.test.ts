import { describe, expect, test } from "vitest";
import type { Connector, Tooling } from "../../core/connector.js";
import type { Joint } from "../../core/joint.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { toolAndDie } from "./tool-and-die.js";

const LISTED: Tooling = { tool: "PRESS-1", die: "DIE-A", crimps: 2 };
const LUG: Partial<Connector> = { family: "compression-lug-one-hole", construction: "compression" };

function check(tooling: Tooling | undefined, planned?: Joint["tooling"], part: Partial<Connector> = LUG) {
  const connector = sampleConnector(tooling === undefined ? part : { ...part, tooling });
  const joint = planned === undefined ? sampleJoint() : sampleJoint({ tooling: planned });
  return toolAndDie.check(sampleSubject(joint, connector), nfpa70Edition2023);
}

describe("tool and die (NFPA 70-2023 110.3(B))", () => {
  test("the listed tool and die pass, on the condition to press and record so", () => {
    const finding = check(LISTED, { tool: "PRESS-1", die: "DIE-A" });
    expect(finding).toMatchObject({
      outcome: "pass",
      conditions: [{ duty: "press-as-listed" }, { duty: "record-crimp" }],
    });
    expect("conditions" in finding && finding.conditions[0]?.sentence).toBe(
      "Press with tool PRESS-1, die DIE-A, 2 crimps.",
    );
  });
  test.each([
    [{ tool: "PRESS-1" }, "Press with tool PRESS-1, the number of crimps its instructions give."],
    [{ tool: "PRESS-1", crimps: 1 }, "Press with tool PRESS-1, 1 crimp."],
    [{ tool: "PRESS-1", die: "DIE-A", crimps: 3 }, "Press with tool PRESS-1, die DIE-A, 3 crimps."],
  ] as const)("the press is told as far as it is named: %j", (tooling, sentence) => {
    const words = "die" in tooling ? "tool PRESS-1, die DIE-A" : "tool PRESS-1";
    expect(check(tooling)).toMatchObject({
      outcome: "pass",
      sentence: `The connector is made with ${words}.`,
      required: words,
      conditions: [
        { sentence },
        {
          sentence:
            "die" in tooling
              ? "Record the tool, the die and the mark the die leaves on the barrel."
              : "Record the tool and the mark it leaves on the barrel.",
        },
      ],
    });
  });
  test("where nothing is settled yet the listed ones become the condition", () => {
    expect(check(LISTED)).toMatchObject({
      outcome: "pass",
      conditions: [{ duty: "press-as-listed" }, { duty: "record-crimp" }],
    });
  });
  test("another die or another tool is refused", () => {
    expect(check(LISTED, { die: "DIE-B" })).toMatchObject({
      outcome: "fail",
      required: "die DIE-A",
      offered: "die DIE-B",
    });
    expect(check(LISTED, { tool: "PRESS-2" })).toMatchObject({
      outcome: "fail",
      required: "tool PRESS-1",
      offered: "tool PRESS-2",
    });
    expect(check(LISTED, { tool: "PRESS-1", die: "DIE-B" }).outcome).toBe("fail");
  });
  test("a connector without its tool, or without the die that is planned, is asked about", () => {
    expect(check(undefined)).toMatchObject({ outcome: "missing", missing: [{ path: "connector/tooling" }] });
    expect(check({ tool: "PRESS-1" }, { die: "DIE-A" })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/tooling/die" }],
      cite: { locator: "110.3(B)" },
      required: "tool PRESS-1",
      offered: "die DIE-A",
    });
    expect(check({ tool: "PRESS-1" }, { tool: "PRESS-2", die: "DIE-A" }).outcome).toBe("fail");
  });
  test("a weld hangs on mold, clean metal and a hot-work permit", () => {
    expect(check(undefined, undefined, { family: "exothermic-weld", construction: "weld" })).toMatchObject({
      outcome: "pass",
      sentence: "The joint is welded; mold and charge must be the ones for this conductor and shape.",
      conditions: [{ duty: "match-mold-and-charge" }, { duty: "clean-for-weld" }, { duty: "hot-work-permit" }],
    });
  });
  test("a mold or a charge other than the one named is refused too", () => {
    const weld: Partial<Connector> = { family: "exothermic-weld", construction: "weld" };
    const named: Tooling = { tool: "MOLD-1", die: "CHARGE-2" };
    expect(check(named, { die: "CHARGE-3" }, weld).outcome).toBe("fail");
    expect(check(named, { tool: "MOLD-1", die: "CHARGE-2" }, weld)).toMatchObject({
      outcome: "pass",
      conditions: [{ duty: "match-mold-and-charge" }, {}, {}],
    });
  });
  test("another part with a tool of its own is held to it, with no condition", () => {
    expect(check({ tool: "DRIVER-1" }, { tool: "DRIVER-2" }, {}).outcome).toBe("fail");
    expect(check({ tool: "DRIVER-1" }, { tool: "DRIVER-1" }, {})).toMatchObject({ outcome: "pass", conditions: [] });
  });
  test("what is neither pressed nor welded is not judged", () => {
    expect(check(undefined, undefined, {}).outcome).toBe("not-applicable");
  });
});
