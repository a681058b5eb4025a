import { describe, expect, test } from "vitest";
import type { ConductorGroup, ConductorMetal } from "../../core/conductor.js";
import type { Connector } from "../../core/connector.js";
import type { AluminumAmendment, Jurisdiction } from "../../core/joint.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConductor, sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { aluminumPreparation } from "./aluminum-preparation.js";
import { preparation } from "./preparation.js";

function subject(metals: readonly ConductorMetal[], compound?: Connector["compound"], change: Partial<Connector> = {}) {
  const conductors = metals.map((metal) => sampleConductor({ metal }));
  return sampleSubject(
    sampleJoint({ conductors }),
    sampleConnector({ ...(compound === undefined ? {} : { compound }), ...change }),
  );
}

function duties(...facts: Parameters<typeof subject>) {
  const finding = aluminumPreparation.check(subject(...facts), nfpa70Edition2023);
  return "conditions" in finding ? finding.conditions.map((one) => one.duty) : finding.outcome;
}

const answer = (...facts: Parameters<typeof subject>) => preparation(subject(...facts), nfpa70Edition2023);

describe("aluminum preparation (NFPA 70-2023 110.3(B), 110.14)", () => {
  test.each([
    ["required", ["brush-aluminum", "apply-compound"]],
    ["pre-filled", ["brush-aluminum"]],
    ["not-needed", ["brush-aluminum"]],
    [undefined, ["brush-aluminum", "compound-per-instructions"]],
  ] as const)("aluminum, compound %s: %j", (compound, expected) => {
    expect(duties(["aluminum"], compound)).toEqual(expected);
    expect(duties(["copper", "aluminum"], compound)).toEqual(expected);
  });
  test("copper alone: the rule is silent", () => {
    expect(duties(["copper"], "required")).toBe("not-applicable");
  });
  test("copper-clad aluminum is not brushed through its copper", () => {
    expect(duties(["copper-clad-aluminum"])).toEqual(["compound-per-instructions"]);
    expect(duties(["copper-clad-aluminum", "aluminum"])).toEqual(["brush-aluminum", "compound-per-instructions"]);
  });
  test("a piercing connector leaves the insulation on, so nothing is brushed", () => {
    expect(duties(["aluminum"], "pre-filled", { construction: "insulation-piercing" })).toEqual([]);
  });
  test.each([
    [["aluminum"], "pre-filled", {}, "Aluminum is landed: brush it bright; compound filled in by the maker."],
    [["aluminum"], "not-needed", {}, "Aluminum is landed: brush it bright; no compound needed."],
    [
      ["aluminum"],
      undefined,
      { construction: "insulation-piercing" },
      "Aluminum is landed: no brushing; compound as the connector's instructions say.",
    ],
    [
      ["copper", "copper-clad-aluminum"],
      undefined,
      {},
      "Copper-clad aluminum is landed: no brushing; compound as the connector's instructions say.",
    ],
  ] as const)("%j, compound %s, %j: %s", (metals, compound, change, told) => {
    const finding = aluminumPreparation.check(subject(metals, compound, change), nfpa70Edition2023);
    expect(finding).toMatchObject({ outcome: "pass", sentence: told });
  });
  test("what it rests on: the metals that are not copper, how the connector holds, what its instructions say", () => {
    const steps = (...facts: Parameters<typeof subject>) => {
      const finding = aluminumPreparation.check(subject(...facts), nfpa70Edition2023);
      return "steps" in finding ? finding.steps : [];
    };
    const given = steps(["copper", "aluminum"]).filter(({ kind }) => kind === "given");
    expect(given).toMatchObject([
      { value: "aluminum", origin: "joint/conductors/1/metal" },
      { value: "set-screw", origin: "connector/construction" },
      { value: "not known", origin: "connector/compound" },
    ]);
    expect(steps(["aluminum"], "required")).toContainEqual(
      expect.objectContaining({ value: "required", origin: "connector/compound" }),
    );
    const concluded = steps(["copper", "aluminum"]).filter(({ kind }) => kind === "concluded");
    expect(concluded).toMatchObject([
      { value: "needed", uses: [1, 2, 3] },
      { value: "per-instructions", uses: [1, 2, 3] },
      { value: "pass", uses: [4, 5] },
    ]);
  });
  test("the sentence tells the work", () => {
    expect(aluminumPreparation.check(subject(["aluminum"], "required"), nfpa70Edition2023)).toMatchObject({
      outcome: "pass",
      sentence: "Aluminum is landed: brush it bright; compound required.",
      cite: { locator: "110.3(B)" },
    });
  });
});

