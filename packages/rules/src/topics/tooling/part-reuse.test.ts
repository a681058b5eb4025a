import { describe, expect, test } from "vitest";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { partReuse } from "./part-reuse.js";

function check(reusable: boolean, partState?: "new" | "reused") {
  const joint = partState === undefined ? sampleJoint() : sampleJoint({ partState });
  return partReuse.check(sampleSubject(joint, sampleConnector({ reusable })), nfpa70Edition2023);
}

describe("use of a part a second time (NFPA 70-2023 110.3(B))", () => {
  test("a part for one use is refused when it was used before", () => {
    expect(check(false, "reused")).toMatchObject({ outcome: "fail", required: "a new part", offered: "a reused part" });
  });
  test("a new one passes without a condition", () => {
    expect(check(false, "new")).toMatchObject({ outcome: "pass", conditions: [] });
  });
  test("where its state is not given the acceptance hangs on a new part", () => {
    expect(check(false)).toMatchObject({ outcome: "pass", conditions: [{ duty: "use-new-part" }] });
  });
  test("in a joint made again the state of the part is asked for", () => {
    const subject = sampleSubject(sampleJoint({ rework: true }), sampleConnector({ reusable: false }));
    expect(partReuse.check(subject, nfpa70Edition2023)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/partState" }],
    });
    const renewed = sampleSubject(
      sampleJoint({ rework: true, partState: "new" }),
      sampleConnector({ reusable: false }),
    );
    expect(partReuse.check(renewed, nfpa70Edition2023).outcome).toBe("pass");
  });
  test("a part that may be used again is not judged", () => {
    expect(check(true, "reused").outcome).toBe("not-applicable");
    expect(check(true).outcome).toBe("not-applicable");
  });
});
