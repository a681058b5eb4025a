import type { Citation } from "../../core/citation.js";
import type { Stranding } from "../../core/conductor.js";
import { conductorPath } from "../../core/conductor-path.js";
import { sizeOf } from "../../core/conductor-size.js";
import { conductorWords, listWords, strandingListWords, strandingWords } from "../../core/conductor-words.js";
import type { SizeRange } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Step } from "../../core/finding.js";
import {
  BASE_STRANDINGS,
  isFinerThanClassC,
  type LandedGroup,
  landedGroups,
  namesStranding,
  positionIn,
  strandingFit,
} from "../../core/opening-fit.js";
import { asking, type JointSubject, notApplicable, type Rule, settled } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "strand-class";

/**
 * Is every conductor's strand form one the connector is listed for?
 *
 * NFPA 70 110.14 (2017, 2020, 2023), in our words: a connector for conductors with finer strands than class B and C is one identified for
 * that class; and 110.3(B), a listing that names strand forms covers those. A range without strand marks is for class B
 * and C.
 * Worked: class K in a lug listed for solid, B, C and compact is refused; class C passes.
 * Silent: class B and C as the base case say nothing of solid, compressed and compact; ASTM classes say nothing of IEC 60228
 * classes; all these, and stranding that is not known, are asked about.
 */
export const strandClass: Rule = {
  id: ID,
  title: "Strand form of the conductor",
  clauses: ["finelyStranded", "instructions"],
  needs: ["joint/conductors/0/stranding", "connector/openings/0/ranges"],
  cannotSee: "the strands of the conductor on site",
  check(subject, edition) {
    const landed = landedGroups(subject.landings);
    if (landed.length === 0) return notApplicable(ID, "no conductor lies in an opening");
    let questioned: LandedGroup | undefined;
    for (const one of landed) {
      const fit = strandingFit(one.conductor.stranding, one.opening);
      if (fit === "refused") return refusedFinding(subject, edition, one);
      if (fit === "unknown") questioned ??= one;
    }
    return questioned === undefined
      ? passedFinding(subject, edition, landed)
      : askedFinding(subject, edition, questioned);
  },
};

function refusedFinding(subject: JointSubject, edition: Edition, one: LandedGroup): CheckFinding {
  const { conductor, opening } = one;
  const worksheet = new Worksheet();
  const cite = clauseFor(conductor.stranding, edition);
  const form = formStep(worksheet, one);
  const listed = listedIn(opening.ranges);
  worksheet.compare(
    "the strand form is listed",
    form,
    "in",
    listedStep(worksheet, subject, edition, one, opening.ranges, listed),
    cite,
  );
  const words = strandingWords(conductor.stranding);
  return settled(ID, worksheet, {
    sentence: `The connector is listed for ${strandingListWords(listed)}, not for ${words}; ${conductorWords(conductor)} may not be joined with it.`,
    cite,
    required: `connector listed for ${words}`,
    offered: strandingListWords(listed),
    fix: isFinerThanClassC(conductor.stranding)
      ? `a connector identified for ${words}, such as a compression lug for that class`
      : `a connector listed for ${words} conductors`,
  });
}

function askedFinding(subject: JointSubject, edition: Edition, one: LandedGroup): CheckFinding {
  const { conductor, opening, openingIndex, group } = one;
  const worksheet = new Worksheet();
  const listed = listedIn(opening.ranges);
  const offered = listed.length === 0 ? "not known" : strandingListWords(listed);
  if (conductor.stranding === "unknown")
    return asking(
      ID,
      worksheet,
      conductorPath(group, "stranding"),
      `How the ${conductor.size} conductor is stranded is not known, and a connector is listed by strand form.`,
      { cite: edition.clauses.finelyStranded, required: "a strand form that the connector is listed for", offered },
    );
  const words = strandingWords(conductor.stranding);
  formStep(worksheet, one);
  const path = `${subject.origin}/openings/${openingIndex}/ranges`;
  if (listed.length > 0) listedStep(worksheet, subject, edition, one, opening.ranges, listed);
  return asking(
    ID,
    worksheet,
    path,
    listed.length === 0
      ? "The strand forms that the connector is listed for are not known."
      : `The connector is listed for ${offered}, which says nothing of ${words}.`,
    { cite: clauseFor(conductor.stranding, edition), required: `a listing that names ${words}`, offered },
  );
}

