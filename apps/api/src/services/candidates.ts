import {
  type Basis,
  type ConnectorSchedule,
  candidatesFor,
  type Equipment,
  type Joint,
  type JointCandidates,
  type ProjectRule,
  type RankingContext,
  type Remedies,
  remediesFor,
} from "@landfast/rules";
import { type Fault, Problem, pointerTo } from "../problems/problem.js";
import type { Catalogue } from "./catalogue.js";
import type { JobService, PostedJob } from "./jobs.js";
import { basisFaults, jointFaults } from "./joint-consistency.js";
import { projectRuleFaults } from "./project-rule-consistency.js";
import { unknownPart } from "./unknown-part.js";

/** One joint, and what is known of the job around it. */
export interface CandidatesQuestion extends Pick<PostedJob, "catalogue"> {
  readonly basis: Basis;
  readonly joint: Joint;
  readonly context?: RankingContext;
  readonly projectRules?: readonly ProjectRule[];
}

export interface RemediesQuestion extends CandidatesQuestion {
  readonly equipmentInstead?: readonly Equipment[];
}

export interface CandidateService {
  /** @throws Problem INCONSISTENT_REQUEST, UNKNOWN_PART_NUMBER, and what an unknown catalogue is refused with. */
  forJoint(question: CandidatesQuestion): Promise<JointCandidates>;
  /** @throws Problem as `forJoint`. */
  remedies(question: RemediesQuestion): Promise<Remedies>;
  /**
   * For a joint of a stored job, with the job's catalogue; the parts of its other marks are in the job already.
   * @throws Problem JOB_NOT_FOUND, JOINT_NOT_FOUND.
   */
  forStoredJoint(id: string, mark: string): Promise<JointCandidates>;
}

/** What the service needs around it. */
export interface CandidateServiceParts {
  readonly jobs: Pick<JobService, "get" | "summary">;
  /** The catalogue that a question or a job names, or the one in use. */
  readonly catalogueFor: (named: Pick<PostedJob, "catalogue">) => Promise<Catalogue>;
}

export function candidateService({ jobs, catalogueFor }: CandidateServiceParts): CandidateService {
  return {
    async forJoint(question) {
      const { basis, joint, context, projectRules } = question;
      const catalogue = await catalogueFor(question);
      refuseFaults(question, [], catalogue);
      return candidatesFor({
        joint,
        basis: joint.basis ?? basis,
        catalogue: catalogue.items,
        ...(context === undefined ? {} : { context }),
        ...(projectRules === undefined ? {} : { projectRules }),
      });
    },
    async remedies(question) {
      const { basis, joint, context, projectRules, equipmentInstead = [] } = question;
      const catalogue = await catalogueFor(question);
      refuseFaults(question, equipmentInstead, catalogue);
      return remediesFor({
        joint,
        basis: joint.basis ?? basis,
        catalogue: catalogue.items,
        equipmentInstead,
        ...(context === undefined ? {} : { context }),
        ...(projectRules === undefined ? {} : { projectRules }),
      });
    },
    async forStoredJoint(id, mark) {
      const { job: head, posted } = await jobs.get(id);
      const job = JSON.parse(posted) as PostedJob;
      const joint = job.joints.find((one) => one.mark === mark);
      if (joint === undefined) throw new Problem("JOINT_NOT_FOUND", `The job has no joint with the mark "${mark}".`);
      const { totals } = JSON.parse(await jobs.summary(id)) as Pick<ConnectorSchedule, "totals">;
      const { on } = head.catalogue;
      const { items } = await catalogueFor(
        job.catalogue === undefined || on === undefined ? job : { catalogue: { ...job.catalogue, on } },
      );
      const inJob = totals.filter(({ marks }) => marks.some((one) => one !== mark)).map(({ partNumber }) => partNumber);
      const { projectRules } = job;
      return candidatesFor({
        joint,
        basis: joint.basis ?? job.basis,
        catalogue: items,
        context: { inJob },
        ...(projectRules === undefined ? {} : { projectRules }),
      });
    },
  };
}

function refuseFaults(
  { basis, joint, projectRules }: CandidatesQuestion,
  equipmentInstead: readonly Equipment[],
  catalogue: Catalogue,
): void {
  const faults: Fault[] = [
    ...basisFaults(basis, "/basis"),
    ...jointFaults(joint, "/joint"),
    ...projectRuleFaults(projectRules),
  ];
  equipmentInstead.forEach((equipment, index) => {
    faults.push(...equipmentFaults(joint, equipment, pointerTo("/equipmentInstead", index)));
  });
  if (faults.length > 0)
    throw new Problem("INCONSISTENT_REQUEST", "The facts of the joint contradict each other.", faults);
  const choice = joint.connector;
  if (choice !== undefined && "partNumber" in choice && !catalogue.byPartNumber.has(choice.partNumber))
    throw unknownPart([{ pointer: "/joint/connector/partNumber", partNumber: choice.partNumber }], catalogue);
}

/** What is wrong with other equipment, as it would be wrong with the joint's own. */
function equipmentFaults(joint: Joint, equipment: Equipment, pointer: string): Fault[] {
  const { connector: _connector, ...rest } = joint;
  const own = "/equipment";
  return jointFaults({ ...rest, equipment }, "")
    .filter((fault) => fault.pointer.startsWith(own))
    .map((fault) => ({ ...fault, pointer: `${pointer}${fault.pointer.slice(own.length)}` }));
}
