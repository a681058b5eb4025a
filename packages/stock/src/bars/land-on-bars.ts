import { byText } from "../problem/canonical-problem.js";
import { UnusableProblem } from "../problem/check-problem.js";
import type { Model, ModelColumn, ModelRow, SolveLimits, Solver } from "../solver/solver.js";
import { OutOfTime, SolverFailure } from "../solver/solver.js";
import type { Bar, BarAnswer, BarConductor, BarLanding, BarOpening, BarQuestion } from "./bar-question.js";
import { type Filling, openingFillings } from "./opening-fillings.js";

/** Equal openings on one bar, or on every bar that is added of one kind. */
interface OpeningKind {
  readonly bar: Bar;
  /** Place among the addable bars; null for a bar that is there. */
  readonly addable: number | null;
  readonly opening: BarOpening;
  readonly free: number;
  readonly fillings: readonly Filling[];
}

/**
 * Lands neutrals and equipment grounds on bars: every neutral in an opening of its own, grounds together only as the
 * marking permits.
 *
 * Exact: of all ways to do it the one that lands most conductors, then adds fewest bars, then leaves most openings spare,
 * found by three integer programs one after another. Bars and conductors may come in any order.
 * Worked: a bar of 5 openings for one 14-4 or two like 14-12, 3 neutrals and 4 grounds of 12 AWG: 3 + 2 openings, none
 * spare. One more neutral: a bar is added.
 * @throws UnusableProblem; OutOfTime; SolverFailure.
 */
export async function landOnBars(question: BarQuestion, solver: Solver, limits: SolveLimits = {}): Promise<BarAnswer> {
  refuseFaults(question);
  const conductors = question.conductors.toSorted((a, b) => byText(a.id, b.id));
  const bars = question.bars.toSorted((a, b) => byText(a.id, b.id));
  const addable = (question.addable ?? []).toSorted((a, b) => byText(a.id, b.id));
  const kinds = [
    ...bars.flatMap((bar) => kindsOf(bar, null, conductors)),
    ...addable.flatMap((bar, place) => kindsOf(bar, place, conductors)),
  ];
  const model = new BarModel(conductors, addable.length, kinds);
  const { values, proven } = await model.solve(solver, limits);
  return answerOf(conductors, addable, kinds, model, values, proven);
}

function kindsOf(bar: Bar, addable: number | null, conductors: readonly BarConductor[]): OpeningKind[] {
  return bar.openings
    .toSorted((a, b) => byText(a.id, b.id))
    .map((opening) => ({
      bar,
      addable,
      opening,
      free: opening.count - (opening.occupied ?? 0),
      fillings: openingFillings(opening, bar.takes, conductors),
    }));
}

/** Columns: openings with each filling, then bars added of each kind, then conductors left over. */
class BarModel {
  readonly #conductors: readonly BarConductor[];
  readonly #kinds: readonly OpeningKind[];
  readonly #columns: Omit<ModelColumn, "cost">[] = [];
  readonly #rows: ModelRow[] = [];
  /** First column of each kind's fillings. */
  readonly #first: number[] = [];
  readonly #added: number;
  readonly #left: number;

  constructor(conductors: readonly BarConductor[], addable: number, kinds: readonly OpeningKind[]) {
    this.#conductors = conductors;
    this.#kinds = kinds;
    const all = conductors.reduce((sum, { count }) => sum + count, 0);
    for (const { fillings } of kinds) {
      this.#first.push(this.#columns.length);
      for (let at = 0; at < fillings.length; at += 1) this.#columns.push({ lower: 0, upper: all, integer: true });
    }
    this.#added = this.#columns.length;
    for (let at = 0; at < addable; at += 1) this.#columns.push({ lower: 0, upper: all, integer: true });
    this.#left = this.#columns.length;
    for (const { count } of conductors) this.#columns.push({ lower: 0, upper: count, integer: true });
    this.#writeRows();
  }

