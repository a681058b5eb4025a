import type { Edition } from "../../core/edition.js";
import { openTable } from "../../core/table.js";
import { bunchedStrands, fineStrands } from "../../generated/astm-strands-undated/index.js";
import { kFactors } from "../../generated/iec60364-5-54-2011/index.js";
import { padBoltTorque } from "../../generated/nema-cc1-2009/index.js";
import { boltTorqueNeta, likeJointResistance, temperatureRise } from "../../generated/neta-ats-2021/index.js";
import * as published from "../../generated/nfpa70-2020/index.js";
import { physicalConstants } from "../../generated/physics-codata-and-handbooks/index.js";
import { markingCodes } from "../../generated/ul486-2023/index.js";
import { clausesOf } from "../nfpa70-clauses.js";

/** NFPA 70, edition 2020. */
export const nfpa70Edition2020: Edition = Object.freeze({
  ruleSet: "nfpa70",
  edition: "2020",
  tables: Object.freeze({
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
    markingCodes: openTable(markingCodes),
    torqueByConductor: openTable(published.torqueByConductor),
    torqueSmallSlotted: openTable(published.torqueSmallSlotted),
    torqueSocket: openTable(published.torqueSocket),
    padBoltTorque: openTable(padBoltTorque),
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
    boltTorqueNeta: openTable(boltTorqueNeta),
    likeJointResistance: openTable(likeJointResistance),
    temperatureRise: openTable(temperatureRise),
    physicalConstants: openTable(physicalConstants),
    kFactors: openTable(kFactors),
    stranding: openTable(published.stranding),
    fineStrands: openTable(fineStrands),
    bunchedStrands: openTable(bunchedStrands),
  }),
  clauses: clausesOf("2020", {
    parallel: "310.10(G)",
    bendingOpposite: "312.6(B)(2)",
    bendingSide: "312.6(B)(1)",
    insulationTypes: "Table 310.4(A)",
    smallConductors: "240.4(D)",
    bareConductors: "310.15(D)",
    conductorTemperature: "310.14(A)(3)",
    roof: "310.15(B)(2)",
    shortRaceway: "310.15(C)(1)(b)",
    neutralsCounted: "310.15(E)",
    groundsNotCounted: "310.15(F)",
    dwellingService: "310.12",
    deviceAluminum: "404.14(C) and 406.3(C)",
  }),
  lineSideMark: { asked: "from", date: "2023-01-01" },
  blockLineSideMark: "everywhere",
  torqueDuty: {
    sentence: "Reach the stated torque by an approved means: a torque tool, or a breakaway head that shows it.",
    breakawayAccepted: true,
  },
  copperCladUnlikeCopper: false,
  unmarkedDeviceTakesCopperClad: false,
  boxFill: {
    groundsInOneAllowance: 4,
    furtherGroundAllowance: 0.25,
    isolatedGroundsApart: false,
    terminalBlockAllowance: 0,
  },
  dwellingService: { table: openTable(published.dwellingService) },
  pipeBondingCap: { copper: "3/0 AWG", aluminum: "250 kcmil" },
} satisfies Edition);
