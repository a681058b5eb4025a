import type { CatalogueItem, Connector } from "../../core/connector.js";
import { add, type Exact, exactOf, multiply, numberOf } from "../../core/exact.js";
import type { Joint } from "../../core/joint.js";
import { type ConnectorOrigin, checkJointUnder } from "../joint/check-joint.js";
import type { JointFinding } from "../joint/joint-finding.js";
import { withProjectRules } from "../project-rules/rules-in-scope.js";
import type { Remedy, RemedyJoint, RemedyPart } from "./remedy.js";
import type { RemedyQuestion } from "./remedy-question.js";

/** How many connectors of one kind are proposed. */
export const SHOWN = 3;

/** A joint that was accepted, and the part that it takes from the catalogue. */
export interface AcceptedJoint {
  readonly joint: RemedyJoint;
  readonly item: CatalogueItem | undefined;
}

/**
 * A joint of a remedy with the project's rules for it. A remedy changes what their scope is told by (a stub is spliced,
 * legs are smaller, other equipment is of another kind), so they are chosen for each of its joints anew.
 */
export function underProject({ projectRules }: RemedyQuestion, joint: Joint): Joint {
  return withProjectRules(joint, projectRules);
}

/** Asks every rule about one joint of a remedy; undefined where the joint is not accepted. */
export function accepted(
  question: RemedyQuestion,
  joint: Joint,
  connector: Connector | CatalogueItem,
  origin: Extract<ConnectorOrigin, "catalogue" | "equipment">,
  where: RemedyJoint["where"],
  count = 1,
): AcceptedJoint | undefined {
  const named = withConnector(joint, connector, origin);
  const { basis, edition } = question;
  const finding = checkJointUnder({ joint: underProject(question, named), basis, connector, origin }, edition);
  if (!isAccepted(finding)) return undefined;
  return {
    joint: {
      where,
      joint: named,
      connector: { partNumber: finding.connector.partNumber, description: connector.description, origin },
      verdict: finding.verdict,
      conditions: finding.conditions.map(({ sentence }) => sentence),
      count,
    },
    item: "packQuantity" in connector ? connector : undefined,
  };
}

/** The joint made in the equipment's own terminal, where there is one and it accepts the joint. */
export function inOwnTerminal(question: RemedyQuestion, joint: Joint): AcceptedJoint | undefined {
  const terminal = joint.equipment?.terminal;
  return terminal === undefined ? undefined : accepted(question, joint, terminal, "equipment", "at-equipment");
}

/**
 * The joint made with the best connector of the catalogue in place of a terminal. An adapter is a remedy by itself
 * and is never put under another one.
 */
export function withPart(question: RemedyQuestion, joint: Joint): AcceptedJoint | undefined {
  return bestOf(question, withoutTerminal(joint), "at-equipment", ({ family }) => family !== "pin-adapter");
}

/** The best connector of the catalogue for a joint of a remedy, among those that a choice leaves. */
export function bestOf(
  question: RemedyQuestion,
  joint: Joint,
  where: RemedyJoint["where"],
  among: (item: CatalogueItem) => boolean,
  count = 1,
): AcceptedJoint | undefined {
  const [best] = question.judge
    .survey(underProject(question, joint))
    .accepted.filter(({ item }) => among(item))
    .sort(question.ranking.compare);
  return best === undefined ? undefined : accepted(question, joint, best.item, "catalogue", where, count);
}

/**
 * A remedy from its joints: their parts, and what these cost for one joint of the mark.
 * @param beyondParts something besides the parts has to be bought, so that the cost is not known.
 */
export function remedyOf(
  said: Pick<Remedy, "kind" | "sentence" | "provided">,
  joints: readonly AcceptedJoint[],
  beyondParts = false,
): Remedy {
  const items = joints.flatMap(({ joint, item }) => (item === undefined ? [] : [{ item, quantity: joint.count }]));
  return {
    kind: said.kind,
    sentence: said.sentence,
    joints: joints.map(({ joint }) => joint),
    parts: items.map(
      ({ item: { partNumber, description, price }, quantity }): RemedyPart => ({
        partNumber,
        description,
        quantity,
        price: price ?? null,
      }),
    ),
    cost: beyondParts ? null : costOf(items),
    labourHours: hoursOf(items),
    provided: said.provided,
  };
}

interface Bought {
  readonly item: CatalogueItem;
  readonly quantity: number;
}

/** Prices add as decimals; null where one is not known or where they are of unlike currencies. */
function costOf(items: readonly Bought[]): Remedy["cost"] {
  const currency = items[0]?.item.price?.currency;
  if (currency === undefined) return null;
  let total = exactOf(0);
  for (const { item, quantity } of items) {
    if (item.price?.currency !== currency) return null;
    total = add(total, multiply(exactOf(item.price.amount), exactOf(quantity)));
  }
  return { amount: decimalText(total), currency };
}

function hoursOf(items: readonly Bought[]): number | null {
  if (items.length === 0) return null;
  let total = exactOf(0);
  for (const { item, quantity } of items) {
    if (item.labourHours === undefined) return null;
    total = add(total, multiply(exactOf(item.labourHours), exactOf(quantity)));
  }
  return numberOf(total);
}

/** At least two places after the point, as money is written; more where the prices have them. */
function decimalText({ numerator, denominator }: Exact): string {
  const whole = numerator / denominator;
  let rest = numerator % denominator;
  let places = "";
  while (rest !== 0n || places.length < 2) {
    rest *= 10n;
    places += String(rest / denominator);
    rest %= denominator;
  }
  return `${String(whole)}.${places}`;
}

/** The joint as it is once the equipment's own terminal is taken off. */
export function withoutTerminal(joint: Joint): Joint {
  if (joint.equipment === undefined) return joint;
  const { terminal: _terminal, ...equipment } = joint.equipment;
  return { ...joint, equipment };
}

function withConnector(joint: Joint, { partNumber }: Connector, origin: ConnectorOrigin): Joint {
  return {
    ...joint,
    connector: origin === "equipment" || partNumber === undefined ? { equipmentTerminal: true } : { partNumber },
  };
}

function isAccepted(finding: JointFinding): finding is JointFinding & { verdict: RemedyJoint["verdict"] } {
  return finding.verdict === "accept" || finding.verdict === "accept-with-conditions";
}
