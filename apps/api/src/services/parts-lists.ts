import { CAUTION, type CatalogueItem, RULES_VERSION, type ScheduleRow } from "@landfast/rules";
import {
  type Feeder,
  type FeederExpansion,
  feederJoints,
  type JointUse,
  JUDGEMENT_SPARES,
  type ListedPart,
  listParts,
  NO_SPARES,
  type Objective,
  type OwnerSpare,
  type PartKind,
  type PartsList,
  type Proof,
  partKindOf,
  planStock,
  type Solver,
  type SparePolicy,
  type SpareRule,
  type ToolTerms,
} from "@landfast/stock";
import { pointerTo } from "../problems/problem.js";
import { type Accessory, jointNeeds, refuseAmbiguous } from "./joint-needs.js";
import { inconsistent, type SupplyQuestion } from "./stock-inputs.js";
import { optionsOf } from "./stock-plans.js";
import { byText, makingFinding, type NoPartNeeded, type WithoutPart } from "./stock-problem.js";
import {
  type AnsweredFrom,
  answeredFrom,
  planning,
  type StockQuestion,
  type StockQuestionService,
} from "./stock-questions.js";
import type { StockScope } from "./stock-scope.js";

/** Which connectors are listed. Absent: those of the stored schedule. */
export type ConnectorsFrom = { readonly from: "schedule" } | { readonly from: "plan"; readonly objective: Objective };

/** Which spares are bought. Absent: the judgement to begin with, and the answer says so. */
export type SparesFrom =
  | { readonly from: "judgement" }
  | { readonly from: "none" }
  | { readonly from: "request"; readonly name: string; readonly rules: Readonly<Record<PartKind, SpareRule>> };

export interface PartsListRequest extends SupplyQuestion, StockScope {
  readonly connectors?: ConnectorsFrom;
  readonly spares?: SparesFrom;
  readonly ownerSpares?: readonly OwnerSpare[];
  readonly accessories?: readonly Accessory[];
  readonly tools?: readonly ToolTerms[];
  readonly leadTimes?: readonly { readonly partNumber: string; readonly days: number }[];
  /** Marks at the two ends of one circuit, so that a reducer at one end brings the other to mind. */
  readonly circuits?: readonly {
    readonly circuit: string;
    readonly from: readonly string[];
    readonly to: readonly string[];
  }[];
  /** Absent: half-up, and the answer says so. */
  readonly rounding?: "half-up" | "half-even";
  readonly secondsPerSolve?: number;
}

/** What to buy for a stored job. */
export interface JobPartsList {
  readonly from: AnsweredFrom;
  readonly rulesVersion: string;
  readonly connectors: string;
  /** Of the plan that chose the connectors; null: they are those of the schedule. */
  readonly proof: Proof | null;
  readonly list: PartsList;
  /** Joints for which nothing is listed, and why: named, never dropped. */
  readonly notListed: {
    readonly noPartNeeded: readonly NoPartNeeded[];
    readonly notAccepted: readonly NoPartNeeded[];
    readonly withoutPart: readonly WithoutPart[];
  };
  /** What only the connectors' instructions can say. */
  readonly lookUp: readonly {
    readonly partNumber: string;
    readonly marks: readonly string[];
    readonly sentence: string;
  }[];
  readonly caution: string;
}

/** Feeders as a riser diagram states them. */
export interface FeedersAsked {
  readonly feeders: readonly Feeder[];
}

export interface PartsListService {
  /** @throws Problem JOB_NOT_FOUND, INCONSISTENT_REQUEST and what a plan can be refused for. */
  list(jobId: string, request: PartsListRequest): Promise<JobPartsList>;
  /** The joints that a feeder takes. @throws Problem INCONSISTENT_REQUEST. */
  expand(feeders: readonly Feeder[]): Promise<readonly (FeederExpansion & { readonly mark: string })[]>;
}

export function partsListService(questions: StockQuestionService, solver: Solver): PartsListService {
  return {
    async list(jobId, request) {
      const asked = await questions.ask(jobId, request);
      refuseAmbiguous(request.accessories ?? [], asked.catalogue.byPartNumber);
      return planning(() => jobPartsList(asked, request, solver));
    },
    expand(feeders) {
      return planning(() => {
        const marks = feeders.map(({ mark }) => mark);
        const again = marks.findIndex((mark, at) => marks.indexOf(mark) < at);
        if (again >= 0)
          throw inconsistent([
            {
              pointer: pointerTo("/feeders", again, "mark"),
              detail: "the mark stands twice",
              accepted: "each mark once",
            },
          ]);
        return feeders.map((feeder) => ({ mark: feeder.mark, ...feederJoints(feeder) }));
      });
    },
  };
}

