import type { TSchema } from "@sinclair/typebox";
import { BAR_SCHEMAS } from "./bars.js";
import { Basis } from "./basis.js";
import { CALCULATION_SCHEMAS } from "./calculations/calculations.js";
import { CANDIDATE_SCHEMAS } from "./candidates.js";
import { CATALOGUE_IMPORT_SCHEMAS } from "./catalogue-import.js";
import { Citation } from "./citation.js";
import { ConductorGroup } from "./conductor.js";
import { CONNECTOR_SCHEMAS } from "./connector.js";
import { ECONOMICS_SCHEMAS } from "./economics.js";
import { FINDING_SCHEMAS } from "./finding.js";
import { JOB_SCHEMAS } from "./job.js";
import { JOINT_SCHEMAS } from "./joint.js";
import { LABOUR_TABLE_SCHEMAS } from "./labour-table.js";
import { OWN_CATALOGUE_SCHEMAS } from "./own-catalogue.js";
import { PARTS_LIST_SCHEMAS } from "./parts-list.js";
import { PRICE_LIST_SCHEMAS } from "./price-list.js";
import { PROBLEM_SCHEMAS } from "./problem.js";
import { PROJECT_RULE_SCHEMAS } from "./project-rule.js";
import { Area, Length, Temperature, Torque } from "./quantity.js";
import { REGISTER_SCHEMAS } from "./register.js";
import { SCHEDULE_SCHEMAS } from "./schedule.js";
import { STOCK_PLAN_SCHEMAS } from "./stock-plan.js";
import { STOCK_SUPPLY_SCHEMAS } from "./stock-supply.js";
import { TRUCK_SCHEMAS } from "./truck.js";

/** Every schema that stands by name in the OpenAPI document. */
export const COMPONENTS: readonly TSchema[] = [
  Basis,
  Citation,
  Length,
  Area,
  Torque,
  Temperature,
  ConductorGroup,
  ...CONNECTOR_SCHEMAS,
  ...OWN_CATALOGUE_SCHEMAS,
  ...CATALOGUE_IMPORT_SCHEMAS,
  ...JOINT_SCHEMAS,
  ...PROJECT_RULE_SCHEMAS,
  ...JOB_SCHEMAS,
  ...FINDING_SCHEMAS,
  ...CANDIDATE_SCHEMAS,
  ...CALCULATION_SCHEMAS,
  ...SCHEDULE_SCHEMAS,
  ...REGISTER_SCHEMAS,
  ...PRICE_LIST_SCHEMAS,
  ...LABOUR_TABLE_SCHEMAS,
  ...STOCK_SUPPLY_SCHEMAS,
  ...STOCK_PLAN_SCHEMAS,
  ...PARTS_LIST_SCHEMAS,
  ...TRUCK_SCHEMAS,
  ...ECONOMICS_SCHEMAS,
  ...BAR_SCHEMAS,
  ...PROBLEM_SCHEMAS,
];
