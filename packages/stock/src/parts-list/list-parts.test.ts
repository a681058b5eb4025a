import { describe, expect, it } from "vitest";
import { UnlikeCurrencies } from "../money/money.js";
import { UnusableProblem } from "../problem/check-problem.js";
import { seededRandom } from "../samples/seeded-random.js";
import { listParts } from "./list-parts.js";
import type { PartLine, PartsList } from "./parts-list.js";
import type { JointUse, ListedPart, PartsListQuestion } from "./parts-list-question.js";
import { JUDGEMENT_SPARES, NO_SPARES } from "./spare-policy.js";

const usd = (amount: string) => ({ amount, currency: "USD" });

function part(partNumber: string, change: Partial<ListedPart> = {}): ListedPart {
  return {
    partNumber,
    description: `part ${partNumber}`,
    kind: "compression",
    packQuantity: 1,
    price: { unit: "each", currency: "USD", breaks: [{ from: 1, amount: "1.00" }] },
    ...change,
  };
}

function use(mark: string, partNumber: string, joints: number, change: Partial<JointUse> = {}): JointUse {
  return { mark, partNumber, joints, partsPerJoint: 1, labourHours: 0.5, ...change };
}

function ask(change: Partial<PartsListQuestion>): PartsList {
  return listParts({ uses: [], parts: [], spares: NO_SPARES, rounding: "half-up", ...change });
}

function lineOf(list: PartsList, partNumber: string): PartLine {
  const line = list.lines.find((one) => one.partNumber === partNumber);
  if (line === undefined) throw new Error(`no line for ${partNumber}`);
  return line;
}

function gapsAbout(list: PartsList, about: string): string[] {
  return list.gaps.filter((gap) => gap.about === about).map(({ sentence }) => sentence);
}

