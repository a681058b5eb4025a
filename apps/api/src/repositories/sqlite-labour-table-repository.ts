/* eslint-disable @typescript-eslint/require-await -- the contract returns promises, SQLite answers at once */
import { and, desc, eq, lt } from "drizzle-orm";
import type { Database } from "../db/open-database.js";
import { labourTables } from "../db/schema.js";
import type { LabourTableHead, LabourTableLine, LabourTableRepository } from "./labour-table-repository.js";

/** Labor tables in SQLite. */
export function sqliteLabourTableRepository({ orm }: Database): LabourTableRepository {
  return {
    async add(tenantId, { head, lines }) {
      orm
        .insert(labourTables)
        .values({
          id: head.id,
          tenantId,
          createdAt: head.createdAt,
          head: JSON.stringify(head),
          lines: JSON.stringify(lines),
        })
        .run();
    },
    async list(tenantId, limit, before) {
      // One more than asked for tells whether there is a next page.
      const rows = orm
        .select({ sequence: labourTables.sequence, head: labourTables.head })
        .from(labourTables)
        .where(
          and(eq(labourTables.tenantId, tenantId), before === null ? undefined : lt(labourTables.sequence, before)),
        )
        .orderBy(desc(labourTables.sequence))
        .limit(limit + 1)
        .all();
      const page = rows.slice(0, limit);
      return {
        labourTables: page.map(({ head }) => JSON.parse(head) as LabourTableHead),
        next: rows.length > limit ? (page.at(-1)?.sequence ?? null) : null,
      };
    },
    async get(tenantId, id) {
      const row = orm
        .select({ head: labourTables.head, lines: labourTables.lines })
        .from(labourTables)
        .where(and(eq(labourTables.tenantId, tenantId), eq(labourTables.id, id)))
        .get();
      if (row === undefined) return null;
      return { head: JSON.parse(row.head) as LabourTableHead, lines: JSON.parse(row.lines) as LabourTableLine[] };
    },
  };
}
