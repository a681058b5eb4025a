import { BY_SHARE, jumperCell, jumperTable, writeShare } from "../../core/bonding-jumper.js";
import type { Citation } from "../../core/citation.js";
import type { ConductorGroup, ConductorMetal } from "../../core/conductor.js";
import { conductorPath } from "../../core/conductor-path.js";
import { type ConductorSize, sizeOf } from "../../core/conductor-size.js";
import type { Edition, EditionClauses } from "../../core/edition.js";
import type { CheckFinding, Step } from "../../core/finding.js";
import {
  areaText,
  awgOrKcmil,
  groundingColumn,
  metalMark,
  tradeSizeFor,
  writeArea,
} from "../../core/grounding-area.js";
import type { Bonding, Grounding, Joint, ServiceConductors } from "../../core/joint.js";
import { asking, notApplicable, type Rule, settled } from "../../core/rule.js";
import { type Cell, isRefused, type TableRefusal } from "../../core/table.js";
import { Worksheet } from "../../core/worksheet.js";
import { groundFinding } from "./equipment-ground-size.js";

const ID = "bonding-jumper-size";

/** Jumpers that go by the supply conductors. */
type SupplyBonding = Exclude<Bonding, "load-side" | "other-pipe" | "electrode-system" | "by-design">;

/** The clause that sends each of them to the table. */
const BY_SUPPLY: Readonly<Record<SupplyBonding, keyof EditionClauses>> = {
  main: "mainBondingJumper",
  system: "systemBondingJumper",
  "supply-side": "bondingJumperSize",
  "water-pipe": "waterPipeBonding",
  "structural-metal": "structuralMetalBonding",
};

/**
 * Is a bonding jumper large enough for what it bonds?
 *
 * NFPA 70 250.102, 250.28(D), 250.30(A)(1), 250.104 (2017, 2020, 2023), in our words. Main, system and supply-side
 * jumpers: the table by the area of the largest ungrounded supply conductor, all sets together, and beyond its last row
 * 12.5 % of that area in the jumper's own metal; jumpers in each of several raceways by what lies in one of them. Water
 * pipes and structural metal: the same table; from the 2020 edition on not larger than 3/0 AWG copper or 250 kcmil
 * aluminum (in 2020 by memory). Load side, and other pipes: as an equipment ground by the device of the circuit. Jumpers
 * between electrodes go by 250.66 and are judged with the electrode conductors.
 * Worked: five sets of 600 kcmil aluminum, 3000 kcmil: 12.5 % are 375 kcmil aluminum; for a water pipe 3/0 AWG copper is
 * enough in 2023.
 * Silent: bonds whose size no clause of these gives, such as a grid in earth, which go by their design; pipes of one
 * tenant or of a building behind a feeder (250.104(A)(2), (3)); a supply-side jumper need not be larger than the derived
 * conductors (250.30(A)(2)), which is not applied.
 */
export const bondingJumperSize: Rule = {
  id: ID,
  title: "Size of the bonding jumper",
  clauses: [
    "bondingJumperSize",
    "bondingJumperInRaceways",
    "equipmentBondingJumper",
    "mainBondingJumper",
    "systemBondingJumper",
    "waterPipeBonding",
    "otherPipeBonding",
    "structuralMetalBonding",
    "equipmentGroundSize",
    "conductorAreas",
  ],
  needs: [
    "joint/grounding/bonding",
    "joint/grounding/service",
    "joint/grounding/equivalentService",
    "joint/grounding/racewaysBondedApart",
    "joint/circuit/protection",
    "joint/conductors/0/size",
    "joint/conductors/0/metal",
  ],
  cannotSee: "what else is bonded by the same conductor",
  check({ joint }, edition) {
    if (joint.role !== "bonding") return notApplicable(ID, "the conductor is not a bonding jumper");
    const { grounding } = joint;
    const { clauses } = edition;
    if (grounding?.bonding === undefined)
      return asking(
        ID,
        new Worksheet(),
        "joint/grounding/bonding",
        "What the jumper bonds is not given, and its size goes by that: by the supply, by a device, or by its design.",
        { cite: clauses.bondingJumperSize, required: "the size for what it bonds", offered: offeredText(joint) },
      );
    const { bonding } = grounding;
    switch (bonding) {
      case "by-design":
        return notApplicable(ID, "it is stated that no clause sizes this bond; it goes by its design");
      case "electrode-system":
        return notApplicable(ID, "a jumper between electrodes is sized as an electrode conductor (250.53(C))");
      case "load-side":
        return groundFinding(ID, BONDING_WORDS, joint, edition, clauses.equipmentBondingJumper);
      case "other-pipe":
        return groundFinding(ID, BONDING_WORDS, joint, edition, clauses.otherPipeBonding);
      default:
        return bySupply(joint, grounding, bonding, edition);
    }
  },
};

