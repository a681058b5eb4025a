import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { CatalogueItem } from "@landfast/rules";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { JobRecord } from "./job-repository.js";
import { LOCAL_TENANT, openStore, type Store } from "./open-store.js";

/**
 * What every store must keep to, whatever stands behind it. Another store is added to this list and must pass the same.
 */
const STORES: readonly { readonly name: string; readonly open: (folder: string) => Store }[] = [
  { name: "SQLite in memory", open: () => openStore(":memory:") },
  { name: "SQLite in a file", open: (folder) => openStore(join(folder, "below", "store.sqlite")) },
];

const item = { partNumber: "LF-1", family: "twist-on", description: "x" } as unknown as CatalogueItem;
const none = { marks: 0, joints: 0 };

function job(id: string, marks: readonly string[] = ["A", "B"]): JobRecord {
  return {
    head: {
      id,
      name: `job ${id}`,
      revision: 1,
      createdAt: "2026-01-02T03:04:05.000Z",
      basis: { ruleSet: "nfpa70", edition: "2023" },
      rulesVersion: "1",
      catalogue: { id: "cat-1", name: "catalogue", revision: "r1" },
      counts: {
        marks: marks.length,
        joints: marks.length,
        byVerdict: { accept: none, "accept-with-conditions": none, reject: none, "needs-information": none },
      },
      resultHash: "sha256:0",
    },
    posted: '{"posted":true}',
    catalogueRecordId: "cat-1",
    summary: '{"job":"x"}',
    joints: marks.map((mark, index) => ({
      mark,
      verdict: "accept",
      decidingRule: "wire-range",
      own: `{"mark":${JSON.stringify(mark)}}`,
      lineId: "l1",
      findingId: index === 0 ? null : "f1",
    })),
    lines: [{ id: "l1", document: '{"shared":1}' }],
    findings: [{ id: "f1", document: '{"finding":1}' }],
  };
}

