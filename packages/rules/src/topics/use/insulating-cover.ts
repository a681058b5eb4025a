import { conductorPath } from "../../core/conductor-path.js";
import type { Connector } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Duty } from "../../core/finding.js";
import type { Joint } from "../../core/joint.js";
import { type JointSubject, NO_CONDITIONS, notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "insulating-cover";

/**
 * Is the joint of insulated conductors covered like them?
 *
 * NFPA 70 110.14(B) (2017, 2020, 2023), in our words: a splice or a joint is covered with insulation equal to the conductors', or with a device
 * identified for it. So a bare connector is covered on site; an insulated one is complete, but in wet and buried places
 * its unused openings are closed with its own plugs. Motor leads ended in lugs bolted back to back are such a joint.
 * Worked: a split bolt on THHN/THWN-2 at 480 V passes on the condition that it is covered; on bare conductors there is
 * nothing to cover.
 * Silent: how many layers make tape equal is left to the instructions of the tape.
 */
export const insulatingCover: Rule = {
  id: ID,
  title: "Insulation over the joint",
  clauses: ["splices", "instructions"],
  needs: [
    "joint/function",
    "joint/role",
    "joint/conductors/0/insulation",
    "connector/insulated",
    "connector/coverPart",
    "joint/place/location",
  ],
  cannotSee: "the cover or the tape as applied",
  check(subject, edition) {
    const { joint, connector, origin } = subject;
    if (joint.function === "termination" && connector.family !== "compression-lug-pair")
      return notApplicable(ID, "a termination is covered by its equipment");
    if (!carriesCircuit(joint)) return notApplicable(ID, "a grounding or bonding joint needs no insulation");
    const group = joint.conductors.findIndex(({ insulation }) => insulation !== "bare");
    const insulated = joint.conductors[group];
    if (insulated === undefined) return notApplicable(ID, "the conductors are bare");
    const worksheet = new Worksheet();
    worksheet.given("insulation of the conductor", insulated.insulation, conductorPath(group, "insulation"));
    worksheet.given("connector is insulated as supplied", connector.insulated, `${origin}/insulated`);
    return connector.insulated
      ? completeAsSupplied(subject, edition, worksheet)
      : coveredOnSite(subject, edition, worksheet);
  },
};

function carriesCircuit({ role }: Joint): boolean {
  return role === "phase" || role === "neutral";
}

function coveredOnSite({ connector }: JointSubject, edition: Edition, worksheet: Worksheet): CheckFinding {
  const cite = edition.clauses.splices;
  worksheet.conclude(
    "the joint can be covered",
    "pass",
    worksheet.steps,
    "insulation over the bare connector is a duty on site",
    cite,
  );
  return settled(ID, worksheet, {
    sentence: "The connector is bare, so the joint must be covered to insulation equal to the conductors'.",
    cite,
    required: "insulation equal to the conductors'",
    offered: connector.coverPart === undefined ? "bare connector" : `bare connector, cover ${connector.coverPart}`,
    conditions: [coverDuty(connector, edition)],
  });
}

function completeAsSupplied(subject: JointSubject, edition: Edition, worksheet: Worksheet): CheckFinding {
  const { joint } = subject;
  const cite = edition.clauses.splices;
  const unused = unusedOpenings(subject);
  const location = joint.place?.location;
  const exposed = location === "wet" || location === "direct-burial" || joint.equipment?.kind === "handhole";
  if (location !== undefined) worksheet.given("place of the joint", location, "joint/place/location");
  worksheet.conclude("the joint is insulated", "pass", worksheet.steps, "the connector is insulated as supplied", cite);
  const open = exposed && unused > 0;
  return settled(ID, worksheet, {
    sentence: open
      ? `The connector is insulated as supplied; ${unused === 1 ? "1 opening stays" : `${unused} openings stay`} unused in a wet place.`
      : "The connector is insulated as supplied.",
    cite,
    required: "insulation equal to the conductors'",
    offered: "insulated connector",
    conditions: open ? [closeUnused(edition)] : NO_CONDITIONS,
  });
}

function unusedOpenings({ connector, landings }: JointSubject): number {
  let openings = 0;
  for (const { count } of connector.openings) openings += count;
  return openings - landings.length;
}

function coverDuty({ coverPart }: Connector, { clauses }: Edition): Duty {
  return {
    duty: "cover-joint",
    sentence:
      coverPart === undefined
        ? "Cover the connector and bare conductor ends with a listed cover, or with tape, to insulation equal to the conductors'."
        : `Fit the listed cover ${coverPart}, so that no bare metal is left.`,
    cite: clauses.splices,
  };
}

function closeUnused({ clauses }: Edition): Duty {
  return {
    duty: "close-unused-openings",
    sentence: "Close unused ports with the plugs listed for the connector.",
    cite: clauses.instructions,
  };
}
