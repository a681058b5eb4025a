import type { ConductorGroup } from "../../core/conductor.js";
import { conductorPath } from "../../core/conductor-path.js";
import { conductorWords } from "../../core/conductor-words.js";
import type { Connector, ConnectorFamily, Construction, Opening } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Step } from "../../core/finding.js";
import { dutyOf, type LandedGroup, landedGroups } from "../../core/opening-fit.js";
import { asking, type JointSubject, notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "run-through";
const REQUIRED = "a part that closes around an uncut conductor";

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
  needs: [
    "joint/conductors/0/duty",
    "joint/conductors/0/uncut",
    "connector/openings/0/duty",
    "connector/construction",
    "connector/family",
  ],
  cannotSee: "where along the run the tap is made",
  check(subject, edition) {
    if (subject.joint.function !== "tap")
      return notApplicable(ID, "no conductor runs through a splice or a termination");
    const run = decidingRun(subject);
    if (run === undefined) return notApplicable(ID, "no conductor is said to run through in one piece");
    return run.course === "refused" || run.course === "through"
      ? judge(subject, run, edition)
      : ask(subject, run, edition);
  },
};

/** What becomes of a conductor in its opening. */
type Course = "ends" | "through" | "refused" | "ask-duty" | "ask-uncut";

interface Run extends Pick<LandedGroup, "group" | "conductor" | "opening" | "openingIndex"> {
  readonly course: Course;
}

/** A refusal decides before a question, a question before a conductor that lies well. */
const DECIDES: readonly Course[] = Object.freeze(["refused", "ask-duty", "ask-uncut", "through"]);

function decidingRun({ joint, connector, landings }: JointSubject): Run | undefined {
  let decides: Run | undefined;
  for (const { group, conductor, opening, openingIndex } of landedGroups(landings)) {
    const course = courseOf(conductor, dutyOf(joint.conductors, group), closesAround(connector, opening));
    if (course === "ends") continue;
    if (decides === undefined || DECIDES.indexOf(course) < DECIDES.indexOf(decides.course))
      decides = { group, conductor, opening, openingIndex, course };
  }
  return decides;
}

/** A conductor that leaves ends here, and one that is said to be cut does; any other may go on. */
function courseOf({ uncut }: ConductorGroup, duty: ConductorGroup["duty"], around: boolean): Course {
  if (uncut === false || (uncut === undefined && duty === "tap")) return "ends";
  if (around) return "through";
  if (uncut === true) return "refused";
  return duty === undefined ? "ask-duty" : "ask-uncut";
}

/** The opening for the conductor that leaves takes an end, whatever the part is. */
function closesAround({ construction, family }: Connector, { duty }: Opening): boolean {
  if (duty !== undefined) return duty === "run";
  return AROUND.includes(construction) || AROUND_FAMILIES.includes(family);
}

function judge(subject: JointSubject, run: Run, edition: Edition): CheckFinding {
  const { conductor, group, opening } = run;
  const cite = edition.clauses.instructions;
  const worksheet = new Worksheet();
  const facts = openingFacts(worksheet, subject, run);
  if (conductor.duty !== undefined)
    facts.push(worksheet.given("duty of the conductor in the tap", conductor.duty, conductorPath(group, "duty")));
  if (conductor.uncut !== undefined)
    facts.push(worksheet.given("the conductor stays in one piece", conductor.uncut, conductorPath(group, "uncut")));
  const through = run.course === "through";
  worksheet.conclude(
    "the run may lie there",
    through ? "pass" : "fail",
    facts,
    through ? "the part closes around it" : "the opening takes only the end of a conductor",
    cite,
  );
  return settled(ID, worksheet, {
    sentence: through
      ? `The ${conductorWords(conductor)} may run through uncut.`
      : `The ${conductorWords(conductor)} stays uncut, and the opening "${opening.id}" takes only the end of a conductor.`,
    cite,
    required: REQUIRED,
    offered: subject.connector.description,
    fix: "a piercing, gutter, parallel or pressed tap; or cut the run and give each end an opening",
  });
}

function ask(subject: JointSubject, run: Run, edition: Edition): CheckFinding {
  const { conductor, group, course } = run;
  const worksheet = new Worksheet();
  openingFacts(worksheet, subject, run);
  const words = conductorWords(conductor);
  return asking(
    ID,
    worksheet,
    `joint/conductors/${String(group)}/${course === "ask-duty" ? "duty" : "uncut"}`,
    course === "ask-duty"
      ? `Whether the ${words} runs through or leaves is not given; this part takes only the end of a conductor.`
      : `Whether the ${words} stays uncut is not given; this part takes only its end.`,
    { cite: edition.clauses.instructions, required: REQUIRED, offered: subject.connector.description },
  );
}

/** What tells whether the opening takes a conductor along its length: its own duty, else how the part is built. */
function openingFacts(worksheet: Worksheet, { connector, origin }: JointSubject, run: Run): Step[] {
  const { opening, openingIndex } = run;
  if (opening.duty !== undefined)
    return [
      worksheet.given(
        `duty of the opening "${opening.id}"`,
        opening.duty,
        `${origin}/openings/${String(openingIndex)}/duty`,
      ),
    ];
  return [
    worksheet.given("how the part holds", connector.construction, `${origin}/construction`),
    worksheet.given("kind of part", connector.family, `${origin}/family`),
  ];
}