/** Which part the joints of a mark are made with. */
interface ChosenPart {
  readonly partNumber: string;
  readonly by: "schedule" | "plan";
}

async function jobPartsList(asked: StockQuestion, request: PartsListRequest, solver: Solver): Promise<JobPartsList> {
  const { connectors = { from: "schedule" }, accessories = [] } = request;
  const notAccepted: NoPartNeeded[] = [];
  const usedAgain: NoPartNeeded[] = [];
  const { chosen, proof } =
    connectors.from === "schedule"
      ? { chosen: chosenBySchedule(asked, notAccepted, usedAgain), proof: null }
      : await chosenByPlan(asked, connectors.objective, request, solver, notAccepted);
  const ends = endsOf(asked, request);
  const uses: JointUse[] = [];
  const lookUp = new Map<string, { partNumber: string; marks: string[]; sentence: string }>();
  for (const one of asked.stock.classes) {
    const needsOf = new Map<string, { item: CatalogueItem; needs: ReturnType<typeof jointNeeds> }>();
    for (const { mark, joints, area, panel } of one.marks) {
      const part = chosen.get(mark);
      if (part === undefined) continue;
      let known = needsOf.get(part.partNumber);
      if (known === undefined) {
        const { item, finding } = makingFinding(one, part.partNumber);
        known = { item, needs: jointNeeds(item, finding, accessories) };
        needsOf.set(part.partNumber, known);
      }
      const { item, needs } = known;
      const hours = asked.supply.hoursOf(item, one.joint);
      const neededBy = asked.supply.neededBy(area);
      const end = ends.get(mark);
      uses.push({
        mark,
        partNumber: item.partNumber,
        joints,
        partsPerJoint: 1,
        ...(area === null ? {} : { area }),
        ...(panel === null ? {} : { panel }),
        ...(neededBy === null ? {} : { neededBy }),
        ...(hours === undefined ? {} : { labourHours: hours, labourSource: asked.supply.used.hours }),
        needs: needs.needs,
        tools: needs.tools,
        unusedOpenings: needs.unusedOpenings,
        ...(end === undefined ? {} : { circuitEnd: end }),
      });
      for (const sentence of needs.lookUp) {
        const key = `${item.partNumber} ${sentence}`;
        const before = lookUp.get(key) ?? { partNumber: item.partNumber, marks: [], sentence };
        before.marks.push(mark);
        lookUp.set(key, before);
      }
    }
  }
  const list = listParts({
    uses,
    parts: partsOf(asked, uses, request),
    spares: policyOf(request.spares ?? { from: "judgement" }),
    ownerSpares: request.ownerSpares ?? [],
    tools: request.tools ?? [],
    labour: request.labourRate === undefined ? {} : { rate: request.labourRate },
    rounding: request.rounding ?? "half-up",
  });
  return {
    from: answeredFrom(asked),
    rulesVersion: RULES_VERSION,
    connectors:
      connectors.from === "schedule" ? "those of the stored schedule" : `those of a plan: ${connectors.objective.kind}`,
    proof,
    list,
    notListed: {
      noPartNeeded: [...asked.stock.noPartNeeded, ...usedAgain].sort((a, b) => byText(a.mark, b.mark)),
      notAccepted: notAccepted.sort((a, b) => byText(a.mark, b.mark)),
      withoutPart: asked.stock.withoutPart,
    },
    lookUp: [...lookUp.values()]
      .map((one) => ({ ...one, marks: one.marks.sort(byText) }))
      .sort((a, b) => byText(a.partNumber, b.partNumber)),
    caution: CAUTION,
  };
}

/** The schedule's connectors, of which only those that the rules accept are bought, and none that is used again. */
function chosenBySchedule(
  { job, schedule, stock }: StockQuestion,
  notAccepted: NoPartNeeded[],
  usedAgain: NoPartNeeded[],
): Map<string, ChosenPart> {
  const rows = new Map(schedule.rows.map((row): [string, ScheduleRow] => [row.mark, row]));
  const reused = new Set(job.joints.flatMap(({ mark, partState }) => (partState === "reused" ? [mark] : [])));
  const chosen = new Map<string, ChosenPart>();
  for (const { marks, makers } of stock.classes) {
    const allowed = new Set(makers.map(({ item }) => item.partNumber));
    for (const { mark, joints } of marks) {
      const row = rows.get(mark);
      const partNumber = row?.connector?.origin === "catalogue" ? row.connector.partNumber : null;
      const isAccepted = row?.verdict === "accept" || row?.verdict === "accept-with-conditions";
      if (!isAccepted || partNumber === null || !allowed.has(partNumber))
        notAccepted.push({ mark, joints, because: row?.deciding.sentence ?? "the schedule has no row for it" });
      else if (reused.has(mark))
        usedAgain.push({ mark, joints, because: `${partNumber} is used again: nothing is bought` });
      else chosen.set(mark, { partNumber, by: "schedule" });
    }
  }
  return chosen;
}

