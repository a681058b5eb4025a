import type { ConductorGroup, ConductorMetal } from "../../core/conductor.js";
import { sizeOf } from "../../core/conductor-size.js";
import type { Connector, Opening } from "../../core/connector.js";
import type { Joint } from "../../core/joint.js";
import { dutyFit, sizeFit, strandingFit } from "../../core/opening-fit.js";
import type { LandedConductors, Landing } from "../../core/rule.js";
import {
  combinationFit,
  conductorsMaxOf,
  countFit,
  needsListedCombination,
  type OpeningMember,
  shareFit,
  standAlone,
} from "./opening-share.js";

/**
 * What stands against a landing, heaviest first. One heavier fault outweighs every lighter one of a joint: a landing
 * without a violation is always found before one with, then one that puts unlike metals together least, then one that
 * leaves least to be asked, then one that shares openings least.
 */
const VIOLATION = 1e12;
const MIXED_METALS = 1e8;
const QUESTION = 1e4;
const SHARING = 1;

/** Steps of the search; far above what a real joint needs. What is found by then is kept, and can only be too strict. */
const SEARCH_STEPS = 20_000;
/** More than any connector takes. Above it conductors are dealt out without a search, which can only be too strict. */
const CONDUCTORS_SEARCHED = 200;

/** One hole, and what lies in it so far. */
interface Bin {
  readonly openingIndex: number;
  readonly opening: Opening;
  /** Openings that are alike for this joint have one kind. */
  readonly kind: number;
  readonly counts: number[];
  total: number;
}

interface Group {
  readonly index: number;
  readonly conductor: ConductorGroup;
  readonly count: number;
  /** Cost of one conductor of the group in each opening, by opening index. */
  readonly costs: readonly number[];
  readonly cheapest: number;
}

/**
 * Puts every conductor of the joint into an opening of the connector.
 *
 * Exact, not greedy: of all ways to land them it takes the one with the fewest violations of range, strand form, duty,
 * count, sharing and listed combination, then the fewest unlike metals in one opening, then the fewest questions, then
 * the fewest shared openings (one neutral for each hole of a bar). So a perfect landing is found where there is one, and where there
 * is none every conductor still lies somewhere and the rules can say what is wrong. Equal landings are settled by the
 * order of the openings; the order of the conductor groups does not matter to the verdict. The metal marking is one for
 * the whole connector, so it cannot prefer an opening and is left to its rule.
 * Worked: openings 14-4 AWG and 14 AWG-250 kcmil, conductors 4 AWG and 250 kcmil: the 4 AWG goes to the first although
 * the second takes it too.
 * @returns the openings in use, in the order of the connector's openings; empty where there is no opening or conductor.
 * @throws RangeError when a size cannot be read; callers validate sizes first.
 */
export function landConductors(joint: Joint, connector: Connector): Landing[] {
  const { conductors } = joint;
  const { openings } = connector;
  const [only, second] = conductors;
  const [opening, another] = openings;
  if (
    only !== undefined &&
    second === undefined &&
    opening !== undefined &&
    another === undefined &&
    (opening.combinations === undefined || opening.count === 1)
  )
    return spread(only, opening);
  return new LandingSearch(joint, connector).best();
}

/** One group in equal openings: as even as can be, which shares least and overfills least. */
function spread(conductor: ConductorGroup, opening: Opening): Landing[] {
  const landings: Landing[] = [];
  const used = Math.min(conductor.count, opening.count);
  const each = Math.floor(conductor.count / used);
  const over = conductor.count - each * used;
  for (let instance = 1; instance <= used; instance += 1)
    landings.push({
      openingIndex: 0,
      opening,
      instance,
      conductors: [{ group: 0, conductor, count: instance <= over ? each + 1 : each }],
    });
  return landings;
}

/** Branch and bound over single conductors, largest first. */
class LandingSearch {
  readonly #connector: Connector;
  readonly #alone: boolean;
  readonly #groups: readonly Group[];
  readonly #bins: readonly Bin[];
  #best: readonly (readonly number[])[] = [];
  #bestCost = Number.POSITIVE_INFINITY;
  #stepsLeft = SEARCH_STEPS;

  constructor(joint: Joint, connector: Connector) {
    this.#connector = connector;
    this.#alone = standAlone(joint);
    this.#groups = groupsOf(joint, connector);
    this.#bins = binsOf(this.#groups, connector);
  }

