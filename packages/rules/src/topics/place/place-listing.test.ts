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
  test("a handhole in the earth or in concrete asks for what those ask for", () => {
    expect(check("direct-burial", ["wet"], HANDHOLE)).toMatchObject({
      outcome: "fail",
      required: "listed for direct burial",
      cite: { locator: "314.30(C)" },
    });
    expect(check("concrete", ["direct-burial"], HANDHOLE).outcome).toBe("fail");
    const finding = check("dry", ["wet"], HANDHOLE);
    expect("steps" in finding && finding.steps.slice(0, 3)).toMatchObject([
      { value: "dry", origin: "joint/place/location" },
      { value: "handhole", origin: "joint/equipment/kind" },
      { value: "wet", cite: { locator: "314.30(C)" }, uses: [2] },
    ]);
  });
  // hand: one listing of several that serves is enough; concrete beside a listing that does not serve is asked about
  test.each([
    ["wet", ["dry", "wet"], "pass"],
    ["wet", ["dry", "damp"], "fail"],
    ["wet", ["damp", "equipment"], "missing"],
    ["wet", ["dry", "concrete"], "missing"],
    ["damp", ["dry", "concrete"], "missing"],
    ["direct-burial", ["wet", "concrete"], "fail"],
    ["concrete", ["wet", "concrete"], "pass"],
  ] as const)("in a %s place a part listed %j: %s", (location, places, outcome) => {
    expect(check(location, places).outcome).toBe(outcome);
  });
  test("what is asked about where a listing does not tell", () => {
    expect(check("wet", ["equipment"])).toMatchObject({ missing: [{ path: "joint/place/location" }] });
    expect(check("wet", ["concrete"])).toMatchObject({ missing: [{ path: "connector/places" }] });
    expect(check("damp", "unmarked")).toMatchObject({ offered: "no mark for the place" });
    expect(check("damp", undefined)).toMatchObject({ offered: "not known" });
    expect(check("damp", [])).toMatchObject({ missing: [{ path: "connector/places" }] });
  });
  // published: 110.11 in sight, 110.14(B) for splices in the earth, 250.70 where an electrode conductor ends, 110.3(B) else
  test.each([
    ["wet", { function: "splice" }, "110.11"],
    ["direct-burial", { function: "splice" }, "110.14(B)"],
    ["direct-burial", { function: "tap" }, "110.14(B)"],
    ["direct-burial", { function: "termination" }, "110.11"],
    ["direct-burial", { function: "termination", role: "electrode-conductor" }, "250.70"],
    ["concrete", { function: "termination", role: "electrode-conductor" }, "250.70"],
    ["direct-burial", { function: "splice", role: "electrode-conductor" }, "110.14(B)"],
    ["concrete", { function: "splice", role: "electrode-conductor" }, "110.3(B)"],
    ["concrete", { function: "termination" }, "110.3(B)"],
    ["wet", { function: "termination", role: "electrode-conductor" }, "110.11"],
  ] as const)("in a %s place, %o: by %s", (location, joint, locator) => {
    expect(check(location, ["dry"], joint)).toMatchObject({ outcome: "fail", cite: { locator } });
  });
  test.each([
    ["damp", "listed for a damp place", "a connector listed for a damp place"],
    ["wet", "listed for a wet place", "a connector listed for a wet place"],
    [
      "direct-burial",
      "listed for direct burial",
      "a connector listed for direct burial, or bring the joint into an enclosure that suits the place",
    ],
    ["concrete", "listed for concrete", "a connector listed for concrete"],
  ] as const)("refused in a %s place: %s", (location, required, fix) => {
    expect(check(location, ["dry"])).toMatchObject({ outcome: "fail", required, offered: "dry", fix });
  });
  test("a splice in the earth is cited by the clause for splices without a box; an end in it is not", () => {
    const states = (made: Joint["function"]) => {
      const finding = check("direct-burial", ["direct-burial"], { function: made });
      return "steps" in finding && finding.steps.some((step) => "cite" in step && step.cite.locator === "300.5(E)");
    };
    expect(states("splice")).toBe(true);
    expect(states("tap")).toBe(true);
    expect(states("termination")).toBe(false);
  });
  test("every kind of ground clamp in concrete goes by its mark for direct burial", () => {
    for (const family of ["rod-clamp", "pipe-clamp", "rebar-clamp"] as const)
      for (const [places, outcome] of [
        [["direct-burial"], "pass"],
        [["concrete"], "pass"],
        [["wet"], "fail"],
      ] as const)
        expect(check("concrete", places, { role: "electrode-conductor" }, { family }).outcome).toBe(outcome);
    expect(check("direct-burial", ["concrete"], {}, { family: "rod-clamp" }).outcome).toBe("fail");
  });
  test("where the place is not given, only what serves in the earth and in concrete passes", () => {
    for (const places of [["concrete"], ["direct-burial"], ["dry", "damp", "wet"], "unmarked", []] as const)
      expect(check(undefined, places)).toMatchObject({
        missing: [{ path: "joint/place/location" }],
        required: "listed for the place of the joint",
      });
    expect(check(undefined, ["direct-burial", "concrete"])).toMatchObject({
      outcome: "pass",
      offered: "direct-burial, concrete",
      sentence: "The place is not given, but the listing (direct-burial, concrete) covers every one.",
      steps: [{ origin: "connector/places" }, { value: "pass", uses: [1] }],
      conditions: [{ duty: "inspect-before-cover" }],
      cite: { locator: "110.11" },
    });
    expect(check(undefined, ["concrete"], {}, { family: "rod-clamp" }).outcome).toBe("missing");
  });
  test("a joint without equipment is judged by its place", () => {
    const { equipment: _equipment, ...apart } = sampleJoint({ place: { location: "wet" } });
    const judge = (places: readonly PlaceListing[]) =>
      placeListing.check(sampleSubject(apart, sampleConnector({ places })), nfpa70Edition2023);
    expect(judge(["wet"]).outcome).toBe("pass");
    expect(judge(["dry"])).toMatchObject({ rule: "place-listing", outcome: "fail", cite: { locator: "110.11" } });
    expect(judge(["equipment"]).outcome).toBe("missing");
  });
  test("the sentence says what the part is for and where the joint is", () => {
    expect(check("wet", ["dry", "damp"])).toMatchObject({
      sentence: "The connector is listed for dry, damp only; the joint is in a wet place.",
    });
    expect(check("damp", ["equipment"])).toMatchObject({
      sentence: "The connector is listed for use inside an enclosure, which covers a damp place.",
    });
  });
});
