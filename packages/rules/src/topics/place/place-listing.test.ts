import { describe, expect, test } from "vitest";
import type { Connector, PlaceListing } from "../../core/connector.js";
import { type Joint, LOCATIONS, type Location } from "../../core/joint.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { sampleConnector, sampleJoint, sampleSubject } from "../../samples/sample-joint.js";
import { placeListing } from "./place-listing.js";

function check(
  location: Location | undefined,
  places: readonly PlaceListing[] | "unmarked" | undefined,
  joint: Partial<Joint> = {},
  connector: Partial<Connector> = {},
) {
  const subject = sampleSubject(sampleJoint(joint), sampleConnector(connector));
  const { place, ...placeless } = subject.joint;
  const { places: listed, ...unlisted } = subject.connector;
  expect([place, listed]).toEqual([{ location: "dry" }, ["equipment"]]);
  return placeListing.check(
    {
      ...subject,
      joint: location === undefined ? placeless : { ...placeless, place: { location } },
      connector: places === undefined ? unlisted : { ...unlisted, places },
    },
    nfpa70Edition2023,
  );
}

const HANDHOLE = { function: "tap", equipment: { tag: "HH-3", kind: "handhole" } } as const;

describe("place listing (NFPA 70-2023 110.11, 110.14(B), 300.5(E), 314.30(C), 250.70)", () => {
  // hand: the rank dry < damp < wet < direct burial, a listing at, under and over the place; concrete by itself
  test.each([
    ["dry", "dry", "pass"],
    ["dry", "concrete", "pass"],
    ["damp", "dry", "fail"],
    ["damp", "damp", "pass"],
    ["damp", "wet", "pass"],
    ["damp", "equipment", "pass"],
    ["damp", "concrete", "missing"],
    ["wet", "dry", "fail"],
    ["wet", "damp", "fail"],
    ["wet", "wet", "pass"],
    ["wet", "direct-burial", "pass"],
    ["wet", "equipment", "missing"],
    ["wet", "concrete", "missing"],
    ["direct-burial", "wet", "fail"],
    ["direct-burial", "direct-burial", "pass"],
    ["direct-burial", "concrete", "fail"],
    ["direct-burial", "equipment", "fail"],
    ["concrete", "concrete", "pass"],
    ["concrete", "direct-burial", "fail"],
    ["concrete", "equipment", "fail"],
  ] as const)("in a %s place a part listed %s: %s", (location, listing, outcome) => {
    expect(check(location, [listing]).outcome).toBe(outcome);
  });

  test("a dry place needs no mark, so an unknown or missing one is not asked for", () => {
    expect(check("dry", undefined).outcome).toBe("pass");
    expect(check("dry", "unmarked").outcome).toBe("pass");
  });
  test.each(["damp", "wet", "direct-burial", "concrete"] as const)(
    "an unknown or unmarked listing in a %s place is asked for",
    (location) => {
      for (const places of [undefined, "unmarked", []] as const)
        expect(check(location, places)).toMatchObject({ outcome: "missing", missing: [{ path: "connector/places" }] });
    },
  );
  test("an unknown place is asked for unless the listing covers every place", () => {
    expect(check(undefined, ["direct-burial"])).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/place/location" }],
    });
    expect(check(undefined, undefined)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/place/location" }],
    });
    expect(check(undefined, ["direct-burial", "concrete"]).outcome).toBe("pass");
    expect(check(undefined, ["direct-burial"], {}, { family: "rod-clamp" }).outcome).toBe("pass");
  });

  test("a handhole counts as wet even where it was called dry or nothing was said", () => {
    for (const location of ["dry", "damp", "wet", undefined] as const) {
      expect(check(location, ["dry"], HANDHOLE)).toMatchObject({ outcome: "fail", cite: { locator: "314.30(C)" } });
      expect(check(location, ["wet"], HANDHOLE).outcome).toBe("pass");
      expect(check(location, ["equipment"], HANDHOLE).outcome).toBe("fail");
      expect(check(location, undefined, HANDHOLE).outcome).toBe("missing");
    }
  });

  test("a splice in the earth rests on 110.14(B) and 300.5(E)", () => {
    const finding = check("direct-burial", ["wet"], { function: "splice" });
    expect(finding).toMatchObject({
      outcome: "fail",
      cite: { locator: "110.14(B)" },
      required: "listed for direct burial",
      offered: "wet",
    });
    expect(JSON.stringify(finding)).toContain("300.5(E)");
  });
  test("a ground clamp marked for direct burial may be encased in concrete; a splice so marked may not", () => {
    const electrode = { role: "electrode-conductor" } as const;
    expect(check("concrete", ["direct-burial"], electrode, { family: "rebar-clamp" })).toMatchObject({
      outcome: "pass",
      cite: { locator: "250.70" },
    });
    expect(check("concrete", ["direct-burial"], electrode, { family: "direct-burial-splice" }).outcome).toBe("fail");
  });

  test("a part for enclosures in a wet place asks for the place inside the enclosure", () => {
    expect(check("wet", ["equipment"])).toMatchObject({
      outcome: "missing",
      missing: [{ path: "joint/place/location" }],
    });
  });

  test("what will be covered is inspected first; what stays in sight has no condition", () => {
    for (const location of LOCATIONS) {
      const finding = check(location, ["direct-burial", "concrete"]);
      const duties = "conditions" in finding ? finding.conditions.map((one) => one.duty) : [];
      expect(duties).toEqual(location === "direct-burial" || location === "concrete" ? ["inspect-before-cover"] : []);
    }
  });
});
