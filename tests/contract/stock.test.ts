/** What the service answers about the parts of a stored job. Expected numbers: hand, from the catalogue's own figures. */
import { demoCatalogue } from "@landfast/data";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { expectEveryAccept, expectEveryJoint } from "../stock/accepts.js";
import { openService, type Service } from "./open-service.js";
import { stockJob } from "./stock-job.js";

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

interface Money {
  readonly amount: string;
  readonly currency: string;
}
interface PlanPart {
  readonly partNumber: string;
  readonly joints: number;
  readonly partsUsed: number;
  readonly fromStock: number;
  readonly packs: number;
  readonly packQuantity: number;
  readonly bought: number;
  readonly cost: Money | null;
  readonly must: boolean;
  readonly marks: readonly string[];
  readonly areas: readonly {
    readonly area: string | null;
    readonly joints: number;
    readonly neededBy: string | null;
  }[];
  readonly neededBy: string | null;
  readonly onlyMaker: readonly string[];
  readonly onlyInPlan: readonly string[];
  readonly without: {
    readonly marksLost: readonly string[];
    readonly jointsLost: number;
    readonly partNumbers: number;
    readonly costChange: Money | null;
  } | null;
}
interface Plan {
  readonly from: { readonly prices: string; readonly hours: string };
  readonly partNumbers: number;
  readonly joints: number;
  readonly hours: string | null;
  readonly cost: { readonly total: Money; readonly labour: Money | null; readonly carrying: Money | null } | null;
  readonly proof: {
    readonly proven: boolean;
    readonly of: string;
    readonly value: string;
    readonly bound: string | null;
  };
  readonly parts: readonly PlanPart[];
  readonly assignments: readonly {
    readonly marks: readonly string[];
    readonly partNumber: string;
    readonly joints: number;
    readonly verdict: string;
    readonly conditions: readonly string[];
  }[];
  readonly notPlanned: {
    readonly noPartNeeded: readonly { readonly mark: string; readonly because: string }[];
    readonly withoutPart: readonly { readonly marks: readonly { readonly mark: string }[]; readonly because: string }[];
    readonly barred: readonly { readonly marks: readonly string[]; readonly because: string }[];
  };
  readonly notCosted: readonly { readonly partNumber: string; readonly because: string }[];
}
interface Problem {
  readonly code: string;
  readonly errors: readonly { readonly pointer: string; readonly detail: string }[];
}

const catalogue = demoCatalogue().items;
const job = stockJob();
const leastCost = { objective: { kind: "least-cost" }, withoutEach: false } as const;

