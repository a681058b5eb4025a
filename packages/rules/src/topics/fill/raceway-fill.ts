import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { CalculationSheet, isClosed, shown } from "../../core/calculation-sheet.js";
import { type Citation, citationText } from "../../core/citation.js";
import type { Edition } from "../../core/edition.js";
import { compareExact } from "../../core/exact.js";
import type { Step } from "../../core/finding.js";
import type { Length } from "../../core/quantity.js";
import { cellInInterval, isRefused } from "../../core/table.js";
import { UnusableFact } from "../../core/unusable-fact.js";
import {
  type FillConductor,
  type FillGroup,
  type FillGroups,
  fillGroups,
  totalArea,
  totalCount,
} from "./fill-groups.js";
import { numberPermitted } from "./number-permitted.js";

const NAME = "raceway-fill";

export const RACEWAY_KINDS = ["EMT", "FMC", "IMC", "LFMC", "RMC", "PVC-40", "PVC-80"] as const;
export type RacewayKind = (typeof RACEWAY_KINDS)[number];

export type RacewayFillAsk = "fill" | "smallest-trade-size" | "how-many";

export interface RacewayFillQuestion {
  readonly ask: RacewayFillAsk;
  readonly raceway: {
    readonly kind: RacewayKind;
    /** "1/2", "1-1/4", "2". Needed unless the trade size is asked for. */
    readonly tradeSize?: string;
  };
  /** Only for a nipple between boxes, cabinets and the like: its length. Absent for every other run. */
  readonly nippleLength?: Length;
  /** Every conductor in the raceway, equipment grounds included. For "how-many": the one kind, with count 1. */
  readonly conductors: readonly FillConductor[];
}

/** Longest nipple that may be filled to 60 percent, in inches. */
const NIPPLE_LENGTH_IN = 24;
const NIPPLE_PERCENT = 60;
/** Ratio of raceway to conductor diameter at which three conductors tend to jam in a pull. */
const JAM_FROM = 2.8;
const JAM_TO = 3.2;

/**
 * Do the conductors fit the raceway, which trade size holds them, how many of one kind does it hold?
 *
 * NFPA 70 Chapter 9 Tables 1, 4, 5, 5A and 8 with their notes (2017, 2020, 2023): one conductor may fill 53 percent of
 * the raceway, two 31, more than two 40; a nipple of up to 24 in 60. Square inches. Equal conductors go by number, with
 * a fraction of 0.8 counting as one more (note 7); unequal ones by the sum of their areas (note 6).
 * Worked: 3/4 in EMT (0.213 at 40 percent) holds 16 conductors 12 AWG THHN of 0.0133: 16.02.
 * Silent: on rounding; the printed square inches are used as printed, and Informative Annex C, which was worked out
 * from metric figures, prints one conductor more in a few places. Flexible conduit of trade size 3/8 has a table of its
 * own and is not answered.
 */
export const racewayFill: Calculation<RacewayFillQuestion> = {
  name: NAME,
  title: "Fill of conduit and tubing",
  clauses: [
    "nippleFill",
    "areaNotInTables",
    "unequalConductors",
    "equalConductors",
    "jamming",
    "smallestFlexibleConduit",
  ],
  needs: [
    "question/ask",
    "question/raceway/kind",
    "question/raceway/tradeSize",
    "question/nippleLength",
    "question/conductors",
  ],
  cannotSee: "bends, pulling tension, and which of the conductors carry current",
  answer(question, basis, edition) {
    const sheet = new CalculationSheet(NAME, basis);
    const kind = sheet.given("kind of raceway", question.raceway.kind, "question/raceway/kind");
    const groups = fillGroups(sheet, question.conductors, edition);
    if (isClosed(groups)) return groups;
    const filling: Filling = {
      sheet,
      edition,
      question,
      kind,
      groups,
      isNipple: isShortNipple(sheet, question, edition),
    };
    if (question.ask === "smallest-trade-size") return smallestTradeSize(filling);
    const tradeSize = tradeSizeStep(filling);
    if (isClosed(tradeSize)) return tradeSize;
    return question.ask === "fill" ? fill(filling, tradeSize) : howMany(filling, tradeSize);
  },
};

