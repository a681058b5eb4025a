import { type Exact, exactOf, numberOf } from "@landfast/rules";
import { decimalOf, plus, ZERO } from "../money/decimal.js";
import { commonCurrency, type Money } from "../money/money.js";
import { canonicalProblem } from "../problem/canonical-problem.js";
import type { StockProblem } from "../problem/stock-problem.js";
import { itemsInEveryPlan, makersIn, reduceOffer } from "../reduction/offer-reduction.js";
import { OutOfTime, type SolveLimits, type Solver, SolverFailure } from "../solver/solver.js";
import { type CostModel, costModel } from "./cost-model.js";
import { type CoverPlan, coverPlan } from "./cover-plan.js";
import { withoutNeedlessParts } from "./needless-parts.js";
import { type Offer, type OfferedClass, type OfferedItem, offerOf } from "./offer.js";
import { costProof, countProof } from "./proof.js";
import { type SettledPlan, type Share, settlePlan } from "./settle-plan.js";
import { sharesWithin } from "./shares-within.js";
import type { Objective, Proof, StockPlan } from "./stock-plan.js";
import { withoutShortClasses } from "./stock-shortage.js";

export interface PlanOptions {
  /** Money for one electrician-hour. Given, labor counts as cost, and a way to make a class without hours is left out. */
  readonly labourRate?: Money;
  readonly limits?: SolveLimits;
  /** False: the question goes to the solver as it was put, to check the reduction. The plan's value is the same. */
  readonly reduce?: boolean;
  /** No more part numbers than this. Only with an objective of cost. */
  readonly mostPartNumbers?: number;
}

/** No plan keeps to the limit that was set on the number of part numbers. */
export class NoSuchPlan extends RangeError {
  override readonly name: string = "NoSuchPlan";

  constructor() {
    super("no plan makes every joint with so few part numbers");
  }
}

/**
 * Decides which part numbers to stock, which joints are made with which, and how many packs to buy.
 *
 * Stock on hand is used up first and costs nothing more; packs are bought whole, the cheapest way the price breaks
 * allow. Classes that nothing can make are named and the rest is planned. Classes and items may come in any order: they
 * are sorted first, so the same problem has the same plan. Of plans with equal value the one is given that the solver
 * reaches first on the sorted problem; it is the same every time for one version of the solver, unless a time limit cut
 * the work short. By cost, part numbers that it can do without at no more cost are then left out. For
 * `fewest-part-numbers` each class then gets, of the parts chosen, the one that `sharesWithin` ranks
 * first.
 * Worked: items A (makes classes 1, 2), B (2, 3), C (1, 2, 3): fewest is C alone; at 1, 1 and 5 a part and one joint each,
 * cheapest is A and B for 3 against 15.
 * @throws UnusableProblem, UnlikeCurrencies, RangeError for a wrong option; NoSuchPlan; OutOfTime; SolverFailure.
 */
export async function planStock(
  problem: StockProblem,
  objective: Objective,
  solver: Solver,
  options: PlanOptions = {},
): Promise<StockPlan> {
  const frame = frameOf(problem, objective, options);
  const offered = offerOf(canonicalProblem(problem), { byCost: frame.byCost, labourRate: frame.labourRate });
  const offer = frame.byCost ? await withoutShortClasses(offered, solver, frame.limits) : offered;
  const planned = frame.byCost
    ? await planByCost(offer, objective, solver, frame)
    : await planByCount(offer, solver, frame);
  const { settled, proof, makersLeft, itemsLeft } = planned;
  return {
    objective,
    partNumbers: settled.parts.length,
    parts: settled.parts,
    assignments: settled.assignments,
    cost: settled.cost,
    hours: settled.hours,
    joints: settled.joints,
    unservable: offer.unservable,
    notCosted: offer.notCosted,
    proof,
    reduction: {
      classes: offer.classes.length,
      items: itemsIn(offer.classes),
      makers: makersIn(offer.classes),
      makersLeft,
      itemsLeft,
      forced: [...itemsInEveryPlan(offer.classes, offer.items)]
        .map((place) => offer.items[place]?.partNumber ?? "")
        .sort(),
    },
  };
}

/** What is asked, with every default put in. */
interface Frame {
  readonly byCost: boolean;
  readonly labourRate: Money | null;
  /** null: no carrying cost in the question. */
  readonly carrying: Exact | null;
  readonly limits: SolveLimits;
  readonly reduce: boolean;
  readonly mostPartNumbers: number | null;
}

interface Planned {
  readonly settled: SettledPlan;
  readonly proof: Proof;
  readonly makersLeft: number;
  readonly itemsLeft: number;
}

function frameOf(problem: StockProblem, objective: Objective, options: PlanOptions): Frame {
  const { labourRate = null, limits = {}, reduce = true, mostPartNumbers = null } = options;
  const byCost = objective.kind !== "fewest-part-numbers";
  const carrying = objective.kind === "least-cost-with-carrying-cost" ? objective.carryingCost : null;
  const sums = [labourRate, carrying].filter((one) => one !== null);
  for (const { amount } of sums) if (decimalOf(amount).numerator < 0n) throw new RangeError("a rate is not below zero");
  commonCurrency([
    ...problem.items.flatMap(({ price }) => price?.currency ?? []),
    ...sums.map(({ currency }) => currency),
  ]);
  if (mostPartNumbers !== null && !(byCost && Number.isSafeInteger(mostPartNumbers) && mostPartNumbers >= 0))
    throw new RangeError("mostPartNumbers is a whole number, with an objective of cost");
  return {
    byCost,
    labourRate,
    carrying: carrying === null ? null : decimalOf(carrying.amount),
    limits,
    reduce,
    mostPartNumbers,
  };
}

