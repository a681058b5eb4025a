import { once } from "node:events";
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { larkfenJob } from "@landfast/data";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type RunningServer, spawnServer, startServer } from "./running-server.js";

describe("a server that is asked to end", { timeout: 120_000 }, () => {
  let folder = "";
  let server: RunningServer | undefined;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "landfast-"));
  });
  afterEach(() => {
    server?.process.kill("SIGKILL");
    rmSync(folder, { recursive: true });
  });

  it.each(["SIGTERM", "SIGINT"] as const)(
    "by %s finishes what is under way, closes its store, and ends with 0",
    async (signal) => {
      const file = join(folder, "store.sqlite");
      server = await startServer(file);
      const larkfen = larkfenJob();
      // Many joints of few kinds: enough to be under way for a while, and soon done.
      const joints = Array.from({ length: 1000 }, (_, round) =>
        larkfen.joints.slice(0, 3).map((joint) => ({ ...joint, mark: `${joint.mark}-${round}` })),
      ).flat();
      const underWay = fetch(`${server.address}/v1/jobs`, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify({ ...larkfen, joints }),
      });
      // The request has to be there before the end is asked for.
      await new Promise((resolve) => setTimeout(resolve, 50));
      server.process.kill(signal);
      const answer = await underWay;
      expect(answer.status).toBe(201);
      const { job } = (await answer.json()) as { job: { id: string } };
      expect(await server.ended).toEqual({ code: 0, signal: null });
      // A store that was closed has put everything into its one file.
      expect(existsSync(`${file}-wal`)).toBe(false);

      server = await startServer(file);
      expect((await fetch(`${server.address}/v1/jobs/${job.id}`)).status).toBe(200);
    },
  );

  it("ends also while a client holds its connection open", async () => {
    server = await startServer(join(folder, "store.sqlite"));
    const { port } = new URL(server.address);
    const socket = connect(Number(port), "127.0.0.1");
    await once(socket, "connect");
    server.process.kill("SIGTERM");
    expect((await server.ended).code).toBe(0);
    socket.destroy();
  });

  it("loads the demonstration catalogue into an empty store once", async () => {
    const file = join(folder, "store.sqlite");
    const revisions: unknown[] = [];
    for (let start = 0; start < 2; start += 1) {
      server = await startServer(file);
      const { id, connectors } = (await (await fetch(`${server.address}/v1/catalogue`)).json()) as Record<
        string,
        unknown
      >;
      revisions.push({ id, connectors });
      server.process.kill("SIGTERM");
      await server.ended;
    }
    expect(revisions[1]).toEqual(revisions[0]);
  });
});

describe("a server that is configured wrongly", { timeout: 60_000 }, () => {
  it("says what is wrong and what is accepted, and ends with 2", async () => {
    const child = spawnServer({ PORT: "eighty", LOG_LEVEL: "loud" });
    let said = "";
    child.stderr?.on("data", (text: Buffer) => {
      said += text.toString();
    });
    const [code] = (await once(child, "close")) as [number];
    expect(code).toBe(2);
    expect(said).toContain('PORT is "eighty"; accepted is a whole number from 0 to 65535');
    expect(said).toContain('LOG_LEVEL is "loud"');
  });
});
