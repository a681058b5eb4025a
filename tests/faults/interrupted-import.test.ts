import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Sqlite from "better-sqlite3";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { MESSY_MAPPING, messyFile } from "../imports/messy-file.js";
import { type RunningServer, startServer } from "./running-server.js";

/** What the store holds of versions and their connectors, read beside the server or after it. */
function held(file: string): { readonly versions: number; readonly unpublished: number; readonly connectors: number } {
  const store = new Sqlite(file, { readonly: true });
  try {
    return store
      .prepare(
        `select
          (select count(*) from catalogues where own_catalogue_id is not null and version is not null) as versions,
          (select count(*) from catalogues where own_catalogue_id is not null and version is null) as unpublished,
          (select count(*) from connectors join catalogues on catalogues.id = connectors.catalogue_id
            where own_catalogue_id is not null) as connectors`,
      )
      .get() as ReturnType<typeof held>;
  } finally {
    store.close();
  }
}

describe("a server that is killed while it takes in a file", { timeout: 180_000 }, () => {
  const { bytes } = messyFile(20260325);
  let folder = "";
  let server: RunningServer | undefined;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "landfast-"));
  });
  afterEach(() => {
    server?.process.kill("SIGKILL");
    rmSync(folder, { recursive: true });
  });

  it("has nothing of the file once it is started again, and takes the same file whole", async () => {
    const file = join(folder, "store.sqlite");
    const first = await startServer(file);
    server = first;
    const post = async (at: RunningServer, path: string, body: object): Promise<{ id: string }> => {
      const answer = await fetch(`${at.address}${path}`, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify(body),
      });
      return (await answer.json()) as { id: string };
    };
    const importing = (at: RunningServer, query: string) =>
      fetch(`${at.address}/v1/catalogues/${catalogue}/imports?mapping=${mapping}${query}`, {
        method: "POST",
        headers: { "content-type": "text/csv" },
        body: new Uint8Array(bytes),
      });
    const { id: catalogue } = await post(first, "/v1/catalogues", { name: "Larkfen Works" });
    const { id: mapping } = await post(first, "/v1/import-mappings", MESSY_MAPPING);
    const { digest } = (await (await importing(first, "&dryRun=true")).json()) as { digest: string };
    expect(held(file)).toEqual({ versions: 0, unpublished: 0, connectors: 0 });

    const outcome = importing(first, `&partial=true&confirm=${digest}`).then(
      ({ status }) => status,
      () => "no answer",
    );
    // In the middle: some connectors are on the disk and the version is not yet seen.
    let middle = held(file);
    while (middle.connectors === 0 && middle.versions === 0) {
      await new Promise((resolve) => setTimeout(resolve, 1));
      middle = held(file);
    }
    first.process.kill("SIGKILL");
    expect((await first.ended).signal).toBe("SIGKILL");
    expect(await outcome).toBe("no answer");
    const left = held(file);
    expect(left).toMatchObject({ versions: 0, unpublished: 1 });
    expect(left.connectors).toBeGreaterThan(0);

    const second = await startServer(file);
    server = second;
    expect(held(file)).toEqual({ versions: 0, unpublished: 0, connectors: 0 });
    const read = async (path: string): Promise<unknown> => (await fetch(`${second.address}${path}`)).json();
    expect(await read(`/v1/catalogues/${catalogue}`)).toMatchObject({ versions: [] });
    expect(await read(`/v1/catalogues/${catalogue}/imports`)).toEqual({ imports: [] });

    const again = await importing(second, `&partial=true&confirm=${digest}`);
    expect(again.status).toBe(201);
    expect(await again.json()).toMatchObject({ version: { version: 1, connectors: 8848 } });
    expect(held(file)).toEqual({ versions: 1, unpublished: 0, connectors: 8848 });
  });
});
