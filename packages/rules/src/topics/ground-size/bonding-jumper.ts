import { BY_SHARE, jumperCell, jumperTable, writeShare } from "../../core/bonding-jumper.js";
import type { Calculation, CalculationFinding } from "../../core/calculation.js";
import { CalculationSheet, isClosed } from "../../core/calculation-sheet.js";
import type { Citation } from "../../core/citation.js";
import type { ConductorMetal } from "../../core/conductor.js";
import { sizeOf } from "../../core/conductor-size.js";
import { metalWords } from "../../core/conductor-words.js";
import type { Edition } from "../../core/edition.js";
import { groundByDevice } from "../../core/equipment-ground.js";
import type { Step } from "../../core/finding.js";
import { areaText, tradeSizeFor, writeArea } from "../../core/grounding-area.js";
import { UnusableFact } from "../../core/unusable-fact.js";
import { type SupplyConductors, supplyArea } from "./supply-area.js";

const NAME = "bonding-jumper";

/** "load-side": of equipment behind an overcurrent device, sized as an equipment ground. */
export const BONDING_JUMPERS = ["main", "system", "supply-side", "grounded-conductor", "load-side"] as const;
export type BondingJumperKind = (typeof BONDING_JUMPERS)[number];

export interface BondingJumperQuestion {
  readonly kind: BondingJumperKind;
  readonly metal: ConductorMetal;
  /** Largest ungrounded supply conductor. Needed on the supply side. */
  readonly supply?: SupplyConductors;
  /**
   * Where the supply is of another metal and beyond the table's sizes: conductors of the jumper's metal that carry as
   * much as the installed ones.
   */
  readonly equivalentSupply?: SupplyConductors;
  /** Raceways that the supply's sets are divided among, where each has a jumper of its own. */
  readonly racewaysBondedApart?: number;
  /** Device ahead in amperes. Needed on the load side. */
  readonly deviceA?: number;
}

/**
 * How large must a bonding jumper, or a grounded conductor on the supply side, be?
 *
 * NFPA 70 250.102(C), (D), 250.24(C), 250.28(D) (2017, 2020, 2023), in our words: by the area of the largest ungrounded
 * supply conductor, all sets of a phase together, from the table; beyond 1100 kcmil copper or 1750 kcmil aluminum at least
 * 12.5 % of that area. Jumpers of several raceways, one in each, go by the conductors in that raceway. On the load
 * side it is sized as an equipment ground.
 * Worked: three sets of 250 kcmil copper, 750 kcmil: 2/0 AWG copper. Four sets of 500 kcmil: 0.125 x 2000 = 250 kcmil.
 * Silent: a grounded conductor also carries its load and is no smaller than 1/0 AWG in parallel; that is judged apart. A
 * jumper of a separately derived system need not be larger than the derived conductors (250.30(A)), which is not applied.
 */
export const bondingJumper: Calculation<BondingJumperQuestion> = {
  name: NAME,
  title: "Size of a bonding jumper",
  clauses: [
    "bondingJumperSize",
    "bondingJumperInRaceways",
    "equipmentBondingJumper",
    "equipmentGroundSize",
    "conductorAreas",
  ],
  needs: [
    "question/kind",
    "question/metal",
    "question/supply",
    "question/equivalentSupply",
    "question/racewaysBondedApart",
    "question/deviceA",
  ],
  cannotSee: "metal raceways and bars that serve as the jumper",
  answer(question, basis, edition) {
    const sheet = new CalculationSheet(NAME, basis);
    const kind = sheet.given("kind of jumper", question.kind, "question/kind");
    const metal = sheet.given("metal of the jumper", question.metal, "question/metal");
    return question.kind === "load-side"
      ? loadSide(sheet, question, metal, edition)
      : supplySide(sheet, question, kind, metal, edition);
  },
};

function loadSide(
  sheet: CalculationSheet,
  { deviceA, metal }: BondingJumperQuestion,
  metalStep: Step,
  edition: Edition,
): CalculationFinding {
  const cite = edition.clauses.equipmentBondingJumper;
  if (deviceA === undefined)
    return sheet.ask(
      "question/deviceA",
      "On the load side the jumper goes by the device ahead, whose rating is not given.",
      cite,
    );
  const device = sheet.positive("device ahead", deviceA, "question/deviceA", "A");
  const least = groundByDevice(sheet, device, metal, metalStep, edition);
  if ("refusal" in least) return sheet.outsideTable(least, edition.tables.equipmentGround.cite);
  return finish(sheet, metal, least.area, [], `on the load side ${least.because}`, cite, edition);
}

