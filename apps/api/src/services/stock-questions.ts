import type { ConnectorSchedule, Job } from "@landfast/rules";
import {
  type AreaCount,
  type Feasible,
  type JointClass,
  NO_AREA,
  NoSuchPlan,
  OutOfTime,
  type StockItem,
  type StockProblem,
  UnlikeCurrencies,
  UnusableProblem,
} from "@landfast/stock";
import { Problem } from "../problems/problem.js";
import type { JobHead } from "../repositories/job-repository.js";
import type { Catalogue } from "./catalogue.js";
import type { JobRunner } from "./job-runner.js";
import type { JobService, PostedJob } from "./jobs.js";
import { type Supply, type SupplyQuestion, type SupplySources, supplyOf } from "./stock-inputs.js";
import { byText, type JobStock, jobStockInSteps, type StockClass } from "./stock-problem.js";
import { type StockScope, stockWithin } from "./stock-scope.js";

/** A question about the parts of a stored job, with everything that is needed to answer it. */
export interface StockQuestion {
  readonly head: JobHead;
  readonly job: Job;
  readonly schedule: ConnectorSchedule;
  readonly catalogue: Catalogue;
  readonly supply: Supply;
  /** The joints that are meant. */
  readonly stock: JobStock;
  readonly problem: StockProblem;
}

/** What an answer about a job's parts was made from. */
export interface AnsweredFrom {
  readonly job: { readonly id: string; readonly name: string; readonly revision: number };
  readonly catalogue: { readonly id: string; readonly name: string; readonly revision: string };
  readonly prices: string;
  readonly hours: string;
  readonly labourRate: Supply["used"]["labourRate"];
}

export interface StockQuestionService {
  /**
   * Reads a stored job and works out which connectors its joints may be made with. That is done once for a job and a
   * catalogue and remembered for a while; it shows in the time an answer takes and in nothing else.
   * @throws Problem JOB_NOT_FOUND, BUSY, and what `supplyOf` and `stockWithin` throw.
   */
  ask(jobId: string, question: SupplyQuestion & StockScope): Promise<StockQuestion>;
}

/** What the service needs around it. */
export interface StockQuestionParts extends SupplySources {
  readonly jobs: Pick<JobService, "get" | "schedule">;
  readonly runner: JobRunner;
  /** The catalogue that a job is worked out with. */
  readonly catalogueFor: (job: PostedJob) => Promise<Catalogue>;
}

/** Jobs whose answers are remembered. */
const REMEMBERED = 8;

export function stockQuestionService({
  jobs,
  runner,
  catalogueFor,
  priceLists,
  labourTables,
}: StockQuestionParts): StockQuestionService {
  const remembered = new Map<string, Promise<JobStock>>();

  const stockOf = (key: string, work: () => Promise<JobStock>): Promise<JobStock> => {
    const known = remembered.get(key);
    const stock = known ?? work();
    remembered.delete(key);
    remembered.set(key, stock);
    const [oldest] = remembered.keys();
    if (remembered.size > REMEMBERED && oldest !== undefined) remembered.delete(oldest);
    // What failed is asked again next time.
    if (known === undefined)
      stock.catch(() => {
        remembered.delete(key);
      });
    return stock;
  };

  return {
    async ask(jobId, question) {
      const [{ job: head, posted }, scheduleText] = await Promise.all([jobs.get(jobId), jobs.schedule(jobId)]);
      const job = JSON.parse(posted) as PostedJob;
      const schedule = JSON.parse(scheduleText) as ConnectorSchedule;
      const catalogue = await catalogueFor(job);
      const supply = await supplyOf(question, catalogue, { priceLists, labourTables });
      const whole = await stockOf(JSON.stringify([head.id, head.revision, catalogue.id, catalogue.revision]), () =>
        runner.run(job.joints.length, () => jobStockInSteps(job, schedule, catalogue.items)),
      );
      const areas = new Map(job.joints.map(({ mark, area }) => [mark, area ?? null]));
      const stock = stockWithin(whole, areas, question);
      return { head, job, schedule, catalogue, supply, stock, problem: stockProblemOf(stock, catalogue, supply) };
    },
  };
}

