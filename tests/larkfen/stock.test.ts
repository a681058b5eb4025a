/**
 * What stock the invented site takes, each figure of the demonstration worked out a second time: what is named by plain
 * arithmetic from the catalogue, the curve by trying every way to deal the joints to parts. Expected values: hand, in the
 * sense that another way of working gives them; the few written out are regression.
 */
import { demoCatalogue, larkfenExpected, larkfenJob } from "@landfast/data";
import { type CatalogueItem, checkJoint, type Joint } from "@landfast/rules";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { type Model as OtherModel, solve } from "yalps";
import { openService, type Service } from "../contract/open-service.js";
import { expectEveryAccept, expectEveryJoint, withoutOffer } from "../stock/accepts.js";
import { type CountedPart, costByCount } from "../stock/cost-by-count.js";

// Every joint is checked in full with every connector of the catalogue.
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

interface Money {
  readonly amount: string;
  readonly currency: string;
}
interface Named {
  readonly partNumbers: number;
  readonly joints: number;
  readonly cost: Money;
  readonly parts: readonly { readonly partNumber: string; readonly marks: readonly string[] }[];
}
interface NotPlanned {
  readonly noPartNeeded: readonly { readonly mark: string; readonly joints: number; readonly because: string }[];
  readonly withoutPart: readonly {
    readonly marks: readonly { readonly mark: string }[];
    readonly joints: number;
    readonly because: string;
  }[];
  readonly barred: readonly { readonly marks: readonly string[]; readonly because: string }[];
}
interface TradeOff {
  readonly joints: number;
  readonly curve: {
    readonly complete: boolean;
    readonly points: readonly {
      readonly partNumbers: number;
      readonly cost: Money;
      readonly aboveCheapest: Money;
      readonly parts: readonly string[];
      readonly proof: { readonly proven: boolean };
    }[];
  };
  readonly asNamed: { readonly all: Named; readonly accepted: Named };
  readonly notPlanned: NotPlanned;
}
interface Plan {
  readonly partNumbers: number;
  readonly joints: number;
  readonly cost: { readonly total: Money };
  readonly proof: { readonly proven: boolean };
  readonly parts: readonly {
    readonly partNumber: string;
    readonly joints: number;
    readonly packs: number;
    readonly bought: number;
  }[];
  readonly assignments: readonly {
    readonly marks: readonly string[];
    readonly partNumber: string;
    readonly joints: number;
    readonly verdict: string;
  }[];
  readonly notPlanned: NotPlanned;
}

const job = larkfenJob();
const catalogue = demoCatalogue().items;
const items = new Map(catalogue.map((item) => [item.partNumber, item]));

/** Equal joints, and the connectors that the full check accepts for them. */
interface Class {
  readonly joints: number;
  readonly makers: readonly CatalogueItem[];
}

/** Works out the classes of some marks without any part of the service. */
function classesOf(marks: ReadonlySet<string>): Class[] {
  const kinds = new Map<string, { joint: Joint; joints: number }>();
  for (const joint of job.joints) {
    if (!marks.has(joint.mark)) continue;
    const { mark: _mark, area: _area, description: _words, quantity, equipment, ...facts } = withoutOffer(joint);
    const kind = JSON.stringify([facts, { ...equipment, tag: "" }, joint.basis ?? job.basis]);
    const known = kinds.get(kind) ?? { joint, joints: 0 };
    known.joints += quantity;
    kinds.set(kind, known);
  }
  return [...kinds.values()].map(({ joint, joints }) => ({
    joints,
    makers: catalogue.filter((connector) => {
      const { verdict } = checkJoint({
        joint: withoutOffer(joint),
        basis: joint.basis ?? job.basis,
        connector,
        origin: "catalogue",
      });
      return verdict === "accept" || verdict === "accept-with-conditions";
    }),
  }));
}

/** Least cost with no more than k part numbers, in cents, by trying. */
function curveByTrying(classes: readonly Class[]): (bigint | null)[] {
  const parts = catalogue.flatMap((item): CountedPart[] => {
    const makes = classes.flatMap(({ makers }, place) => (makers.includes(item) ? [place] : []));
    return makes.length === 0 ? [] : [{ pack: item.packQuantity, cents: centsOf(item), makes }];
  });
  return costByCount(
    classes.map(({ joints }) => joints),
    parts,
  );
}

