/** Where NFPA 70 says what, edition by edition. A clause that moved says where it stood; the rest stands still. */
import { type Citation, COMMON_PRACTICE } from "../core/citation.js";
import type { EditionClauses } from "../core/edition.js";
import type { Basis } from "../core/joint.js";

/** Clauses whose number depends on the edition. */
export interface MovedLocators {
  readonly parallel: string;
  readonly bendingOpposite: string;
  readonly bendingSide: string;
  readonly insulationTypes: string;
  readonly smallConductors: string;
  readonly bareConductors: string;
  readonly conductorTemperature: string;
  readonly roof: string;
  readonly shortRaceway: string;
  readonly neutralsCounted: string;
  readonly groundsNotCounted: string;
  readonly dwellingService: string;
}

/** The clauses of one edition; locators from the edition map in data/published (seen where it says so, else from memory). */
export function clausesOf(edition: Basis["edition"], moved: MovedLocators): EditionClauses {
  const at = (locator: string): Citation => Object.freeze({ standard: "NFPA 70", edition, locator });
  return Object.freeze({
    instructions: at("110.3(B)"),
    deterioratingAgents: at("110.11"),
    unlikeMetals: at("110.14"),
    finelyStranded: at("110.14"),
    compounds: at("110.14"),
    terminals: at("110.14(A)"),
    splices: at("110.14(B)"),
    lowestTemperature: at("110.14(C)"),
    bareConductors: at(moved.bareConductors),
    terminalsTo100A: at("110.14(C)(1)(a)"),
    terminalsOver100A: at("110.14(C)(1)(b)"),
    separateConnectors: at("110.14(C)(2)"),
    torque: at("110.14(D)"),
    voltage: at("110.4"),
    feederLoad: at("215.2(A)(1)"),
    ampacityProtection: at("240.4"),
    nextStandardRating: at("240.4(B)"),
    over800A: at("240.4(C)"),
    smallConductors: at(moved.smallConductors),
    otherProtection: at("240.4(G)"),
    standardRatings: at("240.6(A)"),
    tapsNoNextSize: at("240.21(B)"),
    tapTo10ft: at("240.21(B)(1)"),
    tapTo25ft: at("240.21(B)(2)"),
    tapOutdoors: at("240.21(B)(5)"),
    serviceSplices: at("230.46"),
    groundingMethods: at("250.8(A)"),
    electrodeConductorSplices: at("250.64(C)"),
    electrodeConductorAluminum: at("250.64(A)"),
    electrodeConductorSize: at("250.66"),
    electrodeConductorToRod: at("250.66(A)"),
    electrodeConductorToConcrete: at("250.66(B)"),
    electrodeConnections: at("250.70"),
    bondingJumperSize: at("250.102(C)"),
    equipmentGroundSize: at("250.122(A)"),
    equipmentGroundUpsizing: at("250.122(B)"),
    equipmentGroundParallel: at("250.122(F)"),
    corrosion: at("300.6"),
    buriedSplices: at("300.5(E)"),
    parallel: at(moved.parallel),
    bendingOpposite: at(moved.bendingOpposite),
    bendingSide: at(moved.bendingSide),
    enclosureFill: at("312.8(A)"),
    wirewayFill: at("376.56(A)"),
    wirewayBlocks: at("376.56(B)"),
    boxBlocks: at("314.28(E)"),
    handholeSplices: at("314.30(C)"),
    neutralTerminals: at("408.41"),
    deviceAluminum: at("404.14(C) and 406.3(C)"),
    motorConductors: at("430.22"),
    insulationTypes: at(moved.insulationTypes),
    conductorAreas: at("Chapter 9 Table 8"),
    listedConnectors: Object.freeze({ standard: "UL 486A-486B", edition: "", locator: "scope and marking" }),
    approval: at("110.2"),
    splicingConnectors: Object.freeze({ standard: "UL 486C", edition: "", locator: "scope" }),
    temperatureMark: Object.freeze({ standard: "UL 486A-486B", edition: "", locator: "temperature marking" }),
    padBolts: COMMON_PRACTICE,
    voltageDropBranch: at("210.19, informational note on voltage drop"),
    voltageDropFeeder: at("215.2, informational note on voltage drop"),
    resistanceAtTemperature: at("Chapter 9 Table 8, note 2"),
    effectiveImpedance: at("Chapter 9 Table 9, note 2"),
    shortCircuitHeating: at("Table 240.92(B)"),
    nippleFill: at("Chapter 9, Notes to Tables (4)"),
    areaNotInTables: at("Chapter 9, Notes to Tables (5)"),
    unequalConductors: at("Chapter 9, Notes to Tables (6)"),
    equalConductors: at("Chapter 9, Notes to Tables (7)"),
    jamming: at("Chapter 9 Table 1, informational note on jamming"),
    smallestFlexibleConduit: at("Table 348.22"),
    wirewayConductors: at("376.22(A)"),
    wirewayAdjustment: at("376.22(B)"),
    nonmetallicWirewayConductors: at("378.22"),
    nonmetallicWirewaySplices: at("378.56"),
    boxConductors: at("314.16(B)(1)"),
    boxClamps: at("314.16(B)(2)"),
    boxSupportFittings: at("314.16(B)(3)"),
    boxDevices: at("314.16(B)(4)"),
    boxGrounds: at("314.16(B)(5)"),
    boxTerminalBlocks: at("314.16(B)(6)"),
    pullBoxes: at("314.28(A)"),
    pullStraight: at("314.28(A)(1)"),
    pullAngle: at("314.28(A)(2)"),
    motorCurrent: at("430.6(A)(1)"),
    motorOverload: at("430.32(A)(1)"),
    motorShortCircuitDevice: at("430.52"),
    motorTerminals: at("110.14(C)(1)(a)(4)"),
    branchCircuitLoad: at("210.19(A)(1)"),
    branchCircuitDevice: at("210.20(A)"),
    feederDevice: at("215.3"),
    deviceLoad: at("210.20(A) and 215.3"),
    wholeAmperes: at("220.5(B)"),
    conductorTemperature: at(moved.conductorTemperature),
    roof: at(moved.roof),
    shortRaceway: at(moved.shortRaceway),
    neutralsCounted: at(moved.neutralsCounted),
    groundsNotCounted: at(moved.groundsNotCounted),
    nonmetallicCable: at("334.80"),
    tapProtection: at("240.4(E)"),
    tapToTransformer: at("240.21(B)(3)"),
    tapInHighBay: at("240.21(B)(4)"),
    transformerSecondary: at("240.21(C)"),
    secondaryTo10ft: at("240.21(C)(2)"),
    secondaryTo25ft: at("240.21(C)(6)"),
    bondingJumperInRaceways: at("250.102(C)(2)"),
    equipmentBondingJumper: at("250.102(D)"),
    mainBondingJumper: at("250.28(D)"),
    systemBondingJumper: at("250.30(A)(1)"),
    electrodeBonding: at("250.53(C)"),
    waterPipeBonding: at("250.104(A)(1)"),
    otherPipeBonding: at("250.104(B)"),
    structuralMetalBonding: at("250.104(C)"),
    electrodeConductorToRing: at("250.66(C)"),
    dwellingService: at(moved.dwellingService),
  });
}
