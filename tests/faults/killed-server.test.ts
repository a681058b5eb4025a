import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { larkfenJob } from "@landfast/data";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type RunningServer, startServer } from "./running-server.js";

/** Jobs posted while the server is killed. */
const POSTS = 50;

interface Posted {
  readonly job: { readonly id: string; readonly name: string; readonly resultHash: string };
  readonly schedule: { readonly rows: readonly unknown[] };
}

describe("a server that is killed in the middle of its work", { timeout: 120_000 }, () => {
  let folder = "";
  let server: RunningServer | undefined;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "landfast-"));
  });
  afterEach(() => {
    server?.process.kill("SIGKILL");
    rmSync(folder, { recursive: true });
  });

  it("has every job that it acknowledged, whole, and no half of any other", async () => {
    const file = join(folder, "store.sqlite");
    const larkfen = larkfenJob();
    // Accepted rows only: a refused one asks the whole catalogue, which would make the posts few and far between.
    const joints = larkfen.joints.slice(0, 3);
    const first = await startServer(file);
    server = first;

    const acknowledged: Posted[] = [];
    const posts = Array.from({ length: POSTS }, async (_, index) => {
      const answer = await fetch(`${first.address}/v1/jobs`, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify({ ...larkfen, name: `job ${index}`, joints }),
      });
      if (answer.status !== 201) throw new Error(`job ${index} was answered with ${answer.status}`);
      acknowledged.push((await answer.json()) as Posted);
      // In the middle: some are acknowledged, some are being written, some are waiting.
      if (acknowledged.length === POSTS / 5) first.process.kill("SIGKILL");
    });
    const outcomes = await Promise.allSettled(posts);
    expect((await first.ended).signal).toBe("SIGKILL");
    expect(acknowledged.length).toBeGreaterThanOrEqual(POSTS / 5);
    expect(outcomes.some(({ status }) => status === "rejected")).toBe(true);

    const second = await startServer(file);
    server = second;
    const read = async (path: string): Promise<unknown> => (await fetch(`${second.address}${path}`)).json();
    const { jobs } = (await read(`/v1/jobs?limit=200`)) as { jobs: Posted["job"][] };
    const ids = jobs.map(({ id }) => id);
    expect(ids).toEqual(expect.arrayContaining(acknowledged.map(({ job }) => job.id)));
    expect(new Set(ids).size).toBe(ids.length);

    for (const job of jobs) {
      const schedule = (await read(`/v1/jobs/${job.id}/schedule`)) as Posted["schedule"];
      expect(schedule.rows).toHaveLength(joints.length);
      for (const { mark } of joints)
        expect(await read(`/v1/jobs/${job.id}/joints/${mark}`)).toMatchObject({
          mark,
          finding: { verdict: expect.any(String) as string },
        });
      const told = acknowledged.find((one) => one.job.id === job.id);
      if (told !== undefined) expect(schedule).toEqual(told.schedule);
    }
  });
});