  best(): Landing[] {
    if (this.#bins.length === 0) return [];
    let conductors = 0;
    let bound = 0;
    for (const { count, cheapest } of this.#groups) {
      conductors += count;
      bound += count * cheapest;
    }
    if (conductors > CONDUCTORS_SEARCHED) this.#dealOut();
    else this.#place(0, 0, 0, 0, bound, conductors);
    return this.#landings();
  }

  /** Each group goes round the holes of the opening that suits it best. */
  #dealOut(): void {
    const next = new Map<number, number>();
    this.#groups.forEach(({ count, costs, cheapest }, at) => {
      const openingIndex = costs.indexOf(cheapest);
      const holes = this.#bins.filter((bin) => bin.openingIndex === openingIndex);
      let hole = next.get(openingIndex) ?? 0;
      for (let placed = 0; placed < count; placed += 1, hole += 1) {
        const bin = holes[hole % holes.length];
        if (bin !== undefined) bin.counts[at] = (bin.counts[at] ?? 0) + 1;
      }
      next.set(openingIndex, hole);
    });
    this.#best = this.#bins.map(({ counts }) => counts);
  }

  /**
   * Places the next conductor of group `at`, of which `placed` are in, not before bin `from`.
   * `rest` is the least that the conductors still to place can cost by themselves.
   */
  #place(at: number, placed: number, from: number, cost: number, rest: number, remaining: number): void {
    const group = this.#groups[at];
    if (group === undefined) {
      this.#keep(cost);
      return;
    }
    if (placed === group.count) {
      this.#place(at + 1, 0, 0, cost, rest, remaining);
      return;
    }
    if (!(cost + rest + this.#leastSharing(remaining) < this.#bestCost)) return;
    for (const { bin, index, added } of this.#choices(at, from, group)) {
      bin.counts[at] = (bin.counts[at] ?? 0) + 1;
      bin.total += 1;
      this.#place(at, placed + 1, index, cost + added, rest - group.cheapest, remaining - 1);
      bin.counts[at] = (bin.counts[at] ?? 0) - 1;
      bin.total -= 1;
      // The first way down is always finished, so that every conductor lies somewhere.
      if (this.#stepsLeft <= 0 && this.#bestCost < Number.POSITIVE_INFINITY) return;
      this.#stepsLeft -= 1;
    }
  }

  /** The different places for one more conductor of the group, cheapest first, then in the order of the openings. */
  #choices(at: number, from: number, group: Group): { bin: Bin; index: number; added: number }[] {
    const choices: { bin: Bin; index: number; added: number }[] = [];
    for (let index = from; index < this.#bins.length; index += 1) {
      const bin = this.#bins[index];
      if (bin === undefined || this.#isRepeated(index, bin)) continue;
      const before = this.#contentCost(bin);
      bin.counts[at] = (bin.counts[at] ?? 0) + 1;
      bin.total += 1;
      const added = (group.costs[bin.openingIndex] ?? 0) + this.#contentCost(bin) - before;
      bin.counts[at] = (bin.counts[at] ?? 0) - 1;
      bin.total -= 1;
      choices.push({ bin, index, added });
    }
    return choices.sort((a, b) => a.added - b.added || a.index - b.index);
  }

  /** A hole like an earlier one, with the same in it, is no other place. */
  #isRepeated(index: number, bin: Bin): boolean {
    for (let earlier = index - 1; earlier >= 0; earlier -= 1) {
      const other = this.#bins[earlier];
      if (other === undefined || other.kind !== bin.kind) return false;
      if (other.total === bin.total && other.counts.every((count, group) => count === bin.counts[group])) return true;
    }
    return false;
  }

  /** What the conductors in one hole cost together; it never falls as more are put in. */
  #contentCost(bin: Bin): number {
    if (bin.total <= 1) return 0;
    const extra = bin.total - 1;
    let cost = extra * (this.#alone ? VIOLATION : SHARING);
    const fit = countFit(bin.opening, bin.total);
    if (fit === "refused") cost += Math.min(extra, bin.total - (conductorsMaxOf(bin.opening) || 1)) * VIOLATION;
    if (fit === "unknown") cost += extra * QUESTION;
    const members = this.#membersOf(bin);
    const share = shareFit(bin.opening, members, bin.total);
    if (share === "sharing-not-known" || share === "size-not-comparable") cost += QUESTION;
    else if (share !== "fits") cost += VIOLATION;
    return cost + (metalsOf(members) - 1) * MIXED_METALS;
  }

  #membersOf(bin: Bin): OpeningMember[] {
    const members: OpeningMember[] = [];
    bin.counts.forEach((count, at) => {
      const group = this.#groups[at];
      if (count > 0 && group !== undefined) members.push({ conductor: group.conductor, count });
    });
    return members;
  }

  #leastSharing(remaining: number): number {
    let empty = 0;
    for (const { total } of this.#bins) if (total === 0) empty += 1;
    return Math.max(0, remaining - empty) * SHARING;
  }

  /** A combination is only known when all lie in place, so it is judged at the end. */
  #keep(placedCost: number): void {
    let cost = placedCost;
    for (const bin of this.#bins) {
      if (bin.total === 0 || !needsListedCombination(this.#connector, bin.opening)) continue;
      const fit = combinationFit(bin.opening, this.#membersOf(bin));
      if (fit !== "fits") cost += fit === "refused" ? VIOLATION : QUESTION;
    }
    if (!(cost < this.#bestCost)) return;
    this.#bestCost = cost;
    this.#best = this.#bins.map(({ counts }) => [...counts]);
  }

  #landings(): Landing[] {
    const landings: Landing[] = [];
    const used = new Map<number, number>();
    this.#bins.forEach(({ openingIndex, opening }, index) => {
      const conductors: LandedConductors[] = [];
      this.#best[index]?.forEach((count, at) => {
        const group = this.#groups[at];
        if (count > 0 && group !== undefined)
          conductors.push({ group: group.index, conductor: group.conductor, count });
      });
      if (conductors.length === 0) return;
      const instance = (used.get(openingIndex) ?? 0) + 1;
      used.set(openingIndex, instance);
      landings.push({ openingIndex, opening, instance, conductors: conductors.sort((a, b) => a.group - b.group) });
    });
    return landings.sort((a, b) => a.openingIndex - b.openingIndex || a.instance - b.instance);
  }
}

