import { CAUTION } from "../../core/caution.js";
import type { CatalogueItem, Connector } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { CheckFinding, Duty, MissingFact, NotApplicable, Step } from "../../core/finding.js";
import type { Basis, Joint } from "../../core/joint.js";
import type { JointSubject, Landing } from "../../core/rule.js";
import { RULES_VERSION } from "../../core/rules-version.js";
import { assumptionsIn, unconfirmedIn } from "../../core/what-it-rests-on.js";
import { landConductors } from "../openings/land-conductors.js";
import { dutiesOnSite } from "../preparation/duties-on-site.js";
import { preparation } from "../preparation/preparation.js";
import { tighteningTorque } from "../torque/tightening-torque.js";
import type { JointFinding, OpeningUse, Verdict } from "./joint-finding.js";
import { GOVERNING, JOINT_RULES } from "./joint-rules.js";

export type ConnectorOrigin = "catalogue" | "request" | "equipment";

/** One joint and the connector it is to be made with. */
export interface JointQuestion {
  readonly joint: Joint;
  /** The basis in force for this joint. */
  readonly basis: Basis;
  readonly connector: Connector | CatalogueItem;
  readonly origin: ConnectorOrigin;
}

/** The outcomes of every rule for one joint with one connector: enough for a verdict, without the working papers. */
export interface JointOutcome {
  readonly verdict: Verdict;
  readonly subject: JointSubject;
  readonly findings: readonly CheckFinding[];
  readonly notApplicable: readonly NotApplicable[];
}

/**
 * Runs every rule of the joint.
 * @throws RangeError when a size in the question cannot be read: callers validate sizes first.
 */
export function judgeJoint(question: JointQuestion, edition: Edition): JointOutcome {
  return judge(question, edition, false);
}

/**
 * The same up to the first failure, which decides by itself: enough to tell which of many connectors are allowed and
 * which rule keeps each of the others out, at a fraction of the work.
 */
export function judgeToFirstFailure(question: JointQuestion, edition: Edition): JointOutcome {
  return judge(question, edition, true);
}

function judge(question: JointQuestion, edition: Edition, toFirstFailure: boolean): JointOutcome {
  const subject = subjectOf(question);
  const findings: CheckFinding[] = [];
  const notApplicable: NotApplicable[] = [];
  for (const rule of JOINT_RULES) {
    const answer = rule.check(subject, edition);
    if (answer.outcome === "not-applicable") notApplicable.push(answer);
    else findings.push(answer);
    if (toFirstFailure && answer.outcome === "fail") break;
  }
  return { verdict: verdictOf(findings), subject, findings, notApplicable };
}

/** Answers whether the joint is allowed, why, and how it is made. */
export function checkJointUnder(question: JointQuestion, edition: Edition): JointFinding {
  return jointFinding(question, judgeJoint(question, edition), edition);
}

/** Writes out the full answer for outcomes already reached. */
export function jointFinding(question: JointQuestion, outcome: JointOutcome, edition: Edition): JointFinding {
  const { subject, findings, verdict } = outcome;
  const accepted = verdict === "accept" || verdict === "accept-with-conditions";
  const torque = accepted ? tighteningTorque(subject, edition) : [];
  const decided = decidingFinding(findings);
  const derivations = [...findings, ...torque].map(({ steps }) => steps);
  return {
    basis: question.basis,
    rulesVersion: RULES_VERSION,
    verdict,
    deciding: { rule: decided.rule, sentence: decided.sentence, cite: decided.cite },
    connector: {
      partNumber: question.connector.partNumber ?? null,
      description: question.connector.description,
      family: question.connector.family,
      origin: question.origin,
    },
    openings: openingUses(subject),
    findings,
    notApplicable: outcome.notApplicable,
    torque,
    stripLengths: accepted
      ? subject.landings
          .map(({ opening }) => ({ opening: opening.id, length: opening.stripLength ?? null }))
          .filter(firstOfOpening)
      : [],
    preparation: accepted ? preparation(subject, edition) : null,
    tooling: accepted ? (question.connector.tooling ?? null) : null,
    conditions: accepted ? conditionsOf(findings) : [],
    dutiesOnSite: accepted ? dutiesOnSite(subject, edition) : [],
    missing: missingOf(findings),
    assumptions: assumptionsIn(derivations),
    caveats: caveatsOf(derivations, question.connector),
    advice: adviceOf(findings),
    caution: CAUTION,
  };
}

