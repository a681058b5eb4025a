import { COMMON_PRACTICE } from "../../core/citation.js";
import { compareSizes, parseSize, sizeOf } from "../../core/conductor-size.js";
import type { Construction } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { Duty } from "../../core/finding.js";
import type { EquipmentKind } from "../../core/joint.js";
import { accessClause, hidingAllowed } from "../../core/joint-access.js";
import type { JointSubject } from "../../core/rule.js";
import { hasScrewToTurn } from "../../core/screw-to-turn.js";

const SMALLEST_WITH_BENDING_DUTY = sizeOf("4 AWG");

/**
 * What no data can show about the joint and a person must do or see: said with every accept, so that "accepted" is never
 * read as "finished".
 *
 * Clauses of NFPA 70 (2017, 2020, 2023) where one stands behind the duty: 110.14(A) no damage to the conductor, 110.14(D)
 * torque by edition, 110.3(B) instructions, 312.6(B) bending space, 312.8 and 376.56 fill, 250.102 bonding, 300.15, 314.29 and
 * 250.68(A) access; the rest is common practice and says so.
 * Worked: a set-screw lug with 4 AWG or larger whose bending space was not given adds "measure-bending-space"; a welded
 * bare conductor has nothing to strip and nothing to tighten.
 */
export function dutiesOnSite(subject: JointSubject, edition: Edition): Duty[] {
  const duties: Duty[] = [DE_ENERGIZE];
  if (isStripped(subject)) duties.push(strip(subject, edition));
  duties.push(insert(subject, edition));
  if (isTightened(subject))
    duties.push({
      duty: "tighten-once",
      sentence: `${edition.torqueDuty.sentence} Tighten once, with a tool within its calibration date.`,
      cite: edition.clauses.torque,
    });
  if (bendingNotGiven(subject))
    duties.push({
      duty: "measure-bending-space",
      sentence:
        "Measure the space in which the conductor bends at its terminal and compare it with 312.6; it was not given.",
      cite: edition.clauses.bendingOpposite,
    });
  const fill = fillToCheck(subject, edition);
  if (fill !== undefined) duties.push(fill);
  if (subject.joint.role === "bonding" && subject.joint.grounding?.bonding === "by-design")
    duties.push({
      duty: "check-bonding-size",
      sentence: "Check the size of the bonding conductor against its design; no clause that sizes it is judged here.",
      cite: edition.clauses.bondingJumperSize,
    });
  if (isToBeKeptAccessible(subject))
    duties.push({
      duty: "keep-accessible",
      sentence:
        "Leave the joint where it can be reached without taking off part of the building or digging; whether it can be was not given.",
      cite: accessClause(subject, edition),
    });
  duties.push(MARK_AND_RECORD, CLOSE_UP);
  return duties;
}

const DE_ENERGIZE: Duty = Object.freeze({
  duty: "de-energize",
  sentence: "De-energize, lock out and test dead before you touch the joint.",
  cite: COMMON_PRACTICE,
});
const MARK_AND_RECORD: Duty = Object.freeze({
  duty: "mark-and-record",
  sentence: "Mark the finished joint and write its record: who, when, which tool, which value.",
  cite: COMMON_PRACTICE,
});
const CLOSE_UP: Duty = Object.freeze({
  duty: "close-up",
  sentence:
    "Before power is put on, check voltage and phase, fit barriers and covers, and see that the place is as it was said to be.",
  cite: COMMON_PRACTICE,
});

/** Not where the clause lets it be hidden; steel is fireproofed only where somebody says so. */
function isToBeKeptAccessible(subject: JointSubject): boolean {
  if (subject.joint.place?.accessible !== undefined) return false;
  const hiding = hidingAllowed(subject);
  return hiding.kind !== "allowed" || hiding.as === "fireproofed-steel";
}

/** Splices and taps take room in a cabinet or a wireway, whose section was not given. */
function fillToCheck({ joint }: JointSubject, edition: Edition): Duty | undefined {
  const { equipment } = joint;
  if (joint.function === "termination" || equipment?.kind === undefined || equipment.space !== undefined)
    return undefined;
  const wireway = equipment.kind === "wireway";
  if (!wireway && !CABINETS.includes(equipment.kind)) return undefined;
  return {
    duty: "check-fill",
    sentence: wireway
      ? "Check that conductors, splices and taps fill at most 75 % of the wireway's section here; it was not given."
      : "Check that conductors fill at most 40 % of the section here, and 75 % with splices and taps; it was not given.",
    cite: wireway ? edition.clauses.wirewayFill : edition.clauses.enclosureFill,
  };
}

const CABINETS: readonly EquipmentKind[] = [
  "panelboard",
  "switchboard",
  "motor-control-center",
  "disconnect",
  "transfer-switch",
];

function strip({ connector }: JointSubject, edition: Edition): Duty {
  const length = connector.openings.every(({ stripLength }) => stripLength !== undefined)
    ? "Strip to the length given"
    : "Strip to the length in the connector's instructions";
  return {
    duty: "strip-without-nicking",
    sentence: `${length}, without cutting, nicking or ringing a strand; cut back and strip anew if you do.`,
    cite: edition.clauses.terminals,
  };
}

function insert({ connector }: JointSubject, edition: Edition): Duty {
  return { duty: "insert-fully", sentence: INSERT_TEXT[connector.construction], cite: edition.clauses.instructions };
}

const ALL_STRANDS_IN = "Put every strand in, to the full depth of the opening; cut none off.";
const INSERT_TEXT: Readonly<Record<Construction, string>> = {
  "set-screw": ALL_STRANDS_IN,
  compression: ALL_STRANDS_IN,
  "twist-on": ALL_STRANDS_IN,
  spring: ALL_STRANDS_IN,
  weld: "Set the conductors in the mold to the depth its instructions give, clean and dry.",
  "split-bolt": "Lay the conductors side by side through the full length of the bolt, every strand in.",
  "bolted-clamp": "Lay the conductor through the full length of the clamp, every strand in.",
  "binding-screw":
    "Lead the conductor around the screw the way it turns, or straight under its plate, every strand in.",
  "insulation-piercing": "Seat the conductors fully in the connector, insulation on, the tap's end in its cap.",
};

/** A bare conductor has nothing to strip, and a piercing connector goes through the insulation. */
function isStripped({ joint, connector }: JointSubject): boolean {
  return (
    connector.construction !== "insulation-piercing" && joint.conductors.some(({ insulation }) => insulation !== "bare")
  );
}

function isTightened({ connector }: JointSubject): boolean {
  return connector.pin !== undefined || connector.mounting.kind === "pad" || hasScrewToTurn(connector);
}

/** Electrode and bonding conductors end at rods, pipes and steel, where there is no enclosure to bend in. */
function bendingNotGiven({ joint }: JointSubject): boolean {
  if (joint.function !== "termination" || joint.equipment?.bending !== undefined) return false;
  if (joint.role === "electrode-conductor" || joint.role === "bonding") return false;
  return joint.conductors.some(({ size }) => {
    const parsed = parseSize(size);
    return !("problem" in parsed) && compareSizes(parsed, SMALLEST_WITH_BENDING_DUTY) >= 0;
  });
}
