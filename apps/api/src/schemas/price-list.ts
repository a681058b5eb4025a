import { PRICE_UNITS } from "@landfast/stock";
import { Type } from "@sinclair/typebox";
import { enumOf } from "./enum-of.js";
import { orNull } from "./finding.js";
import { day, decimal } from "./quantity.js";
import { ref } from "./ref.js";
import { strict } from "./strict.js";
import { label, text } from "./text.js";

/** How many part numbers one price list may have. */
export const PRICE_LINES_MAX = 20_000;

export const PriceLine = strict(
  {
    partNumber: label(64, "the part number"),
    unit: enumOf(PRICE_UNITS, "how many parts a printed price is for"),
    breaks: Type.Array(
      strict({
        from: Type.Integer({ minimum: 1, maximum: 1_000_000_000, description: "parts, not packs: from so many on" }),
        amount: decimal("the price for one price unit, at this quantity"),
      }),
      { minItems: 1, maxItems: 20, description: "quantity breaks by rising quantity: a list of 1 to 20" },
    ),
  },
  { $id: "PriceLine", description: "the price of one part; the break that a quantity reaches applies to all of it" },
);

const head = {
  name: text(200, "the list's name"),
  supplier: text(120, "who quotes these prices"),
  currency: Type.String({ pattern: "^[A-Z]{3}$", description: 'an ISO 4217 code: "USD"' }),
  validFrom: day("the first day on which the prices hold"),
  validTo: Type.Optional(day("the last day on which they hold; absent: no end is known")),
  sourceDate: Type.Optional(day("the day of the paper or file that the prices come from")),
  note: Type.Optional(text(1000, "a note")),
};

/** Prices of one supplier in one currency. */
export const PriceList = strict(
  {
    ...head,
    lines: Type.Array(ref(PriceLine), {
      minItems: 1,
      maxItems: PRICE_LINES_MAX,
      description: `the lines: a list of 1 to ${PRICE_LINES_MAX}`,
    }),
  },
  {
    $id: "PriceList",
    examples: [
      {
        name: "Larkfen Works, spring",
        supplier: "Oakridge Supply",
        currency: "USD",
        validFrom: "2026-03-01",
        validTo: "2026-05-31",
        lines: [
          {
            partNumber: "LKW-201",
            unit: "per-100",
            breaks: [
              { from: 1, amount: "125.00" },
              { from: 500, amount: "112.50" },
            ],
          },
        ],
      },
    ],
  },
);

export const PriceListHead = strict(
  {
    id: Type.String({ description: "opaque and never reused" }),
    ...head,
    lines: Type.Integer({ minimum: 1, description: "how many part numbers are priced" }),
    createdAt: Type.String({ format: "date-time" }),
  },
  { $id: "PriceListHead" },
);

const next = orNull(Type.String({ description: "cursor of the next page" }));
export const PriceListPage = strict({ priceLists: Type.Array(ref(PriceListHead)), next }, { $id: "PriceListPage" });
export const PriceLinePage = strict({ lines: Type.Array(ref(PriceLine)), next }, { $id: "PriceLinePage" });

export const PRICE_LIST_SCHEMAS = [PriceLine, PriceList, PriceListHead, PriceListPage, PriceLinePage];
