import type { ConductorGroup } from "../../core/conductor.js";
import { amperesText } from "../../core/conductor-ampacity.js";
import { conductorPath } from "../../core/conductor-path.js";
import { compareSizes, parseSize, sizeOf } from "../../core/conductor-size.js";
import { metalWords } from "../../core/conductor-words.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Duty, Step } from "../../core/finding.js";
import type { Joint, SmallLegs } from "../../core/joint.js";
import { isAsked, loadForSizing, writeLoad } from "../../core/joint-load.js";
import type { Bound } from "../../core/rating-source.js";
import { asking, type JointSubject, NO_CONDITIONS, notApplicable, type Rule, settled } from "../../core/rule.js";
import {
  conductorLimit,
  decideLimit,
  sizeOutsideTable,
  writeAmpacity,
  writeLimit,
} from "../../core/termination-limit.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "parallel-legs";
const SMALLEST = sizeOf("1/0 AWG");
const SMALLEST_EXISTING_NEUTRAL = sizeOf("2 AWG");

/**
 * May the conductors of a phase share its current in parallel?
 *
 * NFPA 70 310.10(G) (2020, 2023; 310.10(H) in 2017), in our words: only from 1/0 AWG up, by area; and every leg has
 * the same length, metal, size and insulation and is terminated in the same manner, or the current shares unevenly.
 * Exceptions: control power and frequencies of 360 Hz and more, where each leg carries the whole load and the device is
 * within the ampacity of one leg; neutrals of 2 and 1 AWG in an existing installation under engineering supervision.
 * Worked: two sets of 1/0 AWG are allowed, two sets of 1 AWG are not, whatever they would carry together.
 * Equipment grounds and bonding jumpers must be alike too, but are not held to the 1/0 minimum. In a tap the conductor that
 * runs through belongs to another circuit, and leads of listed equipment follow their equipment. The two sides of a splice
 * may differ, the legs in one terminal may not.
 */
export const parallelLegs: Rule = {
  id: ID,
  title: "Conductors in parallel",
  clauses: ["parallel", "conductorAreas"],
  needs: [
    "joint/circuit/sets",
    "joint/circuit/parallelLegsAlike",
    "joint/circuit/smallLegs",
    "joint/circuit/protection",
    "joint/circuit/loadA",
    "joint/conductors/0/size",
    "joint/conductors/0/metal",
    "joint/conductors/0/insulation",
  ],
  cannotSee: "the lengths as pulled and the raceways of the legs",
  check(subject, edition) {
    const { joint } = subject;
    const { circuit } = joint;
    if (joint.role === "electrode-conductor")
      return notApplicable(ID, "a grounding electrode conductor does not run in parallel with the circuit");
    if (circuit === undefined || circuit.sets === 1)
      return notApplicable(ID, "the circuit has one conductor per phase");
    const worksheet = new Worksheet();
    const sets = worksheet.given("conductors in parallel per phase", circuit.sets, "joint/circuit/sets");
    return judge(subject, worksheet, sets, edition);
  },
};

