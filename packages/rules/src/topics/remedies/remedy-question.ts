import type { Edition } from "../../core/edition.js";
import type { Basis, Equipment, Joint } from "../../core/joint.js";
import type { ProjectRule } from "../../core/project-rule.js";
import type { CatalogueJudge } from "../selection/catalogue-judge.js";
import type { Ranking } from "../selection/rank.js";

/** A conductor that does not land, and what there is to help it. */
export interface RemedyQuestion {
  /** Without the connector it was offered and without rules of the project, the basis in force in it. */
  readonly joint: Joint;
  readonly basis: Basis;
  readonly edition: Edition;
  readonly judge: CatalogueJudge;
  readonly ranking: Ranking;
  /** Other equipment that could be ordered in place of the joint's. */
  readonly equipmentInstead: readonly Equipment[];
  /** All of them: which are for a joint of a remedy is asked of that joint. */
  readonly projectRules: readonly ProjectRule[];
}
