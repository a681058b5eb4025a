import { createHash } from "node:crypto";
import { demoCatalogue, larkfenJob, larkfenOpenJob } from "@landfast/data";
import {
  type Basis,
  type ConnectorSchedule,
  checkJoint,
  EDITIONS,
  type Job,
  type Joint,
  type JointFinding,
  PUBLISHED_TABLES,
  RULES,
  scheduleJob,
} from "@landfast/rules";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { openService, type Service } from "./open-service.js";
import { workshopJob, workshopJoint, workshopLug } from "./workshop-job.js";

interface Posted {
  readonly job: { readonly id: string; readonly resultHash: string; readonly catalogue: { readonly revision: string } };
  readonly schedule: ConnectorSchedule;
}

// A whole job is worked out several times over, with every candidate of the catalogue.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const catalogue = demoCatalogue().items;
const basis: Basis = { ruleSet: "nfpa70", edition: "2023" };

/** 3/0 AWG copper with so many strands; published: Table 10, class B has 19; hand: 167800 / 1666 = 100.7 cmil, a wire of 30 AWG, class K. */
const counted = (stranding: string, strands: number) => ({
  count: 1,
  metal: "copper",
  size: "3/0 AWG",
  stranding,
  strands,
  insulation: "THHN/THWN-2",
});