/** What an answer was made from, in its own words. */
export function answeredFrom({ head, catalogue, supply }: StockQuestion): AnsweredFrom {
  return {
    job: { id: head.id, name: head.name, revision: head.revision },
    catalogue: { id: catalogue.id, name: catalogue.name, revision: catalogue.revision },
    prices: supply.used.prices,
    hours: supply.used.hours,
    labourRate: supply.used.labourRate,
  };
}

/** Plain numbers for a planner: which item suits which joint has been settled by the rules before. */
export function stockProblemOf({ classes }: JobStock, catalogue: Catalogue, supply: Supply): StockProblem {
  const offered = new Set(classes.flatMap(({ makers }) => makers.map(({ item }) => item.partNumber)));
  return {
    classes: classes.map((one) => jointClass(one, supply)),
    items: catalogue.items
      .filter((item) => offered.has(item.partNumber) || supply.isMust(item))
      .map((item): StockItem => {
        const price = supply.priceOf(item);
        return {
          partNumber: item.partNumber,
          packQuantity: supply.packOf(item),
          ...(price === undefined ? {} : { price }),
          onHand: supply.onHandOf(item.partNumber),
          must: supply.isMust(item),
          mustNot: supply.isMustNot(item),
        };
      }),
    feasible: classes.map(
      ({ id, joint, makers }): Feasible => ({
        classId: id,
        makers: makers.map(({ item, verdict }) => {
          const labourHours = supply.hoursOf(item, joint);
          return {
            partNumber: item.partNumber,
            verdict,
            partsPerJoint: 1,
            ...(labourHours === undefined ? {} : { labourHours }),
          };
        }),
      }),
    ),
  };
}

function jointClass({ id, joints, marks }: StockClass, supply: Supply): JointClass {
  const areas = new Map<string, number>();
  for (const { area, joints: own } of marks) areas.set(area ?? NO_AREA, (areas.get(area ?? NO_AREA) ?? 0) + own);
  const neededBy = earliest(marks.map(({ area }) => supply.neededBy(area)));
  return {
    id,
    joints,
    marks: marks.map(({ mark }) => mark),
    areas: [...areas].sort(([a], [b]) => byText(a, b)).map(([area, own]): AreaCount => ({ area, joints: own })),
    ...(neededBy === null ? {} : { neededBy }),
    alike: true,
  };
}

/** The earliest of several days; null where none is stated. */
export function earliest(days: readonly (string | null)[]): string | null {
  return days.filter((day) => day !== null).sort(byText)[0] ?? null;
}

/** Turns what a planner cannot answer into what the service answers. */
export async function planning<T>(work: () => Promise<T> | T): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof UnusableProblem)
      throw new Problem(
        "INCONSISTENT_REQUEST",
        "What is asked cannot be planned.",
        error.problems.map((detail) => ({ pointer: "", detail, accepted: "what the detail says" })),
      );
    if (error instanceof UnlikeCurrencies)
      throw new Problem("INCONSISTENT_REQUEST", `Amounts of more than one currency: ${error.message}.`);
    if (error instanceof NoSuchPlan)
      throw new Problem("NO_SUCH_PLAN", "No plan makes every joint with so few part numbers.", [
        {
          pointer: "/mostPartNumbers",
          detail: "no plan makes every joint with so few part numbers",
          accepted: "as many as the plan with the fewest part numbers has, or more",
        },
      ]);
    if (error instanceof OutOfTime)
      throw new Problem("OUT_OF_TIME", "The time limit came before any plan was found.", [
        { pointer: "/secondsPerSolve", detail: error.message, accepted: "more seconds" },
      ]);
    throw error;
  }
}