/** Too small a leg is refused whatever else is known; then legs that differ; then the statement on them decides. */
function judge(subject: JointSubject, worksheet: Worksheet, sets: Step, edition: Edition): CheckFinding {
  const { joint } = subject;
  const cite = edition.clauses.parallel;
  const grounding = joint.role === "equipment-ground" || joint.role === "bonding";
  const text = { cite, required: `legs ${grounding ? "" : "of 1/0 AWG or larger, "}alike and terminated alike` };
  const compared: Step[] = [];
  let asked: AskedFact | undefined;
  let small: SmallLegs | undefined;
  for (const [group, conductor] of joint.conductors.entries()) {
    if (grounding || !isLeg(joint, conductor)) continue;
    const path = conductorPath(group, "size");
    const size = parseSize(conductor.size);
    if ("problem" in size || size.series !== "awg-kcmil") {
      asked ??= {
        path,
        because: "The least size of a leg is given in AWG; a size of another system cannot be set against it.",
      };
      continue;
    }
    if (compareSizes(size, SMALLEST) < 0 && joint.circuit?.smallLegs !== undefined) {
      const outcome = judgeSmallLeg(subject, worksheet, group, joint.circuit.smallLegs, edition);
      if ("rule" in outcome) return outcome;
      if ("path" in outcome) asked ??= outcome;
      else compared.push(outcome);
      small = joint.circuit.smallLegs;
      continue;
    }
    const given = worksheet.given("size of a leg", size.text, path);
    const area = worksheet.state(`area of ${size.text}`, size.areaKcmil, edition.clauses.conductorAreas, "kcmil", [
      given,
    ]);
    const smallest = worksheet.state("area of 1/0 AWG", SMALLEST.areaKcmil, edition.clauses.conductorAreas, "kcmil");
    if (!worksheet.compare("the leg is 1/0 AWG or larger", area, ">=", smallest, cite))
      return settled(ID, worksheet, {
        sentence: `${conductor.size} is too small to be laid in parallel; that is allowed from 1/0 AWG up.`,
        cite,
        required: "1/0 AWG or larger",
        offered: conductor.size,
        fix: "one larger conductor, or legs of 1/0 AWG or larger",
        advice: SMALL_LEGS_ADVICE,
      });
    compared.push(worksheet.last);
  }
  const unlike = unlikeLegs(joint);
  if (unlike !== undefined) return refuseSeenUnlike(joint, worksheet, unlike, edition);
  const alike = joint.circuit?.parallelLegsAlike;
  if (alike === false) return refuseUnlike(worksheet, edition);
  if (asked !== undefined) return asking(ID, worksheet, asked.path, asked.because, text);
  if (alike === undefined)
    return asking(
      ID,
      worksheet,
      "joint/circuit/parallelLegsAlike",
      "It is not stated that all legs are alike in length, metal, size and insulation and terminated in the same manner.",
      text,
    );
  if (compared.length === 0 && !grounding)
    return asking(
      ID,
      worksheet,
      "joint/conductors/0/duty",
      "No conductor of the joint is said to be a leg of this circuit.",
      text,
    );
  const stated = worksheet.given(
    "the legs are alike and terminated in the same manner",
    true,
    "joint/circuit/parallelLegsAlike",
  );
  worksheet.conclude(
    "the legs may run in parallel",
    "pass",
    [sets, ...compared, stated],
    grounding
      ? "alike and terminated alike; the least size is not for grounds"
      : "large enough, alike and terminated alike",
    cite,
  );
  return settled(ID, worksheet, {
    sentence: `The ${String(sets.value)} legs are ${grounding ? "" : small === undefined ? "1/0 AWG or larger, and are " : "allowed below 1/0 AWG by the use stated, and are "}stated to be alike and terminated in the same manner.`,
    cite,
    required: text.required,
    offered: "as asked",
    conditions: small === undefined ? NO_CONDITIONS : [smallLegsDuty(small, edition)],
  });
}

interface AskedFact {
  readonly path: string;
  readonly because: string;
}

const SMALL_LEGS_ADVICE: readonly string[] = Object.freeze([
  "Smaller legs are allowed for control power, for 360 Hz and more, and for neutrals of an existing installation: say so where it is one of these.",
]);

/** A leg below 1/0 AWG by one of the exceptions: a refusal, a fact to ask for, or the step by which it is allowed. */
function judgeSmallLeg(
  subject: JointSubject,
  worksheet: Worksheet,
  group: number,
  use: SmallLegs,
  edition: Edition,
): CheckFinding | AskedFact | Step {
  const { joint } = subject;
  const cite = edition.clauses.parallel;
  const conductor = joint.conductors[group];
  if (conductor === undefined) throw new Error("no such conductor");
  const stated = worksheet.given("use that allows legs below 1/0 AWG", use, "joint/circuit/smallLegs");
  const size = worksheet.given("size of a leg", conductor.size, conductorPath(group, "size"));
  if (use !== "existing-neutral") return judgeWholeLoad(subject, worksheet, group, [stated, size], edition);
  const large = compareSizes(sizeOf(conductor.size), SMALLEST_EXISTING_NEUTRAL) >= 0;
  const holds = joint.role === "neutral" && large;
  const role = worksheet.given("role of the conductor", joint.role, "joint/role");
  const allowed = worksheet.conclude(
    "the leg is allowed below 1/0 AWG",
    holds ? "pass" : "fail",
    [stated, size, role],
    "only neutrals of 2 and 1 AWG are",
    cite,
  );
  if (holds) return allowed;
  return settled(ID, worksheet, {
    sentence: `Of an existing installation only neutrals of 2 and 1 AWG may run in parallel below 1/0 AWG; this is a ${joint.role} of ${conductor.size}.`,
    cite,
    required: "a neutral of 2 AWG or larger",
    offered: `${joint.role}, ${conductor.size}`,
    fix: "one larger conductor, or legs of 1/0 AWG or larger",
  });
}

