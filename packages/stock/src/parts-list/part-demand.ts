import { type Exact, exactOf } from "@landfast/rules";
import { decimalOf, plus, times, ZERO } from "../money/decimal.js";
import type { JointUse } from "./parts-list-question.js";

/** Parts that one mark takes of one part number, as its connector or as a need. */
export interface PartDemand {
  readonly partNumber: string;
  readonly parts: Exact;
  readonly use: JointUse;
}

/**
 * Everything that the joints of a use take: connectors and needs for which a part is chosen.
 * Worked: 12 joints with one lug, one cover and 0.02 tube of compound each: 12, 12 and 0.24.
 */
export function demandsOf(use: JointUse): PartDemand[] {
  const joints = exactOf(use.joints);
  return [
    { partNumber: use.partNumber, parts: times(joints, exactOf(use.partsPerJoint)), use },
    ...(use.needs ?? []).flatMap(({ partNumber, perJoint }) =>
      partNumber === null ? [] : [{ partNumber, parts: times(joints, decimalOf(perJoint)), use }],
    ),
  ];
}

/** Demands by part number, in the order of part numbers. */
export function byPart(uses: readonly JointUse[]): ReadonlyMap<string, readonly PartDemand[]> {
  const found = new Map<string, PartDemand[]>();
  for (const demand of uses.flatMap(demandsOf)) {
    const known = found.get(demand.partNumber);
    if (known === undefined) found.set(demand.partNumber, [demand]);
    else known.push(demand);
  }
  return new Map([...found].sort(([a], [b]) => (a < b ? -1 : 1)));
}

export function sumOf(demands: readonly PartDemand[]): Exact {
  return demands.reduce((sum, { parts }) => plus(sum, parts), ZERO);
}

/** Marks without repeats, by code unit. */
export function marksOf(uses: readonly JointUse[]): string[] {
  return [...new Set(uses.map(({ mark }) => mark))].sort();
}

/** The earliest day, or null when none is stated. */
export function earliestOf(uses: readonly JointUse[]): string | null {
  return uses.flatMap(({ neededBy }) => neededBy ?? []).sort()[0] ?? null;
}
