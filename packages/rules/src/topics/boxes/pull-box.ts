import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { CalculationSheet, isClosed, shown } from "../../core/calculation-sheet.js";
import type { Citation } from "../../core/citation.js";
import { compareSizes, sizeOf } from "../../core/conductor-size.js";
import type { Edition } from "../../core/edition.js";
import { compareExact } from "../../core/exact.js";
import type { Step } from "../../core/finding.js";
import type { Length } from "../../core/quantity.js";
import { cellForSize, isRefused } from "../../core/table.js";
import { UnusableFact } from "../../core/unusable-fact.js";
import { tradeSizeOf } from "./trade-size.js";

const NAME = "pull-box";

/** "back" is the wall opposite the removable cover. */
export type BoxWall = "left" | "right" | "top" | "bottom" | "back";
export const BOX_WALLS: readonly BoxWall[] = ["left", "right", "top", "bottom", "back"];

export interface PullBoxEntry {
  /** Unique in the box: "A". */
  readonly id: string;
  readonly wall: BoxWall;
  /** Rows of one wall are numbered from 1; entries side by side in one line are in one row. */
  readonly row: number;
  /** Of the raceway, "2-1/2"; for a cable, of the raceway that its conductors would take. */
  readonly tradeSize: string;
}

export interface PullBoxPull {
  /** Ids of the two entries that the same conductors pass. */
  readonly from: string;
  readonly to: string;
  /** Whether the conductors are spliced in the box. */
  readonly spliced: boolean;
  /** Between the two entries, from edge to edge. Needed to judge a box for every pull that is not straight. */
  readonly apart?: Length;
}

export interface PullBoxQuestion {
  readonly largestConductor: string;
  readonly entries: readonly PullBoxEntry[];
  readonly pulls: readonly PullBoxPull[];
  /** Inside. Absent: only the least dimensions are answered. */
  readonly box?: { readonly width: Length; readonly height: Length; readonly depth?: Length };
}

const STRAIGHT_TIMES = 8;
const ANGLE_TIMES = 6;
/** The rule is for conductors of this size and larger. */
const FROM_SIZE = sizeOf("4 AWG");

/**
 * How large must a pull or junction box be, and is this one?
 *
 * NFPA 70 314.28(A) (2017, 2020, 2023), for conductors of 4 AWG and larger: a straight pull takes 8 times the larger
 * trade size between the two walls. An angle or U pull or a splice takes, from the wall of the entry to the wall opposite, 6
 * times the largest trade size of its row plus the trade sizes of all others in that row, for the row that asks most; and 6
 * times the larger trade size between the two entries. From the wall opposite the cover, Table 312.6(A) for one wire per
 * terminal. Inches.
 * Worked: an angle pull, two raceways of trade size 3 beside each other on each wall: 6 x 3 + 3 = 21 in both ways, and
 * 18 in between entries.
 * Silent: the number of conductors, and boxes for more than 1000 V, which have a rule of their own.
 */
export const pullBox: Calculation<PullBoxQuestion> = {
  name: NAME,
  title: "Dimensions of a pull or junction box",
  clauses: ["pullBoxes", "pullStraight", "pullAngle", "bendingSide", "boxConductors"],
  needs: ["question/largestConductor", "question/entries", "question/pulls", "question/box"],
  cannotSee: "conductors over 1000 V, and marked boxes that are listed for a certain number of conductors",
  answer(question, basis, edition) {
    const sheet = new CalculationSheet(NAME, basis);
    const { clauses } = edition;
    const size = sheet.given("largest conductor", sizeOf(question.largestConductor).text, "question/largestConductor");
    if (compareSizes(sizeOf(String(size.value)), FROM_SIZE) < 0)
      return sheet.refuse(
        "NOT_COVERED",
        "A box with conductors smaller than 4 AWG is judged by its volume: ask for the box fill.",
        clauses.boxConductors,
      );
    const entries = entriesOf(sheet, question);
    const box: BoxAtWork = { sheet, question, edition, entries, size, times: timesOf(sheet, edition) };
    const least = leastDimensions(box);
    if (isClosed(least)) return least;
    return question.box === undefined ? dimensions(box, least) : judgement(box, least, question.box);
  },
};

