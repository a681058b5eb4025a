import { candidatesForJob } from "@landfast/rules";
import { directSolver, type Objective, planStock, type StockPlan, type StockProblem } from "@landfast/stock";
import { SYNTHETIC_BASIS, syntheticCatalogue, syntheticJoints } from "./synthetic.js";

const CONNECTORS = 2000;
const KINDS = 300;
/** The question as it was put is given up after this long; the ratio then says "more than". */
const WHOLE_SECONDS_MAX = 60;

const OBJECTIVES: readonly Objective[] = [
  { kind: "fewest-part-numbers" },
  { kind: "least-cost-with-carrying-cost", carryingCost: { amount: "35", currency: "USD" } },
];

/**
 * Plans of a job of 10,000 joints, against the same question put to the solver without reducing it: each joint by itself,
 * with every connector that makes it.
 */
export async function benchPlan(): Promise<void> {
  console.log(
    `Stock plan of 10,000 joints of ${String(KINDS)} kinds and ${CONNECTORS.toLocaleString("en")} connectors`,
  );
  // First, because the question as it was put takes memory that is not the plan's.
  const [small, large] = [problemOf(1000), problemOf(100_000)];
  const times = { small: 0, large: 0 };
  for (const objective of OBJECTIVES) {
    times.small += (await timed(small, objective, true)).seconds;
    times.large += (await timed(large, objective, true)).seconds;
  }
  console.log(
    `  both plans, time at 100,000 joints over that at 1,000: ${(times.large / times.small).toFixed(2)} (100 would be linear); ${(process.memoryUsage().rss / 1e6).toFixed(0)} MB in memory`,
  );
  const problem = problemOf(10_000);
  const apart = jointsApart(problem);
  for (const objective of OBJECTIVES) {
    const reduced = await timed(problem, objective, true);
    const whole = await timed(apart, objective, false);
    const { plan, seconds } = reduced;
    if (plan === undefined) throw new Error("no plan came in time");
    console.log(
      `  ${objective.kind}: ${seconds.toFixed(2)} s, ${String(plan.partNumbers)} part numbers, ${plan.proof.proven ? "proven optimal" : "NOT PROVEN"}; aim under 5 s and proven`,
    );
    console.log(
      `    ratio to the question as it was put: ${whole.plan === undefined ? "more than " : ""}${(whole.seconds / seconds).toFixed(1)}; aim 10 or better`,
    );
  }
}

/** Equal joints as classes, and what the rules let each be made with. */
function problemOf(joints: number): StockProblem {
  const catalogue = syntheticCatalogue(CONNECTORS, 1);
  const found = candidatesForJob({ joints: syntheticJoints(joints, KINDS, 2), basis: SYNTHETIC_BASIS, catalogue });
  const classes = found.filter(({ candidates }) => candidates.length > 0);
  return {
    classes: classes.map(({ joints: places }, at) => ({
      id: `class-${String(at)}`,
      joints: places.length,
      marks: [],
      areas: [],
    })),
    items: catalogue.map(({ partNumber, packQuantity, price }) => ({
      partNumber,
      packQuantity,
      ...(price === undefined
        ? {}
        : {
            price: { unit: "each", currency: price.currency, breaks: [{ from: 1, amount: price.amount }] } as const,
          }),
    })),
    feasible: classes.map(({ candidates }, at) => ({
      classId: `class-${String(at)}`,
      makers: candidates.map(({ partNumber }) => ({ partNumber, verdict: "accept", partsPerJoint: 1 }) as const),
    })),
  };
}

/** The same joints, each a class of its own. */
function jointsApart({ classes, items, feasible }: StockProblem): StockProblem {
  const makersOf = new Map(feasible.map(({ classId, makers }) => [classId, makers]));
  const joints = classes.flatMap(({ id, joints: count }) =>
    Array.from({ length: count }, (_, at) => ({ id: `${id}/${String(at)}`, makers: makersOf.get(id) ?? [] })),
  );
  return {
    classes: joints.map(({ id }) => ({ id, joints: 1, marks: [], areas: [] })),
    items,
    feasible: joints.map(({ id, makers }) => ({ classId: id, makers })),
  };
}

async function timed(
  problem: StockProblem,
  objective: Objective,
  reduce: boolean,
): Promise<{ readonly plan: StockPlan | undefined; readonly seconds: number }> {
  const start = performance.now();
  let plan: StockPlan | undefined;
  try {
    plan = await planStock(problem, objective, directSolver, { reduce, limits: { seconds: WHOLE_SECONDS_MAX } });
    if (!reduce && !plan.proof.proven) plan = undefined;
  } catch (error) {
    if (reduce) throw error;
  }
  return { plan, seconds: (performance.now() - start) / 1000 };
}
