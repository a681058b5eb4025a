import { byText } from "./canonical-problem.js";
import type { AreaCount, Feasible, JointClass, Maker } from "./stock-problem.js";

/** One mark of a job, as it is to be stocked for. */
export interface MarkedJoints {
  readonly mark: string;
  /** The same for joints that are equal in everything the rules look at. */
  readonly kind: string;
  readonly joints: number;
  readonly area?: string;
  readonly neededBy?: string;
  /** Stated false where its joints need not all be made with the same part. */
  readonly alike?: boolean;
  readonly makers: readonly Maker[];
}

/** Joints without an area of their own stand under this heading. */
export const NO_AREA = "no area stated";

/**
 * Groups equal joints into classes. What makes joints equal is the caller's `kind`; that equal joints are made with
 * equal parts is a rule of good order, not a consequence of cost. A class keeps its marks, the joints in each area, and
 * the earliest day one of them is needed. It is alike unless every mark in it states otherwise.
 * Worked: three marks of kind "K" with 3, 3 and 6 joints in areas A, A and B -> one class of 12 joints, A 6 and B 6.
 * @throws RangeError when marks of one kind name different makers.
 */
export function groupJoints(marked: readonly MarkedJoints[]): {
  readonly classes: readonly JointClass[];
  readonly feasible: readonly Feasible[];
} {
  const kinds = new Map<string, MarkedJoints[]>();
  for (const one of marked) {
    const known = kinds.get(one.kind);
    if (known === undefined) kinds.set(one.kind, [one]);
    else known.push(one);
  }
  const classes: JointClass[] = [];
  const feasible: Feasible[] = [];
  for (const [kind, members] of [...kinds].sort(([a], [b]) => byText(a, b))) {
    classes.push(classOf(kind, members));
    const [first] = members;
    if (first === undefined) continue;
    const makers = makersText(first.makers);
    const other = members.find((one) => makersText(one.makers) !== makers);
    if (other !== undefined)
      throw new RangeError(`marks ${first.mark} and ${other.mark} are of one kind and name different makers`);
    if (first.makers.length > 0) feasible.push({ classId: kind, makers: first.makers });
  }
  return { classes, feasible };
}

function classOf(kind: string, members: readonly MarkedJoints[]): JointClass {
  const areas = new Map<string, number>();
  for (const { area = NO_AREA, joints } of members) areas.set(area, (areas.get(area) ?? 0) + joints);
  const days = members.flatMap(({ neededBy }) => neededBy ?? []).sort();
  const [neededBy] = days;
  return {
    id: kind,
    joints: members.reduce((sum, { joints }) => sum + joints, 0),
    marks: members.map(({ mark }) => mark).sort(byText),
    areas: [...areas].sort(([a], [b]) => byText(a, b)).map(([area, joints]): AreaCount => ({ area, joints })),
    ...(neededBy === undefined ? {} : { neededBy }),
    alike: !members.every(({ alike }) => alike === false),
  };
}

function makersText(makers: readonly Maker[]): string {
  return JSON.stringify(
    makers
      .map(({ partNumber, verdict, partsPerJoint, labourHours }) => [
        partNumber,
        verdict,
        partsPerJoint,
        labourHours ?? null,
      ])
      .sort(([a], [b]) => byText(String(a), String(b))),
  );
}
