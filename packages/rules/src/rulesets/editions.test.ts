import { describe, expect, test } from "vitest";
import type { Basis } from "../core/joint.js";
import { EDITIONS, editionOf } from "./editions.js";

// published: NFPA 70 is issued every three years; those of 2017, 2020 and 2023 are answered for
describe("the edition that a basis names", () => {
  test.each(["2017", "2020", "2023"] as const)("%s", (edition) => {
    expect(editionOf({ ruleSet: "nfpa70", edition })).toMatchObject({ ruleSet: "nfpa70", edition });
    expect(editionOf({ ruleSet: "nfpa70", edition, installedOn: "2024-05-01" }).edition).toBe(edition);
  });
  test("each once, oldest first", () => {
    expect(EDITIONS.map(({ edition }) => edition)).toEqual(["2017", "2020", "2023"]);
  });
  test.each([
    { ruleSet: "nfpa70", edition: "2014" },
    { ruleSet: "nfpa70", edition: "" },
    { ruleSet: "csa", edition: "2023" },
  ])("no other is answered by the nearest: %j is refused with those that are", (basis) => {
    expect(() => editionOf(basis as Basis)).toThrow(
      new RangeError(
        `no rules for ${basis.ruleSet} ${basis.edition}; answered are nfpa70 2017, nfpa70 2020, nfpa70 2023`,
      ),
    );
  });
});
