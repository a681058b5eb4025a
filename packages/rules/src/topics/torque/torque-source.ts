import type { Edition } from "../../core/edition.js";
import type { Duty, Step } from "../../core/finding.js";
import { asking, notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";
import { type Tightening, thingsToTighten, tighten, tightenPad } from "./tightening-torque.js";
import { answerText } from "./torque-text.js";

const ID = "torque-source";
const REQUIRED = "a torque, or another stated method, for each screw";

/**
 * Is it known how far each screw of the joint must be tightened?
 *
 * NFPA 70 110.14(D), our words. 2017: where a torque is given, a calibrated tool reaches it unless the maker names
 * another method. 2020, 2023: an approved means reaches it, and a breakaway head may be one. Informative Annex I holds
 * where the maker gives no torque. A screw counts as known when its torque is marked, when it is stated to be unmarked
 * and the annex covers it, or when its head breaks away at the torque.
 * Worked: a clamp bolt without a marked torque has no default anywhere and is asked about; a 5/16 in socket that is
 * stated to be unmarked has 275 lbf-in.
 * Silent: the annex has no value for a clamp's bolt, for sizes outside its rows, or for metric sizes. Pad bolts are not
 * refused for want of a value: their torque is a duty on site from the equipment's instructions.
 */
export const torqueSource: Rule = {
  id: ID,
  title: "Where the tightening torque comes from",
  clauses: ["torque", "instructions"],
  needs: ["connector/screws/0/torque", "connector/screws/0/drive", "joint/equipment/terminal"],
  cannotSee: "whether the screw is tightened, how often, and with which tool",
  check(subject, edition) {
    const worksheet = new Worksheet();
    const cite = edition.clauses.torque;
    const text = { cite, required: REQUIRED } as const;
    const answers: Tightening[] = [];
    const ends: Step[] = [];
    let pinHeld = false;
    for (const thing of thingsToTighten(subject)) {
      const answer = tighten(worksheet, thing, edition);
      if (answer.asks !== null) return asking(ID, worksheet, answer.asks.path, answer.asks.because, text);
      answers.push(answer);
      ends.push(worksheet.last);
      if (thing.use.origin === "joint/equipment/terminal") pinHeld = true;
    }
    if (subject.connector.pin !== undefined && subject.origin === "connector" && !pinHeld)
      return asking(
        ID,
        worksheet,
        subject.joint.equipment?.terminal === undefined
          ? "joint/equipment/terminal"
          : "joint/equipment/terminal/openings",
        "The pin lands in the equipment's own terminal, which is not described; its torque is not known.",
        text,
      );
    const pad = tightenPad(worksheet, subject, edition);
    if (pad !== null) {
      answers.push(pad);
      ends.push(worksheet.last);
    }
    if (!answers.some(isTightened)) return notApplicable(ID, "nothing at this joint is tightened with a tool");
    worksheet.conclude("each screw has a torque or a method", "pass", ends, "none is left without one", cite);
    const known = answers.filter(isTightened).map(answerText).join("; ");
    return settled(ID, worksheet, {
      cite,
      required: REQUIRED,
      sentence: `How to tighten is known: ${known}.`,
      offered: known,
      conditions: conditionsFor(answers, edition),
      advice: adviceFor(answers),
    });
  },
};

function conditionsFor(answers: readonly Tightening[], edition: Edition): readonly Duty[] {
  const conditions: Duty[] = [];
  if (answers.some(({ method }) => method === "breakaway-head"))
    conditions.push({
      duty: "breakaway-head",
      sentence: edition.torqueDuty.breakawayAccepted
        ? "Turn the breakaway head until it shears fully, and photograph it."
        : "Confirm that the maker's instructions name the breakaway head as the method; then shear it fully and photograph it.",
      cite: edition.clauses.torque,
    });
  for (const { method, at } of answers)
    if (method === "see-instructions")
      conditions.push({
        duty: "pad-torque",
        sentence: `Take the torque of the ${at} from the equipment's instructions and record it; no table here covers it.`,
        cite: edition.clauses.instructions,
      });
  return conditions;
}

function adviceFor(answers: readonly Tightening[]): readonly string[] {
  const advice: string[] = [];
  if (answers.some(({ alternative }) => alternative !== null))
    advice.push("The slotted hexagon has two default torques; use the one for the way it is driven.");
  return advice;
}

function isTightened({ method }: Tightening): boolean {
  return method === "torque" || method === "breakaway-head" || method === "see-instructions";
}
