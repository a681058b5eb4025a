import { COMMON_PRACTICE } from "../../core/citation.js";
import type { Connector, ConnectorFamily, Electrode, GroundingListing } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Duty, Step } from "../../core/finding.js";
import type { EquipmentKind, Joint } from "../../core/joint.js";
import {
  asking,
  type JointSubject,
  NO_CONDITIONS,
  notApplicable,
  type Rule,
  settled,
  settledFrom,
} from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "electrode-connection";

/** Parts that are made to hold an electrode; a weld is a mold made for one. */
const CLAMPS: readonly ConnectorFamily[] = ["rod-clamp", "pipe-clamp", "rebar-clamp"];

/** Equipment that holds no electrode; a box, a pedestal, a handhole or a trench may. */
const WITHOUT_ELECTRODE: readonly EquipmentKind[] = Object.freeze([
  "panelboard",
  "switchboard",
  "motor-control-center",
  "transfer-switch",
  "disconnect",
  "generator",
  "transformer",
  "motor",
  "battery",
  "wireway",
  "ground-bus",
  "wiring-device",
]);
const REQUIRED_ELECTRODE = "an electrode that the part is listed for";

const ELECTRODE_TEXT: Readonly<Record<Electrode, string>> = {
  "copper-bonded-rod": "copper-bonded rod",
  "galvanized-rod": "galvanized rod",
  "stainless-rod": "stainless rod",
  "concrete-encased-rebar": "concrete-encased rebar",
  "water-pipe": "water pipe",
  "building-steel": "building steel",
  "ground-ring": "ground ring",
  plate: "plate",
};

/** Said of every joint that disappears from sight. */
const INSPECT_BEFORE_COVER: readonly Duty[] = Object.freeze([
  Object.freeze({
    duty: "inspect-before-cover",
    sentence: "Have the joint inspected and photographed before it is covered.",
    cite: COMMON_PRACTICE,
  }),
]);

/**
 * Is the clamp or weld listed for this electrode, and does it hold only the conductors it is listed for?
 *
 * NFPA 70 250.70 (2017, 2020, 2023), in our words: the means of connection is listed for the material of the electrode
 * and of the conductor, and for the earth or the concrete where it lies there; one conductor per clamp, unless the
 * clamp is listed for more. A clamp or a weld mold named for electrodes serves nothing else (110.3(B)).
 * Worked: two 6 AWG under one rod clamp without a mark for more: 2 <= 1 does not hold.
 * A clamp without a mark for more than one conductor counts as made for one. Whether the listing covers the earth or
 * concrete is judged by the rule for the place.
 * Silent: the condition of the electrode and how much of it is in the earth.
 */
export const electrodeConnection: Rule = {
  id: ID,
  title: "Connection to the electrode",
  clauses: ["electrodeConnections", "instructions"],
  needs: [
    "joint/grounding/electrode",
    "joint/equipment/kind",
    "joint/place/location",
    "connector/grounding/electrodes",
    "connector/grounding/conductorsPerClamp",
  ],
  cannotSee: "the metal of the electrode as installed, and paint or scale under the clamp",
  check(subject, edition) {
    const { joint, connector } = subject;
    if (joint.role === "phase" || joint.role === "neutral") return notApplicable(ID, "no electrode is connected here");
    if (joint.function !== "termination")
      return notApplicable(ID, "conductors are joined to each other, not to an electrode");
    const named = isNamedForElectrodes(connector);
    const kind = joint.equipment?.kind;
    const electrode = joint.grounding?.electrode;
    // The electrode of a joint may be given for its size alone, at the other end of the conductor.
    if (named && kind !== undefined && WITHOUT_ELECTRODE.includes(kind)) return refuseAway(subject, kind, edition);
    if (named && kind !== "electrode" && electrode === undefined) return askElectrode(subject, edition);
    if (joint.role === "equipment-ground" && !named) return notApplicable(ID, "an equipment ground ends on equipment");
    if (mayEndOnElectrode(subject)) return askKind(subject, edition);
    if (!named && kind !== "electrode" && (kind !== undefined || electrode === undefined))
      return notApplicable(ID, "the conductor does not end on an electrode");
    const worksheet = new Worksheet();
    return judge(subject, worksheet, named || kind === "electrode", edition);
  },
};