describe.each(STORES)("$name", ({ open }) => {
  let folder = "";
  let store: Store;
  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), "landfast-"));
    store = open(folder);
    await store.catalogues.add(LOCAL_TENANT, {
      id: "cat-1",
      name: "catalogue",
      revision: "r1",
      loadedAt: "2026-01-02T03:04:05.000Z",
      items: [item],
    });
  });
  afterEach(() => {
    store.close();
    rmSync(folder, { recursive: true });
  });

  it("answers when pinged and rejects once closed", async () => {
    await expect(store.ping()).resolves.toBeUndefined();
    store.close();
    await expect(store.ping()).rejects.toThrow();
  });

  it("gives back the newest catalogue with its items in order", async () => {
    const items = ["LF-9", "LF-2", "LF-5"].map((partNumber) => ({ ...item, partNumber }));
    const newer = { id: "cat-2", name: "newer", revision: "r2", loadedAt: "2026-01-03T03:04:05.000Z", items };
    await store.catalogues.add(LOCAL_TENANT, newer);
    expect(await store.catalogues.current(LOCAL_TENANT)).toEqual(newer);
  });

  it("stores a catalogue whole or not at all", async () => {
    const twice = {
      id: "cat-3",
      name: "twice",
      revision: "r3",
      loadedAt: "2026-01-03T03:04:05.000Z",
      items: [item, item],
    };
    await expect(store.catalogues.add(LOCAL_TENANT, twice)).rejects.toThrow();
    expect((await store.catalogues.current(LOCAL_TENANT))?.id).toBe("cat-1");
  });

  it("gives back a job as it was stored", async () => {
    const stored = job("j1");
    await store.jobs.add(LOCAL_TENANT, stored);
    expect(await store.jobs.head(LOCAL_TENANT, "j1")).toEqual(stored.head);
    expect(await store.jobs.posted(LOCAL_TENANT, "j1")).toBe(stored.posted);
    expect(await store.jobs.schedule(LOCAL_TENANT, "j1")).toEqual({
      summary: stored.summary,
      lines: stored.joints.map(({ own }) => ({ own, shared: '{"shared":1}' })),
    });
    expect(await store.jobs.joint(LOCAL_TENANT, "j1", "A")).toEqual({
      mark: "A",
      own: '{"mark":"A"}',
      shared: '{"shared":1}',
      finding: null,
    });
    expect(await store.jobs.joint(LOCAL_TENANT, "j1", "B")).toEqual({
      mark: "B",
      own: '{"mark":"B"}',
      shared: '{"shared":1}',
      finding: '{"finding":1}',
    });
  });

  it("shares a finding between jobs", async () => {
    await store.jobs.add(LOCAL_TENANT, job("j1"));
    await store.jobs.add(LOCAL_TENANT, job("j2"));
    expect((await store.jobs.joint(LOCAL_TENANT, "j2", "B"))?.finding).toBe('{"finding":1}');
  });

  it("tells an unknown job from an unknown mark", async () => {
    await store.jobs.add(LOCAL_TENANT, job("j1"));
    expect(await store.jobs.joint(LOCAL_TENANT, "none", "A")).toBeUndefined();
    expect(await store.jobs.joint(LOCAL_TENANT, "j1", "none")).toBeNull();
    expect(await store.jobs.head(LOCAL_TENANT, "none")).toBeNull();
    expect(await store.jobs.posted(LOCAL_TENANT, "none")).toBeNull();
    expect(await store.jobs.schedule(LOCAL_TENANT, "none")).toBeNull();
  });

  it.each([
    ["a mark that stands twice", job("bad", ["A", "B", "A"])],
    [
      "a finding that is not there",
      {
        ...job("bad"),
        findings: [{ id: "f2", document: "{}" }],
        joints: job("bad").joints.map((one) => ({ ...one, findingId: "f3" })),
      },
    ],
    [
      "a line that is not there",
      { ...job("bad"), lines: [], joints: job("bad").joints.map((one) => ({ ...one, lineId: "l3" })) },
    ],
    ["an id given before", job("j1")],
  ])("stores nothing of a job with %s", async (_, bad) => {
    await store.jobs.add(LOCAL_TENANT, job("j1"));
    await expect(store.jobs.add(LOCAL_TENANT, bad)).rejects.toThrow();
    expect((await store.jobs.list(LOCAL_TENANT, 10, null)).jobs.map(({ id }) => id)).toEqual(["j1"]);
    expect(await store.jobs.schedule(LOCAL_TENANT, "bad")).toBeNull();
  });

  it("lists jobs newest first in pages that neither skip nor repeat", async () => {
    for (const id of ["j1", "j2", "j3"]) await store.jobs.add(LOCAL_TENANT, job(id));
    const first = await store.jobs.list(LOCAL_TENANT, 2, null);
    expect(first.jobs.map(({ id }) => id)).toEqual(["j3", "j2"]);
    await store.jobs.add(LOCAL_TENANT, job("j4"));
    const second = await store.jobs.list(LOCAL_TENANT, 2, first.next);
    expect(second).toEqual({ jobs: [job("j1").head], next: null });
  });

  it("shows a tenant nothing of another", async () => {
    await store.jobs.add(LOCAL_TENANT, job("j1"));
    expect((await store.jobs.list("other", 10, null)).jobs).toEqual([]);
    expect(await store.jobs.head("other", "j1")).toBeNull();
    expect(await store.jobs.posted("other", "j1")).toBeNull();
    expect(await store.jobs.schedule("other", "j1")).toBeNull();
    expect(await store.jobs.joint("other", "j1", "A")).toBeUndefined();
    expect(await store.catalogues.current("other")).toBeNull();
  });

  it("takes text that looks like SQL as text", async () => {
    const mark = "A'); drop table joints; --";
    await store.jobs.add(LOCAL_TENANT, job("j1", [mark]));
    expect((await store.jobs.joint(LOCAL_TENANT, "j1", mark))?.mark).toBe(mark);
    expect(await store.jobs.head(LOCAL_TENANT, "' or 1=1 --")).toBeNull();
  });
});

it("keeps what was stored when the file is opened again", async () => {
  const folder = mkdtempSync(join(tmpdir(), "landfast-"));
  const file = join(folder, "store.sqlite");
  const first = openStore(file);
  await first.catalogues.add(LOCAL_TENANT, {
    id: "cat-1",
    name: "catalogue",
    revision: "r1",
    loadedAt: "2026-01-02T03:04:05.000Z",
    items: [item],
  });
  await first.jobs.add(LOCAL_TENANT, job("j1"));
  first.close();
  const second = openStore(file);
  expect(await second.jobs.head(LOCAL_TENANT, "j1")).toEqual(job("j1").head);
  second.close();
  rmSync(folder, { recursive: true });
});
