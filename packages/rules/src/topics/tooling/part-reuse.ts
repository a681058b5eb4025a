import type { Edition } from "../../core/edition.js";
import type { Duty } from "../../core/finding.js";
import { asking, notApplicable, type Rule, settledFrom } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "part-reuse";

/**
 * Is a part that can be used once only used for the first time?
 *
 * NFPA 70 110.3(B) (2017, 2020, 2023), in our words: a connector is used as its listing and instructions say; one that is pressed, welded
 * or otherwise spent when it is fitted is not fitted twice.
 * Worked: a compression lug cut off and pressed again: refused.
 * Silent: where the state of the part is not given, the acceptance hangs on a new part; in a joint that is made again,
 * where the old part is at hand, it is asked for.
 */
export const partReuse: Rule = {
  id: ID,
  title: "Use of a part a second time",
  clauses: ["instructions"],
  needs: ["connector/reusable", "joint/partState", "joint/rework"],
  cannotSee: "whether the part in hand was fitted before",
  check({ joint, connector, origin }, edition) {
    if (connector.reusable) return notApplicable(ID, "the connector may be used again");
    const cite = edition.clauses.instructions;
    const worksheet = new Worksheet();
    const once = worksheet.given("may be used again", connector.reusable, `${origin}/reusable`);
    const text = { cite, required: "a new part", fix: "a new connector" };
    if (joint.partState === undefined && joint.rework === true) {
      worksheet.given("the joint is made again", joint.rework, "joint/rework");
      return asking(
        ID,
        worksheet,
        "joint/partState",
        "The joint is made again with a connector that can be used once only; whether the part is new is not given.",
        text,
      );
    }
    if (joint.partState === undefined) {
      worksheet.conclude("the part is used for the first time", "pass", [once], "a new part is a duty on site", cite);
      return settledFrom(ID, worksheet, text, {
        sentence: "This connector can be used once only; the state of the part is not given.",
        offered: "not given",
        conditions: [useNewPart(edition)],
      });
    }
    const state = worksheet.given("state of the part", joint.partState, "joint/partState");
    const asked = worksheet.state("state that the part must be in", "new", cite, undefined, [once]);
    const holds = worksheet.compare("the part is used for the first time", state, "=", asked, cite);
    return settledFrom(ID, worksheet, text, {
      sentence: holds
        ? "The connector can be used once only, and a new one is used."
        : "The connector can be used once only, and this one was used before.",
      offered: `a ${joint.partState} part`,
    });
  },
};

function useNewPart({ clauses }: Edition): Duty {
  return { duty: "use-new-part", sentence: "Use a new part that was never fitted before.", cite: clauses.instructions };
}