async function planByCount(offer: Offer, solver: Solver, frame: Frame): Promise<Planned> {
  const { classes, items } = offer;
  const cover = await coverOf(offer, solver, frame);
  const settled = settlePlan(offer, sharesWithin(classes, items, new Set(cover.items)), {
    carrying: null,
    labourIsCosted: frame.labourRate !== null,
  });
  return {
    settled,
    proof: countProof(settled.parts.length, cover.bound),
    makersLeft: cover.reduced.classes.reduce((sum, makers) => sum + makers.length, 0),
    itemsLeft: new Set(cover.reduced.classes.flat()).size,
  };
}

async function planByCost(offer: Offer, objective: Objective, solver: Solver, frame: Frame): Promise<Planned> {
  const fewest = objective.kind === "fewest-then-cheapest" ? await fewestThatStockAllows(offer, solver, frame) : null;
  const counts = [frame.mostPartNumbers, fewest?.partNumbers ?? null].filter((one) => one !== null);
  const mostPartNumbers = counts.length === 0 ? null : Math.min(...counts);
  const carrying = frame.carrying ?? ZERO;
  const countIsLimited = mostPartNumbers !== null;
  const classes = frame.reduce ? reduceOffer(offer, { carrying, countIsLimited }) : offer.classes;
  const start = fewest === null ? null : startWithin(classes, offer.items, fewest.shares);
  const written = costModel({ offer, least: "cost", classes, carrying, mostPartNumbers, start });
  const { shares, bound } = await solveModel(written, solver, frame.limits, fewest?.shares ?? null);
  const settled = settlePlan(offer, withoutNeedlessParts(classes, offer.items, carrying, shares), {
    carrying: frame.carrying,
    labourIsCosted: frame.labourRate !== null,
  });
  if (settled.total === null) throw new SolverFailure("a plan by cost came out without a cost");
  const proof = costProof(settled.total, bound, written.model.step);
  const isFewest = fewest === null || fewest.bound >= fewest.partNumbers;
  return {
    settled,
    proof: isFewest
      ? proof
      : { ...proof, proven: false, because: countProof(fewest.partNumbers, fewest.bound).because },
    makersLeft: makersIn(classes),
    itemsLeft: itemsIn(classes),
  };
}

interface FewestPlan {
  readonly partNumbers: number;
  readonly bound: number;
  readonly shares: readonly Share[];
}

/**
 * The fewest part numbers where an item without a price is worth no more than its stock. Where every item has a price
 * that is a question of covering; else the quantities have to be asked about too.
 */
async function fewestThatStockAllows(offer: Offer, solver: Solver, frame: Frame): Promise<FewestPlan> {
  const { classes, items } = offer;
  const isStockOnly = classes.some(({ makers }) => makers.some(({ item }) => items[item]?.price === null));
  if (!isStockOnly) {
    const cover = await coverOf(offer, solver, frame);
    const shares = sharesWithin(classes, items, new Set(cover.items));
    return { partNumbers: cover.items.length, bound: cover.bound, shares };
  }
  const written = costModel({
    offer,
    least: "part-numbers",
    classes,
    carrying: ZERO,
    mostPartNumbers: null,
    start: null,
  });
  const { shares, bound } = await solveModel(written, solver, frame.limits, null);
  const used = new Set(shares.map(({ maker }) => maker.item));
  const partNumbers = items.filter(({ must }, place) => must || used.has(place)).length;
  return { partNumbers, bound: bound === null ? 0 : Math.ceil(numberOf(bound) - 1e-6), shares };
}

function coverOf({ classes, items }: Offer, solver: Solver, { limits, reduce }: Frame): Promise<CoverPlan> {
  const must = items.flatMap((item, place) => (item.must ? [place] : []));
  return coverPlan(
    classes.map(({ makers }) => makers.map(({ item }) => item)),
    must,
    solver,
    limits,
    reduce,
  );
}

/** The same parts among the makers that are left, or null where that is no whole plan. */
function startWithin(
  classes: readonly OfferedClass[],
  items: readonly OfferedItem[],
  shares: readonly Share[],
): readonly Share[] | null {
  const chosen = new Set(shares.map(({ maker }) => maker.item));
  items.forEach(({ must }, place) => {
    if (must) chosen.add(place);
  });
  const isWhole = classes.every(({ makers }) => makers.some(({ item }) => chosen.has(item)));
  return isWhole && [...chosen].every((place) => items[place]?.price != null)
    ? sharesWithin(classes, items, chosen)
    : null;
}

async function solveModel(
  { model, constant, sharesOf }: CostModel,
  solver: Solver,
  limits: SolveLimits,
  fallback: readonly Share[] | null,
): Promise<{ shares: readonly Share[]; bound: Exact | null }> {
  if (model.columns.length === 0) return { shares: [], bound: constant };
  const answer = await solver.solve(model, limits);
  const bound = Number.isFinite(answer.bound) ? plus(exactOf(answer.bound), constant) : null;
  if (answer.status === "infeasible") throw new NoSuchPlan();
  if (answer.status !== "limit-without-plan") return { shares: sharesOf(answer.values), bound };
  if (fallback === null) throw new OutOfTime("the time limit came before any plan; allow more time");
  return { shares: fallback, bound };
}

function itemsIn(classes: readonly OfferedClass[]): number {
  return new Set(classes.flatMap(({ makers }) => makers.map(({ item }) => item))).size;
}