/** What every one of the three questions starts from. */
interface Filling {
  readonly sheet: CalculationSheet;
  readonly edition: Edition;
  readonly question: RacewayFillQuestion;
  readonly kind: Step;
  readonly groups: FillGroups;
  readonly isNipple: boolean;
}

function isShortNipple(sheet: CalculationSheet, { nippleLength }: RacewayFillQuestion, { clauses }: Edition): boolean {
  if (nippleLength === undefined) return false;
  const length = sheet.length("length of the nipple", nippleLength, "question/nippleLength", "in");
  const longest = sheet.state("longest nipple filled to 60 percent", NIPPLE_LENGTH_IN, clauses.nippleFill, "in");
  return sheet.compare("the nipple is short enough", length, "<=", longest, clauses.nippleFill);
}

function tradeSizeStep({ sheet, edition, question, kind }: Filling): Step | CalculationFinding {
  const { cite } = edition.tables.conduitArea;
  const { tradeSize } = question.raceway;
  if (tradeSize === undefined)
    return sheet.ask(
      "question/raceway/tradeSize",
      "The area inside depends on the trade size, which is not given.",
      cite,
    );
  if (hasOwnTable(question.raceway.kind, tradeSize))
    return sheet.refuse(
      "NOT_COVERED",
      `${String(kind.value)} of trade size 3/8 holds what ${citationText(edition.clauses.smallestFlexibleConduit)} lists; that table is not held here.`,
      edition.clauses.smallestFlexibleConduit,
    );
  return sheet.given("trade size", tradeSize, "question/raceway/tradeSize");
}

function fill(filling: Filling, tradeSize: Step): CalculationFinding {
  const { sheet, edition, groups } = filling;
  const area = totalArea(sheet, groups);
  const count = totalCount(sheet, groups);
  const share = shareFor(filling, tradeSize, count);
  if (isClosed(share)) return share;
  const percent = percentFilled(filling, tradeSize, area);
  if (isClosed(percent)) return percent;
  const advice = [...adviceOnAdjustment(filling, count), ...adviceOnJamming(filling, tradeSize, count)];
  const fits = fitsIn(filling, share, area, count);
  return sheet.finish({
    sentence: `${nameOf(filling, tradeSize)} ${fits ? "holds" : "does not hold"} these ${String(count.value)} conductors: they fill ${shown(percent.value, 1)} % of it, ${shown(area.value, 4)} in2 of the ${shown(share.value, 4)} in2 allowed.`,
    cite: edition.tables.conduitFill.cite,
    results: [
      { name: "conductors fit", step: sheet.last },
      { name: "area of the conductors", step: area },
      { name: "area they may fill", step: share },
      { name: "share of the raceway filled", step: percent },
    ],
    advice,
  });
}

function smallestTradeSize(filling: Filling): CalculationFinding {
  const { sheet, edition, question, groups, kind } = filling;
  const { conduitArea, conduitFill } = edition.tables;
  const area = totalArea(sheet, groups);
  const count = totalCount(sheet, groups);
  for (const candidate of tradeSizesOf(question.raceway.kind, edition)) {
    const tried = sheet.conclude(
      "trade size tried",
      candidate,
      [kind],
      "next trade size of the table",
      conduitArea.cite,
    );
    const share = shareFor(filling, tried, count);
    if (isClosed(share)) return share;
    if (!fitsIn(filling, share, area, count)) continue;
    const within = sheet.last;
    const percent = percentFilled(filling, tried, area);
    if (isClosed(percent)) return percent;
    const advice = [...adviceOnAdjustment(filling, count), ...adviceOnJamming(filling, tried, count)];
    const smallest = sheet.conclude(
      "smallest trade size",
      candidate,
      [tried, within],
      "the first trade size, from the smallest up, that holds the conductors",
      conduitFill.cite,
    );
    return sheet.finish({
      sentence: `${nameOf(filling, smallest)} is the smallest that holds these ${String(count.value)} conductors: they fill ${shown(percent.value, 1)} % of it.`,
      cite: conduitFill.cite,
      results: [
        { name: "smallest trade size", step: smallest },
        { name: "area of the conductors", step: area },
        { name: "area they may fill", step: share },
        { name: "share of the raceway filled", step: percent },
      ],
      advice,
    });
  }
  return sheet.refuse(
    "NO_SOLUTION",
    `No ${String(kind.value)} of ${conduitArea.cite.locator} holds ${shown(area.value, 4)} in2 of conductors: divide them over several.`,
    conduitFill.cite,
  );
}