/** Largest area first: what has the fewest places is placed while there is a choice. */
function groupsOf(joint: Joint, connector: Connector): Group[] {
  return joint.conductors
    .map((conductor, index): Group => {
      const costs = connector.openings.map((opening) => ownCost(joint, index, conductor, opening));
      return { index, conductor, count: conductor.count, costs, cheapest: Math.min(...costs) };
    })
    .sort(
      (a, b) =>
        sizeOf(b.conductor.size).areaKcmil - sizeOf(a.conductor.size).areaKcmil ||
        byText(a.conductor.metal, b.conductor.metal) ||
        byText(a.conductor.stranding, b.conductor.stranding) ||
        byText(a.conductor.duty ?? "", b.conductor.duty ?? "") ||
        b.count - a.count ||
        a.index - b.index,
    );
}

/** What stands against one conductor in an opening, whatever else lies there. */
function ownCost(joint: Joint, group: number, conductor: ConductorGroup, opening: Opening): number {
  let cost = 0;
  for (const fit of [
    sizeFit(conductor, opening),
    strandingFit(conductor.stranding, opening),
    dutyFit(joint, group, opening),
  ]) {
    if (fit === "refused") cost += VIOLATION;
    if (fit === "unknown") cost += QUESTION;
  }
  return cost;
}

/** The holes, those of one kind side by side; never more of one opening than there are conductors to search for. */
function binsOf(groups: readonly Group[], connector: Connector): Bin[] {
  const conductors = groups.reduce((sum, { count }) => sum + count, 0);
  const bins: Bin[] = [];
  const { openings } = connector;
  const kinds = openings.map((_, index) => kindOf(index, openings, groups));
  openings.forEach((opening, openingIndex) => {
    for (let hole = 0; hole < Math.min(opening.count, conductors); hole += 1)
      bins.push({
        openingIndex,
        opening,
        kind: kinds[openingIndex] ?? openingIndex,
        counts: groups.map(() => 0),
        total: 0,
      });
  });
  return bins.sort((a, b) => a.kind - b.kind || a.openingIndex - b.openingIndex);
}

/** The first opening that treats this joint's conductors in the same way. */
function kindOf(index: number, openings: readonly Opening[], groups: readonly Group[]): number {
  const opening = openings[index];
  return openings.findIndex(
    (other, earlier) =>
      earlier === index ||
      (opening !== undefined &&
        other.conductorsMax === opening.conductorsMax &&
        other.shared === undefined &&
        opening.shared === undefined &&
        other.combinations === undefined &&
        opening.combinations === undefined &&
        groups.every(({ costs }) => costs[earlier] === costs[index])),
  );
}

function metalsOf(members: readonly OpeningMember[]): number {
  const seen: ConductorMetal[] = [];
  for (const { conductor } of members) if (!seen.includes(conductor.metal)) seen.push(conductor.metal);
  return seen.length;
}

function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
