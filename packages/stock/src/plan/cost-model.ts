import { compareExact, type Exact, exactOf, numberOf } from "@landfast/rules";
import { ONE, plus, times, ZERO } from "../money/decimal.js";
import { breakAt, cheapestPurchase, eachAt, type ItemPrice } from "../prices/item-price.js";
import type { Model, ModelColumn, ModelRow } from "../solver/solver.js";
import { smallestStep } from "./cost-step.js";
import { partsToBuy, plainEach, purchaseFor } from "./item-cost.js";
import type { Offer, OfferedClass, OfferedItem, OfferedMaker } from "./offer.js";
import type { Share } from "./settle-plan.js";

/** The question of the cheapest plan, or of the plan with the fewest part numbers that stock and prices allow. */
export interface CostQuestion {
  readonly offer: Offer;
  /** "part-numbers": every part number counts 1 and nothing else counts. */
  readonly least: "cost" | "part-numbers";
  /** The offer's classes with the makers that are left; same places. */
  readonly classes: readonly OfferedClass[];
  /** For every part number; zero where none is stated. Of no account where part numbers are counted. */
  readonly carrying: Exact;
  /** Null: any number of part numbers. */
  readonly mostPartNumbers: number | null;
  /** A plan to begin with: makers for each class. */
  readonly start: readonly Share[] | null;
}

export interface CostModel {
  readonly model: Model;
  /** Added to the model's objective to give a plan's cost. */
  readonly constant: Exact;
  /** Reads the solver's values. */
  readonly sharesOf: (values: readonly number[]) => Share[];
}

const UNLIMITED = Number.POSITIVE_INFINITY;

/**
 * Writes the cheapest plan as an integer model. Columns:
 *
 * - `open` for every item, 1 when it is stocked, where carrying costs something or the number is limited;
 * - `joints made` for every class and maker: 0 or 1 for a class made alike (1: all of it), else a number of joints;
 * - `packs` for every price break of an item that is sold in packs, has breaks, is on hand or must be stocked, and
 *   `at this break`, 0 or 1, where there are several breaks.
 *
 * Rows: every class is made; nothing is made with an item that is not open; parts used are on hand or bought; at most one break,
 * and packs within it. An item whose cost is parts x price needs no packs: its cost stands on `joints made`. The cost of
 * an item that no class is left for is a constant.
 * Worked: one class of 30 joints, item sold in 25s at 2.00 each: row 30 x made <= 25 x packs, cost 50 a pack, so two
 * packs and 100.
 */
export function costModel(question: CostQuestion): CostModel {
  return new CostModelWriter(question).write();
}

class CostModelWriter {
  readonly #question: CostQuestion;
  readonly #items: readonly OfferedItem[];
  readonly #columns: ModelColumn[] = [];
  readonly #rows: ModelRow[] = [];
  readonly #start: number[] = [];
  readonly #costs: Exact[] = [];
  readonly #made: { readonly share: Omit<Share, "joints">; readonly column: number }[] = [];
  /** Items in use by the plan to begin with, and the parts of each. */
  readonly #startParts = new Map<number, number>();
  readonly #startJoints = new Map<string, number>();
  #open: ReadonlyMap<number, number> = new Map();
  #constant = ZERO;

  constructor(question: CostQuestion) {
    this.#question = question;
    this.#items = question.offer.items;
    for (const { classPlace, maker, joints } of question.start ?? []) {
      this.#startParts.set(maker.item, (this.#startParts.get(maker.item) ?? 0) + joints * maker.partsPerJoint);
      this.#startJoints.set(`${String(classPlace)}/${String(maker.item)}`, joints);
    }
  }