async function chosenByPlan(
  { problem, stock }: StockQuestion,
  objective: Objective,
  request: PartsListRequest,
  solver: Solver,
  notAccepted: NoPartNeeded[],
): Promise<{ chosen: Map<string, ChosenPart>; proof: Proof }> {
  const plan = await planStock(problem, objective, solver, optionsOf(request));
  const parts = new Map(plan.assignments.map(({ classId, partNumber }) => [classId, partNumber]));
  const barred = new Map(plan.unservable.map(({ classId, because }) => [classId, because]));
  const chosen = new Map<string, ChosenPart>();
  for (const { id, marks } of stock.classes) {
    const partNumber = parts.get(id);
    for (const { mark, joints } of marks)
      if (partNumber === undefined)
        notAccepted.push({ mark, joints, because: barred.get(id) ?? "the plan has no part for it" });
      else chosen.set(mark, { partNumber, by: "plan" });
  }
  return { chosen, proof: plan.proof };
}

/** Every part that a use, a need or the owner names, as it is bought. */
function partsOf(
  { catalogue, supply }: StockQuestion,
  uses: readonly JointUse[],
  { accessories = [], ownerSpares = [], leadTimes = [] }: PartsListRequest,
): ListedPart[] {
  const days = new Map(leadTimes.map(({ partNumber, days: count }) => [partNumber, count]));
  const described = new Map(accessories.map(({ part }) => [part.partNumber, part]));
  const named = new Set([
    ...uses.flatMap(({ partNumber, needs = [] }) => [
      partNumber,
      ...needs.flatMap((need) => (need.partNumber === null ? [] : [need.partNumber])),
    ]),
    ...ownerSpares.map(({ partNumber }) => partNumber),
  ]);
  return [...named].sort(byText).flatMap((partNumber): ListedPart[] => {
    const item = catalogue.byPartNumber.get(partNumber);
    const leadTime = days.get(partNumber);
    const wait = leadTime === undefined ? {} : { leadTimeDays: leadTime };
    if (item !== undefined) {
      const price = supply.priceOf(item);
      return [
        {
          partNumber,
          description: item.description,
          kind: partKindOf(item.family),
          packQuantity: supply.packOf(item),
          ...(price === undefined ? {} : { price }),
          onHand: supply.onHandOf(partNumber),
          ...wait,
        },
      ];
    }
    const part = described.get(partNumber);
    if (part !== undefined) return [{ ...part, kind: "accessory", ...wait }];
    const isCover = uses.some(({ needs = [] }) => needs.some((need) => need.partNumber === partNumber));
    return isCover
      ? [
          {
            partNumber,
            description: "cover that the connector is listed with",
            kind: "accessory",
            packQuantity: 1,
            ...wait,
          },
        ]
      : [];
  });
}

function policyOf(spares: SparesFrom): SparePolicy {
  if (spares.from === "judgement") return JUDGEMENT_SPARES;
  return spares.from === "none" ? NO_SPARES : { id: spares.name, basis: "stated", rules: spares.rules };
}

function endsOf(
  { job }: StockQuestion,
  { circuits = [] }: PartsListRequest,
): ReadonlyMap<string, { readonly circuit: string; readonly end: "from" | "to" }> {
  const known = new Set(job.joints.map(({ mark }) => mark));
  const ends = new Map<string, { circuit: string; end: "from" | "to" }>();
  const faults = circuits.flatMap((one, at) =>
    (["from", "to"] as const).flatMap((end) =>
      one[end].flatMap((mark, place) => {
        const isTwice = ends.has(mark);
        ends.set(mark, { circuit: one.circuit, end });
        const pointer = pointerTo("/circuits", at, end, place);
        if (!known.has(mark))
          return [{ pointer, detail: `the job has no mark "${mark}"`, accepted: "a mark of the job" }];
        return isTwice
          ? [{ pointer, detail: `"${mark}" is an end of a circuit already`, accepted: "each mark once" }]
          : [];
      }),
    ),
  );
  if (faults.length > 0) throw inconsistent(faults);
  return ends;
}
