import type { CalculationFinding } from "../../core/calculation.js";
import { type CalculationSheet, isClosed } from "../../core/calculation-sheet.js";
import type { ConductorMetal } from "../../core/conductor.js";
import {
  type DirectCurrentConductor,
  dcResistancePerKft,
  type PrintedResistance,
  printedResistance,
} from "../../core/dc-resistance-per-kft.js";
import type { Edition } from "../../core/edition.js";
import type { Step } from "../../core/finding.js";
import { cellAt, isRefused, type Table } from "../../core/table.js";
import { UnusableFact } from "../../core/unusable-fact.js";

/** What the conductors run in, as Chapter 9 Table 9 tells it apart; "PVC" stands for every raceway without metal. */
export type ConduitMaterial = "PVC" | "aluminum" | "steel";
export const CONDUIT_MATERIALS: readonly ConduitMaterial[] = ["PVC", "aluminum", "steel"];

/** What stands against the current, and where it is read. */
export type CircuitImpedance =
  /** Direct current: Chapter 9 Table 8. */
  | ({ readonly kind: "dc-resistance" } & Omit<DirectCurrentConductor, "metal">)
  /** Alternating current: R and X of Chapter 9 Table 9 at the load's lagging power factor, above 0 up to 1. */
  | {
      readonly kind: "resistance-and-reactance";
      readonly conduit: ConduitMaterial;
      readonly powerFactor?: number;
    }
  /** Alternating current: the printed effective impedance of Chapter 9 Table 9, which holds at 0.85. */
  | { readonly kind: "effective-impedance"; readonly conduit: ConduitMaterial };

/** Where to read the ohms per 1000 ft of any size of this circuit. */
export type ImpedanceColumns = { readonly table: Table; readonly isPrinted: (size: string) => boolean } & (
  | { readonly kind: "dc"; readonly resistance: PrintedResistance }
  | {
      readonly kind: "ac";
      readonly r: string;
      readonly x: string;
      readonly powerFactor: Step;
      readonly sine: Step;
      readonly edition: Edition;
    }
  | { readonly kind: "effective"; readonly z: string }
);

export function impedanceColumns(
  sheet: CalculationSheet,
  metal: ConductorMetal,
  impedance: CircuitImpedance,
  edition: Edition,
): ImpedanceColumns | CalculationFinding {
  if (impedance.kind === "dc-resistance") {
    const resistance = printedResistance(sheet, { metal, ...impedance }, "question/impedance", edition);
    if (isClosed(resistance)) return resistance;
    const { table, column } = resistance;
    return { kind: "dc", table, resistance, isPrinted: (size) => !isRefused(cellAt(table, size, column)) };
  }
  const table = edition.tables.acImpedance;
  if (metal === "copper-clad-aluminum")
    return sheet.refuse("NOT_COVERED", `${table.cite.locator} has no column for copper-clad aluminum.`, table.cite);
  const suffix = `${metal === "copper" ? "Copper" : "Aluminum"}${CONDUIT_COLUMN[impedance.conduit]}`;
  if (impedance.kind === "effective-impedance") {
    const z = `z085${suffix}`;
    return { kind: "effective", table, z, isPrinted: (size) => !isRefused(cellAt(table, size, z)) };
  }
  if (impedance.powerFactor === undefined)
    return sheet.ask(
      "question/impedance/powerFactor",
      "How much of the reactance counts depends on the power factor of the load, which is not given.",
      table.cite,
    );
  const powerFactor = sheet.positive("power factor", impedance.powerFactor, "question/impedance/powerFactor", "");
  if (!(impedance.powerFactor <= 1))
    throw new UnusableFact("question/impedance/powerFactor", "must not be above 1", "a number above 0, at most 1");
  const sine = sheet.approximately(
    "sine of the power factor angle",
    Math.sqrt(1 - impedance.powerFactor ** 2),
    "",
    [powerFactor],
    "square root of (1 - power factor ^ 2)",
    `sqrt(1 - ${String(powerFactor.value)} ^ 2)`,
  );
  const r = `r${suffix}`;
  const x = impedance.conduit === "steel" ? "xSteel" : "xPvcAluminum";
  return {
    kind: "ac",
    table,
    r,
    x,
    powerFactor,
    sine,
    edition,
    isPrinted: (size) => !isRefused(cellAt(table, size, r)),
  };
}

/**
 * Ohms per 1000 ft that a conductor of the size sets against the current, to neutral.
 *
 * NFPA 70 Chapter 9 Table 9 and its note (2017, 2020, 2023): effective impedance = R x power factor + X x sine of its
 * angle; the table prints it for 0.85.
 * Worked: 600 kcmil aluminum in PVC at 0.7: 0.036 x 0.7 + 0.039 x 0.714 = 0.0531 ohm per 1000 ft.
 */
export function impedancePerKft(
  sheet: CalculationSheet,
  columns: ImpedanceColumns,
  size: Step,
): Step | CalculationFinding {
  const key = String(size.value);
  if (columns.kind === "dc") return dcResistancePerKft(sheet, columns.resistance, size);
  if (columns.kind === "effective")
    return sheet.readAt("effective impedance at 0.85 power factor", columns.table, key, columns.z, [size]);
  const r = sheet.readAt("ac resistance", columns.table, key, columns.r, [size]);
  if (isClosed(r)) return r;
  const x = sheet.readAt("reactance", columns.table, key, columns.x, [size]);
  if (isClosed(x)) return x;
  const { powerFactor, sine } = columns;
  return sheet.approximately(
    "effective impedance",
    Number(r.value) * Number(powerFactor.value) + Number(x.value) * Number(sine.value),
    "ohm/kft",
    [r, powerFactor, x, sine],
    "resistance x power factor + reactance x sine",
    `${String(r.value)} x ${String(powerFactor.value)} + ${String(x.value)} x ${String(sine.value)}`,
    columns.edition.clauses.effectiveImpedance,
  );
}

const CONDUIT_COLUMN: Readonly<Record<ConduitMaterial, string>> = { PVC: "Pvc", aluminum: "Aluminum", steel: "Steel" };
