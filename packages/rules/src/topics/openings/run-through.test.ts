import { describe, expect, test } from "vitest";
import type { ConductorGroup } from "../../core/conductor.js";
import type { Connector } from "../../core/connector.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import {
  sampleConductor,
  sampleConnector,
  sampleJoint,
  sampleOpening,
  sampleSubject,
} from "../../samples/sample-joint.js";
import { runThrough } from "./run-through.js";

function tapped(run: Partial<ConductorGroup>, part: Partial<Connector> = {}) {
  const joint = sampleJoint({
    function: "tap",
    conductors: [sampleConductor({ duty: "run", ...run }), sampleConductor({ duty: "tap", size: "6 AWG" })],
  });
  const connector = sampleConnector({
    functions: ["tap"],
    openings: [sampleOpening({ id: "a" }), sampleOpening({ id: "b" })],
    ...part,
  });
  return runThrough.check(sampleSubject(joint, connector), nfpa70Edition2023);
}

// hand: an opening for ends takes no conductor that goes on
describe("a run that stays in one piece (NFPA 70-2023 110.3(B))", () => {
  test("is refused by a port that takes only its end", () => {
    expect(tapped({ uncut: true })).toMatchObject({ outcome: "fail" });
  });
  test.each([
    { construction: "insulation-piercing" },
    { construction: "split-bolt" },
    { construction: "bolted-clamp" },
    { construction: "compression", family: "compression-tap" },
    { openings: [sampleOpening({ id: "a", duty: "run" }), sampleOpening({ id: "b", duty: "tap" })] },
  ] as const)("lies in what closes around it: %o", (part) => {
    expect(tapped({ uncut: true }, part).outcome).toBe("pass");
    expect(tapped({}, part).outcome).toBe("pass");
  });
  test("is asked about where it decides, and a cut run is left to the other rules", () => {
    expect(tapped({})).toMatchObject({ outcome: "missing", missing: [{ path: "joint/conductors/0/uncut" }] });
    expect(tapped({ uncut: false }).outcome).toBe("not-applicable");
  });
  test("which conductor runs through is asked for where none is said to, and the part takes only ends", () => {
    const conductors = [sampleConductor(), sampleConductor({ size: "6 AWG" })];
    const unsaid = (part: Partial<Connector>, group: Partial<ConductorGroup> = {}) =>
      runThrough.check(
        sampleSubject(
          sampleJoint({ function: "tap", conductors: [sampleConductor(group), ...conductors.slice(1)] }),
          sampleConnector({
            functions: ["tap"],
            openings: [sampleOpening({ id: "a" }), sampleOpening({ id: "b" })],
            ...part,
          }),
        ),
        nfpa70Edition2023,
      );
    expect(unsaid({})).toMatchObject({ outcome: "missing", missing: [{ path: "joint/conductors/0/duty" }] });
    expect(unsaid({}, { uncut: true }).outcome).toBe("fail");
    expect(unsaid({ construction: "split-bolt" }).outcome).toBe("pass");
  });
  test("is no question of splices and terminations", () => {
    expect(runThrough.check(sampleSubject(), nfpa70Edition2023).outcome).toBe("not-applicable");
  });
});
