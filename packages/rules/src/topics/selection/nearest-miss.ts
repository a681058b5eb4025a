/** Why a catalogue holds nothing for a joint, told by the connectors that come nearest. */
import type { CatalogueItem } from "../../core/connector.js";
import type { CheckFinding } from "../../core/finding.js";
import { decidingFinding, type JointOutcome } from "../joint/check-joint.js";
import type { NearestMiss, Selection } from "./selection.js";

/** How many misses an answer shows. */
const SHOWN = 3;

/** A connector for the joint's function that is not accepted, with the outcome of every rule. */
export interface Miss {
  readonly item: CatalogueItem;
  readonly outcome: JointOutcome;
}

/**
 * The nearest misses, and in one sentence why nothing fits.
 *
 * A rule that refuses every connector is named first, in `because` and in each miss: another connector would fail by it
 * again. Where it read nothing of the connector the fault is the joint's own, and no other catalogue can help either.
 * @param misses all connectors for the joint's function, none of them accepted, nearest first.
 */
export function explainMisses(misses: readonly Miss[]): Pick<Selection, "nearestMisses" | "because"> {
  const [nearest] = misses;
  if (nearest === undefined)
    return { nearestMisses: [], because: "The catalogue holds no connector for this kind of joint." };
  const common = ruleFailedByAll(misses);
  return {
    nearestMisses: misses.slice(0, SHOWN).map((miss) => missOf(miss, common)),
    because: reasonFor(misses, nearest, common),
  };
}

function reasonFor(misses: readonly Miss[], nearest: Miss, common: string | undefined): string {
  const { sentence, fix } = namedFinding(nearest, common);
  if (nearest.outcome.verdict === "needs-information")
    return `A fact is missing that decides whether any connector fits: ${sentence}`;
  if (common === undefined)
    return `No connector of the catalogue fits; the nearest, ${nearest.item.partNumber}, fails: ${sentence}`;
  const who = misses.every((miss) => isJointsOwn(namedFinding(miss, common)))
    ? "No connector can help"
    : "No connector of the catalogue can help";
  return `${who}: ${sentence} To put it right: ${fix}.`;
}

/** The rule that refuses every connector; one that read nothing of the connectors before one that did. */
function ruleFailedByAll(misses: readonly Miss[]): string | undefined {
  const shared = (misses[0]?.outcome.findings ?? []).filter(
    (finding) => finding.outcome === "fail" && misses.every((miss) => failure(miss, finding.rule) !== undefined),
  );
  return (shared.find(isJointsOwn) ?? shared[0])?.rule;
}

function failure({ outcome }: Miss, rule: string): CheckFinding | undefined {
  return outcome.findings.find((finding) => finding.rule === rule && finding.outcome === "fail");
}

/** True where no fact of the connector is among the steps. */
function isJointsOwn({ steps }: CheckFinding): boolean {
  return steps.every((step) => step.kind !== "given" || !step.origin.startsWith("connector/"));
}

function namedFinding(miss: Miss, common: string | undefined): CheckFinding {
  return (common === undefined ? undefined : failure(miss, common)) ?? decidingFinding(miss.outcome.findings);
}

function missOf(miss: Miss, common: string | undefined): NearestMiss {
  const { rule, sentence, fix, missing } = namedFinding(miss, common);
  const [fact] = missing;
  return {
    partNumber: miss.item.partNumber,
    description: miss.item.description,
    rule,
    sentence,
    fix: fact === undefined ? fix : `say what is not known: ${fact.path}`,
  };
}
