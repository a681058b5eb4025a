import type { ConductorGroup } from "../../core/conductor.js";
import { conductorPath } from "../../core/conductor-path.js";
import { parseSize, sizeOf } from "../../core/conductor-size.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Step } from "../../core/finding.js";
import type { Joint } from "../../core/joint.js";
import { asking, notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "parallel-legs";
const SMALLEST = sizeOf("1/0 AWG");

/**
 * May the conductors of a phase share its current in parallel?
 *
 * NFPA 70 310.10(G) (2020, 2023; 310.10(H) in 2017), in our words: only from 1/0 AWG up, by area; and every leg has
 * the same length, metal, size and insulation and is terminated in the same manner, or the current shares unevenly.
 * Worked: two sets of 1/0 AWG are allowed, two sets of 1 AWG are not, whatever they would carry together.
 * Equipment grounds and bonding jumpers must be alike too, but are not held to the 1/0 minimum. In a tap the conductor that runs through
 * belongs to another circuit, and leads of listed equipment follow their equipment.
 * Silent: the exceptions for smaller legs (control power, high frequency, existing neutrals under supervision).
 */
export const parallelLegs: Rule = {
  id: ID,
  title: "Conductors in parallel",
  clauses: ["parallel", "conductorAreas"],
  needs: ["joint/circuit/sets", "joint/circuit/parallelLegsAlike", "joint/conductors/0/size"],
  cannotSee: "the lengths as pulled and the raceways of the legs",
  check({ joint }, edition) {
    const { circuit } = joint;
    if (joint.role === "electrode-conductor")
      return notApplicable(ID, "a grounding electrode conductor does not run in parallel with the circuit");
    if (circuit === undefined || circuit.sets === 1)
      return notApplicable(ID, "the circuit has one conductor per phase");
    const worksheet = new Worksheet();
    const sets = worksheet.given("conductors in parallel per phase", circuit.sets, "joint/circuit/sets");
    return judge(joint, worksheet, sets, edition);
  },
};

/** Too small a leg is refused whatever else is known; then the statement on the legs decides. */
function judge(joint: Joint, worksheet: Worksheet, sets: Step, edition: Edition): CheckFinding {
  const cite = edition.clauses.parallel;
  const grounding = joint.role === "equipment-ground" || joint.role === "bonding";
  const text = { cite, required: `legs ${grounding ? "" : "of 1/0 AWG or larger, "}alike and terminated alike` };
  const compared: Step[] = [];
  let askedSize: string | undefined;
  for (const [group, conductor] of joint.conductors.entries()) {
    if (grounding || !isLeg(joint, conductor)) continue;
    const path = conductorPath(group, "size");
    const size = parseSize(conductor.size);
    if ("problem" in size || size.series !== "awg-kcmil") {
      askedSize ??= path;
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
      });
    compared.push(worksheet.last);
  }
  const alike = joint.circuit?.parallelLegsAlike;
  if (alike === false) return refuseUnlike(worksheet, edition);
  if (askedSize !== undefined)
    return asking(
      ID,
      worksheet,
      askedSize,
      "The least size of a leg is given in AWG; a size of another system cannot be set against it.",
      text,
    );
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
    sentence: `The ${String(sets.value)} legs are ${grounding ? "" : "1/0 AWG or larger, and are "}stated to be alike and terminated in the same manner.`,
    cite,
    required: text.required,
    offered: "as asked",
  });
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
