import { conductorPath } from "../../core/conductor-path.js";
import type { Connector, Construction } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Step } from "../../core/finding.js";
import type { Joint } from "../../core/joint.js";
import { asking, type JointSubject, notApplicable, type Rule, settledFrom } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "electrode-splice";
const REQUIRED = "irreversible compression listed for grounding, or exothermic weld";

const CONSTRUCTION_TEXT: Readonly<Record<Construction, string>> = {
  "set-screw": "set screw",
  compression: "compression",
  "insulation-piercing": "insulation piercing",
  "split-bolt": "split bolt",
  "bolted-clamp": "bolted clamp",
  "twist-on": "twist-on",
  spring: "spring",
  "binding-screw": "binding screw",
  weld: "weld",
};

/**
 * Is a grounding electrode conductor lengthened only by what cannot be undone?
 *
 * NFPA 70 250.64(C) (2017, 2020, 2023), in our words: an electrode conductor runs in one length, without a splice,
 * except by compression connectors that cannot be undone and are listed as grounding and bonding equipment, or by
 * exothermic welding. 250.64(D)(1): where a building has several disconnects in enclosures of their own, taps to a common
 * electrode conductor are joined by any connector that is listed as grounding and bonding equipment, or by a weld, while the
 * common conductor goes on in one piece.
 * Worked: two lengths of 4 AWG under a split bolt can be undone: refused. Pressed in a connector listed for
 * grounding: allowed.
 * Silent here: bus bars and the joints of structural steel that the clause also allows.
 */
export const electrodeSplice: Rule = {
  id: ID,
  title: "Splice in a grounding electrode conductor",
  clauses: ["electrodeConductorSplices", "electrodeConductorTaps"],
  needs: [
    "connector/construction",
    "connector/grounding/listed",
    "joint/function",
    "joint/conductors/0/duty",
    "joint/conductors/0/uncut",
  ],
  cannotSee: "whether the crimp was completed",
  check(subject, edition) {
    const { joint, connector, origin } = subject;
    if (joint.role !== "electrode-conductor" || joint.function === "termination")
      return notApplicable(ID, "no grounding electrode conductor is spliced or tapped");
    const cite = edition.clauses.electrodeConductorSplices;
    const worksheet = new Worksheet();
    const construction = worksheet.given("how the connector holds", connector.construction, `${origin}/construction`);
    const text = { cite, required: REQUIRED, offered: offeredText(connector) };
    if (connector.construction === "weld") {
      worksheet.conclude("the splice is allowed", "pass", [construction], "a weld cannot be undone", cite);
      return settledFrom(ID, worksheet, text, {
        sentence: "The electrode conductor is joined by a weld, which is allowed.",
      });
    }
    if (connector.construction !== "compression") {
      if (joint.function === "tap") return tapped(subject, worksheet, construction, edition);
      worksheet.conclude("the splice is allowed", "fail", [construction], "such a connector can be undone", cite);
      return settledFrom(ID, worksheet, text, {
        sentence: `The electrode conductor is joined by a ${CONSTRUCTION_TEXT[connector.construction]}, which can be undone.`,
        fix: `${REQUIRED}; or one unspliced length`,
      });
    }
    const { grounding } = connector;
    if (grounding === undefined)
      return asking(
        ID,
        worksheet,
        `${origin}/grounding`,
        "Whether the compression connector is listed as grounding and bonding equipment is not known.",
        text,
      );
    const listed = worksheet.given(
      "listed as grounding and bonding equipment",
      grounding.listed,
      `${origin}/grounding/listed`,
    );
    worksheet.conclude(
      "the splice is allowed",
      grounding.listed ? "pass" : "fail",
      [construction, listed],
      grounding.listed
        ? "it cannot be undone and is listed for grounding"
        : "it is not listed as grounding and bonding equipment",
      cite,
    );
    return settledFrom(ID, worksheet, text, {
      sentence: grounding.listed
        ? "The electrode conductor is joined by compression listed as grounding and bonding equipment, which is allowed."
        : "The compression connector is not listed as grounding and bonding equipment, so it may not join an electrode conductor.",
      fix: REQUIRED,
    });
  },
};

