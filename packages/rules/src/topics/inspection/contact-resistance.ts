import type { Calculation } from "../../core/calculation.js";
import { CalculationSheet, isClosed } from "../../core/calculation-sheet.js";
import { listWords } from "../../core/conductor-words.js";
import { add, divide, exactOf } from "../../core/exact.js";
import type { Step } from "../../core/finding.js";
import { UnusableFact } from "../../core/unusable-fact.js";

const NAME = "contact-resistance";
const UNIT = "micro-ohm";

export interface JointReading {
  /** Which joint: "phase A". Each joint is read once. */
  readonly joint: string;
  readonly microOhm: number;
}

export interface ContactResistanceQuestion {
  /** Two or more joints that are alike: same make, size and place in their circuit. */
  readonly readings: readonly JointReading[];
}

interface Reading {
  readonly joint: string;
  readonly step: Step;
}

/**
 * Which of several like joints has too high a resistance?
 *
 * NETA ATS (Section 7, test values of bolted connections; like poles have the same words), in our words: a joint whose value
 * is off that of similar ones by more than 50 percent of the lowest is looked into. So the limit is the lowest reading and a
 * half more, in micro-ohms; a reading at the limit passes.
 * Worked: 18, 19 and 30 micro-ohm: 18 x 1.5 = 27; 30 is above it.
 * Silent: what a sound joint reads at all: joints that are equally bad pass against each other. The maker's value comes first.
 */
export const contactResistance: Calculation<ContactResistanceQuestion> = {
  name: NAME,
  title: "Resistance of like joints against each other",
  clauses: ["likeJoints"],
  needs: ["question/readings"],
  cannotSee: "whether the joints are alike, were read in one way, and are good at all",
  answer(question, basis, edition) {
    const sheet = new CalculationSheet(NAME, basis);
    const table = edition.tables.likeJointResistance;
    const readings = readingsOf(sheet, question);
    const [first] = readings;
    if (first === undefined) throw new Error("no reading was taken");
    const lowest = readings.reduce((low, one) => (Number(one.step.value) < Number(low.step.value) ? one : low), first);
    const least = sheet.conclude(
      "lowest reading",
      lowest.step.value,
      readings.map(({ step }) => step),
      `that of ${lowest.joint}; the others are not below it`,
      table.cite,
      UNIT,
    );
    const deviation = sheet.readAt(
      "deviation allowed, of the lowest",
      table,
      "bolted connections",
      "deviationPercent",
      [],
    );
    if (isClosed(deviation)) return deviation;
    const share = sheet.exactly(
      "limit against the lowest",
      add(exactOf(1), divide(sheet.exact(deviation), exactOf(100))),
      "1",
      [deviation],
      "1 + deviation allowed / 100",
      `1 + ${String(deviation.value)} / 100`,
      table.cite,
    );
    const limit = sheet.multiply("limit", [least, share], UNIT, table.cite);
    const judged = readings.map(({ joint, step }) => {
      const passes = sheet.compare(`the reading of ${joint} is within the limit`, step, "<=", limit, table.cite);
      const outcome = sheet.conclude(
        joint,
        passes ? "pass" : "look into it",
        [sheet.last],
        passes ? "not above the limit" : "above the limit",
        table.cite,
      );
      return { joint, step, passes, outcome };
    });
    const suspect = judged.filter(({ passes }) => !passes);
    const main = sheet.conclude(
      "joints to look into",
      suspect.map(({ joint }) => joint),
      judged.map(({ outcome }) => outcome),
      suspect.length === 0 ? "no reading is above the limit" : "their readings are above the limit",
      table.cite,
    );
    // Unrounded, so that a reading just above the limit does not look equal to it.
    const limitText = `the limit is ${String(limit.value)} ${UNIT}, ${String(share.value)} times the lowest reading of ${String(least.value)}`;
    const told = suspect.map(({ joint, step }) => `${joint} (${String(step.value)} ${UNIT})`);
    return sheet.finish({
      sentence:
        suspect.length === 0
          ? `All ${String(readings.length)} joints pass: ${limitText}.`
          : `Look into ${listWords(told)}: ${limitText}.`,
      cite: table.cite,
      results: [
        { name: "joints to look into", step: main },
        { name: "limit", step: limit },
        { name: "lowest reading", step: least },
        { name: "deviation allowed", step: deviation },
        ...judged.map(({ joint, outcome }) => ({ name: `reading of ${joint}`, step: outcome })),
      ],
      advice: [
        "Joints that are equally bad pass against each other: compare with the maker's value and with earlier readings too.",
        ...(suspect.length === 0
          ? []
          : ["A reading above the limit is a reason to open the joint and see, not yet a proof that it is bad."]),
      ],
    });
  },
};

function readingsOf(sheet: CalculationSheet, { readings }: ContactResistanceQuestion): readonly Reading[] {
  if (readings.length < 2)
    throw new UnusableFact(
      "question/readings",
      `must have two readings or more, not ${String(readings.length)}: a joint is compared with its like`,
      "a list of two readings or more",
    );
  const names = new Set<string>();
  return readings.map(({ joint, microOhm }, index) => {
    const path = `question/readings/${String(index)}`;
    if (names.has(joint))
      throw new UnusableFact(`${path}/joint`, `must name a joint once; ${joint} stands twice`, "a name of its own");
    names.add(joint);
    return { joint, step: sheet.positive(`reading of ${joint}`, microOhm, `${path}/microOhm`, UNIT) };
  });
}