  openingsWith(kind: number, filling: number, values: readonly number[]): number {
    return Math.round(values[(this.#first[kind] ?? 0) + filling] ?? 0);
  }

  barsAdded(addable: number, values: readonly number[]): number {
    return Math.round(values[this.#added + addable] ?? 0);
  }

  leftOver(conductor: number, values: readonly number[]): number {
    return Math.round(values[this.#left + conductor] ?? 0);
  }

  /** One objective after another, each kept at its best while the next is sought. */
  async solve(solver: Solver, limits: SolveLimits): Promise<{ values: readonly number[]; proven: boolean }> {
    if (this.#conductors.length === 0) return { values: [], proven: true };
    let values: readonly number[] = [];
    let proven = true;
    for (const counted of [
      range(this.#left, this.#columns.length),
      range(this.#added, this.#left),
      range(0, this.#added),
    ]) {
      if (counted.length === 0) continue;
      const answer = await solver.solve(this.#model(counted), limits);
      if (answer.values.length === 0) {
        if (values.length > 0) return { values, proven: false };
        throw new OutOfTime("the time limit came before any landing; allow more time");
      }
      values = answer.values;
      proven = proven && answer.status === "optimal";
      const best = counted.reduce((sum, column) => sum + Math.round(values[column] ?? 0), 0);
      this.#rows.push({
        lower: Number.NEGATIVE_INFINITY,
        upper: best,
        columns: counted,
        coefficients: counted.map(() => 1),
      });
    }
    return { values, proven };
  }

  #model(counted: readonly number[]): Model {
    const costs = new Set(counted);
    return {
      columns: this.#columns.map((column, place) => ({ ...column, cost: costs.has(place) ? 1 : 0 })),
      rows: [...this.#rows],
      step: 1,
    };
  }

  #writeRows(): void {
    this.#kinds.forEach(({ fillings, free, addable, opening }, kind) => {
      const columns = fillings.map((_, at) => (this.#first[kind] ?? 0) + at);
      if (columns.length === 0) return;
      const coefficients = columns.map(() => 1);
      if (addable === null) this.#rows.push({ lower: Number.NEGATIVE_INFINITY, upper: free, columns, coefficients });
      else
        this.#rows.push({
          lower: Number.NEGATIVE_INFINITY,
          upper: 0,
          columns: [...columns, this.#added + addable],
          coefficients: [...coefficients, -opening.count],
        });
    });
    this.#conductors.forEach(({ count }, place) => {
      const columns = [this.#left + place];
      const coefficients = [1];
      this.#kinds.forEach(({ fillings }, kind) => {
        fillings.forEach((filling, at) => {
          const held = filling.get(place);
          if (held === undefined) return;
          columns.push((this.#first[kind] ?? 0) + at);
          coefficients.push(held);
        });
      });
      this.#rows.push({ lower: count, upper: count, columns, coefficients });
    });
  }
}

function answerOf(
  conductors: readonly BarConductor[],
  addable: readonly Bar[],
  kinds: readonly OpeningKind[],
  model: BarModel,
  values: readonly number[],
  proven: boolean,
): BarAnswer {
  const landings: BarLanding[] = [];
  const spare: { bar: string; opening: string; openings: number }[] = [];
  kinds.forEach(({ bar, addable: place, opening, free, fillings }, kind) => {
    const bars = place === null ? 1 : model.barsAdded(place, values);
    let openings = free * bars;
    fillings.forEach((filling, at) => {
      const filled = model.openingsWith(kind, at, values);
      if (filled === 0) return;
      openings -= filled;
      landings.push({
        bar: bar.id,
        isAdded: place !== null,
        opening: opening.id,
        openings: filled,
        conductors: [...filling].map(([conductor, count]) => ({ id: conductors[conductor]?.id ?? "", count })),
      });
    });
    if (openings < 0) throw new SolverFailure(`more openings of ${bar.id} were filled than are free`);
    if (openings > 0) spare.push({ bar: bar.id, opening: opening.id, openings });
  });
  const permitted = new Set(kinds.flatMap(({ fillings }) => fillings.flatMap((filling) => [...filling.keys()])));
  return {
    landings,
    barsToAdd: addable.flatMap(({ id }, place) => {
      const count = model.barsAdded(place, values);
      return count > 0 ? [{ bar: id, count }] : [];
    }),
    spare,
    spareOpenings: spare.reduce((sum, { openings }) => sum + openings, 0),
    openingsUsed: landings.reduce((sum, { openings }) => sum + openings, 0),
    notLanded: conductors.flatMap(({ id }, place) => {
      const count = model.leftOver(place, values);
      const because = permitted.has(place)
        ? "no opening that its marking permits it in is left, and no bar can be added"
        : "no bar's marking permits it: role, size, metal and strand form all have to be listed";
      return count > 0 ? [{ id, count, because }] : [];
    }),
    objective: "most conductors landed, then fewest bars added, then most openings left spare",
    proven,
  };
}

function refuseFaults({ bars, addable = [], conductors }: BarQuestion): void {
  const faults: string[] = [];
  const ids = [...bars, ...addable].map(({ id }) => id);
  if (new Set(ids).size < ids.length) faults.push("two bars have the same id");
  const own = conductors.map(({ id }) => id);
  if (new Set(own).size < own.length) faults.push("two groups of conductors have the same id");
  for (const { id, count } of conductors)
    if (!isCount(count, 1)) faults.push(`${id}: count is a whole number from 1 up`);
  for (const bar of [...bars, ...addable]) {
    const openings = bar.openings.map(({ id }) => id);
    if (new Set(openings).size < openings.length) faults.push(`bar ${bar.id}: two openings have the same id`);
    for (const { id, count, occupied = 0, permits } of bar.openings) {
      if (!isCount(count, 1) || !isCount(occupied, 0) || occupied > count)
        faults.push(`bar ${bar.id}, opening ${id}: no more occupied than there are, in whole numbers`);
      for (const permit of permits)
        if (!isCount(permit.conductors, 1) || permit.conductors > 12)
          faults.push(`bar ${bar.id}, opening ${id}: a permit is for 1 to 12 conductors`);
    }
  }
  for (const { id, openings } of addable)
    if (openings.some(({ occupied = 0 }) => occupied > 0)) faults.push(`bar ${id}: a bar to be added is empty`);
  if (faults.length > 0) throw new UnusableProblem(faults);
}

function isCount(value: number, least: number): boolean {
  return Number.isSafeInteger(value) && value >= least && value <= 10_000;
}

function range(from: number, to: number): number[] {
  return Array.from({ length: to - from }, (_, at) => from + at);
}
