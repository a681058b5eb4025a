/** Remedies that change the equipment that is ordered. */
import type { Joint } from "../../core/joint.js";
import { checkJointUnder } from "../joint/check-joint.js";
import { byNearness } from "../selection/rank.js";
import type { OpenRemedy, Remedy } from "./remedy.js";
import { inOwnTerminal, remedyOf, SHOWN, underProject, withPart } from "./remedy-joint.js";
import type { RemedyQuestion } from "./remedy-question.js";

/** Equipment that was named as possible, where the conductor lands in its terminal or with a part of the catalogue. */
export function namedEquipment(question: RemedyQuestion): Remedy[] {
  return question.equipmentInstead.flatMap((equipment) => {
    const joint: Joint = { ...question.joint, equipment };
    const made = inOwnTerminal(question, joint) ?? withPart(question, joint);
    if (made === undefined) return [];
    const { origin, description } = made.joint.connector;
    const frame = equipment.frame === undefined ? "" : `, frame ${equipment.frame}`;
    return remedyOf(
      {
        kind: "larger-frame",
        sentence: `Order ${equipment.tag}${frame}, and land the conductor ${origin === "equipment" ? "in its own terminal" : `with ${description}`}.`,
        provided: ["The equipment is ordered as it was described.", "The price leaves out the equipment."],
      },
      [made],
      true,
    );
  });
}

/**
 * Lug kits of other frames that nothing known refuses. Nothing but the kind of the equipment is taken over to another
 * frame: what its terminals stand and what room it has is asked.
 */
export function otherFrames(question: RemedyQuestion): OpenRemedy[] {
  const { joint, judge, ranking, basis, edition } = question;
  const { equipment } = joint;
  if (equipment?.frame === undefined) return [];
  const found: OpenRemedy[] = [];
  for (const frame of judge.framesWithKits()) {
    if (frame === equipment.frame || found.length === SHOWN) continue;
    const { tag, kind } = equipment;
    const inFrame = underProject(question, {
      ...joint,
      equipment: kind === undefined ? { tag, frame } : { tag, kind, frame },
    });
    const [kit] = judge
      .misses(inFrame)
      .filter(({ item, verdict }) => item.family === "lug-kit" && verdict === "needs-information")
      .sort((a, b) => byNearness(a, b, ranking));
    if (kit === undefined) continue;
    const { partNumber, description } = kit.item;
    found.push({
      kind: "larger-frame",
      sentence: `Frame ${frame} in place of ${equipment.frame} takes ${partNumber}, ${description}, if what is asked of it allows it.`,
      partNumber,
      missing: checkJointUnder({ joint: inFrame, basis, connector: kit.item, origin: "catalogue" }, edition).missing,
    });
  }
  return found;
}
