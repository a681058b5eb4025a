import { describe, expect, test } from "vitest";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { type DcResistanceQuestion, dcResistance } from "./dc-resistance.js";

const BASIS = { ruleSet: "nfpa70", edition: "2023" } as const;

function ask(change: Partial<DcResistanceQuestion>) {
  const question: DcResistanceQuestion = {
    metal: "copper",
    stranding: "stranded",
    coating: "uncoated",
    size: "4 AWG",
    temperature: { value: 75, unit: "Cel" },
    ...change,
  };
  return dcResistance.answer(question, BASIS, nfpa70Edition2023);
}

function ohms(change: Partial<DcResistanceQuestion>): number {
  return Number(ask(change).results[0]?.value);
}

describe("dc resistance (NFPA 70-2023 Chapter 9 Table 8)", () => {
  // published: NBS Handbook 100, Copper Wire Tables, table 1, annealed copper at 20 C, ohms per 1000 ft (from memory).
  // Two printings rounded to three figures: within half a percent.
  test.each([
    ["18 AWG", 6.385],
    ["16 AWG", 4.016],
    ["14 AWG", 2.525],
    ["12 AWG", 1.588],
    ["10 AWG", 0.9989],
    ["8 AWG", 0.6282],
  ])("published: solid %s copper at 20 C has %d ohm per 1000 ft", (size, published) => {
    const found = ohms({ size, stranding: "solid", temperature: { value: 20, unit: "Cel" } });
    expect(Math.abs(found / published - 1)).toBeLessThan(0.005);
  });

  // published: ICEA S-95-658 (NEMA WC 70), dc resistance of class B conductors at 25 C, ohms per 1000 ft (from memory)
  test.each([
    ["copper", "1/0 AWG", 0.102],
    ["copper", "4/0 AWG", 0.0509],
    ["copper", "500 kcmil", 0.0216],
    ["aluminum", "4/0 AWG", 0.0836],
    ["aluminum", "500 kcmil", 0.0354],
  ] as const)("published: class B %s, %s, at 25 C has %d ohm per 1000 ft", (metal, size, published) => {
    const found = ohms({ metal, size, temperature: { value: 25, unit: "Cel" } });
    expect(Math.abs(found / published - 1)).toBeLessThan(0.005);
  });

  // hand: the printed cell itself, 0.308 x 250 / 1000 = 0.077
  test("at 75 C the printed cell is used as printed", () => {
    expect(ohms({})).toBe(0.308);
    expect(ohms({ length: { value: 250, unit: "ft" } })).toBe(0.077);
  });

  // hand: 0.308 x (1 + 0.00323 x (76 - 75)) = 0.30899484; at 74 C 0.308 x 0.99677 = 0.30700516
  test.each([
    [74, 0.30700516],
    [75, 0.308],
    [76, 0.30899484],
  ])("at %d C it is %d ohm per 1000 ft", (value, expected) => {
    expect(ohms({ temperature: { value, unit: "Cel" } })).toBe(expected);
  });

  // hand: 167 degF is 75 C; 100 m is 328.0839895 ft, x 0.308 / 1000 = 0.1010498688
  test("degrees Fahrenheit and meters are converted exactly", () => {
    expect(ohms({ temperature: { value: 167, unit: "degF" } })).toBe(0.308);
    expect(ohms({ length: { value: 100, unit: "m" } })).toBeCloseTo(0.1010498688, 9);
  });

  test("coating is asked for by name for copper and not for aluminum", () => {
    const question = { metal: "copper", stranding: "solid", size: "12 AWG" } as const;
    const temperature = { value: 75, unit: "Cel" } as const;
    expect(dcResistance.answer({ ...question, temperature }, BASIS, nfpa70Edition2023)).toMatchObject({
      outcome: "missing",
      missing: [{ path: "question/coating" }],
    });
    expect(
      dcResistance.answer({ ...question, metal: "aluminum", temperature }, BASIS, nfpa70Edition2023).results[0]?.value,
    ).toBe(3.18);
  });

  test.each([
    [{ metal: "copper-clad-aluminum" }, "NOT_COVERED"],
    [{ size: "35 mm2" }, "OUTSIDE_TABLE"],
    [{ size: "4 AWG", stranding: "solid" }, "OUTSIDE_TABLE"],
    [{ temperature: { value: -250, unit: "Cel" } }, "NOT_COVERED"],
  ] as const)("%j is refused with %s", (change, code) => {
    expect(ask(change)).toMatchObject({ outcome: "refused", refusal: { code }, results: [] });
  });

  test("a length or temperature that is none is not accepted", () => {
    expect(() => ask({ length: { value: 0, unit: "ft" } })).toThrow(RangeError);
    expect(() => ask({ temperature: { value: Number.NaN, unit: "Cel" } })).toThrow(RangeError);
    expect(() => ask({ size: "#4" })).toThrow(RangeError);
  });

  test("the answer cites the edition asked", () => {
    const found = dcResistance.answer(
      { metal: "aluminum", stranding: "stranded", size: "2 AWG", temperature: { value: 75, unit: "Cel" } },
      { ruleSet: "nfpa70", edition: "2017" },
      nfpa70Edition2017,
    );
    expect(found).toMatchObject({
      cite: { edition: "2017", locator: "Chapter 9 Table 8" },
      results: [{ value: 0.319 }],
    });
  });
});
