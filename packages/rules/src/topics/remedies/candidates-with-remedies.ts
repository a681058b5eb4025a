import type { CatalogueItem } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { Basis, Joint } from "../../core/joint.js";
import type { ProjectRule } from "../../core/project-rule.js";
import { withProjectRules } from "../project-rules/rules-in-scope.js";
import { candidatesUnder } from "../selection/candidates.js";
import { withoutOffer } from "../selection/joint-class.js";
import type { Candidates, RankingContext } from "../selection/selection.js";
import { remediesUnder } from "./find-remedies.js";
import type { Remedies } from "./remedy.js";

/** What a catalogue offers for one joint. */
export interface JointCandidates extends Candidates {
  /** Ways to land the conductor where nothing fits; null where something does. */
  readonly remedies: Pick<Remedies, "because" | "remedies" | "open"> | null;
}

/**
 * The candidates of a joint; remedies where there is none and the equipment's own terminal does not serve either.
 * @param projectRules all rules of the project, those for the joint and others.
 */
export function candidatesWithRemedies(
  joint: Joint,
  basis: Basis,
  catalogue: readonly CatalogueItem[],
  context: RankingContext,
  projectRules: readonly ProjectRule[],
  edition: Edition,
): JointCandidates {
  const offered = candidatesUnder(withProjectRules(joint, projectRules), basis, catalogue, context, edition);
  const fits = offered.candidates.length > 0 || offered.ownTerminal?.verdict.startsWith("accept") === true;
  if (fits) return { ...offered, remedies: null };
  const { because, remedies, open } = remediesUnder(
    withoutOffer(joint),
    basis,
    catalogue,
    { context, equipmentInstead: [], projectRules },
    edition,
  );
  return { ...offered, remedies: { because, remedies, open } };
}
