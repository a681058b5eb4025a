import { compareExact, type Exact, exactOf } from "@landfast/rules";
import { decimalOf, decimalText, isDecimalText, minus, over, plus, times, ZERO } from "../money/decimal.js";
import { commonCurrency, type Money, moneyOf } from "../money/money.js";
import { breakAt, eachAt, type ItemPrice, priceProblems } from "../prices/item-price.js";
import { byText } from "../problem/canonical-problem.js";
import { UnusableProblem } from "../problem/check-problem.js";
import { breakEven } from "./break-even.js";
import type { Economics, PriceUsed, WayCost, WayLine } from "./economics.js";
import type { EconomicsQuestion, MadeJoints, OnceCost, WayOfMaking } from "./economics-question.js";

/**
 * Two ways to make the same joints: parts, extras, hours, tools, dies, set-up, number of part numbers, and from how many
 * joints on which is cheaper.
 *
 * Nothing is built in: a price, an hour or a hire that was not given is null, everything that rests on it is null, and
 * the answer names it. Sums are exact; the break-even is that of joints in the same proportions as these, at the prices
 * that the job's own quantities reach.
 * Worked: 10 joints. Mechanical: part 20.00, 0.4 h. Compression: part 8.00, 0.45 h, press and die 400.00 once. At 60.00
 * an hour 44.00 and 35.00 a joint; 440.00 and 350.00 + 400.00 = 750.00 for the job; 400 / 9 = 44.4 joints, so
 * compression from 45 joints on.
 * @throws UnusableProblem with every fault; UnlikeCurrencies.
 */
export function compareWays(question: EconomicsQuestion): Economics {
  refuseFaults(question);
  const { parts, labourRate = null } = question;
  const prices = new Map(parts.map(({ partNumber, price }) => [partNumber, price ?? null]));
  const currency = currencyOf(question);
  const rate = labourRate === null ? null : decimalOf(labourRate.amount);
  const joints = jointsOf(question.first);
  const [first, second] = [question.first, question.second].map((way) => workedWay(way, prices, rate));
  if (first === undefined || second === undefined) throw new RangeError("two ways are compared");
  const [one, other] = [wayCost(first, currency), wayCost(second, currency)];
  const difference = first.total === null || second.total === null ? null : minus(first.total, second.total);
  return {
    joints,
    first: one,
    second: other,
    labourRate,
    currency,
    difference: difference === null || currency === null ? null : moneyOf(difference, currency),
    cheaper: difference === null ? null : cheaperOf(difference, one.name, other.name),
    breakEven: crossing(first, second, joints),
    assumptions: [
      "joints in the same proportions as those listed",
      "each part at the price that the job's own quantity reaches; whole packs and spares are left to the parts list",
      ...(rate === null ? ["no labor rate was given: labor is in no sum"] : []),
      "what is paid once is paid in full by this job",
    ],
  };
}

/** A way with its figures in exact form. */
interface WorkedWay {
  readonly way: WayOfMaking;
  readonly lines: readonly WorkedLine[];
  readonly prices: readonly (Omit<PriceUsed, "each"> & { readonly each: Exact | null })[];
  readonly labourIsCosted: boolean;
  readonly everyJoint: Exact | null;
  readonly once: Exact | null;
  readonly total: Exact | null;
}

interface WorkedLine {
  readonly line: MadeJoints;
  readonly parts: Exact | null;
  readonly extras: Exact | null;
  readonly hours: Exact | null;
  /** null: not known, or not costed. */
  readonly labour: Exact | null;
  readonly each: Exact | null;
}

