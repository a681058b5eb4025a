import type { ConductorGroup } from "../../core/conductor.js";
import { metalWords } from "../../core/conductor-words.js";
import type { Joint } from "../../core/joint.js";
import { asking, notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "aluminum-in-earth";

/**
 * Does an aluminum grounding electrode conductor keep out of the earth and of concrete?
 *
 * NFPA 70 250.64(A) (2017, 2020, 2023), in our words: aluminum and copper-clad aluminum electrode conductors are not
 * ended in the earth or in concrete, and are not laid bare in contact with them. The place decides, whether an
 * electrode, a bus or another conductor is at the other side. 250.53(C) takes the same for the bonding jumpers between
 * electrodes.
 * Worked: 1/0 AWG bare aluminum spliced in the earth: refused. 1/0 AWG copper: nothing to judge.
 * Silent: the 18 in above the earth outdoors, which no field gives; it is in what this rule cannot see.
 */
export const aluminumInEarth: Rule = {
  id: ID,
  title: "Aluminum electrode conductor in the earth or in concrete",
  clauses: ["electrodeConductorAluminum"],
  needs: [
    "joint/place/location",
    "joint/conductors/0/metal",
    "joint/conductors/0/insulation",
    "joint/grounding/bonding",
    "joint/grounding/electrode",
  ],
  cannotSee: "whether an aluminum conductor ends outdoors within 18 in of the earth",
  check({ joint }, edition) {
    if (!servesElectrode(joint)) return notApplicable(ID, "no grounding electrode conductor is joined here");
    const group = joint.conductors.findIndex((conductor) => isAtRisk(joint, conductor));
    const conductor = joint.conductors[group];
    if (conductor === undefined) return notApplicable(ID, "no aluminum ends here, nor lies bare");
    const cite = edition.clauses.electrodeConductorAluminum;
    const worksheet = new Worksheet();
    const path = `joint/conductors/${String(group)}`;
    const metal = worksheet.given("metal of the conductor", conductor.metal, `${path}/metal`);
    const insulation = worksheet.given("insulation", conductor.insulation, `${path}/insulation`);
    const required = "copper in the earth and in concrete";
    const offered = metalWords(conductor.metal);
    const location = joint.place?.location;
    if (location === undefined)
      return asking(
        ID,
        worksheet,
        "joint/place/location",
        "The conductor is aluminum, and whether the joint lies in the earth or in concrete is not given.",
        { cite, required, offered },
      );
    const place = worksheet.given("place of the joint", location, "joint/place/location");
    const buried = location === "direct-burial" || location === "concrete";
    worksheet.conclude(
      "the conductor keeps out of the earth and of concrete",
      buried ? "fail" : "pass",
      [metal, insulation, place],
      buried ? "aluminum is not ended there, nor laid bare there" : "the joint lies in neither",
      cite,
    );
    return settled(ID, worksheet, {
      sentence: buried
        ? `An ${offered} electrode conductor may not ${joint.function === "termination" ? "end" : "lie bare"} in the earth or in concrete.`
        : `The ${offered} electrode conductor is joined outside the earth and concrete.`,
      cite,
      required,
      offered,
      fix: "a copper conductor for the part in the earth or in concrete",
    });
  },
};

/** Electrode conductors, and the bonding jumpers between electrodes or at one. */
function servesElectrode({ role, equipment, grounding }: Joint): boolean {
  if (role === "electrode-conductor") return true;
  if (role !== "bonding") return false;
  return (
    equipment?.kind === "electrode" || grounding?.electrode !== undefined || grounding?.bonding === "electrode-system"
  );
}

/** Aluminum that ends at the joint, or that is bare where it goes on. */
function isAtRisk({ function: jointFunction }: Joint, { metal, insulation }: ConductorGroup): boolean {
  return metal !== "copper" && (jointFunction === "termination" || insulation === "bare");
}
