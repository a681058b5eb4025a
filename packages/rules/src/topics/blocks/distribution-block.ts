import type { Citation } from "../../core/citation.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Duty, Step } from "../../core/finding.js";
import { asking, type JointSubject, notApplicable, type Rule, settledFrom } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "distribution-block";
/** 314.28(E): boxes must be larger than this, in cubic inches. */
const BOX_OVER_IN3 = 100;
const COVERED = "no live parts exposed with the enclosure open";

/**
 * May a power distribution block stand in this wireway or box?
 *
 * NFPA 70 376.56(B) for wireways and 314.28(E) for pull and junction boxes (2017, 2020, 2023), in our words: the block is
 * listed; a box that holds one is larger than 100 cubic inches; wireway or box has the size and the bending space that the
 * block's instructions and 312.6 ask for; no live part of the block lies open, whether or not the enclosure's own cover is
 * on; and its terminals stay clear of other conductors. The mark for the line side is judged by a rule of its own.
 * Worked: a bare block without a cover of its own in a wireway is refused; in a box of 100 cubic inches any block is.
 * Silent: other enclosures, where the block belongs to the equipment that it stands in. Whether the block is listed is
 * asked by the rule of listings.
 */
export const distributionBlock: Rule = {
  id: ID,
  title: "Power distribution block in a wireway or box",
  clauses: ["wirewayBlocks", "boxBlocks", "bendingOpposite"],
  needs: [
    "connector/family",
    "connector/insulated",
    "connector/coverPart",
    "joint/equipment/kind",
    "joint/equipment/boxVolumeIn3",
    "joint/equipment/bending",
  ],
  cannotSee: "the size of the enclosure against the block's instructions, and what lies before its terminals",
  check(subject, edition) {
    const { joint, connector } = subject;
    if (connector.family !== "power-distribution-block")
      return notApplicable(ID, "the connector is no power distribution block");
    const worksheet = new Worksheet();
    switch (joint.equipment?.kind) {
      case "wireway":
        return inEnclosure(
          subject,
          worksheet,
          [kindStep(worksheet, "wireway")],
          edition.clauses.wirewayBlocks,
          edition,
        );
      case "box":
        return inBox(subject, worksheet, edition);
      case undefined:
        return asking(
          ID,
          worksheet,
          "joint/equipment/kind",
          "Where the block stands is not given: in a wireway or a box its live parts must be covered, and a box must be large enough.",
          { cite: edition.clauses.wirewayBlocks, required: COVERED, offered: offeredText(subject) },
        );
      default:
        return notApplicable(ID, "the block stands neither in a wireway nor in a pull or junction box");
    }
  },
};

function kindStep(worksheet: Worksheet, kind: string): Step {
  return worksheet.given("where the block stands", kind, "joint/equipment/kind");
}

function inBox(subject: JointSubject, worksheet: Worksheet, edition: Edition): CheckFinding {
  const cite = edition.clauses.boxBlocks;
  const kind = kindStep(worksheet, "box");
  // Open live parts are refused in a box of any size.
  if (isOpen(subject)) return inEnclosure(subject, worksheet, [kind], cite, edition);
  const volumeIn3 = subject.joint.equipment?.boxVolumeIn3;
  const required = `a box over ${String(BOX_OVER_IN3)} in3`;
  if (volumeIn3 === undefined)
    return asking(
      ID,
      worksheet,
      "joint/equipment/boxVolumeIn3",
      `A distribution block stands only in a box of more than ${String(BOX_OVER_IN3)} cubic inches; the volume of this one is not given.`,
      { cite, required },
    );
  const volume = worksheet.given("volume of the box", volumeIn3, "joint/equipment/boxVolumeIn3", "in3");
  const least = worksheet.state("volume that the box must exceed", BOX_OVER_IN3, cite, "in3", [kind]);
  if (!worksheet.compare("the box is large enough for a block", volume, ">", least, cite))
    return settledFrom(
      ID,
      worksheet,
      { cite, required, offered: `${String(volumeIn3)} in3` },
      {
        sentence: `The box holds ${String(volumeIn3)} cubic inches; a distribution block needs one of more than ${String(BOX_OVER_IN3)}.`,
        fix: `a box of more than ${String(BOX_OVER_IN3)} cubic inches, as large as the block's instructions ask for`,
      },
    );
  return inEnclosure(subject, worksheet, [kind, worksheet.last], cite, edition);
}

/** Live parts must lie covered with the enclosure open; the rest is seen on site. */
function inEnclosure(
  subject: JointSubject,
  worksheet: Worksheet,
  uses: readonly Step[],
  cite: Citation,
  edition: Edition,
): CheckFinding {
  const { connector, origin } = subject;
  const insulated = worksheet.given("block is insulated as supplied", connector.insulated, `${origin}/insulated`);
  const cover =
    connector.coverPart === undefined
      ? insulated
      : worksheet.given("cover listed for the block", connector.coverPart, `${origin}/coverPart`);
  const open = isOpen(subject);
  worksheet.conclude(
    "the block may stand here",
    open ? "fail" : "pass",
    [...uses, insulated, cover],
    open ? "its live parts lie open once the enclosure is opened" : "no live part lies open",
    cite,
  );
  return settledFrom(
    ID,
    worksheet,
    { cite, required: COVERED, offered: offeredText(subject) },
    open
      ? {
          sentence:
            "The block is bare and has no cover of its own, so its live parts lie open once the enclosure is opened.",
          fix: "an insulated block, or the cover listed for this one",
        }
      : {
          sentence: `The block has ${connector.insulated ? "an insulated body" : "a cover of its own"}, so no live part lies open.`,
          conditions: conditionsFor(subject, cite, edition),
        },
  );
}

function isOpen({ connector }: JointSubject): boolean {
  return !connector.insulated && connector.coverPart === undefined;
}

function conditionsFor({ joint, connector }: JointSubject, cite: Citation, { clauses }: Edition): readonly Duty[] {
  const conditions: Duty[] = [
    {
      duty: "block-size-and-clearance",
      sentence:
        "See that the enclosure is no smaller than the block's instructions ask for, and lead other conductors clear of its terminals.",
      cite,
    },
  ];
  if (!connector.insulated)
    conditions.push({
      duty: "fit-block-cover",
      sentence: `Fit the cover ${connector.coverPart ?? ""} on the block.`,
      cite,
    });
  if (joint.equipment?.bending === undefined)
    conditions.push({
      duty: "measure-block-bending-space",
      sentence:
        "Measure the space to bend the conductors at the block's terminals and compare it with 312.6; it was not given.",
      cite: clauses.bendingOpposite,
    });
  return conditions;
}

function offeredText({ connector }: JointSubject): string {
  if (connector.insulated) return "insulated block";
  return connector.coverPart === undefined ? "bare block" : `bare block, cover ${connector.coverPart}`;
}