/** A tap by a connector that can be undone: listed for grounding, on a common conductor that goes on in one piece. */
function tapped(
  { joint, connector, origin }: JointSubject,
  worksheet: Worksheet,
  construction: Step,
  edition: Edition,
): CheckFinding {
  const cite = edition.clauses.electrodeConductorTaps;
  const text = {
    cite,
    required: "connector listed for grounding, common conductor uncut",
    offered: offeredText(connector),
    fix: `a connector listed for grounding on the uncut common conductor; or ${REQUIRED}`,
  };
  const { grounding } = connector;
  const run = runOf(joint);
  if (grounding?.listed === false || run?.uncut === false) {
    const steps = [construction];
    if (grounding?.listed === false)
      steps.push(worksheet.given("listed as grounding and bonding equipment", false, `${origin}/grounding/listed`));
    if (run?.uncut === false)
      steps.push(worksheet.given("the common conductor is uncut", false, conductorPath(run.group, "uncut")));
    worksheet.conclude(
      "the tap is allowed",
      "fail",
      steps,
      grounding?.listed === false
        ? "it is not listed as grounding and bonding equipment"
        : "the common conductor is cut, and such a connector can be undone",
      cite,
    );
    return settledFrom(ID, worksheet, text, {
      sentence:
        grounding?.listed === false
          ? "The connector is not listed as grounding and bonding equipment, so it may not tap an electrode conductor."
          : `The common electrode conductor is cut and joined by a ${CONSTRUCTION_TEXT[connector.construction]}, which can be undone.`,
    });
  }
  if (grounding === undefined)
    return asking(
      ID,
      worksheet,
      `${origin}/grounding`,
      "Whether the connector is listed as grounding and bonding equipment is not known.",
      text,
    );
  const listed = worksheet.given("listed as grounding and bonding equipment", true, `${origin}/grounding/listed`);
  if (run === undefined)
    return asking(
      ID,
      worksheet,
      conductorPath(0, "duty"),
      "Which of the conductors is the common one, that must go on in one piece, is not given.",
      text,
    );
  if (run.uncut === undefined)
    return asking(
      ID,
      worksheet,
      conductorPath(run.group, "uncut"),
      "A connector that can be undone taps only a common conductor that goes on in one piece; whether it is uncut is not given.",
      text,
    );
  const uncut = worksheet.given("the common conductor is uncut", true, conductorPath(run.group, "uncut"));
  worksheet.conclude(
    "the tap is allowed",
    "pass",
    [construction, listed, uncut],
    "it is listed for grounding, and the common conductor has no splice",
    cite,
  );
  return settledFrom(ID, worksheet, text, {
    sentence:
      "The tap is joined by a connector listed as grounding and bonding equipment, and the common conductor stays uncut.",
    conditions: [
      {
        duty: "electrode-tap-of-one-disconnect",
        sentence: "See that the tap serves one of several disconnects that have an enclosure each.",
        cite,
      },
    ],
  });
}

/** The common conductor; where several groups run through, one that is cut, else one not said to be uncut. */
function runOf({ conductors }: Joint): { readonly group: number; readonly uncut: boolean | undefined } | undefined {
  let found: { readonly group: number; readonly uncut: boolean | undefined } | undefined;
  for (const [group, { duty, uncut }] of conductors.entries()) {
    if (duty !== "run") continue;
    if (uncut === false) return { group, uncut };
    if (found === undefined || uncut === undefined) found = { group, uncut };
  }
  return found;
}

function offeredText({ construction, grounding }: Connector): string {
  const text = CONSTRUCTION_TEXT[construction];
  if (grounding === undefined) return text;
  return grounding.listed ? `${text}, listed for grounding` : `${text}, not listed for grounding`;
}
