import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { CalculationSheet } from "../../core/calculation-sheet.js";
import { citationText } from "../../core/citation.js";
import type { ConductorMetal } from "../../core/conductor.js";
import { metalWords } from "../../core/conductor-words.js";
import type { Edition } from "../../core/edition.js";
import { groundByDevice, groundForPhases, type LeastGround } from "../../core/equipment-ground.js";
import type { Step } from "../../core/finding.js";
import { areaText, awgOrKcmil, tradeSizeFor } from "../../core/grounding-area.js";

const NAME = "equipment-ground";

/** The phase conductors that the ground runs with. */
export interface GroundedPhases {
  readonly metal: ConductorMetal;
  readonly installed: string;
  /** The smallest size that would have been enough, where a larger one is installed. */
  readonly minimum?: string;
  readonly sets: number;
  /** Whether parallel sets run together or each in a raceway or cable of its own. */
  readonly separateRaceways: boolean;
}

export interface EquipmentGroundQuestion {
  /** Rating of the device ahead in amperes; for a tap, of the feeder's device. */
  readonly deviceA?: number;
  readonly metal: ConductorMetal;
  /** Needed where the phases were raised, run in parallel, or may be smaller than the table's ground. */
  readonly phases?: GroundedPhases;
}

/**
 * How large must a wire-type equipment ground be?
 *
 * NFPA 70 250.122(A), (B), (F) (2017, 2020, 2023), in our words: the size of the table by the device ahead; raised in
 * proportion to the areas of phase conductors that are larger than would be enough (in 2023 not where that is for the
 * surroundings, 310.15(B), (C), so state as the minimum what the surroundings ask for); never larger than the phase
 * conductors, all sets together; of full size in each raceway where parallel sets run apart. Areas in kcmil.
 * Worked: 300 A, 250 kcmil raised to 350: 41.74 x 350 / 250 = 58.44 kcmil, so 2 AWG copper.
 * Silent: the ground sized by a qualified person for its fault path (2020, 2023); an aluminum ground with copper phases is
 * not limited by their size, because at that size it would conduct less than they do.
 */
export const equipmentGround: Calculation<EquipmentGroundQuestion> = {
  name: NAME,
  title: "Size of an equipment ground",
  clauses: ["equipmentGroundSize", "equipmentGroundUpsizing", "equipmentGroundParallel", "conductorAreas"],
  needs: ["question/deviceA", "question/metal", "question/phases"],
  cannotSee: "why the phases were raised, and metal raceways that serve as the ground",
  answer(question, basis, edition) {
    const sheet = new CalculationSheet(NAME, basis);
    const { clauses, tables } = edition;
    const { deviceA, metal, phases } = question;
    if (deviceA === undefined)
      return sheet.ask(
        "question/deviceA",
        "The rating of the device ahead is not given, and the ground goes by it.",
        clauses.equipmentGroundSize,
      );
    const device = sheet.positive("device ahead of the ground", deviceA, "question/deviceA", "A");
    const metalStep = sheet.given("metal of the ground", metal, "question/metal");
    const plain = groundByDevice(sheet, device, metal, metalStep, edition);
    if ("refusal" in plain) return sheet.outsideTable(plain, tables.equipmentGround.cite);
    if (phases === undefined) return finish(sheet, question, plain, undefined, edition);
    const head = "question/phases";
    for (const [path, size] of [
      [`${head}/installed`, phases.installed],
      [`${head}/minimum`, phases.minimum],
    ] as const)
      if (size !== undefined && awgOrKcmil(size) === undefined)
        return sheet.refuse(
          "OUTSIDE_TABLE",
          `${path} must be a size in AWG or kcmil for its area to be compared, not ${size}.`,
          clauses.conductorAreas,
        );
    const installed = sheet.given("installed phase size", phases.installed, `${head}/installed`);
    const sets = sheet.count("sets of phase conductors", phases.sets, `${head}/sets`, "sets");
    const several = phases.sets > 1 ? sets : undefined;
    const minimum =
      phases.minimum === undefined ? undefined : sheet.given("least phase size", phases.minimum, `${head}/minimum`);
    const ground = { metal: phases.metal, minimum, installed, sets: several };
    const least = groundForPhases(sheet, plain, ground, metal, edition);
    return finish(sheet, question, least, several, edition);
  },
};

function finish(
  sheet: CalculationSheet,
  { metal, phases }: EquipmentGroundQuestion,
  least: LeastGround,
  sets: Step | undefined,
  edition: Edition,
): CalculationFinding {
  const { clauses } = edition;
  const cite = phases?.minimum === undefined ? clauses.equipmentGroundSize : clauses.equipmentGroundUpsizing;
  const size = tradeSizeFor(edition, Number(least.area.value));
  if (size === undefined)
    return sheet.refuse(
      "NO_SOLUTION",
      `No single conductor has the ${areaText(Number(least.area.value))} asked for: use grounds in parallel.`,
      cite,
    );
  const each = phases?.separateRaceways === true ? sets : undefined;
  const count = each ?? sheet.conclude("grounds of this size", 1, [], "one ground serves the circuit", cite, "grounds");
  const result = sheet.conclude(
    "smallest size",
    size,
    each === undefined ? [least.area] : [least.area, each],
    `the first size that has the area; ${least.because}`,
    cite,
  );
  const words = `${size} ${metalWords(metal)}`;
  return sheet.finish({
    sentence:
      each === undefined
        ? `The equipment ground is ${words} or larger: ${least.because}.`
        : `There is an equipment ground of ${words} or larger in each of the ${String(each.value)} raceways: ${least.because}.`,
    cite,
    results: [
      { name: "smallest size", step: result },
      { name: "area needed", step: least.area },
      { name: "grounds of this size", step: count },
    ],
    advice:
      each === undefined
        ? []
        : [`The size is not divided among the raceways: ${citationText(clauses.equipmentGroundParallel)}.`],
  });
}
