import type { Connector, Tooling } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Duty } from "../../core/finding.js";
import { asking, type JointSubject, notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "tool-and-die";

/**
 * Are tool and die the ones named for the connector?
 *
 * NFPA 70 110.3(B) (2017, 2020, 2023), in our words: a compression connector is listed together with the tool and die that press it, and is
 * pressed with those; an exothermic weld is made with the mold and charge for its conductor and its shape.
 * Worked: a lug listed with die A, to be pressed with die B: refused.
 * Silent: there is no default die, so a compression connector without its tool is asked about. What was truly used is
 * seen only on site, so each acceptance hangs on the press and on its record.
 */
export const toolAndDie: Rule = {
  id: ID,
  title: "Tool and die",
  clauses: ["instructions"],
  needs: ["connector/construction", "connector/tooling", "joint/tooling"],
  cannotSee: "the tool in the electrician's hand, and the crimp itself",
  check(subject, edition) {
    const { construction, tooling } = subject.connector;
    if (construction !== "compression" && construction !== "weld" && tooling === undefined)
      return notApplicable(ID, "the connector is made without a tool of its own");
    if (construction === "compression" && tooling === undefined) return asksForTooling(subject, edition);
    const worksheet = new Worksheet();
    return (
      (tooling === undefined ? undefined : plannedOtherwise(subject, tooling, edition, worksheet)) ??
      madeAsListed(subject, edition, worksheet)
    );
  },
};

function asksForTooling({ origin }: JointSubject, edition: Edition): CheckFinding {
  return asking(
    ID,
    new Worksheet(),
    `${origin}/tooling`,
    "The tool and die named for this compression connector are not known.",
    { cite: edition.clauses.instructions, required: "the tool and die named for the connector" },
  );
}

/** A tool or die already settled on that is not the one named. */
function plannedOtherwise(
  { joint, origin }: JointSubject,
  tooling: Tooling,
  edition: Edition,
  worksheet: Worksheet,
): CheckFinding | undefined {
  const cite = edition.clauses.instructions;
  const planned = joint.tooling;
  const refused = (thing: string, named: string, used: string): CheckFinding =>
    settled(ID, worksheet, {
      sentence: `The connector is listed with ${thing} ${named}; ${thing} ${used} is to be used.`,
      cite,
      required: `${thing} ${named}`,
      offered: `${thing} ${used}`,
      fix: `${thing} ${named}; a connector already made with another is cut off and replaced`,
    });
  if (planned?.tool !== undefined) {
    const named = worksheet.given("tool named for the connector", tooling.tool, `${origin}/tooling/tool`);
    const used = worksheet.given("tool to be used", planned.tool, "joint/tooling/tool");
    if (!worksheet.compare("the tool is the one named", used, "=", named, cite))
      return refused("tool", tooling.tool, planned.tool);
  }
  if (planned?.die === undefined) return undefined;
  const used = worksheet.given("die to be used", planned.die, "joint/tooling/die");
  if (tooling.die === undefined)
    return asking(
      ID,
      worksheet,
      `${origin}/tooling/die`,
      `Die ${planned.die} is to be used; which die is named for the connector is not known.`,
      { cite, required: toolingWords(tooling), offered: `die ${planned.die}` },
    );
  const named = worksheet.given("die named for the connector", tooling.die, `${origin}/tooling/die`);
  return worksheet.compare("the die is the one named", used, "=", named, cite)
    ? undefined
    : refused("die", tooling.die, planned.die);
}

function madeAsListed({ connector, origin }: JointSubject, edition: Edition, worksheet: Worksheet): CheckFinding {
  const cite = edition.clauses.instructions;
  const { construction, tooling } = connector;
  const made = worksheet.given("how the connector holds", construction, `${origin}/construction`);
  const words = tooling === undefined ? "mold and charge for the conductor and the shape" : toolingWords(tooling);
  worksheet.conclude(
    "the connector can be made as listed",
    "pass",
    [made],
    "nothing else than what is named is to be used",
    cite,
  );
  return settled(ID, worksheet, {
    sentence:
      construction === "weld"
        ? "The joint is welded; mold and charge must be the ones for this conductor and shape."
        : `The connector is made with ${words}.`,
    cite,
    required: words,
    offered: words,
    conditions: construction === "weld" ? weldDuties(edition) : pressDuties(construction, tooling, edition),
  });
}

function weldDuties({ clauses }: Edition): Duty[] {
  const cite = clauses.instructions;
  return [
    {
      duty: "match-mold-and-charge",
      sentence: "Use the mold and charge named for this conductor size and for the shape it is welded to.",
      cite,
    },
    { duty: "clean-for-weld", sentence: "Clean the surface to bright, dry metal before the weld.", cite },
    { duty: "hot-work-permit", sentence: "Get a hot-work permit before the weld is fired.", cite },
  ];
}

/** Only a press leaves something to record; another part with a tool of its own is tightened by its instructions. */
function pressDuties(construction: Connector["construction"], tooling: Tooling | undefined, edition: Edition): Duty[] {
  if (construction !== "compression" || tooling === undefined) return [];
  return [pressAsListed(tooling, edition), recordCrimp(tooling, edition)];
}

function pressAsListed({ tool, die, crimps }: Tooling, { clauses }: Edition): Duty {
  const dieWords = die === undefined ? "" : `, die ${die}`;
  const crimpWords =
    crimps === undefined ? "the number of crimps its instructions give" : crimps === 1 ? "1 crimp" : `${crimps} crimps`;
  return {
    duty: "press-as-listed",
    sentence: `Press with tool ${tool}${dieWords}, ${crimpWords}.`,
    cite: clauses.instructions,
  };
}

function recordCrimp({ die }: Tooling, { clauses }: Edition): Duty {
  return {
    duty: "record-crimp",
    sentence:
      die === undefined
        ? "Record the tool and the mark it leaves on the barrel."
        : "Record the tool, the die and the mark the die leaves on the barrel.",
    cite: clauses.instructions,
  };
}

function toolingWords({ tool, die }: Tooling): string {
  return die === undefined ? `tool ${tool}` : `tool ${tool}, die ${die}`;
}
