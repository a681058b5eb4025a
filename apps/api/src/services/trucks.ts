import { CAUTION, type ScheduleRow } from "@landfast/rules";
import {
  type Feasible,
  type JointClass,
  makeFromStock,
  type PartsAtHand,
  type Solver,
  type TruckAnswer,
} from "@landfast/stock";
import { pointerTo } from "../problems/problem.js";
import { inconsistent } from "./stock-inputs.js";
import { SECONDS_PER_SOLVE } from "./stock-plans.js";
import {
  byText,
  makingConditions,
  type NoPartNeeded,
  type StockClass,
  type StockMark,
  type WithoutPart,
} from "./stock-problem.js";
import { type AnsweredFrom, answeredFrom, planning, type StockQuestionService } from "./stock-questions.js";
import type { StockScope } from "./stock-scope.js";

/** What is on the truck, or in the gang box. */
export interface TruckQuestion extends StockScope {
  readonly atHand: readonly PartsAtHand[];
  readonly secondsPerSolve?: number;
}

interface MarkCount {
  readonly mark: string;
  readonly joints: number;
}

/** Which joints can be made with what is at hand. */
export interface JobTruckAnswer
  extends Pick<TruckAnswer, "jointsMade" | "substitutions" | "left" | "objective" | "proven"> {
  readonly from: AnsweredFrom;
  /** Joints that take a part of the catalogue. */
  readonly joints: number;
  readonly made: readonly {
    readonly marks: readonly MarkCount[];
    readonly partNumber: string;
    readonly description: string;
    readonly joints: number;
    readonly parts: number;
    readonly verdict: "accept" | "accept-with-conditions";
    /** What the acceptance hangs on. */
    readonly conditions: readonly string[];
    /** The part of the schedule in whose place it stands; null: it is that part, or the schedule has none. */
    readonly insteadOf: string | null;
  }[];
  readonly missing: readonly {
    readonly marks: readonly MarkCount[];
    readonly joints: number;
    /** The part of the schedule; where it has none, every part that would do. */
    readonly wanted: readonly { readonly partNumber: string; readonly description: string; readonly parts: number }[];
  }[];
  /** Parts at hand that the catalogue does not hold: nothing can be said of them, and nothing is made with them. */
  readonly notInCatalogue: readonly PartsAtHand[];
  readonly noPartNeeded: readonly NoPartNeeded[];
  readonly withoutPart: readonly WithoutPart[];
  readonly caution: string;
}

export interface TruckService {
  /** @throws Problem JOB_NOT_FOUND, INCONSISTENT_REQUEST. */
  makeable(jobId: string, question: TruckQuestion): Promise<JobTruckAnswer>;
}

/** Joints of one class for which the schedule has one part, or none. */
interface Wanted {
  readonly of: StockClass;
  readonly marks: readonly StockMark[];
  readonly id: string;
  readonly planned: string | null;
}

