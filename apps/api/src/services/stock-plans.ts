import { CAUTION, RULES_VERSION } from "@landfast/rules";
import {
  type Assignment,
  type Money,
  type Objective,
  type PartInPlan,
  type PlanCost,
  type PlannedPart,
  type PlanOptions,
  type Proof,
  partsInPlan,
  planStock,
  type ReductionCounts,
  type Solver,
  type StockPlan,
  type TradeOffCurve,
  tradeOffCurve,
} from "@landfast/stock";
import { type AsNamed, asNamed } from "./named-parts.js";
import { inconsistent, type SupplyQuestion } from "./stock-inputs.js";
import { byText, makingConditions, type NoPartNeeded, type StockClass, type WithoutPart } from "./stock-problem.js";
import {
  type AnsweredFrom,
  answeredFrom,
  earliest,
  planning,
  type StockQuestion,
  type StockQuestionService,
} from "./stock-questions.js";
import type { StockScope } from "./stock-scope.js";

/** Wall-clock seconds for one solve where the question does not say. */
export const SECONDS_PER_SOLVE = 10;

interface Solving {
  readonly secondsPerSolve?: number;
}

export interface StockPlanQuestion extends SupplyQuestion, StockScope, Solving {
  readonly objective: Objective;
  /** Only with an objective of cost. */
  readonly mostPartNumbers?: number;
  /** False: what dropping each part would come to is left out; it takes a plan for each. */
  readonly withoutEach?: boolean;
}

export interface TradeOffQuestion extends SupplyQuestion, StockScope, Solving {
  /** Ask about no more numbers of part numbers than this. Absent: every number. */
  readonly mostPoints?: number;
}

/** A part of a plan, for whoever buys and hands it out. */
export interface PlanPart extends Omit<PlannedPart, "classIds"> {
  readonly description: string;
  readonly family: string;
  readonly marks: readonly string[];
  readonly areas: readonly {
    readonly area: string | null;
    readonly joints: number;
    readonly neededBy: string | null;
  }[];
  /** The earliest day on which some of it is needed; null: none was stated. */
  readonly neededBy: string | null;
  /** Marks that no other connector of the catalogue can make, and those that no other part of this plan can make. */
  readonly onlyMaker: readonly string[];
  readonly onlyInPlan: readonly string[];
  /** The best plan without it, against this one; null: not asked for. */
  readonly without: {
    readonly marksLost: readonly string[];
    readonly jointsLost: number;
    readonly partNumbers: number;
    /** null: a cost is not known, or joints are lost. */
    readonly costChange: Money | null;
    readonly proof: Proof;
  } | null;
}

export interface PlanAssignment extends Omit<Assignment, "classId"> {
  readonly marks: readonly string[];
  /** What the acceptance hangs on, from the full check of these joints with this part. */
  readonly conditions: readonly string[];
}

/** Joints that no part of the plan makes, and why: named, never dropped. */
export interface NotPlanned {
  readonly noPartNeeded: readonly NoPartNeeded[];
  readonly withoutPart: readonly WithoutPart[];
  /** The catalogue has a part, but it is barred, or its price is not known where cost counts. */
  readonly barred: readonly { readonly marks: readonly string[]; readonly joints: number; readonly because: string }[];
}

/** Which part numbers to stock for a job. */
export interface JobStockPlan {
  readonly from: AnsweredFrom;
  readonly rulesVersion: string;
  readonly objective: Objective;
  readonly partNumbers: number;
  readonly joints: number;
  readonly hours: string | null;
  readonly cost: PlanCost | null;
  readonly proof: Proof;
  readonly parts: readonly PlanPart[];
  readonly assignments: readonly PlanAssignment[];
  readonly notPlanned: NotPlanned;
  /** Ways to make joints that were left out because what they cost is not known. */
  readonly notCosted: readonly {
    readonly marks: readonly string[];
    readonly partNumber: string;
    readonly because: string;
  }[];
  readonly asNamed: AsNamed | null;
  readonly reduction: ReductionCounts;
  readonly caution: string;
}

/** What fewer part numbers cost. */
export interface JobTradeOff {
  readonly from: AnsweredFrom;
  /** Joints that every plan on the curve makes. */
  readonly joints: number;
  readonly curve: Omit<TradeOffCurve, "unservable">;
  readonly notPlanned: NotPlanned;
  readonly asNamed: AsNamed | null;
}

export interface StockPlanService {
  /** @throws Problem for what cannot be planned. */
  plan(jobId: string, question: StockPlanQuestion): Promise<JobStockPlan>;
  /** @throws Problem for what cannot be planned. */
  tradeOff(jobId: string, question: TradeOffQuestion): Promise<JobTradeOff>;
}

export function stockPlanService(questions: StockQuestionService, solver: Solver): StockPlanService {
  return {
    async plan(jobId, question) {
      const { objective, mostPartNumbers, withoutEach = true } = question;
      if (mostPartNumbers !== undefined && objective.kind === "fewest-part-numbers")
        throw inconsistent([
          {
            pointer: "/mostPartNumbers",
            detail: "the objective itself asks for the fewest part numbers",
            accepted: "no limit, or an objective of cost",
          },
        ]);
      const asked = await questions.ask(jobId, question);
      const options: PlanOptions = {
        ...optionsOf(question),
        ...(mostPartNumbers === undefined ? {} : { mostPartNumbers }),
      };
      return planning(async () => {
        const plan = await planStock(asked.problem, objective, solver, options);
        const drops = withoutEach ? await partsInPlan(asked.problem, plan, solver, options) : [];
        return jobStockPlan(asked, plan, drops);
      });
    },
    async tradeOff(jobId, question) {
      const asked = await questions.ask(jobId, question);
      const { mostPoints } = question;
      return planning(async () => {
        const curve = await tradeOffCurve(asked.problem, solver, {
          ...optionsOf(question),
          ...(mostPoints === undefined ? {} : { mostPoints }),
        });
        const { unservable, ...points } = curve;
        return {
          from: answeredFrom(asked),
          joints: jointsOf(asked.stock.classes) - jointsOf(unservable),
          curve: points,
          notPlanned: notPlannedIn(asked, unservable),
          asNamed: namedIn(asked),
        };
      });
    },
  };
}

