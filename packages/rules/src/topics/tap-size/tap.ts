import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { type CalculationSheet, isClosed, shown } from "../../core/calculation-sheet.js";
import { type CircuitLoad, type LoadSteps, loadSteps } from "../../core/circuit-load.js";
import type { Citation } from "../../core/citation.js";
import { conductorText } from "../../core/conductor-ampacity.js";
import { type ConductorRun, openFactsOf } from "../../core/conductor-run.js";
import { compareSizes, sizeOf } from "../../core/conductor-size.js";
import { listWords } from "../../core/conductor-words.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import { answerWithOpenFacts, type OpenFact, type TakenAtBest } from "../../core/open-fact.js";
import type { Length } from "../../core/quantity.js";
import { hasAmpacity, type PreparedRun, preparedRun, runAmpacity } from "../../core/run-ampacity.js";
import { NEEDS_LISTED_USE } from "../../core/small-conductor.js";
import { sizesOf } from "../../core/table.js";
import { type AllowanceTerms, type TapAllowance, TERMS } from "./tap-allowances.js";

const NAME = "tap";
const LEAVES_PATH = "question/leavesEnclosure";
const END_PATH = "question/endDeviceA";
const SMALLEST_PARALLEL = "1/0 AWG";
const HIGH_BAY_WALLS_OVER_FT = 35;
const HIGH_BAY_HORIZONTAL_UP_TO_FT = 25;
const HIGH_BAY_TAP_FROM_FT = 30;
const HIGH_BAY_SMALLEST = { copper: "6 AWG", aluminum: "4 AWG" } as const;

export type TapAsk = "smallest-size" | "check";

/** Where a tap in a high bay runs. */
export interface HighBay {
  readonly wallHeight: Length;
  readonly horizontalLength: Length;
  readonly tapAboveFloor: Length;
}

export interface TapQuestion extends CircuitLoad {
  readonly ask: TapAsk;
  readonly allowance: TapAllowance;
  /** The feeder's device; for conductors of a transformer's secondary the device of its primary. */
  readonly deviceAheadA: number;
  /** The device in which the conductor ends, or the equipment it supplies. */
  readonly endDeviceA?: number;
  /** Of the conductor; of primary and secondary together for a transformer that is tapped. Not needed outdoors. */
  readonly length?: Length;
  readonly physicallyProtected: boolean;
  /** Whether it leaves the enclosure in which it begins; matters up to 10 ft only. */
  readonly leavesEnclosure?: boolean;
  /** Between lines; needed on the secondary side of a transformer. */
  readonly primaryV?: number;
  readonly secondaryV?: number;
  readonly highBay?: HighBay;
  /** Needed to check a tap. */
  readonly size?: string;
  readonly run: ConductorRun;
}

/**
 * Which conductor may be protected at its end only, and is this one large enough?
 *
 * NFPA 70 240.21(B)(1) to (5), (C)(2), (C)(6) (2017, 2020, 2023), in our words: the ampacity, after correction and at the
 * terminations, carries the load, reaches the device at the end and its share of the device ahead: a tenth up to 10 ft
 * where it leaves its enclosure, a third up to 25 ft, in a high bay and at a tapped transformer, none outdoors. On the
 * secondary side the device ahead counts times primary over secondary voltage. The next standard rating is never made use
 * of.
 * Worked: 400 A feeder, 25 ft: 400 / 3 = 133.3 A, 1/0 AWG copper (150 A at 75 C). 125 A at 480 V, 208 V secondary, 8 ft:
 * 125 x 480 / 208 / 10 = 28.8 A and the 100 A device: 3 AWG.
 * Silent: taps of motors and busways, supervised industrial installations (240.92), secondary conductors outdoors or
 * without limit of length, and what must be seen on site, which is said as advice.
 */
export const tap: Calculation<TapQuestion> = {
  name: NAME,
  title: "Size of a tap",
  clauses: [
    "tapsNoNextSize",
    "tapTo10ft",
    "tapTo25ft",
    "tapToTransformer",
    "tapInHighBay",
    "tapOutdoors",
    "transformerSecondary",
    "secondaryTo10ft",
    "secondaryTo25ft",
    "feederLoad",
    "parallel",
  ],
  needs: [
    "question/ask",
    "question/allowance",
    "question/deviceAheadA",
    END_PATH,
    "question/length",
    "question/physicallyProtected",
    LEAVES_PATH,
    "question/primaryV",
    "question/secondaryV",
    "question/highBay",
    "question/continuousLoadA",
    "question/nonContinuousLoadA",
    "question/size",
    "question/run",
  ],
  cannotSee: "the way the tap takes and what stands at its end",
  answer(question, basis, edition) {
    const terms = TERMS[question.allowance];
    const open: OpenFact[] = [...openFactsOf(question.run, undefined, edition)];
    if (terms.shareOutsideOnly && question.leavesEnclosure === undefined) open.push(LEAVES_FACT);
    return answerWithOpenFacts(NAME, basis, open, edition.clauses[terms.clause], (sheet, atBest) =>
      work(sheet, question, terms, atBest, edition),
    );
  },
};

