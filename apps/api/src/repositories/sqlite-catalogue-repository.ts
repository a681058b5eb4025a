/* eslint-disable @typescript-eslint/require-await -- the contract returns promises, SQLite answers at once */
import type { CatalogueItem } from "@landfast/rules";
import { and, asc, desc, eq, isNull } from "drizzle-orm";
import type { Database } from "../db/open-database.js";
import { catalogues, connectors } from "../db/schema.js";
import type { CatalogueRepository, StoredCatalogue } from "./catalogue-repository.js";

/** Catalogues in SQLite. */
export function sqliteCatalogueRepository({ orm, connection }: Database): CatalogueRepository {
  const insertConnector = connection.prepare<[string, number, string, string, string]>(
    "insert into connectors (catalogue_id, ordinal, part_number, family, document) values (?, ?, ?, ?, ?)",
  );
  const addWhole = connection.transaction((tenantId: string, { items, ...catalogue }: StoredCatalogue): void => {
    orm
      .insert(catalogues)
      .values({ ...catalogue, tenantId })
      .run();
    items.forEach((item, ordinal) => {
      insertConnector.run(catalogue.id, ordinal, item.partNumber, item.family, JSON.stringify(item));
    });
  });
  return {
    async current(tenantId) {
      const catalogue = orm
        .select()
        .from(catalogues)
        .where(and(eq(catalogues.tenantId, tenantId), isNull(catalogues.ownCatalogueId)))
        .orderBy(desc(catalogues.sequence))
        .limit(1)
        .get();
      if (catalogue === undefined) return null;
      const rows = orm
        .select({ document: connectors.document })
        .from(connectors)
        .where(eq(connectors.catalogueId, catalogue.id))
        .orderBy(asc(connectors.ordinal))
        .all();
      return {
        id: catalogue.id,
        name: catalogue.name,
        revision: catalogue.revision,
        loadedAt: catalogue.loadedAt,
        items: rows.map(({ document }) => JSON.parse(document) as CatalogueItem),
      };
    },
    async add(tenantId, catalogue) {
      addWhole.immediate(tenantId, catalogue);
    },
  };
}
