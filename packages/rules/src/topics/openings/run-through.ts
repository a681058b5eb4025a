import { conductorWords } from "../../core/conductor-words.js";
import type { Connector, ConnectorFamily, Construction, Opening } from "../../core/connector.js";
import { type LandedGroup, landedGroups } from "../../core/opening-fit.js";
import { asking, notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "run-through";

/** These close around a conductor anywhere along its length. */
const AROUND: readonly Construction[] = Object.freeze(["split-bolt", "bolted-clamp", "insulation-piercing"]);
const AROUND_FAMILIES: readonly ConnectorFamily[] = Object.freeze(["compression-tap", "parallel-tap", "gutter-tap"]);

/**
 * Can a conductor that stays in one piece lie in the opening it is landed in?
 *
 * NFPA 70 110.3(B) and 110.14(B) (2017, 2020, 2023), in our words: a connector is used as it is listed. An opening that
 * takes the end of a conductor cannot take one that goes on; for that the part must close around it: a piercing,
 * gutter, parallel or pressed tap, or a split bolt.
 * Worked: a 500 kcmil feeder that stays uncut in the port of a multi-tap block: refused; in a gutter tap it lies well.
 * Silent: a run that is cut to be landed is two ends in two openings, which the rule for openings counts.
 */
export const runThrough: Rule = {
  id: ID,
  title: "Conductor that runs through uncut",
  clauses: ["instructions", "splices"],
  needs: ["joint/conductors/0/duty", "joint/conductors/0/uncut", "connector/construction", "connector/openings/0/duty"],
  cannotSee: "where along the run the tap is made",
  check({ joint, connector, landings, origin }, edition) {
    if (joint.function !== "tap") return notApplicable(ID, "no conductor runs through a splice or a termination");
    const landed = landedGroups(landings).filter(mayRunOn);
    // The opening that takes only an end decides; a part that closes around every run has none.
    const run = landed.find(({ opening }) => !closesAround(connector, opening)) ?? landed[0];
    if (run === undefined) return notApplicable(ID, "no conductor is said to run through in one piece");
    const { conductor, group, opening, openingIndex } = run;
    const cite = edition.clauses.instructions;
    const worksheet = new Worksheet();
    const path = `joint/conductors/${String(group)}`;
    const duty = worksheet.given("duty of the conductor in the tap", conductor.duty ?? "not known", `${path}/duty`);
    const construction = worksheet.given("how the part holds", connector.construction, `${origin}/construction`);
    const openingStep = worksheet.given("opening it lies in", opening.id, `${origin}/openings/${String(openingIndex)}`);
    const around = closesAround(connector, opening);
    const text = { cite, required: "a part that closes around an uncut conductor" };
    if (!around && conductor.duty === undefined && conductor.uncut === undefined)
      return asking(
        ID,
        worksheet,
        `${path}/duty`,
        `Whether the ${conductorWords(conductor)} runs through or leaves is not given; this part takes only the end of a conductor.`,
        { cite, required: text.required, offered: connector.description },
      );
    if (!around && conductor.uncut === undefined)
      return asking(
        ID,
        worksheet,
        `${path}/uncut`,
        `Whether the ${conductorWords(conductor)} stays uncut is not given; this part takes only its end.`,
        { cite, required: text.required, offered: connector.description },
      );
    worksheet.conclude(
      "the run may lie there",
      around ? "pass" : "fail",
      [duty, construction, openingStep],
      around ? "the part closes around it" : "the opening takes only the end of a conductor",
      cite,
    );
    return settled(ID, worksheet, {
      sentence: around
        ? `The ${conductorWords(conductor)} may run through uncut.`
        : `The ${conductorWords(conductor)} stays uncut, and the opening "${opening.id}" takes only the end of a conductor.`,
      cite,
      required: text.required,
      offered: connector.description,
      fix: "a piercing, gutter, parallel or pressed tap; or cut the run and give each end an opening",
    });
  },
};

/** A conductor that leaves ends here, and one that is said to be cut does; any other may go on. */
function mayRunOn({ conductor }: LandedGroup): boolean {
  return conductor.duty !== "tap" && conductor.uncut !== false;
}

function closesAround({ construction, family }: Connector, opening: Opening): boolean {
  return opening.duty === "run" || AROUND.includes(construction) || AROUND_FAMILIES.includes(family);
}