describe("where compound is asked for", () => {
  test("the instructions are named as its source, unless a local amendment asks", () => {
    expect(aluminumPreparation.check(subject(["aluminum"], "required"), nfpa70Edition2023)).toMatchObject({
      conditions: [
        { duty: "brush-aluminum", cite: { standard: "common practice, no published source" } },
        {
          duty: "apply-compound",
          sentence: "Apply the oxide-inhibiting compound named in the connector's instructions right after brushing.",
          cite: { locator: "110.3(B)" },
        },
      ],
    });
  });
});

describe("preparation", () => {
  test("the brush is common practice, the compound the connector's instructions", () => {
    expect(answer(["aluminum"], "required")).toMatchObject({
      brush: { needed: true, level: "trade-practice", cite: { standard: "common practice, no published source" } },
      compound: { need: "required", level: "connector-marking", cite: { locator: "110.3(B)" } },
    });
  });
  test("copper: no brush; a compound the instructions ask for is left to them", () => {
    expect(answer(["copper"])).toMatchObject({ brush: { needed: false }, compound: { need: "not-needed" } });
    expect(answer(["copper"], "required").compound.need).toBe("per-instructions");
    expect(answer(["copper"], "pre-filled").compound.need).toBe("pre-filled");
    expect(answer(["copper"], "not-needed").compound.need).toBe("not-needed");
  });
  test("aluminum without a statement is never guessed", () => {
    expect(answer(["aluminum"]).compound.need).toBe("per-instructions");
  });
});

