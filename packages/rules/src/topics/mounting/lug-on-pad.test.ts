import { describe, expect, test } from "vitest";
import type { Connector } from "../../core/connector.js";
import { type Joint, PAD_METALS, PAD_PLATINGS, type PadMetal } from "../../core/joint.js";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2020 } from "../../rulesets/nfpa70-2020/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { lugOnPad } from "./lug-on-pad.js";

const ON_PAD: Partial<Connector> = { mounting: { kind: "pad", pattern: { holes: 1, bolt: "3/8" } } };
const TIN_COPPER = { bodyMetal: "copper", plating: "tin" } as const;
const BARE_COPPER = { bodyMetal: "copper", plating: "none" } as const;
const BARE_ALUMINUM = { bodyMetal: "aluminum", plating: "none" } as const;
const ALUMINUM_PAD: PadMetal = { metal: "aluminum", plating: "none" };
const COPPER_PAD: PadMetal = { metal: "copper", plating: "none" };

function check(lug: Partial<Connector>, padMetal?: PadMetal, joint: Partial<Joint> = {}, edition = nfpa70Edition2023) {
  const equipment = padMetal === undefined ? { tag: "B-1" } : { tag: "B-1", padMetal };
  return lugOnPad.check(
    sampleSubject(sampleJoint({ equipment, ...joint }), sampleConnector({ ...ON_PAD, ...lug })),
    edition,
  );
}

/** "pass", "pass: aluminum-pad", "fail", "missing: joint/equipment/padMetal". */
function said(lug: Partial<Connector>, padMetal?: PadMetal): string {
  const answer = check(lug, padMetal);
  if (answer.outcome === "not-applicable") return answer.outcome;
  const hangsOn = [...answer.conditions.map(({ duty }) => duty), ...answer.missing.map(({ path }) => path)];
  return [answer.outcome, ...hangsOn].join(": ");
}

describe("metal of the lug and of the pad (NFPA 70-2023 110.14, 110.3(B))", () => {
  // hand: bare aluminum beside copper, bronze, brass or silver is the one pair refused; every other pair of known faces passes
  test.each([
    [BARE_COPPER, ALUMINUM_PAD, "fail"],
    [{ bodyMetal: "Bronze", plating: "none" }, ALUMINUM_PAD, "fail"],
    [{ bodyMetal: "brass", plating: "bare" }, ALUMINUM_PAD, "fail"],
    [{ bodyMetal: "copper", plating: "silver" }, ALUMINUM_PAD, "fail"],
    [BARE_ALUMINUM, COPPER_PAD, "fail"],
    [BARE_ALUMINUM, { metal: "copper", plating: "silver" }, "fail"],
    [{ bodyMetal: "aluminium alloy", plating: "none" }, COPPER_PAD, "missing: connector/bodyMetal"],
    [{ bodyMetal: "aluminium", plating: "none" }, COPPER_PAD, "fail"],
    [TIN_COPPER, ALUMINUM_PAD, "pass: aluminum-pad"],
    [{ bodyMetal: "copper", plating: "nickel" }, ALUMINUM_PAD, "pass: aluminum-pad"],
    [BARE_COPPER, { metal: "aluminum", plating: "tin" }, "pass: aluminum-pad"],
    [BARE_COPPER, COPPER_PAD, "pass"],
    [{ bodyMetal: "bronze", plating: "none" }, { metal: "copper", plating: "silver" }, "pass"],
    [{ bodyMetal: "aluminum", plating: "tin" }, COPPER_PAD, "pass"],
    [BARE_ALUMINUM, { metal: "copper", plating: "tin" }, "pass: bare-aluminum-lug"],
    [BARE_ALUMINUM, ALUMINUM_PAD, "pass: aluminum-pad"],
    [BARE_COPPER, { metal: "steel", plating: "none" }, "pass: steel-contact"],
    [{ bodyMetal: "stainless steel", plating: "none" }, COPPER_PAD, "pass: steel-contact"],
    [{ bodyMetal: "bimetal" }, ALUMINUM_PAD, "pass: bimetal-side: aluminum-pad"],
    [{ bodyMetal: "bimetal", plating: "none" }, COPPER_PAD, "pass: bimetal-side"],
  ] as const)("%j on %j: %s", (lug, pad, answer) => {
    expect(said(lug, pad)).toBe(answer);
  });
});

