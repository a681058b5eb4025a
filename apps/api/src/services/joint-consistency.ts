import {
  type Basis,
  type Circuit,
  type ConductorGroup,
  type Connector,
  compareSizes,
  EDITIONS,
  type Insulation,
  type Joint,
  type Opening,
  sizeOf,
} from "@landfast/rules";
import { type Fault, pointerTo } from "../problems/problem.js";

/** Insulations for which the code gives no rating by type: their own rating may stand beside them. */
const RATED_BY_THEMSELVES: readonly Insulation[] = ["bare", "other", "equipment-lead", "fixture-wire"];

/** Rule set and edition together: "nfpa70 2023". */
const ANSWERED: ReadonlySet<string> = new Set(EDITIONS.map(({ ruleSet, edition }) => `${ruleSet} ${edition}`));

/**
 * What in a joint cannot be true together, though each field by itself has the right form.
 * @param pointer where the joint stands in the body.
 */
export function jointFaults(joint: Joint, pointer: string): readonly Fault[] {
  const faults: Fault[] = [];
  if (joint.basis !== undefined) faults.push(...basisFaults(joint.basis, pointerTo(pointer, "basis")));
  joint.conductors.forEach((group, index) => {
    conductorFaults(group, pointerTo(pointer, "conductors", index), faults);
  });
  if (joint.circuit !== undefined) circuitFaults(joint.circuit, pointerTo(pointer, "circuit"), faults);
  const choice = joint.connector;
  if (choice !== undefined && "described" in choice)
    connectorFaults(choice.described, pointerTo(pointer, "connector", "described"), faults);
  const terminal = joint.equipment?.terminal;
  if (terminal !== undefined) connectorFaults(terminal, pointerTo(pointer, "equipment", "terminal"), faults);
  else if (choice !== undefined && "equipmentTerminal" in choice)
    faults.push({
      pointer: pointerTo(pointer, "equipment", "terminal"),
      detail: "the joint is made in its equipment's own terminal, which is not described",
      accepted: "the terminal's description, or another connector",
    });
  if (joint.tightenedBefore === true && joint.rework !== true && choice === undefined)
    faults.push({
      pointer: pointerTo(pointer, "tightenedBefore"),
      detail: "the conductors were tightened before, and in what is not said",
      accepted: 'the connector that they lie in, or "rework": true where the joint is made again',
    });
  groundingFaults(joint, pointerTo(pointer, "grounding"), faults);
  const stud = joint.equipment?.stud;
  if (stud !== undefined && stud.holes > 1 && stud.spacing === undefined)
    faults.push(spacingMissing(pointerTo(pointer, "equipment", "stud", "spacing")));
  return faults;
}

/** Rule set and edition must name one that is answered; each word alone may be known while the pair is not. */
export function basisFaults(basis: Basis, pointer: string): readonly Fault[] {
  if (ANSWERED.has(`${basis.ruleSet} ${basis.edition}`)) return [];
  return [
    {
      pointer: pointerTo(pointer, "edition"),
      detail: `there are no rules for ${basis.ruleSet} ${basis.edition}`,
      accepted: [...ANSWERED].join(", "),
    },
  ];
}

function conductorFaults(group: ConductorGroup, pointer: string, faults: Fault[]): void {
  if (group.uncut !== undefined && group.duty !== "run")
    faults.push({
      pointer: pointerTo(pointer, "uncut"),
      detail: "only a conductor that runs through can stay uncut",
      accepted: 'uncut beside "duty": "run" only',
    });
  if (group.insulationRating !== undefined && !RATED_BY_THEMSELVES.includes(group.insulation))
    faults.push({
      pointer: pointerTo(pointer, "insulationRating"),
      detail: `the code gives the rating of ${group.insulation}; a rating beside it could contradict the code`,
      accepted: `no rating here; a rating beside ${RATED_BY_THEMSELVES.join(", ")} only`,
    });
}

