import { BOX_THRESHOLDS } from "./box-thresholds.js";
import { CIRCUIT_THRESHOLDS } from "./circuit-thresholds.js";
import { JOINT_THRESHOLDS } from "./joint-thresholds.js";
import { MOTOR_THRESHOLDS } from "./motor-thresholds.js";
import { RUN_THRESHOLDS } from "./run-thresholds.js";
import { TABLE_THRESHOLDS } from "./table-thresholds.js";
import { TAP_THRESHOLDS } from "./tap-thresholds.js";
import type { Threshold } from "./threshold.js";
import { TORQUE_THRESHOLDS } from "./torque-thresholds.js";

export const ALL_THRESHOLDS: readonly Threshold[] = [
  ...RUN_THRESHOLDS,
  ...JOINT_THRESHOLDS,
  ...TAP_THRESHOLDS,
  ...BOX_THRESHOLDS,
  ...MOTOR_THRESHOLDS,
  ...TORQUE_THRESHOLDS,
  ...CIRCUIT_THRESHOLDS,
  ...TABLE_THRESHOLDS,
];
