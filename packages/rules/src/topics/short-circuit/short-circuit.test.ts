import { describe, expect, test } from "vitest";
import { nfpa70Edition2020 } from "../../rulesets/nfpa70-2020/edition.js";
import { nfpa70Edition2023 } from "../../rulesets/nfpa70-2023/edition.js";
import type { CircularMilHeating } from "./circular-mil-heating.js";
import { K_FACTOR_INSULATIONS, type KFactorHeating } from "./k-factor-heating.js";
import { type ShortCircuitQuestion, shortCircuit } from "./short-circuit.js";

const BASIS = { ruleSet: "nfpa70", edition: "2023" } as const;
const XLPE: KFactorHeating = { kind: "k-factor", arrangement: "bundled", insulation: "XLPE or EPR 90 C" };

function heating(before: number, after: number): CircularMilHeating {
  return {
    kind: "circular-mil",
    initialTemperature: { value: before, unit: "Cel" },
    finalTemperature: { value: after, unit: "Cel" },
  };
}

function ask(question: ShortCircuitQuestion) {
  return shortCircuit.answer(question, BASIS, nfpa70Edition2023);
}

function main(question: ShortCircuitQuestion) {
  const finding = ask(question);
  if (finding.outcome !== "answered") throw new Error(finding.sentence);
  return finding.results[0]?.value;
}

