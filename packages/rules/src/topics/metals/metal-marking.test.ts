import { describe, expect, test } from "vitest";
import type { ConductorMetal } from "../../core/conductor.js";
import type { Connector } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { Joint } from "../../core/joint.js";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2020 } from "../../rulesets/nfpa70-2020/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { metalMarking } from "./metal-marking.js";

function check(metals: readonly ConductorMetal[], marking: string | undefined) {
  const { metalMarking: _marking, ...unmarked } = sampleConnector();
  const connector = marking === undefined ? unmarked : { ...unmarked, metalMarking: marking };
  const joint = sampleJoint({ conductors: metals.map((metal) => sampleConductor({ metal })) });
  return metalMarking.check(sampleSubject(joint, connector), nfpa70Edition2023);
}

function onDevice(
  marking: string,
  metal: ConductorMetal,
  ratingA: number | undefined,
  edition: Edition = nfpa70Edition2023,
) {
  const circuit = ratingA === undefined ? { sets: 1 } : { sets: 1, protection: { kind: "device", ratingA } as const };
  const joint = sampleJoint({ conductors: [sampleConductor({ metal })], circuit });
  return metalMarking.check(sampleSubject(joint, sampleConnector({ ...DEVICE, metalMarking: marking })), edition);
}

const DEVICE: Partial<Connector> = { family: "wiring-device-terminal", construction: "binding-screw" };

