import type { ConnectorFamily } from "@landfast/rules";
import { describe, expect, it } from "vitest";
import { decimalText } from "../money/decimal.js";
import { hoursFor } from "./labour-factors.js";
import { hoursByTable, type LabourLine } from "./labour-table.js";

const TABLE: readonly LabourLine[] = [
  { family: "set-screw-lug-one-hole", from: "14 AWG", to: "8 AWG", hours: "10", unit: "per-100" },
  { family: "set-screw-lug-one-hole", from: "6 AWG", to: "1 AWG", hours: "0.25", unit: "each" },
  { family: "set-screw-lug-one-hole", from: "6 AWG", to: "1 AWG", condition: "difficult", hours: "0.4", unit: "each" },
  { family: "compression-lug-one-hole", hours: "185", unit: "per-1000" },
  { partNumber: "L-9", hours: "0.33", unit: "each" },
];

function hoursAt(
  family: ConnectorFamily,
  size: string,
  more: { condition?: string; partNumber?: string } = {},
): number | null {
  return hoursByTable(TABLE, { partNumber: "L-1", family, size, ...more }).hours;
}

describe("hours by a labor table", () => {
  it("are those of the band, both ends included, for one joint", () => {
    // hand: 10 / 100 = 0.1; 185 / 1000 = 0.185
    expect(hoursAt("set-screw-lug-one-hole", "14 AWG")).toBe(0.1);
    expect(hoursAt("set-screw-lug-one-hole", "8 AWG")).toBe(0.1);
    expect(hoursAt("set-screw-lug-one-hole", "6 AWG")).toBe(0.25);
    expect(hoursAt("set-screw-lug-one-hole", "1 AWG")).toBe(0.25);
    expect(hoursAt("compression-lug-one-hole", "1000 kcmil")).toBe(0.185);
  });

  it("are not known outside every band, and the neighboring band is not taken", () => {
    expect(hoursByTable(TABLE, { partNumber: "L-1", family: "set-screw-lug-one-hole", size: "1/0 AWG" })).toEqual({
      hours: null,
      because: "the labor table has no line for L-1, set-screw-lug-one-hole, 1/0 AWG",
    });
    expect(hoursAt("set-screw-lug-one-hole", "16 AWG")).toBeNull();
    expect(hoursAt("split-bolt", "4 AWG")).toBeNull();
  });

  it("are not those of an AWG band for a metric conductor", () => {
    // 25 mm2 lies between 4 AWG and 3 AWG by area
    expect(hoursAt("set-screw-lug-one-hole", "25 mm2")).toBeNull();
  });

  it("are those of the condition named, and of no other", () => {
    expect(hoursAt("set-screw-lug-one-hole", "4 AWG", { condition: "difficult" })).toBe(0.4);
    expect(hoursAt("set-screw-lug-one-hole", "12 AWG", { condition: "difficult" })).toBeNull();
  });

  it("are those of the part number before those of its family", () => {
    expect(hoursAt("set-screw-lug-one-hole", "4 AWG", { partNumber: "L-9" })).toBe(0.33);
    expect(hoursAt("set-screw-lug-one-hole", "4 AWG", { partNumber: "L-9", condition: "difficult" })).toBe(0.4);
  });

  it("are not known where two lines fit", () => {
    const twice = [
      ...TABLE,
      { family: "compression-lug-one-hole", from: "4/0 AWG", hours: "0.7", unit: "each" } as const,
    ];
    const at = (size: string) => hoursByTable(twice, { partNumber: "C", family: "compression-lug-one-hole", size });
    expect(at("4/0 AWG").because).toContain("more than one line");
    expect(at("3/0 AWG").hours).toBe(0.185);
  });

  it("are not known, and not zero, where the table is empty", () => {
    expect(hoursByTable([], { partNumber: "B", family: "split-bolt", size: "4 AWG" })).toEqual({
      hours: null,
      because: "the labor table is empty",
    });
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
