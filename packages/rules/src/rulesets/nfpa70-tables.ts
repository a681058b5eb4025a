import type { EditionTables } from "../core/edition.js";
import { openTable, type TableData } from "../core/table.js";
import { bunchedStrands, fineStrands } from "../generated/astm-strands-undated/index.js";
import { kFactors } from "../generated/iec60364-5-54-2011/index.js";
import { padBoltTorque } from "../generated/nema-cc1-2009/index.js";
import { boltTorqueNeta, likeJointResistance, temperatureRise } from "../generated/neta-ats-2021/index.js";
import { physicalConstants } from "../generated/physics-codata-and-handbooks/index.js";
import { markingCodes } from "../generated/ul486-2023/index.js";

/** Tables of other publications, which every edition of the code goes with. */
type OfOtherPublications =
  | "markingCodes"
  | "padBoltTorque"
  | "boltTorqueNeta"
  | "likeJointResistance"
  | "temperatureRise"
  | "physicalConstants"
  | "kFactors"
  | "fineStrands"
  | "bunchedStrands";

/** The tables of an edition: those that it prints itself, and those of other publications. */
export function nfpa70Tables(
  published: { readonly [Name in Exclude<keyof EditionTables, OfOtherPublications>]: TableData },
): EditionTables {
  return Object.freeze({
    ampacityRaceway: openTable(published.ampacityRaceway),
    ampacityFreeAir: openTable(published.ampacityFreeAir),
    ambientCorrection30c: openTable(published.ambientCorrection30c),
    smallConductor: openTable(published.smallConductor),
    standardRatings: openTable(published.standardRatings),
    equipmentGround: openTable(published.equipmentGround),
    electrodeConductorCopperService: openTable(published.electrodeConductorCopperService),
    electrodeConductorAluminumService: openTable(published.electrodeConductorAluminumService),
    bondingJumperCopperSupply: openTable(published.bondingJumperCopperSupply),
    bondingJumperAluminumSupply: openTable(published.bondingJumperAluminumSupply),
    bendingSide: openTable(published.bendingSide),
    bendingSideCompact: openTable(published.bendingSideCompact),
    bendingOpposite: openTable(published.bendingOpposite),
    bendingOppositeCompact: openTable(published.bendingOppositeCompact),
    insulationTypes: openTable(published.insulationTypes),
    torqueByConductor: openTable(published.torqueByConductor),
    torqueSmallSlotted: openTable(published.torqueSmallSlotted),
    torqueSocket: openTable(published.torqueSocket),
    conductorPropertiesStranded: openTable(published.conductorPropertiesStranded),
    conductorPropertiesSolid: openTable(published.conductorPropertiesSolid),
    acImpedance: openTable(published.acImpedance),
    conduitArea: openTable(published.conduitArea),
    conduitFill: openTable(published.conduitFill),
    insulatedArea: openTable(published.insulatedArea),
    insulatedDiameter: openTable(published.insulatedDiameter),
    compactArea: openTable(published.compactArea),
    boxVolume: openTable(published.boxVolume),
    motorCurrent1ph: openTable(published.motorCurrent1ph),
    motorCurrent3ph: openTable(published.motorCurrent3ph),
    motorShortCircuitDevice: openTable(published.motorShortCircuitDevice),
    adjustmentFactor: openTable(published.adjustmentFactor),
    stranding: openTable(published.stranding),
    markingCodes: openTable(markingCodes),
    padBoltTorque: openTable(padBoltTorque),
    boltTorqueNeta: openTable(boltTorqueNeta),
    likeJointResistance: openTable(likeJointResistance),
    temperatureRise: openTable(temperatureRise),
    physicalConstants: openTable(physicalConstants),
    kFactors: openTable(kFactors),
    fineStrands: openTable(fineStrands),
    bunchedStrands: openTable(bunchedStrands),
  });
}
