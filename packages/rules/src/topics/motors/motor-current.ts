import type { CalculationFinding } from "../../core/calculation.js";
import type { CalculationSheet } from "../../core/calculation-sheet.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import type { Table } from "../../core/table.js";

export type MotorKind = "squirrel-cage" | "wound-rotor" | "synchronous" | "direct-current" | "single-phase";
export const MOTOR_KINDS: readonly MotorKind[] = [
  "squirrel-cage",
  "wound-rotor",
  "synchronous",
  "direct-current",
  "single-phase",
];
export type MotorBuild = "ordinary" | "low-speed-or-high-torque" | "multispeed";
export const MOTOR_BUILDS: readonly MotorBuild[] = ["ordinary", "low-speed-or-high-torque", "multispeed"];

/** A motor as the tables of full-load current tell them apart. */
export interface Motor {
  readonly kind: MotorKind;
  /** "1/2", "7-1/2", "25". */
  readonly horsepower: string;
  /** Rated voltage of the motor; where the table allows it, a voltage of the system it serves. */
  readonly voltageV: number;
  /** Motors for less than 1200 revolutions a minute or for high torque, and those of several speeds, go by nameplate. */
  readonly build: MotorBuild;
  readonly nameplateA?: number;
}

/** Columns of the tables and the voltages each may be used for, in volts, ends included (from memory of their headings). */
const THREE_PHASE_COLUMNS: readonly (readonly [string, number, number])[] = [
  ["v115", 110, 120],
  ["v200", 200, 200],
  ["v208", 208, 208],
  ["v230", 220, 240],
  ["v460", 440, 480],
  ["v575", 550, 600],
  ["v2300", 2300, 2300],
];
const SINGLE_PHASE_COLUMNS = THREE_PHASE_COLUMNS.slice(0, 4);

/**
 * Current on which a motor's conductors and protection are based, in amperes.
 *
 * NFPA 70 430.6(A)(1), Tables 430.248 and 430.250 (2017, 2020, 2023): the table's current for the horsepower and
 * voltage, and not the nameplate's; the nameplate's only for motors of low speed, high torque or several speeds.
 * Worked: 25 hp, three-phase, 460 V: 34 A.
 * Silent: horsepower between the rows is not answered. The tables for direct-current and synchronous motors are not held.
 */
export function motorCurrent(
  sheet: CalculationSheet,
  motor: Motor,
  edition: Edition,
  head = "question/motor",
): Step | CalculationFinding {
  const { tables, clauses } = edition;
  const build = sheet.given("build of the motor", motor.build, `${head}/build`);
  if (motor.build !== "ordinary") {
    if (motor.nameplateA === undefined)
      return sheet.ask(
        `${head}/nameplateA`,
        `A motor of this build (${motor.build}) goes by its nameplate current, which is not given.`,
        clauses.motorCurrent,
      );
    return sheet.positive("current of the nameplate", motor.nameplateA, `${head}/nameplateA`, "A");
  }
  const kind = sheet.given("kind of motor", motor.kind, `${head}/kind`);
  if (motor.kind === "direct-current" || motor.kind === "synchronous")
    return sheet.refuse("NOT_COVERED", `The table of ${motor.kind} motors is not held here.`, clauses.motorCurrent);
  const isSingle = motor.kind === "single-phase";
  const table: Table = isSingle ? tables.motorCurrent1ph : tables.motorCurrent3ph;
  const volts = sheet.positive("voltage", motor.voltageV, `${head}/voltageV`, "V");
  const columns = isSingle ? SINGLE_PHASE_COLUMNS : THREE_PHASE_COLUMNS;
  const column = columns.find(([, low, high]) => motor.voltageV >= low && motor.voltageV <= high)?.[0];
  if (column === undefined)
    return sheet.refuse(
      "OUTSIDE_TABLE",
      `${table.cite.locator} has no column for ${String(motor.voltageV)} V.`,
      table.cite,
    );
  const horsepower = sheet.given("horsepower", motor.horsepower, `${head}/horsepower`);
  return sheet.readAt("full-load current of the table", table, motor.horsepower, column, [
    build,
    kind,
    volts,
    horsepower,
  ]);
}