interface EntryAtWork {
  readonly entry: PullBoxEntry;
  /** Trade size in inches. */
  readonly inches: Step;
}

interface BoxAtWork {
  readonly sheet: CalculationSheet;
  readonly question: PullBoxQuestion;
  readonly edition: Edition;
  readonly entries: ReadonlyMap<string, EntryAtWork>;
  readonly size: Step;
  readonly times: { readonly straight: Step; readonly angle: Step };
}

/** A least dimension in inches and the clause that asks for it. */
interface Least {
  readonly step: Step;
  readonly cite: Citation;
}

interface LeastDimensions {
  readonly width?: Least;
  readonly height?: Least;
  readonly depth?: Least;
  /** Between the entries of each pull that is not straight; indexes are those of the pulls. */
  readonly apart: readonly { readonly pull: number; readonly least: Least }[];
}

/** @throws UnusableFact for no pull, an id that is not unique or names no entry, or a pull from an entry to itself. */
function entriesOf(sheet: CalculationSheet, { entries, pulls }: PullBoxQuestion): ReadonlyMap<string, EntryAtWork> {
  const known = new Map<string, EntryAtWork>();
  for (const [index, entry] of entries.entries()) {
    if (known.has(entry.id)) throw new UnusableFact("question/entries", `names "${entry.id}" twice`, "each id once");
    const { inches, shown: arithmetic } = tradeSizeOf(entry.tradeSize);
    const given = sheet.given(
      `trade size of ${entry.id}`,
      entry.tradeSize,
      `question/entries/${String(index)}/tradeSize`,
    );
    known.set(entry.id, {
      entry,
      inches: sheet.exactly(`trade size of ${entry.id} in inches`, inches, "in", [given], "trade size", arithmetic),
    });
  }
  if (pulls.length === 0)
    throw new UnusableFact("question/pulls", "must name one pull or more", "a list of one pull or more");
  for (const { from, to } of pulls) {
    if (from === to)
      throw new UnusableFact("question/pulls", `goes from "${from}" to itself`, "pulls between two different entries");
    for (const id of [from, to])
      if (!known.has(id)) throw new UnusableFact("question/pulls", `names no entry "${id}"`, "ids of the entries");
  }
  return known;
}

function timesOf(sheet: CalculationSheet, { clauses }: Edition): BoxAtWork["times"] {
  return {
    straight: sheet.state("times the trade size, straight pull", STRAIGHT_TIMES, clauses.pullStraight, ""),
    angle: sheet.state("times the trade size, angle or U pull or splice", ANGLE_TIMES, clauses.pullAngle, ""),
  };
}

function leastDimensions(box: BoxAtWork): LeastDimensions | CalculationFinding {
  const across: { width: Least[]; height: Least[] } = { width: [], height: [] };
  const apart: { pull: number; least: Least }[] = [];
  const turned = new Set<string>();
  for (const [index, pull] of box.question.pulls.entries()) {
    const from = entryOf(box, pull.from);
    const to = entryOf(box, pull.to);
    const larger = largerOf(box, from, to);
    if (!pull.spliced && isOpposite(from.entry.wall, to.entry.wall)) {
      across[axisOf(from.entry.wall)].push(straightPull(box, larger, `${pull.from} to ${pull.to}`));
      continue;
    }
    turned.add(pull.from).add(pull.to);
    apart.push({ pull: index, least: between(box, larger, `${pull.from} and ${pull.to}`) });
  }
  for (const row of rowsOf(box)) {
    const [{ entry }] = row;
    if (entry.wall === "back" || !row.some((one) => turned.has(one.entry.id))) continue;
    across[axisOf(entry.wall)].push(acrossFrom(box, row));
  }
  const depth = depthOf(box);
  if (depth !== undefined && isClosed(depth)) return depth;
  const width = mostOf(box, "least inside width", across.width);
  const height = mostOf(box, "least inside height", across.height);
  return { ...(width && { width }), ...(height && { height }), ...(depth && { depth }), apart };
}

