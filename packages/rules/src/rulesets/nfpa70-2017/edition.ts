import type { Edition } from "../../core/edition.js";
import { openTable } from "../../core/table.js";
import { bunchedStrands, fineStrands } from "../../generated/astm-strands-undated/index.js";
import { kFactors } from "../../generated/iec60364-5-54-2011/index.js";
import { padBoltTorque } from "../../generated/nema-cc1-2009/index.js";
import { boltTorqueNeta, likeJointResistance, temperatureRise } from "../../generated/neta-ats-2021/index.js";
import * as published from "../../generated/nfpa70-2017/index.js";
import { physicalConstants } from "../../generated/physics-codata-and-handbooks/index.js";
import { markingCodes } from "../../generated/ul486-2023/index.js";
import { clausesOf } from "../nfpa70-clauses.js";

/** NFPA 70, edition 2017. */
export const nfpa70Edition2017: Edition = Object.freeze({
  ruleSet: "nfpa70",
  edition: "2017",
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
  clauses: clausesOf("2017", {
    parallel: "310.10(H)",
    bendingOpposite: "312.6(B)(2)",
    bendingSide: "312.6(B)(1)",
    insulationTypes: "Table 310.104(A)",
    smallConductors: "240.4(D)",
    bareConductors: "310.15(B)(4)",
    conductorTemperature: "310.15(A)(3)",
    roof: "310.15(B)(3)(c)",
    shortRaceway: "310.15(B)(3)(a)(2)",
    neutralsCounted: "310.15(B)(5)",
    groundsNotCounted: "310.15(B)(6)",
    dwellingService: "310.15(B)(7)",
    deviceAluminum: "404.14(C) and 406.3(C)",
  }),
  lineSideMark: {
    asked: "no",
    laterRule:
      "the 2020 edition asks for a line-side mark on connectors on service conductors installed from 2023-01-01 on",
  },
  blockLineSideMark: "in-boxes",
  torqueDuty: {
    sentence: "Tighten with a calibrated torque tool to the value given, unless the instructions name another method.",
    breakawayAccepted: false,
  },
  copperCladUnlikeCopper: true,
  unmarkedDeviceTakesCopperClad: false,
  boxFill: {
    groundsInOneAllowance: "all",
    furtherGroundAllowance: 0,
    isolatedGroundsApart: true,
    terminalBlockAllowance: 0,
  },
  dwellingService: { table: null },
  pipeBondingCap: null,
} satisfies Edition);