describe("a local amendment, as the job states it", () => {
  const amendment = (aluminum: AluminumAmendment): Jurisdiction => ({
    name: "City of Larkfen",
    amendment: "ordinance 12, section 4",
    aluminum,
  });
  function under(
    aluminum: AluminumAmendment,
    compound?: Connector["compound"],
    conductor: Partial<ConductorGroup> = {},
    change: Partial<Connector> = {},
  ) {
    const joint = sampleJoint({
      conductors: [sampleConductor({ metal: "aluminum", ...conductor })],
      basis: { ruleSet: "nfpa70", edition: "2023", jurisdiction: amendment(aluminum) },
    });
    const asked = sampleSubject(joint, sampleConnector({ ...(compound === undefined ? {} : { compound }), ...change }));
    return {
      answer: preparation(asked, nfpa70Edition2023),
      finding: aluminumPreparation.check(asked, nfpa70Edition2023),
    };
  }
  const ALL = { conductors: "all", compound: "required" } as const;
  const UNLESS = { conductors: "stranded", compound: "required-unless-marked" } as const;

  // hand: the amendment beside each thing the instructions can say
  test.each([
    [ALL, undefined, "required", "local-amendment"],
    [ALL, "not-needed", "required", "local-amendment"],
    [ALL, "required", "required", "local-amendment"],
    [ALL, "pre-filled", "pre-filled", "connector-marking"],
    [UNLESS, undefined, "required", "local-amendment"],
    [UNLESS, "not-needed", "not-needed", "connector-marking"],
  ] as const)("%j, instructions %s: %s", (aluminum, stated, need, level) => {
    expect(under(aluminum, stated).answer.compound).toMatchObject({ need, level });
  });
  test("is cited where it stands and hangs on the acceptance", () => {
    const { finding } = under({ conductors: "all", brush: "required", compound: "required" }, "not-needed");
    expect(finding).toMatchObject({
      outcome: "pass",
      conditions: [
        { duty: "brush-aluminum", cite: { standard: "City of Larkfen", locator: "ordinance 12, section 4" } },
        { duty: "apply-compound", cite: { standard: "City of Larkfen" } },
      ],
    });
  });
  test("what it asks for is a step, word for word", () => {
    const words = (aluminum: AluminumAmendment) => {
      const { finding } = under(aluminum);
      return "steps" in finding
        ? finding.steps.find((step) => step.kind === "given" && step.origin === "joint/basis/jurisdiction/aluminum")
            ?.value
        : undefined;
    };
    expect(words({ conductors: "all", brush: "required", compound: "required" })).toEqual([
      "conductors: all",
      "brush: required",
      "compound: required",
    ]);
    expect(words(UNLESS)).toEqual(["conductors: stranded", "compound: required-unless-marked"]);
    expect(words({ conductors: "all", brush: "required" })).toEqual(["conductors: all", "brush: required"]);
  });
  test("one conductor that it is for is enough, and a single strand of IEC class 1 is solid", () => {
    expect(under(UNLESS, undefined, { stranding: "iec-class-1" }).answer.compound.level).toBe("connector-marking");
    expect(under(UNLESS, undefined, { stranding: "iec-class-2" }).answer.compound.level).toBe("local-amendment");
    const joint = sampleJoint({
      conductors: [sampleConductor(), sampleConductor({ metal: "aluminum" })],
      basis: { ruleSet: "nfpa70", edition: "2023", jurisdiction: amendment(ALL) },
    });
    expect(preparation(sampleSubject(joint), nfpa70Edition2023).compound.level).toBe("local-amendment");
  });
  test("an amendment on the brush alone leaves the compound to the instructions, and the other way about", () => {
    expect(under({ conductors: "all", brush: "required" }, "not-needed").answer.compound.need).toBe("not-needed");
    expect(under({ conductors: "all", brush: "required" }).finding).toMatchObject({
      conditions: [
        { duty: "brush-aluminum", cite: { standard: "City of Larkfen" } },
        { duty: "compound-per-instructions", cite: { locator: "110.3(B)" } },
      ],
    });
    expect(under(ALL).answer.brush).toMatchObject({ needed: true, level: "trade-practice" });
  });
  test("for stranded conductors only it leaves solid ones alone; unknown stranding counts as stranded", () => {
    expect(under(UNLESS, undefined, { stranding: "solid" }).answer.compound.level).toBe("connector-marking");
    expect(under(UNLESS, undefined, { stranding: "unknown" }).answer.compound.level).toBe("local-amendment");
    expect(under(ALL, undefined, { stranding: "solid" }).answer.compound.level).toBe("local-amendment");
  });
  test("it is for aluminum, and a connector that pierces the insulation leaves nothing to brush", () => {
    expect(under(ALL, undefined, { metal: "copper" }).answer.compound.need).toBe("not-needed");
    expect(under(ALL, undefined, { metal: "copper-clad-aluminum" }).answer.compound.level).toBe("connector-marking");
    const brush = { conductors: "all", brush: "required" } as const;
    expect(under(brush).answer.brush).toMatchObject({ needed: true, level: "local-amendment" });
    expect(under(brush, undefined, {}, { construction: "insulation-piercing" }).answer.brush.needed).toBe(false);
  });
  test("a jurisdiction without an amendment on aluminum changes nothing", () => {
    const joint = sampleJoint({
      conductors: [sampleConductor({ metal: "aluminum" })],
      basis: { ruleSet: "nfpa70", edition: "2023", jurisdiction: { name: "X", amendment: "none" } },
    });
    expect(preparation(sampleSubject(joint), nfpa70Edition2023).compound.need).toBe("per-instructions");
  });
});
