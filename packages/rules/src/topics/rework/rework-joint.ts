import { COMMON_PRACTICE } from "../../core/citation.js";
import type { Connector } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { Duty } from "../../core/finding.js";
import { notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "rework";

/**
 * What must be done where a joint is made again after it was in service?
 *
 * NFPA 70 110.3(B) (2017, 2020, 2023) makes the maker's instructions binding, and no instruction lets a screw that has
 * already pressed a conductor be turned again as a remedy: every turn bites deeper into the strands. Common practice, in
 * our words: cut back to sound metal, inspect or replace the terminal, tighten once, record it anew, and look at it under
 * load.
 * Worked: a set-screw lug that ran hot: cut back, strip, land, one torque pass, a new record that replaces the old one.
 * Silent: the code gives no limit of heat from which a terminal must be replaced; that is judged on site.
 */
export const rework: Rule = {
  id: ID,
  title: "A joint made again",
  clauses: ["instructions", "torque"],
  needs: ["joint/rework"],
  cannotSee: "how far heat has crept up the conductor and into the terminal",
  check({ joint, connector }, edition) {
    if (joint.rework !== true) return notApplicable(ID, "the joint is made for the first time");
    const cite = edition.clauses.instructions;
    const worksheet = new Worksheet();
    const again = worksheet.given("the joint is made again", true, "joint/rework");
    const tightened = isTightened(connector);
    worksheet.conclude(
      "it may be made again, cut back and not merely tightened",
      "pass",
      [again],
      "a conductor that was pressed once has lost its shape",
      cite,
    );
    return settled(ID, worksheet, {
      sentence: tightened
        ? "The joint is made again: cut back and tighten once; the old joint is not merely tightened further."
        : "The joint is made again: cut back to sound conductor and make it as new.",
      cite,
      required: "cut back, inspected, made anew and recorded",
      offered: "rework",
      conditions: tightened ? [...CONDITIONS, oneTorquePass(edition)] : CONDITIONS,
    });
  },
};

function isTightened({ screws, mounting }: Connector): boolean {
  return mounting.kind === "pad" || screws.some(({ drive }) => drive.kind !== "none" && drive.kind !== "hand");
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
