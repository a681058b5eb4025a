/** Remedies that are one part of the catalogue: a lug kit in place of the terminal, a pin adapter in it. */
import type { ConductorGroup } from "../../core/conductor.js";
import { metalWords } from "../../core/conductor-words.js";
import type { CatalogueItem, ConnectorFamily } from "../../core/connector.js";
import type { Joint } from "../../core/joint.js";
import { checkJointUnder } from "../joint/check-joint.js";
import { byNearness } from "../selection/rank.js";
import type { OpenRemedy, Remedy } from "./remedy.js";
import { accepted, remedyOf, SHOWN, underProject, withoutTerminal } from "./remedy-joint.js";
import type { RemedyQuestion } from "./remedy-question.js";

/**
 * Lug kits listed for the frame of the equipment, judged without the terminal that they replace.
 *
 * NFPA 70 110.3(B), in our words: a lug kit is part of the equipment's listing, so only one listed for the frame serves.
 */
export function lugKits(question: RemedyQuestion): Remedy[] {
  const joint = withoutTerminal(question.joint);
  return partsOf(question, joint, "lug-kit").flatMap((item) => {
    const made = accepted(question, joint, item, "catalogue", "at-equipment");
    return made === undefined
      ? []
      : remedyOf(
          {
            kind: "lug-kit",
            sentence: `Fit ${item.partNumber}, ${item.description}, in place of the terminal.`,
            provided: ["The kit is for this end only; line side and load side are separate kits."],
          },
          [made],
        );
  });
}

/**
 * Pin adapters: the conductor in the adapter's barrel, and the pin in the equipment's own terminal as a conductor of
 * its size and metal would lie there. The pin is a lead of a listed part, so no ampacity table sizes it; it is
 * taken for class B, the form that every terminal is listed for at least.
 */
export function pinAdapters(question: RemedyQuestion): Remedy[] {
  const { joint } = question;
  const terminal = joint.equipment?.terminal;
  if (terminal === undefined) return [];
  return partsOf(question, joint, "pin-adapter").flatMap((item) => {
    const { pin } = item;
    const count = joint.conductors.reduce((sum, group) => sum + group.count, 0);
    if (pin === undefined || count !== 1) return [];
    const barrel = accepted(question, joint, item, "catalogue", "at-conductor");
    const landing: ConductorGroup = {
      count: 1,
      metal: pin.metal,
      size: pin.size,
      stranding: "class-B",
      insulation: "equipment-lead",
    };
    const atTerminal = accepted(question, { ...joint, conductors: [landing] }, terminal, "equipment", "at-equipment");
    if (barrel === undefined || atTerminal === undefined) return [];
    return remedyOf(
      {
        kind: "pin-adapter",
        sentence: `Press ${item.partNumber}, ${item.description}, onto the conductor and land its pin in the terminal as ${pin.size} ${metalWords(pin.metal)}.`,
        provided: ["The pin counts as a class B conductor of its size and metal in the terminal."],
      },
      [atTerminal, barrel],
    );
  });
}

/** Kits and adapters that nothing refuses and that a missing fact keeps from being accepted. */
export function openParts(question: RemedyQuestion): OpenRemedy[] {
  return [
    ...openOf(question, withoutTerminal(question.joint), "lug-kit", "Would fit in place of the terminal"),
    ...openOf(question, question.joint, "pin-adapter", "Would land by its pin"),
  ];
}

function openOf(
  question: RemedyQuestion,
  joint: Joint,
  family: "lug-kit" | "pin-adapter",
  words: string,
): OpenRemedy[] {
  const { judge, ranking, basis, edition } = question;
  const asked = underProject(question, joint);
  return judge
    .misses(asked)
    .filter(({ item, verdict }) => item.family === family && verdict === "needs-information")
    .sort((a, b) => byNearness(a, b, ranking))
    .slice(0, SHOWN)
    .map(({ item }) => ({
      kind: family,
      sentence: `${words}, if what is asked allows it: ${item.partNumber}, ${item.description}.`,
      partNumber: item.partNumber,
      missing: checkJointUnder({ joint: asked, basis, connector: item, origin: "catalogue" }, edition).missing,
    }));
}

/** The accepted parts of a family, best first. */
function partsOf(question: RemedyQuestion, joint: Joint, family: ConnectorFamily): CatalogueItem[] {
  return question.judge
    .survey(underProject(question, joint))
    .accepted.filter(({ item }) => item.family === family)
    .sort(question.ranking.compare)
    .slice(0, SHOWN)
    .map(({ item }) => item);
}