  write(): CostModel {
    const { classes, start } = this.#question;
    const users = this.#users();
    const open = this.#writeOpen(users);
    this.#open = open;
    const parts = new Map<number, { columns: number[]; coefficients: number[]; most: number }>();
    classes.forEach((one, classPlace) => {
      this.#writeClass(one, classPlace, open, parts);
    });
    for (const [place, use] of parts) this.#writePurchase(place, use, open.get(place));
    for (const [place, item] of this.#items.entries())
      if (item.must && !users.has(place))
        this.#constant = plus(this.#constant, this.#money(purchaseFor(item, 0)?.cost));
    return {
      model: {
        columns: this.#columns,
        rows: this.#rows,
        step: smallestStep(this.#costs),
        ...(start === null ? {} : { start: this.#start }),
      },
      constant: this.#constant,
      sharesOf: (values) => this.#sharesOf(values),
    };
  }

  #users(): ReadonlySet<number> {
    return new Set(this.#question.classes.flatMap(({ makers }) => makers.map(({ item }) => item)));
  }

  /** One column for every item in use; items that must be stocked are open. */
  #writeOpen(users: ReadonlySet<number>): ReadonlyMap<number, number> {
    const { least, mostPartNumbers } = this.#question;
    const carrying = least === "cost" ? this.#question.carrying : ONE;
    const open = new Map<number, number>();
    const counts = carrying.numerator > 0n || mostPartNumbers !== null;
    const idleMust = this.#items.filter(({ must }, place) => must && !users.has(place)).length;
    this.#constant = plus(this.#constant, times(carrying, exactOf(idleMust)));
    if (!counts) return open;
    for (const place of [...users].sort((a, b) => a - b)) {
      const must = this.#items[place]?.must === true;
      open.set(place, this.#column(carrying, must ? 1 : 0, 1, true, must || this.#startParts.has(place) ? 1 : 0));
    }
    if (mostPartNumbers !== null) {
      const columns = [...open.values()];
      this.#row(
        -UNLIMITED,
        mostPartNumbers - idleMust,
        columns,
        columns.map(() => 1),
      );
    }
    return open;
  }

  #writeClass(
    one: OfferedClass,
    classPlace: number,
    open: ReadonlyMap<number, number>,
    parts: Map<number, { columns: number[]; coefficients: number[]; most: number }>,
  ): void {
    const { alike, jointClass, makers } = one;
    const each = alike ? jointClass.joints : 1;
    const most = alike ? 1 : jointClass.joints;
    // Where every maker costs parts x price the cheapest open one takes the whole class: no need to ask for integers.
    const plain = makers.every(({ item }) => this.#plainEach(item) !== null);
    const columns: number[] = [];
    for (const maker of makers) {
      const partsEach = each * maker.partsPerJoint;
      const price = this.#plainEach(maker.item);
      const labour = times(maker.labour, exactOf(each));
      const cost = price === null ? labour : plus(labour, times(price, exactOf(partsEach)));
      const column = this.#column(this.#money(cost), 0, most, !plain, this.#startOf(classPlace, maker, each));
      columns.push(column);
      this.#made.push({ share: { classPlace, maker }, column });
      const openColumn = open.get(maker.item);
      if (openColumn !== undefined) this.#row(-UNLIMITED, 0, [column, openColumn], [1, -most]);
      if (price !== null) continue;
      const use = parts.get(maker.item) ?? { columns: [], coefficients: [], most: 0 };
      use.columns.push(column);
      use.coefficients.push(partsEach);
      use.most += partsEach * most;
      parts.set(maker.item, use);
    }
    this.#row(
      most,
      most,
      columns,
      columns.map(() => 1),
    );
  }

  #writePurchase(
    place: number,
    use: { columns: number[]; coefficients: number[]; most: number },
    openColumn: number | undefined,
  ): void {
    const item = this.#items[place];
    if (item === undefined) throw new RangeError("no such item in the offer");
    const packs = item.price === null ? [] : this.#writeBreaks(item, item.price, place, use.most, openColumn);
    const bought = packs.map(() => -item.packQuantity);
    this.#row(-UNLIMITED, item.onHand, [...use.columns, ...packs], [...use.coefficients, ...bought]);
    // An item that must be stocked is there even when no joint takes it.
    if (item.must && item.onHand === 0 && packs.length > 0)
      this.#row(
        1,
        UNLIMITED,
        packs,
        packs.map(() => 1),
      );
  }

