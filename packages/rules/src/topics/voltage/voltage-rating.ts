import { asking, type JointSubject, notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "voltage-rating";

/**
 * Is the connector rated for the system it joins?
 *
 * NFPA 70 110.4 (2017, 2020, 2023): equipment is not used above its rating. Our words: the voltage marked on the
 * connector is not lower than the system's voltage between lines, both in volts.
 * Worked: 300 V splice on a 480 V system: 480 <= 300 does not hold, so it is refused; 600 V holds.
 * Silent: the text gives no default for a connector without a voltage mark, so an unmarked one is asked about.
 * Grounding, electrode and bonding joints carry no circuit voltage in normal use and are not judged here.
 */
export const voltageRating: Rule = {
  id: ID,
  title: "Voltage rating of the connector",
  clauses: ["voltage"],
  needs: ["joint/circuit/voltageV", "connector/voltageV"],
  cannotSee: "damage to the insulation of the connector",
  check(subject, edition) {
    const { joint, connector } = subject;
    if (joint.role !== "phase" && joint.role !== "neutral")
      return notApplicable(ID, "a grounding or bonding conductor carries no circuit voltage in normal use");
    const cite = edition.clauses.voltage;
    const worksheet = new Worksheet();
    const systemV = joint.circuit?.voltageV;
    if (systemV === undefined)
      return asking(
        ID,
        worksheet,
        "joint/circuit/voltageV",
        "The system voltage is not given, so the connector's rating cannot be compared with it.",
        {
          cite,
          required: "connector rated at least at the system voltage",
          offered: ratingText(subject),
        },
      );
    const system = worksheet.given("system voltage between lines", systemV, "joint/circuit/voltageV", "V");
    const required = `${String(systemV)} V`;
    if (typeof connector.voltageV !== "number")
      return asking(
        ID,
        worksheet,
        `${subject.origin}/voltageV`,
        "The connector's voltage rating is not known; an unmarked part has no default rating.",
        {
          cite,
          required,
          offered: ratingText(subject),
        },
      );
    const rating = worksheet.given(
      "voltage rating of the connector",
      connector.voltageV,
      `${subject.origin}/voltageV`,
      "V",
    );
    const holds = worksheet.compare("system voltage is within the rating", system, "<=", rating, cite);
    return settled(ID, worksheet, {
      sentence: holds
        ? `The connector is rated ${ratingText(subject)}, enough for ${required}.`
        : `The connector is rated ${ratingText(subject)}, below the system's ${required}.`,
      cite,
      required,
      offered: ratingText(subject),
      fix: `a connector rated at least ${required}`,
    });
  },
};

function ratingText({ connector }: JointSubject): string {
  return typeof connector.voltageV === "number"
    ? `${String(connector.voltageV)} V`
    : (connector.voltageV ?? "not known");
}
