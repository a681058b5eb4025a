import type { CatalogueItem } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { Basis, Joint } from "../../core/joint.js";
import { checkJointUnder, type JointQuestion, jointUnder, judgeJoint } from "../joint/check-joint.js";
import type { JointFinding } from "../joint/joint-finding.js";
import { judgeOf, type Standing } from "./catalogue-judge.js";
import { explainMisses } from "./nearest-miss.js";
import { byNearness, type Ranking, rankingOf } from "./rank.js";
import type { Candidate, Selection } from "./selection.js";

/** How many runners-up an answer shows. */
const SHOWN = 3;

/** A schedule knows nothing of what else is in the job: a joint's connector never depends on its neighbors'. */
const BY_ITSELF = rankingOf({});

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
 * The order of the catalogue never matters. Where more is known of the job, `RANK_LINES` has the lines that it adds.
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
  const [best, ...others] = [...accepted].sort(BY_ITSELF.compare);
  if (best !== undefined)
    return {
      selection: {
        chosen: candidateOf(best),
        runnersUp: others.slice(0, SHOWN).map(candidateOf),
        excluded,
        nearestMisses: [],
        because: reasonFor(best, others, BY_ITSELF),
      },
      finding: checkJointUnder(question(best), edition),
    };
  const misses = judge.misses(inForce).sort((a, b) => byNearness(a, b, BY_ITSELF));
  const [nearest] = misses;
  const { nearestMisses, because } = explainMisses(misses, (miss) => judgeJoint(question(miss), edition));
  return {
    selection: { chosen: null, runnersUp: [], excluded, nearestMisses, because },
    finding: nearest === undefined ? null : checkJointUnder(question(nearest), edition),
  };
}

/** A connector that passed every rule, as an answer shows it. */
export function candidateOf({ item, verdict, conditions }: Standing): Candidate {
  return {
    partNumber: item.partNumber,
    description: item.description,
    verdict,
    conditions,
    price: item.price ?? null,
    labourHours: item.labourHours ?? null,
  };
}

/** Why the first of those that every rule accepts stands there. */
export function reasonFor(best: Standing, others: readonly Standing[], ranking: Ranking): string {
  const [next] = others;
  if (next === undefined) return "It is the only connector of the catalogue that every rule accepts.";
  return `Of ${String(others.length + 1)} connectors that every rule accepts, ${ranking.because(best, next)}.`;
}