const BONDING_WORDS = { one: "bonding jumper", ahead: "what is bonded" } as const;

interface AskedFact {
  readonly path: string;
  readonly because: string;
}

/** By what one conductor is judged, once it is clear that nothing missing can turn the answer. */
type Judged =
  | { readonly by: "cap"; readonly size: ConductorSize; readonly cap: string }
  | { readonly by: "smallest"; readonly size: ConductorSize }
  | { readonly by: "table"; readonly size: ConductorSize; readonly supply: ServiceConductors }
  | {
      readonly by: "share";
      readonly size: ConductorSize;
      readonly supply: ServiceConductors;
      readonly base: ServiceConductors;
      readonly cap: string | undefined;
    };

interface Required {
  readonly area: Step;
  readonly text: string;
  readonly because: string;
}

function bySupply(joint: Joint, grounding: Grounding, bonding: SupplyBonding, edition: Edition): CheckFinding {
  const cite = citeOf(grounding, bonding, edition);
  const worksheet = new Worksheet();
  const compared: Step[] = [];
  let required: Required | undefined;
  let asked: AskedFact | undefined;
  for (const [group, conductor] of joint.conductors.entries()) {
    const judged = decide(grounding, bonding, conductor, group, edition);
    if ("path" in judged) {
      asked ??= judged;
      continue;
    }
    const size = worksheet.given("size of the jumper", judged.size.text, conductorPath(group, "size"));
    const metal = worksheet.given("metal of the jumper", conductor.metal, conductorPath(group, "metal"));
    const kind = worksheet.given("what the jumper bonds", bonding, "joint/grounding/bonding");
    const area = writeArea(worksheet, judged.size, [size], edition);
    required = writeRequired(worksheet, judged, grounding, bonding, conductor.metal, [kind, metal], edition);
    if (!worksheet.compare("the jumper is large enough", area, ">=", required.area, cite))
      return settled(ID, worksheet, {
        sentence: `The bonding jumper is ${conductorText(conductor)}, smaller than the ${required.text} asked for: ${required.because}.`,
        cite,
        required: required.text,
        offered: conductorText(conductor),
        fix: `a bonding jumper of ${required.text} or larger`,
      });
    compared.push(worksheet.last);
  }
  if (asked !== undefined || required === undefined)
    return asking(ID, worksheet, asked?.path ?? "joint/conductors/0/size", asked?.because ?? "No conductor is given.", {
      cite,
      required: "the size for the supply conductors",
      offered: offeredText(joint),
    });
  if (compared.length > 1)
    worksheet.conclude(
      "every jumper is large enough",
      "pass",
      compared,
      "each of them reaches the size asked for",
      cite,
    );
  return settled(ID, worksheet, {
    sentence: `The bonding jumper is ${offeredText(joint)}; ${required.text} is enough: ${required.because}.`,
    cite,
    required: required.text,
    offered: offeredText(joint),
  });
}

function citeOf(grounding: Grounding, bonding: SupplyBonding, { clauses }: Edition): Citation {
  return apart(grounding, bonding) === 1 ? clauses[BY_SUPPLY[bonding]] : clauses.bondingJumperInRaceways;
}

/** Raceways among which the supply is divided: only a jumper that runs with the supply goes by one of them. */
function apart(grounding: Grounding, bonding: SupplyBonding): number {
  return bonding === "supply-side" ? (grounding.racewaysBondedApart ?? 1) : 1;
}

