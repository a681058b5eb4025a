import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { CalculationSheet, isClosed, shown } from "../../core/calculation-sheet.js";
import type { Citation } from "../../core/citation.js";
import { compareSizes, sizeOf } from "../../core/conductor-size.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import { UnusableFact } from "../../core/unusable-fact.js";

const NAME = "box-fill";

/** What a conductor does in the box, which decides how often it counts. */
export type BoxConductorManner =
  /** Comes in and ends or is spliced: once. */
  | "ends-or-spliced"
  /** Runs through without a splice: once. */
  | "passes-through"
  /** Runs through in an unbroken loop of at least twice the length the code wants free: twice. */
  | "unbroken-loop"
  /** No part of it leaves the box, as a pigtail: not at all. */
  | "stays-inside";
export const BOX_CONDUCTOR_MANNERS: readonly BoxConductorManner[] = [
  "ends-or-spliced",
  "passes-through",
  "unbroken-loop",
  "stays-inside",
];

export interface BoxFillQuestion {
  /** Volume marked on the box with its rings and covers. Absent: only the volume needed is answered. */
  readonly boxVolumeIn3?: number;
  /** All but the equipment grounds. */
  readonly conductors: readonly {
    readonly count: number;
    readonly size: string;
    readonly manner: BoxConductorManner;
  }[];
  /** Equipment grounds and equipment bonding jumpers that enter the box; "isolated" those of isolated receptacles. */
  readonly equipmentGrounds: readonly {
    readonly count: number;
    readonly size: string;
    readonly isolated?: boolean;
  }[];
  /** Cable clamps inside the box, the maker's or the box's own. */
  readonly internalClamps: boolean;
  /** Kinds of luminaire studs and hickeys in the box. */
  readonly supportFittings: number;
  /** Each yoke or strap: the largest conductor that ends on it, and how many gangs wide it is. */
  readonly devices: readonly { readonly largestConductor: string; readonly gangs: number }[];
  readonly terminalBlocks?: readonly { readonly largestConductor: string }[];
}

/** Allowances of one conductor by what it does. */
const ALLOWANCES: Readonly<Record<BoxConductorManner, number>> = {
  "ends-or-spliced": 1,
  "passes-through": 1,
  "unbroken-loop": 2,
  "stays-inside": 0,
};
const DEVICE_ALLOWANCES = 2;
/** From this size on a box is judged by its dimensions. */
const DIMENSIONED_FROM = sizeOf("4 AWG");

/**
 * How much volume do the wires and fittings of a box need, and does the box have it?
 *
 * NFPA 70 314.16(B) (2017, 2020, 2023): an allowance by size for each conductor; one for all internal clamps and one for
 * each kind of support fitting, by the largest conductor in the box; two for each gang of a device, by the largest
 * conductor on it; equipment grounds together one (2017), or one for up to four and a quarter for each further one
 * (2020, 2023), by the largest of them; a terminal block one (2023). Cubic inches.
 * Worked: two 14-2 cables with grounds, internal clamps and a receptacle: 4 x 2 + 2 + 2 x 2 + 2 = 16 in3.
 * Silent: the few small fixture wires and the ground of a domed luminaire's canopy may be left out of the question.
 */
export const boxFill: Calculation<BoxFillQuestion> = {
  name: NAME,
  title: "Fill of an outlet, device or junction box",
  clauses: [
    "boxConductors",
    "boxClamps",
    "boxSupportFittings",
    "boxDevices",
    "boxGrounds",
    "boxTerminalBlocks",
    "pullBoxes",
  ],
  needs: [
    "question/boxVolumeIn3",
    "question/conductors",
    "question/equipmentGrounds",
    "question/internalClamps",
    "question/supportFittings",
    "question/devices",
    "question/terminalBlocks",
  ],
  cannotSee: "parts that the maker's instructions give a volume of their own",
  answer(question, basis, edition) {
    const sheet = new CalculationSheet(NAME, basis);
    const largest = largestConductor(question);
    if (largest === undefined)
      throw new UnusableFact(
        "question/conductors",
        "must name one conductor or more",
        "a list of one kind or more, here or in equipmentGrounds",
      );
    if (compareSizes(sizeOf(largest), DIMENSIONED_FROM) >= 0) return tooLarge(sheet, largest, edition);
    const counting: Counting = { sheet, question, edition, largest, parts: [] };
    const refusal =
      countConductors(counting) ??
      countFittings(counting) ??
      countDevices(counting) ??
      countGrounds(counting) ??
      countTerminalBlocks(counting);
    return refusal ?? concluded(counting);
  },
};