describe("the parts of a stored job", () => {
  let app: Service;
  let address: string;
  beforeAll(async () => {
    ({ app } = await openService());
    address = String((await app.inject({ method: "POST", url: "/v1/jobs", payload: job })).headers["location"]);
  });
  afterAll(() => app.close());

  async function ask<Answer>(what: string, question: object, at = address): Promise<Answer> {
    const answer = await app.inject({ method: "POST", url: `${at}/${what}`, payload: question });
    expect(answer.statusCode, answer.body.slice(0, 600)).toBe(200);
    return answer.json<Answer>();
  }
  async function refusal(what: string, question: object, url = `${address}/${what}`): Promise<[number, Problem]> {
    const answer = await app.inject({ method: "POST", url, payload: question });
    expect(answer.headers["content-type"]).toMatch(/^application\/problem\+json/);
    return [answer.statusCode, answer.json<Problem>()];
  }
  const plan = (question: object): Promise<Plan> => ask<Plan>("stock-plan", { ...leastCost, ...question });

  function partIn({ parts }: Plan, partNumber: string): PlanPart {
    const part = parts.find((one) => one.partNumber === partNumber);
    if (part === undefined) throw new Error(`the plan has no ${partNumber}`);
    return part;
  }
  function firstPart({ parts }: Plan): PlanPart {
    const [first] = parts;
    if (first === undefined) throw new Error("the plan has no part");
    return first;
  }

  describe("as a stock plan", () => {
    it.each([
      { kind: "fewest-part-numbers" },
      { kind: "least-cost" },
      { kind: "least-cost-with-carrying-cost", carryingCost: { amount: "25.00", currency: "USD" } },
      { kind: "fewest-then-cheapest" },
    ])("makes each joint with a part that passes the full check, and names the others: $kind", async (objective) => {
      const answer = await plan({ objective });
      expectEveryAccept(job, catalogue, answer.assignments);
      const { noPartNeeded, withoutPart, barred } = answer.notPlanned;
      expectEveryJoint(job, answer.assignments, [...noPartNeeded, ...withoutPart, ...barred]);
      expect(answer.proof.proven).toBe(true);
      for (const { verdict, conditions } of answer.assignments)
        expect(conditions.length > 0).toBe(verdict === "accept-with-conditions");
    });

    it("weighs a carrying cost for each part number", async () => {
      const objective = (amount: string) => ({
        objective: { kind: "least-cost-with-carrying-cost", carryingCost: { amount, currency: "USD" } },
      });
      const [none, much, cheapest, fewest] = [
        await plan(objective("0")),
        await plan(objective("100000")),
        await plan({}),
        await plan({ objective: { kind: "fewest-then-cheapest" } }),
      ];
      expect(none.cost?.total).toEqual(cheapest.cost?.total);
      expect(much.partNumbers).toBe(fewest.partNumbers);
      // hand: so many part numbers x 100 000
      expect(much.cost?.carrying?.amount).toBe(String(much.partNumbers * 100_000));
    });

    it("says of each part which joints depend on it and what dropping it costs", async () => {
      const whole = await plan({ objective: { kind: "fewest-then-cheapest" }, withoutEach: true });
      for (const part of whole.parts) {
        const without = await plan({ objective: { kind: "fewest-then-cheapest" }, mustNot: [part.partNumber] });
        expect(part.without?.partNumbers).toBe(without.partNumbers);
        expect(part.without?.jointsLost).toBe(whole.joints - without.joints);
        // Joints that only it makes are lost without it.
        expect(part.without?.marksLost).toEqual(part.onlyMaker);
        for (const mark of part.onlyMaker) expect(part.onlyInPlan).toContain(mark);
        if (part.onlyMaker.length > 0) expect(part.without?.costChange).toBeNull();
        else {
          const change = Number(without.cost?.total.amount) - Number(whole.cost?.total.amount);
          expect(Number(part.without?.costChange?.amount)).toBeCloseTo(change, 6);
        }
      }
    });

    it("uses what is on hand first", async () => {
      // Only this part may make the 9 joints, so that what is on hand cannot change which part is chosen.
      const partNumber = "LF-PRESS-0208";
      const mustNot = catalogue.map((item) => item.partNumber).filter((one) => one !== partNumber);
      const withStock = async (parts: number): Promise<PlanPart> =>
        partIn(await plan({ marks: ["LKF-015"], mustNot, onHand: [{ partNumber, parts }] }), partNumber);
      expect(await withStock(8)).toMatchObject({ partsUsed: 9, fromStock: 8, packs: 1 });
      const nothing = { packs: 0, bought: 0, cost: { amount: "0", currency: "USD" } };
      expect(await withStock(9)).toMatchObject({ partsUsed: 9, fromStock: 9, ...nothing });
      expect(await withStock(10)).toMatchObject({ partsUsed: 9, fromStock: 9, ...nothing });
    });

    it("keeps to parts that must and must not be stocked, and to packs other than the catalogue's", async () => {
      const before = await plan({});
      const { partNumber } = firstPart(before);
      const without = await plan({ mustNot: [partNumber] });
      expect(without.parts.map((one) => one.partNumber)).not.toContain(partNumber);
      const family = catalogue.find((item) => item.partNumber === partNumber)?.family ?? "";
      const barred = await plan({ mustNotFamilies: [family] });
      for (const one of barred.parts)
        expect(catalogue.find((item) => item.partNumber === one.partNumber)?.family).not.toBe(family);
      const must = await plan({ must: ["LF-ROD-0101"] });
      expect(partIn(must, "LF-ROD-0101")).toMatchObject({ must: true, joints: 0, packs: 1 });
      const packed = partIn(await plan({ packs: [{ partNumber, packQuantity: 1 }], must: [partNumber] }), partNumber);
      expect(packed.bought).toBe(Math.max(1, packed.partsUsed));
    });

    it("names joints whose every part is barred", async () => {
      const { assignments } = await plan({ marks: ["LKF-057"] });
      const [only] = assignments;
      const makers = catalogue.filter(({ functions }) => functions.includes("splice")).map((item) => item.partNumber);
      const answer = await plan({ marks: ["LKF-057"], mustNot: makers });
      expect(only?.marks).toEqual(["LKF-057"]);
      expect(answer.parts).toEqual([]);
      expect(answer.notPlanned.barred.map(({ marks }) => marks)).toEqual([["LKF-057"]]);
      expect(answer.notPlanned.barred[0]?.because).toContain("must not be used");
    });

    it("gives each part the earliest day on which an area needs it", async () => {
      const areas = [...new Set(job.joints.flatMap(({ area }) => area ?? []))].sort();
      const needDates = areas.map((area, at) => ({ area, on: `2026-05-${String(20 - at)}` }));
      const answer = await plan({ objective: { kind: "fewest-then-cheapest" }, needDates });
      for (const { areas: mine, neededBy } of answer.parts) {
        const days = mine.map(({ area }) => needDates.find((one) => one.area === area)?.on ?? "");
        expect(mine.map((one) => one.neededBy)).toEqual(days);
        expect(neededBy).toBe(days.sort()[0]);
      }
      expect((await plan({})).parts.every(({ neededBy }) => neededBy === null)).toBe(true);
    });

    it("plans for the marks or areas that are meant only", async () => {
      const answer = await plan({ marks: ["LKF-015", "LKF-021"] });
      expect(answer.assignments.flatMap(({ marks }) => marks).sort()).toEqual(["LKF-015", "LKF-021"]);
      const area = job.joints[0]?.area ?? "";
      const inArea = await plan({ areas: [area] });
      const marks = new Set(job.joints.filter((one) => one.area === area).map(({ mark }) => mark));
      expect(inArea.assignments.flatMap((one) => one.marks).every((mark) => marks.has(mark))).toBe(true);
    });

    it("takes prices from a request or a stored list, with breaks, and takes no unpriced part as free", async () => {
      const cheapest = await plan({ marks: ["LKF-015"] });
      const { partNumber, joints } = firstPart(cheapest);
      const lines = [
        {
          partNumber,
          unit: "per-100",
          breaks: [
            { from: 1, amount: "400.00" },
            { from: joints + 1, amount: "10.00" },
          ],
        },
      ];
      const question = { marks: ["LKF-015"], packs: [{ partNumber, packQuantity: 1 }] };
      const asked = await plan({ ...question, prices: { from: "request", currency: "EUR", lines } });
      // hand: one part more than is needed reaches the break: (joints + 1) x 0.10 EUR
      expect(asked.parts).toHaveLength(1);
      expect(asked.parts[0]?.bought).toBe(joints + 1);
      expect(Number(asked.cost?.total.amount)).toBeCloseTo((joints + 1) / 10, 10);
      expect(asked.cost?.total.currency).toBe("EUR");
      expect(asked.notCosted.every(({ because }) => because.includes("has no price"))).toBe(true);
      const list = {
        name: "spring",
        supplier: "Oakridge Supply",
        currency: "EUR",
        validFrom: "2026-01-01",
        validTo: "2026-06-30",
        lines,
      };
      const { id } = (await app.inject({ method: "POST", url: "/v1/price-lists", payload: list })).json<{
        id: string;
      }>();
      const stored = await plan({ ...question, prices: { from: "price-list", id, on: "2026-06-30" } });
      expect(stored.parts).toEqual(asked.parts);
      const [status, problem] = await refusal("stock-plan", {
        ...leastCost,
        prices: { from: "price-list", id, on: "2026-07-01" },
      });
      expect([status, problem.code, problem.errors[0]?.pointer]).toEqual([422, "INCONSISTENT_REQUEST", "/prices/on"]);
      const others = await plan({ marks: ["LKF-057"], prices: { from: "request", currency: "EUR", lines } });
      expect(others.notPlanned.barred.map(({ marks }) => marks)).toEqual([["LKF-057"]]);
    });

    it("takes hours from a stored table, and leaves out what has none where labor is costed", async () => {
      const table = {
        name: "own times",
        difficulties: { high: "1.5" },
        lines: [{ family: "compression-lug-two-hole", hours: "40", unit: "per-100" }],
      };
      const { id } = (await app.inject({ method: "POST", url: "/v1/labour-tables", payload: table })).json<{
        id: string;
      }>();
      const rate = { labourRate: { amount: "80.00", currency: "USD" }, marks: ["LKF-015"] };
      const answer = await plan({ ...rate, hours: { from: "labour-table", id, difficulty: "high" } });
      // hand: 9 joints x 0.4 h x 1.5 = 5.4 h; x 80 = 432
      expect(answer.joints).toBe(9);
      expect(answer.hours).toBe("5.4");
      expect(answer.cost?.labour).toEqual({ amount: "432", currency: "USD" });
      const none = await plan({ ...rate, marks: ["LKF-057"], hours: { from: "labour-table", id } });
      expect(none.notPlanned.barred[0]?.because).toContain("has no labor hours");
      const [status, problem] = await refusal("stock-plan", {
        ...leastCost,
        hours: { from: "labour-table", id, difficulty: "odd" },
      });
      expect([status, problem.errors[0]?.pointer]).toEqual([422, "/hours/difficulty"]);
    });

    it.each([
      ["an unknown field", { colour: "red" }, 400, ""],
      ["an objective that is none", { objective: { kind: "best" } }, 400, "/objective/kind"],
      ["a carrying cost that is missing", { objective: { kind: "least-cost-with-carrying-cost" } }, 400, "/objective"],
      [
        "a carrying cost where none is asked",
        { objective: { kind: "least-cost", carryingCost: {} } },
        400,
        "/objective",
      ],
      ["a number as an amount", { labourRate: { amount: 80, currency: "USD" } }, 400, "/labourRate/amount"],
      ["a negative stock", { onHand: [{ partNumber: "LF-ROD-0101", parts: -1 }] }, 400, "/onHand/0/parts"],
      ["too long a time", { secondsPerSolve: 61 }, 400, "/secondsPerSolve"],
      ["an unknown part", { mustNot: ["NONE"] }, 422, "/mustNot/0"],
      ["a part that both must and must not", { must: ["LF-ROD-0101"], mustNot: ["LF-ROD-0101"] }, 422, "/must/0"],
      ["an unknown mark", { marks: ["NONE"] }, 422, "/marks/0"],
      ["an unknown area", { areas: ["nowhere"] }, 422, "/areas/0"],
      [
        "packs stated twice",
        { packs: [1, 2].map((packQuantity) => ({ partNumber: "LF-ROD-0101", packQuantity })) },
        422,
        "/packs/1",
      ],
      [
        "a limit with no objective of cost",
        { objective: { kind: "fewest-part-numbers" }, mostPartNumbers: 3 },
        422,
        "/mostPartNumbers",
      ],
    ])("refuses %s", async (_, change, status, pointer) => {
      const [answered, problem] = await refusal("stock-plan", { ...leastCost, ...change });
      expect(answered).toBe(status);
      if (pointer !== "") expect(problem.errors.map((one) => one.pointer).join(" ")).toContain(pointer);
    });

    it("refuses two currencies, an unstored job, list or table", async () => {
      const [mixed, problem] = await refusal("stock-plan", {
        ...leastCost,
        labourRate: { amount: "80.00", currency: "EUR" },
      });
      expect([mixed, problem.code]).toEqual([422, "INCONSISTENT_REQUEST"]);
      for (const [change, code] of [
        [{ prices: { from: "price-list", id: "none", on: "2026-01-01" } }, "PRICE_LIST_NOT_FOUND"],
        [{ hours: { from: "labour-table", id: "none" } }, "LABOUR_TABLE_NOT_FOUND"],
      ] as const)
        expect((await refusal("stock-plan", { ...leastCost, ...change }))[1].code).toBe(code);
      for (const what of ["stock-plan", "stock-plan/trade-off", "truck", "parts-list", "economics"]) {
        const question =
          what === "truck"
            ? { atHand: [] }
            : what === "stock-plan" || what === "economics"
              ? { objective: { kind: "least-cost" } }
              : {};
        const [status, { code }] = await refusal(what, question, `/v1/jobs/none/${what}`);
        expect([status, code]).toEqual([404, "JOB_NOT_FOUND"]);
      }
    });
  });

  describe("as a trade-off", () => {
    interface TradeOff {
      readonly joints: number;
      readonly curve: {
        readonly complete: boolean;
        readonly points: readonly { readonly partNumbers: number; readonly cost: Money }[];
      };
    }

    it("has at its ends the fewest part numbers and the cheapest plan, and in between the cheapest of so many", async () => {
      const { curve, joints } = await ask<TradeOff>("stock-plan/trade-off", {});
      const [fewest, cheapest] = [await plan({ objective: { kind: "fewest-then-cheapest" } }), await plan({})];
      expect(joints).toBe(cheapest.joints);
      expect(curve.points[0]).toMatchObject({ partNumbers: fewest.partNumbers, cost: fewest.cost?.total });
      expect(curve.points.at(-1)).toMatchObject({ partNumbers: cheapest.partNumbers, cost: cheapest.cost?.total });
      for (const { partNumbers, cost } of curve.points)
        expect((await plan({ mostPartNumbers: partNumbers })).cost?.total).toEqual(cost);
    });

    it("is the same by GET, and comes as a picture to whoever asks for one", async () => {
      const url = `${address}/stock-plan/trade-off`;
      expect((await app.inject(url)).json()).toEqual(await ask("stock-plan/trade-off", {}));
      const picture = await app.inject({ url, headers: { accept: "image/svg+xml" } });
      expect(picture.headers["content-type"]).toBe("image/svg+xml; charset=utf-8");
      expect(picture.headers["vary"]).toBe("accept");
      expect(picture.body).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
      const posted = await app.inject({ method: "POST", url, payload: {}, headers: { accept: "image/svg+xml" } });
      expect(posted.body).toBe(picture.body);
      expect((await app.inject({ url, headers: { accept: "application/pdf" } })).statusCode).toBe(406);
    });
  });

  describe("with what is on the truck", () => {
    interface Truck {
      readonly joints: number;
      readonly jointsMade: number;
      readonly substitutions: number;
      readonly made: readonly {
        readonly marks: readonly { readonly mark: string; readonly joints: number }[];
        readonly partNumber: string;
        readonly joints: number;
        readonly verdict: string;
        readonly insteadOf: string | null;
      }[];
      readonly missing: readonly {
        readonly marks: readonly { readonly mark: string; readonly joints: number }[];
        readonly joints: number;
      }[];
      readonly notInCatalogue: readonly { readonly partNumber: string; readonly parts: number }[];
      readonly left: readonly { readonly partNumber: string; readonly parts: number }[];
    }
    const truck = (atHand: object[], more: object = {}): Promise<Truck> => ask<Truck>("truck", { atHand, ...more });

    it("makes what the parts reach for, mark by mark, and says what is missing", async () => {
      // hand: LKF-015 takes 9 of LF-PRESS-0208; 4 are there
      const answer = await truck([{ partNumber: "LF-PRESS-0208", parts: 4 }], { marks: ["LKF-015"] });
      expect(answer).toMatchObject({ joints: 9, jointsMade: 4, substitutions: 0, left: [] });
      expect(answer.made).toMatchObject([
        { marks: [{ mark: "LKF-015", joints: 4 }], partNumber: "LF-PRESS-0208", insteadOf: null },
      ]);
      expect(answer.missing).toMatchObject([
        { marks: [{ mark: "LKF-015", joints: 5 }], joints: 5, wanted: [{ partNumber: "LF-PRESS-0208", parts: 5 }] },
      ]);
    });

    it("proposes another part only where the rules accept it, and calls it a substitution", async () => {
      const { assignments } = await plan({ marks: ["LKF-015"], mustNot: ["LF-PRESS-0208"] });
      const [other] = assignments;
      const partNumber = other?.partNumber ?? "";
      const answer = await truck([{ partNumber, parts: 100 }], { marks: ["LKF-015"] });
      expect(answer).toMatchObject({ jointsMade: 9, substitutions: 9, left: [{ partNumber, parts: 91 }] });
      expect(answer.made[0]?.insteadOf).toBe("LF-PRESS-0208");
      expectEveryAccept(
        job,
        catalogue,
        answer.made.map(({ marks, ...one }) => ({ ...one, marks: marks.map(({ mark }) => mark) })),
      );
    });

    it("makes nothing with parts it does not know, and names them", async () => {
      const answer = await truck([{ partNumber: "OLD-STOCK-7", parts: 50 }]);
      expect(answer).toMatchObject({ jointsMade: 0, notInCatalogue: [{ partNumber: "OLD-STOCK-7", parts: 50 }] });
      expect(answer.missing.reduce((sum, { joints }) => sum + joints, 0)).toBe(answer.joints);
    });

    it("passes the full check with everything it makes of a full truck", async () => {
      const answer = await truck(catalogue.map(({ partNumber }) => ({ partNumber, parts: 20 })));
      expect(answer.jointsMade).toBe(answer.joints);
      expectEveryAccept(
        job,
        catalogue,
        answer.made.map(({ marks, ...one }) => ({ ...one, marks: marks.map(({ mark }) => mark) })),
      );
    });

    it("refuses a part counted twice", async () => {
      const part = { partNumber: "LF-ROD-0101", parts: 1 };
      const [status, problem] = await refusal("truck", { atHand: [part, part] });
      expect([status, problem.errors[0]?.pointer]).toEqual([422, "/atHand/1"]);
    });
  });

  describe("as a parts list", () => {
    interface List {
      readonly list: {
        readonly lines: readonly {
          readonly id: string;
          readonly partNumber: string;
          readonly kind: string;
          readonly net: string;
          readonly spares: { readonly byPolicy: number; readonly byOwner: number };
          readonly toBuy: number;
          readonly packs: number;
          readonly cost: Money | null;
          readonly marks: readonly string[];
        }[];
        readonly tools: readonly { readonly id: string; readonly terms: string; readonly cost: Money | null }[];
        readonly hours: string | null;
        readonly cost: { readonly total: Money | null; readonly known: Money | null };
        readonly gaps: readonly {
          readonly about: string;
          readonly sentence: string;
          readonly marks: readonly string[];
        }[];
        readonly sparePolicy: { readonly id: string; readonly basis: string };
      };
      readonly notListed: {
        readonly noPartNeeded: readonly { readonly mark: string; readonly because: string }[];
        readonly notAccepted: readonly { readonly mark: string; readonly because: string }[];
        readonly withoutPart: readonly {
          readonly marks: readonly { readonly mark: string }[];
          readonly because: string;
        }[];
      };
    }
    const list = (question: object): Promise<List> => ask<List>("parts-list", question);

    it("lists the accepted connectors of the schedule, with spares marked as judgement", async () => {
      const { list: answer, notListed } = await list({ marks: ["LKF-015"] });
      // hand: 9 pressed lugs; 5 % is 0.45, up to 1, raised to 2; 11 to buy
      const pack = catalogue.find(({ partNumber }) => partNumber === "LF-PRESS-0208")?.packQuantity ?? 0;
      expect(answer.lines.find(({ partNumber }) => partNumber === "LF-PRESS-0208")).toMatchObject({
        id: "part/LF-PRESS-0208",
        kind: "compression",
        net: "9",
        spares: { byPolicy: 2, byOwner: 0 },
        toBuy: 11,
        packs: Math.ceil(11 / pack),
        marks: ["LKF-015"],
      });
      expect(answer.sparePolicy).toEqual({ id: "judgement", basis: "judgement" });
      expect(notListed.notAccepted).toEqual([]);
      // Pressed on a two-hole tongue: press and die, and bolts for two holes, are not chosen yet.
      expect(answer.tools.map(({ terms }) => terms)).toEqual(["not-stated", "not-stated"]);
      expect(answer.gaps.map(({ about }) => about).sort()).toEqual(["no-part-chosen", "tool-terms", "tool-terms"]);
      expect(answer.cost.total).toBeNull();
    });

    it("has every joint of the job either on a line or named with the reason", async () => {
      for (const connectors of [{ from: "schedule" }, { from: "plan", objective: { kind: "fewest-then-cheapest" } }]) {
        const { list: answer, notListed } = await list({ connectors });
        const listed = new Set(answer.lines.filter(({ id }) => !id.includes("COVER")).flatMap(({ marks }) => marks));
        expectEveryJoint(
          job,
          [{ marks: [...listed] }],
          [...notListed.noPartNeeded, ...notListed.notAccepted, ...notListed.withoutPart],
        );
      }
    });

    it("buys accessories, hires tools, and then knows the total", async () => {
      const hired = { kind: "hired", perDay: { amount: "35.00", currency: "USD" }, days: 4 };
      const lug = catalogue.find(({ partNumber }) => partNumber === "LF-PRESS-0208");
      const { tool = "", die = "" } = lug?.tooling ?? {};
      const { list: answer } = await list({
        marks: ["LKF-015"],
        spares: { from: "none" },
        labourRate: { amount: "80.00", currency: "USD" },
        accessories: [
          {
            need: "washer-set",
            perJoint: "1",
            part: {
              partNumber: "HW-1",
              description: "bolt, nut and spring washer, 1/2 in",
              packQuantity: 10,
              price: { unit: "each", currency: "USD", breaks: [{ from: 1, amount: "1.50" }] },
            },
          },
        ],
        tools: [
          { tool, terms: hired },
          { tool, die, terms: { kind: "owned" } },
        ],
      });
      // hand: 9 joints x 2 holes = 18 sets, 2 packs of 10 at 1.50 = 30.00; press 4 x 35.00 = 140.00, die owned
      expect(answer.lines.find(({ partNumber }) => partNumber === "HW-1")).toMatchObject({
        net: "18",
        packs: 2,
        cost: { amount: "30.00" },
      });
      expect(answer.tools.map(({ cost }) => cost?.amount)).toEqual(["0.00", "140.00"]);
      const hours = 9 * (lug?.labourHours ?? Number.NaN);
      expect(Number(answer.hours)).toBeCloseTo(hours, 10);
      const pack = lug?.packQuantity ?? 0;
      const parts = Math.ceil(9 / pack) * pack * Number(lug?.price?.amount);
      expect(Number(answer.cost.total?.amount)).toBeCloseTo(parts + 30 + 140 + Math.round(hours * 8000) / 100, 2);
      expect(answer.gaps).toEqual([]);
    });

    it("buys nothing for a connector that is used again", async () => {
      const joints = job.joints
        .filter(({ mark }) => mark === "LKF-035" || mark === "LKF-036")
        .map((joint) => ({ ...joint, connector: { partNumber: "LF-SPLICE-0105" }, partState: "reused", rework: true }));
      const posted = await app.inject({ method: "POST", url: "/v1/jobs", payload: { ...job, joints } });
      const { schedule } = posted.json<{ schedule: { rows: { mark: string; verdict: string }[] } }>();
      const accepted = schedule.rows.filter(({ verdict }) => verdict.startsWith("accept")).map(({ mark }) => mark);
      expect(accepted).toEqual(["LKF-036"]);
      const at = String(posted.headers["location"]);
      const { list: answer, notListed } = await ask<List>("parts-list", {}, at);
      expect(answer.lines).toEqual([]);
      expect(notListed.noPartNeeded).toMatchObject([
        { mark: "LKF-036", because: "LF-SPLICE-0105 is used again: nothing is bought" },
      ]);
      expect((await ask<{ asNamed: unknown }>("stock-plan", leastCost, at)).asNamed).toBeNull();
    });

    it("asks for a cover where the joint has to be covered", async () => {
      const { list: answer } = await list({ marks: ["LKF-057", "LKF-058"] });
      const covers = answer.gaps.filter(({ sentence }) => sentence.includes("cover") || sentence.includes("COVER"));
      expect(covers.flatMap(({ marks }) => marks).length).toBeGreaterThan(0);
    });

    it("comes as CSV that reads back, a formula made text", async () => {
      const question = {
        marks: ["LKF-015"],
        accessories: [
          {
            need: "washer-set",
            perJoint: "0.5",
            part: { partNumber: "HW-1", description: '=1+1, "x"', packQuantity: 1 },
          },
        ],
      };
      const answer = await app.inject({
        method: "POST",
        url: `${address}/parts-list`,
        payload: question,
        headers: { accept: "text/csv" },
      });
      expect(answer.headers["content-type"]).toBe("text/csv; charset=utf-8");
      expect(answer.body.endsWith("\r\n")).toBe(true);
      const rows: Record<string, string>[] = parse(answer.body, { columns: true, record_delimiter: "\r\n" });
      const { list: json } = await list(question);
      expect(rows.map(({ line }) => line)).toEqual([...json.lines, ...json.tools].map(({ id }) => id));
      const hardware = rows.find(({ partNumber }) => partNumber === "HW-1");
      // hand: 9 joints x 2 holes x 0.5 = 9; no price, so no cost, and not zero
      expect(hardware).toMatchObject({ description: '\'=1+1, "x"', net: "9", cost: "", priceEach: "" });
      const refused = await app.inject({
        method: "POST",
        url: `${address}/parts-list`,
        payload: {},
        headers: { accept: "application/pdf" },
      });
      expect(refused.statusCode).toBe(406);
    });

    it.each([
      [
        "an accessory with a connector's number",
        {
          accessories: [
            { need: "cover", perJoint: "1", part: { partNumber: "LF-ROD-0101", description: "x", packQuantity: 1 } },
          ],
        },
        "/accessories/0/part/partNumber",
      ],
      [
        "two accessories for one need",
        {
          accessories: ["A", "B"].map((partNumber) => ({
            need: "cover",
            perJoint: "1",
            part: { partNumber, description: "x", packQuantity: 1 },
          })),
        },
        "/accessories/1",
      ],
      [
        "a circuit with an unknown mark",
        { circuits: [{ circuit: "C", from: ["NONE"], to: ["LKF-015"] }] },
        "/circuits/0/from/0",
      ],
      ["a spare of a part not described", { ownerSpares: [{ partNumber: "NONE", parts: 1, because: "x" }] }, ""],
    ])("refuses %s", async (_, question, pointer) => {
      const [status, problem] = await refusal("parts-list", question);
      expect([status, problem.code, problem.errors[0]?.pointer]).toEqual([422, "INCONSISTENT_REQUEST", pointer]);
    });
  });

  describe("by economics", () => {
    interface Way {
      readonly joints: number;
      readonly partNumbers: number;
      readonly hours: string | null;
      readonly parts: Money | null;
      readonly labour: Money | null;
      readonly total: Money | null;
      readonly once: readonly { readonly what: string; readonly cost: Money | null }[];
      readonly unknown: readonly string[];
      readonly lines: readonly {
        readonly partNumber: string;
        readonly joints: number;
        readonly hoursEach: string | null;
      }[];
    }
    interface Answer {
      readonly comparison: {
        readonly joints: number;
        readonly first: Way;
        readonly second: Way;
        readonly breakEven: {
          readonly kind: string;
          readonly joints?: { readonly numerator: string; readonly denominator: string };
        };
      } | null;
      readonly notCompared: readonly { readonly mark: string; readonly because: string }[];
      readonly withoutPart: readonly {
        readonly marks: readonly { readonly mark: string }[];
        readonly because: string;
      }[];
    }
    const economics = (question: object): Promise<Answer> =>
      ask<Answer>("economics", { objective: { kind: "least-cost" }, ...question });

    it("compares the joints that can be made both ways, and names the others", async () => {
      const answer = await economics({});
      const { comparison } = answer;
      if (comparison === null) throw new Error("nothing was compared");
      expect(comparison.first.joints).toBe(comparison.second.joints);
      const compared = new Map(job.joints.map(({ mark }) => [mark, true]));
      for (const { mark, because } of answer.notCompared) {
        expect(because).not.toBe("");
        compared.delete(mark);
      }
      for (const { marks } of answer.withoutPart) for (const { mark } of marks) compared.delete(mark);
      const joints = job.joints.reduce((sum, { mark, quantity }) => sum + (compared.has(mark) ? quantity : 0), 0);
      expect(joints).toBe(comparison.joints);
      for (const { partNumber } of comparison.second.lines)
        expect(catalogue.find((item) => item.partNumber === partNumber)?.construction).toBe("compression");
      // No terms of tools were stated, so nothing that rests on them is known.
      expect(comparison.second.total).toBeNull();
      expect(comparison.breakEven.kind).toBe("not-known");
      expect(comparison.first.unknown).toContain("no labor rate");
    });

    it("comes to hand-worked sums once everything is stated", async () => {
      const accessories = [
        {
          need: "washer-set",
          perJoint: "1",
          part: {
            partNumber: "HW-1",
            description: "bolt, nut and spring washer, 1/2 in",
            packQuantity: 1,
            price: { unit: "each", currency: "USD", breaks: [{ from: 1, amount: "1.50" }] },
          },
        },
      ];
      const first = await economics({ marks: ["LKF-015"], accessories });
      const press = first.comparison?.second.lines[0]?.partNumber ?? "";
      const { tool = "", die = "" } = catalogue.find(({ partNumber }) => partNumber === press)?.tooling ?? {};
      const { comparison } = await economics({
        marks: ["LKF-015"],
        accessories,
        labourRate: { amount: "80.00", currency: "USD" },
        tools: [
          { tool: "torque tool", terms: { kind: "owned" } },
          { tool, terms: { kind: "hired", perDay: { amount: "35.00", currency: "USD" }, days: 4 } },
          { tool, die, terms: { kind: "bought", price: { amount: "60.00", currency: "USD" } } },
        ],
        setUp: [{ way: "compression", what: "trial crimps", cost: { amount: "20.00", currency: "USD" } }],
      });
      if (comparison === null) throw new Error("nothing was compared");
      const worked = ({ lines: [line] }: Way, once: number): number => {
        const item = catalogue.find(({ partNumber }) => partNumber === line?.partNumber);
        const holes = item?.mounting.kind === "pad" ? item.mounting.pattern.holes : 0;
        // hand: 9 x (part + holes x 1.50 + hours x 80) + what is paid once
        return 9 * (Number(item?.price?.amount) + holes * 1.5 + (item?.labourHours ?? 0) * 80) + once;
      };
      // hand: 4 x 35 + 60 + 20 = 220
      expect(Number(comparison.first.total?.amount)).toBeCloseTo(worked(comparison.first, 0), 8);
      expect(Number(comparison.second.total?.amount)).toBeCloseTo(worked(comparison.second, 220), 8);
      expect(comparison.first.unknown).toEqual([]);
      const saved = (worked(comparison.first, 0) - worked(comparison.second, 0)) / 9;
      if (saved > 0) {
        const { numerator = "", denominator = "" } = comparison.breakEven.joints ?? {};
        expect(Number(numerator) / Number(denominator)).toBeCloseTo(220 / saved, 6);
      } else expect(comparison.breakEven.kind).toBe("always");
    });
  });

  describe("and beside it", () => {
    it("lands neutrals and grounds on bars", async () => {
      const permit = { metals: ["copper"], strandings: ["solid"], sameSize: true, sameMetal: true };
      const bar = {
        id: "bar",
        takes: ["neutral", "equipment-ground"],
        openings: [
          {
            id: "small",
            count: 5,
            permits: [
              { conductors: 1, from: "14 AWG", to: "4 AWG", ...permit },
              { conductors: 2, from: "14 AWG", to: "12 AWG", ...permit },
            ],
          },
        ],
      };
      const wire = { size: "12 AWG", metal: "copper", stranding: "solid" };
      const question = (neutrals: number) => ({
        bars: [bar],
        conductors: [
          { id: "n", role: "neutral", count: neutrals, ...wire },
          { id: "g", role: "equipment-ground", count: 4, ...wire },
        ],
      });
      const land = async (neutrals: number): Promise<object> =>
        (await app.inject({ method: "POST", url: "/v1/bars", payload: question(neutrals) })).json<object>();
      // hand: 3 neutrals take 3 openings, 4 grounds 2 by twos: none spare; a fourth neutral finds none
      expect(await land(3)).toMatchObject({ openingsUsed: 5, spareOpenings: 0, notLanded: [], proven: true });
      expect(await land(4)).toMatchObject({ notLanded: [{ count: 1 }] });
      const [status, problem] = await refusal("", { ...question(3), bars: [bar, bar] }, "/v1/bars");
      expect([status, problem.code]).toEqual([422, "INCONSISTENT_REQUEST"]);
    });

    it("expands feeders to their joints", async () => {
      const feeder = {
        mark: "F-1",
        from: "MSB",
        to: "MCC-1",
        sets: 3,
        phases: 3,
        neutrals: 0,
        grounds: "in-every-raceway",
      };
      const answer = await app.inject({ method: "POST", url: "/v1/feeders", payload: { feeders: [feeder] } });
      // hand: 3 x 3 x 2 = 18 phase ends, 3 x 2 = 6 ground ends
      expect(answer.json()).toMatchObject({ feeders: [{ mark: "F-1", totals: { phase: 18, equipmentGround: 6 } }] });
      const [status, problem] = await refusal("", { feeders: [feeder, feeder] }, "/v1/feeders");
      expect([status, problem.errors[0]?.pointer]).toEqual([422, "/feeders/1/mark"]);
    });
  });
});
