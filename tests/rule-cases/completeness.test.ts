/**
 * Does every rule and calculation have its cases? A rule: an accept, a reject, a missing fact, and each of its
 * comparisons met below, at and above its limit. A calculation: an answer and a refusal or a question. Among the cases of
 * derivations.test.ts and the joints of tests/oracle, which judges each of them a second time.
 */
import { CALCULATIONS, type CalculationName, type CheckFinding, calculate, EDITIONS, RULES } from "@landfast/rules";
import { beforeAll, describe, expect, test } from "vitest";
import { libraryFinding } from "../oracle/compare.js";
import { generate } from "../oracle/generate.js";
import { questionsOf } from "./calculation-cases.js";
import { MORE_JOINTS } from "./more-joints/all-more-joints.js";
import { moreJoint } from "./more-joints/more-joint.js";

const JOINTS = 3000;

type Side = "below" | "at" | "above";

/** Outcomes that a rule cannot have, and why. */
const CANNOT: Readonly<Record<string, Partial<Record<CheckFinding["outcome"], string>>>> = {
  "connector-function": { missing: "the kind of joint and what the connector is for are asked of every joint" },
  "torque-source": { fail: "a torque is found or asked for; no torque forbids a joint" },
  "device-load": { missing: "it speaks only where device and load are given; the rules beside it ask for them" },
  "grounding-connection": { fail: "an unlisted part is asked about, and every listed part or weld is named" },
  "aluminum-preparation": { fail: "it tells what to do", missing: "it tells what to do whatever is known" },
  "insulating-cover": { fail: "a bare connector may be covered", missing: "the duty to cover needs no further fact" },
  rework: { missing: "what was done before is stated, or the joint is new" },
};

/** Sides of their limit on which comparisons cannot be met, and why. */
const ONE_SIDED: readonly (readonly [comparison: RegExp, sides: readonly Side[], because: string])[] = [
  [
    /a strand is no (thinner|thicker) than class/,
    ["at"],
    "no size divided by a whole number of strands lies exactly at an end; the rule's own test holds both sides",
  ],
  [
    /the device may be the next standard rating/,
    ["below", "at"],
    "written only where the device is beyond it, to say why it is refused",
  ],
  [/the device is within the allowance/, ["above"], "written only where it holds"],
  [/the tap is short enough/, ["below", "at"], "written only where no allowance is long enough"],
  [/the tap is within the length of this allowance/, ["above"], "written only where it holds"],
  [/the neutral has its terminal to itself/, ["below"], "a terminal holds at least one conductor"],
  [/the slot is longer than the last row/, ["below"], "written only where the last row is reached"],
];

/** Calculations that have nothing to refuse or ask, and why. */
const NEVER_REFUSE: Partial<Readonly<Record<CalculationName, string>>> = {
  "contact-resistance": "readings that cannot be compared are named as unusable, and no other fact is needed",
};

/** Outcomes by rule, and for each comparison of numbers the sides of its limit that were met. */
const outcomes = new Map<string, Set<string>>();
const sides = new Map<string, Set<Side>>();

function note({ rule, outcome, steps }: CheckFinding): void {
  outcomes.set(rule, (outcomes.get(rule) ?? new Set()).add(outcome));
  for (const step of steps) {
    if (step.kind !== "compared") continue;
    const [left, right] = [steps[step.left - 1]?.value, steps[step.right - 1]?.value];
    if (typeof left !== "number" || typeof right !== "number") continue;
    const name = `${rule}: ${step.label.replaceAll(/\d[\d./-]*( (AWG|kcmil|mm2))?/g, "#")}`;
    sides.set(name, (sides.get(name) ?? new Set()).add(left < right ? "below" : left > right ? "above" : "at"));
  }
}

beforeAll(() => {
  for (let number = 0; number < JOINTS; number += 1) libraryFinding(generate(number)).findings.forEach(note);
  for (const more of MORE_JOINTS) libraryFinding(moreJoint(more)).findings.forEach(note);
}, 120_000);

describe("rules", () => {
  test.each(RULES.map(({ id }) => [id]))("%s has an accept, a reject and a missing fact", (id) => {
    const met = outcomes.get(id) ?? new Set();
    const cannot = CANNOT[id] ?? {};
    for (const outcome of ["pass", "fail", "missing"] as const)
      if (cannot[outcome] === undefined) expect([...met], `${id} lacks ${outcome}`).toContain(outcome);
      else expect([...met], `${id} can ${outcome} after all`).not.toContain(outcome);
  });

  test("each comparison of numbers is met below, at and above its limit", () => {
    const lacking = [...sides].flatMap(([name, met]) => {
      const cannot = ONE_SIDED.flatMap(([like, lacks]) => (like.test(name) ? lacks : []));
      return (["below", "at", "above"] as const)
        .filter((side) => met.has(side) === cannot.includes(side))
        .map((side) => `${name}: ${met.has(side) ? "after all" : "never"} ${side}`);
    });
    expect(lacking.sort()).toEqual([]);
    expect(ONE_SIDED.filter(([like]) => ![...sides.keys()].some((name) => like.test(name)))).toEqual([]);
  });

  test("no reason stands for a rule that is gone", () => {
    const known = new Set(RULES.map(({ id }) => id));
    expect([...Object.keys(CANNOT), ...MORE_JOINTS.map(({ rule }) => rule)].filter((id) => !known.has(id))).toEqual([]);
  });
});

describe("calculations", () => {
  test.each((Object.keys(CALCULATIONS) as CalculationName[]).map((name) => [name] as const))(
    "%s has an answer, and a refusal or a question",
    (name) => {
      const met = new Set<string>();
      for (const question of questionsOf(name))
        for (const { ruleSet, edition } of EDITIONS)
          met.add(calculate(name, question as never, { ruleSet, edition }).outcome);
      expect([...met]).toContain("answered");
      expect(met.has("refused") || met.has("missing")).toBe(NEVER_REFUSE[name] === undefined);
    },
  );
});