  /** The pack columns of an item, one for each break that can be of use. */
  #writeBreaks(
    item: OfferedItem,
    price: ItemPrice,
    place: number,
    mostUsed: number,
    openColumn: number | undefined,
  ): number[] {
    const mostParts = partsToBuy(item, mostUsed);
    if (mostParts === 0) return [];
    const started = this.#startPurchase(item, place);
    const mostPacks = Math.ceil(mostParts / item.packQuantity);
    const breaks = price.breaks.flatMap(({ from, amount }, index) => {
      const next = price.breaks[index + 1];
      const least = Math.ceil(from / item.packQuantity);
      const below = next === undefined ? UNLIMITED : Math.ceil(next.from / item.packQuantity) - 1;
      const most = Math.min(below, Math.max(least, mostPacks));
      return most < least ? [] : [{ from, least, most, each: eachAt(price, amount) }];
    });
    const single = breaks.length === 1 && breaks[0]?.from === 1;
    const packs: number[] = [];
    const switches: number[] = [];
    for (const { from, least, most, each } of breaks) {
      const here = started.breakFrom === from ? started.packs : 0;
      const pack = this.#column(this.#money(times(each, exactOf(item.packQuantity))), 0, most, true, here);
      packs.push(pack);
      if (single) continue;
      const at = this.#column(ZERO, 0, 1, true, here > 0 ? 1 : 0);
      switches.push(at);
      this.#row(0, UNLIMITED, [pack, at], [1, -least]);
      this.#row(-UNLIMITED, 0, [pack, at], [1, -most]);
    }
    if (switches.length > 0) {
      const closed = openColumn === undefined ? [] : [openColumn];
      const limit = openColumn === undefined ? 1 : 0;
      this.#row(-UNLIMITED, limit, [...switches, ...closed], [...switches.map(() => 1), ...closed.map(() => -1)]);
    }
    return packs;
  }

  #startPurchase(item: OfferedItem, place: number): { breakFrom: number | null; packs: number } {
    const parts = partsToBuy(item, this.#startParts.get(place) ?? 0);
    if (item.price === null || parts === 0) return { breakFrom: null, packs: 0 };
    const { bought, packs } = cheapestPurchase(item.price, item.packQuantity, parts);
    return { breakFrom: breakAt(item.price, bought)?.from ?? null, packs };
  }

  #startOf(classPlace: number, maker: OfferedMaker, each: number): number {
    return (this.#startJoints.get(`${String(classPlace)}/${String(maker.item)}`) ?? 0) / each;
  }

  /**
   * Whole joints from the solver's values. A class that was not asked for in integers may come back shared between
   * makers of equal cost, so all of it is given to the cheapest maker that is open, the first of equals.
   */
  #sharesOf(values: readonly number[]): Share[] {
    const shares: Share[] = [];
    const byClass = new Map<number, { share: Omit<Share, "joints">; column: number }[]>();
    for (const one of this.#made) {
      const known = byClass.get(one.share.classPlace);
      if (known === undefined) byClass.set(one.share.classPlace, [one]);
      else known.push(one);
    }
    for (const [classPlace, made] of byClass) {
      const offered = this.#question.classes[classPlace];
      if (offered === undefined) continue;
      const { alike, jointClass } = offered;
      if (made.some(({ column }) => this.#columns[column]?.integer === true)) {
        for (const { share, column } of made) {
          const count = Math.round(values[column] ?? 0);
          if (count > 0) shares.push({ ...share, joints: alike ? jointClass.joints : count });
        }
        continue;
      }
      const cheapest = made
        .filter(({ share }) => this.#isOpen(share.maker.item, values))
        .reduce((a, b) => (compareExact(this.#costOf(b.column), this.#costOf(a.column)) < 0 ? b : a));
      shares.push({ ...cheapest.share, joints: jointClass.joints });
    }
    return shares;
  }

  /** Money counts only where the plan is to cost least. */
  #money(cost: Exact | undefined): Exact {
    return this.#question.least === "cost" ? (cost ?? ZERO) : ZERO;
  }

  #isOpen(place: number, values: readonly number[]): boolean {
    const column = this.#open.get(place);
    return column === undefined || (values[column] ?? 0) > 0.5;
  }

  #costOf(column: number): Exact {
    return this.#costs[column] ?? ZERO;
  }

  #plainEach(place: number): Exact | null {
    const item = this.#items[place];
    return item === undefined ? null : plainEach(item);
  }

  #column(cost: Exact, lower: number, upper: number, integer: boolean, start: number): number {
    this.#costs.push(cost);
    this.#columns.push({ cost: numberOf(cost), lower, upper, integer });
    this.#start.push(start);
    return this.#columns.length - 1;
  }

  #row(lower: number, upper: number, columns: readonly number[], coefficients: readonly number[]): void {
    this.#rows.push({ lower, upper, columns, coefficients });
  }
}
