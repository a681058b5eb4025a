import { randomUUID } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildApp, LOCAL_TENANT, loadCatalogueIfNone, openStore, slicedRunner } from "@landfast/api";
import { demoCatalogue, larkfenExpected, larkfenJob } from "@landfast/data";
import type { Job, Joint } from "@landfast/rules";
import { median } from "./ratio.js";

const ROUNDS = 3;

/** From POST to the stored schedule, for jobs of two sizes in turn: the time for a joint must not grow with the job. */
export async function benchLargeJob(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "landfast-bench-"));
  const store = openStore(join(folder, "bench.sqlite"));
  try {
    const clock = { now: () => new Date().toISOString(), newId: randomUUID };
    await loadCatalogueIfNone(store.catalogues, LOCAL_TENANT, demoCatalogue, clock);
    const app = await buildApp({ store, runner: slicedRunner(() => performance.now()), ...clock, log: false });
    console.log("POST /v1/jobs until the schedule is stored and sent (a file database, synchronous FULL)");
    for (const [name, make] of [
      ["the demonstration joints over and over (equal joints are judged once)", repeatedJob],
      ["accepted joints, each with another load or voltage, so that none equals another", distinctJob],
    ] as const) {
      const small = JSON.stringify(make(1000));
      const large = JSON.stringify(make(10_000));
      const times: { small: number; large: number }[] = [];
      for (let round = 0; round <= ROUNDS; round += 1) {
        const taken = { small: await post(app, small), large: await post(app, large) };
        if (round > 0) times.push(taken);
      }
      const perJoint = times.map((taken) => taken.large / 10 / taken.small);
      console.log(`  ${name}`);
      console.log(`    1,000 joints ${median(times.map((taken) => taken.small)).toFixed(0)} ms`);
      console.log(`    10,000 joints ${median(times.map((taken) => taken.large)).toFixed(0)} ms; aim under 1000 ms`);
      console.log(
        `    time for a joint at 10,000 over that at 1,000: ${median(perJoint).toFixed(2)}; aim 0.85 to 1.15`,
      );
    }
    await app.close();
  } finally {
    store.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function post(app: Awaited<ReturnType<typeof buildApp>>, payload: string): Promise<number> {
  const start = performance.now();
  const answer = await app.inject({
    method: "POST",
    url: "/v1/jobs",
    headers: { "content-type": "application/json" },
    payload,
  });
  if (answer.statusCode !== 201) throw new Error(`the job was refused: ${answer.body.slice(0, 300)}`);
  return performance.now() - start;
}

function repeatedJob(count: number): Job {
  return jobOf(count, larkfenJob().joints, (joint) => joint);
}

/** Of the joints that are accepted: each refused one asks the whole catalogue for another connector, which is another cost. */
function distinctJob(count: number): Job {
  const refused = new Set(
    larkfenExpected()
      .joints.filter(({ verdict }) => verdict === "reject")
      .map(({ mark }) => mark),
  );
  const accepted = larkfenJob().joints.filter(({ mark }) => !refused.has(mark));
  return jobOf(count, accepted, (joint, index) =>
    joint.circuit?.loadA === undefined
      ? { ...joint, circuit: { sets: 1, ...joint.circuit, voltageV: 100 + index / 1e6 } }
      : { ...joint, circuit: { ...joint.circuit, loadA: joint.circuit.loadA - index / 1e6 } },
  );
}

function jobOf(count: number, from: readonly Joint[], change: (joint: Joint, index: number) => Joint): Job {
  const joints: Joint[] = [];
  for (let index = 0; index < count; index += 1) {
    const joint = from[index % from.length];
    if (joint !== undefined) joints.push({ ...change(joint, index), mark: `M-${String(index)}` });
  }
  return { name: "Large job", basis: larkfenJob().basis, joints };
}