function decide(
  grounding: Grounding,
  bonding: SupplyBonding,
  { size: text, metal }: ConductorGroup,
  group: number,
  edition: Edition,
): Judged | AskedFact {
  const size = awgOrKcmil(text);
  if (size === undefined)
    return {
      path: conductorPath(group, "size"),
      because:
        "The sizes of bonding jumpers are printed in AWG and kcmil; a size of another system cannot be set against them.",
    };
  const cap = capOf(bonding, metal, edition);
  if (cap !== undefined && size.areaKcmil >= sizeOf(cap).areaKcmil) return { by: "cap", size, cap };
  if (size.areaKcmil < smallestKcmil(metal, edition)) return { by: "smallest", size };
  const supply = grounding.service;
  if (supply === undefined)
    return {
      path: "joint/grounding/service",
      because: "The supply conductors are not given, and the size of the bonding jumper goes by their area.",
    };
  const area = areaKcmil(supply, apart(grounding, bonding));
  if (area === undefined) return notDivisible(supply);
  if (supplyCell(supply, area, metal, edition).value !== BY_SHARE) return { by: "table", size, supply };
  const base = supply.metal === metal ? supply : grounding.equivalentService;
  if (base?.metal === metal && areaKcmil(base, apart(grounding, bonding)) !== undefined)
    return { by: "share", size, supply, base, cap };
  return {
    path: "joint/grounding/equivalentService",
    because:
      "The supply is of another metal than the jumper: 12.5 % is taken of conductors of the jumper's metal that would carry as much, which are not given.",
  };
}

function notDivisible({ size, sets }: ServiceConductors): AskedFact {
  return awgOrKcmil(size) === undefined || !(sets >= 1)
    ? {
        path: "joint/grounding/service",
        because:
          "The supply conductor must be given in AWG or kcmil, and its sets counted, for the table to be entered.",
      }
    : {
        path: "joint/grounding/racewaysBondedApart",
        because: "The sets of the supply do not divide evenly among the raceways that are given.",
      };
}

/** All sets of a phase together, or those in one raceway; undefined where that is no number of conductors. */
function areaKcmil({ size, sets }: ServiceConductors, raceways: number): number | undefined {
  const parsed = awgOrKcmil(size);
  if (parsed === undefined || !(sets >= 1) || !(sets % raceways === 0)) return undefined;
  return (parsed.areaKcmil * sets) / raceways;
}

function capOf(bonding: SupplyBonding, metal: ConductorMetal, { pipeBondingCap }: Edition): string | undefined {
  if (pipeBondingCap === null || (bonding !== "water-pipe" && bonding !== "structural-metal")) return undefined;
  return pipeBondingCap[groundingColumn(metal)];
}

/** Within the table's first row, which goes down to every smaller one. */
const SMALLEST_SUPPLY = "14 AWG";

/** What the smallest of all supplies asks for. */
function smallestKcmil(metal: ConductorMetal, edition: Edition): number {
  return sizeOf(String(firstCell(metal, edition).value)).areaKcmil;
}

/** The same for supplies of both metals: 250.102(C)(1) begins with one row of sizes. */
function firstCell(metal: ConductorMetal, edition: Edition): Cell {
  return known(jumperCell("copper", sizeOf(SMALLEST_SUPPLY).areaKcmil, metal, edition));
}

function supplyCell({ metal: of }: ServiceConductors, kcmil: number, metal: ConductorMetal, edition: Edition): Cell {
  return known(jumperCell(of, kcmil, metal, edition));
}

/** The table's first row reaches down to every supply, and its last one up to every other. */
function known(cell: Cell | TableRefusal): Cell {
  if (isRefused(cell)) throw new Error(cell.detail);
  return cell;
}

function writeRequired(
  worksheet: Worksheet,
  judged: Judged,
  grounding: Grounding,
  bonding: SupplyBonding,
  metal: ConductorMetal,
  uses: readonly Step[],
  edition: Edition,
): Required {
  switch (judged.by) {
    case "cap":
      return writeCap(worksheet, judged.cap, bonding, metal, uses, edition);
    case "smallest": {
      const read = worksheet.read("smallest size the table asks for", firstCell(metal, edition), uses);
      const text = `${String(read.value)} ${metalMark(metal)}`;
      return {
        area: writeArea(worksheet, sizeOf(String(read.value)), [read], edition),
        text,
        because: "no supply asks for less",
      };
    }
    case "table": {
      const area = writeSupply(worksheet, judged.supply, SERVICE, grounding, bonding, edition);
      const read = readCell(worksheet, judged.supply, area, metal, uses, edition);
      const text = `${String(read.value)} ${metalMark(metal)}`;
      const because = `the supply${whereText(grounding, bonding)} has ${supplyText(judged.supply, apart(grounding, bonding))}`;
      return { area: writeArea(worksheet, sizeOf(String(read.value)), [read], edition), text, because };
    }
    case "share":
      return writeByShare(worksheet, judged, grounding, bonding, metal, uses, edition);
  }
}

