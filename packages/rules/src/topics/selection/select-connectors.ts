import { sizeOf } from "../../core/conductor-size.js";
import type { CatalogueItem } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import { compareExact, type Exact, exactOf } from "../../core/exact.js";
import type { Basis, Joint } from "../../core/joint.js";
import {
  decidingFinding,
  type JointOutcome,
  type JointQuestion,
  jointFinding,
  jointUnder,
  judgeJoint,
  judgeToFirstFailure,
} from "../joint/check-joint.js";
import type { JointFinding } from "../joint/joint-finding.js";
import { explainMisses } from "./nearest-miss.js";
import type { Candidate, Selection } from "./selection.js";

/** How many runners-up an answer shows. */
const SHOWN = 3;

export interface SelectedConnector {
  readonly selection: Selection;
  /** The full answer for the chosen connector; where none was chosen, for the nearest one, to say why. */
  readonly finding: JointFinding | null;
}

interface Judged {
  readonly item: CatalogueItem;
  readonly question: JointQuestion;
  readonly outcome: JointOutcome;
  readonly conditions: number;
  readonly failures: number;
  readonly questions: number;
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
  // Most of a catalogue fails early: one failure keeps an item out. How near it came is asked only when nothing fits.
  const judged = catalogue.map((item) => judge(inForce, basis, item, edition, judgeToFirstFailure));
  const candidates = judged.filter(({ outcome }) => isAccepted(outcome)).sort(byRank);
  const excluded = countByFirstFailure(judged);
  const [best, ...others] = candidates;
  if (best !== undefined)
    return {
      selection: {
        chosen: candidateOf(best),
        runnersUp: others.slice(0, SHOWN).map(candidateOf),
        excluded,
        nearestMisses: [],
        because: reasonFor(best, others),
      },
      finding: jointFinding(best.question, best.outcome, edition),
    };
  const misses = judged
    .filter(({ item }) => item.functions.includes(joint.function))
    .map((miss) => (miss.failures === 0 ? miss : judge(inForce, basis, miss.item, edition, judgeJoint)))
    .sort(byNearness);
  const [nearest] = misses;
  const { nearestMisses, because } = explainMisses(misses);
  return {
    selection: { chosen: null, runnersUp: [], excluded, nearestMisses, because },
    finding: nearest === undefined ? null : jointFinding(nearest.question, nearest.outcome, edition),
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
  const inForce = jointUnder(joint, basis);
  const judged = catalogue.map((item) => judge(inForce, basis, item, edition, judgeToFirstFailure));
  return {
    candidates: judged
      .filter(({ outcome }) => isAccepted(outcome))
      .sort(byRank)
      .map(candidateOf),
    excluded: countByFirstFailure(judged),
  };
}

function judge(
  joint: Joint,
  basis: Basis,
  item: CatalogueItem,
  edition: Edition,
  judging: (question: JointQuestion, edition: Edition) => JointOutcome,
): Judged {
  const question: JointQuestion = { joint, basis, connector: item, origin: "catalogue" };
  const outcome = judging(question, edition);
  let conditions = 0;
  let failures = 0;
  let questions = 0;
  for (const finding of outcome.findings) {
    conditions += finding.conditions.length;
    if (finding.outcome === "fail") failures += 1;
    if (finding.outcome === "missing") questions += 1;
  }
  return { item, question, outcome, conditions, failures, questions };
}

function isAccepted(outcome: JointOutcome): boolean {
  return outcome.verdict === "accept" || outcome.verdict === "accept-with-conditions";
}

function byRank(a: Judged, b: Judged): number {
  return (
    Number(a.outcome.verdict !== "accept") - Number(b.outcome.verdict !== "accept") ||
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
function byNearness(a: Judged, b: Judged): number {
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

function countByFirstFailure(judged: readonly Judged[]): Selection["excluded"] {
  const counts = new Map<string, number>();
  for (const { outcome } of judged) {
    if (isAccepted(outcome)) continue;
    const { rule } = decidingFinding(outcome.findings);
    counts.set(rule, (counts.get(rule) ?? 0) + 1);
  }
  return [...counts]
    .map(([rule, connectors]) => ({ rule, connectors }))
    .sort((a, b) => b.connectors - a.connectors || byText(a.rule, b.rule));
}

function candidateOf({ item, outcome, conditions }: Judged): Candidate {
  return {
    partNumber: item.partNumber,
    description: item.description,
    verdict: outcome.verdict,
    conditions,
    price: item.price ?? null,
    labourHours: item.labourHours ?? null,
  };
}

function reasonFor(best: Judged, others: readonly Judged[]): string {
  const [next] = others;
  if (next === undefined) return "It is the only connector of the catalogue that every rule accepts.";
  const why =
    best.outcome.verdict !== next.outcome.verdict
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