describe("metal marking (NFPA 70-2023 110.14, UL 486A-486B marking)", () => {
  // published: UL 486A-486B marking codes
  test.each([
    ["CU", "copper", "pass"],
    ["CU", "aluminum", "fail"],
    ["CU9", "copper-clad-aluminum", "fail"],
    ["AL", "aluminum", "pass"],
    ["AL7", "copper", "fail"],
    ["AL9", "copper-clad-aluminum", "fail"],
    ["AL9CU", "copper", "pass"],
    ["AL9CU", "aluminum", "pass"],
    ["AL7CU", "copper-clad-aluminum", "pass"],
    ["AL-CU-INTERMIX-DRY", "aluminum", "pass"],
  ] as const)("%s with %s: %s", (marking, metal, outcome) => {
    expect(check([metal], marking).outcome).toBe(outcome);
  });
  // published: a part without a metal mark is for copper only
  test("an unmarked part takes copper and refuses aluminum, and says what it assumed", () => {
    const copper = check(["copper"], "unmarked");
    expect(copper.outcome).toBe("pass");
    expect("steps" in copper && copper.steps.some(({ kind }) => kind === "assumed")).toBe(true);
    expect(check(["aluminum"], "unmarked")).toMatchObject({
      outcome: "fail",
      offered: "no metal marking",
      cite: { standard: "UL 486A-486B" },
    });
  });
  test("a joint without conductors is not judged", () => {
    expect(check([], "CU")).toMatchObject({ rule: "metal-marking", outcome: "not-applicable" });
  });
  test.each([
    [["copper"], "AL9CU", "marked for copper", "AL9CU"],
    [["copper", "copper"], "AL9CU", "marked for copper", "AL9CU"],
    [["aluminum", "copper", "aluminum"], "AL9CU", "marked for aluminum and copper", "AL9CU"],
    [["copper-clad-aluminum"], "AL9CU", "marked for copper-clad aluminum", "AL9CU"],
    [["copper"], "unmarked", "marked for copper", "no metal marking"],
    [["copper"], undefined, "marked for copper", "not known"],
  ] as const)("%j on %s: %s, offered %s", (metals, marking, required, offered) => {
    expect(check(metals, marking)).toMatchObject({ required, offered });
  });
  test("each metal is compared once, and the refusal says what would take it", () => {
    const finding = check(["aluminum", "copper", "aluminum"], "AL9CU");
    expect("steps" in finding && finding.steps.filter(({ kind }) => kind === "compared")).toHaveLength(2);
    expect(check(["copper"], "AL7")).toMatchObject({
      fix: "a connector marked for copper",
      cite: { locator: "110.14(A)" },
    });
    expect(check(["copper", "aluminum"], "CU")).toMatchObject({
      fix: "a connector marked for aluminum and copper (AL-CU), or a splice listed for both to a copper conductor",
      sentence: expect.stringContaining("3/0 AWG class B aluminum") as string,
      cite: { locator: "110.14(A)" },
    });
  });
  test("every metal of the joint must be named, in any order", () => {
    expect(check(["copper", "aluminum"], "CU").outcome).toBe("fail");
    expect(check(["aluminum", "copper"], "CU").outcome).toBe("fail");
    expect(check(["aluminum", "copper"], "AL9CU").outcome).toBe("pass");
  });
  test("a marking that was not looked at is asked for, for copper too", () => {
    for (const metal of ["copper", "aluminum", "copper-clad-aluminum"] as const)
      expect(check([metal], undefined)).toMatchObject({
        outcome: "missing",
        missing: [{ path: "connector/metalMarking" }],
      });
  });
  test("a marking that stands for nothing known is asked about, and the known ones are named", () => {
    const finding = check(["copper"], "Q5");
    expect(finding).toMatchObject({ outcome: "missing", missing: [{ path: "connector/metalMarking" }] });
    expect("sentence" in finding && finding.sentence).toContain("AL7CU, AL9CU");
  });
  // published: 404.14(C), 406.3(C): devices of 15 and 20 A on aluminum are marked CO/ALR
  test.each([
    ["CO/ALR", "aluminum", "pass"],
    ["CO/ALR", "copper", "pass"],
    ["CO/ALR", "copper-clad-aluminum", "pass"],
    ["AL-CU", "aluminum", "fail"],
    ["AL-CU", "copper", "pass"],
    ["AL-CU", "copper-clad-aluminum", "pass"],
    ["unmarked", "aluminum", "fail"],
    ["unmarked", "copper", "pass"],
    ["unmarked", "copper-clad-aluminum", "pass"],
  ] as const)("a wiring device on 20 A, %s, with %s: %s", (marking, metal, outcome) => {
    expect(onDevice(marking, metal, 20).outcome).toBe(outcome);
  });
  // hand: 20 A is still such a device, 21 A and 25 A are not
  test.each([
    ["AL-CU", 15, "fail"],
    ["AL-CU", 20, "fail"],
    ["AL-CU", 21, "pass"],
    ["AL-CU", 30, "pass"],
    ["CO/ALR", 15, "pass"],
    ["CO/ALR", 20, "pass"],
    ["CO/ALR", 21, "fail"],
    ["CU", 30, "fail"],
    ["AL-CU", undefined, "missing"],
    ["CO/ALR", undefined, "pass"],
    ["CU", undefined, "fail"],
    ["AL-CU", Number.NaN, "fail"],
    ["CO/ALR", Number.NaN, "fail"],
  ] as const)("aluminum on a wiring device marked %s, circuit of %s A: %s", (marking, ratingA, outcome) => {
    expect(onDevice(marking, "aluminum", ratingA).outcome).toBe(outcome);
  });
  // published: 404.14(D)(1) of 2023: without the mark for copper and copper-clad aluminum; earlier editions are silent.
  // UL 486A-486B marking: larger devices without a mark are for copper, as any other part
  test.each([
    [nfpa70Edition2017, 20, "missing"],
    [nfpa70Edition2017, 21, "fail"],
    [nfpa70Edition2017, undefined, "missing"],
    [nfpa70Edition2020, 15, "missing"],
    [nfpa70Edition2020, 20, "missing"],
    [nfpa70Edition2020, 21, "fail"],
    [nfpa70Edition2020, 30, "fail"],
    [nfpa70Edition2023, 15, "pass"],
    [nfpa70Edition2023, 20, "pass"],
    [nfpa70Edition2023, 21, "fail"],
    [nfpa70Edition2023, 30, "fail"],
    [nfpa70Edition2023, Number.NaN, "fail"],
    [nfpa70Edition2023, undefined, "missing"],
  ] as const)(
    "$edition.edition: copper-clad aluminum on a device without a mark, %s A: %s",
    (edition, ratingA, outcome) => {
      expect(onDevice("unmarked", "copper-clad-aluminum", ratingA, edition).outcome).toBe(outcome);
    },
  );
  test("copper-clad aluminum without a mark: what is asked, and what a refusal or an acceptance rests on", () => {
    // 2023 knows the answer from the circuit; before, only another device or its maker can give it.
    expect(onDevice("unmarked", "copper-clad-aluminum", undefined)).toMatchObject({
      missing: [{ path: "joint/circuit/protection" }],
    });
    for (const edition of [nfpa70Edition2017, nfpa70Edition2020])
      expect(onDevice("unmarked", "copper-clad-aluminum", 20, edition)).toMatchObject({
        missing: [{ path: "connector/metalMarking" }],
        offered: "no metal marking",
      });
    expect(onDevice("unmarked", "copper-clad-aluminum", 30)).toMatchObject({
      required: "marked for copper-clad aluminum",
      offered: "no metal marking",
      cite: { standard: "UL 486A-486B" },
      fix: expect.stringContaining("AL-CU") as string,
    });
    const taken = onDevice("unmarked", "copper-clad-aluminum", 20);
    if (!("steps" in taken)) throw new Error(taken.because);
    const stated = taken.steps.find(({ label }) => label === "metals of such a device without the mark");
    const small = taken.steps.find(({ label }) => label === "the wiring device is of 15 or 20 A");
    expect(stated).toMatchObject({ value: ["copper", "copper-clad-aluminum"], uses: [small?.id] });
    expect(small).toMatchObject({ value: true, cite: { locator: "404.14(D) and 406.3(D)" } });
    expect(taken.steps.find(({ label }) => label === "rating of the circuit's device")).toMatchObject({
      origin: "joint/circuit/protection/ratingA",
      value: 20,
      unit: "A",
    });
    expect(taken.steps.find(({ label }) => label === "largest wiring device that this is said of")).toMatchObject({
      value: 20,
      unit: "A",
    });
    expect(taken.steps.find(({ label }) => label === "metal of the conductor")).toMatchObject({
      origin: "joint/conductors/0/metal",
    });
    expect(taken.steps.at(-1)).toMatchObject({ kind: "compared", relation: "in", value: true });
  });
  test("other protection than a device says nothing of the wiring device", () => {
    for (const protection of [{ kind: "service" }, { kind: "motor-circuit" }] as const) {
      const judge = (metal: ConductorMetal, marking: string) =>
        metalMarking.check(
          sampleSubject(
            sampleJoint({ conductors: [sampleConductor({ metal })], circuit: { sets: 1, protection } }),
            sampleConnector({ ...DEVICE, metalMarking: marking }),
          ),
          nfpa70Edition2023,
        ).outcome;
      expect(judge("copper-clad-aluminum", "unmarked")).toBe("missing");
      expect(judge("aluminum", "AL-CU")).toBe("missing");
      expect(judge("aluminum", "CO/ALR")).toBe("pass");
    }
  });
  test("a joint of which no circuit is given is asked for it where it decides", () => {
    const { circuit: _circuit, ...apart } = sampleJoint({ conductors: [sampleConductor({ metal: "aluminum" })] });
    const judge = (metal: ConductorMetal, marking: string) =>
      metalMarking.check(
        sampleSubject(
          { ...apart, conductors: [sampleConductor({ metal })] },
          sampleConnector({ ...DEVICE, metalMarking: marking }),
        ),
        nfpa70Edition2023,
      );
    expect(judge("aluminum", "AL-CU")).toMatchObject({ missing: [{ path: "joint/circuit/protection" }] });
    expect(judge("copper-clad-aluminum", "unmarked")).toMatchObject({
      missing: [{ path: "joint/circuit/protection" }],
    });
    expect(judge("copper", "AL-CU").outcome).toBe("pass");
    expect(judge("aluminum", "CO/ALR").outcome).toBe("pass");
  });
  // hand: two conductors on one device of 20 A; each metal by itself decides as above
  test.each([
    ["unmarked", ["copper", "copper-clad-aluminum"], 20, "pass"],
    ["unmarked", ["copper-clad-aluminum", "copper"], 20, "pass"],
    ["unmarked", ["copper-clad-aluminum", "copper-clad-aluminum"], 20, "pass"],
    ["unmarked", ["copper-clad-aluminum", "aluminum"], 20, "fail"],
    ["unmarked", ["copper", "copper-clad-aluminum"], 30, "fail"],
    ["unmarked", ["copper", "copper-clad-aluminum"], undefined, "missing"],
    ["unmarked", ["copper-clad-aluminum", "aluminum"], undefined, "fail"],
    ["AL-CU", ["copper", "aluminum"], 20, "fail"],
    ["AL-CU", ["copper", "aluminum"], 30, "pass"],
    ["AL-CU", ["copper", "copper-clad-aluminum"], undefined, "pass"],
    ["CO/ALR", ["copper", "copper-clad-aluminum"], 20, "pass"],
    ["CO/ALR", ["copper", "copper-clad-aluminum"], 21, "fail"],
    ["CO/ALR", ["copper", "copper"], 30, "pass"],
    ["CU", ["copper", "aluminum"], 20, "fail"],
    ["CU", ["copper", "aluminum"], undefined, "fail"],
    ["AL-CU", ["copper", "aluminum"], undefined, "missing"],
  ] as const)("a device, %s, with %j on %s A: %s", (marking, metals, ratingA, outcome) => {
    const circuit = ratingA === undefined ? { sets: 1 } : { sets: 1, protection: { kind: "device", ratingA } as const };
    const joint = sampleJoint({ conductors: metals.map((metal) => sampleConductor({ metal })), circuit });
    const connector = sampleConnector({ ...DEVICE, metalMarking: marking });
    expect(metalMarking.check(sampleSubject(joint, connector), nfpa70Edition2023).outcome).toBe(outcome);
  });
  test("a refused device says its mark, the circuit and what would serve", () => {
    expect(onDevice("AL-CU", "aluminum", 20)).toMatchObject({
      sentence: "A wiring device of 15 or 20 A on aluminum must be marked CO/ALR; this one is marked AL-CU.",
      offered: "AL-CU",
      fix: "a device marked CO/ALR, or a copper pigtail through a splice listed for aluminum and copper",
    });
    expect(onDevice("CO/ALR", "aluminum", 30)).toMatchObject({
      sentence: "The mark CO/ALR is for wiring devices of 15 and 20 A; this circuit is of 30 A.",
      required: "a circuit of 20 A or less",
      offered: "CO/ALR on a circuit of 30 A",
      cite: { locator: "404.14(D) and 406.3(D)" },
    });
    const finding = onDevice("AL-CU", "aluminum", 20);
    if (!("steps" in finding)) throw new Error(finding.because);
    const given = finding.steps.flatMap((step) => (step.kind === "given" ? [step.origin] : []));
    expect(given).toEqual(["connector/metalMarking", "connector/metalMarking", "joint/circuit/protection/ratingA"]);
    expect(finding.steps.at(-1)).toMatchObject({ kind: "compared", relation: "in", value: false });
    const mark = finding.steps.find(({ label }) => label === "marking of the wiring device");
    const rating = finding.steps.find(({ label }) => label === "rating of the circuit's device");
    expect(finding.steps.filter(({ kind }) => kind === "stated").map(({ value, uses }) => [value, uses])).toEqual([
      [20, [mark?.id]],
      [["CO/ALR"], [rating?.id]],
    ]);
  });
  test("a terminal of a switch or a receptacle is a wiring device, another terminal of other equipment is none", () => {
    const judge = (origin: "connector" | "joint/equipment/terminal", equipment: Joint["equipment"] | undefined) => {
      const { equipment: _equipment, ...apart } = sampleJoint({
        conductors: [sampleConductor({ metal: "aluminum" })],
        circuit: { sets: 1, protection: { kind: "device", ratingA: 20 } },
      });
      const joint = equipment === undefined ? apart : { ...apart, equipment };
      const subject = sampleSubject(joint, sampleConnector({ metalMarking: "AL-CU" }));
      return metalMarking.check({ ...subject, origin }, nfpa70Edition2023).outcome;
    };
    expect(judge("joint/equipment/terminal", { tag: "R-1", kind: "wiring-device" })).toBe("fail");
    expect(judge("joint/equipment/terminal", { tag: "P-1", kind: "panelboard" })).toBe("pass");
    // A splice beside the device, in its box, is no terminal of it.
    expect(judge("connector", { tag: "R-1", kind: "wiring-device" })).toBe("pass");
    expect(judge("joint/equipment/terminal", undefined)).toBe("pass");
  });
  test("a device without the mark is refused by the clause for devices", () => {
    expect(onDevice("AL-CU", "aluminum", 20)).toMatchObject({
      required: "CO/ALR",
      cite: { locator: "404.14(D) and 406.3(D)" },
    });
    expect(onDevice("AL-CU", "aluminum", undefined)).toMatchObject({ missing: [{ path: "joint/circuit/protection" }] });
  });
  test("CO/ALR on a part that is no wiring device says nothing for aluminum", () => {
    expect(check(["aluminum"], "CO/ALR").outcome).toBe("fail");
    expect(check(["copper"], "CO/ALR").outcome).toBe("pass");
  });
  test("a terminal of the equipment is asked for at its own place", () => {
    const { metalMarking: _marking, ...terminal } = sampleConnector({ family: "equipment-terminal" });
    const subject = { ...sampleSubject(sampleJoint(), terminal), origin: "joint/equipment/terminal" } as const;
    expect(metalMarking.check(subject, nfpa70Edition2023)).toMatchObject({
      missing: [{ path: "joint/equipment/terminal/metalMarking" }],
    });
  });
});