function circuitFaults(circuit: Circuit, pointer: string, faults: Fault[]): void {
  if (
    circuit.loadA !== undefined &&
    (circuit.continuousLoadA !== undefined || circuit.nonContinuousLoadA !== undefined)
  )
    faults.push({
      pointer: pointerTo(pointer, "loadA"),
      detail: "the load is given twice: for sizing and in its parts",
      accepted: "loadA alone, or continuousLoadA with nonContinuousLoadA",
    });
}

function groundingFaults({ role, grounding }: Joint, pointer: string, faults: Fault[]): void {
  if (grounding?.bonding !== undefined && role !== "bonding")
    faults.push({
      pointer: pointerTo(pointer, "bonding"),
      detail: `what is bonded is said of a joint whose role is ${role}`,
      accepted: 'bonding beside "role": "bonding" only',
    });
  const raceways = grounding?.racewaysBondedApart;
  const sets = grounding?.service?.sets;
  if (raceways !== undefined && sets !== undefined && sets % raceways !== 0)
    faults.push({
      pointer: pointerTo(pointer, "racewaysBondedApart"),
      detail: `${String(sets)} sets do not divide evenly among ${String(raceways)} raceways`,
      accepted: "a number that divides the sets evenly",
    });
}

/** What in a connector cannot be true together; its faults are added to `faults`. */
export function connectorFaults(connector: Connector, pointer: string, faults: Fault[]): void {
  const screws = new Set<string>();
  connector.screws.forEach(({ id }, index) => {
    if (screws.has(id)) faults.push(twice(pointerTo(pointer, "screws", index, "id"), id));
    screws.add(id);
  });
  const openings = new Set<string>();
  connector.openings.forEach((opening, index) => {
    const at = pointerTo(pointer, "openings", index);
    if (openings.has(opening.id)) faults.push(twice(pointerTo(at, "id"), opening.id));
    openings.add(opening.id);
    openingFaults(opening, at, faults);
    if (opening.screw !== undefined && !screws.has(opening.screw))
      faults.push({
        pointer: pointerTo(at, "screw"),
        detail: `the connector has no screw "${opening.screw}"`,
        accepted: screws.size === 0 ? "no screw: the connector lists none" : `one of ${[...screws].join(", ")}`,
      });
  });
  const { mounting } = connector;
  if (mounting.kind === "pad" && mounting.pattern.holes > 1 && mounting.pattern.spacing === undefined)
    faults.push(spacingMissing(pointerTo(pointer, "mounting", "pattern", "spacing")));
}

function openingFaults(opening: Opening, pointer: string, faults: Fault[]): void {
  opening.ranges.forEach(({ from, to }, index) => {
    rangeFaults(from, to, pointerTo(pointer, "ranges", index), faults);
  });
  const { from, to } = opening.shared ?? {};
  if (from !== undefined && to !== undefined) rangeFaults(from, to, pointerTo(pointer, "shared"), faults);
}

function rangeFaults(from: string, to: string, pointer: string, faults: Fault[]): void {
  const [low, high] = [sizeOf(from), sizeOf(to)];
  if (low.series !== high.series)
    faults.push({
      pointer: pointerTo(pointer, "to"),
      detail: `the range mixes two systems: ${from} and ${to}`,
      accepted: "both ends in AWG or kcmil, or both in mm2",
    });
  else if (compareSizes(low, high) > 0)
    faults.push({
      pointer: pointerTo(pointer, "from"),
      detail: `the range begins above its end: ${from} is larger than ${to}`,
      accepted: `a size no larger than ${to}`,
    });
}

function twice(pointer: string, id: string): Fault {
  return { pointer, detail: `the id "${id}" stands twice`, accepted: "each id once" };
}

function spacingMissing(pointer: string): Fault {
  return {
    pointer,
    detail: "a pattern of more than one hole needs the spacing between hole centers",
    accepted: 'a length with its unit: {"value": 1.75, "unit": "in"}',
  };
}