function writeByShare(
  worksheet: Worksheet,
  { supply, base, cap }: Judged & { readonly by: "share" },
  grounding: Grounding,
  bonding: SupplyBonding,
  metal: ConductorMetal,
  uses: readonly Step[],
  edition: Edition,
): Required {
  const supplyArea = writeSupply(worksheet, supply, SERVICE, grounding, bonding, edition);
  const read = readCell(worksheet, supply, supplyArea, metal, uses, edition);
  const baseArea = base === supply ? supplyArea : writeSupply(worksheet, base, EQUIVALENT, grounding, bonding, edition);
  const area = writeShare(worksheet, baseArea, read, jumperTable(supply.metal, edition));
  if (cap !== undefined) {
    const limit = writeCap(worksheet, cap, bonding, metal, uses, edition);
    if (worksheet.compare("the share goes beyond the limit", area, ">", limit.area, limitCite(bonding, edition)))
      return limit;
  }
  const size = tradeSizeFor(edition, area.value);
  return {
    area,
    text: size === undefined ? areaText(area.value) : `${size} ${metalMark(metal)}`,
    because: `12.5 % of ${supplyText(base, apart(grounding, bonding))}${whereText(grounding, bonding)} is ${areaText(area.value)}`,
  };
}

function readCell(
  worksheet: Worksheet,
  supply: ServiceConductors,
  area: Step,
  metal: ConductorMetal,
  uses: readonly Step[],
  edition: Edition,
): Step {
  const cell = supplyCell(supply, Number(area.value), metal, edition);
  return worksheet.read("least size by the supply", cell, [area, ...uses]);
}

function writeCap(
  worksheet: Worksheet,
  cap: string,
  bonding: SupplyBonding,
  metal: ConductorMetal,
  uses: readonly Step[],
  edition: Edition,
): Required {
  const stated = worksheet.state("largest size asked for", cap, limitCite(bonding, edition), undefined, uses);
  return {
    area: writeArea(worksheet, sizeOf(cap), [stated], edition),
    text: `${cap} ${metalMark(metal)}`,
    because: "no supply asks for more here",
  };
}

function limitCite(bonding: SupplyBonding, { clauses }: Edition): Citation {
  return clauses[BY_SUPPLY[bonding]];
}

const SERVICE = { name: "supply", head: "joint/grounding/service" } as const;
const EQUIVALENT = { name: "equivalent supply", head: "joint/grounding/equivalentService" } as const;

function writeSupply(
  worksheet: Worksheet,
  { size, metal, sets }: ServiceConductors,
  { name, head }: typeof SERVICE | typeof EQUIVALENT,
  grounding: Grounding,
  bonding: SupplyBonding,
  edition: Edition,
): Step {
  const sizeStep = worksheet.given(`${name} conductor`, size, `${head}/size`);
  const metalStep = worksheet.given(`metal of the ${name} conductor`, metal, `${head}/metal`);
  const one = writeArea(worksheet, sizeOf(size), [sizeStep, metalStep], edition);
  const count = worksheet.given(`sets of ${name} conductors`, sets, `${head}/sets`);
  const total = worksheet.multiply(`${name} area of all sets`, [one, count], "kcmil");
  const raceways = apart(grounding, bonding);
  if (raceways === 1) return total;
  const divisor = worksheet.given("raceways with a jumper each", raceways, "joint/grounding/racewaysBondedApart");
  return worksheet.divide(
    `${name} area in one raceway`,
    total,
    divisor,
    "kcmil",
    edition.clauses.bondingJumperInRaceways,
  );
}

function supplyText({ size, metal, sets }: ServiceConductors, raceways: number): string {
  const inOne = sets / raceways;
  return `${inOne === 1 ? "" : `${String(inOne)} x `}${size} ${metalMark(metal)}`;
}

function whereText(grounding: Grounding, bonding: SupplyBonding): string {
  return apart(grounding, bonding) === 1 ? "" : " in each raceway";
}

function conductorText({ size, metal }: ConductorGroup): string {
  return `${size} ${metalMark(metal)}`;
}

function offeredText({ conductors }: Joint): string {
  return conductors.map(conductorText).join(" and ");
}