describe("circular-mil formula (ICEA P-32-382, NFPA 70-2023 Table 240.92(B))", () => {
  // published: ICEA P-32-382 as reprinted, amperes x sqrt(seconds) per circular mil, 90 to 250 C (from memory)
  test.each([
    ["copper", 0.0719],
    ["aluminum", 0.047],
  ] as const)("published: %s from 90 to 250 C bears %d A per circular mil for 1 s", (metal, constant) => {
    const current = main({ ask: "largest-current", metal, heating: heating(90, 250), size: "500 kcmil", timeS: 1 });
    expect(Math.abs(Number(current) / 500000 / constant - 1)).toBeLessThan(0.001);
  });

  // published: IAEI, grounding manual (from memory): 1 A for 5 s for every 42.25 circular mils of copper, 75 to 150 C
  test("published: copper from 75 to 150 C needs 42.25 circular mils per ampere for 5 s", () => {
    const finding = ask({
      ask: "smallest-size",
      metal: "copper",
      heating: heating(75, 150),
      currentA: 1000,
      timeS: 5,
    });
    const area = Number(finding.results.find(({ name }) => name === "area needed")?.value);
    expect(area / 1000).toBeCloseTo(42.25, 1);
    // hand: 42.24 kcmil; 4 AWG has 41.74, 3 AWG 52.62
    expect(finding.results[0]?.value).toBe("3 AWG");
  });

  // hand: 105600 x sqrt(0.0297 x log10(384 / 309)) = 105600 x 0.0529422 = 5590.70 A
  test("1/0 AWG copper bears 5591 A for 1 s", () => {
    const question = { metal: "copper", heating: heating(75, 150), size: "1/0 AWG" } as const;
    expect(main({ ...question, ask: "largest-current", timeS: 1 })).toBeCloseTo(5590.7, 0);
    // hand: double the current, a quarter of the time
    expect(main({ ...question, ask: "longest-time", currentA: 2 * 5590.7 })).toBeCloseTo(0.25, 4);
  });

  // hand: at the very current a size bears, that size is still enough; a little above, the next one is
  test("the smallest size changes at the current that a size bears", () => {
    const bears = Number(
      main({ ask: "largest-current", metal: "copper", heating: heating(75, 150), size: "1/0 AWG", timeS: 1 }),
    );
    const size = (currentA: number) =>
      main({ ask: "smallest-size", metal: "copper", heating: heating(75, 150), currentA, timeS: 1 });
    expect([size(bears - 1), size(bears - 0.001), size(bears + 0.001), size(bears + 1)]).toEqual([
      "1/0 AWG",
      "1/0 AWG",
      "2/0 AWG",
      "2/0 AWG",
    ]);
  });

  // hand: named by its area, so 250000 circular mils; the table prints no area there
  test("a size named by its area needs no printed area", () => {
    const finding = ask({
      ask: "largest-current",
      metal: "aluminum",
      heating: heating(90, 250),
      size: "250 kcmil",
      timeS: 0.25,
    });
    expect(finding.steps.some((step) => step.label === "area of the size" && step.value === 250000)).toBe(true);
  });

  test.each([
    [249, "answered"],
    [250, "answered"],
    [251, "refused"],
  ])("a temperature after the fault of %d C: %s", (after, outcome) => {
    const question = { ask: "largest-current", metal: "copper", size: "2 AWG", timeS: 1 } as const;
    const finding = ask({ ...question, heating: heating(90, after) });
    expect(finding.outcome).toBe(outcome);
    expect(finding.refusal?.code).toBe(outcome === "refused" ? "NOT_COVERED" : undefined);
  });

  test("degrees Fahrenheit are converted", () => {
    const inC = main({ ask: "largest-current", metal: "copper", heating: heating(75, 150), size: "2 AWG", timeS: 1 });
    const inF = main({
      ask: "largest-current",
      metal: "copper",
      heating: {
        kind: "circular-mil",
        initialTemperature: { value: 167, unit: "degF" },
        finalTemperature: { value: 302, unit: "degF" },
      },
      size: "2 AWG",
      timeS: 1,
    });
    expect(inF).toBe(inC);
  });

  test.each([
    [{ kind: "circular-mil", finalTemperature: { value: 150, unit: "Cel" } }, "question/heating/initialTemperature"],
    [{ kind: "circular-mil", initialTemperature: { value: 75, unit: "Cel" } }, "question/heating/finalTemperature"],
  ] as const)("%j asks for %s", (incomplete, path) => {
    expect(ask({ ask: "smallest-size", metal: "copper", heating: incomplete, currentA: 1, timeS: 1 })).toMatchObject({
      outcome: "missing",
      missing: [{ path }],
    });
  });

  test.each([
    [{ ask: "smallest-size", timeS: 1 }, "question/currentA"],
    [{ ask: "smallest-size", currentA: 1 }, "question/timeS"],
    [{ ask: "longest-time", currentA: 1 }, "question/size"],
    [{ ask: "longest-time", size: "2 AWG" }, "question/currentA"],
    [{ ask: "largest-current", timeS: 1 }, "question/size"],
    [{ ask: "largest-current", size: "2 AWG" }, "question/timeS"],
  ] as const)("%j asks for %s", (part, path) => {
    expect(ask({ metal: "copper", heating: heating(75, 150), ...part })).toMatchObject({
      outcome: "missing",
      missing: [{ path }],
    });
  });

  test.each([
    [{ heating: heating(150, 150) }, "NO_SOLUTION"],
    [{ heating: heating(-240, 150) }, "NOT_COVERED"],
    [{ heating: heating(-234, 150) }, "NOT_COVERED"],
    [{ metal: "copper-clad-aluminum" }, "NOT_COVERED"],
    [{ size: "50 mm2" }, "NOT_COVERED"],
    [{ size: "20 AWG" }, "OUTSIDE_TABLE"],
    [{ size: "2500 kcmil" }, "OUTSIDE_TABLE"],
    [{ ask: "smallest-size", currentA: 1e6 }, "NO_SOLUTION"],
  ] as const)("%j is refused with %s", (change, code) => {
    const question = {
      ask: "largest-current",
      metal: "copper",
      heating: heating(75, 150),
      size: "2 AWG",
      timeS: 1,
    } as const;
    expect(ask({ ...question, ...change })).toMatchObject({ outcome: "refused", refusal: { code }, results: [] });
  });

  test("numbers that are none are not accepted", () => {
    const question = { ask: "largest-current", metal: "copper", heating: heating(75, 150), size: "2 AWG" } as const;
    expect(() => ask({ ...question, timeS: 0 })).toThrow(RangeError);
    expect(() => ask({ ...question, timeS: Number.NaN })).toThrow(RangeError);
  });

  test("a fault that no size bears is said with its current and time", () => {
    const fault = { ask: "smallest-size", metal: "copper", currentA: 1e6, timeS: 1 } as const;
    expect(ask({ ...fault, heating: heating(75, 150) }).sentence).toBe(
      "No size of Chapter 9 Table 8 bears 1000000 A for 1 s.",
    );
    expect(ask({ ...fault, heating: XLPE }).sentence).toBe("No size up to 1000 mm2 bears 1000000 A for 1 s.");
  });

  test("the edition asked is cited", () => {
    const finding = shortCircuit.answer(
      { ask: "largest-current", metal: "copper", heating: heating(75, 150), size: "2 AWG", timeS: 1 },
      { ruleSet: "nfpa70", edition: "2020" },
      nfpa70Edition2020,
    );
    expect(finding.cite).toMatchObject({ edition: "2020", locator: "Table 240.92(B)" });
  });
});

