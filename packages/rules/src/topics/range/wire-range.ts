import { conductorPath } from "../../core/conductor-path.js";
import { type ConductorSize, compareSizes, sizeOf } from "../../core/conductor-size.js";
import { conductorWords, strandingWords } from "../../core/conductor-words.js";
import type { Opening, SizeRange } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Step } from "../../core/finding.js";
import { type LandedGroup, landedGroups, namesStranding, positionIn, sizeFit } from "../../core/opening-fit.js";
import { asking, type JointSubject, notApplicable, type Rule, settled, settledFrom } from "../../core/rule.js";
import { areaStep, rangeWords } from "../../core/size-area.js";
import { Worksheet } from "../../core/worksheet.js";

const ID = "wire-range";
const BINDING_SCREW_MAX = sizeOf("10 AWG");

/**
 * Is every conductor within a listed range of its opening?
 *
 * NFPA 70 110.3(B) and 110.14 (2017, 2020, 2023), in our words: a connector is used as it is listed, and it is listed for sizes
 * from the smallest to the largest of a range, both included, for the strand forms the range names. Sizes are compared
 * by cross-section area, in kcmil or mm2; never by measured diameter, so a compact conductor is not taken for a smaller
 * size. A compact conductor needs a range that names compact.
 * 110.14(A): a wire-binding screw holds 10 AWG or smaller, whatever its range.
 * Worked: 4/0 AWG in a range of 6 AWG to 3/0 AWG: 211.6 kcmil <= 167.8 kcmil does not hold, so it is refused.
 * Silent: a range in AWG says nothing of a metric conductor, nor the reverse; sizes are not converted, and the listing is
 * asked for. Where no range names the strand form the rule for strand forms decides, unless the size is outside every range.
 */
export const wireRange: Rule = {
  id: ID,
  title: "Conductor size within the listed range",
  clauses: ["instructions", "terminals"],
  needs: [
    "joint/conductors/0/size",
    "joint/conductors/0/stranding",
    "connector/openings/0/ranges",
    "connector/construction",
  ],
  cannotSee: "strands cut away to make a conductor fit",
  check(subject, edition) {
    const landed = landedGroups(subject.landings);
    if (landed.length === 0) return asksForOpenings(subject, edition);
    const screw = subject.connector.construction === "binding-screw";
    let questioned: LandedGroup | undefined;
    let fits = false;
    for (const one of landed) {
      const fit = sizeFit(one.conductor, one.opening);
      if (fit === "refused") return refusedFinding(subject, edition, one);
      if (screw && !isMetric(one) && compareSizes(sizeOf(one.conductor.size), BINDING_SCREW_MAX) > 0)
        return underScrew(subject, edition, one);
      if (fit === "unknown") questioned ??= one;
      if (fit === "fits") fits = true;
    }
    if (questioned !== undefined) return asksForListing(subject, edition, questioned);
    const metric = screw ? landed.find(isMetric) : undefined;
    if (metric !== undefined) return underScrew(subject, edition, metric);
    if (!fits) return notApplicable(ID, "no listed range names the strand form, so the rule for strand forms decides");
    return passedFinding(subject, edition, landed);
  },
};

function asksForOpenings({ joint, origin }: JointSubject, edition: Edition): CheckFinding {
  const conductors = joint.conductors.length === 0;
  return asking(
    ID,
    new Worksheet(),
    conductors ? "joint/conductors" : `${origin}/openings`,
    conductors ? "The joint names no conductor." : "The openings of the connector are not known.",
    { cite: edition.clauses.instructions, required: "every conductor inside the listed range of its opening" },
  );
}

function asksForListing({ origin }: JointSubject, edition: Edition, one: LandedGroup): CheckFinding {
  const { opening, openingIndex, conductor, group } = one;
  const worksheet = new Worksheet();
  worksheet.given("size of the conductor", conductor.size, conductorPath(group, "size"));
  opening.ranges.forEach((range, index) => {
    rangeStep(worksheet, range, `${origin}/openings/${openingIndex}/ranges/${index}`);
  });
  return asking(
    ID,
    worksheet,
    `${origin}/openings/${openingIndex}/ranges`,
    opening.ranges.length === 0
      ? `The sizes that the opening "${opening.id}" takes are not known.`
      : `The range is listed in ${isMetric(one) ? "AWG and kcmil" : "mm2"}; whether the connector is listed for ${conductor.size} is not known, and sizes are not converted.`,
    {
      cite: edition.clauses.instructions,
      required: `a listing that names ${conductor.size}`,
      offered: opening.ranges.length === 0 ? "not known" : rangesWords(opening),
    },
  );
}

