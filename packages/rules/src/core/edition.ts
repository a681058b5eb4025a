/**
 * What an edition of a code brings: its tables, where its clauses stand, and the few thresholds in which editions
 * differ. Rules read these and never ask which edition they serve.
 */
import type { Citation } from "./citation.js";
import type { Basis } from "./joint.js";
import type { Table } from "./table.js";

/** Tables the rules and calculations read. */
export interface EditionTables {
  readonly ampacityRaceway: Table;
  readonly ampacityFreeAir: Table;
  readonly ambientCorrection30c: Table;
  readonly smallConductor: Table;
  readonly standardRatings: Table;
  readonly equipmentGround: Table;
  readonly electrodeConductorCopperService: Table;
  readonly electrodeConductorAluminumService: Table;
  readonly bondingJumperCopperSupply: Table;
  readonly bondingJumperAluminumSupply: Table;
  readonly bendingSide: Table;
  readonly bendingSideCompact: Table;
  readonly bendingOpposite: Table;
  readonly bendingOppositeCompact: Table;
  readonly insulationTypes: Table;
  readonly markingCodes: Table;
  readonly torqueByConductor: Table;
  readonly torqueSmallSlotted: Table;
  readonly torqueSocket: Table;
  readonly padBoltTorque: Table;
  readonly conductorPropertiesStranded: Table;
  readonly conductorPropertiesSolid: Table;
  readonly acImpedance: Table;
  readonly conduitArea: Table;
  readonly conduitFill: Table;
  readonly insulatedArea: Table;
  readonly insulatedDiameter: Table;
  readonly compactArea: Table;
  readonly boxVolume: Table;
  readonly motorCurrent1ph: Table;
  readonly motorCurrent3ph: Table;
  readonly motorShortCircuitDevice: Table;
  readonly adjustmentFactor: Table;
  readonly boltTorqueNeta: Table;
  readonly likeJointResistance: Table;
  readonly temperatureRise: Table;
  readonly physicalConstants: Table;
  readonly kFactors: Table;
  readonly stranding: Table;
  readonly fineStrands: Table;
  readonly bunchedStrands: Table;
}

/** The clauses the rules and calculations cite, by what they say. */
export interface EditionClauses {
  readonly instructions: Citation;
  readonly deterioratingAgents: Citation;
  readonly unlikeMetals: Citation;
  readonly finelyStranded: Citation;
  readonly compounds: Citation;
  readonly terminals: Citation;
  readonly splices: Citation;
  readonly lowestTemperature: Citation;
  readonly bareConductors: Citation;
  readonly terminalsTo100A: Citation;
  readonly terminalsOver100A: Citation;
  readonly separateConnectors: Citation;
  readonly torque: Citation;
  readonly voltage: Citation;
  readonly feederLoad: Citation;
  readonly ampacityProtection: Citation;
  readonly nextStandardRating: Citation;
  readonly over800A: Citation;
  readonly smallConductors: Citation;
  readonly otherProtection: Citation;
  readonly standardRatings: Citation;
  readonly tapsNoNextSize: Citation;
  readonly tapTo10ft: Citation;
  readonly tapTo25ft: Citation;
  readonly tapOutdoors: Citation;
  readonly serviceSplices: Citation;
  readonly groundingMethods: Citation;
  readonly electrodeConductorSplices: Citation;
  readonly electrodeConductorTaps: Citation;
  readonly electrodeConductorAluminum: Citation;
  readonly electrodeConductorSize: Citation;
  readonly electrodeConductorToRod: Citation;
  readonly electrodeConductorToConcrete: Citation;
  readonly electrodeConnections: Citation;
  readonly bondingJumperSize: Citation;
  readonly equipmentGroundSize: Citation;
  readonly equipmentGroundUpsizing: Citation;
  readonly equipmentGroundParallel: Citation;
  readonly corrosion: Citation;
  readonly buriedSplices: Citation;
  readonly parallel: Citation;
  readonly bendingOpposite: Citation;
  readonly bendingSide: Citation;
  readonly enclosureFill: Citation;
  readonly wirewayFill: Citation;
  readonly wirewayBlocks: Citation;
  readonly boxBlocks: Citation;
  readonly handholeSplices: Citation;
  readonly boxAtEachJoint: Citation;
  readonly accessibleBoxes: Citation;
  readonly accessibleElectrodes: Citation;
  readonly neutralTerminals: Citation;
  readonly deviceAluminum: Citation;
  readonly motorConductors: Citation;
  readonly insulationTypes: Citation;
  readonly conductorAreas: Citation;
  readonly listedConnectors: Citation;
  readonly approval: Citation;
  readonly splicingConnectors: Citation;
  readonly temperatureMark: Citation;
  readonly padBolts: Citation;
  readonly likeJoints: Citation;
  readonly temperatureRise: Citation;
  readonly voltageDropBranch: Citation;
  readonly voltageDropFeeder: Citation;
  readonly resistanceAtTemperature: Citation;
  readonly effectiveImpedance: Citation;
  readonly shortCircuitHeating: Citation;
  readonly nippleFill: Citation;
  readonly areaNotInTables: Citation;
  readonly unequalConductors: Citation;
  readonly equalConductors: Citation;
  readonly jamming: Citation;
  readonly smallestFlexibleConduit: Citation;
  readonly wirewayConductors: Citation;
  readonly wirewayAdjustment: Citation;
  readonly nonmetallicWirewayConductors: Citation;
  readonly nonmetallicWirewaySplices: Citation;
  readonly boxConductors: Citation;
  readonly boxClamps: Citation;
  readonly boxSupportFittings: Citation;
  readonly boxDevices: Citation;
  readonly boxGrounds: Citation;
  readonly boxTerminalBlocks: Citation;
  readonly pullBoxes: Citation;
  readonly pullStraight: Citation;
  readonly pullAngle: Citation;
  readonly motorCurrent: Citation;
  readonly motorOverload: Citation;
  readonly motorShortCircuitDevice: Citation;
  readonly motorTripSetting: Citation;
  readonly severalMotorConductors: Citation;
  readonly motorTerminals: Citation;
  readonly branchCircuitLoad: Citation;
  readonly branchCircuitDevice: Citation;
  readonly feederDevice: Citation;
  readonly deviceLoad: Citation;
  readonly wholeAmperes: Citation;
  readonly conductorTemperature: Citation;
  readonly roof: Citation;
  readonly shortRaceway: Citation;
  readonly neutralsCounted: Citation;
  readonly groundsNotCounted: Citation;
  readonly nonmetallicCable: Citation;
  readonly tapProtection: Citation;
  readonly tapToTransformer: Citation;
  readonly tapInHighBay: Citation;
  readonly transformerSecondary: Citation;
  readonly secondaryByPrimary: Citation;
  readonly secondaryTo10ft: Citation;
  readonly secondaryIndustrial: Citation;
  readonly secondaryOutdoors: Citation;
  readonly secondaryTo25ft: Citation;
  readonly bondingJumperInRaceways: Citation;
  readonly equipmentBondingJumper: Citation;
  readonly mainBondingJumper: Citation;
  readonly systemBondingJumper: Citation;
  readonly electrodeBonding: Citation;
  readonly waterPipeBonding: Citation;
  readonly otherPipeBonding: Citation;
  readonly structuralMetalBonding: Citation;
  readonly electrodeConductorToRing: Citation;
  readonly dwellingService: Citation;
}

