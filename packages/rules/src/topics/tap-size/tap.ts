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
import { type AllowanceTerms, CONDITION_WORDS, type TapAllowance, type TapCondition, TERMS } from "./tap-allowances.js";

const NAME = "tap";
const LEAVES_PATH = "question/leavesEnclosure";
const END_PATH = "question/endDeviceA";
const SMALLEST_PARALLEL = "1/0 AWG";
const CONDITIONS_PATH = "question/conditionsMet";
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

/** "two-wire": single-phase. "delta-delta": three-phase with three wires of one voltage on the secondary. */
export const TAP_WINDINGS = ["two-wire", "delta-delta", "other"] as const;
export type TapWindings = (typeof TAP_WINDINGS)[number];

export interface TapQuestion extends CircuitLoad {
  readonly ask: TapAsk;
  readonly allowance: TapAllowance;
  /** The feeder's device; for conductors of a transformer's secondary the device of its primary. */
  readonly deviceAheadA: number;
  /**
   * The device in which the conductor ends, or the equipment it supplies; in an industrial installation the ratings of all
   * devices at its end together. Not needed where the primary's device protects it.
   */
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
  /** Needed where the device of the primary is to protect the secondary. */
  readonly windings?: TapWindings;
  /** Needed in an industrial installation: rated current of the secondary. */
  readonly transformerSecondaryA?: number;
  /** Of what the allowance asks for on site, what is met. Needed to check a conductor; otherwise it is said as advice. */
  readonly conditionsMet?: readonly TapCondition[];
  /** Needed to check a tap. */
  readonly size?: string;
  readonly run: ConductorRun;
}

/**
 * Which conductor may be protected at its end only, and is this one large enough?
 *
 * NFPA 70 240.21(B)(1) to (5), (C)(1) to (6) (2017, 2020, 2023), in our words: the ampacity, after correction and at the
 * terminations, carries the load, reaches the device at the end and its share of the device ahead: a tenth up to 10 ft
 * where it leaves its enclosure, a third up to 25 ft, in a high bay and at a tapped transformer, none outdoors. On the
 * secondary side the device ahead counts times primary over secondary voltage. (C)(1): two-wire and delta-delta secondaries
 * reach the whole of it and need no device of their own; (C)(3): in industrial installations up to 25 ft they reach the
 * transformer's secondary current and all devices at their end together; (C)(4): outdoors no share and no length; (C)(5):
 * those of a tapped transformer follow (B)(3). The next standard rating is never made use of.
 * Worked: 400 A feeder, 25 ft: 400 / 3 = 133.3 A, 1/0 AWG copper (150 A at 75 C). 125 A at 480 V, 208 V secondary, 8 ft:
 * 125 x 480 / 208 / 10 = 28.8 A and the 100 A device: 3 AWG.
 * Silent: taps of motors and busways, and the formulas of supervised industrial installations (240.92).
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
    "secondaryByPrimary",
    "secondaryTo10ft",
    "secondaryIndustrial",
    "secondaryOutdoors",
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
    "question/windings",
    "question/transformerSecondaryA",
    CONDITIONS_PATH,
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
  /** Undefined where the device of the primary protects the conductor. */
  readonly end: Step | undefined;
  readonly share: Step | undefined;
  /** Rated current of the secondary that it must carry. */
  readonly transformer: Step | undefined;
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
  const end = endOf(sheet, question, terms, cite);
  if (end !== undefined && isClosed(end)) return end;
  const share = shareOf(sheet, question, terms, atBest, edition);
  if (share !== undefined && isClosed(share)) return share;
  const transformer = transformerOf(sheet, question, terms, cite);
  if (transformer !== undefined && isClosed(transformer)) return transformer;
  const load = loadSteps(sheet, question, "feeder", edition);
  if (isClosed(load)) return load;
  const prepared = preparedRun(sheet, question.run, atBest, edition);
  if (isClosed(prepared)) return prepared;
  const tapWork: TapWork = { sheet, question, terms, edition, cite, end, share, transformer, load, prepared, way };
  return question.ask === "check" ? checkTap(tapWork) : smallestTap(tapWork);
}

function endOf(
  sheet: CalculationSheet,
  { endDeviceA }: TapQuestion,
  { endDevice }: AllowanceTerms,
  cite: Citation,
): Step | CalculationFinding | undefined {
  if (endDevice === "none") return undefined;
  if (endDeviceA === undefined)
    return sheet.ask(
      END_PATH,
      endDevice === "one"
        ? "The device at the end of the conductor is not given; its ampacity must reach it."
        : "The devices at the end of the conductor are not given; its ampacity must reach their ratings together.",
      cite,
    );
  return sheet.positive(
    endDevice === "one" ? "device at the end" : "devices at the end together",
    endDeviceA,
    END_PATH,
    "A",
  );
}

function transformerOf(
  sheet: CalculationSheet,
  { transformerSecondaryA }: TapQuestion,
  { carriesTransformer }: AllowanceTerms,
  cite: Citation,
): Step | CalculationFinding | undefined {
  if (!carriesTransformer) return undefined;
  const path = "question/transformerSecondaryA";
  if (transformerSecondaryA === undefined)
    return sheet.ask(
      path,
      "The rated secondary current of the transformer is not given; the conductor carries it.",
      cite,
    );
  return sheet.positive("rated secondary current of the transformer", transformerSecondaryA, path, "A");
}

