/** The project's own rules against a second statement of them, on generated joints that the code allows. */
import { checkJoint, PROJECT_RULE_KINDS, type ProjectRule, type Verdict } from "@landfast/rules";
import { beforeAll, describe, expect, test } from "vitest";
import { libraryFinding } from "../oracle/compare.js";
import { Dice } from "../oracle/dice.js";
import { type Generated, generate } from "../oracle/generate.js";
import { randomRule } from "./random-rules.js";
import { type Judgment, judgeRule } from "./second-statement.js";

const JOINTS = 2000;
const RULES_EACH = 3;

interface Compared {
  readonly question: Generated;
  readonly rule: ProjectRule;
  readonly second: Judgment;
  readonly verdict: Verdict;
}

const accepts = (verdict: Verdict): boolean => verdict.startsWith("accept");

/** Each rule alone, and all of them together, on joints that are accepted without any. */
function compareAll(): { readonly alone: readonly Compared[]; readonly together: readonly Compared[] } {
  const alone: Compared[] = [];
  const together: Compared[] = [];
  for (let number = 0, met = 0; met < JOINTS; number += 1) {
    const question = numbered(generate(number));
    if (!accepts(libraryFinding(question).verdict)) continue;
    met += 1;
    const dice = new Dice(Math.imul(number + 1, 0x27d4eb2f));
    const rules = Array.from({ length: RULES_EACH }, (_, index) => randomRule(dice, question, `R-${String(index)}`));
    const judged = rules.map((rule): Compared => compareOne(question, rule, [rule]));
    alone.push(...judged);
    const [first] = rules;
    if (first !== undefined) together.push({ ...compareOne(question, first, rules), second: worstOf(judged) });
  }
  return { alone, together };
}

/** Half of the parts that are brought to the joint bear a number. */
function numbered(question: Generated): Generated {
  const { joint, connector, number } = question;
  if (connector !== joint.equipment?.terminal && number % 2 === 0) connector.partNumber = "C-1";
  return question;
}

function compareOne(question: Generated, rule: ProjectRule, projectRules: readonly ProjectRule[]): Compared {
  const { joint, connector, basis } = question;
  const origin = connector === joint.equipment?.terminal ? "equipment" : "request";
  const { verdict } = checkJoint({ joint, connector, basis, origin, projectRules });
  return { question, rule, second: judgeRule({ joint, connector, edition: basis.edition }, rule), verdict };
}

function worstOf(judged: readonly Compared[]): Judgment {
  const all = judged.map(({ second }) => second);
  return all.includes("broken") ? "broken" : all.includes("open") ? "open" : "kept";
}

describe(`${String(JOINTS)} joints that the code allows, with ${String(RULES_EACH)} rules of a project each`, () => {
  let alone: readonly Compared[] = [];
  let together: readonly Compared[] = [];
  beforeAll(() => {
    ({ alone, together } = compareAll());
  }, 300_000);

  const shown = (differing: readonly Compared[]) =>
    differing.slice(0, 5).map(({ question, rule, second, verdict }) => ({
      joint: question.number,
      rule: JSON.stringify({ scope: rule.scope, demand: rule.demand }),
      second,
      verdict,
    }));

  test("what the second statement refuses, the library refuses", () => {
    expect(shown(alone.filter(({ second, verdict }) => second === "broken" && verdict !== "reject"))).toEqual([]);
    expect(shown(together.filter(({ second, verdict }) => second === "broken" && verdict !== "reject"))).toEqual([]);
  });

  test("what the second statement has to ask about, the library does not accept", () => {
    expect(shown(alone.filter(({ second, verdict }) => second === "open" && accepts(verdict)))).toEqual([]);
    expect(shown(together.filter(({ second, verdict }) => second === "open" && accepts(verdict)))).toEqual([]);
  });

  test("what the second statement keeps, the library accepts, but where a lug is required and there is none", () => {
    const stricter = alone.filter(({ second, verdict }) => second === "kept" && !accepts(verdict));
    const explained = (one: Compared): boolean =>
      one.rule.demand.kind === "require-holes" && one.question.connector.mounting.kind !== "pad";
    expect(shown(stricter.filter((one) => !explained(one)))).toEqual([]);
  });

  test("every kind of rule is met broken and kept", () => {
    for (const kind of PROJECT_RULE_KINDS) {
      const of = alone.filter(({ rule }) => rule.demand.kind === kind);
      const seen = new Set(of.map(({ second }) => second));
      expect([kind, seen.has("kept"), seen.has("broken")]).toEqual([kind, true, true]);
    }
    expect(alone.filter(({ second }) => second === "broken").length).toBeGreaterThan(1000);
    expect(alone.some(({ second }) => second === "open")).toBe(true);
  });
});