function refusedFinding(subject: JointSubject, edition: Edition, one: LandedGroup): CheckFinding {
  const { opening, openingIndex, conductor } = one;
  const cite = edition.clauses.instructions;
  const worksheet = new Worksheet();
  const size = sizeOf(conductor.size);
  const sizeStep = areaStep(
    worksheet,
    size,
    worksheet.given("size of the conductor", size.text, conductorPath(one.group, "size")),
  );
  const index = nearestRange(opening, one, size);
  const range = opening.ranges[index];
  if (range === undefined) throw new Error("a refused size has a range that refuses it");
  const limits = rangeStep(worksheet, range, `${subject.origin}/openings/${openingIndex}/ranges/${index}`);
  const above = positionIn(range, size) === "above";
  const end = above ? range.to : range.from;
  const endStep = areaStep(worksheet, sizeOf(end), limits);
  worksheet.compare(
    above ? "not above the largest size" : "not below the smallest size",
    sizeStep,
    above ? "<=" : ">=",
    endStep,
    cite,
  );
  const form = namesStranding(range, conductor.stranding)
    ? ` for ${strandingWords(conductor.stranding)} conductors`
    : "";
  return settled(ID, worksheet, {
    sentence: `The listed range${form} ${above ? "stops" : "begins"} at ${end}; ${conductorWords(conductor)} is ${above ? "larger" : "smaller"}.`,
    cite,
    required: `${size.text} inside the listed range`,
    offered: rangesWords(opening),
    fix: above
      ? `a connector or lug kit whose range takes ${size.text}, or a pin adapter or splicer-reducer down to ${end} or less`
      : `a connector whose range takes ${size.text}`,
  });
}

/** 110.14(A) states the limit of a binding screw in AWG, so a metric conductor is asked about. */
function underScrew({ connector, origin }: JointSubject, edition: Edition, one: LandedGroup): CheckFinding {
  const { conductor, group } = one;
  const cite = edition.clauses.terminals;
  const worksheet = new Worksheet();
  const path = conductorPath(group, "size");
  const construction = worksheet.given("how the terminal holds", connector.construction, `${origin}/construction`);
  const given = worksheet.given("size of the conductor", conductor.size, path);
  const limit = worksheet.state("largest size under a binding screw", BINDING_SCREW_MAX.text, cite, undefined, [
    construction,
  ]);
  const text = { cite, required: "10 AWG or smaller under a binding screw", offered: conductor.size };
  if (isMetric(one))
    return asking(
      ID,
      worksheet,
      path,
      `A binding screw holds ${BINDING_SCREW_MAX.text} or smaller; ${conductor.size} is no AWG size, and sizes are not converted.`,
      text,
    );
  const size = areaStep(worksheet, sizeOf(conductor.size), given);
  worksheet.compare("not above the largest size", size, "<=", areaStep(worksheet, BINDING_SCREW_MAX, limit), cite);
  return settledFrom(ID, worksheet, text, {
    sentence: `A binding screw holds ${BINDING_SCREW_MAX.text} or smaller; ${conductorWords(conductor)} is larger.`,
    fix: "a terminal with a pressure plate or lug, or a splice to a smaller conductor",
  });
}

function passedFinding(subject: JointSubject, edition: Edition, landed: readonly LandedGroup[]): CheckFinding {
  const cite = edition.clauses.instructions;
  const worksheet = new Worksheet();
  let sentence = "";
  let required = "";
  let offered = "";
  for (const { conductor, group, opening, openingIndex } of landed) {
    const size = sizeOf(conductor.size);
    const index = opening.ranges.findIndex(
      (range) => namesStranding(range, conductor.stranding) && positionIn(range, size) === "within",
    );
    const range = opening.ranges[index];
    if (range === undefined) continue;
    const sizeStep = areaStep(
      worksheet,
      size,
      worksheet.given("size of the conductor", size.text, conductorPath(group, "size")),
    );
    const limits = rangeStep(worksheet, range, `${subject.origin}/openings/${openingIndex}/ranges/${index}`);
    const low = areaStep(worksheet, sizeOf(range.from), limits);
    const high = areaStep(worksheet, sizeOf(range.to), limits);
    worksheet.compare("not below the smallest size", sizeStep, ">=", low, cite);
    worksheet.compare("not above the largest size", sizeStep, "<=", high, cite);
    const words = rangeWords(range);
    sentence = joined(sentence, `${conductorWords(conductor)} is within the listed range, ${words}`);
    required = joined(required, `${size.text} inside the listed range`);
    offered = joined(offered, words);
  }
  return settled(ID, worksheet, { sentence: `${sentence}.`, cite, required, offered });
}

/** The range whose end is nearest to the size; one that names the strand form before one that does not. */
function nearestRange(opening: Opening, { conductor }: LandedGroup, size: ConductorSize): number {
  // Refused: where any range names the form, one of the size's own series does.
  const named = opening.ranges.some((range) => namesStranding(range, conductor.stranding));
  let nearest = -1;
  let least = Number.POSITIVE_INFINITY;
  opening.ranges.forEach((range, index) => {
    if (!isSameSeries(range, size) || (named && !namesStranding(range, conductor.stranding))) return;
    const away = Math.max(sizeOf(range.from).areaKcmil - size.areaKcmil, size.areaKcmil - sizeOf(range.to).areaKcmil);
    if (!(away < least)) return;
    least = away;
    nearest = index;
  });
  return nearest;
}

function isMetric({ conductor }: LandedGroup): boolean {
  return sizeOf(conductor.size).series === "metric";
}

function isSameSeries(range: SizeRange, size: ConductorSize): boolean {
  return positionIn(range, size) !== "other-series";
}

function rangeStep(worksheet: Worksheet, range: SizeRange, path: string): Step {
  return worksheet.given("listed range", rangeWords(range), path);
}

function rangesWords({ ranges }: Opening): string {
  return ranges.map(rangeWords).join("; ");
}

function joined(before: string, next: string): string {
  return before === "" ? next : `${before}; ${next}`;
}
