import type { Exact } from "@landfast/rules";
import { type DifficultyFactors, hoursFor } from "../labour/labour-factors.js";
import { decimalOf, decimalText, isDecimalText, plus, times, ZERO } from "../money/decimal.js";
import { commonCurrency, type Money, roundedMoney, sumMoney } from "../money/money.js";
import { priceProblems } from "../prices/item-price.js";
import { byPartNumber, byText } from "../problem/canonical-problem.js";
import { UnusableProblem } from "../problem/check-problem.js";
import { kitsBy, toolLineId } from "./kits.js";
import { byPart } from "./part-demand.js";
import { partLine } from "./part-line.js";
import type { PartsList, PartsListGap } from "./parts-list.js";
import { usageGaps } from "./parts-list-gaps.js";
import type { JointUse, ListedPart, PartsListQuestion } from "./parts-list-question.js";
import { toolLines } from "./tool-lines.js";

/**
 * What to buy for a job: by part, from the net quantity to the packs, and what it costs.
 *
 * A line's cost is rounded to the currency's smallest unit in the way the question names; sums are sums of rounded
 * lines, as an invoice adds up. An amount that is not known is null and named as a gap, never zero.
 * Worked: 84 compression lugs in packs of 25 at 12.34 a hundred with 5 % spares: net 84, spare 5, to buy 89, 4 packs, pack
 * rounding 11, bought 100 for 12.34.
 * @throws UnusableProblem, with every fault; UnlikeCurrencies.
 */
export function listParts(question: PartsListQuestion): PartsList {
  refuseFaults(question);
  const { spares, ownerSpares = [], rounding } = question;
  const uses = question.uses.toSorted((a, b) => byText(a.mark, b.mark) || byPartNumber(a, b));
  const parts = new Map(question.parts.map((part) => [part.partNumber, part]));
  const currency = currencyOf(question);
  const gaps: PartsListGap[] = usageGaps(uses, parts);
  const demands = byPart(uses);
  const wanted = [...new Set([...demands.keys(), ...ownerSpares.map(({ partNumber }) => partNumber)])].sort();
  const lines = wanted.map((partNumber) =>
    partLine(needed(parts, partNumber), demands.get(partNumber) ?? [], ownerSpares, question, currency, gaps),
  );
  const tools = toolLines(uses, question.tools ?? [], rounding, currency, gaps);
  const { hours, hoursBySource } = hoursOf(uses, question.labour?.difficulty ?? {}, gaps);
  const rate = question.labour?.rate;
  const labour =
    hours === null || rate === undefined
      ? null
      : roundedMoney(times(hours, decimalOf(rate.amount)), rate.currency, rounding);
  const partsCost = sumKnown(
    lines.map(({ cost }) => cost),
    currency,
  );
  const toolsCost = sumKnown(
    tools.map(({ cost }) => cost),
    currency,
  );
  const all = [...lines.map(({ cost }) => cost), ...tools.map(({ cost }) => cost), labour];
  const labourIsAsked = rate !== undefined;
  return {
    lines,
    tools,
    hours: hours === null ? null : decimalText(hours),
    hoursBySource,
    cost: {
      parts: partsCost,
      tools: toolsCost,
      labour,
      total: sumKnown([partsCost, toolsCost, ...(labourIsAsked ? [labour] : [])], currency),
      known: sumOfKnown(
        all.filter((one) => one !== null),
        currency,
      ),
      rounding,
    },
    kitsByArea: kitsBy(uses, "area"),
    kitsByPanel: kitsBy(uses, "panel"),
    gaps,
    notListed: NOT_LISTED,
    sparePolicy: { id: spares.id, basis: spares.basis },
  };
}

/** Seen on drawings and in specifications only. */
const NOT_LISTED: readonly string[] = [
  "bonding jumpers and electrode conductors that the grounding drawing shows and no joint names",
  "terminal shields and barriers that the equipment asks for where conductors are larger or spread",
  "conductor length cut off and stripped at both ends",
  "calibration of the torque tools, and certificates that the specification asks for",
];

interface HoursOfJob {
  readonly hours: Exact | null;
  readonly hoursBySource: PartsList["hoursBySource"];
}

const NOT_KNOWN = "not known";

function hoursOf(uses: readonly JointUse[], difficulty: DifficultyFactors, gaps: PartsListGap[]): HoursOfJob {
  let sum: Exact | null = ZERO;
  const sources = new Map<string, { joints: number; hours: Exact | null }>();
  for (const { mark, joints, labourHours, difficulty: named, labourSource = "stated" } of uses) {
    const { hours, because } = hoursFor(joints, labourHours, named, difficulty);
    if (hours === null) gaps.push({ about: "no-hours", sentence: `${mark}: ${because}`, marks: [mark] });
    sum = sum === null || hours === null ? null : plus(sum, hours);
    const source = hours === null ? NOT_KNOWN : labourSource;
    const before = sources.get(source) ?? { joints: 0, hours: ZERO };
    sources.set(source, {
      joints: before.joints + joints,
      hours: before.hours === null || hours === null ? null : plus(before.hours, hours),
    });
  }
  return {
    hours: sum,
    hoursBySource: [...sources]
      .sort(([a], [b]) => byText(a, b))
      .map(([source, { joints, hours }]) => ({ source, joints, hours: hours === null ? null : decimalText(hours) })),
  };
}

