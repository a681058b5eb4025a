/**
 * The least size of an equipment ground.
 *
 * NFPA 70 250.122 (2017, 2020, 2023), in our words: (A) by the rating of the device ahead, and never larger than the phase
 * conductors; (B) raised in proportion to the areas of phases that were raised.
 * Worked: 225 A asks for 4 AWG copper, 41.74 kcmil; phases raised from 300 to 500 kcmil ask for
 * 41.74 x 500 / 300 = 69.57 kcmil, so 1 AWG.
 */
import type { ConductorMetal } from "./conductor.js";
import { sizeOf } from "./conductor-size.js";
import type { Edition } from "./edition.js";
import type { Step } from "./finding.js";
import { areaText, groundingColumn, metalMark, tradeSizeFor, writeArea } from "./grounding-area.js";
import { cellInInterval, type TableRefusal } from "./table.js";
import type { Worksheet } from "./worksheet.js";

/** What a ground must at least be. */
export interface LeastGround {
  readonly area: Step;
  /** The trade size, or the area where no trade size is as large: "1 AWG CU". */
  readonly text: string;
  readonly because: string;
}

/** By the device ahead, (A); or the table's refusal. */
export function groundByDevice(
  worksheet: Worksheet,
  device: Step,
  metal: ConductorMetal,
  metalStep: Step,
  edition: Edition,
): LeastGround | TableRefusal {
  const deviceA = typeof device.value === "number" ? device.value : Number.NaN;
  const cell = cellInInterval(edition.tables.equipmentGround, deviceA, groundingColumn(metal));
  const read = worksheet.tryRead("least size by the device", cell, [device, metalStep]);
  if ("refusal" in read) return read;
  const base = sizeOf(String(read.value));
  return {
    area: writeArea(worksheet, base, [read], edition),
    text: `${base.text} ${metalMark(metal)}`,
    because: `a device of ${String(deviceA)} A asks for it`,
  };
}

/** Phases that were raised: sizes that can be read, in AWG or kcmil and in one metal. */
export interface RaisedPhases {
  readonly minimum: Step;
  readonly installed: Step;
  /** Sets in parallel, where there is more than one. */
  readonly sets: Step | undefined;
  /** Whether the ground stops at the size of the phase conductors, (A). */
  readonly limitGround: boolean;
}

/** In proportion to the areas of the phase conductors, (B), and by (A) never more than the phase itself. */
export function raisedGround(
  worksheet: Worksheet,
  base: LeastGround,
  phases: RaisedPhases,
  metal: ConductorMetal,
  edition: Edition,
): LeastGround {
  const cite = edition.clauses.equipmentGroundUpsizing;
  const from = String(phases.minimum.value);
  const to = String(phases.installed.value);
  const minimum = writeArea(worksheet, sizeOf(from), [phases.minimum], edition);
  const installed = writeArea(worksheet, sizeOf(to), [phases.installed], edition);
  if (!worksheet.compare("the phases were raised", installed, ">", minimum, cite)) return base;
  const product = worksheet.multiply("area by the device x installed area", [base.area, installed], "kcmil2", cite);
  const proportional = worksheet.divide("area in proportion", product, minimum, "kcmil", cite);
  if (!phases.limitGround) return sized(proportional, raisedBecause(from, to, proportional), metal, edition);
  const cap =
    phases.sets === undefined
      ? installed
      : worksheet.multiply("area of the phase conductors together", [installed, phases.sets], "kcmil");
  const capped = worksheet.compare(
    "the proportion goes beyond the phase conductor",
    proportional,
    ">",
    cap,
    edition.clauses.equipmentGroundSize,
  );
  return capped
    ? sized(
        cap,
        "phases that were raised ask for more, and the ground need not be larger than they are",
        metal,
        edition,
      )
    : sized(proportional, raisedBecause(from, to, proportional), metal, edition);
}

function raisedBecause(from: string, to: string, area: Step): string {
  return `phases raised from ${from} to ${to} ask for ${areaText(Number(area.value))}`;
}

function sized(area: Step, because: string, metal: ConductorMetal, edition: Edition): LeastGround {
  const neededKcmil = Number(area.value);
  const size = tradeSizeFor(edition, neededKcmil);
  return { area, text: size === undefined ? areaText(neededKcmil) : `${size} ${metalMark(metal)}`, because };
}
