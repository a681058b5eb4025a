/* eslint-disable @typescript-eslint/require-await -- the contract returns promises, SQLite answers at once */
import { and, asc, desc, eq, gte, isNotNull, isNull, lt, max, sql } from "drizzle-orm";
import type { Database } from "../db/open-database.js";
import { catalogueImports, catalogues, connectors, importMappings, ownCatalogues } from "../db/schema.js";
import type {
  CatalogueVersion,
  EntryRecord,
  ImportRecord,
  OwnCatalogue,
  OwnCatalogueRepository,
} from "./own-catalogue-repository.js";

/**
 * Catalogues of the user's own in SQLite. The pieces of a version are short transactions of their own; one further
 * transaction, which only sets its number, makes the whole seen.
 */
export function sqliteOwnCatalogueRepository({ orm, connection }: Database): OwnCatalogueRepository {
  const insertConnector = connection.prepare<[string, number, string, string, string]>(
    "insert into connectors (catalogue_id, ordinal, part_number, family, document) values (?, ?, ?, ?, ?)",
  );
  const deleteSome = connection.prepare<[string, string, number]>(
    "delete from connectors where catalogue_id = ? and rowid in (select rowid from connectors where catalogue_id = ? limit ?)",
  );
  const addSome = connection.transaction((recordId: string, ordinal: number, entries: readonly EntryRecord[]): void => {
    entries.forEach(({ partNumber, family, document }, index) => {
      insertConnector.run(recordId, ordinal + index, partNumber, family, document);
    });
  });
  const publishWhole = connection.transaction(
    (recordId: string, version: Omit<CatalogueVersion, "version">, from: ImportRecord | null): CatalogueVersion => {
      const record = orm
        .select({ ownCatalogueId: catalogues.ownCatalogueId, version: catalogues.version })
        .from(catalogues)
        .where(eq(catalogues.id, recordId))
        .get();
      if (record === undefined || record.ownCatalogueId === null || record.version !== null)
        throw new Error(`there is no version "${recordId}" that waits to be published`);
      const last = orm
        .select({ version: max(catalogues.version) })
        .from(catalogues)
        .where(eq(catalogues.ownCatalogueId, record.ownCatalogueId))
        .get();
      const number = (last?.version ?? 0) + 1;
      orm
        .update(catalogues)
        .set({
          version: number,
          revision: String(number),
          loadedAt: version.publishedAt,
          validFrom: version.validFrom ?? null,
          validTo: version.validTo ?? null,
          note: version.note ?? null,
          families: JSON.stringify(version.families),
        })
        .where(eq(catalogues.id, recordId))
        .run();
      if (from !== null)
        orm
          .insert(catalogueImports)
          .values({ ...from, catalogueId: recordId })
          .run();
      return { ...version, version: number };
    },
  );
  const discardSome = connection.transaction((recordId: string, limit: number): boolean => {
    const { changes } = deleteSome.run(recordId, recordId, limit);
    if (changes === limit) return false;
    orm
      .delete(catalogues)
      .where(and(eq(catalogues.id, recordId), isNull(catalogues.version), isNotNull(catalogues.ownCatalogueId)))
      .run();
    return true;
  });
  const ofTheCatalogue = (tenantId: string, catalogueId: string) =>
    and(eq(catalogues.tenantId, tenantId), eq(catalogues.ownCatalogueId, catalogueId), isNotNull(catalogues.version));
  const importColumns = {
    id: catalogueImports.id,
    createdAt: catalogueImports.createdAt,
    fileDigest: catalogueImports.fileDigest,
    version: catalogues.version,
  };

  return {
    async add(tenantId, catalogue) {
      orm
        .insert(ownCatalogues)
        .values({
          id: catalogue.id,
          tenantId,
          name: catalogue.name,
          suppliers: JSON.stringify(catalogue.suppliers),
          note: catalogue.note ?? null,
          createdAt: catalogue.createdAt,
        })
        .run();
    },
    async list(tenantId, limit, before, { search, supplier }) {
      // One more than asked for tells whether there is a next page.
      const rows = orm
        .select()
        .from(ownCatalogues)
        .where(
          and(
            eq(ownCatalogues.tenantId, tenantId),
            before === null ? undefined : lt(ownCatalogues.sequence, before),
            search === null ? undefined : sql`instr(lower(${ownCatalogues.name}), lower(${search})) > 0`,
            supplier === null
              ? undefined
              : sql`exists (select 1 from json_each(${ownCatalogues.suppliers}) where value = ${supplier})`,
          ),
        )
        .orderBy(desc(ownCatalogues.sequence))
        .limit(limit + 1)
        .all();
      const page = rows.slice(0, limit);
      return {
        catalogues: page.map(catalogueOf),
        next: rows.length > limit ? (page.at(-1)?.sequence ?? null) : null,
      };
    },
    async get(tenantId, id) {
      const row = orm
        .select()
        .from(ownCatalogues)
        .where(and(eq(ownCatalogues.tenantId, tenantId), eq(ownCatalogues.id, id)))
        .get();
      return row === undefined ? null : catalogueOf(row);
    },
    async versions(tenantId, catalogueId) {
      return orm
        .select()
        .from(catalogues)
        .where(ofTheCatalogue(tenantId, catalogueId))
        .orderBy(desc(catalogues.version))
        .all()
        .map(versionOf);
    },
    async version(tenantId, catalogueId, version) {
      const row = orm
        .select()
        .from(catalogues)
        .where(and(ofTheCatalogue(tenantId, catalogueId), eq(catalogues.version, version)))
        .get();
      return row === undefined ? null : { recordId: row.id, version: versionOf(row) };
    },
    async begin(tenantId, catalogue, recordId) {
      orm
        .insert(catalogues)
        .values({
          id: recordId,
          tenantId,
          name: catalogue.name,
          revision: "",
          loadedAt: "",
          ownCatalogueId: catalogue.id,
        })
        .run();
    },
    async addEntries(recordId, ordinal, entries) {
      addSome.immediate(recordId, ordinal, entries);
    },
    async publish(recordId, version, from) {
      return publishWhole.immediate(recordId, version, from);
    },
    async discard(recordId, limit) {
      return discardSome.immediate(recordId, limit);
    },
    async entries(recordId, after, limit) {
      return orm
        .select({ document: connectors.document })
        .from(connectors)
        .where(and(eq(connectors.catalogueId, recordId), gte(connectors.ordinal, after)))
        .orderBy(asc(connectors.ordinal))
        .limit(limit)
        .all()
        .map(({ document }) => document);
    },
    async entry(recordId, partNumber) {
      const row = orm
        .select({ document: connectors.document })
        .from(connectors)
        .where(and(eq(connectors.catalogueId, recordId), eq(connectors.partNumber, partNumber)))
        .get();
      return row?.document ?? null;
    },
    async imports(tenantId, catalogueId) {
      return orm
        .select(importColumns)
        .from(catalogueImports)
        .innerJoin(catalogues, eq(catalogues.id, catalogueImports.catalogueId))
        .where(ofTheCatalogue(tenantId, catalogueId))
        .orderBy(desc(catalogueImports.sequence))
        .all()
        .map((row) => ({ ...row, version: row.version ?? 0 }));
    },
    async import(tenantId, catalogueId, importId) {
      const row = orm
        .select({ ...importColumns, mapping: catalogueImports.mapping, report: catalogueImports.report })
        .from(catalogueImports)
        .innerJoin(catalogues, eq(catalogues.id, catalogueImports.catalogueId))
        .where(and(ofTheCatalogue(tenantId, catalogueId), eq(catalogueImports.id, importId)))
        .get();
      return row === undefined ? null : { ...row, version: row.version ?? 0 };
    },
    async addMapping(tenantId, mapping) {
      orm
        .insert(importMappings)
        .values({ ...mapping, tenantId })
        .run();
    },
    async mappings(tenantId, limit, before) {
      const rows = orm
        .select()
        .from(importMappings)
        .where(
          and(eq(importMappings.tenantId, tenantId), before === null ? undefined : lt(importMappings.sequence, before)),
        )
        .orderBy(desc(importMappings.sequence))
        .limit(limit + 1)
        .all();
      const page = rows.slice(0, limit);
      return {
        mappings: page.map(({ id, createdAt, document }) => ({ id, createdAt, document })),
        next: rows.length > limit ? (page.at(-1)?.sequence ?? null) : null,
      };
    },
    async mapping(tenantId, id) {
      const row = orm
        .select({ id: importMappings.id, createdAt: importMappings.createdAt, document: importMappings.document })
        .from(importMappings)
        .where(and(eq(importMappings.tenantId, tenantId), eq(importMappings.id, id)))
        .get();
      return row ?? null;
    },
  };
}

