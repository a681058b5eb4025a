import type { ConductorMetal } from "../../core/conductor.js";
import { conductorPath } from "../../core/conductor-path.js";
import { listWords, metalWords } from "../../core/conductor-words.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Step } from "../../core/finding.js";
import type { Joint } from "../../core/joint.js";
import { readMarking } from "../../core/marked-metals.js";
import { asking, type JointSubject, type Landing, notApplicable, type Rule, settled } from "../../core/rule.js";
import { cellAt, isRefused } from "../../core/table.js";
import { Worksheet } from "../../core/worksheet.js";
import { isWiringDevice } from "./wiring-device.js";

const ID = "unlike-metals";

/**
 * Do conductors of unlike metals touch, and may they?
 *
 * NFPA 70 110.14 (2017, 2020, 2023), in our words: conductors of unlike metals do not touch in a terminal or splice
 * unless the device is identified for it and for the place. Copper and aluminum are unlike, and so are aluminum and
 * copper-clad aluminum; whether copper and copper-clad aluminum are depends on the edition. Metals touch in one opening, and
 * in different ones of a part that does not keep its openings apart. The intermix mark allows contact in a dry place.
 * Worked: 12 AWG aluminum and copper in one opening marked AL-CU-INTERMIX-DRY: dry place passes, damp place is refused.
 * Silent: an unknown mark or place is asked about where it decides. A handhole or a trench is no dry place.
 */
export const unlikeMetals: Rule = {
  id: ID,
  title: "Unlike metals in contact",
  clauses: ["unlikeMetals"],
  needs: [
    "joint/conductors/0/metal",
    "joint/conductors/1/metal",
    "connector/openingsApart",
    "connector/metalMarking",
    "joint/place/location",
  ],
  cannotSee: "strands of one conductor that stray into the other's opening",
  check(subject, edition) {
    const pair = unlikePair(metalsOf(subject.joint), edition);
    if (pair === undefined) return notApplicable(ID, "no two of the conductors count as unlike metals");
    const worksheet = new Worksheet();
    const cite = edition.clauses.unlikeMetals;
    const metals = metalSteps(subject.joint, worksheet);
    const apart = worksheet.given(
      "openings keep metals apart",
      subject.connector.openingsApart,
      `${subject.origin}/openingsApart`,
    );
    const touching = touchingMetals(subject, edition);
    if (touching === undefined) {
      worksheet.conclude(
        "unlike metals do not touch",
        "pass",
        [...metals, apart],
        "each opening holds one metal, and the openings are kept apart",
        cite,
      );
      return settled(ID, worksheet, {
        sentence: `${pairWords(pair)} lie in openings that are kept apart, so they do not touch.`,
        cite,
        required: "unlike metals kept apart",
        offered: "openings kept apart",
      });
    }
    const contact = worksheet.conclude(
      "unlike metals touch",
      true,
      [...metals, apart],
      subject.connector.openingsApart
        ? "both lie in one opening"
        : "both lie in this part, which does not keep its openings apart",
      cite,
    );
    return contactFinding(subject, edition, worksheet, contact, touching);
  },
};

type Pair = readonly [ConductorMetal, ConductorMetal];

