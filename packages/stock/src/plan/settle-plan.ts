import { type Exact, exactOf } from "@landfast/rules";
import { decimalText, plus, times, ZERO } from "../money/decimal.js";
import { moneyOf } from "../money/money.js";
import type { Purchase } from "../prices/item-price.js";
import { purchaseFor } from "./item-cost.js";
import type { Offer, OfferedClass, OfferedMaker } from "./offer.js";
import type { Assignment, PlanCost, PlannedPart } from "./stock-plan.js";

/** So many joints of a class, made in one way. Classes and makers are spoken of by their places in the offer. */
export interface Share {
  readonly classPlace: number;
  readonly maker: OfferedMaker;
  readonly joints: number;
}

/** Sums that are counted once for a plan. */
export interface FixedCosts {
  /** For every part number stocked; null: not part of the question. */
  readonly carrying: Exact | null;
  readonly labourIsCosted: boolean;
}

export interface SettledPlan {
  readonly parts: readonly PlannedPart[];
  readonly assignments: readonly Assignment[];
  readonly cost: PlanCost | null;
  /** The total in exact form; null: not known. */
  readonly total: Exact | null;
  readonly hours: string | null;
  readonly joints: number;
}

/**
 * Works out what a choice of parts comes to, exactly and without a solver: parts used, packs to buy the cheapest way,
 * cost and hours. The solver only ever proposes who makes what; every figure of a plan is worked here.
 */
export function settlePlan(offer: Offer, shares: readonly Share[], fixed: FixedCosts): SettledPlan {
  const used = shares.filter(({ joints }) => joints > 0);
  const sharesOf = new Map<number, Share[]>();
  for (const share of used) {
    const known = sharesOf.get(share.maker.item);
    if (known === undefined) sharesOf.set(share.maker.item, [share]);
    else known.push(share);
  }
  const parts: PlannedPart[] = [];
  let partsCost: Exact | null = ZERO;
  for (const [place, item] of offer.items.entries()) {
    const mine = sharesOf.get(place) ?? [];
    if (mine.length === 0 && !item.must) continue;
    const partsUsed = mine.reduce((sum, share) => sum + share.joints * share.maker.partsPerJoint, 0);
    const purchase = purchaseFor(item, partsUsed);
    partsCost = partsCost === null || purchase === null ? null : plus(partsCost, purchase.cost);
    parts.push(plannedPart(offer, place, mine, partsUsed, purchase));
  }
  const labour = used.reduce((sum, { maker, joints }) => plus(sum, times(maker.labour, exactOf(joints))), ZERO);
  const carrying = fixed.carrying === null ? null : times(fixed.carrying, exactOf(parts.length));
  const total = partsCost === null ? null : plus(plus(partsCost, labour), carrying ?? ZERO);
  return {
    parts,
    assignments: assignmentsOf(offer, used),
    cost:
      partsCost === null || total === null || offer.currency === null
        ? null
        : {
            parts: moneyOf(partsCost, offer.currency),
            labour: fixed.labourIsCosted ? moneyOf(labour, offer.currency) : null,
            carrying: carrying === null ? null : moneyOf(carrying, offer.currency),
            total: moneyOf(total, offer.currency),
          },
    total,
    hours: hoursText(
      used.map(({ maker, joints }) => (maker.hours === null ? null : times(maker.hours, exactOf(joints)))),
    ),
    joints: used.reduce((sum, { joints }) => sum + joints, 0),
  };
}

function plannedPart(
  offer: Offer,
  place: number,
  mine: readonly Share[],
  partsUsed: number,
  purchase: Purchase | null,
): PlannedPart {
  const item = offer.items[place];
  if (item === undefined) throw new RangeError("no such item in the offer");
  const { partNumber, packQuantity, onHand, must } = item;
  const fromStock = Math.min(onHand, partsUsed);
  // Without a price the packs are still known: as few as cover what is missing.
  const packs = purchase?.packs ?? Math.ceil(Math.max(partsUsed - onHand, must ? 1 : 0) / packQuantity);
  const bought = packs * packQuantity;
  return {
    partNumber,
    classIds: [...new Set(mine.map(({ classPlace }) => classId(offer, classPlace)))].sort(),
    joints: mine.reduce((sum, { joints }) => sum + joints, 0),
    partsUsed,
    fromStock,
    packs,
    packQuantity,
    bought,
    overBuy: bought - (partsUsed - fromStock),
    each: purchase?.each == null || offer.currency === null ? null : moneyOf(purchase.each, offer.currency),
    breakFrom: purchase?.breakFrom ?? null,
    cost: purchase === null || offer.currency === null ? null : moneyOf(purchase.cost, offer.currency),
    must,
  };
}

function assignmentsOf(offer: Offer, used: readonly Share[]): Assignment[] {
  return used
    .toSorted((a, b) => a.classPlace - b.classPlace || a.maker.item - b.maker.item)
    .map(({ classPlace, maker, joints }) => ({
      classId: classId(offer, classPlace),
      partNumber: offer.items[maker.item]?.partNumber ?? "",
      joints,
      parts: joints * maker.partsPerJoint,
      hours: maker.hours === null ? null : decimalText(times(maker.hours, exactOf(joints))),
      verdict: maker.verdict,
    }));
}

function classId(offer: Offer, place: number): string {
  const offered: OfferedClass | undefined = offer.classes[place];
  if (offered === undefined) throw new RangeError("no such class in the offer");
  return offered.jointClass.id;
}

function hoursText(hours: readonly (Exact | null)[]): string | null {
  let sum = ZERO;
  for (const one of hours) {
    if (one === null) return null;
    sum = plus(sum, one);
  }
  return decimalText(sum);
}
