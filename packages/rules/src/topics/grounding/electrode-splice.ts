import type { Connector, Construction } from "../../core/connector.js";
import { asking, NO_ADVICE, notApplicable, type Rule, settledFrom } from "../../core/rule.js";
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
 * exothermic welding.
 * Worked: two lengths of 4 AWG under a split bolt can be undone: refused. Pressed in a connector listed for
 * grounding: allowed.
 * Silent here: bus bars and the joints of structural steel that the clause also allows, and taps from a common
 * electrode conductor of several disconnects (250.64(D)), which have a rule of their own.
 */
export const electrodeSplice: Rule = {
  id: ID,
  title: "Splice in a grounding electrode conductor",
  clauses: ["electrodeConductorSplices"],
  needs: ["connector/construction", "connector/grounding/listed"],
  cannotSee: "whether the crimp was completed",
  check({ joint, connector, origin }, edition) {
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
      worksheet.conclude("the splice is allowed", "fail", [construction], "such a connector can be undone", cite);
      return settledFrom(ID, worksheet, text, {
        sentence: `The electrode conductor is joined by a ${CONSTRUCTION_TEXT[connector.construction]}, which can be undone.`,
        fix: `${REQUIRED}; or one unspliced length`,
        advice: joint.function === "tap" ? TAP_ADVICE : NO_ADVICE,
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

const TAP_ADVICE: readonly string[] = Object.freeze([
  "A tap from the common electrode conductor of several disconnects has a rule of its own, 250.64(D), which is not answered here.",
]);

function offeredText({ construction, grounding }: Connector): string {
  const text = CONSTRUCTION_TEXT[construction];
  if (construction !== "compression" || grounding === undefined) return text;
  return grounding.listed ? `${text}, listed for grounding` : `${text}, not listed for grounding`;
}
