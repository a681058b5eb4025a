import { CAUTION } from "../../core/caution.js";
import type { CatalogueItem } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { Basis, Equipment, Joint } from "../../core/joint.js";
import type { ProjectRule } from "../../core/project-rule.js";
import { RULES_VERSION } from "../../core/rules-version.js";
import { checkJointUnder, jointUnder } from "../joint/check-joint.js";
import type { JointFinding } from "../joint/joint-finding.js";
import { withProjectRules } from "../project-rules/rules-in-scope.js";
import { judgeOf } from "../selection/catalogue-judge.js";
import { withoutOffer } from "../selection/joint-class.js";
import { rankingOf } from "../selection/rank.js";
import type { RankingContext } from "../selection/selection.js";
import { namedEquipment, otherFrames } from "./larger-frame.js";
import { parallelSets } from "./parallel-sets.js";
import { lugKits, openParts, pinAdapters } from "./ready-made.js";
import type { Remedies } from "./remedy.js";
import type { RemedyQuestion } from "./remedy-question.js";
import { stubs } from "./stub.js";

/** What is asked beside the joint and the catalogue. */
export interface RemedyOptions {
  readonly context: RankingContext;
  readonly equipmentInstead: readonly Equipment[];
  readonly projectRules?: readonly ProjectRule[];
}

/**
 * Ways to land a conductor that does not land as it is, each checked by every rule at both of its ends.
 *
 * Looked for where a termination is refused, or is not yet decided, as it is offered: in the connector it names, else in
 * the terminal of its equipment; where neither is given, always. A proposal is never more than its joints: each of them is accepted by
 * itself, or it is not proposed. What only lacks a fact is listed apart, with the fact.
 * @param joint without rules of the project: those in `options` are asked about it, and about each joint of a remedy.
 * @throws RangeError for a size that cannot be read or a part number that the catalogue does not hold.
 */
export function remediesUnder(
  joint: Joint,
  basis: Basis,
  catalogue: readonly CatalogueItem[],
  options: RemedyOptions,
  edition: Edition,
): Remedies {
  const answer = (because: string, found: Pick<Remedies, "remedies" | "open">): Remedies => ({
    basis,
    rulesVersion: RULES_VERSION,
    because,
    remedies: found.remedies,
    open: found.open,
    caution: CAUTION,
  });
  if (joint.function !== "termination")
    return answer(
      `Remedies are for conductors that do not land at equipment; for a ${joint.function} the candidates say what serves.`,
      NOTHING,
    );
  const { context, equipmentInstead, projectRules = [] } = options;
  const offered = offeredFinding(withProjectRules(joint, projectRules), basis, catalogue, edition);
  if (offered?.verdict === "accept" || offered?.verdict === "accept-with-conditions")
    return answer("The joint is allowed as it is offered; no remedy is needed.", NOTHING);
  const question: RemedyQuestion = {
    joint: jointUnder(withoutOffer(joint), basis),
    basis,
    edition,
    judge: judgeOf(catalogue, edition),
    ranking: rankingOf(context),
    equipmentInstead,
    projectRules,
  };
  return answer(offered === undefined ? "No terminal and no connector is offered." : offered.deciding.sentence, {
    remedies: [
      ...lugKits(question),
      ...pinAdapters(question),
      ...stubs(question),
      ...parallelSets(question),
      ...namedEquipment(question),
    ],
    open: [...openParts(question), ...otherFrames(question)],
  });
}

const NOTHING: Pick<Remedies, "remedies" | "open"> = { remedies: [], open: [] };

/** The finding for the connector that the joint names, else for its equipment's own terminal. */
function offeredFinding(
  joint: Joint,
  basis: Basis,
  catalogue: readonly CatalogueItem[],
  edition: Edition,
): JointFinding | undefined {
  const choice = joint.connector;
  if (choice !== undefined && "partNumber" in choice) {
    const connector = catalogue.find(({ partNumber }) => partNumber === choice.partNumber);
    if (connector === undefined) throw new RangeError(`the catalogue has no part ${choice.partNumber}`);
    return checkJointUnder({ joint, basis, connector, origin: "catalogue" }, edition);
  }
  if (choice !== undefined && "described" in choice)
    return checkJointUnder({ joint, basis, connector: choice.described, origin: "request" }, edition);
  const terminal = joint.equipment?.terminal;
  return terminal === undefined
    ? undefined
    : checkJointUnder({ joint, basis, connector: terminal, origin: "equipment" }, edition);
}