interface Counting {
  readonly sheet: CalculationSheet;
  readonly question: BoxFillQuestion;
  readonly edition: Edition;
  /** Largest conductor of any kind in the box. */
  readonly largest: string;
  /** Volumes to be added up. */
  readonly parts: Step[];
}

function largestConductor({ conductors, equipmentGrounds }: BoxFillQuestion): string | undefined {
  return largestOf([...conductors, ...equipmentGrounds]);
}

function largestOf(conductors: readonly { readonly size: string }[]): string | undefined {
  let largest: string | undefined;
  for (const { size } of conductors)
    if (largest === undefined || compareSizes(sizeOf(size), sizeOf(largest)) > 0) largest = size;
  return largest;
}

function tooLarge(sheet: CalculationSheet, largest: string, { clauses }: Edition): CalculationFinding {
  sheet.given("largest conductor", largest, "question/conductors");
  return sheet.refuse(
    "NOT_COVERED",
    `A box with ${largest} is judged by its dimensions: ask for the pull box.`,
    clauses.pullBoxes,
  );
}

function countConductors(counting: Counting): CalculationFinding | undefined {
  const { sheet, question, edition } = counting;
  const cite = edition.clauses.boxConductors;
  for (const [index, { count, size, manner }] of question.conductors.entries()) {
    const path = `question/conductors/${String(index)}`;
    const number = sheet.count("number of these conductors", count, `${path}/count`, "conductors");
    const does = sheet.given("what they do in the box", manner, `${path}/manner`);
    const each = sheet.state("allowances of each", ALLOWANCES[manner], cite, "allowances", [does]);
    const refusal = add(counting, "volume of these conductors", [number, each], size, `${path}/size`, cite);
    if (refusal !== undefined) return refusal;
  }
  return undefined;
}

function countFittings(counting: Counting): CalculationFinding | undefined {
  const { sheet, question, edition, largest } = counting;
  const { boxClamps, boxSupportFittings } = edition.clauses;
  if (question.internalClamps) {
    const clamps = sheet.given("internal clamps", true, "question/internalClamps");
    const one = sheet.state("allowances of all internal clamps together", 1, boxClamps, "allowances", [clamps]);
    const refusal = add(counting, "volume of the clamps", [one], largest, "question/conductors", boxClamps);
    if (refusal !== undefined) return refusal;
  }
  if (question.supportFittings === 0) return undefined;
  const kinds = sheet.count("kinds of support fittings", question.supportFittings, "question/supportFittings", "kinds");
  const one = sheet.state("allowances of each kind", 1, boxSupportFittings, "allowances");
  return add(
    counting,
    "volume of the support fittings",
    [kinds, one],
    largest,
    "question/conductors",
    boxSupportFittings,
  );
}

function countDevices(counting: Counting): CalculationFinding | undefined {
  const { sheet, question, edition } = counting;
  const cite = edition.clauses.boxDevices;
  for (const [index, { largestConductor: size, gangs }] of question.devices.entries()) {
    const path = `question/devices/${String(index)}`;
    const wide = sheet.count("gangs of the device", gangs, `${path}/gangs`, "gangs");
    const each = sheet.state("allowances of each gang", DEVICE_ALLOWANCES, cite, "allowances");
    const refusal = add(counting, "volume of the device", [wide, each], size, `${path}/largestConductor`, cite);
    if (refusal !== undefined) return refusal;
  }
  return undefined;
}

function countGrounds(counting: Counting): CalculationFinding | undefined {
  const { question, edition } = counting;
  const isApart = ({ isolated }: { readonly isolated?: boolean }): boolean =>
    edition.boxFill.isolatedGroundsApart && isolated === true;
  const counted = question.equipmentGrounds.filter((ground) => !isApart(ground));
  const isolated = question.equipmentGrounds.filter(isApart);
  return (
    groundSet(counting, counted, "equipment grounds") ?? groundSet(counting, isolated, "isolated equipment grounds")
  );
}

