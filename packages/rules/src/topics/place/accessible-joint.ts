import type { Citation } from "../../core/citation.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Duty, Step } from "../../core/finding.js";
import { accessClause, type HidingAllowed, hidingAllowed } from "../../core/joint-access.js";
import { asking, type JointSubject, NO_CONDITIONS, notApplicable, type Rule, settledFrom } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "accessible-joint";
const PATH = "joint/place/accessible";
const REQUIRED = "within reach without taking off part of the building or digging";

/**
 * Does the joint stay where it can be reached, or is it one of those that may be hidden?
 *
 * NFPA 70 (2017, 2020, 2023), in our words: 300.15, a box or the like at each splice and termination; 314.29, boxes stay
 * accessible without taking off part of the building or digging; 250.68(A), so does what ends a conductor on an electrode.
 * Hidden may be: a splice listed for direct burial in the earth without a box (300.5(E)), a connection in the earth or in
 * concrete to an electrode there (250.68(A) Exception 1), a pressed or welded end on fireproofed structural metal
 * (Exception 2), and an electrode conductor joined by what cannot be undone (250.64(C)).
 * Worked: a splice in a box behind a finished wall is refused; a rod clamp in the earth is not.
 * Silent: where nothing is said of access the verdict does not hang on it; a duty on site says it. Boxes under gravel whose place is
 * marked (314.29, Exception) and concealed devices of cable wiring (334.40(B)) are not judged.
 */
export const accessibleJoint: Rule = {
  id: ID,
  title: "Access to the finished joint",
  clauses: [
    "boxAtEachJoint",
    "accessibleBoxes",
    "buriedSplices",
    "accessibleElectrodes",
    "electrodeConductorSplices",
    "waterPipeBonding",
    "otherPipeBonding",
    "structuralMetalBonding",
  ],
  needs: [
    "joint/place/accessible",
    "joint/place/location",
    "joint/equipment/kind",
    "joint/grounding/electrode",
    "joint/grounding/bonding",
    "connector/construction",
    "connector/places",
  ],
  cannotSee: "what is built in front of the joint afterwards",
  check(subject, edition) {
    const accessible = subject.joint.place?.accessible;
    if (accessible === undefined)
      return notApplicable(ID, "whether the joint can be reached is not given; to keep it so is a duty on site");
    const worksheet = new Worksheet();
    const given = worksheet.given("the finished joint can be reached", accessible, PATH);
    const cite = accessClause(subject, edition);
    if (!accessible) return hidden(subject, worksheet, given, cite, edition);
    worksheet.conclude("the joint stays accessible", "pass", [given], "it can be reached", cite);
    return settledFrom(
      ID,
      worksheet,
      { cite, required: REQUIRED, offered: "within reach" },
      { sentence: "The finished joint can be reached." },
    );
  },
};

function hidden(
  subject: JointSubject,
  worksheet: Worksheet,
  given: Step,
  cite: Citation,
  edition: Edition,
): CheckFinding {
  const steps = [given, ...factSteps(subject, worksheet)];
  const hiding = hidingAllowed(subject);
  const text = { cite, required: REQUIRED, offered: "out of reach" };
  if (hiding.kind === "open") return asking(ID, worksheet, hiding.path, hiding.because, text);
  if (hiding.kind === "refused") {
    worksheet.conclude("the joint may be out of reach", "fail", steps, "it is none of those that may be hidden", cite);
    return settledFrom(ID, worksheet, text, {
      sentence: "The finished joint cannot be reached, and it is none of those that may be hidden.",
      fix: fixFor(subject),
    });
  }
  const allowed = ALLOWED[hiding.as];
  const by = edition.clauses[allowed.clause];
  worksheet.conclude("the joint may be out of reach", "pass", steps, allowed.because, by);
  return settledFrom(ID, worksheet, text, {
    cite: by,
    sentence: `The finished joint cannot be reached, and need not be: ${allowed.because}.`,
    conditions: hiding.as === "fireproofed-steel" ? fireproofing(by) : NO_CONDITIONS,
  });
}

/** What decides whether the joint may be hidden, as far as it is known. */
function factSteps({ joint, connector, origin }: JointSubject, worksheet: Worksheet): readonly Step[] {
  const steps = [
    worksheet.given("what the joint does", joint.function, "joint/function"),
    worksheet.given("role of the conductors", joint.role, "joint/role"),
  ];
  const { place, equipment, grounding } = joint;
  if (place !== undefined) steps.push(worksheet.given("place of the joint", place.location, "joint/place/location"));
  if (equipment?.kind !== undefined)
    steps.push(worksheet.given("where the joint lies", equipment.kind, "joint/equipment/kind"));
  const grounds = joint.role === "electrode-conductor" || joint.role === "bonding";
  if (grounds) {
    steps.push(worksheet.given("how the connector holds", connector.construction, `${origin}/construction`));
    if (grounding?.electrode !== undefined)
      steps.push(worksheet.given("electrode", grounding.electrode, "joint/grounding/electrode"));
    if (grounding?.bonding !== undefined)
      steps.push(worksheet.given("what the jumper bonds", grounding.bonding, "joint/grounding/bonding"));
  }
  if (joint.function !== "termination" && place?.location === "direct-burial" && connector.places !== undefined)
    steps.push(worksheet.given("places of the connector's listing", connector.places, `${origin}/places`));
  return steps;
}

const ALLOWED = {
  "irreversible-splice": {
    clause: "electrodeConductorSplices",
    because: "it joins an electrode conductor and cannot be undone",
  },
  "buried-splice": {
    clause: "buriedSplices",
    because: "it lies in the earth without a box and is listed for direct burial",
  },
  "buried-electrode": {
    clause: "accessibleElectrodes",
    because: "it is a connection in the earth or in concrete to an electrode there",
  },
  "fireproofed-steel": {
    clause: "accessibleElectrodes",
    because: "it is pressed or welded and ends on structural steel, where fireproofing may cover it",
  },
} as const satisfies Record<HidingAllowed, { readonly clause: keyof Edition["clauses"]; readonly because: string }>;

function fireproofing(cite: Citation): readonly Duty[] {
  return [
    {
      duty: "steel-is-fireproofed",
      sentence: "See that what hides the connection is the fireproofing of the structural steel and nothing else.",
      cite,
    },
  ];
}

function fixFor({ joint }: JointSubject): string {
  const reach = "bring the joint where it can be reached, or give access to it (a cover or panel that comes off)";
  if (joint.function === "termination") return reach;
  if (joint.role === "electrode-conductor") return `${reach}; or join the electrode conductor by compression or a weld`;
  return joint.place?.location === "direct-burial"
    ? `${reach}; or a splice listed for direct burial without a box`
    : `${reach}; or run the conductor through in one piece`;
}
