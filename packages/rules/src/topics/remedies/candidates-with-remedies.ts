import type { CatalogueItem } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { Basis, Joint } from "../../core/joint.js";
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

/** The candidates of a joint; remedies where there is none and the equipment's own terminal does not serve either. */
export function candidatesWithRemedies(
  joint: Joint,
  basis: Basis,
  catalogue: readonly CatalogueItem[],
  context: RankingContext,
  edition: Edition,
): JointCandidates {
  const offered = candidatesUnder(joint, basis, catalogue, context, edition);
  const fits = offered.candidates.length > 0 || offered.ownTerminal?.verdict.startsWith("accept") === true;
  if (fits) return { ...offered, remedies: null };
  const { because, remedies, open } = remediesUnder(
    withoutOffer(joint),
    basis,
    catalogue,
    { context, equipmentInstead: [] },
    edition,
  );
  return { ...offered, remedies: { because, remedies, open } };
}
