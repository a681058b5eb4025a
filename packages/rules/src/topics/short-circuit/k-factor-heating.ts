import type { CalculationFinding } from "../../core/calculation.js";
import { type CalculationSheet, isClosed, shown } from "../../core/calculation-sheet.js";
import type { Citation } from "../../core/citation.js";
import { areaMm2, sizeOf } from "../../core/conductor-size.js";
import type { Edition } from "../../core/edition.js";
import { exactOf } from "../../core/exact.js";
import type { Step } from "../../core/finding.js";
import { METRIC_SERIES_SOURCE, METRIC_SIZES } from "../../core/metric-series.js";
import { askForSize, currentStep, type Fault, timeStep } from "./fault.js";

export const K_FACTOR_INSULATIONS = [
  "PVC 70 C",
  "PVC 90 C",
  "XLPE or EPR 90 C",
  "rubber 60 C",
  "rubber 85 C",
  "silicone rubber",
] as const;
export type KFactorInsulation = (typeof K_FACTOR_INSULATIONS)[number];

export interface KFactorHeating {
  readonly kind: "k-factor";
  /** A separate protective conductor starts at the air's temperature; one in a cable or bundle at the cable's. */
  readonly arrangement: "separate" | "bundled";
  readonly insulation: KFactorInsulation;
}

/** The clause that gives the formula and its limit of time; from memory. */
const FORMULA: Citation = Object.freeze({ standard: "IEC 60364-5-54", edition: "2011", locator: "543.1.2" });
const LONGEST_TIME_S = 5;
/** Above this size PVC bears less: the printed boundary belongs to the smaller sizes. */
const LARGE_PVC_MM2 = 300;
const BRIEF_FAULT_S = 0.1;

/**
 * Short-circuit heating by k factors.
 *
 * IEC 60364-5-54 (2011) 543.1.2 and Annex A: cross-section S = I sqrt(t) / k, in mm2, amperes and seconds, for
 * disconnection within 5 s; k from the metal, the insulation and where the conductor lies.
 * Worked: 5000 A for 0.4 s, copper in an XLPE cable (k = 143): 5000 x sqrt(0.4) / 143 = 22.1 mm2, so 25 mm2.
 * Silent: below 0.1 s the offset current counts and the device's let-through energy should be used.
 */
export function kFactorHeating(
  sheet: CalculationSheet,
  fault: Fault,
  heating: KFactorHeating,
  edition: Edition,
): CalculationFinding {
  if (fault.metal === "copper-clad-aluminum")
    return sheet.refuse("NOT_COVERED", "The k factors are given for copper and for aluminum.", FORMULA);
  switch (fault.ask) {
    case "smallest-size":
      return smallestSize(sheet, fault, heating, edition);
    case "longest-time":
      return longestTime(sheet, fault, heating, edition);
    case "largest-current":
      return largestCurrent(sheet, fault, heating, edition);
  }
}

function smallestSize(
  sheet: CalculationSheet,
  fault: Fault,
  heating: KFactorHeating,
  edition: Edition,
): CalculationFinding {
  const current = currentStep(sheet, fault, FORMULA);
  if (isClosed(current)) return current;
  const time = timeWithinLimit(sheet, fault);
  if (isClosed(time)) return time;
  const duty = sheet.approximately(
    "duty of the fault",
    Number(current.value) * Math.sqrt(Number(time.value)),
    "A s^0.5",
    [current, time],
    "current x square root of time",
    `${String(current.value)} x sqrt(${String(time.value)})`,
    FORMULA,
  );
  const series = sheet.state("metric sizes", METRIC_SIZES, METRIC_SERIES_SOURCE);
  for (const text of METRIC_SIZES) {
    const tried = sheet.conclude("size tried", text, [series], "next size of the series");
    const withstand = withstandOf(sheet, tried, fault, heating, edition);
    if (isClosed(withstand)) return withstand;
    if (!sheet.compare("withstand covers the duty", withstand, ">=", duty, FORMULA)) continue;
    const within = sheet.last;
    const size = sheet.conclude(
      "smallest size",
      text,
      [tried, within],
      "the first size of the series, from the smallest up, that bears the fault",
      FORMULA,
    );
    return sheet.finish({
      sentence: `${text} is the smallest size that bears ${shown(current.value, 0)} A for ${shown(time.value)} s.`,
      cite: FORMULA,
      results: [
        { name: "smallest size", step: size },
        { name: "withstand of the size", step: withstand },
        { name: "duty of the fault", step: duty },
      ],
      advice: adviceOn(Number(time.value)),
    });
  }
  return sheet.refuse(
    "NO_SOLUTION",
    `No size up to ${String(METRIC_SIZES.at(-1))} bears ${shown(current.value, 0)} A for ${shown(time.value)} s.`,
    FORMULA,
  );
}

