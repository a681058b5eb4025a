import type { CalculationFinding } from "./calculation.js";
import { type CalculationSheet, isClosed } from "./calculation-sheet.js";
import type { ConductorMetal } from "./conductor.js";
import type { Edition } from "./edition.js";
import { add, exactOf, multiply, subtract } from "./exact.js";
import type { Step } from "./finding.js";
import type { Temperature } from "./quantity.js";
import type { Table } from "./table.js";

/** Temperature at which Chapter 9 Table 8 prints its resistances, in degrees Celsius. */
const TABLE_TEMPERATURE_C = 75;

/** A conductor as Chapter 9 Table 8 tells them apart. */
export interface DirectCurrentConductor {
  readonly metal: ConductorMetal;
  readonly stranding: "solid" | "stranded";
  /** Whether the copper is coated with tin. Needed for copper, without meaning for aluminum. */
  readonly coating?: "uncoated" | "coated";
  /** Of the conductor in service, not of the air. */
  readonly temperature: Temperature;
}

/** Where a conductor's resistance is printed, and what its temperature makes of it. */
export interface PrintedResistance {
  readonly table: Table;
  readonly column: string;
  /** Absent at the table's own temperature. */
  readonly temperatureFactor?: Step;
}

/**
 * Column and temperature factor of a conductor's direct-current resistance.
 *
 * NFPA 70 Chapter 9 Table 8 (2017, 2020, 2023) and its note on temperature: the printed resistance holds at 75 C and
 * changes with temperature T by the factor 1 + a (T - 75), with a for copper or aluminum at 75 C.
 * Worked: copper at 20 C: 1 + 0.00323 x (20 - 75) = 0.82235.
 * Silent: the table has no column for copper-clad aluminum, so none is answered.
 * @param path where the conductor was posted, as the head of the paths of its facts.
 */
export function printedResistance(
  sheet: CalculationSheet,
  conductor: DirectCurrentConductor,
  path: string,
  edition: Edition,
): PrintedResistance | CalculationFinding {
  const { tables, clauses } = edition;
  const { metal, coating } = conductor;
  const table = conductor.stranding === "solid" ? tables.conductorPropertiesSolid : tables.conductorPropertiesStranded;
  if (metal === "copper-clad-aluminum")
    return sheet.refuse("NOT_COVERED", `${table.cite.locator} has no column for copper-clad aluminum.`, table.cite);
  if (metal === "copper" && coating === undefined)
    return sheet.ask(
      `${path}/coating`,
      "The copper may be uncoated or coated with tin, and the two have different resistances.",
      table.cite,
    );
  const column = columnOf(metal, coating);
  const temperature = sheet.temperature("conductor temperature", conductor.temperature, `${path}/temperature`);
  if (temperature.value === TABLE_TEMPERATURE_C) return { table, column };
  const coefficient = sheet.readAt(
    `temperature coefficient of ${metal} at 75 C`,
    tables.physicalConstants,
    `${metal} temperature coefficient at 75 C`,
    "value",
    [],
  );
  if (isClosed(coefficient)) return coefficient;
  const rise = subtract(sheet.exact(temperature), exactOf(TABLE_TEMPERATURE_C));
  const factor = add(exactOf(1), multiply(sheet.exact(coefficient), rise));
  if (factor.numerator <= 0n)
    return sheet.refuse(
      "NOT_COVERED",
      `At ${String(temperature.value)} C the straight line of the table's note gives no resistance above zero.`,
      clauses.resistanceAtTemperature,
    );
  const temperatureFactor = sheet.exactly(
    "temperature factor",
    factor,
    "",
    [coefficient, temperature],
    "1 + coefficient x (temperature - 75)",
    `1 + ${String(coefficient.value)} x (${String(temperature.value)} - ${String(TABLE_TEMPERATURE_C)})`,
    clauses.resistanceAtTemperature,
  );
  return { table, column, temperatureFactor };
}

/**
 * Direct-current resistance of one conductor of the size, in ohms per 1000 ft.
 * Worked: solid 12 AWG copper at 20 C: 1.93 x 0.82235 = 1.587 ohm per 1000 ft.
 */
export function dcResistancePerKft(
  sheet: CalculationSheet,
  { table, column, temperatureFactor }: PrintedResistance,
  size: Step,
): Step | CalculationFinding {
  const printed = sheet.readAt("dc resistance at 75 C", table, String(size.value), column, [size]);
  if (isClosed(printed) || temperatureFactor === undefined) return printed;
  return sheet.multiply("dc resistance at the conductor temperature", [printed, temperatureFactor], "ohm/kft");
}

function columnOf(metal: "copper" | "aluminum", coating: "uncoated" | "coated" | undefined): string {
  if (metal === "aluminum") return "dcAluminumOhmPerKft";
  return coating === "coated" ? "dcCopperCoatedOhmPerKft" : "dcCopperUncoatedOhmPerKft";
}
