import { describe, expect, test } from "vitest";
import type { Edition } from "../../core/edition.js";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2020 } from "../../rulesets/nfpa70-2020/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { BOX_CONDUCTOR_MANNERS, type BoxFillQuestion, boxFill } from "./box-fill.js";

const NOTHING: BoxFillQuestion = {
  conductors: [],
  equipmentGrounds: [],
  internalClamps: false,
  supportFittings: 0,
  devices: [],
};

function ask(change: Partial<BoxFillQuestion>, edition: Edition = nfpa70Edition2023) {
  const basis = { ruleSet: edition.ruleSet, edition: edition.edition };
  return boxFill.answer({ ...NOTHING, ...change }, basis, edition);
}

function needed(change: Partial<BoxFillQuestion>, edition: Edition = nfpa70Edition2023) {
  const finding = ask(change, edition);
  if (finding.outcome !== "answered") throw new Error(finding.sentence);
  return finding.results.find(({ name }) => name === "volume needed")?.value;
}

/** One conductor that adds 2 in3 beside what is looked at. */
const ONE_14: BoxFillQuestion["conductors"] = [{ count: 1, size: "14 AWG", manner: "ends-or-spliced" }];

describe("box fill (NFPA 70-2023 314.16(B))", () => {
  // published: NFPA 70 Handbook, commentary to 314.16(B), device box with two 14-2 cables (from memory): four 14 AWG 8.00,
  // clamps 2.00, device 4.00, equipment grounds 2.00, together 16.00 in3
  test.each([nfpa70Edition2017, nfpa70Edition2020, nfpa70Edition2023])(
    "published: a device box needs 16 in3 ($edition)",
    (edition) => {
      const question: Partial<BoxFillQuestion> = {
        conductors: [{ count: 4, size: "14 AWG", manner: "ends-or-spliced" }],
        equipmentGrounds: [{ count: 2, size: "14 AWG" }],
        internalClamps: true,
        devices: [{ largestConductor: "14 AWG", gangs: 1 }],
      };
      expect(needed(question, edition)).toBe(16);
    },
  );

  // hand: the box of 16 in3 itself is enough
  test.each([
    [15.9, false],
    [16, true],
    [16.1, true],
  ])("a box of %d in3 for 16 in3: %s", (boxVolumeIn3, fits) => {
    const finding = ask({ boxVolumeIn3, conductors: [{ count: 8, size: "14 AWG", manner: "passes-through" }] });
    expect(finding.results[0]).toMatchObject({ name: "box is large enough", value: fits });
    expect(finding.results[1]?.value).toBe(16);
  });

  // hand: 12 AWG 2.25: once, once, twice, not at all
  test.each([
    ["ends-or-spliced", 2.25],
    ["passes-through", 2.25],
    ["unbroken-loop", 4.5],
    ["stays-inside", 0],
  ] as const)("a 12 AWG that %s takes %d in3", (manner, volume) => {
    expect(needed({ conductors: [{ count: 1, size: "12 AWG", manner }] })).toBe(volume);
  });

  test("every manner is one of those four", () => {
    const volumes = BOX_CONDUCTOR_MANNERS.map((manner) =>
      needed({ conductors: [{ count: 1, size: "12 AWG", manner }] }),
    );
    expect(volumes).toEqual([2.25, 2.25, 4.5, 0]);
  });
  // hand: 14 AWG 2.00, 12 AWG 2.25, 10 AWG 2.50: 3 x 2 + 2 x 2.25 + 2.5 = 13
  test("each kind of conductor counts by its own size", () => {
    const conductors: BoxFillQuestion["conductors"] = [
      { count: 3, size: "14 AWG", manner: "ends-or-spliced" },
      { count: 2, size: "12 AWG", manner: "passes-through" },
      { count: 1, size: "10 AWG", manner: "ends-or-spliced" },
    ];
    expect(needed({ conductors })).toBe(13);
  });

  // hand: grounds of 12 AWG, 2.25 each allowance. 2017: one for all. 2020 and 2023: 4 -> 1, 5 -> 1.25, 8 -> 2
  test.each([
    [nfpa70Edition2017, 4, 2.25],
    [nfpa70Edition2017, 8, 2.25],
    [nfpa70Edition2020, 3, 2.25],
    [nfpa70Edition2020, 4, 2.25],
    [nfpa70Edition2020, 5, 2.8125],
    [nfpa70Edition2023, 4, 2.25],
    [nfpa70Edition2023, 5, 2.8125],
    [nfpa70Edition2023, 8, 4.5],
  ])("$edition: %i equipment grounds take %d in3", (edition, count, volume) => {
    expect(needed({ conductors: ONE_14, equipmentGrounds: [{ count, size: "12 AWG" }] }, edition)).toBe(2 + volume);
  });

  // hand: the largest ground, 10 AWG 2.50, sets the allowance: 6 grounds: 1.5 x 2.5 = 3.75 (2023), 2.5 (2017)
  test.each([
    [nfpa70Edition2017, 2.5],
    [nfpa70Edition2023, 3.75],
  ])("$edition: grounds of several sizes go by the largest", (edition, volume) => {
    const equipmentGrounds = [
      { count: 4, size: "14 AWG" },
      { count: 2, size: "10 AWG" },
    ];
    expect(needed({ conductors: ONE_14, equipmentGrounds }, edition)).toBe(2 + volume);
  });

  // hand: 2017 counts the isolated set apart: 2.25 + 2.25; 2023 counts all five together: 1.25 x 2.25
  test.each([
    [nfpa70Edition2017, 4.5],
    [nfpa70Edition2023, 2.8125],
  ])("$edition: isolated equipment grounds", (edition, volume) => {
    const equipmentGrounds = [
      { count: 4, size: "12 AWG" },
      { count: 1, size: "12 AWG", isolated: true },
    ];
    expect(needed({ conductors: ONE_14, equipmentGrounds }, edition)).toBe(2 + volume);
  });

  // hand: clamps and each kind of fitting go by the largest conductor in the box, here the 10 AWG: 2.50 each
  test("clamps and support fittings go by the largest conductor in the box", () => {
    const conductors: BoxFillQuestion["conductors"] = [
      { count: 2, size: "14 AWG", manner: "ends-or-spliced" },
      { count: 1, size: "10 AWG", manner: "passes-through" },
    ];
    expect(needed({ conductors })).toBe(6.5);
    expect(needed({ conductors, internalClamps: true })).toBe(9);
    expect(needed({ conductors, internalClamps: true, supportFittings: 2 })).toBe(14);
  });

  // hand: a device goes by the largest conductor on it: 12 AWG 2 x 2.25, two gangs 4 x 2.25
  test.each([
    [1, 4.5],
    [2, 9],
  ])("a device of %d gangs takes %d in3", (gangs, volume) => {
    expect(needed({ conductors: ONE_14, devices: [{ largestConductor: "12 AWG", gangs }] })).toBe(2 + volume);
  });

  // hand: each device by its own largest conductor: 2 x 2.25 + 2 x 2 = 8.5, and each block in 2023: 2.25 + 2 = 4.25
  test("every device and every terminal block counts", () => {
    const devices = [
      { largestConductor: "12 AWG", gangs: 1 },
      { largestConductor: "14 AWG", gangs: 1 },
    ];
    expect(needed({ conductors: ONE_14, devices })).toBe(2 + 8.5);
    expect(needed({ conductors: ONE_14, terminalBlocks: devices })).toBe(2 + 4.25);
  });

  // hand: 2.25 for the block in 2023, nothing named before
  test.each([
    [nfpa70Edition2017, 0],
    [nfpa70Edition2020, 0],
    [nfpa70Edition2023, 2.25],
  ])("$edition: a terminal block takes %d in3", (edition, volume) => {
    const question = { conductors: ONE_14, terminalBlocks: [{ largestConductor: "12 AWG" }] };
    expect(needed(question, edition)).toBe(2 + volume);
    expect(ask(question, edition).advice).toHaveLength(volume === 0 ? 1 : 0);
  });
});

