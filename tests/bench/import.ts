import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { Agent, request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import { MESSY_MAPPING, messyFile } from "../imports/messy-file.js";
import { checkQuestion } from "./check-question.js";

const ROWS = 10_000;
const ROUNDS = 5;
/** A probe is sent so often, whether the one before was answered or not, so that a pause is felt by all that fall into it. */
const PROBE_EVERY_MS = 10;

interface Answer {
  readonly status: number;
  readonly body: string;
}

/** How long other requests take while a file of ten thousand rows is taken in; the server is a process of its own. */
export async function benchImport(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "landfast-bench-"));
  const child = spawn(
    process.execPath,
    ["--import", "tsx", fileURLToPath(new URL("import-server.ts", import.meta.url)), join(folder, "bench.sqlite")],
    { stdio: ["pipe", "pipe", "inherit"] },
  );
  const agent = new Agent({ keepAlive: true });
  try {
    const lines = createInterface({ input: child.stdout });
    const [port] = (await once(lines, "line")) as [string];
    const longestTurn = async (): Promise<string> => {
      const line = once(lines, "line") as Promise<[string]>;
      child.stdin.write("\n");
      return (await line)[0];
    };
    const ask = asker(Number(port), agent);
    const check = JSON.stringify(checkQuestion("LKF-024"));
    const probe = (): Promise<Answer> => ask("POST", "/v1/checks/compatibility", "application/json", check);
    const { bytes } = messyFile(20260325, ROWS);
    const made = await ask("POST", "/v1/catalogues", "application/json", '{"name":"bench"}');
    const { id: catalogue } = JSON.parse(made.body) as { id: string };
    const saved = await ask("POST", "/v1/import-mappings", "application/json", JSON.stringify(MESSY_MAPPING));
    const { id: mapping } = JSON.parse(saved.body) as { id: string };
    const path = `/v1/catalogues/${catalogue}/imports?mapping=${mapping}`;
    const dryRun = await ask("POST", `${path}&dryRun=true`, "text/csv", bytes);
    const { digest } = JSON.parse(dryRun.body) as { digest: string };
    for (let warm = 0; warm < 200; warm += 1) await probe();

    console.log(
      `A messy file of ${ROWS.toLocaleString("en")} rows, ${(bytes.length / 1e6).toFixed(1)} MB, taken in while a check is asked every ${String(PROBE_EVERY_MS)} ms`,
    );
    await longestTurn();
    const idle = await probing(probe, () => new Promise((resolve) => setTimeout(resolve, 2000)));
    console.log(`  nothing taken in: ${shownTimes(idle.times)}`);
    console.log(`    longest turn of the answering thread ${await longestTurn()} ms of its own processor time`);
    for (let round = 1; round <= ROUNDS; round += 1) {
      const taken = await probing(probe, async () => {
        const { status, body } = await ask("POST", `${path}&partial=true&confirm=${digest}`, "text/csv", bytes);
        if (status !== 201) throw new Error(`the file was refused: ${body.slice(0, 300)}`);
      });
      console.log(`  taken in within ${taken.ms.toFixed(0)} ms: ${shownTimes(taken.times)}`);
      console.log(`    longest turn of the answering thread ${await longestTurn()} ms of its own processor time`);
    }
    console.log(
      "  aim: p99 under 50 ms, on a machine with nothing else to do; the turn does not depend on what else it does",
    );
  } finally {
    agent.destroy();
    child.kill("SIGKILL");
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Sends probes at a steady pace until the work is done; the time of each in milliseconds. */
async function probing(
  probe: () => Promise<Answer>,
  work: () => Promise<void>,
): Promise<{ readonly times: readonly number[]; readonly ms: number }> {
  const times: number[] = [];
  const probes: Promise<void>[] = [];
  const timed = async (): Promise<void> => {
    const start = performance.now();
    const { status } = await probe();
    if (status !== 200) throw new Error(`a check was answered with ${String(status)}`);
    times.push(performance.now() - start);
  };
  const pace = setInterval(() => {
    probes.push(timed());
  }, PROBE_EVERY_MS);
  const start = performance.now();
  try {
    await work();
  } finally {
    clearInterval(pace);
  }
  const ms = performance.now() - start;
  await Promise.all(probes);
  return { times, ms };
}

function shownTimes(times: readonly number[]): string {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (share: number): string => (sorted[Math.ceil(sorted.length * share) - 1] ?? 0).toFixed(1);
  return `${String(sorted.length)} checks, median ${at(0.5)} ms, p99 ${at(0.99)} ms, longest ${at(1)} ms`;
}

function asker(
  port: number,
  agent: Agent,
): (method: string, path: string, type: string, body: string | Buffer) => Promise<Answer> {
  return (method, path, type, body) =>
    new Promise((resolve, reject) => {
      const headers = { "content-type": type, "content-length": Buffer.byteLength(body) };
      const sent = request({ host: "127.0.0.1", port, method, path, agent, headers }, (answer) => {
        const pieces: Buffer[] = [];
        answer.on("data", (piece: Buffer) => pieces.push(piece));
        answer.on("end", () => {
          resolve({ status: answer.statusCode ?? 0, body: Buffer.concat(pieces).toString("utf8") });
        });
      });
      sent.on("error", reject);
      sent.end(body);
    });
}
