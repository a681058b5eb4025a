/** The calculations by name, and the one call that answers them. */
import type { Calculation, CalculationFinding } from "./core/calculation.js";
import type { Basis } from "./core/joint.js";
import { editionOf } from "./rulesets/editions.js";
import { type AmpacityQuestion, ampacity } from "./topics/ampacity/ampacity.js";
import { type BendingSpaceQuestion, bendingSpaceNeeded } from "./topics/bend-space/bending-space-needed.js";
import { type BoltTorqueQuestion, boltTorque } from "./topics/bolts/bolt-torque.js";
import { type BoxFillQuestion, boxFill } from "./topics/boxes/box-fill.js";
import { type PullBoxQuestion, pullBox } from "./topics/boxes/pull-box.js";
import { type ConductorSizeQuestion, conductorSize } from "./topics/conductor-size/conductor-size.js";
import { type ConversionQuestion, convert } from "./topics/conversion/convert.js";
import { type RacewayFillQuestion, racewayFill } from "./topics/fill/raceway-fill.js";
import { type WirewayFillQuestion, wirewayFill } from "./topics/fill/wireway-fill.js";
import { type BondingJumperQuestion, bondingJumper } from "./topics/ground-size/bonding-jumper.js";
import { type ElectrodeConductorQuestion, electrodeConductor } from "./topics/ground-size/electrode-conductor.js";
import { type EquipmentGroundQuestion, equipmentGround } from "./topics/ground-size/equipment-ground.js";
import { type ContactResistanceQuestion, contactResistance } from "./topics/inspection/contact-resistance.js";
import { type TemperatureRiseQuestion, temperatureRise } from "./topics/inspection/temperature-rise.js";
import { type MotorCircuitQuestion, motorCircuit } from "./topics/motors/motor-circuit.js";
import { type OvercurrentDeviceQuestion, overcurrentDevice } from "./topics/protection/overcurrent-device.js";
import { type DcResistanceQuestion, dcResistance } from "./topics/resistance/dc-resistance.js";
import { type DwellingServiceQuestion, dwellingService } from "./topics/service-size/dwelling-service.js";
import { type ShortCircuitQuestion, shortCircuit } from "./topics/short-circuit/short-circuit.js";
import { type StrandClassQuestion, strandCount } from "./topics/stranding/strand-count.js";
import { type TapQuestion, tap } from "./topics/tap-size/tap.js";
import { type TorqueQuestion, torque } from "./topics/torque-value/torque.js";
import { type VoltageDropQuestion, voltageDrop } from "./topics/voltage-drop/voltage-drop.js";

/** What each calculation is asked. */
export interface CalculationQuestions {
  readonly ampacity: AmpacityQuestion;
  readonly "bending-space": BendingSpaceQuestion;
  readonly "bolt-torque": BoltTorqueQuestion;
  readonly "bonding-jumper": BondingJumperQuestion;
  readonly "box-fill": BoxFillQuestion;
  readonly "conductor-size": ConductorSizeQuestion;
  readonly "contact-resistance": ContactResistanceQuestion;
  readonly convert: ConversionQuestion;
  readonly "dc-resistance": DcResistanceQuestion;
  readonly "dwelling-service": DwellingServiceQuestion;
  readonly "electrode-conductor": ElectrodeConductorQuestion;
  readonly "equipment-ground": EquipmentGroundQuestion;
  readonly "motor-circuit": MotorCircuitQuestion;
  readonly "overcurrent-device": OvercurrentDeviceQuestion;
  readonly "pull-box": PullBoxQuestion;
  readonly "raceway-fill": RacewayFillQuestion;
  readonly "short-circuit": ShortCircuitQuestion;
  readonly "strand-class": StrandClassQuestion;
  readonly tap: TapQuestion;
  readonly "temperature-rise": TemperatureRiseQuestion;
  readonly torque: TorqueQuestion;
  readonly "voltage-drop": VoltageDropQuestion;
  readonly "wireway-fill": WirewayFillQuestion;
}

export type CalculationName = keyof CalculationQuestions;

/** Every calculation under its name, in alphabetical order. */
export const CALCULATIONS: { readonly [Name in CalculationName]: Calculation<CalculationQuestions[Name]> } =
  Object.freeze({
    ampacity,
    "bending-space": bendingSpaceNeeded,
    "bolt-torque": boltTorque,
    "bonding-jumper": bondingJumper,
    "box-fill": boxFill,
    "conductor-size": conductorSize,
    "contact-resistance": contactResistance,
    convert,
    "dc-resistance": dcResistance,
    "dwelling-service": dwellingService,
    "electrode-conductor": electrodeConductor,
    "equipment-ground": equipmentGround,
    "motor-circuit": motorCircuit,
    "overcurrent-device": overcurrentDevice,
    "pull-box": pullBox,
    "raceway-fill": racewayFill,
    "short-circuit": shortCircuit,
    "strand-class": strandCount,
    tap,
    "temperature-rise": temperatureRise,
    torque,
    "voltage-drop": voltageDrop,
    "wireway-fill": wirewayFill,
  });

