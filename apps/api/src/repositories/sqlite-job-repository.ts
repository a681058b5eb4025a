/* eslint-disable @typescript-eslint/require-await -- the contract returns promises, SQLite answers at once */
import type { Basis, ConnectorSchedule } from "@landfast/rules";
import { and, asc, desc, eq, lt } from "drizzle-orm";
import type { Database } from "../db/open-database.js";
import { catalogues, findings, jobRevisions, jobs, joints, lines } from "../db/schema.js";
import type { JobHead, JobRecord, JobRepository } from "./job-repository.js";

/** Jobs have one revision until they can be changed. */
const REVISION = 1;

/**
 * Jobs in SQLite. A job is written in one synchronous transaction, so that no other request can come in between and
 * no half of it is ever seen; bulk rows go through statements prepared once.
 */
export function sqliteJobRepository({ orm, connection }: Database): JobRepository {
  const insertLine = connection.prepare<[string, string, string]>(
    "insert into lines (tenant_id, id, document) values (?, ?, ?) on conflict do nothing",
  );
  const insertFinding = connection.prepare<[string, string, string]>(
    "insert into findings (tenant_id, id, document) values (?, ?, ?) on conflict do nothing",
  );
  const insertJoint = connection.prepare<
    [string, number, number, string, string, string, string, string, string, string | null]
  >(
    "insert into joints (job_id, revision, ordinal, mark, verdict, deciding_rule, own, tenant_id, line_id, finding_id) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
  );
  const addWhole = connection.transaction((tenantId: string, job: JobRecord): void => {
    const { head } = job;
    orm.insert(jobs).values({ id: head.id, tenantId, name: head.name, createdAt: head.createdAt }).run();
    orm
      .insert(jobRevisions)
      .values({
        jobId: head.id,
        revision: head.revision,
        posted: job.posted,
        basis: JSON.stringify(head.basis),
        rulesVersion: head.rulesVersion,
        catalogueId: job.catalogueRecordId,
        catalogueOn: head.catalogue.on ?? null,
        summary: job.summary,
        counts: JSON.stringify(head.counts),
        resultHash: head.resultHash,
      })
      .run();
    for (const line of job.lines) insertLine.run(tenantId, line.id, line.document);
    for (const finding of job.findings) insertFinding.run(tenantId, finding.id, finding.document);
    job.joints.forEach((joint, ordinal) => {
      insertJoint.run(
        head.id,
        head.revision,
        ordinal,
        joint.mark,
        joint.verdict,
        joint.decidingRule,
        joint.own,
        tenantId,
        joint.lineId,
        joint.findingId,
      );
    });
  });

  const columns = {
    sequence: jobs.sequence,
    id: jobs.id,
    name: jobs.name,
    revision: jobRevisions.revision,
    createdAt: jobs.createdAt,
    basis: jobRevisions.basis,
    rulesVersion: jobRevisions.rulesVersion,
    catalogueId: catalogues.id,
    ownCatalogueId: catalogues.ownCatalogueId,
    catalogueOn: jobRevisions.catalogueOn,
    catalogueName: catalogues.name,
    catalogueRevision: catalogues.revision,
    counts: jobRevisions.counts,
    resultHash: jobRevisions.resultHash,
  };
  const selectHeads = () =>
    orm
      .select(columns)
      .from(jobs)
      .innerJoin(jobRevisions, and(eq(jobRevisions.jobId, jobs.id), eq(jobRevisions.revision, REVISION)))
      .innerJoin(catalogues, eq(catalogues.id, jobRevisions.catalogueId));
  const isTheJob = (tenantId: string, jobId: string) => and(eq(jobs.tenantId, tenantId), eq(jobs.id, jobId));

  return {
    async add(tenantId, job) {
      addWhole.immediate(tenantId, job);
    },
    async list(tenantId, limit, before) {
      // One more than asked for tells whether there is a next page.
      const rows = selectHeads()
        .where(and(eq(jobs.tenantId, tenantId), before === null ? undefined : lt(jobs.sequence, before)))
        .orderBy(desc(jobs.sequence))
        .limit(limit + 1)
        .all();
      const page = rows.slice(0, limit);
      return { jobs: page.map(headOf), next: rows.length > limit ? (page.at(-1)?.sequence ?? null) : null };
    },
    async head(tenantId, jobId) {
      const row = selectHeads().where(isTheJob(tenantId, jobId)).get();
      return row === undefined ? null : headOf(row);
    },
    async posted(tenantId, jobId) {
      const row = orm
        .select({ posted: jobRevisions.posted })
        .from(jobs)
        .innerJoin(jobRevisions, and(eq(jobRevisions.jobId, jobs.id), eq(jobRevisions.revision, REVISION)))
        .where(isTheJob(tenantId, jobId))
        .get();
      return row?.posted ?? null;
    },
    async schedule(tenantId, jobId) {
      const revision = orm
        .select({ summary: jobRevisions.summary })
        .from(jobs)
        .innerJoin(jobRevisions, and(eq(jobRevisions.jobId, jobs.id), eq(jobRevisions.revision, REVISION)))
        .where(isTheJob(tenantId, jobId))
        .get();
      if (revision === undefined) return null;
      const ofTheJob = and(eq(joints.jobId, jobId), eq(joints.revision, REVISION));
      // Each shared text is read once, however many joints share it.
      const shared = new Map(
        orm
          .selectDistinct({ id: lines.id, document: lines.document })
          .from(joints)
          .innerJoin(lines, and(eq(lines.tenantId, joints.tenantId), eq(lines.id, joints.lineId)))
          .where(ofTheJob)
          .all()
          .map(({ id, document }) => [id, document]),
      );
      const own = orm
        .select({ own: joints.own, lineId: joints.lineId })
        .from(joints)
        .where(ofTheJob)
        .orderBy(asc(joints.ordinal))
        .all();
      return {
        summary: revision.summary,
        lines: own.map((line) => ({ own: line.own, shared: shared.get(line.lineId) ?? "" })),
      };
    },
    async joint(tenantId, jobId, mark) {
      const job = orm.select({ id: jobs.id }).from(jobs).where(isTheJob(tenantId, jobId)).get();
      if (job === undefined) return undefined;
      const row = orm
        .select({ mark: joints.mark, own: joints.own, shared: lines.document, finding: findings.document })
        .from(joints)
        .innerJoin(lines, and(eq(lines.tenantId, joints.tenantId), eq(lines.id, joints.lineId)))
        .leftJoin(findings, and(eq(findings.tenantId, joints.tenantId), eq(findings.id, joints.findingId)))
        .where(and(eq(joints.jobId, jobId), eq(joints.revision, REVISION), eq(joints.mark, mark)))
        .get();
      return row ?? null;
    },
  };
}

function headOf(row: {
  readonly id: string;
  readonly name: string;
  readonly revision: number;
  readonly createdAt: string;
  readonly basis: string;
  readonly rulesVersion: string;
  readonly catalogueId: string;
  readonly ownCatalogueId: string | null;
  readonly catalogueOn: string | null;
  readonly catalogueName: string;
  readonly catalogueRevision: string;
  readonly counts: string;
  readonly resultHash: string;
}): JobHead {
  return {
    id: row.id,
    name: row.name,
    revision: row.revision,
    createdAt: row.createdAt,
    basis: JSON.parse(row.basis) as Basis,
    rulesVersion: row.rulesVersion,
    catalogue: {
      id: row.ownCatalogueId ?? row.catalogueId,
      name: row.catalogueName,
      revision: row.catalogueRevision,
      ...(row.catalogueOn === null ? {} : { on: row.catalogueOn }),
    },
    counts: JSON.parse(row.counts) as ConnectorSchedule["counts"],
    resultHash: row.resultHash,
  };
}