function straightPull({ sheet, edition, times }: BoxAtWork, larger: Step, name: string): Least {
  const cite = edition.clauses.pullStraight;
  return { step: sheet.multiply(`straight pull ${name}`, [times.straight, larger], "in", cite), cite };
}

function between({ sheet, edition, times }: BoxAtWork, larger: Step, name: string): Least {
  const cite = edition.clauses.pullAngle;
  return { step: sheet.multiply(`least distance between ${name}`, [times.angle, larger], "in", cite), cite };
}

/** 6 times the largest of the row, and every other trade size of the row once. */
function acrossFrom({ sheet, edition, times }: BoxAtWork, row: Row): Least {
  const cite = edition.clauses.pullAngle;
  const [first] = row;
  const [largest = first, ...others] = [...row].sort((a, b) =>
    compareExact(sheet.exact(b.inches), sheet.exact(a.inches)),
  );
  const { wall, row: number } = largest.entry;
  const name = `from the ${wall} wall, row ${String(number)}`;
  const six = sheet.multiply(
    `${String(ANGLE_TIMES)} times the largest ${name}`,
    [times.angle, largest.inches],
    "in",
    cite,
  );
  if (others.length === 0) return { step: six, cite };
  return { step: sheet.add(`distance ${name}`, [six, ...others.map(({ inches }) => inches)], "in", cite), cite };
}

/** From a wall opposite the cover the bending space for one wire per terminal is enough. */
function depthOf({ sheet, edition, entries, size }: BoxAtWork): Least | CalculationFinding | undefined {
  if ([...entries.values()].every(({ entry }) => entry.wall !== "back")) return undefined;
  const table = edition.tables.bendingSide;
  const cell = cellForSize(table, String(size.value), "wires1");
  if (isRefused(cell)) return sheet.outsideTable(cell, table.cite);
  return { step: sheet.read("least inside depth", cell, [size]), cite: edition.clauses.pullAngle };
}

function mostOf({ sheet }: BoxAtWork, label: string, leasts: readonly Least[]): Least | undefined {
  let most: Least | undefined;
  for (const least of leasts)
    if (most === undefined || compareExact(sheet.exact(least.step), sheet.exact(most.step)) > 0) most = least;
  if (most === undefined) return undefined;
  const because = leasts.length === 1 ? "the only pull that asks for it" : "the pull or row that asks most";
  const step = sheet.conclude(
    label,
    most.step.value,
    leasts.map((least) => least.step),
    because,
    most.cite,
    "in",
  );
  return { step, cite: most.cite };
}

function dimensions({ sheet, question, edition }: BoxAtWork, least: LeastDimensions): CalculationFinding {
  const named = namedLeasts(question, least);
  const texts = named.map(({ name, least: { step } }) => `${name} ${shown(step.value)} in`);
  const step = sheet.conclude(
    "least dimensions",
    texts,
    named.map((one) => one.least.step),
    "each from the pull or row that asks most",
    edition.clauses.pullBoxes,
  );
  return sheet.finish({
    sentence: `The box needs at least: ${texts.join(", ")}.`,
    cite: edition.clauses.pullBoxes,
    results: [{ name: "least dimensions", step }, ...named.map((one) => ({ name: one.name, step: one.least.step }))],
  });
}

