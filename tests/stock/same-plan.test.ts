/** The same job asked the same question gives the same plan, however its joints and the catalogue are ordered. */
import { buildApp, LOCAL_TENANT, loadCatalogueIfNone, openStore, slicedRunner } from "@landfast/api";
import { demoCatalogue } from "@landfast/data";
import type { CatalogueItem, Job } from "@landfast/rules";
import { directSolver } from "@landfast/stock";
import { describe, expect, it } from "vitest";
import { stockJob } from "../contract/stock-job.js";
import { expectEveryAccept, expectEveryJoint, type Made } from "./accepts.js";

/** A linear congruential generator: the same order of trials every time. */
function shuffler(seed: number): <T>(values: readonly T[]) => T[] {
  let state = seed;
  const below = (n: number): number => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return Math.floor((state / 2_147_483_648) * n);
  };
  return (values) => {
    const order = [...values];
    for (let at = order.length - 1; at > 0; at -= 1) {
      const other = below(at + 1);
      const [a, b] = [order[at], order[other]];
      if (a !== undefined && b !== undefined) [order[at], order[other]] = [b, a];
    }
    return order;
  };
}

/** Fields of an object in another order: how a joint is written down is no part of the question. */
function rewritten<T>(value: T, shuffled: <U>(values: readonly U[]) => U[]): T {
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map((one: unknown) => rewritten(one, shuffled)) as T;
  return Object.fromEntries(
    shuffled(Object.entries(value)).map(([name, part]) => [name, rewritten(part as unknown, shuffled)]),
  ) as T;
}

const catalogue = demoCatalogue();
const offered = new Set(
  stockJob().joints.flatMap(({ connector }) =>
    connector !== undefined && "partNumber" in connector ? [connector.partNumber] : [],
  ),
);
/** A seventh of it and what the job names, so that a hundred catalogues are soon gone through. */
const some = catalogue.items.filter(({ partNumber }, at) => at % 7 === 0 || offered.has(partNumber));

const AT_HAND = some.filter((_, at) => at % 5 === 0).map(({ partNumber }) => ({ partNumber, parts: 2 }));

const QUESTIONS = [
  ["stock-plan", { objective: { kind: "fewest-then-cheapest" }, withoutEach: false }],
  ["stock-plan", { objective: { kind: "least-cost" }, withoutEach: false }],
  ["truck", { atHand: AT_HAND }],
  ["parts-list", { connectors: { from: "plan", objective: { kind: "least-cost" } } }],
] as const;

/** What a service of its own with this catalogue answers about each job, as text without the job's id. */
async function answers(items: readonly CatalogueItem[], jobs: readonly Job[]): Promise<string[][]> {
  const store = openStore(":memory:");
  let ids = 0;
  const clock = {
    now: () => "2026-01-02T03:04:05.000Z",
    newId: () => {
      ids += 1;
      return `id-${String(ids)}`;
    },
  };
  await loadCatalogueIfNone(store.catalogues, LOCAL_TENANT, () => ({ ...catalogue, items }), clock);
  const app = await buildApp({
    store,
    runner: slicedRunner(() => performance.now()),
    solver: directSolver,
    ...clock,
    log: false,
  });
  const answered: string[][] = [];
  for (const job of jobs) {
    const posted = await app.inject({ method: "POST", url: "/v1/jobs", payload: job });
    const address = String(posted.headers["location"]);
    const bodies: string[] = [];
    for (const [what, question] of QUESTIONS) {
      const answer = await app.inject({ method: "POST", url: `${address}/${what}`, payload: question });
      expect(answer.statusCode, answer.body.slice(0, 500)).toBe(200);
      bodies.push(answer.body.replaceAll(`"id":"${address.split("/").at(-1) ?? ""}"`, '"id":""'));
    }
    answered.push(bodies);
  }
  await app.close();
  store.close();
  return answered;
}

describe("a job's plan", () => {
  it("is the same a hundred times from joints, catalogue and fields in any order", { timeout: 600_000 }, async () => {
    const shuffled = shuffler(20_261_125);
    const job = stockJob();
    const [first = []] = await answers(some, [job]);
    const [plan] = first.map((body) => JSON.parse(body) as { assignments: Made[]; notPlanned: NotPlanned });
    if (plan === undefined) throw new Error("no plan");
    expectEveryAccept(job, some, plan.assignments);
    const { noPartNeeded, withoutPart, barred } = plan.notPlanned;
    expectEveryJoint(job, plan.assignments, [...noPartNeeded, ...withoutPart, ...barred]);
    for (let order = 0; order < 10; order += 1) {
      const jobs = Array.from({ length: 10 }, () => rewritten({ ...job, joints: shuffled(job.joints) }, shuffled));
      for (const again of await answers(shuffled(some), jobs)) expect(again).toEqual(first);
    }
  });
});

interface NotPlanned {
  readonly noPartNeeded: readonly { readonly mark: string; readonly because: string }[];
  readonly withoutPart: readonly { readonly marks: readonly { readonly mark: string }[]; readonly because: string }[];
  readonly barred: readonly { readonly marks: readonly string[]; readonly because: string }[];
}