const LEAVES_FACT: OpenFact = Object.freeze({
  path: LEAVES_PATH,
  because:
    "A conductor that leaves the enclosure in which it begins needs a tenth of the device ahead; whether it does, is not given.",
});

/** Everything that is the same for each size. */
interface TapWork {
  readonly sheet: CalculationSheet;
  readonly question: TapQuestion;
  readonly terms: AllowanceTerms;
  readonly edition: Edition;
  readonly cite: Citation;
  readonly end: Step;
  readonly share: Step | undefined;
  readonly load: LoadSteps;
  readonly prepared: PreparedRun;
  /** That it may run this way at all. */
  readonly way: readonly TapCheck[];
}

interface TapCheck {
  readonly holds: boolean;
  readonly step: Step;
  /** What is wrong where it does not hold. */
  readonly failing: string;
}

function work(
  sheet: CalculationSheet,
  question: TapQuestion,
  terms: AllowanceTerms,
  atBest: TakenAtBest,
  edition: Edition,
): CalculationFinding {
  const cite = edition.clauses[terms.clause];
  const way = wayOf(sheet, question, terms, edition);
  if (isClosed(way)) return way;
  if (question.endDeviceA === undefined)
    return sheet.ask(
      END_PATH,
      "The device at the end of the conductor is not given; its ampacity must reach it.",
      cite,
    );
  const end = sheet.positive("device at the end", question.endDeviceA, END_PATH, "A");
  const share = shareOf(sheet, question, terms, atBest, edition);
  if (share !== undefined && isClosed(share)) return share;
  const load = loadSteps(sheet, question, "feeder", edition);
  if (isClosed(load)) return load;
  const prepared = preparedRun(sheet, question.run, atBest, edition);
  if (isClosed(prepared)) return prepared;
  const tapWork: TapWork = { sheet, question, terms, edition, cite, end, share, load, prepared, way };
  return question.ask === "check" ? checkTap(tapWork) : smallestTap(tapWork);
}

/** Protection from damage, length, and the conditions of a high bay. */
function wayOf(
  sheet: CalculationSheet,
  question: TapQuestion,
  terms: AllowanceTerms,
  edition: Edition,
): readonly TapCheck[] | CalculationFinding {
  const cite = edition.clauses[terms.clause];
  const guarded = sheet.given(
    "protected from physical damage",
    question.physicallyProtected,
    "question/physicallyProtected",
  );
  const checks: TapCheck[] = [
    { holds: question.physicallyProtected, step: guarded, failing: "it is not protected from physical damage" },
  ];
  if (terms.upToFt !== undefined) {
    if (question.length === undefined)
      return sheet.ask("question/length", "The length of the conductor decides whether this allowance holds.", cite);
    const length = sheet.length("length", question.length, "question/length", "ft");
    const longest = sheet.state("longest conductor of this allowance", terms.upToFt, cite, "ft");
    const holds = sheet.compare("it is within the length of this allowance", length, "<=", longest, cite);
    checks.push({ holds, step: sheet.last, failing: `it is longer than ${String(terms.upToFt)} ft` });
  }
  if (question.allowance !== "feeder-tap-in-high-bay") return checks;
  if (question.highBay === undefined)
    return sheet.ask(
      "question/highBay",
      "The height of the walls, the horizontal length and the height of the tap decide whether the allowance of high bays holds.",
      cite,
    );
  return [...checks, ...highBayChecks(sheet, question.highBay, cite)];
}

