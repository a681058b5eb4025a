import {
  type Basis,
  checkJoint,
  type Joint,
  type JointFinding,
  type ProjectRule,
  withProjectRules,
} from "@landfast/rules";
import { Problem } from "../problems/problem.js";
import type { Catalogue } from "./catalogue.js";
import { basisFaults, jointFaults } from "./joint-consistency.js";
import { projectRuleFaults } from "./project-rule-consistency.js";
import { unknownPart } from "./unknown-part.js";

/** One joint with the connector it names. */
export interface CompatibilityQuestion {
  readonly basis: Basis;
  readonly joint: Joint;
  readonly projectRules?: readonly ProjectRule[];
}

/**
 * Whether one joint is allowed with its connector. Nothing is stored.
 * @throws Problem when the facts contradict each other, the part is unknown, or no connector is named.
 */
export function checkCompatibility(
  { basis, joint: posted, projectRules }: CompatibilityQuestion,
  catalogue: Catalogue,
): JointFinding {
  const faults = [
    ...basisFaults(basis, "/basis"),
    ...jointFaults(posted, "/joint"),
    ...projectRuleFaults(projectRules),
  ];
  if (faults.length > 0)
    throw new Problem("INCONSISTENT_REQUEST", "The facts of the joint contradict each other.", faults);
  const joint = withProjectRules(posted, projectRules);
  const inForce = joint.basis ?? basis;
  const choice = joint.connector;
  if (choice !== undefined && "partNumber" in choice) {
    const connector = catalogue.byPartNumber.get(choice.partNumber);
    if (connector === undefined)
      throw unknownPart([{ pointer: "/joint/connector/partNumber", partNumber: choice.partNumber }], catalogue);
    return checkJoint({ joint, basis: inForce, connector, origin: "catalogue" });
  }
  if (choice !== undefined && "described" in choice)
    return checkJoint({ joint, basis: inForce, connector: choice.described, origin: "request" });
  const terminal = joint.equipment?.terminal;
  if (terminal === undefined)
    throw new Problem("INCONSISTENT_REQUEST", "No connector is named to check the joint with.", [
      {
        pointer: "/joint/connector",
        detail: "no connector is given, and the equipment's own terminal is not described",
        accepted: "a partNumber of the catalogue, a described connector, or equipment with its terminal",
      },
    ]);
  return checkJoint({ joint, basis: inForce, connector: terminal, origin: "equipment" });
}