function workedWay(way: WayOfMaking, prices: ReadonlyMap<string, ItemPrice | null>, rate: Exact | null): WorkedWay {
  const counts = new Map<string, number>();
  for (const { partNumber, joints, partsPerJoint } of way.lines)
    counts.set(partNumber, (counts.get(partNumber) ?? 0) + joints * partsPerJoint);
  const used = [...counts]
    .sort(([a], [b]) => byText(a, b))
    .map(([partNumber, parts]) => ({ partNumber, parts, ...priceAt(prices.get(partNumber) ?? null, parts) }));
  const eachOf = new Map(used.map(({ partNumber, each }) => [partNumber, each]));
  const lines = way.lines
    .toSorted((a, b) => byText(a.id, b.id))
    .map((line): WorkedLine => {
      const price = eachOf.get(line.partNumber) ?? null;
      const parts = price === null ? null : times(price, exactOf(line.partsPerJoint));
      const extras = line.extras === undefined ? null : sumOf(line.extras.map(({ costEach }) => exactMoney(costEach)));
      const hours = line.labourHours === undefined ? null : exactOf(line.labourHours);
      const labour = rate === null || hours === null ? null : times(rate, hours);
      return { line, parts, extras, hours, labour, each: sumOf([parts, extras, ...(rate === null ? [] : [labour])]) };
    });
  const everyJoint = sumOf(lines.map(({ line, each }) => forAll(line, each)));
  const once = sumOf(way.once.map(paidOnce));
  return {
    way,
    lines,
    prices: used,
    labourIsCosted: rate !== null,
    everyJoint,
    once,
    total: sumOf([everyJoint, once]),
  };
}

/** The price of one part at the break that so many reach; below the smallest quantity sold, at that quantity's. */
function priceAt(price: ItemPrice | null, parts: number): { each: Exact | null; breakFrom: number | null } {
  const reached = price === null ? null : (breakAt(price, parts) ?? price.breaks[0] ?? null);
  return price === null || reached === null
    ? { each: null, breakFrom: null }
    : { each: eachAt(price, reached.amount), breakFrom: reached.from };
}

function wayCost(worked: WorkedWay, currency: string | null): WayCost {
  const { way, lines, prices, labourIsCosted } = worked;
  const money = (value: Exact | null): Money | null =>
    value === null || currency === null ? null : moneyOf(value, currency);
  const sumLines = (pick: (line: WorkedLine) => Exact | null): Exact | null =>
    sumOf(lines.map((one) => forAll(one.line, pick(one))));
  const onceOf = (...kinds: readonly string[]): Money | null =>
    money(sumOf(way.once.filter(({ kind }) => kinds.includes(kind)).map(paidOnce)));
  const hours = sumLines((line) => line.hours);
  return {
    name: way.name,
    joints: jointsOf(way),
    partNumbers: prices.length,
    prices: prices.map(({ partNumber, parts, each, breakFrom }) => ({
      partNumber,
      parts,
      each: money(each),
      breakFrom,
    })),
    lines: lines.map(
      ({ line, parts, extras, hours: hoursEach, labour, each }): WayLine => ({
        id: line.id,
        joints: line.joints,
        partNumber: line.partNumber,
        partsEach: money(parts),
        extrasEach: money(extras),
        hoursEach: hoursEach === null ? null : decimalText(hoursEach),
        labourEach: money(labour),
        costEach: money(each),
      }),
    ),
    hours: hours === null ? null : decimalText(hours),
    parts: money(sumLines((line) => line.parts)),
    extras: money(sumLines((line) => line.extras)),
    labour: labourIsCosted ? money(sumLines((line) => line.labour)) : null,
    once: way.once.map(({ what, kind, cost, owned = false }) => ({ what, kind, cost, owned })),
    tools: onceOf("tool", "die"),
    setUp: onceOf("set-up"),
    everyJoint: money(worked.everyJoint),
    onceSum: money(worked.once),
    total: money(worked.total),
    unknown: unknownIn(worked),
  };
}

function unknownIn({ way, lines, prices, labourIsCosted }: WorkedWay): string[] {
  const idsOf = (isOpen: (line: WorkedLine) => boolean): string =>
    lines
      .filter(isOpen)
      .map(({ line }) => line.id)
      .join(", ");
  const extras = idsOf((one) => one.extras === null);
  const hours = idsOf((one) => one.hours === null);
  return [
    ...prices.flatMap(({ partNumber, each }) => (each === null ? [`${partNumber} has no price`] : [])),
    ...(extras === "" ? [] : [`what is needed besides the connector has no price, or was not stated: ${extras}`]),
    ...(hours === "" ? [] : [`no labor hours: ${hours}`]),
    ...(labourIsCosted ? [] : ["no labor rate"]),
    ...way.once.flatMap((one) => (paidOnce(one) === null ? [`${one.what} has no cost`] : [])),
  ];
}

