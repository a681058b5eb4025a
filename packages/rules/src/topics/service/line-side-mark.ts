import { type Citation, COMMON_PRACTICE } from "../../core/citation.js";
import type { Edition, LineSideMark } from "../../core/edition.js";
import type { CheckFinding, Duty, NotApplicable, Step } from "../../core/finding.js";
import { asking, type JointSubject, NO_CONDITIONS, notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "line-side-mark";
const REQUIRED = "mark for the line side of service equipment";
const DATE = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/;

/**
 * Does a connector on service conductors carry the mark for the line side?
 *
 * NFPA 70 230.46, our words. 2017: no such mark is asked for. 2020: connectors for splices and taps on service
 * conductors carry it when they are installed on or after 2023-01-01. 2023: they carry it.
 * Worked: an unmarked piercing tap on service conductors under the 2023 edition is refused; under the 2020 edition it
 * passes if installed on 2022-12-31 and is refused on 2023-01-01; under the 2017 edition it passes and the owner is told.
 * Power distribution blocks carry it in wireways under every edition (376.56(B)(1)), in boxes under 2017 too (314.28(E)(1)),
 * and anywhere from 2020 on without regard to the date.
 * Lugs that end the conductors in the service equipment are not splices or taps. Grounding and bonding conductors are
 * no service conductors.
 * Silent: the text does not say how an absent mark reads; a part that was looked at and bears none has none.
 */
export const lineSideMark: Rule = {
  id: ID,
  title: "Line-side mark on service conductors",
  clauses: ["serviceSplices", "wirewayBlocks", "boxBlocks"],
  needs: [
    "joint/circuit/protection",
    "joint/basis/installedOn",
    "joint/equipment/kind",
    "connector/lineSide",
    "connector/family",
  ],
  cannotSee: "the mark itself; only whether it is said to be there",
  check(subject, edition) {
    const { joint, connector, origin } = subject;
    if (joint.function === "termination" && !isBlock(subject))
      return notApplicable(ID, "the mark is for splices and taps, not for the lugs of the service equipment");
    if (joint.role !== "phase" && joint.role !== "neutral")
      return notApplicable(ID, "a grounding or bonding conductor is not a service conductor");
    const worksheet = new Worksheet();
    const protection = joint.circuit?.protection;
    if (protection === undefined) return protectionNotKnown(subject, worksheet, edition);
    if (protection.kind !== "service") return notApplicable(ID, "the conductors are not service conductors");
    const service = worksheet.given(
      "what is ahead of the conductors",
      "service, no device of the premises",
      "joint/circuit/protection/kind",
    );
    if (connector.lineSide === "marked") return marked(subject, worksheet, edition, service);

    const asked = askedOf(subject, edition);
    if (asked === undefined)
      return asking(
        ID,
        worksheet,
        "joint/equipment/kind",
        "Where the block stands decides whether it needs the line-side mark under this edition, and it is not given.",
        { cite: edition.clauses.wirewayBlocks, required: REQUIRED, offered: offeredText(subject) },
      );
    const { rule, cite } = asked;
    if (rule.asked === "no") return notAskedYet(subject, worksheet, edition, service, rule.laterRule);
    const used: Step[] = [service];
    if (rule.asked === "from") {
      const date = joint.basis?.installedOn;
      if (date === undefined || !DATE.test(date))
        return asking(
          ID,
          worksheet,
          "joint/basis/installedOn",
          `The mark is asked for from ${rule.date} on, and the date of installation is not given as YYYY-MM-DD.`,
          { cite: edition.clauses.serviceSplices, required: REQUIRED, offered: offeredText(subject) },
        );
      const installed = worksheet.given("date of installation", date, "joint/basis/installedOn");
      const from = worksheet.state(
        "the mark is asked for from this date on",
        rule.date,
        edition.clauses.serviceSplices,
      );
      // Dates written YYYY-MM-DD stand in the order of their text.
      if (date < rule.date)
        return installedBefore(subject, worksheet, edition, [service, installed, from], date, rule.date);
      used.push(
        worksheet.conclude(
          "installed while the mark is asked for",
          true,
          [installed, from],
          "the date is on or after it",
        ),
      );
    }
    if (connector.lineSide === undefined)
      return asking(
        ID,
        worksheet,
        `${origin}/lineSide`,
        "A connector for splices and taps on service conductors must carry the line-side mark; whether this one does is not known.",
        { cite, required: REQUIRED },
      );
    used.push(worksheet.given("line-side mark of the connector", connector.lineSide, `${origin}/lineSide`));
    worksheet.conclude("the connector carries the mark", "fail", used, "it was looked at and bears none", cite);
    return settled(ID, worksheet, {
      sentence:
        "The joint is on service conductors and the connector bears no mark for the line side of service equipment.",
      cite,
      required: REQUIRED,
      offered: offeredText(subject),
      fix: "a connector marked for the line side, or make the joint on the load side of the main",
    });
  },
};

/** Whether and by which clause the mark is asked for. */
interface MarkAsked {
  readonly rule: LineSideMark;
  readonly cite: Citation;
}

const ASKED: LineSideMark = Object.freeze({ asked: "yes" });

/** Undefined where that hangs on the kind of enclosure, which is not given. */
function askedOf(subject: JointSubject, edition: Edition): MarkAsked | undefined {
  const { clauses } = edition;
  if (!isBlock(subject)) return { rule: edition.lineSideMark, cite: clauses.serviceSplices };
  const kind = subject.joint.equipment?.kind;
  if (kind === "wireway") return { rule: ASKED, cite: clauses.wirewayBlocks };
  if (edition.blockLineSideMark === "everywhere") return { rule: ASKED, cite: clauses.serviceSplices };
  if (kind === "box") return { rule: ASKED, cite: clauses.boxBlocks };
  return kind === undefined ? undefined : { rule: edition.lineSideMark, cite: clauses.serviceSplices };
}

function isBlock({ connector }: JointSubject): boolean {
  return connector.family === "power-distribution-block";
}

/** It may be on service conductors: only the mark, or an edition that asks for none, makes that indifferent. */
function protectionNotKnown(
  subject: JointSubject,
  worksheet: Worksheet,
  edition: Edition,
): CheckFinding | NotApplicable {
  const rule = askedOf(subject, edition)?.rule;
  const date = subject.joint.basis?.installedOn ?? "";
  const asked =
    rule === undefined || rule.asked === "yes" || (rule.asked === "from" && !(DATE.test(date) && date < rule.date));
  if (subject.connector.lineSide === "marked" || !asked)
    return notApplicable(
      ID,
      "the joint is not said to be on service conductors, and nothing would be wanting if it were",
    );
  return asking(
    ID,
    worksheet,
    "joint/circuit/protection",
    "What protects the conductors is not given; on service conductors the connector would need the line-side mark.",
    {
      cite: edition.clauses.serviceSplices,
      required: `${REQUIRED}, if the conductors are service conductors`,
      offered: offeredText(subject),
    },
  );
}

function marked(subject: JointSubject, worksheet: Worksheet, edition: Edition, service: Step): CheckFinding {
  const { rule, cite } = askedOf(subject, edition) ?? {
    rule: edition.lineSideMark,
    cite: edition.clauses.serviceSplices,
  };
  const mark = worksheet.given("line-side mark of the connector", "marked", `${subject.origin}/lineSide`);
  worksheet.conclude(
    "the connector carries the mark",
    "pass",
    [service, mark],
    "it is marked, whether or not the edition asks for it",
    cite,
  );
  return settled(ID, worksheet, {
    sentence: "The connector is marked for the line side of service equipment.",
    cite,
    required: askedText(rule),
    offered: "marked",
    conditions: rule.asked === "no" ? NO_CONDITIONS : PHOTOGRAPH_MARK,
  });
}

function notAskedYet(
  subject: JointSubject,
  worksheet: Worksheet,
  edition: Edition,
  service: Step,
  laterRule: string,
): CheckFinding {
  const cite = edition.clauses.serviceSplices;
  const asked = worksheet.state("this edition asks for a line-side mark", false, cite);
  worksheet.conclude(
    "no mark is needed under this edition",
    "pass",
    [service, asked],
    "the edition in force asks for none",
    cite,
  );
  return settled(ID, worksheet, {
    sentence: "The joint is on service conductors; the edition in force does not ask for a line-side mark.",
    cite,
    required: askedText(edition.lineSideMark),
    offered: offeredText(subject),
    conditions: [{ duty: "advise-owner-later-rule", sentence: `Tell the owner in writing that ${laterRule}.`, cite }],
    advice: [`A later rule is stricter: ${laterRule}.`],
  });
}

function installedBefore(
  subject: JointSubject,
  worksheet: Worksheet,
  edition: Edition,
  uses: readonly Step[],
  date: string,
  from: string,
): CheckFinding {
  const cite = edition.clauses.serviceSplices;
  worksheet.conclude(
    "no mark is needed on this date",
    "pass",
    uses,
    "it is installed before the mark is asked for",
    cite,
  );
  return settled(ID, worksheet, {
    sentence: `The joint is installed on ${date}, before the line-side mark is asked for on ${from}.`,
    cite,
    required: askedText(edition.lineSideMark),
    offered: offeredText(subject),
    advice: [
      `From ${from} on, connectors on service conductors need the line-side mark; a marked one spares the question.`,
    ],
  });
}

const PHOTOGRAPH_MARK: readonly Duty[] = Object.freeze([
  Object.freeze({
    duty: "photograph-mark",
    sentence: "Photograph the line-side mark on the connector before it is covered.",
    cite: COMMON_PRACTICE,
  }),
]);

function askedText(rule: LineSideMark): string {
  return rule.asked === "yes"
    ? REQUIRED
    : rule.asked === "from"
      ? `${REQUIRED}, from ${rule.date} on`
      : "no mark under this edition";
}

function offeredText({ connector }: JointSubject): string {
  return connector.lineSide === "marked"
    ? "marked"
    : connector.lineSide === "unmarked"
      ? "no line-side mark"
      : "not known";
}