/** Rate and limit as a planner takes them. */
export function optionsOf({ labourRate, secondsPerSolve = SECONDS_PER_SOLVE }: SupplyQuestion & Solving): PlanOptions {
  return { limits: { seconds: secondsPerSolve }, ...(labourRate === undefined ? {} : { labourRate }) };
}

function jobStockPlan(asked: StockQuestion, plan: StockPlan, drops: readonly PartInPlan[]): JobStockPlan {
  const marksOf = marksByClass(asked);
  const droppedBy = new Map(drops.map((one) => [one.partNumber, one]));
  return {
    from: answeredFrom(asked),
    rulesVersion: RULES_VERSION,
    objective: plan.objective,
    partNumbers: plan.partNumbers,
    joints: plan.joints,
    hours: plan.hours,
    cost: plan.cost,
    proof: plan.proof,
    parts: plan.parts.map((part) => planPart(asked, plan, part, droppedBy.get(part.partNumber), marksOf)),
    assignments: plan.assignments.map(({ classId, partNumber, joints, parts, hours, verdict }) => ({
      marks: marksOf([classId]),
      partNumber,
      joints,
      parts,
      hours,
      verdict,
      conditions: makingConditions(classOf(asked, classId), partNumber, verdict),
    })),
    notPlanned: notPlannedIn(asked, plan.unservable),
    notCosted: plan.notCosted.map(({ classId, partNumber, because }) => ({
      marks: marksOf([classId]),
      partNumber,
      because,
    })),
    asNamed: namedIn(asked),
    reduction: plan.reduction,
    caution: CAUTION,
  };
}

function classOf({ stock }: StockQuestion, classId: string): StockClass {
  const one = stock.classes.find(({ id }) => id === classId);
  if (one === undefined) throw new RangeError(`there is no class ${classId}`);
  return one;
}

function planPart(
  { catalogue, supply, stock, problem }: StockQuestion,
  plan: StockPlan,
  { classIds, ...part }: PlannedPart,
  dropped: PartInPlan | undefined,
  marksOf: (classIds: readonly string[]) => string[],
): PlanPart {
  const item = catalogue.byPartNumber.get(part.partNumber);
  const mine = new Set(classIds);
  const marks = stock.classes.filter(({ id }) => mine.has(id)).flatMap((one) => one.marks);
  const areas = new Map<string | null, number>();
  for (const { area, joints } of marks) areas.set(area, (areas.get(area) ?? 0) + joints);
  const planned = new Set(plan.parts.map(({ partNumber }) => partNumber));
  const usable = new Set(problem.items.filter(({ mustNot }) => mustNot !== true).map(({ partNumber }) => partNumber));
  const onlyAmong = (others: ReadonlySet<string>): string[] =>
    marksOf(
      stock.classes
        .filter(
          ({ makers }) =>
            makers.some((one) => one.item.partNumber === part.partNumber) &&
            !makers.some((one) => one.item.partNumber !== part.partNumber && others.has(one.item.partNumber)),
        )
        .map(({ id }) => id),
    );
  return {
    ...part,
    description: item?.description ?? "",
    family: item?.family ?? "",
    marks: marks.map(({ mark }) => mark).sort(byText),
    areas: [...areas]
      .sort(([a], [b]) => byText(a ?? "", b ?? ""))
      .map(([area, joints]) => ({ area, joints, neededBy: supply.neededBy(area) })),
    neededBy: earliest(marks.map(({ area }) => supply.neededBy(area))),
    onlyMaker: onlyAmong(usable),
    onlyInPlan: onlyAmong(planned),
    without:
      dropped === undefined
        ? null
        : {
            marksLost: marksOf(dropped.without.unservable),
            jointsLost: dropped.without.jointsLost,
            partNumbers: dropped.without.partNumbers,
            costChange: dropped.without.costChange,
            proof: dropped.without.proof,
          },
  };
}

function jointsOf(some: readonly { readonly joints: number }[]): number {
  return some.reduce((sum, { joints }) => sum + joints, 0);
}

function marksByClass({ stock }: StockQuestion): (classIds: readonly string[]) => string[] {
  const marks = new Map(stock.classes.map((one) => [one.id, one.marks.map(({ mark }) => mark)]));
  return (classIds) => classIds.flatMap((id) => marks.get(id) ?? []).sort(byText);
}

function notPlannedIn({ stock }: StockQuestion, unservable: StockPlan["unservable"]): NotPlanned {
  return {
    noPartNeeded: stock.noPartNeeded,
    withoutPart: stock.withoutPart,
    barred: unservable.map(({ marks, joints, because }) => ({ marks, joints, because })),
  };
}

/** What is named and bought: a part that is used again is there already. */
function namedIn({ job, schedule, stock, catalogue, supply }: StockQuestion): AsNamed | null {
  const reused = new Set(job.joints.flatMap(({ mark, partState }) => (partState === "reused" ? [mark] : [])));
  const meant = new Set([
    ...stock.classes.flatMap(({ marks }) => marks.map(({ mark }) => mark)),
    ...stock.withoutPart.flatMap(({ marks }) => marks.map(({ mark }) => mark)),
  ]);
  return asNamed(schedule, (mark) => meant.has(mark) && !reused.has(mark), catalogue, supply);
}