/** The largest number whose own share of the table still holds it: 40 percent from three on, then 31, then 53. */
function howMany(filling: Filling, tradeSize: Step): CalculationFinding {
  const { sheet, edition, groups } = filling;
  const [group, ...others] = groups;
  if (others.length > 0 || group.count.value !== 1)
    throw new UnusableFact(
      "question/conductors",
      'must be one kind with count 1 when "how-many" is asked',
      "a list of one kind with count 1",
    );
  const { cite } = edition.tables.conduitFill;
  const number = filling.isNipple
    ? mostOf(filling, tradeSize, group, [1])
    : mostOf(filling, tradeSize, group, [3, 2, 1]);
  if (isClosed(number)) return number;
  return sheet.finish({
    sentence: `${nameOf(filling, tradeSize)} holds ${String(number.value)} of these conductors.`,
    cite,
    results: [{ name: "number of conductors", step: number }],
    advice: [
      ...adviceOnAdjustment(filling, number),
      "Informative Annex C, worked out from metric figures, prints one conductor more in a few places.",
    ],
  });
}

function mostOf(
  filling: Filling,
  tradeSize: Step,
  group: FillGroup,
  leasts: readonly number[],
): Step | CalculationFinding {
  const { sheet, edition } = filling;
  const { cite } = edition.tables.conduitFill;
  for (const fewest of leasts) {
    const least = sheet.state("fewest conductors this share is for", fewest, cite, "conductors");
    const share = shareFor(filling, tradeSize, least);
    if (isClosed(share)) return share;
    const number = numberPermitted(sheet, share, group.area, edition);
    if (!sheet.compare("the share holds as many as it is for", number, ">=", least, cite)) continue;
    // Where the share for three holds fewer than three, the shares for two and for one hold at most two and one.
    const capped = leasts.length > 1 && fewest < 3;
    return sheet.conclude(
      "number of conductors",
      capped ? fewest : Number(number.value),
      [number, least, sheet.last],
      capped ? "the share for one conductor more does not hold it" : "all that this share holds",
      cite,
      "conductors",
    );
  }
  return sheet.conclude("number of conductors", 0, [sheet.last], "not even one conductor fits", cite, "conductors");
}

/** Square inches that so many conductors may fill. */
function shareFor(filling: Filling, tradeSize: Step, count: Step): Step | CalculationFinding {
  const { sheet, edition, kind, isNipple } = filling;
  const { conduitArea, conduitFill } = edition.tables;
  if (isNipple) {
    const percent = sheet.state("share of a short nipple", NIPPLE_PERCENT, edition.clauses.nippleFill, "%");
    return sheet.readAt("area they may fill", conduitArea, keyOf(filling, tradeSize), "fill60", [
      kind,
      tradeSize,
      percent,
    ]);
  }
  const cell = cellInInterval(conduitFill, Number(count.value), "percent");
  if (isRefused(cell)) return sheet.outsideTable(cell, conduitFill.cite);
  const percent = sheet.read("share of the raceway for so many", cell, [count]);
  const column = `fill${String(percent.value)}`;
  return sheet.readAt("area they may fill", conduitArea, keyOf(filling, tradeSize), column, [kind, tradeSize, percent]);
}