/** Protection from damage, length, windings, and the conditions of a high bay. */
function wayOf(
  sheet: CalculationSheet,
  question: TapQuestion,
  terms: AllowanceTerms,
  edition: Edition,
): readonly TapCheck[] | CalculationFinding {
  const cite = edition.clauses[terms.clause];
  const checks: TapCheck[] = [];
  if (terms.windingsDecide) {
    const windings = windingsCheck(sheet, question, cite);
    if (isClosed(windings)) return windings;
    checks.push(windings);
  } else
    checks.push({
      holds: question.physicallyProtected,
      step: sheet.given("protected from physical damage", question.physicallyProtected, "question/physicallyProtected"),
      failing: "it is not protected from physical damage",
    });
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

function windingsCheck(
  sheet: CalculationSheet,
  { windings }: TapQuestion,
  cite: Citation,
): TapCheck | CalculationFinding {
  if (windings === undefined)
    return sheet.ask(
      "question/windings",
      "Only a two-wire secondary, or one of three wires from delta to delta, is protected by the device of the primary; which this is, is not given.",
      cite,
    );
  const given = sheet.given("windings of the transformer", windings, "question/windings");
  const serving = sheet.state(
    "windings through which the primary's device protects",
    ["two-wire", "delta-delta"],
    cite,
  );
  const holds = sheet.compare("the primary's device protects the secondary", given, "in", serving, cite);
  return {
    holds,
    step: sheet.last,
    failing: "the device of the primary does not protect a secondary of these windings",
  };
}

/** What is met on site of what the allowance asks for; undefined where that is not given. */
function conditionChecks({ sheet, question, terms, cite }: TapWork): readonly TapCheck[] | undefined {
  const { conditionsMet } = question;
  if (conditionsMet === undefined) return undefined;
  const met = sheet.given("conditions that are met", conditionsMet, CONDITIONS_PATH);
  return terms.conditions.map((condition) => {
    const asked = sheet.state("condition of the allowance", condition, cite);
    const holds = sheet.compare(CONDITION_WORDS[condition], asked, "in", met, cite);
    return { holds, step: sheet.last, failing: `it is not said that ${CONDITION_WORDS[condition]}` };
  });
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
  const { sheet, edition, cite, terms, end, share, transformer, load, prepared } = tapWork;
  const found = runAmpacity(sheet, prepared, size, end ?? share, END_PATH);
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
  if (end !== undefined)
    add(
      terms.endDevice === "one" ? "it reaches the device at its end" : "it reaches the devices at its end together",
      usable,
      end,
      cite,
      terms.endDevice === "one"
        ? "it does not reach the device at its end"
        : "it does not reach the devices at its end together",
    );
  if (transformer !== undefined)
    add(
      "it carries the secondary current of the transformer",
      usable,
      transformer,
      cite,
      "it does not carry the secondary current of the transformer",
    );
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
  const { sheet, edition, prepared, cite, question, share, end } = tapWork;
  const conditions = conditionChecks(tapWork);
  const way = [...tapWork.way, ...(conditions ?? [])];
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
        ...(end === undefined ? [] : [{ name: "device at the end", step: end }]),
        ...(share === undefined ? [] : [{ name: "share of the device ahead", step: share }]),
      ],
      advice: conditions === undefined ? [onSiteText(tapWork)] : [],
    });
  }
  return sheet.refuse(
    "NO_SOLUTION",
    `No size of ${question.run.metal} carries the ${neededText(tapWork)} needed: use more sets in parallel.`,
    edition.tables.ampacityRaceway.cite,
  );
}

/** "See that it has no splices." */
function onSiteText({ terms }: TapWork): string {
  return `See that ${listWords(terms.conditions.map((condition) => CONDITION_WORDS[condition]))}.`;
}

/** The largest of what the ampacity must reach: "133.3 A". */
function neededText({ end, share, transformer, load }: TapWork): string {
  const needed = Math.max(...[end, share, transformer, load.served].map((step) => Number(step?.value ?? 0)));
  return `${shown(needed, 1)} A`;
}

function checkTap(tapWork: TapWork): CalculationFinding {
  const { sheet, question, prepared, cite, share, end, way } = tapWork;
  if (question.size === undefined)
    return sheet.ask("question/size", "The size of the conductor that is to be checked is not given.", cite);
  const size = sheet.given("size", sizeOf(question.size).text, "question/size");
  const outcome = sizeChecks(tapWork, size);
  if (isClosed(outcome)) return outcome;
  const found = [...way, ...outcome.checks];
  const conditions = conditionChecks(tapWork);
  if (conditions === undefined && found.every(({ holds }) => holds))
    return sheet.ask(
      CONDITIONS_PATH,
      `The conductor is large enough; it is allowed only where ${listWords(tapWork.terms.conditions.map((condition) => CONDITION_WORDS[condition]))}.`,
      cite,
    );
  const all = [...found, ...(conditions ?? [])];
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
      ...(end === undefined ? [] : [{ name: "device at the end", step: end }]),
      ...(share === undefined ? [] : [{ name: "share of the device ahead", step: share }]),
    ],
  });
}
