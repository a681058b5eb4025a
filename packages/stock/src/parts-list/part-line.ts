import { ceilingOf, decimalText, ZERO } from "../money/decimal.js";
import { moneyOf, roundedMoney } from "../money/money.js";
import { cheapestPurchase } from "../prices/item-price.js";
import { partLineId } from "./kits.js";
import { earliestOf, marksOf, type PartDemand, sumOf } from "./part-demand.js";
import type { PartLine, PartsListGap } from "./parts-list.js";
import type { ListedPart, OwnerSpare, PartsListQuestion } from "./parts-list-question.js";
import { type SpareRule, sparesFor } from "./spare-policy.js";

/**
 * The line of one part: net, spares, what is on hand, packs. Worked at `listParts`.
 * Gaps that come up are added to `gaps`.
 */
export function partLine(
  part: ListedPart,
  demands: readonly PartDemand[],
  ownerSpares: readonly OwnerSpare[],
  { spares, rounding }: PartsListQuestion,
  currency: string | null,
  gaps: PartsListGap[],
): PartLine {
  const { partNumber, description, kind, packQuantity, price, onHand = 0, leadTimeDays } = part;
  const uses = demands.map(({ use }) => use);
  const marks = marksOf(uses);
  const net = sumOf(demands);
  const netParts = ceilingOf(net);
  const rule = spares.rules[kind];
  const policy = sparesFor(rule, netParts, leadTimeDays);
  if (policy.leadTimeIsAsked)
    gaps.push({ about: "no-lead-time", sentence: `the spare policy asks for the lead time of ${partNumber}`, marks });
  const byOwner = ownerSpares.filter((one) => one.partNumber === partNumber).reduce((sum, one) => sum + one.parts, 0);
  const needs = netParts + policy.parts + byOwner;
  const fromStock = Math.min(onHand, needs);
  const toBuy = needs - fromStock;
  const covering = Math.ceil(toBuy / packQuantity);
  const purchase = price === undefined ? null : cheapestPurchase(price, packQuantity, toBuy);
  const packs = purchase?.packs ?? covering;
  if (price === undefined && toBuy > 0) gaps.push({ about: "no-price", sentence: `${partNumber} has no price`, marks });
  return {
    id: partLineId(partNumber),
    partNumber,
    description,
    kind,
    net: decimalText(net),
    netParts,
    spares: { byPolicy: policy.parts, byOwner, rule: ruleText(rule) },
    fromStock,
    toBuy,
    packs,
    packQuantity,
    packRounding: covering * packQuantity - toBuy,
    breakOverBuy: (packs - covering) * packQuantity,
    bought: packs * packQuantity,
    each: purchase?.each == null || price === undefined ? null : moneyOf(purchase.each, price.currency),
    breakFrom: purchase?.breakFrom ?? null,
    // Nothing to buy costs nothing, price or no price.
    cost:
      currency === null || (purchase === null && toBuy > 0)
        ? null
        : roundedMoney(purchase?.cost ?? ZERO, currency, rounding),
    marks,
    neededBy: earliestOf(uses),
  };
}

/** "5 %, at least 2; at least 4 where it takes more than 21 days to come". */
function ruleText({ percent, atLeast, longLead }: SpareRule): string {
  const least = atLeast === 0 ? "" : `, at least ${String(atLeast)}`;
  const long =
    longLead === undefined
      ? ""
      : `; at least ${String(longLead.atLeast)} where it takes more than ${String(longLead.overDays)} days to come`;
  return `${percent} %${least}${long}`;
}
