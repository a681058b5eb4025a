import { describe, expect, test } from "vitest";
import type { Equipment } from "../../core/joint.js";
import type { ProjectRule } from "../../core/project-rule.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { equipment, KIT, PIN, REDUCER, takes, terminal, tooLarge } from "../../samples/sample-remedies.js";
import { candidatesWithRemedies } from "./candidates-with-remedies.js";
import { remediesUnder } from "./find-remedies.js";

const BASIS = { ruleSet: "nfpa70", edition: "2023" } as const;
const CATALOGUE = [REDUCER, PIN, KIT];

const rule = (scope: ProjectRule["scope"], demand: ProjectRule["demand"]): ProjectRule =>
  scope === undefined
    ? { id: "R-1", source: "specification", demand }
    : { id: "R-1", source: "specification", demand, scope };
const NO_SCREWS = { kind: "forbid-construction", constructions: ["set-screw"] } as const;

function kindsUnder(
  rules: readonly ProjectRule[],
  change: Partial<Equipment> = {},
  instead: readonly Equipment[] = [],
) {
  const found = remediesUnder(
    tooLarge({ equipment: equipment(change) }),
    BASIS,
    CATALOGUE,
    { context: {}, equipmentInstead: instead, projectRules: rules },
    nfpa70Edition2023,
  );
  return { kinds: [...new Set(found.remedies.map(({ kind }) => kind))], found };
}

// hand: 250 kcmil aluminum on a lug that stops at 4/0 AWG; the pin is pressed, splicer and terminal have set screws
describe("the project's rules are asked of each joint of a remedy by its own function, size and equipment", () => {
  test("without rules: a pin and stubs", () => {
    expect(kindsUnder([]).kinds).toEqual(["pin-adapter", "stub"]);
  });
  test("what is forbidden in splices forbids the splice of a stub, though the joint asked about is a termination", () => {
    expect(kindsUnder([rule({ functions: ["splice"] }, NO_SCREWS)]).kinds).toEqual(["pin-adapter"]);
  });
  test("what is forbidden in terminations does not touch the splice of a stub", () => {
    const never = { kind: "forbid-family", families: ["splicer-reducer"] } as const;
    expect(kindsUnder([rule({ functions: ["termination"] }, never)]).kinds).toEqual(["pin-adapter", "stub"]);
    expect(kindsUnder([rule(undefined, never)]).kinds).toEqual(["pin-adapter"]);
  });
  test("what is forbidden from 250 kcmil on leaves two legs of 2/0 AWG, and forbidden from 1/0 AWG on it does not", () => {
    const barrels = { terminal: terminal({ openings: takes("6 AWG", "4/0 AWG", { count: 2 }) }) };
    expect(kindsUnder([], barrels).kinds).toContain("parallel-sets");
    expect(kindsUnder([rule({ fromSize: "250 kcmil" }, NO_SCREWS)], barrels).kinds).toContain("parallel-sets");
    expect(kindsUnder([rule({ fromSize: "1/0 AWG" }, NO_SCREWS)], barrels).kinds).not.toContain("parallel-sets");
  });
  test("what is forbidden at switchboards keeps a switchboard from being named in place of a panelboard", () => {
    const instead = equipment({ kind: "switchboard", terminal: terminal({ openings: takes("2/0 AWG", "500 kcmil") }) });
    expect(kindsUnder([], {}, [instead]).kinds).toContain("larger-frame");
    const rules = [rule({ equipmentKinds: ["switchboard"] }, NO_SCREWS)];
    expect(kindsUnder(rules, {}, [instead]).kinds).not.toContain("larger-frame");
  });
  test("a kit that the project forbids is neither proposed nor asked about, in this frame and in another", () => {
    const rules = [rule(undefined, { kind: "forbid-part", partNumbers: ["KIT-400"] })];
    const stud = { frame: "Frame 400" };
    expect(kindsUnder([], stud).kinds).toContain("lug-kit");
    expect(kindsUnder(rules, stud).kinds).not.toContain("lug-kit");
    for (const frame of [{}, { frame: "Frame 100" }]) {
      expect(kindsUnder([], frame).found.open).toMatchObject([{ partNumber: "KIT-400" }]);
      expect(kindsUnder(rules, frame).found.open).toEqual([]);
    }
  });
  test("a rule whose scope needs a fact is asked with the kit, in words", () => {
    const { found } = kindsUnder([rule({ areas: ["Roof"] }, NO_SCREWS)]);
    expect(found.open.map(({ missing }) => missing.map(({ path }) => path))).toEqual([
      ["joint/equipment/frame", "joint/area"],
    ]);
    expect(found.remedies).toEqual([]);
  });
  test("a terminal that the code allows and the project refuses gets a remedy, and the joints are shown as posted", () => {
    const own = { terminal: terminal({ openings: takes("6 AWG", "250 kcmil") }), frame: "Frame 400" };
    expect(kindsUnder([], own).found).toMatchObject({ remedies: [] });
    const { found } = kindsUnder([rule(undefined, { kind: "require-family", families: ["lug-kit"] })], own);
    expect(found.because).toContain("Rule R-1 of the project is broken");
    expect(found.remedies).toMatchObject([{ kind: "lug-kit" }]);
    for (const { joints } of found.remedies)
      for (const { joint } of joints) expect(joint).not.toHaveProperty("projectRules");
  });
});

test("candidates are held to the rules for the joint, and their remedies to those for each of its joints", () => {
  const ask = (rules: readonly ProjectRule[]) =>
    candidatesWithRemedies(tooLarge(), BASIS, [REDUCER], {}, rules, nfpa70Edition2023);
  expect(ask([]).remedies?.remedies.map(({ kind }) => kind)).toEqual(["stub", "stub"]);
  expect(ask([rule({ functions: ["splice"] }, NO_SCREWS)]).remedies?.remedies).toEqual([]);
  const landing = (rules: readonly ProjectRule[]) =>
    candidatesWithRemedies(
      tooLarge({ equipment: equipment({ frame: "Frame 400" }) }),
      BASIS,
      [KIT],
      {},
      rules,
      nfpa70Edition2023,
    );
  expect(landing([]).candidates).toMatchObject([{ partNumber: "KIT-400" }]);
  expect(landing([rule({ functions: ["termination"] }, NO_SCREWS)])).toMatchObject({
    candidates: [],
    excluded: [{ rule: "project-rules", connectors: 1 }],
  });
});