function judgement(
  { sheet, question, edition }: BoxAtWork,
  least: LeastDimensions,
  box: NonNullable<PullBoxQuestion["box"]>,
): CalculationFinding {
  const short: string[] = [];
  const compared: Step[] = [];
  let unknown: { readonly path: string; readonly because: string; readonly cite: Citation } | undefined;
  const judge = (name: string, wanted: Least | undefined, length: Length | undefined, path: string): void => {
    if (wanted === undefined) return;
    if (length === undefined) {
      unknown ??= {
        path,
        because: `At least ${shown(wanted.step.value)} in is needed for the ${name}, and it is not given.`,
        cite: wanted.cite,
      };
      return;
    }
    const offered = sheet.length(name, length, path, "in");
    if (!sheet.compare(`${name} is enough`, offered, ">=", wanted.step, wanted.cite))
      short.push(`${name} ${shown(offered.value)} in of ${shown(wanted.step.value)} in`);
    compared.push(sheet.last);
  };
  judge("inside width", least.width, box.width, "question/box/width");
  judge("inside height", least.height, box.height, "question/box/height");
  judge("inside depth", least.depth, box.depth, "question/box/depth");
  for (const { pull, least: wanted } of least.apart) {
    const { from, to, apart } = question.pulls[pull] ?? {};
    judge(`distance between ${String(from)} and ${String(to)}`, wanted, apart, `question/pulls/${String(pull)}/apart`);
  }
  // A dimension that is too short settles it, whatever the unknown one is.
  if (short.length === 0 && unknown !== undefined) return sheet.ask(unknown.path, unknown.because, unknown.cite);
  const fits = sheet.conclude(
    "the box is large enough",
    short.length === 0,
    compared,
    short.length === 0 ? "every dimension that is asked for is there" : "a dimension that is asked for is not there",
    edition.clauses.pullBoxes,
  );
  return sheet.finish({
    sentence: short.length === 0 ? "The box is large enough." : `The box is too small: ${short.join(", ")}.`,
    cite: edition.clauses.pullBoxes,
    results: [
      { name: "box is large enough", step: fits },
      ...namedLeasts(question, least).map((one) => ({ name: one.name, step: one.least.step })),
    ],
  });
}

function namedLeasts(
  { pulls }: PullBoxQuestion,
  { width, height, depth, apart }: LeastDimensions,
): readonly { readonly name: string; readonly least: Least }[] {
  return [
    ...(width === undefined ? [] : [{ name: "width", least: width }]),
    ...(height === undefined ? [] : [{ name: "height", least: height }]),
    ...(depth === undefined ? [] : [{ name: "depth", least: depth }]),
    ...apart.map(({ pull, least }) => {
      const { from, to } = pulls[pull] ?? {};
      return { name: `between ${String(from)} and ${String(to)}`, least };
    }),
  ];
}

/** The entries of one row; one or more. */
type Row = [EntryAtWork, ...EntryAtWork[]];

function rowsOf({ entries }: BoxAtWork): readonly Row[] {
  const rows = new Map<string, Row>();
  for (const one of entries.values()) {
    const key = `${one.entry.wall} ${String(one.entry.row)}`;
    const row = rows.get(key);
    if (row === undefined) rows.set(key, [one]);
    else row.push(one);
  }
  return [...rows.values()];
}

function entryOf({ entries }: BoxAtWork, id: string): EntryAtWork {
  const found = entries.get(id);
  if (found === undefined) throw new Error(`no entry "${id}"`);
  return found;
}

function largerOf({ sheet }: BoxAtWork, a: EntryAtWork, b: EntryAtWork): Step {
  return compareExact(sheet.exact(a.inches), sheet.exact(b.inches)) >= 0 ? a.inches : b.inches;
}

function isOpposite(a: BoxWall, b: BoxWall): boolean {
  return OPPOSITE[a] === b;
}

/** Across which dimension a pull from this wall goes. */
function axisOf(wall: BoxWall): "width" | "height" {
  return wall === "left" || wall === "right" ? "width" : "height";
}

const OPPOSITE: Readonly<Partial<Record<BoxWall, BoxWall>>> = {
  left: "right",
  right: "left",
  top: "bottom",
  bottom: "top",
};
