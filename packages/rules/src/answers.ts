/** The questions the library answers, with the basis resolved to its edition. */
import type { CatalogueItem } from "./core/connector.js";
import type { Basis, Equipment, Job, Joint } from "./core/joint.js";
import type { ProjectRule } from "./core/project-rule.js";
import { editionOf } from "./rulesets/editions.js";
import { checkJointUnder, type JointQuestion } from "./topics/joint/check-joint.js";
import type { JointFinding } from "./topics/joint/joint-finding.js";
import { withProjectRules } from "./topics/project-rules/rules-in-scope.js";
import { candidatesWithRemedies, type JointCandidates } from "./topics/remedies/candidates-with-remedies.js";
import { remediesUnder } from "./topics/remedies/find-remedies.js";
import type { Remedies } from "./topics/remedies/remedy.js";
import { type ScheduledJob, scheduleInSteps } from "./topics/schedule/schedule-job.js";
import { type ClassCandidates, candidatesByClass } from "./topics/selection/candidates-by-class.js";
import { type SelectedConnector, selectConnectorsUnder } from "./topics/selection/select-connectors.js";
import type { RankingContext } from "./topics/selection/selection.js";

/** What the project asks beyond the code; it may refuse, never allow. Sizes in it must be readable. */
interface AsksForProject {
  readonly projectRules?: readonly ProjectRule[];
}

/**
 * One joint with one connector: verdict, findings with their derivation, torque, strip length, preparation, duties.
 * @throws RangeError for an edition that is not answered or a size that cannot be read.
 */
export function checkJoint(question: JointQuestion & AsksForProject): JointFinding {
  const { joint, basis, connector, origin, projectRules } = question;
  const edition = editionOf(basis);
  return projectRules === undefined
    ? checkJointUnder(question, edition)
    : checkJointUnder({ joint: withProjectRules(joint, projectRules), basis, connector, origin }, edition);
}

/** What a catalogue offers for a joint: the one chosen, the runners-up, or the nearest miss and why. */
export function selectConnectors(
  question: {
    readonly joint: Joint;
    readonly basis: Basis;
    readonly catalogue: readonly CatalogueItem[];
  } & AsksForProject,
): SelectedConnector {
  const { joint, basis, catalogue, projectRules } = question;
  return selectConnectorsUnder(withProjectRules(joint, projectRules), basis, catalogue, editionOf(basis));
}

/**
 * Which connectors of a catalogue each joint of a job can be made with. Joints that are equal in everything the rules
 * look at are one class and are judged once; a connector that a joint names is set aside, as if none were offered.
 * @param question `basis` is that of the job; a joint's own goes before it.
 * @returns the classes in the order of their first joints; each joint is in exactly one.
 * @throws RangeError for an edition that is not answered or a size that cannot be read.
 */
export function candidatesForJob(
  question: {
    readonly joints: readonly Joint[];
    readonly basis: Basis;
    readonly catalogue: readonly CatalogueItem[];
  } & AsksForProject,
): ClassCandidates[] {
  const { joints, basis, catalogue, projectRules } = question;
  const held = projectRules === undefined ? joints : joints.map((joint) => withProjectRules(joint, projectRules));
  return candidatesByClass(held, basis, catalogue, editionOf);
}

/**
 * Everything a catalogue offers for one joint, best first, with what keeps the rest out; where nothing fits, ways to
 * land the conductor all the same.
 * @throws RangeError for an edition that is not answered or a size that cannot be read.
 */
export function candidatesFor(
  question: {
    readonly joint: Joint;
    readonly basis: Basis;
    readonly catalogue: readonly CatalogueItem[];
    readonly context?: RankingContext;
  } & AsksForProject,
): JointCandidates {
  const { joint, basis, catalogue, context = {}, projectRules = [] } = question;
  return candidatesWithRemedies(joint, basis, catalogue, context, projectRules, editionOf(basis));
}

/**
 * Ways to land a conductor that does not land as it is, each checked by every rule at both of its ends.
 * @throws RangeError for an edition that is not answered, a size that cannot be read or an unknown part number.
 */
export function remediesFor(
  question: {
    readonly joint: Joint;
    readonly basis: Basis;
    readonly catalogue: readonly CatalogueItem[];
    readonly context?: RankingContext;
    readonly equipmentInstead?: readonly Equipment[];
  } & AsksForProject,
): Remedies {
  const { joint, basis, catalogue, context = {}, equipmentInstead = [], projectRules = [] } = question;
  return remediesUnder(joint, basis, catalogue, { context, equipmentInstead, projectRules }, editionOf(basis));
}

/** The connector schedule of a job; equal joints are judged once. */
export function scheduleJob(job: Job, catalogue: readonly CatalogueItem[]): ScheduledJob {
  const steps = scheduleJobInSteps(job, catalogue);
  for (;;) {
    const { done, value } = steps.next();
    if (done === true) return value;
  }
}

/** The same, one joint per step, for a caller that must let other work in between. */
export function scheduleJobInSteps(job: Job, catalogue: readonly CatalogueItem[]): Generator<undefined, ScheduledJob> {
  return scheduleInSteps(job, catalogue, editionOf);
}
