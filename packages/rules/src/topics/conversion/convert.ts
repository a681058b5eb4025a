import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { CalculationSheet, isClosed, shown } from "../../core/calculation-sheet.js";
import type { Citation } from "../../core/citation.js";
import { conductorAreaCmil } from "../../core/conductor-area.js";
import { type ConductorSize, sizeOf } from "../../core/conductor-size.js";
import type { Edition } from "../../core/edition.js";
import { add, divide, exactOf, multiply } from "../../core/exact.js";
import type { Step } from "../../core/finding.js";
import { METRIC_SERIES_SOURCE, METRIC_SIZES } from "../../core/metric-series.js";
import type {
  Area,
  AreaUnit,
  Length,
  LengthUnit,
  Temperature,
  TemperatureUnit,
  Torque,
  TorqueUnit,
} from "../../core/quantity.js";
import { sizesOf } from "../../core/table.js";
import { type ConvertedValue, convertedArea, convertedLength, convertedTorque } from "../../core/unit-conversion.js";

const NAME = "convert";

export type ConversionQuestion =
  | { readonly kind: "torque"; readonly torque: Torque; readonly to: TorqueUnit }
  | { readonly kind: "length"; readonly length: Length; readonly to: LengthUnit }
  | { readonly kind: "area"; readonly area: Area; readonly to: AreaUnit }
  | { readonly kind: "temperature"; readonly temperature: Temperature; readonly to: TemperatureUnit }
  /** Diameter and area of a solid round wire of an AWG size. */
  | { readonly kind: "wire-geometry"; readonly size: string }
  /** Area of a size in mm2 and circular mils, and the nearest size of the other series. */
  | { readonly kind: "size-area"; readonly size: string };

/** Definitions of the units; from memory. */
const UNITS_SOURCE: Citation = Object.freeze({ standard: "NIST SP 811", edition: "2008", locator: "appendix B" });
/** From memory, edition not checked against the document. */
const WIRE_SOURCE: Citation = Object.freeze({ standard: "ASTM B258", edition: "2018", locator: "nominal diameters" });

/**
 * A quantity in another unit, the geometry of a gauge size, or the area of a size.
 *
 * NIST SP 811: 1 in = 25.4 mm, 1 ft = 12 in, 1 lbf-in = 0.1129848290276167 N-m, all exact. ASTM B258: the diameter of AWG
 * number n in inches is 0.005 x 92^((36 - n) / 39), with 1/0 as 0, 2/0 as -1 and so on.
 * Worked: 275 lbf-in = 31.07 N-m; 10 AWG = 0.1019 in; 35 mm2 = 69.07 kcmil, nearest 2 AWG.
 * Silent: no size of one series equals a size of the other. The nearest is named as nearest only, and a listing, a lug or
 * an ampacity in one series says nothing about the other.
 */
export const convert: Calculation<ConversionQuestion> = {
  name: NAME,
  title: "Conversion of units and sizes",
  clauses: [],
  needs: ["question/kind"],
  cannotSee: "what the figure is to be used for",
  answer(question, basis, edition) {
    const sheet = new CalculationSheet(NAME, basis);
    switch (question.kind) {
      case "torque": {
        const { torque, to } = question;
        const posted = sheet.positive("torque", torque.value, "question/torque/value", torque.unit);
        return inUnit(sheet, posted, convertedTorque(torque, to), to, "torque");
      }
      case "length": {
        const { length, to } = question;
        const posted = sheet.positive("length", length.value, "question/length/value", length.unit);
        return inUnit(sheet, posted, convertedLength(length, to), to, "length");
      }
      case "area": {
        const { area, to } = question;
        const posted = sheet.positive("area", area.value, "question/area/value", area.unit);
        return inUnit(sheet, posted, convertedArea(area, to), to, "area");
      }
      case "temperature":
        return temperature(sheet, question.temperature, question.to);
      case "wire-geometry":
        return wireGeometry(sheet, question.size);
      case "size-area":
        return sizeArea(sheet, question.size, edition);
    }
  },
};