/** When connectors on service conductors must carry the line-side mark. */
export type LineSideMark =
  | { readonly asked: "no"; readonly laterRule: string }
  /** From this date of installation on, "2023-01-01". */
  | { readonly asked: "from"; readonly date: string }
  | { readonly asked: "yes" };

/** Where a distribution block on service conductors must carry the line-side mark, beside wireways. */
export type BlockLineSideMark = "in-boxes" | "everywhere";

/** How the edition words the torque duty. */
export interface TorqueDuty {
  readonly sentence: string;
  /** Whether a breakaway head counts by itself as a means of reaching the torque. */
  readonly breakawayAccepted: boolean;
}

/** How the edition counts wires and fittings in a box beside those that every edition counts alike. */
export interface BoxFillCounting {
  /** Equipment grounds that together take one allowance; "all" where their number does not matter. */
  readonly groundsInOneAllowance: number | "all";
  /** Allowance of each equipment ground beyond them. */
  readonly furtherGroundAllowance: number;
  /** A set of isolated equipment grounds takes one allowance of its own and is not counted with the others. */
  readonly isolatedGroundsApart: boolean;
  /** Allowances of each terminal block; 0 where the text does not name them. */
  readonly terminalBlockAllowance: number;
}

/** How the conductors of a dwelling's single-phase service or main feeder are sized. */
export interface DwellingServiceSizing {
  /** Sizes printed by rating; null where the edition gives the share of the rating only. */
  readonly table: Table | null;
}

export interface Edition {
  readonly ruleSet: Basis["ruleSet"];
  readonly edition: Basis["edition"];
  readonly tables: EditionTables;
  readonly clauses: EditionClauses;
  readonly lineSideMark: LineSideMark;
  /** Distribution blocks on service conductors carry it in wireways in every edition; whether in all other places too. */
  readonly blockLineSideMark: BlockLineSideMark;
  readonly torqueDuty: TorqueDuty;
  /** Copper and copper-clad aluminum count as unlike metals when they touch. */
  readonly copperCladUnlikeCopper: boolean;
  /** A wiring device of 15 or 20 A without the mark CO/ALR takes copper-clad aluminum. */
  readonly unmarkedDeviceTakesCopperClad: boolean;
  readonly boxFill: BoxFillCounting;
  readonly dwellingService: DwellingServiceSizing;
  /** Jumpers to water pipes and structural metal need not be larger than these sizes; null where no limit is given. */
  readonly pipeBondingCap: { readonly copper: string; readonly aluminum: string } | null;
}
