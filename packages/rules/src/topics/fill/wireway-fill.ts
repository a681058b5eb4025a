import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { CalculationSheet, isClosed, shown } from "../../core/calculation-sheet.js";
import { type Citation, citationText } from "../../core/citation.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import type { Area, Length } from "../../core/quantity.js";
import { type FillConductor, fillGroups, totalArea } from "./fill-groups.js";

const NAME = "wireway-fill";

export const WIREWAY_KINDS = ["metal-wireway", "nonmetallic-wireway", "enclosure"] as const;
export type WirewayKind = (typeof WIREWAY_KINDS)[number];

export interface WirewayFillQuestion {
  readonly ask: "fill" | "smallest-section";
  /** "enclosure" is the wiring space of a switch or breaker enclosure that conductors run through. */
  readonly kind: WirewayKind;
  /** Inside, at the section looked at. Needed unless the section is asked for. */
  readonly width?: Length;
  readonly height?: Length;
  /** Every conductor at that section. */
  readonly conductors: readonly FillConductor[];
  /** Area that splices and taps take at that section; absent where there are none. */
  readonly splices?: Area;
  /** How many of the conductors at that section carry current. Decides only whether their ampacity is adjusted. */
  readonly currentCarrying?: number;
}

/** Share of the section that conductors with their splices and taps may take, in percent. */
const SPLICED_PERCENT = 75;
/** Current-carrying conductors in a metal wireway up to which the ampacity is not adjusted. */
const UNADJUSTED_CONDUCTORS = 30;

/**
 * Do conductors and splices fit a section of a wireway or of an enclosure, or how large must it be?
 *
 * NFPA 70 376.22, 376.56, 378.22, 378.56, 312.8 (2017, 2020, 2023): the areas of all conductors take at most 20 percent
 * of the section of a wireway and 40 percent of an enclosure's wiring space; with splices and taps at most 75 percent.
 * Square inches. In a metal wireway the ampacity is adjusted only beyond 30 current-carrying conductors.
 * Worked: twenty 4/0 AWG THHN in a 4 x 4 in space: 20 x 0.3237 / 16 = 40.5 %, so nineteen fit, at 38.4 %.
 * Silent: the area a splice takes; it is measured or taken from its maker.
 */
export const wirewayFill: Calculation<WirewayFillQuestion> = {
  name: NAME,
  title: "Fill of a wireway or an enclosure's wiring space",
  clauses: [
    "wirewayConductors",
    "wirewayAdjustment",
    "wirewayFill",
    "nonmetallicWirewayConductors",
    "nonmetallicWirewaySplices",
    "enclosureFill",
    "areaNotInTables",
  ],
  needs: [
    "question/ask",
    "question/kind",
    "question/width",
    "question/height",
    "question/conductors",
    "question/splices",
    "question/currentCarrying",
  ],
  cannotSee: "room to bend the conductors, which is judged apart",
  answer(question, basis, edition) {
    const sheet = new CalculationSheet(NAME, basis);
    const limits = limitsOf(question.kind, edition);
    const groups = fillGroups(sheet, question.conductors, edition);
    if (isClosed(groups)) return groups;
    const conductors = totalArea(sheet, groups);
    const share = sheet.state("largest share for conductors", limits.percent, limits.cite, "%");
    const hundred = sheet.state("the whole", 100, limits.cite, "%");
    const filling: Filling = { sheet, question, edition, limits, conductors, share, hundred };
    return question.ask === "fill" ? fill(filling) : smallestSection(filling);
  },
};

interface Limits {
  readonly percent: number;
  readonly cite: Citation;
  readonly splicesCite: Citation;
}

interface Filling {
  readonly sheet: CalculationSheet;
  readonly question: WirewayFillQuestion;
  readonly edition: Edition;
  readonly limits: Limits;
  readonly conductors: Step;
  readonly share: Step;
  readonly hundred: Step;
}

function limitsOf(kind: WirewayKind, { clauses }: Edition): Limits {
  switch (kind) {
    case "metal-wireway":
      return { percent: 20, cite: clauses.wirewayConductors, splicesCite: clauses.wirewayFill };
    case "nonmetallic-wireway":
      return {
        percent: 20,
        cite: clauses.nonmetallicWirewayConductors,
        splicesCite: clauses.nonmetallicWirewaySplices,
      };
    case "enclosure":
      return { percent: 40, cite: clauses.enclosureFill, splicesCite: clauses.enclosureFill };
  }
}

