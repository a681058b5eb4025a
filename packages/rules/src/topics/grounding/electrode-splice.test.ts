import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import type { Connector } from "../../core/connector.js";
import { CONSTRUCTIONS } from "../../core/connector.js";
import type { Joint } from "../../core/joint.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { electrodeSplice } from "./electrode-splice.js";

function spliced(part: Partial<Connector>, change: Partial<Joint> = {}) {
  const joint = sampleJoint({
    function: "splice",
    role: "electrode-conductor",
    conductors: [sampleConductor({ count: 2, size: "4 AWG", insulation: "bare" })],
    ...change,
  });
  return electrodeSplice.check(sampleSubject(joint, sampleConnector(part)), nfpa70Edition2023);
}

describe("splice in a grounding electrode conductor (NFPA 70-2023 250.64(C))", () => {
  test("compression needs the grounding listing", () => {
    expect(spliced({ construction: "compression", grounding: { listed: true, electrodes: [] } })).toMatchObject({
      outcome: "pass",
      conditions: [],
    });
    expect(spliced({ construction: "compression", grounding: { listed: false, electrodes: [] } }).outcome).toBe("fail");
    expect(spliced({ construction: "compression" })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "connector/grounding" }],
    });
  });
  test("a weld serves", () => {
    expect(spliced({ construction: "weld" }).outcome).toBe("pass");
  });
  // published: nothing else is allowed, listed for grounding or not
  test.each(CONSTRUCTIONS.filter((one) => one !== "compression" && one !== "weld"))("%s is refused", (construction) => {
    expect(spliced({ construction, grounding: { listed: true, electrodes: [] } }).outcome).toBe("fail");
  });
  test.each([
    ["set-screw", "set screw"],
    ["insulation-piercing", "insulation piercing"],
    ["split-bolt", "split bolt"],
    ["bolted-clamp", "bolted clamp"],
    ["twist-on", "twist-on"],
    ["spring", "spring"],
    ["binding-screw", "binding screw"],
  ] as const)("a %s is named in the trade's words", (construction, offered) => {
    expect(spliced({ construction })).toMatchObject({ offered });
  });
  test("the refusal says what is asked for", () => {
    expect(spliced({ construction: "split-bolt" })).toMatchObject({
      required: "irreversible compression listed for grounding, or exothermic weld",
      offered: "split bolt",
    });
  });
  describe("a tap to the common conductor of several disconnects (250.64(D)(1))", () => {
    const LISTED = { construction: "split-bolt", grounding: { listed: true, electrodes: [] } } as const;
    const tap = (part: Partial<Connector>, run: Partial<ConductorGroup> = { duty: "run", uncut: true }) =>
      spliced(part, {
        function: "tap",
        conductors: [
          sampleConductor({ size: "3/0 AWG", insulation: "bare", ...run }),
          sampleConductor({ size: "4 AWG", insulation: "bare", duty: "tap" }),
        ],
      });
    test("a listed connector serves on an uncut conductor", () => {
      expect(tap(LISTED)).toMatchObject({
        outcome: "pass",
        cite: { locator: "250.64(D)(1)" },
        conditions: [{ duty: "electrode-tap-of-one-disconnect" }],
      });
      expect(tap({ ...LISTED, construction: "set-screw" }).outcome).toBe("pass");
    });
    test("not on one that is cut, and not without the listing", () => {
      expect(tap(LISTED, { duty: "run", uncut: false }).outcome).toBe("fail");
      expect(tap({ ...LISTED, grounding: { listed: false, electrodes: [] } }).outcome).toBe("fail");
      expect(tap({ ...LISTED, construction: "compression" }, { duty: "run", uncut: false }).outcome).toBe("pass");
    });
    test("without the listing it is refused, whichever is the common conductor", () => {
      expect(tap({ ...LISTED, grounding: { listed: false, electrodes: [] } }, {}).outcome).toBe("fail");
    });
    test.each([
      [true, true, "pass"],
      [true, false, "fail"],
      [false, true, "fail"],
      [true, undefined, "missing"],
      [undefined, true, "missing"],
      [undefined, false, "fail"],
      [false, undefined, "fail"],
    ] as const)("of two that run through none may be cut: uncut %s and %s: %s", (first, second, outcome) => {
      const run = (uncut: boolean | undefined) =>
        sampleConductor({ size: "3/0 AWG", duty: "run", ...(uncut === undefined ? {} : { uncut }) });
      const conductors = [run(first), run(second), sampleConductor({ size: "4 AWG", duty: "tap" })];
      expect(spliced(LISTED, { function: "tap", conductors }).outcome).toBe(outcome);
    });
    test("what is not known is asked for", () => {
      expect(tap({ construction: "split-bolt" })).toMatchObject({ missing: [{ path: "connector/grounding" }] });
      expect(tap(LISTED, { duty: "run" })).toMatchObject({ missing: [{ path: "joint/conductors/0/uncut" }] });
      expect(tap(LISTED, {})).toMatchObject({ missing: [{ path: "joint/conductors/0/duty" }] });
    });
  });
  test("terminations and other roles are not judged", () => {
    expect(spliced({ construction: "split-bolt" }, { function: "termination" }).outcome).toBe("not-applicable");
    expect(spliced({ construction: "split-bolt" }, { role: "bonding" }).outcome).toBe("not-applicable");
  });
});
