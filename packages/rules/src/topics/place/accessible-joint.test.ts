import { describe, expect, test } from "vitest";
import type { Connector } from "../../core/connector.js";
import type { Joint } from "../../core/joint.js";
import { EDITIONS } from "../../rulesets/editions.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { accessibleJoint } from "./accessible-joint.js";

type Location = NonNullable<Joint["place"]>["location"];

function check(joint: Partial<Joint>, connector: Partial<Connector> = {}, edition = nfpa70Edition2023) {
  return accessibleJoint.check(sampleSubject(sampleJoint(joint), sampleConnector(connector)), edition);
}

function told(joint: Partial<Joint>, connector: Partial<Connector> = {}): string {
  const finding = check(joint, connector);
  if (finding.outcome === "not-applicable") return finding.outcome;
  return finding.outcome === "missing" ? `missing ${finding.missing[0]?.path ?? ""}` : finding.outcome;
}

const hidden = (location: Location) => ({ place: { location, accessible: false } }) as const;
const at = (kind: NonNullable<Joint["equipment"]>["kind"]) =>
  ({ equipment: kind === undefined ? { tag: "X-1" } : { tag: "X-1", kind } }) as const;

describe("access to the finished joint (NFPA 70-2023 300.15, 314.29, 250.68(A))", () => {
  // published: 300.15, 314.29
  test.each(["splice", "tap", "termination"] as const)(
    "a %s that can be reached passes, one that cannot fails",
    (kind) => {
      expect(told({ function: kind, place: { location: "dry", accessible: true } })).toBe("pass");
      expect(told({ function: kind, ...hidden("dry") })).toBe("fail");
      expect(told({ function: kind, place: { location: "dry" } })).toBe("not-applicable");
    },
  );
  test("without a word on access, or without a place at all, it has nothing to say", () => {
    const { place: _place, ...rest } = sampleJoint();
    expect(accessibleJoint.check(sampleSubject(rest), nfpa70Edition2023)).toMatchObject({ outcome: "not-applicable" });
  });
  test("the refusal names the clause, what is asked for and what would put it right", () => {
    const inWall = { function: "splice", ...hidden("dry") } as const;
    expect(check({ ...inWall, ...at("box") })).toMatchObject({
      outcome: "fail",
      cite: { locator: "314.29" },
      offered: "out of reach",
    });
    const finding = check({ ...inWall, ...at(undefined) });
    expect(finding).toMatchObject({ cite: { locator: "300.15" } });
    expect("fix" in finding && finding.fix).toContain("run the conductor through in one piece");
    for (const edition of EDITIONS)
      expect(check({ ...inWall, ...at("box") }, {}, edition)).toMatchObject({ outcome: "fail" });
  });

  // published: 300.5(E), 300.15(G): spliced in the earth without a box by what is listed for it
  describe("in the earth", () => {
    const buried = { function: "splice", ...hidden("direct-burial") } as const;
    test.each([
      [["direct-burial"], "pass"],
      [["wet", "direct-burial"], "pass"],
      [["wet"], "fail"],
      [["concrete"], "fail"],
      ["unmarked", "missing connector/places"],
      [[], "missing connector/places"],
    ] as const)("a splice listed for %j: %s", (places, expected) => {
      expect(told({ ...buried, ...at("trench") }, { places })).toBe(expected);
    });
    test("a listing that is not known is asked for", () => {
      const { places: _places, ...rest } = sampleConnector();
      const subject = sampleSubject(sampleJoint({ ...buried, ...at("trench") }), rest);
      expect(accessibleJoint.check(subject, nfpa70Edition2023)).toMatchObject({
        missing: [{ path: "connector/places" }],
      });
    });
    test.each([
      ["trench", "pass"],
      ["other", "pass"],
      [undefined, "pass"],
      ["box", "fail"],
      ["handhole", "fail"],
      ["pedestal", "fail"],
      ["wireway", "fail"],
    ] as const)("in %s: %s, for a box stays accessible", (kind, expected) => {
      expect(told({ ...buried, ...at(kind) }, { places: ["direct-burial"] })).toBe(expected);
    });
    test("not in concrete, not a termination", () => {
      expect(told({ function: "splice", ...hidden("concrete"), ...at("trench") }, { places: ["direct-burial"] })).toBe(
        "fail",
      );
      expect(told({ ...hidden("direct-burial"), ...at("trench") }, { places: ["direct-burial"] })).toBe("fail");
    });
    test("the clause is that of the exception", () => {
      expect(check({ ...buried, ...at("trench") }, { places: ["direct-burial"] })).toMatchObject({
        cite: { locator: "300.5(E)" },
        conditions: [],
      });
    });
  });

  // published: 250.64(C)
  test.each([
    ["weld", "splice", "pass"],
    ["compression", "splice", "pass"],
    ["compression", "tap", "pass"],
    ["split-bolt", "splice", "fail"],
    ["set-screw", "tap", "fail"],
  ] as const)("an electrode conductor joined by %s in a %s: %s", (construction, kind, expected) => {
    expect(told({ role: "electrode-conductor", function: kind, ...hidden("dry") }, { construction })).toBe(expected);
    expect(told({ role: "equipment-ground", function: kind, ...hidden("dry") }, { construction })).toBe("fail");
  });

  // published: 250.68(A) and its exceptions
  describe("at an electrode", () => {
    const ending = (
      electrode: NonNullable<Joint["grounding"]>["electrode"],
      location: Location,
      change: Partial<Joint> = {},
    ): Partial<Joint> => ({
      role: "electrode-conductor",
      ...hidden(location),
      ...at("electrode"),
      ...(electrode === undefined ? {} : { grounding: { electrode } }),
      ...change,
    });
    const clamp = { family: "rod-clamp", construction: "bolted-clamp" } as const;
    const weld = { family: "exothermic-weld", construction: "weld" } as const;
    const press = { construction: "compression" } as const;

    test.each([
      ["copper-bonded-rod", "direct-burial", "pass"],
      ["galvanized-rod", "direct-burial", "pass"],
      ["stainless-rod", "direct-burial", "pass"],
      ["concrete-encased-rebar", "concrete", "pass"],
      ["ground-ring", "direct-burial", "pass"],
      ["plate", "direct-burial", "pass"],
      ["water-pipe", "direct-burial", "pass"],
      ["water-pipe", "dry", "fail"],
      ["copper-bonded-rod", "wet", "fail"],
      ["building-steel", "direct-burial", "fail"],
      ["building-steel", "dry", "fail"],
    ] as const)("a clamp on %s, %s: %s", (electrode, location, expected) => {
      expect(told(ending(electrode, location), clamp)).toBe(expected);
    });
    test("pressed or welded on steel, it hangs on the fireproofing", () => {
      for (const part of [weld, press])
        expect(check(ending("building-steel", "dry"), part)).toMatchObject({
          outcome: "pass",
          cite: { locator: "250.68(A)" },
          conditions: [{ duty: "steel-is-fireproofed" }],
        });
      expect(told(ending("water-pipe", "dry"), weld)).toBe("fail");
      expect(check(ending("water-pipe", "dry"), clamp)).toMatchObject({ cite: { locator: "250.68(A)" } });
    });
    test("an electrode that is not given is asked for where it decides", () => {
      expect(told(ending(undefined, "direct-burial"), clamp)).toBe("missing joint/grounding/electrode");
      expect(told(ending(undefined, "dry"), weld)).toBe("missing joint/grounding/electrode");
      expect(told(ending(undefined, "dry"), clamp)).toBe("fail");
    });
    test("where the conductor ends is asked for where it decides", () => {
      expect(told(ending("plate", "direct-burial", at(undefined)), press)).toBe("missing joint/equipment/kind");
      expect(told(ending("plate", "direct-burial", at(undefined)), clamp)).toBe("pass");
      expect(told(ending("plate", "dry", at(undefined)), press)).toBe("fail");
      expect(told(ending("plate", "direct-burial", at("ground-bus")), clamp)).toBe("fail");
      expect(told(ending("plate", "direct-burial", at("box")), clamp)).toBe("pass");
      expect(told(ending("plate", "direct-burial", at("box")), press)).toBe("fail");
      const mold = { ...weld, grounding: { listed: true, electrodes: ["plate"] } } as const;
      expect(told(ending("plate", "direct-burial", at("trench")), mold)).toBe("pass");
    });
    test.each([
      ["electrode-system", "pass"],
      ["by-design", "pass"],
      ["water-pipe", "fail"],
      ["other-pipe", "fail"],
      ["main", "fail"],
      [undefined, "missing joint/grounding/bonding"],
    ] as const)("a jumper that bonds %s to a rod in the earth: %s", (bonding, expected) => {
      const grounding = { electrode: "copper-bonded-rod", ...(bonding === undefined ? {} : { bonding }) } as const;
      expect(told(ending("copper-bonded-rod", "direct-burial", { role: "bonding", grounding }), clamp)).toBe(expected);
    });
    // published: 250.104(A) and (B) without an exception, (C) with the second
    test("jumpers to pipes and structural metal", () => {
      const jumper = (bonding: "water-pipe" | "other-pipe" | "structural-metal"): Partial<Joint> =>
        ending(undefined, "dry", { role: "bonding", grounding: { bonding } });
      expect(check(jumper("water-pipe"), weld)).toMatchObject({ outcome: "fail", cite: { locator: "250.104(A)(1)" } });
      expect(check(jumper("other-pipe"), weld)).toMatchObject({ outcome: "fail", cite: { locator: "250.104(B)" } });
      expect(check(jumper("structural-metal"), clamp)).toMatchObject({
        outcome: "fail",
        cite: { locator: "250.104(C)" },
      });
      expect(told(jumper("structural-metal"), weld)).toBe("pass");
    });
  });
});
