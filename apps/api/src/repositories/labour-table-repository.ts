import type { ConnectorFamily } from "@landfast/rules";
import type { PriceUnit } from "@landfast/stock";

/** What a line is for: one part number, or a family within a band of sizes. */
export type LabourKey =
  | { readonly partNumber: string }
  | {
      readonly family: ConnectorFamily;
      /** Both ends included; absent: no limit at that end. */
      readonly from?: string;
      readonly to?: string;
    };

/** One line of a user's own labor table. */
export type LabourTableLine = LabourKey & {
  /** Work under this condition only, by the user's own name for it; absent: where no condition is named. */
  readonly condition?: string;
  /** Electrician-hours, decimal text. */
  readonly hours: string;
  /** How many joints or parts the hours are for: each, a hundred or a thousand, as prices are counted. */
  readonly unit: PriceUnit;
};

/** What a labor table is known by. */
export interface LabourTableHead {
  readonly id: string;
  readonly name: string;
  /** Where its hours come from, in the user's words. */
  readonly source?: string;
  readonly note?: string;
  /** The user's own factors by the name of a difficulty, decimal text: { "difficult": "1.25" }. */
  readonly difficulties: Readonly<Record<string, string>>;
  readonly lines: number;
  /** RFC 3339, UTC. */
  readonly createdAt: string;
}

/** A labor table as stored; it is never changed. */
export interface LabourTableRecord {
  readonly head: LabourTableHead;
  readonly lines: readonly LabourTableLine[];
}

export interface LabourTablePage {
  readonly labourTables: readonly LabourTableHead[];
  /** Where the next page begins; null on the last. */
  readonly next: number | null;
}

/**
 * Where labor tables are kept. Every call sees the tenant's own data only.
 * @throws what the store throws when it cannot be reached.
 */
export interface LabourTableRepository {
  /** Stores a table whole or not at all. */
  add(tenantId: string, table: LabourTableRecord): Promise<void>;
  /** Up to `limit` tables, newest first, from before the place that `before` names. */
  list(tenantId: string, limit: number, before: number | null): Promise<LabourTablePage>;
  get(tenantId: string, id: string): Promise<LabourTableRecord | null>;
}
