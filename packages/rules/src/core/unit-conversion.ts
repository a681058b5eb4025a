/** Exact conversion between units, together with the arithmetic that shows it. */
import { divide, type Exact } from "./exact.js";
import {
  type Area,
  type AreaUnit,
  inches,
  type Length,
  type LengthUnit,
  lbfInches,
  squareInches,
  type Torque,
  type TorqueUnit,
} from "./quantity.js";

/** A value in another unit and how it comes about: "275 x 0.1129848290276167". */
export interface ConvertedValue {
  readonly value: Exact;
  readonly arithmetic: string;
}

/** A length in another unit. Worked: 100 m -> 100 x 1000 / 25.4 / 12 = 328.08 ft. */
export function convertedLength(length: Length, unit: LengthUnit): ConvertedValue {
  return {
    value: divide(inches(length), inches({ value: 1, unit })),
    arithmetic: `${String(length.value)}${TO_INCHES[length.unit]}${FROM_INCHES[unit]}`,
  };
}

/** An area in another unit. Worked: 1 in2 -> 645.16 mm2. */
export function convertedArea(area: Area, unit: AreaUnit): ConvertedValue {
  return {
    value: divide(squareInches(area), squareInches({ value: 1, unit })),
    arithmetic: `${String(area.value)}${TO_SQUARE_INCHES[area.unit]}${FROM_SQUARE_INCHES[unit]}`,
  };
}

/** A torque in another unit. Worked: 275 lbf-in -> 275 x 0.1129848290276167 = 31.07 N-m. */
export function convertedTorque(torque: Torque, unit: TorqueUnit): ConvertedValue {
  return {
    value: divide(lbfInches(torque), lbfInches({ value: 1, unit })),
    arithmetic: `${String(torque.value)}${TO_LBF_IN[torque.unit]}${FROM_LBF_IN[unit]}`,
  };
}

const TO_INCHES: Readonly<Record<LengthUnit, string>> = { in: "", ft: " x 12", mm: " / 25.4", m: " x 1000 / 25.4" };
const FROM_INCHES: Readonly<Record<LengthUnit, string>> = { in: "", ft: " / 12", mm: " x 25.4", m: " x 25.4 / 1000" };
const TO_SQUARE_INCHES: Readonly<Record<AreaUnit, string>> = { in2: "", mm2: " / 645.16", cm2: " / 6.4516" };
const FROM_SQUARE_INCHES: Readonly<Record<AreaUnit, string>> = { in2: "", mm2: " x 645.16", cm2: " x 6.4516" };
const TO_LBF_IN: Readonly<Record<TorqueUnit, string>> = {
  "lbf-in": "",
  "lbf-ft": " x 12",
  "N-m": " / 0.1129848290276167",
};
const FROM_LBF_IN: Readonly<Record<TorqueUnit, string>> = {
  "lbf-in": "",
  "lbf-ft": " / 12",
  "N-m": " x 0.1129848290276167",
};