/** Throws away every version that was begun and never published: its writer is gone. */
export function discardUnpublished({ connection }: Database): void {
  connection
    .transaction(() => {
      const begun = "select id from catalogues where own_catalogue_id is not null and version is null";
      connection.prepare(`delete from connectors where catalogue_id in (${begun})`).run();
      connection.prepare("delete from catalogues where own_catalogue_id is not null and version is null").run();
    })
    .immediate();
}

function catalogueOf(row: typeof ownCatalogues.$inferSelect): OwnCatalogue {
  return {
    id: row.id,
    name: row.name,
    suppliers: JSON.parse(row.suppliers) as string[],
    ...(row.note === null ? {} : { note: row.note }),
    createdAt: row.createdAt,
  };
}

function versionOf(row: typeof catalogues.$inferSelect): CatalogueVersion {
  const families = JSON.parse(row.families ?? "[]") as CatalogueVersion["families"];
  return {
    version: row.version ?? 0,
    ...(row.validFrom === null ? {} : { validFrom: row.validFrom }),
    ...(row.validTo === null ? {} : { validTo: row.validTo }),
    ...(row.note === null ? {} : { note: row.note }),
    publishedAt: row.loadedAt,
    connectors: families.reduce((sum, family) => sum + family.connectors, 0),
    families,
  };
}