function highBayChecks(sheet: CalculationSheet, bay: HighBay, cite: Citation): readonly TapCheck[] {
  const head = "question/highBay";
  const walls = sheet.length("height of the walls", bay.wallHeight, `${head}/wallHeight`, "ft");
  const over = sheet.state("walls are higher than", HIGH_BAY_WALLS_OVER_FT, cite, "ft");
  const high = sheet.compare("the bay is high", walls, ">", over, cite);
  const isHigh: TapCheck = { holds: high, step: sheet.last, failing: "the walls are no higher than 35 ft" };
  const across = sheet.length("horizontal length", bay.horizontalLength, `${head}/horizontalLength`, "ft");
  const most = sheet.state("largest horizontal length", HIGH_BAY_HORIZONTAL_UP_TO_FT, cite, "ft");
  const within = sheet.compare("the horizontal length is allowed", across, "<=", most, cite);
  const isWithin: TapCheck = { holds: within, step: sheet.last, failing: "more than 25 ft of it are horizontal" };
  const above = sheet.length("height of the tap above the floor", bay.tapAboveFloor, `${head}/tapAboveFloor`, "ft");
  const least = sheet.state("least height of the tap", HIGH_BAY_TAP_FROM_FT, cite, "ft");
  const up = sheet.compare("the tap is made high above the floor", above, ">=", least, cite);
  return [
    isHigh,
    isWithin,
    { holds: up, step: sheet.last, failing: "the tap is made less than 30 ft above the floor" },
  ];
}

/** The ampacity that the device ahead asks for; undefined where this allowance asks for no share of it. */
function shareOf(
  sheet: CalculationSheet,
  question: TapQuestion,
  terms: AllowanceTerms,
  atBest: TakenAtBest,
  edition: Edition,
): Step | CalculationFinding | undefined {
  const cite = edition.clauses[terms.clause];
  const ahead = sheet.positive("device ahead", question.deviceAheadA, "question/deviceAheadA", "A");
  if (terms.divisor === undefined) return undefined;
  if (terms.shareOutsideOnly) {
    const leaves = question.leavesEnclosure ?? !atBest.has(LEAVES_PATH);
    if (question.leavesEnclosure !== undefined)
      sheet.given("leaves the enclosure in which it begins", question.leavesEnclosure, LEAVES_PATH);
    if (!leaves) return undefined;
  }
  const counted = terms.throughTransformer ? throughTransformer(sheet, question, ahead, edition) : ahead;
  if (isClosed(counted)) return counted;
  const divisor = sheet.state("divisor of the device ahead", terms.divisor, cite);
  return sheet.divide("share of the device ahead", counted, divisor, "A", cite);
}

/** The device ahead as it counts on the secondary side: times primary voltage over secondary voltage. */
function throughTransformer(
  sheet: CalculationSheet,
  { primaryV, secondaryV }: TapQuestion,
  ahead: Step,
  { clauses }: Edition,
): Step | CalculationFinding {
  const cite = clauses.transformerSecondary;
  const because = "The device ahead counts by the ratio of the voltages, which are not both given.";
  if (primaryV === undefined) return sheet.ask("question/primaryV", because, cite);
  if (secondaryV === undefined) return sheet.ask("question/secondaryV", because, cite);
  const primary = sheet.positive("primary voltage", primaryV, "question/primaryV", "V");
  const secondary = sheet.positive("secondary voltage", secondaryV, "question/secondaryV", "V");
  const product = sheet.multiply("device ahead x primary voltage", [ahead, primary], "V A");
  return sheet.divide("device ahead as it counts on the secondary side", product, secondary, "A", cite);
}

/** What one size must pass. */
function sizeChecks(
  tapWork: TapWork,
  size: Step,
): { readonly checks: readonly TapCheck[]; readonly usable: Step } | CalculationFinding {
  const { sheet, edition, cite, end, share, load, prepared } = tapWork;
  const found = runAmpacity(sheet, prepared, size, end, END_PATH);
  if (isClosed(found)) return found;
  const { usable, allAtTerminations } = found;
  const checks: TapCheck[] = [];
  const add = (label: string, left: Step, right: Step, clause: Citation, failing: string): void => {
    const holds = sheet.compare(label, left, ">=", right, clause);
    checks.push({ holds, step: sheet.last, failing });
  };
  const { feederLoad } = edition.clauses;
  add(
    "it carries the load for sizing at its terminations",
    allAtTerminations,
    load.sizing,
    feederLoad,
    "it does not carry the load for sizing",
  );
  add("it carries the load after correction", usable, load.served, cite, "it does not carry the load");
  add("it reaches the device at its end", usable, end, cite, "it does not reach the device at its end");
  if (share !== undefined)
    add(
      "it reaches its share of the device ahead",
      usable,
      share,
      cite,
      "it does not reach its share of the device ahead",
    );
  for (const least of smallestAllowed(tapWork)) {
    const holds = compareSizes(sizeOf(String(size.value)), sizeOf(String(least.value))) >= 0;
    checks.push({
      holds,
      step: sheet.conclude("it is no smaller than allowed", holds, [size, least], "sizes are compared by area"),
      failing: `it is smaller than ${String(least.value)}`,
    });
  }
  return { checks, usable };
}

