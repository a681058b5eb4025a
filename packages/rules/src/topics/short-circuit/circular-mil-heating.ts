import type { CalculationFinding } from "../../core/calculation.js";
import { type CalculationSheet, isClosed, shown } from "../../core/calculation-sheet.js";
import { conductorAreaCmil } from "../../core/conductor-area.js";
import { sizeOf } from "../../core/conductor-size.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import type { Temperature } from "../../core/quantity.js";
import { sizesOf } from "../../core/table.js";
import { askForSize, currentStep, type Fault, timeStep } from "./fault.js";

/** From the temperature in service up to what the insulation bears for the moment of the fault. */
export interface CircularMilHeating {
  readonly kind: "circular-mil";
  readonly initialTemperature?: Temperature;
  readonly finalTemperature?: Temperature;
}

/** What thermosetting insulation may reach, the higher of the two limits of Table 240.92(B), in degrees Celsius; from memory. */
const HOTTEST_INSULATION_C = 250;

/**
 * Short-circuit heating by the circular-mil formula.
 *
 * ICEA P-32-382 as carried by NFPA 70 Table 240.92(B) (2017, 2020, 2023): (I / A)^2 t = 0.0297 log10((T2 + 234) /
 * (T1 + 234)) for copper, 0.0125 and 228 for aluminum; I in amperes, A in circular mils, t in seconds, T1 before and T2
 * after the fault in degrees Celsius.
 * Worked: 1/0 AWG copper, 75 to 150 C, 1 s: 105600 x sqrt(0.0297 x log10(384 / 309)) = 5591 A.
 * Silent: on how long the formula holds; the longer the fault, the more heat leaves, and the more it errs to the safe side.
 */
export function circularMilHeating(
  sheet: CalculationSheet,
  fault: Fault,
  heating: CircularMilHeating,
  edition: Edition,
): CalculationFinding {
  const heat = heatFactor(sheet, fault, heating, edition);
  if (isClosed(heat)) return heat;
  switch (fault.ask) {
    case "smallest-size":
      return smallestSize(sheet, fault, heat, edition);
    case "longest-time":
      return longestTime(sheet, fault, heat, edition);
    case "largest-current":
      return largestCurrent(sheet, fault, heat, edition);
  }
}

function heatFactor(
  sheet: CalculationSheet,
  { metal }: Fault,
  heating: CircularMilHeating,
  { tables, clauses }: Edition,
): Step | CalculationFinding {
  const cite = clauses.shortCircuitHeating;
  if (metal === "copper-clad-aluminum")
    return sheet.refuse("NOT_COVERED", "The formula is given for copper and for aluminum only.", cite);
  if (heating.initialTemperature === undefined)
    return sheet.ask(
      "question/heating/initialTemperature",
      "How much more heat the conductor can take depends on how warm it is before the fault.",
      cite,
    );
  if (heating.finalTemperature === undefined)
    return sheet.ask(
      "question/heating/finalTemperature",
      "What the insulation bears decides; 150 C for thermoplastic and 250 C for thermosetting compounds are the usual limits.",
      cite,
    );
  const constants = tables.physicalConstants;
  const factor = sheet.readAt("factor of the metal", constants, `${metal} short-circuit factor`, "value", []);
  if (isClosed(factor)) return factor;
  const constant = sheet.readAt(
    "temperature constant of the metal",
    constants,
    `${metal} short-circuit temperature constant`,
    "value",
    [],
  );
  if (isClosed(constant)) return constant;
  const before = sheet.temperature(
    "temperature before the fault",
    heating.initialTemperature,
    "question/heating/initialTemperature",
  );
  const after = sheet.temperature(
    "temperature after the fault",
    heating.finalTemperature,
    "question/heating/finalTemperature",
  );
  if (!sheet.compare("the conductor may still warm up", before, "<", after, cite))
    return sheet.refuse("NO_SOLUTION", "The conductor is as warm before the fault as it may be after it.", cite);
  const hottest = sheet.state("highest temperature after a fault", HOTTEST_INSULATION_C, cite, "Cel");
  if (!sheet.compare("an insulation may reach it", after, "<=", hottest, cite))
    return sheet.refuse(
      "NOT_COVERED",
      `No insulation of the table may reach ${shown(after.value)} C: 150 C and 250 C are its limits.`,
      cite,
    );
  const k = Number(factor.value);
  const c = Number(constant.value);
  const t1 = Number(before.value);
  const t2 = Number(after.value);
  if (!(t1 + c > 0)) return sheet.refuse("NOT_COVERED", `At ${shown(t1)} C the formula has no meaning.`, cite);
  return sheet.approximately(
    "heat the conductor can take",
    k * Math.log10((t2 + c) / (t1 + c)),
    "A2 s/cmil2",
    [factor, after, constant, before],
    "factor x log10((temperature after + constant) / (temperature before + constant))",
    `${String(k)} x log10((${String(t2)} + ${String(c)}) / (${String(t1)} + ${String(c)}))`,
    cite,
  );
}

