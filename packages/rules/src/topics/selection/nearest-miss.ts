/** Why a catalogue holds nothing for a joint, told by the connectors that come nearest. */
import type { CheckFinding } from "../../core/finding.js";
import { decidingFinding, type JointOutcome } from "../joint/check-joint.js";
import { JOINT_RULES } from "../joint/joint-rules.js";
import type { Miss } from "./catalogue-judge.js";
import type { NearestMiss, Selection } from "./selection.js";

/** How many misses an answer shows. */
const SHOWN = 3;

/**
 * The nearest misses, and in one sentence why nothing fits.
 *
 * A rule that refuses every connector is named first, in `because` and in each miss: another connector would fail by it
 * again. Where it read nothing of the connector the fault is the joint's own, and no other catalogue can help either.
 * @param misses all connectors for the joint's function, none of them accepted, nearest first.
 * @param inFull the outcome of every rule with its words, for one of them.
 */
export function explainMisses(
  misses: readonly Miss[],
  inFull: (miss: Miss) => JointOutcome,
): Pick<Selection, "nearestMisses" | "because"> {
  const common = ruleFailedByAll(misses);
  const shown = misses.slice(0, SHOWN).map((miss) => ({ miss, named: namedFinding(inFull(miss), common) }));
  const [nearest] = shown;
  return {
    nearestMisses: shown.map(({ miss, named }) => missOf(miss, named)),
    because:
      nearest === undefined
        ? "The catalogue holds no connector for this kind of joint."
        : reasonFor(misses, nearest.miss, nearest.named, common),
  };
}

/** The nearest misses where other connectors are accepted: each by its own first failure. */
export function nearestMisses(misses: readonly Miss[], inFull: (miss: Miss) => JointOutcome): readonly NearestMiss[] {
  return misses.slice(0, SHOWN).map((miss) => missOf(miss, decidingFinding(inFull(miss).findings)));
}

/** A rule and its place in the list of rules. */
interface PlacedRule {
  readonly id: string;
  readonly at: number;
}

function reasonFor(
  misses: readonly Miss[],
  nearest: Miss,
  { sentence, fix }: CheckFinding,
  common: PlacedRule | undefined,
): string {
  if (nearest.verdict === "needs-information")
    return `A fact is missing that decides whether any connector fits: ${sentence}`;
  if (common === undefined)
    return `No connector of the catalogue fits; the nearest, ${nearest.item.partNumber}, fails: ${sentence}`;
  const who = misses.every(({ outcomes }) => outcomes[common.at]?.jointsOwn === true)
    ? "No connector can help"
    : "No connector of the catalogue can help";
  return `${who}: ${sentence} To put it right: ${fix}.`;
}

/** The rule that refuses every connector; one that read nothing of the connectors before one that did. */
function ruleFailedByAll(misses: readonly Miss[]): PlacedRule | undefined {
  const failed = JOINT_RULES.map(({ id }, at): PlacedRule => ({ id, at })).filter(({ at }) =>
    misses.every(({ outcomes }) => outcomes[at]?.outcome === "fail"),
  );
  return failed.find(({ at }) => misses[0]?.outcomes[at]?.jointsOwn === true) ?? failed[0];
}

function namedFinding({ findings }: JointOutcome, common: PlacedRule | undefined): CheckFinding {
  return findings.find(({ rule }) => rule === common?.id) ?? decidingFinding(findings);
}

function missOf({ item }: Miss, { rule, sentence, fix, missing }: CheckFinding): NearestMiss {
  const [fact] = missing;
  return {
    partNumber: item.partNumber,
    description: item.description,
    rule,
    sentence,
    fix: fact === undefined ? fix : `say what is not known: ${fact.path}`,
  };
}
