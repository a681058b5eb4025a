/**
 * Whether a conductor suits an opening by its size, its strand form and its duty. The landing of conductors and the
 * rules that judge a landing both ask here, so that a landing chosen as good is never refused for another reason.
 */
import type { ConductorGroup, Stranding } from "./conductor.js";
import { type ConductorSize, sizeOf } from "./conductor-size.js";
import type { Opening, SizeRange } from "./connector.js";
import type { Joint } from "./joint.js";
import type { Landing } from "./rule.js";

/** "unknown": the listing does not speak of it, so it must be asked about. */
export type Fit = "fits" | "refused" | "unknown";

/** Strand forms that a range without a strand mark covers: the base case of every connector. */
export const BASE_STRANDINGS: readonly Stranding[] = Object.freeze(["class-B", "class-C"]);

/** ASTM classes with finer strands than class C. */
const FINER_THAN_C: readonly Stranding[] = ["class-D", "class-G", "class-H", "class-I", "class-K", "class-M"];

/** True when the range is listed for the strand form. */
export function namesStranding(range: SizeRange, stranding: Stranding): boolean {
  return range.strandings === "unmarked" ? BASE_STRANDINGS.includes(stranding) : range.strandings.includes(stranding);
}

/** True for a strand form with finer strands than ASTM class C. */
export function isFinerThanClassC(stranding: Stranding): boolean {
  return FINER_THAN_C.includes(stranding);
}

/**
 * Is the strand form listed in any range of the opening?
 * A list that names forms refuses the ones it does not name. A range without strand marks covers class B and C,
 * refuses finer ASTM classes, and says nothing of solid, compressed or compact. IEC classes and ASTM classes are never
 * taken for each other: a list of one kind says nothing of the other.
 */
export function strandingFit(stranding: Stranding, opening: Opening): Fit {
  const { ranges } = opening;
  if (stranding === "unknown" || ranges.length === 0) return "unknown";
  let speaksOfIt = false;
  let unmarked = false;
  for (const range of ranges) {
    if (namesStranding(range, stranding)) return "fits";
    if (range.strandings === "unmarked") unmarked = true;
    else if (speaksOf(range.strandings, stranding)) speaksOfIt = true;
  }
  if (unmarked) return isFinerThanClassC(stranding) ? "refused" : "unknown";
  return speaksOfIt ? "refused" : "unknown";
}

/** Where a size lies against one range. */
export type RangePosition = "below" | "within" | "above" | "other-series";

/** Compares by area only, ends inclusive. AWG and kcmil are one series, metric another; neither is converted. */
export function positionIn(range: SizeRange, size: ConductorSize): RangePosition {
  const from = sizeOf(range.from);
  const to = sizeOf(range.to);
  if (from.series !== size.series || to.series !== size.series) return "other-series";
  if (size.areaKcmil < from.areaKcmil) return "below";
  return size.areaKcmil <= to.areaKcmil ? "within" : "above";
}

/** "stranding-decides": no range names the strand form, so whether the size would be listed is not yet a question. */
export type SizeFit = Fit | "stranding-decides";

/**
 * Is the size within a range that is listed for the conductor's strand form? Where no range names the form, a size
 * outside every range is refused all the same.
 * @throws RangeError when a size cannot be read; callers validate sizes first.
 */
export function sizeFit(conductor: Pick<ConductorGroup, "size" | "stranding">, opening: Opening): SizeFit {
  const size = sizeOf(conductor.size);
  let named = false;
  let comparable = false;
  let comparableNamed = false;
  let withinAny = false;
  for (const range of opening.ranges) {
    const names = namesStranding(range, conductor.stranding);
    if (names) named = true;
    const position = positionIn(range, size);
    if (position === "other-series") continue;
    comparable = true;
    if (names) comparableNamed = true;
    if (position !== "within") continue;
    if (names) return "fits";
    withinAny = true;
  }
  if (!comparable) return "unknown";
  if (!named) return withinAny ? "stranding-decides" : "refused";
  return comparableNamed ? "refused" : "unknown";
}

/**
 * In a tap, does the conductor that runs through lie in a run opening and the one that leaves in a tap opening?
 * Openings without a duty take either; in a splice or a termination the duty of an opening says nothing.
 */
export function dutyFit(joint: Pick<Joint, "function" | "conductors">, group: number, opening: Opening): Fit {
  if (joint.function !== "tap" || opening.duty === undefined) return "fits";
  const duty = dutyOf(joint.conductors, group);
  if (duty === undefined) return "unknown";
  return duty === opening.duty ? "fits" : "refused";
}

/**
 * The duty of a conductor in a tap: as given; else, where all others have one and the same duty, the other one, because
 * a tap has one that runs through and one that leaves.
 */
export function dutyOf(conductors: readonly ConductorGroup[], group: number): ConductorGroup["duty"] {
  const own = conductors[group]?.duty;
  if (own !== undefined || conductors.length < 2) return own;
  const [first, second] = conductors;
  const others = group === 0 ? second?.duty : first?.duty;
  if (others === undefined) return undefined;
  for (let other = 0; other < conductors.length; other += 1)
    if (other !== group && conductors[other]?.duty !== others) return undefined;
  return others === "run" ? "tap" : "run";
}

/** Conductors of one group in one kind of opening. */
export interface LandedGroup {
  readonly group: number;
  readonly conductor: ConductorGroup;
  readonly openingIndex: number;
  readonly opening: Opening;
}

/** Each group once for each kind of opening it lies in: equal conductors in equal openings are judged once. */
export function landedGroups(landings: readonly Landing[]): LandedGroup[] {
  const kept: LandedGroup[] = [];
  for (const { openingIndex, opening, conductors } of landings)
    for (const { group, conductor } of conductors)
      if (!kept.some((one) => one.group === group && one.openingIndex === openingIndex))
        kept.push({ group, conductor, openingIndex, opening });
  return kept;
}

function isIec(stranding: Stranding): boolean {
  return stranding.startsWith("iec-");
}

function speaksOf(listed: readonly Stranding[], stranding: Stranding): boolean {
  const iec = isIec(stranding);
  return listed.some((one) => isIec(one) === iec);
}
