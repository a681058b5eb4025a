/* eslint-disable @typescript-eslint/require-await -- the contract returns promises, SQLite answers at once */
import type { PriceLine } from "@landfast/stock";
import { and, desc, eq, lt } from "drizzle-orm";
import type { Database } from "../db/open-database.js";
import { priceLists } from "../db/schema.js";
import type { PriceListHead, PriceListRepository } from "./price-list-repository.js";

/** Price lists in SQLite. */
export function sqlitePriceListRepository({ orm }: Database): PriceListRepository {
  return {
    async add(tenantId, { head, lines }) {
      orm
        .insert(priceLists)
        .values({
          id: head.id,
          tenantId,
          createdAt: head.createdAt,
          supplier: head.supplier,
          head: JSON.stringify(head),
          lines: JSON.stringify(lines),
        })
        .run();
    },
    async list(tenantId, limit, before, supplier) {
      // One more than asked for tells whether there is a next page.
      const rows = orm
        .select({ sequence: priceLists.sequence, head: priceLists.head })
        .from(priceLists)
        .where(
          and(
            eq(priceLists.tenantId, tenantId),
            before === null ? undefined : lt(priceLists.sequence, before),
            supplier === null ? undefined : eq(priceLists.supplier, supplier),
          ),
        )
        .orderBy(desc(priceLists.sequence))
        .limit(limit + 1)
        .all();
      const page = rows.slice(0, limit);
      return {
        priceLists: page.map(({ head }) => JSON.parse(head) as PriceListHead),
        next: rows.length > limit ? (page.at(-1)?.sequence ?? null) : null,
      };
    },
    async get(tenantId, id) {
      const row = orm
        .select({ head: priceLists.head, lines: priceLists.lines })
        .from(priceLists)
        .where(and(eq(priceLists.tenantId, tenantId), eq(priceLists.id, id)))
        .get();
      if (row === undefined) return null;
      return { head: JSON.parse(row.head) as PriceListHead, lines: JSON.parse(row.lines) as PriceLine[] };
    },
  };
}
