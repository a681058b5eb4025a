import { CAUTION } from "../../core/caution.js";
import { citationText } from "../../core/citation.js";
import type { CatalogueItem } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { Basis, Joint } from "../../core/joint.js";
import { RULES_VERSION } from "../../core/rules-version.js";
import { checkJointUnder, jointUnder, judgeJoint } from "../joint/check-joint.js";
import { judgeOf, type Miss } from "./catalogue-judge.js";
import { withoutOffer } from "./joint-class.js";
import { explainMisses, nearestMisses } from "./nearest-miss.js";
import { byNearness, RANK_LINES, rankingOf } from "./rank.js";
import { candidateOf, reasonFor } from "./select-connectors.js";
import type { Candidates, RankingContext } from "./selection.js";

/**
 * Everything a catalogue offers for one joint, best first by `RANK_LINES`, with the counts and the nearest of what it
 * does not. The connector that the joint names is set aside, as if none were offered. Neither the order of the
 * catalogue nor what is known of the job changes what is accepted.
 * @throws RangeError for a size that cannot be read.
 */
export function candidatesUnder(
  joint: Joint,
  basis: Basis,
  catalogue: readonly CatalogueItem[],
  context: RankingContext,
  edition: Edition,
): Candidates {
  const asked = jointUnder(withoutOffer(joint), basis);
  const ranking = rankingOf(context);
  const judge = judgeOf(catalogue, edition);
  const { accepted, excluded } = judge.survey(asked);
  const misses = judge.misses(asked).sort((a, b) => byNearness(a, b, ranking));
  const inFull = (miss: Miss) =>
    judgeJoint({ joint: asked, basis, connector: miss.item, origin: "catalogue" }, edition);
  const ranked = [...accepted].sort(ranking.compare);
  const [best, ...others] = ranked;
  const told =
    best === undefined
      ? explainMisses(misses, inFull)
      : { nearestMisses: nearestMisses(misses, inFull), because: reasonFor(best, others, ranking) };
  const [nearest] = misses;
  const asks = best === undefined && nearest?.verdict === "needs-information" ? inFull(nearest).findings : [];
  return {
    basis,
    rulesVersion: RULES_VERSION,
    candidates: ranked.map((one) => {
      const { partNumber, description, verdict, conditions, price, labourHours } = candidateOf(one);
      const { inJob, leadTimeDays, approvedBefore } = ranking.preferenceOf(one.item);
      return {
        partNumber,
        description,
        verdict,
        conditions,
        price,
        labourHours,
        inJob,
        leadTimeDays,
        approvedBefore,
      };
    }),
    order: RANK_LINES,
    excluded,
    nearestMisses: told.nearestMisses,
    because: told.because,
    missing: asks
      .flatMap(({ missing }) => missing)
      .filter(({ path }, at, all) => all.findIndex((other) => other.path === path) === at),
    ownTerminal: ownTerminal(asked, basis, edition),
    caution: CAUTION,
  };
}

function ownTerminal(joint: Joint, basis: Basis, edition: Edition): Candidates["ownTerminal"] {
  const terminal = joint.equipment?.terminal;
  if (terminal === undefined) return null;
  const { verdict, deciding } = checkJointUnder({ joint, basis, connector: terminal, origin: "equipment" }, edition);
  return { verdict, rule: deciding.rule, sentence: deciding.sentence, clause: citationText(deciding.cite) };
}
