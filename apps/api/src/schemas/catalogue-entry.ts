import type { CatalogueItem as Item } from "@landfast/rules";
import { Type } from "@sinclair/typebox";
import { CatalogueItem } from "./connector.js";
import { day } from "./quantity.js";
import { strict } from "./strict.js";
import { label } from "./text.js";

/** Who supplies a part, and under which number of their own. */
export interface PartSupplier {
  readonly name: string;
  readonly partNumber?: string;
}

/**
 * A connector in a catalogue of the user's own. Prices and hours are not here: a price list and a labor table have
 * them. Days are calendar days, "2026-03-31", both ends included.
 */
export interface CatalogueEntry extends Omit<Item, "price" | "labourHours"> {
  readonly suppliers?: readonly PartSupplier[];
  /** The first day on which the part is to be had; absent: no beginning is known. */
  readonly validFrom?: string;
  readonly validTo?: string;
  /** The part number that takes its place. From this version on the part itself is no longer used. */
  readonly supersededBy?: string;
}

const { price, labourHours, ...described } = CatalogueItem.properties;

/** Who supplies parts: a name that also stands in a cell beside others. */
export const supplierName = label(120, "the supplier's name");

/** A connector as a catalogue of the user's own holds it. */
export const CatalogueEntrySchema = strict(
  {
    ...described,
    suppliers: Type.Optional(
      Type.Array(
        strict({ name: supplierName, partNumber: Type.Optional(label(64, "the supplier's own number of the part")) }),
        { minItems: 1, maxItems: 20 },
      ),
    ),
    validFrom: Type.Optional(day("the first day on which the part is to be had")),
    validTo: Type.Optional(day("the last day on which the part is to be had")),
    supersededBy: Type.Optional(label(64, "the part number that takes its place")),
  },
  { $id: "CatalogueEntry" },
);
