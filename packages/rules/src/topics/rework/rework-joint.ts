import { COMMON_PRACTICE } from "../../core/citation.js";
import type { Connector } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Duty } from "../../core/finding.js";
import { notApplicable, type Rule, settled } from "../../core/rule.js";
import { hasScrewToTurn } from "../../core/screw-to-turn.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "rework";

/**
 * May a joint that was made once be tightened again, and what must be done where it is made again?
 *
 * NFPA 70 110.3(B) (2017, 2020, 2023) makes the maker's instructions binding, and no instruction lets a screw that has
 * already pressed a conductor be turned again as a remedy: every turn bites deeper into the strands. Common practice, in
 * our words: a screw that was tightened is left alone, or the conductor is cut back to sound metal, the terminal inspected
 * or replaced, tightened once, recorded anew, and looked at under load.
 * Worked: a set-screw lug that ran hot: cut back, strip, land, one torque pass, a new record that replaces the old one.
 * The same lug, tightened last year and not made again: no torque is given.
 * Silent: the code gives no limit of heat from which a terminal must be replaced; that is judged on site. Bolts that hold a
 * pad press no strands, and are not judged.
 */
export const rework: Rule = {
  id: ID,
  title: "A joint made again",
  clauses: ["instructions", "torque"],
  needs: ["joint/rework", "joint/tightenedBefore"],
  cannotSee:
    "how far heat has crept up the conductor and into the terminal, and a screw that nobody said was tightened",
  check({ joint, connector }, edition) {
    if (joint.rework === true) return madeAgain(connector, edition);
    if (joint.tightenedBefore !== true) return notApplicable(ID, "the joint is made for the first time");
    return hasScrewToTurn(connector)
      ? tightenedAgain(edition)
      : notApplicable(ID, "no screw that was tightened presses the conductor");
  },
};

function madeAgain(connector: Connector, edition: Edition): CheckFinding {
  const worksheet = new Worksheet();
  const again = worksheet.given("the joint is made again", true, "joint/rework");
  const tightened = hasScrewToTurn(connector) || connector.mounting.kind === "pad";
  worksheet.conclude(
    "it may be made again, cut back and not merely tightened",
    "pass",
    [again],
    "a conductor that was pressed once has lost its shape",
    edition.clauses.instructions,
  );
  return settled(ID, worksheet, {
    sentence: tightened
      ? "The joint is made again: cut back and tighten once; the old joint is not merely tightened further."
      : "The joint is made again: cut back to sound conductor and make it as new.",
    cite: edition.clauses.instructions,
    required: "cut back, inspected, made anew and recorded",
    offered: "rework",
    conditions: tightened ? [...CONDITIONS, oneTorquePass(edition)] : CONDITIONS,
  });
}

function tightenedAgain(edition: Edition): CheckFinding {
  const worksheet = new Worksheet();
  const before = worksheet.given("the screw was tightened before", true, "joint/tightenedBefore");
  worksheet.conclude(
    "it may be tightened further",
    "fail",
    [before],
    "each turn on a conductor already pressed bites deeper into its strands",
    edition.clauses.instructions,
  );
  return settled(ID, worksheet, {
    sentence: "The screw has pressed this conductor before and is not turned again; no torque is given for it.",
    cite: edition.clauses.instructions,
    required: "the joint made again, or left as it is",
    offered: "tightened before, not made again",
    fix: "cut back and make the joint again, stated as rework; or leave it as it is and test it by its resistance or under load",
  });
}

const CONDITIONS: readonly Duty[] = Object.freeze([
  onSite("cut-back", "Cut the conductor back to bright, sound metal and undamaged insulation; strip it anew."),
  onSite(
    "inspect-terminal",
    "Inspect the terminal for heat, pitting and damaged thread; replace it where you find any.",
  ),
  onSite("supersede-record", "Write a new record of the joint that names the one it replaces; keep the old one."),
  onSite("thermal-survey", "Repeat the thermal survey under load within the time agreed, beside like joints."),
]);

function onSite(duty: string, sentence: string): Duty {
  return Object.freeze({ duty, sentence, cite: COMMON_PRACTICE });
}

function oneTorquePass(edition: Edition): Duty {
  return {
    duty: "one-torque-pass",
    sentence: "Tighten the new joint once to its torque; do not turn the screw again afterwards.",
    cite: edition.clauses.torque,
  };
}