/** Sum of amounts, or null when one of them is not known. */
function sumKnown(amounts: readonly (Money | null)[], currency: string | null): Money | null {
  const known = amounts.filter((one) => one !== null);
  return known.length < amounts.length ? null : sumOfKnown(known, currency);
}

/** Sum of rounded amounts, written with the places of the smallest unit as they are. */
function sumOfKnown(amounts: readonly Money[], currency: string | null): Money | null {
  return currency === null ? null : roundedMoney(decimalOf(sumMoney(amounts, currency).amount), currency, "down");
}

function currencyOf({ parts, tools = [], labour }: PartsListQuestion): string | null {
  return commonCurrency([
    ...parts.flatMap(({ price }) => price?.currency ?? []),
    ...tools.flatMap(({ terms }) =>
      terms.kind === "hired" ? terms.perDay.currency : terms.kind === "bought" ? terms.price.currency : [],
    ),
    ...(labour?.rate === undefined ? [] : [labour.rate.currency]),
  ]);
}

function needed(parts: ReadonlyMap<string, ListedPart>, partNumber: string): ListedPart {
  const part = parts.get(partNumber);
  if (part === undefined) throw new UnusableProblem([`part ${partNumber} is used and not described`]);
  return part;
}

function refuseFaults(question: PartsListQuestion): void {
  const faults: string[] = [];
  const { uses, parts, ownerSpares = [], tools = [], labour, spares } = question;
  const described = new Set(parts.map(({ partNumber }) => partNumber));
  if (described.size < parts.length) faults.push("a part is described more than once");
  for (const { partNumber, packQuantity, onHand = 0, price } of parts) {
    if (!isCount(packQuantity, 1)) faults.push(`part ${partNumber}: packQuantity is a whole number from 1 up`);
    if (!isCount(onHand, 0)) faults.push(`part ${partNumber}: onHand is a whole number from 0 up`);
    if (price !== undefined) faults.push(...priceProblems(price).map((one) => `part ${partNumber}: ${one}`));
  }
  for (const { mark, joints, partsPerJoint, partNumber, needs = [], unusedOpenings = 0, labourHours = 0 } of uses) {
    if (!isCount(joints, 1) || !isCount(partsPerJoint, 1) || !isCount(unusedOpenings, 0))
      faults.push(`${mark}: joints and parts are whole numbers from 1 up, unused openings from 0 up`);
    if (!(Number.isFinite(labourHours) && labourHours >= 0)) faults.push(`${mark}: labourHours is not below 0`);
    if (!described.has(partNumber)) faults.push(`${mark}: part ${partNumber} is not described`);
    for (const need of needs) {
      if (need.partNumber !== null && !described.has(need.partNumber))
        faults.push(`${mark}: part ${need.partNumber} is not described`);
      faults.push(...amountFaults(`${mark}: perJoint`, need.perJoint));
    }
  }
  for (const { partNumber, parts: count } of ownerSpares) {
    if (!described.has(partNumber)) faults.push(`owner's spares: part ${partNumber} is not described`);
    if (!isCount(count, 1)) faults.push(`owner's spares: ${partNumber} is a whole number from 1 up`);
  }
  for (const { percent, atLeast } of Object.values(spares.rules)) {
    faults.push(...amountFaults("spares: percent", percent));
    if (!isCount(atLeast, 0)) faults.push("spares: atLeast is a whole number from 0 up");
  }
  if (new Set(tools.map(toolLineId)).size < tools.length) faults.push("the terms of a tool are stated more than once");
  for (const { tool, terms } of tools) {
    if (terms.kind === "hired") {
      faults.push(...amountFaults(`tool ${tool}: perDay`, terms.perDay.amount));
      if (!isCount(terms.days, 1)) faults.push(`tool ${tool}: days is a whole number from 1 up`);
    }
    if (terms.kind === "bought") faults.push(...amountFaults(`tool ${tool}: price`, terms.price.amount));
  }
  for (const factor of Object.values(labour?.difficulty ?? {})) faults.push(...amountFaults("difficulty", factor));
  if (labour?.rate !== undefined) faults.push(...amountFaults("labor rate", labour.rate.amount));
  if (faults.length > 0) throw new UnusableProblem(faults);
}

function amountFaults(what: string, text: string): string[] {
  return isDecimalText(text) && !text.startsWith("-") ? [] : [`${what} is decimal text, not below zero`];
}

function isCount(value: number, least: number): boolean {
  return Number.isSafeInteger(value) && value >= least && value <= 10_000_000;
}