describe("a line of the parts list", () => {
  it("goes from net over spares to packs, each step to be seen", () => {
    // hand: net 84; 5 % is 4.2, up to 5; 89 in packs of 25 are 4 packs, 100 parts, 11 over; 100 at 12.34 a hundred
    const list = ask({
      uses: [use("A", "L", 60), use("B", "L", 24)],
      parts: [
        part("L", {
          packQuantity: 25,
          price: { unit: "per-100", currency: "USD", breaks: [{ from: 1, amount: "12.34" }] },
        }),
      ],
      spares: JUDGEMENT_SPARES,
    });
    expect(lineOf(list, "L")).toEqual({
      id: "part/L",
      partNumber: "L",
      description: "part L",
      kind: "compression",
      net: "84",
      netParts: 84,
      spares: { byPolicy: 5, byOwner: 0, rule: "5 %, at least 2" },
      fromStock: 0,
      toBuy: 89,
      packs: 4,
      packQuantity: 25,
      packRounding: 11,
      breakOverBuy: 0,
      bought: 100,
      each: usd("0.1234"),
      breakFrom: 1,
      cost: usd("12.34"),
      marks: ["A", "B"],
      neededBy: null,
    });
    expect(list.sparePolicy).toEqual({ id: "judgement", basis: "judgement" });
  });

  it("has no pack rounding when the packs come out even, one part over with one pack more", () => {
    const asked = (joints: number): PartLine =>
      lineOf(ask({ uses: [use("A", "L", joints)], parts: [part("L", { packQuantity: 10 })] }), "L");
    // hand: 19 -> 2 packs, 1 over; 20 -> 2 packs, 0 over; 21 -> 3 packs, 9 over
    expect([19, 20, 21].map((joints) => [asked(joints).packs, asked(joints).packRounding])).toEqual([
      [2, 1],
      [2, 0],
      [3, 9],
    ]);
  });

  it("tells parts bought for a price break from parts bought for whole packs", () => {
    // hand: 85 in packs of 10 are 9 packs, 90.00; 10 packs reach 100 at 0.80, 80.00
    const price = {
      unit: "each",
      currency: "USD",
      breaks: [
        { from: 1, amount: "1.00" },
        { from: 100, amount: "0.80" },
      ],
    } as const;
    const list = ask({ uses: [use("A", "L", 85)], parts: [part("L", { packQuantity: 10, price })] });
    expect(lineOf(list, "L")).toMatchObject({
      packs: 10,
      packRounding: 5,
      breakOverBuy: 10,
      bought: 100,
      breakFrom: 100,
      cost: usd("80.00"),
    });
  });

  it("uses what is on hand first", () => {
    const onHand = (count: number): PartLine =>
      lineOf(ask({ uses: [use("A", "L", 10)], parts: [part("L", { onHand: count })] }), "L");
    expect(onHand(9)).toMatchObject({ fromStock: 9, toBuy: 1, cost: usd("1.00") });
    expect(onHand(10)).toMatchObject({ fromStock: 10, toBuy: 0, packs: 0, each: null, cost: usd("0.00") });
    expect(onHand(11)).toMatchObject({ fromStock: 10, toBuy: 0 });
  });

  it("has no cost where no price is known, and the total has none either; what is known is summed", () => {
    const { price: _price, ...unpriced } = part("M");
    const list = ask({ uses: [use("A", "L", 3), use("B", "M", 2)], parts: [part("L"), unpriced] });
    expect(lineOf(list, "M").cost).toBeNull();
    expect(list.cost).toMatchObject({ parts: null, total: null, known: usd("3.00") });
    expect(gapsAbout(list, "no-price")).toEqual(["M has no price"]);
  });

  it("adds the owner's spares to the policy's", () => {
    const list = ask({
      uses: [use("A", "L", 10)],
      parts: [part("L"), part("X")],
      spares: JUDGEMENT_SPARES,
      ownerSpares: [
        { partNumber: "L", parts: 4, because: "specification 26 05 19" },
        { partNumber: "X", parts: 1, because: "specification 26 05 19" },
      ],
    });
    // hand: 10 + 2 (least for compression) + 4 = 16; X is not used: 0 + 0 + 1
    expect(lineOf(list, "L")).toMatchObject({ spares: { byPolicy: 2, byOwner: 4 }, toBuy: 16 });
    expect(lineOf(list, "X")).toMatchObject({ netParts: 0, spares: { byPolicy: 0, byOwner: 1 }, toBuy: 1 });
  });

  it("asks for the lead time where the policy looks at it", () => {
    const rules = {
      ...JUDGEMENT_SPARES.rules,
      reducer: { percent: "0", atLeast: 0, longLead: { overDays: 21, atLeast: 1 } },
    };
    const spares = { id: "ours", basis: "stated", rules } as const;
    const asked = (days: Partial<ListedPart>): PartsList =>
      ask({ uses: [use("A", "R", 3)], parts: [part("R", { kind: "reducer", ...days })], spares });
    expect(gapsAbout(asked({}), "no-lead-time")).toEqual(["the spare policy asks for the lead time of R"]);
    expect(lineOf(asked({ leadTimeDays: 22 }), "R").spares.byPolicy).toBe(1);
    expect(lineOf(asked({ leadTimeDays: 21 }), "R").spares.byPolicy).toBe(0);
  });

  it("takes fractions of a need together before it rounds up", () => {
    // hand: 12 x 0.02 + 30 x 0.02 = 0.84 tube, so 1; 51 joints take 1.02, so 2
    const tubes = (joints: number): PartLine =>
      lineOf(
        ask({
          uses: [
            use("A", "L", 12, { needs: [{ kind: "compound", partNumber: "TUBE", perJoint: "0.02" }] }),
            use("B", "L", joints, { needs: [{ kind: "compound", partNumber: "TUBE", perJoint: "0.02" }] }),
          ],
          parts: [part("L"), part("TUBE", { kind: "accessory" })],
        }),
        "TUBE",
      );
    expect(tubes(30)).toMatchObject({ net: "0.84", netParts: 1 });
    expect(tubes(38)).toMatchObject({ net: "1", netParts: 1 });
    expect(tubes(39)).toMatchObject({ net: "1.02", netParts: 2 });
  });
});

