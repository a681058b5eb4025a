import { type Exact, exactOf } from "@landfast/rules";
import { decimalOf, times, ZERO } from "../money/decimal.js";
import { commonCurrency, type Money } from "../money/money.js";
import type { ItemPrice } from "../prices/item-price.js";
import type { CanonicalProblem } from "../problem/canonical-problem.js";
import { UnusableProblem } from "../problem/check-problem.js";
import { isAlike, type JointClass, type MakingVerdict } from "../problem/stock-problem.js";

/** An item as a plan may use it. Items are spoken of by their place in the offer. */
export interface OfferedItem {
  readonly partNumber: string;
  readonly packQuantity: number;
  /** null: not known. Where cost counts, only what is on hand of it can be used. */
  readonly price: ItemPrice | null;
  readonly onHand: number;
  readonly must: boolean;
}

/** One way to make a class: with which item, at what labor. */
export interface OfferedMaker {
  readonly item: number;
  readonly partsPerJoint: number;
  /** Labor for one joint as money: zero where labor is not costed. */
  readonly labour: Exact;
  readonly hours: Exact | null;
  readonly verdict: MakingVerdict;
}

export interface OfferedClass {
  readonly jointClass: JointClass;
  readonly alike: boolean;
  readonly makers: readonly OfferedMaker[];
}

/** What a plan may choose from, once what is barred or cannot be costed has gone. */
export interface Offer {
  readonly items: readonly OfferedItem[];
  /** Classes that some item can make. */
  readonly classes: readonly OfferedClass[];
  readonly unservable: readonly Unservable[];
  readonly notCosted: readonly NotCosted[];
  /** null: no item has a price. */
  readonly currency: string | null;
}

/** A class for which nothing can be planned. */
export interface Unservable {
  readonly classId: string;
  readonly joints: number;
  readonly marks: readonly string[];
  readonly because: string;
}

/** A way to make a class that was left out because its cost is not known. */
export interface NotCosted {
  readonly classId: string;
  readonly partNumber: string;
  readonly because: string;
}

/** What counts as cost. */
export interface Costing {
  /** False for a plan by number of part numbers alone: then nothing is left out for want of a price. */
  readonly byCost: boolean;
  /** Money for one electrician-hour; null: labor is not costed. */
  readonly labourRate: Money | null;
}

/**
 * Takes out what is barred and, where cost counts, what cannot be costed: an item with neither a price nor stock, a
 * way to make a class without hours where labor is costed. A class that is left without a maker is named with the
 * reason.
 * @throws UnlikeCurrencies; UnusableProblem for an item that must be bought and has no price while cost counts.
 */
export function offerOf(problem: CanonicalProblem, costing: Costing): Offer {
  const currency = commonCurrency([
    ...problem.items.flatMap(({ price }) => price?.currency ?? []),
    ...(costing.labourRate === null ? [] : [costing.labourRate.currency]),
  ]);
  const rate = costing.labourRate === null ? null : decimalOf(costing.labourRate.amount);
  const items = problem.items.map(
    ({ partNumber, packQuantity, price = null, onHand = 0, must = false }): OfferedItem => ({
      partNumber,
      packQuantity,
      price,
      onHand,
      must,
    }),
  );
  if (costing.byCost) refuseUnpricedMust(items);
  const places = new Map(items.map(({ partNumber }, place) => [partNumber, place]));
  const barred = new Set(problem.items.flatMap(({ partNumber, mustNot }) => (mustNot === true ? [partNumber] : [])));
  const classes: OfferedClass[] = [];
  const unservable: Unservable[] = [];
  const notCosted: NotCosted[] = [];
  for (const { makers, ...jointClass } of problem.classes) {
    const offered: OfferedMaker[] = [];
    const reasons = new Set<string>();
    for (const { partNumber, partsPerJoint, labourHours, verdict } of makers) {
      const place = places.get(partNumber);
      const item = place === undefined ? undefined : items[place];
      if (place === undefined || item === undefined) continue;
      if (barred.has(partNumber)) {
        reasons.add(`${partNumber} must not be used`);
        continue;
      }
      const missing = costing.byCost ? uncosted(item, labourHours, rate) : null;
      if (missing !== null) {
        reasons.add(missing);
        notCosted.push({ classId: jointClass.id, partNumber, because: missing });
        continue;
      }
      const hours = labourHours === undefined ? null : exactOf(labourHours);
      offered.push({
        item: place,
        partsPerJoint,
        labour: rate === null || hours === null ? ZERO : times(rate, hours),
        hours,
        verdict,
      });
    }
    if (offered.length > 0) classes.push({ jointClass, alike: isAlike(jointClass), makers: offered });
    else unservable.push(unservableOf(jointClass, reasons));
  }
  return { items, classes, unservable, notCosted, currency };
}

/** A class that cannot be made, with the reason. */
export function unservableOf({ id, joints, marks }: JointClass, reasons: Iterable<string>): Unservable {
  const because = [...reasons].join("; ");
  return { classId: id, joints, marks, because: because === "" ? "no item can make it" : because };
}

function uncosted(item: OfferedItem, labourHours: number | undefined, rate: Exact | null): string | null {
  if (item.price === null && item.onHand === 0) return `${item.partNumber} has no price`;
  if (rate !== null && labourHours === undefined) return `${item.partNumber} has no labor hours for it`;
  return null;
}

function refuseUnpricedMust(items: readonly OfferedItem[]): void {
  const faults = items.flatMap(({ partNumber, price, must, onHand }) =>
    must && price === null && onHand === 0
      ? [`item ${partNumber} must be stocked and has neither a price nor stock: what it costs is not known`]
      : [],
  );
  if (faults.length > 0) throw new UnusableProblem(faults);
}