function smallestSize(sheet: CalculationSheet, fault: Fault, heat: Step, edition: Edition): CalculationFinding {
  const { tables, clauses } = edition;
  const cite = clauses.shortCircuitHeating;
  const current = currentStep(sheet, fault, cite);
  if (isClosed(current)) return current;
  const time = timeStep(sheet, fault, cite);
  if (isClosed(time)) return time;
  const least = sheet.approximately(
    "area needed",
    Number(current.value) * Math.sqrt(Number(time.value) / Number(heat.value)),
    "cmil",
    [current, time, heat],
    "current x square root of (time / heat)",
    `${String(current.value)} x sqrt(${String(time.value)} / ${String(heat.value)})`,
    cite,
  );
  for (const text of sizesOf(tables.conductorPropertiesStranded)) {
    const tried = sheet.conclude("size tried", text, [], "next size of the table");
    const area = conductorAreaCmil(sheet, tried, edition);
    if (isClosed(area)) return area;
    if (!sheet.compare("area is enough", area, ">=", least, cite)) continue;
    const within = sheet.last;
    const size = sheet.conclude(
      "smallest size",
      text,
      [tried, within],
      "the first size, from the smallest up, with the area needed",
      cite,
    );
    return sheet.finish({
      sentence: `${text} is the smallest size that bears ${shown(current.value, 0)} A for ${shown(time.value)} s; ${shown(least.value, 0)} circular mils are needed.`,
      cite,
      results: [
        { name: "smallest size", step: size },
        { name: "area needed", step: least },
      ],
    });
  }
  return sheet.refuse(
    "NO_SOLUTION",
    `No size of ${tables.conductorPropertiesStranded.cite.locator} bears ${shown(current.value, 0)} A for ${shown(time.value)} s.`,
    cite,
  );
}

function longestTime(sheet: CalculationSheet, fault: Fault, heat: Step, edition: Edition): CalculationFinding {
  const cite = edition.clauses.shortCircuitHeating;
  const area = postedArea(sheet, fault, edition);
  if (isClosed(area)) return area;
  const current = currentStep(sheet, fault, cite);
  if (isClosed(current)) return current;
  const time = sheet.approximately(
    "longest time",
    Number(heat.value) * (Number(area.value) / Number(current.value)) ** 2,
    "s",
    [heat, area, current],
    "heat x (area / current) ^ 2",
    `${String(heat.value)} x (${String(area.value)} / ${String(current.value)}) ^ 2`,
    cite,
  );
  return sheet.finish({
    sentence: `${String(fault.size)} bears ${shown(current.value, 0)} A for ${shown(time.value)} s.`,
    cite,
    results: [{ name: "longest time", step: time }],
  });
}

function largestCurrent(sheet: CalculationSheet, fault: Fault, heat: Step, edition: Edition): CalculationFinding {
  const cite = edition.clauses.shortCircuitHeating;
  const area = postedArea(sheet, fault, edition);
  if (isClosed(area)) return area;
  const time = timeStep(sheet, fault, cite);
  if (isClosed(time)) return time;
  const current = sheet.approximately(
    "largest current",
    Number(area.value) * Math.sqrt(Number(heat.value) / Number(time.value)),
    "A",
    [area, heat, time],
    "area x square root of (heat / time)",
    `${String(area.value)} x sqrt(${String(heat.value)} / ${String(time.value)})`,
    cite,
  );
  return sheet.finish({
    sentence: `${String(fault.size)} bears ${shown(current.value, 0)} A for ${shown(time.value)} s.`,
    cite,
    results: [{ name: "largest current", step: current }],
  });
}

function postedArea(sheet: CalculationSheet, fault: Fault, edition: Edition): Step | CalculationFinding {
  const cite = edition.clauses.shortCircuitHeating;
  if (fault.size === undefined) return askForSize(sheet, cite);
  const parsed = sizeOf(fault.size);
  if (parsed.series !== "awg-kcmil")
    return sheet.refuse(
      "NOT_COVERED",
      "The circular-mil formula is for AWG and kcmil sizes: ask for mm2 with the k factor.",
      cite,
    );
  return conductorAreaCmil(sheet, sheet.given("size", parsed.text, "question/size"), edition);
}
