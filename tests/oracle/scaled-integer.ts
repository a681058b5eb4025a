/**
 * Whole numbers in place of fractions: decimals in millionths, lengths and areas in steps so small that inches, feet and
 * metric units all come out whole. Everything used here stays below 2^53 and is exact.
 */
import type { Area, Length, Temperature } from "@landfast/rules";

const MILLION = 1_000_000;

/** A decimal of at most six places, in millionths. Throws where it has more, so that nothing is rounded in silence. */
export function ofDecimal(value: number): number {
  const text = String(value);
  const match = /^(-?)([0-9]+)(?:\.([0-9]{1,6}))?$/.exec(text);
  if (match === null) throw new Error(`${text} has more than six decimals`);
  const whole = Number(match[2]) * MILLION + Number((match[3] ?? "").padEnd(6, "0"));
  return match[1] === "-" ? -whole : whole;
}

/** Tenths of a millimeter in one unit of length: 1 in is 25.4 mm by definition. */
const TENTHS_OF_MM = { in: 254, ft: 3048, mm: 10, m: 10_000 } as const;

/** Length in units of 1e-7 mm, exactly: 14 in and 355.6 mm are both 3 556 000 000. */
export function ofLength(length: Length): number {
  return ofDecimal(length.value) * TENTHS_OF_MM[length.unit];
}

/** Hundredths of square millimeters in one unit of area. */
const MM2_HUNDREDTHS = { in2: 64_516, mm2: 100, cm2: 10_000 } as const;

/** Area in units of 1e-8 mm2, exactly. */
export function ofArea(area: Area): number {
  return ofDecimal(area.value) * MM2_HUNDREDTHS[area.unit];
}

/** Degrees Celsius times nine: 167 degF is 75 Cel, 675 ninths. */
export function ninthsOfCelsius(temperature: Temperature): number {
  return temperature.unit === "Cel" ? temperature.value * 9 : (temperature.value - 32) * 5;
}

/** A bolt's diameter as a word that is the same for the same diameter: "3/8" -> "in:24000000" (24/64), "M12" apart. */
export function boltDiameter(bolt: string): string {
  const metric = /^M([0-9.]+)$/.exec(bolt);
  if (metric !== null) return `mm:${String(ofDecimal(Number(metric[1])))}`;
  const mixed = /^(?:([0-9]+)[- ])?([0-9]+)\/([0-9]+)$/.exec(bolt);
  if (mixed === null) return `in:${String(ofDecimal(Number(bolt)) * 64)}`;
  const sixtyFourths = (Number(mixed[1] ?? "0") * 64 * Number(mixed[3]) + Number(mixed[2]) * 64) / Number(mixed[3]);
  return `in:${String(sixtyFourths * MILLION)}`;
}