describe("what box fill cannot answer", () => {
  test.each([
    ["6 AWG", "answered", null],
    ["5 AWG", "refused", "OUTSIDE_TABLE"],
    ["4 AWG", "refused", "NOT_COVERED"],
    ["250 kcmil", "refused", "NOT_COVERED"],
    ["2.5 mm2", "refused", "OUTSIDE_TABLE"],
  ] as const)("%s: %s", (size, outcome, code) => {
    const finding = ask({ conductors: [{ count: 1, size, manner: "ends-or-spliced" }] });
    expect(finding.outcome).toBe(outcome);
    expect(finding.refusal?.code ?? null).toBe(code);
  });
  test("a device or block with a size outside the table is refused", () => {
    const refused = { outcome: "refused", refusal: { code: "OUTSIDE_TABLE" } };
    expect(ask({ conductors: ONE_14, devices: [{ largestConductor: "3 AWG", gangs: 1 }] })).toMatchObject(refused);
    expect(ask({ conductors: ONE_14, terminalBlocks: [{ largestConductor: "3 AWG" }] })).toMatchObject(refused);
  });
  test("clamps beside a ground outside the table are refused", () => {
    const question = { conductors: ONE_14, equipmentGrounds: [{ count: 1, size: "5 AWG" }], internalClamps: true };
    expect(ask(question)).toMatchObject({ outcome: "refused", refusal: { code: "OUTSIDE_TABLE" } });
  });
  test("the ground alone may be what makes the box one of dimensions", () => {
    expect(ask({ conductors: ONE_14, equipmentGrounds: [{ count: 1, size: "4 AWG" }] })).toMatchObject({
      outcome: "refused",
      refusal: { code: "NOT_COVERED" },
    });
  });
  test("what is not accepted is named", () => {
    expect(() => ask({})).toThrow(expect.objectContaining({ path: "question/conductors" }));
  });
  test("an empty box or a count that is none is not accepted", () => {
    expect(() => ask({})).toThrow(RangeError);
    expect(() => ask({ conductors: [{ count: 0, size: "14 AWG", manner: "passes-through" }] })).toThrow(RangeError);
    expect(() => ask({ conductors: ONE_14, supportFittings: -1 })).toThrow(RangeError);
    expect(() => ask({ conductors: ONE_14, boxVolumeIn3: Number.NaN })).toThrow(RangeError);
  });
  test("the edition's own table is read", () => {
    expect(ask({ conductors: ONE_14 }, nfpa70Edition2017).cite).toMatchObject({ edition: "2017" });
  });
});
