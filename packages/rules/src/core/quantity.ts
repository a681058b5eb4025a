/**
 * Quantities with their unit beside them, and their exact conversion.
 *
 * Factors are exact by definition: 1 in = 25.4 mm, 1 ft = 12 in, 1 lbf = 4.4482216152605 N, so
 * 1 lbf-in = 0.1129848290276167 N-m (NIST SP 811, appendix B, from memory).
 */
import { divide, type Exact, exactOf, multiply, numberOf, subtract } from "./exact.js";

export type LengthUnit = "in" | "ft" | "mm" | "m";
export type AreaUnit = "in2" | "mm2" | "cm2";
export type TorqueUnit = "lbf-in" | "lbf-ft" | "N-m";
/** UCUM-like spellings: "Cel" for degrees Celsius, "degF" for degrees Fahrenheit. */
export type TemperatureUnit = "Cel" | "degF";

export interface Length {
  readonly value: number;
  readonly unit: LengthUnit;
}
export interface Area {
  readonly value: number;
  readonly unit: AreaUnit;
}
export interface Torque {
  readonly value: number;
  readonly unit: TorqueUnit;
}
export interface Temperature {
  readonly value: number;
  readonly unit: TemperatureUnit;
}

export const LENGTH_UNITS: readonly LengthUnit[] = ["in", "ft", "mm", "m"];
export const AREA_UNITS: readonly AreaUnit[] = ["in2", "mm2", "cm2"];
export const TORQUE_UNITS: readonly TorqueUnit[] = ["lbf-in", "lbf-ft", "N-m"];
export const TEMPERATURE_UNITS: readonly TemperatureUnit[] = ["Cel", "degF"];

const INCHES_PER: Readonly<Record<LengthUnit, Exact>> = {
  in: exactOf(1),
  ft: exactOf(12),
  mm: divide(exactOf(1), exactOf("25.4")),
  m: divide(exactOf(1000), exactOf("25.4")),
};
const IN2_PER: Readonly<Record<AreaUnit, Exact>> = {
  in2: exactOf(1),
  mm2: divide(exactOf(1), exactOf("645.16")),
  cm2: divide(exactOf(100), exactOf("645.16")),
};
const LBF_IN_PER: Readonly<Record<TorqueUnit, Exact>> = {
  "lbf-in": exactOf(1),
  "lbf-ft": exactOf(12),
  "N-m": divide(exactOf(1), exactOf("0.1129848290276167")),
};

/** Length in inches, exactly. */
export function inches(length: Length): Exact {
  return multiply(exactOf(length.value), INCHES_PER[length.unit]);
}

/** Area in square inches, exactly. */
export function squareInches(area: Area): Exact {
  return multiply(exactOf(area.value), IN2_PER[area.unit]);
}

/** Torque in lbf-in, exactly. */
export function lbfInches(torque: Torque): Exact {
  return multiply(exactOf(torque.value), LBF_IN_PER[torque.unit]);
}

/** Degrees Celsius as a number: (F - 32) x 5/9, worked exactly. 167 degF is 75 Cel. */
export function celsius(temperature: Temperature): number {
  if (temperature.unit === "Cel") return temperature.value;
  return numberOf(divide(multiply(subtract(exactOf(temperature.value), exactOf(32)), exactOf(5)), exactOf(9)));
}

/** One torque in the three units that torque tools are marked in, and which of them the source prints. */
export interface TorqueInUnits {
  readonly lbfIn: number;
  readonly lbfFt: number;
  readonly newtonMetre: number;
  readonly printed: Torque;
}

/**
 * The three figures shown for one torque. The printed one is kept as printed; the others are rounded to one decimal,
 * finer than any torque tool's scale.
 * Worked: 275 lbf-in -> 22.9 lbf-ft, 31.1 N-m.
 */
export function torqueInUnits(printed: Torque): TorqueInUnits {
  const key = `${String(printed.value)} ${printed.unit}`;
  const known = converted.get(key);
  if (known !== undefined) return known;
  const inUnits = convert(printed);
  // Torques come from a few tables and markings; the limit only guards against a flood of odd ones.
  if (converted.size < 2000) converted.set(key, inUnits);
  return inUnits;
}

const converted = new Map<string, TorqueInUnits>();

function convert({ value, unit: printedUnit }: Torque): TorqueInUnits {
  const printed: Torque = { value, unit: printedUnit };
  const lbfIn = lbfInches(printed);
  const shown = (unit: TorqueUnit): number =>
    unit === printed.unit ? printed.value : oneDecimal(divide(lbfIn, LBF_IN_PER[unit]));
  return { lbfIn: shown("lbf-in"), lbfFt: shown("lbf-ft"), newtonMetre: shown("N-m"), printed };
}

/** Rounds half up to one decimal, on the exact fraction. */
function oneDecimal(value: Exact): number {
  const tenths = (value.numerator * 20n + value.denominator) / (value.denominator * 2n);
  return Number(tenths) / 10;
}
