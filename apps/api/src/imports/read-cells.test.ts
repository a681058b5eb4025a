import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { markedText, plainText } from "./formula-text.js";
import { numberText, readQuantity } from "./read-quantity.js";
import { readSize } from "./read-size.js";
import { suggestMapping } from "./suggest-mapping.js";

describe("a conductor size in a cell", () => {
  // hand: trade usage. MCM is the older name of kcmil; # is the gauge number; 0000 is 4/0.
  it.each([
    ["250 kcmil", undefined, "250 kcmil", false],
    ["250 MCM", undefined, "250 kcmil", true],
    ["250MCM", undefined, "250 kcmil", true],
    ["#4", undefined, "4 AWG", true],
    ["#4/0 AWG", undefined, "4/0 AWG", true],
    ["4/0awg", undefined, "4/0 AWG", true],
    ["AWG 12", undefined, "12 AWG", true],
    ["0000 AWG", undefined, "4/0 AWG", true],
    ["0 AWG", undefined, "1/0 AWG", true],
    ["35 mm²", undefined, "35 mm2", true],
    ["35.0mm2", undefined, "35 mm2", true],
    ["4/0", "AWG", "4/0 AWG", true],
    ["4", "AWG or kcmil", "4 AWG", true],
    ["250", "AWG or kcmil", "250 kcmil", true],
    ["250", "kcmil", "250 kcmil", true],
    ["35", "mm2", "35 mm2", true],
  ] as const)("%s in a column of %s is %s", (written, unit, value, shown) => {
    const reading = readSize(written, unit);
    expect(reading).toMatchObject({ value });
    expect("readAs" in reading).toBe(shown);
  });

  it.each([
    ["4/0", undefined, "has no unit"],
    ["250", undefined, "has no unit"],
    ["4", undefined, "has no unit"],
    ["249", "AWG or kcmil", "neither an AWG figure"],
    ["250", "AWG", "not a size that is made"],
    ["7 AWG", undefined, "not a size that is made"],
    ["4/O AWG", undefined, "not a conductor size"],
    ["200 kcmil", undefined, "not a size that is made"],
    ["14-4 AWG", undefined, "not a conductor size"],
    ["large", undefined, "not a conductor size"],
  ] as const)("%s in a column of %s is refused", (written, unit, because) => {
    expect(readSize(written, unit)).toMatchObject({ problem: expect.stringContaining(because) as string });
  });
});

describe("a quantity in a cell", () => {
  it.each([
    ["torque", "275 lbf-in", undefined, 275, "lbf-in", false],
    ["torque", "275 in-lb", undefined, 275, "lbf-in", true],
    ["torque", "275 In. Lbs.", undefined, 275, "lbf-in", true],
    ["torque", "23 ft·lb", undefined, 23, "lbf-ft", true],
    ["torque", "31 N·m", undefined, 31, "N-m", true],
    ["torque", "31Nm", undefined, 31, "N-m", true],
    ["torque", "275", "lbf-in", 275, "lbf-in", true],
    ["torque", "31 N-m", "lbf-in", 31, "N-m", false],
    ["length", '1/2"', undefined, 0.5, "in", true],
    ["length", "1-1/4 in", undefined, 1.25, "in", true],
    ["length", "1 1/4 in", undefined, 1.25, "in", true],
    ["length", "12 mm", undefined, 12, "mm", false],
    ["temperature", "75 °C", undefined, 75, "Cel", true],
    ["temperature", "167 F", undefined, 167, "degF", false],
    ["voltage", "0.6 kV", undefined, 600, "V", true],
    ["voltage", "600 V", undefined, 600, "V", false],
  ] as const)("%s %s in a column of %s is %d %s", (kind, written, stated, value, unit, shown) => {
    const reading = readQuantity(kind, written, stated, false);
    expect(reading).toMatchObject({ value: { value, unit } });
    expect("readAs" in reading).toBe(shown);
  });

  it.each([
    ["torque", "275", "has no unit"],
    ["torque", "250-275 lbf-in", "is not a unit"],
    ["torque", "275 kg", "is not a unit"],
    ["torque", "0 lbf-in", "not above 0"],
    ["torque", "-5 lbf-in", "not one quantity"],
    ["torque", "1e3 lbf-in", "is not a unit"],
    ["length", "12,5 mm", "decimals or thousands"],
    ["length", "1/3 in", "not a fraction in halves"],
    ["temperature", "75", "has no unit"],
    ["temperature", "75 K", "is not a unit"],
  ] as const)("%s %s is refused", (kind, written, because) => {
    expect(readQuantity(kind, written, undefined, false)).toMatchObject({
      problem: expect.stringContaining(because) as string,
    });
  });

  it("takes a decimal comma where the mapping says so", () => {
    expect(readQuantity("length", "12,5 mm", undefined, true)).toMatchObject({ value: { value: 12.5, unit: "mm" } });
  });

  it("writes every number so that it reads back the same", () => {
    fc.assert(
      fc.property(fc.double({ min: 5e-300, max: 1_000_000, noNaN: true }), (value) => {
        expect(Number(numberText(value))).toBe(value);
        expect(readQuantity("length", `${numberText(value)} mm`, undefined, false)).toEqual({
          value: { value, unit: "mm" },
        });
      }),
    );
  });
});

describe("text that looks like a formula", () => {
  it("is marked on the way out and plain again on the way in, whatever the text", () => {
    const text = fc.string({ unit: fc.constantFrom("'", "=", "+", "-", "@", "a", "\t", "1"), maxLength: 8 });
    fc.assert(
      fc.property(text, (plain) => {
        const marked = markedText(plain);
        expect(plainText(marked)).toBe(plain);
        expect(marked).not.toMatch(/^[=+\-@\t\r]/);
      }),
    );
  });
});

it("suggests what headers mean, with the unit they name, and leaves the rest", () => {
  expect(suggestMapping(["Item #", "Max wire (AWG/kcmil)", "Torque [in-lb]", "Price", "Part no.", ""])).toMatchObject({
    columns: [
      { header: "Item #", field: "partNumber" },
      { header: "Max wire (AWG/kcmil)", field: "to", unit: "AWG or kcmil" },
      { header: "Torque [in-lb]", field: "torque", unit: "lbf-in" },
    ],
    unknown: ["Price", "Part no."],
  });
});