/** Control power and high frequency: each leg carries the whole load, and the device is within what one leg carries. */
function judgeWholeLoad(
  subject: JointSubject,
  worksheet: Worksheet,
  group: number,
  uses: readonly Step[],
  edition: Edition,
): CheckFinding | AskedFact | Step {
  const { circuit } = subject.joint;
  const cite = edition.clauses.parallel;
  const limit = conductorLimit(subject, group, edition);
  const protection = circuit?.protection;
  if (limit === undefined) throw new Error("no such conductor");
  if (limit.outsideTable !== undefined) return sizeOutsideTable(limit);
  if (protection?.kind !== "device")
    return {
      path: "joint/circuit/protection",
      because: "Small legs are allowed only where the device is within the ampacity of one leg; no device is given.",
    };
  const loadA = loadForSizing(circuit);
  if (typeof loadA !== "number") return loadA;
  const needed = Math.max(loadA, protection.ratingA) * limit.sets;
  const decision = decideLimit(limit, edition, (amperes) => amperes >= needed);
  if (typeof decision === "object") return decision;
  const bound: Bound = decision === "pass" ? "low" : "high";
  const all = writeAmpacity(worksheet, limit, bound, writeLimit(worksheet, subject, limit, bound, edition), edition);
  const sets = worksheet.given("conductors in parallel", limit.sets, "joint/circuit/sets");
  const one = worksheet.divide("ampacity of one leg", all, sets, "A");
  const load = writeLoad(worksheet, circuit, edition);
  if (isAsked(load)) return load;
  const carries = worksheet.compare("one leg carries the whole load", one, ">=", load, cite);
  const carried = worksheet.last;
  const device = worksheet.given("rating of the device", protection.ratingA, "joint/circuit/protection/ratingA", "A");
  const within = worksheet.compare("the device is within what one leg carries", device, "<=", one, cite);
  const allowed = worksheet.conclude(
    "the leg is allowed below 1/0 AWG",
    carries && within ? "pass" : "fail",
    [...uses, carried, worksheet.last],
    "each leg must carry the whole load and stand under the device by itself",
    cite,
  );
  if (carries && within) return allowed;
  const offered = amperesText(one.value);
  return settled(ID, worksheet, {
    sentence: `One leg carries ${offered}; below 1/0 AWG each leg must carry the whole load and be protected by the device alone.`,
    cite,
    required: `${amperesText(Math.max(loadA, protection.ratingA))} on one leg`,
    offered,
    fix: "one larger conductor, or legs of 1/0 AWG or larger",
  });
}

function smallLegsDuty(use: SmallLegs, edition: Edition): Duty {
  return use === "existing-neutral"
    ? {
        duty: "existing-neutral-supervised",
        sentence: "Have the engineer in charge confirm that the parallel neutrals are of an existing installation.",
        cite: edition.clauses.parallel,
      }
    : {
        duty: "small-legs-together",
        sentence: "Keep all legs of this circuit in one raceway or cable.",
        cite: edition.clauses.parallel,
      };
}

/** In a terminal, the first leg and the first that is seen to differ from it. */
function unlikeLegs(joint: Joint): readonly [ConductorGroup, ConductorGroup] | undefined {
  if (joint.function !== "termination" || (joint.role !== "phase" && joint.role !== "neutral")) return undefined;
  let first: ConductorGroup | undefined;
  for (const conductor of joint.conductors) {
    if (!isLeg(joint, conductor)) continue;
    if (first === undefined) first = conductor;
    else if (
      conductor.size !== first.size ||
      conductor.metal !== first.metal ||
      conductor.insulation !== first.insulation
    )
      return [first, conductor];
  }
  return undefined;
}

function refuseSeenUnlike(
  joint: Joint,
  worksheet: Worksheet,
  [first, other]: readonly [ConductorGroup, ConductorGroup],
  edition: Edition,
): CheckFinding {
  const cite = edition.clauses.parallel;
  const steps: Step[] = [];
  for (const [index, { size, metal, insulation }] of joint.conductors.entries())
    steps.push(
      worksheet.given("size of a leg", size, conductorPath(index, "size")),
      worksheet.given("metal of a leg", metal, conductorPath(index, "metal")),
      worksheet.given("insulation of a leg", insulation, conductorPath(index, "insulation")),
    );
  worksheet.conclude("the legs may run in parallel", "fail", steps, "they differ from each other", cite);
  return settled(ID, worksheet, {
    sentence: `The legs in this terminal differ from each other: ${legText(first)} and ${legText(other)}.`,
    cite,
    required: "legs of the same size, metal and insulation",
    offered: `${legText(first)} and ${legText(other)}`,
    fix: "make every leg alike, and terminate each in the same manner",
  });
}

function legText({ size, metal, insulation }: ConductorGroup): string {
  return `${size} ${metalWords(metal)}, ${insulation}`;
}

function refuseUnlike(worksheet: Worksheet, edition: Edition): CheckFinding {
  const cite = edition.clauses.parallel;
  const stated = worksheet.given(
    "the legs are alike and terminated in the same manner",
    false,
    "joint/circuit/parallelLegsAlike",
  );
  worksheet.conclude(
    "the legs may run in parallel",
    "fail",
    [stated],
    "unlike legs do not share the current evenly",
    cite,
  );
  return settled(ID, worksheet, {
    sentence:
      "The legs are stated to be unlike, in themselves or in how they are terminated; they would share the current unevenly.",
    cite,
    required: "same length, metal, size and insulation, terminated in the same manner",
    offered: "legs that are not alike",
    fix: "make every leg alike, and terminate each in the same manner",
  });
}

function isLeg(joint: Joint, { insulation, duty }: ConductorGroup): boolean {
  if (insulation === "equipment-lead" || insulation === "fixture-wire") return false;
  return joint.function !== "tap" || duty !== "run";
}
