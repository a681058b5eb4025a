import { describe, expect, test } from "vitest";
import type { Connector } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { Equipment, Joint } from "../../core/joint.js";
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
  test("a joint of which no circuit is given is asked for what protects it", () => {
    const { circuit: _circuit, ...apart } = sampleJoint({ function: "tap" });
    const finding = lineSideMark.check(sampleSubject(apart, sampleConnector()), nfpa70Edition2023);
    expect(finding).toMatchObject({ rule: "line-side-mark", missing: [{ path: "joint/circuit/protection" }] });
  });
  test("a joint without a basis of its own has no date of installation", () => {
    const joint = sampleJoint({ function: "tap", circuit: { sets: 1, protection: { kind: "service" } } });
    expect(lineSideMark.check(sampleSubject(joint, sampleConnector()), nfpa70Edition2020)).toMatchObject({
      missing: [{ path: "joint/basis/installedOn" }],
    });
    const unprotected = sampleJoint({ function: "tap", circuit: { sets: 1 } });
    expect(lineSideMark.check(sampleSubject(unprotected, sampleConnector()), nfpa70Edition2020)).toMatchObject({
      missing: [{ path: "joint/circuit/protection" }],
    });
  });
  test.each(["x2022-12-31", "2022-12-31x", "2022-00-10", "2022-01-00", "2022-01-32", "22-01-01"])(
    "2020: %s is no date, with the protection unknown too",
    (date) => {
      expect(check(nfpa70Edition2020, "unmarked", date).outcome).toBe("missing");
      expect(check(nfpa70Edition2020, "unmarked", date, { circuit: { sets: 1 } }).outcome).toBe("missing");
    },
  );
  test.each(["2022-10-09", "2022-09-10", "2022-12-30", "2022-11-21", "2022-01-31"])("2020: %s is a date", (date) => {
    expect(check(nfpa70Edition2020, "unmarked", date).outcome).toBe("pass");
  });

  describe("what is required and what is there", () => {
    const MARK = "mark for the line side of service equipment";
    // published: 2017 asks for none, 2020 from 2023-01-01 on, 2023 always
    test.each([
      [nfpa70Edition2017, "no mark under this edition", []],
      [nfpa70Edition2020, `${MARK}, from 2023-01-01 on`, ["photograph-mark"]],
      [nfpa70Edition2023, MARK, ["photograph-mark"]],
    ] as const)("$edition, marked: %s", (edition, required, conditions) => {
      const finding = check(edition, "marked");
      expect(finding).toMatchObject({ outcome: "pass", required, offered: "marked", cite: { locator: "230.46" } });
      expect(duties(finding)).toEqual(conditions);
    });
    test.each([
      ["unmarked", "no line-side mark"],
      [undefined, "not known"],
    ] as const)("%s is offered as %s", (lineSide, offered) => {
      expect(check(nfpa70Edition2017, lineSide)).toMatchObject({ offered, required: "no mark under this edition" });
      expect(check(nfpa70Edition2020, lineSide, "2022-12-31")).toMatchObject({
        offered,
        required: `${MARK}, from 2023-01-01 on`,
      });
      expect(check(nfpa70Edition2020, lineSide)).toMatchObject({ offered, required: MARK });
      expect(check(nfpa70Edition2023, lineSide, undefined, { circuit: { sets: 1 } })).toMatchObject({
        offered,
        required: `${MARK}, if the conductors are service conductors`,
      });
    });
    test("a refusal rests on the service, the date and the mark", () => {
      const finding = check(nfpa70Edition2020, "unmarked", "2023-01-01");
      if (!("steps" in finding)) throw new Error(finding.because);
      expect(finding.steps.map(({ kind, value, uses }) => [kind, value, uses])).toEqual([
        ["given", "service, no device of the premises", []],
        ["given", "2023-01-01", []],
        ["stated", "2023-01-01", []],
        ["concluded", true, [2, 3]],
        ["given", "unmarked", []],
        ["concluded", "fail", [1, 4, 5]],
      ]);
    });
    test("what comes later is told: in writing in 2017, as advice before the day in 2020", () => {
      const finding = check(nfpa70Edition2017, "unmarked");
      expect(finding).toMatchObject({
        conditions: [{ duty: "advise-owner-later-rule", cite: { locator: "230.46" } }],
        advice: [expect.stringContaining("2023-01-01") as string],
      });
      expect(check(nfpa70Edition2020, "unmarked", "2022-12-31")).toMatchObject({
        conditions: [],
        advice: [expect.stringContaining("2023-01-01") as string],
      });
      expect(check(nfpa70Edition2023, "unmarked")).toMatchObject({ advice: [] });
    });
  });
});

