/** The questions the library answers, with the basis resolved to its edition. */
import type { CatalogueItem } from "./core/connector.js";
import type { Basis, Equipment, Job, Joint } from "./core/joint.js";
import { editionOf } from "./rulesets/editions.js";
import { checkJointUnder, type JointQuestion } from "./topics/joint/check-joint.js";
import type { JointFinding } from "./topics/joint/joint-finding.js";
import { candidatesWithRemedies, type JointCandidates } from "./topics/remedies/candidates-with-remedies.js";
import { remediesUnder } from "./topics/remedies/find-remedies.js";
import type { Remedies } from "./topics/remedies/remedy.js";
import { type ScheduledJob, scheduleInSteps } from "./topics/schedule/schedule-job.js";
import { type ClassCandidates, candidatesByClass } from "./topics/selection/candidates-by-class.js";
import { type SelectedConnector, selectConnectorsUnder } from "./topics/selection/select-connectors.js";
import type { RankingContext } from "./topics/selection/selection.js";

/**
 * One joint with one connector: verdict, findings with their derivation, torque, strip length, preparation, duties.
 * @throws RangeError for an edition that is not answered or a size that cannot be read.
 */
export function checkJoint(question: JointQuestion): JointFinding {
  return checkJointUnder(question, editionOf(question.basis));
}

/** What a catalogue offers for a joint: the one chosen, the runners-up, or the nearest miss and why. */
export function selectConnectors(question: {
  readonly joint: Joint;
  readonly basis: Basis;
  readonly catalogue: readonly CatalogueItem[];
}): SelectedConnector {
  return selectConnectorsUnder(question.joint, question.basis, question.catalogue, editionOf(question.basis));
}

/**
 * Which connectors of a catalogue each joint of a job can be made with. Joints that are equal in everything the rules
 * look at are one class and are judged once; a connector that a joint names is set aside, as if none were offered.
 * @param question `basis` is that of the job; a joint's own goes before it.
 * @returns the classes in the order of their first joints; each joint is in exactly one.
 * @throws RangeError for an edition that is not answered or a size that cannot be read.
 */
export function candidatesForJob(question: {
  readonly joints: readonly Joint[];
  readonly basis: Basis;
  readonly catalogue: readonly CatalogueItem[];
}): ClassCandidates[] {
  return candidatesByClass(question.joints, question.basis, question.catalogue, editionOf);
}

/**
 * Everything a catalogue offers for one joint, best first, with what keeps the rest out; where nothing fits, ways to
 * land the conductor all the same.
 * @throws RangeError for an edition that is not answered or a size that cannot be read.
 */
export function candidatesFor(question: {
  readonly joint: Joint;
  readonly basis: Basis;
  readonly catalogue: readonly CatalogueItem[];
  readonly context?: RankingContext;
}): JointCandidates {
  const { joint, basis, catalogue, context = {} } = question;
  return candidatesWithRemedies(joint, basis, catalogue, context, editionOf(basis));
}

/**
 * Ways to land a conductor that does not land as it is, each checked by every rule at both of its ends.
 * @throws RangeError for an edition that is not answered, a size that cannot be read or an unknown part number.
 */
export function remediesFor(question: {
  readonly joint: Joint;
  readonly basis: Basis;
  readonly catalogue: readonly CatalogueItem[];
  readonly context?: RankingContext;
  readonly equipmentInstead?: readonly Equipment[];
}): Remedies {
  const { joint, basis, catalogue, context = {}, equipmentInstead = [] } = question;
  return remediesUnder(joint, basis, catalogue, { context, equipmentInstead }, editionOf(basis));
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