function inUnit(
  sheet: CalculationSheet,
  posted: Step,
  { value, arithmetic }: ConvertedValue,
  to: string,
  what: string,
): CalculationFinding {
  const from = posted.unit ?? "";
  const step = sheet.exactly(
    `${what} in ${to}`,
    value,
    to,
    [posted],
    `${what} in ${from}, converted`,
    arithmetic,
    UNITS_SOURCE,
  );
  return sheet.finish({
    sentence: `${String(posted.value)} ${from} is ${shown(step.value)} ${to}.`,
    cite: UNITS_SOURCE,
    results: [{ name: `${what} in ${to}`, step }],
  });
}

function temperature(sheet: CalculationSheet, posted: Temperature, to: TemperatureUnit): CalculationFinding {
  const inCelsius = sheet.temperature("temperature", posted, "question/temperature");
  // The sheet has put it in degrees Celsius already; where it was posted so, that step is the posted one itself.
  const step =
    to === "Cel"
      ? sheet.conclude("temperature in Cel", inCelsius.value, [inCelsius], "in degrees Celsius", UNITS_SOURCE, "Cel")
      : fahrenheit(sheet, posted, inCelsius);
  return sheet.finish({
    sentence: `${String(posted.value)} ${posted.unit} is ${shown(step.value)} ${to}.`,
    cite: UNITS_SOURCE,
    results: [{ name: `temperature in ${to}`, step }],
  });
}

function fahrenheit(sheet: CalculationSheet, posted: Temperature, inCelsius: Step): Step {
  if (posted.unit === "degF")
    return sheet.conclude("temperature in degF", posted.value, [inCelsius], "as it was given", UNITS_SOURCE, "degF");
  return sheet.exactly(
    "temperature in degF",
    add(divide(multiply(sheet.exact(inCelsius), exactOf(9)), exactOf(5)), exactOf(32)),
    "degF",
    [inCelsius],
    "temperature in Cel x 9 / 5 + 32",
    `${String(inCelsius.value)} x 9 / 5 + 32`,
    UNITS_SOURCE,
  );
}

function wireGeometry(sheet: CalculationSheet, text: string): CalculationFinding {
  const parsed = sizeOf(text);
  const size = sheet.given("size", parsed.text, "question/size");
  if (parsed.system !== "AWG")
    return sheet.refuse(
      "NOT_COVERED",
      "The formula is for AWG sizes; kcmil and mm2 sizes are named by their area.",
      WIRE_SOURCE,
    );
  const number = sheet.state("gauge number in the formula", gaugeNumber(parsed), WIRE_SOURCE, "", [size]);
  const n = Number(number.value);
  const diameter = sheet.approximately(
    "diameter in inches",
    0.005 * 92 ** ((36 - n) / 39),
    "in",
    [number],
    "0.005 x 92 ^ ((36 - gauge number) / 39)",
    `0.005 x 92 ^ ((36 - ${n < 0 ? `(${String(n)})` : String(n)}) / 39)`,
    WIRE_SOURCE,
  );
  const d = Number(diameter.value);
  const millimeters = sheet.approximately(
    "diameter in millimeters",
    d * 25.4,
    "mm",
    [diameter],
    "diameter in inches x 25.4",
    `${String(d)} x 25.4`,
  );
  const area = sheet.approximately(
    "area in circular mils",
    (d * 1000) ** 2,
    "cmil",
    [diameter],
    "(diameter in inches x 1000) ^ 2",
    `(${String(d)} x 1000) ^ 2`,
  );
  const mm2 = sheet.approximately(
    "area in mm2",
    (Math.PI * (d * 25.4) ** 2) / 4,
    "mm2",
    [diameter],
    "pi x (diameter in inches x 25.4) ^ 2 / 4",
    `${String(Math.PI)} x (${String(d)} x 25.4) ^ 2 / 4`,
  );
  const main = sheet.conclude("diameter of the solid wire", d, [diameter], "by the formula", WIRE_SOURCE, "in");
  return sheet.finish({
    sentence: `Solid ${parsed.text} measures ${shown(d, 4)} in (${shown(millimeters.value)} mm) and has ${shown(area.value, 0)} circular mils.`,
    cite: WIRE_SOURCE,
    results: [
      { name: "diameter", step: main },
      { name: "diameter in millimeters", step: millimeters },
      { name: "area in circular mils", step: area },
      { name: "area in mm2", step: mm2 },
    ],
  });
}

/** 10 for "10 AWG", 0 for "1/0 AWG", -3 for "4/0 AWG". */
function gaugeNumber({ text }: ConductorSize): number {
  const figure = text.slice(0, -" AWG".length);
  return figure.endsWith("/0") ? 1 - Number(figure.slice(0, -"/0".length)) : Number(figure);
}