function passedFinding(subject: JointSubject, edition: Edition, landed: readonly LandedGroup[]): CheckFinding {
  const worksheet = new Worksheet();
  let cite = edition.clauses.instructions;
  const forms: string[] = [];
  const lists: string[] = [];
  for (const one of landed) {
    const { stranding } = one.conductor;
    const ranges = rangesFor(one);
    const listed = listedIn(ranges);
    if (isFinerThanClassC(stranding)) cite = edition.clauses.finelyStranded;
    const form = formStep(worksheet, one);
    worksheet.compare(
      "the strand form is listed",
      form,
      "in",
      listedStep(worksheet, subject, edition, one, ranges, listed),
      clauseFor(stranding, edition),
    );
    addOnce(forms, strandingWords(stranding));
    addOnce(lists, strandingListWords(listed));
  }
  return settled(ID, worksheet, {
    sentence: `The connector is listed for ${listWords(forms)} conductors.`,
    cite,
    required: `connector listed for ${listWords(forms)}`,
    offered: lists.join("; "),
  });
}

function formStep(worksheet: Worksheet, { conductor, group }: LandedGroup): Step {
  return worksheet.given("strand form of the conductor", conductor.stranding, conductorPath(group, "stranding"));
}

/** The forms these ranges are listed for; where one of them bears no strand mark, the base case is assumed. */
function listedStep(
  worksheet: Worksheet,
  { origin }: JointSubject,
  edition: Edition,
  { openingIndex }: LandedGroup,
  ranges: readonly SizeRange[],
  listed: readonly Stranding[],
): Step {
  const path = `${origin}/openings/${openingIndex}/ranges`;
  if (!ranges.some((range) => range.strandings === "unmarked"))
    return worksheet.given("strand forms listed", listed, path);
  const marks = worksheet.given("strand marks of a range", "unmarked", path);
  return worksheet.assume(
    "strand forms listed",
    listed,
    "a connector without strand marks is for class B and class C",
    edition.clauses.finelyStranded,
    undefined,
    [marks],
  );
}

/** All forms that any of the ranges names. */
function listedIn(ranges: readonly SizeRange[]): readonly Stranding[] {
  const [only, another] = ranges;
  // The list as the connector holds it, whose words are put together once.
  if (only !== undefined && another === undefined) return formsOf(only.strandings);
  const forms: Stranding[] = [];
  for (const { strandings } of ranges) for (const form of formsOf(strandings)) addOnce(forms, form);
  return forms;
}

/** The range that takes the conductor; all ranges where its size lies in none that names its form. */
function rangesFor({ conductor, opening: { ranges } }: LandedGroup): readonly SizeRange[] {
  if (ranges.length === 1) return ranges;
  const size = sizeOf(conductor.size);
  const range = ranges.find((one) => namesStranding(one, conductor.stranding) && positionIn(one, size) === "within");
  return range === undefined ? ranges : [range];
}

function formsOf(strandings: readonly Stranding[] | "unmarked"): readonly Stranding[] {
  return strandings === "unmarked" ? BASE_STRANDINGS : strandings;
}

function clauseFor(stranding: Stranding, { clauses }: Edition): Citation {
  return isFinerThanClassC(stranding) || stranding.startsWith("iec-") ? clauses.finelyStranded : clauses.instructions;
}

function addOnce<T>(list: T[], one: T): void {
  if (!list.includes(one)) list.push(one);
}