function longestTime(
  sheet: CalculationSheet,
  fault: Fault,
  heating: KFactorHeating,
  edition: Edition,
): CalculationFinding {
  const withstand = postedWithstand(sheet, fault, heating, edition);
  if (isClosed(withstand)) return withstand;
  const current = currentStep(sheet, fault, FORMULA);
  if (isClosed(current)) return current;
  const computed = sheet.approximately(
    "time by the formula",
    (Number(withstand.value) / Number(current.value)) ** 2,
    "s",
    [withstand, current],
    "(withstand / current) ^ 2",
    `(${String(withstand.value)} / ${String(current.value)}) ^ 2`,
    FORMULA,
  );
  const limit = sheet.state("longest time the formula holds for", LONGEST_TIME_S, FORMULA, "s");
  const holds = sheet.compare("the time is within the formula's limit", computed, "<=", limit, FORMULA);
  const time = sheet.conclude(
    "longest time",
    holds ? computed.value : limit.value,
    [computed, limit, sheet.last],
    holds ? "the formula's own result" : "the formula gives more, but holds no longer than this",
    FORMULA,
    "s",
  );
  return sheet.finish({
    sentence: holds
      ? `${String(fault.size)} bears ${shown(current.value, 0)} A for ${shown(time.value)} s.`
      : `${String(fault.size)} bears ${shown(current.value, 0)} A for ${shown(time.value)} s, the longest time the formula holds for.`,
    cite: FORMULA,
    results: [
      { name: "longest time", step: time },
      { name: "time by the formula", step: computed },
    ],
    advice: adviceOn(Number(time.value)),
  });
}

function largestCurrent(
  sheet: CalculationSheet,
  fault: Fault,
  heating: KFactorHeating,
  edition: Edition,
): CalculationFinding {
  const withstand = postedWithstand(sheet, fault, heating, edition);
  if (isClosed(withstand)) return withstand;
  const time = timeWithinLimit(sheet, fault);
  if (isClosed(time)) return time;
  const current = sheet.approximately(
    "largest current",
    Number(withstand.value) / Math.sqrt(Number(time.value)),
    "A",
    [withstand, time],
    "withstand / square root of time",
    `${String(withstand.value)} / sqrt(${String(time.value)})`,
    FORMULA,
  );
  return sheet.finish({
    sentence: `${String(fault.size)} bears ${shown(current.value, 0)} A for ${shown(time.value)} s.`,
    cite: FORMULA,
    results: [{ name: "largest current", step: current }],
    advice: adviceOn(Number(time.value)),
  });
}

function timeWithinLimit(sheet: CalculationSheet, fault: Fault): Step | CalculationFinding {
  const time = timeStep(sheet, fault, FORMULA);
  if (isClosed(time)) return time;
  const limit = sheet.state("longest time the formula holds for", LONGEST_TIME_S, FORMULA, "s");
  if (!sheet.compare("the time is within the formula's limit", time, "<=", limit, FORMULA))
    return sheet.refuse(
      "NOT_COVERED",
      `The formula holds for disconnection within ${shown(limit.value)} s only.`,
      FORMULA,
    );
  return time;
}

function postedWithstand(
  sheet: CalculationSheet,
  fault: Fault,
  heating: KFactorHeating,
  edition: Edition,
): Step | CalculationFinding {
  if (fault.size === undefined) return askForSize(sheet, FORMULA);
  const parsed = sizeOf(fault.size);
  if (parsed.series !== "metric")
    return sheet.refuse(
      "NOT_COVERED",
      "The k factors are for sizes in mm2: ask for AWG and kcmil with the circular-mil formula.",
      FORMULA,
    );
  return withstandOf(sheet, sheet.given("size", parsed.text, "question/size"), fault, heating, edition);
}

/** k x S: the largest current times the square root of time. */
function withstandOf(
  sheet: CalculationSheet,
  size: Step,
  { metal }: Fault,
  heating: KFactorHeating,
  { tables }: Edition,
): Step | CalculationFinding {
  const mm2 = areaMm2(sizeOf(String(size.value)));
  const area = sheet.exactly("cross-section", exactOf(mm2), "mm2", [size], "figure of the size", String(mm2));
  const k = sheet.readAt("k factor", tables.kFactors, rowOf(heating, mm2), metal, [area]);
  if (isClosed(k)) return k;
  return sheet.multiply("withstand", [k, area], "A s^0.5", FORMULA);
}

function rowOf({ arrangement, insulation }: KFactorHeating, mm2: number): string {
  const row = `${arrangement}, ${insulation}`;
  if (insulation !== "PVC 70 C" && insulation !== "PVC 90 C") return row;
  return `${row}, ${mm2 <= LARGE_PVC_MM2 ? "up to" : "over"} ${String(LARGE_PVC_MM2)} mm2`;
}

function adviceOn(timeS: number): readonly string[] {
  if (timeS >= BRIEF_FAULT_S) return [];
  return [
    "Below 0.1 s the offset of the current counts: compare the device's let-through energy with the square of the withstand.",
  ];
}