function sizeArea(sheet: CalculationSheet, text: string, edition: Edition): CalculationFinding {
  const parsed = sizeOf(text);
  const size = sheet.given("size", parsed.text, "question/size");
  const constants = edition.tables.physicalConstants;
  const mil = sheet.readAt("one circular mil", constants, "circular mil", "value", []);
  if (isClosed(mil)) return mil;
  const areas = parsed.series === "metric" ? areasOfMetric(sheet, size, mil) : areasOfGauge(sheet, size, mil, edition);
  if (isClosed(areas)) return areas;
  const others = parsed.series === "metric" ? sizesOf(edition.tables.conductorPropertiesStranded) : METRIC_SIZES;
  const cite = parsed.series === "metric" ? edition.tables.conductorPropertiesStranded.cite : METRIC_SERIES_SOURCE;
  const series = sheet.state("sizes of the other series", others, cite);
  const { below, above, nearest } = neighborsOf(parsed, others);
  const nextBelow = sheet.conclude("next smaller size", below ?? "none", [areas.mm2, series], "by area");
  const nextAbove = sheet.conclude("next larger size", above ?? "none", [areas.mm2, series], "by area");
  const main = sheet.conclude(
    "nearest size of the other series, not an equal one",
    nearest,
    [nextBelow, nextAbove],
    "the one of the two whose area differs least",
    cite,
  );
  return sheet.finish({
    sentence: `${parsed.text} has ${shown(areas.mm2.value)} mm2 or ${shown(areas.kcmil.value)} kcmil; the nearest size of the other series is ${nearest}, which is not equal to it.`,
    cite,
    results: [
      { name: "nearest size, not equal", step: main },
      { name: "area in mm2", step: areas.mm2 },
      { name: "area in kcmil", step: areas.kcmil },
      { name: "next smaller size", step: nextBelow },
      { name: "next larger size", step: nextAbove },
    ],
    advice: [
      "A lug, a listing or an ampacity for a size of one series says nothing about the nearest size of the other.",
    ],
  });
}

interface SizeAreas {
  readonly mm2: Step;
  readonly kcmil: Step;
}

function areasOfMetric(sheet: CalculationSheet, size: Step, mil: Step): SizeAreas {
  const figure = String(size.value).slice(0, -" mm2".length);
  const mm2 = sheet.exactly("area in mm2", exactOf(figure), "mm2", [size], "figure of the size", figure);
  const kcmil = sheet.exactly(
    "area in kcmil",
    divide(divide(sheet.exact(mm2), sheet.exact(mil)), exactOf(1000)),
    "kcmil",
    [mm2, mil],
    "area in mm2 / one circular mil / 1000",
    `${figure} / ${String(mil.value)} / 1000`,
  );
  return { mm2, kcmil };
}

function areasOfGauge(
  sheet: CalculationSheet,
  size: Step,
  mil: Step,
  edition: Edition,
): SizeAreas | CalculationFinding {
  const area = conductorAreaCmil(sheet, size, edition);
  if (isClosed(area)) return area;
  const mm2 = sheet.multiply("area in mm2", [area, mil], "mm2");
  const kcmil = sheet.exactly(
    "area in kcmil",
    divide(sheet.exact(area), exactOf(1000)),
    "kcmil",
    [area],
    "area in circular mils / 1000",
    `${String(area.value)} / 1000`,
  );
  return { mm2, kcmil };
}

interface Neighbors {
  readonly below: string | undefined;
  readonly above: string | undefined;
  readonly nearest: string;
}

/** The sizes of the other series just below and just above, by area; one whose area is the very same counts as above. */
function neighborsOf({ areaKcmil }: ConductorSize, others: readonly string[]): Neighbors {
  let below: string | undefined;
  let above: string | undefined;
  for (const other of others) {
    if (sizeOf(other).areaKcmil < areaKcmil) below = other;
    else above ??= other;
  }
  if (below === undefined || above === undefined) return { below, above, nearest: below ?? above ?? "none" };
  const down = areaKcmil - sizeOf(below).areaKcmil;
  const up = sizeOf(above).areaKcmil - areaKcmil;
  return { below, above, nearest: down <= up ? below : above };
}
