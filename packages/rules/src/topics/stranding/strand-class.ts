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
import { asking, type JointSubject, notApplicable, type Rule, settled, settledFrom } from "../../core/rule.js";
import { Worksheet } from "../../core/worksheet.js";
import { type CountedForm, countedForms, formFit, formsWords } from "./counted-strands.js";

const ID = "strand-class";

/**
 * Is every conductor's strand form one the connector is listed for?
 *
 * NFPA 70 110.14 (2017, 2020, 2023), in our words: a connector for conductors with finer strands than class B and C is one identified for
 * that class; and 110.3(B), a listing that names strand forms covers those. A range without strand marks is for class B
 * and C.
 * Where the strands were counted, the count tells the form (Chapter 9 Table 10; ASTM B8, B172, B173, B174), and where it
 * leaves several the connector must be listed for each of them or the form is asked for. A count that is not that of the
 * form stated is asked about.
 * Worked: class K in a lug listed for solid, B, C and compact is refused; class C passes. 2/0 AWG of 1330 strands is class K.
 * Silent: class B and C as the base case say nothing of solid, compressed and compact; ASTM classes say nothing of IEC 60228
 * classes; all these, and stranding that is not known, are asked about.
 */
export const strandClass: Rule = {
  id: ID,
  title: "Strand form of the conductor",
  clauses: ["finelyStranded", "instructions"],
  needs: ["joint/conductors/0/stranding", "joint/conductors/0/strands", "connector/openings/0/ranges"],
  cannotSee: "the strands of the conductor on site",
  check(subject, edition) {
    const landed = landedGroups(subject.landings);
    if (landed.length === 0) return notApplicable(ID, "no conductor lies in an opening");
    let questioned: LandedGroup | undefined;
    let asked: CheckFinding | undefined;
    for (const one of landed) {
      const { strands } = one.conductor;
      if (strands !== undefined) {
        const counted = countedFinding(subject, edition, one, strands);
        if (counted?.outcome === "fail") return counted;
        asked ??= counted;
        if (counted !== undefined || one.conductor.stranding === "unknown") continue;
      }
      const fit = strandingFit(one.conductor.stranding, one.opening);
      if (fit === "refused") return refusedFinding(subject, edition, one);
      if (fit === "unknown") questioned ??= one;
    }
    if (asked !== undefined) return asked;
    return questioned === undefined
      ? passedFinding(subject, edition, landed)
      : askedFinding(subject, edition, questioned);
  },
};

/**
 * What the count of strands alone settles: a refusal, a question, or nothing. Nothing where the form is stated and has the
 * count, and where every form with the count is listed.
 */
function countedFinding(
  subject: JointSubject,
  edition: Edition,
  one: LandedGroup,
  strands: number,
): CheckFinding | undefined {
  const { conductor, opening, group } = one;
  const { stranding: stated, size } = conductor;
  const worksheet = new Worksheet();
  const { forms, step } = countedForms(worksheet, one, strands, edition);
  if (stated !== "unknown" && forms.includes(stated)) return undefined;
  const possible: readonly CountedForm[] = stated === "unknown" ? forms : [...forms, stated];
  const fits = possible.map((form) => formFit(form, size, opening));
  const listed = listedIn(opening.ranges);
  const offered = listed.length === 0 ? "not known" : strandingListWords(listed);
  const cite = edition.clauses.finelyStranded;
  const words = formsWords(possible);
  const text = { cite, required: `connector listed for ${words === "" ? "the strand form" : words}`, offered };
  const given = stated === "unknown" ? undefined : formStep(worksheet, one);
  if (possible.length > 0 && fits.every((fit) => fit === "refused") && !fitsElsewhere(subject, possible, size)) {
    const marks = listedStep(worksheet, subject, edition, one, opening.ranges, listed);
    worksheet.conclude(
      "the strand form is listed",
      "fail",
      given === undefined ? [step, marks] : [step, given, marks],
      "none of the forms that it may be is listed",
      cite,
    );
    return settledFrom(ID, worksheet, text, {
      sentence: `The connector is listed for ${offered}; ${size} of ${countWords(strands)} is ${stated === "unknown" ? words : `stated as ${strandingWords(stated)} and may be ${words}`}, and may not be joined with it.`,
      fix: `a connector identified for ${words}`,
    });
  }
  if (stated !== "unknown")
    return asking(
      ID,
      worksheet,
      conductorPath(group, "strands"),
      forms.length === 0
        ? `No class that is held has ${countWords(strands)} at ${size}, and ${strandingWords(stated)} is stated: count them again, or read the class off the wire.`
        : `${size} of ${countWords(strands)} is ${formsWords(forms)}, and ${strandingWords(stated)} is stated: one of the two is wrong.`,
      text,
    );
  if (forms.length > 0 && fits.every((fit) => fit === "fits")) return undefined;
  if (forms.length > 0 && listed.length === 0)
    return asking(
      ID,
      worksheet,
      `${subject.origin}/openings/${String(one.openingIndex)}/ranges`,
      "The strand forms that the connector is listed for are not known.",
      text,
    );
  return asking(
    ID,
    worksheet,
    conductorPath(group, "stranding"),
    forms.length === 0
      ? `No class that is held has ${countWords(strands)} at ${size}; read the class off the wire or its data sheet.`
      : `${size} of ${countWords(strands)} is ${words}, and the connector is listed for ${offered}; which it is decides.`,
    text,
  );
}

/** A form not listed here may be in an opening where the conductor does not lie now. */
function fitsElsewhere({ connector }: JointSubject, forms: readonly CountedForm[], size: string): boolean {
  return connector.openings.some((opening) => forms.some((form) => formFit(form, size, opening) !== "refused"));
}

function countWords(strands: number): string {
  return strands === 1 ? "one strand" : `${String(strands)} strands`;
}

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
    const { stranding, strands } = one.conductor;
    const ranges = rangesFor(one);
    const listed = listedIn(ranges);
    let counted: Step | undefined;
    if (strands !== undefined) {
      const { forms: possible, step } = countedForms(worksheet, one, strands, edition);
      counted = step;
      if (stranding === "unknown") {
        cite = edition.clauses.finelyStranded;
        const marks = listedStep(worksheet, subject, edition, one, ranges, listed);
        worksheet.conclude(
          "the strand form is listed",
          "pass",
          [step, marks],
          "every form that it may be is listed at this size",
          cite,
        );
        addOnce(forms, formsWords(possible));
        addOnce(lists, strandingListWords(listed));
        continue;
      }
    }
    if (isFinerThanClassC(stranding)) cite = edition.clauses.finelyStranded;
    const form = formStep(worksheet, one);
    if (counted !== undefined)
      worksheet.compare("the count is that of the form", form, "in", counted, edition.clauses.finelyStranded);
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
