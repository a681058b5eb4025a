import { spawn } from "node:child_process";
import { once } from "node:events";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import autocannon from "autocannon";
import { checkQuestion } from "./check-question.js";
import { shown, spreadOf } from "./ratio.js";

const TURNS = 8;
const SECONDS = 2;
const CONNECTIONS = 10;
/** The bare runs before and after must agree within this, or the machine changed its speed between them. */
const AGREEMENT = 0.1;

/** Requests per second of the check route over those of a bare route, both in one process beside this one. */
export async function benchHttpCheck(): Promise<void> {
  const child = spawn(
    process.execPath,
    ["--import", "tsx", fileURLToPath(new URL("check-server.ts", import.meta.url))],
    {
      stdio: ["ignore", "pipe", "inherit"],
    },
  );
  try {
    const lines = createInterface({ input: child.stdout });
    const [line] = (await once(lines, "line")) as [string];
    const ports = JSON.parse(line) as { service: number; bare: number };
    const service = `http://127.0.0.1:${String(ports.service)}/v1/checks/compatibility`;
    const bare = `http://127.0.0.1:${String(ports.bare)}/`;
    await rate(bare);
    await rate(service);
    const kept: number[] = [];
    const rates: number[] = [];
    let before = await rate(bare);
    for (let turn = 0; turn < TURNS; turn += 1) {
      const checks = await rate(service);
      const after = await rate(bare);
      if (Math.abs(before - after) <= AGREEMENT * Math.max(before, after)) {
        kept.push(checks / ((before + after) / 2));
        rates.push(checks);
      }
      before = after;
    }
    console.log("POST /v1/checks/compatibility over a bare route with the same validation and size of answer");
    if (kept.length === 0) console.log("  no turn kept: the machine is too unsteady now; run again when it is idle");
    else {
      console.log(`  ratio ${shown(spreadOf(kept, TURNS))}; aim 0.80 or better`);
      console.log(`  checks per second ${spreadOf(rates, TURNS).median.toFixed(0)}`);
    }
  } finally {
    child.kill("SIGKILL");
  }
}

/** Requests per second over one run. @throws Error when any answer was not 200. */
async function rate(url: string): Promise<number> {
  const result = await autocannon({
    url,
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(checkQuestion("LKF-024")),
    connections: CONNECTIONS,
    duration: SECONDS,
  });
  if (result.non2xx > 0 || result.errors > 0) throw new Error(`${url}: answers other than 200`);
  return result.requests.average;
}
