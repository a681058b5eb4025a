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
  const [nearest] = misses;
  if (nearest === undefined)
    return { nearestMisses: [], because: "The catalogue holds no connector for this kind of joint." };
  const common = ruleFailedByAll(misses);
  const shown = misses.slice(0, SHOWN).map((miss) => ({ miss, named: namedFinding(inFull(miss), common) }));
  return {
    nearestMisses: shown.map(({ miss, named }) => missOf(miss, named)),
    because: reasonFor(misses, nearest, shown[0]?.named, common),
  };
}

/** The nearest misses where other connectors are accepted: each by its own first failure. */
export function nearestMisses(misses: readonly Miss[], inFull: (miss: Miss) => JointOutcome): readonly NearestMiss[] {
  return misses.slice(0, SHOWN).map((miss) => missOf(miss, decidingFinding(inFull(miss).findings)));
}

function reasonFor(
  misses: readonly Miss[],
  nearest: Miss,
  named: CheckFinding | undefined,
  common: number | undefined,
): string {
  const { sentence, fix } = named ?? { sentence: "", fix: "" };
  if (nearest.verdict === "needs-information")
    return `A fact is missing that decides whether any connector fits: ${sentence}`;
  if (common === undefined)
    return `No connector of the catalogue fits; the nearest, ${nearest.item.partNumber}, fails: ${sentence}`;
  const who = misses.every(({ outcomes }) => outcomes[common]?.jointsOwn === true)
    ? "No connector can help"
    : "No connector of the catalogue can help";
  return `${who}: ${sentence} To put it right: ${fix}.`;
}

/** The place of the rule that refuses every connector; one that read nothing of the connectors before one that did. */
function ruleFailedByAll(misses: readonly Miss[]): number | undefined {
  const places = JOINT_RULES.map((_, at) => at).filter((at) =>
    misses.every(({ outcomes }) => outcomes[at]?.outcome === "fail"),
  );
  return places.find((at) => misses[0]?.outcomes[at]?.jointsOwn === true) ?? places[0];
}

function namedFinding({ findings }: JointOutcome, common: number | undefined): CheckFinding {
  const rule = common === undefined ? undefined : JOINT_RULES[common]?.id;
  return findings.find((one) => one.rule === rule && one.outcome === "fail") ?? decidingFinding(findings);
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
