import { compareExact, type Exact, exactOf } from "@landfast/rules";
import { ONE, plus, times, ZERO } from "../money/decimal.js";
import type { Model } from "../solver/solver.js";
import { partsToBuy, plainEach, purchaseFor } from "./item-cost.js";
import { cheapestWay, type ItemSupply, type SupplyWay, supplyOf } from "./item-supply.js";
import { ModelWriter, type Terms } from "./model-writer.js";
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

/**
 * Writes the cheapest plan as an integer model. Columns:
 *
 * - `open` for every item, 1 when it is stocked, where carrying costs something or the number is limited;
 * - `way` for every way to come by an item's parts, 1 when it is taken, where there are several;
 * - `made` for every class and maker (and way): 0 or 1 for a class made alike (1: all of it), else a number of joints;
 * - `packs` for every item (and way) whose cost is not simply parts x price.
 *
 * Rows: every class is made; nothing is made with an item that is not open or in a way that is not taken; one way for an
 * item; parts used are on hand or bought. An item of which no class is left is a constant.
 * Worked: one class of 30 joints, item sold in 25s at 2.00 each: row 30 x made <= 25 x packs, cost 50 a pack, so two
 * packs and 100.
 */
export function costModel(question: CostQuestion): CostModel {
  return new CostModelWriter(question).write();
}

/** One column of joints made. */
interface Made {
  readonly classPlace: number;
  readonly maker: OfferedMaker;
  readonly column: number;
}

/** Where the joints of an item are written: in one place, or for each way apart. */
interface Outlet {
  /** Null: parts cost the same each, and the cost stands on the joints. */
  readonly each: Exact | null;
  /** The column that must be 1 for anything to be made here. */
  readonly gate: number | null;
  /** Parts that the plan to begin with takes here. */
  readonly started: boolean;
  /** Columns of joints, with the parts of one. */
  readonly parts: (readonly [column: number, coefficient: number])[];
}

class CostModelWriter {
  readonly #question: CostQuestion;
  readonly #items: readonly OfferedItem[];
  readonly #writer = new ModelWriter();
  readonly #made: Made[] = [];
  readonly #mostUsed = new Map<number, number>();
  readonly #startParts = new Map<number, number>();
  readonly #startJoints = new Map<string, number>();
  readonly #open = new Map<number, number>();
  readonly #outlets = new Map<number, readonly Outlet[]>();
  #constant = ZERO;

  constructor(question: CostQuestion) {
    this.#question = question;
    this.#items = question.offer.items;
    for (const { jointClass, makers } of question.classes)
      for (const { item, partsPerJoint } of makers)
        this.#mostUsed.set(item, (this.#mostUsed.get(item) ?? 0) + jointClass.joints * partsPerJoint);
    for (const { classPlace, maker, joints } of question.start ?? []) {
      this.#startParts.set(maker.item, (this.#startParts.get(maker.item) ?? 0) + joints * maker.partsPerJoint);
      this.#startJoints.set(keyOf(classPlace, maker), joints);
    }
  }

  write(): CostModel {
    const places = [...this.#mostUsed.keys()].sort((a, b) => a - b);
    this.#writeOpen(places);
    const closing = places.map((place) => this.#writeSupply(place));
    this.#question.classes.forEach((one, classPlace) => {
      this.#writeClass(one, classPlace);
    });
    // What an item's parts come from can be written once it is known who takes them.
    for (const close of closing) close();
    return {
      model: this.#writer.model(this.#question.start !== null),
      constant: this.#constant,
      sharesOf: (values) => this.#sharesOf(values),
    };
  }

  /** One column for every item in use; items that must be stocked are open. What stands idle is a constant. */
  #writeOpen(places: readonly number[]): void {
    const { least, mostPartNumbers } = this.#question;
    const carrying = least === "cost" ? this.#question.carrying : ONE;
    let idle = 0;
    for (const [place, item] of this.#items.entries()) {
      if (!item.must || this.#mostUsed.has(place)) continue;
      idle += 1;
      this.#constant = plus(this.#constant, this.#money(purchaseFor(item, 0)?.cost));
    }
    this.#constant = plus(this.#constant, times(carrying, exactOf(idle)));
    if (carrying.numerator === 0n && mostPartNumbers === null) return;
    for (const place of places) {
      const must = this.#items[place]?.must === true;
      const start = must || this.#startParts.has(place) ? 1 : 0;
      const open = this.#writer.column({ cost: carrying, lower: must ? 1 : 0, upper: 1, integer: true, start });
      this.#open.set(place, open);
    }
    if (mostPartNumbers !== null)
      this.#writer.atMost(
        mostPartNumbers - idle,
        [...this.#open.values()].map((column) => [column, 1]),
      );
  }

