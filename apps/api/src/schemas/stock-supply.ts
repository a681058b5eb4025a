import { CONNECTOR_FAMILIES } from "@landfast/rules";
import { type TObject, type TProperties, Type } from "@sinclair/typebox";
import { enumOf } from "./enum-of.js";
import { PRICE_LINES_MAX, PriceLine } from "./price-list.js";
import { day, decimal } from "./quantity.js";
import { ref } from "./ref.js";
import { strict, taggedUnion } from "./strict.js";
import { label, text } from "./text.js";

/** Parts and joints above this are a slip of the pen. */
export const COUNT_MAX = 10_000_000;
/** Part numbers that one list in a question may name. */
const PARTS_MAX = 20_000;

const partNumber = label(64, "the part number");
export const currency = Type.String({ pattern: "^[A-Z]{3}$", description: 'an ISO 4217 code: "USD"' });

export const Money = strict(
  { amount: decimal("the amount"), currency },
  { $id: "Money", description: 'an amount with its currency: {"amount": "12.50", "currency": "USD"}' },
);

/** An amount in an answer: a difference may lie below zero. */
export const SignedMoney = strict(
  { amount: Type.String({ pattern: "^-?[0-9]+(?:\\.[0-9]+)?$" }), currency },
  { $id: "SignedMoney", description: "an amount with its currency; below zero where it is a saving" },
);

const tagged = (from: string, fields: TProperties = {}): TObject => strict({ from: enumOf([from]), ...fields });

const PricesFrom = taggedUnion(
  "from",
  [
    tagged("catalogue"),
    tagged("price-list", {
      id: Type.String({ minLength: 1, maxLength: 64, description: "the price list's id" }),
      on: day("the day on which its prices have to hold"),
    }),
    tagged("request", {
      currency,
      lines: Type.Array(ref(PriceLine), { minItems: 1, maxItems: PRICE_LINES_MAX }),
    }),
  ],
  {
    $id: "PricesFrom",
    description:
      "where prices come from; absent: from the catalogue. A part without a price is never taken as free: where cost counts it is left out and named.",
  },
);

const HoursFrom = taggedUnion(
  "from",
  [
    tagged("catalogue"),
    tagged("labour-table", {
      id: Type.String({ minLength: 1, maxLength: 64, description: "the labor table's id" }),
      condition: Type.Optional(text(60, "the condition, a word of that table")),
      difficulty: Type.Optional(text(60, "the difficulty, a word of that table")),
    }),
  ],
  {
    $id: "HoursFrom",
    description: "where hours come from; absent: from the catalogue. Hours that are not known are null.",
  },
);

/** What every question about a job's parts may say of supply and cost. */
export const supply = {
  prices: Type.Optional(ref(PricesFrom)),
  hours: Type.Optional(ref(HoursFrom)),
  labourRate: Type.Optional(ref(Money)),
  packs: Type.Optional(
    Type.Array(strict({ partNumber, packQuantity: Type.Integer({ minimum: 1, maximum: COUNT_MAX }) }), {
      maxItems: PARTS_MAX,
      description: "packs other than the catalogue's",
    }),
  ),
  onHand: Type.Optional(
    Type.Array(strict({ partNumber, parts: Type.Integer({ minimum: 0, maximum: COUNT_MAX }) }), {
      maxItems: PARTS_MAX,
      description: "parts in store: they are used first and cost nothing more",
    }),
  ),
  must: Type.Optional(Type.Array(partNumber, { maxItems: PARTS_MAX, description: "parts that have to be stocked" })),
  mustNot: Type.Optional(Type.Array(partNumber, { maxItems: PARTS_MAX, description: "parts that are not to be used" })),
  mustNotFamilies: Type.Optional(
    Type.Array(enumOf(CONNECTOR_FAMILIES), {
      maxItems: CONNECTOR_FAMILIES.length,
      uniqueItems: true,
      description: "families that are not to be used",
    }),
  ),
  needDates: Type.Optional(
    Type.Array(strict({ area: text(80, "the area"), on: day("the day on which it needs its parts") }), {
      maxItems: 1000,
      description: "the day on which each area needs its parts",
    }),
  ),
} as const;

/** Which joints of the job are meant. */
export const scope = {
  marks: Type.Optional(
    Type.Array(label(64, "the mark"), { minItems: 1, maxItems: 10_000, description: "only these marks; absent: all" }),
  ),
  areas: Type.Optional(
    Type.Array(text(80, "the area"), { minItems: 1, maxItems: 1000, description: "only these areas; absent: all" }),
  ),
} as const;

export const STOCK_SUPPLY_SCHEMAS = [Money, SignedMoney, PricesFrom, HoursFrom];