describe("k factors (IEC 60364-5-54)", () => {
  // published: IEC 60364-5-54 Annex A, the formula from which its tables are made: k = 226 sqrt(ln((234.5 + end) /
  // (234.5 + start))) for copper, 148 and 228 for aluminum (from memory); printed as whole numbers
  test.each(
    K_FACTOR_INSULATIONS.flatMap((insulation) =>
      (["separate", "bundled"] as const).flatMap((arrangement) =>
        ["185 mm2", "400 mm2"].map((size) => [arrangement, insulation, size] as const),
      ),
    ),
  )("published: %s %s, %s follows from its temperatures", (arrangement, insulation, size) => {
    const row = nfpa70Edition2023.tables.kFactors.data.rows.find(
      ({ key: [label = ""] }) =>
        label.startsWith(`${arrangement}, ${insulation}`) &&
        (!insulation.startsWith("PVC") || label.includes(size === "185 mm2" ? "up to" : "over")),
    );
    const [start = Number.NaN, end = Number.NaN] = (row?.cells ?? []).map(Number);
    for (const [metal, factor, zero] of [
      ["copper", 226, 234.5],
      ["aluminum", 148, 228],
    ] as const) {
      const current = main({
        ask: "largest-current",
        metal,
        heating: { kind: "k-factor", arrangement, insulation },
        size,
        timeS: 1,
      });
      const k = Number(current) / Number(size.slice(0, -4));
      expect(Math.abs(k - factor * Math.sqrt(Math.log((zero + end) / (zero + start))))).toBeLessThan(1);
    }
  });

  // hand: 5000 x sqrt(0.4) / 143 = 22.11 mm2, so 25 mm2; 143 x 25 = 3575 against 3162.3
  test("5000 A for 0.4 s takes 25 mm2 in an XLPE cable", () => {
    expect(main({ ask: "smallest-size", metal: "copper", heating: XLPE, currentA: 5000, timeS: 0.4 })).toBe("25 mm2");
  });

  // hand: 143 x 35 / sqrt(1) = 5005 A
  test("35 mm2 bears 5005 A for 1 s; at 5005 A it is still enough, above it the next size is", () => {
    const size = (currentA: number) =>
      main({ ask: "smallest-size", metal: "copper", heating: XLPE, currentA, timeS: 1 });
    expect(main({ ask: "largest-current", metal: "copper", heating: XLPE, size: "35 mm2", timeS: 1 })).toBe(5005);
    expect([size(5004), size(5005), size(5006)]).toEqual(["35 mm2", "35 mm2", "50 mm2"]);
  });

  // hand: (115 x 300 / 34500)^2 = 1 s; over 300 mm2 k is 103: (103 x 400 / 41200)^2 = 1 s
  test("PVC over 300 mm2 has its own k", () => {
    const pvc: KFactorHeating = { kind: "k-factor", arrangement: "bundled", insulation: "PVC 70 C" };
    const time = (size: string, currentA: number) =>
      main({ ask: "longest-time", metal: "copper", heating: pvc, size, currentA });
    expect(time("300 mm2", 34500)).toBe(1);
    expect(ask({ ask: "longest-time", metal: "copper", heating: pvc, size: "300 mm2", currentA: 34500 }).sentence).toBe(
      "300 mm2 bears 34500 A for 1 s.",
    );
    expect(time("400 mm2", 41200)).toBe(1);
  });

  test.each([4.999, 5])("a fault of %d s is answered", (timeS) => {
    expect(ask({ ask: "largest-current", metal: "copper", heating: XLPE, size: "35 mm2", timeS }).outcome).toBe(
      "answered",
    );
  });
  test("a fault of 5.001 s is beyond the formula", () => {
    const finding = ask({ ask: "largest-current", metal: "copper", heating: XLPE, size: "35 mm2", timeS: 5.001 });
    expect(finding).toMatchObject({ outcome: "refused", refusal: { code: "NOT_COVERED" } });
  });
  // hand: (143 x 35 / 500)^2 = 100.2 s by the formula; it holds for 5 s
  test("no longer time than the formula holds for is given", () => {
    const finding = ask({ ask: "longest-time", metal: "copper", heating: XLPE, size: "35 mm2", currentA: 500 });
    expect(finding.results).toMatchObject([{ value: 5, unit: "s" }, { name: "time by the formula" }]);
    expect(finding.results[1]?.value).toBeCloseTo(100.2, 1);
  });
  test("a very short fault draws advice", () => {
    const advice = (timeS: number) =>
      ask({ ask: "largest-current", metal: "copper", heating: XLPE, size: "35 mm2", timeS }).advice.length;
    expect([advice(0.099), advice(0.1), advice(0.101)]).toEqual([1, 0, 0]);
  });

  test.each([
    [{ size: "2 AWG" }, "NOT_COVERED"],
    [{ metal: "copper-clad-aluminum" }, "NOT_COVERED"],
    [{ ask: "smallest-size", currentA: 1e6 }, "NO_SOLUTION"],
  ] as const)("%j is refused with %s", (change, code) => {
    const question = { ask: "largest-current", metal: "copper", heating: XLPE, size: "35 mm2", timeS: 1 } as const;
    expect(ask({ ...question, ...change })).toMatchObject({ outcome: "refused", refusal: { code } });
  });

  test.each([
    [{ ask: "smallest-size", timeS: 1 }, "question/currentA"],
    [{ ask: "smallest-size", currentA: 1 }, "question/timeS"],
    [{ ask: "longest-time", currentA: 1 }, "question/size"],
    [{ ask: "longest-time", size: "35 mm2" }, "question/currentA"],
    [{ ask: "largest-current", size: "35 mm2" }, "question/timeS"],
  ] as const)("%j asks for %s", (part, path) => {
    expect(ask({ metal: "copper", heating: XLPE, ...part })).toMatchObject({ outcome: "missing", missing: [{ path }] });
  });
});
