import { describe, expect, test } from "vitest";
import { ELECTRODES } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import { EDITIONS } from "../../rulesets/editions.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { type ElectrodeConductorQuestion, electrodeConductor } from "./electrode-conductor.js";

const SERVICE = { size: "600 kcmil", metal: "copper", sets: 3 } as const;

function ask(change: Partial<ElectrodeConductorQuestion>, edition: Edition = nfpa70Edition2023) {
  const question: ElectrodeConductorQuestion = { metal: "copper", ...change };
  return electrodeConductor.answer(question, { ruleSet: "nfpa70", edition: edition.edition }, edition);
}

function main(change: Partial<ElectrodeConductorQuestion>, edition?: Edition) {
  const finding = ask(change, edition);
  if (finding.outcome !== "answered") throw new Error(`${finding.outcome}: ${finding.sentence}`);
  return finding.results[0]?.value;
}

describe("published worked examples", () => {
  // published: trade magazine EC&M, Code Q&A (web, undated): 1200 A service of three sets of 600 kcmil, not run to a rod,
  // concrete-encased electrode or ring: 1800 kcmil, 3/0 AWG
  test.each(EDITIONS)("$edition: three sets of 600 kcmil take 3/0 AWG", (edition) => {
    expect(main({ service: SERVICE, electrode: "water-pipe" }, edition)).toBe("3/0 AWG");
  });
  // published: the answers in a trade forum on a 400 A service (web): whatever the service, 6 AWG copper to rods alone
  test("6 AWG to rods alone", () => {
    const service = { size: "500 kcmil", metal: "copper", sets: 1 } as const;
    expect(main({ service, electrode: "copper-bonded-rod", soleConnection: true })).toBe("6 AWG");
    expect(main({ service, electrode: "water-pipe" })).toBe("1/0 AWG");
  });
});

describe("size of an electrode conductor", () => {
  const alone = (change: Partial<ElectrodeConductorQuestion>) =>
    main({ service: SERVICE, soleConnection: true, ...change });
  // published: rows of Table 250.66 by area
  test.each([
    ["2 AWG", "8 AWG"],
    ["1 AWG", "6 AWG"],
    ["1/0 AWG", "6 AWG"],
    ["2/0 AWG", "4 AWG"],
    ["3/0 AWG", "4 AWG"],
    ["4/0 AWG", "2 AWG"],
    ["350 kcmil", "2 AWG"],
    ["400 kcmil", "1/0 AWG"],
    ["600 kcmil", "1/0 AWG"],
    ["700 kcmil", "2/0 AWG"],
  ])("a copper service of %s: %s", (size, conductor) => {
    expect(main({ service: { size, metal: "copper", sets: 1 }, soleConnection: false })).toBe(conductor);
  });
  // hand: two sets of 3/0 AWG are 335.6 kcmil; of 4/0 AWG aluminum 423.2 kcmil
  test("sets of a phase count together, aluminum in its own rows", () => {
    expect(main({ service: { size: "3/0 AWG", metal: "copper", sets: 2 }, soleConnection: false })).toBe("2 AWG");
    expect(main({ service: { size: "4/0 AWG", metal: "aluminum", sets: 2 }, soleConnection: false })).toBe("2 AWG");
    expect(main({ service: SERVICE, metal: "aluminum", electrode: "building-steel" })).toBe("250 kcmil");
  });
  test.each([
    ["copper-bonded-rod", "6 AWG", "4 AWG"],
    ["galvanized-rod", "6 AWG", "4 AWG"],
    ["stainless-rod", "6 AWG", "4 AWG"],
    ["plate", "6 AWG", "4 AWG"],
    ["concrete-encased-rebar", "4 AWG", "250 kcmil"],
    ["water-pipe", "3/0 AWG", "250 kcmil"],
    ["building-steel", "3/0 AWG", "250 kcmil"],
  ] as const)("to a %s alone: %s copper, %s aluminum", (electrode, copper, aluminum) => {
    expect(alone({ electrode })).toBe(copper);
    expect(alone({ electrode, metal: "aluminum" })).toBe(aluminum);
  });
  test("to a ring alone no larger than the ring", () => {
    expect(alone({ electrode: "ground-ring", ringSize: "2 AWG" })).toBe("2 AWG");
    expect(alone({ electrode: "ground-ring", ringSize: "4/0 AWG" })).toBe("3/0 AWG");
    expect(alone({ electrode: "ground-ring", ringSize: "2 AWG", metal: "aluminum" })).toBe("250 kcmil");
    expect(ask({ service: SERVICE, electrode: "ground-ring", soleConnection: true }).missing[0]?.path).toBe(
      "question/ringSize",
    );
    const metric = { service: SERVICE, electrode: "ground-ring", soleConnection: true, ringSize: "35 mm2" } as const;
    expect(ask(metric).refusal?.code).toBe("OUTSIDE_TABLE");
  });
  test.each(ELECTRODES)("to a %s and on to another: by the service", (electrode) => {
    expect(main({ service: SERVICE, electrode, soleConnection: false })).toBe("3/0 AWG");
  });
  test("the service that asks for the size is named", () => {
    expect(ask({ service: SERVICE, soleConnection: false }).sentence).toBe(
      "The electrode conductor is 3/0 AWG copper or larger: the service of 3 x 600 kcmil asks for it.",
    );
    expect(ask({ service: { ...SERVICE, sets: 1 }, soleConnection: false }).sentence).toContain(
      "the service of 600 kcmil asks for it",
    );
  });
  test("aluminum draws advice", () => {
    expect(ask({ service: SERVICE, metal: "aluminum", soleConnection: false }).advice[0]).toContain("250.64(A)");
  });
});

describe("facts that are missing and questions that are refused", () => {
  test("the service is asked for", () => {
    expect(ask({ electrode: "plate" })).toMatchObject({ missing: [{ path: "question/service" }] });
  });
  test("electrode and sole connection are asked for only where a smaller size may be enough", () => {
    expect(ask({ service: SERVICE }).missing[0]?.path).toBe("question/electrode");
    expect(ask({ service: SERVICE, electrode: "plate" }).missing[0]?.path).toBe("question/soleConnection");
    expect(ask({ service: SERVICE, electrode: "water-pipe" }).outcome).toBe("answered");
    // published: Table 250.66: 1/0 AWG copper 6 AWG copper or 4 AWG aluminum, which is the least to a rod too; 2/0 AWG copper
    // 4 AWG or 2 AWG aluminum, and a rod alone would need less
    const small = { size: "1/0 AWG", metal: "copper", sets: 1 } as const;
    expect(main({ service: small })).toBe("6 AWG");
    expect(main({ service: small, metal: "aluminum" })).toBe("4 AWG");
    const larger = { ...small, size: "2/0 AWG" };
    expect(ask({ service: larger }).missing[0]?.path).toBe("question/electrode");
    expect(ask({ service: larger, metal: "aluminum" }).missing[0]?.path).toBe("question/electrode");
    const medium = { size: "3/0 AWG", metal: "copper", sets: 1 } as const;
    expect(ask({ service: medium, electrode: "concrete-encased-rebar" }).outcome).toBe("answered");
  });
  test("a service of another system is refused, sets must be counted", () => {
    expect(ask({ service: { ...SERVICE, size: "240 mm2" } }).refusal).toEqual({
      code: "OUTSIDE_TABLE",
      detail: "question/service/size must be a size in AWG or kcmil, not 240 mm2.",
    });
    expect(() => ask({ service: { ...SERVICE, sets: 0 } })).toThrow("question/service/sets");
  });
});