function subjectOf({ joint, basis, connector, origin }: JointQuestion): JointSubject {
  return new Subject(
    jointUnder(joint, basis),
    connector,
    origin === "equipment" ? "joint/equipment/terminal" : "connector",
  );
}

/** Lands the conductors when a rule first asks: most of a catalogue is refused before anyone does. */
class Subject implements JointSubject {
  readonly joint: Joint;
  readonly connector: Connector;
  readonly origin: JointSubject["origin"];
  #landings: readonly Landing[] | undefined = undefined;

  constructor(joint: Joint, connector: Connector, origin: JointSubject["origin"]) {
    this.joint = joint;
    this.connector = connector;
    this.origin = origin;
  }

  get landings(): readonly Landing[] {
    this.#landings ??= landConductors(this.joint, this.connector);
    return this.#landings;
  }
}

/** The joint with the basis in force put into it: rules that depend on the date of installation read it there. */
export function jointUnder(joint: Joint, basis: Basis): Joint {
  return joint.basis === basis ? joint : { ...joint, basis };
}

function verdictOf(findings: readonly CheckFinding[]): Verdict {
  let missing = false;
  let conditions = false;
  for (const finding of findings) {
    if (finding.outcome === "fail") return "reject";
    if (finding.outcome === "missing") missing = true;
    if (finding.conditions.length > 0) conditions = true;
  }
  if (missing) return "needs-information";
  return conditions ? "accept-with-conditions" : "accept";
}

/** The first failure, else the first missing fact, else the pass that governs. */
export function decidingFinding(findings: readonly CheckFinding[]): CheckFinding {
  const decided =
    findings.find((finding) => finding.outcome === "fail") ??
    findings.find((finding) => finding.outcome === "missing") ??
    governingPass(findings);
  if (decided === undefined) throw new Error("no rule applied to the joint; an answer without a rule is not given");
  return decided;
}

function governingPass(findings: readonly CheckFinding[]): CheckFinding | undefined {
  for (const id of GOVERNING) {
    const finding = findings.find((one) => one.rule === id);
    if (finding !== undefined) return finding;
  }
  return findings[0];
}

function openingUses(subject: JointSubject): OpeningUse[] {
  return subject.landings.map((landing) => ({
    opening: landing.opening.id,
    instance: landing.instance,
    conductors: landing.conductors.map(({ conductor, count }) => ({
      count,
      metal: conductor.metal,
      size: conductor.size,
      stranding: conductor.stranding,
    })),
  }));
}

/** Conditions of all findings, each duty once. */
function conditionsOf(findings: readonly CheckFinding[]): Duty[] {
  const kept: Duty[] = [];
  for (const finding of findings)
    for (const duty of finding.conditions)
      if (!kept.some((one) => one.duty === duty.duty && one.sentence === duty.sentence)) kept.push(duty);
  return kept;
}

function missingOf(findings: readonly CheckFinding[]): MissingFact[] {
  const kept: MissingFact[] = [];
  for (const finding of findings)
    for (const fact of finding.missing) if (!kept.some((one) => one.path === fact.path)) kept.push(fact);
  return kept;
}

function caveatsOf(derivations: readonly (readonly Step[])[], connector: Connector | CatalogueItem): readonly string[] {
  const unconfirmed = unconfirmedIn(derivations);
  return "status" in connector && connector.status === "invented" ? [INVENTED, ...unconfirmed] : unconfirmed;
}

const INVENTED = "The connector is invented, for demonstration only; buy and install nothing by it.";

function adviceOf(findings: readonly CheckFinding[]): string[] {
  const kept: string[] = [];
  for (const finding of findings) for (const advice of finding.advice) if (!kept.includes(advice)) kept.push(advice);
  return kept;
}

/** Equal openings share one strip length; it is said once. */
function firstOfOpening<T extends { readonly opening: string }>(one: T, index: number, all: readonly T[]): boolean {
  return all.findIndex((other) => other.opening === one.opening) === index;
}