describe("what estimators miss", () => {
  it("is named where no part is chosen for it", () => {
    const list = ask({
      uses: [
        use("A", "L", 3, { needs: [{ kind: "compound", partNumber: null, perJoint: "1" }] }),
        use("B", "L", 3, { needs: [{ kind: "washer-set", partNumber: null, perJoint: "2" }] }),
      ],
      parts: [part("L")],
    });
    expect(list.gaps.filter(({ about }) => about === "no-part-chosen")).toEqual([
      { about: "no-part-chosen", sentence: "compound needed, and no part is chosen", marks: ["A"] },
      { about: "no-part-chosen", sentence: "washer set needed, and no part is chosen", marks: ["B"] },
    ]);
    expect(list.notListed.length).toBeGreaterThan(0);
  });

  it("holds plugs for openings that stay empty", () => {
    const needs = [{ kind: "plug", partNumber: "P", perJoint: "2" }] as const;
    const without = ask({ uses: [use("A", "L", 3, { unusedOpenings: 2 })], parts: [part("L")] });
    const withPlugs = ask({ uses: [use("A", "L", 3, { unusedOpenings: 2, needs })], parts: [part("L"), part("P")] });
    // hand: 3 joints x 2 openings
    expect(gapsAbout(without, "no-plugs")).toEqual(["6 openings stay empty, and no plugs are listed for them"]);
    expect(gapsAbout(withPlugs, "no-plugs")).toEqual([]);
    expect(lineOf(withPlugs, "P").netParts).toBe(6);
  });

  it("holds the reducer at the other end", () => {
    const reducer = part("R", { kind: "reducer" });
    const end = (mark: string, partNumber: string, at: "from" | "to"): JointUse =>
      use(mark, partNumber, 3, { circuitEnd: { circuit: "C-1", end: at } });
    const parts = [part("L"), reducer];
    const one = ask({ uses: [end("A", "R", "from"), end("B", "L", "to")], parts });
    const both = ask({ uses: [end("A", "R", "from"), end("B", "R", "to")], parts });
    const none = ask({ uses: [end("A", "L", "from"), end("B", "L", "to")], parts });
    expect(gapsAbout(one, "reducer-at-one-end")).toEqual([
      "circuit C-1 has a reducer at its supply end only; see whether the other end needs one",
    ]);
    expect(gapsAbout(both, "reducer-at-one-end")).toEqual([]);
    expect(gapsAbout(none, "reducer-at-one-end")).toEqual([]);
  });

  it("holds each tool and each die once, whoever uses it", () => {
    const list = ask({
      uses: [
        use("A", "L", 3, { tools: [{ tool: "press", die: "D-1" }] }),
        use("B", "L", 3, { tools: [{ tool: "press", die: "D-2" }] }),
      ],
      parts: [part("L")],
      tools: [
        { tool: "press", terms: { kind: "hired", perDay: usd("42.50"), days: 4 } },
        { tool: "press", die: "D-1", terms: { kind: "owned" } },
      ],
    });
    // hand: 4 x 42.50 = 170.00; the terms of D-2 are not stated, so tools and total are not known
    expect(list.tools.map(({ id, terms, cost }) => [id, terms, cost?.amount ?? null])).toEqual([
      ["die/press/D-1", "owned", "0.00"],
      ["die/press/D-2", "not-stated", null],
      ["tool/press", "hired", "170.00"],
    ]);
    expect(list.cost).toMatchObject({ tools: null, total: null });
    expect(gapsAbout(list, "tool-terms")).toHaveLength(1);
  });
});

describe("hours and cost", () => {
  it("are summed, the rate applied to the sum", () => {
    // hand: 3 x 0.5 + 4 x 0.25 x 1.2 = 1.5 + 1.2 = 2.7 h; x 80 = 216.00; parts 7 x 1.00
    const list = ask({
      uses: [
        use("A", "L", 3, { labourSource: "catalogue" }),
        use("B", "L", 4, { labourHours: 0.25, difficulty: "high", labourSource: "labor table" }),
      ],
      parts: [part("L")],
      labour: { rate: usd("80"), difficulty: { high: "1.2" } },
    });
    expect(list.hours).toBe("2.7");
    expect(list.cost).toMatchObject({ parts: usd("7.00"), labour: usd("216.00"), total: usd("223.00") });
    expect(list.hoursBySource).toEqual([
      { source: "catalogue", joints: 3, hours: "1.5" },
      { source: "labor table", joints: 4, hours: "1.2" },
    ]);
  });

  it("are not known where one joint's hours are not, and never zero", () => {
    const { labourHours: _hours, ...unknown } = use("B", "L", 4);
    const list = ask({ uses: [use("A", "L", 3), unknown], parts: [part("L")], labour: { rate: usd("80") } });
    expect(list.hours).toBeNull();
    expect(list.cost).toMatchObject({ parts: usd("7.00"), labour: null, total: null, known: usd("7.00") });
    expect(gapsAbout(list, "no-hours")).toEqual(["B: no labor hours are given for it"]);
    expect(list.hoursBySource).toEqual([
      { source: "not known", joints: 4, hours: null },
      { source: "stated", joints: 3, hours: "1.5" },
    ]);
  });

  it("leave labor out of the total where no rate is given", () => {
    const list = ask({ uses: [use("A", "L", 3)], parts: [part("L")] });
    expect(list).toMatchObject({ hours: "1.5", cost: { labour: null, total: usd("3.00") } });
  });

  it("round each line as is asked for, and sum the rounded lines", () => {
    const price = { unit: "per-1000", currency: "USD", breaks: [{ from: 1, amount: "5.00" }] } as const;
    const uses = [use("A", "L", 1), use("B", "M", 3)];
    const parts = [part("L", { price }), part("M", { price })];
    // hand: 0.005 and 0.015: half-up 0.01 + 0.02 = 0.03; half-even 0.00 + 0.02 = 0.02
    expect(ask({ uses, parts, rounding: "half-up" }).cost.parts).toEqual(usd("0.03"));
    expect(ask({ uses, parts, rounding: "half-even" }).cost.parts).toEqual(usd("0.02"));
  });
});

