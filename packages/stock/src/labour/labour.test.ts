import { describe, expect, it } from "vitest";
import { decimalText } from "../money/decimal.js";
import { UnusableProblem } from "../problem/check-problem.js";
import { hoursFor } from "./labour-factors.js";
import { hoursByTable, type LabourLine, refuseFaultyTable } from "./labour-table.js";

const TABLE: readonly LabourLine[] = [
  { family: "set-screw-lug-one-hole", from: "14 AWG", to: "8 AWG", hours: 0.1 },
  { family: "set-screw-lug-one-hole", from: "6 AWG", to: "1 AWG", hours: 0.25 },
  { family: "set-screw-lug-one-hole", from: "6 AWG", to: "1 AWG", condition: "difficult", hours: 0.4 },
  { family: "compression-lug-one-hole", hours: 0.5 },
];

function hoursAt(family: LabourLine["family"], size: string, condition?: string): number | null {
  return hoursByTable(TABLE, family, size, condition).hours;
}

describe("hours by a labor table", () => {
  it("are those of the band, both ends included", () => {
    expect(hoursAt("set-screw-lug-one-hole", "14 AWG")).toBe(0.1);
    expect(hoursAt("set-screw-lug-one-hole", "8 AWG")).toBe(0.1);
    expect(hoursAt("set-screw-lug-one-hole", "6 AWG")).toBe(0.25);
    expect(hoursAt("set-screw-lug-one-hole", "1 AWG")).toBe(0.25);
    expect(hoursAt("compression-lug-one-hole", "1000 kcmil")).toBe(0.5);
  });

  it("are not known outside every band, and the neighboring band is not taken", () => {
    const found = hoursByTable(TABLE, "set-screw-lug-one-hole", "1/0 AWG");
    expect(found).toEqual({
      hours: null,
      because: "the labor table has no line for set-screw-lug-one-hole, 1/0 AWG",
    });
    expect(hoursAt("split-bolt", "4 AWG")).toBeNull();
  });

  it("are those of the condition named, and of no other", () => {
    expect(hoursAt("set-screw-lug-one-hole", "4 AWG", "difficult")).toBe(0.4);
    expect(hoursAt("set-screw-lug-one-hole", "12 AWG", "difficult")).toBeNull();
  });

  it("are not known where two lines fit", () => {
    const twice = [...TABLE, { family: "compression-lug-one-hole", from: "4/0 AWG", hours: 0.7 } as const];
    expect(hoursByTable(twice, "compression-lug-one-hole", "4/0 AWG").because).toContain("more than one line");
    expect(hoursByTable(twice, "compression-lug-one-hole", "3/0 AWG").hours).toBe(0.5);
  });

  it("are not known, and not zero, where the table is empty", () => {
    expect(hoursByTable([], "split-bolt", "4 AWG")).toEqual({ hours: null, because: "the labor table is empty" });
  });

  it("are refused below zero and in a band upside down", () => {
    expect(() => {
      refuseFaultyTable(TABLE);
    }).not.toThrow();
    expect(() => {
      refuseFaultyTable([{ family: "split-bolt", hours: -0.1 }]);
    }).toThrow(UnusableProblem);
    expect(() => {
      refuseFaultyTable([{ family: "split-bolt", hours: Number.NaN }]);
    }).toThrow(UnusableProblem);
    expect(() => {
      refuseFaultyTable([{ family: "split-bolt", from: "4 AWG", to: "6 AWG", hours: 1 }]);
    }).toThrow(UnusableProblem);
  });
});

describe("hours for several joints", () => {
  it("are joints x hours x factor", () => {
    // hand: 12 x 0.4 = 4.8; x 1.25 = 6
    const plain = hoursFor(12, 0.4, undefined, {});
    const raised = hoursFor(12, 0.4, "difficult", { difficult: "1.25" });
    expect(plain.hours === null ? null : decimalText(plain.hours)).toBe("4.8");
    expect(raised.hours === null ? null : decimalText(raised.hours)).toBe("6");
  });

  it("are not known without hours, or without the factor named", () => {
    expect(hoursFor(12, undefined, undefined, {})).toEqual({
      hours: null,
      because: "no labor hours are given for it",
    });
    expect(hoursFor(12, 0.4, "difficult", {}).hours).toBeNull();
    expect(hoursFor(12, 0.4, "toString", {}).hours).toBeNull();
  });
});
