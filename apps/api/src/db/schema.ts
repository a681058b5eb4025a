/**
 * The tables of the store. Documents are JSON text: what was posted and what was answered is kept whole, and beside
 * it only what is searched for. Nothing here is ever changed in place once it can be seen: a new answer is a new revision.
 */
import { foreignKey, index, integer, primaryKey, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";

/** Whose data it is. One tenant, "local", until there are keys. */
export const tenants = sqliteTable("tenants", {
  id: text("id").primaryKey(),
  name: text("name").notNull(),
});

const ofATenant = () =>
  text("tenant_id")
    .notNull()
    .references(() => tenants.id);

/** What is listed in the order in which it was made, and asked for by an id that says nothing of that order. */
const kept = () => ({
  sequence: integer("sequence").primaryKey({ autoIncrement: true }),
  id: text("id").notNull(),
});

const keptForATenant = () => ({ ...kept(), tenantId: ofATenant() });

/** A catalogue that a user keeps; what it holds is in its versions. */
export const ownCatalogues = sqliteTable(
  "own_catalogues",
  {
    ...keptForATenant(),
    name: text("name").notNull(),
    /** JSON text: the names of those who supply its parts. */
    suppliers: text("suppliers").notNull(),
    note: text("note"),
    createdAt: text("created_at").notNull(),
  },
  (table) => [
    uniqueIndex("own_catalogues_id").on(table.id),
    index("own_catalogues_tenant").on(table.tenantId, table.sequence),
  ],
);

/**
 * A catalogue in one revision: the one that the service was started with, or a version of a user's own. Of the former
 * the newest is the one in use. A version without a number is still being written: nobody sees it, and what is left of
 * it when the store is opened is thrown away.
 */
export const catalogues = sqliteTable(
  "catalogues",
  {
    ...keptForATenant(),
    name: text("name").notNull(),
    revision: text("revision").notNull(),
    loadedAt: text("loaded_at").notNull(),
    /** Whose version it is; null for the catalogue that the service was started with. */
    ownCatalogueId: text("own_catalogue_id").references(() => ownCatalogues.id),
    /** 1, 2, 3 …; null while it is being written. */
    version: integer("version"),
    validFrom: text("valid_from"),
    validTo: text("valid_to"),
    note: text("note"),
    /** JSON text: how many connectors of each family it holds. */
    families: text("families"),
  },
  (table) => [
    uniqueIndex("catalogues_id").on(table.id),
    index("catalogues_tenant").on(table.tenantId, table.sequence),
    uniqueIndex("catalogues_version").on(table.ownCatalogueId, table.version),
  ],
);

/** How a version came out of a file: which file, read how, and the report on every row. */
export const catalogueImports = sqliteTable(
  "catalogue_imports",
  {
    ...kept(),
    catalogueId: text("catalogue_id")
      .notNull()
      .references(() => catalogues.id),
    createdAt: text("created_at").notNull(),
    /** "sha256:" and the digest of the file's bytes. */
    fileDigest: text("file_digest").notNull(),
    /** JSON text of the column mapping; null where the file had our own column names. */
    mapping: text("mapping"),
    report: text("report").notNull(),
  },
  (table) => [
    uniqueIndex("catalogue_imports_id").on(table.id),
    uniqueIndex("catalogue_imports_catalogue").on(table.catalogueId),
  ],
);

/** Which columns of a supplier's file mean what. Never changed: another mapping is another one. */
export const importMappings = sqliteTable(
  "import_mappings",
  {
    ...keptForATenant(),
    createdAt: text("created_at").notNull(),
    /** JSON text of the mapping with its name. */
    document: text("document").notNull(),
  },
  (table) => [
    uniqueIndex("import_mappings_id").on(table.id),
    index("import_mappings_tenant").on(table.tenantId, table.sequence),
  ],
);

/** Prices as one supplier quotes them. Never changed, so that what was priced by it can be priced again. */
export const priceLists = sqliteTable(
  "price_lists",
  {
    ...keptForATenant(),
    createdAt: text("created_at").notNull(),
    supplier: text("supplier").notNull(),
    /** JSON text of the list without its lines. */
    head: text("head").notNull(),
    /** JSON text of the lines in their order; money in decimal text. */
    lines: text("lines").notNull(),
  },
  (table) => [
    uniqueIndex("price_lists_id").on(table.id),
    index("price_lists_tenant").on(table.tenantId, table.sequence),
  ],
);

/** A user's own labor units; none is built in. Never changed. */
export const labourTables = sqliteTable(
  "labour_tables",
  {
    ...keptForATenant(),
    createdAt: text("created_at").notNull(),
    /** JSON text of the table without its lines. */
    head: text("head").notNull(),
    /** JSON text of the lines in their order; hours in decimal text. */
    lines: text("lines").notNull(),
  },
  (table) => [
    uniqueIndex("labour_tables_id").on(table.id),
    index("labour_tables_tenant").on(table.tenantId, table.sequence),
  ],
);

export const connectors = sqliteTable(
  "connectors",
  {
    catalogueId: text("catalogue_id")
      .notNull()
      .references(() => catalogues.id),
    ordinal: integer("ordinal").notNull(),
    partNumber: text("part_number").notNull(),
    family: text("family").notNull(),
    document: text("document").notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.catalogueId, table.partNumber] }),
    uniqueIndex("connectors_ordinal").on(table.catalogueId, table.ordinal),
    index("connectors_family").on(table.catalogueId, table.family, table.ordinal),
  ],
);

