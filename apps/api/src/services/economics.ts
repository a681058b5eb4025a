import { CAUTION, type CatalogueItem, type Construction } from "@landfast/rules";
import {
  breakAt,
  compareWays,
  decimalOf,
  type Economics,
  type Extra,
  eachAt,
  type MadeJoints,
  type Money,
  moneyOf,
  type Objective,
  type OnceCost,
  planStock,
  type Solver,
  type StockProblem,
  type ToolTerms,
  times,
} from "@landfast/stock";
import { type Accessory, jointNeeds, refuseAmbiguous } from "./joint-needs.js";
import type { SupplyQuestion } from "./stock-inputs.js";
import { optionsOf } from "./stock-plans.js";
import { byText, makingFinding, type NoPartNeeded, type StockClass, type WithoutPart } from "./stock-problem.js";
import {
  type AnsweredFrom,
  answeredFrom,
  planning,
  type StockQuestion,
  type StockQuestionService,
} from "./stock-questions.js";
import type { StockScope } from "./stock-scope.js";

/** The two ways that are compared. */
const WAYS = ["mechanical", "compression"] as const;
type Way = (typeof WAYS)[number];

export interface EconomicsRequest extends SupplyQuestion, StockScope {
  /** How the connectors of each way are chosen. */
  readonly objective: Objective;
  readonly accessories?: readonly Accessory[];
  /** Terms of tools and dies; those of "torque tool" are for the mechanical way. */
  readonly tools?: readonly ToolTerms[];
  readonly setUp?: readonly { readonly way: Way; readonly what: string; readonly cost: Money }[];
  readonly secondsPerSolve?: number;
}

/** Mechanical against compression for the joints that both can make. */
export interface JobEconomics {
  readonly from: AnsweredFrom;
  /** null: no joint can be made both ways. */
  readonly comparison: Economics | null;
  /** Joints that are not compared, and why: named, never dropped. */
  readonly notCompared: readonly NoPartNeeded[];
  readonly withoutPart: readonly WithoutPart[];
  readonly caution: string;
}

export interface EconomicsService {
  /** @throws Problem JOB_NOT_FOUND, INCONSISTENT_REQUEST and what a plan can be refused for. */
  compare(jobId: string, request: EconomicsRequest): Promise<JobEconomics>;
}

/** What is tightened, and what is pressed. What is welded, sprung or twisted on by hand is neither. */
const WAY_OF: Readonly<Record<Construction, Way | null>> = {
  "set-screw": "mechanical",
  "insulation-piercing": "mechanical",
  "split-bolt": "mechanical",
  "bolted-clamp": "mechanical",
  "binding-screw": "mechanical",
  compression: "compression",
  "twist-on": null,
  spring: null,
  weld: null,
};

/** The name under which the torque tool's terms are stated. */
const TORQUE_TOOL = "torque tool";

export function economicsService(questions: StockQuestionService, solver: Solver): EconomicsService {
  return {
    async compare(jobId, request) {
      const asked = await questions.ask(jobId, request);
      refuseAmbiguous(request.accessories ?? [], asked.catalogue.byPartNumber);
      return planning(() => jobEconomics(asked, request, solver));
    },
  };
}