describe("what the service answers", () => {
  let app: Service;
  beforeAll(async () => {
    ({ app } = await openService());
  });
  afterAll(() => app.close());

  async function post(job: Job): Promise<Posted> {
    const answer = await app.inject({ method: "POST", url: "/v1/jobs", payload: job });
    expect(answer.statusCode).toBe(201);
    const posted = answer.json<Posted>();
    expect(answer.headers["location"]).toBe(`/v1/jobs/${posted.job.id}`);
    return posted;
  }

  describe("to a compatibility check", () => {
    const larkfen = larkfenJob();
    it.each(larkfen.joints.map((joint) => [joint.mark, joint] as const))(
      "is the library's finding, field for field: %s",
      async (_, joint) => {
        const answer = await app.inject({
          method: "POST",
          url: "/v1/checks/compatibility",
          payload: { basis: larkfen.basis, joint },
        });
        expect(answer.statusCode).toBe(200);
        expect(answer.json()).toStrictEqual(plain(libraryFinding(joint, joint.basis ?? larkfen.basis)));
      },
    );

    it("stores nothing", async () => {
      const { app: empty } = await openService();
      await empty.inject({
        method: "POST",
        url: "/v1/checks/compatibility",
        payload: { basis, joint: workshopJoint() },
      });
      expect((await empty.inject("/v1/jobs")).json()).toEqual({ jobs: [], next: null });
      await empty.close();
    });

    it("is 200 for a joint that the rules reject", async () => {
      const joint = workshopJoint({ connector: { described: workshopLug({ voltageV: 300 }) } });
      const answer = await app.inject({ method: "POST", url: "/v1/checks/compatibility", payload: { basis, joint } });
      expect(answer.statusCode).toBe(200);
      expect(answer.json<JointFinding>().verdict).toBe("reject");
    });

    it.each([
      [{ place: { location: "dry", accessible: true } }, "accept", undefined],
      [{ place: { location: "dry", accessible: false } }, "reject", "accessible-joint"],
      [{ conductors: [counted("unknown", 19)] }, "accept", undefined],
      [{ conductors: [counted("unknown", 1666)] }, "reject", "strand-class"],
      [{ conductors: [counted("class-C", 19)] }, "needs-information", "strand-class"],
    ] as const)("takes access and counted strands: %j is %s", async (change, verdict, deciding) => {
      const joint = workshopJoint(change);
      const answer = await app.inject({ method: "POST", url: "/v1/checks/compatibility", payload: { basis, joint } });
      const finding = answer.json<JointFinding>();
      expect(finding.verdict, answer.body).toBe(verdict);
      if (deciding !== undefined) expect(finding.deciding.rule).toBe(deciding);
    });
  });

  describe.each([
    ["as offered", larkfenJob],
    ["with nothing offered", larkfenOpenJob],
  ])("to the Larkfen job %s", (_, larkfen) => {
    let posted: Posted;
    const direct = scheduleJob(larkfen(), catalogue);
    beforeAll(async () => {
      posted = await post(larkfen());
    });

    it("is the library's schedule", () => {
      expect(posted.schedule).toStrictEqual(plain(direct.schedule));
    });

    it("is read back as it was answered, byte for byte, and its digest is the result hash", async () => {
      const { body } = await app.inject(`/v1/jobs/${posted.job.id}/schedule`);
      expect(JSON.parse(body)).toStrictEqual(posted.schedule);
      expect(`sha256:${createHash("sha256").update(body).digest("hex")}`).toBe(posted.job.resultHash);
    });

    it("has the full finding of every joint behind it", async () => {
      for (const [index, { mark }] of larkfen().joints.entries()) {
        const { body } = await app.inject(`/v1/jobs/${posted.job.id}/joints/${encodeURIComponent(mark)}`);
        expect(JSON.parse(body)).toStrictEqual({
          mark,
          row: posted.schedule.rows[index],
          finding: plain(direct.findings[index] ?? null),
        });
      }
    });

    it("keeps the job as it was posted and the catalogue's revision", async () => {
      const stored = (await app.inject(`/v1/jobs/${posted.job.id}`)).json<{ job: unknown; posted: unknown }>();
      expect(stored).toStrictEqual({ job: posted.job, posted: larkfen() });
      expect(posted.job.catalogue.revision).toBe(demoCatalogue().revision);
    });
  });

  it("is the same to the same question: same bytes, same hash, another id", async () => {
    const [first, second] = [await post(larkfenJob()), await post(larkfenJob())];
    expect(second.job.resultHash).toBe(first.job.resultHash);
    expect(second.job.id).not.toBe(first.job.id);
    const [a, b] = await Promise.all(
      [first, second].map(async ({ job }) => (await app.inject(`/v1/jobs/${job.id}/schedule`)).body),
    );
    expect(a).toBe(b);
  });

  it("does not depend on the catalogue's connectors standing in another order of fields", async () => {
    const reversed = Object.fromEntries(Object.entries(workshopJoint()).reverse());
    const [a, b] = await Promise.all(
      [workshopJoint(), reversed].map(async (joint) => {
        const payload = { basis, joint };
        return (await app.inject({ method: "POST", url: "/v1/checks/compatibility", payload })).body;
      }),
    );
    expect(a).toBe(b);
  });

  it("finds a mark with signs that addresses escape", async () => {
    const mark = "Süd 1/2 #3 (a+b)";
    const { job } = await post({
      ...(workshopJob() as unknown as Job),
      joints: [workshopJoint({ mark }) as unknown as Joint],
    });
    const joint = await app.inject(`/v1/jobs/${job.id}/joints/${encodeURIComponent(mark)}`);
    expect(joint.json<{ mark: string }>().mark).toBe(mark);
  });

  it("says which joint a job does not have", async () => {
    const { job } = await post(workshopJob() as unknown as Job);
    const answer = await app.inject(`/v1/jobs/${job.id}/joints/B-99`);
    expect(answer.json()).toMatchObject({ status: 404, code: "JOINT_NOT_FOUND" });
  });

  describe("page by page", () => {
    it("lists jobs newest first, each once, also when jobs come in between", async () => {
      const { app: own } = await openService();
      const add = async (name: string) => {
        await own.inject({ method: "POST", url: "/v1/jobs", payload: workshopJob({ name }) });
      };
      for (const name of ["a", "b", "c", "d", "e"]) await add(name);
      const names: string[] = [];
      let next: string | null = "";
      while (next !== null) {
        const url: string = `/v1/jobs?limit=2${next === "" ? "" : `&cursor=${next}`}`;
        const page = (await own.inject(url)).json<{ jobs: { name: string }[]; next: string | null }>();
        names.push(...page.jobs.map(({ name }) => name));
        next = page.next;
        if (names.length === 2) await add("f");
      }
      expect(names).toEqual(["e", "d", "c", "b", "a"]);
      await own.close();
    });

    it("lists the catalogue in its order, whole, and by family", async () => {
      const parts: string[] = [];
      let next: string | null = "";
      while (next !== null) {
        const url: string = `/v1/catalogue/connectors?limit=100${next === "" ? "" : `&cursor=${next}`}`;
        const page = (await app.inject(url)).json<{ connectors: { partNumber: string }[]; next: string | null }>();
        parts.push(...page.connectors.map(({ partNumber }) => partNumber));
        next = page.next;
      }
      expect(parts).toEqual(catalogue.map(({ partNumber }) => partNumber));
      const family = "twist-on";
      const page = (await app.inject(`/v1/catalogue/connectors?limit=200&family=${family}`)).json<{
        connectors: unknown[];
      }>();
      expect(page.connectors).toStrictEqual(plain(catalogue.filter((item) => item.family === family)));
    });
  });

  it("gives one connector and the catalogue's counts", async () => {
    const [item] = catalogue;
    const found = await app.inject(`/v1/catalogue/connectors/${encodeURIComponent(item?.partNumber ?? "")}`);
    expect(found.json()).toStrictEqual(plain(item));
    const summary = (await app.inject("/v1/catalogue")).json<{
      connectors: number;
      families: { connectors: number }[];
    }>();
    expect(summary.connectors).toBe(catalogue.length);
    expect(summary.families.reduce((sum, { connectors }) => sum + connectors, 0)).toBe(catalogue.length);
  });

  it("gives every published table at its own address, cell by cell", async () => {
    const { tables } = (await app.inject("/v1/tables")).json<{
      tables: { href: string; id: string; digest: string }[];
    }>();
    expect(tables).toHaveLength(PUBLISHED_TABLES.length);
    expect(new Set(tables.map(({ href }) => href)).size).toBe(PUBLISHED_TABLES.length);
    for (const [index, { href, digest }] of tables.entries()) {
      const table = (await app.inject(href)).json<{ rows: unknown }>();
      expect(table.rows).toStrictEqual(plain(PUBLISHED_TABLES[index]?.rows));
      expect(digest).toBe(PUBLISHED_TABLES[index]?.digest);
    }
  });

  it("lists every rule and every edition with its clauses", async () => {
    const { rules } = (await app.inject("/v1/rules")).json<{ rules: { id: string }[] }>();
    expect(rules.map(({ id }) => id)).toEqual(RULES.map(({ id }) => id));
    const { editions } = (await app.inject("/v1/editions")).json<{
      editions: { edition: string; clauses: unknown }[];
    }>();
    expect(editions.map(({ edition, clauses }) => ({ edition, clauses }))).toStrictEqual(
      plain(EDITIONS.map(({ edition, clauses }) => ({ edition, clauses }))),
    );
  });

  describe("in the form that Accept asks for", () => {
    let url: string;
    beforeAll(async () => {
      url = `/v1/jobs/${(await post(workshopJob() as unknown as Job)).job.id}/schedule`;
    });

    it.each([
      [undefined, "application/json"],
      ["*/*", "application/json"],
      ["text/csv", "text/csv"],
      ["text/html,application/xhtml+xml,*/*;q=0.8", "text/html"],
      ["text/*", "text/csv"],
      ["application/json;q=0.1, text/csv;q=0.2", "text/csv"],
    ])("%s gets %s", async (accept, form) => {
      const answer = await app.inject({ url, headers: accept === undefined ? {} : { accept } });
      expect(answer.headers["content-type"]).toBe(`${form}; charset=utf-8`);
    });

    it.each(["application/pdf", "application/json;q=0", "text/csv;q=x"])("%s gets 406", async (accept) => {
      const answer = await app.inject({ url, headers: { accept } });
      expect(answer.json()).toMatchObject({ status: 406, code: "NOT_ACCEPTABLE" });
    });
  });

  it("says that it lives and that it is ready", async () => {
    expect((await app.inject("/healthz")).json()).toEqual({ status: "alive" });
    expect((await app.inject("/readyz")).statusCode).toBe(200);
  });
});

function libraryFinding(joint: Joint, inForce: Basis): JointFinding {
  const choice = joint.connector;
  if (choice !== undefined && "described" in choice)
    return checkJoint({ joint, basis: inForce, connector: choice.described, origin: "request" });
  if (choice !== undefined && "partNumber" in choice) {
    const connector = catalogue.find(({ partNumber }) => partNumber === choice.partNumber);
    if (connector === undefined) throw new Error(`the catalogue has no ${choice.partNumber}`);
    return checkJoint({ joint, basis: inForce, connector, origin: "catalogue" });
  }
  const terminal = joint.equipment?.terminal;
  if (terminal === undefined) throw new Error(`${joint.mark} names no connector`);
  return checkJoint({ joint, basis: inForce, connector: terminal, origin: "equipment" });
}

/** As it comes out of JSON. */
function plain<T>(value: T): T {
  return JSON.parse(JSON.stringify(value)) as T;
}