/** Sizes below which none may be used, whatever its ampacity. */
function smallestAllowed({ sheet, question, cite, edition }: TapWork): readonly Step[] {
  const least: Step[] = [];
  if (question.run.sets > 1)
    least.push(sheet.state("smallest size that may be run in parallel", SMALLEST_PARALLEL, edition.clauses.parallel));
  if (question.allowance === "feeder-tap-in-high-bay") {
    const size = question.run.metal === "copper" ? HIGH_BAY_SMALLEST.copper : HIGH_BAY_SMALLEST.aluminum;
    least.push(sheet.state("smallest size of a tap in a high bay", size, cite));
  }
  return least;
}

function smallestTap(tapWork: TapWork): CalculationFinding {
  const { sheet, edition, prepared, cite, question, share, end, way } = tapWork;
  const wrong = way.filter(({ holds }) => !holds);
  if (wrong.length > 0)
    return sheet.refuse(
      "NO_SOLUTION",
      `No size makes this tap allowed: ${listWords(wrong.map(({ failing }) => failing))}.`,
      cite,
    );
  for (const text of sizesOf(edition.tables.ampacityRaceway)) {
    if (NEEDS_LISTED_USE.includes(text) || !hasAmpacity(prepared, text)) continue;
    const size = sheet.conclude("size tried", text, [], "next size of the table");
    const outcome = sizeChecks(tapWork, size);
    if (isClosed(outcome)) return outcome;
    if (!outcome.checks.every(({ holds }) => holds)) continue;
    const result = sheet.conclude(
      "smallest size",
      text,
      [size, ...way.map(({ step }) => step), ...outcome.checks.map(({ step }) => step)],
      "the first size, from the smallest up, that meets all of the allowance",
      cite,
    );
    return sheet.finish({
      sentence: `${conductorText(question.run.sets, text, question.run.metal)} is the smallest size for this tap: it carries ${shown(outcome.usable.value, 1)} A, and ${neededText(tapWork)} are needed.`,
      cite,
      results: [
        { name: "smallest size", step: result },
        { name: "ampacity of the conductor", step: outcome.usable },
        { name: "device at the end", step: end },
        ...(share === undefined ? [] : [{ name: "share of the device ahead", step: share }]),
      ],
      advice: [tapWork.terms.onSite],
    });
  }
  return sheet.refuse(
    "NO_SOLUTION",
    `No size of ${question.run.metal} carries the ${neededText(tapWork)} needed: use more sets in parallel.`,
    edition.tables.ampacityRaceway.cite,
  );
}

/** The largest of what the ampacity must reach: "133.3 A". */
function neededText({ end, share, load }: TapWork): string {
  const needed = Math.max(Number(end.value), Number(share?.value ?? 0), Number(load.served.value));
  return `${shown(needed, 1)} A`;
}

function checkTap(tapWork: TapWork): CalculationFinding {
  const { sheet, question, prepared, cite, share, end, way } = tapWork;
  if (question.size === undefined)
    return sheet.ask("question/size", "The size of the conductor that is to be checked is not given.", cite);
  const size = sheet.given("size", sizeOf(question.size).text, "question/size");
  const outcome = sizeChecks(tapWork, size);
  if (isClosed(outcome)) return outcome;
  const all = [...way, ...outcome.checks];
  const wrong = all.filter(({ holds }) => !holds);
  const because = wrong.length === 0 ? "it meets all of the allowance" : listWords(wrong.map(({ failing }) => failing));
  const result = sheet.conclude(
    "the tap is allowed",
    wrong.length === 0,
    all.map(({ step }) => step),
    because,
    cite,
  );
  return sheet.finish({
    sentence: `${conductorText(prepared.run.sets, String(size.value), prepared.run.metal)}, carrying ${shown(outcome.usable.value, 1)} A, is ${wrong.length === 0 ? "allowed" : "not allowed"} as this tap: ${because}.`,
    cite,
    results: [
      { name: "the tap is allowed", step: result },
      { name: "ampacity of the conductor", step: outcome.usable },
      { name: "device at the end", step: end },
      ...(share === undefined ? [] : [{ name: "share of the device ahead", step: share }]),
    ],
    advice: wrong.length === 0 ? [tapWork.terms.onSite] : [],
  });
}
