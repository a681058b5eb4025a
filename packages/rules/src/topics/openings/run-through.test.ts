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
    { construction: "compression", family: "parallel-tap" },
    { construction: "compression", family: "gutter-tap" },
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
  test("a refusal decides before a question, whichever conductor it is about", () => {
    const runs = [sampleConductor({ duty: "run" }), sampleConductor({ duty: "run", uncut: true, size: "2/0 AWG" })];
    const finding = runThrough.check(
      sampleSubject(
        sampleJoint({ function: "tap", conductors: runs }),
        sampleConnector({ functions: ["tap"], openings: [sampleOpening({ id: "a" }), sampleOpening({ id: "b" })] }),
      ),
      nfpa70Edition2023,
    );
    expect(finding).toMatchObject({ outcome: "fail", sentence: expect.stringContaining("2/0 AWG") as string });
  });
  test("the duty of the other conductor tells which one runs through", () => {
    const conductors = [sampleConductor(), sampleConductor({ duty: "tap", size: "6 AWG" })];
    const openings = [sampleOpening({ id: "a" }), sampleOpening({ id: "b" })];
    const finding = runThrough.check(
      sampleSubject(sampleJoint({ function: "tap", conductors }), sampleConnector({ functions: ["tap"], openings })),
      nfpa70Edition2023,
    );
    expect(finding).toMatchObject({ missing: [{ path: "joint/conductors/0/uncut" }] });
  });
  test("the tap opening of a part that closes around its run takes an end", () => {
    const openings = [sampleOpening({ id: "a", duty: "tap" }), sampleOpening({ id: "b", duty: "run" })];
    expect(tapped({ uncut: true }, { construction: "insulation-piercing", openings })).toMatchObject({
      outcome: "fail",
      sentence: expect.stringContaining('opening "a"') as string,
    });
  });
  test("every fact that decides is a step", () => {
    const finding = tapped({ uncut: true });
    expect(finding.outcome === "fail" && finding.steps.map((step) => step.kind === "given" && step.origin)).toEqual([
      "connector/construction",
      "connector/family",
      "joint/conductors/0/duty",
      "joint/conductors/0/uncut",
      false,
    ]);
  });
  test("is no question of splices and terminations", () => {
    expect(runThrough.check(sampleSubject(), nfpa70Edition2023).outcome).toBe("not-applicable");
  });
  test("a conductor that is said to leave and to stay uncut is judged as uncut", () => {
    const conductors = [sampleConductor({ duty: "run", uncut: false }), sampleConductor({ duty: "tap", uncut: true })];
    const openings = [sampleOpening({ id: "a" }), sampleOpening({ id: "b" })];
    expect(
      runThrough.check(
        sampleSubject(sampleJoint({ function: "tap", conductors }), sampleConnector({ functions: ["tap"], openings })),
        nfpa70Edition2023,
      ).outcome,
    ).toBe("fail");
  });
  test("what is asked first decides before a conductor that lies well", () => {
    const openings = [sampleOpening({ id: "a", duty: "run" }), sampleOpening({ id: "b" })];
    const judge = (first: Partial<ConductorGroup>, second: Partial<ConductorGroup>) =>
      runThrough.check(
        sampleSubject(
          sampleJoint({ function: "tap", conductors: [sampleConductor(first), sampleConductor(second)] }),
          sampleConnector({ functions: ["tap"], openings }),
        ),
        nfpa70Edition2023,
      );
    // hand: the first lies in a run opening; the second in one for ends, and is not said to be cut
    expect(judge({ duty: "run", uncut: true }, { duty: "run" })).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/conductors/1/uncut" }],
    });
    expect(judge({ duty: "run", uncut: true }, { duty: "run", uncut: true }).outcome).toBe("fail");
  });
});
