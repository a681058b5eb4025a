import { byText, type CanonicalProblem, canonicalProblem } from "../problem/canonical-problem.js";
import { UnusableProblem } from "../problem/check-problem.js";
import { type Feasible, isAlike, type JointClass, type Maker, type MakingVerdict } from "../problem/stock-problem.js";
import type { Model, ModelColumn, ModelRow, SolveLimits, Solver } from "../solver/solver.js";
import { SolverFailure } from "../solver/solver.js";

/** Parts at hand: on the truck, in the gang box. */
export interface PartsAtHand {
  readonly partNumber: string;
  readonly parts: number;
}

export interface TruckQuestion {
  readonly classes: readonly JointClass[];
  readonly feasible: readonly Feasible[];
  readonly atHand: readonly PartsAtHand[];
  /** The part each class was planned with, where there is a plan. Another part is a substitution. */
  readonly planned?: readonly { readonly classId: string; readonly partNumber: string }[];
}

/** So many joints of a class, made with one part from the truck. */
export interface MadeFromStock {
  readonly classId: string;
  readonly partNumber: string;
  readonly joints: number;
  readonly parts: number;
  readonly verdict: MakingVerdict;
  /** The part it was planned with, when that is another one; null otherwise. */
  readonly insteadOf: string | null;
}

/** Joints of a class that the truck has no part for. */
export interface MissingForClass {
  readonly classId: string;
  readonly marks: readonly string[];
  readonly joints: number;
  /** The planned part where there is one, else every part that would do, each with the parts these joints take. */
  readonly wanted: readonly { readonly partNumber: string; readonly parts: number }[];
}

export interface TruckAnswer {
  readonly made: readonly MadeFromStock[];
  readonly missing: readonly MissingForClass[];
  readonly joints: number;
  readonly jointsMade: number;
  readonly substitutions: number;
  readonly left: readonly PartsAtHand[];
  /** What was sought, in this order. */
  readonly objective: "most joints made, then fewest of them with another part than planned";
  /** False when a limit stopped the search. */
  readonly proven: boolean;
}

/**
 * Which joints can be made with the parts at hand, with which substitutions, and what is missing.
 *
 * As many joints as can be are made; among all ways to make that many, as few as can be take another part than
 * planned. Joints of a class that has to be made alike take one part, though not all of them need be made now. Every
 * substitution is a maker that the rules accept; nothing else is ever proposed.
 * Worked: 3 joints planned with A and 2 that only A makes; at hand 3 A and 3 B, B makes the first: all 5 are made, 2 or
 * more of the first with B; if the first have to be alike, all 3 with B.
 * @throws UnusableProblem; SolverFailure.
 */
export async function makeFromStock(
  question: TruckQuestion,
  solver: Solver,
  limits: SolveLimits = {},
): Promise<TruckAnswer> {
  const problem = truckProblem(question);
  const planned = new Map((question.planned ?? []).map(({ classId, partNumber }) => [classId, partNumber]));
  const ways = waysOf(problem, planned);
  const first = ways.length === 0 ? null : await solver.solve(truckModel(problem, ways, null), limits);
  const most = first === null ? 0 : jointsIn(ways, valuesOf(first.values, ways));
  const second = first === null || most === 0 ? null : await solver.solve(truckModel(problem, ways, most), limits);
  const better = second === null || second.values.length === 0 ? first : second;
  const counts = valuesOf(better?.values ?? [], ways);
  const isProven = [first, second].every((one) => one === null || one.status === "optimal");
  return answerOf(problem, planned, ways, counts, isProven);
}

/** One class with one part: how many joints is to be decided. */
interface Way {
  readonly classPlace: number;
  readonly maker: Maker;
  readonly isSubstitution: boolean;
}

function truckProblem({ classes, feasible, atHand }: TruckQuestion): CanonicalProblem {
  const known = new Set(atHand.map(({ partNumber }) => partNumber));
  const others = new Set(
    feasible.flatMap(({ makers }) => makers.map(({ partNumber }) => partNumber)).filter((one) => !known.has(one)),
  );
  for (const { partNumber, parts } of atHand)
    if (!(Number.isSafeInteger(parts) && parts >= 0))
      throw new UnusableProblem([`${partNumber}: parts at hand is a whole number from 0 up`]);
  return canonicalProblem({
    classes,
    feasible,
    items: [
      ...atHand.map(({ partNumber, parts }) => ({ partNumber, packQuantity: 1, onHand: parts })),
      ...[...others].map((partNumber) => ({ partNumber, packQuantity: 1 })),
    ],
  });
}

/** The ways that the parts at hand reach for one joint at least. */
function waysOf({ classes, items }: CanonicalProblem, planned: ReadonlyMap<string, string>): Way[] {
  const atHand = new Map(items.map(({ partNumber, onHand = 0 }) => [partNumber, onHand]));
  return classes.flatMap(({ id, makers }, classPlace) =>
    makers
      .filter(({ partNumber, partsPerJoint }) => (atHand.get(partNumber) ?? 0) >= partsPerJoint)
      .map((maker) => {
        const intended = planned.get(id);
        return { classPlace, maker, isSubstitution: intended !== undefined && intended !== maker.partNumber };
      }),
  );
}