function crossing(first: WorkedWay, second: WorkedWay, joints: number): Economics["breakEven"] {
  const sides = [first, second].map(({ way, everyJoint, once }) =>
    everyJoint === null || once === null ? null : { name: way.name, each: over(everyJoint, exactOf(joints)), once },
  );
  const [one, other] = sides;
  if (one == null || other == null) {
    const open = [first, second].filter((_, at) => sides[at] === null).map(({ way }) => way.name);
    return { kind: "not-known", because: `the cost of ${open.join(" and of ")} is not known` };
  }
  return breakEven(one, other);
}

function cheaperOf(difference: Exact, first: string, second: string): string | null {
  const sign = compareExact(difference, ZERO);
  return sign === 0 ? null : sign < 0 ? first : second;
}

function forAll({ joints }: MadeJoints, each: Exact | null): Exact | null {
  return each === null ? null : times(each, exactOf(joints));
}

function paidOnce({ cost, owned }: OnceCost): Exact | null {
  return owned === true ? ZERO : exactMoney(cost);
}

function exactMoney(money: Money | null): Exact | null {
  return money === null ? null : decimalOf(money.amount);
}

function sumOf(values: readonly (Exact | null)[]): Exact | null {
  let sum = ZERO;
  for (const value of values) {
    if (value === null) return null;
    sum = plus(sum, value);
  }
  return sum;
}

function jointsOf({ lines }: WayOfMaking): number {
  return lines.reduce((sum, { joints }) => sum + joints, 0);
}

function moneysIn({ lines, once }: WayOfMaking): Money[] {
  return [
    ...lines.flatMap(({ extras = [] }) => extras.map(({ costEach }) => costEach)),
    ...once.map(({ cost }) => cost),
  ].filter((one) => one !== null);
}

function currencyOf({ first, second, parts, labourRate }: EconomicsQuestion): string | null {
  return commonCurrency([
    ...parts.flatMap(({ price }) => price?.currency ?? []),
    ...[...moneysIn(first), ...moneysIn(second)].map(({ currency }) => currency),
    ...(labourRate === undefined ? [] : [labourRate.currency]),
  ]);
}

function refuseFaults({ first, second, parts, labourRate }: EconomicsQuestion): void {
  const faults: string[] = [];
  const known = new Set(parts.map(({ partNumber }) => partNumber));
  if (known.size < parts.length) faults.push("a part stands there more than once");
  for (const { partNumber, price } of parts)
    if (price !== undefined) faults.push(...priceProblems(price).map((one) => `part ${partNumber}: ${one}`));
  if (first.name === second.name) faults.push("the two ways have names of their own");
  for (const way of [first, second]) {
    if (way.lines.length === 0) faults.push(`${way.name}: there are no joints`);
    if (new Set(way.lines.map(({ id }) => id)).size < way.lines.length) faults.push(`${way.name}: an id stands twice`);
    for (const { id, joints, partsPerJoint, partNumber, labourHours = 0 } of way.lines) {
      if (![joints, partsPerJoint].every((one) => Number.isSafeInteger(one) && one >= 1 && one <= 10_000_000))
        faults.push(`${way.name}, ${id}: joints and parts are whole numbers from 1 up`);
      if (!(Number.isFinite(labourHours) && labourHours >= 0))
        faults.push(`${way.name}, ${id}: labourHours is a number, not below 0`);
      if (!known.has(partNumber)) faults.push(`${way.name}, ${id}: part ${partNumber} is not described`);
    }
    for (const { amount } of moneysIn(way))
      if (!isDecimalText(amount) || amount.startsWith("-"))
        faults.push(`${way.name}: an amount is decimal text, not below zero: ${JSON.stringify(amount)}`);
  }
  if (jointsOf(first) !== jointsOf(second) || idsOf(first) !== idsOf(second))
    faults.push("both ways make the same joints: the same ids with the same numbers");
  if (labourRate !== undefined && (!isDecimalText(labourRate.amount) || labourRate.amount.startsWith("-")))
    faults.push("the labor rate is decimal text, not below zero");
  if (faults.length > 0) throw new UnusableProblem(faults);
}

function idsOf({ lines }: WayOfMaking): string {
  return JSON.stringify(lines.map(({ id, joints }) => [id, joints]).sort(([a], [b]) => byText(String(a), String(b))));
}