describe("line-side mark of a power distribution block", () => {
  interface Block {
    readonly edition: Edition;
    readonly lineSide?: Connector["lineSide"];
    readonly kind?: Equipment["kind"];
    readonly joint?: Partial<Joint>;
  }
  function block({ edition, lineSide, kind, joint }: Block) {
    return lineSideMark.check(
      sampleSubject(
        sampleJoint({
          function: "splice",
          equipment: kind === undefined ? { tag: "W-1" } : { tag: "W-1", kind },
          circuit: { sets: 1, protection: { kind: "service" } },
          basis: { ruleSet: "nfpa70", edition: edition.edition, installedOn: "2021-06-01" },
          ...joint,
        }),
        sampleConnector({
          family: "power-distribution-block",
          insulated: true,
          ...(lineSide === undefined ? {} : { lineSide }),
        }),
      ),
      edition,
    );
  }
  // published: 376.56(B)(1) and, in 2017, 314.28(E)(1); 230.46 of 2020 asks for it of blocks at once, of other connectors
  // from 2023-01-01 on
  const PLACES = [
    [nfpa70Edition2017, "wireway", "fail", "376.56(B)"],
    [nfpa70Edition2017, "box", "fail", "314.28(E)"],
    [nfpa70Edition2017, "switchboard", "pass", "230.46"],
    [nfpa70Edition2020, "wireway", "fail", "376.56(B)"],
    [nfpa70Edition2020, "box", "fail", "230.46"],
    [nfpa70Edition2020, "switchboard", "fail", "230.46"],
    [nfpa70Edition2020, undefined, "fail", "230.46"],
    [nfpa70Edition2023, "wireway", "fail", "376.56(B)"],
    [nfpa70Edition2023, "box", "fail", "230.46"],
    [nfpa70Edition2023, "switchboard", "fail", "230.46"],
    [nfpa70Edition2023, undefined, "fail", "230.46"],
  ] as const;
  test.each(PLACES)("$edition, unmarked in a %s: %s", (edition, kind, outcome, locator) => {
    expect(block({ edition, lineSide: "unmarked", kind })).toMatchObject({ outcome, cite: { locator } });
  });
  test.each(PLACES)(
    "$edition, marked in a %s: passes; photographed where the mark is asked for",
    (edition, kind, outcome, locator) => {
      const finding = block({ edition, lineSide: "marked", kind });
      expect(finding).toMatchObject({ outcome: "pass", cite: { locator } });
      expect(duties(finding)).toEqual(outcome === "fail" ? ["photograph-mark"] : []);
    },
  );
  test.each(PLACES)(
    "$edition, not looked at in a %s: asked for where the mark is",
    (edition, kind, outcome, locator) => {
      const finding = block({ edition, kind });
      if (outcome === "pass") expect(finding.outcome).toBe("pass");
      else expect(finding).toMatchObject({ missing: [{ path: "connector/lineSide" }], cite: { locator } });
    },
  );
  test.each(PLACES)(
    "$edition, unmarked in a %s, service or not unknown: asked for where the mark is",
    (edition, kind, outcome) => {
      expect(block({ edition, lineSide: "unmarked", kind, joint: { circuit: { sets: 1 } } }).outcome).toBe(
        outcome === "pass" ? "not-applicable" : "missing",
      );
    },
  );
  test("2017: where it stands is asked for unless it is marked", () => {
    for (const lineSide of ["unmarked", undefined] as const) {
      expect(block({ edition: nfpa70Edition2017, lineSide })).toMatchObject({
        missing: [{ path: "joint/equipment/kind" }],
        required: "mark for the line side of service equipment",
        offered: lineSide === undefined ? "not known" : "no line-side mark",
      });
      expect(block({ edition: nfpa70Edition2017, lineSide, joint: { circuit: { sets: 1 } } })).toMatchObject({
        missing: [{ path: "joint/circuit/protection" }],
      });
    }
    expect(block({ edition: nfpa70Edition2017, lineSide: "marked" })).toMatchObject({
      outcome: "pass",
      required: "no mark under this edition",
      cite: { locator: "230.46" },
    });
  });
  test("a block is judged where conductors end in it, too; other lugs are not", () => {
    const given = { edition: nfpa70Edition2023, lineSide: "unmarked", kind: "wireway" } as const;
    expect(block({ ...given, joint: { function: "termination" } }).outcome).toBe("fail");
    expect(block({ ...given, joint: { function: "termination", role: "equipment-ground" } }).outcome).toBe(
      "not-applicable",
    );
  });
  test("a block without equipment around it is asked where it stands", () => {
    const { equipment: _equipment, ...apart } = sampleJoint({
      function: "splice",
      circuit: { sets: 1, protection: { kind: "service" } },
    });
    const part = sampleConnector({ family: "power-distribution-block", lineSide: "unmarked" });
    expect(lineSideMark.check(sampleSubject(apart, part), nfpa70Edition2017)).toMatchObject({
      missing: [{ path: "joint/equipment/kind" }],
    });
  });
});
