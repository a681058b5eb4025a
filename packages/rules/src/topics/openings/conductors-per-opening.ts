import type { Citation } from "../../core/citation.js";
import { conductorPath } from "../../core/conductor-path.js";
import { conductorWords, listWords, metalWords } from "../../core/conductor-words.js";
import type { SharedOpening } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Step } from "../../core/finding.js";
import type { Joint } from "../../core/joint.js";
import { dutyFit, type LandedGroup, landedGroups } from "../../core/opening-fit.js";
import { asking, type JointSubject, type Landing, notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";
import { conductorCount, conductorsIn, contentWords, fullestOf, insideStep, unlikeLandings } from "./landed-opening.js";
import { countFit, type ShareFit, shareFit } from "./opening-share.js";

const ID = "conductors-per-opening";

/**
 * Does each opening take the conductors that lie in it, by number and by what may share it?
 *
 * NFPA 70 110.14(A) (2017, 2020, 2023), in our words: a terminal takes one conductor unless it is identified for more; 110.3(B): what the
 * marking says of more than one (same size, same metal, which sizes) is kept. In a tap the conductor that runs
 * through lies in the run opening and the one that leaves in the tap opening.
 * Worked: two 10 AWG under a screw marked for one: 2 <= 1 does not hold, so it is refused; two 12 AWG in a hole marked for two of
 * 14 to 12 AWG pass.
 * Silent: the text knows no default for a part that was not looked at, so the number is asked for where more than one
 * conductor lies in an opening; one conductor always may. Where the package lists combinations their rule decides. A
 * splice or a tap that names one conductor only is asked for the other.
 */
export const conductorsPerOpening: Rule = {
  id: ID,
  title: "Conductors in each opening",
  clauses: ["terminals", "instructions"],
  needs: [
    "joint/conductors/0/count",
    "joint/conductors/0/duty",
    "connector/openings/0/conductorsMax",
    "connector/openings/0/shared",
  ],
  cannotSee: "which hole the electrician uses, and conductors of other joints already in it",
  check(subject, edition) {
    const landings = unlikeLandings(subject.landings);
    const fullest = fullestOf(landings);
    if (fullest === undefined) return notApplicable(ID, "no conductor lies in an opening");
    return (
      refusal(subject, edition, landings) ??
      question(subject, edition, landings) ??
      passed(subject, edition, landings, fullest)
    );
  },
};

function refusal(subject: JointSubject, edition: Edition, landings: readonly Landing[]): CheckFinding | undefined {
  for (const one of landedGroups(landings))
    if (dutyFit(subject.joint, one.group, one.opening) === "refused") return wrongDuty(subject, edition, one);
  for (const landing of landings) {
    if (countFit(landing.opening, conductorsIn(landing)) === "refused") return tooMany(subject, edition, landing);
    const share = shareFit(landing.opening, landing.conductors, conductorsIn(landing));
    const { shared } = landing.opening;
    if (shared !== undefined && isRefusal(share))
      return mayNotShare(subject, edition, landing, sharedWords(shared, share));
  }
  return undefined;
}

function wrongDuty({ origin, joint }: JointSubject, edition: Edition, one: LandedGroup): CheckFinding {
  const { conductor, group, opening, openingIndex } = one;
  const cite = clauseFor(joint, edition);
  const worksheet = new Worksheet();
  // Refused: the opening has the duty that the conductor has not.
  const other = opening.duty === "run" ? "run" : "tap";
  const own = other === "run" ? "tap" : "run";
  const duty =
    conductor.duty === undefined
      ? worksheet.conclude(
          "duty of the conductor",
          own,
          [],
          "the other conductors of the tap have the other duty",
          cite,
        )
      : worksheet.given("duty of the conductor", own, conductorPath(group, "duty"));
  const offered = worksheet.given("duty of the opening", other, `${origin}/openings/${openingIndex}/duty`);
  worksheet.compare("the opening is for this conductor", duty, "=", offered, cite);
  return settled(ID, worksheet, {
    sentence: `The ${own} conductor, ${conductorWords(conductor)}, has no ${own} opening left and would lie in a ${other} opening.`,
    cite,
    required: `a ${own} opening for ${conductor.size}`,
    offered: `a ${other} opening`,
    fix: `a connector with a ${own} opening for each such conductor`,
  });
}

function tooMany(subject: JointSubject, edition: Edition, landing: Landing): CheckFinding {
  const cite = clauseFor(subject.joint, edition);
  const worksheet = new Worksheet();
  const inside = insideStep(worksheet, landing);
  const max = maxStep(worksheet, subject, edition, landing);
  if (max === undefined) throw new Error("a number that is not known refuses nothing");
  worksheet.compare("the opening takes so many", inside, "<=", max, cite);
  const unmarked = landing.opening.conductorsMax === "unmarked";
  return settled(ID, worksheet, {
    sentence: `One opening would hold ${contentWords(landing)}; ${unmarked ? "it bears no mark for more than one conductor" : `it is for ${conductorCount(Number(max.value))}`}.`,
    cite,
    required: conductorCount(Number(max.value)),
    offered: conductorCount(conductorsIn(landing)),
    fix: "an opening for each conductor, a connector marked for the number, or a pigtail from a listed splice",
  });
}

function mayNotShare(subject: JointSubject, edition: Edition, landing: Landing, rule: string): CheckFinding {
  const { openingIndex } = landing;
  const cite = edition.clauses.instructions;
  const worksheet = new Worksheet();
  const inside = insideStep(worksheet, landing);
  const shared = worksheet.given(
    "what may share the opening",
    rule,
    `${subject.origin}/openings/${openingIndex}/shared`,
  );
  worksheet.conclude("these conductors may share the opening", "fail", [inside, shared], contentWords(landing), cite);
  return settled(ID, worksheet, {
    sentence: `One opening would hold ${contentWords(landing)}; it takes more than one conductor only if ${rule}.`,
    cite,
    required: rule,
    offered: contentWords(landing),
    fix: "an opening for each conductor, or a connector marked for this combination",
  });
}

function question(subject: JointSubject, edition: Edition, landings: readonly Landing[]): CheckFinding | undefined {
  const { joint, origin } = subject;
  const cite = clauseFor(joint, edition);
  const absent = absentConductor(joint);
  if (absent !== undefined)
    return asking(ID, new Worksheet(), absent.path, absent.because, { cite, required: "every conductor of the joint" });
  for (const { conductor, group, opening } of landedGroups(landings))
    if (dutyFit(joint, group, opening) === "unknown")
      return asking(
        ID,
        new Worksheet(),
        conductorPath(group, "duty"),
        `Whether ${conductorWords(conductor)} runs through the tap or leaves it is not known, and the connector has an opening for each.`,
        { cite, required: "run or tap" },
      );
  for (const landing of landings) {
    const inside = conductorsIn(landing);
    const path = `${origin}/openings/${landing.openingIndex}`;
    if (countFit(landing.opening, inside) === "unknown")
      return askedOf(
        landing,
        `${path}/conductorsMax`,
        `One opening would hold ${contentWords(landing)}; for how many it is marked is not known.`,
        {
          cite,
          required: `marked for ${conductorCount(inside)}`,
        },
      );
    const share = shareFit(landing.opening, landing.conductors, inside);
    if (share === "sharing-not-known")
      return askedOf(
        landing,
        `${path}/shared`,
        `One opening would hold ${contentWords(landing)}; whether unlike conductors may share it is not known.`,
        {
          cite: edition.clauses.instructions,
          required: "a marking that lets these conductors share an opening",
        },
      );
    if (share === "size-not-comparable")
      return askedOf(
        landing,
        `${path}/shared/from`,
        `One opening would hold ${contentWords(landing)}; its marking for more than one conductor is in another size series, and sizes are not converted.`,
        {
          cite: edition.clauses.instructions,
          required: "a marking that names these sizes",
        },
      );
  }
  return undefined;
}

/** A splice or tap of one conductor is half told: the other could be of any size and metal. */
function absentConductor({ function: made, conductors }: Joint): { path: string; because: string } | undefined {
  if (made === "termination") return undefined;
  const total = conductors.reduce((sum, { count }) => sum + count, 0);
  if (total < 2)
    return {
      path: "joint/conductors",
      because: `A ${made} joins at least two conductors; the joint names ${conductorCount(total)}.`,
    };
  if (made === "splice") return undefined;
  const isTap = conductors.some(
    (one, run) => one.duty !== "tap" && conductors.some((other, tap) => tap !== run && other.duty !== "run"),
  );
  return isTap
    ? undefined
    : {
        path: "joint/conductors",
        because: "A tap has a conductor that runs through and one that leaves; the joint does not name both.",
      };
}

function askedOf(
  landing: Landing,
  path: string,
  because: string,
  text: { readonly cite: Citation; readonly required: string },
): CheckFinding {
  const worksheet = new Worksheet();
  insideStep(worksheet, landing);
  return asking(ID, worksheet, path, because, {
    cite: text.cite,
    required: text.required,
    offered: conductorCount(conductorsIn(landing)),
  });
}

function passed(subject: JointSubject, edition: Edition, landings: readonly Landing[], fullest: Landing): CheckFinding {
  const cite = clauseFor(subject.joint, edition);
  const worksheet = new Worksheet();
  const held: Step[] = [];
  for (const landing of landings) {
    const inside = insideStep(worksheet, landing);
    const max = maxStep(worksheet, subject, edition, landing);
    if (max !== undefined) worksheet.compare("the opening takes so many", inside, "<=", max, cite);
    held.push(worksheet.last);
    if (conductorsIn(landing) > 1) held.push(sharingStep(worksheet, subject, landing, inside));
  }
  worksheet.conclude(
    "each opening takes what lies in it",
    "pass",
    held,
    "no opening holds more than it is marked for, or other than may share it",
    cite,
  );
  const most = conductorsIn(fullest);
  return settled(ID, worksheet, {
    sentence:
      most <= 1
        ? "Each conductor has an opening to itself."
        : `One opening holds ${contentWords(fullest)}; ${typeof fullest.opening.conductorsMax === "number" ? "it is marked for them" : "its listed combinations decide"}.`,
    cite,
    required: most <= 1 ? "one conductor in an opening, or marked for more" : `marked for ${conductorCount(most)}`,
    offered: `${conductorCount(most)} in an opening`,
  });
}

function sharingStep(
  worksheet: Worksheet,
  { origin }: JointSubject,
  { opening, openingIndex }: Landing,
  inside: Step,
): Step {
  const path = `${origin}/openings/${openingIndex}`;
  if (opening.shared === undefined)
    return opening.combinations === undefined
      ? worksheet.conclude("the conductors may share the opening", true, [inside], "they are of one size and one metal")
      : worksheet.conclude("the conductors may share the opening", true, [inside], "the listed combinations decide");
  const shared = worksheet.given(
    "what may share the opening",
    listWords(sharedRules(opening.shared)) || "any in range",
    `${path}/shared`,
  );
  return worksheet.conclude("the conductors may share the opening", true, [inside, shared], "they keep to the marking");
}

/** The number an opening takes: as marked, or one where it is unmarked; undefined where it is not known. */
function maxStep(
  worksheet: Worksheet,
  { origin }: JointSubject,
  edition: Edition,
  { opening, openingIndex }: Landing,
): Step | undefined {
  const path = `${origin}/openings/${openingIndex}/conductorsMax`;
  if (opening.conductorsMax === undefined) return undefined;
  const given = worksheet.given("conductors the opening is marked for", opening.conductorsMax, path);
  if (opening.conductorsMax !== "unmarked") return given;
  if (opening.combinations !== undefined) return undefined;
  return worksheet.assume(
    "conductors the opening takes",
    1,
    "a terminal takes one conductor unless it is identified for more",
    edition.clauses.terminals,
    undefined,
    [given],
  );
}

function isRefusal(share: ShareFit): boolean {
  return share !== "fits" && share !== "sharing-not-known" && share !== "size-not-comparable";
}

function clauseFor(joint: Joint, { clauses }: Edition): Citation {
  return joint.function === "termination" ? clauses.terminals : clauses.instructions;
}

function sharedWords(shared: SharedOpening, share: ShareFit): string {
  if (share === "unlike-sizes") return "they are of one size";
  if (share === "unlike-metals") return "they are of one metal";
  if (share === "metal-not-listed") return `they are of ${listWords((shared.metals ?? []).map(metalWords))}`;
  return `they are ${limitWords(shared)}`;
}

function sharedRules(shared: SharedOpening): string[] {
  const rules: string[] = [];
  if (shared.sameSize) rules.push("one size");
  if (shared.sameMetal) rules.push("one metal");
  if (shared.metals !== undefined) rules.push(listWords(shared.metals.map(metalWords)));
  if (shared.from !== undefined || shared.to !== undefined) rules.push(limitWords(shared));
  return rules;
}

function limitWords({ from, to }: SharedOpening): string {
  if (from === undefined) return `${to ?? ""} or smaller`;
  return to === undefined ? `${from} or larger` : `${from} to ${to}`;
}