describe("the words of the trade for metals and platings", () => {
  const plain = { plating: "none" } as const;
  // hand: bronze and brass are copper alloys; zinc-coated steel is steel
  test.each([
    ["copper", "fail", "pass"],
    ["copper alloy", "fail", "pass"],
    ["bronze", "fail", "pass"],
    ["brass", "fail", "pass"],
    [" Copper ", "fail", "pass"],
    ["aluminum", "pass: aluminum-pad", "fail"],
    ["aluminium", "pass: aluminum-pad", "fail"],
    ["aluminum alloy", "pass: aluminum-pad", "fail"],
    ["steel", "pass: aluminum-pad", "pass: steel-contact"],
    ["stainless steel", "pass: aluminum-pad", "pass: steel-contact"],
    ["zinc-coated steel", "pass: aluminum-pad", "pass: steel-contact"],
    ["galvanized steel", "pass: aluminum-pad", "pass: steel-contact"],
    ["bimetal", "pass: bimetal-side: aluminum-pad", "pass: bimetal-side"],
    ["bimetallic", "pass: bimetal-side: aluminum-pad", "pass: bimetal-side"],
  ] as const)("a bare lug of %s on aluminum: %s, on copper: %s", (bodyMetal, onAluminum, onCopper) => {
    expect(said({ bodyMetal, ...plain }, ALUMINUM_PAD)).toBe(onAluminum);
    expect(said({ bodyMetal, ...plain }, COPPER_PAD)).toBe(onCopper);
  });
  test.each([
    ["none", "fail"],
    ["bare", "fail"],
    ["unplated", "fail"],
    ["silver", "fail"],
    ["silver-plated", "fail"],
    [" Silver ", "fail"],
    ["tin", "pass: aluminum-pad"],
    ["tin-plated", "pass: aluminum-pad"],
    ["nickel", "pass: aluminum-pad"],
    ["nickel-plated", "pass: aluminum-pad"],
  ] as const)("a copper lug, %s, on aluminum: %s", (plating, answer) => {
    expect(said({ bodyMetal: "copper", plating }, ALUMINUM_PAD)).toBe(answer);
  });
  // hand: the steel shows only where no plating lies on it
  test.each([
    [{ bodyMetal: "steel", plating: "tin" }, COPPER_PAD, "pass"],
    [{ bodyMetal: "steel" }, COPPER_PAD, "pass: steel-contact"],
    [TIN_COPPER, { metal: "steel", plating: "none" }, "pass: steel-contact"],
  ] as const)("%j on %j: %s", (lug, pad, answer) => {
    expect(said(lug, pad)).toBe(answer);
  });
});

describe("a fact is asked about only where it decides", () => {
  test.each([
    // hand: tin and nickel touch anything; without the pad, what may be bare copper, bare aluminum or silver hangs on it
    [TIN_COPPER, undefined, "pass"],
    [{ plating: "tin" }, undefined, "pass"],
    [{ plating: "tin" }, ALUMINUM_PAD, "pass: aluminum-pad"],
    [BARE_COPPER, undefined, "missing: joint/equipment/padMetal"],
    [{ bodyMetal: "copper", plating: "silver" }, undefined, "missing: joint/equipment/padMetal"],
    [{ bodyMetal: "copper" }, undefined, "missing: joint/equipment/padMetal"],
    [{}, undefined, "missing: joint/equipment/padMetal"],
    [BARE_COPPER, { metal: "aluminum" }, "missing: joint/equipment/padMetal/plating"],
    [BARE_COPPER, { metal: "copper" }, "pass"],
    [{ bodyMetal: "copper" }, ALUMINUM_PAD, "missing: connector/plating"],
    [{ bodyMetal: "copper" }, COPPER_PAD, "pass"],
    [{ bodyMetal: "aluminum" }, COPPER_PAD, "missing: connector/plating"],
    [{ bodyMetal: "aluminum" }, { metal: "copper", plating: "tin" }, "pass: bare-aluminum-lug"],
    [{ plating: "none" }, COPPER_PAD, "missing: connector/bodyMetal"],
    [{ plating: "none" }, { metal: "copper", plating: "tin" }, "pass"],
    [{}, COPPER_PAD, "missing: connector/plating"],
    [{ bodyMetal: "steel", plating: "none" }, undefined, "pass: steel-contact"],
    // a word that is not known counts as not given
    [{ bodyMetal: "pot metal", plating: "none" }, ALUMINUM_PAD, "missing: connector/bodyMetal"],
    [{ bodyMetal: "copper", plating: "bright dip" }, ALUMINUM_PAD, "missing: connector/plating"],
    [{ bodyMetal: "bimetal" }, undefined, "pass: bimetal-side"],
  ] as const)("%j on %j: %s", (lug, pad, answer) => {
    expect(said(lug, pad)).toBe(answer);
  });
  test("an open answer closes one way or the other when the fact is given, and never in silence", () => {
    for (const bodyMetal of ["copper", "bronze", "aluminum", "steel", undefined])
      for (const plating of ["none", "tin", "silver", "nickel", undefined]) {
        const lug = {
          ...(bodyMetal === undefined ? {} : { bodyMetal }),
          ...(plating === undefined ? {} : { plating }),
        };
        const known = PAD_METALS.flatMap((metal) =>
          PAD_PLATINGS.map((padPlating) => said(lug, { metal, plating: padPlating }).split(":")[0]),
        );
        const open = said(lug).startsWith("missing");
        expect([JSON.stringify(lug), known.every((one) => one === "pass")]).toEqual([JSON.stringify(lug), !open]);
      }
  });
});