/**
 * Nothing says where the conductor ends, which may be on an electrode, and there this part would not do as it is known.
 * 250.53(C) takes 250.70 for the jumpers between electrodes too.
 */
function mayEndOnElectrode({ joint, connector, origin }: JointSubject): boolean {
  return (
    (joint.role === "electrode-conductor" || joint.grounding?.bonding === "electrode-system") &&
    joint.equipment?.kind === undefined &&
    joint.grounding?.electrode === undefined &&
    origin === "connector" &&
    connector.mounting.kind !== "integral" &&
    connector.construction !== "weld" &&
    connector.grounding?.listed !== true
  );
}

function askKind({ connector }: JointSubject, edition: Edition): CheckFinding {
  return asking(
    ID,
    new Worksheet(),
    "joint/equipment/kind",
    "Where the conductor ends is not given; on an electrode it needs a part listed for grounding.",
    {
      cite: edition.clauses.electrodeConnections,
      required: "a part listed for grounding, if it ends on an electrode",
      offered: connector.grounding === undefined ? "listing not known" : listedText(connector.grounding),
    },
  );
}

function judge(subject: JointSubject, worksheet: Worksheet, atElectrode: boolean, edition: Edition): CheckFinding {
  const { joint, connector, origin } = subject;
  const cite = edition.clauses.electrodeConnections;
  const electrode = joint.grounding?.electrode;
  const required = electrode === undefined ? "listed for the electrode" : `listed for ${ELECTRODE_TEXT[electrode]}`;
  const { grounding } = connector;
  if (grounding === undefined)
    return asking(
      ID,
      worksheet,
      `${origin}/grounding`,
      "Whether the part is listed for connecting an electrode is not known.",
      { cite, required },
    );
  const text = { cite, required, offered: listedText(grounding) };
  const listed = worksheet.given(
    "electrodes of the listing",
    grounding.listed ? grounding.electrodes : [],
    `${origin}/grounding/electrodes`,
  );
  const counted = countOf(joint);
  const held = holdsAll(grounding, counted);
  if (held === false) return refuseCount(subject, worksheet, grounding, counted, edition);
  if (electrode === undefined && grounding.listed && grounding.electrodes.length > 0)
    return asking(
      ID,
      worksheet,
      "joint/grounding/electrode",
      "Which electrode is connected is not given, so the listing of the part cannot be compared with it.",
      text,
    );
  if (electrode === undefined) {
    worksheet.conclude("the part is listed for an electrode", "fail", [listed], "it is listed for none", cite);
    return settledFrom(ID, worksheet, text, {
      sentence: `The part is ${listedText(grounding)}.`,
      fix: "a clamp or weld listed for the electrode",
    });
  }
  const asked = worksheet.given("electrode", electrode, "joint/grounding/electrode");
  const covered = worksheet.compare("the part is listed for the electrode", asked, "in", listed, cite);
  const listing = worksheet.last;
  if (!covered && !atElectrode)
    return asking(
      ID,
      worksheet,
      "joint/equipment/kind",
      "Whether the conductor ends on the electrode itself or on equipment is not given; this part is not listed for the electrode.",
      text,
    );
  if (!covered)
    return settledFrom(ID, worksheet, text, {
      sentence: `The part is ${listedText(grounding)}, not for ${ELECTRODE_TEXT[electrode]}.`,
      fix: `a clamp or weld ${required}`,
    });
  if (held === undefined)
    return asking(
      ID,
      worksheet,
      `${origin}/grounding/conductorsPerClamp`,
      `There are ${String(counted)} conductors, and how many the clamp is listed for is not known.`,
      {
        cite,
        offered: text.offered,
        required: `listed for ${String(counted)} conductors`,
      },
    );
  const count = writeCount(subject, worksheet, grounding, counted, edition);
  worksheet.conclude(
    "the electrode may be connected so",
    "pass",
    [listing, count],
    "listed for the electrode and for the conductors in it",
    cite,
  );
  return settledFrom(ID, worksheet, text, {
    sentence: `The part is ${listedText(grounding)} and holds ${counted === 1 ? "one conductor" : `${String(counted)} conductors, as it is listed to`}.`,
    conditions: inEarth(joint) ? INSPECT_BEFORE_COVER : NO_CONDITIONS,
  });
}

