/**
 * The tables of the store. Documents are JSON text: what was posted and what was answered is kept whole, and beside
 * it only what is searched for. Nothing here is ever changed in place: a new answer is a new revision.
 */
import { foreignKey, index, integer, primaryKey, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";

/** Whose data it is. One tenant, "local", until there are keys. */
export const tenants = sqliteTable("tenants", {
  id: text("id").primaryKey(),
  name: text("name").notNull(),
});

/** A catalogue in one revision; the newest of a name is the one in use. */
export const catalogues = sqliteTable(
  "catalogues",
  {
    sequence: integer("sequence").primaryKey({ autoIncrement: true }),
    id: text("id").notNull(),
    tenantId: text("tenant_id")
      .notNull()
      .references(() => tenants.id),
    name: text("name").notNull(),
    revision: text("revision").notNull(),
    loadedAt: text("loaded_at").notNull(),
  },
  (table) => [uniqueIndex("catalogues_id").on(table.id), index("catalogues_tenant").on(table.tenantId, table.sequence)],
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
    sequence: integer("sequence").primaryKey({ autoIncrement: true }),
    id: text("id").notNull(),
    tenantId: text("tenant_id")
      .notNull()
      .references(() => tenants.id),
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
    tenantId: text("tenant_id")
      .notNull()
      .references(() => tenants.id),
    id: text("id").notNull(),
    document: text("document").notNull(),
  },
  (table) => [primaryKey({ columns: [table.tenantId, table.id] })],
);

/** What equal joints share in their line of the schedule, by its own digest: most of the line. */
export const lines = sqliteTable(
  "lines",
  {
    tenantId: text("tenant_id")
      .notNull()
      .references(() => tenants.id),
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