export function truckService(questions: StockQuestionService, solver: Solver): TruckService {
  return {
    async makeable(jobId, { atHand, secondsPerSolve = SECONDS_PER_SOLVE, ...scope }) {
      refuseTwice(atHand);
      const asked = await questions.ask(jobId, scope);
      const { stock, schedule, catalogue } = asked;
      const known = atHand.filter(({ partNumber }) => catalogue.byPartNumber.has(partNumber));
      const wanted = stock.classes.flatMap((one) => byPlannedPart(one, schedule.rows));
      const answer = await planning(() =>
        makeFromStock(
          {
            classes: wanted.map(asClass),
            feasible: wanted.map(
              ({ id, of }): Feasible => ({
                classId: id,
                makers: of.makers.map(({ item, verdict }) => ({
                  partNumber: item.partNumber,
                  verdict,
                  partsPerJoint: 1,
                })),
              }),
            ),
            atHand: known,
            planned: wanted.flatMap(({ id, planned }) =>
              planned === null ? [] : [{ classId: id, partNumber: planned }],
            ),
          },
          solver,
          { seconds: secondsPerSolve },
        ),
      );
      const byId = new Map(wanted.map((one) => [one.id, one]));
      const taken = new Map<string, number>();
      const description = (partNumber: string): string => catalogue.byPartNumber.get(partNumber)?.description ?? "";
      const made = answer.made.map(({ classId, partNumber, joints, parts, verdict, insteadOf }) => {
        const one = wantedOf(byId, classId);
        const from = taken.get(classId) ?? 0;
        taken.set(classId, from + joints);
        return {
          marks: marksFrom(one.marks, from, joints),
          partNumber,
          description: description(partNumber),
          joints,
          parts,
          verdict,
          conditions: makingConditions(one.of, partNumber, verdict),
          insteadOf,
        };
      });
      const missing = answer.missing.map(({ classId, joints, wanted: parts }) => ({
        marks: marksFrom(wantedOf(byId, classId).marks, taken.get(classId) ?? 0, joints),
        joints,
        wanted: parts.map((part) => ({ ...part, description: description(part.partNumber) })),
      }));
      const { jointsMade, substitutions, left, objective, proven } = answer;
      return {
        from: answeredFrom(asked),
        joints: answer.joints,
        jointsMade,
        substitutions,
        objective,
        proven,
        made,
        missing,
        left,
        notInCatalogue: atHand.filter(({ partNumber }) => !catalogue.byPartNumber.has(partNumber)),
        noPartNeeded: stock.noPartNeeded,
        withoutPart: stock.withoutPart,
        caution: CAUTION,
      };
    },
  };
}

/** The schedule may have named unlike parts for equal joints: each kind is looked at by itself. */
function byPlannedPart(one: StockClass, rows: readonly ScheduleRow[]): Wanted[] {
  const allowed = new Set(one.makers.map(({ item }) => item.partNumber));
  const meant = new Set(one.marks.map(({ mark }) => mark));
  const parts = new Map(
    rows.flatMap(({ mark, connector }) => {
      const partNumber = connector?.origin === "catalogue" ? connector.partNumber : null;
      return meant.has(mark) && partNumber !== null && allowed.has(partNumber) ? [[mark, partNumber]] : [];
    }),
  );
  const groups = new Map<string | null, StockMark[]>();
  for (const mark of one.marks) {
    const part = parts.get(mark.mark) ?? null;
    groups.set(part, [...(groups.get(part) ?? []), mark]);
  }
  return [...groups].map(([planned, marks]) => ({ of: one, marks, id: marks[0]?.mark ?? one.id, planned }));
}

function asClass({ id, marks }: Wanted): JointClass {
  return {
    id,
    joints: marks.reduce((sum, { joints }) => sum + joints, 0),
    marks: marks.map(({ mark }) => mark),
    areas: [],
    alike: true,
  };
}

/** So many joints of these marks, mark by mark, after the first `from` joints. */
function marksFrom(marks: readonly StockMark[], from: number, joints: number): MarkCount[] {
  const found: MarkCount[] = [];
  let skip = from;
  let left = joints;
  for (const { mark, joints: own } of marks) {
    const taken = Math.min(left, Math.max(0, own - skip));
    skip = Math.max(0, skip - own);
    if (taken > 0) found.push({ mark, joints: taken });
    left -= taken;
  }
  return found;
}

function wantedOf(byId: ReadonlyMap<string, Wanted>, id: string): Wanted {
  const one = byId.get(id);
  if (one === undefined) throw new RangeError(`there is no class ${id}`);
  return one;
}

function refuseTwice(atHand: readonly PartsAtHand[]): void {
  const seen = new Set<string>();
  const faults = atHand.flatMap(({ partNumber }, at) => {
    const again = seen.has(partNumber);
    seen.add(partNumber);
    return again
      ? [
          {
            pointer: pointerTo("/atHand", at),
            detail: `"${partNumber}" stands there already`,
            accepted: "each part once",
          },
        ]
      : [];
  });
  if (faults.length > 0) throw inconsistent(faults.sort((a, b) => byText(a.pointer, b.pointer)));
}