async function jobEconomics(asked: StockQuestion, request: EconomicsRequest, solver: Solver): Promise<JobEconomics> {
  const { stock, problem, supply } = asked;
  const notCompared: NoPartNeeded[] = [...stock.noPartNeeded];
  const leave = (one: StockClass, because: string): void => {
    for (const { mark, joints } of one.marks) notCompared.push({ mark, joints, because });
  };
  const both = stock.classes.filter((one) => {
    const lacking = WAYS.filter((way) => !one.makers.some(({ item }) => WAY_OF[item.construction] === way));
    if (lacking.length > 0) leave(one, `no ${lacking.join(" and no ")} connector of the catalogue is accepted for it`);
    return lacking.length === 0;
  });
  const chosen = new Map<Way, Map<string, string>>();
  const missed = new Map<string, string>();
  for (const way of WAYS) {
    const plan = await planStock(problemOf(problem, both, way), request.objective, solver, optionsOf(request));
    chosen.set(way, new Map(plan.assignments.map(({ classId, partNumber }) => [classId, partNumber])));
    for (const { classId, because } of plan.unservable) missed.set(classId, `${way}: ${because}`);
  }
  const compared = both.filter((one) => {
    const because = missed.get(one.id);
    if (because !== undefined) leave(one, because);
    return because === undefined;
  });
  const used = new Map<string, CatalogueItem>();
  const ways = WAYS.map((way) => {
    const tools = new Set<string>();
    const lines = compared.map((one): MadeJoints => {
      const partNumber = chosen.get(way)?.get(one.id) ?? "";
      const { item, finding } = makingFinding(one, partNumber);
      used.set(partNumber, item);
      const { needs, tools: own } = jointNeeds(item, finding, request.accessories ?? []);
      for (const { tool, die } of own) {
        tools.add(JSON.stringify([tool]));
        if (die !== undefined) tools.add(JSON.stringify([tool, die]));
      }
      const hours = supply.hoursOf(item, one.joint);
      return {
        id: one.id,
        joints: one.joints,
        partNumber,
        partsPerJoint: 1,
        ...(hours === undefined ? {} : { labourHours: hours }),
        extras: needs.map((need) => extraOf(need, request.accessories ?? [])),
      };
    });
    if (way === "mechanical" && lines.length > 0) tools.add(JSON.stringify([TORQUE_TOOL]));
    return {
      name: way,
      lines,
      once: [...onceOf([...tools].sort(byText), request.tools ?? []), ...setUpOf(way, request)],
    };
  });
  const [first, second] = ways;
  const comparison =
    compared.length === 0 || first === undefined || second === undefined
      ? null
      : compareWays({
          first,
          second,
          parts: [...used.values()].map((item) => {
            const price = supply.priceOf(item);
            return { partNumber: item.partNumber, ...(price === undefined ? {} : { price }) };
          }),
          ...(request.labourRate === undefined ? {} : { labourRate: request.labourRate }),
        });
  return {
    from: answeredFrom(asked),
    comparison,
    notCompared: notCompared.sort((a, b) => byText(a.mark, b.mark)),
    withoutPart: stock.withoutPart,
    caution: CAUTION,
  };
}

/** The same question with one way only, for the joints that both can make. */
function problemOf(problem: StockProblem, both: readonly StockClass[], way: Way): StockProblem {
  const kept = new Map(both.map((one) => [one.id, one.makers]));
  const feasible = problem.feasible.flatMap(({ classId, makers }) => {
    const mine = new Set(
      (kept.get(classId) ?? [])
        .filter(({ item }) => WAY_OF[item.construction] === way)
        .map(({ item }) => item.partNumber),
    );
    return mine.size === 0 ? [] : [{ classId, makers: makers.filter(({ partNumber }) => mine.has(partNumber)) }];
  });
  const offered = new Set(feasible.flatMap(({ makers }) => makers.map(({ partNumber }) => partNumber)));
  return {
    classes: problem.classes.filter(({ id }) => kept.has(id)),
    // What has to be stocked in any case says nothing of how these joints are made.
    items: problem.items.filter(({ partNumber }) => offered.has(partNumber)).map((item) => ({ ...item, must: false })),
    feasible,
  };
}

function extraOf(
  { kind, partNumber, perJoint }: ReturnType<typeof jointNeeds>["needs"][number],
  accessories: readonly Accessory[],
): Extra {
  const price = accessories.find(({ part }) => part.partNumber === partNumber)?.part.price;
  const reached = price === undefined ? undefined : (breakAt(price, 1) ?? price.breaks[0]);
  return {
    what: partNumber === null ? kind : `${kind} ${partNumber}`,
    costEach:
      price === undefined || reached === undefined
        ? null
        : moneyOf(times(eachAt(price, reached.amount), decimalOf(perJoint)), price.currency),
  };
}

/** Terms that nobody stated are not known, and so is what rests on them. */
function onceOf(tools: readonly string[], terms: readonly ToolTerms[]): OnceCost[] {
  const stated = new Map(
    terms.map(({ tool, die, terms: how }) => [JSON.stringify(die === undefined ? [tool] : [tool, die]), how]),
  );
  return tools.map((key): OnceCost => {
    const [tool = "", die] = JSON.parse(key) as string[];
    const how = stated.get(key);
    const what = die === undefined ? tool : `${tool}, die ${die}`;
    const kind = die === undefined ? "tool" : "die";
    if (how === undefined) return { what, kind, cost: null };
    if (how.kind === "bought") return { what, kind, cost: how.price };
    if (how.kind === "owned") return { what, kind, cost: null, owned: true };
    return {
      what: `${what}, hired for ${String(how.days)} days`,
      kind,
      cost: moneyOf(times(decimalOf(how.perDay.amount), decimalOf(String(how.days))), how.perDay.currency),
    };
  });
}

function setUpOf(way: Way, { setUp = [] }: EconomicsRequest): OnceCost[] {
  return setUp.filter((one) => one.way === way).map(({ what, cost }) => ({ what, kind: "set-up", cost }));
}
