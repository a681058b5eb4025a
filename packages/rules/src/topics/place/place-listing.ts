import { type Citation, COMMON_PRACTICE } from "../../core/citation.js";
import type { Connector, PlaceListing } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Duty, Step } from "../../core/finding.js";
import type { Joint, Location } from "../../core/joint.js";
import { asking, type JointSubject, NO_CONDITIONS, type Rule, settledFrom } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "place-listing";

type PlaceAsked = Exclude<Location, "dry">;

/** What each place asks for: damp < wet < direct burial, concrete by itself. In a dry place any listing serves. */
const SERVING: Readonly<Record<PlaceAsked, readonly PlaceListing[]>> = {
  damp: ["damp", "equipment", "wet", "direct-burial"],
  wet: ["wet", "direct-burial"],
  "direct-burial": ["direct-burial"],
  concrete: ["concrete"],
};
/** What serves in these serves everywhere. */
const HARDEST: readonly PlaceAsked[] = ["direct-burial", "concrete"];
/** Ground clamps listed for direct burial also serve in concrete. */
const SERVING_CLAMP_IN_CONCRETE: readonly PlaceListing[] = ["concrete", "direct-burial"];

const PLACE_TEXT: Readonly<Record<Location, string>> = {
  dry: "a dry place",
  damp: "a damp place",
  wet: "a wet place",
  "direct-burial": "direct burial",
  concrete: "concrete",
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
 * Is the connector listed for the place of the joint?
 *
 * NFPA 70 (2017, 2020, 2023), in our words: 110.11, a part in a damp or wet place is one identified for it; 110.14(B)
 * and 300.5(E), a splice in the earth is made with a means listed for direct burial; 314.30(C), splices and
 * terminations in a handhole are listed for wet places; 250.70, a clamp in the earth or in concrete is listed for that.
 * Dry < damp < wet < direct burial: a listing also covers what ranks below it. Concrete stands by itself; ground clamps
 * marked for direct burial may also be encased in it. A part for use inside an enclosure serves dry and damp places,
 * because the enclosure is the one identified for the place.
 * Worked: a wet-listed splice in a trench needs "direct-burial" and has "wet": refused. In a handhole it serves.
 * Silent: there is no default for a part without a mark for its place, so it is asked about, except in a dry place,
 * where no mark is needed. A part for enclosures in a wet place hangs on the enclosure, and a part listed for concrete
 * alone says nothing of damp or wet: both are asked about.
 */
export const placeListing: Rule = {
  id: ID,
  title: "Listing of the connector for its place",
  clauses: [
    "deterioratingAgents",
    "splices",
    "buriedSplices",
    "handholeSplices",
    "electrodeConnections",
    "instructions",
  ],
  needs: ["joint/place/location", "joint/equipment/kind", "connector/places"],
  cannotSee: "whether the place is as dry as it was said to be",
  check(subject, edition) {
    const { joint, connector } = subject;
    const worksheet = new Worksheet();
    const places = typeof connector.places === "string" ? undefined : connector.places;
    const location = locationAsked(joint, worksheet, edition);
    if (location === undefined) return placeNotKnown(subject, worksheet, edition);
    const { place, step } = location;
    const cite = clauseFor(joint, place, edition);
    const required = `listed for ${PLACE_TEXT[place]}`;
    const text = { cite, required, offered: offeredText(connector) };

    if (place === "dry") {
      const known = listingStep(subject, worksheet);
      worksheet.conclude(
        "no mark for the place is needed in a dry one",
        "pass",
        [step, known],
        "every listing covers a dry place",
        cite,
      );
      return settledFrom(ID, worksheet, text, {
        sentence: "The place is dry; any listed connector may be used there.",
      });
    }
    if (places === undefined || places.length === 0)
      return asking(
        ID,
        worksheet,
        `${subject.origin}/places`,
        `The place of the joint is ${PLACE_TEXT[place]}; whether the connector is listed for it is not known.`,
        text,
      );

    const listed = listingStep(subject, worksheet);
    const serving = servingIn(place, connector);
    const asked = worksheet.state(`listings that serve ${PLACE_TEXT[place]}`, serving, cite, undefined, [
      step,
      worksheet.given("kind of part", connector.family, `${subject.origin}/family`),
    ]);
    if (place === "direct-burial" && joint.function !== "termination")
      worksheet.state(
        "a splice in the earth without a box is one listed for direct burial",
        true,
        edition.clauses.buriedSplices,
      );
    const covered = places.some((one) => serving.includes(one));
    if (!covered && place === "wet" && places.includes("equipment") && joint.equipment?.kind !== "handhole")
      return asking(
        ID,
        worksheet,
        "joint/place/location",
        "The part is for use inside an enclosure: say which place it is inside that enclosure, or use a part listed for wet places.",
        text,
      );
    if (!covered && (place === "damp" || place === "wet") && places.includes("concrete"))
      return asking(
        ID,
        worksheet,
        `${subject.origin}/places`,
        `A listing for concrete does not say whether the part serves ${PLACE_TEXT[place]}.`,
        text,
      );
    worksheet.conclude(
      "the listing covers the place",
      covered ? "pass" : "fail",
      [step, listed, asked],
      covered ? "one of its listings serves this place" : "none of its listings serves this place",
      cite,
    );
    return settledFrom(ID, worksheet, text, {
      sentence: covered
        ? `The connector is listed for ${listText(places)}, which covers ${PLACE_TEXT[place]}.`
        : `The connector is listed for ${listText(places)} only; the joint is in ${PLACE_TEXT[place]}.`,
      conditions: isCovered(place) ? INSPECT_BEFORE_COVER : NO_CONDITIONS,
      fix: fixFor(place),
    });
  },
};

/** Without a place only two answers stand: a listing that covers everything, or a question. */
function placeNotKnown(subject: JointSubject, worksheet: Worksheet, edition: Edition): CheckFinding {
  const { connector } = subject;
  const cite = edition.clauses.deterioratingAgents;
  const text = { cite, required: "listed for the place of the joint", offered: offeredText(connector) };
  const listed = listingStep(subject, worksheet);
  const places = typeof connector.places === "string" ? undefined : connector.places;
  if (
    places !== undefined &&
    HARDEST.every((place) => places.some((one) => servingIn(place, connector).includes(one)))
  ) {
    worksheet.conclude(
      "every place is covered",
      "pass",
      [listed],
      "the listing serves dry, damp, wet, buried and encased joints",
      cite,
    );
    return settledFrom(ID, worksheet, text, {
      sentence: `The place is not given, but the listing (${places.join(", ")}) covers every one.`,
      conditions: INSPECT_BEFORE_COVER,
    });
  }
  return asking(
    ID,
    worksheet,
    "joint/place/location",
    "The place of the joint is not given, and the connector's listing does not cover every place.",
    text,
  );
}

/** The place as given; a handhole counts as wet at least, whatever was said. */
function locationAsked(
  joint: Joint,
  worksheet: Worksheet,
  edition: Edition,
): { readonly place: Location; readonly step: Step } | undefined {
  const given = joint.place?.location;
  const step = given === undefined ? undefined : worksheet.given("place of the joint", given, "joint/place/location");
  if (joint.equipment?.kind === "handhole" && given !== "wet" && given !== "direct-burial" && given !== "concrete") {
    const handhole = worksheet.given("where the joint lies", "handhole", "joint/equipment/kind");
    return {
      place: "wet",
      step: worksheet.state("place that a handhole counts as", "wet", edition.clauses.handholeSplices, undefined, [
        handhole,
      ]),
    };
  }
  return given === undefined || step === undefined ? undefined : { place: given, step };
}

function listingStep({ connector, origin }: JointSubject, worksheet: Worksheet): Step {
  return worksheet.given("places of the connector's listing", connector.places ?? "not known", `${origin}/places`);
}

function servingIn(place: PlaceAsked, connector: Connector): readonly PlaceListing[] {
  return place === "concrete" && isGroundClamp(connector) ? SERVING_CLAMP_IN_CONCRETE : SERVING[place];
}

function isGroundClamp({ family }: Connector): boolean {
  return family === "rod-clamp" || family === "pipe-clamp" || family === "rebar-clamp";
}

function clauseFor(joint: Joint, place: Location, { clauses }: Edition): Citation {
  if (joint.equipment?.kind === "handhole") return clauses.handholeSplices;
  if (place !== "direct-burial" && place !== "concrete") return clauses.deterioratingAgents;
  if (joint.role === "electrode-conductor" && joint.function === "termination") return clauses.electrodeConnections;
  if (place === "direct-burial")
    return joint.function === "termination" ? clauses.deterioratingAgents : clauses.splices;
  return clauses.instructions;
}

function isCovered(place: Location): boolean {
  return place === "direct-burial" || place === "concrete";
}

function fixFor(place: Location): string {
  return place === "direct-burial"
    ? "a connector listed for direct burial, or bring the joint into an enclosure that suits the place"
    : `a connector listed for ${PLACE_TEXT[place]}`;
}

function offeredText({ places }: Connector): string {
  return places === undefined ? "not known" : typeof places === "string" ? "no mark for the place" : places.join(", ");
}

function listText(places: readonly PlaceListing[]): string {
  return places.map((place) => (place === "equipment" ? "use inside an enclosure" : place)).join(", ");
}
