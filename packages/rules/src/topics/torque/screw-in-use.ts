import { conductorPath } from "../../core/conductor-path.js";
import { compareSizes, parseSize } from "../../core/conductor-size.js";
import type { Connector, Construction, Opening, Screw } from "../../core/connector.js";
import type { JointSubject, Landing } from "../../core/rule.js";

/** One screw that holds conductors of the joint, or the place where one ought to be. */
export interface ScrewInUse {
  /** Where the facts of the part stand: the head of their paths. */
  readonly origin: JointSubject["origin"];
  readonly construction: Construction;
  /** Absent: the opening names no screw, or none of that name is described. */
  readonly screw: Screw | undefined;
  readonly screwIndex: number;
  /** Ids of the openings it tightens: one, or all that one bolt clamps together. */
  readonly openings: readonly string[];
  readonly openingIndex: number;
  /** The largest conductor under it, by area, and where its size stands. */
  readonly largest: string;
  readonly largestPath: string;
}

/**
 * The screws that hold the joint's conductors, in the order of the openings; equal ones over conductors of
 * one size are said once.
 *
 * A bolt that several openings name (split bolt, piercing tap) is one bolt, set by the largest conductor under it. A set
 * screw presses into its own opening, so openings that name one set screw have one each of that kind. A conductor pin
 * lands in the equipment's terminal as a conductor of its size: that terminal's screw is in use too.
 */
export function screwsInUse(subject: JointSubject): readonly ScrewInUse[] {
  const screws: ScrewInUse[] = [];
  for (const landing of subject.landings) addLanding(screws, subject, landing);
  const pin = subject.connector.pin;
  const terminal = subject.joint.equipment?.terminal;
  if (pin !== undefined && terminal !== undefined && subject.origin === "connector") {
    const index = openingFor(terminal, pin.size);
    const opening = terminal.openings[index];
    if (opening !== undefined)
      screws.push(screwAt("joint/equipment/terminal", terminal, opening, index, pin.size, "connector/pin/size"));
  }
  return screws;
}

function addLanding(screws: ScrewInUse[], { connector, origin }: JointSubject, landing: Landing): void {
  const { size, path } = largestIn(landing);
  const use = screwAt(origin, connector, landing.opening, landing.openingIndex, size, path);
  const known = screws.findIndex((one) => isSameScrew(one, use));
  const before = screws[known];
  if (before === undefined) screws.push(use);
  else {
    const larger = isLarger(use.largest, before.largest) ? use : before;
    screws[known] = {
      origin: before.origin,
      construction: before.construction,
      screw: before.screw,
      screwIndex: before.screwIndex,
      openings: before.openings.includes(landing.opening.id)
        ? before.openings
        : [...before.openings, landing.opening.id],
      openingIndex: before.openingIndex,
      largest: larger.largest,
      largestPath: larger.largestPath,
    };
  }
}

function screwAt(
  origin: JointSubject["origin"],
  { screws, construction }: Connector,
  opening: Opening,
  openingIndex: number,
  largest: string,
  largestPath: string,
): ScrewInUse {
  const screwIndex = screws.findIndex(({ id }) => id === opening.screw);
  return {
    origin,
    construction,
    screw: screws[screwIndex],
    screwIndex,
    openings: [opening.id],
    openingIndex,
    largest,
    largestPath,
  };
}

function isSameScrew(a: ScrewInUse, b: ScrewInUse): boolean {
  return a.screw !== undefined && clampsSeveral(a.construction)
    ? a.screw === b.screw
    : a.openingIndex === b.openingIndex && a.largest === b.largest;
}

function clampsSeveral(construction: Construction): boolean {
  return construction === "split-bolt" || construction === "bolted-clamp" || construction === "insulation-piercing";
}

function largestIn({ conductors }: Landing): { readonly size: string; readonly path: string } {
  const { conductor, group } = conductors.reduce((largest, one) =>
    isLarger(one.conductor.size, largest.conductor.size) ? one : largest,
  );
  return { size: conductor.size, path: conductorPath(group, "size") };
}

/** What is no size counts as larger than any: no default may be taken from what lies beside it. */
function isLarger(a: string, b: string): boolean {
  const first = parseSize(a);
  if ("problem" in first) return true;
  const second = parseSize(b);
  return !("problem" in second) && compareSizes(first, second) > 0;
}

/** The terminal's only opening, or the first that takes the size. */
function openingFor(terminal: Connector, size: string): number {
  if (terminal.openings.length === 1) return 0;
  return terminal.openings.findIndex((opening) =>
    opening.ranges.some(({ from, to }) => !isLarger(from, size) && !isLarger(size, to)),
  );
}
