import type { PriceLine } from "@landfast/stock";

/** What a price list is known by. Days are calendar days, "2026-03-31", both ends included. */
export interface PriceListHead {
  readonly id: string;
  readonly name: string;
  readonly supplier: string;
  /** ISO 4217. */
  readonly currency: string;
  readonly validFrom: string;
  readonly validTo?: string;
  /** The day of the paper or file that the prices come from. */
  readonly sourceDate?: string;
  readonly note?: string;
  /** How many part numbers are priced. */
  readonly lines: number;
  /** RFC 3339, UTC. */
  readonly createdAt: string;
}

/** A price list as stored: never changed, so that what was priced by it can be priced again. */
export interface PriceListRecord {
  readonly head: PriceListHead;
  readonly lines: readonly PriceLine[];
}

export interface PriceListPage {
  readonly priceLists: readonly PriceListHead[];
  /** Where the next page begins; null on the last. */
  readonly next: number | null;
}

/**
 * Where price lists are kept. Every call sees the tenant's own data only.
 * @throws what the store throws when it cannot be reached.
 */
export interface PriceListRepository {
  /** Stores a list whole or not at all. */
  add(tenantId: string, list: PriceListRecord): Promise<void>;
  /** Up to `limit` lists, newest first, from before the place that `before` names; of one supplier if wished. */
  list(tenantId: string, limit: number, before: number | null, supplier: string | null): Promise<PriceListPage>;
  get(tenantId: string, id: string): Promise<PriceListRecord | null>;
}