describe("kits", () => {
  const uses = [
    use("A", "L", 3, { area: "hall", panel: "P-1", neededBy: "2026-05-01" }),
    use("B", "L", 4, { area: "hall", panel: "P-2", neededBy: "2026-04-01" }),
    use("C", "M", 5, { tools: [{ tool: "press", die: "D-1" }] }),
  ];
  const parts = [part("L"), part("M")];

  it("hold what each area is handed, the earliest day first asked for, and the tools", () => {
    expect(ask({ uses, parts }).kitsByArea).toEqual([
      {
        heading: "hall",
        lines: [{ id: "part/L", partNumber: "L", net: "7", marks: ["A", "B"] }],
        tools: [],
        neededBy: "2026-04-01",
      },
      {
        heading: "no area stated",
        lines: [{ id: "part/M", partNumber: "M", net: "5", marks: ["C"] }],
        tools: ["die/press/D-1"],
        neededBy: null,
      },
    ]);
  });

  it("add up to the net of the list, by area and by panel", () => {
    const list = ask({ uses, parts, spares: JUDGEMENT_SPARES });
    for (const kits of [list.kitsByArea, list.kitsByPanel])
      for (const { partNumber, net } of list.lines) {
        const inKits = kits.flatMap(({ lines }) => lines.filter((line) => line.partNumber === partNumber));
        expect(inKits.reduce((sum, line) => sum + Number(line.net), 0)).toBe(Number(net));
      }
  });
});

describe("the list as a whole", () => {
  it("is the same whatever the order of joints and parts, line ids and all", () => {
    const random = seededRandom(7);
    const uses = Array.from({ length: 30 }, (_, at) =>
      use(`M-${String(at)}`, random.pick(["L", "M", "N"]), 1 + random.below(9), {
        area: random.pick(["east", "west"]),
        ...(at % 7 === 0 ? { difficulty: "unheard-of" } : {}),
        needs: [{ kind: random.pick(["cover", "compound"]), partNumber: random.pick([null, "N"]), perJoint: "0.1" }],
        tools: [{ tool: "press", die: random.pick(["D-1", "D-2"]) }],
      }),
    );
    const parts = [part("L"), part("M"), part("N")];
    const first = JSON.stringify(ask({ uses, parts, spares: JUDGEMENT_SPARES }));
    for (let time = 0; time < 100; time += 1)
      expect(
        JSON.stringify(ask({ uses: random.shuffled(uses), parts: random.shuffled(parts), spares: JUDGEMENT_SPARES })),
      ).toBe(first);
  });

  it("survives JSON unchanged", () => {
    const list = ask({ uses: [use("A", "L", 3)], parts: [part("L")] });
    expect(JSON.parse(JSON.stringify(list))).toEqual(list);
  });

  it("keeps a line's id when another joint is added", () => {
    const before = ask({ uses: [use("B", "M", 3)], parts: [part("L"), part("M")] });
    const after = ask({ uses: [use("A", "L", 9), use("B", "M", 3)], parts: [part("L"), part("M")] });
    expect(lineOf(after, "M").id).toBe(lineOf(before, "M").id);
  });

  it("is refused for what cannot be, with every fault", () => {
    const faults = (change: Partial<PartsListQuestion>): readonly string[] => {
      try {
        ask(change);
      } catch (error) {
        if (error instanceof UnusableProblem) return error.problems;
        throw error;
      }
      return [];
    };
    expect(faults({ uses: [use("A", "L", 0), use("B", "X", 1)], parts: [part("L")] })).toEqual([
      "A: joints and parts are whole numbers from 1 up, unused openings from 0 up",
      "B: part X is not described",
    ]);
    expect(faults({ uses: [use("A", "L", 1, { labourHours: Number.NaN })], parts: [part("L")] })).toHaveLength(1);
    expect(faults({ parts: [part("L"), part("L")] })).toEqual(["a part is described more than once"]);
    expect(faults({ parts: [part("L", { packQuantity: 0 })] })).toHaveLength(1);
    expect(
      faults({
        tools: [
          { tool: "press", terms: { kind: "owned" } },
          { tool: "press", terms: { kind: "bought", price: usd("-1") } },
        ],
      }),
    ).toHaveLength(2);
    expect(faults({ labour: { difficulty: { high: "1,2" } } })).toHaveLength(1);
  });

  it("is refused in two currencies", () => {
    const euro = part("M", { price: { unit: "each", currency: "EUR", breaks: [{ from: 1, amount: "1" }] } });
    expect(() => ask({ uses: [use("A", "L", 1), use("B", "M", 1)], parts: [part("L"), euro] })).toThrow(
      UnlikeCurrencies,
    );
  });
});
