import { describe, expect, it } from "vitest";
import { conductorAreaMm2 } from "./conductor-area.js";

describe("area of a conductor size", () => {
  it.each([
    ["14 AWG", 2.08], // published: ASTM B258, 4110 circular mils
    ["4/0 AWG", 107.2], // published: ASTM B258, 211 600 circular mils
    ["250 kcmil", 126.7], // hand: 250 x 0.506707
    ["35 mm2", 35],
  ])("%s is near %d mm2", (size, area) => {
    expect(conductorAreaMm2(size)).toBeCloseTo(area, 1);
  });

  it("orders sizes by area, not by number", () => {
    const sizes = ["18 AWG", "1 mm2", "1 AWG", "1/0 AWG", "4/0 AWG", "120 mm2", "250 kcmil"];
    const areas = sizes.map((size) => conductorAreaMm2(size) ?? Number.NaN);
    expect(areas).toEqual([...areas].sort((a, b) => a - b));
  });

  it.each(["5 AWG", "250", "250 MCM", "14AWG", "0 AWG", "35 mm²", ""])("is unknown for %j", (size) => {
    expect(conductorAreaMm2(size)).toBeUndefined();
  });
});