export const jobs = sqliteTable(
  "jobs",
  {
    ...keptForATenant(),
    name: text("name").notNull(),
    createdAt: text("created_at").notNull(),
  },
  (table) => [uniqueIndex("jobs_id").on(table.id), index("jobs_tenant").on(table.tenantId, table.sequence)],
);

/** A job as posted and the schedule made from it. The rows of the schedule are in `joints`. */
export const jobRevisions = sqliteTable(
  "job_revisions",
  {
    jobId: text("job_id")
      .notNull()
      .references(() => jobs.id),
    revision: integer("revision").notNull(),
    posted: text("posted").notNull(),
    basis: text("basis").notNull(),
    rulesVersion: text("rules_version").notNull(),
    catalogueId: text("catalogue_id")
      .notNull()
      .references(() => catalogues.id),
    /** The day on which parts had to be in force to be used; null where the catalogue has no days. */
    catalogueOn: text("catalogue_on"),
    /** The schedule without its rows. */
    summary: text("summary").notNull(),
    counts: text("counts").notNull(),
    /** "sha256:" and the digest of the schedule's text. */
    resultHash: text("result_hash").notNull(),
  },
  (table) => [primaryKey({ columns: [table.jobId, table.revision] })],
);

/** Full findings by their own digest: equal joints share one. */
export const findings = sqliteTable(
  "findings",
  {
    tenantId: ofATenant(),
    id: text("id").notNull(),
    document: text("document").notNull(),
  },
  (table) => [primaryKey({ columns: [table.tenantId, table.id] })],
);

/** What equal joints share in their line of the schedule, by its own digest: most of the line. */
export const lines = sqliteTable(
  "lines",
  {
    tenantId: ofATenant(),
    id: text("id").notNull(),
    document: text("document").notNull(),
  },
  (table) => [primaryKey({ columns: [table.tenantId, table.id] })],
);

export const joints = sqliteTable(
  "joints",
  {
    jobId: text("job_id").notNull(),
    revision: integer("revision").notNull(),
    ordinal: integer("ordinal").notNull(),
    mark: text("mark").notNull(),
    verdict: text("verdict").notNull(),
    decidingRule: text("deciding_rule").notNull(),
    /** What in the line is this joint's own. */
    own: text("own").notNull(),
    tenantId: text("tenant_id").notNull(),
    lineId: text("line_id").notNull(),
    /** null: the catalogue held nothing of this kind, so no connector could be judged. */
    findingId: text("finding_id"),
  },
  (table) => [
    primaryKey({ columns: [table.jobId, table.revision, table.ordinal] }),
    uniqueIndex("joints_mark").on(table.jobId, table.revision, table.mark),
    foreignKey({ columns: [table.jobId, table.revision], foreignColumns: [jobRevisions.jobId, jobRevisions.revision] }),
    foreignKey({ columns: [table.tenantId, table.lineId], foreignColumns: [lines.tenantId, lines.id] }),
    foreignKey({ columns: [table.tenantId, table.findingId], foreignColumns: [findings.tenantId, findings.id] }),
  ],
);