/** Metals touch: the mark must allow it, and the place must be one the mark is for. */
function contactFinding(
  subject: JointSubject,
  edition: Edition,
  worksheet: Worksheet,
  contact: Step,
  pair: Pair,
): CheckFinding {
  const { joint, connector, origin } = subject;
  const cite = edition.clauses.unlikeMetals;
  const path = `${origin}/metalMarking`;
  const words = pairWords(pair);
  const required = `${words.toLowerCase()} kept apart, or an intermix mark and a dry place`;
  const offered = connector.metalMarking === "unmarked" ? "no metal marking" : (connector.metalMarking ?? "not known");
  const fix = "a connector with separate openings for the two metals, listed for the place";
  const refuse = (sentence: string, offeredHere: string): CheckFinding =>
    settled(ID, worksheet, { sentence, cite, required, offered: offeredHere, fix });

  const reading = readMarking(connector, path, isWiringDevice(subject), edition, worksheet);
  if (reading.kind === "not-known")
    return asking(ID, worksheet, path, `${words} touch in this connector. ${reading.because}`, {
      cite,
      required,
      offered,
    });
  const cell = cellAt(edition.tables.markingCodes, connector.metalMarking ?? "", "intermix");
  const intermix = isRefused(cell) ? undefined : worksheet.read("where unlike metals may touch", cell, [reading.step]);
  if (intermix?.value !== "dry") {
    worksheet.conclude(
      "the mark allows contact",
      "fail",
      intermix === undefined ? [contact, reading.step] : [contact, intermix],
      "the connector bears no mark that lets unlike metals touch",
      cite,
    );
    return refuse(`${words} touch in this connector, which ${reading.words} and has no intermix mark.`, offered);
  }
  const location = joint.place?.location;
  if (location === undefined)
    return asking(
      ID,
      worksheet,
      "joint/place/location",
      `${words} may touch in this connector in a dry place only; the place is not given.`,
      {
        cite,
        required,
        offered,
      },
    );
  const place = worksheet.given("place of the joint", location, "joint/place/location");
  const kind = joint.equipment?.kind;
  if (location === "dry" && (kind === "handhole" || kind === "trench")) {
    const where = worksheet.given("where the joint lies", kind, "joint/equipment/kind");
    worksheet.conclude(
      "the place is dry",
      "fail",
      [contact, intermix, place, where],
      `a ${kind} is not a dry place`,
      cite,
    );
    return refuse(`${words} may touch in this connector in a dry place only, which a ${kind} is not.`, kind);
  }
  const holds = worksheet.compare("the place is one the mark is for", place, "=", intermix, cite);
  return holds
    ? settled(ID, worksheet, {
        sentence: `${words} touch, which the mark ${offered} allows in a dry place.`,
        cite,
        required,
        offered: `${offered}, dry place`,
      })
    : refuse(
        `${words} may touch in this connector in a dry place only; this place is ${placeWords(location)}.`,
        placeWords(location),
      );
}

function placeWords(location: string): string {
  return location === "direct-burial" ? "direct burial" : location;
}

/** "Copper and aluminum". */
function pairWords(pair: Pair): string {
  const words = listWords(pair.map(metalWords));
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function metalSteps({ conductors }: Joint, worksheet: Worksheet): Step[] {
  return conductors.map(({ metal }, group) =>
    worksheet.given("metal of the conductor", metal, conductorPath(group, "metal")),
  );
}

function metalsOf({ conductors }: Joint): ConductorMetal[] {
  const metals: ConductorMetal[] = [];
  for (const { metal } of conductors) if (!metals.includes(metal)) metals.push(metal);
  return metals;
}

/** Two unlike metals that touch: in one opening, or anywhere in a part that does not keep its openings apart. */
function touchingMetals({ joint, connector, landings }: JointSubject, edition: Edition): Pair | undefined {
  if (!connector.openingsApart) return unlikePair(metalsOf(joint), edition);
  for (const landing of landings) {
    const pair = unlikePair(metalsIn(landing), edition);
    if (pair !== undefined) return pair;
  }
  return undefined;
}

function metalsIn({ conductors }: Landing): ConductorMetal[] {
  return conductors.map(({ conductor }) => conductor.metal);
}

/** The first two of these metals that count as unlike. */
function unlikePair(metals: readonly ConductorMetal[], { copperCladUnlikeCopper }: Edition): Pair | undefined {
  for (const one of metals)
    for (const other of metals)
      if (one !== other && (copperCladUnlikeCopper || one === "aluminum"))
        return one < other ? [other, one] : [one, other];
  return undefined;
}
