import type { ConnectorFamily } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { EquipmentKind } from "../../core/equipment-kind.js";
import type { CheckFinding, NotApplicable } from "../../core/finding.js";
import {
  asking,
  type JointSubject,
  type Landing,
  notApplicable,
  type Rule,
  settled,
  settledFrom,
} from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";
import { conductorCount, conductorsIn, contentWords, fullestOf, insideStep } from "./landed-opening.js";
import { standAlone } from "./opening-share.js";

const ID = "neutral-terminal";

const PANELBOARD: EquipmentKind = "panelboard";

/** Parts that may sit in a panelboard; for others the kind of equipment is not asked. */
const BARS: readonly ConnectorFamily[] = ["neutral-bar", "ground-bar", "equipment-terminal"];

/**
 * Has each neutral in a panelboard a terminal to itself?
 *
 * NFPA 70 408.41 (2017, 2020, 2023), in our words: in a panelboard each neutral ends in its own terminal, which no other
 * conductor shares, even where the terminal is marked for more than one. Excepted are conductors in parallel of one
 * circuit in a terminal identified for more than one. A splice is no terminal of the panelboard.
 * Worked: two neutrals in a hole marked for two: 2 <= 1 does not hold, so it is refused.
 * Silent: where the kind of equipment is not given and a bar's hole would hold two, the kind is asked for.
 */
export const neutralTerminal: Rule = {
  id: ID,
  title: "Neutrals in a panelboard",
  clauses: ["neutralTerminals"],
  needs: [
    "joint/role",
    "joint/equipment/kind",
    "joint/conductors/0/count",
    "joint/circuit/sets",
    "connector/openings/0/conductorsMax",
  ],
  cannotSee: "other conductors that already lie in the hole",
  check(subject, edition) {
    const { joint, connector, landings } = subject;
    if (joint.role !== "neutral" || joint.function !== "termination") return notApplicable(ID, "no neutral ends here");
    const fullest = fullestOf(landings);
    if (fullest === undefined) return notApplicable(ID, "no conductor lies in an opening");
    const kind = joint.equipment?.kind;
    if (kind === undefined)
      return conductorsIn(fullest) > 1 && BARS.includes(connector.family)
        ? asksForKind(fullest, edition)
        : notApplicable(ID, "the equipment is not said to be a panelboard");
    if (kind !== PANELBOARD) return notApplicable(ID, "the equipment is no panelboard");
    return standAlone(joint) || conductorsIn(fullest) === 1
      ? ownTerminal(edition, fullest)
      : inParallel(subject, edition, fullest);
  },
};

function asksForKind(fullest: Landing, edition: Edition): CheckFinding {
  const worksheet = new Worksheet();
  insideStep(worksheet, fullest);
  return asking(
    ID,
    worksheet,
    "joint/equipment/kind",
    `One opening would hold ${contentWords(fullest)}, all neutrals; in a panelboard each needs its own, and the kind of equipment is not given.`,
    {
      cite: edition.clauses.neutralTerminals,
      required: "1 neutral in a terminal of a panelboard",
      offered: conductorCount(conductorsIn(fullest)),
    },
  );
}

function ownTerminal(edition: Edition, fullest: Landing): CheckFinding {
  const cite = edition.clauses.neutralTerminals;
  const worksheet = new Worksheet();
  premises(worksheet);
  const inside = insideStep(worksheet, fullest);
  const allowed = worksheet.state("conductors in a terminal that holds a neutral", 1, cite);
  const holds = worksheet.compare("the neutral has its terminal to itself", inside, "<=", allowed, cite);
  return settled(ID, worksheet, {
    sentence: holds
      ? "Each neutral has a terminal of the panelboard to itself."
      : `One opening would hold ${contentWords(fullest)}; in a panelboard each neutral has a terminal to itself, whatever the hole is marked for.`,
    cite,
    required: "1 neutral in a terminal",
    offered: conductorCount(conductorsIn(fullest)),
    fix: "a hole for each neutral, or an added bar; for conductors in parallel of one circuit, give the number of sets",
  });
}

/** More than one in a terminal, of a circuit in parallel: as many as there are sets, in a terminal identified for them. */
function inParallel(subject: JointSubject, edition: Edition, fullest: Landing): CheckFinding | NotApplicable {
  const { joint, origin } = subject;
  const cite = edition.clauses.neutralTerminals;
  const worksheet = new Worksheet();
  premises(worksheet);
  const inside = insideStep(worksheet, fullest);
  const sets = worksheet.given("conductors in parallel of the circuit", joint.circuit?.sets ?? 1, "joint/circuit/sets");
  const text = {
    cite,
    required: "conductors in parallel of one circuit, in a terminal identified for them",
    offered: conductorCount(conductorsIn(fullest)),
    fix: "a terminal for each neutral",
  };
  if (!worksheet.compare("all are in parallel of one circuit", inside, "<=", sets, cite))
    return settledFrom(ID, worksheet, text, {
      sentence: `One opening would hold ${contentWords(fullest)}, more than the circuit has in parallel.`,
    });
  const { conductorsMax } = fullest.opening;
  const path = `${origin}/openings/${fullest.openingIndex}/conductorsMax`;
  if (conductorsMax === undefined)
    return asking(
      ID,
      worksheet,
      path,
      `One opening would hold ${contentWords(fullest)}; for how many it is identified is not known.`,
      text,
    );
  const given = worksheet.given("conductors the opening is marked for", conductorsMax, path);
  const max =
    conductorsMax === "unmarked"
      ? worksheet.assume(
          "conductors the opening takes",
          1,
          "a terminal takes one conductor unless it is identified for more",
          edition.clauses.terminals,
          undefined,
          [given],
        )
      : given;
  const holds = worksheet.compare("the terminal is identified for so many", inside, "<=", max, cite);
  return settledFrom(ID, worksheet, text, {
    sentence: holds
      ? `The terminal is identified for the ${conductorCount(conductorsIn(fullest))} in parallel of one circuit.`
      : `One opening would hold ${contentWords(fullest)}; it is not identified for so many.`,
  });
}

function premises(worksheet: Worksheet): void {
  worksheet.given("role of the conductors", "neutral", "joint/role");
  worksheet.given("kind of equipment", PANELBOARD, "joint/equipment/kind");
}