/** Whether the clamp is listed for so many conductors; undefined where its listing is not known and decides. */
function holdsAll({ conductorsPerClamp }: GroundingListing, counted: number): boolean | undefined {
  if (conductorsPerClamp === undefined) return counted <= 1 ? true : undefined;
  return counted <= (conductorsPerClamp === "unmarked" ? 1 : conductorsPerClamp);
}

/** Clamps, and weld molds that name electrodes. */
function isNamedForElectrodes({ family, grounding }: Connector): boolean {
  return CLAMPS.includes(family) || (family === "exothermic-weld" && (grounding?.electrodes.length ?? 0) > 0);
}

/** A part made for electrodes, used on equipment that is none. */
function refuseAway({ connector, origin }: JointSubject, kind: EquipmentKind, edition: Edition): CheckFinding {
  const cite = edition.clauses.instructions;
  const worksheet = new Worksheet();
  const family = worksheet.given("kind of part", connector.family, `${origin}/family`);
  const place = worksheet.given("where the conductor ends", kind, "joint/equipment/kind");
  worksheet.conclude("the part is used for what it is listed", "fail", [family, place], "no electrode is there", cite);
  const where = kind.replaceAll("-", " ");
  return settled(ID, worksheet, {
    sentence: `The part is ${madeForText(connector)}; the conductor ends on a ${where}, which is no electrode.`,
    cite,
    required: REQUIRED_ELECTRODE,
    offered: where,
    fix: "a lug or bar connector for the equipment",
  });
}

function askElectrode({ connector, origin }: JointSubject, edition: Edition): CheckFinding {
  const worksheet = new Worksheet();
  worksheet.given("kind of part", connector.family, `${origin}/family`);
  return asking(
    ID,
    worksheet,
    "joint/grounding/electrode",
    "The part is made for an electrode; which one it would hold is not given.",
    { cite: edition.clauses.instructions, required: REQUIRED_ELECTRODE, offered: madeForText(connector) },
  );
}

function madeForText({ grounding }: Connector): string {
  return grounding === undefined ? "made for electrodes" : listedText(grounding);
}

/** Compares the conductors with those the clamp is listed for; returns the comparison. */
function writeCount(
  { origin }: JointSubject,
  worksheet: Worksheet,
  grounding: GroundingListing,
  counted: number,
  edition: Edition,
): Step {
  const cite = edition.clauses.electrodeConnections;
  const path = `${origin}/grounding/conductorsPerClamp`;
  const conductors = worksheet.given("conductors in the clamp", counted, "joint/conductors/0/count");
  const marked = grounding.conductorsPerClamp;
  const allowed =
    typeof marked === "number"
      ? worksheet.given("conductors the clamp is listed for", marked, path)
      : marked === "unmarked"
        ? worksheet.assume(
            "conductors the clamp is listed for",
            1,
            "a clamp without a mark for more holds one conductor",
            cite,
          )
        : worksheet.state("conductors that every clamp may hold", 1, cite);
  worksheet.compare("the clamp holds no more conductors than it is listed for", conductors, "<=", allowed, cite);
  return worksheet.last;
}

function refuseCount(
  subject: JointSubject,
  worksheet: Worksheet,
  grounding: GroundingListing,
  counted: number,
  edition: Edition,
): CheckFinding {
  writeCount(subject, worksheet, grounding, counted, edition);
  const allowed = typeof grounding.conductorsPerClamp === "number" ? grounding.conductorsPerClamp : 1;
  return settled(ID, worksheet, {
    sentence: `There are ${String(counted)} conductors under a clamp that is listed for ${String(allowed)}.`,
    cite: edition.clauses.electrodeConnections,
    required: allowed === 1 ? "1 conductor" : `${String(allowed)} conductors`,
    offered: `${String(counted)} conductors`,
    fix: "a second clamp, or one listed for more conductors",
  });
}

function inEarth({ place }: Joint): boolean {
  return place?.location === "direct-burial" || place?.location === "concrete";
}

function countOf({ conductors }: Joint): number {
  let total = 0;
  for (const { count } of conductors) total += count;
  return total;
}

function listedText({ listed, electrodes }: GroundingListing): string {
  if (!listed) return "not listed for grounding";
  return electrodes.length === 0
    ? "listed for no electrode"
    : `listed for ${electrodes.map((one) => ELECTRODE_TEXT[one]).join(", ")}`;
}
