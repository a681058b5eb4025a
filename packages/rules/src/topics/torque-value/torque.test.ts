import { describe, expect, test } from "vitest";
import type { Drive } from "../../core/connector.js";
import type { Edition } from "../../core/edition.js";
import type { Length, Torque } from "../../core/quantity.js";
import { EDITIONS } from "../../rulesets/editions.js";
import { nfpa70Edition2017 } from "../../rulesets/nfpa70-2017/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import { type TorqueQuestion, torque } from "./torque.js";
import type { TorqueTool } from "./torque-tool.js";

const SOCKET: Drive = { kind: "socket", acrossFlats: "5/16" };
const HEX: Drive = { kind: "external-hex" };

function ask(change: Partial<TorqueQuestion>, edition: Edition = nfpa70Edition2023, installedOn?: string) {
  const question: TorqueQuestion = { drive: SOCKET, marked: "unmarked", ...change };
  const basis = { ruleSet: "nfpa70", edition: edition.edition, ...(installedOn && { installedOn }) } as const;
  return torque.answer(question, basis, edition);
}

function result(change: Partial<TorqueQuestion>, name = "torque", edition?: Edition) {
  const finding = ask(change, edition);
  const found = finding.results.find((one) => one.name === name);
  if (found === undefined) throw new Error(`${finding.outcome}: ${finding.sentence}`);
  return found.value;
}

const lbfIn = (value: number): Torque => ({ value, unit: "lbf-in" });
const lbfFt = (value: number): Torque => ({ value, unit: "lbf-ft" });
const inches = (value: number): Length => ({ value, unit: "in" });
const slot = (width: number, length: number, screwSize: "10-and-larger" | "under-10" = "10-and-larger"): Drive => ({
  kind: "slotted",
  screwSize,
  slotWidth: inches(width),
  slotLength: inches(length),
});

describe("published worked examples", () => {
  // published: an examination article on Informative Annex I (web): 2 AWG under a split bolt 275 lbf-in, under another
  // connector 150; a slot at least 1.2 mm wide and 5/32 in long 12; a 3/16 in recessed drive 120
  test.each(EDITIONS)("$edition: 275, 150, 12 and 120 lbf-in", (edition) => {
    const at = (drive: Drive, largestConductor: string) => result({ drive, largestConductor }, "torque", edition);
    expect(at({ kind: "split-bolt" }, "2 AWG")).toBe(275);
    expect(at(HEX, "2 AWG")).toBe(150);
    expect(
      at(
        {
          kind: "slotted",
          screwSize: "under-10",
          slotWidth: { value: 1.2, unit: "mm" },
          slotLength: { value: 4, unit: "mm" },
        },
        "12 AWG",
      ),
    ).toBe(12);
    expect(at({ kind: "socket", acrossFlats: "3/16" }, "2 AWG")).toBe(120);
  });
});

describe("where the torque comes from", () => {
  const LEVEL = "where the torque comes from";
  test("a mark comes before every table, in the unit it is printed in", () => {
    for (const on of ["equipment", "connector"] as const) {
      const marked = { torque: lbfFt(31), on };
      expect(result({ marked })).toBe(31);
      expect(result({ marked }, LEVEL)).toBe(`${on}-marking`);
      expect(ask({ marked }).results[0]?.unit).toBe("lbf-ft");
    }
    expect(result({}, LEVEL)).toBe("code-table");
    expect(ask({}).advice.join(" ")).toContain("default");
    expect(ask({ marked: { torque: lbfFt(31), on: "equipment" } }).advice.join(" ")).not.toContain("default");
  });
  // hand: 275 / 12 = 22.9167 lbf-ft; 275 x 0.1129848290276167 = 31.0708 N-m
  test("the other units are converted exactly", () => {
    expect(Number(result({}, "torque in lbf-ft"))).toBeCloseTo(22.9167, 4);
    expect(Number(result({}, "torque in N-m"))).toBeCloseTo(31.0708, 4);
    expect(ask({}).sentence).toContain("275 lbf-in (22.9 lbf-ft, 31.1 N-m)");
  });
  test("a recessed head needs no conductor, every other does", () => {
    expect(ask({}).outcome).toBe("answered");
    expect(ask({ drive: HEX }).missing[0]?.path).toBe("question/largestConductor");
    expect(ask({ drive: { kind: "split-bolt" } }).missing[0]?.path).toBe("question/largestConductor");
  });
  // published: Annex I Table I.1, 4 AWG: slot up to 0.047 in wide and 1/4 in long 35, else 45 lbf-in
  test.each([
    [0.047, 0.25, 35],
    [0.046, 0.24, 35],
    [0.048, 0.25, 45],
    [0.047, 0.26, 45],
  ])("a slot %d in wide and %d in long: %d lbf-in", (width, length, value) => {
    expect(result({ drive: slot(width, length), largestConductor: "4 AWG" })).toBe(value);
  });
  // published: Annex I Table I.1, 4 AWG: hexagon 110, slot 45 lbf-in
  test("a slotted hexagon has two torques", () => {
    const drive: Drive = { kind: "slotted-hex", slotWidth: inches(0.06), slotLength: inches(0.3) };
    const change = { drive, largestConductor: "4 AWG" };
    expect(ask(change).missing[0]?.path).toBe("question/drivenBy");
    expect(result({ ...change, drivenBy: "hexagon" })).toBe(110);
    expect(result({ ...change, drivenBy: "slot" })).toBe(45);
    // Marked, there is one, and how it is driven stays open
    const marked = { torque: lbfIn(60), on: "connector" } as const;
    expect(result({ drive, marked })).toBe(60);
    expect(ask({ drive, marked }).steps.map(({ label }) => label)).not.toContain("driven by");
  });
});