function fill(filling: Filling): CalculationFinding {
  const { sheet, question, limits, conductors, share, hundred } = filling;
  const section = sectionOf(filling);
  if (isClosed(section)) return section;
  const percent = sheet.multiply(
    "share filled by conductors",
    [sheet.divide("part filled by conductors", conductors, section, ""), hundred],
    "%",
  );
  const withSplices = splicedPercent(filling, section);
  const conductorsFit = sheet.compare("conductors keep within their share", percent, "<=", share, limits.cite);
  const comparisons = [sheet.last];
  let splicesFit = true;
  if (withSplices !== undefined) {
    const most = sheet.state("largest share with splices", SPLICED_PERCENT, limits.splicesCite, "%");
    splicesFit = sheet.compare(
      "splices and conductors keep within theirs",
      withSplices,
      "<=",
      most,
      limits.splicesCite,
    );
    comparisons.push(sheet.last);
  }
  const fits = sheet.conclude(
    "conductors and splices fit",
    conductorsFit && splicesFit,
    comparisons,
    conductorsFit && splicesFit ? "each share of the section is kept" : "a share of the section is exceeded",
    conductorsFit && !splicesFit ? limits.splicesCite : limits.cite,
  );
  const splicesText =
    withSplices === undefined ? "" : `, with splices ${shown(withSplices.value, 1)} % of at most 75 %`;
  return sheet.finish({
    sentence: `${fits.value === true ? "They fit" : "They do not fit"}: the conductors fill ${shown(percent.value, 1)} % of the section, at most ${String(limits.percent)} % is allowed${splicesText}.`,
    cite: conductorsFit && !splicesFit ? limits.splicesCite : limits.cite,
    results: [
      { name: "conductors and splices fit", step: fits },
      { name: "share filled by conductors", step: percent },
      ...(withSplices === undefined ? [] : [{ name: "share filled with splices", step: withSplices }]),
      { name: "area of the conductors", step: conductors },
    ],
    advice: [...adviceOnAdjustment(question, filling.edition), ...adviceOnLimits(question, limits)],
  });
}

function smallestSection(filling: Filling): CalculationFinding {
  const { sheet, question, limits, conductors, share, hundred } = filling;
  const forConductors = sheet.divide(
    "section that the conductors need",
    sheet.multiply("area of the conductors x 100", [conductors, hundred], "in2"),
    share,
    "in2",
  );
  const spliced = splicedArea(filling);
  let governing = forConductors;
  if (spliced !== undefined) {
    const most = sheet.state("largest share with splices", SPLICED_PERCENT, limits.splicesCite, "%");
    const forSplices = sheet.divide(
      "section that conductors and splices need",
      sheet.multiply("area with splices x 100", [spliced, hundred], "in2"),
      most,
      "in2",
    );
    if (sheet.compare("the splices need more", forSplices, ">", forConductors, limits.splicesCite))
      governing = forSplices;
  }
  const section = sheet.conclude(
    "smallest inside section",
    governing.value,
    [governing],
    "the largest section that one of the shares asks for",
    governing === forConductors ? limits.cite : limits.splicesCite,
    "in2",
  );
  return sheet.finish({
    sentence: `The inside must measure at least ${shown(section.value)} in2 at this section.`,
    cite: governing === forConductors ? limits.cite : limits.splicesCite,
    results: [
      { name: "smallest inside section", step: section },
      { name: "area of the conductors", step: conductors },
    ],
    advice: [...adviceOnAdjustment(question, filling.edition), ...adviceOnLimits(question, limits)],
  });
}

function sectionOf({ sheet, question, limits }: Filling): Step | CalculationFinding {
  if (question.width === undefined)
    return sheet.ask("question/width", "The section is not known without its inside width.", limits.cite);
  if (question.height === undefined)
    return sheet.ask("question/height", "The section is not known without its inside height.", limits.cite);
  const width = sheet.length("inside width", question.width, "question/width", "in");
  const height = sheet.length("inside height", question.height, "question/height", "in");
  return sheet.multiply("section inside", [width, height], "in2");
}

function splicedPercent(filling: Filling, section: Step): Step | undefined {
  const area = splicedArea(filling);
  if (area === undefined) return undefined;
  const { sheet, hundred } = filling;
  return sheet.multiply(
    "share filled with splices",
    [sheet.divide("part filled with splices", area, section, ""), hundred],
    "%",
  );
}

function splicedArea({ sheet, question, conductors }: Filling): Step | undefined {
  if (question.splices === undefined) return undefined;
  const splices = sheet.area("area of splices and taps", question.splices, "question/splices");
  return sheet.add("area of conductors and splices", [conductors, splices], "in2");
}

function adviceOnAdjustment({ kind, currentCarrying }: WirewayFillQuestion, edition: Edition): readonly string[] {
  const adjustment = citationText(edition.tables.adjustmentFactor.cite);
  if (kind === "enclosure") return [];
  const unadjusted = kind === "metal-wireway" ? UNADJUSTED_CONDUCTORS : 3;
  const rule = kind === "metal-wireway" ? ` (${citationText(edition.clauses.wirewayAdjustment)})` : "";
  if (currentCarrying === undefined)
    return [
      `Beyond ${String(unadjusted)} current-carrying conductors at a section their ampacity is adjusted: ${adjustment}${rule}.`,
    ];
  if (!(currentCarrying > unadjusted)) return [];
  return [
    `More than ${String(unadjusted)} conductors carry current, so their ampacity is adjusted: ${adjustment}${rule}.`,
  ];
}

function adviceOnLimits({ splices, kind }: WirewayFillQuestion, { splicesCite }: Limits): readonly string[] {
  return [
    ...(splices === undefined
      ? [
          `No splices were named; at splices and taps 75 % with the conductors is the limit: ${citationText(splicesCite)}.`,
        ]
      : []),
    ...(kind === "enclosure"
      ? ["An enclosure that conductors run through needs a label that names the disconnect ahead of them."]
      : []),
  ];
}