function supplySide(
  sheet: CalculationSheet,
  question: BondingJumperQuestion,
  kind: Step,
  metalStep: Step,
  edition: Edition,
): CalculationFinding {
  const { clauses } = edition;
  const { supply, metal } = question;
  if (supply === undefined)
    return sheet.ask(
      "question/supply",
      "The supply conductors are not given, and the jumper goes by their area.",
      clauses.bondingJumperSize,
    );
  const total = supplyArea(sheet, supply, "question/supply", "supply", edition);
  if (isClosed(total)) return total;
  const area = areaInOneRaceway(sheet, question.racewaysBondedApart, supply, total, edition);
  const apart = question.racewaysBondedApart !== undefined;
  const cite = apart ? clauses.bondingJumperInRaceways : clauses.bondingJumperSize;
  const table = jumperTable(supply.metal, edition);
  const cell = jumperCell(supply.metal, Number(area.value), metal, edition);
  const read = sheet.tryRead("least size by the supply", cell, [area, metalStep, kind]);
  if ("refusal" in read) return sheet.outsideTable(read, table.cite);
  const where = apart ? " in each raceway" : "";
  if (read.value !== BY_SHARE) {
    const least = writeArea(sheet, sizeOf(String(read.value)), [read], edition);
    return finish(
      sheet,
      metal,
      least,
      [],
      `the supply of ${areaText(Number(area.value))}${where} asks for it`,
      cite,
      edition,
    );
  }
  const base = supply.metal === metal ? area : equivalentBase(sheet, question, edition);
  if (isClosed(base)) return base;
  const least = writeShare(sheet, base, read, table);
  return finish(
    sheet,
    metal,
    least,
    [read],
    `12.5 % of the supply's ${areaText(Number(base.value))}${where} is ${areaText(Number(least.value))}`,
    cite,
    edition,
  );
}

/** Jumpers in each of several raceways go by what lies in one of them. */
function areaInOneRaceway(
  sheet: CalculationSheet,
  racewaysBondedApart: number | undefined,
  { sets }: SupplyConductors,
  total: Step,
  { clauses }: Edition,
): Step {
  if (racewaysBondedApart === undefined) return total;
  const path = "question/racewaysBondedApart";
  const raceways = sheet.count("raceways with a jumper each", racewaysBondedApart, path, "raceways");
  if (!(sets % racewaysBondedApart === 0))
    throw new UnusableFact(
      path,
      `must divide the ${String(sets)} sets of the supply evenly`,
      "a number that divides the sets evenly",
    );
  return sheet.divide("supply area in one raceway", total, raceways, "kcmil", clauses.bondingJumperInRaceways);
}

/** The area that the share is taken of where the supply is of another metal: conductors of the jumper's own. */
function equivalentBase(
  sheet: CalculationSheet,
  { metal, equivalentSupply, racewaysBondedApart }: BondingJumperQuestion,
  edition: Edition,
): Step | CalculationFinding {
  const cite = edition.clauses.bondingJumperSize;
  if (equivalentSupply === undefined)
    return sheet.ask(
      "question/equivalentSupply",
      `The supply is of another metal: 12.5 % is taken of the ${metalWords(metal)} conductors that would carry as much, and they are not given.`,
      cite,
    );
  if (equivalentSupply.metal !== metal)
    throw new UnusableFact("question/equivalentSupply/metal", "must be the metal of the jumper", metal);
  const total = supplyArea(sheet, equivalentSupply, "question/equivalentSupply", "equivalent supply", edition);
  return isClosed(total) ? total : areaInOneRaceway(sheet, racewaysBondedApart, equivalentSupply, total, edition);
}

function finish(
  sheet: CalculationSheet,
  metal: ConductorMetal,
  least: Step,
  uses: readonly Step[],
  because: string,
  cite: Citation,
  edition: Edition,
): CalculationFinding {
  const size = tradeSizeFor(edition, Number(least.value));
  if (size === undefined)
    return sheet.refuse("NO_SOLUTION", `No single conductor has the ${areaText(Number(least.value))} asked for.`, cite);
  const result = sheet.conclude(
    "smallest size",
    size,
    [least, ...uses],
    `the first size that has the area; ${because}`,
    cite,
  );
  return sheet.finish({
    sentence: `The jumper is ${size} ${metalWords(metal)} or larger: ${because}.`,
    cite,
    results: [
      { name: "smallest size", step: result },
      { name: "area needed", step: least },
    ],
  });
}