function groundSet(
  counting: Counting,
  grounds: BoxFillQuestion["equipmentGrounds"],
  name: string,
): CalculationFinding | undefined {
  const { sheet, edition } = counting;
  const cite = edition.clauses.boxGrounds;
  const largest = largestOf(grounds);
  if (largest === undefined) return undefined;
  const { groundsInOneAllowance, furtherGroundAllowance } = edition.boxFill;
  const counts = grounds.map(({ count }) =>
    sheet.count(`number of ${name}`, count, "question/equipmentGrounds", "grounds"),
  );
  const one = sheet.state(`allowances of the ${name} together`, 1, cite, "allowances");
  const path = "question/equipmentGrounds";
  if (groundsInOneAllowance === "all") return add(counting, `volume of the ${name}`, [one], largest, path, cite);
  const [only] = counts;
  const number = counts.length === 1 && only !== undefined ? only : sheet.add(`all ${name}`, counts, "grounds");
  const most = sheet.state("grounds in one allowance", groundsInOneAllowance, cite, "grounds");
  if (sheet.compare("one allowance covers them", number, "<=", most, cite))
    return add(counting, `volume of the ${name}`, [one], largest, path, cite);
  const further = sheet.subtract("grounds beyond them", number, most, "grounds");
  const each = sheet.state("allowance of each further ground", furtherGroundAllowance, cite, "allowances");
  const more = sheet.multiply("allowances of the further grounds", [further, each], "allowances");
  const allowances = sheet.add(`allowances of the ${name}`, [one, more], "allowances");
  return add(counting, `volume of the ${name}`, [allowances], largest, path, cite);
}

function countTerminalBlocks(counting: Counting): CalculationFinding | undefined {
  const { sheet, question, edition } = counting;
  const { terminalBlockAllowance } = edition.boxFill;
  if (terminalBlockAllowance === 0) return undefined;
  const cite = edition.clauses.boxTerminalBlocks;
  for (const [index, { largestConductor: size }] of (question.terminalBlocks ?? []).entries()) {
    const path = `question/terminalBlocks/${String(index)}/largestConductor`;
    const one = sheet.state("allowances of a terminal block", terminalBlockAllowance, cite, "allowances");
    const refusal = add(counting, "volume of the terminal block", [one], size, path, cite);
    if (refusal !== undefined) return refusal;
  }
  return undefined;
}

/** Reads the allowance of the size, multiplies it and puts it with the others. */
function add(
  { sheet, edition, parts }: Counting,
  label: string,
  factors: readonly Step[],
  size: string,
  path: string,
  cite: Citation,
): CalculationFinding | undefined {
  const given = sheet.given("size that sets the allowance", sizeOf(size).text, path);
  const allowance = sheet.readAt(
    "volume of one allowance",
    edition.tables.boxVolume,
    String(given.value),
    "volumeIn3",
    [given],
  );
  if (isClosed(allowance)) return allowance;
  parts.push(sheet.multiply(label, [...factors, allowance], "in3", cite));
  return undefined;
}

function concluded({ sheet, question, edition, parts }: Counting): CalculationFinding {
  const { cite } = edition.tables.boxVolume;
  const needed = sheet.add("volume needed", parts, "in3", cite);
  const advice =
    edition.boxFill.terminalBlockAllowance === 0 && (question.terminalBlocks ?? []).length > 0
      ? ["This edition names no allowance for terminal blocks; they take room all the same."]
      : [];
  if (question.boxVolumeIn3 === undefined)
    return sheet.finish({
      sentence: `The box needs ${shown(needed.value)} in3.`,
      cite,
      results: [{ name: "volume needed", step: needed }],
      advice,
    });
  const box = sheet.positive("volume of the box", question.boxVolumeIn3, "question/boxVolumeIn3", "in3");
  const left = sheet.subtract("volume left over", box, needed, "in3");
  const fits = sheet.compare("the box is large enough", needed, "<=", box, cite);
  return sheet.finish({
    sentence: fits
      ? `The box is large enough: ${shown(needed.value)} in3 of its ${shown(box.value)} in3 are needed.`
      : `The box is too small: ${shown(needed.value)} in3 are needed and it has ${shown(box.value)} in3.`,
    cite,
    results: [
      { name: "box is large enough", step: sheet.last },
      { name: "volume needed", step: needed },
      { name: "volume left over", step: left },
    ],
    advice,
  });
}