/** Fewest part numbers by another solver than the service's, on the question as it stands: nothing is reduced. */
function fewestByOtherSolver(classes: readonly Class[]): number {
  const offered = catalogue.filter((item) => classes.some(({ makers }) => makers.includes(item)));
  const model: OtherModel = {
    direction: "minimize",
    objective: "count",
    constraints: Object.fromEntries(classes.map((_, place) => [`class ${String(place)}`, { min: 1 }])),
    variables: Object.fromEntries(
      offered.map((item) => [
        item.partNumber,
        {
          count: 1,
          ...Object.fromEntries(
            classes.flatMap(({ makers }, place) => (makers.includes(item) ? [[`class ${String(place)}`, 1]] : [])),
          ),
        },
      ]),
    ),
    binaries: true,
  };
  const { status, result } = solve(model, { maxIterations: Number.POSITIVE_INFINITY, tolerance: 0 });
  expect(status).toBe("optimal");
  return Math.round(result);
}

function centsOf({ partNumber, price }: CatalogueItem): bigint {
  const [whole = "", fraction = ""] = price?.amount.split(".") ?? [];
  if (price?.currency !== "USD" || fraction.length !== 2) throw new Error(`${partNumber} has no price in cents`);
  return BigInt(whole + fraction);
}

function cents(money: Money): bigint {
  const [whole = "", fraction = ""] = money.amount.split(".");
  return BigInt(whole + fraction.padEnd(2, "0"));
}

function packed(partNumber: string, joints: number): bigint {
  const item = items.get(partNumber);
  if (item === undefined) throw new Error(`no ${partNumber}`);
  return BigInt(Math.ceil(joints / item.packQuantity) * item.packQuantity) * centsOf(item);
}

/** What the joints that name a connector of the catalogue come to: part numbers, joints and cents. */
function namedBy(isMeant: (mark: string) => boolean): [number, number, bigint] {
  const counts = new Map<string, number>();
  // A connector that is used again is not bought.
  for (const { mark, quantity, connector, partState } of job.joints)
    if (connector !== undefined && "partNumber" in connector && partState !== "reused" && isMeant(mark))
      counts.set(connector.partNumber, (counts.get(connector.partNumber) ?? 0) + quantity);
  return [
    counts.size,
    [...counts.values()].reduce((sum, joints) => sum + joints, 0),
    [...counts].reduce((sum, [partNumber, joints]) => sum + packed(partNumber, joints), 0n),
  ];
}