  /** The outlets of an item; what is returned writes the rows that wait for the joints. */
  #writeSupply(place: number): () => void {
    const item = this.#items[place];
    if (item === undefined) throw new RangeError("no such item in the offer");
    const supply: ItemSupply = supplyOf(item, this.#mostUsed.get(place) ?? 0);
    const open = this.#open.get(place) ?? null;
    if (supply.kind === "switched") return this.#writeWays(place, item, supply.ways, open);
    const each = supply.kind === "plain" ? supply.each : null;
    const outlet: Outlet = { each, gate: open, started: this.#startParts.has(place), parts: [] };
    this.#outlets.set(place, [outlet]);
    if (supply.kind === "plain") return () => undefined;
    const { mode } = supply;
    if (mode === null)
      return () => {
        this.#writer.atMost(item.onHand, outlet.parts);
      };
    const packs = this.#writer.column({
      cost: this.#money(mode.pack),
      lower: partsToBuy(item, 0) > 0 ? 1 : 0,
      upper: mode.most,
      integer: true,
      start: Math.ceil(partsToBuy(item, this.#startParts.get(place) ?? 0) / item.packQuantity),
    });
    return () => {
      this.#writer.atMost(item.onHand, [...outlet.parts, [packs, -item.packQuantity]]);
    };
  }

  #writeWays(place: number, item: OfferedItem, ways: readonly SupplyWay[], open: number | null): () => void {
    const parts = this.#startParts.get(place);
    const started = parts === undefined && !item.must ? null : cheapestWay(item, ways, parts ?? 0);
    const outlets = ways.map((_, at): Outlet => {
      const taken = started?.way === at;
      const gate = this.#writer.column({ upper: 1, integer: true, start: taken ? 1 : 0 });
      return { each: null, gate, started: taken, parts: [] };
    });
    this.#outlets.set(place, outlets);
    const gates: Terms = outlets.flatMap(({ gate }) => (gate === null ? [] : [[gate, 1] as const]));
    if (open === null) this.#writer.atMost(1, gates);
    else this.#writer.atMost(0, [...gates, [open, -1]]);
    // None is on hand of an item that must be stocked: it is bought in one way or another.
    if (partsToBuy(item, 0) > 0) this.#writer.atLeast(1, gates);
    const packs = ways.map((way, at) =>
      way.kind === "stock"
        ? null
        : this.#writer.column({
            cost: this.#money(way.mode.pack),
            upper: way.mode.most,
            integer: true,
            start: started?.way === at ? started.packs : 0,
          }),
    );
    return () => {
      for (const [at, way] of ways.entries()) {
        const outlet = outlets[at];
        const column = packs[at] ?? null;
        if (outlet?.gate == null) continue;
        const fromStock = [outlet.gate, -item.onHand] as const;
        if (way.kind === "stock" || column === null) {
          this.#writer.atMost(0, [...outlet.parts, fromStock]);
          continue;
        }
        this.#writer.atMost(0, [...outlet.parts, fromStock, [column, -item.packQuantity]]);
        this.#writer.atLeast(0, [
          [column, 1],
          [outlet.gate, -way.mode.least],
        ]);
        this.#writer.atMost(0, [
          [column, 1],
          [outlet.gate, -way.mode.most],
        ]);
      }
    };
  }

  #writeClass({ alike, jointClass, makers }: OfferedClass, classPlace: number): void {
    const each = alike ? jointClass.joints : 1;
    const upper = jointClass.joints / each;
    // Where every maker costs parts x price the cheapest open one takes the whole class: no need to ask for integers.
    const integer = makers.some(({ item }) => this.#plainEach(item) === null);
    const columns: number[] = [];
    for (const maker of makers) {
      const parts = each * maker.partsPerJoint;
      const labour = times(maker.labour, exactOf(each));
      const start = (this.#startJoints.get(keyOf(classPlace, maker)) ?? 0) / each;
      for (const outlet of this.#outlets.get(maker.item) ?? []) {
        const cost = outlet.each === null ? labour : plus(labour, times(outlet.each, exactOf(parts)));
        const column = this.#writer.column({
          cost: this.#money(cost),
          upper,
          integer,
          start: outlet.started ? start : 0,
        });
        columns.push(column);
        outlet.parts.push([column, parts]);
        this.#made.push({ classPlace, maker, column });
        if (outlet.gate !== null)
          this.#writer.atMost(0, [
            [column, 1],
            [outlet.gate, -upper],
          ]);
      }
    }
    this.#writer.exactly(
      upper,
      columns.map((column) => [column, 1]),
    );
  }

  /**
   * Whole joints from the solver's values. A class that was not asked for in integers may come back shared between
   * makers of equal cost, so all of it is given to the cheapest maker that is open, the first of equals.
   */
  #sharesOf(values: readonly number[]): Share[] {
    const value = (column: number): number => values[column] ?? 0;
    const byClass = new Map<number, Made[]>();
    for (const made of this.#made) {
      const known = byClass.get(made.classPlace);
      if (known === undefined) byClass.set(made.classPlace, [made]);
      else known.push(made);
    }
    const shares: Share[] = [];
    for (const [classPlace, made] of byClass) {
      const offered = this.#question.classes[classPlace];
      if (offered === undefined) continue;
      const { alike, jointClass } = offered;
      const each = alike ? jointClass.joints : 1;
      if (made.every(({ column }) => !this.#writer.isInteger(column))) {
        const cheapest = made
          .filter(({ maker }) => this.#isOpen(maker.item, value))
          .reduce((a, b) => (compareExact(this.#writer.costOf(b.column), this.#writer.costOf(a.column)) < 0 ? b : a));
        shares.push({ classPlace, maker: cheapest.maker, joints: jointClass.joints });
        continue;
      }
      const joints = new Map<OfferedMaker, number>();
      for (const { maker, column } of made)
        joints.set(maker, (joints.get(maker) ?? 0) + Math.round(value(column)) * each);
      for (const [maker, count] of joints) if (count > 0) shares.push({ classPlace, maker, joints: count });
    }
    return shares;
  }

  #isOpen(place: number, value: (column: number) => number): boolean {
    const column = this.#open.get(place);
    return column === undefined || value(column) > 0.5;
  }

  #plainEach(place: number): Exact | null {
    const item = this.#items[place];
    return item === undefined ? null : plainEach(item);
  }

  /** Money counts only where the plan is to cost least. */
  #money(cost: Exact | undefined): Exact {
    return this.#question.least === "cost" ? (cost ?? ZERO) : ZERO;
  }
}

function keyOf(classPlace: number, maker: OfferedMaker): string {
  return `${String(classPlace)}/${String(maker.item)}`;
}
