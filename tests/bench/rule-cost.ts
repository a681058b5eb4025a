import {
  CALCULATIONS,
  type CalculationName,
  type CalculationQuestions,
  type Connector,
  calculate,
  checkJoint,
  type Edition,
  editionOf,
  type Joint,
  type JointQuestion,
  type JointSubject,
  landConductors,
  RULES,
  type Rule,
} from "@landfast/rules";
import { CALCULATION_QUESTIONS } from "../findings/calculation-questions.js";
import type { Draft } from "../oracle/draft.js";
import { generate } from "../oracle/generate.js";
import { MORE_JOINTS } from "../rule-cases/more-joints/all-more-joints.js";
import { moreJoint } from "../rule-cases/more-joints/more-joint.js";
import { median } from "./ratio.js";

/** Joints looked at; enough that every rule finds some that it applies to. */
const JOINTS = 2000;
/** Each rule and calculation is run this long before it is measured, for the runtime to compile it. */
const WARM_UP_MS = 1500;
/** Things measured in one go, and how often. */
const RUN = 50;
const TURNS = 15;
/** What a rule may cost against the middle one before a reason must stand here. */
const ALLOWED = 2;
const BASIS = { ruleSet: "nfpa70", edition: "2023" } as const;

/** Rules that cost more than twice the middle one, and why each is worth it. */
const REASONS: Readonly<Record<string, string>> = {
  "feeder-tap": "rates every part of each conductor, then weighs each allowance of 240.21(B)",
  "terminal-temperature": "rates connector, terminal and insulation of each conductor before it reads the ampacity",
  "device-protection": "rates every part of each conductor, then finds the next standard device",
  "device-load": "raises the continuous load exactly before it compares it with the device",
  "enclosure-fill": "adds up the area of everything in the enclosure, exactly",
  "torque-source": "follows each screw in use to a mark or to the annex",
  "wire-range": "compares each conductor with both ends of its range, by area",
  "strand-class": "lists the strand forms of each range in words, and tries a count of strands against every class",
  "conductors-per-opening": "counts and describes what lies in each opening",
  "bending-space": "reads the space for each conductor by the way it leaves",
  "equipment-ground-size": "finds the size by the device and raises it with the phases, exactly",
  "electrode-conductor-size": "finds the size by the supply's area and the caps of its electrodes",
  "bonding-jumper-size": "finds the size by the supply's area, of one raceway or all, and the caps of what is bonded",
  "listed-combination": "compares every listed combination with what lies in the opening",
  "metal-marking": "reads the mark in the table of marks, then compares each metal",
  "pin-landing": "judges the pin in the equipment's own terminal as a joint of its own",
  "unlike-metals": "compares every pair of conductors in an opening",
};

interface Asked {
  readonly question: JointQuestion;
  readonly subject: JointSubject;
  readonly edition: Edition;
}

/**
 * What each rule costs where it has something to say, with its derivation, against the middle rule; then joint checks
 * and calculations a second. A rule above the limit without a written reason ends the run with an error.
 */
export function benchRuleCost(): void {
  const asked = Array.from({ length: JOINTS }, (_, number) => askedOf(generate(number)));
  const check = secondsOf(asked, ({ question }) => {
    checkJoint(question);
  });
  const withMore = [...asked, ...MORE_JOINTS.map((one) => askedOf(moreJoint(one)))];
  const costs = RULES.map((rule) => costOf(rule, withMore)).sort((a, b) => b.microseconds - a.microseconds);
  const middle = median(costs.map(({ microseconds }) => microseconds));
  console.log(`Each rule where it applies, of ${withMore.length} joints; the middle rule ${middle.toFixed(2)} us`);
  for (const { id, microseconds, joints, steps } of costs) {
    const ratio = microseconds / middle;
    const reason = ratio > ALLOWED ? `  ${REASONS[id] ?? "NO REASON IS WRITTEN DOWN"}` : "";
    console.log(
      `  ${id.padEnd(26)} ${ratio.toFixed(2).padStart(5)} x  ${steps.toFixed(1).padStart(4)} steps  ${String(joints).padStart(4)} joints${reason}`,
    );
    if (ratio > ALLOWED && REASONS[id] === undefined) process.exitCode = 1;
  }
  console.log(`Joint checks with every rule and derivation: ${perSecond(asked.length, check)} a second`);
  for (const name of Object.keys(CALCULATIONS) as CalculationName[]) {
    const questions: readonly CalculationQuestions[typeof name][] = CALCULATION_QUESTIONS[name];
    const seconds = secondsOf(questions, (question) => {
      calculate(name, question as never, BASIS);
    });
    console.log(`  ${name.padEnd(20)} ${perSecond(questions.length, seconds).padStart(9)} a second`);
  }
}

function askedOf(generated: Draft): Asked {
  // As it comes over the wire: objects put together by spreading have a hidden class each, which no client's have.
  const { joint, connector } = JSON.parse(
    JSON.stringify({ joint: { ...generated.joint, basis: generated.basis }, connector: generated.connector }),
  ) as { readonly joint: Joint; readonly connector: Connector };
  const ownTerminal = connector.mounting.kind === "integral";
  return {
    question: { joint, basis: generated.basis, connector, origin: ownTerminal ? "equipment" : "catalogue" },
    subject: {
      joint,
      connector,
      origin: ownTerminal ? "joint/equipment/terminal" : "connector",
      landings: landConductors(joint, connector),
    },
    edition: editionOf(generated.basis),
  };
}

interface RuleCost {
  readonly id: string;
  readonly microseconds: number;
  readonly joints: number;
  readonly steps: number;
}

function costOf(rule: Rule, asked: readonly Asked[]): RuleCost {
  const applies: Asked[] = [];
  let steps = 0;
  for (const one of asked) {
    const answer = rule.check(one.subject, one.edition);
    if (answer.outcome === "not-applicable") continue;
    applies.push(one);
    steps += answer.steps.length;
  }
  if (applies.length === 0) throw new Error(`no generated joint is judged by ${rule.id}`);
  const seconds = secondsOf(applies, ({ subject, edition }) => {
    rule.check(subject, edition);
  });
  return {
    id: rule.id,
    microseconds: (seconds / applies.length) * 1e6,
    joints: applies.length,
    steps: steps / applies.length,
  };
}

/**
 * Seconds for one pass over all, from compiled code: the list is gone through in short runs, and each run counts with its
 * quickest turn, because what else the machine does can only lengthen one.
 */
function secondsOf<T>(all: readonly T[], work: (one: T) => void): number {
  const warm = performance.now() + WARM_UP_MS;
  while (performance.now() < warm) for (const one of all) work(one);
  const runs: (readonly T[])[] = [];
  for (let at = 0; at < all.length; at += RUN) runs.push(all.slice(at, at + RUN));
  const least = runs.map(() => Number.POSITIVE_INFINITY);
  for (let turn = 0; turn < TURNS; turn += 1)
    runs.forEach((run, index) => {
      const start = performance.now();
      for (const one of run) work(one);
      least[index] = Math.min(least[index] ?? 0, performance.now() - start);
    });
  return least.reduce((sum, milliseconds) => sum + milliseconds, 0) / 1000;
}

function perSecond(count: number, seconds: number): string {
  return (count / seconds).toFixed(0);
}