describe("the stock of Larkfen Works", () => {
  let app: Service;
  let address: string;
  let whole: TradeOff;
  let same: TradeOff;
  const accepted = new Set(
    larkfenExpected()
      .joints.filter(({ verdict }) => verdict === "accept" || verdict === "accept-with-conditions")
      .map(({ mark }) => mark),
  );

  async function ask<Answer>(what: string, question: object): Promise<Answer> {
    const answer = await app.inject({ method: "POST", url: `${address}/${what}`, payload: question });
    expect(answer.statusCode, answer.body.slice(0, 500)).toBe(200);
    return answer.json<Answer>();
  }

  beforeAll(async () => {
    ({ app } = await openService());
    const posted = await app.inject({ method: "POST", url: "/v1/jobs", payload: job });
    address = String(posted.headers["location"]);
    whole = await ask<TradeOff>("stock-plan/trade-off", {});
    same = await ask<TradeOff>("stock-plan/trade-off", {
      marks: whole.asNamed.accepted.parts.flatMap(({ marks }) => marks),
    });
  });
  afterAll(() => app.close());

  it("is as named what plain arithmetic makes of the connectors that the joints name", () => {
    const said = ({ partNumbers, joints, cost }: Named): [number, number, bigint] => [partNumbers, joints, cents(cost)];
    expect(said(whole.asNamed.all)).toEqual(namedBy(() => true));
    // The marks that have to be accepted are those worked by hand before.
    expect(said(whole.asNamed.accepted)).toEqual(namedBy((mark) => accepted.has(mark)));
  });

  it.each([
    ["all joints that the catalogue can make", (): TradeOff => whole],
    ["the joints accepted as named", (): TradeOff => same],
  ])("costs at every number of part numbers what trying every way gives: %s", (_, tradeOff) => {
    const { curve, joints, notPlanned } = tradeOff();
    const left = new Set([
      ...notPlanned.noPartNeeded.map(({ mark }) => mark),
      ...notPlanned.withoutPart.flatMap(({ marks }) => marks.map(({ mark }) => mark)),
    ]);
    const meant = new Set(
      tradeOff() === whole
        ? job.joints.map(({ mark }) => mark).filter((mark) => !left.has(mark))
        : whole.asNamed.accepted.parts.flatMap(({ marks }) => marks),
    );
    const classes = classesOf(meant);
    expect(classes.every(({ makers }) => makers.length > 0)).toBe(true);
    expect(classes.reduce((sum, one) => sum + one.joints, 0)).toBe(joints);
    const byTrying = curveByTrying(classes);
    const fewest = byTrying.findIndex((cost) => cost !== null);
    const least = byTrying.at(-1);
    expect(curve.complete).toBe(true);
    expect(curve.points[0]?.partNumbers).toBe(fewest);
    expect(fewestByOtherSolver(classes)).toBe(fewest);
    expect(curve.points.every(({ proof }) => proof.proven)).toBe(true);
    for (const { partNumbers, cost, aboveCheapest, parts } of curve.points) {
      expect(cents(cost), `${String(partNumbers)} part numbers`).toBe(byTrying[partNumbers]);
      expect(cents(aboveCheapest)).toBe(cents(cost) - (least ?? 0n));
      expect(parts.length).toBe(partNumbers);
    }
    // A number that is left out is one at which nothing is saved; after the last nothing is saved at all.
    const shown = new Map(curve.points.map(({ partNumbers, cost }) => [partNumbers, cents(cost)]));
    let before: bigint | null = null;
    byTrying.forEach((cost, count) => {
      if (cost !== null && (before === null || cost < before)) expect(shown.get(count)).toBe(cost);
      before = cost;
    });
  });

  it("is what it was: part numbers and cost at both ends", () => {
    // regression
    const ends = ({ curve }: TradeOff): (string | number | undefined)[] => {
      const [first, last] = [curve.points[0], curve.points.at(-1)];
      return [first?.partNumbers, first?.cost.amount, last?.partNumbers, last?.cost.amount];
    };
    expect([ends(whole), ends(same)]).toEqual([
      [21, "3687.84", 31, "2542.1"],
      [16, "2603.88", 25, "1868.22"],
    ]);
  });

  it.each(["fewest-part-numbers", "least-cost", "fewest-then-cheapest"])(
    "is planned with parts that each joint passes the full check with, no joint left out: %s",
    async (kind) => {
      const plan = await ask<Plan>("stock-plan", { objective: { kind }, withoutEach: false });
      expectEveryAccept(job, catalogue, plan.assignments);
      const { noPartNeeded, withoutPart, barred } = plan.notPlanned;
      expectEveryJoint(job, plan.assignments, [...noPartNeeded, ...withoutPart, ...barred]);
      expect(plan.proof.proven).toBe(true);
      // By plain arithmetic: joints of each part, whole packs, and the sum.
      const counts = new Map<string, number>();
      for (const { partNumber, joints } of plan.assignments)
        counts.set(partNumber, (counts.get(partNumber) ?? 0) + joints);
      expect(plan.parts.map(({ partNumber, joints }) => [partNumber, joints])).toEqual(
        [...counts].sort(([a], [b]) => (a < b ? -1 : 1)),
      );
      expect(cents(plan.cost.total)).toBe(
        [...counts].reduce((sum, [partNumber, joints]) => sum + packed(partNumber, joints), 0n),
      );
      expect(plan.joints).toBe(whole.joints);
    },
  );
});
