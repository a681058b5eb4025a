/**
 * The least size of an equipment ground.
 *
 * NFPA 70 250.122 (2017, 2020, 2023), in our words: (A) by the rating of the device ahead, and never larger than the phase
 * conductors; (B) raised in proportion to the areas of phases that were raised.
 * Silent: (A) compares the ground with the phases and does not say of which metals. An aluminum ground of the area of
 * copper phases carries less than they do, so the limit is taken only where the ground is copper or of the phases' column.
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

/** The phases that a ground runs with: sizes in AWG or kcmil and of one metal. */
export interface PhasesOfGround {
  readonly metal: ConductorMetal;
  /** The smallest size that would have been enough, where that is stated. */
  readonly minimum: Step | undefined;
  readonly installed: Step;
  /** Sets in parallel, where there is more than one. */
  readonly sets: Step | undefined;
}

/** The ground by the device, raised in proportion to the areas of the phases, (B), and by (A) no larger than they are. */
export function groundForPhases(
  worksheet: Worksheet,
  byDevice: LeastGround,
  phases: PhasesOfGround,
  metal: ConductorMetal,
  edition: Edition,
): LeastGround {
  const installed = writeArea(worksheet, sizeOf(String(phases.installed.value)), [phases.installed], edition);
  const raised =
    phases.minimum === undefined
      ? byDevice
      : inProportion(worksheet, byDevice, phases.minimum, phases.installed, installed, metal, edition);
  return limitedByPhases(metal, phases.metal)
    ? noLargerThanPhases(worksheet, raised, installed, phases.sets, metal, edition)
    : raised;
}

/** Whether a ground of the phases' area conducts no less than they do. */
function limitedByPhases(ground: ConductorMetal, phases: ConductorMetal): boolean {
  return ground === "copper" || groundingColumn(phases) === "aluminum";
}

function inProportion(
  worksheet: Worksheet,
  byDevice: LeastGround,
  minimumSize: Step,
  installedSize: Step,
  installed: Step,
  metal: ConductorMetal,
  edition: Edition,
): LeastGround {
  const cite = edition.clauses.equipmentGroundUpsizing;
  const from = String(minimumSize.value);
  const minimum = writeArea(worksheet, sizeOf(from), [minimumSize], edition);
  if (!worksheet.compare("the phases were raised", installed, ">", minimum, cite)) return byDevice;
  const product = worksheet.multiply("area by the device x installed area", [byDevice.area, installed], "kcmil2", cite);
  const area = worksheet.divide("area in proportion", product, minimum, "kcmil", cite);
  const because = `phases raised from ${from} to ${String(installedSize.value)} ask for ${areaText(area.value)}`;
  return sized(area, because, metal, edition);
}

function noLargerThanPhases(
  worksheet: Worksheet,
  least: LeastGround,
  installed: Step,
  sets: Step | undefined,
  metal: ConductorMetal,
  edition: Edition,
): LeastGround {
  const all =
    sets === undefined
      ? installed
      : worksheet.multiply("area of the phase conductors together", [installed, sets], "kcmil");
  const larger = worksheet.compare(
    "the ground would be larger than the phases",
    least.area,
    ">",
    all,
    edition.clauses.equipmentGroundSize,
  );
  return larger ? sized(all, "it need not be larger than the phase conductors", metal, edition) : least;
}

function sized(area: Step, because: string, metal: ConductorMetal, edition: Edition): LeastGround {
  const neededKcmil = Number(area.value);
  const size = tradeSizeFor(edition, neededKcmil);
  return { area, text: size === undefined ? areaText(neededKcmil) : `${size} ${metalMark(metal)}`, because };
}