describe("what the finding says", () => {
  test("the refusal names both metals and what would put it right", () => {
    for (const edition of [nfpa70Edition2017, nfpa70Edition2020, nfpa70Edition2023])
      expect(check(BARE_COPPER, ALUMINUM_PAD, {}, edition)).toMatchObject({
        outcome: "fail",
        cite: { locator: "110.14", edition: edition.edition },
        sentence:
          "A bare copper lug lies on a bare aluminum pad: bare aluminum and copper eat each other where they touch.",
        offered: "a bare copper lug on a bare aluminum pad",
        fix: "a lug plated with tin, with the compound and washers that the equipment's instructions name, or a bimetal plate between",
        missing: [],
      });
  });
  test("silver is named where it is silver that eats the aluminum", () => {
    expect(check({ bodyMetal: "copper", plating: "silver" }, ALUMINUM_PAD)).toMatchObject({
      sentence:
        "A silver-plated copper lug lies on a bare aluminum pad: bare aluminum and silver eat each other where they touch.",
    });
    expect(check(BARE_ALUMINUM, { metal: "copper", plating: "silver" })).toMatchObject({
      sentence:
        "A bare aluminum lug lies on a silver-plated copper pad: bare aluminum and silver eat each other where they touch.",
    });
  });
  test("a bimetal lug is to lie with the pad's metal on the pad", () => {
    expect(check({ bodyMetal: "bimetal" }, { metal: "copper" })).toMatchObject({
      conditions: [{ sentence: "See that the tongue of the bimetal lug is copper, as the pad is." }],
      advice: [],
    });
    expect(check({ bodyMetal: "bimetal" })).toMatchObject({
      conditions: [{ sentence: "See that the tongue of the bimetal lug is of the same metal as the pad." }],
      advice: [expect.stringContaining("Belleville")],
    });
  });
  test("without a word on the equipment the pad is asked for where it decides", () => {
    const { equipment, ...joint } = sampleJoint();
    expect(equipment).toBeDefined();
    const at = (lug: Partial<Connector>) =>
      lugOnPad.check(sampleSubject(joint, sampleConnector({ ...ON_PAD, ...lug })), nfpa70Edition2023);
    expect(at(TIN_COPPER).outcome).toBe("pass");
    expect(at({ bodyMetal: "bimetal" }).outcome).toBe("pass");
    expect(at(BARE_COPPER)).toMatchObject({ missing: [{ path: "joint/equipment/padMetal" }] });
  });
  test("a pad of which nothing is said is named as advice, never as a condition", () => {
    expect(check(TIN_COPPER)).toMatchObject({ conditions: [], advice: [expect.stringContaining("Belleville")] });
    expect(check(TIN_COPPER, COPPER_PAD)).toMatchObject({ conditions: [], advice: [] });
  });
  test("only a lug bolted to the pad of equipment is judged", () => {
    expect(check({ mounting: { kind: "frame", frames: ["F4"] } }, ALUMINUM_PAD).outcome).toBe("not-applicable");
    expect(check({ mounting: { kind: "integral" } }, ALUMINUM_PAD).outcome).toBe("not-applicable");
    expect(check(BARE_COPPER, ALUMINUM_PAD, { function: "splice" }).outcome).toBe("not-applicable");
  });
});
