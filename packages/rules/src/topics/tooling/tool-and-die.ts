import type { Tooling } from "../../core/connector.js";
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
    const { construction } = subject.connector;
    if (construction === "compression") return pressed(subject, edition);
    if (construction === "weld") return welded(subject, edition);
    return notApplicable(ID, "the connector is neither pressed nor welded");
  },
};

function pressed({ joint, connector, origin }: JointSubject, edition: Edition): CheckFinding {
  const cite = edition.clauses.instructions;
  const worksheet = new Worksheet();
  const { tooling } = connector;
  const planned = joint.tooling;
  if (tooling === undefined)
    return asking(
      ID,
      worksheet,
      `${origin}/tooling`,
      "The tool and die named for this compression connector are not known.",
      {
        cite,
        required: "the tool and die named for the connector",
      },
    );
  const text = { cite, required: toolingWords(tooling) };
  const offered = plannedWords(planned) ?? toolingWords(tooling);
  const tool = worksheet.given("tool named for the connector", tooling.tool, `${origin}/tooling/tool`);
  if (planned?.tool !== undefined) {
    const used = worksheet.given("tool to be used", planned.tool, "joint/tooling/tool");
    if (!worksheet.compare("the tool is the one named", used, "=", tool, cite))
      return settled(ID, worksheet, {
        ...text,
        sentence: `The connector is listed with tool ${tooling.tool}; ${planned.tool} is to be used.`,
        required: `tool ${tooling.tool}`,
        offered: `tool ${planned.tool}`,
        fix: `tool ${tooling.tool}; a connector already pressed with another is cut off and replaced`,
      });
  }
  if (planned?.die !== undefined) {
    if (tooling.die === undefined)
      return asking(
        ID,
        worksheet,
        `${origin}/tooling/die`,
        `Die ${planned.die} is to be used; which die is named for the connector is not known.`,
        {
          ...text,
          offered,
        },
      );
    const die = worksheet.given("die named for the connector", tooling.die, `${origin}/tooling/die`);
    const used = worksheet.given("die to be used", planned.die, "joint/tooling/die");
    if (!worksheet.compare("the die is the one named", used, "=", die, cite))
      return settled(ID, worksheet, {
        ...text,
        sentence: `The connector is listed with die ${tooling.die}; die ${planned.die} is to be used.`,
        required: `die ${tooling.die}`,
        offered: `die ${planned.die}`,
        fix: `die ${tooling.die}; a connector already pressed with another is cut off and replaced`,
      });
  }
  worksheet.conclude("tool and die are known", "pass", [tool], "nothing else is to be used", cite);
  return settled(ID, worksheet, {
    ...text,
    sentence: `The connector is pressed with ${toolingWords(tooling)}.`,
    offered,
    conditions: [pressAsListed(tooling, edition), recordCrimp(tooling, edition)],
  });
}

function welded({ connector, origin }: JointSubject, edition: Edition): CheckFinding {
  const cite = edition.clauses.instructions;
  const worksheet = new Worksheet();
  const made = worksheet.given("how the connector holds", connector.construction, `${origin}/construction`);
  worksheet.conclude(
    "the weld can be made",
    "pass",
    [made],
    "mold and charge are chosen on site for conductor and shape",
    cite,
  );
  return settled(ID, worksheet, {
    sentence: "The joint is welded; mold and charge must be the ones for this conductor and shape.",
    cite,
    required: "mold and charge for the conductor and the shape",
    offered: "exothermic weld",
    conditions: [
      {
        duty: "match-mold-and-charge",
        sentence: "Use the mold and charge named for this conductor size and for the shape it is welded to.",
        cite,
      },
      { duty: "clean-for-weld", sentence: "Clean the surface to bright, dry metal before the weld.", cite },
      { duty: "hot-work-permit", sentence: "Get a hot-work permit before the weld is fired.", cite },
    ],
  });
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

function plannedWords(planned: JointSubject["joint"]["tooling"]): string | undefined {
  if (planned?.tool !== undefined)
    return planned.die === undefined ? `tool ${planned.tool}` : `tool ${planned.tool}, die ${planned.die}`;
  return planned?.die === undefined ? undefined : `die ${planned.die}`;
}