describe("tools", () => {
  const TOOL: TorqueTool = {
    from: lbfIn(40),
    to: lbfIn(275),
    bits: [{ kind: "recessed", acrossFlats: "5/16" }],
    calibration: { validUntil: "2026-05-31" },
  };
  const serves = (tool: Partial<TorqueTool>, change: Partial<TorqueQuestion> = {}) =>
    result({ tool: { ...TOOL, ...tool }, usedOn: "2026-05-31", ...change }, "the tool serves");
  test.each([
    [40, 275, true],
    [40, 276, true],
    [40, 274, false],
    [275, 300, true],
    [276, 300, false],
    [274, 300, true],
  ])("275 lbf-in with %d to %d lbf-in: %s", (from, to, holds) => {
    expect(serves({ from: lbfIn(from), to: lbfIn(to) })).toBe(holds);
  });
  // hand: 5 to 75 lbf-ft is 60 to 900 lbf-in; 22.9 lbf-ft is 274.8, just short
  test("ranges in other units are converted exactly", () => {
    expect(serves({ from: lbfFt(5), to: lbfFt(75) })).toBe(true);
    expect(serves({ from: lbfFt(5), to: lbfFt(22.9) })).toBe(false);
    expect(serves({ from: lbfFt(5), to: lbfFt(75) }, { marked: { torque: lbfFt(75), on: "equipment" } })).toBe(true);
  });
  test.each([
    ["2026-05-30", true],
    ["2026-05-31", true],
    ["2026-06-01", false],
    ["2027-01-01", false],
  ])("calibrated until 2026-05-31, used on %s: %s", (usedOn, holds) => {
    expect(serves({}, { usedOn })).toBe(holds);
  });
  test("no calibration serves nowhere; the day of installation is the day of use", () => {
    for (const edition of EDITIONS)
      expect(result({ tool: { ...TOOL, calibration: "none" } }, "the tool serves", edition)).toBe(false);
    const finding = ask({ tool: TOOL }, nfpa70Edition2023, "2026-06-01");
    expect(finding.results.find(({ name }) => name === "the tool serves")?.value).toBe(false);
    expect(() => serves({}, { usedOn: "31.5.2026" })).toThrow("question/usedOn");
    expect(() => serves({ calibration: { validUntil: "soon" } })).toThrow("validUntil");
  });
  test.each([
    [74, 75, true],
    [75, 75, true],
    [76, 75, false],
  ])("a range of %d to %d lbf-ft is one: %s", (from, to, isRange) => {
    const asked = () =>
      serves({ from: lbfFt(from), to: lbfFt(to) }, { marked: { torque: lbfFt(75), on: "equipment" } });
    if (isRange) expect(asked()).toBe(true);
    else expect(asked).toThrow(expect.objectContaining({ path: "question/tool/from" }));
  });
  test.each(["2026-5-31", "x2026-05-31", "2026-05-31T12:00", "", "9".repeat(60)])("%j is no day", (usedOn) => {
    expect(() => serves({}, { usedOn })).toThrow(
      `question/usedOn must be a day as "2026-05-31", not "${usedOn.slice(0, 40)}"`,
    );
  });
  test("why a tool does not serve is said, each reason once", () => {
    const calibration = "none" as const;
    expect(ask({ tool: { ...TOOL, from: lbfIn(276), to: lbfIn(300), bits: [], calibration } }).sentence).toContain(
      "The tool does not serve: the torque is below its range, no bit of it fits the head and its calibration does not hold.",
    );
    expect(ask({ tool: TOOL, usedOn: "2026-05-31" }).sentence).toContain("The tool serves.");
  });
  test("a slot's width is no width of a recessed bit", () => {
    expect(serves({ bits: [{ kind: "slotted" }, { kind: "external-hex" }] })).toBe(false);
  });
  test("a bit must fit the head", () => {
    expect(serves({ bits: [] })).toBe(false);
    expect(serves({ bits: [{ kind: "recessed", acrossFlats: "1/4" }, { kind: "external-hex" }] })).toBe(false);
    const drive: Drive = { kind: "slotted-hex", slotWidth: inches(0.06), slotLength: inches(0.3) };
    const change = { drive, largestConductor: "4 AWG" } as const;
    expect(serves({ bits: [{ kind: "slotted" }] }, { ...change, drivenBy: "slot" })).toBe(true);
    expect(serves({ bits: [{ kind: "slotted" }] }, { ...change, drivenBy: "hexagon" })).toBe(false);
    expect(serves({ bits: [{ kind: "external-hex" }] }, { ...change, drivenBy: "hexagon" })).toBe(true);
    const marked = { torque: lbfIn(100), on: "connector" } as const;
    expect(ask({ drive, marked, tool: TOOL }).missing[0]?.path).toBe("question/drivenBy");
  });
  test("calibration and day of use are asked for", () => {
    const { calibration: _, ...unknown } = TOOL;
    expect(ask({ tool: unknown }).missing[0]?.path).toBe("question/tool/calibration");
    expect(ask({ tool: TOOL }).missing[0]?.path).toBe("question/usedOn");
  });
});

