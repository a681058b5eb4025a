import { sizeOf } from "../../core/conductor-size.js";
import type { CatalogueItem } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import { compareExact, type Exact, exactOf } from "../../core/exact.js";
import type { Basis, Joint } from "../../core/joint.js";
import { checkJointUnder, type JointQuestion, jointUnder, judgeJoint } from "../joint/check-joint.js";
import type { JointFinding } from "../joint/joint-finding.js";
import { CatalogueJudge, type Standing } from "./catalogue-judge.js";
import { explainMisses } from "./nearest-miss.js";
import type { Candidate, Selection } from "./selection.js";

/** How many runners-up an answer shows. */
const SHOWN = 3;

export interface SelectedConnector {
  readonly selection: Selection;
  /** The full answer for the chosen connector; where none was chosen, for the nearest one, to say why. */
  readonly finding: JointFinding | null;
}

/**
 * Chooses a connector for a joint from a catalogue.
 *
 * Hard rules first: only an item that every rule accepts is a candidate. Candidates stand in this order, each line
 * deciding only where the ones above are equal:
 *   1. accept before accept-with-conditions;
 *   2. fewer conditions;
 *   3. lower price (an item without a price after all that have one; prices of unlike currencies are not compared);
 *   4. fewer electrician-hours (unknown last);
 *   5. the largest size it takes is nearer to the conductor;
 *   6. part number, by code unit.
 * The order of the catalogue never matters.
 */
export function selectConnectorsUnder(
  joint: Joint,
  basis: Basis,
  catalogue: readonly CatalogueItem[],
  edition: Edition,
): SelectedConnector {
  const inForce = jointUnder(joint, basis);
  const judge = judgeOf(catalogue, edition);
  const { accepted, excluded } = judge.survey(inForce);
  const question = ({ item }: Standing): JointQuestion => ({
    joint: inForce,
    basis,
    connector: item,
    origin: "catalogue",
  });
  const [best, ...others] = [...accepted].sort(byRank);
  if (best !== undefined)
    return {
      selection: {
        chosen: candidateOf(best),
        runnersUp: others.slice(0, SHOWN).map(candidateOf),
        excluded,
        nearestMisses: [],
        because: reasonFor(best, others),
      },
      finding: checkJointUnder(question(best), edition),
    };
  const misses = judge.misses(inForce).sort(byNearness);
  const [nearest] = misses;
  const { nearestMisses, because } = explainMisses(misses, (miss) => judgeJoint(question(miss), edition));
  return {
    selection: { chosen: null, runnersUp: [], excluded, nearestMisses, because },
    finding: nearest === undefined ? null : checkJointUnder(question(nearest), edition),
  };
}

/** What a catalogue offers for one joint: everything that every rule accepts, and what keeps the rest out. */
export interface Offered {
  /** By rank. */
  readonly candidates: readonly Candidate[];
  /** How many connectors each rule keeps out (by its first failure, else its first question), most first. */
  readonly excluded: Selection["excluded"];
}

/** Every connector of a catalogue that every rule accepts for a joint, in the order of `selectConnectorsUnder`. */
export function acceptedConnectorsUnder(
  joint: Joint,
  basis: Basis,
  catalogue: readonly CatalogueItem[],
  edition: Edition,
): Offered {
  const { accepted, excluded } = judgeOf(catalogue, edition).survey(jointUnder(joint, basis));
  return { candidates: [...accepted].sort(byRank).map(candidateOf), excluded };
}

/** A catalogue does not change while it is in use, so what was learned of it serves for the next joint and the next job. */
const judges = new WeakMap<readonly CatalogueItem[], Map<Edition, CatalogueJudge>>();

function judgeOf(catalogue: readonly CatalogueItem[], edition: Edition): CatalogueJudge {
  let byEdition = judges.get(catalogue);
  if (byEdition === undefined) {
    byEdition = new Map();
    judges.set(catalogue, byEdition);
  }
  let judge = byEdition.get(edition);
  if (judge?.isOf(catalogue) !== true) {
    judge = new CatalogueJudge(catalogue, edition);
    byEdition.set(edition, judge);
  }
  return judge;
}

function byRank(a: Standing, b: Standing): number {
  return (
    Number(a.verdict !== "accept") - Number(b.verdict !== "accept") ||
    a.conditions - b.conditions ||
    byPrice(a.item, b.item) ||
    knownFirst(a.item.labourHours, b.item.labourHours) ||
    largestSize(a.item) - largestSize(b.item) ||
    byText(a.item.partNumber, b.item.partNumber)
  );
}

/**
 * Fewest failures first, so that what only lacks a fact, or fails only by the joint's own fault, comes before what fails
 * by itself too; then fewest questions, then the rank order, so that the nearest miss is stable.
 */
function byNearness(a: Standing, b: Standing): number {
  return a.failures - b.failures || a.questions - b.questions || byRank(a, b);
}

function byPrice(a: CatalogueItem, b: CatalogueItem): number {
  if (a.price === undefined || b.price === undefined)
    return Number(a.price === undefined) - Number(b.price === undefined);
  if (a.price.currency !== b.price.currency) return byText(a.price.currency, b.price.currency);
  return compareExact(priceOf(a), priceOf(b));
}

/** An item never changes, and it is ranked for many joints: what ranking reads of it is read once. */
const prices = new WeakMap<CatalogueItem, Exact>();
const largestAreas = new WeakMap<CatalogueItem, number>();

function priceOf(item: CatalogueItem): Exact {
  let price = prices.get(item);
  if (price === undefined) {
    price = exactOf(item.price?.amount ?? 0);
    prices.set(item, price);
  }
  return price;
}

function knownFirst(a: number | undefined, b: number | undefined): number {
  if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
  return a - b;
}

/** Area of the largest size it takes, in kcmil. */
function largestSize(item: CatalogueItem): number {
  let largest = largestAreas.get(item);
  if (largest === undefined) {
    largest = 0;
    for (const { ranges } of item.openings)
      for (const { to } of ranges) largest = Math.max(largest, sizeOf(to).areaKcmil);
    largestAreas.set(item, largest);
  }
  return largest;
}

function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function candidateOf({ item, verdict, conditions }: Standing): Candidate {
  return {
    partNumber: item.partNumber,
    description: item.description,
    verdict,
    conditions,
    price: item.price ?? null,
    labourHours: item.labourHours ?? null,
  };
}

function reasonFor(best: Standing, others: readonly Standing[]): string {
  const [next] = others;
  if (next === undefined) return "It is the only connector of the catalogue that every rule accepts.";
  const why =
    best.verdict !== next.verdict
      ? "it is accepted without conditions"
      : best.conditions !== next.conditions
        ? "its acceptance hangs on fewer conditions"
        : byPrice(best.item, next.item) !== 0
          ? "it costs least"
          : knownFirst(best.item.labourHours, next.item.labourHours) !== 0
            ? "it takes the least labor"
            : largestSize(best.item) !== largestSize(next.item)
              ? "its range is nearest to the conductor"
              : "its part number comes first among equals";
  return `Of ${String(others.length + 1)} connectors that every rule accepts, ${why}.`;
}