/**
 * One calculation under the edition that the basis names.
 * @throws RangeError for an edition that is not answered or a size that cannot be read; UnusableFact, which names the
 * place, for a fact that no work can be done with.
 */
export function calculate<Name extends CalculationName>(
  name: Name,
  question: CalculationQuestions[Name],
  basis: Basis,
): CalculationFinding {
  return CALCULATIONS[name].answer(question, basis, editionOf(basis));
}

export { CIRCUIT_KINDS, type CircuitKind, type CircuitLoad } from "./core/circuit-load.js";
export {
  COUNTED_CIRCUITS,
  type ConductorRun,
  type ConductorsTogether,
  type CountedCircuit,
  type CountedCircuitKind,
  type Grouping,
  RUN_MANNERS,
  type RunManner,
} from "./core/conductor-run.js";
export { DEVICE_KINDS, type DeviceKind } from "./core/standard-rating.js";
export type { AmpacityQuestion } from "./topics/ampacity/ampacity.js";
export type { BendingSpaceQuestion } from "./topics/bend-space/bending-space-needed.js";
export {
  BOLT_KINDS,
  BOLT_TABLES,
  type BoltKind,
  type BoltTable,
  type BoltTorqueQuestion,
} from "./topics/bolts/bolt-torque.js";
export { BOX_CONDUCTOR_MANNERS, type BoxConductorManner, type BoxFillQuestion } from "./topics/boxes/box-fill.js";
export {
  BOX_WALLS,
  type BoxWall,
  type PullBoxEntry,
  type PullBoxPull,
  type PullBoxQuestion,
} from "./topics/boxes/pull-box.js";
export type { ConductorSizeQuestion } from "./topics/conductor-size/conductor-size.js";
export type { ConversionQuestion } from "./topics/conversion/convert.js";
export type { FillConductor } from "./topics/fill/fill-groups.js";
export {
  RACEWAY_KINDS,
  type RacewayFillAsk,
  type RacewayFillQuestion,
  type RacewayKind,
} from "./topics/fill/raceway-fill.js";
export { WIREWAY_KINDS, type WirewayFillQuestion, type WirewayKind } from "./topics/fill/wireway-fill.js";
export {
  BONDING_JUMPERS,
  type BondingJumperKind,
  type BondingJumperQuestion,
} from "./topics/ground-size/bonding-jumper.js";
export type { ElectrodeConductorQuestion } from "./topics/ground-size/electrode-conductor.js";
export type { EquipmentGroundQuestion, GroundedPhases } from "./topics/ground-size/equipment-ground.js";
export type { SupplyConductors } from "./topics/ground-size/supply-area.js";
export type { ContactResistanceQuestion, JointReading } from "./topics/inspection/contact-resistance.js";
export type { TemperatureComparison, TemperatureRiseQuestion } from "./topics/inspection/temperature-rise.js";
export type { MotorCircuitAsk, MotorCircuitQuestion } from "./topics/motors/motor-circuit.js";
export type { MotorConductor } from "./topics/motors/motor-conductor.js";
export {
  MOTOR_BUILDS,
  MOTOR_KINDS,
  type Motor,
  type MotorBuild,
  type MotorKind,
} from "./topics/motors/motor-current.js";
export {
  SHORT_CIRCUIT_DEVICES,
  type ShortCircuitDevice,
  type ShortCircuitDeviceKind,
} from "./topics/motors/short-circuit-device.js";
export {
  type OvercurrentDeviceAsk,
  type OvercurrentDeviceQuestion,
  type ProtectedRun,
  SERVED_LOADS,
  type ServedLoad,
} from "./topics/protection/overcurrent-device.js";
export type { DcResistanceQuestion } from "./topics/resistance/dc-resistance.js";
export {
  DWELLING_SYSTEMS,
  type DwellingServiceQuestion,
  type DwellingSystem,
} from "./topics/service-size/dwelling-service.js";
export type { CircularMilHeating } from "./topics/short-circuit/circular-mil-heating.js";
export {
  K_FACTOR_INSULATIONS,
  type KFactorHeating,
  type KFactorInsulation,
} from "./topics/short-circuit/k-factor-heating.js";
export type { ShortCircuitAsk, ShortCircuitQuestion } from "./topics/short-circuit/short-circuit.js";
export { STRAND_LAYS, type StrandClassQuestion, type StrandLay } from "./topics/stranding/strand-count.js";
export { type HighBay, TAP_WINDINGS, type TapAsk, type TapQuestion, type TapWindings } from "./topics/tap-size/tap.js";
export {
  TAP_ALLOWANCES,
  TAP_CONDITIONS,
  type TapAllowance,
  type TapCondition,
} from "./topics/tap-size/tap-allowances.js";
export type { MarkedTorque, TorqueQuestion } from "./topics/torque-value/torque.js";
export type { ToolBit, TorqueTool } from "./topics/torque-value/torque-tool.js";
export {
  type CircuitImpedance,
  CONDUIT_MATERIALS,
  type ConduitMaterial,
} from "./topics/voltage-drop/circuit-impedance.js";
export type { VoltageDropAsk, VoltageDropQuestion } from "./topics/voltage-drop/voltage-drop.js";