describe("facts that are missing and questions that are refused", () => {
  test("whether a torque is marked is asked for", () => {
    const finding = torque.answer({ drive: SOCKET }, { ruleSet: "nfpa70", edition: "2023" }, nfpa70Edition2023);
    expect(finding).toMatchObject({ outcome: "missing", missing: [{ path: "question/marked" }] });
  });
  test.each([
    [{ kind: "breakaway" }, "NOT_COVERED"],
    [{ kind: "hand" }, "NOT_COVERED"],
    [{ kind: "none" }, "NOT_COVERED"],
    [{ kind: "clamp-bolt" }, "NOT_COVERED"],
    [{ kind: "socket", acrossFlats: "5/8" }, "OUTSIDE_TABLE"],
    [{ kind: "external-hex" }, "OUTSIDE_TABLE"],
  ] as const)("%j, nothing marked: %s", (drive, code) => {
    expect(ask({ drive, largestConductor: "35 mm2" }).refusal?.code).toBe(code);
  });
  test("why there is no torque is said of each head", () => {
    expect(ask({ drive: { kind: "hand" } }).sentence).toBe(
      "It is turned by hand as its package says: no torque applies.",
    );
    expect(ask({ drive: { kind: "none" } }).sentence).toBe("Nothing is tightened: it is pressed, welded or sprung.");
  });
  test("a clamp's bolt that is marked has its torque", () => {
    expect(result({ drive: { kind: "clamp-bolt" }, marked: { torque: lbfIn(150), on: "connector" } })).toBe(150);
  });
  test("a breakaway head hangs on the maker in the 2017 edition", () => {
    const drive: Drive = { kind: "breakaway" };
    expect(ask({ drive }, nfpa70Edition2017).sentence).toContain("if the maker");
    expect(ask({ drive }, nfpa70Edition2023).sentence).not.toContain("if the maker");
  });
  test("a torque that is no number is refused", () => {
    expect(() => ask({ marked: { torque: lbfIn(Number.NaN), on: "equipment" } })).toThrow("question/marked/torque");
    expect(() => ask({ marked: { torque: lbfIn(0), on: "equipment" } })).toThrow("question/marked/torque");
  });
});
