/** Every worked case by the calculation that answers it. */
import type { CalculationName } from "@landfast/rules";
import { AMPACITY_CASES } from "./ampacity-cases.js";
import { BENDING_SPACE_CASES } from "./bending-space-cases.js";
import { BOLT_TORQUE_CASES } from "./bolt-torque-cases.js";
import { BONDING_JUMPER_CASES } from "./bonding-jumper-cases.js";
import { BOX_FILL_CASES } from "./box-fill-cases.js";
import { CONDUCTOR_SIZE_CASES } from "./conductor-size-cases.js";
import { CONTACT_RESISTANCE_CASES } from "./contact-resistance-cases.js";
import { CONVERT_CASES } from "./convert-cases.js";
import { DC_RESISTANCE_CASES } from "./dc-resistance-cases.js";
import { DWELLING_SERVICE_CASES } from "./dwelling-service-cases.js";
import { ELECTRODE_CONDUCTOR_CASES } from "./electrode-conductor-cases.js";
import { EQUIPMENT_GROUND_CASES } from "./equipment-ground-cases.js";
import { MOTOR_CIRCUIT_CASES } from "./motor-circuit-cases.js";
import { OVERCURRENT_DEVICE_CASES } from "./overcurrent-device-cases.js";
import { PULL_BOX_CASES } from "./pull-box-cases.js";
import { RACEWAY_FILL_CASES } from "./raceway-fill-cases.js";
import { SHORT_CIRCUIT_CASES } from "./short-circuit-cases.js";
import { STRAND_CLASS_CASES } from "./strand-class-cases.js";
import { TAP_CASES } from "./tap-cases.js";
import { TEMPERATURE_RISE_CASES } from "./temperature-rise-cases.js";
import { TORQUE_CASES } from "./torque-cases.js";
import { VOLTAGE_DROP_CASES } from "./voltage-drop-cases.js";
import { WIREWAY_FILL_CASES } from "./wireway-fill-cases.js";
import type { WorkedCase } from "./worked-case.js";

export const WORKED_CASES: { readonly [Name in CalculationName]: readonly WorkedCase<Name>[] } = {
  ampacity: AMPACITY_CASES,
  "bending-space": BENDING_SPACE_CASES,
  "bolt-torque": BOLT_TORQUE_CASES,
  "bonding-jumper": BONDING_JUMPER_CASES,
  "box-fill": BOX_FILL_CASES,
  "conductor-size": CONDUCTOR_SIZE_CASES,
  "contact-resistance": CONTACT_RESISTANCE_CASES,
  convert: CONVERT_CASES,
  "dc-resistance": DC_RESISTANCE_CASES,
  "dwelling-service": DWELLING_SERVICE_CASES,
  "electrode-conductor": ELECTRODE_CONDUCTOR_CASES,
  "equipment-ground": EQUIPMENT_GROUND_CASES,
  "motor-circuit": MOTOR_CIRCUIT_CASES,
  "overcurrent-device": OVERCURRENT_DEVICE_CASES,
  "pull-box": PULL_BOX_CASES,
  "raceway-fill": RACEWAY_FILL_CASES,
  "short-circuit": SHORT_CIRCUIT_CASES,
  "strand-class": STRAND_CLASS_CASES,
  tap: TAP_CASES,
  "temperature-rise": TEMPERATURE_RISE_CASES,
  torque: TORQUE_CASES,
  "voltage-drop": VOLTAGE_DROP_CASES,
  "wireway-fill": WIREWAY_FILL_CASES,
};