function fitsIn(filling: Filling, share: Step, area: Step, count: Step): boolean {
  const { sheet, edition, groups } = filling;
  const [first] = groups;
  if (!areEqual(sheet, groups))
    return sheet.compare("the conductors fit by area", area, "<=", share, edition.clauses.unequalConductors);
  const number = numberPermitted(sheet, share, first.area, edition);
  return sheet.compare("the conductors fit by number", count, "<=", number, edition.clauses.equalConductors);
}

function areEqual(sheet: CalculationSheet, [first, ...others]: FillGroups): boolean {
  const area = sheet.exact(first.area);
  return others.every((other) => compareExact(sheet.exact(other.area), area) === 0);
}

function percentFilled(filling: Filling, tradeSize: Step, area: Step): Step | CalculationFinding {
  const { sheet, edition, kind } = filling;
  const total = sheet.readAt(
    "total area inside",
    edition.tables.conduitArea,
    keyOf(filling, tradeSize),
    "totalAreaIn2",
    [kind, tradeSize],
  );
  if (isClosed(total)) return total;
  const hundred = sheet.state("the whole", 100, edition.tables.conduitFill.cite, "%");
  const filled = sheet.divide("part of the raceway filled", area, total, "");
  return sheet.multiply("share of the raceway filled", [filled, hundred], "%");
}

function adviceOnAdjustment({ edition, isNipple }: Filling, count: Step): readonly string[] {
  if (!(Number(count.value) > 3)) return [];
  const cite: Citation = edition.tables.adjustmentFactor.cite;
  return isNipple
    ? [
        `In a nipple this short the ampacity is not adjusted for the number of conductors: ${citationText(edition.clauses.nippleFill)}.`,
      ]
    : [`Where more than three of the conductors carry current, their ampacity is adjusted: ${citationText(cite)}.`];
}

/** Three equal conductors may wedge side by side in a bend where the raceway is about three times as wide as one. */
function adviceOnJamming(filling: Filling, tradeSize: Step, count: Step): readonly string[] {
  const { sheet, edition, groups, kind } = filling;
  const [{ tableFive }] = groups;
  if (count.value !== 3 || tableFive === undefined || !areEqual(sheet, groups)) return [];
  const { insulatedDiameter, conduitArea } = edition.tables;
  const { size, column } = tableFive;
  const wire = sheet.readIfPrinted("diameter of one conductor", insulatedDiameter, size, column, []);
  const inside = sheet.readIfPrinted("diameter inside", conduitArea, keyOf(filling, tradeSize), "internalDiameterIn", [
    kind,
    tradeSize,
  ]);
  if (wire === undefined || inside === undefined) return [];
  const ratio = sheet.divide("raceway to conductor diameter", inside, wire, "", edition.clauses.jamming);
  const value = Number(ratio.value);
  if (!(value >= JAM_FROM && value <= JAM_TO)) return [];
  return [
    `Three conductors may jam in a pull with bends: the raceway is ${shown(value, 2)} times as wide as one of them, between 2.8 and 3.2 (advice): ${citationText(edition.clauses.jamming)}.`,
  ];
}

function tradeSizesOf(kind: RacewayKind, edition: Edition): readonly string[] {
  const head = `${kind} `;
  return edition.tables.conduitArea.rows
    .filter(({ label }) => label.startsWith(head))
    .map(({ label }) => label.slice(head.length))
    .filter((tradeSize) => !hasOwnTable(kind, tradeSize));
}

/** Flexible conduit of trade size 3/8 is filled by a table of numbers, and not by area. */
function hasOwnTable(kind: RacewayKind, tradeSize: string): boolean {
  return tradeSize === "3/8" && (kind === "FMC" || kind === "LFMC");
}

function keyOf({ question }: Filling, tradeSize: Step): string {
  return `${question.raceway.kind} ${String(tradeSize.value)}`;
}

function nameOf({ question, isNipple }: Filling, tradeSize: Step): string {
  return `${question.raceway.kind}${isNipple ? " nipple" : ""} of trade size ${String(tradeSize.value)}`;
}