/** First most joints; then, with that many, fewest substitutions. */
function truckModel({ classes, items }: CanonicalProblem, ways: readonly Way[], joints: number | null): Model {
  const columns: ModelColumn[] = ways.map(({ classPlace, isSubstitution }) => ({
    cost: joints === null ? -1 : isSubstitution ? 1 : 0,
    lower: 0,
    upper: classes[classPlace]?.joints ?? 0,
    integer: true,
  }));
  const rows: ModelRow[] = [];
  const atMost = (upper: number, terms: readonly (readonly [number, number])[]): void => {
    rows.push({
      lower: Number.NEGATIVE_INFINITY,
      upper,
      columns: terms.map(([column]) => column),
      coefficients: terms.map(([, coefficient]) => coefficient),
    });
  };
  classes.forEach((one, classPlace) => {
    const mine = ways.flatMap((way, column) => (way.classPlace === classPlace ? [column] : []));
    if (mine.length === 0) return;
    atMost(
      one.joints,
      mine.map((column) => [column, 1]),
    );
    if (!isAlike(one) || mine.length === 1) return;
    const gates = mine.map((column) => {
      const gate = columns.length;
      columns.push({ cost: 0, lower: 0, upper: 1, integer: true });
      atMost(0, [
        [column, 1],
        [gate, -one.joints],
      ]);
      return gate;
    });
    atMost(
      1,
      gates.map((gate) => [gate, 1]),
    );
  });
  for (const { partNumber, onHand = 0 } of items) {
    const terms = ways.flatMap(({ maker }, column) =>
      maker.partNumber === partNumber ? [[column, maker.partsPerJoint] as const] : [],
    );
    if (terms.length > 0) atMost(onHand, terms);
  }
  if (joints !== null)
    rows.push({
      lower: joints,
      upper: Number.POSITIVE_INFINITY,
      columns: ways.map((_, column) => column),
      coefficients: ways.map(() => 1),
    });
  return { columns, rows, step: 1 };
}

function valuesOf(values: readonly number[], ways: readonly Way[]): number[] {
  return ways.map((_, column) => Math.round(values[column] ?? 0));
}

function jointsIn(ways: readonly Way[], counts: readonly number[]): number {
  return ways.reduce((sum, _, column) => sum + (counts[column] ?? 0), 0);
}

function answerOf(
  { classes, items }: CanonicalProblem,
  planned: ReadonlyMap<string, string>,
  ways: readonly Way[],
  counts: readonly number[],
  proven: boolean,
): TruckAnswer {
  const left = new Map(items.map(({ partNumber, onHand = 0 }) => [partNumber, onHand]));
  const done = new Map<string, number>();
  const made = ways.flatMap(({ classPlace, maker, isSubstitution }, column): MadeFromStock[] => {
    const joints = counts[column] ?? 0;
    const classId = classes[classPlace]?.id ?? "";
    if (joints === 0) return [];
    const parts = joints * maker.partsPerJoint;
    const remaining = (left.get(maker.partNumber) ?? 0) - parts;
    if (remaining < 0) throw new SolverFailure(`more of ${maker.partNumber} was dealt out than is there`);
    left.set(maker.partNumber, remaining);
    done.set(classId, (done.get(classId) ?? 0) + joints);
    return [
      {
        classId,
        partNumber: maker.partNumber,
        joints,
        parts,
        verdict: maker.verdict,
        insteadOf: isSubstitution ? (planned.get(classId) ?? null) : null,
      },
    ];
  });
  const missing = classes.flatMap(({ id, joints, marks, makers }): MissingForClass[] => {
    const short = joints - (done.get(id) ?? 0);
    if (short === 0) return [];
    const intended = makers.filter(({ partNumber }) => partNumber === planned.get(id));
    const wanted = (intended.length > 0 ? intended : makers).map(({ partNumber, partsPerJoint }) => ({
      partNumber,
      parts: short * partsPerJoint,
    }));
    return [{ classId: id, marks, joints: short, wanted }];
  });
  return {
    made,
    missing,
    joints: classes.reduce((sum, { joints }) => sum + joints, 0),
    jointsMade: made.reduce((sum, { joints }) => sum + joints, 0),
    substitutions: made.reduce((sum, { joints, insteadOf }) => sum + (insteadOf === null ? 0 : joints), 0),
    left: [...left]
      .filter(([, parts]) => parts > 0)
      .map(([partNumber, parts]) => ({ partNumber, parts }))
      .sort((a, b) => byText(a.partNumber, b.partNumber)),
    objective: "most joints made, then fewest of them with another part than planned",
    proven,
  };
}
